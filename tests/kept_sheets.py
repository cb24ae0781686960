"""All that a sheet says and draws, as lines of text: to keep it, and to see what a change moves.

Amounts are written in mm, sentences as a tape says them. Of a drawing there is a line for each kind
of line, face and mark: how many, how long in all, what they enclose and where; of a dimension or
a note where it stands. So a line that moves, grows or is missing shows, without its coordinates.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import fields
from enum import Enum
from fractions import Fraction
from itertools import pairwise
from math import dist, fsum
from typing import Any
from zlib import crc32

from handout_engine import register
from handout_engine.amounts.inputs import Input, declared_inputs
from handout_engine.amounts.lengths import MILLIMETRES_PER_INCH, Length, NamedLength, Place
from handout_engine.amounts.refusals import RefusalError, RefusalsError
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.values import Sentence, Value
from handout_engine.cloth.layout_drawing import layout_scene
from handout_engine.paper.sheets import sheets
from handout_engine.working.workings import Working
from worked import INCHES, work

Written = Mapping[str, str]
OTHERWISE = "== otherwise: "
PAPER = "a4"
MIDDLE_CHOICES = 2
"""Up to so many choices between the first and the last are kept in forms of their own."""


def account(working: Working) -> list[str]:
    """Everything in a working, a line for each thing."""
    return [
        *(f"value {name}: {told(each)}" for name, each in sorted(working.values.items())),
        *(line for piece in working.pieces for line in _piece(piece)),
        *(f"seam {each.name}: {told(each.allowance)}" for each in working.seams),
        *(line for layout in working.layouts for line in _layout(layout)),
        *(_supply(each) for each in working.supplies),
        *(line for chart in working.charts for line in _chart(chart)),
        *(line for each in working.sample for line in _step("sample", each)),
        *(line for each in working.steps for line in _step("step", each)),
        *(line for picture in working.pictures for line in _picture(picture)),
    ]


def told(part: Any) -> str:
    """An amount in mm, a sentence as a tape says it, anything else as it is."""
    match part:
        case Sentence():
            text = part.first(INCHES)
        case Value(amount=amount):
            text = told(amount)
        case Length():
            text = f"{shown(float(part), 3)} mm"
        case Fraction():
            text = f"{shown(float(part), 6)}"
        case Enum():
            text = part.name.lower()
        case tuple():
            text = ", ".join(map(told, part))
        case Place() | NamedLength():
            text = " ".join(told(getattr(part, each.name)) for each in fields(part))
        case _:
            text = str(part)
    return text


def shown(number: float, places: int = 1) -> float:
    """A figure rounded twice, so that the last digit of a sum decides nothing."""
    return round(round(number, places + 5), places) + 0.0


def _piece(piece: Any) -> Iterator[str]:
    folded = " on the fold" if piece.on_fold else ""
    yield (
        f"piece {piece.name}: {piece.count} of {piece.cloth}, {told(piece.width)} x "
        f"{told(piece.length)}, {told(piece.grain)}{folded}"
    )
    yield from (f"  mark {each.label}: {told(each.distance)}" for each in piece.marks)
    for name in ("outline", "seam_outline", "notches", "slit"):
        points = getattr(piece, name)
        if points:
            yield f"  {name}: {_line([points])}"


def _layout(layout: Any) -> Iterator[str]:
    yield f"cloth {layout.cloth}: {told(layout.width)} wide, {told(layout.used)} used"
    yield from (
        f"  {each.item.name} at {told(each.left)}, {told(each.top)}" for each in layout.laid
    )
    yield from _scene(layout_scene(layout))


def _supply(supply: Any) -> str:
    parts = (supply.amount, supply.size, supply.note)
    return f"supply {supply.name}: {'; '.join(told(each) for each in parts if each is not None)}"


def _chart(chart: Any) -> Iterator[str]:
    yield f"chart {chart.caption}: {' | '.join(chart.headings)}"
    yield from (f"  {' | '.join(map(told, row))}" for row in chart.rows)


def _step(name: str, step: Any) -> Iterator[str]:
    yield f"{name}: {told(step.text)}"
    if step.checkpoint is not None:
        yield f"  check: {told(step.checkpoint)}"


def _picture(picture: Any) -> Iterator[str]:
    yield f"picture {picture.name}: {told(picture.caption)}"
    yield from _scene(picture.scene)
    if picture.sheet is not None and picture.sheet is not picture.scene:
        yield f"  sheet of {picture.name}"
        yield from _scene(picture.sheet)


def _scene(scene: Any) -> Iterator[str]:
    yield f"  {told(scene.title)}: {told(scene.description)}"
    drawn: dict[str, list[tuple[tuple[float, float], ...]]] = {}
    for shape in scene.shapes:
        kind, points = _shape(shape)
        drawn.setdefault(kind, []).append(points)
    yield from (f"    {kind}: {_line(lines)}" for kind, lines in drawn.items())


def _shape(shape: Any) -> tuple[str, tuple[tuple[float, float], ...]]:
    """What a shape is, in words, and its points."""
    words, points = [type(shape).__name__.lower()], list[tuple[float, float]]()
    for each in fields(shape):
        part = getattr(shape, each.name)
        if _is_point(part):
            points.append(part)
        elif isinstance(part, tuple) and part and all(map(_is_point, part)):
            points.extend(part)
        else:
            words.append(told(part))
    return " ".join(filter(None, words)), tuple(points)


def _is_point(part: object) -> bool:
    return (
        isinstance(part, tuple)
        and len(part) == 2
        and all(isinstance(each, int | float) for each in part)
    )


def _line(lines: Iterable[Iterable[tuple[float, float]]]) -> str:
    """How many lines there are, how long they are, what they enclose, and where they lie.

    What they enclose has a sign, so that a line which is turned over shows.
    """
    each = [list(line) for line in lines]
    every = [point for line in each for point in line]
    if len(every) <= 2 and len(each) == 1:
        return " to ".join(f"{shown(x)},{shown(y)}" for x, y in every)
    pairs = [pair for line in each for pair in pairwise(line)]
    long = fsum(dist(start, end) for start, end in pairs)
    x, y = (fsum(point[way] for point in every) / len(every) for way in (0, 1))
    round_ = fsum((x1 - x) * (y2 - y) - (x2 - x) * (y1 - y) for (x1, y1), (x2, y2) in pairs) / 2
    (left, right), (top, bottom) = ((min(of), max(of)) for of in zip(*every, strict=True))
    return (
        f"{len(each)} of {len(every)} points, {shown(long)} long, {shown(round_)} round "
        f"{shown(x)},{shown(y)}, from {shown(left)},{shown(top)} to {shown(right)},{shown(bottom)}"
    )


def sheet(key: str, others: Iterable[Written]) -> Iterator[str]:
    """All that is kept of a technique: as it comes, then what differs when it is made otherwise."""
    working = work(key)
    whole = account(working)
    yield from whole
    yield from pages(working)
    for written in others:
        yield f"{OTHERWISE}{json.dumps(written, ensure_ascii=False)}"
        yield from (line for line in account(work(key, **written)) if line not in whole)


def pages(working: Working) -> Iterator[str]:
    """The pages of its sheets at true scale: a checksum of each, since they are drawn elsewhere."""
    for each in sheets(working, INCHES):
        for number, page in enumerate(each.pages(PAPER, INCHES), 1):
            yield f"page {number} of {each.title}: {crc32(page.encode()):08x}"


def other_forms(lines: Iterable[str]) -> list[Written]:
    """The inputs of the other forms that are kept."""
    heads = [line for line in lines if line.startswith(OTHERWISE)]
    return [json.loads(line.removeprefix(OTHERWISE)) for line in heads]


def variations(key: str) -> Iterator[Written]:
    """Other inputs that can be sewn: every one that can be, changed at once.

    First every choice is the last one, lengths and shares are larger and counts one more; then
    every choice is the first that is not usual, lengths are smaller, and what may be left out is
    given, nearly as it was worked out. Then come choices between the first and the last, with the
    rest as usual.
    """
    declared = declared_inputs(register.find(key))
    usual = work(key).values
    in_use = {each.name: usual[each.in_use].amount for each in declared if each.in_use in usual}
    yield accepted(key, {each.name: _larger(each) for each in declared})
    yield accepted(key, {each.name: _smaller(each, in_use.get(each.name)) for each in declared})
    for place in range(1, 1 + MIDDLE_CHOICES):
        between = {each.name: others(each)[place:-1][:1] for each in declared}
        if form := accepted(key, between):
            yield form


def accepted(key: str, wanted: Mapping[str, Sequence[str]]) -> Written:
    """Of the texts that each input may have the first that can be sewn with those before it."""
    written: dict[str, str] = {}
    for name, texts in wanted.items():
        sewn = (text for text in texts if can_be_sewn(key, {**written, name: text}))
        if (text := next(sewn, None)) is not None:
            written[name] = text
    return written


def others(asked: Input) -> list[str]:
    """The choices that are not usual."""
    return [each for each in getattr(asked.kind, "choices", ()) if each != asked.default]


def _larger(asked: Input) -> list[str]:
    if choices := others(asked):
        return choices[-1:]
    return _texts(asked.kind.read(asked.default), Fraction(5, 4), 1) if asked.default else []


def _smaller(asked: Input, in_use: Amount | None) -> list[str]:
    if choices := others(asked):
        return choices[:1]
    if asked.default:
        return _texts(asked.kind.read(asked.default), Fraction(4, 5), 2)
    return [] if in_use is None else _texts(in_use, Fraction(9, 10), 0)


def _texts(amount: Amount, factor: Fraction, more: int) -> list[str]:
    """An amount changed, in the words in which it may be written."""
    match amount:
        case Length():
            return [f"{round(amount.mm * factor / MILLIMETRES_PER_INCH * 16)}/16 in"]
        case int():
            return [str(amount + more)]
        case Fraction():
            return [f"{float(amount * factor):.4g}", f"{float(100 * amount * factor):.4g}%"]
        case _:
            return []


def can_be_sewn(key: str, written: Written) -> bool:
    """Whether a technique makes a sheet of these inputs."""
    try:
        account(work(key, **written))
    except (RefusalError, RefusalsError):
        return False
    return True
