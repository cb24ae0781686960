"""Drawings and fragments looked at as a browser or a printer would: well formed, on the page."""

from __future__ import annotations

import math
import re
from itertools import chain
from xml.etree.ElementTree import Element, fromstring, tostring

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.values import Value
from handout_engine.drawing.layout import lay_out
from handout_engine.drawing.markup import html
from handout_engine.drawing.page import PAGE_WIDTH, Hatch, Page, Path, Text
from handout_engine.drawing.scene import Dimension, Line, Point, Scene, Shown, Stroke, Tag

EXACT = 0.05
"""So many mm a dimension may be off: less than half of the finest mark of any tape."""
NUMBER = re.compile(r"-?\d+(\.\d)?")


def points(page: Page) -> list[Point]:
    """Every point of every line and face of a page."""
    found: list[Point] = []
    for part in page.parts:
        match part:
            case Path():
                found.extend(part.points)
            case Hatch():
                found.extend(chain.from_iterable(part.lines))
            case Text():
                found.append(part.at)
    return found


def texts(page: Page) -> list[Text]:
    """Every word of a page."""
    return [part for part in page.parts if isinstance(part, Text)]


def check_drawing(scene: Scene, tape: Tape) -> None:
    """A scene laid out: every number is one, and nothing stands beside the page."""
    page = lay_out(scene, tape)
    assert page.height > 0
    for x, y in points(page):
        assert math.isfinite(x) and math.isfinite(y)
    for part in page.parts:
        if isinstance(part, Path):
            assert all(-1 <= x <= PAGE_WIDTH + 1 for x, _ in part.points), scene.title.template
    for text in texts(page):
        left, right = text.extent
        assert left >= 0 and right <= PAGE_WIDTH, f"{scene.title.template}: {text.words}"
        top, bottom = text.reach
        assert top >= page.top and bottom <= page.top + page.height, text.words
        assert text.words.strip(), "an empty label"
    assert scene.title.first(tape) and scene.description.first(tape)


def check_dimensions(scene: Scene) -> None:
    """Each arrow is as long as the amount beside it, at the drawing's scale.

    A dimension may declare that it is broken: then it is shorter, and break lines of the cloth lie
    between its ends. Or that it is enlarged: then it is longer. The reader is told of either.
    """
    for shape in scene.shapes:
        match shape:
            case Dimension(amount=amount, shown=Shown.TO_SCALE, span=span):
                assert abs(_mm(amount) - span) < EXACT, _lie(scene, shape)
            case Dimension(amount=amount, shown=Shown.BROKEN, span=span):
                assert span < _mm(amount), _lie(scene, shape)
                assert len(_breaks_across(shape, scene)) >= 2, _lie(scene, shape)
            case Dimension(amount=amount, shown=Shown.ENLARGED, span=span):
                assert span > _mm(amount), _lie(scene, shape)
            case Tag(amount=amount, at=(_, low), origin=(_, high)):
                assert abs(_mm(amount) - (low - high)) < EXACT, _lie(scene, shape)


def check_reader_is_told(scene: Scene, tape: Tape) -> None:
    """Words in the drawing say of each broken or enlarged dimension that it is one."""
    words = [text.words for text in texts(lay_out(scene, tape))]
    shown = [shape.shown for shape in scene.shapes if isinstance(shape, Dimension)]
    assert (Shown.BROKEN.value in words) is (Shown.BROKEN in shown)
    enlarged = [each for each in words if each.endswith(f", {Shown.ENLARGED.value}")]
    assert len(enlarged) == shown.count(Shown.ENLARGED)


def _mm(amount: Amount | Value) -> float:
    """What a dimension or a tag says, in mm; it says nothing but lengths."""
    length = amount.amount if isinstance(amount, Value) else amount
    assert isinstance(length, Length), amount
    return float(length)


def _lie(scene: Scene, shape: Dimension | Tag) -> str:
    """What is wrong, for who mends it."""
    name = shape.amount.name if isinstance(shape.amount, Value) else shape.amount
    span = f"spans {shape.span:.2f} mm" if isinstance(shape, Dimension) else "lies elsewhere"
    return f"{scene.title.template}: {name}, {_mm(shape.amount):.2f} mm, {span}: {shape}"


def _breaks_across(dimension: Dimension, scene: Scene) -> list[Stroke]:
    """The break lines that lie between the ends of a dimension and reach to where it is taken."""
    along = 0 if dimension.start[1] == dimension.end[1] else 1
    start, end = sorted((dimension.start[along], dimension.end[along]))
    beside = dimension.start[1 - along]
    found = []
    for shape in scene.shapes:
        if not isinstance(shape, Stroke) or shape.line is not Line.BREAK:
            continue
        places, others = ([point[way] for point in shape.points] for way in (along, 1 - along))
        slack = 0.02 * (max(others) - min(others))
        reaches = min(others) - slack <= beside <= max(others) + slack
        if reaches and start < min(places) and max(places) < end:
            found.append(shape)
    return found


def check_fragment(tree: Element) -> None:
    """A fragment written out: well formed as XML too, ids its page's only ones, labels that lead
    to something, and coordinates to a tenth."""
    made = fromstring(tostring(tree, encoding="unicode"))
    text = html(tree)
    assert "NaN" not in text and "inf" not in re.findall(r"[a-z]+", " ".join(numbers(tree)))
    ids = [each.get("id") for each in made.iter() if each.get("id")]
    assert len(set(ids)) == len(ids)
    for each in made.iter():
        for attribute in ("aria-labelledby", "aria-describedby", "for"):
            for name in (each.get(attribute) or "").split():
                assert name in ids, name


def numbers(tree: Element) -> list[str]:
    """Every coordinate attribute of the drawings in a fragment."""
    wanted = ("d", "x", "y", "viewBox", "width", "height")
    return [
        value for each in tree.iter() for name in wanted if (value := each.get(name)) is not None
    ]
