"""A ruffle gathered inside its edge, so that a heading stands above the gathering line."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import length
from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Line
from handout_engine.families.ruffles.heading import (
    HeadingInputs,
    add_finishing_steps,
    note_folds,
    note_ruffle,
)
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import (
    finished_picture,
    quarters_picture,
    strips_picture,
)
from handout_engine.shared.gathering_steps import add_joining_steps, add_washing_step
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet


class HeadedRuffle(HeadingInputs, Technique):
    """A ruffle with a heading, laid on the edge and stitched along its gathering line."""

    title: ClassVar[str] = "Ruffle with a heading"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "A strip finished along both edges and gathered inside its upper one, so that a heading "
        "stands above the stitching."
    )

    depth = length(
        "finished depth",
        "From the gathering line to the finished lower edge.",
        "2 in",
        ("1/4 in", "40 in"),
    )
    heading = length(
        "heading",
        "From the gathering line up to the finished upper edge.",
        "1/2 in",
        ("1/8 in", "20 in"),
    )

    def whole(self) -> Worksheet:
        """Cut width, gathering line, strips, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        rows = note_ruffle(sheet, self, sheet["heading"], sheet["depth"])
        _add_steps(sheet, self)
        _draw(sheet, self, rows)
        return sheet


def _add_steps(sheet: Worksheet, ruffle: HeadedRuffle) -> None:
    add_washing_step(sheet)
    sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
    add_joining_steps(sheet, "", "ruffle")
    add_finishing_steps(sheet, ruffle, sheet["heading"], sheet["depth"])
    sheet.step(
        "Lay the ruffle on the finished edge, wrong side down, with its gathering line on the line "
        "where it is to hang, and stitch along it between the two rows. Draw out both rows.",
        "{heading} stands above the stitching and {depth} hangs below it.",
    )


def _draw(sheet: Worksheet, ruffle: HeadedRuffle, rows: tuple[Value, Value]) -> None:
    folds = note_folds(sheet, ruffle, sheet["heading"], sheet["depth"])
    rules = [*(Rule(Line.GATHER, row) for row in rows), *folds]
    strip = FlatStrip(sentence("ruffle strip"), sheet["cut_width"], sheet["strip_length"], rules)
    layer = GatheredLayer(sheet["depth"], ruffle.fullness.number, heading=sheet["heading"])
    sheet.pictures.extend(
        (
            finished_picture(sheet, [layer]),
            strips_picture([strip], "One strip, with the lines to mark."),
            quarters_picture(sheet, (float(ruffle.heading / (ruffle.heading + ruffle.depth)),)),
        )
    )


TECHNIQUE = HeadedRuffle
