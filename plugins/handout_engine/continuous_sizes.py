"""The cloth of a continuous bias strip: as given, or as little as gives the wanted length."""

from __future__ import annotations

from math import ceil

from handout_engine.bias import diagonal
from handout_engine.continuous import (
    rows_for,
    rows_of_smallest_square,
    short_side_for,
    square_for,
    whole_rows,
)
from handout_engine.lengths import Length, inches
from handout_engine.refusals import RefusalError
from handout_engine.saying import Tape
from handout_engine.sources import GIVEN, LAYOUT, PRACTICE
from handout_engine.values import Value
from handout_engine.worksheet import Worksheet

USUAL_LENGTH = inches(108)


def note_sides(sheet: Worksheet, width: Length, join: Length) -> tuple[Value, Value]:
    """Note both sides of the cloth; returns the shorter and the longer one.

    Speaks of the inputs wanted, cloth_across, cloth_along, strip_allowance and size_step. Raises
    RefusalError.
    """
    across, along = sheet["cloth_across"].amount, sheet["cloth_along"].amount
    wanted = sheet["wanted"].amount
    if across is None and along is None:
        _note_square(sheet, width, join)
    elif across is not None and along is not None:
        for name in ("across", "along"):
            given = sheet[f"cloth_{name}"].length
            sheet.note(name, f"cloth, {name}", given, "", basis=GIVEN)
    elif wanted is None:
        side = sheet["cloth_across" if across is not None else "cloth_along"].length
        for name in ("across", "along"):
            sheet.note(name, f"cloth, {name}", side, "", basis=GIVEN)
    else:
        names = ("across", "along") if across is not None else ("along", "across")
        _note_other_side(sheet, names, width, join)
    both = sheet["across"], sheet["along"]
    return min(both, key=_length), max(reversed(both), key=_length)


def _length(value: Value) -> Length:
    return value.length


def _note_square(sheet: Worksheet, width: Length, join: Length) -> None:
    """The smallest square for the wanted length."""
    wanted = _note_wanted(sheet)
    rows = sheet.note("rows_wanted", "rows with which the square is smallest",
                      rows_of_smallest_square(wanted.length, width, join), "",
                      basis=LAYOUT)  # fmt: skip
    side = _up(sheet, square_for(rows.whole, wanted.length, width, join))
    sheet.note(
        "across",
        "side of the square",
        side,
        "{rows_wanted} × {width} × √(2) + {strip_allowance}, at least ({length_wanted} / √(2) + "
        "2 × ({rows_wanted} - 1) × {strip_allowance}) / {rows_wanted} + {strip_allowance}, "
        "rounded up to the next {size_step}",
    )
    sheet.note("along", "the other side of the square", side, "{across}")


def _note_wanted(sheet: Worksheet) -> Value:
    given = sheet["wanted"].amount
    return sheet.note(
        "length_wanted",
        "length wanted",
        USUAL_LENGTH if given is None else given,
        "",
        basis=PRACTICE if given is None else GIVEN,
    )


def _up(sheet: Worksheet, side: Length) -> Length:
    step = sheet["size_step"].length
    return step * ceil(side / step)


def _note_other_side(sheet: Worksheet, names: tuple[str, str], width: Length, join: Length) -> None:
    """The side that is not given: shorter than the given one where that is enough, else longer."""
    given, other = names
    wanted = _note_wanted(sheet).length
    fixed = sheet.note(given, f"cloth, {given}", sheet[f"cloth_{given}"].length, "", basis=GIVEN)
    if fixed.length <= 3 * join:
        raise RefusalError(
            f"cloth_{given} {Tape().say(fixed.length)} is used up by the seams; use more than "
            f"{Tape().no_less(3 * join)}",
            f"cloth_{given}",
        )
    rows = whole_rows(fixed.length, width, join)
    if rows and _up(sheet, short_side_for(rows, wanted, join)) <= fixed.length:
        _note_shorter(sheet, other, rows, short_side_for(rows, wanted, join))
    else:
        _note_longer(sheet, other, fixed, rows_for(wanted, fixed.length, join))


def _note_shorter(sheet: Worksheet, other: str, rows: int, side: Length) -> None:
    sheet.note("rows_wanted", "rows along the given side", rows, "", basis=LAYOUT)
    sheet.note(
        other,
        f"cloth, {other}",
        _up(sheet, side),
        "({length_wanted} / √(2) + 2 × ({rows_wanted} - 1) × {strip_allowance}) / {rows_wanted} "
        "+ {strip_allowance}, rounded up to the next {size_step}",
    )


def _note_longer(sheet: Worksheet, other: str, fixed: Value, rows: int) -> None:
    sheet.note(
        "rows_wanted",
        "rows for the wanted length",
        rows,
        "({length_wanted} / √(2) - 2 × {strip_allowance}) / ({fixed} - 3 × {strip_allowance}), "
        "rounded up, at least 1",
        fixed=fixed,
    )
    needed = diagonal(sheet["width"].length) * rows + sheet["strip_allowance"].length
    sheet.note(
        other,
        f"cloth, {other}",
        _up(sheet, max(needed, fixed.length)),
        "{rows_wanted} × {width} × √(2) + {strip_allowance}, at least {fixed}, rounded up to the "
        "next {size_step}",
        fixed=fixed,
    )
