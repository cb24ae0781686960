"""Takes the loops out of an outline that was moved outward.

Where a hollow curve bends tighter than it is moved, its moved sides run over one another in a
small loop that belongs to no line that could be cut.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import islice

from handout_engine.geometry.points import Point, snapped
from handout_engine.geometry.polygons import Polygon, area, sides

PARALLEL = 1e-12


def without_loops(outline: Sequence[Point]) -> Polygon:
    """The outline without its loops: at each crossing the smaller part is left out."""
    points = list(outline)
    if not _crosses_itself(points):
        return tuple(points)
    first = 0
    while first < len(points) - 2:
        found = _next_crossing(points, first)
        if found is None:
            first += 1
            continue
        second, at = found
        loop = [at, *points[first + 1 : second + 1]]
        rest = [*points[: first + 1], at, *points[second + 1 :]]
        if area(rest) >= area(loop):
            points = rest
        else:
            points, first = loop, 0
    return tuple(points)


def _crosses_itself(points: Sequence[Point]) -> bool:
    """Whether any two sides cross that are no neighbours.

    The sides are taken from left to right, so that each is held only against those that begin
    before it ends.
    """
    around = sides(points)
    from_left = sorted(
        (min(start[0], end[0]), max(start[0], end[0]), number)
        for number, (start, end) in enumerate(around)
    )
    for place, (_, right, number) in enumerate(from_left):
        for left, _, other in islice(from_left, place + 1, None):
            if left > right:
                break
            first, second = min(number, other), max(number, other)
            if 1 < second - first < len(points) - 1 and _crossing(*around[first], *around[second]):
                return True
    return False


def _next_crossing(points: Sequence[Point], first: int) -> tuple[int, Point] | None:
    """The nearest later side that crosses a side, and where; neighbours only share a corner."""
    start, end = points[first], points[first + 1]
    (left, right), (top, bottom) = sorted((start[0], end[0])), sorted((start[1], end[1]))
    last = len(points) - (2 if first == 0 else 1)
    for second in range(first + 2, last + 1):
        other_start, other_end = points[second], points[(second + 1) % len(points)]
        (cx, cy), (dx, dy) = other_start, other_end
        # Most sides lie far apart: they are passed over before anything is worked out.
        if (cx < left and dx < left) or (cx > right and dx > right):
            continue
        if (cy < top and dy < top) or (cy > bottom and dy > bottom):
            continue
        at = _crossing(start, end, other_start, other_end)
        if at is not None:
            return second, at
    return None


def _crossing(start: Point, end: Point, other_start: Point, other_end: Point) -> Point | None:
    """The point in which two straight sides cross; None where they do not."""
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = start, end, other_start, other_end
    across, down, other_across, other_down = bx - ax, by - ay, dx - cx, dy - cy
    turn = across * other_down - down * other_across
    if abs(turn) < PARALLEL:
        return None
    share = ((cx - ax) * other_down - (cy - ay) * other_across) / turn
    other_share = ((cx - ax) * down - (cy - ay) * across) / turn
    if not (0 <= share <= 1 and 0 <= other_share <= 1):
        return None
    return snapped(ax + share * across), snapped(ay + share * down)
