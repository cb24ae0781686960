"""What a technique was given: its inputs as written, by usage, or from another block."""

from __future__ import annotations

from abc import ABC
from collections.abc import Mapping
from functools import cache, cached_property
from typing import Self

from handout_engine.amounts.inputs import Input, Later, declared_inputs
from handout_engine.amounts.naming import as_said, named
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.values import Value
from handout_engine.amounts.working_out import AtWork, Holder, at_work


class Asking(Holder, ABC):
    """Something with declared inputs. Two of one kind with equal inputs are equal."""

    def __init__(self, **written: object) -> None:
        """Take the inputs that are given; a plain number is read as what the input holds.

        Raises TypeError for a name that is no input.
        """
        super().__init__()
        declared = {each.name: each for each in declared_inputs(type(self))}
        if unknown := written.keys() - declared.keys():
            raise TypeError(f"{type(self).__name__} has no input {', '.join(sorted(unknown))}")
        self._defaults = dict(_usual_amounts(type(self)))
        self._amounts: dict[str, Amount | Later] = {**self._defaults, **_plainly(written)}
        self._read: dict[str, object] = {}
        for name, amount in self.usual.items():
            self._defaults[name] = as_said(amount)
            if self._amounts[name] is None:
                self._amounts[name] = self._defaults[name]
        self._read.clear()

    @property
    def usual(self) -> Mapping[str, object]:
        """Inputs that hang on another input, with what each is when it is left out."""
        return {}

    @property
    def waiting(self) -> tuple[str, ...]:
        """The names of its inputs that another block works out and that were not read yet."""
        return tuple(name for name, held in self._amounts.items() if isinstance(held, Later))

    def amount(self, name: str) -> Amount:
        """The amount of one of its inputs; raises RefusalError where another block has none."""
        held = self._amounts[name]
        if not isinstance(held, Later):
            return held
        with at_work(AtWork(self, name)):
            raw = held.find()
        (kind,) = (each.kind for each in declared_inputs(type(self)) if each.name == name)
        read = kind.read(raw)
        self._amounts[name] = read
        return read

    def given(self, asked: Input) -> object:
        """One of its inputs, named."""
        if asked.name not in self._read:
            amount = self.amount(asked.name)
            self._read[asked.name] = (
                None if amount is None else named(amount, self._input(asked, amount))
            )
        return self._read[asked.name]

    def noted(self, name: str) -> Amount:
        """An input as its working says it and as references take it."""
        return self.amount(name)

    def with_inputs(self, **written: object) -> Self:
        """The same technique with some of its inputs given anew."""
        own = {name: self.amount(name) for name in self.written}
        return type(self)(**{**own, **written})

    @cached_property
    def written(self) -> tuple[str, ...]:
        """The names of the inputs that are not left to their default."""
        return tuple(
            each.name
            for each in declared_inputs(type(self))
            if self.amount(each.name) != self._defaults[each.name]
        )

    @cached_property
    def inputs(self) -> Mapping[str, Value]:
        """Every declared input as a named value."""
        return {each.name: self.input_value(each) for each in declared_inputs(type(self))}

    def input_value(self, asked: Input) -> Value:
        """One declared input as a named value."""
        return self._input(asked, self.noted(asked.name))

    def _input(self, asked: Input, amount: Amount) -> Value:
        """An input as a value; a default rests on its own basis, what is written was given."""
        usual = self.amount(asked.name) == self._defaults[asked.name]
        return Value(
            asked.name,
            asked.label,
            amount,
            asked.basis if usual else GIVEN,
            saying=asked.kind.saying,
            group=asked.group,
        )

    def __eq__(self, other: object) -> bool:
        """Equal inputs make equal techniques."""
        if type(other) is not type(self):
            return NotImplemented
        assert isinstance(other, Asking)
        return self._every() == other._every()

    def __hash__(self) -> int:
        """By kind and inputs, so that what was worked out can be kept."""
        return hash((type(self), *self._every()))

    def _every(self) -> list[Amount]:
        return [self.amount(name) for name in self._amounts]


@cache
def _usual_amounts(technique: type) -> Mapping[str, Amount]:
    """What the inputs of a technique are by their declarations, read once."""
    return {
        each.name: None if each.default is None else each.kind.read(each.default)
        for each in declared_inputs(technique)
    }


def _plainly(written: Mapping[str, object]) -> dict[str, Amount | Later]:
    return {
        name: amount if isinstance(amount, Later) else as_said(amount)
        for name, amount in written.items()
    }
