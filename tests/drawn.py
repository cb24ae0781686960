"""Drawings and fragments looked at as a browser or a printer would: well formed, on the page."""

from __future__ import annotations

import math
import re
from itertools import chain
from xml.etree.ElementTree import Element, fromstring, tostring

from handout_engine.drawing.layout import lay_out
from handout_engine.drawing.page import PAGE_WIDTH, Hatch, Page, Path, Text
from handout_engine.drawing.scene import Point, Scene
from handout_engine.markup import html
from handout_engine.saying import Tape

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
