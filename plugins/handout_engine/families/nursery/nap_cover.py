"""A quilted nap cover: square blocks with sashing and border, three layers and a binding."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import published
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import note_cloth, note_usable_width
from handout_engine.families.nursery.nap_cover_cloth import (
    BACKING,
    BATTING,
    BINDING,
    BLOCKS,
    FRAME,
    QuiltInputs,
    note_blocks,
    note_frame,
    note_layers,
    note_sizes,
)
from handout_engine.families.nursery.nap_cover_drawing import Quilt, corner_scene, top_scene
from handout_engine.shared.binding_drawing import BoundEdge, brought_round
from handout_engine.shared.binding_steps import bound_sample
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import (
    NOTHING_LOOSE_IN_THE_COT,
    NOTHING_UNDER_THE_HARNESS,
    PINS_AND_IRON,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet


class NapCover(QuiltInputs, Technique):
    """A small quilt of equal blocks."""

    title: ClassVar[str] = "Quilted nap cover"
    family: ClassVar[str] = "nursery"
    summary: ClassVar[str] = (
        "A small quilt of square blocks with sashing and border, bound with a double binding."
    )

    def whole(self) -> Worksheet:
        """Blocks, strips, layers, cloths and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        usable = note_usable_width(sheet, self.cloth())
        note_sizes(sheet, self)
        note_blocks(sheet, self, usable)
        note_frame(sheet, self, usable)
        note_layers(sheet, self, usable)
        _note_mattress(sheet)
        _add_cloths(sheet, self)
        sheet.seams.append(Seam("in the top", self.seam_allowance))
        sheet.seams.append(Seam("binding to edge", self.binding))
        sheet.cautions.extend((PINS_AND_IRON, NOTHING_LOOSE_IN_THE_COT, NOTHING_UNDER_THE_HARNESS))
        _add_sample(sheet)
        _add_piecing_steps(sheet, self)
        _add_layering_steps(sheet)
        _draw(sheet)
        return sheet


def _note_mattress(sheet: Worksheet) -> None:
    """Note the published size of a cot's mattress, to compare with."""
    basis = published("cfr-1241")
    sheet.note("mattress_width", "mattress of a full-size cot, width", inches("109/4"), "",
               basis=basis)  # fmt: skip
    sheet.note("mattress_length", "mattress of a full-size cot, length", inches("413/8"), "",
               basis=basis)  # fmt: skip


def _add_cloths(sheet: Worksheet, quilt: NapCover) -> None:
    """Lay out every cloth that is cut from, and name the batting by its size."""
    framed = bool(quilt.border or any(piece.cloth == FRAME for piece in sheet.pieces))
    cloths = [(BLOCKS, ""), (BACKING, "backing_"), (BINDING, "binding_")]
    if framed:
        cloths.insert(1, (FRAME, "frame_"))
    for name, prefix in cloths:
        note_cloth(sheet, name, quilt.cloth(), prefix)
    sheet.supplies.append(
        Supply(BATTING, None,
               sentence("one piece {width} by {length}, thin cotton, washable",
                        width=sheet["batting_width"], length=sheet["batting_length"]))
    )  # fmt: skip
    sheet.supplies.append(Supply("piecing thread, quilting thread, basting thread or curved pins"))
    sheet.have("a long ruler", "a square with right angles", "a removable marker tried on a scrap")


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Cut three strips {wide} wide and a hand long, sew them side by side with the "
                "allowance you mean to use, and press.",
                wide=inches(1) + 2 * sheet["seam_allowance"].length,
            ),
            sentence(
                "the middle strip is {inch} wide. If it is narrower, sew nearer to the edge: an "
                "error of a thread stands in every seam of the top.",
                inch=inches(1),
            ),
        )
    )
    sheet.sample.append(
        bound_sample(
            "Lay a scrap of batting between two of cloth, quilt it, and bind 6 in of it round one "
            "corner with a strip {width} wide.",
            sheet["binding_cut"],
            sheet["binding"],
        )
    )


