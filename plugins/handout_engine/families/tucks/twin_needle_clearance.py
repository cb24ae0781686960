"""Whether a twin needle clears the openings of plate and foot, and how wide it may swing.

By the machine's greatest stitch width, which everybody knows, or by the slots of plate and foot,
measured. Where the one says yes and the other no, the smaller answer holds.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, count, fine_length, optional_fine_length
from handout_engine.amounts.lengths import ZERO, Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Rounding, Saying, Tape, nearest
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most
from handout_engine.families.tucks.twin_needle_drawing import Slot, slot_scene, swing_scene
from handout_engine.working.cautions import NEEDLE_BREAKS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

FINE = Saying.FINE


class TwinNeedleClearance(Technique):
    """The greatest stitch width that a twin needle may be sewn with."""

    title: ClassVar[str] = "Twin-needle clearance"
    family: ClassVar[str] = "tucks"
    summary: ClassVar[str] = (
        "How wide a stitch a twin needle may make before it strikes the plate or the foot."
    )

    needle_spacing = fine_length(
        "needle spacing",
        "Between the two needles, the first figure of the package.",
        "2 mm",
        ("0.5 mm", "10 mm"),
    )
    needle_number = count(
        "needle number",
        "The size of the needles, the second figure: 70, 80, 90.",
        80,
        130,
        basis=PRACTICE,
    )
    greatest_stitch = fine_length(
        "greatest stitch width",
        "The widest stitch your machine makes with one needle.",
        "7 mm",
        ("1 mm", "12 mm"),
        basis=PRACTICE,
    )
    margin = fine_length(
        "margin",
        "What is kept free of the greatest stitch width.",
        "1 mm",
        ("0 mm", "3 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    plate_slot = optional_fine_length(
        "slot of the plate",
        "Measured width of the opening in the needle plate.",
        "not measured; the greatest stitch width alone decides",
        ("1 mm", "20 mm"),
    )
    foot_slot = optional_fine_length(
        "slot of the foot",
        "Measured width of the opening in the presser foot.",
        "not measured; the greatest stitch width alone decides",
        ("1 mm", "20 mm"),
    )
    clearance = fine_length(
        "clearance",
        "Kept free in a measured slot, both sides together.",
        "0.5 mm",
        ("0 mm", "2 mm"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """The greatest stitch width; raises RefusalError for needles that do not pass at all."""
        sheet = Worksheet(technique=self)
        by_machine = _note_by_machine(sheet, self)
        blade = _note_blade(sheet)
        by_slot = _note_by_slot(sheet, self, blade)
        answer = _note_answer(sheet, by_machine, by_slot)
        sheet.supplies.append(Supply("the twin needle", size=sheet["needle_spacing"]))
        sheet.supplies.append(Supply("a plate and a foot with a wide slot, not a straight-stitch "
                                     "plate with one round hole"))  # fmt: skip
        sheet.cautions.extend((NEEDLE_BREAKS, PINS_AND_IRON))
        _add_steps(sheet, answer)
        _draw(sheet, blade, answer)
        return sheet


def _note_by_machine(sheet: Worksheet, needle: TwinNeedleClearance) -> Value:
    """Note the stitch width that the machine's own greatest one leaves; raises RefusalError."""
    left = needle.greatest_stitch - needle.needle_spacing - needle.margin
    if left < ZERO:
        room = needle.greatest_stitch - needle.margin
        raise RefusalError(
            f"needles {_mm(needle.needle_spacing)} apart do not pass an opening made for a stitch "
            f"of {_mm(needle.greatest_stitch)} with {_mm(needle.margin)} to spare; use "
            + _needles_within(needle, room),
            "needle_spacing",
        )
    return sheet.note("by_machine", "by the machine's greatest stitch width", left,
                      "{greatest_stitch} - {needle_spacing} - {margin}", saying=FINE)  # fmt: skip


def _note_blade(sheet: Worksheet) -> Value:
    hundredth = sheet.note("needle_unit", "one step of needle numbers", millimetres("1/100"), "",
                           basis=PRACTICE, saying=FINE)  # fmt: skip
    return sheet.note("blade", "diameter of one blade",
                      hundredth.length * sheet["needle_number"].whole,
                      "{needle_number} × {needle_unit}", saying=FINE)  # fmt: skip


