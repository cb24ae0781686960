"""The body block: neck, shoulder, armhole and side of a woven garment, drafted from measures.

The centre is at x = 0 and the point where the neck meets the shoulder at y = 0; front and back
differ in the depth of the neck only. The factors are common practice, and inputs.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import atan, pi
from typing import ClassVar

from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.inputs import SEWING, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, millimetres
from handout_engine.amounts.numbers import Ratio, smaller
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_most, more_than, ways, would_be
from handout_engine.bodies.measures import LENGTHS, measured
from handout_engine.drafting.body_block import TIGHTEST, BodyBlock
from handout_engine.drafting.curves import radius, run, solved
from handout_engine.drafting.pieces import DraftedGarment
from handout_engine.geometry.points import Point

DEEPEST = Fraction(5, 2)
"""The deepest neck, for each unit of half its width: a deeper one can hardly be bound or faced."""
LEAST_SHOULDER = millimetres(20)
LEAST_ARMHOLE = millimetres(30)
"""How deep an armhole is at least below the end of the shoulder: common practice."""
MOST_LEAN = 35 * pi / 180
"""An armhole follows a side that leans to its square so far; beyond, it would hang below it."""
SPARE = 1.02
"""What the radius is drawn larger by, since a row of points turns a little tighter."""


class BlockInputs(DraftedGarment):
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

    @value("chest of the garment")
    def finished_chest(self) -> Length:
        """So much wider than the baby that she can move and breathe."""
        return self.chest + self.chest_ease

    @value("a quarter of the garment's chest")
    def quarter_chest(self) -> Length:
        """The width of one half of front or back."""
        return self.finished_chest / 4

    @value("neck edge")
    def neck_edge(self) -> Length:
        """It lies a little outside the base of the neck."""
        return self.neck + self.neck_ease

    @value("half the width of the neck", basis=DRAWN)
    def neck_half_width(self) -> Length:
        """At this width the curves of the neck are as long as its edge."""
        end, drop, back = (
            float(each) for each in (self.shoulder_end, self.neck_drop, self.back_neck_depth)
        )
        shoulder, tightest = (end, float(self.shoulder_drop)), self._tightest

        def around(half: float) -> float:
            return BodyBlock(0, half, half + drop, back, shoulder, 0, tightest).neckline

        try:
            return from_float(solved(around, float(self.neck_edge), 1.0, end - 1.0))
        except ValueError:
            raise RefusalError(
                f"a neck edge of {TAPE.both(self.neck_edge)} cannot be drawn between the "
                f"shoulders, which end {TAPE.both(self.shoulder_end)} from the centre, with "
                f"neck_drop {TAPE.say(self.neck_drop)}; give neck_ease less for a smaller neck, or "
                "neck_drop and back_neck_depth less for a shallower one",
                "neck_ease",
            ) from None

    @check
    def the_neck_is_not_too_deep_for_its_width(self) -> None:
        """Refuse a neck whose curve at the fold would be tighter than its allowance."""
        half, most = self.neck_half_width, self.neck_half_width * DEEPEST
        for name, given, allowed in (
            ("back_neck_depth", self.back_neck_depth, most),
            ("neck_drop", self.neck_drop, most - half),
        ):
            if given > allowed:
                raise RefusalError(
                    f"the neck would be only {TAPE.both(2 * half)} wide for its depth; use "
                    f"{ways(at_most(self, name, allowed), 'more neck_ease')}",
                    name,
                )

    @value("depth of the front neck")
    def front_neck_depth(self) -> Length:
        """Deeper than it is half wide, since the neck leans forward."""
        return self.neck_half_width + self.neck_drop

    @value("from the centre to the end of the shoulder", basis=PRACTICE)
    def shoulder_end(self) -> Length:
        """A little less than half the shoulder breadth, which is measured over both arms."""
        return self.shoulder_breadth * self.shoulder_share

    @check
    def the_shoulder_is_long_enough(self) -> None:
        """Refuse a neck that leaves next to no shoulder beside it."""
        seam = self.shoulder_end - self.neck_half_width
        if seam < LEAST_SHOULDER:
            raise RefusalError(
                f"the shoulder seam {would_be(seam, 'long')}, less than "
                f"{TAPE.both(LEAST_SHOULDER)}; give neck_ease or the neck less, or shoulder_share "
                "more",
                "neck_ease",
            )

    @check
    def the_shoulder_ends_before_the_side(self) -> None:
        """Refuse a shoulder as wide as the chest."""
        end = self.shoulder_end
        if end >= self.quarter_chest:
            wider = more_than(
                self, "chest_ease", 4 * end - self.chest, "a chest_ease of more than {}"
            )
            raise RefusalError(
                f"the shoulder reaches {TAPE.both(end)} from the centre, beyond the side at "
                f"{TAPE.both(self.quarter_chest)}; use {ways(wider, 'less shoulder_share')}",
                "chest_ease",
            )

    @value("from the neck point down to the underarm", basis=PRACTICE)
    def armhole_depth(self) -> Length:
        """It grows with the chest, which is easier to measure."""
        return self.chest / 4 + self.armhole_ease

    @check
    def the_arm_has_room(self) -> None:
        """Refuse an armhole that hardly reaches below the shoulder."""
        deep = self.armhole_depth - self.shoulder_drop
        if deep <= LEAST_ARMHOLE:
            raise RefusalError(
                f"the armhole {would_be(deep, 'deep')}; use more armhole_ease, or less "
                "shoulder_drop",
                "armhole_ease",
            )

    @property
    def side_below(self) -> Point:
        """How far the side runs outward and down below the underarm."""
        return (0.0, 1.0)

    @property
    def _lean(self) -> float:
        """The angle of the side, to which an armhole is square.

        So it runs on without a notch where front and back are joined.
        """
        across, down = self.side_below
        lean = atan(across / down) if down > 0 else 0.0
        return max(-MOST_LEAN, min(MOST_LEAN, lean))

    @property
    def _tightest(self) -> float:
        return SPARE * max(TIGHTEST, float(self.seam_allowance))

    @drafted
    def block(self) -> BodyBlock:
        """The corners of the block, and the lines between them; raises RefusalError."""
        self.the_neck_is_not_too_deep_for_its_width()
        self.the_shoulder_is_long_enough()
        self.the_shoulder_ends_before_the_side()
        self.the_arm_has_room()
        block = BodyBlock(
            float(self.quarter_chest),
            float(self.neck_half_width),
            float(self.front_neck_depth),
            float(self.back_neck_depth),
            (float(self.shoulder_end), float(self.shoulder_drop)),
            float(self.armhole_depth),
            self._tightest,
            self._lean,
        )
        _refuse_tight_neck(self, block)
        return block

    @value("shoulder seam", basis=DRAWN)
    def shoulder_seam(self) -> Length:
        """Along its slope, from the neck to its end."""
        return from_float(run((self.block.neck_point, self.block.shoulder)))


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
