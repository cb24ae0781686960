"""HTML fragments: each part of a working as the page shows it.

`PARTS` is the one register of part names that a block's `show` may list. `PAGE_PARTS` belong to a
whole page and gather what all its blocks call for, each once.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import element
from handout_engine.pages.fragments.closing import cautions, sources
from handout_engine.pages.fragments.drawings import drawings, finished, layouts
from handout_engine.pages.fragments.gallery import gallery
from handout_engine.pages.fragments.library import all_sources, all_techniques, key_to_drawings
from handout_engine.pages.fragments.sewing import begin, finish, sample, steps
from handout_engine.pages.fragments.shopping import page_layout, shopping_list
from handout_engine.pages.fragments.sizes import sizes
from handout_engine.pages.fragments.tables import charts, cuts, marks, measures, numbers, supplies
from handout_engine.working.workings import Working

ONLY_WHEN_ASKED = ("begin", "finish", "sizes")
"""Parts that a block does not show by itself: what they say stands in others, or is long."""


@dataclass(frozen=True)
class Part:
    """A part of a working: the title it has among others, and what makes it.

    `make` takes the working, the tape and an identity that makes ids unique on the page; it
    returns None when there is nothing to show.
    """

    title: str
    help: str
    make: Callable[[Working, Tape, str], Element | None]


PARTS: dict[str, Part] = {
    "finished": Part("Finished", "The drawing of the finished thing.", finished),
    "measures": Part("Your measures", "The inputs that this page was made with.", measures),
    "supplies": Part("To buy and have ready", "Cloth to buy, and notions.", supplies),
    "sample": Part("Sew a sample first", "A trial, and what it must measure.", sample),
    "cuts": Part("Cut", "The cut list.", cuts),
    "layout": Part("Layout", "The pieces laid out on each cloth, to scale.", layouts),
    "marks": Part("Mark", "Lines to mark, from one edge.", marks),
    "chart": Part("Chart", "Tables of the technique's own, such as a marking chart.", charts),
    "drawing": Part("Drawings", "All drawings but that of the finished thing.", drawings),
    "steps": Part("Sew", "Numbered steps with checkpoints.", steps),
    "begin": Part("Sew, to begin with", "The steps until the work can be put by.", begin),
    "finish": Part("Sew, to the end", "The steps from where it was put by, numbered on.", finish),
    "sizes": Part("By size", "The values at each size of the page's garment.", sizes),
    "numbers": Part(
        "Where the numbers come from", "Every value: formula, numbers put in, basis.", numbers
    ),
}

PAGE_PARTS: dict[str, tuple[str, Callable[[Iterable[Working], Tape], Element]]] = {
    "supplies": ("What all blocks of the page need, by cloth, each cloth once.", shopping_list),
    "layout": ("All pieces of the page, laid out together on each cloth.", page_layout),
    "cautions": ("The cautions of all blocks of the page, each once.", cautions),
    "sources": ("The sources of all blocks of the page, each once.", sources),
}


LIBRARY_PARTS: dict[str, tuple[str, Callable[[], Element]]] = {
    "gallery": ("Every technique with a small drawing; for the index of all handouts.", gallery),
    "techniques": ("Every technique, by family.", all_techniques),
    "all-sources": ("Every source that any handout may cite.", all_sources),
    "key": ("The kinds of line and face that the drawings use.", key_to_drawings),
}


def block(working: Working, show: Iterable[str], tape: Tape, identity: str, name: str) -> Element:
    """The shown parts of one block; parts have titles when there are several."""
    shown = [key for key in PARTS if key in set(show)]
    made = [(PARTS[key], key, PARTS[key].make(working, tape, identity)) for key in shown]
    parts = [
        element(
            "section",
            element("p", part.title, class_="part-title") if len(shown) > 1 else None,
            tree,
            class_=f"part part-{key}",
        )
        for part, key, tree in made
        if tree is not None
    ]
    return element("div", *parts, class_="handout-block", data_block=name)


def page_parts(workings: Iterable[Working], show: Iterable[str], tape: Tape) -> Element:
    """The shown parts that belong to the whole page."""
    every = list(workings)
    parts = [PAGE_PARTS[key][1](every, tape) for key in PAGE_PARTS if key in set(show)]
    return element("div", *parts, class_="handout-block handout-page-part", data_block="page")


def library_parts(show: Iterable[str]) -> Element:
    """The shown parts that belong to the engine's whole library."""
    parts = [LIBRARY_PARTS[key][1]() for key in LIBRARY_PARTS if key in set(show)]
    return element("div", *parts, class_="handout-block handout-library", data_block="library")
