"""Tucks stitched over part of their length and left open: narrow where they are sewn, full beyond.

Above the end of the stitching the panel is as narrow as any tucked one; beyond it the cloth of the
tucks is set free and the panel is as wide as it was cut.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import ZERO
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GIVEN, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import less_than, ways
from handout_engine.cloth.cloth import note_cloth
from handout_engine.families.tucks.tucking import (
    AWAY,
    LEFT,
    RIGHT,
    TAPE,
    TOWARDS,
    EqualRow,
    TuckInputs,
    add_panel,
    add_sample,
    add_supplies,
    add_tuck_chart,
    note_cut,
    note_lines,
)
from handout_engine.families.tucks.tucking_drawing import Released, released_scene, tuck_scene
from handout_engine.families.tucks.tucking_pictures import TUCK_LINES
from handout_engine.families.tucks.tucking_room import check_gaps, check_margins
from handout_engine.families.tucks.tucking_steps import add_cutting_step, pressed
from handout_engine.shared.folds import FoldedPanel
from handout_engine.shared.folds_drawing import Drawn, chart_scene
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet

BELOW, BOTH = "below", "above and below"


class ReleaseTucks(TuckInputs, Technique):
    """Tucks whose fullness is let go at the end of the stitching."""

    title: ClassVar[str] = "Release tucks"
    family: ClassVar[str] = "tucks"
    summary: ClassVar[str] = (
        "Tucks stitched for part of the panel and then freed, so that it is narrow where they are "
        "sewn and full beyond."
    )

    tucks = count("tucks", "How many tucks in one panel.", 6, 40)
    depth = length(
        "depth of a tuck", "From the stitching to the fold.", "1/4 in", ("1/32 in", "2 in")
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished.",
        "one and a half times the depth; twice the depth between two that face the centre",
        ("1/32 in", "6 in"),
        in_use="tuck_spacing",
    )
    finished_width = length(
        "finished width",
        "Width between the side seams where the tucks are sewn.",
        "6 in",
        ("2 in", "40 in"),
    )
    stitched = length(
        "stitched length", "How long each tuck is stitched.", "3 in", ("1/4 in", "18 in")
    )
    freed = choice(
        "freed", "Below the stitching only, or above and below, as at a waist.", BELOW, BOTH
    )
    top = length(
        "free at the top",
        "From the upper seam to the stitching, freed above and below.",
        "2 in",
        ("1/8 in", "12 in"),
    )
    press = choice(
        "press",
        "Which way the tucks lie, seen from the right side.",
        RIGHT,
        LEFT,
        AWAY,
        TOWARDS,
        group=SEWING,
    )

    def whole(self) -> Worksheet:
        """Widths above and below, lines, cloth and steps; raises RefusalError."""
        self._check_length()
        sheet = Worksheet(technique=self)
        row = _note_widths(sheet, self)
        panel = row.placed(sheet)
        check_gaps(sheet, panel, "spacing")
        check_margins(sheet, panel, True, self.finished_width)
        note_lines(sheet, row)
        start = _note_stitching(sheet, self)
        add_panel(sheet, "panel for release tucks")
        add_tuck_chart(sheet, panel)
        note_cloth(sheet, "cloth", self.cloth())
        add_supplies(sheet)
        add_sample(sheet, row.depth, row.spacing)
        add_cutting_step(sheet, panel)
        _add_steps(sheet, self, start)
        _draw(sheet, self, panel)
        return sheet

    def _check_length(self) -> None:
        above = self.top if self.freed == BOTH else ZERO
        if above + self.stitched >= self.panel_length:
            way = ways(less_than(self, "stitched", self.panel_length - above), "a longer panel")
            raise RefusalError(
                f"the stitching ends {TAPE.say(above + self.stitched)} below the upper seam, and "
                f"the panel is {TAPE.say(self.panel_length)} long, so nothing is released; use "
                f"{way}",
                "stitched",
            )


def _note_widths(sheet: Worksheet, tucks: ReleaseTucks) -> EqualRow:
    """Note spacing, margin, and the width above and below the end of the stitching."""
    if tucks.spacing is not None:
        spacing = sheet.note("tuck_spacing", "from stitching to stitching", tucks.spacing, "",
                             basis=GIVEN)  # fmt: skip
    elif tucks.press == TOWARDS:
        spacing = sheet.note("tuck_spacing", "from stitching to stitching", 2 * tucks.depth,
                             "2 × {depth}")  # fmt: skip
    else:
        spacing = sheet.note("tuck_spacing", "from stitching to stitching", tucks.depth * 3 / 2,
                             "{depth} × 3 / 2", basis=published("home-school-sewing"))  # fmt: skip
    span = sheet.note("span", "from the first stitching to the last",
                      spacing.length * (tucks.tucks - 1),
                      "{tuck_spacing} × ({tucks} - 1)")  # fmt: skip
    margin = sheet.note("margin", "margin from each seam to the nearest stitching",
                        (tucks.finished_width - span.length) / 2,
                        "({finished_width} - {span}) / 2")  # fmt: skip
    take_up = sheet.note("take_up", "cloth taken by the tucks", 2 * tucks.tucks * tucks.depth,
                         "2 × {depth} × {tucks}", basis=published("baldt-1916"))  # fmt: skip
    note_cut(sheet, take_up, sheet["finished_width"])
    below = sheet.note("released_width", "width where the tucks are freed, seam to seam",
                       tucks.finished_width + take_up.length,
                       "{finished_width} + {take_up}")  # fmt: skip
    sheet.note("fullness", "fullness where they are freed, to the tucked width",
               below.length / tucks.finished_width,
               "{released_width} / {finished_width}")  # fmt: skip
    return EqualRow(sheet["tucks"], sheet["depth"], spacing, margin, tucks.press)


def _note_stitching(sheet: Worksheet, tucks: ReleaseTucks) -> Value | None:
    """Note where the stitching ends, and begins, which is returned where it is not in the seam."""
    if tucks.freed == BELOW:
        sheet.note("stitch_end", "end of the stitching, from the upper raw edge",
                         tucks.end_allowance + tucks.stitched,
                         "{end_allowance} + {stitched}")  # fmt: skip
        return None
    start = sheet.note("stitch_start", "start of the stitching, from the upper raw edge",
                       tucks.end_allowance + tucks.top, "{end_allowance} + {top}")  # fmt: skip
    sheet.note("stitch_end", "end of the stitching, from the upper raw edge",
                     start.length + tucks.stitched, "{stitch_start} + {stitched}")  # fmt: skip
    return start


def _add_steps(sheet: Worksheet, tucks: ReleaseTucks, start: Value | None) -> None:
    where = "the upper raw edge" if start is None else "the mark {stitch_start} below it"
    marks = "a line {stitch_end} below the upper raw edge, where the stitching ends"
    if start is not None:
        marks += ", and one at {stitch_start}, where it begins"
    sheet.step(f"Across the panel mark {marks}.")
    sheet.step(
        "Fold wrong sides together along the first fold line, so that its two stitching lines lie "
        "on each other; press only as far as the tuck is sewn.",
    )
    sheet.step(
        f"Stitch {{depth}} from the fold, from {where} to the mark at {{stitch_end}}. Fasten each "
        "free end by drawing the threads to the wrong side and knotting them, or by a few stitches "
        "of no length: the strain of the fullness comes on that stitch. Sew the others alike.",
        "all tucks end level, {stitch_end} below the upper raw edge, and across them the panel "
        "is {tucked_width} from raw edge to raw edge.",
    )
    sheet.step(
        f"Press the sewn part {pressed(tucks.press, tucks.tucks.number)}, keeping the iron off the "
        "freed cloth, and "
        + ("baste the tucks down across the upper edge." if start is None else
           "leave the cloth above and below it round."),
        "below the stitching the panel lies {wide} wide from raw edge to raw edge.",
        wide=sheet["panel_cut_width"],
    )  # fmt: skip


def _draw(sheet: Worksheet, tucks: ReleaseTucks, panel: FoldedPanel) -> None:
    finished, flat = sheet["finished_width"], sheet["released_width"]
    words = sentence(
        "{finished} wide between the seams where the tucks are sewn, {flat} where they are freed.",
        finished=finished, flat=flat,
    )  # fmt: skip
    drawn = Drawn(panel, sheet["tucked_width"], sheet["panel_cut_width"],
                  sheet["side_allowance"], kinds=(TUCK_LINES,) * len(panel.folds))  # fmt: skip
    released = Released(
        panel, sheet["side_allowance"], finished, flat, sheet["stitched"], sheet["panel_length"],
        sheet["top"] if tucks.freed == BOTH else None,
    )  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The panel between its seams, tucks sewn and freed."),
                    released_scene(released, sentence("Release tucks, finished"), words), True),
            Picture("chart", sentence(
                "The flat panel turned a quarter, its left edge at the top: distances from that "
                "edge at the right, from the centre at the left."),
                chart_scene(drawn, sentence("Marking chart"), words)),
            Picture("tuck", sentence("One tuck enlarged: flat, and stitched and pressed."),
                    tuck_scene(sheet["depth"], panel.folds[0].lies, sentence("One tuck"),
                               sentence("Stitched {depth} from its fold.",
                                        depth=sheet["depth"]))),
        )
    )  # fmt: skip


TECHNIQUE = ReleaseTucks
