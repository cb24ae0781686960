"""Whom a page is made to: a size, or a body length of its own, and a baby who was measured."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from handout_engine.amounts.lengths import Length
from handout_engine.bodies.measures import BODY_LENGTH, MEASURES, SIZE, fit_in_words, size_of
from handout_engine.pages.page import Page
from handout_engine.pages.sized import is_followed


@dataclass(frozen=True)
class MadeTo:
    """The body length, and whether any other measure is a baby's own instead of the table's."""

    length: Length
    measured: bool = False

    @property
    def size(self) -> str:
        """The size that is named by this very length; empty between two."""
        return size_of(self.length)

    @property
    def words(self) -> str:
        """As a title block says it: `Size 74, her own measures`."""
        fit = fit_in_words(self.length).capitalize()
        return f"{fit}, her own measures" if self.measured else fit


def made_to(page: Page) -> MadeTo | None:
    """Whom the garment of a page is made to; None where there is none, or it has a problem."""
    working = page.workings.get(page.garment.name) if page.garment else None
    if working is None:
        return None
    return MadeTo(working.inputs[BODY_LENGTH].length, any(_own_measures(page)))


def _own_measures(page: Page) -> Iterator[str]:
    """The body measures that are written for the page's garment, and for those that follow it."""
    for block in page.blocks:
        own_size = SIZE in block.fields and not is_followed(block, SIZE)
        if not block.is_garment or (own_size and block is not page.garment):
            continue
        for name in MEASURES:
            if name in block.fields and not is_followed(block, name):
                yield name
