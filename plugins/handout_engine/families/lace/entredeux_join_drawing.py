"""Entredeux joined to cloth: the finished join, and the stages of sewing seen at the cut end."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
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
from handout_engine.drawing.sections import layer
from handout_engine.families.lace.trims_drawing import TrimPlace, trim_face

Stage = tuple[str, tuple[Shape, ...]]


@dataclass(frozen=True)
class EntredeuxSizes:
    """The widths of the join: the holes and cords, its allowance, and what that is trimmed to."""

    visible: Value
    allowance: Value
    trim: Value


def finished_join(
    run: Value, visible: Value, panel: Value, gathered: bool, lower: str
) -> tuple[Shape, ...]:
    """The entredeux with its cloth above it, and below it what the other side is joined to."""
    wide = visible.mm
    tall = min(panel.mm, 5 * wide)
    span = min(run.mm, 16 * wide)
    shapes: list[Shape] = [*trim_face("cloth", TrimPlace(0, 0, span, tall))[:-2]]
    if gathered:
        shapes.extend(_creases(span, tall))
    shapes.extend(trim_face("entredeux", TrimPlace(0, tall, span, wide)))
    if lower != "left free":
        face = {"lace": "lace", "flat cloth": "cloth"}.get(lower, "cloth")
        below = TrimPlace(0, tall + wide, span, 3 * wide)
        shapes.extend(trim_face(face, below)[: -2 if face == "cloth" else None])
    for x in (0.0, span):
        shapes.append(Stroke(((x, 0), (x, tall + wide)), Line.THIN))
    shapes.append(Dimension((0, tall), (0, tall + wide), visible, Side.LEFT))
    if span == run.mm:
        shapes.append(Dimension((0, 0), (span, 0), run, Side.ABOVE))
    return tuple(shapes)


def _creases(span: float, tall: float) -> Iterable[Shape]:
    for number in range(40):
        x = span * (number + 0.5) / 40
        reach = (0.75, 0.3, 0.5, 0.2)[number % 4] * tall
        yield Stroke(((x, tall), (x, tall - reach)), Line.THIN)


def join_stages(sizes: EntredeuxSizes) -> tuple[Stage, ...]:
    """Sewn in the ditch, trimmed, and rolled and pressed open."""
    allowance, trim, wide = sizes.allowance.mm, sizes.trim.mm, sizes.visible.mm
    thick = min(allowance, wide) * 0.14
    step, reach = 1.9 * thick, 2.2 * allowance
    far = allowance + wide + 0.8 * allowance
    edges = (
        layer(((-far, step), (0, step)), thick, Tone.RIGHT),
        layer(((-reach, 0), (0, 0)), thick, Tone.SECOND),
        *_holes(-allowance - wide, wide, step, thick),
        Stroke(((-allowance, -2 * step), (-allowance, 3 * step)), Line.STITCH),
        Note((-reach * 0.75, -2 * step), sentence("cloth")),
        Dimension((-allowance, step), (0, step), sizes.allowance, Side.BELOW),
    )
    cut = -allowance + trim
    trimmed = (
        layer(((-far, step), (cut, step)), thick, Tone.RIGHT),
        layer(((-reach, 0), (cut, 0)), thick, Tone.SECOND),
        *_holes(-allowance - wide, wide, step, thick),
        Stroke(((-allowance, -2 * step), (-allowance, 3 * step)), Line.STITCH),
        Dimension((-allowance, step), (cut, step), sizes.trim, Side.BELOW),
    )
    return (
        ("Right sides together, raw edges level, stitched in the ditch.", edges),
        ("Trimmed, ready to roll.", trimmed),
        ("Rolled, whipped, and pressed away from the entredeux.", _opened(sizes, thick, step)),
    )


def _holes(left: float, wide: float, at: float, thick: float) -> Iterable[Shape]:
    """The open middle of the entredeux: a gap between its two cords."""
    gap = rectangle(left + 0.28 * wide, at - thick, 0.44 * wide, 2 * thick)
    yield Area(gap, Tone.GROUND, outline=None)
    for x in (left + 0.28 * wide, left + 0.72 * wide):
        yield Area(_ring((x, at), 0.85 * thick), Tone.RIGHT)


def _ring(centre: Point, radius: float) -> tuple[Point, ...]:
    return tuple(
        (centre[0] + radius * cos(pi * n / 8), centre[1] + radius * sin(pi * n / 8))
        for n in range(16)
    )


def _opened(sizes: EntredeuxSizes, thick: float, step: float) -> tuple[Shape, ...]:
    """The cloth turned out flat, and the roll lying under it beside the entredeux."""
    trim, wide = sizes.trim.mm, sizes.visible.mm
    reach = 2.2 * sizes.allowance.mm
    radius = trim / 4
    turns = [2 * pi * n / 24 for n in range(20)]
    roll = [
        (0.0, 0.0),
        *(
            (
                radius - radius * cos(turn) * (1 - turn / 20),
                step + radius + radius * sin(turn) * (1 - turn / 20),
            )
            for turn in turns
        ),
    ]
    return (
        layer(roll, min(thick * 0.8, radius * 0.5), Tone.SECOND),
        layer(((0, 0), (reach, 0)), thick, Tone.SECOND),
        layer(((-wide - 0.8 * sizes.allowance.mm, 0), (0, 0)), thick, Tone.RIGHT),
        *_holes(-wide, wide, 0, thick),
        Note((reach * 0.7, -2 * step), sentence("cloth")),
        Dimension((-wide, 0), (0, 0), sizes.visible, Side.ABOVE),
    )
