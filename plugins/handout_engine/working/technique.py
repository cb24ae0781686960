"""What every technique is: declared inputs, values worked out from them, and what is made of those.

A technique declares its values as methods (`@value("facing strip, cut width")`); the body of each
is its formula. A value is worked out when it is asked for and once, so a reference to it, or a
table of sizes, costs no more than what it hangs on. Pieces, steps and pictures are collected on
worksheets, each kind when it is asked for.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Mapping
from functools import cache, cached_property
from typing import ClassVar, Self, TypeVar

from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import Input, Later, declared_inputs
from handout_engine.amounts.kinds import Raw
from handout_engine.amounts.naming import as_said, named
from handout_engine.amounts.refusals import RefusalError, RefusalsError, nearest_name, quoted
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.values import Value
from handout_engine.amounts.working_out import AtWork, Group, Holder, at_work
from handout_engine.working.layouts import Layout
from handout_engine.working.shortfalls import (
    check_all_said,
    refuse_less_than_nothing,
    refuse_too_short,
)
from handout_engine.working.workings import Supply, Working
from handout_engine.working.worksheet import Worksheet


class Technique(Holder, ABC):
    """A way of making something, with the measurements it needs.

    `known_by` names the picture that shows what is its own, where the finished thing looks like
    that of another technique; left empty, it is the finished thing. Two techniques of one kind with
    equal inputs are equal.
    """

    title: ClassVar[str]
    family: ClassVar[str]
    summary: ClassVar[str]
    known_by: ClassVar[str] = ""

    def __init__(self, **written: object) -> None:
        """Take the inputs that are given; a plain number is read as what the input holds.

        Raises TypeError for a name that is no input.
        """
        super().__init__()
        declared = {each.name: each for each in declared_inputs(type(self))}
        if unknown := written.keys() - declared.keys():
            raise TypeError(f"{self.key()} has no input {', '.join(sorted(unknown))}")
        self._defaults = dict(_usual_amounts(type(self)))
        self._amounts: dict[str, Amount | Later] = {**self._defaults, **_plainly(written)}
        self._inputs: dict[str, Value] = {}
        self._read: dict[str, object] = {}
        self._sheets: list[Worksheet] = []
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
        assert isinstance(other, Technique)
        return self._every() == other._every()

    def __hash__(self) -> int:
        """By kind and inputs, so that what was worked out can be kept."""
        return hash((type(self), *self._every()))

    def _every(self) -> list[Amount]:
        return [self.amount(name) for name in self._amounts]

    @classmethod
    def key(cls) -> str:
        """The name authors write: the module's name with hyphens."""
        return cls.__module__.rpartition(".")[2].replace("_", "-")

    def cut(self, sheet: Worksheet) -> None:
        """Put the pieces, their seams, layouts and charts on the worksheet."""

    def sew(self, sheet: Worksheet) -> None:
        """Put the supplies, cautions, sample and steps on the worksheet."""

    def draw(self, sheet: Worksheet) -> None:
        """Put the pictures on the worksheet."""

    def whole(self) -> Worksheet | None:
        """One worksheet with everything on it, where parts are not worked out one by one."""
        return None

    @cached_property
    def _whole(self) -> Worksheet | None:
        return self.whole()

    def _collected(self, collect: Callable[[Worksheet], None]) -> Worksheet:
        if self._whole is not None:
            return self._whole
        sheet = Worksheet(technique=self)
        self._sheets.append(sheet)
        with unheard():
            collect(sheet)
        return sheet

    @cached_property
    def cutting(self) -> Worksheet:
        """What is cut."""
        return self._collected(self.cut)

    @cached_property
    def sewing(self) -> Worksheet:
        """What is sewn."""
        _ = self.cutting
        return self._collected(self.sew)

    @cached_property
    def drawing(self) -> Worksheet:
        """What is drawn."""
        _ = self.sewing
        return self._collected(self.draw)

    def find(self, name: str) -> Value | None:
        """A value by its whole name, worked out or noted on a worksheet; None for no such value."""
        noted = (sheet.values[name] for sheet in self._sheets if name in sheet.values)
        return super().find(name) or next(noted, None)

    def found(self, name: str) -> Value | None:
        """An input or a value by its name, nothing else being worked out; None for neither."""
        for asked in declared_inputs(type(self)):
            if asked.name == name:
                return self.input_value(asked)
        return self.find(name) or self.values.get(name)

    @property
    def layouts(self) -> list[Layout]:
        """How the pieces lie on each cloth."""
        bought = [each.layout for each in self.made_groups() if isinstance(each, Bought)]
        return [*(laid for laid in bought if laid is not None), *self.cutting.layouts]

    @property
    def supplies(self) -> list[Supply]:
        """What to buy and have ready: what is bought by the length first."""
        bought = [each.supply for each in self.made_groups() if isinstance(each, Bought)]
        return [*bought, *self.sewing.supplies]

    @property
    def values(self) -> Mapping[str, Value]:
        """All values by name, each after what it needs; raises RefusalError."""
        return {**super().values, **self.cutting.values, **self.sewing.values}

    def finished_edge(self, name: str) -> Value:
        """The input or value of that name which a strip finishes."""
        return self.inputs[name] if name in self.inputs else super().finished_edge(name)

    def check_noted(self, sheet: Worksheet) -> None:
        """Refuse what is below nothing, and strips that do not reach along their edge."""
        for value in sheet.values.values():
            refuse_less_than_nothing(value, self.written)
        for strip, edge in sheet.finishing:
            refuse_too_short(strip, edge, self.written)

    def valued(self) -> Working:
        """The working with its values checked, nothing being sewn or drawn; raises RefusalError."""
        self.look()
        for declared in self.declared.values():
            if (value := self.result(declared).value) is not None:
                refuse_less_than_nothing(value, self.written)
        for strip, edge in self.finishing():
            refuse_too_short(strip, edge, self.written)
        for value in self.values.values():
            refuse_less_than_nothing(value, self.written)
        return Working(self)

    def work(self) -> Working:
        """The working, checked as a whole; raises RefusalError when it cannot be sewn.

        Its pictures are drawn when they are asked for.
        """
        working = self.valued()
        self.check_noted(self.cutting)
        self.check_noted(self.sewing)
        check_all_said(working, self.written)
        return working


