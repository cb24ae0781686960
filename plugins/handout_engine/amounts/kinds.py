"""The kinds of input: how each is read, the bounds it keeps, and how it says them."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor
from typing import ClassVar, Generic, TypeVar, cast

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.reading import (
    is_bare,
    read_angle,
    read_count,
    read_length,
    read_percentage,
    read_ratio,
)
from handout_engine.amounts.refusals import RefusalError, near_name, quoted
from handout_engine.amounts.saying import TAPE, Amount, Rounding, Saying, System, Tape, exactly
from handout_engine.amounts.thread_counts import read_thread_count

Raw = Amount | Sequence[Amount]
T = TypeVar("T", Length, Fraction, int)


class Kind(ABC):
    """What an input may hold."""

    word: ClassVar[str]
    saying: ClassVar[Saying] = Saying.NEAREST

    @abstractmethod
    def read(self, raw: Raw) -> Amount:
        """The amount that was written (text), or that a reference gave; raises RefusalError."""

    @abstractmethod
    def bounds(self, tape: Tape) -> str:
        """The bounds in words, for help and for the reference page."""

    def with_units(self, text: str, first: System) -> str:
        """A text from a form, whose reader has chosen a system, with the units that it lacks."""
        del first
        return text


@dataclass(frozen=True)
class Quantity(Kind, Generic[T]):
    """A single amount between a least and a most, both allowed."""

    least: T
    most: T
    types: ClassVar[tuple[type, ...]]

    @staticmethod
    @abstractmethod
    def parse(text: str) -> Amount:
        """Read the amount from text, whatever its size."""

    def read(self, raw: Raw) -> T:
        """Read the amount and hold it against its bounds."""
        amount = self.parse(raw) if isinstance(raw, str) else raw
        if isinstance(amount, bool) or not isinstance(amount, self.types):
            raise RefusalError(f"{seen(raw)} is not {self.word}")
        found = cast(T, amount)
        if found < self.least:
            least = self._in_both(self.least, ceil)
            raise RefusalError(f"{written(raw)} is too small; use at least {least}")
        if found > self.most:
            most = self._in_both(self.most, floor)
            raise RefusalError(f"{written(raw)} is too large; use at most {most}")
        return found

    def bounds(self, tape: Tape) -> str:
        """`from 1/4 in to 20 yd`, each as `bound` says it."""
        return f"from {self.bound(self.least, ceil, tape)} to {self.bound(self.most, floor, tape)}"

    def bound(self, amount: T, rounding: Rounding, tape: Tape) -> str:
        """The least rounded up or the most rounded down, so that what is said is accepted."""
        said = tape.say(amount, self.saying, rounding)
        within = self.least <= cast(T, self.parse(said)) <= self.most
        return said if within else self.exactly(amount)

    def exactly(self, amount: T) -> str:
        """A bound where no mark of the tape lies between the two."""
        return Tape().say(amount, self.saying)

    def _in_both(self, amount: T, rounding: Rounding) -> str:
        """The bound by a fine tape, in inches and in metric where the two differ."""
        said = self.bound(amount, rounding, Tape("inches", 32))
        beside = self.bound(amount, rounding, Tape("metric", 32))
        return said if beside == said else f"{said} ({beside})"


class LengthKind(Quantity[Length]):
    """A length with its unit; `bare` is that of a number without one, where a system is chosen."""

    word = "a length"
    types = (Length,)
    bare: ClassVar[Mapping[System, str]] = {"inches": "in", "metric": "cm"}

    @staticmethod
    def parse(text: str) -> Length:
        """Read a length from text."""
        return read_length(text)

    def with_units(self, text: str, first: System) -> str:
        """A bare number in inches or centimetres."""
        return f"{text.strip()} {self.bare[first]}" if is_bare(text) else text

    def exactly(self, amount: Length) -> str:
        """A bound in millimetres and their parts, unrounded."""
        return exactly(amount)


class YardageKind(LengthKind):
    """A length in whose steps cloth is sold."""

    saying = Saying.STEP
    bare: ClassVar[Mapping[System, str]] = {"inches": "yd", "metric": "cm"}


class FineLengthKind(LengthKind):
    """A length smaller than a tape can measure, such as the width of a stitch."""

    saying = Saying.FINE
    bare: ClassVar[Mapping[System, str]] = {"inches": "mm", "metric": "mm"}


class ReelKind(LengthKind):
    """A long length of thread, said in the units that it is wound and sold by."""

    saying = Saying.YARDAGE
    bare: ClassVar[Mapping[System, str]] = {"inches": "yd", "metric": "m"}


class RatioKind(Quantity[Fraction]):
    """A plain ratio, such as a fullness."""

    word = "a ratio"
    types = (Fraction, int)

    @staticmethod
    def parse(text: str) -> Fraction:
        """Read a ratio from text."""
        return read_ratio(text)

    def read(self, raw: Raw) -> Fraction:
        """Read the ratio; a whole number that was referred to counts as one."""
        return Fraction(super().read(raw))


class PercentageKind(Quantity[Fraction]):
    """A share in per cent, held as a fraction of one."""

    word = "a percentage"
    saying = Saying.PERCENT
    types = (Fraction,)

    @staticmethod
    def parse(text: str) -> Fraction:
        """Read a percentage from text."""
        return read_percentage(text)


class AngleKind(Quantity[Fraction]):
    """An angle in degrees."""

    word = "an angle"
    saying = Saying.DEGREES
    types = (Fraction,)

    @staticmethod
    def parse(text: str) -> Fraction:
        """Read an angle from text."""
        return read_angle(text)


class ThreadCountKind(Quantity[Fraction]):
    """How fine a thread is, in any of the trade's counts, held in tex."""

    word = "a thread count"
    saying = Saying.TEX
    types = (Fraction,)

    @staticmethod
    def parse(text: str) -> Fraction:
        """Read a thread count from text."""
        return read_thread_count(text)


class CountKind(Quantity[int]):
    """A whole number of things."""

    word = "a whole number"
    types = (int,)

    @staticmethod
    def parse(text: str) -> int:
        """Read a whole number from text."""
        return read_count(text)


@dataclass(frozen=True)
class ChoiceKind(Kind):
    """One of a few named choices."""

    word = "a choice"
    choices: tuple[str, ...]

    def read(self, raw: Raw) -> str:
        """The choice, written out in full."""
        if isinstance(raw, str) and raw in self.choices:
            return raw
        hint = near_name(raw, self.choices) if isinstance(raw, str) else ""
        raise RefusalError(f"{seen(raw)} is not one of {', '.join(self.choices)}{hint}")

    def bounds(self, tape: Tape) -> str:
        """The choices in a row."""
        del tape
        return "one of " + ", ".join(self.choices)


def written(raw: Raw) -> str:
    """The value as written, or as it was referred to, to open a sentence about it."""
    return quoted(raw) if isinstance(raw, str) else TAPE.both(cast(Amount, raw))


def seen(raw: object) -> str:
    """What was given, to open a sentence that says it is the wrong thing."""
    if isinstance(raw, str):
        return f'"{quoted(raw)}"'
    if isinstance(raw, Length | Fraction | int):
        return written(raw)
    names = {list: "a list", tuple: "a list", dict: "a mapping", type(None): "nothing"}
    return names.get(type(raw), "this")
