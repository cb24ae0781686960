"""Names for amounts: an input, a value or a figure of the trade, as formulas speak of it."""

from __future__ import annotations

from fractions import Fraction
from typing import Any, TypeVar, cast

from handout_engine.amounts.angles import Angle
from handout_engine.amounts.expressions import Word, of, tell
from handout_engine.amounts.lengths import ZERO, Area, Length, from_float
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.saying import Amount, Saying
from handout_engine.amounts.sources import GEOMETRY, GIVEN, Basis
from handout_engine.amounts.values import Sentence, Value

LONGEST_PART = 2**40
"""Fractions of a millimetre with longer denominators than this come from roots and angles."""


class Choice(str):
    """A choice that was made, which tells when a formula was decided by it."""

    __slots__ = ("asked",)
    asked: str

    def __eq__(self, other: object) -> bool:
        """Equal words are equal choices."""
        tell(lambda: (f"“{self.asked}” is “{self}”",))
        return str.__eq__(self, other)

    __hash__ = str.__hash__


def named(amount: Amount, value: Value) -> Any:  # noqa: ANN401 - of the kind that the amount is
    """An amount that knows its name, for the formulas in which it stands."""
    match amount:
        case Length():
            return Length(amount.mm, of(value))
        case Fraction():
            kind = Angle if value.saying is Saying.DEGREES else Ratio
            return kind(amount, of(value))
        case int():
            return Count(amount, of(value))
        case str():
            choice = Choice(amount)
            choice.asked = value.label
            return choice
        case (Length(), *_):
            return tuple(
                named(each, Value(f"{value.name}{place}", f"{value.label} {place}", each, GIVEN))
                for place, each in enumerate(cast("tuple[Amount, ...]", amount), 1)
            )
    return amount


def as_said(amount: object) -> Amount:
    """An amount as it is kept and said: exact, without its history.

    Lengths that went through a root or an angle are kept to a billionth of a millimetre. Raises
    TypeError for what is no amount.
    """
    match amount:
        case Length():
            long = amount.mm.denominator > LONGEST_PART
            return from_float(float(amount.mm)) if long else Length(amount.mm)
        case Count() | Ratio() | Angle():
            return amount.number
        case Choice():
            return str(amount)
        case tuple():
            return cast(Amount, tuple(as_said(each) for each in amount))
        case Area():
            raise TypeError("an area is no value by itself; say it as a length or a ratio")
    return cast(Amount, amount)


K = TypeVar("K", Length, Count, Ratio, Angle)


def constant(label: str, amount: K, basis: Basis) -> K:
    """A figure of the trade that formulas speak of by its label."""
    said = as_said(amount)
    saying = Saying.DEGREES if isinstance(amount, Angle) else Saying.NEAREST
    return cast(K, named(said, Value(label.replace(" ", "_"), label, said, basis, saying=saying)))


NOTHING = constant("nothing", ZERO, GEOMETRY)
"""The nothing of `at least nothing`."""


def spoken(words: tuple[Word, ...]) -> Sentence:
    """The words of an expression as a sentence; things of one name are kept apart."""
    template, parts = "", dict[str, Amount | Value]()
    for word in words:
        if isinstance(word, str):
            template += word.replace("{", "{{").replace("}", "}}")
            continue
        assert isinstance(word, Value)
        name = word.name
        while name in parts and parts[name] is not word and parts[name] != word:
            name += "_"
        parts[name] = word
        template += f"{{{name}}}"
    return Sentence(template, parts)
