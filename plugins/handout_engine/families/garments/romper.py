"""A romper cut in one from shoulder to crotch: bands at front and legs, fastened at the crotch."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from handout_engine.amounts.declaring import check, drafted, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import DRAWN, PRACTICE, published
from handout_engine.bodies.measures import measured
from handout_engine.drafting.armholes import SleevelessInputs
from handout_engine.drafting.clearances import HeadOpening, up_to_step
from handout_engine.drafting.curves import Line, run, split_at_level
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import CLOTH, HalfPiece
from handout_engine.drafting.seats import SeatInputs
from handout_engine.drafting.skirts import side_notch
from handout_engine.families.garments.front_overlaps import FrontOverlap
from handout_engine.families.garments.romper_drawing import Romper as Drawn
from handout_engine.families.garments.romper_drawing import finished_scene
from handout_engine.families.garments.romper_steps import (
    BUTTONS,
    PRESS_FASTENERS,
    add_steps,
    add_supplies,
)
from handout_engine.geometry.points import snapped
from handout_engine.working.workings import Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

LEAST_BELOW = millimetres(50)
"""What is left at least between the opening and the crotch line."""


class Romper(FrontOverlap, SleevelessInputs, HeadOpening, SeatInputs):
    """A sleeveless romper that buttons in front and opens at the crotch."""

    title = "Romper"
    family = "garments"
    summary = (
        "A sleeveless romper cut in one, with a buttoned front band, leg bands, and a crotch that "
        "opens."
    )
    eases = ("10 cm", "8 cm")

    back_waist = measured("back_waist")
    opening = length_by_choice(
        "opening",
        "Down the centre front from the neck edge.",
        "about to the waist: three quarters of the back waist, or what the head needs if that is "
        "more, up to the next 5 mm",
        ("0 cm", "40 cm"),
        basis=PRACTICE,
    )
    armhole_notch = ratio(
        "armhole notch",
        "Where a ruffle over the shoulder ends, from the shoulder down the "
        "armhole: 1 for its whole depth.",
        "0.7",
        ("0.3", "0.9"),
        basis=PRACTICE,
    )
    band_depth = length(
        "leg band",
        "Finished depth of the bands at the legs.",
        "5/8 in",
        ("1/4 in", "3 in"),
        basis=PRACTICE,
    )
    fastening = choice(
        "crotch fastening", "What closes the crotch.", PRESS_FASTENERS, BUTTONS, group=SEWING
    )
    fastener = length(
        "crotch fastener",
        "Diameter of one.",
        "10 mm",
        ("5 mm", "25 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    fasteners = count(
        "crotch fasteners",
        "How many: one in each band, and between them.",
        3,
        9,
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The seat's, and an opening to the waist through which the head passes."""
        usual = super().usual
        waist = up_to_step(self.own("back_waist", usual) * 3 / 4)
        return {**usual, "opening": max(self.least_opening, waist)}

    @drafted
    def upper_armhole(self) -> Line:
        """The armhole from the shoulder to its notch."""
        top = self.block.shoulder[1]
        level = top + float(self.armhole_notch) * (self.block.depth - top)
        return split_at_level(self.block.armhole, level)[0]

    @value("armhole from notch to notch over the shoulder", basis=DRAWN)
    def shoulder_ruffle_edge(self) -> Length:
        """What a ruffle over the shoulder is sewn to."""
        return from_float(2 * run(self.upper_armhole))

    @value("one edge of the front opening, a finished front band")
    def front_edge(self) -> Length:
        """The band is as long as the opening."""
        return self.opening

    @value("front band, and what the fronts overlap")
    def front_overlap(self) -> Length:
        """The bands lie on one another, centre on centre."""
        return 2 * self.beyond_centre

    @value("neck edge with the upper ends of both front bands")
    def neck_with_bands(self) -> Length:
        """What is bound at the neck."""
        return self.neck_edge + 2 * self.beyond_centre

    @check
    def the_bands_leave_some_of_the_neck(self) -> None:
        """Refuse bands as wide as the front of the neck."""
        self.refuse_fronts_as_wide_as_the_neck(f"front bands {TAPE.both(self.front_overlap)} wide")

    @value("cut out on each side of the centre front")
    def cut_away(self) -> Length:
        """Up to the allowance of the band's seam."""
        return self.beyond_centre - self.seam_allowance

    @check
    def something_is_cut_out_between_the_bands(self) -> None:
        """Refuse an allowance that reaches from the band's seam to the centre."""
        if self.seam_allowance >= self.beyond_centre:
            raise RefusalError(
                f"seam_allowance {TAPE.say(self.seam_allowance)} leaves nothing to cut out between "
                f"the front bands, whose seams lie {TAPE.both(self.beyond_centre)} from the "
                "centre; give the seam less, or the bands more extension",
                "seam_allowance",
            )

    @check
    def the_opening_ends_above_the_crotch(self) -> None:
        """Refuse an opening that would run on to the crotch."""
        room = self.front_reach - self.front_neck_depth - LEAST_BELOW
        if self.opening > room:
            raise RefusalError(
                f"opening {TAPE.say(self.opening)} would end less than {TAPE.both(LEAST_BELOW)} "
                f"above the crotch line; use at most {TAPE.no_more(room)}",
                "opening",
            )

    @value("finished edge of the crotch, with both leg bands")
    def crotch_edge(self) -> Length:
        """What is fastened."""
        return self.crotch_width + 2 * self.band_depth

    @value("from the crotch line to the finished edge", basis=published("extension-576"))
    def crotch_beyond(self) -> Length:
        """The fasteners must not reach over the edge."""
        return self.fastener / 2 + self.clearance

    @value("what front and back overlap at the crotch")
    def crotch_overlap(self) -> Length:
        """They lie on one another, line on line."""
        return 2 * self.crotch_beyond

    @value("leg band, from its raw end to the crotch line")
    def band_end(self) -> Length:
        """It goes on beyond the crotch line as the crotch does."""
        return self.crotch_beyond + self.seam_allowance

    @value("leg band, from its front end to the side seam")
    def band_side(self) -> Length:
        """The gathers are spread alike in front and back."""
        return self.band_end + self.front_leg_curve / self.leg_fullness

    @value("leg band, cut length")
    def leg_band_length(self) -> Length:
        """Once round the leg, and both ends."""
        return self.leg_edge + 2 * self.band_end

    @value("leg band, cut width")
    def leg_band_width(self) -> Length:
        """It is folded in half over the seam."""
        return 2 * (self.band_depth + self.seam_allowance)

    @value("crotch facing, cut length")
    def crotch_facing_length(self) -> Length:
        """Its ends are turned in."""
        return self.crotch_edge + 2 * self.seam_allowance

    @value("crotch facing, cut width")
    def crotch_facing_width(self) -> Length:
        """As wide as the overlap, and a seam along both edges."""
        return self.crotch_overlap + 2 * self.seam_allowance

    @drafted
    def drafted_front(self) -> Draft:
        """Half of the front, with the end of its opening."""
        neck = self.block.front_neckline
        front = self._drafted("romper front", neck, self.seat.front_leg)
        end_of_opening = (0.0, snapped(neck[0][1] + float(self.opening)))
        return replace(front, notches=(*front.notches, end_of_opening))

    def _drafted(self, name: str, neck: Line, leg: Line) -> Draft:
        """Front or back, half of it, from the neck round to the fold."""
        block, seam = self.block, float(self.seam_allowance)
        end = (leg[-1][0], snapped(leg[-1][1] + float(self.crotch_beyond)))
        centre: Line = ((0.0, end[1]), neck[0])
        side = (block.underarm, self.seat.side_end)
        edges = (
            Edge("neck", neck, seam),
            Edge("shoulder", (block.neck_point, block.shoulder), seam),
            Edge("armhole", block.armhole, seam),
            Edge("side", side, seam),
            Edge("leg", leg, seam),
            Edge("leg, beyond the crotch line", (leg[-1], end), seam),
            Edge("crotch", (end, centre[0]), seam),
            Edge(FOLD, centre),
        )
        return Draft(name, edges, (self.upper_armhole[-1], side_notch(side), leg[-1]))

    @group
    def drafts(self) -> tuple[HalfPiece, ...]:
        """Front and back."""
        back = self._drafted("romper back", self.block.back_neckline, self.seat.back_leg)
        return HalfPiece(self.drafted_front), HalfPiece(back)

    def cut(self, sheet: Worksheet) -> None:
        """Front and back; the bands of the legs and the facings of the crotch, all straight."""
        super().cut(sheet)
        band = sheet["leg_band_width"], sheet["leg_band_length"]
        sheet.pieces.append(Piece("leg band", CLOTH, 2, *band, Grain.STRAIGHT))
        facing = sheet["crotch_facing_width"], sheet["crotch_facing_length"]
        sheet.pieces.append(Piece("crotch facing", CLOTH, 2, *facing, Grain.CROSS))
        sheet.seams.append(Seam("shoulders, sides, legs and crotch", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the opening of the front to the last button."""
        add_supplies(sheet)
        add_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The romper from the front, then each piece."""
        drawn = Drawn(
            self.drafted_front,
            self.seat,
            self.block.back_neckline,
            {
                "long": sheet["front_reach"],
                "across": sheet["seat_across"],
                "crotch": sheet["crotch_edge"],
                "beyond": sheet["beyond_centre"],
                "opening": sheet["opening"],
                "band": sheet["band_depth"],
                "button": sheet["button"],
            },
        )
        caption = sheet.sentence(
            "The romper from the front, closed; each leg measures {leg_edge} once round its band."
        )
        sheet.pictures.append(Picture("finished", caption, finished_scene(drawn), finished=True))
        super().draw(sheet)


GARMENT = Romper
