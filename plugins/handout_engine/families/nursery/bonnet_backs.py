"""The back of a bonnet: a circle that the straight piece is gathered to, or a horseshoe."""

from __future__ import annotations

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import Worked, check, value
from handout_engine.amounts.lengths import ZERO, Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.working_out import Group
from handout_engine.families.nursery.bonnet_measures import BonnetInputs

CIRCLE_BASE = millimetres(25)


class Back(Group):
    """A back: how wide and high it is, the seam round it, and its flat edge at the nape."""

    back_width: Worked[Length]
    back_seam: Worked[Length]
    back_height: Worked[Length]
    flat_nape: Worked[Length]

    def __init__(self, bonnet: BonnetInputs) -> None:
        """Take the bonnet that it belongs to."""
        super().__init__()
        self.bonnet = bonnet

    @value("back, cut width", saying=Saying.UP)
    def back_cut_width(self) -> Length:
        """A seam at either side."""
        return self.back_width + 2 * self.bonnet.seam_allowance


class Circle(Back):
    """A small circle, which the whole back edge is drawn up to."""

    @value("part of the circle that does not grow with the head", basis=PRACTICE)
    def circle_base(self) -> Length | None:
        """So that the circle of a small head is not much smaller."""
        return CIRCLE_BASE if self.bonnet.circle is None else None

    @value("circle at the back, across", basis=PRACTICE)
    def back_width(self) -> Length:
        """As asked for, or by the head."""
        if self.bonnet.circle is not None:
            return self.bonnet.circle
        base = self.circle_base
        assert base is not None
        return base + self.bonnet.head / 14

    @value("back seam, once round the circle")
    def back_seam(self) -> Length:
        """What the back edge is drawn up to."""
        return PI * self.back_width

    @check
    def the_edge_is_gathered_to_it(self) -> None:
        """Refuse a circle that is longer round than the edge that joins it."""
        front = self.bonnet.front_edge
        if self.back_seam > front:
            raise RefusalError(
                f"the circle is {TAPE.both(self.back_seam)} round, longer than the edge of "
                f"{TAPE.both(front)} that is gathered to it; use a circle of at most "
                f"{TAPE.no_more(front / PI)} across",
                "circle",
            )

    @value("quarter of the seam round the circle")
    def back_quarter(self) -> Length:
        """From mark to mark, so that the gathers are spread evenly."""
        return self.back_seam / 4

    @value("circle at the back, up and down")
    def back_height(self) -> Length:
        """It is round."""
        return self.back_width

    @value("flat nape of a circle", basis=GIVEN)
    def flat_nape(self) -> Length:
        """The ends of the back edge meet there, so the circle gives nothing to the neck."""
        return ZERO

    @value("back, cut height", saying=Saying.UP)
    def back_cut_height(self) -> Length:
        """A seam above and below."""
        return self.back_height + 2 * self.bonnet.seam_allowance


class Horseshoe(Back):
    """A half circle above two straight sides: its arc joins the back edge, its nape is bound."""

    @value("horseshoe, across", basis=PRACTICE)
    def back_width(self) -> Length:
        """As asked for, or by the head."""
        return self.bonnet.head / 4 if self.bonnet.nape is None else self.bonnet.nape

    @value("back seam, round the horseshoe from nape to nape")
    def back_seam(self) -> Length:
        """As long as the back edge, or less where that is gathered."""
        return self.bonnet.front_edge / self.bonnet.back_fullness

    @value("half circle of the horseshoe")
    def half_circle(self) -> Length:
        """Its seam over the top."""
        return PI * self.back_width / 2

    @check
    def the_seam_goes_round_it(self) -> None:
        """Refuse a back so wide that its half circle alone is longer than the seam."""
        if self.half_circle > self.back_seam:
            raise RefusalError(
                f"a horseshoe {TAPE.both(self.back_width)} wide has a half circle of "
                f"{TAPE.both(self.half_circle)}, longer than the whole back seam, "
                f"{TAPE.both(self.back_seam)}; use a nape of at most "
                f"{TAPE.no_more(2 * self.back_seam / PI)}, or less fullness",
                "nape",
            )

    @value("straight side of the horseshoe")
    def straight_side(self) -> Length:
        """What the seam has left on either side of the half circle."""
        return (self.back_seam - self.half_circle) / 2

    @value("horseshoe, from nape to top")
    def back_height(self) -> Length:
        """The half circle is half as high as it is wide."""
        return self.back_width / 2 + self.straight_side

    @value("flat nape of the horseshoe")
    def flat_nape(self) -> Length:
        """It is part of the neck edge."""
        return self.back_width

    @value("back, cut height", saying=Saying.UP)
    def back_cut_height(self) -> Length:
        """A seam above, none at the nape, which is bound."""
        return self.back_height + self.bonnet.seam_allowance
