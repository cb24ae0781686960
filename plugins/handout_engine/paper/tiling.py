"""Cuts a drawing at true scale into windows of printed pages that overlap; empty ones are left out.

A page keeps a margin free that no printer need print on, and a strip for its words and for the
squares to measure; the rest is its window on the drawing. Neighbouring windows overlap, so that
one page is glued over the other. A page is left out when it shows nothing, or nothing that its
neighbours do not show.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from itertools import chain, pairwise, product
from math import ceil, floor

from handout_engine.geometry.points import Point, snapped
from handout_engine.geometry.windows import Window, around, crosses
from handout_engine.paper.ink import Face, Ink, Rule, Spots, Words

PAPERS: dict[str, tuple[float, float]] = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
"""Width and height in mm: ISO 216 A4, and ANSI/ASME Y14.1 A, which is Letter."""
PAPER_NAMES = {"a4": "A4", "letter": "Letter"}
MARGIN = 6.0
"""Kept free at every edge, in mm: what common desktop printers leave blank (common practice)."""
INSET = 1.0
"""From the margin to the window, so that half of a line's width stays out of the margin."""
STRIP = 51.0
"""How deep the strip with the words and the squares is."""
GAP = 3.0
OVERLAP = 10.0
"""How far neighbouring windows show the same of the drawing: room for glue."""
SPARE = 0.5
"""Kept free round the whole drawing, for the width of its outermost lines."""

Cell = tuple[int, int]
"""Row and column, counted from 0."""
Part = tuple[Point, Point]
"""A straight line, or twice the same point."""


@dataclass(frozen=True)
class Sheet:
    """A printed page: its size, and where on it the window and the strip are."""

    width: float
    height: float
    window: Window
    strip: Window

    @property
    def wide(self) -> bool:
        """Whether it lies on its long side, its strip at the right."""
        return self.width > self.height


@dataclass(frozen=True)
class Tiling:
    """How a drawing is cut: windows in rows and columns, and which of them are printed.

    `origin` is where, on the drawing, the first window has its upper left corner. `kept` holds the
    printed ones in order: row by row, from left to right.
    """

    sheet: Sheet
    rows: int
    columns: int
    origin: Point
    kept: tuple[Cell, ...]

    def window(self, cell: Cell) -> Window:
        """What a page shows of the drawing, in the drawing's own millimetres."""
        row, column = cell
        view = self.sheet.window
        left = self.origin[0] + column * (view.width - OVERLAP)
        top = self.origin[1] + row * (view.height - OVERLAP)
        return Window(
            snapped(left), snapped(top), snapped(left + view.width), snapped(top + view.height)
        )

    def number(self, cell: Cell) -> int:
        """The number of a printed page, counted from 1."""
        return self.kept.index(cell) + 1


def sheet(paper: str, wide: bool) -> Sheet:
    """A page of a paper, upright or lying on its long side."""
    short, long = PAPERS[paper]
    edge = MARGIN + INSET
    across, down = short - 2 * edge, long - 2 * edge - STRIP - GAP
    if wide:
        strip = Window(edge + down + GAP, edge, long - edge, short - edge)
        return Sheet(long, short, Window(edge, edge, edge + down, edge + across), strip)
    strip = Window(edge, edge + down + GAP, short - edge, long - edge)
    return Sheet(short, long, Window(edge, edge, edge + across, edge + down), strip)


def tiled(inks: Sequence[Ink], paper: str) -> Tiling:
    """The drawing on upright pages or on lying ones, whichever are fewer."""
    reach = around([corner for ink in inks for corner in ink.reach.corners]).shrunk(-SPARE)
    upright = _tiling(inks, reach, sheet(paper, wide=False))
    if len(upright.kept) == 1:
        return upright
    lying = _tiling(inks, reach, sheet(paper, wide=True))
    return upright if len(upright.kept) <= len(lying.kept) else lying


def _tiling(inks: Sequence[Ink], reach: Window, page: Sheet) -> Tiling:
    """The windows over a drawing that is placed in the middle of them."""
    columns = _windows(reach.width, page.window.width)
    rows = _windows(reach.height, page.window.height)
    spare_across = columns * (page.window.width - OVERLAP) + OVERLAP - reach.width
    spare_down = rows * (page.window.height - OVERLAP) + OVERLAP - reach.height
    origin = snapped(reach.left - spare_across / 2), snapped(reach.top - spare_down / 2)
    every = Tiling(page, rows, columns, origin, tuple(product(range(rows), range(columns))))
    return replace(every, kept=_needed(inks, every))


def _windows(length: float, window: float) -> int:
    """How many overlapping windows cover a length."""
    return max(1, ceil(snapped((length - OVERLAP) / (window - OVERLAP))))


def _needed(inks: Iterable[Ink], every: Tiling) -> tuple[Cell, ...]:
    """The pages that show something which no other shows; what hung together still does."""
    if len(every.kept) == 1:
        return every.kept
    windows = {cell: every.window(cell) for cell in every.kept}
    shown: dict[Cell, list[Part]] = {}
    for part in chain.from_iterable(_parts(ink) for ink in inks):
        for cell in near(around(part), every):
            if crosses(*part, windows[cell]):
                shown.setdefault(cell, []).append(part)
    kept = sorted(shown)
    for cell in list(kept):
        core = _core(windows[cell], cell, kept)
        without = [other for other in kept if other != cell]
        if (
            without
            and not any(crosses(*part, core) for part in shown[cell])
            and _groups(without) <= _groups(kept)
        ):
            kept = without
    return tuple(kept)


def _parts(ink: Ink) -> Iterable[Part]:
    """What must be shown, as straight lines or points; faces alone need no page."""
    match ink:
        case Rule():
            return pairwise(ink.points)
        case Spots():
            return ((point, point) for point in ink.at)
        case Words():
            return ((middle(ink.reach), middle(ink.reach)),)
        case Face():
            return ()


def _core(window: Window, cell: Cell, kept: Sequence[Cell]) -> Window:
    """What of a window no direct neighbour shows."""
    row, column = cell

    def shared(other: Cell) -> float:
        return OVERLAP if other in kept else 0.0

    return Window(
        window.left + shared((row, column - 1)),
        window.top + shared((row - 1, column)),
        window.right - shared((row, column + 1)),
        window.bottom - shared((row + 1, column)),
    )


def _groups(cells: Sequence[Cell]) -> int:
    """In how many groups cells hang together by their sides."""
    left, count = set(cells), 0
    while left:
        count += 1
        edge = [left.pop()]
        while edge:
            row, column = edge.pop()
            beside = {(row, column + 1), (row, column - 1), (row + 1, column), (row - 1, column)}
            found = beside & left
            left -= found
            edge += found
    return count


def middle(window: Window) -> Point:
    """The middle of a window."""
    return (window.left + window.right) / 2, (window.top + window.bottom) / 2


def near(reach: Window, tiling: Tiling) -> Iterable[Cell]:
    """The pages, printed or not, whose windows may show something of a reach."""
    view = tiling.sheet.window
    left, top = tiling.origin
    rows = _span(reach.top - top, reach.bottom - top, view.height, tiling.rows)
    columns = _span(reach.left - left, reach.right - left, view.width, tiling.columns)
    return product(rows, columns)


def _span(start: float, end: float, window: float, count: int) -> range:
    """The numbers of the windows that may meet a stretch; one too many does no harm."""
    step = window - OVERLAP
    return range(max(0, floor((start - window) / step)), min(count - 1, floor(end / step)) + 1)
