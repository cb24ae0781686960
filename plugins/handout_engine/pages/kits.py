"""What a set of workings needs to be bought: for a page, for a seat of a course, for a class.

Each cloth stands once, laid out once for all workings together; what is sold by length and what is
counted is summed by name; a plain notion stands once, however often it is named. Every kit is
measured off by itself, so what it takes of a thing is rounded up to whole steps of how that is
sold before kits are summed: a class needs exactly the sum of its kits.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import chain
from math import ceil

from handout_engine.amounts.lengths import ZERO, Length, inches, millimetres
from handout_engine.amounts.saying import System
from handout_engine.amounts.values import Sentence, Value
from handout_engine.cloth.laying import together
from handout_engine.working.layouts import Layout
from handout_engine.working.workings import Supply, Working

SOLD_IN: Mapping[System, Length] = {"inches": inches(36) / 8, "metric": millimetres(10)}
"""What is sold by length is measured off in eighths of a yard, or in centimetres."""


@dataclass(frozen=True)
class Need:
    """How much to buy of one thing: so many whole steps of the length it is sold in.

    What is counted has no step. A cloth has a `width`, what is usable of it between the selvages;
    `note` says what kind of a thing it is.
    """

    name: str
    steps: int
    step: Length | None = None
    width: Length | None = None
    note: Sentence | None = None

    @property
    def amount(self) -> Length | int:
        """What is bought of it."""
        return self.steps if self.step is None else self.step * self.steps

    @property
    def kind(self) -> Hashable:
        """What two needs have in common that are bought as one."""
        return self.name, self.step, self.width, _exact(self.note)


@dataclass(frozen=True)
class Notion:
    """Something to have at hand; `size` is its size or number, where it has one."""

    name: str
    size: Value | None = None
    note: Sentence | None = None

    @property
    def kind(self) -> Hashable:
        """What two notions have in common that are the same."""
        return self.name, self.size and self.size.amount


@dataclass(frozen=True)
class Kit:
    """All that is bought for one set of workings: cloths, what is sold by length, what is counted,
    and plain notions."""

    cloths: tuple[Need, ...] = ()
    lengths: tuple[Need, ...] = ()
    counts: tuple[Need, ...] = ()
    notions: tuple[Notion, ...] = ()


@dataclass(frozen=True)
class Spares:
    """What a class buys beyond its kits, as a share of each total."""

    cloth: Fraction = Fraction(0)
    lengths: Fraction = Fraction(0)
    counts: Fraction = Fraction(0)


@dataclass(frozen=True)
class Line:
    """One thing for a class: what all kits take of it, how many kits do, and the spare."""

    need: Need
    kits: int
    spare: Need

    @property
    def to_buy(self) -> Need:
        """What the kits take and the spare together."""
        return replace(self.need, steps=self.need.steps + self.spare.steps)


@dataclass(frozen=True)
class Total:
    """All that is bought for a class; each notion with the number of kits that want it."""

    cloths: tuple[Line, ...] = ()
    lengths: tuple[Line, ...] = ()
    counts: tuple[Line, ...] = ()
    notions: tuple[tuple[Notion, int], ...] = ()


def kit(
    workings: Iterable[Working], system: System, cloths: Mapping[str, str] | None = None
) -> Kit:
    """What the workings of one page need together, in steps as things are sold in `system`.

    `cloths` gives the workings' cloths other names; two that are given one name are laid out as
    one cloth.
    """
    return kit_of_pages([list(workings)], system, cloths)


def kit_of_pages(
    pages: Iterable[Iterable[Working]], system: System, cloths: Mapping[str, str] | None = None
) -> Kit:
    """What the workings of several pages need together, as a kit for one of them."""
    every = [list(page) for page in pages]
    supplies = [supply for page in every for supply in _bought(page)]
    notions = [Notion(each.name, each.size, each.note) for each in supplies if each.amount is None]
    return Kit(
        merged(_cloth(layout) for layout in layouts(chain.from_iterable(every), cloths)),
        _by_length(supplies, SOLD_IN[system]),
        merged(_counted(supplies)),
        tuple(_first_of_each(notions)),
    )


def _bought(page: Sequence[Working]) -> Iterable[Supply]:
    """The supplies of one page but its cloths, and but what another of its blocks makes."""
    laid = {layout.cloth for each in page for layout in each.layouts}
    made = {each.technique for each in page}
    for supply in (supply for each in page for supply in each.supplies):
        if supply.name not in laid and made.isdisjoint(supply.unless):
            yield supply


def layouts(workings: Iterable[Working], cloths: Mapping[str, str] | None = None) -> list[Layout]:
    """The layouts of all workings, those of the same cloth laid out as one."""
    named = cloths or {}
    return together(
        replace(layout, cloth=named.get(layout.cloth, layout.cloth))
        for working in workings
        for layout in working.layouts
    )


def total(kits: Iterable[Kit], spares: Spares = Spares()) -> Total:
    """What a class needs: the sum of its kits, and the spare of each thing in whole steps."""
    every = list(kits)
    wanted = Counter(notion.kind for each in every for notion in each.notions)
    notions = _first_of_each(notion for each in every for notion in each.notions)
    return Total(
        _lines([each.cloths for each in every], spares.cloth),
        _lines([each.lengths for each in every], spares.lengths),
        _lines([each.counts for each in every], spares.counts),
        tuple((notion, wanted[notion.kind]) for notion in notions),
    )


def merged(needs: Iterable[Need]) -> tuple[Need, ...]:
    """Needs of the same kind as one, in the order in which they first come."""
    found: dict[Hashable, Need] = {}
    for need in needs:
        before = found.get(need.kind, replace(need, steps=0))
        found[need.kind] = replace(before, steps=before.steps + need.steps)
    return tuple(found.values())


def _lines(kits: list[tuple[Need, ...]], share: Fraction) -> tuple[Line, ...]:
    taking = Counter(need.kind for needs in kits for need in needs)
    return tuple(
        Line(need, taking[need.kind], replace(need, steps=ceil(need.steps * share)))
        for need in merged(need for needs in kits for need in needs)
    )


def _cloth(layout: Layout) -> Need:
    """A cloth as it is ordered, which is always in whole steps."""
    width = layout.width * 2 if layout.folded else layout.width
    step = layout.order.step
    return Need(layout.cloth, int(layout.order.to_buy(layout.used) / step), step, width)


def _by_length(supplies: Iterable[Supply], step: Length) -> tuple[Need, ...]:
    """What is sold by length, all of a kind summed before it is rounded up."""
    exact: dict[Hashable, Length] = {}
    kinds: dict[Hashable, Need] = {}
    for each in supplies:
        if each.amount is not None and isinstance(each.amount.amount, Length):
            need = Need(each.name, 0, step, note=each.note)
            kinds.setdefault(need.kind, need)
            exact[need.kind] = exact.get(need.kind, ZERO) + each.amount.amount
    return tuple(replace(need, steps=ceil(exact[kind] / step)) for kind, need in kinds.items())


def _counted(supplies: Iterable[Supply]) -> Iterable[Need]:
    for each in supplies:
        if each.amount is not None and isinstance(each.amount.amount, int):
            yield Need(each.name, each.amount.amount, note=each.note)


def _first_of_each(notions: Iterable[Notion]) -> Iterable[Notion]:
    found: dict[Hashable, Notion] = {}
    for notion in notions:
        found.setdefault(notion.kind, notion)
    return found.values()


def _exact(note: Sentence | None) -> Hashable:
    """A note as its words and the amounts it speaks of, to compare."""
    if note is None:
        return None
    parts = (each.amount if isinstance(each, Value) else each for each in note.parts.values())
    return note.template, tuple(parts)
