"""Flared sides, their notches, and the hems that meet them square."""

from __future__ import annotations

from math import hypot

from handout_engine.drafting.curves import Line, point_along, round_corner, run
from handout_engine.geometry.points import Point, snapped


def flared_side(top: Point, low: float, flare: float) -> tuple[Line, Line]:
    """A side from `top`, and the hem from its lower end to the centre (x = 0) at the level `low`.

    The side is as long as its drop would be without a flare, so that the finished garment hangs
    level; the hem runs level into the centre and square into the side.
    """
    drop = low - top[1]
    reach = hypot(drop, flare)
    across, down = flare / reach, drop / reach
    end = (snapped(top[0] + across * drop), snapped(top[1] + down * drop))
    if flare == 0:
        return (top, end), (end, (0.0, snapped(low)))
    # Where the level line of the centre and the square line of the side meet.
    meet = (max(0.0, end[0] - down * (low - end[1]) / across), snapped(low))
    hem = round_corner(end, meet, (0.0, snapped(low)), 2 / 3)
    return (top, end), hem


def side_notch(side: Line) -> Point:
    """The notch half way down a side seam, where that of front and that of back meet."""
    return point_along(side, run(side) / 2)
