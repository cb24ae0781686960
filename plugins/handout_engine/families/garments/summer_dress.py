"""A sleeveless summer dress: a yoke that buttons at the back, and a gathered or tucked skirt."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import optional_length, ratio
from handout_engine.amounts.lengths import ZERO
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.bodies.measures import measured
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drafting.block import SleevelessInputs, note_block
from handout_engine.drafting.garment_steps import add_shoulder_step, add_side_step
from handout_engine.drafting.gathered_skirts import SkirtInputs, note_skirt, note_skirt_armhole
from handout_engine.drafting.yokes import YokeInputs, note_yoke
from handout_engine.families.garments.yoke_pictures import Parts, finished_picture
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
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"


class SummerDress(SleevelessInputs, YokeInputs, SkirtInputs):
    """A sleeveless dress with a yoke."""

    title: ClassVar[str] = "Summer dress"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A sleeveless dress to the knee, its skirt gathered or tucked to a yoke that buttons at "
        "the back."
    )
    eases: ClassVar[tuple[str, str]] = ("10 cm", "8 cm")

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

    def whole(self) -> Worksheet:
        """Outlines, edges, pieces, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        block = note_block(sheet, self)
        _note_length(sheet, self)
        block = note_skirt_armhole(sheet, self, block)
        yoke = note_yoke(sheet, self, block, CLOTH)
        skirt = note_skirt(sheet, self, yoke, CLOTH)
        note_cloth(sheet, CLOTH, self.cloth())
        add_supplies(sheet, "for two armholes, {armhole_edge} each")
        add_sample(sheet)
        _add_steps(sheet)
        sheet.pictures.insert(0, finished_picture(sheet, Parts("dress", block, yoke, skirt)))
        return sheet


def _note_length(sheet: Worksheet, dress: SummerDress) -> None:
    label = "dress from the neck point to the hem"
    if dress.reach is not None:
        long = sheet.note("finished_length", label, dress.reach, "", basis=GIVEN)
    else:
        long = sheet.note("finished_length", label,
                          dress.back_waist + dress.body_length * dress.knee_share,
                          "{back_waist} + {body_length} × {knee_share}",
                          basis=PRACTICE)  # fmt: skip
    sheet.note("waist_to_hem", "from the waist down to the hem, for a sash",
               max(ZERO, long.length - dress.back_waist),
               "{finished_length} - {back_waist}, at least 0")  # fmt: skip


def _add_steps(sheet: Worksheet) -> None:
    add_cutting_steps(sheet)
    add_placket_step(sheet)
    add_facing_step(sheet)
    add_yoke_seam_steps(sheet)
    add_shoulder_step(sheet)
    add_side_step(sheet, "the armhole's seam line measures {armhole_edge} once round.")
    add_neck_step(sheet, " Trim and bind both armholes alike, beginning under the arm.")
    add_hem_step(sheet)
    add_button_step(sheet)


GARMENT = SummerDress
