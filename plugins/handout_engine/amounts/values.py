"""Named values, and the sentences that speak of them.

A sentence is a template with amounts in it. It stays a template until a tape says it, so that
one working can be read in inches or in metric, and so that a formula can be printed twice: in
words (`front strip + 2 × band`) and with its numbers put in (`1 1/2 in + 2 × 1/4 in`).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cache
from string import Formatter

from handout_engine.amounts.expressions import of
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.saying import Amount, Saying, Tape
from handout_engine.amounts.sources import Basis


@dataclass(frozen=True)
class Said:
    """One amount as it is said: in the first system, and beside it in the other."""

    first: str
    beside: str

    @property
    def both(self) -> str:
        """`2 1/4 in (57 mm)`."""
        return f"{self.first} ({self.beside})" if self.beside else self.first


@dataclass(frozen=True)
class Sentence:
    """A template (`{name}` for each part) and the amounts or named values it speaks of."""

    template: str
    parts: Mapping[str, Amount | Value] = field(default_factory=dict)

    def runs(self, tape: Tape) -> Iterator[str | Said]:
        """The sentence in order: plain words as `str`, each amount as `Said`."""
        for words, name in template_runs(self.template):
            if words:
                yield words
            if name:
                yield said(self.parts[name], tape)

    def text(self, tape: Tape) -> str:
        """The whole sentence, each length in both systems."""
        return "".join(run if isinstance(run, str) else run.both for run in self.runs(tape))

    def first(self, tape: Tape) -> str:
        """The whole sentence in the tape's first system only."""
        return "".join(run if isinstance(run, str) else run.first for run in self.runs(tape))

    def words(self) -> str:
        """The sentence with each named value's label in place of its amount."""
        return "".join(
            words + (_label(self.parts[name]) if name else "")
            for words, name in template_runs(self.template)
        )


@dataclass(frozen=True)
class Value:
    """A named result: its amount, how it was come by, and what that rests on.

    `formula` is None for what was given (an input); `group` then says what it is a measure of.
    `saying` is how it wants to be said. Only a `difference` may be below zero. `since` says what
    decided that it was made so.
    """

    name: str
    label: str
    amount: Amount
    basis: Basis
    formula: Sentence | None = field(default=None, repr=False)
    saying: Saying = Saying.NEAREST
    group: str = ""
    difference: bool = False
    since: Sentence | None = field(default=None, repr=False)

    @property
    def how(self) -> str:
        """Its formula in words, and why it was made so; empty where it has none."""
        if self.formula is None or self.formula.words() == self.label:
            return ""
        return self.formula.words() + (f", since {self.since.words()}" if self.since else "")

    @property
    def length(self) -> Length:
        """The amount by its name, where it is a length; raises TypeError where it is not."""
        if not isinstance(self.amount, Length):
            raise TypeError(f"{self.name} is not a length")
        return Length(self.amount.mm, of(self))

    @property
    def whole(self) -> int:
        """The amount, where it is a whole number; raises TypeError where it is not."""
        if not isinstance(self.amount, int):
            raise TypeError(f"{self.name} is not a whole number")
        return self.amount

    @property
    def ratio(self) -> Fraction:
        """The amount, where it is a plain ratio; raises TypeError where it is not."""
        if not isinstance(self.amount, Fraction):
            raise TypeError(f"{self.name} is not a ratio")
        return self.amount

    @property
    def mm(self) -> float:
        """The length in millimetres, for drawings."""
        return float(self.length)


@cache
def template_runs(template: str) -> tuple[tuple[str, str | None], ...]:
    """A template taken apart once: words, and the name of the part that follows them."""
    return tuple((words, name) for words, name, _, _ in Formatter().parse(template))


def said(part: Amount | Value, tape: Tape) -> Said:
    """An amount or a named value as the tape says it."""
    if isinstance(part, Value):
        return Said(tape.say(part.amount, part.saying), tape.beside(part.amount, part.saying))
    return Said(tape.say(part), tape.beside(part))


def _label(part: Amount | Value) -> str:
    return part.label if isinstance(part, Value) else str(part)


def sentence(template: str, **parts: Amount | Value) -> Sentence:
    """A sentence from a template and those of the parts that it names.

    Raises KeyError when the template names a part that is not given.
    """
    named = [name for _, name in template_runs(template) if name is not None]
    for name in named:
        if name not in parts:
            raise KeyError(f"the sentence {template!r} names {name!r}, which is not given")
    return Sentence(template, {name: parts[name] for name in named})
