"""A day gown: a yoke that buttons at the back, a long gathered or tucked skirt, set-in sleeves."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import ClassVar

from handout_engine.amounts.inputs import (
    choice,
    length_by_choice,
    optional_length,
    optional_ratio,
    ratio,
)
from handout_engine.amounts.lengths import millimetres
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import ESTIMATE, GIVEN, PRACTICE
from handout_engine.bodies.measures import LENGTHS
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drafting.block import note_block
from handout_engine.drafting.garment_steps import add_shoulder_step
from handout_engine.drafting.gathered_skirts import SkirtInputs, note_skirt, note_skirt_armhole
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.drafting.sleeves import SleeveInputs, note_sleeve
from handout_engine.drafting.yokes import YokeInputs, note_yoke
from handout_engine.families.garments.garment_drawing import hanging_sleeve
from handout_engine.families.garments.yoke_pictures import Parts, finished_picture
from handout_engine.families.garments.yoke_steps import (
    add_button_step,
    add_cutting_steps,
    add_facing_step,
    add_hem_step,
    add_neck_step,
    add_placket_step,
    add_sample,
    add_set_in_step,
    add_sleeve_end_step,
    add_supplies,
    add_yoke_seam_steps,
)
from handout_engine.working.cautions import LONG_HEM
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"
BY_SIZE, BELOW_FOOT, ANKLE, CHRISTENING = (
    "usual for the size", "below the foot", "ankle", "christening",
)  # fmt: skip
WALKS = LENGTHS["80"]
SOLE_AT_50, SOLE_GROWS = Fraction("0.765"), Fraction("0.05")
BEYOND = {BELOW_FOOT: millimetres(80), CHRISTENING: millimetres(350)}


class DayGown(SleeveInputs, YokeInputs, SkirtInputs):
    """A long gown for the day, or for a christening."""

    title: ClassVar[str] = "Day gown"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A gown with a yoke, sleeves and a skirt to the feet or beyond, buttoned at the back."
    )
    eases: ClassVar[tuple[str, str]] = ("10 cm", "10 cm")

    hem_at = choice(
        "hem at",
        "Below the foot up to size 74 and at the ankle from size 80, since she "
        "walks then; or one of these for every size.",
        BY_SIZE,
        BELOW_FOOT,
        ANKLE,
        CHRISTENING,
        basis=PRACTICE,
    )
    sole_share = optional_ratio(
        "share to the sole",
        "From the neck point to the sole of the foot, for each unit of body length.",
        "from 0.765 at size 50 to 0.815 at size 98",
        ("0.6", "0.95"),
        basis=ESTIMATE,
    )
    below_foot = length_by_choice(
        "below the foot",
        "How far a hem below the foot lies below it.",
        "8 cm, and 35 cm for a christening gown",
        ("0 cm", "60 cm"),
        basis=PRACTICE,
    )
    ankle_share = ratio(
        "ankle share",
        "Height of the ankle over the sole, for each unit of body length.",
        "0.05",
        ("0", "0.2"),
        basis=ESTIMATE,
    )
    reach = optional_length(
        "length",
        "From the neck point to the finished hem.",
        "as “hem at” says",
        ("25 cm", "170 cm"),
        in_use="finished_length",
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The usual figures of block, yoke and sleeve, and how far it is to sole and hem."""
        body = self.body_length or LENGTHS[self.size]
        sole = SOLE_AT_50 + (body - LENGTHS["50"]) / (LENGTHS["98"] - LENGTHS["50"]) * SOLE_GROWS
        below = BEYOND.get(self.hem_at, BEYOND[BELOW_FOOT])
        return {**super().usual, "sole_share": sole, "below_foot": below}

    def whole(self) -> Worksheet:
        """Outlines, edges, pieces, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        block = note_block(sheet, self)
        _note_length(sheet, self)
        block = note_skirt_armhole(sheet, self, block)
        yoke = note_yoke(sheet, self, block, CLOTH)
        skirt = note_skirt(sheet, self, yoke, CLOTH)
        note_piece(sheet, note_sleeve(sheet, self, block), Cutting(CLOTH, 2))
        note_cloth(sheet, CLOTH, self.cloth())
        add_supplies(sheet)
        add_sample(sheet)
        _add_steps(sheet)
        hanging = hanging_sleeve(block.shoulder, block.underarm, sheet["sleeve_reach"].mm,
                                 sheet["sleeve_edge"].mm / 2)  # fmt: skip
        sheet.pictures.insert(
            0, finished_picture(sheet, Parts("gown", block, yoke, skirt, hanging))
        )
        return sheet


def _note_length(sheet: Worksheet, gown: DayGown) -> None:
    """Note how long it is; a hem below the foot carries its caution."""
    assert gown.sole_share is not None
    sole = sheet.note("sole", "from the neck point to the sole", gown.body_length * gown.sole_share,
                      "{body_length} × {sole_share}", basis=ESTIMATE)  # fmt: skip
    label, hem_at = "gown from the neck point to the hem", gown.hem_at
    if hem_at == BY_SIZE:
        hem_at = ANKLE if gown.body_length >= WALKS else BELOW_FOOT
    if gown.reach is not None:
        long = sheet.note("finished_length", label, gown.reach, "", basis=GIVEN)
    elif hem_at == ANKLE:
        long = sheet.note("finished_length", label,
                          sole.length - gown.body_length * gown.ankle_share,
                          "{sole} - {body_length} × {ankle_share}", basis=PRACTICE)  # fmt: skip
    else:
        long = sheet.note("finished_length", label, sole.length + gown.below_foot,
                          "{sole} + {below_foot}", basis=PRACTICE)  # fmt: skip
    if long.length > sole.length:
        sheet.cautions.append(LONG_HEM)


def _add_steps(sheet: Worksheet) -> None:
    add_cutting_steps(sheet, ", and a pair of sleeves")
    add_placket_step(sheet)
    add_facing_step(sheet)
    add_yoke_seam_steps(sheet)
    add_shoulder_step(sheet)
    add_set_in_step(sheet)
    add_sleeve_end_step(sheet)
    sheet.step(
        "Sew each side seam and the seam under its arm in one, {seam_allowance} from the edge, "
        "armhole seam on armhole seam and notch on notch, and overcast the edges together; in "
        "sheer cloth make French seams of them.",
        "the sleeve's end is {sleeve_edge} round, and a fist passes.",
    )
    add_neck_step(sheet)
    add_hem_step(sheet)
    add_button_step(sheet)


GARMENT = DayGown
