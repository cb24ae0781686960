"""The steps of a working, with their checkpoints."""

from __future__ import annotations

from xml.etree.ElementTree import Element

from handout_engine.fragments.words import phrase
from handout_engine.markup import element
from handout_engine.saying import Tape
from handout_engine.workings import Step, Working


def steps(working: Working, tape: Tape, identity: str) -> Element:
    """The numbered steps in sewing order."""
    del identity
    return element("ol", *(_step(step, tape) for step in working.steps), class_="steps")


def sample(working: Working, tape: Tape, identity: str) -> Element | None:
    """The sample to sew before the good cloth is cut."""
    del identity
    if not working.sample:
        return None
    return element("ul", *(_step(step, tape) for step in working.sample), class_="sample")


def _step(step: Step, tape: Tape) -> Element:
    made = element("li", *phrase(step.text, tape))
    if step.checkpoint is not None:
        words = element("strong", "Measure now:")
        measured = phrase(step.checkpoint, tape)
        made.append(element("p", words, " ", *measured, class_="checkpoint"))
    return made
