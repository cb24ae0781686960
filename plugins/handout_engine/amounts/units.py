"""The border to pint: units beyond the sewing table's own, and their dimension."""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from typing import Any

import pint

from handout_engine.amounts.refusals import RefusalError, quoted


@cache
def registry() -> pint.UnitRegistry[Any]:
    """The one unit registry of a run, exact: it is slow to make."""
    return pint.UnitRegistry(non_int_type=Fraction)


def other_unit(word: str) -> Fraction:
    """Millimetres in one of a unit that is not in `reading.UNITS`.

    Raises RefusalError when pint does not know the word or it does not measure length.
    """
    advice = "a length is written in in, mm, cm, m, ft or yd"
    if not (word.isalpha() and word.isascii()):
        raise RefusalError(f'"{quoted(word)}" is not a unit; {advice}')
    try:
        one = registry().Quantity(Fraction(1), word)
    except (pint.UndefinedUnitError, ValueError):  # pint reads "nan" as a number
        raise RefusalError(f'"{quoted(word)}" is not a unit; {advice}') from None
    if not one.check("[length]"):
        raise RefusalError(f"{quoted(word)} does not measure length; {advice}")
    return Fraction(one.to("millimetre").magnitude)


def thread_count(number: Fraction, word: str) -> Fraction:
    """Tex of a thread of so many of a unit that is not in `thread_counts`.

    A unit may weigh a length (denier) or measure what a weight is long (a cotton count).
    Raises RefusalError when pint does not know the word or it says nothing about thread.
    """
    advice = "a thread is counted in tex, dtex, denier, Nm or Ne"
    if not (word.isalpha() and word.isascii()):
        raise RefusalError(f'"{quoted(word)}" is not a thread count; {advice}')
    try:
        count = registry().Quantity(number, word)
    except (pint.UndefinedUnitError, ValueError):  # pint reads "nan" as a number
        raise RefusalError(f'"{quoted(word)}" is not a thread count; {advice}') from None
    if count.check("[length] / [mass]"):
        count = 1 / count
    if not count.check("[mass] / [length]"):
        raise RefusalError(f"{quoted(word)} does not measure how fine a thread is; {advice}")
    return Fraction(count.to("tex").magnitude)
