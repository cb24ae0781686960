"""The needle of a decorative stitch, and whether it passes the openings of plate and foot."""

from __future__ import annotations

from collections.abc import Mapping
from math import floor

from handout_engine.amounts.inputs import SEWING, choice, fine_length, optional_fine_length
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Rounding, Saying, Tape, nearest
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.working.cautions import WIDE_STITCH, WING_NEEDLE
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet

WING_100, WING_120, UNIVERSAL = "wing 100", "wing 120", "universal 80"
NUMBERS: Mapping[str, int] = {WING_100: 100, WING_120: 120, UNIVERSAL: 80}
THREADS: Mapping[str, str] = {
    WING_100: "fine two-ply cotton thread, the same on top and in the bobbin",
    WING_120: "fine two-ply cotton thread, the same on top and in the bobbin",
    UNIVERSAL: "embroidery thread on top, fine thread in the bobbin",
}


class NeedleInputs:
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


def note_needle(sheet: Worksheet, inputs: NeedleInputs) -> Value:
    """Note the opening that the stitch needs; raises RefusalError where it strikes."""
    if inputs.needle_spread is None:
        hundredth = sheet.note("needle_unit", "one step of needle numbers", millimetres("1/100"),
                               "", basis=PRACTICE, saying=Saying.FINE)  # fmt: skip
        number = sheet.note("needle_number", "number of the needle", NUMBERS[inputs.needle], "",
                            basis=PRACTICE)  # fmt: skip
        spread = sheet.note("needle_width", "width of the needle, at least",
                            hundredth.length * number.whole, "{needle_number} × {needle_unit}",
                            saying=Saying.FINE)  # fmt: skip
    else:
        spread = sheet.note("needle_width", "width of the needle, as measured",
                            inputs.needle_spread, "", basis=GIVEN, saying=Saying.FINE)  # fmt: skip
    needed = sheet.note("opening_needed", "opening that the stitch needs",
                        inputs.stitch_width + spread.length + inputs.clearance,
                        "{stitch_width} + {needle_width} + {clearance}",
                        saying=Saying.FINE)  # fmt: skip
    if inputs.opening is not None and needed.length > inputs.opening:
        _refuse(inputs, inputs.opening, spread.length)
    return needed


def _refuse(inputs: NeedleInputs, opening: Length, spread: Length) -> None:
    most = opening - spread - inputs.clearance
    ways = "a plate and a foot with a wider opening"
    if most.mm > 0:
        ways = f"a stitch of at most {_mm(most, floor)}, or {ways}"
    raise RefusalError(
        f"stitch_width {_mm(inputs.stitch_width)} with a needle {_mm(spread)} wide strikes an "
        f"opening of {_mm(opening)} and breaks; use {ways}",
        "stitch_width",
    )


def _mm(measured: Length, rounding: Rounding = nearest) -> str:
    return Tape().say(measured, Saying.FINE, rounding)


def add_needle_supplies(sheet: Worksheet, inputs: NeedleInputs) -> None:
    """Needle, thread, plate and foot, and the caution that goes with them."""
    wing = inputs.needle != UNIVERSAL
    kind, _, number = inputs.needle.partition(" ")
    sheet.supplies.append(Supply(f"a {kind} needle, number {number}"))
    sheet.supplies.append(Supply(THREADS[inputs.needle]))
    sheet.supplies.append(Supply("the plate and the foot with a wide slot, not a straight-stitch "
                                 "plate with one round hole"))  # fmt: skip
    sheet.cautions.append(WING_NEEDLE if wing else WIDE_STITCH)
