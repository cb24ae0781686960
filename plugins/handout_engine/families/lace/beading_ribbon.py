"""Ribbon run through beading: its length, the openings, and how its ends are made safe."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import (
    CLOTH,
    SEWING,
    choice,
    count,
    length,
    optional_length,
    ratio,
    yardage,
)
from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.ways_out import at_most, less_than
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.edgings_drawing import beading_face, weaving
from handout_engine.working.cautions import (
    LACE_CATCHES,
    LOOSE_THREADS,
    NECK_CORDS,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet

SEAMED, BOW = "caught in the seams", "tied in a bow"
NECK, WAIST, ELSEWHERE = "neck or bonnet", "waist or hem", "elsewhere"
LONGEST_TIE = millimetres(75)


class BeadingRibbon(Technique):
    """A ribbon woven through the openings of beading."""

    title = "Ribbon through beading"
    family = "lace"
    summary = (
        "Ribbon run through beading: how long, over and under how many bars, and how its ends are "
        "made safe."
    )

    run = length(
        "run", "Length of beading that the ribbon goes through.", "12 in", ("2 in", "10 yd")
    )
    beading_width = length(
        "beading width", "Width of the beading from edge to edge.", "5/8 in", ("1/8 in", "6 in")
    )
    pitch = length(
        "openings apart",
        "From the middle of one opening to the middle of the next.",
        "3/8 in",
        ("1/16 in", "1 in"),
    )
    slot = length("opening", "Height of an opening.", "1/4 in", ("1/32 in", "2 in"))
    ribbon = optional_length(
        "ribbon width",
        "Width of the ribbon.",
        "as wide as the opening",
        ("1/32 in", "2 in"),
        in_use="ribbon_width",
    )
    factor = ratio(
        "take-up",
        "Length of ribbon for each length of beading; over and under the bars takes a little.",
        "1.05",
        ("1", "2"),
        group=SEWING,
        basis=PRACTICE,
    )
    ends = choice(
        "ends of the ribbon", "Caught in the seams, or left to tie.", SEAMED, BOW, group=SEWING
    )
    place = choice(
        "where it is worn",
        "Decides which rule on cords and ties applies.",
        ELSEWHERE,
        WAIST,
        NECK,
        group=SEWING,
    )
    turn_in = length(
        "end allowance",
        "Ribbon caught in the seam at each end.",
        "1/2 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    tie = length(
        "tie",
        "Ribbon left beyond the beading at each end, for a bow.",
        "2 7/8 in",
        ("1/2 in", "30 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "How many such runs are made, two for a pair.", 1, 200)
    ribbon_step = yardage(
        "step in which ribbon is sold",
        "Ribbon is ordered in steps of this length.",
        "1/4 yd",
        ("1 cm", "10 yd"),
        group=CLOTH,
        basis=PRACTICE,
    )

    @value("width of the ribbon to buy", basis=PRACTICE)
    def ribbon_width(self) -> Length:
        """As asked for, or so wide that it just passes the openings."""
        return self.slot if self.ribbon is None else self.ribbon

    @check
    def the_ribbon_lies_flat_in_the_openings(self) -> None:
        """Refuse a ribbon that is wider than they are high."""
        if self.ribbon is not None and self.ribbon > self.slot:
            raise RefusalError(
                f"ribbon {TAPE.say(self.ribbon)} is wider than the opening {TAPE.say(self.slot)} "
                "and would fold in it; use "
                f"{at_most(self, 'ribbon', self.slot, 'ribbon of at most {}')}",
                "ribbon",
            )

    @check
    def the_beading_is_wider_than_its_openings(self) -> None:
        """Refuse openings that leave no beading beside them."""
        if self.slot >= self.beading_width:
            raise RefusalError(
                f"slot {TAPE.say(self.slot)} is as wide as the beading itself; use the height of "
                f"one opening, {less_than(self, 'slot', self.beading_width)}",
                "slot",
            )

    @value("openings in the run")
    def openings(self) -> Count:
        """Those that come whole."""
        return (self.run / self.pitch).rounded_down()

    @value("pairs of openings")
    def pairs_of_openings(self) -> Count:
        """In by one and out by the next, so that both ends come out on one side."""
        return (self.openings / 2).rounded_down()

    @value("openings that the ribbon goes through")
    def openings_used(self) -> Count:
        """An odd one is left out."""
        return 2 * self.pairs_of_openings

    @value("bars that the ribbon lies over on the right side")
    def times_over(self) -> Count:
        """For a bow it begins and ends in front, so it goes over once less."""
        return self.pairs_of_openings - 1 if self.ends == BOW else self.pairs_of_openings

    @value("longest tie allowed to hang free at waist or hem", basis=published("cfr-1120"))
    def longest_tie(self) -> Length | None:
        """There the rule on drawstrings names a length."""
        return LONGEST_TIE if self.place == WAIST else None

    @check
    def ties_cannot_catch(self) -> None:
        """Refuse ties at a neck, and longer ones at waist or hem than the rule allows."""
        if self.ends == BOW and self.place == NECK:
            raise RefusalError(
                "ties at a neck or bonnet can catch and pull tight; catch the ribbon's ends in the "
                f'seams (ends: "{SEAMED}") and sew on a small separate bow, stitched through its '
                "knot",
                "ends",
            )
        if self.ends == BOW and self.place == WAIST and self.tie > LONGEST_TIE:
            raise RefusalError(
                f"tie {TAPE.say(self.tie)} is longer than {TAPE.no_more(LONGEST_TIE)}, the most "
                "that may hang free at waist or hem; shorten it, or catch the ends in the seams",
                "tie",
            )

    @value("ribbon for one run")
    def ribbon_length(self) -> Length:
        """Over and under the bars, and what is tied or caught in a seam at each end."""
        woven = self.factor * self.run
        return woven + 2 * self.tie if self.ends == BOW else woven + 2 * self.turn_in

    @value("ribbon to buy", saying=Saying.YARDAGE)
    def ribbon_to_buy(self) -> Length:
        """For all runs, in the steps that it is sold by."""
        return (self.make * self.ribbon_length).rounded_up_to(self.ribbon_step)

    @value("beading for a trial", basis=PRACTICE)
    def sample_beading(self) -> Length:
        """Long enough to see how much the bars take."""
        return inches(6)

    @value("ribbon that the trial should take")
    def sample_ribbon(self) -> Length:
        """What is measured between the marks."""
        return self.factor * self.sample_beading

    def sew(self, sheet: Worksheet) -> None:
        """The ribbon run through, its ends made safe, and stitched down at the middle."""
        self._add_supplies(sheet)
        sheet.trial(
            "Run the ribbon through {sample_beading} of the beading, mark it at both ends, "
            "and draw it out again.",
            "between the marks it is {sample_ribbon}. If not, divide what it measures by "
            "{sample_beading} and write that as the take-up.",
        )
        sheet.step(
            "Wash and press beading and ribbon apart, to see that the colour of the ribbon holds."
        )
        sheet.step("Cut the ribbon {ribbon_length} long, its ends at a slant.")
        sheet.step(
            "Thread it in the bodkin. From the right side go down through the first opening and up "
            "through the next, through {openings_used} openings in all, keeping it flat."
            if self.ends == BOW
            else "Thread it in the bodkin. From the wrong side come up through the first opening "
            "and down through the next, through {openings_used} openings in all, keeping it flat.",
            "the ribbon lies over {times_over} bars, and both its ends come out on the same side.",
        )
        sheet.step(
            "Spread the beading along the ribbon until it neither puckers nor bows.",
            "the beading is {run} long again.",
        )
        if self.ends == SEAMED:
            sheet.step(
                "Baste {turn_in} of ribbon at each end into the seams, and sew across it twice."
            )
        else:
            sheet.step(
                "Tie the ends, and turn a narrow hem on each or cut it in a swallowtail.",
                "before it is tied, {tie} hangs at each end.",
            )
        sheet.step(
            "At the middle of the run stitch ribbon and beading together through and through, so "
            "that the ribbon cannot be drawn out.",
            "pull at both ends: nothing moves.",
        )

    def _add_supplies(self, sheet: Worksheet) -> None:
        sheet.supplies.append(Supply("ribbon", sheet["ribbon_to_buy"]))
        sheet.have("a blunt tapestry needle or bodkin that passes the openings")
        sheet.have("thread to match the ribbon", "a fine needle for the cloth")
        sheet.cautions.extend((NECK_CORDS, LACE_CATCHES, LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON))

    def draw(self, sheet: Worksheet) -> None:
        """A part of the beading from its right side, and its ribbon from the side."""
        slot, ribbon = sheet["slot"], sheet["ribbon_width"]
        finished = Scene(
            sheet.sentence("Ribbon in beading"),
            sheet.sentence("Ribbon {ribbon_width} wide in openings of {slot}."),
            beading_face(sheet["run"], sheet["beading_width"], slot, ribbon),
        )
        sheet.show(
            "finished",
            "A part of the finished beading; widths are to scale, the number of openings is a "
            "sign.",
            finished,
            finished=True,
        )
        side = Scene(
            sheet.sentence("The ribbon seen from the side"),
            sheet.sentence("Over one bar and under the next, through openings {pitch} apart."),
            weaving(self.openings.number, sheet["pitch"]),
            tallest=100.0,
        )
        sheet.show("weaving", "The ribbon from the side: over one bar and under the next.", side)


TECHNIQUE = BeadingRibbon
