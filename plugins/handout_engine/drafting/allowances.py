"""The line a piece is cut on: its seam line moved outward, each edge by its own allowance.

What is turned up along an edge, as a hem is, comes to lie on the piece itself. There the allowance
is the mirror image of what it will lie on: beside it the cut line turns at the fold.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from handout_engine.drafting.curves import Line
from handout_engine.geometry.loops import without_loops
from handout_engine.geometry.points import Point, snapped
from handout_engine.geometry.polygons import Polygon, sides

SHARPEST = 3.0
"""A corner of the cut line is cut off where it would reach further than so many allowances."""
STRAIGHT = 1e-9
"""Two lines run the same way where the sine of the angle between them is no more than this: it is
what floats leave of none, and they would meet out of all reach."""
EXACT = 1e-6
"""What coordinates in mm may be off, being floats: so near its corner the cut line turns where
neither side has an allowance."""

Segment = tuple[Point, Point]


@dataclass(frozen=True)
class TurnedUp:
    """An edge that is turned up: the numbers of its first side and of the one after its last.

    `mirrors` says at which of its two ends, the first and the last, the cut line beside it turns.
    """

    first: int
    after: int
    mirrors: tuple[bool, bool]


def outside(
    outline: Sequence[Point], allowances: Sequence[float], turned_up: Sequence[TurnedUp] = ()
) -> Polygon:
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
    corners: list[list[Point]] = []
    for number, (side, allowance) in enumerate(zip(moved, allowances, strict=True)):
        before = number - 1
        reach = SHARPEST * max(allowance, allowances[before])
        corners.append(_corner(moved[before], side, outline[number], reach))
    for edge in turned_up:
        _turn_up(corners, outline, moved, edge)
    points = [point for each in corners for point in each]
    apart = [
        point
        for point, last in zip(points, [points[-1], *points[:-1]], strict=True)
        if point != last
    ]
    return without_loops(apart)


def beside(line: Line, by: float) -> Line:
    """An open line moved to its left by so much, its ends square to it; to its right below 0."""
    moved = [_moved(start, end, by) for start, end in pairwise(line)]
    between = [
        point
        for number, (one, other) in enumerate(pairwise(moved), 1)
        for point in _corner(one, other, line[number], SHARPEST * abs(by))
    ]
    return (moved[0][0], *between, moved[-1][1])


def mirrored_in(side: Segment, axis: Segment) -> Segment | None:
    """A straight line folded over at another: from where it meets the fold; None if it does not.

    Both lines run on beyond their ends.
    """
    foot = _meeting(side, axis)
    if foot is None:
        return None
    (x1, y1), (x2, y2) = axis
    across, down = x2 - x1, y2 - y1
    squared = across * across + down * down
    # The end that is farther from the fold: the mirror line is drawn through its image.
    x, y = max(side, key=lambda point: abs((point[0] - x1) * down - (point[1] - y1) * across))
    off = ((x - x1) * down - (y - y1) * across) / squared
    return foot, (x - 2 * off * down, y + 2 * off * across)


def cut_off(line: Line, border: Segment, inside: Point) -> Line:
    """A line whose beginning is cut off at a straight border, or lengthened until it meets it.

    `inside` is a point on the side of the border that is kept.
    """
    kept = [point for point in line[1:] if _same_side(border, point, inside)]
    dropped = len(line) - 1 - len(kept)
    start = _meeting((line[dropped], line[dropped + 1]), border) if kept else None
    return (start, *kept) if start else line


def _turn_up(
    corners: list[list[Point]], outline: Sequence[Point], moved: Sequence[Segment], edge: TurnedUp
) -> None:
    """Put the raw edge of what is turned up in place of the corners there."""
    count = len(outline)
    first, last = outline[edge.first], outline[edge.after % count]
    axis = (first, last)
    raw = [corners[number % count] for number in range(edge.first + 1, edge.after)]
    line: Line = (
        moved[edge.first][0],
        *(point for each in raw for point in each),
        moved[edge.after - 1][1],
    )
    before = mirrored_in(moved[edge.first - 1], axis) if edge.mirrors[0] else None
    after = mirrored_in(moved[edge.after % count], axis) if edge.mirrors[1] else None
    if before is not None:
        line = cut_off(line, before, last)
        corners[edge.first] = [_snapped(before[0]), _snapped(line[0])]
    if after is not None:
        line = tuple(reversed(cut_off(tuple(reversed(line)), after, first)))
        corners[edge.after % count] = [_snapped(line[-1]), _snapped(after[0])]
    for each in raw:
        each[:] = [point for point in each if point in line]


def _signed_area(outline: Sequence[Point]) -> float:
    return sum((x2 - x1) * (y1 + y2) for (x1, y1), (x2, y2) in sides(outline)) * -1


def _moved(start: Point, end: Point, by: float) -> Segment:
    across, down = end[0] - start[0], end[1] - start[1]
    length = hypot(across, down)
    aside = (down / length * by, -across / length * by)
    return (start[0] + aside[0], start[1] + aside[1]), (end[0] + aside[0], end[1] + aside[1])


def _corner(before: Segment, after: Segment, corner: Point, reach: float) -> list[Point]:
    """Where two moved sides meet: one point, or two where they run in one line or too far out."""
    at = _meeting(before, after)
    if at is not None and hypot(at[0] - corner[0], at[1] - corner[1]) <= max(reach, EXACT):
        return [_snapped(at)]
    return [_snapped(before[1]), _snapped(after[0])]


def _meeting(one: Segment, other: Segment) -> Point | None:
    """Where two lines meet that run on beyond their ends; None where they run the same way."""
    (ax, ay), (bx, by) = one
    (cx, cy), (dx, dy) = other
    first, second = (bx - ax, by - ay), (dx - cx, dy - cy)
    cross = first[0] * second[1] - first[1] * second[0]
    if abs(cross) <= STRAIGHT * hypot(*first) * hypot(*second):
        return None
    share = ((cx - ax) * second[1] - (cy - ay) * second[0]) / cross
    return ax + share * first[0], ay + share * first[1]


def _same_side(border: Segment, one: Point, other: Point) -> bool:
    (x1, y1), (x2, y2) = border
    across, down = x2 - x1, y2 - y1

    def turn(point: Point) -> float:
        return across * (point[1] - y1) - down * (point[0] - x1)

    return turn(one) * turn(other) > 0


def _snapped(point: Point) -> Point:
    return snapped(point[0]), snapped(point[1])
