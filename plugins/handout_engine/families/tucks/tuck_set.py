"""Equal tucks side by side in a panel: pin tucks, touching tucks, or tucks with a space between.

Every tuck takes twice its depth of the cloth. Where the lines lie on the flat panel does not
depend on how the tucks are pressed; whether the tucks have room does.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import choice, count, length, optional_length
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE, published
from handout_engine.amounts.values import Value
from handout_engine.cloth.cloth import note_cloth
from handout_engine.families.tucks.tucking import (
    AWAY,
    LEFT,
    RIGHT,
    TAPE,
    TOWARDS,
    EqualRow,
    SpareInputs,
    TuckInputs,
    add_panel,
    add_sample,
    add_supplies,
    add_tuck_chart,
    note_cut,
    note_lines,
)
from handout_engine.families.tucks.tucking_pictures import TuckPictures, add_pictures
from handout_engine.families.tucks.tucking_room import check_gaps, check_margins
from handout_engine.families.tucks.tucking_steps import add_cutting_step, add_tuck_steps
from handout_engine.shared.folds import FoldedPanel
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet

SPACED, PIN, BLIND = "spaced", "pin", "blind"
USUAL_DEPTHS = {SPACED: inches("1/4"), PIN: inches("1/16"), BLIND: inches("1/4")}


class TuckSet(SpareInputs, TuckInputs, Technique):
    """A number of equal tucks in a panel."""

    title: ClassVar[str] = "Set of tucks"
    family: ClassVar[str] = "tucks"
    summary: ClassVar[str] = (
        "Equal tucks side by side: pin tucks, touching (blind) ones, or spaced, from the centre or "
        "from one edge."
    )

    kind = choice(
        "kind of tucks",
        "Spaced; pin, as narrow as can be sewn; or blind, touching.",
        SPACED,
        PIN,
        BLIND,
    )
    tucks = count("tucks", "How many tucks in one panel.", 5, 40)
    depth = optional_length(
        "depth of a tuck",
        "From the stitching to the fold.",
        "1/4 in, or 1/16 in for pin tucks",
        ("1/32 in", "3 in"),
        in_use="tuck_depth",
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished: the tuck's depth and the space "
        "that shows.",
        "the depth and half as much for spaced tucks, twice the depth for pin tucks, the depth "
        "for blind ones",
        ("1/32 in", "6 in"),
        in_use="tuck_spacing",
    )
    finished_width = length(
        "finished width",
        "Width of the tucked panel between its side seams.",
        "6 in",
        ("2 in", "40 in"),
    )
    first_margin = optional_length(
        "margin at the left edge",
        "From the left seam to the first stitching, for a set that starts from that edge.",
        "the set stands in the middle, both margins alike",
        ("0 in", "40 in"),
        in_use="margin",
    )
    press = choice(
        "press", "Which way the tucks lie, seen from the right side.", RIGHT, LEFT, AWAY, TOWARDS
    )

    def whole(self) -> Worksheet:
        """Panel, lines, cloth and steps; raises RefusalError for tucks without room."""
        sheet = Worksheet(technique=self)
        depth = _note_depth(sheet, self)
        spacing = _note_spacing(sheet, self, depth)
        panel = _note_panel(sheet, self, depth)
        add_panel(sheet, "panel for tucks")
        add_tuck_chart(sheet, panel)
        note_cloth(sheet, "cloth", self.cloth())
        add_supplies(sheet)
        add_sample(sheet, depth, spacing)
        add_cutting_step(sheet, panel)
        add_tuck_steps(sheet, depth, self.press, self.tucks.number)
        add_pictures(sheet, TuckPictures(panel, depth, self.title))
        return sheet


def _note_depth(sheet: Worksheet, tucks: TuckSet) -> Value:
    depth = USUAL_DEPTHS[tucks.kind] if tucks.depth is None else tucks.depth
    usual = published("home-school-sewing") if tucks.kind == PIN else PRACTICE
    basis = usual if tucks.depth is None else GIVEN
    return sheet.note("tuck_depth", "depth of a tuck", depth, "", basis=basis)


def _note_spacing(sheet: Worksheet, tucks: TuckSet, depth: Value) -> Value:
    """Note the spacing; raises RefusalError for touching tucks that are told to stand apart."""
    label = "from stitching to stitching"
    if tucks.kind == BLIND and tucks.spacing not in (None, depth.length):
        said = TAPE.both(depth.length)
        raise RefusalError(
            f"blind tucks touch, so they stand {said} apart, their own depth; leave spacing out, "
            f"or write kind: {SPACED}",
            "spacing",
        )
    if tucks.spacing is not None:
        spacing = sheet.note("tuck_spacing", label, tucks.spacing, "", basis=GIVEN)
    elif tucks.kind == BLIND:
        spacing = sheet.note("tuck_spacing", label, depth.length, "{tuck_depth}", basis=GEOMETRY)
    elif tucks.kind == PIN:
        spacing = sheet.note("tuck_spacing", label, 2 * depth.length, "2 × {tuck_depth}",
                             basis=published("home-school-sewing"))  # fmt: skip
    else:
        spacing = sheet.note("tuck_spacing", label, depth.length * 3 / 2, "{tuck_depth} × 3 / 2",
                             basis=published("home-school-sewing"))  # fmt: skip
    if spacing.length >= depth.length:
        sheet.note("space", "space that shows between two tucks",
                   spacing.length - depth.length, "{tuck_spacing} - {tuck_depth}")  # fmt: skip
    return spacing


def _note_panel(sheet: Worksheet, tucks: TuckSet, depth: Value) -> FoldedPanel:
    """Note what the tucks take, margins and lines; raises RefusalError for tucks without room."""
    spacing, finished = sheet["tuck_spacing"], sheet["finished_width"]
    take_up = sheet.note("take_up", "cloth taken by the tucks", 2 * tucks.tucks * depth.length,
                         "2 × {tuck_depth} × {tucks}", basis=published("baldt-1916"))  # fmt: skip
    span = sheet.note("span", "from the first stitching to the last",
                      spacing.length * (tucks.tucks - 1),
                      "{tuck_spacing} × ({tucks} - 1)")  # fmt: skip
    margin = _note_margin(sheet, tucks, span)
    sheet.note("last_margin", "margin from the last stitching to the right seam",
               finished.length - span.length - margin.length,
               "{finished_width} - {span} - {margin}", margin=margin)  # fmt: skip
    note_cut(sheet, take_up, finished)
    row = EqualRow(sheet["tucks"], depth, spacing, margin, tucks.press)
    note_lines(sheet, row, published("home-school-sewing") if tucks.kind == BLIND else GEOMETRY)
    panel = row.placed(sheet)
    check_gaps(sheet, panel, "spacing")
    check_margins(sheet, panel, tucks.first_margin is None, tucks.finished_width)
    return panel


def _note_margin(sheet: Worksheet, tucks: TuckSet, span: Value) -> Value:
    label = "margin from the left seam to the first stitching"
    if tucks.first_margin is not None:
        return sheet.note("margin", label, tucks.first_margin, "", basis=GIVEN)
    return sheet.note("margin", label, (tucks.finished_width - span.length) / 2,
                      "({finished_width} - {span}) / 2")  # fmt: skip


TECHNIQUE = TuckSet
