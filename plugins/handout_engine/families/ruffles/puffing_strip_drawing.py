"""Puffing seen from the right side: folds run across between two seams."""

from __future__ import annotations

from collections.abc import Iterable
from math import fsum, pi, sin

from handout_engine.amounts.values import Value
from handout_engine.drawing.breaks import broken_sides, drawn_parts, measured
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

LONGEST = 5.6
"""Puffing longer than so many times its width is drawn broken."""
CLOTH = 0.45
WIDTHS = (1.0, 0.8, 1.15, 0.9, 1.05, 0.75)
BENDS = (0.12, -0.1, 0.06, -0.14, 0.1, -0.04, 0.12)
REACHES = (1.0, 0.5, 1.0, 0.62, 1.0, 1.0, 0.44)
"""Widths of the folds, how they bend and how far across they reach, by turns."""
PUCKERS = ((0.08, 0.1), (0.84, 0.17))
STEPS = 8


def puffed(edge: Value, width: Value, fullness: float) -> tuple[Shape, ...]:
    """A stretch of puffing of finished `width` between two flat edges."""
    deep = width.mm
    span = min(edge.mm, LONGEST * deep)
    beside = CLOTH * deep
    parts = drawn_parts(edge, span)
    shapes: list[Shape] = []
    for left, right in parts:
        wide = right - left
        shapes.append(Area(rectangle(left, -beside, wide, beside), Tone.SECOND, outline=None))
        shapes.append(Area(rectangle(left, deep, wide, beside), Tone.SECOND, outline=None))
        shapes.append(Area(rectangle(left, 0, wide, deep), Tone.RIGHT, outline=None))
        shapes.extend(_folds(left, right, deep, fullness))
        for height in (0.0, deep):
            shapes.append(Stroke(((left, height), (right, height)), Line.CUT))
    shapes.extend(broken_sides(parts, -beside, deep + beside))
    shapes.append(measured((0, -beside), (span, -beside), edge, Side.ABOVE))
    shapes.append(Dimension((span, 0), (span, deep), width, Side.RIGHT))
    return tuple(shapes)


def _folds(left: float, right: float, deep: float, fullness: float) -> Iterable[Shape]:
    """Folds side by side, the closer the fuller; some fade out, from one seam and the other."""
    count = max(4, min(40, round((right - left) / deep * 3.2 * fullness)))
    widths = [WIDTHS[number % len(WIDTHS)] for number in range(count)]
    unit = (right - left) / fsum(widths)
    shade = min(0.4, 0.17 * fullness)
    at = left
    for number, width in enumerate(widths):
        wide = width * unit
        reach = REACHES[number % len(REACHES)]
        bend = BENDS[number % len(BENDS)] * wide
        ends = (0.0, deep * reach) if number % 2 else (deep, deep * (1 - reach))
        middle = at + wide / 2
        near = _fold((middle, bend - 0.5 * shade * wide), ends)
        far = _fold((middle, bend + 0.5 * shade * wide), ends)
        yield Area((*near, *reversed(far)), Tone.SHADE, outline=None)
        yield Stroke(near, Line.THIN)
        for share, length in PUCKERS:
            x = at + share * wide
            yield Stroke(((x, 0.015 * deep), (x, length * deep)), Line.THIN)
            yield Stroke(((x, 0.985 * deep), (x, (1 - length) * deep)), Line.THIN)
        at += wide


def _fold(across: tuple[float, float], ends: tuple[float, float]) -> tuple[Point, ...]:
    """One side of a fold, straight at its ends and bent between them."""
    x, bend = across
    start, end = ends
    return tuple(
        (x + bend * sin(pi * step / STEPS), start + (end - start) * step / STEPS)
        for step in range(STEPS + 1)
    )
