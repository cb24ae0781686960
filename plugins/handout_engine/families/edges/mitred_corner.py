"""A square or an oblong hemmed all round, its corners mitred."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import count, length
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothInputs, note_cloth
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.corner_hems import (
    CornerHemInputs,
    add_corner_steps,
    article_piece,
    check_room,
    note_hem_takes,
    note_mitre,
)
from handout_engine.families.edges.corner_hems_drawing import (
    CornerHem,
    finished_corner,
    flat_corner,
    hemmed_article,
)
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Seam, Step
from handout_engine.working.worksheet import Worksheet


class MitredCorner(CornerHemInputs, ClothInputs, Technique):
    """An article hemmed on all four sides with a sewn mitre at each corner."""

    title: ClassVar[str] = "Mitred corners"
    family: ClassVar[str] = "edges"
    summary: ClassVar[str] = (
        "A square or oblong hemmed all round: its cut size, its folds, and the mitre that makes "
        "each corner lie flat."
    )
    known_by: ClassVar[str] = "corner"

    width = length(
        "finished width", "From hemmed edge to hemmed edge, across.", "18 in", ("2 in", "108 in")
    )
    length = length(
        "finished length", "From hemmed edge to hemmed edge, down.", "18 in", ("2 in", "5 yd")
    )
    make = count("how many", "How many such articles are made.", 1, 50)

    def whole(self) -> Worksheet:
        """Cut size, folds, mitre, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        note_hem_takes(sheet)
        check_room(sheet, "width", "length")
        for side in ("width", "length"):
            sheet.note(f"cut_{side}", f"cut {side}",
                       sheet[side].length + 2 * sheet["hem_takes"].length,
                       f"{{{side}}} + 2 × {{hem_takes}}")  # fmt: skip
        note_mitre(sheet)
        sides = sheet["cut_width"], sheet["cut_length"]
        sheet.pieces.append(article_piece(sheet, "article", sides, self.make.number))
        note_cloth(sheet, "cloth", self.cloth())
        sheet.seams.append(Seam("mitre at each corner", self.mitre_allowance))
        sheet.have("fine thread to match", "a fine needle for the cloth")
        sheet.have("a ruler", "a removable marker tried on a scrap", "a point to turn on")
        sheet.cautions.append(PINS_AND_IRON)
        _add_sample(sheet)
        _add_steps(sheet)
        _draw(sheet)
        return sheet


def _add_sample(sheet: Worksheet) -> None:
    side = sheet.note("sample_side", "square for a trial corner", 4 * sheet["hem_takes"].length,
                      "4 × {hem_takes}")  # fmt: skip
    sheet.sample.append(
        Step(
            sentence("Cut a square of paper, {side} each way, and fold, draw and sew one corner of "
                     "it as below.", side=side),
            sentence("turned, the corner lies flat with its hem {depth} deep on both sides. If it "
                     "cups, the seam was drawn too near the middle; if it gapes, too near the "
                     "corner.", depth=sheet["hem_depth"]),
        )
    )  # fmt: skip


def _add_steps(sheet: Worksheet) -> None:
    add_washing_step(sheet)
    sheet.step(
        f"Cut {counted(sheet, 'piece')} "
        "{cut_width} by {cut_length}, on the thread: draw a thread for each "
        "edge and cut along the gap.",
        "opposite sides are alike, and both diagonals too.",
    )
    add_corner_steps(sheet)
    sheet.step(
        "Sew the other three corners. Press the hem down all round, baste it close to its inner "
        "edge, and sew it by hand or machine.",
        "the article is {width} by {length}.",
    )


def _draw(sheet: Worksheet) -> None:
    hem = CornerHem(*(sheet[name] for name in
                      ("hem_depth", "turn", "hem_takes", "mitre_mark", "trim_mark")))  # fmt: skip
    whole = Scene(
        sentence("The hemmed article"),
        sentence("{width} by {length}, hemmed {depth} deep.", width=sheet["width"],
                 length=sheet["length"], depth=sheet["hem_depth"]),
        hemmed_article(sheet["width"], sheet["length"], sheet["hem_depth"]),
    )  # fmt: skip
    flat = Scene(
        sentence("One corner as it is cut"),
        sentence("The mitre seam meets both raw edges {mark} from the corner.", mark=hem.mark),
        flat_corner(hem),
    )
    turned = Scene(
        sentence("One corner, finished"),
        sentence("Hem {depth} deep, its mitre on the diagonal.", depth=hem.depth),
        finished_corner(hem),
        tallest=200.0,
    )
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The finished article from its right side: hem stitching "
                                         "dashed, mitres behind in thin dashes."), whole, True),
            Picture("flat", sentence("One raw corner, wrong side up: folds dash-dotted, mitre seam "
                                     "dashed; the grey tip is cut off after sewing."), flat),
            Picture("corner", sentence("The same corner turned and hemmed, wrong side up."),
                    turned),
        )
    )  # fmt: skip


TECHNIQUE = MitredCorner
