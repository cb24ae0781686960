"""A drawing at true scale as printed pages, each an SVG document of its own."""

from __future__ import annotations

from collections.abc import Iterable
from xml.etree.ElementTree import Element

from handout_engine.drawing.cutting import cut
from handout_engine.drawing.ink import Ink, inked
from handout_engine.drawing.ink_svg import document, elements
from handout_engine.drawing.joins import join_inks, joins
from handout_engine.drawing.scene import Shape
from handout_engine.drawing.strip import Label, strip
from handout_engine.drawing.tiling import Cell, Tiling, tiled
from handout_engine.saying import Tape


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
