"""Lace shaped round an arc or a circle, and the flat lace with its marks."""

from __future__ import annotations

from math import cos, pi, radians, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Dimension, Line, Note, Point, Shape, Side, Stroke
from handout_engine.shared.nets_drawing import lace_between, straight


def arc(centre: Point, radius: float, start: float, end: float, steps: int) -> list[Point]:
    """Points on an arc from one direction to another, in degrees clockwise from the top."""
    turns = (radians(start + (end - start) * number / steps) for number in range(steps + 1))
    return [(centre[0] + radius * sin(turn), centre[1] - radius * cos(turn)) for turn in turns]


def round_lace(
    radii: tuple[Value, Value], width: Value, angle: float, parts: int
) -> tuple[Shape, ...]:
    """The shaped lace seen from the right side, with the marks that divide it."""
    outer, inner = radii[0].mm, radii[1].mm
    every = 3
    steps = every * max(8, min(70, round(outer * radians(angle) / width.mm * 2)))
    half = angle / 2
    edges = (arc((0, 0), radius, -half, half, steps) for radius in (outer, inner))
    shapes: list[Shape] = list(lace_between(next(edges), next(edges), every))
    whole = angle >= 360
    for number in range(parts if whole else parts + 1):
        turn = -half + angle * number / parts
        ends = arc((0, 0), outer, turn, turn, 1)[0], arc((0, 0), inner, turn, turn, 1)[0]
        end = number in (0, parts)
        shapes.append(Stroke(ends, Line.CUT if end else Line.HIDDEN))
    widest = outer * (1.0 if angle >= 180 else sin(radians(half)))
    for radius, side, x in ((radii[0], Side.LEFT, -widest), (radii[1], Side.RIGHT, widest)):
        for height in (0.0, -radius.mm):
            shapes.append(Stroke(((0, height), (x, height)), Line.THIN))
        shapes.append(Dimension((x, -radius.mm), (x, 0), radius, side))
    return tuple(shapes)


def marked_lace(outer: Value, inner: Value, width: Value) -> tuple[Shape, ...]:
    """One part of the lace: flat above, drawn up along its inner heading below."""
    long, short, wide = outer.mm, inner.mm, width.mm
    steps = max(6, min(80, round(long / wide * 3)))
    shapes: list[Shape] = list(
        lace_between(straight((0, 0), (long, 0), steps), straight((0, wide), (long, wide), steps))
    )
    thread = 0.92 * wide
    shapes.append(Stroke(((0, thread), (long, thread)), Line.GATHER))
    for x in (0.0, long):
        shapes.append(Stroke(((x, 0), (x, wide)), Line.HIDDEN))
    shapes.append(Dimension((0, 0), (long, 0), outer, Side.ABOVE))
    shapes.append(Dimension((0, 0), (0, wide), width, Side.LEFT))
    top = wide + 0.35 * long
    shapes.extend(_drawn_up(long, short, wide, top))
    shapes.append(Note((long / 2, (wide + top) / 2), sentence("draw the dotted thread")))
    foot = top + wide + 0.16 * long
    shapes.append(Note((long / 2, foot), sentence("{inner} along this edge", inner=inner)))
    return tuple(shapes)


def _drawn_up(long: float, short: float, wide: float, top: float) -> tuple[Shape, ...]:
    """The same part when its inner heading is short: a sector of a ring, bulging upward."""
    turn = (long - short) / wide
    if turn < 0.02 or turn > pi:
        left = (long - short) / 2
        inner = straight((left, top + wide), (left + short, top + wide), 24)
        return lace_between(straight((0, top), (long, top), 24), inner)
    radius, half = long / turn, turn * 90 / pi
    centre = (long / 2, top + radius)
    steps = 3 * max(6, min(40, round(long / wide * 3)))
    edges = (arc(centre, reach, -half, half, steps) for reach in (radius, radius - wide))
    return lace_between(next(edges), next(edges), 3)
