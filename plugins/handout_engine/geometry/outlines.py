"""Outlines with curved edges, their arcs flattened into short straight sides."""

from __future__ import annotations

from math import acos, atan, ceil, cos, sin

from handout_engine.geometry.points import FINE_PLACES, Point, snapped
from handout_engine.geometry.polygons import Polygon

TOLERANCE = 0.01
"""Greatest distance in mm of a flattened arc from the true one: finer than any thread."""
MOST_STEPS = 80


def sagging_arc(left: Point, width: float, sag: float) -> list[Point]:
    """An arc from `left` to a point `width` to its right, hanging down by `sag` at its middle.

    At most a half circle: `sag` from 0 to half of `width`. Both halves are mirrored exactly.
    """
    right = (snapped(left[0] + width), left[1])
    if sag == 0:
        return [left, right]
    radius = (width * width / 4 + sag * sag) / (2 * sag)
    half = 2 * atan(2 * sag / width)
    steps = min(MOST_STEPS, ceil(half / (2 * acos(max(0.0, 1 - TOLERANCE / radius)))))
    middle = left[0] + width / 2
    first = [
        _on_arc(middle, left[1] + sag, radius, half * step / steps)
        for step in range(steps - 1, 0, -1)
    ]
    second = [(snapped(2 * middle - x), y) for x, y in reversed(first)]
    return [left, *first, (snapped(middle), snapped(left[1] + sag)), *second, right]


def _on_arc(middle: float, lowest: float, radius: float, angle: float) -> Point:
    across = radius * round(sin(angle), FINE_PLACES)
    up = radius * (1 - round(cos(angle), FINE_PLACES))
    return snapped(middle - across), snapped(lowest - up)


def rectangle(width: float, depth: float) -> Polygon:
    """An upright rectangle from the origin."""
    return ((0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth))


def yoke_inset(width: float, lower_width: float, depth: float, neck: Point) -> Polygon:
    """An inset below a neckline: its upper edge hollowed by an arc, its sides straight.

    `neck` is the width and the depth of the hollow at the middle of the upper edge; the lower
    edge is level and centred.
    """
    widest = max(width, lower_width)
    left, lower_left = (widest - width) / 2, (widest - lower_width) / 2
    hollow = sagging_arc((snapped((widest - neck[0]) / 2), 0.0), neck[0], neck[1])
    corners = [
        (snapped(left), 0.0),
        *hollow,
        (snapped(left + width), 0.0),
        (snapped(lower_left + lower_width), depth),
        (snapped(lower_left), depth),
    ]
    return tuple(point for number, point in enumerate(corners) if point != corners[number - 1])


def pocket_top(width: float, side_depth: float, depth: float) -> Polygon:
    """The top of a pocket: a level upper edge, and a lower one hanging lowest at its middle."""
    lower = sagging_arc((0.0, side_depth), width, snapped(depth - side_depth))
    return ((0.0, 0.0), (width, 0.0), *reversed(lower))
