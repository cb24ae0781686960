"""Facings of an open front and of the back of the neck, shaped like the edges they lie behind."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.curves import Line, bend, point_along
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.geometry.points import Point, snapped


class FacingInputs:
    """How wide the facings are."""

    facing = length(
        "facing",
        "Finished width of the front facing, from the front edge.",
        "4.5 cm",
        ("1.5 cm", "10 cm"),
        group=SEWING,
        basis=PRACTICE,
    )
    neck_facing = length(
        "neck facing",
        "Finished depth of the facings at the shoulder and the back of the neck.",
        "3 cm",
        ("1 cm", "6 cm"),
        group=SEWING,
        basis=PRACTICE,
    )


@dataclass(frozen=True)
class FrontEdge:
    """Where the open front ends in mm: so far beyond its centre, at this level; its seam."""

    beyond: float
    low: float
    seam: float


def front_facing(inputs: FacingInputs, block: BodyBlock, edge: FrontEdge) -> Draft:
    """The facing of one front: from the shoulder along neck and front edge down to the hem."""
    seam, deep, low = edge.seam, float(inputs.neck_facing), snapped(edge.low)
    centre, end = block.front_neckline[0], _along_shoulder(block, deep)
    out, inner = snapped(-edge.beyond), snapped(float(inputs.facing) - edge.beyond)
    level = snapped(min(centre[1] + deep, low - deep))
    curve = bend(end, (end[0], (end[1] + level) / 2), (inner, (end[1] + level) / 2), (inner, level))
    edges = (
        Edge("neck", ((out, centre[1]), *block.front_neckline), seam),
        Edge("shoulder", (block.neck_point, end), seam),
        Edge("inner edge", (*curve, (inner, low)), seam),
        Edge("hem", ((inner, low), (out, low)), seam),
        Edge("front", ((out, low), (out, centre[1])), seam),
    )
    return Draft("front facing", edges, (centre,))


def back_facing(inputs: FacingInputs, block: BodyBlock, seam: float) -> Draft:
    """Half of the facing of the back of the neck, on the fold."""
    deep = float(inputs.neck_facing)
    end = _along_shoulder(block, deep)
    low = snapped(block.back_neck + deep)
    lower: Line = bend(end, (end[0], (end[1] + low) / 2), (end[0] / 2, low), (0.0, low))
    edges = (
        Edge("neck", block.back_neckline, seam),
        Edge("shoulder", (block.neck_point, end), seam),
        Edge("inner edge", lower, seam),
        Edge(FOLD, ((0.0, low), block.back_neckline[0])),
    )
    return Draft("back neck facing", edges)


def _along_shoulder(block: BodyBlock, distance: float) -> Point:
    """The point so far along the shoulder from the neck, also where it runs on into a sleeve."""
    (x, y), (end_x, end_y) = block.neck_point, block.shoulder
    further = (x + 9 * (end_x - x), y + 9 * (end_y - y))
    return point_along((block.neck_point, further), distance)
