"""Sleeves cut in one with the body: the shoulder runs on over the arm, a curve lies under it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import atan2, cos, hypot, sin

from handout_engine.amounts.declaring import Worked, check, drafted, value
from handout_engine.amounts.inputs import length, length_by_choice
from handout_engine.amounts.lengths import Length, from_float, millimetres, most
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.bodies.measures import LENGTHS
from handout_engine.drafting.arms import ArmInputs, sleeve_trim
from handout_engine.drafting.body_block import ROUND
from handout_engine.drafting.curves import Line, point_along, round_corner, run
from handout_engine.geometry.points import Point, snapped

TAPE = Tape(finest=32)
TRIALS = 12
"""How often the slope of a sleeve's end is improved; each time it is nearly right already."""
LEAST_STRAIGHT = millimetres(10)
"""What is left straight at least of the seams on both sides of the curve under the arm."""


class CutOnSleeveInputs(ArmInputs):
    """The inputs of a garment whose sleeves are cut in one with it.

    Its `side` runs straight from the corner under the arm down to the hem.
    """

    side: Worked[Line]

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

    @value("sleeve round the upper arm, at least")
    def sleeve_girth(self) -> Length:
        """Over what is worn under it."""
        return self.upper_arm + self.sleeve_ease

    @value("fall of the shoulder for each unit across")
    def shoulder_slope(self) -> Ratio:
        """The sleeve runs on in its line."""
        self.the_shoulder_is_long_enough()
        return self.shoulder_drop / (self.shoulder_end - self.neck_half_width)

    @value("fall of the shoulder's line, at the side of the chest")
    def shoulder_fall(self) -> Length:
        """There the corner under the arm lies below it."""
        return (self.quarter_chest - self.neck_half_width) * self.shoulder_slope

    @value("from the neck point down to the corner under the arm")
    def underarm_depth(self) -> Length:
        """So deep that half the sleeve lies square between it and that line, or as an armhole."""
        steepness = (1 + self.shoulder_slope * self.shoulder_slope).root()
        return most(self.shoulder_fall + self.sleeve_girth / 2 * steepness, self.armhole_depth)

    @property
    def underarm(self) -> Point:
        """The corner under the arm."""
        return self.block.quarter, snapped(float(self.underarm_depth))

    @value("sleeve from the shoulder's end, without its trim")
    def sleeve_cloth_reach(self) -> Length:
        """It is cut so much shorter."""
        return self.arm_length - self.sleeve_trim

    @drafted
    def over_and_end(self) -> tuple[Line, Line]:
        """The line over the arm, and the end of the sleeve from there to under the arm."""
        self.the_hand_passes_the_sleeve()
        block, reach = self.block, float(self.sleeve_cloth_reach)
        (x, y), (end_x, end_y) = block.neck_point, block.shoulder
        long = hypot(end_x - x, end_y - y)
        across, down = (end_x - x) / long, (end_y - y) / long
        tip = (snapped(end_x + across * reach), snapped(end_y + down * reach))
        inner = _inner_end(tip, (across, down), float(self.sleeve_edge) / 2, self.underarm)
        return (block.neck_point, block.shoulder, tip), (tip, inner)

    @value("from the neck point over shoulder and arm to the sleeve's end", basis=DRAWN)
    def over_arm(self) -> Length:
        """The seam over the arm, to where the sleeve is turned up."""
        over, _ = self.over_and_end
        return from_float(run(over))

    @check
    def the_curve_has_room_under_the_arm(self) -> None:
        """Refuse a curve that takes the whole seam under the arm, or at the side."""
        _, end = self.over_and_end
        seams = run((end[-1], self.underarm)), run(self.side)
        most_curve = from_float(min(seams)) - LEAST_STRAIGHT
        if self.underarm_curve > most_curve:
            less = at_most(self, "underarm_curve", most_curve)
            raise RefusalError(
                f"underarm_curve {TAPE.say(self.underarm_curve)} is longer than the seams under "
                f"the arm and at the side allow; use {ways(less, 'longer sleeves and sides')}",
                "underarm_curve",
            )

    @drafted
    def cut_on_sleeve(self) -> CutOnSleeve:
        """The sleeve half of front or back, its corner under the arm rounded."""
        self.the_curve_has_room_under_the_arm()
        return _drafted(float(self.underarm_curve), self.over_and_end, self.side)

    @value("seam under the arm and down the side, to the hem line", basis=DRAWN)
    def under_arm(self) -> Length:
        """Sewn in one, round the curve."""
        sleeve = self.cut_on_sleeve
        return from_float(run(sleeve.under) + run(sleeve.side))


@dataclass(frozen=True)
class CutOnSleeve:
    """The sleeve half of front or back, in mm: over the arm, across its end, under it; the side."""

    over: Line
    end: Line
    under: Line
    side: Line


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


def _drafted(reach: float, sleeve: tuple[Line, Line], side: Line) -> CutOnSleeve:
    """The corner under the arm rounded, smoothly into both seams."""
    over, end = sleeve
    corner, inner = side[0], end[-1]
    start, low = point_along((corner, inner), reach), point_along(side, reach)
    curve = round_corner(start, corner, low, ROUND)
    return CutOnSleeve(over, end, (inner, *curve), (low, side[-1]))
