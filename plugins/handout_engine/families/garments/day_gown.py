"""A day gown: a yoke that buttons at the back, a long gathered or tucked skirt, set-in sleeves."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import (
    choice,
    length_by_choice,
    optional_length,
    optional_ratio,
    ratio,
)
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.naming import constant
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import ESTIMATE, PRACTICE
from handout_engine.bodies.measures import LENGTHS
from handout_engine.drafting.garment_steps import add_shoulder_step
from handout_engine.drafting.gathered_skirts import SkirtInputs
from handout_engine.drafting.pieces import CutPiece
from handout_engine.drafting.sleeves import SleeveInputs
from handout_engine.families.garments.garment_drawing import hanging_sleeve
from handout_engine.families.garments.yoke_drawing import finished_picture, trimmed_sleeve
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
from handout_engine.working.workings import Seam
from handout_engine.working.worksheet import Worksheet

BY_SIZE, BELOW_FOOT, ANKLE, CHRISTENING = (
    "usual for the size",
    "below the foot",
    "ankle",
    "christening",
)
WALKS = constant("the length at which she walks", LENGTHS["80"], PRACTICE)
SOLE_AT_50, SOLE_GROWS = Fraction("0.765"), Fraction("0.05")
BEYOND = {BELOW_FOOT: millimetres(80), CHRISTENING: millimetres(350)}


class DayGown(SleeveInputs, SkirtInputs):
    """A long gown for the day, or for a christening."""

    title = "Day gown"
    family = "garments"
    summary = "A gown with a yoke, sleeves and a skirt to the feet or beyond, buttoned at the back."
    eases = ("10 cm", "10 cm")

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

    @value("from the neck point to the sole", basis=ESTIMATE)
    def sole(self) -> Length:
        """No table of babies has it, so it is a share of the body length."""
        assert self.sole_share is not None
        return self.body_length * self.sole_share

    @value("gown from the neck point to the hem", basis=PRACTICE)
    def finished_length(self) -> Length:
        """As asked for, or to the ankle of a baby who walks, or beyond the feet of one who lies."""
        if self.reach is not None:
            return self.reach
        walks = self.body_length >= WALKS if self.hem_at == BY_SIZE else self.hem_at == ANKLE
        if walks:
            return self.sole - self.body_length * self.ankle_share
        return self.sole + self.below_foot

    @property
    def drafts(self) -> tuple[CutPiece, ...]:
        """Every piece, in the order of the cut list."""
        return (*self.yoke_pieces, *self.skirt_pieces, self.sleeve_piece)

    def cut(self, sheet: Worksheet) -> None:
        """Yokes, skirt and sleeves."""
        super().cut(sheet)
        sheet.seams.append(Seam("all seams", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the back placket, made while the skirt lies flat, to the buttons."""
        if self.finished_length > self.sole:
            sheet.cautions.append(LONG_HEM)
        add_supplies(sheet)
        add_sample(sheet)
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
        add_hem_step(sheet, self)
        add_button_step(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The gown from the front, then each piece."""
        sleeve = hanging_sleeve(
            self.block.shoulder,
            self.block.underarm,
            float(self.sleeve_reach),
            float(self.sleeve_edge) / 2,
        )
        sleeves = trimmed_sleeve(sleeve, float(self.sleeve_trim))
        sheet.pictures.append(finished_picture(sheet, "gown", self, sleeves))
        super().draw(sheet)


GARMENT = DayGown
