"""Sleeves cut in one with the body: the shoulder runs on over the arm, a curve lies under it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import atan2, cos, hypot, sin, sqrt

from handout_engine.amounts.inputs import length, length_by_choice
from handout_engine.amounts.lengths import Length, from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.bodies.measures import LENGTHS
from handout_engine.drafting.arms import ArmInputs, note_sleeve_edge, sleeve_trim
from handout_engine.drafting.body_block import ROUND, BodyBlock
from handout_engine.drafting.curves import Line, point_along, round_corner, run
from handout_engine.geometry.points import Point, snapped
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
TRIALS = 12
"""How often the slope of a sleeve's end is improved; each time it is nearly right already."""
LEAST_STRAIGHT = millimetres(10)
"""What is left straight at least of the seams on both sides of the curve under the arm."""


class CutOnSleeveInputs(ArmInputs):
    """The inputs of a garment whose sleeves are cut in one with it."""

    neck_ease = length(
        "neck ease",
        "Added to the neck for the finished neck edge; it lies over others.",
        "4 cm",
        ("0.5 cm", "15 cm"),
        basis=PRACTICE,
    )
    shoulder_drop = length_by_choice(
        "shoulder drop",
        "How far the shoulder falls to its end; the sleeve runs on in its "
        "line, so a flat one lets the arm rise.",
        "from 8 mm at size 50 to 12 mm at size 98",
        ("0 cm", "5 cm"),
        basis=PRACTICE,
    )
    sleeve_ease = length(
        "sleeve ease",
        "Added to the upper arm, over what is worn under it.",
        "8 cm",
        ("3 cm", "20 cm"),
        basis=PRACTICE,
    )
    sleeve_end_ease = length(
        "ease at the sleeve end", "Added to the wrist.", "6 cm", ("0 cm", "20 cm"), basis=PRACTICE
    )
    sleeve_trim: Length = sleeve_trim()
    underarm_curve = length(
        "curve under the arm",
        "From the corner under the arm to both ends of the curve.",
        "4 cm",
        ("1 cm", "15 cm"),
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, with a flatter shoulder."""
        body = self.body_length or LENGTHS[self.size]
        drop = millimetres(8) + (body - LENGTHS["50"]) * Fraction(4, 480)
        return {**super().usual, "shoulder_drop": drop}


@dataclass(frozen=True)
class CutOnSleeve:
    """The sleeve half of front or back, in mm: over the arm, across its end, under it; the side."""

    over: Line
    end: Line
    under: Line
    side: Line


def note_underarm(sheet: Worksheet, garment: CutOnSleeveInputs, block: BodyBlock) -> Point:
    """Note how deep the corner under the arm lies, so that the arm has room; returns it."""
    girth = sheet.note("sleeve_girth", "sleeve round the upper arm, at least",
                       garment.upper_arm + garment.sleeve_ease,
                       "{upper_arm} + {sleeve_ease}")  # fmt: skip
    along = sheet["shoulder_end"].length - sheet["neck_half_width"].length
    slope = sheet.note("shoulder_slope", "fall of the shoulder for each unit across",
                       garment.shoulder_drop / along,
                       "{shoulder_drop} / ({shoulder_end} - {neck_half_width})").ratio  # fmt: skip
    fall = (sheet["quarter_chest"].length - sheet["neck_half_width"].length) * slope
    square = from_float(girth.mm / 2 * sqrt(float(1 + slope * slope)))
    depth = sheet.note(
        "underarm_depth",
        "from the neck point down to the corner under the arm",
        max(fall + square, sheet["armhole_depth"].length),
        "({quarter_chest} - {neck_half_width}) × {shoulder_slope} + {sleeve_girth} / 2 × "
        "√(1 + {shoulder_slope} × {shoulder_slope}), at least {armhole_depth}",
    )
    return block.quarter, snapped(depth.mm)


def note_cut_on_sleeve(
    sheet: Worksheet, garment: CutOnSleeveInputs, block: BodyBlock, side: Line
) -> CutOnSleeve:
    """Note the sleeve's figures and draft it; raises RefusalError where it cannot be.

    `side` runs straight from the corner under the arm down to the hem.
    """
    edge = note_sleeve_edge(sheet, sheet["wrist"])
    reach = sheet.note("sleeve_cloth_reach", "sleeve from the shoulder's end, without its trim",
                       garment.arm_length - garment.sleeve_trim,
                       "{arm_length} - {sleeve_trim}")  # fmt: skip
    (x, y), (end_x, end_y) = block.neck_point, block.shoulder
    long = hypot(end_x - x, end_y - y)
    across, down = (end_x - x) / long, (end_y - y) / long
    tip = (snapped(end_x + across * reach.mm), snapped(end_y + down * reach.mm))
    inner = _inner_end(tip, (across, down), edge.mm / 2, side[0])
    over = (block.neck_point, block.shoulder, tip)
    sheet.note("over_arm", "from the neck point over shoulder and arm to the sleeve's end",
               from_float(run(over)), "", basis=DRAWN)  # fmt: skip
    _check_curve(garment, (run((inner, side[0])), run(side)))
    sleeve = _drafted(float(garment.underarm_curve), (over, (tip, inner)), side)
    under = from_float(run(sleeve.under) + run(sleeve.side))
    sheet.note("under_arm", "seam under the arm and down the side, to the hem line", under, "",
               basis=DRAWN)  # fmt: skip
    return sleeve


def _inner_end(tip: Point, along: Point, half: float, corner: Point) -> Point:
    """The end of the sleeve under the arm: `half` from its tip over the arm.

    The sleeve tapers towards it from the corner under the arm. Both ends of that line take a half
    of what its two seams are out of parallel, so that it runs on where front and back are joined.
    """
    across, down = along
    inner = tip
    turn = 0.0
    for _ in range(TRIALS):
        out, in_ = half * sin(turn), half * cos(turn)
        inner = (tip[0] - down * in_ + across * out, tip[1] + across * in_ + down * out)
        x, y = inner[0] - corner[0], inner[1] - corner[1]
        turn = atan2(down * x - across * y, across * x + down * y) / 2
    return snapped(inner[0]), snapped(inner[1])


def _check_curve(garment: CutOnSleeveInputs, seams: tuple[float, float]) -> None:
    most = from_float(min(seams)) - LEAST_STRAIGHT
    if garment.underarm_curve > most:
        raise RefusalError(
            f"underarm_curve {TAPE.say(garment.underarm_curve)} is longer than the seams under the "
            f"arm and at the side allow; use "
            f"{ways(at_most(garment, 'underarm_curve', most), 'longer sleeves and sides')}",
            "underarm_curve",
        )


def _drafted(reach: float, sleeve: tuple[Line, Line], side: Line) -> CutOnSleeve:
    """The corner under the arm rounded, smoothly into both seams."""
    over, end = sleeve
    corner, inner = side[0], end[-1]
    start, low = point_along((corner, inner), reach), point_along(side, reach)
    curve = round_corner(start, corner, low, ROUND)
    return CutOnSleeve(over, end, (inner, *curve), (low, side[-1]))
