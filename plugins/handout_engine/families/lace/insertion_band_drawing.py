"""A built-up band of trims: finished, measured strip by strip, and as its strips are cut."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import fsum

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Dimension, Line, Note, Point, Shape, Side, Stroke, Tag
from handout_engine.families.lace.insertion_band_measures import CLOTH, PUFFING, Strip
from handout_engine.families.lace.trims_drawing import TrimPlace, trim_face

GAP = 0.085
"""Room between strips that are drawn apart, as a share of their drawn length."""


def finished_band(strips: Sequence[Strip], total: Value, length: float) -> tuple[Shape, ...]:
    """The band sewn together, a piece of it, with each strip's name and the whole width."""

    def named(strip: Strip, upper: Point, lower: Point) -> Shape:
        return Tag((upper[0], (upper[1] + lower[1]) / 2), strip.name, Side.RIGHT)

    return _band(strips, total, length, named)


def measured_band(strips: Sequence[Strip], total: Value, length: float) -> tuple[Shape, ...]:
    """The same piece with the width that each strip shows."""

    def measured(strip: Strip, upper: Point, lower: Point) -> Shape:
        return Dimension(upper, lower, strip.width, Side.RIGHT)

    return _band(strips, total, length, measured)


def _band(
    strips: Sequence[Strip],
    total: Value,
    length: float,
    beside: Callable[[Strip, Point, Point], Shape],
) -> tuple[Shape, ...]:
    """A piece of the band with its whole width, and something beside the right end of each strip.

    `beside` is handed the strip and the two corners of that end.
    """
    drawn = min(length, 1.3 * total.mm)
    shapes: list[Shape] = []
    top = 0.0
    for strip in strips:
        wide = float(strip.width)
        shapes.extend(trim_face(strip.kind, TrimPlace(0, top, drawn, wide)))
        shapes.append(beside(strip, (drawn, top), (drawn, top + wide)))
        top += wide
    shapes.append(Stroke(((0, 0), (0, top)), Line.THIN))
    shapes.append(Stroke(((drawn, 0), (drawn, top)), Line.THIN))
    shapes.append(Dimension((0, 0), (0, top), total, Side.LEFT))
    return tuple(shapes)


def cut_strips(strips: Sequence[Strip]) -> tuple[Shape, ...]:
    """Every strip as it is cut, in the order of the band, seam lines dashed."""
    drawn = 1.2 * max(
        fsum(float(strip.width) for strip in strips),
        0.5 * fsum(float(strip.cut_width) for strip in strips),
    )
    shapes: list[Shape] = []
    top = 0.0
    for strip in strips:
        above, below = float(strip.above), float(strip.below)
        foot = top + float(strip.cut_width)
        shapes.extend(trim_face(CLOTH, TrimPlace(0, top, drawn, foot - top)))
        flat = CLOTH if strip.kind == PUFFING else strip.kind
        seen = TrimPlace(0, top + above, drawn, float(strip.width))
        shapes.extend(trim_face(flat, seen)[:-2])
        for height in (top, foot):
            shapes.append(Stroke(((0, height), (drawn, height)), Line.CUT))
        for x in (0.0, drawn):
            shapes.append(Stroke(((x, top), (x, foot)), Line.THIN))
        for taken, height in ((above, top + above), (below, foot - below)):
            if taken:
                shapes.append(Stroke(((0, height), (drawn, height)), Line.STITCH))
        shapes.append(Note((0, top), sentence(strip.name), anchor="start", above=True))
        shapes.append(Dimension((drawn, top), (drawn, foot), strip.cut_width, Side.RIGHT))
        top = foot + GAP * drawn
    return tuple(shapes)
