"""The steps of a working, with their checkpoints."""

from __future__ import annotations

from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import element
from handout_engine.pages.fragments.words import phrase
from handout_engine.working.workings import Step, Working


def steps(working: Working, tape: Tape, identity: str) -> Element:
    """The numbered steps in sewing order."""
    del identity
    return element("ol", *(_step(step, tape) for step in working.steps), class_="steps")


def begin(working: Working, tape: Tape, identity: str) -> Element | None:
    """The steps until the work can be put by; None where it is sewn in one go."""
    del identity
    if not working.put_by:
        return None
    first = working.steps[: working.put_by]
    return element("ol", *(_step(step, tape) for step in first), class_="steps")


def finish(working: Working, tape: Tape, identity: str) -> Element | None:
    """The steps from where it was put by, numbered on; None where it is sewn in one go."""
    del identity
    if not working.put_by:
        return None
    done = working.put_by
    rest = [_step(step, tape) for step in working.steps[done:]]
    # The style sheet counts the steps itself, and does not know where the list starts.
    counted = f"counter-reset: step {done}"
    return element("ol", *rest, class_="steps", start=str(done + 1), style=counted)


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
