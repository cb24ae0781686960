"""Worked knots: where they lie, and the wraps round a needle."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Dots,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

MOST_WRAPS = 14
MOST_ROUND = 160
"""So many knots are drawn round; more of them as dots."""
LEAST_ROUND = 0.011
"""Radius of a knot that is drawn round, at the least, as a share of what is drawn."""


@dataclass(frozen=True)
class KnotPlan:
    """Where knots lie on the cloth, their measures, how thick a knot or how long a bullion is.

    One of the two sizes is 0.
    """

    at: Sequence[Point]
    spacing: Value | None
    length: Value | None
    height: Value | None
    bullion: float
    thickness: float


def knots_placed(plan: KnotPlan, at_scale: bool = False) -> tuple[Shape, ...]:
    """The knots on a piece of cloth, with the distances between them."""
    xs, ys = [x for x, _ in plan.at], [y for _, y in plan.at]
    left, right, top, bottom = min(xs), max(xs), min(ys), max(ys)
    edge = max(0.08 * max(right - left, bottom - top), plan.bullion, 3.0)
    outline = rectangle(left - edge, top - edge, right - left + 2 * edge, bottom - top + 2 * edge)
    shapes: list[Shape] = [Area(outline, Tone.RIGHT, Line.THIN)]
    if plan.bullion:
        half = plan.bullion / 2
        shapes.extend(Stroke(((x, y - half), (x, y + half)), Line.CUT) for x, y in plan.at)
    elif at_scale or len(plan.at) > MOST_ROUND:
        shapes.append(Dots(tuple(plan.at)))
    else:
        radius = max(plan.thickness / 2, LEAST_ROUND * max(right - left, bottom - top))
        shapes.extend(_ring(at, radius, radius) for at in plan.at)
    high, low = top - edge, bottom + edge
    if plan.spacing is not None:
        shapes.append(
            Dimension((left, high), (left + plan.spacing.mm, high), plan.spacing, Side.ABOVE)
        )
    if plan.length is not None:
        shapes.append(Dimension((left, low), (right, low), plan.length, Side.BELOW))
    if plan.height is not None:
        shapes.append(Dimension((left - edge, top), (left - edge, bottom), plan.height, Side.LEFT))
    return tuple(shapes)


def numbered(plan: KnotPlan, at_scale: bool = False) -> tuple[Shape, ...]:
    """Chosen points with their numbers beside them."""
    shapes = list(knots_placed(plan, at_scale))
    for number, at in enumerate(plan.at, 1):
        shapes.append(Note(at, sentence(str(number)), anchor="start", above=True))
    return tuple(shapes)


@dataclass(frozen=True)
class Wrapped:
    """Thread wrapped round a needle: the needle, the thread, how often, how long that is."""

    needle: Value
    thread: Value
    wraps: int
    length: Value | None


def wraps_round_needle(wrapped: Wrapped) -> Scene:
    """The needle in the cloth with its wraps lying side by side, enlarged."""
    needle, thread = wrapped.needle.mm, wrapped.thread.mm
    shown = min(wrapped.wraps, MOST_WRAPS)
    long = thread * shown
    point, eye = -6 * needle, long + 8 * needle
    half = needle / 2
    shapes: list[Shape] = [
        Area(
            (
                (point, 0),
                (point + 4 * needle, -half),
                (eye, -half),
                (eye, half),
                (point + 4 * needle, half),
            ),
            Tone.SHADE,
        ),
    ]
    for number in range(shown):
        middle = ((number + 0.5) * thread, 0.0)
        shapes.append(_ring(middle, thread / 2, half + thread))
    if wrapped.length is not None and shown == wrapped.wraps:
        low = half + thread
        shapes.append(Dimension((0, low), (long, low), wrapped.length, Side.BELOW))
    shapes.append(Dimension((eye, -half), (eye, half), wrapped.needle, Side.RIGHT))
    return Scene(
        sentence("Wraps round the needle"),
        sentence(
            "{wraps} wraps of a thread {thread} thick round a needle {needle} thick.",
            wraps=wrapped.wraps,
            thread=wrapped.thread,
            needle=wrapped.needle,
        ),
        tuple(shapes),
        tallest=90.0,
    )


def _ring(at: Point, wide: float, tall: float) -> Area:
    """One wrap seen from the side."""
    points = []
    for step in range(20):
        turn = 2 * pi * step / 20
        points.append((at[0] + wide * cos(turn), at[1] + tall * sin(turn)))
    return Area(tuple(points), Tone.SECOND)
