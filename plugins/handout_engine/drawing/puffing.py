"""Puffing seen from the right side: folds run across between two seams."""

from __future__ import annotations

from math import pi, sin

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
from handout_engine.values import Value

LONGEST = 5.0
"""Puffing longer than so many times its width is drawn in part."""
CLOTH = 0.45
BENDS = (0.0, 0.5, -0.35, 0.2, -0.55, 0.3)


def puffed(edge: Value, width: Value, fullness: float) -> tuple[Shape, ...]:
    """A stretch of puffing of finished `width` between two flat edges."""
    deep = width.mm
    span = min(edge.mm, LONGEST * deep)
    beside = CLOTH * deep
    shapes: list[Shape] = [
        Area(rectangle(0, -beside, span, beside), Tone.SECOND, outline=None),
        Area(rectangle(0, deep, span, beside), Tone.SECOND, outline=None),
        Area(rectangle(0, 0, span, deep), Tone.RIGHT, outline=None),
    ]
    folds = max(6, min(40, round(span / deep * 5 * fullness)))
    shapes.extend(
        Stroke(_fold(span * (n + 0.5) / folds, deep, n, span / folds), Line.THIN)
        for n in range(folds)
    )
    for height in (0.0, deep):
        shapes.append(Stroke(((0, height), (span, height)), Line.CUT))
    for x in (0.0, span):
        line = Line.THIN if span < edge.mm and x else Line.CUT
        shapes.append(Stroke(((x, -beside), (x, deep + beside)), line))
    shapes.append(Dimension((0, -beside), (span, -beside), edge, Side.ABOVE))
    shapes.append(Dimension((span, 0), (span, deep), width, Side.RIGHT))
    return tuple(shapes)


def _fold(x: float, deep: float, number: int, pitch: float) -> tuple[Point, ...]:
    """A fold from seam to seam, straight at the seams and a little bent between them; every third
    one fades out before it has crossed."""
    end = 0.42 if number % 3 == 1 else 1.0
    bend = BENDS[number % len(BENDS)] * pitch * 0.6
    return tuple((x + bend * sin(pi * step / 8), deep * end * step / 8) for step in range(9))
