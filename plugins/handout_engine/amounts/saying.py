"""How amounts are said: in the fractions a tape measure has, metric beside inches.

This is the only place where a length is rounded, and it is rounded once.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from functools import lru_cache
from math import ceil, floor
from typing import Literal

from handout_engine.amounts.angles import Angle
from handout_engine.amounts.lengths import MILLIMETRES_PER_INCH, Length, NamedLength, Place
from handout_engine.amounts.numbers import Count, Ratio

Amount = (
    Length
    | Fraction
    | int
    | str
    | tuple[Length, ...]
    | tuple[Place, ...]
    | tuple[NamedLength, ...]
    | Place
    | NamedLength
    | Count
    | Ratio
    | Angle
    | None
)
Finest = Literal[8, 16, 32]
System = Literal["inches", "metric"]
Rounding = Callable[[Fraction], int]
HALF = Fraction(1, 2)


class Saying(Enum):
    """How a value wants to be said."""

    NEAREST = "to the nearest mark of the tape"
    UP = "rounded up to the next mark, so that there is never too little"
    DOWN = "rounded down to the mark before, so that there is never too much"
    YARDAGE = "in the units cloth is sold by, rounded up"
    STEP = "exactly: in yards where it is a whole number of eighths, else as a length"
    PERCENT = "in per cent"
    DEGREES = "in degrees"
    FINE = "in millimetres to the hundredth, whatever the tape, as needles and stitches are sold"
    TEX = "in tex: the grams that a kilometre of thread weighs"


@dataclass(frozen=True)
class Tape:
    """The tape measure that a page is written with.

    `first` is the system said first; `finest` is the smallest fraction of an inch on the tape
    (8, 16 or 32 parts). The metric side always reads to the nearest millimetre.
    """

    first: System = "inches"
    finest: Finest = 16

    def say(
        self, amount: Amount, saying: Saying = Saying.NEAREST, rounding: Rounding | None = None
    ) -> str:
        """The amount in the tape's first system; `rounding` is the saying's own if not given."""
        return self._said(amount, saying, self.first, rounding)

    def beside(self, amount: Amount, saying: Saying = Saying.NEAREST) -> str:
        """The same amount in the other system; empty for what has no unit, or only one."""
        if saying is Saying.FINE:
            return ""
        if isinstance(amount, Length | Place | NamedLength) or (
            isinstance(amount, tuple) and amount
        ):
            other: System = "metric" if self.first == "inches" else "inches"
            return self._said(amount, saying, other)
        return ""

    def both(self, amount: Amount, saying: Saying = Saying.NEAREST) -> str:
        """`2 1/4 in (57 mm)`."""
        said, beside = self.say(amount, saying), self.beside(amount, saying)
        return f"{said} ({beside})" if beside and beside != said else said

    def no_less(self, least: Length) -> str:
        """A least length as a refusal names it: rounded up, so that what is named is enough."""
        return self.both(least, Saying.UP)

    def no_more(self, most: Length) -> str:
        """A greatest length as a refusal names it: rounded down, so that it is not too much."""
        return self.both(most, Saying.DOWN)

    def _said(
        self, amount: Amount, saying: Saying, system: System, rounding: Rounding | None = None
    ) -> str:
        whole = rounding or ROUNDINGS.get(saying, nearest)
        match amount:
            case tuple():
                mark = "; " if amount and isinstance(amount[0], Place) else ", "
                return mark.join(self._said(each, saying, system, rounding) for each in amount)
            case Length():
                return _length(amount, saying, system, self.finest, whole)
            case Place():
                across, down = (
                    _length(each, saying, system, self.finest, whole)
                    for each in (amount.across, amount.down)
                )
                return f"{across} across, {down} down"
            case NamedLength():
                return f"{amount.name} {self._said(amount.length, saying, system, rounding)}"
            case Fraction() | Ratio() | Angle():
                number = amount if isinstance(amount, Fraction) else amount.number
                return _fraction(number, saying, whole)
        return "" if amount is None else str(amount)


TAPE = Tape(finest=32)
"""The tape that refusals are said with: as fine as any, inches first."""


def nearest(number: Fraction) -> int:
    """The nearest whole number; half goes up."""
    return floor(number + HALF)


ROUNDINGS: dict[Saying, Rounding] = {Saying.UP: ceil, Saying.YARDAGE: ceil, Saying.DOWN: floor}


@lru_cache(maxsize=10_000)
def _length(length: Length, saying: Saying, system: System, finest: int, whole: Rounding) -> str:
    """A length in one system; kept, since a page says most of its lengths several times."""
    if length.mm < 0:
        return "-" + _length(-length, saying, system, finest, whole)
    if saying is Saying.FINE:
        return _hundredths(length, whole)
    if saying is Saying.YARDAGE:
        return yards(length, whole) if system == "inches" else metres(length, whole)
    if saying is Saying.STEP and system == "inches" and _eighths(length).denominator == 1:
        return yards(length)
    return _inches(length, finest, whole) if system == "inches" else _metric(length, whole)


def _fraction(number: Fraction, saying: Saying, whole: Rounding) -> str:
    if saying is Saying.PERCENT:
        return decimal(number * 100, 1, whole) + " %"
    if saying is Saying.TEX:
        return decimal(number, 2, whole) + " tex"
    return decimal(number, 2, whole) + ("°" if saying is Saying.DEGREES else "")


def _inches(length: Length, finest: int, whole: Rounding) -> str:
    marks = whole(length.mm / MILLIMETRES_PER_INCH * finest)
    if marks == 0 and length:
        return _hundredths(length, whole) if whole is floor else f"under 1/{finest} in"
    return f"{mixed(Fraction(marks, finest))} in"


def _metric(length: Length, whole: Rounding) -> str:
    """Millimetres up to 10 cm, then centimetres with the millimetre behind the point."""
    marks = whole(length.mm)
    if marks == 0 and length:
        return _hundredths(length, whole) if whole is floor else "under 1 mm"
    return f"{marks} mm" if marks < 100 else f"{decimal(Fraction(marks, 10), 1)} cm"


def _hundredths(length: Length, whole: Rounding) -> str:
    """What is too small for a tape, in millimetres: down to no mark at all would say nothing."""
    return f"{decimal(length.mm, 2, whole)} mm"


def exactly(length: Length) -> str:
    """A length without any rounding, in millimetres and their parts: `3 7/40 mm`."""
    return f"{mixed(length.mm)} mm"


def yards(length: Length, whole: Rounding = ceil) -> str:
    """Cloth as it is ordered in yards: up to the next eighth."""
    return f"{mixed(Fraction(whole(_eighths(length)), 8))} yd"


def _eighths(length: Length) -> Fraction:
    """The length in eighths of a yard."""
    return length.mm / (36 * MILLIMETRES_PER_INCH) * 8


def metres(length: Length, whole: Rounding = ceil) -> str:
    """Cloth as it is ordered in metres: up to the next centimetre."""
    centimetres = whole(length.mm / 10)
    if centimetres < 100:
        return f"{centimetres} cm"
    return f"{decimal(Fraction(centimetres, 100))} m"


def mixed(number: Fraction) -> str:
    """A mixed fraction in lowest terms: `2 1/4`, `1/2`, `3`."""
    whole, rest = divmod(number, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def decimal(ratio: Fraction | Ratio, places: int = 2, whole: Rounding = nearest) -> str:
    """A decimal without needless noughts: `1.5`, `2`, `1.33`."""
    number = ratio.number if isinstance(ratio, Ratio) else ratio
    scaled = whole(abs(number) * 10**places)
    whole, rest = divmod(scaled, 10**places)
    tail = f"{rest:0{places}d}".rstrip("0")
    sign = "-" if number < 0 and scaled else ""
    return f"{sign}{whole}.{tail}" if tail else f"{sign}{whole}"
