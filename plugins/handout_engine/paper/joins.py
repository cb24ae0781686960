"""How pages are put together: lines to cut and to glue at, and numbered arrowheads that meet.

A page is cut off at its left and at its top, and glued over the pages there. The line it must
reach is dashed on the page below. Arrowheads stand on both sides of a join, each pair with a
number of its own; put together, their tips meet.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise, product

from handout_engine.drawing.scene import Line, Point
from handout_engine.geometry.windows import Window, crosses
from handout_engine.paper.ink import BLACK, Face, Ink, Rule, Spots, Words, closed
from handout_engine.paper.tiling import OVERLAP, Cell, Tiling

HEAD = 3.0
"""How long and how wide an arrowhead is, in mm."""
SMALL = 2.9
HEADS = ((0.25, 0.2, 0.3, 0.15, 0.35, 0.1), (0.75, 0.8, 0.7, 0.85, 0.65, 0.9))
"""Where along a join its two pairs of arrowheads may stand, the best place first."""
PLACES = tuple(share / 200 for step in range(16) for share in (100 - 5 * step, 100 + 5 * step))
"""Where along a join words may stand, from its middle outward."""

Shown = Mapping[Cell, Sequence[Ink]]


@dataclass(frozen=True)
class Join:
    """Two pages side by side (`upright`, by the line between them) or one above the other.

    `level` is where their common line stands on the first page and on the second. `heads` says
    where along it each pair of arrowheads stands, and its number.
    """

    first: Cell
    second: Cell
    upright: bool
    levels: tuple[float, float]
    heads: tuple[tuple[float, int], ...]


def joins(tiling: Tiling, shown: Shown) -> list[Join]:
    """All joins in order of the pages; arrowheads stand where they hide nothing of the drawing."""
    view = tiling.sheet.window
    found: list[Join] = []
    for row, column in tiling.kept:
        for other, upright in (((row, column + 1), True), ((row + 1, column), False)):
            if other in tiling.kept:
                levels = (
                    (view.right - OVERLAP, view.left)
                    if upright
                    else (view.bottom - OVERLAP, view.top)
                )
                number = 2 * len(found) + 1
                bare = Join((row, column), other, upright, levels, ())
                heads = tuple(
                    (_free_place(bare, places, number + place, view, shown), number + place)
                    for place, places in enumerate(HEADS)
                )
                found.append(Join((row, column), other, upright, levels, heads))
    return found


def join_inks(tiling: Tiling, every: Sequence[Join], cell: Cell, shown: Shown) -> list[Ink]:
    """The lines, arrowheads and words that one page needs to be joined to its neighbours."""
    inks: list[Ink] = []
    for join in every:
        if cell == join.first:
            inks += _glued(tiling, join, shown[cell])
        elif cell == join.second:
            inks += _cut_off(tiling, join, shown[cell])
    return inks


def _glued(tiling: Tiling, join: Join, shown: Sequence[Ink]) -> Iterable[Ink]:
    """The dashed line that the next page reaches, and what is said in the room for glue."""
    view, level, (row, column) = tiling.sheet.window, join.levels[0], join.second
    yield _line(view, level, join.upright, Line.HIDDEN)
    heads = _heads(join, view, first=True)
    yield from heads
    number = tiling.number(join.second)
    text = f"glue page {number} (row {row + 1}, column {column + 1}) over this"
    levels = [level + share * OVERLAP + SMALL / 3 for share in (0.5, 0.25, 0.75)]
    yield _free(text, view, levels, join.upright, [*shown, *heads])


def _cut_off(tiling: Tiling, join: Join, shown: Sequence[Ink]) -> Iterable[Ink]:
    """The line to cut this page off at, through the whole page, and what it is for."""
    page, level = tiling.sheet, join.levels[1]
    whole = Window(
        page.window.left,
        page.window.top,
        max(page.window.right, page.strip.right),
        max(page.window.bottom, page.strip.bottom),
    )
    yield _line(whole, level, join.upright, Line.THIN)
    heads = _heads(join, page.window, first=False)
    yield from heads
    text = f"cut off, glue over page {tiling.number(join.first)}"
    levels = [level + SMALL, level + 2 * SMALL]
    yield _free(text, page.window, levels, join.upright, [*shown, *heads])


def _line(window: Window, level: float, upright: bool, line: Line) -> Rule:
    if upright:
        return Rule(((level, window.top), (level, window.bottom)), line)
    return Rule(((window.left, level), (window.right, level)), line)


def _heads(join: Join, view: Window, first: bool) -> list[Ink]:
    return [ink for head in join.heads for ink in _head(join, head, view, first)]


def _head(join: Join, head: tuple[float, int], view: Window, first: bool) -> tuple[Ink, ...]:
    """An arrowhead and its number: before the line on the first page, behind it on the second."""
    (share, number), way = head, -1 if first else 1
    level = join.levels[0 if first else 1]
    along = view.top + share * view.height if join.upright else view.left + share * view.width
    foot, far = level + way * HEAD, level + way * (HEAD + 1)
    corners: tuple[Point, ...] = (
        (level, along),
        (foot, along - HEAD / 2),
        (foot, along + HEAD / 2),
    )
    if join.upright:
        anchor, at = "end" if first else "start", (far, along + SMALL / 3)
    else:
        corners = tuple((x, y) for y, x in corners)
        anchor, at = "middle", (along, far if first else far + SMALL * 0.7)
    words = Words(str(number), at, anchor, SMALL, bold=True)
    return Face(corners, BLACK), Rule(closed(corners), Line.THIN), words


def _free_place(
    join: Join, places: Sequence[float], number: int, view: Window, shown: Shown
) -> float:
    """The first place along a join where a pair of arrowheads hides nothing on both its pages."""
    for share in places:
        hidden = any(
            _covers(ink.reach, shown[cell])
            for cell, first in ((join.first, True), (join.second, False))
            for ink in _head(join, (share, number), view, first)
        )
        if not hidden:
            return share
    return places[0]


def _free(
    text: str, window: Window, levels: Sequence[float], upright: bool, shown: Sequence[Ink]
) -> Words:
    """Words along a line, where nothing is drawn if there is such a place, else where least is."""
    every = list(_along(text, window, levels, upright))
    near = [ink for ink in shown if _comes_near(ink.reach, levels, upright)]
    free = next((words for words in every if not _covers(words.reach, near)), None)
    return free or min(every, key=lambda words: sum(_is_on(ink, words.reach) for ink in near))


def _along(text: str, window: Window, levels: Sequence[float], upright: bool) -> Iterable[Words]:
    """The words at each place where they may stand, the best place first."""
    for share, level in product(PLACES, levels):
        x, y = window.left + share * window.width, window.top + share * window.height
        at: Point = (level, y) if upright else (x, level)
        yield Words(text, at, "middle", SMALL, turned=upright)


def _comes_near(reach: Window, levels: Sequence[float], upright: bool) -> bool:
    """Whether something comes so near to a line that words along it could hide it."""
    low, high = (reach.left, reach.right) if upright else (reach.top, reach.bottom)
    return low <= max(levels) + SMALL and high >= min(levels) - SMALL


def _covers(window: Window, shown: Sequence[Ink]) -> bool:
    """Whether something that is drawn would be written over."""
    return any(_is_on(ink, window) for ink in shown)


def _is_on(ink: Ink, window: Window) -> bool:
    if not window.meets(ink.reach):
        return False
    match ink:
        case Rule():
            return any(crosses(start, end, window) for start, end in pairwise(ink.points))
        case Spots():
            return any(window.holds(point) for point in ink.at)
        case Words():
            return True
        case Face():
            return False
