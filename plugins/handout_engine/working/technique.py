"""What every technique is: declared inputs, values worked out from them, and what is made of those.

A technique declares its values as methods (`@value("facing strip, cut width")`); the body of each
is its formula. A value is worked out when it is asked for and once, so a reference to it, or a
table of sizes, costs no more than what it hangs on. Pieces, steps and pictures are collected on
worksheets, each kind when it is asked for.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Mapping
from functools import cached_property
from typing import ClassVar, TypeVar

from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import Input, Later, declared_inputs
from handout_engine.amounts.kinds import Raw
from handout_engine.amounts.refusals import RefusalError, RefusalsError, nearest_name, quoted
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.values import Value
from handout_engine.amounts.working_out import Group
from handout_engine.working.asking import Asking
from handout_engine.working.layouts import Layout
from handout_engine.working.shortfalls import (
    check_all_said,
    refuse_less_than_nothing,
    refuse_too_short,
)
from handout_engine.working.workings import Supply, Working
from handout_engine.working.worksheet import Worksheet


class Technique(Asking):
    """A way of making something, with the measurements it needs.

    `known_by` names the picture that shows what is its own, where the finished thing looks like
    that of another technique; left empty, it is the finished thing. Two techniques of one kind with
    equal inputs are equal.
    """

    title: ClassVar[str]
    family: ClassVar[str]
    summary: ClassVar[str]
    known_by: ClassVar[str] = ""

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

    def _collected(self, collect: Callable[[Worksheet], None]) -> Worksheet:
        sheet = Worksheet(technique=self)
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
        return self._collected(self.sew)

    @cached_property
    def drawing(self) -> Worksheet:
        """What is drawn."""
        return self._collected(self.draw)

    def found(self, name: str) -> Value | None:
        """An input or a value by its name, nothing else being worked out; None for neither."""
        for asked in declared_inputs(type(self)):
            if asked.name == name:
                return self.input_value(asked)
        return self.find(name)

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

    def finished_edge(self, name: str) -> Value:
        """The input or value of that name which a strip finishes."""
        return self.inputs[name] if name in self.inputs else super().finished_edge(name)

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
        check_all_said(working, self.written)
        return working


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
