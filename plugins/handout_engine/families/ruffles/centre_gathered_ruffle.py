"""A ruffle gathered along its middle, which stands out to both sides of its stitching."""

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


class CentreGatheredRuffle(HeadingInputs, Technique):
    """A strip finished on both edges, gathered along its centre and stitched on flat."""

    title: ClassVar[str] = "Centre-gathered ruffle"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "A strip finished along both edges, gathered along its middle and stitched on as a trim."
    )

    width = length(
        "finished width", "From one finished edge to the other.", "1 1/2 in", ("1/4 in", "40 in")
    )

    def whole(self) -> Worksheet:
        """Cut width, gathering line, strips, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        half = sheet.note("half_width", "from the gathering line to each finished edge",
                          self.width / 2, "{width} / 2")  # fmt: skip
        rows = note_ruffle(sheet, self, half, half)
        _add_steps(sheet, self, half)
        _draw(sheet, self, half, rows)
        return sheet


def _add_steps(sheet: Worksheet, ruffle: CentreGatheredRuffle, half: Value) -> None:
    add_washing_step(sheet)
    sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
    add_joining_steps(sheet, "", "ruffle")
    add_finishing_steps(sheet, ruffle, half, half)
    sheet.step(
        "Mark the line the trim will follow. Lay the ruffle on it, wrong side down, middle on the "
        "line, and stitch along the middle between the two rows. Draw out both rows.",
        "{half_width} stands out on each side of the stitching.",
    )


def _draw(
    sheet: Worksheet, ruffle: CentreGatheredRuffle, half: Value, rows: tuple[Value, Value]
) -> None:
    rules = [*(Rule(Line.GATHER, row) for row in rows), *note_folds(sheet, ruffle, half, half)]
    strip = FlatStrip(sentence("ruffle strip"), sheet["cut_width"], sheet["strip_length"], rules)
    sheet.pictures.extend(
        (
            finished_picture(sheet, [GatheredLayer(half, ruffle.fullness.number, heading=half)]),
            strips_picture([strip], "One strip, with the lines to mark."),
            quarters_picture(sheet, (0.5,)),
        )
    )


TECHNIQUE = CentreGatheredRuffle
