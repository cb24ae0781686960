"""Ruffles gathered inside their width: cloth stands above the gathering line and hangs below it.

Both long edges are finished, or the strip is folded into a flat tube whose raw edges meet behind
the gathering line, so that the stitching holds them.
"""

from __future__ import annotations

from handout_engine.amounts.sources import published
from handout_engine.amounts.values import Value
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line
from handout_engine.shared.gathering import (
    GatherInputs,
    note_gathered_length,
    note_gathered_strips,
    note_rows,
    strip_piece,
)
from handout_engine.shared.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_sample,
)
from handout_engine.shared.hems import HemInputs, hem_step, note_hem
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.workings import Mark
from handout_engine.working.worksheet import Worksheet


class HeadingInputs(HemInputs, GatherInputs):
    """The inputs of a ruffle that is gathered inside its width."""


def note_ruffle(
    sheet: Worksheet, ruffle: HeadingInputs, above: Value, below: Value
) -> tuple[Value, Value]:
    """Note width, gathering line and strips, and add piece, cloth, supplies and sample.

    Returns the two gathering rows. Raises RefusalError for what cannot be cut or gathered.
    """
    cloth = ruffle.cloth()
    line = note_width(sheet, ruffle, above, below)
    note_gathered_length(sheet)
    note_gathered_strips(sheet, cloth)
    rows = note_rows(sheet, line, shallower(above, below), ruffle.rows_apart)
    marks = tuple(Mark(each.label, each.length) for each in (*rows, line))
    sheet.pieces.append(strip_piece(sheet, "ruffle strip", "ruffle cloth", marks=marks))
    note_cloth(sheet, "ruffle cloth", cloth)
    add_gathering_supplies(sheet)
    add_sample(sheet, sheet["cut_width"], "a strip")
    return rows


def note_width(sheet: Worksheet, ruffle: HemInputs, above: Value, below: Value) -> Value:
    """Note the cut width; returns the gathering line's distance from the upper raw edge."""
    both = above.length + below.length
    if ruffle.folded:
        sheet.note("cut_width", "ruffle strip, cut width", 2 * both, "2 × ({below} + {above})",
                   basis=published("butterick-1921"), above=above, below=below)  # fmt: skip
        return sheet.note("gathering_line", "gathering line, from the upper raw edge",
                          2 * above.length, "2 × {above}", above=above)  # fmt: skip
    hem = note_hem(sheet, ruffle, shallower(above, below))
    sheet.note("cut_width", "ruffle strip, cut width", both + 2 * hem.length,
               "{below} + {above} + 2 × {hem_allowance}", above=above, below=below)  # fmt: skip
    return sheet.note("gathering_line", "gathering line, from the upper raw edge",
                      above.length + hem.length, "{above} + {hem_allowance}",
                      above=above)  # fmt: skip


def shallower(above: Value, below: Value) -> Value:
    """What stands above or hangs below the gathering line, whichever is less."""
    return min(above, below, key=lambda value: value.length)


def note_folds(
    sheet: Worksheet, ruffle: HemInputs, above: Value, below: Value
) -> tuple[Rule, Rule]:
    """Note the upper and the lower fold: of the doubled strip, or of its two hems."""
    line = sheet["gathering_line"]
    if ruffle.folded:
        upper = sheet.note("upper_fold", "upper fold, from the upper raw edge", above.length,
                           "{above}", above=above)  # fmt: skip
    else:
        upper = sheet.note("upper_fold", "upper hem fold, from the upper raw edge",
                           sheet["hem_allowance"].length, "{hem_allowance}")  # fmt: skip
    lower = sheet.note("lower_fold", "lower fold, from the upper raw edge",
                       line.length + below.length, "{line} + {below}",
                       line=line, below=below)  # fmt: skip
    return Rule(Line.FOLD, upper), Rule(Line.FOLD, lower)


def add_finishing_steps(sheet: Worksheet, ruffle: HemInputs, above: Value, below: Value) -> None:
    """Finishing both edges, then running the gathering rows between them."""
    height = above.length + below.length
    if ruffle.folded:
        sheet.step(
            "Fold the upper edge down by {above} and the lower edge up by {below}, wrong sides "
            "together: the raw edges meet behind the gathering line. Press and baste.",
            "from fold to fold it is {height} deep.",
            above=above,
            below=below,
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
        (above.length - half, above.length + half),
    )
