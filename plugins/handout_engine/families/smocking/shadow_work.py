"""A band of shadow work along an edge or round a ring, in whole stitches."""

from __future__ import annotations

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.shadow_stitches import ShadowStitches
from handout_engine.families.smocking.shadow_work_drawing import (
    ShadowBand,
    cut_across,
    finished,
    guide,
    threads,
)
from handout_engine.families.smocking.shadow_work_steps import add_sample, add_steps
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.workings import Chart, Supply
from handout_engine.working.worksheet import Worksheet


class ShadowWork(ShadowStitches):
    """A band whose colour lies behind sheer cloth."""

    title = "Shadow work"
    family = "smocking"
    summary = (
        "Threads crossed behind sheer cloth between two lines of back stitch: whole stitches "
        "along an edge, lines to trace, thread."
    )

    def cut(self, sheet: Worksheet) -> None:
        """Nothing is cut; the lines have their chart, and the stitches theirs."""
        sheet.charts.append(self._lines_chart())
        sheet.charts.append(self.stitches.checks_chart())

    def _lines_chart(self) -> Chart:
        """Where both lines of every row lie, with their holes and stitches."""
        lines = []
        for row in range(self.rows):
            near = self.from_edge + (self.gap + self.between) * row
            which = f" of row {row + 1}" if self.rows.number > 1 else ""
            for name, at in ((f"near line{which}", near), (f"far line{which}", near + self.gap)):
                lines.append((name, at, self.holes.number, self.stitches.number.number))
        headings = ("Line", "From the finished edge", "Holes", "Stitches")
        return Chart("The drawn lines", headings, tuple(lines))

    def sew(self, sheet: Worksheet) -> None:
        """A sample; then marking, stitching, and washing the marks out."""
        _add_supplies(sheet, sheet["thread"])
        sheet.cautions.extend((LONG_FLOATS, THIN_COTTON, PINS_AND_IRON))
        add_sample(sheet)
        add_steps(sheet, self.ring)

    def draw(self, sheet: Worksheet) -> None:
        """The band, its threads from the wrong side, and the channel cut across."""
        _draw(sheet, self)


def _add_supplies(sheet: Worksheet, thread: Value) -> None:
    sheet.supplies.append(
        Supply(
            "stranded cotton, in a shade stronger than is to show",
            thread,
            sentence("of one strand; for two strands in the needle, twice as much"),
        )
    )
    sheet.supplies.append(Supply("sheer cloth that the colour shows through: organdy, batiste"))
    sheet.supplies.append(
        Supply("a fine needle with a sharp point and an eye no thicker than the thread needs")
    )
    sheet.have(
        "a small hoop, its rings bound", "a marker that washes out in cold water, tried on a scrap"
    )


def _draw(sheet: Worksheet, work: ShadowWork) -> None:
    margin = sheet["margin"] if work.ends else None
    band = ShadowBand(
        sheet["gap"],
        sheet["repeat_edge"],
        sheet["edge"],
        sheet["from_edge"],
        sheet["rows"],
        sheet["between"],
        margin,
    )
    whole = Scene(
        sentence("Shadow work, finished"),
        sentence(
            "{stitches} stitches on each line, lines {gap} apart.",
            stitches=sheet["repeats_edge"],
            gap=sheet["gap"],
        ),
        finished(band),
    )
    laid = ", laid out flat" if work.ring else ""
    repeats = int(sheet["guide_length"].length / sheet["repeat_edge"].length)
    sheet.show(
        "finished",
        f"The band from the right side{laid}: lines of "
        "back stitch dashed, the colour behind the cloth "
        "tinted, the finished edge below.",
        whole,
        finished=True,
    )
    sheet.show(
        "threads",
        "Enlarged, from the wrong side: crossing threads thick, "
        "stitches of the right side in thin dashes, numbered as "
        "they are worked. The sheet at true scale has the lines "
        "and the holes to trace.",
        threads(band),
        sheet=guide(band, repeats),
    )
    sheet.show(
        "channel",
        "The channel cut across, thicknesses enlarged: what shows "
        "between the lines is the thread beneath the cloth.",
        cut_across(band),
    )


TECHNIQUE = ShadowWork
