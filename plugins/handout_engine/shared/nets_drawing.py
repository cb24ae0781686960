"""Lace laid along any line: a net between an inner and an outer edge."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.drawing.scene import Area, Line, Point, Shape, Stroke, Tone

Edge = Sequence[Point]


def lace_between(outer: Edge, inner: Edge, every: int = 1) -> tuple[Shape, ...]:
    """Lace between two edges given by equally many points; the net takes `every` so many."""
    face = (*outer, *reversed(inner))
    return (
        Area(face, Tone.RIGHT, outline=None),
        *_net(outer[::every], inner[::every]),
        Stroke(tuple(outer), Line.CUT),
        Stroke(tuple(inner), Line.CUT),
    )


def _net(outer: Edge, inner: Edge) -> tuple[Shape, ...]:
    lines = []
    for way in (0, 1):
        zigzag = []
        for number, (out, within) in enumerate(zip(outer, inner, strict=True)):
            near, far = between(out, within, 0.12), between(out, within, 0.88)
            zigzag.append(near if (number + way) % 2 else far)
        lines.append(Stroke(tuple(zigzag), Line.THIN))
    return tuple(lines)


def between(start: Point, end: Point, share: float) -> Point:
    """The point at a share of the way from one to another."""
    return start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share


def straight(start: Point, end: Point, steps: int) -> list[Point]:
    """Points along a straight line, both ends included."""
    return [between(start, end, number / steps) for number in range(steps + 1)]
