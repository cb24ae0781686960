"""Inverted pleats: two folds that meet in front, their cloth lying away from each other behind."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import count, length
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from handout_engine.families.pleats.pleating import PleatInputs, note_flat
from handout_engine.families.pleats.pleating_steps import (
    PleatPictures,
    PleatRow,
    add_pleat_pictures,
    add_pleat_row,
)
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet


class InvertedPleat(PleatInputs, Technique):
    """One or several inverted pleats, folded from the same cloth."""

    title: ClassVar[str] = "Inverted pleat"
    family: ClassVar[str] = "pleats"
    summary: ClassVar[str] = (
        "Two folds that meet in front, taking four times their depth; one at a centre, or several "
        "evenly spaced."
    )

    pleats = count("pleats", "How many, evenly spaced over the width.", 1, 40)
    depth = length(
        "depth",
        "How far each of the two folds lies behind.",
        "1 1/2 in",
        ("1/8 in", "8 in"),
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Folds, joined cloth, lines and steps; raises RefusalError for pleats without room."""
        sheet = Worksheet(technique=self)
        sheet.note("pleat_depth", "depth of each fold", self.depth, "{depth}")
        folds = sheet.note("folds", "folds, two in each pleat", 2 * self.pleats, "2 × {pleats}")
        flat = note_flat(sheet, self, folds, GEOMETRY)
        apart = sheet.note("apart", "from one meeting line to the next, finished",
                           self.finished_width / self.pleats,
                           "{finished_width} / {pleats}")  # fmt: skip
        sheet.note("first_pleat", "first meeting line, from the left seam", apart.length / 2,
                   "{apart} / 2")  # fmt: skip
        sheet.note("opens", "what one pleat adds where it opens", 4 * self.depth,
                   "4 × {pleat_depth}")  # fmt: skip
        sheet.note("ratio", "cloth for each width", flat.length / sheet["pleated_width"].length,
                   "{flat_width} / {pleated_width}")  # fmt: skip
        panel = self._panel(sheet)
        how = (
            "Bring the two folds of each pleat towards each other until they meet on their common "
            "placement line."
        )
        add_pleat_row(sheet, self, PleatRow(panel, "pleat", 2, sheet["pleat_depth"], how))
        side = self.depth * 5 / 4
        one = (Fold(self.depth, side, Lie.LEFT), Fold(self.depth, side, Lie.RIGHT))
        add_pleat_pictures(sheet, PleatPictures(panel, one, 2 * side, self.title))
        return sheet

    def _panel(self, sheet: Worksheet) -> FoldedPanel:
        apart, first = sheet["apart"].length, sheet["first_pleat"].length
        folds: list[Fold] = []
        for number in range(self.pleats):
            meeting = self.edge + first + apart * number
            folds.extend(
                (Fold(self.depth, meeting, Lie.LEFT), Fold(self.depth, meeting, Lie.RIGHT))
            )
        return FoldedPanel(sheet["pleated_width"].length, tuple(folds))


TECHNIQUE = InvertedPleat
