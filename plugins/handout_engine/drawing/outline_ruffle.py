"""A ruffle lying flat round a bent edge, seen from above."""

from __future__ import annotations

from math import cos, pi, radians, sin

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
from handout_engine.values import Value, sentence

STEPS = 96
FLAT = 5.0


def round_outline(
    edge: Value, depth: Value, hem: Value, turning: float, convex: bool
) -> tuple[Shape, ...]:
    """The edge as an even curve of its length and turning, with the ruffle beside it.

    An edge that turns more than a full round is drawn as one full round.
    """
    bend = radians(max(FLAT, min(turning, 360.0)))
    radius = edge.mm / bend
    folds = max(8, min(60, round(edge.mm / depth.mm * 3)))
    swing = depth.mm * 0.05
    hem_radius = radius + depth.mm if convex else radius - depth.mm
    sewn = _arc(radius, bend)
    wavy = tuple(
        _at(hem_radius + swing * sin(folds * 2 * pi * step / (STEPS * 4)), bend, step / (STEPS * 4))
        for step in range(STEPS * 4 + 1)
    )
    shapes: list[Shape] = []
    if convex:
        shapes.append(Area((*sewn, (0.0, 0.0)) if bend < 6.2 else sewn, Tone.SECOND, None))
    shapes.append(Area((*wavy, *reversed(sewn)), Tone.RIGHT, outline=None))
    for number in range(folds):
        share = (number + 0.5) / folds
        reach = (0.55, 0.3, 0.45)[number % 3] * (hem_radius - radius)
        shapes.append(
            Stroke((_at(radius, bend, share), _at(radius + reach, bend, share)), Line.THIN)
        )
    shapes.extend((Stroke(sewn, Line.CUT), Stroke(wavy, Line.CUT)))
    shapes.extend(_words(edge, depth, hem, bend, (radius, hem_radius)))
    return tuple(shapes)


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
