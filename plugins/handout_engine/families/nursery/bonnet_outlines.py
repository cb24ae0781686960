"""The backs of bonnets: a circle, and a horseshoe whose lower edge is flat."""

from __future__ import annotations

from handout_engine.geometry.outlines import sagging_arc
from handout_engine.geometry.points import snapped
from handout_engine.geometry.polygons import Polygon


def circle(diameter: float) -> Polygon:
    """A circle in its box from the origin."""
    lower = sagging_arc((0.0, diameter / 2), diameter, diameter / 2)
    upper = [(snapped(diameter - x), snapped(diameter - y)) for x, y in lower]
    return (*lower[:-1], *upper[:-1])


def horseshoe(width: float, height: float) -> Polygon:
    """A half circle above two straight sides and a flat edge, in its box from the origin.

    `height` is at least half of `width`. The first and the last corner are those of the flat edge.
    """
    lower = sagging_arc((0.0, 0.0), width, width / 2)
    upper = [(x, snapped(width / 2 - y)) for x, y in lower]
    return ((0.0, snapped(height)), *upper, (snapped(width), snapped(height)))