def _note_by_slot(
    sheet: Worksheet, needle: TwinNeedleClearance, blade: Value
) -> Value | None:  # fmt: skip
    """Note the stitch width by the narrower measured slot, where any is; raises RefusalError."""
    measured = [sheet[name] for name in ("plate_slot", "foot_slot") if sheet[name].amount]
    if not measured:
        return None
    slot = min(measured, key=lambda each: each.length)
    sheet.note("slot", "the narrower measured slot", slot.length, "{slot}", saying=FINE,
               slot=slot)  # fmt: skip
    taken = needle.needle_spacing + blade.length + needle.clearance
    left = slot.length - taken
    if left < ZERO:
        room = slot.length - blade.length - needle.clearance
        raise RefusalError(
            f"{slot.label} {_mm(slot.length)} is too narrow: needles {_mm(needle.needle_spacing)} "
            f"apart with blades of {_mm(blade.length)} need {_mm(taken)}; use a wider slot, or "
            + _needles_within(needle, room),
            slot.name,
        )
    return sheet.note("by_slot", "by the measured slot", left,
                      "{slot} - {needle_spacing} - {blade} - {clearance}", saying=FINE)  # fmt: skip


def _note_answer(sheet: Worksheet, by_machine: Value, by_slot: Value | None) -> Value:
    """Note the smaller of both answers, and in words what it means."""
    smaller = by_machine
    if by_slot is not None and by_slot.length < by_machine.length:
        smaller = by_slot
    answer = sheet.note("greatest_width", "widest stitch with this twin needle", smaller.length,
                        "{smaller}", saying=FINE, smaller=smaller)  # fmt: skip
    words = "straight stitch only" if not answer.length else "straight and narrow zigzag stitches"
    sheet.note("verdict", "what it may sew", words, "", basis=PRACTICE)
    return answer


def _add_steps(sheet: Worksheet, answer: Value) -> None:
    if answer.length:
        sheet.step("Set the stitch width to at most {answer}, and lock it there if the machine "
                   "can be told that a twin needle is in.", answer=answer)  # fmt: skip
    else:
        sheet.step("Set a straight stitch, width {answer}, needle in its middle position: this "
                   "twin needle sews nothing wider.", answer=answer)  # fmt: skip
    sheet.step(
        "Put in plate and foot with the wide slot. Turn the hand wheel towards you through one "
        "whole stitch of the pattern, to its left and to its right.",
        "neither needle touches plate or foot; you can see a gap at both sides.",
    )
    sheet.sample.append(
        Step(
            sentence("Sew a hand's length on a scrap, slowly, with the width set to {answer}.",
                     answer=answer),
            sentence("there is no click and no scratch on the blades; if there is, set the stitch "
                     "narrower at once."),
        )
    )  # fmt: skip


def _draw(sheet: Worksheet, blade: Value, answer: Value) -> None:
    words = sentence(
        "Needles {spacing} apart may swing {answer} to make their widest stitch.",
        spacing=sheet["needle_spacing"], answer=answer,
    )  # fmt: skip
    measured = "slot" in sheet.values
    opening = sheet["slot"] if measured else sheet["greatest_stitch"]
    slot = Slot(opening, sheet["needle_spacing"], blade, answer, measured)
    sheet.pictures.extend(
        (
            Picture("finished", sentence(
                "The opening from above, much enlarged: both needles at the left end of their "
                "swing, and dotted at its right end."),
                slot_scene(slot, sentence("Twin needle in its slot"), words), True),
            Picture("sum", sentence("How the width of the opening is used up."),
                    swing_scene(slot, sentence("Width of the opening"), words)),
        )
    )  # fmt: skip


def _needles_within(needle: TwinNeedleClearance, room: Length) -> str:
    return at_most(needle, "needle_spacing", room, "a needle_spacing of at most {}") or "one needle"


def _mm(amount: Length, rounding: Rounding = nearest) -> str:
    return Tape().say(amount, FINE, rounding)


TECHNIQUE = TwinNeedleClearance
