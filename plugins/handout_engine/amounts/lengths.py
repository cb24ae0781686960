"""Exact lengths and areas: every measurement in the engine is a fraction of a millimetre.

Rounding happens once, when a length is said (`saying.Tape`); nothing here rounds, save the
results of irrational steps (bias, circles), which `from_float` keeps to a billionth of a
millimetre so that every later step is exact again.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from fractions import Fraction
from functools import reduce
from typing import overload

from handout_engine.amounts.expressions import (
    Closeness,
    Expression,
    Number,
    called,
    compared,
    ended,
    joined,
    literal,
)
from handout_engine.amounts.numbers import Plain, Ratio, irrational, plain

MILLIMETRES_PER_INCH = Fraction(127, 5)
FINEST = 10**9


@dataclass(frozen=True, slots=True)
class Length:
    """A length on cloth, in exact millimetres, which may know how it was made.

    Lengths add to lengths, scale by plain numbers, counts and ratios, multiply into areas and
    divide by each other into a ratio; any other mixture is a `TypeError`, so that a ratio can never
    be added to a width unnoticed. Two equal lengths are the same however they were made.
    """

    mm: Fraction
    made: Expression | None = field(default=None, compare=False, repr=False)

    def __add__(self, other: Length) -> Length:
        """Lay two lengths end to end."""
        if not isinstance(other, Length):
            return NotImplemented
        if not (self.mm or self.made) or not (other.mm or other.made):
            return other if other.mm or other.made else self
        return Length(self.mm + other.mm, joined(self.made, " + ", other.made, Closeness.SUM))

    def __sub__(self, other: Length) -> Length:
        """What remains of this length when the other is taken away; may be negative."""
        if not isinstance(other, Length):
            return NotImplemented
        if not (other.mm or other.made):
            return self
        return Length(self.mm - other.mm, joined(self.made, " - ", other.made, Closeness.SUM))

    def __neg__(self) -> Length:
        """The same length, measured the other way."""
        return Length(-self.mm)

    @overload
    def __mul__(self, other: Plain) -> Length: ...
    @overload
    def __mul__(self, other: Length) -> Area: ...
    def __mul__(self, other: Plain | Length) -> Length | Area:
        """This length repeated a number of times, or the area it spans with another."""
        if isinstance(other, Length):
            made = joined(self.made, " × ", other.made, Closeness.PRODUCT)
            return Area(self.mm * other.mm, made)
        if (times := plain(other)) is None:
            return NotImplemented
        made = joined(self.made, " × ", _expression(other), Closeness.PRODUCT)
        return Length(self.mm * times, made)

    def __rmul__(self, times: Plain) -> Length:
        """So many times this length."""
        if (number := plain(times)) is None:
            return NotImplemented
        made = joined(_expression(times), " × ", self.made, Closeness.PRODUCT)
        return Length(self.mm * number, made)

    @overload
    def __truediv__(self, other: Length) -> Ratio: ...
    @overload
    def __truediv__(self, other: Plain) -> Length: ...
    def __truediv__(self, other: Length | Plain) -> Length | Ratio:
        """Share a length out, or compare two lengths as a ratio."""
        if isinstance(other, Length):
            made = joined(self.made, " / ", other.made, Closeness.PRODUCT)
            return Ratio(self.mm / other.mm, made)
        if (number := plain(other)) is None:
            return NotImplemented
        made = joined(self.made, " / ", _expression(other), Closeness.PRODUCT)
        return Length(self.mm / number, made)

    def __lt__(self, other: Length) -> bool:
        """Whether this is the shorter."""
        return compared(self.made, "<", other.made, outcome=self.mm < other.mm)

    def __le__(self, other: Length) -> bool:
        """Whether this is not the longer."""
        return compared(self.made, "<=", other.made, outcome=self.mm <= other.mm)

    def __gt__(self, other: Length) -> bool:
        """Whether this is the longer."""
        return compared(self.made, ">", other.made, outcome=self.mm > other.mm)

    def __ge__(self, other: Length) -> bool:
        """Whether this is not the shorter."""
        return compared(self.made, ">=", other.made, outcome=self.mm >= other.mm)

    def __bool__(self) -> bool:
        """A length of nothing is false."""
        return bool(self.mm)

    def __float__(self) -> float:
        """Millimetres as a float, for drawings and for irrational steps."""
        return float(self.mm)

    @property
    def label(self) -> str:
        """What it is called, where it is a named thing; raises TypeError where it is not."""
        if self.made is None or self.made.only is None:
            raise TypeError("the length has no name of its own")
        return self.made.only.label

    def rounded_up_to(self, step: Length) -> Length:
        """The least multiple of a step that is no shorter."""
        made = step.made and ended(self.made, "rounded up to the next ", step.made)
        return Length(-(-self.mm // step.mm) * step.mm, made)


@dataclass(frozen=True, slots=True)
class Area:
    """An area of cloth, in square millimetres: two lengths multiplied."""

    square_mm: Fraction
    made: Expression | None = field(default=None, compare=False, repr=False)

    def __add__(self, other: Area) -> Area:
        """Two areas together."""
        if not isinstance(other, Area):
            return NotImplemented
        made = joined(self.made, " + ", other.made, Closeness.SUM)
        return Area(self.square_mm + other.square_mm, made)

    def __sub__(self, other: Area) -> Area:
        """What is left of this area without the other."""
        if not isinstance(other, Area):
            return NotImplemented
        made = joined(self.made, " - ", other.made, Closeness.SUM)
        return Area(self.square_mm - other.square_mm, made)

    def __mul__(self, times: Plain) -> Area:
        """This area so many times."""
        if (number := plain(times)) is None:
            return NotImplemented
        made = joined(self.made, " × ", _expression(times), Closeness.PRODUCT)
        return Area(self.square_mm * number, made)

    def __rmul__(self, times: Plain) -> Area:
        """So many times this area."""
        if (number := plain(times)) is None:
            return NotImplemented
        made = joined(_expression(times), " × ", self.made, Closeness.PRODUCT)
        return Area(self.square_mm * number, made)

    @overload
    def __truediv__(self, other: Length) -> Length: ...
    @overload
    def __truediv__(self, other: Area) -> Ratio: ...
    @overload
    def __truediv__(self, other: Plain) -> Area: ...
    def __truediv__(self, other: Length | Area | Plain) -> Length | Ratio | Area:
        """The other side of a rectangle, how often one area holds another, or a share of it."""
        made = joined(self.made, " / ", _expression(other), Closeness.PRODUCT)
        if isinstance(other, Length):
            return Length(self.square_mm / other.mm, made)
        if isinstance(other, Area):
            return Ratio(self.square_mm / other.square_mm, made)
        if (number := plain(other)) is None:
            return NotImplemented
        return Area(self.square_mm / number, made)

    def root(self) -> Length:
        """The side of a square of this area."""
        return Length(irrational(float(self.square_mm) ** 0.5), called("√", self.made))


def _expression(amount: Plain | Length | Area) -> Expression | None:
    return literal(amount) if isinstance(amount, int | Fraction) else amount.made


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


def most(first: Length, *others: Length) -> Length:
    """The longest of several lengths: `first, at least second`."""
    return reduce(_longer, others, first)


def least(first: Length, *others: Length) -> Length:
    """The shortest of several lengths: `first, at most second`."""
    return reduce(_shorter, others, first)


def _longer(first: Length, second: Length) -> Length:
    made = second.made and ended(first.made, "at least ", second.made)
    return Length(max(first.mm, second.mm), made)


def _shorter(first: Length, second: Length) -> Length:
    made = second.made and ended(first.made, "at most ", second.made)
    return Length(min(first.mm, second.mm), made)
