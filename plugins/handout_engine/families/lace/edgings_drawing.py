"""Lace edging gathered to an edge, straight or round a corner, and ribbon in beading."""

from __future__ import annotations

from collections.abc import Iterable
from math import cos, pi, sin

from handout_engine.amounts.values import Value
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
from handout_engine.families.lace.trims_drawing import TrimPlace, trim_face
from handout_engine.shared.nets_drawing import between

WIDTHS_DRAWN = 7.0
"""How many widths of the lace are drawn along the edge at most."""


def edging(edge: Value, width: Value, fullness: float, corner: bool) -> tuple[Shape, ...]:
    """A stretch of the edge with its lace below; at a corner the lace fans round it."""
    wide = width.mm
    span = min(edge.mm, WIDTHS_DRAWN * wide)
    shapes: list[Shape] = [
        Area(rectangle(0, -1.2 * wide, span, 1.2 * wide), Tone.SECOND, outline=None),
        Stroke(((0, 0), (0, -1.2 * wide)), Line.THIN),
    ]
    heading = [(span * n / 128, 0.0) for n in range(129)]
    outer = [(x, wide) for x, _ in heading]
    if corner:
        turns = [pi / 2 * n / 40 for n in range(1, 41)]
        heading += [(span, 0.0) for _ in turns]
        outer += [(span + wide * sin(turn), wide * cos(turn)) for turn in turns]
        rise = 1.2 * wide
        heading += [(span, -rise * n / 24) for n in range(1, 25)]
        outer += [(span + wide, -rise * n / 24) for n in range(1, 25)]
    else:
        shapes.append(Stroke(((span, 0), (span, -1.2 * wide)), Line.THIN))
    shapes.extend(_gathered(heading, outer, fullness))
    shapes.append(Dimension((0, 0), (0, wide), width, Side.LEFT))
    if span == edge.mm and not corner:
        shapes.append(Dimension((0, wide * 1.05), (span, wide * 1.05), edge, Side.BELOW))
    return tuple(shapes)


def _gathered(heading: list[Point], outer: list[Point], fullness: float) -> Iterable[Shape]:
    """Lace between a heading and a scalloped outer edge, with folds that fan from the heading."""
    waves = []
    for number, (near, far) in enumerate(zip(heading, outer, strict=True)):
        waves.append(between(near, far, 1 + 0.06 * sin(number * pi / 4)))
    yield Area((*heading, *reversed(waves)), Tone.RIGHT, outline=None)
    for number, (near, far) in enumerate(zip(heading, waves, strict=True)):
        reach = (0.66, 0.3, 0.5, 0.3)[number // 2 % 4]
        if number % (2 if fullness > 1.5 else 4) == 0:
            yield Stroke((near, between(near, far, reach)), Line.THIN)
    for share in (0.7, 0.84):
        line = tuple(between(n, f, share) for n, f in zip(heading, waves, strict=True))
        yield Stroke(line, Line.THIN)
    yield Stroke(tuple(waves), Line.CUT)
    yield Stroke(tuple(dict.fromkeys(heading)), Line.CUT)


def beading_face(run: Value, width: Value, slot: Value, ribbon: Value) -> tuple[Shape, ...]:
    """A stretch of beading with the ribbon woven through it."""
    span = min(run.mm, WIDTHS_DRAWN / 2 * width.mm)
    place = TrimPlace(0, 0, span, width.mm)
    shapes: list[Shape] = [*trim_face("cloth", place)]
    openings = 2 * max(2, round(span / width.mm))
    step = span / openings
    middle, half, reach = width.mm / 2, ribbon.mm / 2, slot.mm / 2
    for number in range(openings):
        left = (number + 0.5) * step
        hole = rectangle(left - 0.1 * step, middle - reach, 0.2 * step, 2 * reach)
        shapes.append(Area(hole, Tone.GROUND, Line.THIN))
        if number % 2 == 0:
            shapes.append(Area(rectangle(left, middle - half, step, 2 * half), Tone.RIGHT))
    for x in (0.0, span):
        shapes.append(Stroke(((x, 0), (x, width.mm)), Line.THIN))
    shapes.append(Dimension((0, 0), (0, width.mm), width, Side.LEFT))
    shapes.append(Dimension((0, middle - reach), (0, middle + reach), slot, Side.LEFT))
    shapes.append(Dimension((span, middle - half), (span, middle + half), ribbon, Side.RIGHT))
    return tuple(shapes)


def weaving(openings: int, pitch: Value) -> tuple[Shape, ...]:
    """The ribbon seen from the side, over and under the bars between the openings."""
    drawn = min(openings, 8)
    step = pitch.mm
    lift = 0.22 * step
    shapes: list[Shape] = []
    for number in range(drawn + 1):
        left = number * step - 0.4 * step
        shapes.append(Area(rectangle(left, -0.05 * step, 0.8 * step, 0.1 * step), Tone.SECOND))
    path: list[Point] = []
    for number in range(drawn * 12 + 13):
        x = (number / 12 - 0.5) * step
        path.append((x, lift * cos(pi * (number / 12 - 0.5))))
    shapes.append(Stroke(tuple(path), Line.CUT))
    shapes.append(Dimension((0.5 * step, lift), (1.5 * step, lift), pitch, Side.BELOW))
    return tuple(shapes)
