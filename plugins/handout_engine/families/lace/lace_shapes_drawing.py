"""Scallops, diamonds and loops of lace: one as a template, and a row of them along an edge."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import acos, asin, cos, degrees, pi, sin

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import Dimension, Line, Point, Shape, Side, Stroke
from handout_engine.shared.nets_drawing import lace_between, straight
from handout_engine.shared.round_lace_drawing import arc

EVERY = 3
MOST_DRAWN = 6


@dataclass(frozen=True)
class LaceShape:
    """One shape on its centre line: its kind, how wide and how high, and how wide the lace is."""

    kind: str
    across: Value
    height: Value
    lace: Value

    def line(self, away: float) -> list[Point]:
        """A line `away` mm outside the centre line; the foot of the shape is at (0, 0)."""
        width, height = self.across.mm, self.height.mm
        if self.kind == "diamond":
            return _diamond(width, height, away)
        if self.kind == "scallop":
            radius = (width * width / 4 + height * height) / (2 * height)
            half = degrees(asin(min(1.0, width / (2 * radius))))
            half = half if 2 * height <= width else 180 - half
            return arc((0, radius - height), radius + away, -half, half, self._steps(radius))
        radius = width / 2
        foot = height - radius
        half = 180 - degrees(acos(radius / foot))
        around = arc((0, -foot), radius + away, -half, half, self._steps(radius))
        turn = pi - half / 180 * pi
        aside = away * cos(turn), away * sin(turn)
        left, right = (-aside[0], aside[1]), (aside[0], aside[1])
        return [*straight(left, around[0], 12)[:-1], *around, *straight(around[-1], right, 12)[1:]]

    def _steps(self, radius: float) -> int:
        return EVERY * max(6, min(24, round(radius / self.lace.mm * 8)))


def _diamond(width: float, height: float, away: float) -> list[Point]:
    """The four sides of a diamond `away` outside of one that is width × height."""
    side = (width * width + height * height) ** 0.5
    grown = 1 + away * 2 * side / (width * height)
    half, tall = width / 2 * grown, height / 2 * grown
    middle = -height / 2
    corners = [(-half, middle), (0.0, middle - tall), (half, middle), (0.0, middle + tall)]
    points: list[Point] = []
    for start, end in zip(corners, [*corners[1:], corners[0]], strict=True):
        points.extend(straight(start, end, 15)[:-1])
    return [*points, corners[0]]


def shape_template(shape: LaceShape) -> tuple[Shape, ...]:
    """One shape to trace: both edges, the centre line dashed, width and height on the latter."""
    half = shape.lace.mm / 2
    outer = shape.line(half)
    shapes: list[Shape] = list(lace_between(outer, shape.line(-half), EVERY))
    shapes.append(Stroke(tuple(shape.line(0)), Line.HIDDEN))
    width, height = shape.across.mm / 2, shape.height.mm
    foot = max(y for _, y in outer)
    reach = max(x for x, _ in outer)
    shapes.append(Dimension((-width, foot), (width, foot), shape.across, Side.BELOW))
    for y in (-height, 0.0):
        shapes.append(Stroke(((0, y), (-reach, y)), Line.THIN))
    shapes.append(Dimension((-reach, -height), (-reach, 0), shape.height, Side.LEFT))
    return tuple(shapes)


def shape_row(shape: LaceShape, pitch: Value, number: int) -> tuple[Shape, ...]:
    """Some of the shapes along their edge, and how far they stand from each other."""
    shapes: list[Shape] = []
    half = shape.lace.mm / 2
    drawn = min(number, MOST_DRAWN)
    edges = shape.line(half), shape.line(-half)
    if shape.kind == "loop" or shape.across.mm < pitch.mm:
        long, steps = pitch.mm * drawn, min(120, 3 * round(pitch.mm * drawn / shape.lace.mm))
        foot_lines = (straight((0, y), (long, y), max(3, steps)) for y in (-half, half))
        shapes.extend(lace_between(next(foot_lines), next(foot_lines)))
    for place in range(drawn):
        moved = [_moved(edge, pitch.mm * (place + 0.5)) for edge in edges]
        shapes.extend(lace_between(moved[0], moved[1], EVERY))
    foot = max(y for _, y in edges[0])
    shapes.append(Stroke(((0, 0), (pitch.mm * drawn, 0)), Line.THIN))
    for place in range(drawn + 1):
        mark = pitch.mm * place
        shapes.append(Stroke(((mark, -half), (mark, max(half, foot))), Line.THIN))
    shapes.append(Dimension((0, foot), (pitch.mm, foot), pitch, Side.BELOW))
    return tuple(shapes)


def _moved(points: Sequence[Point], along: float) -> list[Point]:
    return [(x + along, y) for x, y in points]
