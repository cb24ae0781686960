"""A bib drawn from neck and chest: a round neck that closes at the back, a front to the waist."""

from __future__ import annotations

from dataclasses import replace
from typing import ClassVar

from handout_engine.amounts.lengths import from_float
from handout_engine.amounts.sources import DRAWN
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drafting.garment_steps import add_cloth_step, add_stay_step
from handout_engine.families.nursery.bib_drawing import Bib as Drawn
from handout_engine.families.nursery.bib_drawing import cut_scene, finished_scene
from handout_engine.families.nursery.bib_measures import BOUND, BibInputs, note_shape
from handout_engine.families.nursery.bib_outlines import BibShape
from handout_engine.geometry.points import snapped
from handout_engine.geometry.polygons import extents, perimeter
from handout_engine.working.cautions import (
    BIB_COMES_OFF,
    FASTENERS_AS_SMALL_PARTS,
    NOTHING_LOOSE_IN_THE_COT,
    PINS_AND_IRON,
)
from handout_engine.working.workings import BINDINGS, Grain, Picture, Piece, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

FRONT, BACK = "front cloth", "backing cloth"


class Bib(BibInputs):
    """A bib of two layers, bound or turned."""

    title: ClassVar[str] = "Bib"
    family: ClassVar[str] = "nursery"
    summary: ClassVar[str] = (
        "A bib drawn from neck and chest, bound or turned, with a lapped closing at the back."
    )

    def whole(self) -> Worksheet:
        """Outline, pieces, cloth, steps and sheet; raises RefusalError."""
        sheet = Worksheet(technique=self)
        shape = note_shape(sheet, self)
        _note_outline(sheet, self, shape)
        note_cloth(sheet, FRONT, self.cloth(), "front_")
        note_cloth(sheet, BACK, self.cloth(), "backing_")
        if self.edge != BOUND:
            sheet.seams.append(Seam("round the bib", self.seam_allowance))
        _add_supplies(sheet, self)
        _add_sample(sheet)
        _add_steps(sheet, self)
        _draw(sheet, self, shape)
        return sheet


def _note_outline(sheet: Worksheet, bib: Bib, shape: BibShape) -> None:
    """Note what is measured on the outline, and add the two layers with it."""
    finished = shape.outline()
    cut = shape.outline(float(bib.allowance))
    sheet.note("edge_length", "once round the finished bib, neck and straps included",
               from_float(perimeter(finished)), "", basis=DRAWN)  # fmt: skip
    (left, top), (right, bottom) = extents(cut)
    wide = sheet.note("cut_width", "bib, cut across", from_float(right - left), "", basis=DRAWN)
    high = sheet.note("cut_height", "bib, cut from strap to lower edge",
                      from_float(bottom - top), "", basis=DRAWN)  # fmt: skip
    # A piece's outline runs along its length, which here is the bib's height.
    outline, seam, notches = (
        tuple((snapped(y - top), snapped(x - left)) for x, y in points)
        for points in (cut, finished, ((0.0, shape.neck), (0.0, shape.low)))
    )
    for name, cloth in (("front", FRONT), ("backing", BACK)):
        piece = Piece(name, cloth, bib.make.number, wide, high, Grain.STRAIGHT, outline=outline)
        if bib.allowance:
            piece = replace(piece, seam_outline=seam, notches=notches)
        sheet.pieces.append(piece)


def _add_supplies(sheet: Worksheet, bib: Bib) -> None:
    if bib.edge == BOUND:
        sheet.supplies.append(
            Supply("bias binding", None, sentence("{edge} to go round, for each bib",
                                                  edge=sheet["edge_length"]),
                   unless=BINDINGS)
        )  # fmt: skip
    sheet.supplies.append(Supply("soft hook-and-loop tape, or a press fastener with its tool"))
    sheet.have("fine thread to match", "paper for the outline")
    sheet.cautions.extend(
        (PINS_AND_IRON, BIB_COMES_OFF, FASTENERS_AS_SMALL_PARTS, NOTHING_LOOSE_IN_THE_COT)
    )


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Cut the finished outline in paper and close its ends, lapped {overlap}.",
                overlap=sheet["overlap"],
            ),
            sentence(
                "the neck measures {closed} round, {room} more than the baby's own: two fingers "
                "go in beside the neck, not a hand.",
                closed=sheet["closed_neck"],
                room=sheet["neck_room"],
            ),
        )
    )


def _add_steps(sheet: Worksheet, bib: Bib) -> None:
    add_cloth_step(sheet)
    sheet.step(
        "Print or draw the outline, and cut it once in the front cloth and once in the backing, "
        "lengthwise grain down the middle.",
        "from strap to lower edge it is {cut_height}, across the front {cut_width}.",
    )
    add_stay_step(sheet, "the neck of both layers")
    sheet.step("Embroider or trim the front while it is flat.")
    if bib.edge == BOUND:
        sheet.step("Lay the two layers wrong sides together, baste round close to the edge, and "
                   "quilt them together where you like.")  # fmt: skip
        sheet.put_by()
        sheet.step(
            "Bind the edge all round in one, beginning in the middle of one strap's outer curve. "
            "Stretch the binding a little round the neck, ease it round the lower corners.",
            "the binding goes {edge_length} round, and the bib lies flat.",
        )
    else:
        _add_turning(sheet)
    sheet.step(
        "Set the closing so that one end laps over the other by {overlap}: the hard half of the "
        "tape on the lower end, its face away from the neck.",
        "closed, the neck measures {closed_neck}, and a steady pull opens it.",
    )


def _add_turning(sheet: Worksheet) -> None:
    sheet.step(
        "Lay the layers right sides together and sew round, {seam_allowance} from the edges, "
        "leaving a hand's width open at the straight of the lower edge."
    )
    sheet.step(
        "Trim the allowance to half, clip the neck to a thread from the seam, notch the rounded "
        "corners and strap ends. Turn, press, and close the opening by hand.",
        "the neck edge measures {neck_edge} from end to end.",
    )
    sheet.step("Stitch all round, close to the edge.")


def _draw(sheet: Worksheet, bib: Bib, shape: BibShape) -> None:
    names = ("bib_width", "bib_drop", "strap", "gap", "neck_radius", "cut_width", "cut_height",
             "edge_length")  # fmt: skip
    drawn = Drawn({name: sheet[name] for name in names}, shape, float(bib.allowance))
    caption = sentence("The bib laid flat, its ends apart by {gap}; they lap when it is closed.",
                       gap=sheet["gap"])  # fmt: skip
    words = "The outline to cut, its seam dashed." if bib.allowance else (
        "The outline to cut; the binding takes nothing beyond it."
    )  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", caption, finished_scene(drawn), finished=True),
            Picture("outline", sentence(words), cut_scene(drawn)),
        )
    )


GARMENT = Bib
