"""Whether a twin needle clears the openings of plate and foot, and how wide it may swing.

By the machine's greatest stitch width, which everybody knows, or by the slots of plate and foot,
measured. Where the one says yes and the other no, the smaller answer holds.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, count, fine_length, optional_fine_length
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_most
from handout_engine.families.tucks.twin_needle_drawing import Slot, slot_scene, swing_scene
from handout_engine.working.cautions import NEEDLE_BREAKS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Supply
from handout_engine.working.worksheet import Worksheet

FINE = Saying.FINE


class TwinNeedleClearance(Technique):
    """The greatest stitch width that a twin needle may be sewn with."""

    title = "Twin-needle clearance"
    family = "tucks"
    summary = "How wide a stitch a twin needle may make before it strikes the plate or the foot."

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

    @value("by the machine's greatest stitch width", saying=FINE)
    def by_machine(self) -> Length:
        """The opening is made for one needle that swings so far."""
        return self.greatest_stitch - self.needle_spacing - self.margin

    @check
    def the_needles_pass_the_opening(self) -> None:
        """Refuse needles that stand further apart than one of them may swing."""
        if self.by_machine.mm < 0:
            raise RefusalError(
                f"needles {_mm(self.needle_spacing)} apart do not pass an opening made for a "
                f"stitch of {_mm(self.greatest_stitch)} with {_mm(self.margin)} to spare; use "
                + self._needles_within(self.greatest_stitch - self.margin),
                "needle_spacing",
            )

    @value("one step of needle numbers", basis=PRACTICE, saying=FINE)
    def needle_unit(self) -> Length:
        """The metric number counts hundredths of a millimetre."""
        return millimetres("1/100")

    @value("diameter of one blade", saying=FINE)
    def blade(self) -> Length:
        """Half of each blade lies beyond the middle of its needle."""
        return self.needle_number * self.needle_unit

    @value("the narrower measured slot", saying=FINE)
    def slot(self) -> Length | None:
        """None where neither is measured."""
        if self.plate_slot is None or self.foot_slot is None:
            return self.foot_slot if self.plate_slot is None else self.plate_slot
        return self.plate_slot if self.plate_slot <= self.foot_slot else self.foot_slot

    @value("by the measured slot", saying=FINE)
    def by_slot(self) -> Length | None:
        """What needles, blades and clearance leave of it."""
        if self.slot is None:
            return None
        return self.slot - self.needle_spacing - self.blade - self.clearance

    @check
    def the_blades_pass_the_slot(self) -> None:
        """Refuse blades that strike the narrower slot in the middle of the swing."""
        if self.slot is not None and self.by_slot is not None and self.by_slot.mm < 0:
            plate = self.slot == self.plate_slot
            which, name = ("plate", "plate_slot") if plate else ("foot", "foot_slot")
            room = self.slot - self.blade - self.clearance
            taken = self.needle_spacing + self.blade + self.clearance
            raise RefusalError(
                f"slot of the {which} {_mm(self.slot)} is too narrow: needles "
                f"{_mm(self.needle_spacing)} apart with blades of {_mm(self.blade)} need "
                f"{_mm(taken)}; use a wider slot, or " + self._needles_within(room),
                name,
            )

    def _needles_within(self, room: Length) -> str:
        narrower = at_most(self, "needle_spacing", room, "a needle_spacing of at most {}")
        return narrower or "one needle"

    @value("widest stitch with this twin needle", saying=FINE)
    def greatest_width(self) -> Length:
        """The smaller of both answers."""
        if self.by_slot is not None and self.by_slot < self.by_machine:
            return self.by_slot
        return self.by_machine

    @value("what it may sew", basis=PRACTICE)
    def verdict(self) -> str:
        """The answer in words."""
        return "straight and narrow zigzag stitches" if self.swings else "straight stitch only"

    @property
    def swings(self) -> bool:
        """Whether it sews more than a straight stitch."""
        return bool(self.greatest_width)

    @value("what stays free of the opening", saying=FINE)
    def kept_free(self) -> Length:
        """Needles and stitch take the rest."""
        opening = self.greatest_stitch if self.slot is None else self.slot
        return opening - self.needle_spacing - self.greatest_width

    def sew(self, sheet: Worksheet) -> None:
        """The width set, tried by hand, and a slow row on a scrap."""
        sheet.supplies.append(Supply("the twin needle", size=sheet["needle_spacing"]))
        sheet.have(
            "a plate and a foot with a wide slot, not a straight-stitch plate with one round hole"
        )
        sheet.cautions.extend((NEEDLE_BREAKS, PINS_AND_IRON))
        sheet.step(
            "Set the stitch width to at most {greatest_width}, and lock it there if the machine "
            "can be told that a twin needle is in."
            if self.swings
            else "Set a straight stitch, width {greatest_width}, needle in its middle position: "
            "this twin needle sews nothing wider."
        )
        sheet.step(
            "Put in plate and foot with the wide slot. Turn the hand wheel towards you through one "
            "whole stitch of the pattern, to its left and to its right.",
            "neither needle touches plate or foot; you can see a gap at both sides.",
        )
        sheet.trial(
            "Sew a hand's length on a scrap, slowly, with the width set to {greatest_width}.",
            "there is no click and no scratch on the blades; if there is, set the stitch "
            "narrower at once.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The opening from above, and how its width is used up."""
        words = sheet.sentence(
            "Needles {needle_spacing} apart may swing {greatest_width} to make their widest stitch."
        )
        measured = self.slot is not None
        slot = Slot(
            sheet["slot" if measured else "greatest_stitch"],
            sheet["needle_spacing"],
            sheet["blade"],
            sheet["greatest_width"],
            sheet["kept_free"],
            measured,
        )
        above = sentence(
            "The opening from above, much enlarged: both needles at the left end of their swing, "
            "and dotted at its right end."
        )
        scene = slot_scene(slot, sentence("Twin needle in its slot"), words)
        sheet.pictures.append(Picture("finished", above, scene, True))
        used = sentence("How the width of the opening is used up.")
        scene = swing_scene(slot, sentence("Width of the opening"), words)
        sheet.pictures.append(Picture("sum", used, scene))


def _mm(amount: Length) -> str:
    return Tape().say(amount, FINE)


TECHNIQUE = TwinNeedleClearance
