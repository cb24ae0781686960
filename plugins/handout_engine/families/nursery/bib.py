"""A bib drawn from neck and chest: a round neck that closes at the back, a front to the waist."""

from __future__ import annotations

from handout_engine.amounts.declaring import group
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drafting.garment_steps import add_cloth_step, add_stay_step
from handout_engine.families.nursery.bib_drawing import Bib as Drawn
from handout_engine.families.nursery.bib_drawing import cut_scene, finished_scene
from handout_engine.families.nursery.bib_measures import BOUND, BibInputs
from handout_engine.geometry.points import snapped
from handout_engine.geometry.polygons import Polygon, extents
from handout_engine.working.cautions import (
    BIB_COMES_OFF,
    FASTENERS_AS_SMALL_PARTS,
    NOTHING_LOOSE_IN_THE_COT,
    PINS_AND_IRON,
)
from handout_engine.working.workings import BINDINGS, Grain, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

FRONT, BACK = "front cloth", "backing cloth"


class Bib(BibInputs):
    """A bib of two layers, bound or turned."""

    title = "Bib"
    family = "nursery"
    summary = "A bib drawn from neck and chest, bound or turned, with a lapped closing at the back."

    @group
    def cloths(self) -> tuple[ClothBought, ClothBought]:
        """One for each layer."""
        return ClothBought(self, FRONT, "front_"), ClothBought(self, BACK, "backing_")

    def cut(self, sheet: Worksheet) -> None:
        """Two layers of one outline."""
        outline, seam, notches = self._laid_along_their_length()
        for name, cloth in (("front", FRONT), ("backing", BACK)):
            sheet.pieces.append(
                Piece(
                    name,
                    cloth,
                    self.make.number,
                    sheet["cut_width"],
                    sheet["cut_height"],
                    Grain.STRAIGHT,
                    outline=outline,
                    seam_outline=seam if self.allowance else (),
                    notches=notches if self.allowance else (),
                )
            )
        if self.allowance:
            sheet.seams.append(Seam("round the bib", self.seam_allowance))

    def _laid_along_their_length(self) -> tuple[Polygon, Polygon, Polygon]:
        """Outline, seam and notches: a piece's length is x, and here that is the bib's height."""
        (left, top), _ = extents(self.cut_outline)
        middle = (0.0, self.shape.neck), (0.0, self.shape.low)
        outline, seam, notches = (
            tuple((snapped(y - top), snapped(x - left)) for x, y in points)
            for points in (self.cut_outline, self.shape.outline(), middle)
        )
        return outline, seam, notches

    def sew(self, sheet: Worksheet) -> None:
        """From the outline to the closing."""
        _add_supplies(sheet, self)
        _add_sample(sheet)
        _add_steps(sheet, self)

    def draw(self, sheet: Worksheet) -> None:
        """The bib flat, and its outline."""
        names = (
            "bib_width",
            "bib_drop",
            "strap",
            "gap",
            "neck_radius",
            "cut_width",
            "cut_height",
        )
        drawn = Drawn({name: sheet[name] for name in names}, self.shape, float(self.allowance))
        finished = "The bib laid flat, its ends apart by {gap}; they lap when it is closed."
        cut = (
            "The outline to cut, its seam dashed."
            if self.allowance
            else "The outline to cut; the binding takes nothing beyond it."
        )
        sheet.show("finished", finished, finished_scene(drawn), finished=True)
        sheet.show("outline", cut, cut_scene(drawn))


def _add_supplies(sheet: Worksheet, bib: Bib) -> None:
    if bib.edge == BOUND:
        sheet.supplies.append(
            Supply(
                "bias binding",
                None,
                sheet.sentence("{edge_length} to go round, for each bib"),
                unless=BINDINGS,
            )
        )
    sheet.supplies.append(Supply("soft hook-and-loop tape, or a press fastener with its tool"))
    sheet.have("fine thread to match", "paper for the outline")
    sheet.cautions.extend(
        (PINS_AND_IRON, BIB_COMES_OFF, FASTENERS_AS_SMALL_PARTS, NOTHING_LOOSE_IN_THE_COT)
    )


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Cut the finished outline in paper and close its ends, lapped {overlap}.",
        "the neck measures {closed_neck} round, {neck_room} more than the baby's own: two "
        "fingers go in beside the neck, not a hand.",
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
        sheet.step(
            "Lay the two layers wrong sides together, baste round close to the edge, and "
            "quilt them together where you like."
        )
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


GARMENT = Bib
