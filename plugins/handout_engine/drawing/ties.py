"""Ties drawn: a pair sewn in at both sides, and a hemmed tie cut through."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.drawing.breaks import left_out, measured
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.drawing.sections import layer
from handout_engine.values import Value, sentence

LONGEST = 7.0
"""A tie is drawn no longer than so many times its width."""


@dataclass(frozen=True)
class Tie:
    """A tie by its named lengths."""

    length: Value
    width: Value
    end: Value
    turn: Value


def sewn_in(tie: Tie, hemmed: bool) -> Scene:
    """A panel with a tie in each of its side seams, from the right side."""
    return Scene(
        sentence("The pair of ties"),
        sentence("Each hangs {length} free and is {width} wide.", length=tie.length,
                 width=tie.width),
        tuple(_sewn_in(tie, hemmed)),
        tallest=150,
    )  # fmt: skip


def _sewn_in(tie: Tie, hemmed: bool) -> Iterable[Shape]:
    wide = tie.width.mm
    long = min(tie.length.mm, LONGEST * wide)
    caught = tie.end.mm
    half, high = 1.2 * wide + caught, 3.0 * wide
    yield Area(rectangle(-half, -high / 2, 2 * half, high), Tone.RIGHT, outline=None)
    for way in (-1, 1):
        seam, tip = way * half, way * (half + long)
        yield Area(rectangle(min(seam, tip), -wide / 2, long, wide), Tone.SECOND)
        inner = way * (half - caught)
        for y in (-wide / 2, wide / 2):
            yield Stroke(((inner, y), (seam, y)), Line.HIDDEN)
        yield Stroke(((inner, -wide / 2), (inner, wide / 2)), Line.HIDDEN)
        yield Stroke(((seam, -high / 2), (seam, high / 2)), Line.CUT)
        if hemmed:
            yield from _hem_lines(tie, way, half, long)
        if long < tie.length.mm:
            gap = sorted((seam + way * 0.6 * long, seam + way * 0.66 * long))
            yield from left_out(((gap[0], -0.6 * wide), (gap[1], 0.6 * wide)), down=True)
    right = half + long
    yield measured((half, wide / 2), (right, wide / 2), tie.length, Side.BELOW)
    yield Dimension((right, -wide / 2), (right, wide / 2), tie.width, Side.RIGHT)
    yield Dimension((-half, -high / 2), (-half + caught, -high / 2), tie.end, Side.ABOVE)


def _hem_lines(tie: Tie, way: int, half: float, long: float) -> Iterable[Shape]:
    """The stitching of the hem round the three free sides."""
    turn = min(0.9 * tie.turn.mm, 0.4 * tie.width.mm)
    y = tie.width.mm / 2 - turn
    tip = way * (half + long - turn)
    yield Stroke(((way * half, -y), (tip, -y), (tip, y), (way * half, y)), Line.STITCH)


def hemmed_section(tie: Tie) -> Scene:
    """A tie of one layer cut through, a double hem at both edges."""
    return Scene(
        sentence("The tie cut through"),
        sentence("{width} wide, each edge turned twice by {turn}.", width=tie.width,
                 turn=tie.turn),
        tuple(_hemmed(tie)),
        tallest=130,
    )  # fmt: skip


def _hemmed(tie: Tie) -> Iterable[Shape]:
    half, turn = tie.width.mm / 2, tie.turn.mm
    step = min(0.035 * tie.width.mm, 0.5 * turn)
    left: list[Point] = [
        (-half + 0.15 * turn, step), (-half + turn, step), (-half + turn, 2 * step),
        (-half, 2 * step), (-half, 0.0),
    ]  # fmt: skip
    right = [(-x, y) for x, y in reversed(left)]
    yield layer([*left, *right], 0.5 * step, Tone.SECOND)
    for way in (-1, 1):
        x = way * (half - 0.85 * turn)
        yield Stroke(((x, -1.5 * step), (x, 3.5 * step)), Line.STITCH)
    yield Dimension((-half, 0), (half, 0), tie.width, Side.ABOVE)
    yield Dimension((half - turn, 2 * step), (half, 2 * step), tie.turn, Side.BELOW)


@dataclass(frozen=True)
class Bow:
    """A bow that is tied: how far from the seam, what hangs of it, and where the hem is."""

    reach: Value
    end: Value
    hem: Value
    width: Value


def tied(bow: Bow) -> Scene:
    """One half of a garment from behind: a tie from its side seam to the bow, and the hem."""
    return Scene(
        sentence("The bow tied"),
        sentence("It is tied {reach} from the seam; its end hangs {end}, the hem lies {hem} down.",
                 reach=bow.reach, end=bow.end, hem=bow.hem),
        tuple(_tied(bow)),
        tallest=200,
    )  # fmt: skip


def _tied(bow: Bow) -> Iterable[Shape]:
    deep, end = bow.hem.mm, bow.end.mm
    half = max(bow.reach.mm, 0.3 * deep)
    wide = min(bow.width.mm, 0.16 * deep)
    above = 0.35 * deep
    yield Area(rectangle(0, -above, half, above + deep), Tone.RIGHT, outline=None)
    yield Stroke(((half, -above), (half, deep)), Line.CUT)
    yield Stroke(((0, deep), (half, deep)), Line.CUT)
    yield Stroke(((0, -above), (0, deep)), Line.THIN)
    yield Area(rectangle(0, -wide / 2, half, wide), Tone.SECOND)
    yield Area(((0, 0), (1.6 * wide, -1.1 * wide), (2.2 * wide, 0), (1.6 * wide, 1.1 * wide)),
               Tone.SECOND)  # fmt: skip
    if end:
        slant = min(0.4 * wide, 0.2 * end)
        yield Area(((0, 0), (wide, 0), (wide, end - slant), (0.2 * wide, end)), Tone.SECOND)
    knot = 0.35 * wide
    yield Area(rectangle(-knot, -knot, 2 * knot, 2 * knot), Tone.SECOND)
    if bow.reach.mm >= half:
        yield Dimension((0, -above), (half, -above), bow.reach, Side.ABOVE)
    yield Dimension((half, 0), (half, deep), bow.hem, Side.RIGHT)
    if end:
        yield Dimension((0, 0), (0, end), bow.end, Side.LEFT)
