"""Closed outlines as the row of their corners: area, length, inside or outside, crossings."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise
from math import fsum, sqrt

from handout_engine.geometry.points import Point

Polygon = tuple[Point, ...]
Exact = tuple[Fraction, Fraction]


def sides(polygon: Sequence[Point]) -> list[tuple[Point, Point]]:
    """Every side from corner to corner, the last one back to the first."""
    return list(pairwise([*polygon, polygon[0]]))


def area(polygon: Sequence[Point]) -> float:
    """The area inside, whichever way round the corners stand, in square mm."""
    origin_x, origin_y = polygon[0]
    doubled = fsum(
        (x1 - origin_x) * (y2 - origin_y) - (x2 - origin_x) * (y1 - origin_y)
        for (x1, y1), (x2, y2) in sides(polygon)
    )
    return abs(doubled) / 2


def perimeter(polygon: Sequence[Point]) -> float:
    """The length once round, in mm."""
    return fsum(_length(start, end) for start, end in sides(polygon))


def extents(polygon: Sequence[Point]) -> tuple[Point, Point]:
    """The least and the greatest of both coordinates: two opposite corners of its box."""
    xs, ys = zip(*polygon, strict=True)
    return (min(xs), min(ys)), (max(xs), max(ys))


def contains(polygon: Sequence[Point], point: Point) -> bool:
    """Whether a point lies inside; on the outline itself the answer may be either."""
    x, y = point
    inside = False
    for (x1, y1), (x2, y2) in sides(polygon):
        if (y1 > y) != (y2 > y) and x < x1 + (y - y1) / (y2 - y1) * (x2 - x1):
            inside = not inside
    return inside


def distance_to_outline(polygon: Sequence[Point], point: Point) -> float:
    """How far a point is from the nearest place on the outline, in mm."""
    return min(_distance(point, start, end) for start, end in sides(polygon))


def _distance(point: Point, start: Point, end: Point) -> float:
    (x, y), (x1, y1), (x2, y2) = point, start, end
    along_x, along_y = x2 - x1, y2 - y1
    squared = along_x * along_x + along_y * along_y
    share = ((x - x1) * along_x + (y - y1) * along_y) / squared if squared else 0.0
    share = max(0.0, min(1.0, share))
    return _length(point, (x1 + share * along_x, y1 + share * along_y))


def _length(start: Point, end: Point) -> float:
    across, down = end[0] - start[0], end[1] - start[1]
    return sqrt(across * across + down * down)


def sides_that_meet(corners: Sequence[Exact]) -> tuple[int, int] | None:
    """The first two sides that cross or touch, counted from 1; None for a proper outline.

    A side without length is named twice.
    Neighbours share a corner and may touch nowhere else. The corners are exact, so the answer is.
    """
    every = list(pairwise([*corners, corners[0]]))
    same = next((number for number, (start, end) in enumerate(every, 1) if start == end), None)
    if same is not None:
        return same, same
    for first in range(len(every)):
        for second in range(first + 1, len(every)):
            if _meet(every, first, second):
                return first + 1, second + 1
    return None


def _meet(every: Sequence[tuple[Exact, Exact]], first: int, second: int) -> bool:
    (start, end), (other_start, other_end) = every[first], every[second]
    if second == first + 1:
        return _doubles_back(start, end, other_end)
    if first == 0 and second == len(every) - 1:
        return _doubles_back(other_start, start, end)
    return _cross(start, end, other_start, other_end)


def _doubles_back(before: Exact, corner: Exact, after: Exact) -> bool:
    """Whether the outline turns at a corner and runs back over itself."""
    if _turn(before, corner, after):
        return False
    return _between(before, corner, after) or _between(after, corner, before)


def _cross(start: Exact, end: Exact, other_start: Exact, other_end: Exact) -> bool:
    turns = (_turn(start, end, other_start), _turn(start, end, other_end))
    others = (_turn(other_start, other_end, start), _turn(other_start, other_end, end))
    if turns[0] * turns[1] < 0 and others[0] * others[1] < 0:
        return True
    touching = (
        (turns[0], start, end, other_start),
        (turns[1], start, end, other_end),
        (others[0], other_start, other_end, start),
        (others[1], other_start, other_end, end),
    )
    return any(turn == 0 and _between(one, two, point) for turn, one, two, point in touching)


def _turn(start: Exact, end: Exact, point: Exact) -> int:
    """1 when the point lies to one side of the line, -1 to the other, 0 on it."""
    doubled = (end[0] - start[0]) * (point[1] - start[1]) - (end[1] - start[1]) * (
        point[0] - start[0]
    )
    return (doubled > 0) - (doubled < 0)


def _between(start: Exact, end: Exact, point: Exact) -> bool:
    """Whether a point on the line of a side lies on the side itself."""
    return all(
        min(one, two) <= at <= max(one, two) for one, two, at in zip(start, end, point, strict=True)
    )
