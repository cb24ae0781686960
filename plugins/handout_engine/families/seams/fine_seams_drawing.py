"""Panels joined by seams, seen from the right side, and as they are cut."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from handout_engine.amounts.values import Sentence, Value
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

TALL = 0.55
"""Height at which a panel is drawn, as a share of its width, whatever its length."""


def joined_panel(
    width: Value, each: Value, ridge: Value, seams: Iterable[float]
) -> tuple[Shape, ...]:
    """The finished panel with its seams; each seam's ridge is drawn behind the cloth."""
    span = width.mm
    tall = TALL * span
    shapes: list[Shape] = [Area(rectangle(0, 0, span, tall))]
    for x in seams:
        shapes.append(Stroke(((x, 0), (x, tall)), Line.CUT))
        shapes.append(Stroke(((x + ridge.mm, 0), (x + ridge.mm, tall)), Line.HIDDEN))
    shapes.append(Dimension((0, tall), (span, tall), width, Side.BELOW))
    shapes.append(Dimension((0, 0), (each.mm, 0), each, Side.ABOVE))
    shapes.append(Grain((each.mm * 0.5, tall * 0.5), (0, 1)))
    return tuple(shapes)


def cut_panels(
    pieces: Sequence[tuple[Sentence, Value, float, float]], tall: float
) -> tuple[Shape, ...]:
    """Pieces side by side as they are cut, each with the stitching lines at its left and right."""
    shapes: list[Shape] = []
    left = 0.0
    for title, width, at_left, at_right in pieces:
        right = left + width.mm
        shapes.append(Area(rectangle(left, 0, width.mm, tall), Tone.RIGHT))
        for x in (left + at_left, right - at_right):
            shapes.append(Stroke(((x, 0), (x, tall)), Line.STITCH))
        shapes.append(Grain(((left + right) / 2, tall * 0.6), (0, 1)))
        shapes.append(Note((left, 0), title, anchor="start", above=True))
        shapes.append(Dimension((left, tall), (right, tall), width, Side.BELOW))
        left = right + tall * 0.25
    return tuple(shapes)
