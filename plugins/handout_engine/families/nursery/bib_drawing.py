"""A bib drawn: finished, and the outline to cut, which is also its true-scale sheet."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
)
from handout_engine.families.nursery.bib_outlines import BibShape
from handout_engine.geometry.polygons import extents

BINDING = 6.0
"""How far inside its edge the binding of a finished bib is drawn, in mm."""


@dataclass(frozen=True)
class Bib:
    """The named values of a bib, its shape, and the allowance round it in mm."""

    named: Mapping[str, Value]
    shape: BibShape
    allowance: float


def finished_scene(bib: Bib) -> Scene:
    """The bib flat, from its right side."""
    return Scene(
        sentence("Bib, finished"),
        sentence(
            "{width} across, {drop} from the neck down.",
            width=bib.named["bib_width"],
            drop=bib.named["bib_drop"],
        ),
        tuple(_finished(bib)),
        tallest=320,
    )


def _finished(bib: Bib) -> Iterable[Shape]:
    shape = bib.shape
    half, low = shape.half_width, shape.low
    yield Area(shape.outline(), Tone.SECOND if not bib.allowance else Tone.RIGHT)
    inside = min(BINDING, shape.strap - shape.neck) / 3
    corner_fits = min(shape.corner, half) > inside or shape.corner == 0
    if corner_fits and shape.gap / 2 + inside < shape.neck:
        inner = _inset(shape, inside)
        if bib.allowance:
            yield Stroke((*inner, inner[0]), Line.STITCH)
        else:
            yield Area(inner, Tone.RIGHT, Line.STITCH)
    yield Dimension((-half, low), (half, low), bib.named["bib_width"], Side.BELOW)
    yield Dimension((half, shape.neck), (half, low), bib.named["bib_drop"], Side.RIGHT)
    for radius in (shape.strap, shape.neck):
        yield Stroke(((-half, -radius), (-shape.gap / 2, -radius)), Line.HIDDEN)
    yield Dimension((-half, -shape.strap), (-half, -shape.neck), bib.named["strap"], Side.LEFT)


def _inset(shape: BibShape, inside: float) -> tuple[tuple[float, float], ...]:
    """The outline a little inside the edge, square corners kept square."""
    rounded = (
        shape
        if shape.corner
        else BibShape(shape.neck, shape.strap, shape.half_width, shape.low, inside, shape.gap)
    )
    return rounded.outline(-inside)


def cut_scene(bib: Bib) -> Scene:
    """The outline to cut with its seam line and grain."""
    return Scene(
        sentence("Bib to cut"),
        sentence(
            "{width} across and {height} from strap to lower edge.",
            width=bib.named["cut_width"],
            height=bib.named["cut_height"],
        ),
        tuple(_cut(bib)),
        tallest=320,
    )


def _cut(bib: Bib) -> Iterable[Shape]:
    outline = bib.shape.outline(bib.allowance)
    (left, top), (right, bottom) = extents(outline)
    yield Area(outline, Tone.RIGHT)
    if bib.allowance:
        seam = bib.shape.outline()
        yield Stroke((*seam, seam[0]), Line.STITCH)
    middle = (bib.shape.neck + bottom) / 2
    yield Grain((0.0, middle), (0.0, 1.0))
    yield Dimension((left, bottom), (right, bottom), bib.named["cut_width"], Side.BELOW)
    yield Dimension((left, top), (left, bottom), bib.named["cut_height"], Side.LEFT)
    for level in (0.0, bib.shape.neck):
        yield Stroke(((0.0, level), (right, level)), Line.HIDDEN)
    yield Dimension((right, 0.0), (right, bib.shape.neck), bib.named["neck_radius"], Side.RIGHT)
