"""The outline of a bib: a round neck open at the back, two straps, a front with round corners.

The centre of the neck is the origin. The outer line is the circle of the straps, a straight line
that touches it, the side of the front, and its lower corner; both halves are mirrored exactly.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import acos, atan2, cos, hypot, pi, sin

from handout_engine.geometry.points import FINE_PLACES, Point, snapped
from handout_engine.geometry.polygons import Polygon

STEPS = 48


@dataclass(frozen=True)
class BibShape:
    """The finished sizes of a bib in mm.

    `neck` and `strap` are the radii of the neck and of the straps' outer edge, `half_width` of the
    front, `low` its lower edge below the centre of the neck, `corner` the radius of its corners,
    `gap` between the ends of the straps.
    """

    neck: float
    strap: float
    half_width: float
    low: float
    corner: float
    gap: float

    @property
    def touch(self) -> float:
        """The angle, from straight down, where the side's line touches the circle of the straps.

        The line comes up from the side of the front at the level of the neck's lowest point.
        """
        far = hypot(self.half_width, self.neck)
        return atan2(self.half_width, self.neck) + acos(min(1.0, self.strap / far))

    def outline(self, allowance: float = 0.0) -> Polygon:
        """The closed outline, with an allowance outside it all round."""
        half = self._half(allowance)
        return (*half, *((snapped(-x), y) for x, y in reversed(half[1:])))

    def _half(self, allowance: float) -> list[Point]:
        """The right half: neck from its lowest point to the back, strap end, and outside down."""
        inner, outer = self.neck - allowance, self.strap + allowance
        side, low = self.half_width + allowance, self.low + allowance
        corner, aside = self.corner + allowance, self.gap / 2 - allowance
        touch = self.touch
        level = (outer - sin(touch) * side) / cos(touch)
        return [
            *arc((0.0, 0.0), inner, 0.0, _end(inner, aside)),
            *arc((0.0, 0.0), outer, _end(outer, aside), touch),
            (snapped(side), snapped(level)),
            *arc((side - corner, low - corner), corner, pi / 2, 0.0),
        ]


def _end(radius: float, aside: float) -> float:
    """The angle at which a circle comes so near to the centre back."""
    return pi - atan2(aside, (max(0.0, radius * radius - aside * aside)) ** 0.5)


def arc(centre: Point, radius: float, start: float, end: float) -> list[Point]:
    """Points of an arc from one angle to another, both measured from straight down."""
    turns = (start + (end - start) * step / STEPS for step in range(STEPS + 1))
    return [
        (
            snapped(centre[0] + radius * round(sin(turn), FINE_PLACES)),
            snapped(centre[1] + radius * round(cos(turn), FINE_PLACES)),
        )
        for turn in turns
    ]