@cache
def _usual_amounts(technique: type[Technique]) -> Mapping[str, Amount]:
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


class Bought(Group, ABC):
    """Something that is bought by the length; pieces may be laid out on it."""

    @property
    def layout(self) -> Layout | None:
        """How the pieces lie on it; raises RefusalError where they do not fit."""
        return None

    @property
    @abstractmethod
    def supply(self) -> Supply:
        """What to buy of it."""


Made = TypeVar("Made", bound=Technique)


def make(technique: type[Made], written: Mapping[str, Raw | Later]) -> Made:
    """Read the inputs that were written and make the technique with them.

    What another block works out is read when it is first needed.

    Raises RefusalsError with every unknown, unreadable or out-of-bounds input at once.
    """
    known = {each.name: each for each in declared_inputs(technique)}
    refusals: list[RefusalError] = []
    amounts: dict[str, Amount | Later] = {}
    for name, raw in written.items():
        try:
            kind = _declared(known, name).kind
            amounts[name] = raw if isinstance(raw, Later) else kind.read(raw)
        except RefusalError as refusal:
            refusals.append(refusal if refusal.field else refusal.about(name))
    if refusals:
        raise RefusalsError(refusals)
    return technique(**amounts)


def _declared(known: Mapping[str, Input], name: str) -> Input:
    if name not in known:
        shown = quoted(name)
        raise RefusalError(f'there is no input "{shown}"{nearest_name(name, known)}', shown)
    return known[name]
