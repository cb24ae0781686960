"""Ribbon run through beading: its length, the openings, and how its ends are made safe."""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor
from typing import ClassVar

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
from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE, published
from handout_engine.amounts.values import sentence
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
from handout_engine.working.workings import Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

SEAMED, BOW = "caught in the seams", "tied in a bow"
NECK, WAIST, ELSEWHERE = "neck or bonnet", "waist or hem", "elsewhere"
LONGEST_TIE = millimetres(75)


class BeadingRibbon(Technique):
    """A ribbon woven through the openings of beading."""

    title: ClassVar[str] = "Ribbon through beading"
    family: ClassVar[str] = "lace"
    summary: ClassVar[str] = (
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
        "ribbon is sold by",
        "Ribbon is ordered in steps of this length.",
        "1/4 yd",
        ("1 cm", "10 yd"),
        group=CLOTH,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Openings, ribbon length and how its ends are made safe; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _check(self)
        _note_openings(sheet, self)
        _note_ribbon(sheet, self)
        _add_supplies(sheet)
        _add_sample(sheet)
        _add_steps(sheet, self)
        _draw(sheet)
        return sheet


def _check(beading: BeadingRibbon) -> None:
    tape = Tape(finest=32)
    if beading.ribbon is not None and beading.ribbon > beading.slot:
        raise RefusalError(
            f"ribbon {tape.say(beading.ribbon)} is wider than the opening "
            f"{tape.say(beading.slot)} and would fold in it; use "
            f"{at_most(beading, 'ribbon', beading.slot, 'ribbon of at most {}')}",
            "ribbon",
        )
    if beading.slot >= beading.beading_width:
        raise RefusalError(
            f"slot {tape.say(beading.slot)} is as wide as the beading itself; use the height of "
            f"one opening, {less_than(beading, 'slot', beading.beading_width)}",
            "slot",
        )
    if beading.ends == BOW and beading.place == NECK:
        raise RefusalError(
            "ties at a neck or bonnet can catch and pull tight; catch the ribbon's ends in the "
            f'seams (ends: "{SEAMED}") and sew on a small separate bow, stitched through its knot',
            "ends",
        )
    if beading.ends == BOW and beading.place == WAIST and beading.tie > LONGEST_TIE:
        raise RefusalError(
            f"tie {tape.say(beading.tie)} is longer than {tape.no_more(LONGEST_TIE)}, the most "
            "that may hang free at waist or hem; shorten it, or catch the ends in the seams",
            "tie",
        )


def _note_openings(sheet: Worksheet, beading: BeadingRibbon) -> None:
    if beading.ribbon is None:
        sheet.note("ribbon_width", "width of the ribbon to buy", beading.slot, "{slot}",
                   basis=PRACTICE)  # fmt: skip
    else:
        sheet.note("ribbon_width", "width of the ribbon to buy", beading.ribbon, "", basis=GIVEN)
    number = floor(beading.run / beading.pitch)
    openings = sheet.note("openings", "openings in the run", number,
                          "{run} / {pitch}, rounded down")  # fmt: skip
    pairs = sheet.note("pairs_of_openings", "pairs of openings",
                       floor(Fraction(openings.whole, 2)),
                       "{openings} / 2, rounded down")  # fmt: skip
    sheet.note("openings_used", "openings that the ribbon goes through", 2 * pairs.whole,
               "2 × {pairs_of_openings}")  # fmt: skip
    bow = beading.ends == BOW  # it begins and ends in front, so it goes over once less
    sheet.note("times_over", "bars that the ribbon lies over on the right side",
               pairs.whole - bow,
               "{pairs_of_openings} - 1" if bow else "{pairs_of_openings}")  # fmt: skip


def _note_ribbon(sheet: Worksheet, beading: BeadingRibbon) -> None:
    end, words = (beading.tie, "{tie}") if beading.ends == BOW else (beading.turn_in, "{turn_in}")
    ribbon = sheet.note("ribbon_length", "ribbon for one run",
                        beading.run * beading.factor + 2 * end,
                        f"{{factor}} × {{run}} + 2 × {words}")  # fmt: skip
    amount = beading.ribbon_step * ceil(ribbon.length * beading.make / beading.ribbon_step)
    buy = sheet.note("ribbon_to_buy", "ribbon to buy", amount,
                     "{make} × {ribbon_length}, rounded up to the next {ribbon_step}",
                     saying=Saying.YARDAGE)  # fmt: skip
    sheet.supplies.append(Supply("ribbon", buy))
    if beading.place == WAIST:
        sheet.note("longest_tie", "longest tie allowed to hang free at waist or hem", LONGEST_TIE,
                   "", basis=published("cfr-1120"))  # fmt: skip


def _add_supplies(sheet: Worksheet) -> None:
    sheet.supplies.append(Supply("a blunt tapestry needle or bodkin that passes the openings"))
    sheet.have("thread to match the ribbon", "a fine needle for the cloth")
    sheet.cautions.extend((NECK_CORDS, LACE_CATCHES, LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON))


def _add_sample(sheet: Worksheet) -> None:
    least = sheet["factor"].amount
    assert isinstance(least, Fraction)
    trial = sheet.note("sample_beading", "beading for a trial", inches(6), "", basis=PRACTICE)
    used = sheet.note("sample_ribbon", "ribbon that the trial should take", trial.length * least,
                      "{factor} × {sample_beading}")  # fmt: skip
    sheet.sample.append(
        Step(
            sentence("Run the ribbon through {trial} of the beading, mark it at both ends, and "
                     "draw it out again.", trial=trial),
            sentence("between the marks it is {used}. If not, divide what it measures by {trial} "
                     "and write that as the take-up.", used=used, trial=trial),
        )
    )  # fmt: skip


def _add_steps(sheet: Worksheet, beading: BeadingRibbon) -> None:
    sheet.step(
        "Wash and press beading and ribbon apart, to see that the colour of the ribbon holds."
    )
    sheet.step("Cut the ribbon {ribbon_length} long, its ends at a slant.")
    sheet.step(
        "Thread it in the bodkin. From the right side go down through the first opening and up "
        "through the next, through {openings_used} openings in all, keeping it flat."
        if beading.ends == BOW
        else "Thread it in the bodkin. From the wrong side come up through the first opening and "
        "down through the next, through {openings_used} openings in all, keeping it flat.",
        "the ribbon lies over {times_over} bars, and both its ends come out on the same side.",
    )
    sheet.step(
        "Spread the beading along the ribbon until it neither puckers nor bows.",
        "the beading is {run} long again.",
    )
    if beading.ends == SEAMED:
        sheet.step("Baste {turn_in} of ribbon at each end into the seams, and sew across it twice.")
    else:
        sheet.step(
            "Tie the ends, and turn a narrow hem on each or cut it in a swallowtail.",
            "before it is tied, {tie} hangs at each end.",
        )
    sheet.step(
        "At the middle of the run stitch ribbon and beading together through and through, so that "
        "the ribbon cannot be drawn out.",
        "pull at both ends: nothing moves.",
    )


def _draw(sheet: Worksheet) -> None:
    finished = Scene(
        sentence("Ribbon in beading"),
        sentence("Ribbon {ribbon} wide in openings of {slot}.", ribbon=sheet["ribbon_width"],
                 slot=sheet["slot"]),
        beading_face(sheet["run"], sheet["beading_width"], sheet["slot"], sheet["ribbon_width"]),
    )  # fmt: skip
    side = Scene(
        sentence("The ribbon seen from the side"),
        sentence("Over one bar and under the next, through openings {pitch} apart.",
                 pitch=sheet["pitch"]),
        weaving(sheet["openings"].whole, sheet["pitch"]),
        tallest=100.0,
    )  # fmt: skip
    sheet.pictures.append(
        Picture("finished", sentence("A part of the finished beading; widths are to scale, the "
                                     "number of openings is a sign."), finished, finished=True)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("weaving", sentence("The ribbon from the side: over one bar and under the next."),
                side)
    )  # fmt: skip


TECHNIQUE = BeadingRibbon
