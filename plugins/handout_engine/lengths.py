"""Exact lengths: every measurement in the engine is a fraction of a millimetre.

Rounding happens once, when a length is said (`saying.Tape`); nothing here rounds, save the
results of irrational steps (bias, circles), which `from_float` keeps to a billionth of a
millimetre so that every later step is exact again.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import overload

MILLIMETRES_PER_INCH = Fraction(127, 5)
FINEST = 10**9

Number = int | Fraction


@dataclass(frozen=True, order=True, slots=True)
class Length:
    """A length on cloth, in exact millimetres.

    Lengths add to lengths, scale by plain numbers, and divide by each other into a ratio; any
    other mixture is a `TypeError`, so that a ratio can never be added to a width unnoticed.
    """

    mm: Fraction

    def __add__(self, other: Length) -> Length:
        """Lay two lengths end to end."""
        return Length(self.mm + other.mm)

    def __sub__(self, other: Length) -> Length:
        """What remains of this length when the other is taken away; may be negative."""
        return Length(self.mm - other.mm)

    def __neg__(self) -> Length:
        """The same length, measured the other way."""
        return Length(-self.mm)

    def __mul__(self, times: Number) -> Length:
        """This length repeated a number of times."""
        if isinstance(times, int | Fraction):
            return Length(self.mm * times)
        return NotImplemented

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: Length) -> Fraction: ...
    @overload
    def __truediv__(self, other: Number) -> Length: ...
    def __truediv__(self, other: Length | Number) -> Length | Fraction:
        """Share a length out, or compare two lengths as a ratio."""
        if isinstance(other, Length):
            return self.mm / other.mm
        return Length(self.mm / other)

    def __bool__(self) -> bool:
        """A length of nothing is false."""
        return bool(self.mm)

    def __float__(self) -> float:
        """Millimetres as a float, for drawings and for irrational steps."""
        return float(self.mm)


@dataclass(frozen=True)
class Place:
    """A point on flat cloth: so far across from the left, so far down from the top."""

    across: Length
    down: Length


@dataclass(frozen=True)
class NamedLength:
    """A length of a named thing, such as a strip of lace and its width."""

    name: str
    length: Length


ZERO = Length(Fraction(0))


def inches(number: Number | str) -> Length:
    """A length of so many inches: `inches("1/4")` is a quarter inch."""
    return Length(Fraction(number) * MILLIMETRES_PER_INCH)


def millimetres(number: Number | str) -> Length:
    """A length of so many millimetres."""
    return Length(Fraction(number))


def from_float(mm: float) -> Length:
    """The result of an irrational step, kept to a billionth of a millimetre."""
    return Length(Fraction(round(mm * FINEST), FINEST))


def total(lengths: Iterable[Length]) -> Length:
    """All lengths end to end; nothing at all gives `ZERO`."""
    return sum(lengths, ZERO)
