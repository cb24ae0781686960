"""Points and directions, snapped so that another mathematical library gives the same ones."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import cos, pi, sin

from handout_engine.amounts.angles import Angle

Point = tuple[float, float]
"""So far across and so far down, in mm."""

PLACES = 9
"""Lengths are snapped to this many decimals of a millimetre."""
FINE_PLACES = 12
"""Sines are snapped to this many: their last digits differ between mathematical libraries."""


def snapped(number: float) -> float:
    """A length in mm, to a billionth; never -0."""
    return round(number, PLACES) + 0.0


def sine(degrees: Fraction | Angle) -> float:
    """The sine of an angle in degrees, the same on every machine."""
    return round(sin(pi * float(degrees) / 180), FINE_PLACES) + 0.0


def cosine(degrees: Fraction | Angle) -> float:
    """The cosine of an angle in degrees, the same on every machine."""
    return round(cos(pi * float(degrees) / 180), FINE_PLACES) + 0.0


def mirrored(points: Sequence[Point]) -> tuple[Point, ...]:
    """Points seen in the mirror at x = 0, from the last to the first."""
    return tuple((snapped(-x), y) for x, y in reversed(points))


def turned(point: Point, along: Point) -> Point:
    """A point seen along a direction of length 1: how far along it, how far to its right."""
    (x, y), (across, down) = point, along
    return snapped(x * across + y * down), snapped(y * across - x * down)


def turned_back(point: Point, along: Point) -> Point:
    """Where a point lies that `turned` has seen along a direction."""
    (far, aside), (across, down) = point, along
    return snapped(far * across - aside * down), snapped(far * down + aside * across)
