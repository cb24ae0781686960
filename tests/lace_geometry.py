"""Curves and corners of lace by measuring points, with no formula of the engine."""

from __future__ import annotations

from itertools import pairwise
from math import atan2, cos, hypot, pi, sin

Point = tuple[float, float]


def polyline(points: list[Point]) -> float:
    """The length of a line through points."""
    return sum(hypot(x2 - x1, y2 - y1) for (x1, y1), (x2, y2) in pairwise(points))


def beside(points: list[Point], away: float) -> list[Point]:
    """A line that runs `away` to the left of a smooth line, by the direction at each point."""
    made = []
    for before, here, after in zip([points[0], *points[:-1]], points, [*points[1:], points[-1]],
                                   strict=True):  # fmt: skip
        x, y = after[0] - before[0], after[1] - before[1]
        length = hypot(x, y)
        made.append((here[0] - y / length * away, here[1] + x / length * away))
    return made


def through(left: Point, top: Point, right: Point, steps: int = 40_000) -> list[Point]:
    """The arc of a circle from `left` over `top` to `right`; its centre is found by halving.

    The centre of a circle through three points, two of them level, stands below the middle; it is
    moved up and down until it is as far from the top as from the left.
    """
    middle = (left[0] + right[0]) / 2
    low, high = -1e5, top[1]
    for _ in range(200):
        centre = (low + high) / 2
        to_left, to_top = hypot(middle - left[0], centre - left[1]), top[1] - centre
        low, high = (low, centre) if to_left > to_top else (centre, high)
    centre = (low + high) / 2
    radius = top[1] - centre
    start = atan2(left[1] - centre, left[0] - middle)
    start = start + 2 * pi if start < -pi / 2 else start
    turn = 2 * (start - pi / 2)
    return [
        (middle + radius * cos(start - turn * n / steps),
         centre + radius * sin(start - turn * n / steps))
        for n in range(steps + 1)
    ]  # fmt: skip


def loop(width: float, height: float, steps: int = 40_000) -> list[Point]:
    """A line from a foot at (0, 0) that touches a circle, goes round it, and comes back."""
    radius = width / 2
    centre = height - radius
    start = _touch(radius, centre)
    sweep = 2 * (start - pi / 2)
    around = [
        (radius * cos(start - sweep * n / steps), centre + radius * sin(start - sweep * n / steps))
        for n in range(steps + 1)
    ]
    arm = [(around[0][0] * n / 2000, around[0][1] * n / 2000) for n in range(2000)]
    back = [(-x, y) for x, y in reversed(arm)]
    return [*arm, *around, *back]


def _touch(radius: float, centre: float) -> float:
    """The direction, on the left below the centre, in which a line from the foot touches."""
    low, high = pi, 3 * pi / 2
    for _ in range(100):
        turn = (low + high) / 2
        x, y = radius * cos(turn), centre + radius * sin(turn)
        inside = x * cos(turn) + y * sin(turn) < 0
        low, high = (low, turn) if inside else (turn, high)
    return (low + high) / 2
