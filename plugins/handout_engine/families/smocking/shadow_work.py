"""A band of shadow work along an edge or round a ring, in whole stitches."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, fine_length, length, percentage
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.shadow_work_drawing import (
    ShadowBand,
    cut_across,
    finished,
    guide,
    threads,
)
from handout_engine.families.smocking.shadow_work_measures import (
    TAPE,
    lines_chart,
    note_crossings,
    note_holes,
    note_thread,
)
from handout_engine.families.smocking.shadow_work_steps import add_sample, add_steps
from handout_engine.shared.repeats import Line, RepeatInputs, checks_chart, note_repeats
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Supply
from handout_engine.working.worksheet import Worksheet

EDGE, RING = "along an edge", "round a ring"


class ShadowWork(RepeatInputs, Technique):
    """A band whose colour lies behind sheer cloth."""

    title: ClassVar[str] = "Shadow work"
    family: ClassVar[str] = "smocking"
    summary: ClassVar[str] = (
        "Threads crossed behind sheer cloth between two lines of back stitch: whole stitches "
        "along an edge, lines to trace, thread."
    )

    form = choice(
        "row", "From one end of an edge to the other, or round until it meets itself.", EDGE, RING
    )
    edge = length(
        "length of the edge", "Measured where the band is to run.", "12 in", ("1 in", "200 in")
    )
    margin = length(
        "margin",
        "Kept free at each end or corner of an edge; a ring has none.",
        "1/2 in",
        ("0 in", "4 in"),
    )
    from_edge = length(
        "distance from the edge",
        "From the finished edge to the nearer line.",
        "1/2 in",
        ("1/8 in", "12 in"),
    )
    gap = length(
        "channel",
        "From one drawn line to the other: the width of the band.",
        "3/16 in",
        ("1/16 in", "3/4 in"),
        basis=PRACTICE,
    )
    rows = count("how many rows", "Bands one behind the other, all alike.", 1, 9)
    between = length(
        "between rows",
        "From the far line of a row to the near line of the next.",
        "3/8 in",
        ("1/16 in", "12 in"),
    )
    repeat = fine_length(
        "stitch",
        "Length of one back stitch on either line: one repeat.",
        "2 mm",
        ("1 mm", "6 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    longest_crossing = fine_length(
        "longest crossing",
        "A thread longer than this, loose behind the cloth, catches. "
        "Allow more where the work is lined.",
        "10 mm",
        ("3 mm", "25 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    take_up = percentage(
        "take-up",
        "Thread used beyond its straight way: through the cloth and to and fro in "
        "the needle's eye. Your sample says better.",
        "10 %",
        30,
        group=SEWING,
        basis=PRACTICE,
    )
    needleful = length(
        "needleful",
        "Length of thread that you work with.",
        "18 in",
        ("10 in", "40 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    fastening = length(
        "fastening",
        "Of each needleful, for both its ends.",
        "4 in",
        ("1 in", "5 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def ring(self) -> bool:
        """Whether the row meets itself."""
        return self.form == RING

    @property
    def ends(self) -> Length:
        """What the two margins take of the edge."""
        return ZERO if self.ring else 2 * self.margin

    def whole(self) -> Worksheet:
        """Whole stitches, holes, crossings, thread and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        line = Line("edge", "edge", _note_run(sheet, self), self.ends)
        adjusted = note_repeats(sheet, line)
        note_holes(sheet, self.ring)
        note_crossings(sheet)
        thread = note_thread(sheet, self.ring)
        if self.rows > 1:
            sheet.note("reach", "from the finished edge to the last line",
                       self.from_edge + self.gap * self.rows + self.between * (self.rows - 1),
                       "{from_edge} + {rows} × {gap} + ({rows} - 1) × {between}")  # fmt: skip
        sheet.charts.append(lines_chart(sheet))
        sheet.charts.append(checks_chart(line, adjusted, sheet["repeats_edge"].whole, ZERO))
        _add_supplies(sheet, thread)
        sheet.cautions.extend((LONG_FLOATS, THIN_COTTON, PINS_AND_IRON))
        add_sample(sheet)
        add_steps(sheet, self.ring)
        _draw(sheet, self)
        return sheet


def _note_run(sheet: Worksheet, work: ShadowWork) -> Value:
    """Note the length that the row fills; raises RefusalError when the margins leave nothing."""
    if work.ring:
        return sheet.note("row_edge", "length to fill, once round", work.edge, "{edge}")
    if work.ends >= work.edge:
        raise RefusalError(
            f"two margins of {TAPE.say(work.margin)} leave nothing of an edge "
            f"{TAPE.say(work.edge)} long; use margins of less than {TAPE.no_more(work.edge / 2)}",
            "margin",
        )
    return sheet.note("row_edge", "length to fill between the margins", work.edge - work.ends,
                      "{edge} - 2 × {margin}")  # fmt: skip


def _add_supplies(sheet: Worksheet, thread: Value) -> None:
    sheet.supplies.append(Supply("stranded cotton, in a shade stronger than is to show", thread,
                                 sentence("of one strand; for two strands in the needle, "
                                          "twice as much")))  # fmt: skip
    sheet.supplies.append(Supply("sheer cloth that the colour shows through: organdy, batiste"))
    sheet.supplies.append(Supply("a fine needle with a sharp point and an eye no thicker than the "
                                 "thread needs"))  # fmt: skip
    sheet.have(
        "a small hoop, its rings bound", "a marker that washes out in cold water, tried on a scrap"
    )


def _draw(sheet: Worksheet, work: ShadowWork) -> None:
    margin = sheet["margin"] if work.ends else None
    band = ShadowBand(sheet["gap"], sheet["repeat_edge"], sheet["edge"], sheet["from_edge"],
                      sheet["rows"], sheet["between"], margin)  # fmt: skip
    whole = Scene(
        sentence("Shadow work, finished"),
        sentence("{stitches} stitches on each line, lines {gap} apart.",
                 stitches=sheet["repeats_edge"], gap=sheet["gap"]),
        finished(band),
    )  # fmt: skip
    laid = ", laid out flat" if work.ring else ""
    repeats = int(sheet["guide_length"].length / sheet["repeat_edge"].length)
    sheet.pictures.extend(
        (
            Picture("finished", sentence(f"The band from the right side{laid}: lines of "
                                         "back stitch dashed, the colour behind the cloth "
                                         "tinted, the finished edge below."), whole, True),
            Picture("threads", sentence("Enlarged, from the wrong side: crossing threads thick, "
                                        "stitches of the right side in thin dashes, numbered as "
                                        "they are worked. The sheet at true scale has the lines "
                                        "and the holes to trace."),
                    threads(band), sheet=guide(band, repeats)),
            Picture("channel", sentence("The channel cut across, thicknesses enlarged: what shows "
                                        "between the lines is the thread beneath the cloth."),
                    cut_across(band)),
        )
    )  # fmt: skip


TECHNIQUE = ShadowWork
