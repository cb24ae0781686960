"""How an amount was made: the words of its formula, gathered while it is computed.

Every amount (a length, a count, a ratio, an angle, an area) may carry one. A named amount carries
its name alone; a sum of two named amounts carries both with a plus between them. So the formula a
page prints is what the code computed, and cannot say anything else. An amount that came out of
geometry (a curve measured, a panel clipped) carries none, and neither does what is made of it
before it is named.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from enum import IntEnum
from fractions import Fraction
from typing import Protocol

Number = int | Fraction


class Closeness(IntEnum):
    """How closely the parts of an expression hold together, which decides about brackets."""

    ENDED = 0
    SUM = 1
    PRODUCT = 2
    ONE = 3


class Named(Protocol):
    """What an expression speaks of: something with a name and a label."""

    @property
    def name(self) -> str:
        """The name it is found by."""

    @property
    def label(self) -> str:
        """What a sewer calls it."""


Word = str | Named


@dataclass(frozen=True, slots=True)
class Expression:
    """The words of a formula in order, the named things in it, and how closely they hold."""

    words: tuple[Word, ...]
    closeness: Closeness = Closeness.ONE

    @property
    def only(self) -> Named | None:
        """The one named thing that this is, if it is nothing else."""
        first = self.words[0]
        return None if len(self.words) > 1 or isinstance(first, str) else first


class Amount(Protocol):
    """An amount that may know how it was made."""

    @property
    def made(self) -> Expression | None:
        """Its expression, where it has one."""


def of(named: Named) -> Expression:
    """The expression of a named thing."""
    return Expression((named,))


def literal(number: Number) -> Expression:
    """The expression of a plain number, such as the 2 in `2 × band`."""
    whole = Fraction(number).denominator == 1
    return Expression((str(number),), Closeness.ONE if whole else Closeness.PRODUCT)


def joined(
    left: Expression | None, sign: str, right: Expression | None, closeness: Closeness
) -> Expression | None:
    """Two expressions with a sign between them, in brackets where the sign asks for them.

    None where one of the two is not known.
    """
    if left is None or right is None:
        return None
    # What is taken away or divided by is bracketed already when it holds as closely as the sign.
    at_right = closeness + 1 if sign in {" - ", " / "} else closeness
    words = (*_held(left, closeness), sign, *_held(right, at_right))
    return Expression(words, closeness)


def called(function: str, inner: Expression | None) -> Expression | None:
    """A function of an expression: `√(...)`, `sin(...)`."""
    return inner and Expression((f"{function}(", *inner.words, ")"))


def ended(inner: Expression | None, ending: str, by: Expression | None = None) -> Expression | None:
    """An expression with an ending behind a comma: `, rounded up`, `, at least ` and an amount."""
    if inner is None:
        return None
    return Expression((*inner.words, f", {ending}", *(by.words if by else ())), Closeness.ENDED)


def _held(inner: Expression, closeness: int) -> tuple[Word, ...]:
    return inner.words if inner.closeness >= closeness else ("(", *inner.words, ")")


@dataclass(frozen=True, slots=True)
class Because:
    """What was found when two amounts were compared, and so decided how a value was made."""

    words: tuple[Word, ...]


_listening: list[list[Because]] = []


@contextmanager
def listening() -> Iterator[list[Because]]:
    """Collect what is compared meanwhile."""
    heard: list[Because] = []
    _listening.append(heard)
    try:
        yield heard
    finally:
        _listening.pop()


@contextmanager
def unheard() -> Iterator[None]:
    """Compare without telling anybody: in a search, or where the outcome is said otherwise."""
    _listening.append([])
    try:
        yield
    finally:
        _listening.pop()


def tell(words: Callable[[], tuple[Word, ...] | None]) -> None:
    """Tell whoever listens what was found."""
    if _listening and (found := words()) is not None:
        heard = Because(found)
        if heard not in _listening[-1]:
            _listening[-1].append(heard)


RELATIONS = {
    ("<", True): " is less than ",
    ("<", False): " is at least ",
    ("<=", True): " is at most ",
    ("<=", False): " is more than ",
    (">", True): " is more than ",
    (">", False): " is at most ",
    (">=", True): " is at least ",
    (">=", False): " is less than ",
}
"""How the outcome of a comparison is said."""


def compared(
    left: Expression | None, sign: str, right: Expression | None, *, outcome: bool
) -> bool:
    """Tell the outcome of a comparison of two named things; returns it."""
    if _listening and left is not None and right is not None:
        tell(lambda: (*left.words, RELATIONS[sign, outcome], *right.words))
    return outcome
