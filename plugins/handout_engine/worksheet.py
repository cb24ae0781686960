"""The sheet a technique works on: it notes each value with its formula as it goes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields
from typing import TYPE_CHECKING

from handout_engine.cautions import Caution
from handout_engine.inputs import declared_inputs
from handout_engine.laying import Layout
from handout_engine.saying import Amount, Saying
from handout_engine.shortfalls import (
    check_all_said,
    refuse_less_than_nothing,
    refuse_too_short,
)
from handout_engine.sources import GEOMETRY, GIVEN, Basis
from handout_engine.values import Sentence, Value, sentence
from handout_engine.workings import Chart, Picture, Piece, Seam, Step, Supply, Working

if TYPE_CHECKING:
    from handout_engine.technique import Technique


@dataclass
class Worksheet:
    """Collects what a technique works out, in order, and hands it over as a `Working`.

    `inputs` holds every declared input as a named value, so that formulas can speak of it;
    `written` names those that are not left to their default.
    """

    technique: Technique
    inputs: dict[str, Value] = field(init=False)
    written: tuple[str, ...] = field(init=False)
    values: dict[str, Value] = field(default_factory=dict)
    pieces: list[Piece] = field(default_factory=list)
    seams: list[Seam] = field(default_factory=list)
    sample: list[Step] = field(default_factory=list)
    steps: list[Step] = field(default_factory=list)
    pictures: list[Picture] = field(default_factory=list)
    supplies: list[Supply] = field(default_factory=list)
    cautions: list[Caution] = field(default_factory=list)
    charts: list[Chart] = field(default_factory=list)
    layouts: list[Layout] = field(default_factory=list)
    _finishing: list[tuple[Value, Value]] = field(default_factory=list, init=False, repr=False)
    steps_put_by: int = 0

    def __post_init__(self) -> None:
        """Note the inputs first."""
        defaults = {each.name: each.default for each in fields(self.technique)}
        defaults.update(self.technique.usual)
        self.inputs = {
            each.name: Value(
                each.name,
                each.label,
                self.technique.noted(each.name),
                self._basis(each.name, each.basis, defaults),
                saying=each.kind.saying,
                group=each.group,
            )
            for each in declared_inputs(type(self.technique))
        }
        self.written = tuple(
            name for name in self.inputs if getattr(self.technique, name) != defaults[name]
        )

    def _basis(self, name: str, of_default: Basis, defaults: Mapping[str, object]) -> Basis:
        """A default rests on its own basis; anything else was given by the author or reader."""
        return of_default if getattr(self.technique, name) == defaults[name] else GIVEN

    def note(  # noqa: PLR0913 - a value has these parts, and each is named where it is noted
        self,
        name: str,
        label: str,
        amount: Amount,
        formula: str,
        *,
        basis: Basis = GEOMETRY,
        saying: Saying = Saying.NEAREST,
        finishes: str = "",
        **parts: Amount | Value,
    ) -> Value:
        """Note a value; `formula` speaks of `parts` and of any input or value noted before.

        An empty formula is for a figure that is chosen, not worked out; its basis says why. Less
        than nothing is refused, by the technique in its own words or else by `check_noted`; what
        may be less is noted by `note_difference`. Of a strip, `finishes` names the input or value
        that is its edge: a shorter one is refused likewise.
        """
        value = Value(name, label, amount, basis, self._formula(formula, parts), saying)
        if finishes:
            self._finishing.append((value, self[finishes]))
        return self._noted(value)

    def note_difference(
        self,
        name: str,
        label: str,
        amount: Amount,
        formula: str,
        *,
        saying: Saying = Saying.NEAREST,
        **parts: Amount | Value,
    ) -> Value:
        """Note by how much one thing differs from another, which may be less than nothing."""
        used = self._formula(formula, parts)
        return self._noted(Value(name, label, amount, GEOMETRY, used, saying, difference=True))

    def _formula(self, formula: str, parts: Mapping[str, Amount | Value]) -> Sentence | None:
        return sentence(formula, **{**self.inputs, **self.values, **parts}) if formula else None

    def _noted(self, value: Value) -> Value:
        self.values[value.name] = value
        return value

    def check_noted(self) -> None:
        """Refuse what was noted below zero, and strips that do not reach along their edge.

        It is done before cloth is laid out and again at the end, so that a technique can first say
        in its own words what is wrong. Raises RefusalError.
        """
        for value in self.values.values():
            refuse_less_than_nothing(value, self.written)
        for strip, edge in self._finishing:
            refuse_too_short(strip, edge, self.written)

    def __getitem__(self, name: str) -> Value:
        """An input or a value noted before."""
        return self.values[name] if name in self.values else self.inputs[name]

    def step(self, template: str, checkpoint: str = "", **parts: Amount | Value) -> None:
        """Add a numbered step, with a checkpoint where one is given."""
        known = {**self.inputs, **self.values, **parts}
        measured = sentence(checkpoint, **known) if checkpoint else None
        self.steps.append(Step(sentence(template, **known), measured))

    def put_by(self) -> None:
        """Say that after the steps so far the work can be put by until it is called for."""
        self.steps_put_by = len(self.steps)

    def have(self, *notions: str) -> None:
        """Add plain notions to the supplies, each one thing, so that a list names it once."""
        self.supplies.extend(Supply(each) for each in notions)

    def finish(self) -> Working:
        """The finished working; raises RefusalError where it would say less than nothing."""
        self.check_noted()
        working = Working(
            technique=self.technique.key(),
            title=self.technique.title,
            inputs=self.inputs,
            values=self.values,
            pieces=tuple(self.pieces),
            seams=tuple(self.seams),
            sample=tuple(self.sample),
            steps=tuple(self.steps),
            pictures=tuple(self.pictures),
            supplies=tuple(self.supplies),
            cautions=tuple(dict.fromkeys(self.cautions)),
            charts=tuple(self.charts),
            layouts=tuple(self.layouts),
            put_by=self.steps_put_by,
        )
        check_all_said(working, self.written)
        return working
