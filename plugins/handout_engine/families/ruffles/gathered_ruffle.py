"""A ruffle in straight strips, hemmed or folded, gathered to an edge."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import length
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line
from handout_engine.families.ruffles.edge_seams import (
    EdgeSeamInputs,
    add_edge_seam_steps,
    note_edge_line,
)
from handout_engine.shared.gathering import (
    GatherInputs,
    note_gathered_length,
    note_gathered_strips,
    note_rows,
    strip_piece,
)
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import (
    finished_picture,
    quarters_picture,
    strips_picture,
)
from handout_engine.shared.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.shared.hems import HemInputs, hem_step, note_hem
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Mark, Seam
from handout_engine.working.worksheet import Worksheet


class GatheredRuffle(HemInputs, EdgeSeamInputs, GatherInputs, Technique):
    """A single ruffle gathered into a seam."""

    title: ClassVar[str] = "Gathered ruffle"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "A strip, hemmed or folded double, gathered along one edge into a seam."
    )

    depth = length(
        "finished depth",
        "From the joining seam to the finished lower edge.",
        "2 in",
        ("1/4 in", "40 in"),
    )

    def whole(self) -> Worksheet:
        """Cut width, strips, cloth, gathering rows and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        cloth = self.cloth()
        width = _note_width(sheet, self)
        note_gathered_length(sheet)
        note_gathered_strips(sheet, cloth)
        line = note_edge_line(sheet)
        rows = note_rows(sheet, line, line, self.rows_apart)
        marks = tuple(Mark(row.label, row.length) for row in rows)
        sheet.pieces.append(strip_piece(sheet, "ruffle strip", "ruffle cloth", marks=marks))
        sheet.seams.append(Seam("ruffle to edge", self.edge_allowance))
        note_cloth(sheet, "ruffle cloth", cloth)
        add_gathering_supplies(sheet)
        add_sample(sheet, width, "a strip")
        _add_steps(sheet, self)
        _draw(sheet, self, rows)
        return sheet


def _note_width(sheet: Worksheet, ruffle: GatheredRuffle) -> Value:
    if ruffle.folded:
        return sheet.note(
            "cut_width",
            "ruffle strip, cut width",
            2 * (ruffle.depth + ruffle.edge_allowance),
            "2 × ({depth} + {edge_allowance})",
        )
    hem = note_hem(sheet, ruffle, sheet["depth"])
    return sheet.note(
        "cut_width",
        "ruffle strip, cut width",
        ruffle.depth + ruffle.edge_allowance + hem.length,
        "{depth} + {edge_allowance} + {hem_allowance}",
    )


def _add_steps(sheet: Worksheet, ruffle: GatheredRuffle) -> None:
    add_washing_step(sheet)
    sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
    add_joining_steps(sheet, "", "ruffle")
    sheet.step(
        hem_step(ruffle.hem),
        "from raw edge to finished edge it is {prepared} deep.",
        prepared=ruffle.depth + ruffle.edge_allowance,
    )
    add_gathering_steps(sheet, "both layers" if ruffle.folded else "the strip")
    add_edge_seam_steps(
        sheet,
        "the ruffle hangs {depth} below the seam.",
    )


def _draw(sheet: Worksheet, ruffle: GatheredRuffle, rows: tuple[Value, Value]) -> None:
    rules = [*(Rule(Line.GATHER, row) for row in rows), Rule(Line.FOLD, _fold_line(sheet, ruffle))]
    strip = FlatStrip(sentence("ruffle strip"), sheet["cut_width"], sheet["strip_length"], rules)
    sheet.pictures.extend(
        (
            finished_picture(sheet, [GatheredLayer(sheet["depth"], ruffle.fullness.number)]),
            strips_picture([strip], "One strip, with the lines to mark."),
            quarters_picture(sheet),
        )
    )


def _fold_line(sheet: Worksheet, ruffle: GatheredRuffle) -> Value:
    """Where the strip is folded: at its middle, or where the hem is turned up."""
    if ruffle.folded:
        return sheet.note("fold_line", "fold, from the raw edge", sheet["cut_width"].length / 2,
                          "{cut_width} / 2")  # fmt: skip
    folded_at = ruffle.depth + ruffle.edge_allowance
    return sheet.note("fold_line", "hem fold, from the raw edge", folded_at,
                      "{depth} + {edge_allowance}")  # fmt: skip


TECHNIQUE = GatheredRuffle
