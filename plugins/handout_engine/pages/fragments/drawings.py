"""The drawings of a working as figures."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import sentence
from handout_engine.cloth.layout_drawing import layout_scene
from handout_engine.drawing.markup import element
from handout_engine.drawing.svg import svg
from handout_engine.pages.fragments.words import phrase, sheet_link
from handout_engine.paper.sheets import picture_sheet, too_large_picture
from handout_engine.working.layouts import Layout
from handout_engine.working.workings import Picture, Working

FOLDED = (
    "The cloth is folded lengthwise, right sides together: a fold line lies at the fold, and all "
    "else is cut through both layers, which makes pairs."
)
SINGLE = "Cut from a single layer; what has a fold line is cut whole."
TURNED_OVER = (
    "What is hatched is turned over, the paper face down: the mirror image that makes its pair."
)


def finished(working: Working, tape: Tape, identity: str) -> Element | None:
    """The drawing of the finished thing."""
    figures = [_of(working, each, tape, identity) for each in working.pictures if each.finished]
    return element("div", *figures) if figures else None


def drawings(working: Working, tape: Tape, identity: str) -> Element | None:
    """All other drawings."""
    others = [each for each in working.pictures if not each.finished]
    figures = [_of(working, each, tape, identity) for each in others]
    return element("div", *figures, class_="drawings") if figures else None


def layouts(working: Working, tape: Tape, identity: str) -> Element | None:
    """The layout of the pieces on each cloth."""
    return layout_figures(working.layouts, tape, identity)


def layout_figures(every: Sequence[Layout], tape: Tape, identity: str) -> Element | None:
    """A figure for each layout, with what the numbers on it stand for."""
    figures = [
        _figure(_layout_picture(layout, number), tape, identity)
        for number, layout in enumerate(every, 1)
    ]
    return element("div", *figures, class_="layouts") if figures else None


def _layout_picture(layout: Layout, number: int) -> Picture:
    names = dict.fromkeys((laid.item.number, laid.item.name) for laid in layout.laid)
    named = ", ".join(f"{key}: {name}" for key, name in sorted(names))
    caption = sentence(
        f"Layout on the {layout.cloth}, {{width}} between the selvages: {named}."
        f"{''.join(_how_it_is_cut(layout))}",
        width=layout.width * 2 if layout.folded else layout.width,
    )
    return Picture(f"layout-{number}", caption, layout_scene(layout))


def _how_it_is_cut(layout: Layout) -> Iterable[str]:
    """Sentences on folded or single cloth, and on pairs: pages say nowhere else which it is."""
    if layout.folded:
        yield " " + FOLDED
    elif any(laid.item.opened for laid in layout.laid):
        yield " " + SINGLE
    if any(laid.item.turned_over for laid in layout.laid):
        yield " " + TURNED_OVER


def _of(working: Working, picture: Picture, tape: Tape, identity: str) -> Element:
    """The figure of a working's picture, with a link to its true-scale sheet if it has one."""
    sheet = picture_sheet(working, picture, tape)
    printing = None
    if sheet is not None:
        printing = sheet_link("Print this sheet at true scale", sheet)
    elif picture.sheet is not None:
        printing = element("p", too_large_picture(picture, tape), class_="too-large")
    return _figure(picture, tape, identity, printing)


def _figure(
    picture: Picture, tape: Tape, identity: str, printing: Element | None = None
) -> Element:
    """A drawing with its caption, the last thing in a figure: how to print it belongs to it."""
    drawing = svg(picture.scene, tape, f"{identity}-{picture.name}")
    caption = element("figcaption", *phrase(picture.caption, tape), printing)
    return element("figure", drawing, caption)
