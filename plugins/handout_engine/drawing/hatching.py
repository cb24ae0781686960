"""Hatching as clipped lines: a pattern fill would print as a coarse picture."""

from __future__ import annotations

from itertools import pairwise
from math import ceil

from handout_engine.drawing.scene import Point


def hatch(points: tuple[Point, ...], spacing: float) -> list[tuple[Point, Point]]:
    """Lines rising at 45 degrees inside a polygon (even-odd rule), `spacing` apart along x.

    A line x + y = c crosses an edge where the edge's own x + y passes c; crossings in order of
    x pair up into the stretches inside.
    """
    sums = [x + y for x, y in points]
    lines: list[tuple[Point, Point]] = []
    for number in range(ceil(min(sums) / spacing), ceil(max(sums) / spacing)):
        crossings = _crossings(points, number * spacing)
        lines.extend(zip(crossings[::2], crossings[1::2], strict=False))
    return lines


def _crossings(points: tuple[Point, ...], wanted: float) -> list[Point]:
    found: list[Point] = []
    for (x1, y1), (x2, y2) in pairwise((*points, points[0])):
        before, after = x1 + y1 - wanted, x2 + y2 - wanted
        if (before < 0) != (after < 0):
            share = before / (before - after)
            found.append((x1 + share * (x2 - x1), y1 + share * (y2 - y1)))
    return sorted(found)
