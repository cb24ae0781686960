"""The corner of a hemmed article: flat with the lines to mark, and finished with its mitre."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

BEYOND = 1.35
"""How much of a side is drawn, counted in what the mitre needs of it."""


@dataclass(frozen=True)
class CornerHem:
    """The measures of one hemmed corner."""

    depth: Value
    turn: Value
    takes: Value
    mark: Value
    trim: Value


def flat_corner(hem: CornerHem) -> tuple[Shape, ...]:
    """The raw corner from its wrong side: folds dash-dotted, mitre dashed, what is cut off grey."""
    mark, trim, takes = hem.mark.mm, hem.trim.mm, hem.takes.mm
    reach = BEYOND * mark
    shapes: list[Shape] = [
        Area(rectangle(0, 0, reach, reach), Tone.WRONG, outline=None),
        Area(((0, 0), (trim, 0), (0, trim)), Tone.SHADE, outline=None),
        Stroke(((reach, 0), (0, 0), (0, reach)), Line.CUT),
        Stroke(((trim, 0), (0, trim)), Line.THIN),
        Stroke(((mark, 0), (0, mark)), Line.STITCH),
    ]
    for place in (hem.turn.mm, takes) if hem.turn.mm else (takes,):
        shapes.append(Stroke(((place, 0), (place, reach)), Line.FOLD))
        shapes.append(Stroke(((0, place), (reach, place)), Line.FOLD))
    shapes.append(Dimension((0, 0), (mark, 0), hem.mark, Side.ABOVE))
    shapes.append(Dimension((0, 0), (trim, 0), hem.trim, Side.ABOVE))
    shapes.append(Dimension((0, 0), (0, takes), hem.takes, Side.LEFT))
    if hem.turn.mm:
        shapes.append(Dimension((0, 0), (0, hem.turn.mm), hem.turn, Side.LEFT))
    shapes.extend(_broken(reach))
    return tuple(shapes)


def finished_corner(hem: CornerHem) -> tuple[Shape, ...]:
    """The finished corner from its wrong side: the hem shows the right side of the cloth."""
    depth = hem.depth.mm
    reach = 3.2 * depth
    inset = 0.12 * depth
    row = depth - inset
    return (
        Area(rectangle(0, 0, reach, reach), Tone.WRONG, outline=None),
        Area(
            ((0, 0), (reach, 0), (reach, depth), (depth, depth), (depth, reach), (0, reach)),
            Tone.RIGHT,
            outline=None,
        ),
        Stroke(((reach, 0), (0, 0), (0, reach)), Line.CUT),
        Stroke(((reach, depth), (depth, depth), (depth, reach)), Line.CUT),
        Stroke(((0, 0), (depth, depth)), Line.CUT),
        Stroke(((reach, row), (row, row), (row, reach)), Line.STITCH),
        Dimension((0, 0), (0, depth), hem.depth, Side.LEFT),
        *_broken(reach),
    )


def _broken(reach: float) -> tuple[Shape, ...]:
    """Thin lines where the drawing leaves the article."""
    return (
        Stroke(((reach, 0), (reach, reach)), Line.THIN),
        Stroke(((0, reach), (reach, reach)), Line.THIN),
    )


def hemmed_article(width: Value, long: Value, depth: Value) -> tuple[Shape, ...]:
    """The whole article from its right side, its hem's stitching and mitres seen through."""
    across, down, inside = width.mm, long.mm, depth.mm
    inner = rectangle(inside, inside, across - 2 * inside, down - 2 * inside)
    outer = rectangle(0, 0, across, down)
    shapes: list[Shape] = [Area(outer)]
    shapes.append(Stroke((*inner, inner[0]), Line.STITCH))
    shapes.extend(Stroke((near, far), Line.HIDDEN) for near, far in zip(outer, inner, strict=True))
    shapes.append(Dimension((0, down), (across, down), width, Side.BELOW))
    shapes.append(Dimension((0, 0), (0, down), long, Side.LEFT))
    shapes.append(Dimension((across - inside, 0), (across, 0), depth, Side.ABOVE))
    return tuple(shapes)
