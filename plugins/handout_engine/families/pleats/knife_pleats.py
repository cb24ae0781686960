"""Knife pleats: every fold turned the same way, in a row or all round.

Each pleat takes twice its depth. Three to one is the rule only where the depth is what shows.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import choice, count, optional_length
from handout_engine.amounts.lengths import ZERO
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GEOMETRY, GIVEN, published
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

RIGHT, LEFT = "to the right", "to the left"


class KnifePleats(PleatInputs, Technique):
    """A row of pleats that all turn one way."""

    title: ClassVar[str] = "Knife pleats"
    family: ClassVar[str] = "pleats"
    summary: ClassVar[str] = (
        "Pleats that all turn one way, each taking twice its depth; three to one where the depth "
        "is what shows."
    )

    pleats = count("pleats", "How many pleats.", 12, 120)
    visible = optional_length(
        "visible width",
        "What shows of each pleat, from fold to fold.",
        "the finished width without its margins, shared out by the pleats",
        ("1/8 in", "6 in"),
        in_use="pleat_visible",
    )
    depth = optional_length(
        "depth",
        "How far each fold lies behind, from its outer to its inner fold.",
        "as deep as what shows, so that the pleats take three times their width",
        ("1/8 in", "6 in"),
        in_use="pleat_depth",
    )
    margin = optional_length(
        "margin",
        "Plain cloth at each side, from the seam to the first pleat.",
        "1/4 in, none in a ring, or what the visible width leaves",
        ("0 in", "6 in"),
        in_use="pleat_margin",
    )
    turned = choice(
        "folds turn", "Which way the outer folds point, seen from the right side.", RIGHT, LEFT
    )

    def whole(self) -> Worksheet:
        """Folds, joined cloth, lines and steps; raises RefusalError for pleats without room."""
        sheet = Worksheet(technique=self)
        visible = _note_visible(sheet, self)
        depth = _note_depth(sheet, self, visible)
        usual = published("butterick-1921") if self.depth is None else GEOMETRY
        note_flat(sheet, self, sheet["pleats"], usual)
        sheet.note("ratio", "cloth for each width of pleats",
                   (visible.length + 2 * depth.length) / visible.length,
                   "({visible} + 2 × {pleat_depth}) / {visible}", visible=visible)  # fmt: skip
        panel = self._panel(sheet)
        sheet.note("flat_step", "from each pleat's fold to the next one's, flat",
                   visible.length + 2 * depth.length, "{visible} + 2 × {pleat_depth}",
                   visible=visible)  # fmt: skip
        how = (
            f"Bring each fold {self.turned} onto its placement line, wrong sides together behind "
            "it, one pleat after the other."
        )
        add_pleat_row(sheet, self, PleatRow(panel, "pleat", 1, visible, how))
        add_pleat_pictures(sheet, self._pictures(panel, visible, depth))
        return sheet

    @property
    def _lies(self) -> Lie:
        """Folds that point to the right have their cloth behind them at the left."""
        return Lie.LEFT if self.turned == RIGHT else Lie.RIGHT

    def _panel(self, sheet: Worksheet) -> FoldedPanel:
        visible, depth = sheet["pleat_visible"].length, sheet["pleat_depth"].length
        first = self.edge + sheet["pleat_margin"].length
        first += visible if self.turned == RIGHT else ZERO
        folds = tuple(
            Fold(depth, first + visible * number, self._lies) for number in range(self.pleats)
        )
        return FoldedPanel(sheet["pleated_width"].length, folds)

    def _pictures(self, panel: FoldedPanel, visible: Value, depth: Value) -> PleatPictures:
        side = max(visible.length, depth.length) * 5 / 4
        one = Fold(depth.length, side, self._lies)
        return PleatPictures(panel, (one,), 2 * side, self.title)


def _note_visible(sheet: Worksheet, pleats: KnifePleats) -> Value:
    """Note what shows of a pleat, and the margins; raises RefusalError."""
    label = "what shows of each pleat"
    if pleats.visible is None:
        margin = note_margin(sheet, pleats, pleats.margin)
        return sheet.note("pleat_visible", label,
                          (pleats.finished_width - 2 * margin.length) / pleats.pleats,
                          "({finished_width} - 2 × {pleat_margin}) / {pleats}")  # fmt: skip
    if pleats.margin is not None:
        raise RefusalError(
            "visible and margin say the same thing twice; write one of them", "margin"
        )
    shown = pleats.visible * pleats.pleats
    if shown > pleats.finished_width:
        each = pleats.finished_width / pleats.pleats
        narrower = at_most(pleats, "visible", each, "at most {} each")
        most = int(pleats.finished_width / pleats.visible)
        fewer = at_most(pleats, "pleats", most, "at most {} pleats")
        raise RefusalError(
            f"{pleats.pleats} pleats of {TAPE.say(pleats.visible)} show {TAPE.both(shown)}, more "
            f"than finished_width {TAPE.say(pleats.finished_width)}; use "
            f"{ways(narrower, fewer, 'a wider panel')}",
            "visible",
        )
    found = sheet.note("pleat_visible", label, pleats.visible, "", basis=GIVEN)
    sheet.note("pleat_margin", "plain margin at each side",
               (pleats.finished_width - shown) / 2,
               "({finished_width} - {pleats} × {pleat_visible}) / 2")  # fmt: skip
    return found


def _note_depth(sheet: Worksheet, pleats: KnifePleats, visible: Value) -> Value:
    if pleats.depth is None:
        return sheet.note("pleat_depth", "depth of each pleat", visible.length, "{visible}",
                          basis=published("butterick-1921"), visible=visible)  # fmt: skip
    return sheet.note("pleat_depth", "depth of each pleat", pleats.depth, "", basis=GIVEN)


TECHNIQUE = KnifePleats
