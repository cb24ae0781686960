"""Whole repeats of a machine stitch along an edge or round a ring."""

from __future__ import annotations

from math import floor
from typing import ClassVar

from handout_engine.amounts.inputs import choice, count, length
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import just, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.repeat_rows_drawing import RowStart, plain_row, row_start
from handout_engine.families.edges.stitch_needles import (
    NeedleInputs,
    add_needle_supplies,
    note_needle,
)
from handout_engine.shared.repeats import (
    MOST_REPEATS,
    TAPE,
    Line,
    RepeatInputs,
    checks_chart,
    nearest_runs,
    note_repeats,
    sizes_chart,
)
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Step
from handout_engine.working.worksheet import Worksheet

EDGE, RING = "along an edge", "round a ring"
ADJUST, KEEP = "stretch the repeat", "keep the repeat"


class DecorativeRow(NeedleInputs, RepeatInputs, Technique):
    """A row of a repeating stitch that comes out even."""

    title: ClassVar[str] = "Decorative row"
    family: ClassVar[str] = "edges"
    summary: ClassVar[str] = (
        "A machine stitch along an edge or round a ring in whole repeats, stretched a little or "
        "centred between equal margins."
    )

    form = choice(
        "row", "From one end of an edge to the other, or round until it meets itself.", EDGE, RING
    )
    edge = length(
        "length of the edge",
        "Measured where the row is to run, not at the edge itself.",
        "20 in",
        ("1 in", "20 yd"),
    )
    margin = length(
        "margin",
        "Kept free of stitches at each end of an edge; a ring has none.",
        "0 in",
        ("0 in", "12 in"),
    )
    fit = choice(
        "fit",
        "Change the stitch length until it comes out, or keep it and centre the row.",
        ADJUST,
        KEEP,
    )
    from_edge = length(
        "distance from the edge",
        "From the finished edge to the middle of the row.",
        "1/2 in",
        ("1/16 in", "12 in"),
    )
    rows = count("how many rows", "Rows of that length, such as two for two cuffs.", 1, 50)

    @property
    def ends(self) -> Length:
        """What the two margins take of the edge."""
        return ZERO if self.form == RING else 2 * self.margin

    def whole(self) -> Worksheet:
        """Repeats, their size, and where the row must be on the way; raises RefusalError."""
        sheet = Worksheet(technique=self)
        run = _note_run(sheet, self)
        line = Line("edge", "edge", run, self.ends)
        if self.fit == ADJUST:
            adjusted, start = note_repeats(sheet, line), self.ends / 2
            margin = sheet["margin"] if self.ends else None
        else:
            margin = _note_kept(sheet, self, line)
            adjusted, start = sheet["repeat"], margin.length
        note_needle(sheet, self)
        number = sheet["repeats_edge"].whole
        sheet.charts.append(sizes_chart(sheet, line, "Length of the edge"))
        sheet.charts.append(checks_chart(line, adjusted, number, ZERO))
        add_needle_supplies(sheet, self)
        sheet.have("a foot with a guide along the edge", "a stabiliser that tears or washes away")
        sheet.cautions.append(PINS_AND_IRON)
        _add_sample(sheet, self)
        _add_steps(sheet, self, adjusted, start)
        _draw(sheet, self, adjusted, margin if margin and margin.length else None)
        return sheet


def _note_run(sheet: Worksheet, row: DecorativeRow) -> Value:
    """Note the length that the row may fill; raises RefusalError when nothing is left of it."""
    if row.form == RING:
        return sheet.note("row_edge", "length to fill, once round", row.edge, "{edge}")
    if row.ends >= row.edge:
        raise RefusalError(
            f"two margins of {TAPE.say(row.margin)} leave nothing of an edge {TAPE.say(row.edge)} "
            f"long; use margins of less than {TAPE.no_more(row.edge / 2)}",
            "margin",
        )
    return sheet.note("row_edge", "length to fill between the margins", row.edge - row.ends,
                      "{edge} - 2 × {margin}")  # fmt: skip


