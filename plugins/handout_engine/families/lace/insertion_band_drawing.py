"""A built-up band of trims: finished, measured strip by strip, and as its strips are cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum

from handout_engine.amounts.values import Sentence, Value
from handout_engine.drawing.scene import Dimension, Line, Note, Shape, Side, Stroke, Tag
from handout_engine.families.lace.trims_drawing import TrimPlace, trim_face

GAP = 0.085
"""Room between strips that are drawn apart, as a share of their drawn length."""


@dataclass(frozen=True)
class BandStrip:
    """One strip of a band: what shows of it, how wide it is cut, what its joins take."""

    kind: str
    name: str
    visible: Value
    cut: Value
    above: float
    below: float
    title: Sentence


def finished_band(strips: Sequence[BandStrip], total: Value, length: float) -> tuple[Shape, ...]:
    """The band sewn together, a piece of it, with each strip's name and the whole width."""
    drawn = min(length, 1.3 * total.mm)
    shapes: list[Shape] = []
    top = 0.0
    for strip in strips:
        shapes.extend(trim_face(strip.kind, TrimPlace(0, top, drawn, strip.visible.mm)))
        shapes.append(Tag((drawn, top + strip.visible.mm / 2), strip.name, Side.RIGHT))
        top += strip.visible.mm
    shapes.append(Stroke(((0, 0), (0, top)), Line.THIN))
    shapes.append(Stroke(((drawn, 0), (drawn, top)), Line.THIN))
    shapes.append(Dimension((0, 0), (0, top), total, Side.LEFT))
    return tuple(shapes)


def measured_band(strips: Sequence[BandStrip], total: Value, length: float) -> tuple[Shape, ...]:
    """The same piece with the width that each strip shows."""
    drawn = min(length, 1.3 * total.mm)
    shapes: list[Shape] = []
    top = 0.0
    for strip in strips:
        shapes.extend(trim_face(strip.kind, TrimPlace(0, top, drawn, strip.visible.mm)))
        foot = top + strip.visible.mm
        shapes.append(Dimension((drawn, top), (drawn, foot), strip.visible, Side.RIGHT))
        top = foot
    shapes.append(Stroke(((0, 0), (0, top)), Line.THIN))
    shapes.append(Stroke(((drawn, 0), (drawn, top)), Line.THIN))
    shapes.append(Dimension((0, 0), (0, top), total, Side.LEFT))
    return tuple(shapes)


def cut_strips(strips: Sequence[BandStrip]) -> tuple[Shape, ...]:
    """Every strip as it is cut, in the order of the band, seam lines dashed."""
    drawn = 1.2 * max(fsum(strip.visible.mm for strip in strips),
                      0.5 * fsum(strip.cut.mm for strip in strips))  # fmt: skip
    shapes: list[Shape] = []
    top = 0.0
    for strip in strips:
        place = TrimPlace(0, top, drawn, strip.cut.mm)
        shapes.extend(trim_face("cloth", place))
        seen = TrimPlace(0, top + strip.above, drawn, strip.visible.mm)
        flat = "cloth" if strip.kind == "puffing" else strip.kind
        shapes.extend(trim_face(flat, seen)[:-2])
        foot = top + strip.cut.mm
        for height in (top, foot):
            shapes.append(Stroke(((0, height), (drawn, height)), Line.CUT))
        for x in (0.0, drawn):
            shapes.append(Stroke(((x, top), (x, foot)), Line.THIN))
        for taken, height in ((strip.above, top + strip.above), (strip.below, foot - strip.below)):
            if taken:
                shapes.append(Stroke(((0, height), (drawn, height)), Line.STITCH))
        shapes.append(Note((0, top), strip.title, anchor="start", above=True))
        shapes.append(Dimension((drawn, top), (drawn, foot), strip.cut, Side.RIGHT))
        top = foot + GAP * drawn
    return tuple(shapes)
