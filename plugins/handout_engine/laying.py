"""Laying pieces on cloth: every piece with its grain, none over another, as little as can be."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.lengths import ZERO, Length
from handout_engine.refusals import RefusalError
from handout_engine.saying import Tape


@dataclass(frozen=True)
class Item:
    """One piece to lay: what it takes across the cloth and along it."""

    name: str
    across: Length
    along: Length


@dataclass(frozen=True)
class Laid:
    """An item in its place: `left` from the first selvage, `top` from the cut end."""

    item: Item
    left: Length
    top: Length


@dataclass(frozen=True)
class Layout:
    """All items of one cloth laid out: its usable width and the length used."""

    cloth: str
    width: Length
    used: Length
    laid: tuple[Laid, ...]


def lay(cloth: str, width: Length, items: Iterable[Item]) -> Layout:
    """Lay items in rows, the longest along the cloth first.

    Raises RefusalError when an item is wider than the cloth.
    """
    laid: list[Laid] = []
    left, top, row = ZERO, ZERO, ZERO
    for item in sorted(items, key=lambda item: (-item.along.mm, -item.across.mm, item.name)):
        if item.across > width:
            tape = Tape(finest=32)
            raise RefusalError(
                f"{item.name} takes {tape.both(item.across)} across the cloth, which is only "
                f"{tape.both(width)} wide between its selvages; use wider cloth or join it",
                "cloth_width",
            )
        if left + item.across > width:
            left, top, row = ZERO, top + row, ZERO
        laid.append(Laid(item, left, top))
        left, row = left + item.across, max(row, item.along)
    return Layout(cloth, width, top + row, tuple(laid))
