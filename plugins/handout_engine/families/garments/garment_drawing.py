"""A finished garment seen from the front: its halves mirrored, sleeves hanging, main measures."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from math import hypot

from handout_engine.amounts.values import Sentence
from handout_engine.drawing.scene import Area, Dimension, Line, Point, Scene, Shape, Stroke, Tone
from handout_engine.geometry.points import mirrored, snapped

SLEEVE_ACROSS, SLEEVE_DOWN = 0.5, 0.866
"""The direction in which a sleeve hangs, of length 1."""


@dataclass(frozen=True)
class View:
    """The right half of a garment from the front, in mm from its centre.

    `outline` runs from the centre to the centre. `lines` are seams and folds on it, `behind` what
    lies behind it, such as the back of the neck and the sleeves; all are drawn on both sides.
    """

    outline: Sequence[Point]
    lines: Sequence[tuple[Sequence[Point], Line]] = ()
    behind: Sequence[Sequence[Point]] = ()
    dimensions: Sequence[Dimension] = field(default_factory=tuple)


def scene(title: Sentence, description: Sentence, view: View) -> Scene:
    """The whole garment."""
    return Scene(title, description, tuple(_shapes(view)), tallest=320.0)


def _shapes(view: View) -> Iterable[Shape]:
    for points in view.behind:
        for side in (tuple(points), mirrored(points)):
            yield Area(side, Tone.SECOND)
    yield Area((*view.outline, *mirrored(view.outline)), Tone.RIGHT)
    for points, line in view.lines:
        yield Stroke(tuple(points), line)
        yield Stroke(mirrored(points), line)
    yield from view.dimensions


def hanging_sleeve(shoulder: Point, underarm: Point, reach: float, end: float) -> tuple[Point, ...]:
    """A sleeve of that reach, `end` wide when it lies flat, from shoulder and underarm."""
    tip = (shoulder[0] + SLEEVE_ACROSS * reach, shoulder[1] + SLEEVE_DOWN * reach)
    inner = (tip[0] - SLEEVE_DOWN * end, tip[1] + SLEEVE_ACROSS * end)
    if hypot(inner[0] - shoulder[0], inner[1] - shoulder[1]) < 1:
        inner = underarm
    return tuple((snapped(x), snapped(y)) for x, y in (shoulder, tip, inner, underarm))
