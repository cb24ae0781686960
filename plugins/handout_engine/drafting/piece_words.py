"""Where a drawn piece has room for its name and for its grain arrow."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.values import sentence
from handout_engine.drawing.page import CHARACTER, PAGE_WIDTH, TEXT
from handout_engine.drawing.scene import Grain, Note
from handout_engine.geometry.points import Point, snapped
from handout_engine.geometry.polygons import extents, sides

LEVELS = (0.78, 0.45, 0.35, 0.25, 0.62)
"""How far down a piece its name may stand, the best first."""
WIDE = 0.75
"""The share of the whole width that is wide enough."""
HALF_LINE = 0.035
"""Half the height of the words, as a share of the height of the piece."""
GRAIN_LEVEL, GRAIN_ACROSS, CLEAR = 0.6, 0.4, 0.12


def name_note(outline: Sequence[Point], name: str, tallest: float) -> Note:
    """The name on the piece where it is wide, or beside a piece that is narrow everywhere."""
    (left, top), (right, bottom) = extents(outline)
    scale = min(tallest / (bottom - top), PAGE_WIDTH / (right - left))
    places = [_room(outline, level) for level in LEVELS]
    wide = next((each for each in places if each[0] >= (right - left) * WIDE), max(places))
    if wide[0] * scale >= len(name) * CHARACTER * TEXT:
        return Note(wide[1], sentence(name))
    beside = (snapped(right + TEXT / scale), snapped(top + (bottom - top) * GRAIN_LEVEL))
    return Note(beside, sentence(name), anchor="start")


def grain_arrow(outline: Sequence[Point]) -> Grain:
    """The arrow left of the middle, or in the middle of what the piece is wide there."""
    (left, top), (right, bottom) = extents(outline)
    level = top + (bottom - top) * GRAIN_LEVEL
    at = left + (right - left) * GRAIN_ACROSS
    wide, middle = _room(outline, GRAIN_LEVEL)
    clear = abs(at - middle[0]) <= wide / 2 - (right - left) * CLEAR
    return Grain((snapped(at if clear else middle[0]), snapped(level)), (0.0, 1.0))


def _room(outline: Sequence[Point], share: float) -> tuple[float, Point]:
    """How wide a piece is so far down, over the height of a line of words; the middle of that."""
    (_, top), (_, bottom) = extents(outline)
    spans = [
        _span(outline, top + (bottom - top) * (share + more))
        for more in (-HALF_LINE, 0.0, HALF_LINE)
    ]
    left, right = max(first for first, _ in spans), min(last for _, last in spans)
    return right - left, (snapped((left + right) / 2), snapped(top + (bottom - top) * share))


def _span(outline: Sequence[Point], level: float) -> tuple[float, float]:
    """From where to where a piece reaches at a level; where it is in parts there, the widest."""
    across = sorted(
        x1 + (x2 - x1) * (level - y1) / (y2 - y1)
        for (x1, y1), (x2, y2) in sides(outline)
        if min(y1, y2) <= level < max(y1, y2)
    )
    parts = zip(across[::2], across[1::2], strict=True)
    return max(parts, key=lambda part: part[1] - part[0])
