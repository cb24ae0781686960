"""Woven lattice: bands clipped to their outline, the lower one broken at each crossing."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from handout_engine.drawing.scene import Area, Line, Shape, Stroke, Tone
from handout_engine.families.lattice.weave import (
    FALLING,
    RISING,
    Stretch,
    Tube,
    Weave,
    crossing_point,
)
from handout_engine.geometry.clipping import Band, clip
from handout_engine.geometry.points import Point, cosine, sine, turned, turned_back
from handout_engine.geometry.polygons import Polygon

NEAR = 1e-6
RING = tuple((cosine(Fraction(30 * step)), sine(Fraction(30 * step))) for step in range(12))
TONES = {RISING: Tone.RIGHT, FALLING: Tone.SECOND}


@dataclass(frozen=True)
class Woven:
    """A lattice to draw: its outline, how it is woven, and the tubes of both sets."""

    outline: Polygon
    weave: Weave
    tubes: Sequence[Tube]

    def of(self, name: str) -> list[Tube]:
        """The tubes of one of the sets."""
        return [tube for tube in self.tubes if tube.set_name == name]

    def over(self, tube: Tube) -> list[tuple[float, float, Stretch]]:
        """The tubes that may lie over one: where their centre lines cross, along each of the two,
        and from where to where the upper tube reaches.
        """
        weave = self.weave
        found = []
        for other in self.tubes:
            if other.set_name == tube.set_name or not lies_over(other, tube):
                continue
            numbers = (tube.number, other.number)
            at = crossing_point(weave, *(numbers if tube.set_name == RISING else numbers[::-1]))
            here, there = (turned(at, weave.along(each.set_name))[0] for each in (tube, other))
            found.append((here, there, other.stretch))
        return sorted(found)


def lies_over(tube: Tube, other: Tube) -> bool:
    """Whether a tube lies over one of the other set where they cross; the rising does at 0, 0."""
    return ((tube.number + other.number) % 2 == 0) == (tube.set_name == RISING)


def woven(lattice: Woven) -> Iterable[Shape]:
    """The tubes inside the outline: faces first, then the edges that are seen."""
    for name in (FALLING, RISING):
        for tube in lattice.of(name):
            for shape in tube.shapes:
                yield Area(shape, TONES[name], outline=None)
    yield from _faces_over(lattice)
    for tube in lattice.tubes:
        yield from _edges_inside(lattice, tube)


def _faces_over(lattice: Woven) -> Iterable[Shape]:
    """The falling tubes where they lie over rising ones: faces laid on those below."""
    weave = lattice.weave
    half = weave.width / 2
    for tube in lattice.of(RISING):
        over = {other.number for other in lattice.of(FALLING) if lies_over(other, tube)}
        for number in sorted(over):
            middle = weave.middle(FALLING, number)
            for shape in tube.shapes:
                for patch in clip(shape, Band(weave.falling, middle - half, middle + half)):
                    yield Area(patch, TONES[FALLING], outline=None)


def _edges_inside(lattice: Woven, tube: Tube) -> Iterable[Shape]:
    along = lattice.weave.along(tube.set_name)
    shapes = [[turned(point, along) for point in shape] for shape in tube.shapes]
    for level, gaps in _edges(lattice, tube):
        for shape in shapes:
            for side in _level_sides(shape, level):
                yield from _strokes(side, gaps, level, along)


def whole_edges(lattice: Woven, tube: Tube) -> Iterable[Shape]:
    """All edges of a tube from end to end, its margins too, broken where it lies under another."""
    along = lattice.weave.along(tube.set_name)
    levels: list[float] = []
    for level, gaps in _edges(lattice, tube):
        levels.append(level)
        yield from _strokes(tube.stretch, gaps, level, along)
    for end in tube.stretch:
        yield Stroke(tuple(turned_back((end, level), along) for level in levels), Line.THIN)


def _edges(lattice: Woven, tube: Tube) -> Iterable[tuple[float, list[Stretch]]]:
    """How far aside each edge of a tube lies, and where along that edge it is hidden.

    The other set runs aslant. From the centre line to an edge, its tubes move on along this one by
    half the width over the tangent of the angle between the sets, and along themselves by half the
    width over its sine; along the edge each hides its width over that sine.
    """
    weave = lattice.weave
    own, other = weave.rising, weave.falling
    if tube.set_name == FALLING:
        own, other = other, own
    sine_between = other[1] * own[0] - other[0] * own[1]
    cosine_between = other[0] * own[0] + other[1] * own[1]
    hides = weave.width / 2 / abs(sine_between)
    over = lattice.over(tube)
    for half in (-weave.width / 2, weave.width / 2):
        on = half * cosine_between / sine_between
        gaps = [
            (here + on - hides, here + on + hides)
            for here, there, (start, end) in over
            if start < there + half / sine_between < end
        ]
        yield weave.middle(tube.set_name, tube.number) + half, gaps


def _strokes(side: Stretch, gaps: Iterable[Stretch], level: float, along: Point) -> Iterable[Shape]:
    for seen in without(side, gaps):
        yield Stroke(tuple(turned_back((at, level), along) for at in seen), Line.THIN)


def _level_sides(shape: Sequence[Point], level: float) -> list[Stretch]:
    """The sides of a piece that lie along an edge of its band."""
    return [
        (min(before[0], after[0]), max(before[0], after[0]))
        for before, after in zip([shape[-1], *shape[:-1]], shape, strict=True)
        if abs(before[1] - level) < NEAR and abs(after[1] - level) < NEAR
    ]


def without(whole: Stretch, gaps: Iterable[Stretch]) -> list[Stretch]:
    """What is left of a stretch when others, in order, are taken out of it."""
    left: list[Stretch] = []
    start, end = whole
    for gap_start, gap_end in gaps:
        if gap_end <= start or gap_start >= end:
            continue
        if gap_start > start:
            left.append((start, gap_start))
        start = gap_end
    return [*left, (start, end)] if start < end else left


def knot(at: Point, radius: float) -> Area:
    """A knot as a small round face."""
    ring = tuple((at[0] + radius * x, at[1] + radius * y) for x, y in RING)
    return Area(ring, Tone.RIGHT, Line.CUT)
