"""Strips of cloth laid flat: to scale in their depth, broken in their length where it is long."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from handout_engine.amounts.values import Sentence, Value
from handout_engine.drawing.breaks import measured, zigzag
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Shape,
    Side,
    Stroke,
    Tag,
    Tone,
    rectangle,
)

LONGEST = 3.6
"""A strip longer than so many times its depth is drawn broken."""


@dataclass(frozen=True)
class Rule:
    """A line ruled along a strip: its kind and its distance from the top raw edge."""

    line: Line
    distance: Value


@dataclass(frozen=True)
class FlatStrip:
    """A strip as it is cut, with the lines ruled along it."""

    title: Sentence
    width: Value
    length: Value
    rules: Sequence[Rule] = ()
    tone: Tone = Tone.RIGHT
    grain_across: bool = True


def flat_strips(strips: Iterable[FlatStrip], gap: float) -> tuple[Shape, ...]:
    """Strips one under another, `gap` mm apart, each with its dimensions."""
    placed: list[Shape] = []
    top = 0.0
    strips = list(strips)
    reach = LONGEST * max(strip.width.mm for strip in strips)
    for strip in strips:
        placed.extend(_strip(strip, top, min(reach, strip.length.mm)))
        top += strip.width.mm + gap
    return tuple(placed)


def _strip(strip: FlatStrip, top: float, drawn: float) -> Iterable[Shape]:
    depth = strip.width.mm
    broken = drawn < strip.length.mm
    parts = ((0.0, drawn * 0.7), (drawn * 0.76, drawn)) if broken else ((0.0, drawn),)
    rules = [rule for rule in strip.rules if 0 < rule.distance.mm < depth]
    for left, right in parts:
        yield Area(rectangle(left, top, right - left, depth), strip.tone, outline=None)
        for rule in rules:
            height = top + rule.distance.mm
            yield Stroke(((left, height), (right, height)), rule.line)
    yield from _outline(parts, top, depth)
    for rule in rules:
        yield Tag((drawn, top + rule.distance.mm), rule.distance, Side.RIGHT)
    yield measured((0, top + depth), (drawn, top + depth), strip.length, Side.BELOW)
    yield Dimension((0, top), (0, top + depth), strip.width, Side.LEFT)
    yield Note((0, top), strip.title, anchor="start", above=True)
    along = (0.0, 1.0) if strip.grain_across else (1.0, 0.0)
    yield Grain((drawn * 0.08, top + depth / 2), along)


def _outline(parts: Sequence[tuple[float, float]], top: float, depth: float) -> Iterable[Shape]:
    """The cut edges; a strip in two parts is open between them, with a break line at each."""
    bottom, start, end = top + depth, parts[0][0], parts[-1][1]
    for left, right in parts:
        yield Stroke(((left, top), (right, top)), Line.CUT)
        yield Stroke(((left, bottom), (right, bottom)), Line.CUT)
    yield Stroke(((start, top), (start, bottom)), Line.CUT)
    yield Stroke(((end, top), (end, bottom)), Line.CUT)
    if len(parts) > 1:
        beyond = 0.06 * depth
        for x in (parts[0][1], parts[1][0]):
            ends = (x, top - beyond), (x, bottom + beyond)
            yield Stroke(zigzag(*ends), Line.BREAK)
