"""Corded-looking pin tucks sewn by a twin needle, their take-up measured on a sample.

A twin needle draws the cloth up between its two rows. How much depends on cloth, tension, foot and
needle, so no figure is exact before a sample is sewn: the default is an estimate and says so.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, count, fine_length, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import ways
from handout_engine.families.tucks.tucking import (
    FinishedWidth,
    SpareInputs,
    add_panel,
    add_supplies,
)
from handout_engine.families.tucks.tucking_steps import add_trimming_step, has_spare, width_left
from handout_engine.families.tucks.twin_needle_drawing import (
    PinTucks,
    pin_tucks_scene,
    row_chart_scene,
)
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.shared.marking import marked_line
from handout_engine.working.cautions import NEEDLE_BREAKS
from handout_engine.working.workings import Chart, Picture, Supply
from handout_engine.working.worksheet import Worksheet


class PinTuckRows(SpareInputs, FinishedWidth):
    """Rows of pin tucks sewn with a twin needle."""

    title = "Twin-needle pin tucks"
    family = "tucks"
    summary = (
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

    def label_of(self, label: str) -> str:
        """A label, with what the take-up of a pin tuck was found by."""
        found = (
            "an estimate until a sample is measured"
            if self.sample_before is None
            else "from the sample"
        )
        return label.replace("{}", found)

    @check
    def the_sample_is_measured_twice(self) -> None:
        """Refuse one measure of a sample without the other."""
        before, after = self.sample_before, self.sample_after
        if (before is None) is not (after is None):
            missing = "sample_before" if before is None else "sample_after"
            raise RefusalError(
                f"{missing} is missing; measure the sample before and after tucking and write "
                "both, or neither",
                missing,
            )

    @check
    def the_sample_has_become_narrower(self) -> None:
        """Refuse a sample that was measured the wrong way round, or was not drawn up."""
        before, after = self.sample_before, self.sample_after
        if before is not None and after is not None and after >= before:
            raise RefusalError(
                f"sample_after {TAPE.say(after)} is no narrower than sample_before "
                f"{TAPE.say(before)}; a tucked sample is narrower, so measure again, or tighten "
                "the tension until the cloth is drawn up",
                "sample_after",
            )

    @check
    def the_rows_stand_clear_of_each_other(self) -> None:
        """Refuse rows nearer to each other than the needles."""
        if self.spacing < self.needle_spacing:
            raise RefusalError(
                f"spacing {TAPE.say(self.spacing)} is less than the needles stand apart, so the "
                "rows would be sewn into each other; use at least "
                f"{TAPE.no_less(self.needle_spacing)}",
                "spacing",
            )

    @value("take-up of one pin tuck, {}", saying=Saying.FINE)
    def take_up_each(self) -> Length:
        """What the sample has lost, shared by its pin tucks, or an estimate."""
        if self.sample_before is None or self.sample_after is None:
            return self.estimate
        return (self.sample_before - self.sample_after) / self.sample_tucks

    @value("cloth taken by all pin tucks")
    def take_up(self) -> Length:
        """So much wider the panel is cut."""
        return self.take_up_each * self.tucks

    @value("from the first pin tuck to the last")
    def span(self) -> Length:
        """There is one space less than rows."""
        return self.spacing * (self.tucks - 1)

    @value("margin from each seam to the nearest pin tuck")
    def margin(self) -> Length:
        """Half of what the rows leave."""
        return (self.finished_width - self.span) / 2

    @check
    def the_rows_have_room(self) -> None:
        """Refuse rows of which the outermost would be sewn into the seams."""
        if self.margin < self.needle_spacing / 2:
            wider = self.wider_by(self.needle_spacing - 2 * self.margin)
            raise RefusalError(
                f"{self.tucks} pin tucks stand over {TAPE.say(self.span)}, too much for a "
                f"finished width of {TAPE.say(self.finished_width)}; use "
                f"{ways(wider, 'fewer or closer rows')}",
                "finished_width",
            )

    @value("from row to row on flat cloth")
    def flat_step(self) -> Length:
        """What a row draws up is added to the spacing."""
        return self.spacing + self.take_up_each

    @value("centre of the first row, from the left raw edge")
    def first_row(self) -> Length:
        """It draws up as much from either side."""
        return self.edge_to_seam + self.margin + self.take_up_each / 2

    @property
    def rows(self) -> list[Length]:
        """The centre of every row, from the left raw edge."""
        return [self.first_row + self.flat_step * number for number in range(self.tucks)]

    @value("sample, cut width")
    def sample_cut_width(self) -> Length:
        """Its pin tucks, with three spaces more than they need."""
        return self.spacing * (self.sample_tucks + 3)

    @value("what the sample loses by its pin tucks")
    def sample_takes(self) -> Length:
        """By it one sees whether the take-up is right."""
        return self.take_up_each * self.sample_tucks

    def cut(self, sheet: Worksheet) -> None:
        """The panel, with the rows to stitch along."""
        add_panel(sheet, self, "panel for pin tucks")
        headings = ("Row", "From the left edge", "From the centre")
        rows = tuple(
            marked_line(f"row {number}", place, self.panel_cut_width)
            for number, place in enumerate(self.rows, 1)
        )
        sheet.charts.append(Chart("Centre of every row on the flat panel", headings, rows))

    def sew(self, sheet: Worksheet) -> None:
        """A sample first, then the rows from the middle outward."""
        sheet.supplies.append(Supply("twin needle", size=sheet["needle_spacing"]))
        sheet.supplies.append(Supply("a grooved pin-tuck foot, where the machine takes one"))
        add_supplies(sheet)
        sheet.cautions.append(NEEDLE_BREAKS)
        sheet.trial(
            "Cut a scrap of the same cloth {sample_cut_width} wide and a hand long, "
            "measure it once more, and sew {sample_tucks} pin tucks {spacing} apart with "
            "the needle, thread, foot and tension you will use. Measure the scrap again.",
            "write both widths as sample before and sample after. At {take_up_each} for "
            "each tuck the scrap has become {sample_takes} narrower.",
        )
        add_washing_step(sheet)
        sheet.step(
            f"Cut {counted(sheet, 'panel')} "
            "{panel_cut_width} wide and {panel_cut_length} long, the length along the "
            "selvage. Leave it longer where the panel is cut to shape afterwards."
        )
        middle = "the middle row" if self.tucks.number % 2 else "the two rows beside the centre"
        sheet.step(
            f"Mark {middle} with a drawn thread or a rule, by the chart; the others can be guided "
            "by the grooves of the foot once the first stands straight.",
            "from row to row it is {flat_step} on the flat cloth.",
        )
        sheet.step(
            "Turn the hand wheel through one whole stitch with the twin needle in. Set a straight "
            "stitch, 1.5 to 2 mm long, the upper tension a little tighter than usual, and sew the "
            "marked row, needles at both sides of the line.",
            "a ridge stands between the two rows of stitching, and the cloth beside it lies flat.",
        )
        sheet.step(
            "Sew the other rows from the middle outward, a row at the left and a row at the right "
            "by turns, all from the same end.",
            "from ridge to ridge it is {spacing}. After every third row measure the panel and "
            "correct the next rows while there are rows left.",
        )
        left = width_left(sheet, "what the rows drew up more than the sample did")
        planned = "the spare makes good" if has_spare(sheet) else "the sample did"
        sheet.step(
            "Press from the wrong side on a thick towel, so that the ridges are not flattened.",
            f"the panel is {left}, the rows drew up more than {planned}.",
        )
        add_trimming_step(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The panel, finished and flat."""
        drawn = PinTucks(
            self.tucks.number,
            sheet["spacing"],
            sheet["margin"],
            sheet["tucked_width"],
            sheet["side_allowance"],
            sheet["panel_cut_width"],
            tuple(self.rows),
            sheet["needle_spacing"],
        )
        words = sheet.sentence(
            "{tucks} rows {spacing} apart; {panel_cut_width} of flat cloth become {tucked_width}."
        )
        finished = sentence("The finished panel; below it one ridge cut through, enlarged.")
        scene = pin_tucks_scene(drawn, sentence("Pin tucks, finished"), words)
        sheet.pictures.append(Picture("finished", finished, scene, True))
        chart = sentence(
            "The centre of each row on the flat panel, turned a quarter: from the left edge at the "
            "right, from the centre at the left."
        )
        scene = row_chart_scene(drawn, sentence("Marking chart"), words)
        sheet.pictures.append(Picture("chart", chart, scene))


TECHNIQUE = PinTuckRows
