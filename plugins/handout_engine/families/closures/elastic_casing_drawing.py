"""Casings drawn: the edge drawn in and spread, the casing cut through, and its lines to mark."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tag,
    Tone,
    rectangle,
)
from handout_engine.drawing.sections import layer

CREASES = 14
STEPS = 10


@dataclass(frozen=True)
class Casing:
    """A casing by its named lengths; `heading` is what stands above it, None for none.

    `turned` is false for a strip sewn on.
    """

    at_rest: Value
    spread: Value
    casing: Value
    elastic: Value
    turn: Value
    heading: Value | None
    turned: bool

    @property
    def top(self) -> float:
        """How far the casing lies below the upper edge."""
        if not self.turned:
            return 0.8 * self.casing.mm
        return 0.0 if self.heading is None else self.heading.mm


def gathered_edge(casing: Casing) -> Scene:
    """The edge laid flat, drawn in by its elastic, the garment spreading below."""
    return Scene(
        sentence("The edge drawn in"),
        sentence(
            "Laid flat it is {rest} at rest and {spread} spread.",
            rest=casing.at_rest,
            spread=casing.spread,
        ),
        tuple(_gathered(casing)),
        tallest=230,
    )


def _gathered(casing: Casing) -> Iterable[Shape]:
    wide = casing.spread.mm
    narrow = casing.at_rest.mm
    deep = min(max(casing.casing.mm, 0.03 * wide), 0.2 * wide)
    scale = deep / casing.casing.mm
    top, foot = min(casing.top * scale, 0.25 * wide), 0.55 * wide
    foot += top
    low = top + deep
    outline = (
        (-narrow / 2, 0.0),
        (narrow / 2, 0.0),
        (narrow / 2, low),
        (wide / 2, foot),
        (-wide / 2, foot),
        (-narrow / 2, low),
    )
    yield Area(outline)
    for line in sorted({top, low} - {0.0}):
        yield Stroke(((-narrow / 2, line), (narrow / 2, line)), Line.STITCH)
    for number in range(1, CREASES):
        share = number / CREASES - 0.5
        end = 0.25 + 0.35 * (number % 3) / 2
        x, y = share * narrow, low + 0.02 * wide
        far = x + (share * wide - x) * end
        yield Stroke(((x, y), (far, y + (foot - y) * end)), Line.THIN)
    yield Dimension((-narrow / 2, 0), (narrow / 2, 0), casing.at_rest, Side.ABOVE)
    yield Dimension((-wide / 2, foot), (wide / 2, foot), casing.spread, Side.BELOW)


def casing_section(casing: Casing) -> Scene:
    """The casing cut through, its upper edge at the top, the elastic in it."""
    return Scene(
        sentence("The casing cut through"),
        sentence(
            "A casing {casing} wide for elastic of {elastic}, {turn} turned under.",
            casing=casing.casing,
            elastic=casing.elastic,
            turn=casing.turn,
        ),
        tuple(_section(casing)),
        tallest=240,
    )


def _section(casing: Casing) -> Iterable[Shape]:
    wide, top, turn = casing.casing.mm, casing.top, casing.turn.mm
    room = 0.32 * wide
    thick = 0.08 * room
    low = top + wide
    between = 0.74 * room
    reach = low + 0.9 * wide
    inner: list[Point] = [(room, low), (between, low), (between, max(low - turn, top))]
    if casing.turned:
        path = [(0.0, reach), *_over(room), *inner]
        yield layer(path, thick, Tone.RIGHT)
    else:
        yield layer(((0.0, 0.0), (0.0, reach)), thick, Tone.RIGHT)
        above = 0.6 * room if 2 * turn > wide else between  # beside the lower one where they meet
        start = [(above, min(top + turn, low)), (above, top), (room, top)]
        yield layer([*start, *inner], thick, Tone.SECOND)
    middle = (top + low) / 2
    half = casing.elastic.mm / 2
    yield Area(rectangle(0.2 * room, middle - half, 0.28 * room, 2 * half), Tone.SHADE)
    rows = [low - 0.03 * wide] + ([top + 0.03 * wide] if top else [])
    for row in rows:
        yield Stroke(((-0.3 * room, row), (1.4 * room, row)), Line.STITCH)
    yield Dimension((0, top), (0, low), casing.casing, Side.LEFT)
    yield Dimension((room, middle - half), (room, middle + half), casing.elastic, Side.RIGHT)
    if casing.heading is not None:
        yield Dimension((0, 0), (0, top), casing.heading, Side.LEFT)
    yield Dimension((room, max(low - turn, top)), (room, low), casing.turn, Side.RIGHT)


def _over(room: float) -> list[Point]:
    """Over the upper fold, from the right side of the garment to its inside."""
    radius = room / 2
    return [
        (radius - radius * cos(pi * step / STEPS), radius * (1 - sin(pi * step / STEPS)))
        for step in range(STEPS + 1)
    ]


def edge_lines(lines: Sequence[Value]) -> Scene:
    """A raw edge with the folds to press below it: the turn, and the finished edge."""
    turn, finished = lines
    return Scene(
        sentence("The edge before it is turned"),
        sentence(
            "From the raw edge {turn} are turned under; the finished edge lies at {finished}.",
            turn=turn,
            finished=finished,
        ),
        tuple(_edge_lines(lines)),
        tallest=170,
    )


def _edge_lines(lines: Sequence[Value]) -> Iterable[Shape]:
    deep = 1.9 * lines[-1].mm
    long = 2.2 * deep
    yield Area(rectangle(0, 0, long, deep), Tone.WRONG, outline=None)
    yield Stroke(((0, deep), (0, 0), (long, 0), (long, deep)), Line.CUT)
    for distance in lines:
        yield Stroke(((0, distance.mm), (long, distance.mm)), Line.FOLD)
        yield Tag((long, distance.mm), distance, Side.RIGHT, (long, 0.0))
    yield Note((0, 0), sentence("wrong side"), anchor="start", above=True)
