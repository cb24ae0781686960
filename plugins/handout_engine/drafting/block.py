"""The body block: neck, shoulder, armhole and side of a woven garment, drafted from measures.

The centre is at x = 0 and the point where the neck meets the shoulder at y = 0; front and back
differ in the depth of the neck only. The factors are common practice, and inputs.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from math import atan, pi
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, millimetres
from handout_engine.amounts.numbers import Ratio, smaller
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_most, more_than, ways, would_be
from handout_engine.bodies.measures import LENGTHS, measured
from handout_engine.drafting.body_block import TIGHTEST, BodyBlock
from handout_engine.drafting.curves import (
    radius,
    run,
    solved,
)
from handout_engine.drafting.garment import Garment
from handout_engine.geometry.points import Point
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
DEEPEST = Fraction(5, 2)
"""The deepest neck, for each unit of half its width: a deeper one can hardly be bound or faced."""
LEAST_SHOULDER = millimetres(20)
SPARE = 1.02
"""What the radius is drawn larger by, since a row of points turns a little tighter."""
MOST_LEAN = 35 * pi / 180
"""An armhole follows a side that leans to its square so far; beyond, it would hang below it."""


class BlockInputs(Garment):
    """The inputs of every garment that is drafted on the body block.

    `eases` of a garment are its usual chest ease at size 50, and from size 68 on; between the
    two it changes evenly, so that no garment is narrower for a longer baby.
    """

    eases: ClassVar[tuple[str, str]] = ("10 cm", "8 cm")

    neck = measured("neck")
    chest = measured("chest")
    shoulder_breadth = measured("shoulder_breadth")
    chest_ease = length_by_choice(
        "chest ease",
        "Added to the chest for room to move.",
        "usual for the garment and size",
        ("1 cm", "40 cm"),
        basis=PRACTICE,
    )
    neck_ease = length(
        "neck ease",
        "Added to the neck for the finished neck edge.",
        "3 cm",
        ("0.5 cm", "15 cm"),
        basis=PRACTICE,
    )
    neck_drop = length(
        "neck drop",
        "How much deeper the front neck is than half the neck is wide.",
        "3 mm",
        ("0 mm", "6 cm"),
        basis=PRACTICE,
    )
    back_neck_depth = length(
        "back neck depth",
        "From the neck point down to the centre back.",
        "1 cm",
        ("3 mm", "8 cm"),
        basis=PRACTICE,
    )
    shoulder_share = ratio(
        "shoulder share",
        "From the centre to the end of the shoulder seam, for each unit of shoulder breadth.",
        "0.45",
        ("0.3", "0.6"),
        basis=PRACTICE,
    )
    shoulder_drop = length_by_choice(
        "shoulder drop",
        "How far the shoulder seam falls to its end.",
        "from 1.5 cm at size 50 to 2 cm at size 98",
        ("0 cm", "5 cm"),
        basis=PRACTICE,
    )
    armhole_ease = length(
        "armhole ease",
        "Added to a quarter of the chest for the depth of the armhole.",
        "1.5 cm",
        ("0 cm", "8 cm"),
        basis=PRACTICE,
    )
    seam_allowance = length(
        "seam allowance",
        "Cut beyond every seam.",
        "1/4 in",
        ("1/8 in", "3/4 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The table's figures, and the ease and the drop of the shoulder for the body length."""
        usual = super().usual
        body = self.body_length or LENGTHS[self.size]
        small, other = map(read_length, self.eases)
        grown = smaller(
            Ratio(Fraction(1)), (body - LENGTHS["50"]) / (LENGTHS["68"] - LENGTHS["50"])
        )
        return {
            **usual,
            "chest_ease": small + (other - small) * grown,
            "shoulder_drop": millimetres(15) + (body - LENGTHS["50"]) * Fraction(5, 480),
        }


class SleevelessInputs(BlockInputs):
    """The inputs of a garment without sleeves, whose armhole lies higher."""

    armhole_ease = length(
        "armhole ease",
        "Added to a quarter of the chest for the depth of the armhole, "
        "1 cm less than where a sleeve is set in.",
        "5 mm",
        ("0 cm", "8 cm"),
        basis=PRACTICE,
    )


def note_block(sheet: Worksheet, garment: BlockInputs) -> BodyBlock:
    """Note the block's figures, and draft it; raises RefusalError where it cannot be."""
    chest = sheet.note("finished_chest", "chest of the garment",
                       garment.chest + garment.chest_ease, "{chest} + {chest_ease}")  # fmt: skip
    quarter = sheet.note("quarter_chest", "a quarter of the garment's chest",
                         chest.length / 4, "{finished_chest} / 4")  # fmt: skip
    neck = sheet.note("neck_edge", "neck edge", garment.neck + garment.neck_ease,
                      "{neck} + {neck_ease}")  # fmt: skip
    half = _neck_half(garment, neck.mm)
    sheet.note("neck_half_width", "half the width of the neck", half, "", basis=DRAWN)
    front = sheet.note("front_neck_depth", "depth of the front neck", half + garment.neck_drop,
                       "{neck_half_width} + {neck_drop}")  # fmt: skip
    end = sheet.note("shoulder_end", "from the centre to the end of the shoulder",
                     garment.shoulder_breadth * garment.shoulder_share,
                     "{shoulder_breadth} × {shoulder_share}", basis=PRACTICE)  # fmt: skip
    depth = sheet.note("armhole_depth", "from the neck point down to the underarm",
                       garment.chest / 4 + garment.armhole_ease,
                       "{chest} / 4 + {armhole_ease}", basis=PRACTICE)  # fmt: skip
    _refuse_too_deep(garment, half)
    _check(garment, half, end.length, quarter.length, depth.length)
    block = BodyBlock(
        quarter.mm,
        float(half),
        front.mm,
        float(garment.back_neck_depth),
        (end.mm, float(garment.shoulder_drop)),
        depth.mm,
        _tightest(garment),
    )
    _refuse_tight_neck(garment, block)
    along = from_float(run((block.neck_point, block.shoulder)))
    sheet.note("shoulder_seam", "shoulder seam", along, "", basis=DRAWN)
    return block


