"""The trial of every binding, whatever it is sewn to."""

from __future__ import annotations

from handout_engine.amounts.values import Value, sentence
from handout_engine.working.workings import Step


def bound_sample(template: str, width: Value, binding: Value) -> Step:
    """A bound scrap, which shows whether a strip of this width comes round."""
    return Step(
        sentence(template, width=width),
        sentence(
            "the binding is {binding} wide at the front and reaches the stitching at the back. "
            "If it falls short, add what is missing to the turn of cloth.",
            binding=binding,
        ),
    )
