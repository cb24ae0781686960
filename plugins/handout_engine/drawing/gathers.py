"""Gathered cloth: how a ruffle looks when it is sewn, and an edge beside the strip it takes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import pi, sin

from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Point,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.values import Value, sentence

LONGEST = 3.6
"""A finished ruffle longer than so many times its depth is drawn in part."""
POINTS_A_FOLD = 8


@dataclass(frozen=True)
class GatheredLayer:
    """One ruffle hanging from a seam: what hangs below it, what stands above, its band."""

    depth: Value
    fullness: Fraction
    heading: Value | None = None
    band: Value | None = None


def hanging(edge: Value, layers: Sequence[GatheredLayer]) -> tuple[Shape, ...]:
    """A stretch of the finished edge, seen from the right side, layers from back to front."""
    deepest = max(layer.depth.mm for layer in layers)
    span = min(edge.mm, LONGEST * deepest)
    shapes: list[Shape] = list(_garment(span, deepest))
    for layer in sorted(layers, key=lambda layer: -layer.depth.mm):
        shapes.extend(_layer(layer, span, deepest))
    shapes.append(Stroke(((0, 0), (span, 0)), Line.STITCH))
    for level, layer in enumerate(layers, 1):
        shapes.append(Dimension((0, 0), (0, layer.depth.mm), layer.depth, Side.LEFT, level))
        if layer.heading:
            shapes.append(
                Dimension((span, -layer.heading.mm), (span, 0), layer.heading, Side.RIGHT)
            )
        if layer.band:
            top = layer.depth.mm - layer.band.mm
            shapes.append(Dimension((span, top), (span, layer.depth.mm), layer.band, Side.RIGHT))
    return tuple(shapes)


def _garment(span: float, depth: float) -> Iterable[Shape]:
    """The lower end of the garment above the seam, broken off at its top."""
    top = -0.55 * depth
    yield Area(rectangle(0, top, span, -top), Tone.RIGHT, outline=None)
    yield Stroke(((0, 0), (0, top)), Line.CUT)
    yield Stroke(((span, 0), (span, top)), Line.CUT)
    yield Stroke(((0, top), (span, top)), Line.THIN)


def _layer(layer: GatheredLayer, span: float, deepest: float) -> Iterable[Shape]:
    depth = layer.depth.mm
    folds = max(5, min(26, round(span / deepest * 4)))
    swing = span / folds * 0.22 * min(2.0, float(layer.fullness) - 1 + 0.25)
    hem = _wave(span, depth, folds, swing)
    top: tuple[Point, ...] = ((0.0, 0.0), (span, 0.0))
    if layer.heading:
        top = _wave(span, -layer.heading.mm, folds, swing / 2)
    yield Area((*top, *reversed(hem)), Tone.RIGHT, outline=None)
    yield Stroke((top[0], *hem, top[-1]), Line.CUT)
    if layer.heading:
        yield Stroke(top, Line.CUT)
    if layer.band:
        above = _wave(span, depth - layer.band.mm, folds, swing)
        yield Area((*above, *reversed(hem)), Tone.SECOND)
    yield from _creases(layer, span, folds)


def _creases(layer: GatheredLayer, span: float, folds: int) -> Iterable[Shape]:
    """The folds that fall from the gathering line, long and short by turns."""
    free = layer.depth.mm - (layer.band.mm if layer.band else 0.0)
    for number in range(2 * folds - 1):
        x = span * (number + 1) / (2 * folds)
        reach = free * (0.72, 0.3, 0.5, 0.24)[number % 4]
        start = -layer.heading.mm * 0.7 if layer.heading else 0.0
        yield Stroke(((x, start), (x, reach)), Line.THIN)


def _wave(span: float, height: float, folds: int, swing: float) -> tuple[Point, ...]:
    steps = folds * POINTS_A_FOLD
    return tuple(
        (span * step / steps, height + swing * sin(2 * pi * step / POINTS_A_FOLD))
        for step in range(steps + 1)
    )


def quarters(edge: Value, strip: Value) -> tuple[Shape, ...]:
    """An edge and the strip gathered to it at their true ratio, quarter mark to quarter mark."""
    long, short = strip.mm, edge.mm
    bar, gap = long * 0.035, long * 0.1
    left, below = (long - short) / 2, bar + gap
    shapes: list[Shape] = [
        Area(rectangle(0, 0, long, bar), Tone.RIGHT),
        Area(rectangle(left, below, short, bar), Tone.SECOND),
    ]
    for quarter in range(5):
        share = quarter / 4
        top, foot = (long * share, bar), (left + short * share, below)
        shapes.append(Stroke((top, foot), Line.THIN))
        shapes.append(Stroke(((top[0], 0), top), Line.THIN))
        shapes.append(Stroke((foot, (foot[0], below + bar)), Line.THIN))
    shapes.append(Dimension((0, 0), (long, 0), strip, Side.ABOVE))
    shapes.append(Dimension((left, below + bar), (left + short, below + bar), edge, Side.BELOW))
    shapes.append(Note((long / 2, bar + gap / 2), sentence("match the quarter marks")))
    return tuple(shapes)
