"""Bias cloth cut, sewn and walked along, with no formula of the engine.

Everything is plane geometry in mm as floats: where a piece of cloth lies after it is moved, where
a line meets an edge, how far one walks along a strip.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot, sqrt

Point = tuple[float, float]


@dataclass(frozen=True)
class Walked:
    """A continuous strip walked from its one free end to the other."""

    rows: int
    length: float


@dataclass(frozen=True)
class Panel:
    """The rectangle after its triangle is sewn to the other end: a parallelogram.

    B keeps its place: x from 0 to `long`, y from 0 to `short`, cut off along x + y = short. The
    triangle A comes from that corner and moves right. Both lose `join` at the seam.
    """

    short: float
    long: float
    join: float
    slide: float
    """How far A is moved along the seam, from lying level with B."""

    def moved(self, point: Point) -> Point:
        """A point of A after A's straight edge is sewn to B's."""
        return point[0] + self.long - 2 * self.join, point[1] + self.slide

    @property
    def first_line(self) -> float:
        """The bias edge of B, as x + y."""
        return self.short

    @property
    def last_line(self) -> float:
        """The bias edge of the moved A, as x + y; from two points of it, which must agree."""
        (x1, y1), (x2, y2) = self.moved((self.short, 0.0)), self.moved((0.0, self.short))
        assert abs((x1 + y1) - (x2 + y2)) < 1e-9
        return x1 + y1

    @property
    def top(self) -> float:
        """The grain edge that both pieces reach: the one that stands out is trimmed."""
        return max(0.0, self.moved((0.0, 0.0))[1])

    @property
    def bottom(self) -> float:
        """The other grain edge: B's own, as far as the seam; A's tip ends there or above it."""
        seam = self.long - self.join
        tip_at_seam = self.last_line - seam  # where A's bias edge meets the stitching
        return min(self.short, tip_at_seam)


def walk_continuous(short: float, long: float, width: float, join: float) -> Walked:
    """Sew the panel, rule its rows, sew the tube one row out of step, and walk the strip."""
    panel = Panel(short, long, join, slide=join)
    top, bottom = panel.top, panel.bottom
    step = hypot(width, width)
    lines = [panel.first_line]
    while lines[-1] + step <= panel.last_line:
        lines.append(lines[-1] + step)
    if len(lines) < 2:
        return Walked(0, 0.0)
    upper_seam, lower_seam = top + join, bottom - join
    # Sewing: the first line at the upper stitching meets the second at the lower one.
    shift = (lines[1] - lower_seam) - (lines[0] - upper_seam)
    x = lines[0] + step / 2 - bottom
    here: Point = (x, bottom)
    walked, rows = 0.0, 1
    while True:
        line = here[0] + here[1]
        at_seam = (line - upper_seam, upper_seam)
        opposite = (at_seam[0] + shift, lower_seam)
        if sum(opposite) > lines[-1]:  # nothing ruled lies there: this row's upper end is free
            end = (line - top, top)
            return Walked(rows, walked + _apart(here, end))
        walked += _apart(here, at_seam)
        here, rows = opposite, rows + 1


def _apart(one: Point, other: Point) -> float:
    return hypot(one[0] - other[0], one[1] - other[1])


def longest_with_ends_on_grain(begins: float, ends: float, across: float, along: float) -> float:
    """The longest part of a band whose ends run along threads of the cloth, on its centre line.

    The band lies between x + y = begins and x + y = ends in a rectangle from (0, 0). At each end
    the cut may run along either thread; it must lie inside the cloth on both edges of the band.
    """
    middle = (begins + ends) / 2
    edges = (begins, ends)
    left = [max(0.0, edge - along) for edge in edges]  # the lowest x on each edge of the band
    right = [min(across, edge) for edge in edges]
    upright_left, upright_right = max(left), min(right)
    level_left = middle - min(edge - x for edge, x in zip(edges, left, strict=True))
    level_right = middle - max(edge - x for edge, x in zip(edges, right, strict=True))
    length = max(upright_right, level_right) - min(upright_left, level_left)
    return max(0.0, length * sqrt(2))


def mitred_round(sides: list[float], seam: float, binding: float) -> float:
    """How much strip goes round a closed outline of right angles, every corner mitred.

    On each side the strip is sewn from `seam` beyond one corner to `seam` before the next. At the
    corner its stitching line turns outward, goes to the fold, which lies where the binding will
    end, and comes back to the same point.
    """
    used = 0.0
    for side in sides:
        start, stop = (seam, 0.0), (side - seam, 0.0)
        used += _apart(start, stop)
        corner = stop
        fold = (corner[0], corner[1] - binding)  # outward, square to the side just sewn
        used += _apart(corner, fold) + _apart(fold, corner)
    return used