def note_armhole(sheet: Worksheet, block: BodyBlock, side: Point = (0.0, 1.0)) -> BodyBlock:
    """Note the armhole's length and return the block with it, square to the side seam.

    `side` is how far the side runs outward and down, so that the armhole runs on without a notch
    where front and back are joined there.
    """
    across, down = side
    lean = atan(across / down) if down > 0 else 0.0
    leaning = replace(block, lean=max(-MOST_LEAN, min(MOST_LEAN, lean)))
    sheet.note("armhole_edge", "one armhole, front and back", from_float(2 * run(leaning.armhole)),
               "", basis=DRAWN)  # fmt: skip
    return leaning


def _tightest(garment: BlockInputs) -> float:
    return SPARE * max(TIGHTEST, float(garment.seam_allowance))


def _refuse_tight_neck(garment: BlockInputs, block: BodyBlock) -> None:
    """Refuse a back neck that turns tighter than a baby's should, or its allowance can follow."""
    tightest = from_float(radius(block.back_neckline))
    if float(tightest) < TIGHTEST:
        raise RefusalError(
            f"the back neck would turn with a radius of only {TAPE.both(tightest)} at its lowest "
            "point; give back_neck_depth less, or neck_ease more",
            "back_neck_depth",
        )
    if tightest < garment.seam_allowance:
        raise RefusalError(
            f"seam_allowance {TAPE.say(garment.seam_allowance)} does not follow the back neck, "
            f"which turns with a radius of {TAPE.both(tightest)}; use a narrower one, or less "
            "back_neck_depth",
            "seam_allowance",
        )


def _neck_half(garment: BlockInputs, neck: float) -> Length:
    """The half width of the neck at which its curves are as long as the neck edge."""

    shoulder = (
        float(garment.shoulder_breadth * garment.shoulder_share),
        float(garment.shoulder_drop),
    )

    def around(half: float) -> float:
        drop, back = float(garment.neck_drop), float(garment.back_neck_depth)
        return BodyBlock(0, half, half + drop, back, shoulder, 0, _tightest(garment)).neckline

    try:
        return from_float(solved(around, neck, 1.0, shoulder[0] - 1.0))
    except ValueError:
        raise RefusalError(
            f"a neck edge of {TAPE.both(from_float(neck))} cannot be drawn between the shoulders, "
            f"which end {TAPE.both(from_float(shoulder[0]))} from the centre, with neck_drop "
            f"{TAPE.say(garment.neck_drop)}; give neck_ease less for a smaller neck, or "
            "neck_drop and back_neck_depth less for a shallower one",
            "neck_ease",
        ) from None


def _refuse_too_deep(garment: BlockInputs, half: Length) -> None:
    """Refuse a neck whose curve at the fold would be tighter than its allowance."""
    most = half * DEEPEST
    depths = {
        "back_neck_depth": (garment.back_neck_depth, most),
        "neck_drop": (garment.neck_drop, most - half),
    }
    for name, (given, allowed) in depths.items():
        if given > allowed:
            raise RefusalError(
                f"the neck would be only {TAPE.both(2 * half)} wide for its depth; use "
                f"{ways(at_most(garment, name, allowed), 'more neck_ease')}",
                name,
            )


def _check(garment: BlockInputs, half: Length, end: Length, quarter: Length, depth: Length) -> None:
    if end - half < LEAST_SHOULDER:
        raise RefusalError(
            f"the shoulder seam {would_be(end - half, 'long')}, less than "
            f"{TAPE.both(LEAST_SHOULDER)}; give neck_ease or the neck less, or shoulder_share more",
            "neck_ease",
        )
    if end >= quarter:
        wider = more_than(garment, "chest_ease", 4 * end - garment.chest,
                          "a chest_ease of more than {}")  # fmt: skip
        raise RefusalError(
            f"the shoulder reaches {TAPE.both(end)} from the centre, beyond the side at "
            f"{TAPE.both(quarter)}; use {ways(wider, 'less shoulder_share')}",
            "chest_ease",
        )
    if depth <= garment.shoulder_drop + millimetres(30):
        raise RefusalError(
            f"the armhole {would_be(depth - garment.shoulder_drop, 'deep')}; use more "
            "armhole_ease, or less shoulder_drop",
            "armhole_ease",
        )
