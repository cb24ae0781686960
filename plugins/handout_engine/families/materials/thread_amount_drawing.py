"""The path of both threads of a lockstitch through two layers, cut along the seam."""

from __future__ import annotations

from collections.abc import Iterable

from handout_engine.amounts.values import Value
from handout_engine.drawing.breaks import enlarged
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

STITCHES = 4
SHOWN = 0.35
"""Thickness of all layers is drawn at least so many stitches high, to be seen."""


def lockstitch(stitch: Value, thickness: Value) -> Iterable[Shape]:
    """Four stitches: the upper thread lies on top, the lower one beneath; they link half way."""
    long = STITCHES * stitch.mm
    tall = max(thickness.mm, SHOWN * stitch.mm)
    rest = 0.5 * stitch.mm
    for top, tone in ((0.0, Tone.RIGHT), (tall / 2, Tone.SECOND)):
        yield Area(rectangle(-rest, top, long + 2 * rest, tall / 2), tone, Line.THIN)
    away = 0.05 * stitch.mm
    yield Stroke(tuple(thread_path(stitch.mm, -away, tall / 2 + away)), Line.CUT)
    yield Stroke(tuple(thread_path(stitch.mm, tall + away, tall / 2 - away)), Line.STITCH)
    yield Dimension((stitch.mm, -away), (2 * stitch.mm, -away), stitch, Side.ABOVE)
    yield enlarged((long + rest, 0), (long + rest, tall), thickness, Side.RIGHT)


def thread_path(stitch: float, face: float, middle: float) -> Iterable[Point]:
    """One thread: along its face of the cloth, and at every hole to the middle and back."""
    half = 0.04 * stitch
    yield (-0.5 * stitch, face)
    for hole in range(STITCHES + 1):
        at = hole * stitch
        yield from ((at - half, face), (at - half, middle), (at + half, middle), (at + half, face))
    yield ((STITCHES + 0.5) * stitch, face)
