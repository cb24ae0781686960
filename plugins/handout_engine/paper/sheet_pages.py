"""A drawing at true scale as printed pages, each an SVG document of its own."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import element, html
from handout_engine.drawing.scene import Shape
from handout_engine.paper.cutting import cut
from handout_engine.paper.ink import Ink, inked
from handout_engine.paper.ink_svg import document, elements
from handout_engine.paper.joins import join_inks, joins
from handout_engine.paper.strip import Label, strip
from handout_engine.paper.tiling import Cell, Tiling, tiled

SCREEN = "@media screen { body { background: #777; } svg { margin: 1rem auto; } }"


def sheet_pages(shapes: Iterable[Shape], label: Label, paper: str, tape: Tape) -> list[Element]:
    """The pages in the order in which they are put together: row by row, from left to right.

    `paper` is `a4` or `letter`.
    """
    inks = inked(shapes, tape)
    tiling = tiled(inks, paper)
    shown = cut(inks, tiling)
    every = joins(tiling, shown)
    pages = []
    for cell in tiling.kept:
        joined = join_inks(tiling, every, cell, shown)
        beside = strip(label, tiling, cell, paper)
        pages.append(_page(label, tiling, cell, [*shown[cell], *joined, *beside]))
    return pages


def _page(label: Label, tiling: Tiling, cell: Cell, inks: Iterable[Ink]) -> Element:
    size = tiling.sheet.width, tiling.sheet.height
    title = f"{label.heading}: {_where(tiling, cell)}"
    return document(title, " ".join(label.lines), size, elements(inks))


def _where(tiling: Tiling, cell: Cell) -> str:
    number, count = tiling.number(cell), len(tiling.kept)
    return f"page {number} of {count}, row {cell[0] + 1}, column {cell[1] + 1}"


def print_document(title: str, pages: Sequence[Element]) -> str:
    """Pages as one HTML document which a browser prints one a sheet, at their own size.

    Each page stands in a box a hair lower than the paper, so that no rounding makes two of it.
    """
    sizes = list(dict.fromkeys(_size(page) for page in pages))
    rules = [
        "body { margin: 0; } svg { display: block; background: #fff; }",
        SCREEN,
        "div + div { break-before: page; }",
    ]
    for number, (width, height) in enumerate(sizes):
        rules.append(f"@page size-{number} {{ size: {width} {height}; margin: 0; }}")
        rules.append(
            f".size-{number} {{ page: size-{number}; overflow: hidden; }} "
            f"@media print {{ .size-{number} {{ height: calc({height} - 0.2mm); }} }}"
        )
    head = element(
        "head",
        element("meta", charset="utf-8"),
        element("title", title),
        element("link", rel="icon", href="data:,"),  # else a browser asks the site for one
        element("style", "\n".join(rules)),
    )
    boxes = [element("div", page, class_=f"size-{sizes.index(_size(page))}") for page in pages]
    whole = element("html", head, element("body", *boxes), lang="en")
    return f"<!DOCTYPE html>\n{html(whole)}\n"


def _size(page: Element) -> tuple[str, str]:
    return page.get("width", ""), page.get("height", "")
