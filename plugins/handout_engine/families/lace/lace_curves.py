"""Centre line and edges of lace laid in a scallop, a diamond or a loop.

The centre line is what a template shows; the lace is cut as long as the outer edge of each shape,
which is the longer one, and the inner edge is drawn up to fit.
"""

from __future__ import annotations

from handout_engine.amounts.angles import Angle, angle_of_cosine, angle_of_tangent, arc
from handout_engine.amounts.declaring import Worked, check, value
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.ways_out import less_than, more_than, ways
from handout_engine.amounts.working_out import Group
from handout_engine.families.lace.lace import LaceInputs

TAPE = Tape(finest=32)


class ShapeLines(Group):
    """The three lines of one shape that is so wide and so high on its centre line."""

    centre_line: Worked[Length]
    outer_edge: Worked[Length]
    inner_edge: Worked[Length]

    def __init__(self, lace: LaceInputs, across: Length, height: Length) -> None:
        """Take the lace, and the size of one shape."""
        super().__init__()
        self.lace, self.across, self.height = lace, across, height

    def larger_shapes(self, limit: Length) -> str:
        """The ways out of lace that is too wide: narrower than that, or larger shapes."""
        narrower = less_than(self.lace, "lace_width", limit, "lace narrower than {}")
        return ways(narrower, "larger shapes")


class ArcLines(ShapeLines):
    """A shape with an arc: the lines beside it have the same turn, and another radius."""

    radius: Worked[Length]
    arc_turn: Worked[Angle]

    @check
    def the_lace_turns_so_closely(self) -> None:
        """Refuse lace so wide that its inner edge has no radius left."""
        width = self.lace.lace_width
        if width >= 2 * self.radius:
            raise RefusalError(
                f"lace_width {TAPE.say(width)} is too wide for a curve of {TAPE.say(self.radius)} "
                "radius, its inner edge would cross itself; use "
                f"{self.larger_shapes(2 * self.radius)}",
                "lace_width",
            )

    @value("centre line of one shape")
    def centre_line(self) -> Length:
        """What the template shows."""
        return self.line_of(self.radius)

    @value("outer edge of one shape")
    def outer_edge(self) -> Length:
        """The lace is cut by it."""
        return self.line_of(self.radius + self.lace.lace_width / 2)

    @value("inner edge of one shape")
    def inner_edge(self) -> Length:
        """What the heading thread is drawn up to."""
        return self.line_of(self.radius - self.lace.lace_width / 2)

    def line_of(self, radius: Length) -> Length:
        """The line whose arc has that radius."""
        return radius * arc(self.arc_turn)


class ScallopLines(ArcLines):
    """An arc on a chord, more than half a circle where it is high."""

    @value("radius of the centre line")
    def radius(self) -> Length:
        """By its chord and its rise."""
        return (self.across * self.across / 4 + self.height * self.height) / (2 * self.height)

    @value("turn of the arc")
    def arc_turn(self) -> Angle:
        """From an end of the chord the top is seen at a quarter of it."""
        return 4 * angle_of_tangent(2 * self.height / self.across)


class LoopLines(ArcLines):
    """An arc that two straight arms, drawn from the foot of the loop, run into."""

    @check
    def it_closes_at_its_foot(self) -> None:
        """Refuse a loop whose arc would reach its foot."""
        if self.height <= self.across:
            higher = more_than(self.lace, "height", self.across, "a height of more than {}")
            raise RefusalError(
                f"a loop {TAPE.say(self.across)} wide must be higher than that to close at its "
                f"foot; use {ways(higher, 'a smaller shape_width')}",
                "height",
            )

    @value("radius of the centre line")
    def radius(self) -> Length:
        """The arc is as wide as the loop."""
        return self.across / 2

    @value("from the foot of the loop to the centre of its arc")
    def foot_to_centre(self) -> Length:
        """The top lies its radius above that centre."""
        self.it_closes_at_its_foot()
        return self.height - self.radius

    @value("straight arm of the loop")
    def arm(self) -> Length:
        """Where it runs into the arc it stands square to its radius."""
        squares = self.foot_to_centre * self.foot_to_centre - self.radius * self.radius
        return squares.root()

    @value("turn of the arc")
    def arc_turn(self) -> Angle:
        """Once round, but for what lies between the arms."""
        return 360 - 2 * angle_of_cosine(self.radius / self.foot_to_centre)

    def line_of(self, radius: Length) -> Length:
        """The line whose arc has that radius, with its arms, which are as long on all lines."""
        return 2 * self.arm + super().line_of(radius)


class DiamondLines(ShapeLines):
    """Four equal sides with mitred points; half a width of lace further out it is longer."""

    @value("side of the diamond, centre line")
    def diamond_side(self) -> Length:
        """Half its width and half its height stand square to each other."""
        return (self.across * self.across + self.height * self.height).root() / 2

    @value("the four mitres, between centre line and outer edge")
    def points_take(self) -> Length:
        """What the four points reach out beyond the sides."""
        return 2 * self.lace.lace_width * self._pointed

    @property
    def _pointed(self) -> Ratio:
        return self.across / self.height + self.height / self.across

    @value("centre line of one shape")
    def centre_line(self) -> Length:
        """What the template shows."""
        return 4 * self.diamond_side

    @value("outer edge of one shape")
    def outer_edge(self) -> Length:
        """The lace is cut by it."""
        return self.centre_line + self.points_take

    @value("inner edge of one shape")
    def inner_edge(self) -> Length:
        """What the heading thread is drawn up to."""
        return self.centre_line - self.points_take

    @check
    def it_has_an_inside(self) -> None:
        """Refuse lace that fills the whole diamond."""
        if self.points_take >= self.centre_line:
            raise RefusalError(
                f"lace_width {TAPE.say(self.lace.lace_width)} fills the whole diamond; use "
                f"{self.larger_shapes(self.centre_line / (2 * self._pointed))}",
                "lace_width",
            )
