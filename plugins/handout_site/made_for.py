"""Readers of what a scenario makes things for: a size, measures, inputs, and a choice of words."""

from __future__ import annotations

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import Kind
from handout_engine.amounts.refusals import RefusalError, nearest_name, quoted
from handout_engine.bodies.measures import LENGTHS, kinds_of_measures
from handout_engine.register import find, keys
from handout_site.mappings import Plain


def read_size(value: Plain) -> str:
    """A size of the body table; raises RefusalError."""
    return read_choice(value, tuple(LENGTHS))


def read_measures(value: Plain) -> dict[str, str]:
    """Body measures by their names; raises RefusalError for one that is no baby's."""
    if not isinstance(value, dict) or not all(isinstance(each, str) for each in value.values()):
        raise RefusalError("write measures here, such as head: 44 cm")
    for name, text in value.items():
        if name not in kinds_of_measures():
            hint = nearest_name(name, kinds_of_measures())
            raise RefusalError(f'there is no measure "{quoted(name)}"{hint}', name)
        try:
            kinds_of_measures()[name].read(text)
        except RefusalError as refusal:
            raise RefusalError(f"{name}: {refusal.message}", name) from None
    return dict(value)


def read_choice(value: Plain, choices: tuple[str, ...]) -> str:
    """One of several words; raises RefusalError."""
    if not isinstance(value, str) or value not in choices:
        shown = f'"{quoted(value)}"' if isinstance(value, str) else "this"
        raise RefusalError(f"{shown} is not one of {', '.join(choices)}")
    return value


def read_inputs(value: Plain) -> dict[str, str]:
    """Inputs of techniques and garments by their names; raises RefusalError."""
    if not isinstance(value, dict) or not all(isinstance(each, str) for each in value.values()):
        raise RefusalError("write inputs here, such as order_step: 10 cm")
    every = [each for key in keys() for each in declared_inputs(find(key))]
    names = {each.name for each in every}
    for name, text in value.items():
        if name not in names:
            hint = nearest_name(name, names)
            raise RefusalError(f'there is no input "{quoted(name)}"{hint}', name)
        _refuse_input(name, text, [each.kind for each in every if each.name == name])
    return {name: str(each) for name, each in value.items()}


def _refuse_input(name: str, text: str, kinds: list[Kind]) -> None:
    """Refuse a default that none of the techniques that have such an input could take."""
    refusals = []
    for kind in kinds:
        try:
            kind.read(text)
        except RefusalError as refusal:
            refusals.append(refusal.about(name))
    if len(refusals) == len(kinds):
        raise refusals[0]
