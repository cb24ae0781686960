"""A ruffle in straight strips, hemmed or folded, gathered to an edge."""

from __future__ import annotations

from handout_engine.amounts.inputs import length
from handout_engine.drawing.scene import Line
from handout_engine.families.ruffles.edge_seams import add_edge_seam_steps
from handout_engine.families.ruffles.seamed_ruffle import SingleRuffle
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import (
    finished_picture,
    quarters_picture,
    row_rules,
    strip_picture,
)
from handout_engine.shared.gathering_steps import add_gathering_steps, add_strip_steps
from handout_engine.shared.hems import hem_step
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.worksheet import Worksheet


class GatheredRuffle(SingleRuffle):
    """A single ruffle gathered into a seam."""

    title = "Gathered ruffle"
    family = "ruffles"
    summary = "A strip, hemmed or folded double, gathered along one edge into a seam."

    depth = length(
        "finished depth",
        "From the joining seam to the finished lower edge.",
        "2 in",
        ("1/4 in", "40 in"),
    )

    def sew(self, sheet: Worksheet) -> None:
        """Hemmed first, then gathered and sewn on."""
        add_strip_steps(sheet, "ruffle")
        sheet.step(hem_step(self.hem), "from raw edge to finished edge it is {fold_line} deep.")
        add_gathering_steps(sheet, "both layers" if self.folded else "the strip")
        add_edge_seam_steps(sheet, "the ruffle hangs {depth} below the seam.")

    def draw(self, sheet: Worksheet) -> None:
        """The finished ruffle, its strip, and its quarters."""
        rules = [*row_rules(sheet), Rule(Line.FOLD, sheet["fold_line"])]
        sheet.pictures.extend(
            (
                finished_picture(sheet, [GatheredLayer(sheet["depth"], self.fullness.number)]),
                strip_picture(sheet, "ruffle strip", rules, "One strip, with the lines to mark."),
                quarters_picture(sheet),
            )
        )


TECHNIQUE = GatheredRuffle
