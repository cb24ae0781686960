"""Corded and hollow tubes of bias, cut through, their cloth drawn thick."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
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
from handout_engine.drawing.sections import layer

STEPS = 24


@dataclass(frozen=True)
class Piping:
    """A covered cord: its diameter and the allowance that stands out from it."""

    cord: Value
    seam: Value


def piping_section(piping: Piping) -> Scene:
    """The cord in its covering, cut through."""
    return Scene(
        sentence("Piping, cut through"),
        sentence(
            "A cord {cord} thick in its covering, stitched close; {seam} of allowance stands out.",
            cord=piping.cord,
            seam=piping.seam,
        ),
        tuple(_covered(piping)),
        tallest=170,
    )


def _covered(piping: Piping) -> Iterable[Shape]:
    radius, seam = piping.cord.mm / 2, piping.seam.mm
    thick = 0.16 * radius
    out = radius + 0.7 * thick
    near = 0.65 * thick
    circle = [(out * sin(_turn(step)), -out * cos(_turn(step))) for step in range(STEPS + 1)]
    end = out + seam
    yield Area(_circle(radius, 48), Tone.WRONG)
    path = ((-near, end), (-near, out), *circle, (near, out), (near, end))
    yield layer(path, thick, Tone.SECOND)
    yield Stroke(((-3 * thick, out), (3 * thick, out)), Line.STITCH)
    yield Dimension((-radius, -out), (radius, -out), piping.cord, Side.ABOVE)
    yield Dimension((near, out), (near, end), piping.seam, Side.RIGHT)
    yield Note((-1.6 * radius, 0.9 * radius), sentence("cord"), (-0.3 * radius, 0.2 * radius))


def _turn(step: int) -> float:
    """Round the cord from just left of its lowest point to just right of it."""
    return -0.94 * pi + 1.88 * pi * step / STEPS


def _circle(radius: float, steps: int) -> tuple[Point, ...]:
    return tuple(
        (radius * sin(2 * pi * step / steps), -radius * cos(2 * pi * step / steps))
        for step in range(steps)
    )


def piped_seam(piping: Piping) -> Scene:
    """A stretch of a piped seam from the right side."""
    deep = piping.cord.mm
    long, cloth = 14 * deep, 2.6 * deep
    return Scene(
        sentence("The piped seam"),
        sentence("From the right side, the cord stands {cord} high in the seam.", cord=piping.cord),
        (
            Area(rectangle(0, -cloth, long, cloth), outline=None),
            Area(rectangle(0, deep, long, cloth), outline=None),
            Area(rectangle(0, 0, long, deep), Tone.SECOND),
            Stroke(((0, -cloth), (0, 0)), Line.THIN),
            Stroke(((0, deep), (0, deep + cloth)), Line.THIN),
            Stroke(((long, -cloth), (long, 0)), Line.THIN),
            Stroke(((long, deep), (long, deep + cloth)), Line.THIN),
            Note((long / 2, -cloth / 2), sentence("right side")),
            Note((long / 2, deep + cloth / 2), sentence("right side")),
            Dimension((long, 0), (long, deep), piping.cord, Side.RIGHT),
        ),
        tallest=150,
    )


@dataclass(frozen=True)
class Tube:
    """A flat tube: its finished width, its allowance, and where its seam lies."""

    finished: Value
    seam: Value
    centred: bool


def tube_section(tube: Tube) -> Scene:
    """The turned tube, cut through, with its allowances inside."""
    where = "on the back, pressed open" if tube.centred else "on one edge"
    return Scene(
        sentence("The tube, cut through"),
        sentence(
            "{finished} wide; its seam lies {where}, with {seam} of allowance inside.",
            finished=tube.finished,
            where=where,
            seam=tube.seam,
        ),
        tuple(_tube(tube)),
        tallest=150,
    )


def _tube(tube: Tube) -> Iterable[Shape]:
    half, seam = tube.finished.mm / 2, tube.seam.mm
    thick = 0.05 * tube.finished.mm
    high = 3.2 * thick
    yield layer((_centred if tube.centred else _edged)(half, seam, high, thick), thick, Tone.SECOND)
    yield Dimension((-half, -high), (half, -high), tube.finished, Side.ABOVE)
    start = 0.0 if tube.centred else -half
    yield Dimension((start, high), (start + seam, high), tube.seam, Side.BELOW)


def _edged(half: float, seam: float, high: float, thick: float) -> tuple[Point, ...]:
    """Both allowances lie together inside, reaching in from the left edge."""
    low = 0.7 * thick
    turn = _half_turn(half - high / 2, high)
    reach = min(-half + seam, half - 1.5 * thick)  # an allowance that fills it ends at the fold
    return (
        (reach, -low),
        (-half, -low),
        (-half, -high),
        *turn,
        (-half, high),
        (-half, low),
        (reach, low),
    )


def _centred(half: float, seam: float, high: float, thick: float) -> tuple[Point, ...]:
    """The allowances lie to both sides of the seam in the middle of the back."""
    inner, near = high - 1.3 * thick, 0.55 * thick
    right = _half_turn(half - high / 2, high)
    left = [(-x, -y) for x, y in right]
    return (
        (-seam, inner),
        (-near, inner),
        (-near, high),
        *left,
        *right,
        (near, high),
        (near, inner),
        (seam, inner),
    )


def _half_turn(x: float, high: float) -> list[Point]:
    """Round the right edge, from its top to its bottom."""
    return [
        (x + high / 2 * sin(pi * step / STEPS), -high * cos(pi * step / STEPS))
        for step in range(STEPS + 1)
    ]
