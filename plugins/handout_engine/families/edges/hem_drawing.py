"""Hems cut through, their thickness much enlarged: the right side of the garment at the left."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, pi, sin

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import Area, Dimension, Line, Point, Shape, Side, Stroke, Tone
from handout_engine.drawing.scene import rectangle as upright
from handout_engine.drawing.sections import layer

REACH = 1.7
"""Height drawn, counted in the depth of the hem."""


def turned_hem(depth: Value, turn: Value | None) -> tuple[Shape, ...]:
    """A single hem, or a double one with its raw edge turned under."""
    deep = depth.mm
    step = 0.05 * deep
    inner = 2 * step if turn else step
    path: list[Point] = [(0, -REACH * deep), (0, 0), (inner, 0), (inner, -deep)]
    if turn:
        path.extend(((step, -deep), (step, -deep + turn.mm)))
    shapes: list[Shape] = [layer(path, 0.5 * step, Tone.RIGHT), _stitch(deep * 0.96, inner + step)]
    shapes.append(Dimension((inner, -deep), (inner, 0), depth, Side.RIGHT))
    if turn:
        shapes.append(Dimension((0, -deep), (0, -deep + turn.mm), turn, Side.LEFT))
    return tuple(shapes)


def faced_hem(depth: Value, turn: Value, seam: Value) -> tuple[Shape, ...]:
    """A strip of a second cloth sewn to the edge and turned up inside."""
    deep, allowance = depth.mm, seam.mm
    reach = max(deep, allowance)
    step = 0.05 * reach
    garment: Sequence[Point] = ((0, -REACH * reach), (0, 0), (step, 0), (step, -allowance))
    facing: Sequence[Point] = (
        (2 * step, -allowance),
        (2 * step, 0),
        (4 * step, 0),
        (4 * step, -deep),
        (3 * step, -deep),
        (3 * step, -deep + turn.mm),
    )
    return (
        layer(garment, 0.5 * step, Tone.RIGHT),
        layer(facing, 0.5 * step, Tone.SECOND),
        _stitch(deep * 0.96, 5 * step),
        Dimension((4 * step, -deep), (4 * step, 0), depth, Side.RIGHT),
        Dimension((0, -allowance), (0, 0), seam, Side.LEFT),
    )


def rolled_hem(taken: Value) -> tuple[Shape, ...]:
    """An edge rolled once round itself and whipped, and above it how much went into the roll."""
    radius = taken.mm / 4
    turns = [2 * pi * part / 24 for part in range(23)]
    roll = [
        (radius - radius * (1 - turn / 25) * cos(turn), radius * (1 - turn / 25) * sin(turn))
        for turn in turns
    ]
    start = -5 * radius
    flat = 7 * radius
    return (
        layer([(0, start), *roll], 0.16 * radius, Tone.RIGHT),
        Stroke(((-radius, -radius), (2.6 * radius, 0.4 * radius)), Line.STITCH),
        layer([(flat, start), (flat, taken.mm)], 0.16 * radius, Tone.RIGHT),
        Stroke(((flat - radius, 0), (flat + radius, 0)), Line.FOLD),
        Dimension((flat, 0), (flat, taken.mm), taken, Side.RIGHT),
    )


def _stitch(height: float, reach: float) -> Stroke:
    return Stroke(((-reach, -height), (2 * reach, -height)), Line.STITCH)


def hemmed_panel(width: Value, long: Value, depth: Value | None) -> tuple[Shape, ...]:
    """A panel from its right side, the hem's stitching and its inner edge seen through."""
    across, down = width.mm, long.mm
    shapes: list[Shape] = [Area(upright(0, 0, across, down))]
    shapes.append(Dimension((0, down), (across, down), width, Side.BELOW))
    shapes.append(Dimension((0, 0), (0, down), long, Side.LEFT))
    if depth is not None:
        place = down - depth.mm
        shapes.append(Stroke(((0, place), (across, place)), Line.STITCH))
        shapes.append(Dimension((across, place), (across, down), depth, Side.RIGHT))
    return tuple(shapes)
