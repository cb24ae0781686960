"""Cuts a drawing along the windows of its pages: each page gets what it shows, and nothing more."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from handout_engine.drawing.scene import Point
from handout_engine.geometry.points import snapped
from handout_engine.geometry.windows import Window, face_inside, runs_inside
from handout_engine.paper.ink import Face, Ink, Rule, Spots, Words
from handout_engine.paper.tiling import Cell, Tiling, middle, near


def cut(inks: Sequence[Ink], tiling: Tiling) -> Mapping[Cell, list[Ink]]:
    """What each printed page shows of a drawing, in the page's own millimetres, back to front."""
    shown: dict[Cell, list[Ink]] = {cell: [] for cell in tiling.kept}
    for ink in inks:
        reach = ink.reach
        for cell in near(reach, tiling):
            if cell in shown:
                window = tiling.window(cell)
                view = tiling.sheet.window
                way = view.left - window.left, view.top - window.top
                shown[cell].extend(_moved(each, way) for each in _shown(ink, reach, cell, tiling))
    return shown


def _shown(ink: Ink, reach: Window, cell: Cell, tiling: Tiling) -> Iterable[Ink]:
    """What a page's window shows of one drawn thing, still in the drawing's millimetres."""
    window = tiling.window(cell)
    if isinstance(ink, Words):
        yield from _words(ink, reach, cell, tiling)
    elif window.covers(reach):
        yield ink
    elif window.meets(reach):
        match ink:
            case Rule():
                for run in runs_inside(ink.points, window):
                    yield Rule(run.points, ink.line, snapped(ink.offset + run.start))
            case Face():
                for part in face_inside(ink.points, window):
                    yield Face(part, ink.colour)
            case Spots():
                inside = tuple(point for point in ink.at if window.holds(point))
                if inside:
                    yield Spots(inside)


def _words(words: Words, reach: Window, cell: Cell, tiling: Tiling) -> Iterable[Words]:
    """Words whole or not at all; those that no page can show where they stand are moved a little.

    They are then shown on the first page that shows their middle.
    """
    if tiling.window(cell).covers(reach):
        yield words
    elif cell == _first(reach, tiling):
        yield kept_inside(words, tiling.window(cell))


def _first(reach: Window, tiling: Tiling) -> Cell | None:
    """The first page that shows the middle of a reach, if none shows it whole."""
    if any(tiling.window(cell).covers(reach) for cell in tiling.kept):
        return None
    return next(cell for cell in tiling.kept if tiling.window(cell).holds(middle(reach)))


def kept_inside(words: Words, window: Window) -> Words:
    """Words moved into a window, and made smaller where they are longer than it."""
    room = window.height if words.turned else window.width
    if words.width > room:
        words = replace(words, size=snapped(words.size * room / words.width * 0.999))
    reach = words.reach
    across = max(0.0, window.left - reach.left) + min(0.0, window.right - reach.right)
    down = max(0.0, window.top - reach.top) + min(0.0, window.bottom - reach.bottom)
    return replace(words, at=_at(words.at, (across, down)))


def _moved(ink: Ink, way: Point) -> Ink:
    match ink:
        case Rule() | Face():
            return replace(ink, points=tuple(_at(point, way) for point in ink.points))
        case Spots():
            return Spots(tuple(_at(point, way) for point in ink.at))
        case Words():
            return replace(ink, at=_at(ink.at, way))


def _at(point: Point, way: Point) -> Point:
    return snapped(point[0] + way[0]), snapped(point[1] + way[1])
