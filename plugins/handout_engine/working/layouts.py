"""Pieces laid out on their cloth: what a layout is, and how much cloth is ordered by it.

The cloth is looked at with its length running down: `left` counts from the first selvage (or from
the fold), `top` from the cut end. Pieces are not turned, since their grain fixes how they lie.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from handout_engine.amounts.lengths import Length
from handout_engine.geometry.points import Point


@dataclass(frozen=True)
class Item:
    """One piece to lay: its number in the cut list, what it takes across the cloth and along it.

    On a fold, half of the piece is laid with its straight edge at the fold; `opened` out, the
    whole of it lies on a single layer. `outline` is how it lies in its rectangle, in mm; empty for
    a rectangle. Of a `pair` every second one is `turned_over` where the cloth lies single, so that
    it is the mirror image of the other; cut through two layers, a pair needs no turning.
    """

    name: str
    across: Length
    along: Length
    number: int = 1
    on_fold: bool = False
    opened: bool = False
    outline: tuple[Point, ...] = ()
    pair: bool = False
    turned_over: bool = False


@dataclass(frozen=True)
class Laid:
    """An item in its place."""

    item: Item
    left: Length
    top: Length


@dataclass(frozen=True)
class Order:
    """How a used length becomes an order: spare, shrinkage in length, and the shop's step."""

    spare: Length
    shrinkage: Fraction
    step: Length

    def to_buy(self, used: Length) -> Length:
        """What to order for a used length: spare and shrinkage added, up to the next step."""
        needed = (used + self.spare) / (1 - self.shrinkage)
        return self.step * ceil(needed / self.step)


@dataclass(frozen=True)
class Layout:
    """All items of one cloth laid out, and how the cloth is ordered.

    `width` is the usable width as it lies: half of it when the cloth is `folded` lengthwise.
    """

    cloth: str
    width: Length
    used: Length
    laid: tuple[Laid, ...]
    order: Order
    folded: bool = False
