"""Long edges drawn in part, with break lines after ISO 128 where the rest is left out."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise
from math import sin

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Shape,
    Shown,
    Side,
    Stroke,
    Tone,
    rectangle,
)

EXACT = 1e-6
"""What coordinates in mm may be off, being floats."""

ZIGZAG = 0.054
"""How far a zigzag goes aside, for each length of its break line."""


def drawn_parts(edge: Value, span: float) -> tuple[tuple[float, float], ...]:
    """From where to where an edge is drawn: in two parts if `span` leaves some of it out."""
    return ((0.0, span * 0.64), (span * 0.7, span)) if span < edge.mm else ((0.0, span),)


def measured(start: Point, end: Point, amount: Value, side: Side) -> Dimension:
    """A dimension of what may be drawn in part: declared broken where it is drawn shorter.

    The break lines between its ends are drawn by whoever leaves the part out.
    """
    whole = Dimension(start, end, amount, side)
    return replace(whole, shown=Shown.BROKEN) if whole.span < amount.mm - EXACT else whole


def enlarged(start: Point, end: Point, amount: Value, side: Side) -> Dimension:
    """A dimension of what may be drawn larger to be seen: declared so where it is."""
    whole = Dimension(start, end, amount, side)
    return replace(whole, shown=Shown.ENLARGED) if whole.span > amount.mm + EXACT else whole


def left_out(gap: tuple[Point, Point], down: bool = False) -> Iterable[Shape]:
    """A gap between two opposite corners over what is drawn so far, a break line at both its sides.

    The break lines run across the drawing, or `down` it.
    """
    (left, top), (right, low) = gap
    yield Area(rectangle(left, top, right - left, low - top), Tone.GROUND, outline=None)
    for share in (0.0, 1.0):
        x, y = left + (right - left) * share, top + (low - top) * share
        ends = ((x, top), (x, low)) if down else ((left, y), (right, y))
        yield Stroke(freehand(*ends), Line.BREAK)


def broken_sides(parts: Sequence[tuple[float, float]], top: float, low: float) -> Iterable[Shape]:
    """The sides of the drawn parts: cut edges outside, a freehand break between them."""
    yield Stroke(((parts[0][0], top), (parts[0][0], low)), Line.CUT)
    yield Stroke(((parts[-1][1], top), (parts[-1][1], low)), Line.CUT)
    for before, after in pairwise(parts):
        for x in (before[1], after[0]):
            yield Stroke(freehand((x, top), (x, low)), Line.BREAK)


def zigzag(start: Point, end: Point) -> tuple[Point, ...]:
    """A break line after ISO 128, ruled, with a zigzag at its middle."""
    (x1, y1), (x2, y2) = start, end
    places = ((0.0, 0.0), (0.446, 0.0), (0.473, 1.0), (0.527, -1.0), (0.554, 0.0), (1.0, 0.0))
    return tuple(
        (
            x1 + (x2 - x1) * along - (y2 - y1) * ZIGZAG * aside,
            y1 + (y2 - y1) * along + (x2 - x1) * ZIGZAG * aside,
        )
        for along, aside in places
    )


def freehand(start: Point, end: Point) -> tuple[Point, ...]:
    """A break line after ISO 128, drawn as if by hand."""
    (x1, y1), (x2, y2) = start, end
    steps = 24
    sway = 0.012
    return tuple(
        (
            x1 + (x2 - x1) * step / steps + (y2 - y1) * sway * sin(step * 1.1),
            y1 + (y2 - y1) * step / steps + (x2 - x1) * sway * sin(step * 0.9) * 0.6,
        )
        for step in range(steps + 1)
    )
