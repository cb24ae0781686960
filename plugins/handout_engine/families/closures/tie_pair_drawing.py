"""Ties drawn: a pair sewn in at both sides, and a hemmed tie cut through."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import freehand, left_out, measured
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

LONGEST = 7.0
"""A tie is drawn no longer than so many times its width."""
ABOVE_BOW, ABOVE_TIE = 0.35, 1.3
"""How much of a garment is drawn above a bow: for each depth down to its hem, or tie's width."""
LEAST_ACROSS = 0.3
"""How wide a garment is drawn at least, for each depth from the bow to its hem."""
LOOP_LONG, LOOP_FULLEST, LOOP_HIGH = 2.2, 1.6, 1.1
"""The loop of a bow for each width of its tie: how long, how far along it is fullest, and how far
it stands up and down there."""
SLANT, MOST_SLANT, NARROWED = 0.4, 0.2, 0.2
"""How far aslant the end of a tie is cut, of its width, and at most of what hangs; and how far its
longer side has come in there, of its width, since the end hangs from a knot."""
KNOT = 0.7
"""How large a knot is, of the width of its tie."""


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
        sentence(
            "Each hangs {length} free and is {width} wide.", length=tie.length, width=tie.width
        ),
        tuple(_sewn_in(tie, hemmed)),
        tallest=150,
    )


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
        sentence("{width} wide, each edge turned twice by {turn}.", width=tie.width, turn=tie.turn),
        tuple(_hemmed(tie)),
        tallest=130,
    )


def _hemmed(tie: Tie) -> Iterable[Shape]:
    half, turn = tie.width.mm / 2, tie.turn.mm
    step = min(0.035 * tie.width.mm, 0.5 * turn)
    left: list[Point] = [
        (-half + 0.15 * turn, step),
        (-half + turn, step),
        (-half + turn, 2 * step),
        (-half, 2 * step),
        (-half, 0.0),
    ]
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
        sentence(
            "It is tied {reach} from the seam; its end hangs {end}, the hem lies {hem} down.",
            reach=bow.reach,
            end=bow.end,
            hem=bow.hem,
        ),
        tuple(_tied(bow)),
        tallest=200,
    )


def _tied(bow: Bow) -> Iterable[Shape]:
    """The knot at the origin and the side seam at its reach; the garment goes on beyond the knot.

    Where the bow is tied well inside the garment, the knot lies on the line where its half ends.
    """
    deep, wide, seam = bow.hem.mm, bow.width.mm, bow.reach.mm
    top = -max(ABOVE_BOW * deep, ABOVE_TIE * wide)
    inner = min(0.0, seam - LEAST_ACROSS * deep)
    yield Area(rectangle(inner, top, seam - inner, deep - top), Tone.RIGHT, outline=None)
    yield Stroke(((seam, top), (seam, deep)), Line.CUT)
    yield Stroke(((inner, deep), (seam, deep)), Line.CUT)
    if inner < 0:
        yield Stroke(freehand((inner, top), (inner, deep)), Line.BREAK)
    else:
        yield Stroke(((0, top), (0, deep)), Line.THIN)
    if seam:
        yield Area(rectangle(0, -wide / 2, seam, wide), Tone.SECOND)
        yield Dimension((0, top), (seam, top), bow.reach, Side.ABOVE)
    yield from _bow(wide, bow.end.mm)
    outer = max(seam, LOOP_LONG * wide)
    if outer > seam:
        yield Stroke(((seam, deep), (outer, deep)), Line.THIN)
    yield Dimension((outer, 0), (outer, deep), bow.hem, Side.RIGHT)
    if bow.end.mm:
        yield Dimension((inner, 0), (inner, bow.end.mm), bow.end, Side.LEFT)


def _bow(wide: float, end: float) -> Iterable[Shape]:
    """The loop of a bow towards the seam, the end that hangs, cut off aslant, and the knot."""
    fullest = (LOOP_FULLEST * wide, LOOP_HIGH * wide)
    yield Area(((0, 0), (fullest[0], -fullest[1]), (LOOP_LONG * wide, 0), fullest), Tone.SECOND)
    if end:
        slant = min(SLANT * wide, MOST_SLANT * end)
        inside = NARROWED * wide
        yield Area(((0, 0), (wide, 0), (wide, end - slant), (inside, end)), Tone.SECOND)
    knot = KNOT * wide
    yield Area(rectangle(-knot / 2, -knot / 2, knot, knot), Tone.SECOND)
