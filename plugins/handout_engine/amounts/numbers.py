"""Counts and ratios: numbers of a kind, which do not mix with each other unnoticed.

A plain Python number (the 2 in `2 * band`) goes with each of them. A count is whole and can be
counted over with `range`; what is divided is a ratio.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from math import ceil, floor
from typing import ClassVar, Generic, Self, TypeVar, cast, overload

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

IRRATIONAL_PARTS = 10**15
"""An irrational number is kept to so many parts, as fine as a float is."""


def irrational(number: float) -> Fraction:
    """The result of a root or an angle function, as a fraction."""
    return Fraction(round(number * IRRATIONAL_PARTS), IRRATIONAL_PARTS)


N = TypeVar("N", int, Fraction)


@dataclass(frozen=True, slots=True, eq=False)
class Pure(Generic[N]):
    """What counts, ratios and angles have in common: they add and compare with their own kind."""

    number: N
    made: Expression | None = field(default=None, repr=False)
    _plain_types: ClassVar[tuple[type, ...]] = (int, Fraction)

    def _as_own(self, other: object) -> Self | None:
        """The other if it is of this kind, or a plain number taken for it."""
        if isinstance(other, type(self)):
            return other
        return self._of_plain(other)

    def _of_plain(self, other: object) -> Self | None:
        """A plain number as one of this kind; None for anything else."""
        if not isinstance(other, self._plain_types) or isinstance(other, bool):
            return None
        return type(self)(cast(N, other), literal(cast(N, other)))

    def __add__(self, other: Self | N | int) -> Self:
        """Two of a kind together."""
        if (right := self._as_own(other)) is None:
            return NotImplemented
        if not right.number and right is not other:
            return self
        made = joined(self.made, " + ", right.made, Closeness.SUM)
        return type(self)(self.number + right.number, made)

    def __radd__(self, other: N | int) -> Self:
        """A plain number and this."""
        left = self._as_own(other)
        return NotImplemented if left is None else self if not left.number else left + self

    def __sub__(self, other: Self | N | int) -> Self:
        """What is left of this without the other."""
        if (right := self._as_own(other)) is None:
            return NotImplemented
        made = joined(self.made, " - ", right.made, Closeness.SUM)
        return type(self)(self.number - right.number, made)

    def __rsub__(self, other: N | int) -> Self:
        """What is left of a plain number without this."""
        left = self._as_own(other)
        return NotImplemented if left is None else left - self

    def __neg__(self) -> Self:
        """The same, counted the other way."""
        return type(self)(-self.number)

    def _compared(self, sign: str, other: object, outcome: bool) -> bool:
        right = self._as_own(other)
        return compared(self.made, sign, right.made if right is not None else None, outcome=outcome)

    def _plain(self, other: object) -> N:
        right = self._as_own(other)
        if right is None:
            raise TypeError(f"{type(self).__name__} and {type(other).__name__} do not compare")
        return right.number

    def __lt__(self, other: Self | N | int) -> bool:
        """Whether this is the smaller."""
        return self._compared("<", other, self.number < self._plain(other))

    def __le__(self, other: Self | N | int) -> bool:
        """Whether this is not the larger."""
        return self._compared("<=", other, self.number <= self._plain(other))

    def __gt__(self, other: Self | N | int) -> bool:
        """Whether this is the larger."""
        return self._compared(">", other, self.number > self._plain(other))

    def __ge__(self, other: Self | N | int) -> bool:
        """Whether this is not the smaller."""
        return self._compared(">=", other, self.number >= self._plain(other))

    def __eq__(self, other: object) -> bool:
        """Equal numbers of a kind are the same however they were made."""
        right = self._as_own(other)
        return NotImplemented if right is None else self.number == right.number

    def __hash__(self) -> int:
        """As the plain number."""
        return hash(self.number)

    def __bool__(self) -> bool:
        """Nothing is false."""
        return bool(self.number)

    def __float__(self) -> float:
        """For drawings and for irrational steps."""
        return float(self.number)

    def __ceil__(self) -> int:
        """The next whole number, plain."""
        return ceil(self.number)

    def __floor__(self) -> int:
        """The whole number before, plain."""
        return floor(self.number)

    def __int__(self) -> int:
        """The whole part, plain."""
        return int(self.number)

    def __abs__(self) -> Self:
        """The same without its sign."""
        return self if self.number >= 0 else -self


class Count(Pure[int]):
    """A whole number of things; `range` and lists take it as it is."""

    __slots__ = ()

    _plain_types = (int,)

    def __index__(self) -> int:
        """The plain whole number."""
        return self.number

    def __str__(self) -> str:
        """As it stands in a sentence."""
        return str(self.number)

    @overload
    def __mul__(self, other: Count | int) -> Count: ...
    @overload
    def __mul__(self, other: Ratio | Fraction) -> Ratio: ...
    def __mul__(self, other: Plain) -> Count | Ratio:
        """So many times as many; by a ratio, a ratio."""
        if (times := plain(other)) is None:
            return NotImplemented
        made = joined(self.made, " × ", expression_of(other), Closeness.PRODUCT)
        if isinstance(times, int):
            return Count(self.number * times, made)
        return Ratio(self.number * times, made)

    def __rmul__(self, times: int) -> Count:
        """A plain number of times as many."""
        return Count(times, literal(times)) * self

    def __truediv__(self, other: Plain) -> Ratio:
        """How many to each, as a ratio."""
        return Ratio(Fraction(self.number), self.made) / other

    def __rtruediv__(self, other: Number) -> Ratio:
        """A share of a plain number."""
        return Ratio(Fraction(other), literal(other)) / self

    def __floordiv__(self, other: Count | int) -> Count:
        """How many whole times the other goes into it."""
        return (self / other).rounded_down()


class Ratio(Pure[Fraction]):
    """A plain ratio or share, such as a fullness."""

    __slots__ = ()

    def __mul__(self, other: Plain) -> Ratio:
        """A ratio of a ratio."""
        if (times := plain(other)) is None:
            return NotImplemented
        made = joined(self.made, " × ", expression_of(other), Closeness.PRODUCT)
        return Ratio(self.number * times, made)

    def __rmul__(self, times: Number) -> Ratio:
        """A plain number of times this ratio."""
        if (number := plain(times)) is None:
            return NotImplemented
        made = joined(literal(times), " × ", self.made, Closeness.PRODUCT)
        return Ratio(self.number * number, made)

    def __truediv__(self, other: Plain) -> Ratio:
        """How often one goes into the other."""
        if (number := plain(other)) is None:
            return NotImplemented
        made = joined(self.made, " / ", expression_of(other), Closeness.PRODUCT)
        return Ratio(self.number / number, made)

    def __rtruediv__(self, other: Number) -> Ratio:
        """A plain number divided by this."""
        return Ratio(Fraction(other), literal(other)) / self

    def rounded_up(self) -> Count:
        """The next whole number."""
        return Count(ceil(self.number), ended(self.made, "rounded up"))

    def rounded_down(self) -> Count:
        """The whole number before."""
        return Count(floor(self.number), ended(self.made, "rounded down"))

    def root(self) -> Ratio:
        """The square root."""
        return Ratio(irrational(float(self.number) ** 0.5), called("√", self.made))


Plain = Number | Count | Ratio
"""What a length can be multiplied with or shared out by."""


def plain(number: object) -> Number | None:
    """A plain number, a count or a ratio as a number; None for anything else."""
    if isinstance(number, Count | Ratio):
        return number.number
    if isinstance(number, int | Fraction) and not isinstance(number, bool):
        return number
    return None


def expression_of(number: Plain) -> Expression | None:
    """The expression of a plain number, a count or a ratio."""
    return literal(number) if isinstance(number, int | Fraction) else number.made


C = TypeVar("C", Count, Ratio)


def larger(first: C, second: C) -> C:
    """The larger of two counts or two ratios: `first, at least second`."""
    made = second.made and ended(first.made, "at least ", second.made)
    return type(first)(max(first.number, second.number), made)


def smaller(first: C, second: C) -> C:
    """The smaller of two counts or two ratios: `first, at most second`."""
    made = second.made and ended(first.made, "at most ", second.made)
    return type(first)(min(first.number, second.number), made)


def whole(number: int) -> Count:
    """A plain whole number as a count that a formula can name, such as the 1 of `at least 1`."""
    return Count(number, literal(number))
