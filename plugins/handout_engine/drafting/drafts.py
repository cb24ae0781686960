"""A drafted piece: its edges in order round it, each with its name and its allowance.

The edges together are the line the piece is sewn on; the line it is cut on lies outside it by each
edge's allowance. All is in mm, x to the right and y downward, the lengthwise grain upright.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import hypot

from handout_engine.drafting.curves import Line, run
from handout_engine.geometry.loops import without_loops
from handout_engine.geometry.points import Point, snapped
from handout_engine.geometry.polygons import Polygon, sides

FOLD = "fold"
SHARPEST = 3.0
"""A corner of the cut line is cut off where it would reach further than so many allowances."""
STRAIGHT = 1e-9


@dataclass(frozen=True)
class Edge:
    """One edge of a piece, from corner to corner; `allowance` is what is cut beyond it, in mm."""

    name: str
    points: Line
    allowance: float = 0.0

    @property
    def length(self) -> float:
        """How long it is on the line that is sewn."""
        return run(self.points)


@dataclass(frozen=True)
class Draft:
    """A piece as it is drafted; where it has an edge called fold, it is half of what is cut.

    Each edge begins where the one before it ends. `notches` lie on edges that must meet others;
    `remark` is a sentence that is said beneath its drawing.
    """

    name: str
    edges: tuple[Edge, ...]
    notches: tuple[Point, ...] = ()
    remark: str = ""

    @property
    def on_fold(self) -> bool:
        """Whether it is cut on the fold."""
        return any(edge.name == FOLD for edge in self.edges)

    def edge(self, name: str) -> Edge:
        """The edge of that name; raises KeyError when there is none."""
        for edge in self.edges:
            if edge.name == name:
                return edge
        raise KeyError(name)

    @cached_property
    def seam_outline(self) -> Polygon:
        """The closed line it is sewn on."""
        return tuple(point for edge in self.edges for point in edge.points[:-1])

    @cached_property
    def cut_outline(self) -> Polygon:
        """The closed line it is cut on."""
        allowances = [edge.allowance for edge in self.edges for _ in pairwise(edge.points)]
        return outside(self.seam_outline, allowances)


def outside(outline: Sequence[Point], allowances: Sequence[float]) -> Polygon:
    """An outline moved outward, each of its sides by its own allowance.

    The side with number n runs from point n to the next. Neighbouring sides are lengthened until
    they meet; a sharp corner is cut off (`SHARPEST`). Where a hollow curve is too tight to be moved
    so far, the cut line turns in a corner.
    """
    around = sides(outline)
    turn = 1.0 if _signed_area(outline) > 0 else -1.0
    moved = [
        _moved(start, end, turn * allowance)
        for (start, end), allowance in zip(around, allowances, strict=True)
    ]
    corners: list[Point] = []
    for number, (side, allowance) in enumerate(zip(moved, allowances, strict=True)):
        before = number - 1
        reach = SHARPEST * max(allowance, allowances[before])
        corners.extend(_corner(moved[before], side, outline[number], reach))
    apart = [
        point for point, last in zip(corners, [corners[-1], *corners[:-1]], strict=True)
        if point != last
    ]  # fmt: skip
    return without_loops(apart)


def _signed_area(outline: Sequence[Point]) -> float:
    return sum((x2 - x1) * (y1 + y2) for (x1, y1), (x2, y2) in sides(outline)) * -1


def _moved(start: Point, end: Point, by: float) -> tuple[Point, Point]:
    across, down = end[0] - start[0], end[1] - start[1]
    length = hypot(across, down)
    aside = (down / length * by, -across / length * by)
    return (start[0] + aside[0], start[1] + aside[1]), (end[0] + aside[0], end[1] + aside[1])


def _corner(
    before: tuple[Point, Point], after: tuple[Point, Point], corner: Point, reach: float
) -> list[Point]:
    """Where two moved sides meet: one point, or two where they run in one line or too far out."""
    (ax, ay), (bx, by) = before
    (cx, cy), (dx, dy) = after
    first, second = (bx - ax, by - ay), (dx - cx, dy - cy)
    cross = first[0] * second[1] - first[1] * second[0]
    if abs(cross) > STRAIGHT * hypot(*first) * hypot(*second):
        share = ((cx - ax) * second[1] - (cy - ay) * second[0]) / cross
        at = (ax + share * first[0], ay + share * first[1])
        if hypot(at[0] - corner[0], at[1] - corner[1]) <= max(reach, 1e-6):
            return [(snapped(at[0]), snapped(at[1]))]
    return [(snapped(bx), snapped(by)), (snapped(cx), snapped(cy))]
