"""A pillow cover with an envelope back: plain, with a flange, or with a ruffle in its seam.

The back is two panels that lap over one another in the middle, each with a double hem; a flange is
the part of the cover beyond a line of stitching round the pillow.
"""

from __future__ import annotations

from math import pi
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import ZERO, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.families.nursery.pillow_cover_drawing import (
    Pillow,
    back_scene,
    front_scene,
    section_scene,
)
from handout_engine.families.nursery.pillow_cover_steps import (
    FLANGED,
    PLAIN,
    RUFFLED,
    add_sample,
    add_steps,
    add_supplies,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "cover cloth"
TAPE = Tape(finest=32)


class PillowCover(ClothInputs, Technique):
    """A cover that is slipped off through the lapped back."""

    title: ClassVar[str] = "Pillow cover"
    family: ClassVar[str] = "nursery"
    summary: ClassVar[str] = (
        "A small pillow's cover with a lapped back: with a flange, with a ruffle, or plain."
    )

    edge = choice(
        "edge",
        "A flange beyond the pillow, a ruffle in the seam, or neither.",
        FLANGED,
        RUFFLED,
        PLAIN,
    )
    pillow_width = length(
        "pillow width",
        "The pillow from top to bottom, seam to seam.",
        "12 in",
        ("4 in", "30 in"),
        basis=PRACTICE,
    )
    pillow_length = length(
        "pillow length",
        "The pillow from side to side, the longer way.",
        "16 in",
        ("4 in", "40 in"),
        basis=PRACTICE,
    )
    ease = length(
        "ease",
        "Added to both measures; a full pillow wants none.",
        "0 in",
        ("0 in", "2 in"),
        basis=PRACTICE,
    )
    flange = length(
        "flange",
        "Width beyond the pillow, where there is a flange.",
        "2 in",
        ("1/2 in", "6 in"),
        basis=PRACTICE,
    )
    corner = length(
        "rounding",
        "Radius of the corners that a ruffle goes round.",
        "1 in",
        ("0 in", "6 in"),
        basis=PRACTICE,
    )
    make = count("how many", "How many covers are made.", 1, 12)
    overlap = length(
        "overlap",
        "How far the two panels of the back lie over each other.",
        "4 in",
        ("1 in", "12 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    back_hem = length(
        "back hem",
        "Depth of one turn of the double hem at the opening.",
        "1 in",
        ("1/4 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    seam_allowance = length(
        "seam allowance",
        "Of the seam round the cover.",
        "1/2 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Front, back panels, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _note_cover(sheet, self)
        _check(sheet, self)
        _note_pieces(sheet, self)
        if self.edge == RUFFLED:
            _note_ruffle_edge(sheet, self)
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("round the cover", self.seam_allowance))
        add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet)
        _draw(sheet, self)
        return sheet


def _note_cover(sheet: Worksheet, cover: PillowCover) -> None:
    """Note the pillow's place in the cover, and the whole cover with its flange."""
    wide = sheet.note("inner_width", "cover over the pillow, top to bottom",
                      cover.pillow_width + cover.ease, "{pillow_width} + {ease}")  # fmt: skip
    long = sheet.note("inner_length", "cover over the pillow, side to side",
                      cover.pillow_length + cover.ease, "{pillow_length} + {ease}")  # fmt: skip
    flange = cover.flange if cover.edge == FLANGED else ZERO
    if cover.edge == FLANGED:
        around = sheet["flange"]
    else:
        around = sheet.note("no_flange", "flange of this cover", ZERO, "", basis=GIVEN)
    sheet.note("cover_width", "whole cover, top to bottom", wide.length + 2 * flange,
               "{inner_width} + 2 × {around}", around=around)  # fmt: skip
    sheet.note("cover_length", "whole cover, side to side", long.length + 2 * flange,
               "{inner_length} + 2 × {around}", around=around)  # fmt: skip


def _check(sheet: Worksheet, cover: PillowCover) -> None:
    long, wide = sheet["inner_length"].length, sheet["inner_width"].length
    if cover.overlap > long:
        raise RefusalError(
            f"overlap {TAPE.say(cover.overlap)} is more than the pillow is long, "
            f"{TAPE.say(long)}; use {ways(at_most(cover, 'overlap', long), 'a longer pillow')}",
            "overlap",
        )
    if cover.back_hem > cover.overlap:
        raise RefusalError(
            f"back_hem {TAPE.say(cover.back_hem)} is deeper than the panels lap, "
            f"{TAPE.say(cover.overlap)}; use "
            f"{ways(at_most(cover, 'back_hem', cover.overlap), 'more overlap')}",
            "back_hem",
        )
    if cover.edge == RUFFLED and 2 * cover.corner > min(long, wide):
        most = min(long, wide) / 2
        raise RefusalError(
            f"corner {TAPE.say(cover.corner)} rounds more than a whole side of the pillow; use "
            f"{ways(at_most(cover, 'corner', most), 'a larger pillow')}",
            "corner",
        )


def _note_pieces(sheet: Worksheet, cover: PillowCover) -> None:
    around = 2 * cover.seam_allowance
    wide = sheet.note("cut_width", "front and back panels, cut from top to bottom",
                      sheet["cover_width"].length + around,
                      "{cover_width} + 2 × {seam_allowance}", saying=Saying.UP)  # fmt: skip
    long = sheet.note("front_cut_length", "front, cut from side to side",
                      sheet["cover_length"].length + around,
                      "{cover_length} + 2 × {seam_allowance}", saying=Saying.UP)  # fmt: skip
    sheet.note("panel_length", "back panel, finished",
               (sheet["cover_length"].length + cover.overlap) / 2,
               "({cover_length} + {overlap}) / 2")  # fmt: skip
    panel = sheet.note("panel_cut_length", "back panel, cut from side to side",
                       sheet["panel_length"].length + cover.seam_allowance + 2 * cover.back_hem,
                       "{panel_length} + {seam_allowance} + 2 × {back_hem}",
                       saying=Saying.UP)  # fmt: skip
    _refuse_wide(sheet, cover, long)
    sheet.pieces.append(Piece("front", CLOTH, cover.make.number, wide, long, Grain.CROSS))
    backs = sheet.note("panels", "back panels in all", 2 * cover.make, "2 × {make}")
    sheet.pieces.append(Piece("back panel", CLOTH, backs.whole, wide, panel, Grain.CROSS))


def _refuse_wide(sheet: Worksheet, cover: PillowCover, long: Value) -> None:
    """Refuse a front that no way of laying fits on the cloth."""
    usable = note_usable_width(sheet, cover.cloth())
    if long.length > usable.length:
        beyond = long.length - sheet["pillow_length"].length
        most = usable.length - beyond
        shorter = at_most(cover, "pillow_length", most, "a pillow at most {} long")
        raise RefusalError(
            f"the front is cut {TAPE.both(long.length)} and the cloth is only "
            f"{TAPE.both(usable.length)} wide between its selvages; use "
            f"{ways(shorter, 'wider cloth')}",
            "pillow_length",
        )


def _note_ruffle_edge(sheet: Worksheet, cover: PillowCover) -> None:
    """Note the seam round the pillow, corners rounded: the edge that a ruffle is gathered to."""
    straight = 2 * (sheet["inner_width"].length + sheet["inner_length"].length)
    saved = from_float((8 - 2 * pi) * float(cover.corner))
    sheet.note("ruffle_edge", "seam round the pillow, edge of the ruffle", straight - saved,
               "2 × ({inner_width} + {inner_length}) - (8 - 2 × π) × {corner}")  # fmt: skip


def _draw(sheet: Worksheet, cover: PillowCover) -> None:
    names = ("inner_width", "inner_length", "cover_width", "cover_length", "flange", "overlap",
             "panel_length", "back_hem", "corner")  # fmt: skip
    drawn = Pillow({name: sheet[name] for name in names}, cover.edge == FLANGED,
                   cover.edge == RUFFLED)  # fmt: skip
    caption = {FLANGED: "The finished cover, its flange beyond the stitching.",
               RUFFLED: "The finished cover; its ruffle has a page of its own.",
               PLAIN: "The finished cover."}[cover.edge]  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence(caption), front_scene(drawn), finished=True),
            Picture("back", sentence("The back: the right panel lies over the left one."),
                    back_scene(drawn)),
            Picture("section", sentence("The back cut through from side to side, thickness "
                                        "enlarged: both panels end in a double hem."),
                    section_scene(drawn)),
        )
    )  # fmt: skip


TECHNIQUE = PillowCover
