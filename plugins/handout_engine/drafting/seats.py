"""The lower part of a one-piece garment: seat, legs and crotch, below the body block.

Front and back make one loop from the shoulder through the crotch to the shoulder. The sides end
where the curves of the legs, from there to the crotch, are as long as the edge that is gathered.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from handout_engine.amounts.inputs import choice, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Saying, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.bodies.measures import LENGTHS, measured
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.curves import Line, bend, run, solved
from handout_engine.geometry.points import Point
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
THIN, CLOTH_NAPPY = "thin", "cloth"
LOOP_EASES = {THIN: millimetres(50), CLOTH_NAPPY: millimetres(80)}
SEAT_EASES = {THIN: millimetres(120), CLOTH_NAPPY: millimetres(160)}
LEG_EASES = {THIN: millimetres(55), CLOTH_NAPPY: millimetres(75)}
CROTCHES = {THIN: (millimetres(80), millimetres(90)),
            CLOTH_NAPPY: (millimetres(100), millimetres(120))}  # fmt: skip
FRONT_HOLLOW, BACK_HOLLOW = 0.5, 0.25
"""How far the guides of a leg's curve reach into its corner; the back covers more of the seat."""
LEAST_SIDE = millimetres(40)


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


def note_seat(sheet: Worksheet, garment: SeatInputs, block: BodyBlock) -> Seat:
    """Note the figures of seat, legs and crotch, and draft them; raises RefusalError."""
    front, back = _note_reaches(sheet, garment)
    around = sheet.note("finished_seat", "seat of the garment, where the legs begin",
                        garment.hip + garment.seat_ease, "{hip} + {seat_ease}")  # fmt: skip
    quarter = sheet.note("quarter_seat", "a quarter of the garment's seat", around.length / 4,
                         "{finished_seat} / 4")  # fmt: skip
    sheet.note("seat_across", "across the seat, laid flat", around.length / 2,
               "{finished_seat} / 2")  # fmt: skip
    edge = sheet.note("leg_edge", "finished edge of one leg",
                      garment.upper_thigh + garment.leg_ease,
                      "{upper_thigh} + {leg_ease}")  # fmt: skip
    cut = sheet.note("leg_cut_edge", "one leg before it is gathered",
                     edge.length * garment.leg_fullness, "{leg_edge} × {leg_fullness}")  # fmt: skip
    if garment.crotch_width / 2 + millimetres(20) > quarter.length:
        most = 2 * (quarter.length - millimetres(20))
        raise RefusalError(
            f"crotch_width {TAPE.say(garment.crotch_width)} leaves no legs beside it; use at most "
            f"{TAPE.no_more(most)}, or more seat ease",
            "crotch_width",
        )
    seat = _fitted(garment, block, (quarter.mm, float(front), float(back)), cut.length)
    _note_drawn(sheet, seat, block)
    return seat


def _note_reaches(sheet: Worksheet, garment: SeatInputs) -> tuple[Length, Length]:
    half = sheet.note("finished_length", "half of the loop shoulder to crotch to shoulder",
                      garment.crown_rump * garment.loop_share + garment.loop_ease,
                      "{crown_rump} × {loop_share} + {loop_ease}", basis=PRACTICE)  # fmt: skip
    more = garment.back_longer / 2
    front = sheet.note("front_reach", "front, from the neck point to the crotch line",
                       half.length - more, "{finished_length} - {back_longer} / 2")  # fmt: skip
    back = sheet.note("back_reach", "back, from the neck point to the crotch line",
                      half.length + more, "{finished_length} + {back_longer} / 2")  # fmt: skip
    return front.length, back.length


def _fitted(
    garment: SeatInputs, block: BodyBlock, places: tuple[float, float, float], cut: Length
) -> Seat:
    """The seat whose sides end where the legs are as long as the edge to gather."""
    quarter, front, back = places

    def at(rise: float) -> Seat:
        return Seat((quarter, front - rise), float(garment.crotch_width) / 2, front, back)

    highest = front - block.depth - float(LEAST_SIDE)
    shortest, longest = (from_float(at(max(rise, 0.0)).leg) for rise in (0.0, highest))
    if highest <= 0 or cut > longest:
        raise RefusalError(
            f"legs of {TAPE.both(cut)} leave too little side above them: with "
            f"{TAPE.both(LEAST_SIDE)} of side seam they are at most {TAPE.both(longest)} long; "
            "give leg_fullness or leg_ease less, or loop_ease more",
            "leg_fullness",
        )
    if cut < shortest:
        raise RefusalError(
            f"legs of {TAPE.both(cut)} do not reach from the side to the crotch, which takes "
            f"{TAPE.both(shortest, Saying.UP)}; give leg_ease or leg_fullness more, or seat_ease "
            "less",
            "leg_ease",
        )
    return at(solved(lambda rise: at(rise).leg, float(cut), 0.0, highest))


def _note_drawn(sheet: Worksheet, seat: Seat, block: BodyBlock) -> None:
    sheet.note("side_seam", "side seam, from the underarm to the leg",
               from_float(run((block.underarm, seat.side_end))), "", basis=DRAWN)  # fmt: skip
    for name, line in (("front", seat.front_leg), ("back", seat.back_leg)):
        sheet.note(f"{name}_leg_curve", f"leg of the {name}, from the side to the crotch line",
                   from_float(run(line)), "", basis=DRAWN)  # fmt: skip
