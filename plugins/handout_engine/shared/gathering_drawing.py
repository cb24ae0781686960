"""Gathered cloth: how a ruffle looks when it is sewn, and an edge beside the strip it takes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import fsum, pi, sin

from handout_engine.amounts.values import Value
from handout_engine.drawing.breaks import broken_sides, drawn_parts, freehand, measured
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Shape,
    Side,
    Stroke,
    Tag,
    Tone,
    rectangle,
)

LONGEST = 3.4
"""A finished ruffle longer than so many times its depth, or its heading, is drawn broken."""
GARMENT = 0.42
"""How much of the garment is drawn above the seam, for each depth of the ruffle."""
ABOVE_HEADING = 1.35
WIDTHS = (1.0, 1.24, 0.86, 1.1, 0.92, 1.3, 0.8, 1.06)
REACHES = (0.62, 0.34, 0.5, 0.74, 0.28, 0.56, 0.42)
"""Widths of the folds and how high they reach, by turns: gathers are never quite even."""
STEPS = 6
"""A curve is drawn in so many straight steps."""
UPPER_EDGE, LOWER_EDGE = 0.0, 1.0
"""Where a strip is gathered at an edge of it, as a share of its width from its upper edge."""
ROWS_BESIDE = 0.12
"""How far each of two rows is drawn from the line that is gathered on, of the strip's width."""
ROWS_INSIDE = 0.3
"""No nearer to an edge is their middle drawn, so that both rows can be seen inside it."""


@dataclass(frozen=True)
class GatheredLayer:
    """One ruffle hanging from a seam: what hangs below it, what stands above, band, hem."""

    depth: Value
    fullness: Fraction
    heading: Value | None = None
    band: Value | None = None
    hem: Value | None = None


@dataclass(frozen=True)
class _Fold:
    """One fold from its left to its right side, where its front lobe begins and ends."""

    left: float
    right: float
    front: tuple[float, float]
    swing: float
    reach: float


def hanging(edge: Value, layers: Sequence[GatheredLayer]) -> tuple[Shape, ...]:
    """A stretch of the finished edge, seen from the right side, layers from back to front."""
    deepest = max(layer.depth.mm for layer in layers)
    top = -max(GARMENT * deepest, ABOVE_HEADING * _heading(layers))
    span = min(edge.mm, LONGEST * max(deepest, _heading(layers)))
    parts = drawn_parts(edge, span)
    shapes: list[Shape] = []
    for left, right in parts:
        shapes.extend(_stretch((left, right), top, layers))
    shapes.extend(broken_sides(parts, top, deepest))
    shapes.append(measured((0, top), (span, top), edge, Side.ABOVE))
    shapes.extend(_measures(span, layers))
    return tuple(shapes)


def gathered(
    layer: GatheredLayer, left: float, right: float, deepest: float, most: int = 24
) -> Iterable[Shape]:
    """One ruffle between two places along its seam, in at most so many folds."""
    return _layer(layer, _folds(layer, left, right, deepest, most))


def _heading(layers: Sequence[GatheredLayer]) -> float:
    return max((layer.heading.mm for layer in layers if layer.heading), default=0.0)


def _stretch(
    part: tuple[float, float], top: float, layers: Sequence[GatheredLayer]
) -> Iterable[Shape]:
    """The garment and its ruffles between two places along the edge."""
    left, right = part
    deepest = max(layer.depth.mm for layer in layers)
    yield Area(rectangle(left, top, right - left, -top), Tone.RIGHT, outline=None)
    yield Stroke(freehand((left, top), (right, top)), Line.BREAK)
    for layer in sorted(layers, key=lambda layer: -layer.depth.mm):
        yield from gathered(layer, left, right, deepest)
    seam = Line.STITCH if any(layer.heading for layer in layers) else Line.CUT
    yield Stroke(((left, 0), (right, 0)), seam)


def _measures(span: float, layers: Sequence[GatheredLayer]) -> Iterable[Shape]:
    """Depths at the sides: one layer's parts in a row, several layers from one origin."""
    if len(layers) > 1:
        for layer in layers:
            yield Tag((span, layer.depth.mm), layer.depth, Side.RIGHT, origin=(span, 0.0))
        return
    layer = layers[0]
    depth = layer.depth.mm
    yield Dimension((span, 0), (span, depth), layer.depth, Side.RIGHT)
    if layer.heading:
        yield Dimension((span, -layer.heading.mm), (span, 0), layer.heading, Side.RIGHT)
    if layer.band:
        yield Dimension((0, depth - layer.band.mm), (0, depth), layer.band, Side.LEFT)


def _folds(
    layer: GatheredLayer, left: float, right: float, deepest: float, most: int
) -> list[_Fold]:
    """The folds of a stretch, uneven by turns, the fuller the ruffle the rounder."""
    count = max(3, min(most, round((right - left) / deepest * 4.6)))
    widths = [WIDTHS[number % len(WIDTHS)] for number in range(count)]
    unit = (right - left) / fsum(widths)
    full = min(2.0, max(0.15, float(layer.fullness) - 1))
    share = 0.5 + 0.12 * full
    folds, at = [], left
    for number, width in enumerate(widths):
        wide = width * unit
        valley = wide * (1 - share) / 2
        swing = min(wide * 0.2 * full**0.5, 0.1 * layer.depth.mm)
        reach = REACHES[number % len(REACHES)]
        folds.append(_Fold(at, at + wide, (at + valley, at + wide - valley), swing, reach))
        at += wide
    return folds


