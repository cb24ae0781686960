"""One shopping list and one layout for a whole page: the pieces of all blocks, by cloth."""

from __future__ import annotations

from collections.abc import Iterable
from xml.etree.ElementTree import Element

from handout_engine.fragments.drawings import layout_figures
from handout_engine.fragments.words import amount
from handout_engine.laying import Layout, together
from handout_engine.markup import element
from handout_engine.saying import Saying, Tape
from handout_engine.sources import LAYOUT
from handout_engine.values import Value
from handout_engine.workings import Working


def page_layout(workings: Iterable[Working], tape: Tape) -> Element:
    """The pieces of all workings laid out together, a drawing for each cloth."""
    figures = layout_figures(_layouts(workings), tape, "page")
    return element("div", figures, class_="page-layout")


def shopping_list(workings: Iterable[Working], tape: Tape) -> Element:
    """What to buy for all workings: each cloth once, then the notions."""
    every = list(workings)
    cloths = [_cloth(layout, tape) for layout in _layouts(every)]
    notions = dict.fromkeys(
        supply.name for each in every for supply in each.supplies if supply.amount is None
    )
    return element("ul", *cloths, *(element("li", name) for name in notions), class_="supplies")


def _cloth(layout: Layout, tape: Tape) -> Element:
    width = layout.width * 2 if layout.folded else layout.width
    buy = Value(
        "cloth_to_buy",
        layout.cloth,
        layout.order.to_buy(layout.used),
        LAYOUT,
        saying=Saying.YARDAGE,
    )
    between = amount(width, tape)
    return element(
        "li", layout.cloth, ": ", amount(buy, tape), " (", between, " between the selvages)"
    )


def _layouts(workings: Iterable[Working]) -> list[Layout]:
    return together(layout for working in workings for layout in working.layouts)
