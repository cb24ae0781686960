"""Flounces: the outline to cut."""

from __future__ import annotations

from math import cos, pi, sin

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Point,
    Shape,
    Side,
    Stroke,
    Tone,
)
from handout_engine.families.ruffles.flounces import Spiral, arc, sector


def cut_outline(
    radii: tuple[Value, Value, Value], degrees: float, slit: bool = True
) -> tuple[Shape, ...]:
    """A ring or arc to cut: inner radius, seam line and outer radius, measured straight down.

    A ring that is not slit open is drawn as two whole circles.
    """
    inner, seam, outer = radii
    outline = sector(inner.mm, outer.mm, degrees)
    right = max(x for x, _ in outline)
    shapes: list[Shape] = [
        *(
            [Area(outline, Tone.RIGHT)]
            if slit
            else [
                Area(tuple(arc(outer.mm, degrees)), Tone.RIGHT),
                Area(tuple(arc(inner.mm, degrees)), Tone.GROUND),
            ]
        ),
        Stroke(tuple(arc(seam.mm, degrees)), Line.STITCH),
        Stroke(((-0.02 * outer.mm, 0.0), (0.02 * outer.mm, 0.0)), Line.THIN),
        Stroke(((0.0, -0.02 * outer.mm), (0.0, 0.02 * outer.mm)), Line.THIN),
        Stroke(((-right, 0.0), (right, 0.0)), Line.HIDDEN),
        Stroke(((0.0, seam.mm), (-right, seam.mm)), Line.HIDDEN),
    ]
    for value in (inner, outer):
        shapes.append(Stroke(((0.0, value.mm), (right, value.mm)), Line.HIDDEN))
    shapes.append(Dimension((right, 0.0), (right, inner.mm), inner, Side.RIGHT))
    shapes.append(Dimension((-right, 0.0), (-right, seam.mm), seam, Side.LEFT))
    shapes.append(Dimension((right, 0.0), (right, outer.mm), outer, Side.RIGHT))
    middle = (inner.mm + outer.mm) / 2
    shapes.append(Grain((0.0, middle), (0.0, 1.0)))
    return tuple(shapes)


def cut_spiral(
    spiral: Spiral, turns: float, measures: tuple[Value, Value, Value]
) -> tuple[Shape, ...]:
    """A spiral to cut: its inner line, one depth further out its outer line, and the end cuts.

    The measures are the first radius to cut, the first radius of the seam line, the cut depth.
    """
    start, sewn, depth = measures
    inner = spiral.points(turns)
    outer = Spiral(spiral.start + spiral.pitch, spiral.pitch).points(turns)
    first, last = (inner[0], outer[0]), (inner[-1], outer[-1])
    heights = [y for _, y in (*inner, *outer, (0.0, 0.0))]
    top, bottom = min(heights), max(heights)
    above = [(x, top) for x in (inner[0][0], outer[0][0])]
    below = [(x, bottom) for x in (0.0, inner[0][0])]
    return (
        Area((*outer, *reversed(inner)), Tone.RIGHT, outline=None),
        Stroke(tuple(inner), Line.CUT),
        Stroke(tuple(outer), Line.CUT),
        Stroke(tuple(Spiral(sewn.mm, spiral.pitch).points(turns)), Line.STITCH),
        Stroke(first, Line.CUT),
        Stroke(last, Line.CUT),
        Stroke(((0.0, 0.0), inner[0]), Line.HIDDEN),
        *(Stroke(((x, 0.0), (x, y)), Line.HIDDEN) for x, y in (*above, *below)),
        Dimension(above[0], above[1], depth, Side.ABOVE),
        Dimension(below[0], below[1], start, Side.BELOW),
        Grain(_amid(spiral, min(turns / 2, 0.5)), (0.0, 1.0)),
    )


def _amid(spiral: Spiral, turned: float) -> Point:
    """The middle of the flounce after so many turns."""
    radius = spiral.radius(turned) + spiral.pitch / 2
    return radius * cos(2 * pi * turned), radius * sin(2 * pi * turned)
