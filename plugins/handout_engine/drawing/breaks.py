"""Long edges drawn in part, with break lines after ISO 128 where the rest is left out."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from math import sin

from handout_engine.drawing.scene import Line, Point, Shape, Stroke
from handout_engine.values import Value


def drawn_parts(edge: Value, span: float) -> tuple[tuple[float, float], ...]:
    """From where to where an edge is drawn: in two parts if `span` leaves some of it out."""
    return ((0.0, span * 0.64), (span * 0.7, span)) if span < edge.mm else ((0.0, span),)


def shortened(edge: Value, longest: float) -> str:
    """What a caption adds when not all of the edge is drawn."""
    return ", shortened at the break lines" if edge.mm > longest else ""


def broken_sides(parts: Sequence[tuple[float, float]], top: float, low: float) -> Iterable[Shape]:
    """The sides of the drawn parts: cut edges outside, a freehand break between them."""
    yield Stroke(((parts[0][0], top), (parts[0][0], low)), Line.CUT)
    yield Stroke(((parts[-1][1], top), (parts[-1][1], low)), Line.CUT)
    for before, after in pairwise(parts):
        for x in (before[1], after[0]):
            yield Stroke(freehand((x, top), (x, low)), Line.THIN)


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
