"""The strip at the edge of a printed page: what the page is, where it belongs, squares to measure.

It stands beside the drawing's window, so that it hides nothing of the drawing. The squares are
empty at their edges, so that a ruler can be laid to them; in them stand the sentence that says how
to print, and the map of the pages.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from handout_engine.drawing.scene import Line, rectangle
from handout_engine.geometry.windows import Window
from handout_engine.paper.ink import BLACK, Face, Ink, Rule, Words, closed
from handout_engine.paper.lettering import wrapped
from handout_engine.paper.tiling import GAP, PAPER_NAMES, Cell, Tiling
from handout_engine.paper.true_scale import PRINT_AT, SQUARES

HEADING, TEXT, SMALL, CAPTION = 4.2, 3.2, 2.6, 2.8
LEADING = 1.3
"""From line to line, for each unit of the letters' size."""
BORDER = 2.0
MOST_MAP = (44.0, 23.0)
MOST_CELL = 9.0
SHARES = (1.0, 0.92, 0.84, 0.76, 0.68, 0.6)
"""By how much words are made smaller until they fit."""
JOIN = (
    "Cut each page off along the solid line at its left and at its top; glue it over the page "
    "there, up to the dashed line: arrowheads of one number meet."
)


@dataclass(frozen=True)
class Label:
    """What is printed: its name, and lines such as its size and how often it is cut."""

    heading: str
    lines: tuple[str, ...] = ()


def strip(label: Label, tiling: Tiling, cell: Cell, paper: str) -> list[Ink]:
    """Everything in the strip of one page."""
    page = tiling.sheet
    (_, five), (_, two) = SQUARES
    box = page.strip
    if page.wide:
        tops = box.bottom - two - five - GAP, box.bottom - two
        words = Window(box.left, box.top, box.right, tops[0] - GAP)
        squares = [
            Window(box.left, top, box.left + side, top + side)
            for top, side in zip(tops, (five, two), strict=True)
        ]
    else:
        lefts = box.right - two - five - GAP, box.right - two
        words = Window(box.left + BORDER, box.top, lefts[0] - GAP, box.bottom)
        squares = [
            Window(left, box.top, left + side, box.top + side)
            for left, side in zip(lefts, (five, two), strict=True)
        ]
    return [
        *_label(label, words, tiling, paper),
        *_how_to_print(squares[0], several=len(tiling.kept) > 1),
        *_place(squares[1], tiling, cell),
    ]


def _label(label: Label, room: Window, tiling: Tiling, paper: str) -> Sequence[Words]:
    """The words about what is printed, as large as they fit."""
    count = len(tiling.kept)
    extent = f"{count} pages" if count > 1 else "one page"
    lines = [*label.lines, f"True scale, {extent} of {PAPER_NAMES[paper]}."]
    made: list[Words] = []
    for share in SHARES:
        made = list(_paragraphs(label.heading, lines, room, share))
        if made[-1].reach.bottom <= room.bottom:
            return made
    return [each for each in made if each.reach.bottom <= room.bottom]


def _paragraphs(heading: str, lines: Sequence[str], room: Window, share: float) -> Iterable[Words]:
    y = room.top
    for place, text in enumerate([heading, *lines]):
        size = share * (HEADING if place == 0 else TEXT)
        for line in wrapped(text, room.width, size, place == 0):
            y += LEADING * size
            yield Words(line, (room.left, y), size=size, bold=place == 0)
        y += 0.35 * size


def _square(square: Window, name: str) -> Iterable[Ink]:
    side = square.right - square.left
    yield Rule(closed(rectangle(square.left, square.top, side, side)), Line.THIN)
    at = ((square.left + square.right) / 2, square.bottom - BORDER)
    yield Words(f"this square is {name}", at, "middle", CAPTION)


def _how_to_print(square: Window, several: bool) -> Iterable[Ink]:
    """The square of 5 cm, in it how to print, and how to join several pages."""
    yield from _square(square, SQUARES[0][0])
    first, end, rest = PRINT_AT.partition(". ")
    room, y = square.width - 2 * BORDER, square.top + BORDER / 2
    texts = [(first + end, True), (rest, False)]
    texts += [(JOIN, False)] if several else []
    for text, bold in texts:
        for line in wrapped(text, room, SMALL, bold):
            y += LEADING * SMALL
            yield Words(line, (square.left + BORDER, y), size=SMALL, bold=bold)
        y += 0.2 * SMALL


def _place(square: Window, tiling: Tiling, cell: Cell) -> Iterable[Ink]:
    """The square of 2 in, in it where the page belongs, if there are several."""
    yield from _square(square, SQUARES[1][0])
    if len(tiling.kept) == 1:
        return
    middle = (square.left + square.right) / 2
    row, column = cell
    said = (
        (f"row {row + 1}, column {column + 1}", TEXT * 1.2, True),
        (f"page {tiling.number(cell)} of {len(tiling.kept)}", TEXT, False),
    )
    y = square.top + BORDER
    for text, size, bold in said:
        y += LEADING * size
        yield Words(text, (middle, y), "middle", size, bold)
    yield from _map(tiling, cell, (middle, y + BORDER))
    if len(tiling.kept) < tiling.rows * tiling.columns:
        words = "dashed: nothing is on it, left out"
        yield Words(words, (middle, square.bottom - BORDER - 1.5 * SMALL), "middle", 2.4)


def _map(tiling: Tiling, this: Cell, top: tuple[float, float]) -> Iterable[Ink]:
    """All pages in small, with their numbers; this one is filled, those left out are dashed."""
    view = tiling.sheet.window
    scale = min(
        MOST_MAP[0] / tiling.columns / view.width,
        MOST_MAP[1] / tiling.rows / view.height,
        MOST_CELL / view.height,
    )
    across, down = scale * view.width, scale * view.height
    left = top[0] - tiling.columns * across / 2
    for row in range(tiling.rows):
        for column in range(tiling.columns):
            corners = rectangle(left + column * across, top[1] + row * down, across, down)
            cell = (row, column)
            if cell == this:
                yield Face(corners, BLACK)
            line = Line.THIN if cell in tiling.kept else Line.HIDDEN
            yield Rule(closed(corners), line)
            if cell in tiling.kept:
                yield _number(tiling, cell, this, (corners[0], (across, down)))


def _number(
    tiling: Tiling, cell: Cell, this: Cell, box: tuple[tuple[float, float], tuple[float, float]]
) -> Words:
    (left, top), (across, down) = box
    size = min(2.6, 0.7 * down, 0.45 * across)
    at = (left + across / 2, top + down / 2 + size * 0.36)
    colour = "#fff" if cell == this else BLACK
    return Words(str(tiling.number(cell)), at, "middle", size, colour=colour)
