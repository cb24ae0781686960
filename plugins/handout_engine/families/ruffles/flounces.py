"""Flounces cut round instead of gathered: rings, arcs and spirals, and how they lie on cloth."""

from __future__ import annotations

from dataclasses import dataclass
from math import asin, asinh, ceil, cos, pi, radians, sin, sqrt

from handout_engine.amounts.declaring import group
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Point
from handout_engine.shared.hems import DOUBLE, FINISHED, ROLLED, SINGLE, Hem
from handout_engine.working.cautions import NOT_SLEEPWEAR, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.worksheet import Worksheet

STEPS_A_TURN = 120
FLATTEST = 0.05
"""No straight step of a drawn arc is farther than this from the true arc, in mm: it is printed at
true scale and cut out."""
OPEN, CLOSED = "open", "closed"


class Flounce(ClothInputs):
    """A flounce of any shape: its inputs, its hem and its cloth."""

    edge = length(
        "finished edge",
        "Length of the edge that the flounce is sewn to, ungathered.",
        "12 in",
        ("1 in", "20 yd"),
    )
    depth = length(
        "finished depth", "From the joining seam to the finished hem.", "2 in", ("1/4 in", "40 in")
    )
    make = count("how many", "How many such flounces are made, two for a pair.", 1, 20)
    edge_allowance = length(
        "edge allowance",
        "Allowance of the seam along the edge.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    ends = choice(
        "ends",
        "Open when its ends are hemmed, closed when they join in a round.",
        OPEN,
        CLOSED,
        group=SEWING,
    )
    end_hem = length(
        "end hem",
        "Added at each open end.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    join_allowance = length(
        "join allowance",
        "Allowance of the seams between pieces.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    hem = choice(
        "hem",
        "A round hem takes only a narrow turn.",
        ROLLED,
        DOUBLE,
        SINGLE,
        FINISHED,
        group=SEWING,
    )
    hem_depth = optional_length(
        "hem depth",
        "Depth of one turn of the hem.",
        "1/4 in, or 1/8 in for a rolled hem",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="hem_turn",
    )

    @group
    def hem_taken(self) -> Hem:
        """What its lower edge is turned up by."""
        return Hem(self, self.depth)

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the flounce."""
        return ClothBought(self, "flounce cloth")


def add_flounce_supplies(sheet: Worksheet, to_draw_it: str) -> None:
    """The notions and cautions of every flounce, with what it is drawn by."""
    sheet.have(to_draw_it, "fine thread to match", "a fine needle for the cloth")
    sheet.cautions.extend((PINS_AND_IRON, NOT_SLEEPWEAR, THIN_COTTON))


def steps_a_turn(radius: float) -> int:
    """In how many straight steps a circle is drawn: the height of each over its arc is r φ² / 8."""
    return max(STEPS_A_TURN, ceil(pi * sqrt(radius / (2 * FLATTEST))))


def arc(radius: float, degrees: float) -> list[Point]:
    """Points of an arc about the origin, its middle straight below, from left to right."""
    # An even number of steps, so that its lowest point is one of them.
    steps = 2 * max(4, round(steps_a_turn(radius) * degrees / 720))
    angles = (radians(degrees) * (step / steps - 0.5) for step in range(steps + 1))
    return [(radius * sin(angle), radius * cos(angle)) for angle in angles]


def sector(inner: float, outer: float, degrees: float) -> tuple[Point, ...]:
    """The closed outline of a ring or arc to cut, slit at the top, its middle at the bottom."""
    return (*arc(outer, degrees), *reversed(arc(inner, degrees)))


def sewn_sector(inner: float, outer: float, degrees: float, inset: float) -> tuple[Point, ...]:
    """The line it is sewn on: so far inside both ends, along them, as an allowance is."""
    arcs = []
    for radius in (outer, inner):
        aside = 2 * asin(min(1.0, inset / radius)) * 180 / pi
        arcs.append(arc(radius, max(0.0, degrees - aside)))
    return (*arcs[0], *reversed(arcs[1]))


def extent(points: tuple[Point, ...]) -> tuple[float, float]:
    """How wide and how high an outline is."""
    xs, ys = zip(*points, strict=True)
    return max(xs) - min(xs), max(ys) - min(ys)


def at_corner(points: tuple[Point, ...]) -> tuple[Point, ...]:
    """The outline moved so that its left and its top are 0."""
    left, top = min(x for x, _ in points), min(y for _, y in points)
    return tuple((x - left, y - top) for x, y in points)


@dataclass(frozen=True)
class Spiral:
    """A spiral that widens by `pitch` each turn, from a first radius (all in mm)."""

    start: float
    pitch: float

    def radius(self, turns: float) -> float:
        """The radius after so many turns."""
        return self.start + self.pitch * turns

    def length(self, turns: float) -> float:
        """Length of the line after so many turns.

        The integral of sqrt(r^2 + (pitch / 2 pi)^2) d(angle) in closed form: with k the pitch for
        one radian, it is [r sqrt(r^2 + k^2) + k^2 asinh(r / k)] / 2 k between the two radii.
        """
        return self._integral(self.radius(turns)) - self._integral(self.start)

    def _integral(self, radius: float) -> float:
        k = self.pitch / (2 * pi)
        return (radius * sqrt(radius**2 + k**2) + k**2 * asinh(radius / k)) / (2 * k)

    def turns_for(self, length: float) -> float:
        """How many turns give a wanted length, by halving; exact to a billionth of a turn."""
        low, high = 0.0, length / (2 * pi * self.start) + 1
        while high - low > 1e-10:
            middle = (low + high) / 2
            low, high = (middle, high) if self.length(middle) < length else (low, middle)
        return high

    def points(self, turns: float, begin: float = 0.0) -> list[Point]:
        """Points of the line from so many turns to so many, at first to the right, then down."""
        steps = max(8, round(steps_a_turn(self.radius(turns)) * (turns - begin)))
        found = []
        for step in range(steps + 1):
            turned = begin + (turns - begin) * step / steps
            angle = 2 * pi * turned
            radius = self.radius(turned)
            found.append((radius * cos(angle), radius * sin(angle)))
        return found

    def within(self, turns: float, inset: float) -> list[Point]:
        """The line of so many turns without so much of its length at both ends."""
        whole = self.length(turns)
        aside = min(inset, whole / 2)
        return self.points(self.turns_for(whole - aside), self.turns_for(aside))
