"""Two sets of parallel bands woven through an outline: their pieces, and where they cross."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import groupby
from math import ceil, floor

from handout_engine.geometry.clipping import clip_turned
from handout_engine.geometry.points import Point, snapped, turned, turned_back
from handout_engine.geometry.polygons import (
    Polygon,
    contains,
    distance_to_outline,
    extents,
)

Stretch = tuple[float, float]
"""From where to where along a band, in mm."""

RISING, FALLING = "rising", "falling"
LETTERS = {RISING: "R", FALLING: "F"}
"""What the names of their tubes begin with."""
ON_OUTLINE = 1e-6
"""A crossing nearer to the outline than this lies on it, in mm."""


@dataclass(frozen=True)
class Weave:
    """Equal bands in two directions (of length 1), both sets with one band through the centre.

    `pitch` is from one band to the next of its set, square to them; `margin` is what each piece
    has beyond the outline at both its ends.
    """

    rising: Point
    falling: Point
    centre: Point
    width: float
    pitch: float
    margin: float

    def along(self, name: str) -> Point:
        """The direction of one of the sets."""
        return self.rising if name == RISING else self.falling

    def middle(self, name: str, number: int) -> float:
        """How far the centre line of a band lies to the right of the origin's own."""
        return snapped(turned(self.centre, self.along(name))[1] + number * self.pitch)


@dataclass(frozen=True)
class Crossing:
    """Where the centre lines of two bands cross; the rising one lies over at every other."""

    rising: int
    falling: int
    at: Point

    @property
    def rising_is_over(self) -> bool:
        """Whether the rising band lies over the falling one; it does at the centre."""
        return (self.rising + self.falling) % 2 == 0


@dataclass(frozen=True)
class Tube:
    """One piece of a band, cut from tube in one length, its margins included.

    `number` counts bands from the one through the centre, to the right of their direction.
    `shapes` is what of it lies inside the outline, `edge_only` says that its centre line stays
    outside.
    """

    set_name: str
    number: int
    stretch: Stretch
    shapes: tuple[Polygon, ...] = field(repr=False)
    edge_only: bool

    @property
    def length(self) -> float:
        """Cut length in mm."""
        return snapped(self.stretch[1] - self.stretch[0])


def band_numbers(outline: Sequence[Point], weave: Weave, name: str) -> range:
    """The bands of a set that may touch an outline."""
    (_, first), (_, last) = extents([turned(point, weave.along(name)) for point in outline])
    middle, half = weave.middle(name, 0), weave.width / 2
    return range(
        ceil((first - half - middle) / weave.pitch),
        floor((last + half - middle) / weave.pitch) + 1,
    )


def tubes(outline: Sequence[Point], weave: Weave, name: str) -> list[Tube]:
    """All pieces of one set, band by band, each band from its start."""
    seen = [turned(point, weave.along(name)) for point in outline]
    found: list[Tube] = []
    for number in band_numbers(outline, weave, name):
        middle = weave.middle(name, number)
        half = weave.width / 2
        pieces = clip_turned(seen, middle - half, middle + half)
        for stretch, together in _joined(pieces, weave.margin):
            shapes = tuple(
                tuple(turned_back(point, weave.along(name)) for point in piece)
                for piece in together
            )
            passes = any(_passes(piece, middle) for piece in together)
            found.append(Tube(name, number, stretch, shapes, not passes))
    return found


def _joined(pieces: Sequence[Polygon], margin: float) -> list[tuple[Stretch, list[Polygon]]]:
    """Pieces with their margins; those whose margins would meet are cut as one length."""
    joined: list[tuple[Stretch, list[Polygon]]] = []
    reaches = [(min(x for x, _ in each), max(x for x, _ in each), each) for each in pieces]
    for start, end, piece in sorted(reaches):
        reach = snapped(start - margin), snapped(end + margin)
        if joined and reach[0] <= joined[-1][0][1]:
            (first, last), together = joined[-1]
            joined[-1] = ((first, max(last, reach[1])), [*together, piece])
        else:
            joined.append((reach, [piece]))
    return joined


def _passes(piece: Polygon, middle: float) -> bool:
    """Whether a piece reaches over the centre line of its band."""
    asides = [aside for _, aside in piece]
    return min(asides) < middle < max(asides)


def named(of_one_set: Sequence[Tube]) -> list[tuple[str, Tube]]:
    """Each tube with its name: R or F, the number of its band, and a letter for several pieces."""
    every = []
    for place, (_, pieces) in enumerate(groupby(of_one_set, key=lambda tube: tube.number), 1):
        parts = list(pieces)
        for number, tube in enumerate(parts):
            letter = chr(97 + number) if len(parts) > 1 else ""
            every.append((f"{LETTERS[tube.set_name]}{place}{letter}", tube))
    return every


def crossings(outline: Sequence[Point], weave: Weave) -> list[Crossing]:
    """All crossings inside the outline, not on it, from top to bottom, left to right."""
    found = [
        Crossing(rising, falling, at)
        for rising in band_numbers(outline, weave, RISING)
        for falling in band_numbers(outline, weave, FALLING)
        if contains(outline, at := crossing_point(weave, rising, falling))
        and distance_to_outline(outline, at) > ON_OUTLINE
    ]
    return sorted(found, key=lambda each: (each.at[1], each.at[0]))


def crossing_point(weave: Weave, rising: int, falling: int) -> Point:
    """Where the centre lines of two bands cross."""
    (ax, ay), (bx, by) = weave.rising, weave.falling
    first, second = weave.middle(RISING, rising), weave.middle(FALLING, falling)
    # Each line is y·across - x·down = its distance; Cramer's rule for the two of them.
    determinant = ax * by - ay * bx
    return (
        snapped((first * bx - second * ax) / determinant),
        snapped((first * by - second * ay) / determinant),
    )