def _note_kept(sheet: Worksheet, row: DecorativeRow, line: Line) -> Value:
    """Note whole repeats as the machine sews them, and the margins they leave; returns these.

    Raises RefusalError for an edge shorter than one repeat, or a ring that is not filled.
    """
    run = line.run.length
    number = floor(run / row.repeat)
    if number > MOST_REPEATS:
        raise RefusalError(
            f"repeat {TAPE.say(row.repeat)} makes more than {MOST_REPEATS} repeats; use a longer "
            "one", "repeat",
        )  # fmt: skip
    sizes = nearest_runs(run, row.repeat)

    def fills(edge: Length) -> bool:
        """Whether whole repeats fill the edge as it is said; one or more do, save in a ring."""
        number = (edge - row.ends) / row.repeat
        return number >= 1 and (row.form != RING or number.number.denominator == 1)

    if not number or (row.form == RING and row.repeat * number != run):
        named = " or ".join(
            filter(None, (just(row, "edge", size + row.ends, fills) for size in sizes))
        )
        raise RefusalError(
            f"edge {TAPE.say(row.edge)} does not hold whole repeats of {TAPE.say(row.repeat)}; use "
            f"{ways(named and f'{named}, which needs no change', 'a stretched repeat')}",
            "edge",
        )
    whole = sheet.note("repeats_edge", "repeats along the edge", number,
                       "{row_edge} / {repeat}, rounded down")  # fmt: skip
    sheet.note("ten_edge", "ten repeats along the edge", 10 * row.repeat, "10 × {repeat}")
    return sheet.note("left_at_ends", "left free at each end",
                      (row.edge - row.repeat * whole.whole) / 2,
                      "({edge} - {repeats_edge} × {repeat}) / 2")  # fmt: skip


def _add_sample(sheet: Worksheet, row: DecorativeRow) -> None:
    how = (
        "Sew twelve repeats on a scrap with the same stabiliser, and change the stitch length until"
        if row.fit == ADJUST
        else "Sew twelve repeats on a scrap with the same stabiliser, and see whether"
    )
    sheet.sample.append(
        Step(
            sentence(how + " the ten in the middle are {ten}.", ten=sheet["ten_edge"]),
            sentence("ten repeats are {ten}, and the scrap lies flat. If it draws in, loosen the "
                     "thread or take a firmer stabiliser, and measure again.",
                     ten=sheet["ten_edge"]),
        )
    )  # fmt: skip


def _add_steps(sheet: Worksheet, row: DecorativeRow, adjusted: Value, start: Length) -> None:
    ring = row.form == RING
    sheet.step(
        "Mark the line of the row {from_edge} from the edge, and back the cloth with stabiliser.",
        ("once round the line is {edge}." if ring else "the line is {edge} long.")
        + " If not, work this page out again with what you measure.",
    )
    where = "at a seam, where it is seen least" if ring else "at one end"
    gap = "" if ring or not start else ", {start} from it"
    sheet.step(
        f"Mark where the row begins {where}{gap}, and every place that the chart names.",
        "from one end of the row to the other it is {run}.",
        start=start,
        run=adjusted.length * sheet["repeats_edge"].whole,
    )
    sheet.step(
        "Put in the {needle} needle and the foot with the guide, and begin at the start of a "
        "repeat, with the needle down. Sew with even speed, and compare with every mark.",
        "after ten repeats the row is {ten_edge} long.",
    )
    end = (
        "Stop when the last repeat meets the first, needle down, and fasten with tiny stitches."
        if ring
        else "Stop at the end of the last repeat and fasten with tiny stitches."
    )
    sheet.step(end, "there are {repeats_edge} whole repeats.")
    sheet.step(
        "Draw the thread ends to the wrong side, take the stabiliser off, and press face down on "
        "a towel." + (" Sew the other rows alike, from the same side." if row.rows > 1 else "")
    )


def _draw(sheet: Worksheet, row: DecorativeRow, adjusted: Value, margin: Value | None) -> None:
    number = sheet["repeats_edge"].whole
    run = sheet["row_edge"]
    if row.fit == KEEP:
        run = sheet.note("row_sewn", "length of the row", adjusted.length * number,
                         "{repeats_edge} × {repeat}")  # fmt: skip
    whole = Scene(
        sentence("The row"),
        sentence("{number} repeats of {repeat}.", number=number, repeat=adjusted),
        plain_row(run, number, adjusted, margin),
    )
    start = Scene(
        sentence("The first repeats"),
        sentence("Each is {repeat} long.", repeat=adjusted),
        row_start(
            RowStart(sheet["from_edge"], adjusted, None, None, row.form == EDGE and margin is None)
        ),
        tallest=150.0,
    )
    laid = "laid out flat, " if row.form == RING else ""
    sheet.pictures.append(
        Picture("finished", sentence(f"The whole row, {laid}a tick wherever a repeat begins, or a "
                                     "dashed line where they are too many."), whole, True)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("start", sentence("Where the row begins, enlarged; the edge is at the top."), start)
    )


TECHNIQUE = DecorativeRow
