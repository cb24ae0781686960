"""How fine a thread is: tex, and the other counts that are printed on spools.

Tex and denier weigh a length, so that a thick thread has a high number; Nm and Ne measure what a
weight is long, so that a fine thread has a high number. The counts of the trade are held here as
exact factors, so that the reader's browser need not load pint to read "60 Ne"; every other word
goes to pint (`units.thread_count`). tests/published/ holds these factors against pint's, and
against ISO 1144.
"""

from __future__ import annotations

import re
from fractions import Fraction

from handout_engine.amounts.reading import number_and_rest
from handout_engine.amounts.refusals import RefusalError, quoted

NM_ONE = Fraction(1000)
"""Tex of metric number 1: a gram for each metre."""
NE_ONE = Fraction("453.59237") / (840 * Fraction("0.9144")) * 1000
"""Tex of English cotton number 1: a pound for each 840 yards, 590.5412 tex."""
DENIER = 9
"""Denier of one tex: the grams of nine kilometres."""

WEIGHTS: dict[str, Fraction] = {
    "tex": Fraction(1),
    "dtex": Fraction(1, 10),
    **dict.fromkeys(("den", "denier", "deniers"), Fraction(1, DENIER)),
}
"""Tex of one of each count that weighs a length."""

NUMBERS: dict[str, Fraction] = {"nm": NM_ONE, **dict.fromkeys(("ne", "nec"), NE_ONE)}
"""Tex of number 1 of each count that measures what a weight is long."""

_WORD_FIRST = re.compile(r"\s*([A-Za-z]+)\s+(\d.*)", re.ASCII)


def read_thread_count(text: str) -> Fraction:
    """Read how fine a thread is, in tex: `30 tex`, `270 denier`, `50 Nm`, `60/2 Ne`, `Ne 30`.

    `60/2 Ne` is a thread of two plies, each of number 60: as thick as number 30. Raises
    RefusalError for a missing or wrong unit, or anything else.
    """
    match = _WORD_FIRST.fullmatch(text)
    number, unit = number_and_rest(f"{match[2]} {match[1]}" if match else text)
    if not unit:
        raise RefusalError(
            f'"{quoted(text)}" has no unit; write {quoted(text)} tex, or the number of the spool '
            "with Ne or Nm"
        )
    if not number:
        raise RefusalError(f'"{quoted(text)}" is no thread; write a number above 0')
    if unit.lower() in WEIGHTS:
        return number * WEIGHTS[unit.lower()]
    if unit.lower() in NUMBERS:
        return NUMBERS[unit.lower()] / number
    from handout_engine.amounts.units import thread_count  # noqa: PLC0415 - pint loads only when needed

    return thread_count(number, unit)
