"""The cloth of a continuous bias strip: as given, or as little as gives the wanted length."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, LAYOUT, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.cloth.bias import LONGEST_CLOTH, diagonal
from handout_engine.families.bias.continuous_bias_cutting import (
    Rectangle,
    RectangleWanted,
    rows_for,
    rows_of_smallest_square,
    short_side_for,
    smallest_rectangle,
    square_for,
    whole_rows,
)
from handout_engine.working.worksheet import Worksheet

USUAL_LENGTH = inches(108)
SLENDER = Fraction(2)
"""A rectangle is so many times as long as wide at most: a narrower tube is hard to sew."""


def note_sides(
    sheet: Worksheet, width: Length, join: Length, usable: Length
) -> tuple[Value, Value]:
    """Note both sides of the cloth; returns the shorter and the longer one.

    Speaks of the inputs wanted, cloth_across, cloth_along, strip_allowance, size_step and
    least_saving. Raises RefusalError.
    """
    across, along = sheet["cloth_across"].amount, sheet["cloth_along"].amount
    wanted = sheet["wanted"].amount
    if across is None and along is None:
        _note_least(sheet, width, join, usable)
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


def _note_least(sheet: Worksheet, width: Length, join: Length, usable: Length) -> None:
    """The smallest square for the wanted length, or a rectangle where that takes less cloth.

    A rectangle asks for one step more (its long edges are trimmed level), so a small saving is
    not worth it.
    """
    wanted = _note_wanted(sheet).length
    rows = rows_of_smallest_square(wanted, width, join)
    side = _up(sheet, square_for(rows, wanted, width, join))
    rectangle = _rectangle(sheet, wanted, usable, side <= usable)
    if rectangle is not None and side <= usable:
        saved = 1 - rectangle.area / (side.mm * side.mm)
        rectangle = rectangle if saved >= sheet["least_saving"].ratio else None
    name = "rows_wanted" if rectangle is None else "square_rows"
    square_rows = sheet.note(name, "rows with which the square is smallest", rows, "",
                             basis=LAYOUT)  # fmt: skip
    square = sheet.note(
        "square_side",
        "side of the smallest square",
        side,
        "{rows} × {width} × √(2) + {strip_allowance}, at least ({length_wanted} / √(2) + "
        "2 × ({rows} - 1) × {strip_allowance}) / {rows} + {strip_allowance}, rounded up to the "
        "next {size_step}",
        rows=square_rows,
    )
    if rectangle is None:
        sheet.note("across", "side of the square", side, "{square_side}")
        sheet.note("along", "the other side of the square", side, "{across}")
    else:
        _note_rectangle(sheet, rectangle, usable)
    sheet.note_difference(
        "cloth_saved",
        "cloth saved against the smallest square",
        1 - (sheet["across"].length / side) * (sheet["along"].length / side),
        "1 - ({across} / {square}) × ({along} / {square})",
        saying=Saying.PERCENT,
        square=square,
    )


def _rectangle(
    sheet: Worksheet, wanted: Length, usable: Length, square_fits: bool
) -> Rectangle | None:
    """The smallest rectangle; where no square fits the cloth it may be as slender as it must."""
    return smallest_rectangle(
        RectangleWanted(
            wanted,
            sheet["width"].length,
            sheet["strip_allowance"].length,
            sheet["size_step"].length,
            most_short=usable,
            most_long=LONGEST_CLOTH,
            slender=SLENDER if square_fits else None,
        )
    )


def _note_rectangle(sheet: Worksheet, rectangle: Rectangle, usable: Length) -> None:
    """Its long side lies across the cloth where it fits there, so that less is bought."""
    long, short = ("across", "along") if rectangle.long <= usable else ("along", "across")
    rows = sheet.note(
        "rows_wanted", "rows with which the rectangle is smallest", rectangle.rows, "", basis=LAYOUT
    )
    fixed = _note_short_side(sheet, short, rectangle.short)
    _note_long_side(sheet, long, fixed, rows.whole)


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
    _note_short_side(sheet, other, _up(sheet, side))


def _note_short_side(sheet: Worksheet, name: str, side: Length) -> Value:
    """The side across the rows, long enough for the wanted length."""
    return sheet.note(
        name,
        f"cloth, {name}",
        side,
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
    _note_long_side(sheet, other, fixed, rows)


def _note_long_side(sheet: Worksheet, name: str, fixed: Value, rows: int) -> None:
    """The side along which the rows lie, no shorter than the other one."""
    needed = diagonal(sheet["width"].length) * rows + sheet["strip_allowance"].length
    sheet.note(
        name,
        f"cloth, {name}",
        _up(sheet, max(needed, fixed.length)),
        "{rows_wanted} × {width} × √(2) + {strip_allowance}, at least {fixed}, rounded up to the "
        "next {size_step}",
        fixed=fixed,
    )
