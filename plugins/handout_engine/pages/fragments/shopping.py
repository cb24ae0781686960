"""One shopping list and one layout for a whole page: the pieces of all blocks, by cloth."""

from __future__ import annotations

from collections.abc import Iterable
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Amount, Saying, Tape
from handout_engine.amounts.sources import LAYOUT
from handout_engine.amounts.values import Sentence, Value
from handout_engine.drawing.markup import Child, element
from handout_engine.pages.fragments.drawings import layout_figures
from handout_engine.pages.fragments.words import amount, phrase
from handout_engine.pages.kits import Need, Notion, kit, layouts
from handout_engine.working.workings import Working


def page_layout(workings: Iterable[Working], tape: Tape) -> Element:
    """The pieces of all workings laid out together, a drawing for each cloth."""
    figures = layout_figures(layouts(workings), tape, "page")
    return element("div", figures, class_="page-layout")


def shopping_list(workings: Iterable[Working], tape: Tape) -> Element:
    """What to buy for all workings: each cloth once, what is sold by length or counted, notions."""
    needed = kit(workings, tape.first)
    needs = [*needed.cloths, *needed.lengths, *needed.counts]
    items = [
        *(element("li", each.name, ": ", bought(each, tape), *kind(each, tape)) for each in needs),
        *(element("li", *notion(each, tape)) for each in needed.notions),
    ]
    return element("ul", *items, class_="supplies")


def bought(need: Need, tape: Tape) -> Element:
    """How much to buy of a thing, as it is sold."""
    return amount(as_sold(need.name, need.amount), tape)


def as_sold(name: str, bought: Amount) -> Value:
    """An amount to buy, which is said in what the thing is sold by."""
    return Value("to_buy", name, bought, LAYOUT, saying=Saying.YARDAGE)


def kind(need: Need, tape: Tape) -> list[Child]:
    """How wide a cloth is, or what else tells one kind of a thing from another."""
    if need.width is not None:
        return [" (", amount(need.width, tape), " between the selvages)"]
    return remark(need.note, tape)


def notion(each: Notion, tape: Tape) -> list[Child]:
    """A notion with its size or number, and what there is to know of it."""
    size: list[Child] = [": ", amount(each.size, tape)] if each.size is not None else []
    return [each.name, *size, *remark(each.note, tape)]


def remark(note: Sentence | None, tape: Tape) -> list[Child]:
    """What there is to know of a thing, behind its name."""
    return [] if note is None else [", ", *phrase(note, tape)]
