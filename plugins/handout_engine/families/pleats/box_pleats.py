"""Box pleats: two folds turned away from each other, the box between them in front.

Each takes four times its depth. Three to one is the rule only where the boxes meet and what shows
of each is twice the depth.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import count, optional_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.families.pleats.pleating import TAPE, PleatInputs, note_flat, note_margin
from handout_engine.families.pleats.pleating_steps import (
    PleatPictures,
    PleatRow,
    add_pleat_pictures,
    add_pleat_row,
)
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet


class BoxPleats(PleatInputs, Technique):
    """A row of box pleats, touching or with plain cloth between them."""

    title: ClassVar[str] = "Box pleats"
    family: ClassVar[str] = "pleats"
    summary: ClassVar[str] = (
        "Pleats whose two folds turn away from each other, each taking four times its depth; boxes "
        "that meet, or stand apart."
    )

    pleats = count("pleats", "How many boxes.", 8, 60)
    box = optional_length(
        "box",
        "What shows of each box, from fold to fold.",
        "as wide as makes the boxes meet",
        ("1/4 in", "12 in"),
        in_use="box_width",
    )
    depth = optional_length(
        "depth",
        "How far each of the two folds lies behind its box.",
        "half of the box, so that the folds meet behind it",
        ("1/8 in", "6 in"),
        in_use="pleat_depth",
    )
    margin = optional_length(
        "margin",
        "Plain cloth at each side, from the seam to the first pleat.",
        "1/4 in; none in a ring",
        ("0 in", "6 in"),
        in_use="pleat_margin",
    )

    def whole(self) -> Worksheet:
        """Folds, joined cloth, lines and steps; raises RefusalError for pleats without room."""
        sheet = Worksheet(technique=self)
        box = _note_box(sheet, self)
        depth = _note_depth(sheet, self, box)
        folds = sheet.note("folds", "folds, two in each box", 2 * self.pleats, "2 × {pleats}")
        note_flat(sheet, self, folds, GEOMETRY)
        sheet.note("ratio", "cloth for each width of pleats",
                   (sheet["period"].length + 4 * depth.length) / sheet["period"].length,
                   "({period} + 4 × {pleat_depth}) / {period}")  # fmt: skip
        panel = self._panel(sheet)
        sheet.note("flat_step", "from each box to the next one, flat",
                   sheet["period"].length + 4 * depth.length,
                   "{period} + 4 × {pleat_depth}")  # fmt: skip
        how = (
            "Bring the two folds of each box away from each other, each onto its placement line, "
            "so that the box stands in front and its folded cloth lies behind it."
        )
        add_pleat_row(sheet, self, PleatRow(panel, "box", 2, box, how))
        side = box.length * 3 / 4
        one = (
            Fold(depth.length, side, Lie.RIGHT),
            Fold(depth.length, side + box.length, Lie.LEFT),
        )
        width = 2 * side + box.length
        add_pleat_pictures(sheet, PleatPictures(panel, one, width, self.title))
        return sheet

    def _panel(self, sheet: Worksheet) -> FoldedPanel:
        box, depth = sheet["box_width"].length, sheet["pleat_depth"].length
        period, space = sheet["period"].length, sheet["space"].length
        first = self.edge + sheet["pleat_margin"].length + space / 2
        folds: list[Fold] = []
        for number in range(self.pleats):
            left = first + period * number
            folds.append(Fold(depth, left, Lie.RIGHT))
            folds.append(Fold(depth, left + box, Lie.LEFT))
        return FoldedPanel(sheet["pleated_width"].length, tuple(folds))


def _note_box(sheet: Worksheet, pleats: BoxPleats) -> Value:
    """Note margins, period, box and the space between boxes; raises RefusalError."""
    margin = note_margin(sheet, pleats, pleats.margin)
    period = sheet.note("period", "from each box to the next one",
                        (pleats.finished_width - 2 * margin.length) / pleats.pleats,
                        "({finished_width} - 2 × {pleat_margin}) / {pleats}")  # fmt: skip
    if pleats.box is None:
        box = sheet.note("box_width", "what shows of each box", period.length, "{period}",
                         basis=PRACTICE)  # fmt: skip
    else:
        if pleats.box > period.length:
            room = pleats.finished_width - 2 * margin.length
            way = ways(
                at_most(pleats, "box", period.length, "a box of at most {}"),
                at_most(pleats, "pleats", int(room / pleats.box), "at most {} pleats"),
                "a wider panel",
            )
            raise RefusalError(
                f"{pleats.pleats} boxes of {TAPE.say(pleats.box)} do not fit in "
                f"{TAPE.say(room)}; use {way}",
                "box",
            )
        box = sheet.note("box_width", "what shows of each box", pleats.box, "", basis=GIVEN)
    sheet.note("space", "plain space between two boxes", period.length - box.length,
               "{period} - {box_width}")  # fmt: skip
    return box


def _note_depth(sheet: Worksheet, pleats: BoxPleats, box: Value) -> Value:
    if pleats.depth is None:
        return sheet.note("pleat_depth", "depth of each fold", box.length / 2, "{box_width} / 2",
                          basis=PRACTICE)  # fmt: skip
    return sheet.note("pleat_depth", "depth of each fold", pleats.depth, "", basis=GIVEN)


TECHNIQUE = BoxPleats
