"""What every technique is: a frozen dataclass of declared inputs with a `work()`."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, TypeVar

from handout_engine.inputs import Input, declared_inputs
from handout_engine.kinds import Raw
from handout_engine.refusals import RefusalError, RefusalsError, nearest_name, quoted
from handout_engine.saying import Amount
from handout_engine.workings import Working


@dataclass(frozen=True, kw_only=True)
class Technique(ABC):
    """A way of making something, with the measurements it needs.

    `known_by` names the picture that shows what is its own, where the finished thing looks like
    that of another technique; left empty, it is the finished thing.
    """

    title: ClassVar[str]
    family: ClassVar[str]
    summary: ClassVar[str]
    known_by: ClassVar[str] = ""

    def __post_init__(self) -> None:
        """Fill in what was left out and hangs on another input."""
        for name, amount in self.usual.items():
            if getattr(self, name) is None:
                object.__setattr__(self, name, amount)

    @property
    def usual(self) -> Mapping[str, Amount]:
        """Inputs that hang on another input, with what each is when it is left out."""
        return {}

    def noted(self, name: str) -> Amount:
        """An input as its working says it and as references take it."""
        amount: Amount = getattr(self, name)
        return amount

    @classmethod
    def key(cls) -> str:
        """The name authors write: the module's name with hyphens."""
        return cls.__module__.rpartition(".")[2].replace("_", "-")

    @abstractmethod
    def work(self) -> Working:
        """Work everything out; raises RefusalError when the measures cannot be sewn."""


Made = TypeVar("Made", bound=Technique)


def make(technique: type[Made], written: Mapping[str, Raw]) -> Made:
    """Read the inputs that were written and make the technique with them.

    Raises RefusalsError with every unknown, unreadable or out-of-bounds input at once.
    """
    known = {each.name: each for each in declared_inputs(technique)}
    refusals: list[RefusalError] = []
    amounts = {}
    for name, raw in written.items():
        try:
            amounts[name] = _declared(known, name).kind.read(raw)
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
