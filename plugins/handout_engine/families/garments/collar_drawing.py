"""A flat collar drawn: lying flat as it is worn, and how it is drafted on the joined necklines."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

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
)
from handout_engine.geometry.points import mirrored, snapped
from handout_engine.geometry.polygons import extents

APART = 3.0
"""How far from the middle each of two pieces is drawn, in mm."""


@dataclass(frozen=True)
class DrawnCollar:
    """The right half of a collar in mm, with what its drawings name.

    `outline` runs from the centre front along the `neck` round to the centre front. `front` and
    `back` are the block's pieces as they lie joined at the shoulder; `shoulder` is the seam.
    """

    outline: Sequence[Point]
    neck: Sequence[Point]
    front: Sequence[Point]
    back: Sequence[Point]
    shoulder: tuple[Point, Point]
    in_one: bool
    depth: Value
    overlap: Value
    edge: Value


def flat_scene(collar: DrawnCollar) -> Scene:
    """The whole collar laid flat, from its right side."""
    return Scene(
        sentence("Flat collar, finished"),
        sentence(
            "{depth} deep, {edge} round its outer edge.", depth=collar.depth, edge=collar.edge
        ),
        tuple(_flat(collar)),
        tallest=260.0,
    )


def _flat(collar: DrawnCollar) -> Iterable[Shape]:
    if collar.in_one:
        yield Area((*collar.outline, *mirrored(collar.outline)), Tone.RIGHT)
        aside = 0.0
    else:
        aside = APART
        half = tuple((snapped(x + aside), y) for x, y in collar.outline)
        yield Area(half, Tone.RIGHT)
        yield Area(mirrored(half), Tone.RIGHT)
    seam = tuple((snapped(x + aside), y) for x, y in collar.shoulder)
    for points in (seam, mirrored(seam)):
        yield Stroke(points, Line.HIDDEN)
    yield Note((0.0, seam[0][1]), sentence("shoulder"))
    yield from _depth(collar, aside)


def _depth(collar: DrawnCollar, aside: float) -> Iterable[Shape]:
    """The depth where neck edge and outer edge run straight up and down, and both are whole.

    At the ends a rounded corner takes some of it away.
    """
    _, low = extents(collar.outline)[1]
    inner = max(collar.neck)
    outer = max(collar.outline)
    ends = [(snapped(x + aside), low) for x, _ in (inner, outer)]
    for (x, bottom), (_, y) in zip(ends, (inner, outer), strict=True):
        yield Stroke(((x, y), (x, bottom)), Line.HIDDEN)
    yield Dimension(ends[0], ends[1], collar.depth, Side.BELOW)


def drafting_scene(collar: DrawnCollar) -> Scene:
    """Front and back of the block joined at the shoulder, and half of the collar on them."""
    return Scene(
        sentence("The collar on the joined front and back"),
        sentence(
            "At the outer end of the shoulder seam the back overlaps the front by {overlap}.",
            overlap=collar.overlap,
        ),
        tuple(_drafting(collar)),
        tallest=300.0,
    )


def _drafting(collar: DrawnCollar) -> Iterable[Shape]:
    yield Area(tuple(collar.front), Tone.SECOND, Line.THIN)
    yield Area(tuple(collar.back), Tone.SECOND, Line.THIN)
    yield Stroke((*collar.front, collar.front[0]), Line.HIDDEN)
    yield Stroke((*collar.outline, collar.outline[0]), Line.CUT)
    for words, points in (("front", collar.front), ("back", collar.back)):
        (left, top), (right, bottom) = extents(points)
        low = top + (bottom - top) * (0.85 if words == "front" else 0.2)
        yield Note((snapped(left + (right - left) * 0.45), snapped(low)), sentence(words))
