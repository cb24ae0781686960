"""What has been worked out before, kept by what it was worked out from.

A reader changes one block of a page at a time: the others, and their drawings, are taken from
here, so that she need not wait for them. A technique is a frozen set of amounts and its work
depends on nothing else, so equal ones share a result.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import html
from handout_engine.pages.fragments import block
from handout_engine.paper.sheets import Sheet, sheets
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Working

Column = tuple[str, Technique | str]
"""A size, and the technique there, or why it cannot be sewn there."""


@lru_cache(maxsize=120)
def working(technique: Technique) -> Working:
    """The working of a technique; raises RefusalError when it cannot be sewn."""
    return technique.work()


@lru_cache(maxsize=1000)
def valued(technique: Technique) -> Working:
    """The working of a technique of which only values are asked for; raises RefusalError."""
    return technique.valued()


@lru_cache(maxsize=100)
def fragment(  # noqa: PLR0913, PLR0917 - all that a fragment hangs on
    technique: Technique,
    show: tuple[str, ...],
    tape: Tape,
    number: int,
    name: str,
    columns: tuple[Column, ...] = (),
) -> str:
    """The HTML of the shown parts of a technique, as the block with that number on its page.

    `columns` are the same at other sizes, for the part that shows them side by side.

    `data-place` tells the reader's browser which block's place it is.
    """
    graded = tuple(
        (size, each if isinstance(each, str) else valued(each)) for size, each in columns
    )
    made = block(replace(working(technique), graded=graded), show, tape, f"b{number}-{name}", name)
    made.set("data-place", str(number))
    return html(made)


@lru_cache(maxsize=50)
def true_scale_sheets(technique: Technique, tape: Tape) -> Sequence[Sheet]:
    """The true-scale sheets of a technique."""
    return sheets(working(technique), tape)
