"""The lower part of a one-piece garment: seat, legs and crotch, below the body block.

Front and back make one loop from the shoulder through the crotch to the shoulder. The sides end
where the curves of the legs, from there to the crotch, are as long as the edge that is gathered.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.inputs import choice, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount, Saying
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.bodies.measures import LENGTHS, measured
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.curves import Line, bend, run, solved
from handout_engine.geometry.points import Point

THIN, CLOTH_NAPPY = "thin", "cloth"
LOOP_EASES = {THIN: millimetres(50), CLOTH_NAPPY: millimetres(80)}
SEAT_EASES = {THIN: millimetres(120), CLOTH_NAPPY: millimetres(160)}
LEG_EASES = {THIN: millimetres(55), CLOTH_NAPPY: millimetres(75)}
CROTCHES = {
    THIN: (millimetres(80), millimetres(90)),
    CLOTH_NAPPY: (millimetres(100), millimetres(120)),
}
FRONT_HOLLOW, BACK_HOLLOW = 0.5, 0.25
"""How far the guides of a leg's curve reach into its corner; the back covers more of the seat."""
LEAST_SIDE, LEAST_LEG = millimetres(40), millimetres(20)
"""The shortest side seam, and the least of a leg beside half of the crotch: common practice."""


class SeatInputs(BlockInputs):
    """The inputs of a garment that closes between the legs."""

    crown_rump = measured("crown_rump")
    hip = measured("hip")
    upper_thigh = measured("upper_thigh")
    nappy = choice(
        "nappy",
        "What is worn under it: a thin nappy, or a thick one of folded cloth.",
        THIN,
        CLOTH_NAPPY,
    )
    loop_share = ratio(
        "share of the half loop",
        "Half of the loop from shoulder through crotch to "
        "shoulder, for each unit from crown to rump, before its ease.",
        "0.84",
        ("0.6", "1.1"),
        basis=PRACTICE,
    )
    loop_ease = length_by_choice(
        "ease of the half loop",
        "Added for sitting and for the nappy.",
        "5 cm, over a cloth nappy 8 cm",
        ("0 cm", "16 cm"),
        basis=PRACTICE,
    )
    back_longer = length(
        "longer back",
        "How much further the back reaches than the front, for the seat; "
        "half of it is taken from the front.",
        "2 cm",
        ("0 cm", "6 cm"),
        basis=PRACTICE,
    )
    seat_ease = length_by_choice(
        "seat ease",
        "Added round the seat.",
        "12 cm, over a cloth nappy 16 cm",
        ("4 cm", "40 cm"),
        basis=PRACTICE,
    )
    crotch_width = length_by_choice(
        "crotch width",
        "Between the seams of the legs.",
        "8 to 9 cm, over a cloth nappy 10 to 12 cm",
        ("4 cm", "16 cm"),
        basis=PRACTICE,
    )
    leg_ease = length_by_choice(
        "leg ease",
        "Added to the upper thigh for the finished edge of the leg.",
        "5.5 cm, over a cloth nappy 7.5 cm",
        ("1 cm", "15 cm"),
        basis=PRACTICE,
    )
    leg_fullness = ratio(
        "fullness at the leg",
        "How often the curve of the leg goes into its band.",
        "1.3",
        ("1", "2"),
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, and what hangs on the nappy; the crotch grows with the body length."""
        body = self.body_length or LENGTHS[self.size]
        least, most = CROTCHES[self.nappy]
        grown = (body - LENGTHS["50"]) / (LENGTHS["98"] - LENGTHS["50"])
        return {
            **super().usual,
            "loop_ease": LOOP_EASES[self.nappy],
            "seat_ease": SEAT_EASES[self.nappy],
            "leg_ease": LEG_EASES[self.nappy],
            "crotch_width": least + (most - least) * grown,
        }

    @value("half of the loop shoulder to crotch to shoulder", basis=PRACTICE)
    def finished_length(self) -> Length:
        """From crown to rump, less the head, and room to sit."""
        return self.crown_rump * self.loop_share + self.loop_ease

    @value("front, from the neck point to the crotch line")
    def front_reach(self) -> Length:
        """Half of what the back is longer is taken from the front."""
        return self.finished_length - self.back_longer / 2

    @value("back, from the neck point to the crotch line")
    def back_reach(self) -> Length:
        """The seat stands out, so the back is longer."""
        return self.finished_length + self.back_longer / 2

    @value("seat of the garment, where the legs begin")
    def finished_seat(self) -> Length:
        """So much wider than the baby that she can sit, and the nappy fits."""
        return self.hip + self.seat_ease

    @value("a quarter of the garment's seat")
    def quarter_seat(self) -> Length:
        """The width of one half of front or back there."""
        return self.finished_seat / 4

    @value("across the seat, laid flat")
    def seat_across(self) -> Length:
        """What is measured once the sides are sewn."""
        return self.finished_seat / 2

    @value("finished edge of one leg")
    def leg_edge(self) -> Length:
        """So loose that the leg is not marked."""
        return self.upper_thigh + self.leg_ease

    @value("one leg before it is gathered")
    def leg_cut_edge(self) -> Length:
        """What goes into the band."""
        return self.leg_edge * self.leg_fullness

    @check
    def the_crotch_leaves_legs_beside_it(self) -> None:
        """Refuse a crotch as wide as the seat."""
        beside = self.quarter_seat - LEAST_LEG
        if self.crotch_width / 2 > beside:
            raise RefusalError(
                f"crotch_width {TAPE.say(self.crotch_width)} leaves no legs beside it; use at most "
                f"{TAPE.no_more(2 * beside)}, or more seat ease",
                "crotch_width",
            )

    @drafted
    def seat(self) -> Seat:
        """Its sides end where the legs are as long as the edge to gather; raises RefusalError."""
        self.the_crotch_leaves_legs_beside_it()
        quarter, front = float(self.quarter_seat), float(self.front_reach)
        crotch, back = float(self.crotch_width) / 2, float(self.back_reach)

        def at(rise: float) -> Seat:
            return Seat((quarter, front - rise), crotch, front, back)

        highest = front - float(self.armhole_depth) - float(LEAST_SIDE)
        shortest, longest = (from_float(at(max(rise, 0.0)).leg) for rise in (0.0, highest))
        if highest <= 0 or self.leg_cut_edge > longest:
            raise RefusalError(
                f"legs of {TAPE.both(self.leg_cut_edge)} leave too little side above them: with "
                f"{TAPE.both(LEAST_SIDE)} of side seam they are at most {TAPE.both(longest)} long; "
                "give leg_fullness or leg_ease less, or loop_ease more",
                "leg_fullness",
            )
        if self.leg_cut_edge < shortest:
            raise RefusalError(
                f"legs of {TAPE.both(self.leg_cut_edge)} do not reach from the side to the crotch, "
                f"which takes {TAPE.both(shortest, Saying.UP)}; give leg_ease or leg_fullness "
                "more, or seat_ease less",
                "leg_ease",
            )
        return at(solved(lambda rise: at(rise).leg, float(self.leg_cut_edge), 0.0, highest))

    @property
    def side_below(self) -> Point:
        """From the underarm to where the leg begins."""
        (end, bottom), side = self.seat.side_end, float(self.quarter_chest)
        return end - side, bottom - float(self.armhole_depth)

    @value("side seam, from the underarm to the leg", basis=DRAWN)
    def side_seam(self) -> Length:
        """What the legs leave of the sides."""
        return from_float(run((self.block.underarm, self.seat.side_end)))

    @value("leg of the front, from the side to the crotch line", basis=DRAWN)
    def front_leg_curve(self) -> Length:
        """The side seam comes to lie there on the band."""
        return from_float(run(self.seat.front_leg))

    @value("leg of the back, from the side to the crotch line", basis=DRAWN)
    def back_leg_curve(self) -> Length:
        """It covers more of the seat."""
        return from_float(run(self.seat.back_leg))


@dataclass(frozen=True)
class Seat:
    """The corners of the lower part in mm; the centre is at x = 0, as in the block."""

    side_end: Point
    crotch_half: float
    front_reach: float
    back_reach: float

    @cached_property
    def front_leg(self) -> Line:
        """From the side down to the crotch line."""
        return self._leg(self.front_reach, FRONT_HOLLOW)

    @cached_property
    def back_leg(self) -> Line:
        """From the side down to the crotch line."""
        return self._leg(self.back_reach, BACK_HOLLOW)

    def _leg(self, reach: float, hollow: float) -> Line:
        """Level at the side and square to the crotch line, so that both joins are smooth."""
        (x, y), end = self.side_end, (self.crotch_half, reach)
        inward, upward = (x - end[0]) * hollow, (reach - y) * hollow
        return bend((x, y), (x - inward, y), (end[0], reach - upward), end)

    @property
    def leg(self) -> float:
        """One leg from crotch line to crotch line."""
        return run(self.front_leg) + run(self.back_leg)
