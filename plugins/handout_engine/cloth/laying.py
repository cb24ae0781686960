"""Laying pieces on cloth: every piece with its grain, none over another, as short as can be found.

The cloth is looked at with its length running down: `left` counts from the first selvage (or from
the fold), `top` from the cut end. Pieces are not turned, since their grain fixes how they lie.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from math import ceil

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.cloth.packing import Box, pack
from handout_engine.geometry.points import snapped
from handout_engine.working.layouts import Item, Laid, Layout, Order

GRAIN_OF_UNITS = 10**9
"""Packing counts in whole billionths of a millimetre, so that places are exact."""

MOST_ITEMS = 1500


def lay(cloth: str, width: Length, items: Iterable[Item], order: Order) -> Layout:
    """Lay items on cloth of a usable width.

    Where an item asks for a fold, the cloth is folded lengthwise, and every other item cut through
    both layers, two at a time; unless less is used when all are cut whole from a single layer.
    Raises RefusalError when an item is wider than the cloth as it lies, or when there are too many.
    """
    items = list(items)
    if len(items) > MOST_ITEMS:
        raise RefusalError(f"{len(items)} pieces are too many to lay out; the most is {MOST_ITEMS}")
    lying_single = list(_in_pairs(_opened(item) for item in items))
    single = _laid(cloth, width, lying_single, order, folded=False)
    if not any(item.on_fold for item in items):
        return single
    try:
        folded = _laid(cloth, width, _through_two_layers(items), order, folded=True)
    except RefusalError:
        return single
    return min(folded, single, key=lambda layout: layout.used)


def _laid(
    cloth: str, width: Length, items: Sequence[Item], order: Order, *, folded: bool
) -> Layout:
    lying = width / 2 if folded else width
    for item in items:
        _refuse_too_wide(item, lying)
    room = int(lying.mm * GRAIN_OF_UNITS)
    boxes = [Box(min(_up(item.across), room), _up(item.along), item.on_fold) for item in items]
    packed = pack(boxes, room)
    laid = tuple(
        Laid(item, _length(left), _length(top))
        for item, (left, top) in zip(items, packed.places, strict=True)
    )
    return Layout(cloth, lying, _length(packed.height), laid, order, folded)


def _opened(item: Item) -> Item:
    """An item on the fold as the whole piece, its fold down the middle."""
    if not item.on_fold:
        return item
    half = float(item.across)
    right = tuple((snapped(half + x), y) for x, y in item.outline)
    left = tuple((snapped(half - x), y) for x, y in reversed(item.outline))
    return replace(
        item, across=item.across * 2, on_fold=False, opened=True, outline=(*right, *left)
    )


def _in_pairs(items: Iterable[Item]) -> Iterator[Item]:
    """Of each kind of pair every second one turned over; all other items as they are."""
    waiting: set[Item] = set()
    for item in items:
        if item.pair and item in waiting:
            waiting.remove(item)
            yield _turned_over(item)
            continue
        waiting.add(item)
        yield item


def _turned_over(item: Item) -> Item:
    """An item with its other side up: its mirror image, left and right exchanged."""
    across = float(item.across)
    outline = tuple((snapped(across - x), y) for x, y in item.outline)
    return replace(item, outline=outline, turned_over=not item.turned_over)


def _as_cut(item: Item) -> Item:
    """An item as it was before it was opened or turned over."""
    if item.turned_over:
        return _turned_over(item)
    if not item.opened:
        return item
    half = float(item.across) / 2
    right = item.outline[: len(item.outline) // 2]
    outline = tuple((snapped(x - half), y) for x, y in right)
    return replace(item, across=item.across / 2, on_fold=True, opened=False, outline=outline)


def together(layouts: Iterable[Layout]) -> list[Layout]:
    """Layouts of several blocks laid again, all items of the same cloth together.

    Items are numbered anew, since each block counts its own cut list.
    """
    groups: dict[tuple[str, Length, Order], list[Item]] = {}
    for layout in layouts:
        whole = layout.width * 2 if layout.folded else layout.width
        items = groups.setdefault((layout.cloth, whole, layout.order), [])
        for laid in layout.laid:
            items.extend(
                [_as_cut(laid.item)] * (1 if not layout.folded or laid.item.on_fold else 2)
            )
    return [
        lay(cloth, width, _numbered(items), order)
        for (cloth, width, order), items in groups.items()
    ]


def _numbered(items: Iterable[Item]) -> list[Item]:
    """Items with numbers that tell apart what differs in name or size."""
    numbers: dict[Item, int] = {}
    return [replace(item, number=numbers.setdefault(item, len(numbers) + 1)) for item in items]


def _through_two_layers(items: list[Item]) -> list[Item]:
    """Items on the fold as they are, of the others every second one, odd ones kept."""
    kept: list[Item] = []
    waiting: dict[tuple[str, Length, Length], bool] = {}
    for item in items:
        if item.on_fold:
            kept.append(item)
            continue
        key = (item.name, item.across, item.along)
        waiting[key] = not waiting.get(key, False)
        if waiting[key]:
            kept.append(item)
    return kept


def _refuse_too_wide(item: Item, width: Length) -> None:
    if item.across > width:
        raise RefusalError(
            f"{item.name} takes {TAPE.both(item.across)} across the cloth, which is only "
            f"{TAPE.both(width)} wide there; use wider cloth, or make the piece in parts",
            "cloth_width",
        )


def _up(length: Length) -> int:
    return ceil(length.mm * GRAIN_OF_UNITS)


def _length(units: int) -> Length:
    return Length(Fraction(units, GRAIN_OF_UNITS))
