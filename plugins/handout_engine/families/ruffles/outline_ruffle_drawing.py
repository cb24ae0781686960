"""A ruffle lying flat round a bent edge, seen from above."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from math import cos, pi, radians, sin

from handout_engine.amounts.values import Value, sentence
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
)
from handout_engine.shared.gathering_drawing import GatheredLayer, gathered

STEPS = 96
FLAT = 5.0
CLOSED = radians(359.0)
"""From this turning on, the outline closes and has no ends."""
MOST_FOLDS = 40


def round_outline(
    edge: Value, layer: GatheredLayer, hem_line: Value, turning: float, convex: bool
) -> tuple[Shape, ...]:
    """The edge as an even curve of its length and turning, with the ruffle beside it.

    An edge that turns more than a full round is drawn as one full round.
    """
    bend = radians(max(FLAT, min(turning, 360.0)))
    radius = edge.mm / bend
    sewn = _arc(radius, bend)
    shapes: list[Shape] = []
    if convex:
        shapes.append(Area((*sewn, (0.0, 0.0)) if bend < CLOSED else sewn, Tone.SECOND, None))
    way = 1 if convex else -1
    for shape in gathered(layer, 0.0, edge.mm, layer.depth.mm, MOST_FOLDS):
        shapes.append(_bent(shape, edge.mm, bend, way))
    shapes.append(Stroke(sewn, Line.CUT))
    if bend < CLOSED:
        for share in (0.0, 1.0):
            ends = (_at(radius, bend, share), _at(radius + way * layer.depth.mm, bend, share))
            shapes.append(Stroke(ends, Line.CUT))
    hem_radius = radius + way * layer.depth.mm
    shapes.extend(_words(edge, layer.depth, hem_line, bend, (radius, hem_radius)))
    return tuple(shapes)


def _bent(shape: Shape, length: float, bend: float, way: int) -> Shape:
    """A shape of the straight ruffle, bent with the edge it hangs from.

    The seam lies all along the arc, so what runs along it from end to end is drawn with many
    points.
    """
    assert isinstance(shape, Area | Stroke)
    radius = length / bend
    flat = _subdivided(shape.points) if isinstance(shape, Area) else shape.points
    points = tuple(_at(radius + way * y, bend, x / length) for x, y in flat)
    return replace(shape, points=points)


def _subdivided(points: tuple[Point, ...]) -> tuple[Point, ...]:
    """The same line, with points between those of its longest part."""
    found: list[Point] = []
    span = max(x for x, _ in points) - min(x for x, _ in points)
    for (x1, y1), (x2, y2) in pairwise(points):
        steps = STEPS if abs(x2 - x1) > 0.5 * span and abs(y2 - y1) < 1e-9 else 1
        found.extend(
            (x1 + (x2 - x1) * step / steps, y1 + (y2 - y1) * step / steps) for step in range(steps)
        )
    return (*found, points[-1])


def _words(
    edge: Value, depth: Value, hem: Value, bend: float, radii: tuple[float, float]
) -> list[Shape]:
    """Depth, hem and edge, said at the middle of the curve."""
    radius, hem_radius = radii
    low, high = sorted(radii)
    clear = high * 0.14
    widest = high * (sin(bend / 2) if bend < pi else 1.0)
    over, under = (0.0, -high - clear), (0.0, -low + clear)
    of_hem, of_edge = (over, under) if hem_radius > radius else (under, over)
    return [
        Stroke(((0.0, -low), (widest, -low)), Line.HIDDEN),
        Stroke(((0.0, -high), (widest, -high)), Line.HIDDEN),
        Dimension((widest, -low), (widest, -high), depth, Side.RIGHT),
        Note(of_hem, sentence("hem {hem}", hem=hem), (0.0, -hem_radius)),
        Note(of_edge, sentence("edge {edge}", edge=edge), (0.0, -radius)),
    ]


def _arc(radius: float, bend: float) -> tuple[Point, ...]:
    return tuple(_at(radius, bend, step / STEPS) for step in range(STEPS + 1))


def _at(radius: float, bend: float, share: float) -> Point:
    """A point on an arc that is symmetrical about the vertical, its middle at the top."""
    angle = (share - 0.5) * bend
    return (radius * sin(angle), -radius * cos(angle))