def _layer(layer: GatheredLayer, folds: Sequence[_Fold]) -> Iterable[Shape]:
    depth = layer.depth.mm
    hem = _edge(folds, depth, 1.0)
    head = layer.heading.mm if layer.heading else 0.0
    top = _edge(folds, -head, -0.5) if head else ((folds[0].left, 0.0), (folds[-1].right, 0.0))
    free = depth - (layer.band.mm if layer.band else 0.0)
    yield Area((*top, *reversed(hem)), Tone.RIGHT, outline=None)
    yield from _shades(folds, free)
    if head:
        yield from _shades(folds, -head)
    if layer.band:
        seam = _edge(folds, free, 1.0)
        yield Area((*seam, *reversed(hem)), Tone.SECOND, outline=None)
        yield Stroke(seam, Line.THIN)
    if layer.hem:
        yield Stroke(_edge(folds, depth - layer.hem.mm, 1.0), Line.STITCH)
    if layer.hem and 2 * layer.hem.mm < head:
        yield Stroke(_edge(folds, layer.hem.mm - head, -0.5), Line.STITCH)
    for fold in folds:
        yield from _creases(fold, free, depth)
        if head:
            yield from _creases(fold, -head, -head)
    yield Stroke(hem, Line.CUT)
    if head:
        yield Stroke(top, Line.CUT)


def _edge(folds: Sequence[_Fold], height: float, turn: float) -> tuple[Point, ...]:
    """A long edge of gathered cloth: wide lobes that come forward, narrow ones that lie back."""
    points: list[Point] = []
    for fold in folds:
        start, end = fold.front
        points.extend(_arc(fold.left, start, height, -0.5 * turn * fold.swing, (0.5, 1.0)))
        points.extend(_arc(start, end, height, turn * fold.swing, (0.0, 1.0)))
        points.extend(_arc(end, fold.right, height, -0.5 * turn * fold.swing, (0.0, 0.5)))
    return tuple(points)


def _arc(
    left: float, right: float, height: float, swing: float, share: tuple[float, float]
) -> Iterable[Point]:
    """A part of an arch between two places, `swing` deep at its middle."""
    for step in range(STEPS + 1):
        along = step / STEPS
        phase = share[0] + (share[1] - share[0]) * along
        yield left + (right - left) * along, height + swing * sin(pi * phase)


def _shades(folds: Sequence[_Fold], height: float) -> Iterable[Shape]:
    """The cloth that lies back between two folds, narrowing toward the gathering line."""
    for before, after in pairwise(folds):
        left, right = before.front[1], after.front[0]
        peak = height * (1 - max(before.reach, after.reach))
        dip = -0.5 * before.swing * (1 if height > 0 else -0.5)
        foot = tuple(
            (left + (right - left) * step / STEPS, height + dip * sin(pi * step / STEPS))
            for step in range(STEPS + 1)
        )
        yield Area((*foot, (before.right, peak)), Tone.SHADE, outline=None)


def _creases(fold: _Fold, free: float, foot: float) -> Iterable[Shape]:
    """The sides of a fold, rising from its lower edge, and puckers below the gathering line."""
    start, end = fold.front
    width = fold.right - fold.left
    peak = free * (1 - fold.reach)
    for x, pull in ((start, 0.10), (end, -0.13)):
        top = (x + pull * width, peak)
        yield Stroke(((x, foot), (x + pull * width * 0.25, (foot + peak) / 2), top), Line.THIN)
    for share, reach in ((0.12, 0.3), (0.36, 0.16), (0.64, 0.22), (0.9, 0.12)):
        x = fold.left + share * width
        lean = (0.5 - share) * 0.12 * width
        yield Stroke(((x, 0.015 * free), (x - lean, reach * fold.reach * 1.6 * free)), Line.THIN)


def quarters(
    edge: Value, strip: Value, lines: Sequence[float] = (UPPER_EDGE,)
) -> tuple[Shape, ...]:
    """An edge, and below it the strip gathered to it, at their true ratio, quarter to quarter.

    `lines` are the places of the strip that are gathered on, each as a share of its width from its
    upper edge.
    """
    long, short = strip.mm, edge.mm
    bar, gap = long * 0.06, long * 0.13
    left, below = (long - short) / 2, bar + gap
    shapes: list[Shape] = [
        Area(rectangle(left, 0, short, bar), Tone.SHADE),
        Area(rectangle(0, below, long, bar), Tone.RIGHT),
    ]
    for line in lines:
        middle = min(1 - ROWS_INSIDE, max(ROWS_INSIDE, line))
        for share in (middle - ROWS_BESIDE, middle + ROWS_BESIDE):
            height = below + bar * share
            shapes.append(Stroke(((0, height), (long, height)), Line.GATHER))
    for quarter in range(5):
        share = quarter / 4
        foot, top = (left + short * share, bar), (long * share, below)
        shapes.append(Stroke((foot, top), Line.HIDDEN))
        shapes.append(Stroke(((foot[0], 0), foot), Line.THIN))
        shapes.append(Stroke((top, (top[0], below + bar)), Line.THIN))
    shapes.append(Dimension((left, 0), (left + short, 0), edge, Side.ABOVE))
    shapes.append(Dimension((0, below + bar), (long, below + bar), strip, Side.BELOW))
    return tuple(shapes)
