"""The needle of a decorative stitch, and whether it passes the openings of plate and foot."""

from __future__ import annotations

from collections.abc import Mapping
from math import floor

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, fine_length, optional_fine_length
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Rounding, Saying, Tape, nearest
from handout_engine.amounts.sources import PRACTICE
from handout_engine.working.cautions import WIDE_STITCH, WING_NEEDLE
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet

WING_100, WING_120, UNIVERSAL = "wing 100", "wing 120", "universal 80"
NUMBERS: Mapping[str, int] = {WING_100: 100, WING_120: 120, UNIVERSAL: 80}
THREADS: Mapping[str, str] = {
    WING_100: "fine two-ply cotton thread, the same on top and in the bobbin",
    WING_120: "fine two-ply cotton thread, the same on top and in the bobbin",
    UNIVERSAL: "embroidery thread on top, fine thread in the bobbin",
}


class NeedleInputs(Technique):
    """The inputs that say whether a wide stitch passes the machine's openings."""

    needle = choice(
        "needle",
        "A wing needle opens holes; a plain one only sews.",
        WING_100,
        WING_120,
        UNIVERSAL,
        group=SEWING,
        basis=PRACTICE,
    )
    stitch_width = fine_length(
        "stitch width",
        "How far the stitch swings from side to side.",
        "2.5 mm",
        ("0 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    needle_spread = optional_fine_length(
        "width of the needle",
        "Measured across the wings at their widest.",
        "its number in hundredths of a millimetre; wings are wider, so measure yours",
        ("0.5 mm", "6 mm"),
        group=SEWING,
    )
    opening = optional_fine_length(
        "opening of plate and foot",
        "The narrower of the two, measured.",
        "not measured; the hand wheel decides",
        ("0.5 mm", "20 mm"),
        group=SEWING,
    )
    clearance = fine_length(
        "clearance",
        "Kept free in that opening, both sides together.",
        "0.5 mm",
        ("0 mm", "3 mm"),
        group=SEWING,
        basis=PRACTICE,
    )

    def label_of(self, label: str) -> str:
        """A label, with how the needle's width is known."""
        known = "at least" if self.needle_spread is None else "as measured"
        return super().label_of(label).replace("{known}", known)

    @value("one step of needle numbers", basis=PRACTICE, saying=Saying.FINE)
    def needle_unit(self) -> Length:
        """Needles are numbered by the hundredth of a millimetre."""
        return millimetres("1/100")

    @value("number of the needle", basis=PRACTICE)
    def needle_number(self) -> Count:
        """The number on the package."""
        return Count(NUMBERS[self.needle])

    @value("width of the needle, {known}", saying=Saying.FINE)
    def needle_width(self) -> Length:
        """As measured, or as wide as its blade; wings are wider."""
        if self.needle_spread is not None:
            return self.needle_spread
        return self.needle_number * self.needle_unit

    @value("opening that the stitch needs", saying=Saying.FINE)
    def opening_needed(self) -> Length:
        """The needle swings from side to side, and touches neither."""
        return self.stitch_width + self.needle_width + self.clearance

    @check
    def the_needle_passes_the_opening(self) -> None:
        """Refuse a stitch that strikes plate or foot."""
        if self.opening is None or self.opening_needed <= self.opening:
            return
        most = self.opening - self.needle_width - self.clearance
        ways = "a plate and a foot with a wider opening"
        if most.mm > 0:
            ways = f"a stitch of at most {_mm(most, floor)}, or {ways}"
        raise RefusalError(
            f"stitch_width {_mm(self.stitch_width)} with a needle {_mm(self.needle_width)} wide "
            f"strikes an opening of {_mm(self.opening)} and breaks; use {ways}",
            "stitch_width",
        )

    def add_needle_supplies(self, sheet: Worksheet) -> None:
        """Needle, thread, plate and foot, and the caution that goes with them."""
        kind, _, number = self.needle.partition(" ")
        sheet.have(
            f"a {kind} needle, number {number}",
            THREADS[self.needle],
            "the plate and the foot with a wide slot, not a straight-stitch plate with one round "
            "hole",
        )
        sheet.cautions.append(WIDE_STITCH if self.needle == UNIVERSAL else WING_NEEDLE)


def _mm(measured: Length, rounding: Rounding = nearest) -> str:
    return Tape().say(measured, Saying.FINE, rounding)
