"""A ruffle gathered inside its edge, so that a heading stands above the gathering line.

With equal heading and depth it is gathered along its centre.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from handout_engine.cloth import note_cloth
from handout_engine.drawing.gathers import GatheredLayer
from handout_engine.drawing.scene import Line
from handout_engine.drawing.strips import FlatStrip, Rule
from handout_engine.gathering import (
    GatherInputs,
    note_gathered_length,
    note_gathered_strips,
    note_rows,
    strip_piece,
)
from handout_engine.gathering_pictures import (
    finished_picture,
    quarters_picture,
    strips_picture,
)
from handout_engine.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.hems import HemInputs, hem_step, note_hem
from handout_engine.inputs import Asked, length
from handout_engine.lengths import Length
from handout_engine.sources import published
from handout_engine.technique import Technique
from handout_engine.values import Value, sentence
from handout_engine.workings import Mark, Working
from handout_engine.worksheet import Worksheet


@dataclass(frozen=True, kw_only=True)
class HeadedRuffle(HemInputs, GatherInputs, Technique):
    """A ruffle with a heading, laid on the edge and stitched along its gathering line."""

    title: ClassVar[str] = "Ruffle with a heading"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "A strip finished along both edges and gathered inside its upper one, so that a heading "
        "stands above the stitching."
    )

    depth: Length = length(
        Asked("finished depth", "From the gathering line to the finished lower edge."),
        "2 in",
        ("1/4 in", "40 in"),
    )
    heading: Length = length(
        Asked("heading", "From the gathering line up to the finished upper edge."),
        "1/2 in",
        ("1/8 in", "20 in"),
    )

    def work(self) -> Working:
        """Cut width, gathering line, strips, cloth and steps; raises RefusalError."""
        sheet = Worksheet(self)
        cloth = self.cloth()
        line = _note_width(sheet, self)
        note_gathered_length(sheet)
        note_gathered_strips(sheet, cloth)
        rows = note_rows(sheet, line, _shallower(sheet), self.rows_apart)
        marks = tuple(Mark(each.label, each.length) for each in (*rows, line))
        sheet.pieces.append(strip_piece(sheet, "ruffle strip", "ruffle cloth", marks=marks))
        note_cloth(sheet, "ruffle cloth", cloth)
        add_gathering_supplies(sheet)
        add_sample(sheet, sheet["cut_width"], "a strip")
        _add_steps(sheet, self)
        _draw(sheet, self, line, rows)
        return sheet.finish()


def _note_width(sheet: Worksheet, ruffle: HeadedRuffle) -> Value:
    """Note the cut width; returns the gathering line's distance from the upper raw edge.

    Folded double, the raw edges meet behind the gathering line, so that the stitching holds them.
    """
    if ruffle.folded:
        sheet.note(
            "cut_width",
            "ruffle strip, cut width",
            2 * (ruffle.depth + ruffle.heading),
            "2 × ({depth} + {heading})",
            basis=published("butterick-1921"),
        )
        return sheet.note(
            "gathering_line", "gathering line, from the upper raw edge", 2 * ruffle.heading,
            "2 × {heading}",
        )  # fmt: skip
    hem = note_hem(sheet, ruffle, _shallower(sheet))
    sheet.note(
        "cut_width",
        "ruffle strip, cut width",
        ruffle.depth + ruffle.heading + 2 * hem.length,
        "{depth} + {heading} + 2 × {hem_allowance}",
    )
    return sheet.note(
        "gathering_line", "gathering line, from the upper raw edge",
        ruffle.heading + hem.length, "{heading} + {hem_allowance}",
    )  # fmt: skip


def _shallower(sheet: Worksheet) -> Value:
    """The heading or the depth, whichever is less."""
    return min(sheet["heading"], sheet["depth"], key=lambda value: value.length)


def _add_steps(sheet: Worksheet, ruffle: HeadedRuffle) -> None:
    add_washing_step(sheet)
    sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
    add_joining_steps(sheet, "", "ruffle")
    height = ruffle.depth + ruffle.heading
    if ruffle.folded:
        sheet.step(
            "Fold the upper edge down by {heading} and the lower edge up by {depth}, wrong sides "
            "together: the raw edges meet behind the gathering line. Press and baste.",
            "from fold to fold it is {height} deep.",
            height=height,
        )
    else:
        sheet.step(
            "Finish both long edges alike. " + hem_step(ruffle.hem),
            "from finished edge to finished edge it is {height} deep.",
            height=height,
        )
    half = sheet["rows_distance"].length / 2
    add_gathering_steps(
        sheet,
        "both layers" if ruffle.folded else "the strip",
        "finished upper edge",
        (ruffle.heading - half, ruffle.heading + half),
    )
    sheet.step(
        "Lay the ruffle on the finished edge, wrong side down, with its gathering line on the line "
        "where it is to hang, and stitch along it between the two rows. Draw out both rows.",
        "{heading} stands above the stitching and {depth} hangs below it.",
    )


def _draw(sheet: Worksheet, ruffle: HeadedRuffle, line: Value, rows: tuple[Value, Value]) -> None:
    rules = [*(Rule(Line.GATHER, row) for row in rows), *_folds(sheet, ruffle, line)]
    strip = FlatStrip(sentence("ruffle strip"), sheet["cut_width"], sheet["strip_length"], rules)
    layer = GatheredLayer(sheet["depth"], ruffle.fullness, heading=sheet["heading"])
    sheet.pictures.extend(
        (
            finished_picture(sheet, [layer]),
            strips_picture([strip], "One strip, with the lines to mark."),
            quarters_picture(sheet),
        )
    )


def _folds(sheet: Worksheet, ruffle: HeadedRuffle, line: Value) -> tuple[Rule, Rule]:
    """The upper and the lower fold: of the doubled strip, or of its two hems."""
    if ruffle.folded:
        upper = sheet.note("upper_fold", "upper fold, from the upper raw edge", ruffle.heading,
                           "{heading}")  # fmt: skip
    else:
        upper = sheet.note("upper_fold", "upper hem fold, from the upper raw edge",
                           sheet["hem_allowance"].length, "{hem_allowance}")  # fmt: skip
    lower = sheet.note("lower_fold", "lower fold, from the upper raw edge",
                       line.length + ruffle.depth, "{line} + {depth}", line=line)  # fmt: skip
    return Rule(Line.FOLD, upper), Rule(Line.FOLD, lower)


TECHNIQUE = HeadedRuffle
