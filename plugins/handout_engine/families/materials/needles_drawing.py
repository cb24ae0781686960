"""Needles and threads drawn to one scale: ends seen from the point, sides, and stitches."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import cos, pi, sin

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
    rectangle,
)
from handout_engine.shared.folds_drawing import room

STEPS = 36


def circle(centre: Point, radius: float) -> tuple[Point, ...]:
    """A circle as a closed outline."""
    turns = (2 * pi * step / STEPS for step in range(STEPS))
    return tuple((centre[0] + radius * cos(turn), centre[1] + radius * sin(turn)) for turn in turns)


def blade_and_thread(blade: Value, thread: Value) -> Iterable[Shape]:
    """The blade of a needle and its thread, seen from the point, to one scale."""
    wide, fine = blade.mm, thread.mm
    centre = wide + 1.2 * max(wide, fine)
    yield room(3.6 * wide, 1.4 * wide)
    for middle, value, tone in ((wide / 2, blade, Tone.SHADE), (centre, thread, Tone.SECOND)):
        radius = value.mm / 2
        yield Area(circle((middle, wide / 2), radius), tone)
        yield Dimension(
            (middle - radius, wide / 2 + radius),
            (middle + radius, wide / 2 + radius),
            value,
            Side.BELOW,
        )
        yield Note(
            (middle, wide / 2 - max(radius, 0.2 * wide)),
            sentence("needle" if value is blade else "thread"),
            above=True,
        )


def thread_bars(threads: Sequence[tuple[str, Value]]) -> Iterable[Shape]:
    """Threads laid side by side, their thickness to scale and much enlarged."""
    thickest = max(thread.mm for _, thread in threads)
    long, top = 7 * thickest, 0.0
    for words, thread in threads:
        yield Note((0, top), sentence(words), anchor="start", above=True)
        yield Area(rectangle(0, top, long, thread.mm), Tone.SECOND)
        yield Dimension((long, top), (long, top + thread.mm), thread, Side.RIGHT)
        top += 1.9 * thickest


def stitch_row(stitch: Value, inch: Value) -> Iterable[Shape]:
    """A row of stitches along one inch of a seam, a hole at the end of each."""
    length, tall = inch.mm, 0.3 * inch.mm
    yield room(length, tall)
    yield Area(rectangle(0, 0, length, tall), Tone.RIGHT)
    gap, at = 0.12 * stitch.mm, 0.0
    while at < length - gap:
        end = min(at + stitch.mm, length)
        yield Stroke(((at + gap, tall / 2), (end - gap / 2, tall / 2)), Line.CUT)
        at += stitch.mm
    yield Dimension((0, 0), (stitch.mm, 0), stitch, Side.ABOVE)
    yield Dimension((0, tall), (length, tall), inch, Side.BELOW)


def blade_row(numbers: Sequence[int], chosen: Value, blade: Value) -> Iterable[Shape]:
    """All sizes of needle from the side, their blades to one scale, the chosen one tinted."""
    unit = 0.01
    step = 2.6 * unit * max(numbers)
    tall = 3.2 * step
    yield room(step * len(numbers), tall)
    for place, number in enumerate(numbers):
        middle, half = (place + 0.5) * step, unit * number / 2
        tone = Tone.SECOND if number == chosen.whole else Tone.SHADE
        yield Area(_side(middle, half, tall), tone)
        yield Note((middle, 0), sentence(str(number)), above=True)
    yield from _measured(numbers, chosen, blade, step, tall)


def _side(middle: float, half: float, tall: float) -> tuple[Point, ...]:
    """A blade from the side, with its point below."""
    return (
        (middle - half, 0),
        (middle + half, 0),
        (middle + half, 0.8 * tall),
        (middle, tall),
        (middle - half, 0.8 * tall),
    )


def _measured(
    numbers: Sequence[int], chosen: Value, blade: Value, step: float, tall: float
) -> Iterable[Shape]:
    place = list(numbers).index(chosen.whole)
    middle, half = (place + 0.5) * step, blade.mm / 2
    yield Dimension((middle - half, tall), (middle + half, tall), blade, Side.BELOW)


def needle_points(blade: Value, spacing: Value | None, wings: bool) -> Iterable[Shape]:
    """One needle, a twin or a wing needle from the front, blades to scale."""
    half, tall = blade.mm / 2, 7 * blade.mm
    apart = spacing.mm if spacing else 0.0
    yield room(max(4 * blade.mm, apart + 3 * blade.mm), 0)
    places = [-apart / 2, apart / 2] if spacing else [0.0]
    if spacing:
        bar = 1.5 * blade.mm
        yield Area(rectangle(-apart / 2 - half, -bar, apart + 2 * half, bar), Tone.SHADE)
    for middle in places:
        if wings:
            yield Area(_wings(middle, half, tall), Tone.WRONG)
        yield Area(_side(middle, half, tall), Tone.SECOND)
        eye = 0.72 * tall
        yield Area(rectangle(middle - 0.4 * half, eye - half, 0.8 * half, 2 * half), Tone.GROUND)
    top = -1.5 * blade.mm if spacing else 0.0
    yield Dimension((places[0] - half, top), (places[0] + half, top), blade, Side.ABOVE)
    if spacing:
        yield Dimension((places[0], tall), (places[-1], tall), spacing, Side.BELOW)


def _wings(middle: float, half: float, tall: float) -> tuple[Point, ...]:
    """The two wings beside the eye: how wide they are differs, so they are only hinted at."""
    reach = 2.6 * half
    return (
        (middle, 0.45 * tall),
        (middle + reach, 0.6 * tall),
        (middle + reach, 0.75 * tall),
        (middle, tall),
        (middle - reach, 0.75 * tall),
        (middle - reach, 0.6 * tall),
    )
