"""A quilted nap cover: square blocks with sashing and border, three layers and a binding."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.cloth.cloth import ClothBought
from handout_engine.families.nursery.nap_cover_cloth import (
    BACKING,
    BATTING,
    BINDING,
    BLOCKS,
    FRAME,
    QuiltInputs,
)
from handout_engine.families.nursery.nap_cover_drawing import Quilt, corner_scene, top_scene
from handout_engine.shared.binding import check_tail
from handout_engine.shared.binding_drawing import BoundEdge, brought_round
from handout_engine.shared.binding_steps import bound_sample
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import (
    NOTHING_LOOSE_IN_THE_COT,
    NOTHING_UNDER_THE_HARNESS,
    PINS_AND_IRON,
)
from handout_engine.working.workings import Grain, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

_COT = published("cfr-1241")
MATTRESS_WIDTH = constant("width of the mattress", inches("109/4"), _COT)
MATTRESS_LENGTH = constant("length of the mattress", inches("413/8"), _COT)
SAMPLE_STRIP = constant("usual strip", inches(1), PRACTICE)


class NapCover(QuiltInputs):
    """A small quilt of equal blocks."""

    title = "Quilted nap cover"
    family = "nursery"
    summary = "A small quilt of square blocks with sashing and border, bound with a double binding."

    @check
    def the_tail_joins_the_ends(self) -> None:
        """Refuse a tail that is used up where the ends of the binding are joined."""
        check_tail(self, self.inputs["tail"], self.binding_cut)

    @value("mattress of a full-size cot, width")
    def mattress_width(self) -> Length:
        """To compare with."""
        return MATTRESS_WIDTH

    @value("mattress of a full-size cot, length")
    def mattress_length(self) -> Length:
        """To compare with."""
        return MATTRESS_LENGTH

    @value("middle strip of the sample", basis=PRACTICE)
    def sample_strip(self) -> Length:
        """Narrow, so that an error shows."""
        return SAMPLE_STRIP

    @value("strips of the sample, cut width")
    def sample_cut(self) -> Length:
        """With both seams."""
        return self.sample_strip + 2 * self.seam_allowance

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """Every cloth that is cut from."""
        frame = (ClothBought(self, FRAME, "frame_"),) if self.bars else ()
        backing, binding = (
            ClothBought(self, name, prefix)
            for name, prefix in ((BACKING, "backing_"), (BINDING, "binding_"))
        )
        return ClothBought(self, BLOCKS), *frame, backing, binding

    def cut(self, sheet: Worksheet) -> None:
        """Blocks and strips, the two layers below them, and the binding."""
        block = sheet["block_cut"]
        sheet.pieces.append(
            Piece("block", BLOCKS, self.blocks.number, block, block, Grain.STRAIGHT)
        )
        for bar in self.bars:
            size = sheet[bar.width], sheet[f"{bar.prefix}strip_length"]
            sheet.pieces.append(Piece(bar.name, FRAME, bar.pieces.number, *size, Grain.CROSS))
        size = sheet["batting_width"], sheet["batting_length"]
        sheet.pieces.append(Piece("batting", BATTING, 1, *size, Grain.STRAIGHT))
        size = sheet["backing_strip_length"], sheet[self.backing_panel[1]]
        panels = self.backing_strips.strips.number
        sheet.pieces.append(Piece("backing panel", BACKING, panels, *size, Grain.STRAIGHT))
        size = sheet["binding_cut"], sheet["binding_strip_length"]
        strips = self.binding_strips.strips.number
        sheet.pieces.append(Piece("binding strip", BINDING, strips, *size, Grain.CROSS))
        sheet.seams.append(Seam("in the top", self.seam_allowance))
        sheet.seams.append(Seam("binding to edge", self.binding))

    def sew(self, sheet: Worksheet) -> None:
        """The top pieced, the layers basted and quilted, the edge bound."""
        size = sheet.sentence(
            "one piece {batting_width} by {batting_length}, thin cotton, washable"
        )
        sheet.supplies.append(Supply(BATTING, None, size))
        threads = "piecing thread, quilting thread, basting thread or curved pins"
        sheet.supplies.append(Supply(threads))
        sheet.have("a long ruler", "a square with right angles")
        sheet.have("a removable marker tried on a scrap")
        sheet.cautions.extend((PINS_AND_IRON, NOTHING_LOOSE_IN_THE_COT, NOTHING_UNDER_THE_HARNESS))
        _add_sample(sheet)
        _add_piecing_steps(sheet, self)
        _add_layering_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The cover, one of its corners, and its bound edge."""
        _draw(sheet)


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Cut three strips {sample_cut} wide and a hand long, sew them side by side with "
        "the allowance you mean to use, and press.",
        "the middle strip is {sample_strip} wide. If it is narrower, sew nearer to the "
        "edge: an error of a thread stands in every seam of the top.",
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
        "each row is {row_sewn} long and {block_cut} high.",
    )
    sashed = ", a long sash between every two" if quilt.sashing else ""
    sheet.step(
        f"Sew the {{blocks_down}} rows together{sashed}, pinned so that block stands over block.",
        "it measures {row_sewn} by {rows_sewn}.",
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
    names = (
        "blocks_across",
        "blocks_down",
        "block",
        "sashing",
        "border",
        "binding",
        "seam_allowance",
        "top_width",
        "top_length",
    )
    drawn = Quilt({name: sheet[name] for name in names})
    edge = BoundEdge(sheet["binding"], sheet["binding"], None, corner=True)
    sheet.show(
        "finished",
        "The finished cover. The figures drawn are those of "
        "the top without the allowance round its border; over its "
        "binding the cover is {raw_width} by {raw_length}.",
        top_scene(drawn),
        finished=True,
    )
    sheet.show("corner", "One corner of the top, finished measures.", corner_scene(drawn))
    sheet.show(
        "edge",
        "The bound edge cut through, its three layers drawn as one, thickness enlarged.",
        brought_round(edge),
    )


TECHNIQUE = NapCover