def _add_piecing_steps(sheet: Worksheet, quilt: NapCover) -> None:
    row = sheet["inner_width"].length + 2 * quilt.seam_allowance
    high = sheet["inner_length"].length + 2 * quilt.seam_allowance
    add_washing_step(sheet)
    sheet.step(
        "Cut {blocks} blocks, {block_cut} square, embroidered or pieced first if they are to be, "
        "and the strips as listed. Join what is cut in parts, straight, with {strip_allowance}, "
        "and press those seams open.",
        "every block is {block_cut} both ways.",
    )
    sashed = "a short sash between every two" if quilt.sashing else "side by side"
    sheet.step(
        f"Lay the blocks out and sew each row of {{blocks_across}}, {sashed}. Press toward the "
        + ("sashes." if quilt.sashing else "same side in a row, by turns from row to row."),
        "each row is {row} long and {block_cut} high.",
        row=row,
    )
    sashed = ", a long sash between every two" if quilt.sashing else ""
    sheet.step(
        f"Sew the {{blocks_down}} rows together{sashed}, pinned so that block stands over block.",
        "it measures {row} by {high}.",
        row=row,
        high=high,
    )
    if quilt.border:
        sheet.step(
            "Sew on the two side borders, press, then the two end borders. Pin the middle and both "
            "ends first, and let the cut length rule, not the edge, which may have stretched.",
            "the top measures {raw_width} by {raw_length} from raw edge to raw edge, through its "
            "middle too.",
        )


def _add_layering_steps(sheet: Worksheet) -> None:
    joined = sheet["backing_strips"].whole > 1
    sheet.put_by()
    sheet.step(
        ("Join the panels of the backing and press the seam open. " if joined else "")
        + "Lay the backing wrong side up and tape it flat, the batting on it, the top on that, "
        "right side up. Baste from the middle outward, a hand's width apart.",
        "the backing stands out {backing_margin} on every side and the batting {batting_margin}.",
    )
    sheet.step(
        "Quilt from the middle outward, along the seams or across the blocks, no place larger than "
        "the batting's maker allows. Draw the basting out, every thread of it."
    )
    sheet.step(
        "Trim batting and backing level with the top.",
        "it is {raw_width} by {raw_length}, and its two diagonals are equal.",
    )
    sheet.step(
        "Join {binding_strips} strips of {binding_strip_length}, ends crossed at a right angle, "
        "and fold the length in half, wrong sides together.",
        "it is {binding_length} long; {around} goes round, {tail} is for the join. Folded it is "
        "{binding_folded} wide.",
    )
    sheet.step(
        "Sew the binding on from the right side, {binding} from the raw edges, mitred at the "
        "corners, half of its tail left free. Leave off so that a hand's width is free, open the "
        "fold of both ends, cut them square so that they overlap by {binding_cut}, join them as "
        "the strips were joined, fold again and sew the rest. Fold the binding over the edge and "
        "fell it to the back.",
        "it is {binding} wide at the front, and {border_shown} of the border shows beside it.",
    )


def _draw(sheet: Worksheet) -> None:
    names = ("blocks_across", "blocks_down", "block", "sashing", "border", "binding",
             "seam_allowance", "top_width", "top_length")  # fmt: skip
    drawn = Quilt({name: sheet[name] for name in names})
    edge = BoundEdge(sheet["binding"], sheet["binding"], None, corner=True)
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The finished cover. The figures drawn are those of "
                                         "the top without the allowance round its border; over its "
                                         "binding the cover is {wide} by {long}.",
                                         wide=sheet["raw_width"], long=sheet["raw_length"]),
                    top_scene(drawn), finished=True),
            Picture("corner", sentence("One corner of the top, finished measures."),
                    corner_scene(drawn)),
            Picture("edge", sentence("The bound edge cut through, its three layers drawn as one, "
                                     "thickness enlarged."), brought_round(edge)),
        )
    )  # fmt: skip


TECHNIQUE = NapCover
