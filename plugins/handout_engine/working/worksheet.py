"""The sheet a technique works on: it collects what is cut, sewn and drawn, in order."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from handout_engine.amounts.naming import as_said
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.values import Sentence, Value, sentence, template_runs
from handout_engine.drawing.scene import Scene
from handout_engine.working.workings import Collected, Picture, Step, Supply

if TYPE_CHECKING:
    from handout_engine.working.technique import Technique


@dataclass
class Worksheet(Collected):
    """Collects what a technique makes of its values; its sentences speak of them by name."""

    technique: Technique = field(kw_only=True)

    @property
    def inputs(self) -> Mapping[str, Value]:
        """Every declared input as a named value."""
        return self.technique.inputs

    def __getitem__(self, name: str) -> Value:
        """An input or a value; raises KeyError where there is none of that name."""
        found = self.technique.find(name)
        return self.inputs[name] if found is None else found

    def sentence(self, template: str, **parts: Amount | Value) -> Sentence:
        """A sentence that speaks of `parts`, and by name of inputs and values."""
        named = {name for _, name in template_runs(template) if name is not None}
        return sentence(template, **{name: self._part(name, parts) for name in named})

    def _part(self, name: str, parts: Mapping[str, Amount | Value]) -> Amount | Value:
        return (
            as_said(parts[name])
            if name in parts and not isinstance(parts[name], Value)
            else (parts[name] if name in parts else self[name])
        )

    def step(self, template: str, checkpoint: str = "", **parts: Amount | Value) -> None:
        """Add a numbered step, with a checkpoint where one is given."""
        self.steps.append(self._step(template, checkpoint, parts))

    def trial(self, template: str, checkpoint: str, **parts: Amount | Value) -> None:
        """Add a step of the sample, which is sewn before the good cloth is cut."""
        self.sample.append(self._step(template, checkpoint, parts))

    def _step(self, template: str, checkpoint: str, parts: Mapping[str, Amount | Value]) -> Step:
        measured = self.sentence(checkpoint, **parts) if checkpoint else None
        return Step(self.sentence(template, **parts), measured)

    def show(
        self,
        name: str,
        caption: str,
        scene: Scene,
        *,
        finished: bool = False,
        sheet: Scene | None = None,
    ) -> None:
        """Add a picture; `sheet` is what of it is printed at true scale."""
        self.pictures.append(Picture(name, self.sentence(caption), scene, finished, sheet))

    def put_by(self) -> None:
        """Say that after the steps so far the work can be put by until it is called for."""
        self.steps_put_by = len(self.steps)

    def have(self, *notions: str) -> None:
        """Add plain notions to the supplies, each one thing, so that a list names it once."""
        self.supplies.extend(Supply(each) for each in notions)
