"""A sleeveless summer dress: a yoke that buttons at the back, and a gathered or tucked skirt."""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length, most
from handout_engine.amounts.naming import constant
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from handout_engine.bodies.measures import measured
from handout_engine.drafting.armholes import SleevelessInputs
from handout_engine.drafting.garment_steps import add_shoulder_step, add_side_step
from handout_engine.drafting.gathered_skirts import SkirtInputs
from handout_engine.drafting.pieces import CutPiece
from handout_engine.families.garments.yoke_drawing import finished_picture
from handout_engine.families.garments.yoke_steps import (
    add_button_step,
    add_cutting_steps,
    add_facing_step,
    add_hem_step,
    add_neck_step,
    add_placket_step,
    add_sample,
    add_supplies,
    add_yoke_seam_steps,
)
from handout_engine.working.workings import Seam
from handout_engine.working.worksheet import Worksheet

NOTHING = constant("nothing", ZERO, GEOMETRY)


class SummerDress(SleevelessInputs, SkirtInputs):
    """A sleeveless dress with a yoke."""

    title = "Summer dress"
    family = "garments"
    summary = (
        "A sleeveless dress to the knee, its skirt gathered or tucked to a yoke that buttons at "
        "the back."
    )
    eases = ("10 cm", "8 cm")

    back_waist = measured("back_waist")
    yoke_share = ratio(
        "yoke share",
        "Depth of the yoke for each unit of the armhole's depth, which is less "
        "than that of a sleeve.",
        "0.75",
        ("0.5", "0.9"),
        basis=PRACTICE,
    )
    knee_share = ratio(
        "share below the waist",
        "From the waist down, for each unit of body length.",
        "0.3",
        ("0.15", "0.6"),
        basis=PRACTICE,
    )
    reach = optional_length(
        "length",
        "From the neck point to the finished hem.",
        "to the knee: the waist and its share of the body length",
        ("20 cm", "120 cm"),
        in_use="finished_length",
    )

    @value("dress from the neck point to the hem", basis=PRACTICE)
    def finished_length(self) -> Length:
        """As asked for, or to about the knee."""
        if self.reach is not None:
            return self.reach
        return self.back_waist + self.body_length * self.knee_share

    @value("from the waist down to the hem, for a sash")
    def waist_to_hem(self) -> Length:
        """Nothing, where the dress ends above the waist."""
        return most(self.finished_length - self.back_waist, NOTHING)

    @property
    def drafts(self) -> tuple[CutPiece, ...]:
        """Every piece, in the order of the cut list."""
        return (*self.yoke_pieces, *self.skirt_pieces)

    def cut(self, sheet: Worksheet) -> None:
        """Yokes and skirt."""
        super().cut(sheet)
        sheet.seams.append(Seam("all seams", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the back placket, made while the skirt lies flat, to the buttons."""
        add_supplies(sheet, "for two armholes, {armhole_edge} each")
        add_sample(sheet)
        add_cutting_steps(sheet)
        add_placket_step(sheet)
        add_facing_step(sheet)
        add_yoke_seam_steps(sheet)
        add_shoulder_step(sheet)
        add_side_step(sheet, "the armhole's seam line measures {armhole_edge} once round.")
        add_neck_step(sheet, " Trim and bind both armholes alike, beginning under the arm.")
        add_hem_step(sheet, self)
        add_button_step(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The dress from the front, then each piece."""
        sheet.pictures.append(finished_picture(sheet, "dress", self))
        super().draw(sheet)


GARMENT = SummerDress
