"""How amounts are said: in the fractions a tape measure has, metric beside inches.

This is the only place where a length is rounded, and it is rounded once.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from functools import lru_cache
from math import ceil, floor
from typing import Literal

from handout_engine.lengths import MILLIMETRES_PER_INCH, Length, NamedLength, Place

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
    | None
)
Finest = Literal[8, 16, 32]
System = Literal["inches", "metric"]
HALF = Fraction(1, 2)


class Saying(Enum):
    """How a value wants to be said."""

    NEAREST = "to the nearest mark of the tape"
    UP = "rounded up to the next mark, so that there is never too little"
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

    def say(self, amount: Amount, saying: Saying = Saying.NEAREST) -> str:
        """The amount in the tape's first system."""
        return self._said(amount, saying, self.first)

    def beside(self, amount: Amount, saying: Saying = Saying.NEAREST) -> str:
        """The same amount in the other system; empty for what has no unit, or only one."""
        if saying is Saying.FINE:
            return ""
        if isinstance(amount, Length | Place | NamedLength) or (
            isinstance(amount, tuple) and amount
        ):
            return self._said(amount, saying, "metric" if self.first == "inches" else "inches")
        return ""

    def both(self, amount: Amount, saying: Saying = Saying.NEAREST) -> str:
        """`2 1/4 in (57 mm)`."""
        beside = self.beside(amount, saying)
        return f"{self.say(amount, saying)} ({beside})" if beside else self.say(amount, saying)

    def _said(self, amount: Amount, saying: Saying, system: System) -> str:
        match amount:
            case tuple():
                mark = "; " if amount and isinstance(amount[0], Place) else ", "
                return mark.join(self._said(each, saying, system) for each in amount)
            case Length():
                return self._length(amount, saying, system)
            case Place():
                across, down = (
                    self._length(each, saying, system) for each in (amount.across, amount.down)
                )
                return f"{across} across, {down} down"
            case NamedLength():
                return f"{amount.name} {self._length(amount.length, saying, system)}"
            case Fraction():
                return _fraction(amount, saying)
        return "" if amount is None else str(amount)

    def _length(self, length: Length, saying: Saying, system: System) -> str:
        return _length(length, saying, system, self.finest)


@lru_cache(maxsize=10_000)
def _length(length: Length, saying: Saying, system: System, finest: int) -> str:
    """A length in one system; kept, since a page says most of its lengths several times."""
    if length.mm < 0:
        return "-" + _length(-length, saying, system, finest)
    if saying is Saying.FINE:
        return f"{decimal(length.mm)} mm"
    if saying is Saying.YARDAGE:
        return yards(length) if system == "inches" else metres(length)
    if saying is Saying.STEP and system == "inches" and _eighths(length).denominator == 1:
        return yards(length)
    if system == "inches":
        return _inches(length, saying, finest)
    return _metric(length, saying)


def _fraction(number: Fraction, saying: Saying) -> str:
    if saying is Saying.PERCENT:
        return decimal(number * 100, 1) + " %"
    if saying is Saying.TEX:
        return decimal(number) + " tex"
    return decimal(number) + ("°" if saying is Saying.DEGREES else "")


def _whole(number: Fraction, saying: Saying) -> int:
    return ceil(number) if saying is Saying.UP else floor(number + HALF)


def _inches(length: Length, saying: Saying, finest: int) -> str:
    marks = _whole(length.mm / MILLIMETRES_PER_INCH * finest, saying)
    if marks == 0 and length:
        return f"under 1/{finest} in"
    return f"{mixed(Fraction(marks, finest))} in"


def _metric(length: Length, saying: Saying) -> str:
    """Millimetres up to 10 cm, then centimetres with the millimetre behind the point."""
    whole = _whole(length.mm, saying)
    if whole == 0 and length:
        return "under 1 mm"
    return f"{whole} mm" if whole < 100 else f"{decimal(Fraction(whole, 10), 1)} cm"


def yards(length: Length) -> str:
    """Cloth as it is ordered in yards: up to the next eighth."""
    return f"{mixed(Fraction(ceil(_eighths(length)), 8))} yd"


def _eighths(length: Length) -> Fraction:
    """The length in eighths of a yard."""
    return length.mm / (36 * MILLIMETRES_PER_INCH) * 8


def metres(length: Length) -> str:
    """Cloth as it is ordered in metres: up to the next centimetre."""
    centimetres = ceil(length.mm / 10)
    if centimetres < 100:
        return f"{centimetres} cm"
    return f"{decimal(Fraction(centimetres, 100))} m"


def mixed(number: Fraction) -> str:
    """A mixed fraction in lowest terms: `2 1/4`, `1/2`, `3`."""
    whole, rest = divmod(number, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def decimal(number: Fraction, places: int = 2) -> str:
    """A decimal without needless noughts: `1.5`, `2`, `1.33`."""
    scaled = floor(abs(number) * 10**places + HALF)
    whole, rest = divmod(scaled, 10**places)
    tail = f"{rest:0{places}d}".rstrip("0")
    sign = "-" if number < 0 and scaled else ""
    return f"{sign}{whole}.{tail}" if tail else f"{sign}{whole}"
