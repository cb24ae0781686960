"""A bonnet of a straight piece and a small back, from a head measure or from a rectangle given."""

from __future__ import annotations

from dataclasses import replace
from typing import ClassVar

from handout_engine.amounts.saying import Saying
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line, Scene
from handout_engine.families.nursery.bonnet_drawing import Bonnet as Drawn
from handout_engine.families.nursery.bonnet_drawing import back_scene, side_scene
from handout_engine.families.nursery.bonnet_measures import (
    CIRCLE,
    WORKED,
    BonnetInputs,
    note_back,
    note_crown,
    note_neck,
)
from handout_engine.families.nursery.bonnet_steps import add_sample, add_steps, add_supplies
from handout_engine.shared.strips_drawing import FlatStrip, Rule, flat_strips
from handout_engine.working.workings import Grain, Mark, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"


class Bonnet(BonnetInputs):
    """A bonnet whose straight piece is gathered to a circle or let into a horseshoe."""

    title: ClassVar[str] = "Bonnet"
    family: ClassVar[str] = "nursery"
    summary: ClassVar[str] = (
        "A baby's bonnet from one straight piece and a small back, a circle or a horseshoe."
    )

    def whole(self) -> Worksheet:
        """Pieces, matching seams, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        note_crown(sheet, self)
        note_back(sheet, self)
        note_neck(sheet, self)
        _note_back_piece(sheet, self)
        drawn = _drawn(sheet, self)
        _add_pieces(sheet, self, drawn)
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("back seam", self.seam_allowance))
        sheet.seams.append(Seam("neck edge, in its binding", self.binding))
        add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet)
        _draw(sheet, drawn)
        return sheet


def _note_back_piece(sheet: Worksheet, bonnet: Bonnet) -> None:
    """Note the back's cut size: an allowance along its seam, none at a nape that is bound."""
    sheet.note("back_cut_width", "back, cut width",
               sheet["back_width"].length + 2 * bonnet.seam_allowance,
               "{back_width} + 2 × {seam_allowance}", saying=Saying.UP)  # fmt: skip
    seams = 2 if bonnet.back == CIRCLE else 1
    sheet.note("back_cut_height", "back, cut height",
               sheet["back_height"].length + seams * bonnet.seam_allowance,
               "{back_height} + {seams} × {seam_allowance}", seams=seams,
               saying=Saying.UP)  # fmt: skip


def _drawn(sheet: Worksheet, bonnet: Bonnet) -> Drawn:
    names = ("front_edge", "half_front", "depth_line", "back_width", "back_height", "back_seam",
             "back_gathers", "back_cut_width", "back_cut_height", "binding", "hem_turn",
             "strap_length", "strap_width", "seam_allowance", "front_trim")  # fmt: skip
    return Drawn({name: sheet[name] for name in names}, bonnet.back == CIRCLE)


def _add_pieces(sheet: Worksheet, bonnet: Bonnet, drawn: Drawn) -> None:
    seam = sheet.note("back_line", "seam line of the straight piece, from its front raw edge",
                      sheet["crown_depth"].length - bonnet.seam_allowance,
                      "{crown_depth} - {seam_allowance}")  # fmt: skip
    hem = sheet["hem_allowance"]
    pieces = [
        Piece(name, CLOTH, bonnet.make.number, sheet[width], sheet[length], grain)
        for name, width, length, grain in (
            ("straight piece", "crown_depth", "crown_length", Grain.CROSS),
            ("back", "back_cut_height", "back_cut_width", Grain.CROSS),
            ("neck binding", "binding_cut", "binding_length", Grain.BIAS),
            ("strap", "strap_cut_width", "strap_cut_length", Grain.STRAIGHT),
        )
    ]
    marks = [Mark(each.label, each.length) for each in (hem, seam) if each.length]
    pieces[0] = replace(pieces[0], marks=tuple(marks), worked=bonnet.crown == WORKED)
    pieces[1] = replace(
        pieces[1],
        outline=drawn.back_outline(float(bonnet.seam_allowance)),
        seam_outline=drawn.back_seam_outline,
        notches=drawn.back_notches,
    )
    sheet.pieces.extend(pieces)


def _draw(sheet: Worksheet, drawn: Drawn) -> None:
    strip = FlatStrip(sentence("front edge"), sheet["crown_depth"],
                      sheet["crown_length"],
                      [Rule(Line.FOLD, sheet["hem_allowance"]),
                       Rule(Line.STITCH, sheet["back_line"])])  # fmt: skip
    flat = Scene(
        sentence("Straight piece laid flat"),
        sentence("{long} along the front edge, {deep} from front to back.",
                 long=sheet["crown_length"], deep=sheet["crown_depth"]),
        flat_strips([strip], 0.5 * sheet["crown_depth"].mm),
        tallest=170,
    )  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The finished bonnet from its side."), side_scene(drawn),
                    finished=True),
            Picture("straight", sentence("The straight piece with its hem fold and back seam."),
                    flat),
            Picture("back", sentence("The back to cut, its seam dashed; above, its finished "
                                     "width."), back_scene(drawn)),
        )
    )  # fmt: skip


GARMENT = Bonnet
