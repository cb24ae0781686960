"""Techniques worked out from what is written, for tests that read like a handout."""

from __future__ import annotations

from handout_engine import register
from handout_engine.amounts.kinds import Raw
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError, RefusalsError
from handout_engine.amounts.saying import Tape
from handout_engine.working.technique import make
from handout_engine.working.workings import Working

INCHES = Tape(finest=32)


def work(technique: str, **written: Raw) -> Working:
    """The working of a technique with these inputs, the others left to their default."""
    return make(register.find(technique), written).work()


class Changed:
    """A technique with some of what it hands over replaced."""

    def __init__(self, made: object, parts: dict[str, object]) -> None:
        self.made = made
        self.__dict__.update(parts)

    def __getattr__(self, name: str) -> object:
        return getattr(self.made, name)


def changed(working: Working, **parts: object) -> Working:
    """The same working with some of its parts replaced, such as `supplies`."""
    return Working(Changed(working.made, parts))


def said(working: Working, name: str) -> str:
    """One named value in inches, to the nearest 1/32."""
    value = working.named[name]
    return INCHES.say(value.amount, value.saying)


def length(working: Working, name: str) -> Length:
    """One named value that is a length."""
    return working.named[name].length


def refusal(technique: str, **written: Raw) -> str:
    """The one sentence with which a technique refuses these inputs."""
    try:
        work(technique, **written)
    except RefusalsError as several:
        (only,) = several.refusals
        return only.message
    except RefusalError as one:
        return one.message
    raise AssertionError(f"{technique} accepted {written}")


def steps(working: Working, tape: Tape = INCHES) -> list[str]:
    """Every step and its checkpoint in the tape's first system."""
    return [
        step.text.first(tape) + (f" > {step.checkpoint.first(tape)}" if step.checkpoint else "")
        for step in working.steps
    ]
