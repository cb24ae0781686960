"""A square or an oblong hemmed all round, its corners mitred."""

from __future__ import annotations

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.inputs import count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.corner_hems import CornerHemInputs, add_corner_steps
from handout_engine.families.edges.corner_hems_drawing import (
    CornerHem,
    finished_corner,
    flat_corner,
    hemmed_article,
)
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.workings import Seam
from handout_engine.working.worksheet import Worksheet


class MitredCorner(CornerHemInputs, ClothInputs):
    """An article hemmed on all four sides with a sewn mitre at each corner."""

    title = "Mitred corners"
    family = "edges"
    summary = (
        "A square or oblong hemmed all round: its cut size, its folds, and the mitre that makes "
        "each corner lie flat."
    )
    known_by = "corner"

    width = length(
        "finished width", "From hemmed edge to hemmed edge, across.", "18 in", ("2 in", "108 in")
    )
    length = length(
        "finished length", "From hemmed edge to hemmed edge, down.", "18 in", ("2 in", "5 yd")
    )
    make = count("how many", "How many such articles are made.", 1, 50)

    @value("cut width")
    def cut_width(self) -> Length:
        """A hem is taken at both sides."""
        return self.width + 2 * self.hem_takes

    @value("cut length")
    def cut_length(self) -> Length:
        """A hem is taken at both ends."""
        return self.length + 2 * self.hem_takes

    @value("square for a trial corner")
    def sample_side(self) -> Length:
        """The mitre reaches half way along it."""
        return 4 * self.hem_takes

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the article."""
        return ClothBought(self, "cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The article, with its folds."""
        sheet.pieces.append(self.article_piece(sheet, self.make.number))
        sheet.seams.append(Seam("mitre at each corner", self.mitre_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From a corner of paper to the hem sewn all round."""
        sheet.have("fine thread to match", "a fine needle for the cloth")
        sheet.have("a ruler", "a removable marker tried on a scrap", "a point to turn on")
        sheet.cautions.append(PINS_AND_IRON)
        sheet.trial(
            "Cut a square of paper, {sample_side} each way, and fold, draw and sew one "
            "corner of it as below.",
            "turned, the corner lies flat with its hem {hem_depth} deep on both sides. If "
            "it cups, the seam was drawn too near the middle; if it gapes, too near the "
            "corner.",
        )
        add_washing_step(sheet)
        sheet.step(
            f"Cut {counted(sheet, 'piece')} "
            "{cut_width} by {cut_length}, on the thread: draw a thread for each edge and cut along "
            "the gap.",
            "opposite sides are alike, and both diagonals too.",
        )
        add_corner_steps(sheet)
        sheet.step(
            "Sew the other three corners. Press the hem down all round, baste it close to its "
            "inner edge, and sew it by hand or machine.",
            "the article is {width} by {length}.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The article, and its corner flat and finished."""
        names = ("hem_depth", "turn", "hem_takes", "mitre_mark", "trim_mark")
        hem = CornerHem(*(sheet[name] for name in names))
        whole = Scene(
            sentence("The hemmed article"),
            sheet.sentence("{width} by {length}, hemmed {hem_depth} deep."),
            hemmed_article(sheet["width"], sheet["length"], sheet["hem_depth"]),
        )
        flat = Scene(
            sentence("One corner as it is cut"),
            sheet.sentence("The mitre seam meets both raw edges {mitre_mark} from the corner."),
            flat_corner(hem),
        )
        turned = Scene(
            sentence("One corner, finished"),
            sheet.sentence("Hem {hem_depth} deep, its mitre on the diagonal."),
            finished_corner(hem),
            tallest=200.0,
        )
        for name, caption, scene in (
            (
                "finished",
                "The finished article from its right side: hem stitching dashed, mitres behind in "
                "thin dashes.",
                whole,
            ),
            (
                "flat",
                "One raw corner, wrong side up: folds dash-dotted, mitre seam dashed; the grey tip "
                "is cut off after sewing.",
                flat,
            ),
            ("corner", "The same corner turned and hemmed, wrong side up.", turned),
        ):
            sheet.show(name, caption, scene, finished=name == "finished")


TECHNIQUE = MitredCorner
