"""How a flounce hangs: smooth at its seam, opening into flutes toward its hem."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
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
    Tone,
)

LONGEST = 6.2
"""A flounce longer than so many times its depth is drawn broken."""
GARMENT = 0.4
WIDTHS = (1.0, 1.12, 0.9, 1.06, 0.94)
BEGINS = (0.16, 0.3, 0.22, 0.36, 0.26)
"""Widths of the flutes and where below the seam they begin, by turns."""
STEPS = 8


@dataclass(frozen=True)
class _Flute:
    """One flute between two hollows: its front from side to side at the hem, and its swing."""

    left: float
    right: float
    front: tuple[float, float]
    swing: float
    begins: float


def flounce_hanging(edge: Value, depth: Value, first: float, last: float) -> tuple[Shape, ...]:
    """A stretch of the flounce, its flutes rounder the fuller it is at each end."""
    deep = depth.mm
    span = min(edge.mm, LONGEST * deep)
    top = -GARMENT * deep
    parts = drawn_parts(edge, span)
    shapes: list[Shape] = []
    low = deep
    for left, right in parts:
        full = tuple(first + (last - first) * x / span for x in (left, right))
        break_above = freehand((left, top), (right, top))
        shapes.append(Area((*break_above, (right, 0.0), (left, 0.0)), Tone.SECOND, outline=None))
        shapes.append(Stroke(break_above, Line.BREAK))
        flutes = _flutes((left, right), deep, (full[0], full[1]))
        low = min(low, deep - 0.6 * flutes[0].swing)
        shapes.extend(_hanging(flutes, deep))
        shapes.append(Stroke(((left, 0.0), (right, 0.0)), Line.CUT))
    shapes.extend(broken_sides(parts, top, low))
    shapes.append(measured((0.0, top), (span, top), edge, Side.ABOVE))
    shapes.append(Dimension((span, 0.0), (span, deep), depth, Side.RIGHT))
    return tuple(shapes)


def _flutes(part: tuple[float, float], deep: float, fullness: tuple[float, float]) -> list[_Flute]:
    """Flutes side by side, each a little unlike the one before it."""
    left, right = part
    count = max(2, min(18, round((right - left) / deep * 2.2)))
    widths = [WIDTHS[number % len(WIDTHS)] for number in range(count)]
    unit = (right - left) / fsum(widths)
    flutes, at = [], left
    for number, width in enumerate(widths):
        wide = width * unit
        share = (number + 0.5) / count
        full = min(2.2, max(0.0, fullness[0] + (fullness[1] - fullness[0]) * share - 1))
        hollow = wide * (0.26 - 0.07 * full)
        swing = min(wide * 0.22, deep * 0.14) * full**0.6
        front = (at + hollow, at + wide - hollow)
        flutes.append(_Flute(at, at + wide, front, swing, BEGINS[number % len(BEGINS)]))
        at += wide
    return flutes


def _hanging(flutes: Sequence[_Flute], deep: float) -> Iterable[Shape]:
    hem = _hem(flutes, deep)
    seam = ((flutes[0].left, 0.0), (flutes[-1].right, 0.0))
    yield Area((*seam, *reversed(hem)), Tone.RIGHT, outline=None)
    for before, after in pairwise(flutes):
        yield _hollow(before, after, deep)
        yield from _creases(before, after, deep)
    for flute in flutes:
        yield _break_of_front(flute, deep)
    yield Stroke(hem, Line.CUT)


def _hem(flutes: Sequence[_Flute], deep: float) -> tuple[Point, ...]:
    """The hem: wide arches where a flute comes forward, narrow ones where it lies back."""
    points: list[Point] = []
    for flute in flutes:
        start, end = flute.front
        points.extend(_arch(flute.left, start, deep, -0.6 * flute.swing, (0.5, 1.0)))
        points.extend(_arch(start, end, deep, flute.swing, (0.0, 1.0)))
        points.extend(_arch(end, flute.right, deep, -0.6 * flute.swing, (0.0, 0.5)))
    return tuple(points)


def _arch(
    left: float, right: float, height: float, swing: float, share: tuple[float, float]
) -> Iterable[Point]:
    for step in range(STEPS + 1):
        along = step / STEPS
        turn = sin(pi * (share[0] + (share[1] - share[0]) * along))
        yield left + (right - left) * along, height + swing * turn


def _hollow(before: _Flute, after: _Flute, deep: float) -> Shape:
    """The cloth in the shade between two flutes, wide at the hem and gone below the seam."""
    foot = (
        *_arch(before.front[1], before.right, deep, -0.6 * before.swing, (0.0, 0.5)),
        *_arch(after.left, after.front[0], deep, -0.6 * after.swing, (0.5, 1.0)),
    )
    left, right = (
        _crease(side, before.right, before.begins, deep)
        for side in (before.front[1], after.front[0])
    )
    return Area((*foot, *right[1:], *reversed(left[1:])), Tone.SHADE, outline=None)


def _creases(before: _Flute, after: _Flute, deep: float) -> Iterable[Shape]:
    """The sides of two flutes, which meet where the hollow between them fades out."""
    for side in (before.front[1], after.front[0]):
        yield Stroke(_crease(side, before.right, before.begins, deep), Line.THIN)


def _crease(foot: float, middle: float, begins: float, deep: float) -> tuple[Point, ...]:
    """A line from the hem up to the middle of the hollow, bent like the side of a flute."""
    points = []
    for step in range(STEPS + 1):
        along = step / STEPS
        points.append((foot + (middle - foot) * along**1.6, deep * (1 - (1 - begins) * along)))
    return tuple(points)


def _break_of_front(flute: _Flute, deep: float) -> Shape:
    """A short line up from the hem, where the front of a flute turns."""
    start, end = flute.front
    x = start + 0.36 * (end - start)
    foot = deep + flute.swing * sin(pi * 0.36)
    return Stroke(((x, foot - 0.02 * deep), (x - 0.02 * deep, foot - 0.3 * deep)), Line.THIN)
