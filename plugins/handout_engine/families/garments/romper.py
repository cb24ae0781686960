"""A romper cut in one from shoulder to crotch: bands at front and legs, fastened at the crotch."""

from __future__ import annotations

from collections.abc import Mapping
from math import ceil
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE, published
from handout_engine.amounts.values import sentence
from handout_engine.bodies.measures import measured
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drafting.block import SleevelessInputs, note_armhole, note_block
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.clearances import (
    STEP,
    head_room,
    least_opening,
    note_head_clearance,
)
from handout_engine.drafting.curves import Line, run, split_at_level
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.drafting.seats import Seat, SeatInputs, note_seat
from handout_engine.drafting.skirts import side_notch
from handout_engine.families.garments.romper_drawing import Romper as Drawn
from handout_engine.families.garments.romper_drawing import finished_scene
from handout_engine.families.garments.romper_steps import (
    BUTTONS,
    PRESS_FASTENERS,
    add_steps,
    add_supplies,
)
from handout_engine.geometry.points import snapped
from handout_engine.shared.buttons import ButtonInputs, note_extension
from handout_engine.working.workings import Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"
TAPE = Tape(finest=32)
LEAST_BELOW = millimetres(50)
LEAST_BESIDE = millimetres(5)


class Romper(ButtonInputs, SleevelessInputs, SeatInputs):
    """A sleeveless romper that buttons in front and opens at the crotch."""

    title: ClassVar[str] = "Romper"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A sleeveless romper cut in one, with a buttoned front band, leg bands, and a crotch that "
        "opens."
    )
    eases: ClassVar[tuple[str, str]] = ("10 cm", "8 cm")

    head = measured("head")
    back_waist = measured("back_waist")
    opening = length_by_choice(
        "opening",
        "Down the centre front from the neck edge.",
        "about to the waist: three quarters of the back waist, or what the head needs if that is "
        "more, up to the next 5 mm",
        ("0 cm", "40 cm"),
        basis=PRACTICE,
    )
    head_room: Length = head_room()
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
        neck, head = self.neck or usual["neck"], self.head or usual["head"]
        waist = self.back_waist or usual["back_waist"]
        assert isinstance(neck, Length)
        assert isinstance(head, Length)
        assert isinstance(waist, Length)
        needed = least_opening(neck + self.neck_ease, head, self.head_room)
        return {**usual, "opening": max(needed, STEP * ceil(waist * 3 / 4 / STEP))}

    def whole(self) -> Worksheet:
        """Outlines, edges, pieces, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        block = note_block(sheet, self)
        note_head_clearance(sheet, self.opening)
        seat = note_seat(sheet, self, block)
        (side, low), (end, bottom) = block.underarm, seat.side_end
        block = note_armhole(sheet, block, (end - side, bottom - low))
        _note_armhole(sheet, self, block)
        _note_front(sheet, self)
        _note_crotch(sheet, self)
        front = _draft(self, "romper front", (block, seat))
        back = _draft(self, "romper back", (block, seat))
        for draft in (front, back):
            note_piece(sheet, draft, Cutting(CLOTH))
        _add_bands(sheet, self)
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("shoulders, sides, legs and crotch", self.seam_allowance))
        add_supplies(sheet)
        add_steps(sheet)
        sheet.pictures.insert(0, _finished(sheet, front, (block, seat)))
        return sheet


def _upper_armhole(romper: Romper, block: BodyBlock) -> Line:
    """The armhole from the shoulder to its notch."""
    top = block.shoulder[1]
    level = top + float(romper.armhole_notch) * (block.depth - top)
    return split_at_level(block.armhole, level)[0]


def _note_armhole(sheet: Worksheet, romper: Romper, block: BodyBlock) -> None:
    upper = from_float(2 * run(_upper_armhole(romper, block)))
    sheet.note("shoulder_ruffle_edge", "armhole from notch to notch over the shoulder", upper, "",
               basis=DRAWN)  # fmt: skip


def _note_front(sheet: Worksheet, romper: Romper) -> None:
    """Note the buttoned opening of the front; refuses bands for which there is no room."""
    beyond = note_extension(sheet, romper)
    sheet.note("front_edge", "one edge of the front opening, a finished front band",
               romper.opening, "{opening}")  # fmt: skip
    sheet.note("front_overlap", "front band, and what the fronts overlap", 2 * beyond.length,
               "2 × {beyond_centre}")  # fmt: skip
    sheet.note("neck_with_bands", "neck edge with the upper ends of both front bands",
               sheet["neck_edge"].length + 2 * beyond.length,
               "{neck_edge} + 2 × {beyond_centre}")  # fmt: skip
    half, seam = sheet["neck_half_width"].length, romper.seam_allowance
    if beyond.length > half - LEAST_BESIDE:
        raise RefusalError(
            f"front bands {TAPE.both(2 * beyond.length)} wide take the whole front of the neck, "
            f"{TAPE.both(2 * half)}; use a smaller button, or less clearance or extension",
            "button",
        )
    if seam >= beyond.length:
        raise RefusalError(
            f"seam_allowance {TAPE.say(seam)} leaves nothing to cut out between the front bands, "
            f"whose seams lie {TAPE.both(beyond.length)} from the centre; give the seam less, or "
            "the bands more extension",
            "seam_allowance",
        )
    sheet.note("cut_away", "cut out on each side of the centre front", beyond.length - seam,
               "{beyond_centre} - {seam_allowance}")  # fmt: skip
    room = sheet["front_reach"].length - sheet["front_neck_depth"].length - LEAST_BELOW
    if romper.opening > room:
        raise RefusalError(
            f"opening {TAPE.say(romper.opening)} would end less than {TAPE.both(LEAST_BELOW)} "
            f"above the crotch line; use at most {TAPE.no_more(room)}",
            "opening",
        )


def _note_crotch(sheet: Worksheet, romper: Romper) -> None:
    """Note the fastened edge of the crotch, leg bands and all."""
    sheet.note("crotch_edge", "finished edge of the crotch, with both leg bands",
               romper.crotch_width + 2 * romper.band_depth,
               "{crotch_width} + 2 × {band_depth}")  # fmt: skip
    beyond = sheet.note("crotch_beyond", "from the crotch line to the finished edge",
                        romper.fastener / 2 + romper.clearance,
                        "{fastener} / 2 + {clearance}",
                        basis=published("extension-576"))  # fmt: skip
    sheet.note("crotch_overlap", "what front and back overlap at the crotch", 2 * beyond.length,
               "2 × {crotch_beyond}")  # fmt: skip


def _draft(romper: Romper, name: str, parts: tuple[BodyBlock, Seat]) -> Draft:
    """Front or back, half of it, from the neck round to the fold."""
    block, seat = parts
    front = name.endswith("front")
    neck = block.front_neckline if front else block.back_neckline
    leg = seat.front_leg if front else seat.back_leg
    seam = float(romper.seam_allowance)
    end = (leg[-1][0], snapped(leg[-1][1] + float(romper.fastener / 2 + romper.clearance)))
    centre: Line = ((0.0, end[1]), neck[0])
    side = (block.underarm, seat.side_end)
    notches = [_upper_armhole(romper, block)[-1], side_notch(side), leg[-1]]
    if front:
        notches.append((0.0, snapped(neck[0][1] + float(romper.opening))))
    return Draft(
        name,
        (
            Edge("neck", neck, seam),
            Edge("shoulder", (block.neck_point, block.shoulder), seam),
            Edge("armhole", block.armhole, seam),
            Edge("side", side, seam),
            Edge("leg", leg, seam),
            Edge("leg, beyond the crotch line", (leg[-1], end), seam),
            Edge("crotch", (end, centre[0]), seam),
            Edge(FOLD, centre),
        ),
        tuple(notches),
    )


def _add_bands(sheet: Worksheet, romper: Romper) -> None:
    """The bands of the legs and the facings of the crotch, all straight strips."""
    ends = sheet.note("band_end", "leg band, from its raw end to the crotch line",
                      sheet["crotch_beyond"].length + romper.seam_allowance,
                      "{crotch_beyond} + {seam_allowance}")  # fmt: skip
    sheet.note("band_side", "leg band, from its front end to the side seam",
               ends.length + sheet["front_leg_curve"].length / romper.leg_fullness,
               "{band_end} + {front_leg_curve} / {leg_fullness}")  # fmt: skip
    long = sheet.note("leg_band_length", "leg band, cut length",
                      sheet["leg_edge"].length + 2 * ends.length,
                      "{leg_edge} + 2 × {band_end}")  # fmt: skip
    wide = sheet.note("leg_band_width", "leg band, cut width",
                      2 * (romper.band_depth + romper.seam_allowance),
                      "2 × ({band_depth} + {seam_allowance})")  # fmt: skip
    sheet.pieces.append(Piece("leg band", CLOTH, 2, wide, long, Grain.STRAIGHT))
    long = sheet.note("crotch_facing_length", "crotch facing, cut length",
                      sheet["crotch_edge"].length + 2 * romper.seam_allowance,
                      "{crotch_edge} + 2 × {seam_allowance}")  # fmt: skip
    wide = sheet.note("crotch_facing_width", "crotch facing, cut width",
                      sheet["crotch_overlap"].length + 2 * romper.seam_allowance,
                      "{crotch_overlap} + 2 × {seam_allowance}")  # fmt: skip
    sheet.pieces.append(Piece("crotch facing", CLOTH, 2, wide, long, Grain.CROSS))


def _finished(sheet: Worksheet, front: Draft, parts: tuple[BodyBlock, Seat]) -> Picture:
    block, seat = parts
    drawn = Drawn(
        front,
        seat,
        block.back_neckline,
        {"long": sheet["front_reach"], "across": sheet["seat_across"],
         "crotch": sheet["crotch_edge"], "beyond": sheet["beyond_centre"],
         "opening": sheet["opening"], "band": sheet["band_depth"], "button": sheet["button"]},
    )  # fmt: skip
    caption = sentence("The romper from the front, closed; each leg measures {leg_edge} once round "
                       "its band.", leg_edge=sheet["leg_edge"])  # fmt: skip
    return Picture("finished", caption, finished_scene(drawn), finished=True)


GARMENT = Romper
