"""Flounces: the outline to cut, and how they hang."""

from __future__ import annotations

from math import pi, sin

from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Point,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.flounces import Spiral, arc, sector
from handout_engine.values import Value

LONGEST = 4.0
"""A flounce longer than so many times its depth is drawn in part."""


def cut_outline(radii: tuple[Value, Value, Value], degrees: float) -> tuple[Shape, ...]:
    """A ring or arc to cut: inner radius, seam line and outer radius, measured straight down."""
    inner, seam, outer = radii
    outline = sector(inner.mm, outer.mm, degrees)
    right = max(x for x, _ in outline)
    shapes: list[Shape] = [
        Area(outline, Tone.RIGHT),
        Stroke(tuple(arc(seam.mm, degrees)), Line.STITCH),
        Stroke(((-0.02 * outer.mm, 0.0), (0.02 * outer.mm, 0.0)), Line.THIN),
        Stroke(((0.0, -0.02 * outer.mm), (0.0, 0.02 * outer.mm)), Line.THIN),
        Stroke(((0.0, 0.0), (right, 0.0)), Line.HIDDEN),
    ]
    for value in radii:
        shapes.append(Stroke(((0.0, value.mm), (right, value.mm)), Line.HIDDEN))
    shapes.append(Dimension((right, 0.0), (right, inner.mm), inner, Side.RIGHT))
    shapes.append(Dimension((-right, 0.0), (-right, seam.mm), seam, Side.LEFT))
    shapes.append(Dimension((right, 0.0), (right, outer.mm), outer, Side.RIGHT))
    middle = (inner.mm + outer.mm) / 2
    shapes.append(Grain((0.0, middle), (0.0, 1.0)))
    return tuple(shapes)


def cut_spiral(spiral: Spiral, turns: float, start: Value, depth: Value) -> tuple[Shape, ...]:
    """A spiral to cut: its inner line, one depth further out its outer line, and the end cuts."""
    inner = spiral.points(turns)
    outer = Spiral(spiral.start + spiral.pitch, spiral.pitch).points(turns)
    first, last = (inner[0], outer[0]), (inner[-1], outer[-1])
    top = min(y for _, y in (*inner, *outer, (0.0, 0.0)))
    marks = [(x, top) for x in (0.0, inner[0][0], outer[0][0])]
    return (
        Area((*outer, *reversed(inner)), Tone.RIGHT, outline=None),
        Stroke(tuple(inner), Line.CUT),
        Stroke(tuple(outer), Line.CUT),
        Stroke(first, Line.CUT),
        Stroke(last, Line.CUT),
        Stroke(((0.0, 0.0), inner[0]), Line.HIDDEN),
        *(Stroke(((x, 0.0), (x, top)), Line.HIDDEN) for x, _ in marks),
        Dimension(marks[0], marks[1], start, Side.ABOVE),
        Dimension(marks[1], marks[2], depth, Side.ABOVE),
        Grain((0.0, 0.0), (0.0, 1.0)),
    )


def flounce_hanging(edge: Value, depth: Value, first: float, last: float) -> tuple[Shape, ...]:
    """A stretch of the flounce below its edge, its ripples deeper the fuller it is at each end."""
    span = min(edge.mm, LONGEST * depth.mm)
    deep = depth.mm
    count = max(4, min(24, round(span / deep * 2.4)))
    hem = _hem(span, deep, count, (first, last))
    shapes: list[Shape] = [
        Area(rectangle(0, -0.4 * deep, span, 0.4 * deep), Tone.SECOND, outline=None),
        Area(((0.0, 0.0), (span, 0.0), *reversed(hem)), Tone.RIGHT, outline=None),
    ]
    for number in range(count):
        x = span * (number + 0.5) / count
        shapes.append(Stroke(((x, 0.12 * deep), (x + 0.02 * span / count, 0.86 * deep)), Line.THIN))
    shapes.append(Stroke(((0.0, 0.0), (span, 0.0)), Line.CUT))
    shapes.append(Stroke(((0.0, -0.4 * deep), (0.0, 0.0), hem[0]), Line.CUT))
    shapes.append(Stroke(hem, Line.CUT))
    shapes.append(Stroke((hem[-1], (span, 0.0), (span, -0.4 * deep)), Line.CUT))
    shapes.append(Dimension((0.0, -0.4 * deep), (span, -0.4 * deep), edge, Side.ABOVE))
    shapes.append(Dimension((span, 0.0), (span, deep), depth, Side.RIGHT))
    return tuple(shapes)


def _hem(span: float, deep: float, count: int, fullness: tuple[float, float]) -> tuple[Point, ...]:
    steps = count * 12
    points = []
    for step in range(steps + 1):
        share = step / steps
        full = fullness[0] + (fullness[1] - fullness[0]) * share
        swing = min(0.14 * deep, span / count * 0.16 * (full - 1))
        points.append((span * share, deep + swing * sin(2 * pi * count * share)))
    return tuple(points)
