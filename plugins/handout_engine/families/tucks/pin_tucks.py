"""Corded-looking pin tucks sewn by a twin needle, their take-up measured on a sample.

A twin needle draws the cloth up between its two rows. How much depends on cloth, tension, foot and
needle, so no figure is exact before a sample is sewn: the default is an estimate and says so.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, count, fine_length, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.cloth.cloth import note_cloth
from handout_engine.families.tucks.tucking import (
    TAPE,
    SpareInputs,
    add_panel,
    add_supplies,
    edge_to_seam,
    note_cut,
)
from handout_engine.families.tucks.tucking_steps import add_trimming_step, has_spare, width_left
from handout_engine.families.tucks.twin_needle_drawing import (
    PinTucks,
    pin_tucks_scene,
    row_chart_scene,
)
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.shared.marking import from_centre
from handout_engine.working.cautions import NEEDLE_BREAKS
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet


class PinTuckRows(SpareInputs, Technique):
    """Rows of pin tucks sewn with a twin needle."""

    title: ClassVar[str] = "Twin-needle pin tucks"
    family: ClassVar[str] = "tucks"
    summary: ClassVar[str] = (
        "Rows of pin tucks from a twin needle, with the cloth they draw up measured on a sample."
    )

    tucks = count("pin tucks", "How many rows in one panel.", 9, 120)
    spacing = length(
        "spacing",
        "From the centre of one pin tuck to the next, finished.",
        "1/4 in",
        ("1/16 in", "6 in"),
        basis=PRACTICE,
    )
    finished_width = length(
        "finished width",
        "Width of the panel with its pin tucks, between its side seams.",
        "6 in",
        ("1/4 in", "60 in"),
    )
    needle_spacing = fine_length(
        "needle spacing",
        "Between the two needles, the first figure of the package.",
        "2 mm",
        ("1 mm", "10 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    estimate = fine_length(
        "estimated take-up",
        "What one pin tuck draws up, while no sample is measured: an estimate only.",
        "1 mm",
        ("0 mm", "10 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    sample_before = optional_length(
        "sample before",
        "Width of the sample before it is tucked.",
        "no sample is measured yet, and the take-up is an estimate",
        ("1 in", "40 in"),
        group=SEWING,
    )
    sample_after = optional_length(
        "sample after",
        "Width of the same sample when it is tucked.",
        "no sample is measured yet, and the take-up is an estimate",
        ("1/2 in", "40 in"),
        group=SEWING,
    )
    sample_tucks = count(
        "sample pin tucks",
        "How many pin tucks the sample has.",
        10,
        60,
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Take-up, panel, lines to stitch along and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        take_up = _note_take_up(sheet, self)
        margin = _note_rows(sheet, self, take_up)
        add_panel(sheet, "panel for pin tucks")
        _add_chart(sheet, self)
        note_cloth(sheet, "cloth", self.cloth())
        sheet.supplies.append(Supply("twin needle", size=sheet["needle_spacing"]))
        sheet.supplies.append(Supply("a grooved pin-tuck foot, where the machine takes one"))
        add_supplies(sheet)
        sheet.cautions.append(NEEDLE_BREAKS)
        _add_sample(sheet, self)
        _add_steps(sheet, self)
        _draw(sheet, self, margin)
        return sheet


def _note_take_up(sheet: Worksheet, rows: PinTuckRows) -> Value:
    """Note what one pin tuck takes: measured on a sample, or estimated."""
    before, after = rows.sample_before, rows.sample_after
    if before is None and after is None:
        return sheet.note("take_up_each", "take-up of one pin tuck, an estimate until a sample "
                          "is measured", rows.estimate, "{estimate}", basis=PRACTICE,
                          saying=Saying.FINE)  # fmt: skip
    if before is None or after is None:
        missing = "sample_before" if before is None else "sample_after"
        raise RefusalError(
            f"{missing} is missing; measure the sample before and after tucking and write both, or "
            "neither",
            missing,
        )
    if after >= before:
        raise RefusalError(
            f"sample_after {TAPE.say(after)} is no narrower than sample_before "
            f"{TAPE.say(before)}; a tucked sample is narrower, so measure again, or tighten the "
            "tension until the cloth is drawn up",
            "sample_after",
        )
    return sheet.note("take_up_each", "take-up of one pin tuck, from the sample",
                      (before - after) / rows.sample_tucks,
                      "({sample_before} - {sample_after}) / {sample_tucks}",
                      saying=Saying.FINE)  # fmt: skip


def _note_rows(sheet: Worksheet, rows: PinTuckRows, each: Value) -> Value:
    """Note panel, margin and flat distances; raises RefusalError for rows without room."""
    if rows.spacing < rows.needle_spacing:
        raise RefusalError(
            f"spacing {TAPE.say(rows.spacing)} is less than the needles stand apart, so the rows "
            f"would be sewn into each other; use at least {TAPE.no_less(rows.needle_spacing)}",
            "spacing",
        )
    take_up = sheet.note("take_up", "cloth taken by all pin tucks", each.length * rows.tucks,
                         "{take_up_each} × {tucks}",
                         basis=GEOMETRY if rows.sample_before else PRACTICE)  # fmt: skip
    span = sheet.note("span", "from the first pin tuck to the last",
                      rows.spacing * (rows.tucks - 1), "{spacing} × ({tucks} - 1)")  # fmt: skip
    margin = sheet.note("margin", "margin from each seam to the nearest pin tuck",
                        (rows.finished_width - span.length) / 2,
                        "({finished_width} - {span}) / 2")  # fmt: skip
    if margin.length < rows.needle_spacing / 2:
        least = span.length + rows.needle_spacing
        wider = at_least(rows, "finished_width", least, "a finished_width of at least {}")
        raise RefusalError(
            f"{rows.tucks} pin tucks stand over {TAPE.say(span.length)}, too much for a finished "
            f"width of {TAPE.say(rows.finished_width)}; use "
            f"{ways(wider, 'fewer or closer rows')}",
            "finished_width",
        )
    note_cut(sheet, take_up, sheet["finished_width"])
    sheet.note("flat_step", "from row to row on flat cloth", rows.spacing + each.length,
               "{spacing} + {take_up_each}")  # fmt: skip
    sheet.note("first_row", "centre of the first row, from the left raw edge",
               edge_to_seam(sheet).length + margin.length + each.length / 2,
               "{edge_to_seam} + {margin} + {take_up_each} / 2")  # fmt: skip
    return margin


def _places(sheet: Worksheet, rows: PinTuckRows) -> list[Length]:
    first, step = sheet["first_row"].length, sheet["flat_step"].length
    return [first + step * number for number in range(rows.tucks)]


def _add_chart(sheet: Worksheet, rows: PinTuckRows) -> None:
    half = sheet["panel_cut_width"].length / 2
    sheet.charts.append(
        Chart(
            "Centre of every row on the flat panel",
            ("Row", "From the left edge", "From the centre"),
            tuple(
                (f"row {number}", place, from_centre(place - half))
                for number, place in enumerate(_places(sheet, rows), 1)
            ),
        )
    )


def _add_sample(sheet: Worksheet, rows: PinTuckRows) -> None:
    width = rows.spacing * (rows.sample_tucks + 3)
    sheet.sample.append(
        Step(
            sentence(
                "Cut a scrap of the same cloth {width} wide and a hand long, measure it once more, "
                "and sew {tucks} pin tucks {spacing} apart with the needle, thread, foot and "
                "tension you will use. Measure the scrap again.",
                width=width, tucks=rows.sample_tucks, spacing=rows.spacing,
            ),
            sentence(
                "write both widths as sample before and sample after. At {each} for each tuck the "
                "scrap has become {less} narrower.",
                each=sheet["take_up_each"], less=sheet["take_up_each"].length * rows.sample_tucks,
            ),
        )
    )  # fmt: skip


def _add_steps(sheet: Worksheet, rows: PinTuckRows) -> None:
    add_washing_step(sheet)
    sheet.step(
        f"Cut {counted(sheet, 'panel')} "
        "{panel_cut_width} wide and {panel_cut_length} long, the length along the "
        "selvage. Leave it longer where the panel is cut to shape afterwards."
    )
    middle = "the middle row" if rows.tucks.number % 2 else "the two rows beside the centre"
    sheet.step(
        f"Mark {middle} with a drawn thread or a rule, by the chart; the others can be guided by "
        "the grooves of the foot once the first stands straight.",
        "from row to row it is {flat_step} on the flat cloth.",
    )
    sheet.step(
        "Turn the hand wheel through one whole stitch with the twin needle in. Set a straight "
        "stitch, 1.5 to 2 mm long, the upper tension a little tighter than usual, and sew the "
        "marked row, needles at both sides of the line.",
        "a ridge stands between the two rows of stitching, and the cloth beside it lies flat.",
    )
    sheet.step(
        "Sew the other rows from the middle outward, a row at the left and a row at the right by "
        "turns, all from the same end.",
        "from ridge to ridge it is {spacing}. After every third row measure the panel and correct "
        "the next rows while there are rows left.",
    )
    left = width_left(sheet, "what the rows drew up more than the sample did")
    planned = "the spare makes good" if has_spare(sheet) else "the sample did"
    sheet.step(
        "Press from the wrong side on a thick towel, so that the ridges are not flattened.",
        f"the panel is {left}, the rows drew up more than {planned}.",
    )
    add_trimming_step(sheet)


def _draw(sheet: Worksheet, rows: PinTuckRows, margin: Value) -> None:
    picture = PinTucks(
        rows.tucks.number, sheet["spacing"], margin, sheet["tucked_width"], sheet["side_allowance"],
        sheet["panel_cut_width"], tuple(_places(sheet, rows)), sheet["needle_spacing"],
    )  # fmt: skip
    words = sentence(
        "{tucks} rows {spacing} apart; {flat} of flat cloth become {finished}.",
        tucks=rows.tucks, spacing=sheet["spacing"], flat=sheet["panel_cut_width"],
        finished=sheet["tucked_width"],
    )  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The finished panel; below it one ridge cut through, "
                                         "enlarged."),
                    pin_tucks_scene(picture, sentence("Pin tucks, finished"), words), True),
            Picture("chart", sentence(
                "The centre of each row on the flat panel, turned a quarter: from the left edge at "
                "the right, from the centre at the left."),
                row_chart_scene(picture, sentence("Marking chart"), words)),
        )
    )  # fmt: skip


TECHNIQUE = PinTuckRows
