"""Front and back yoke drafted: the body block down to a level inside the armhole."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.curves import Line, split_at_level
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.geometry.points import Point


@dataclass(frozen=True)
class Yoke:
    """The drafted yoke: its level below the neck point, and the armhole below it.

    Its seam runs from the centre to `end`, all in mm.
    """

    front: Draft
    back: Draft
    level: float
    below: Line

    @property
    def end(self) -> Point:
        """Where the yoke seam meets the armhole."""
        return self.below[0]


@dataclass(frozen=True)
class BackEdge:
    """The back edge in mm: so far beyond the centre, and how wide its facing is."""

    beyond: float
    facing: float


def draft_yoke(block: BodyBlock, level: float, back: BackEdge, seam: float) -> Yoke:
    """Both yokes of a block, their seam at that level, every seam with the same allowance."""
    above, below = split_at_level(block.armhole, level)
    return Yoke(_front(block, above, seam), _back(block, above, back, seam), level, below)


def _front(block: BodyBlock, above: Line, seam: float) -> Draft:
    end = above[-1]
    bottom = (end, (0.0, end[1]))
    edges = (
        Edge("neck", block.front_neckline, seam),
        Edge("shoulder", (block.neck_point, block.shoulder), seam),
        Edge("armhole", above, seam),
        Edge("yoke", bottom, seam),
        Edge(FOLD, (bottom[1], block.front_neckline[0])),
    )
    return Draft("front yoke", edges, notches=((end[0] / 2, end[1]),))


def _back(block: BodyBlock, above: Line, back: BackEdge, seam: float) -> Draft:
    """Its back edge is the fold of the facing, and the facing what is cut beyond it."""
    end, beyond, top = above[-1], -back.beyond, block.back_neck
    corners = ((beyond, end[1]), (beyond, top))
    edges = (
        Edge("neck", (corners[1], *block.back_neckline), seam),
        Edge("shoulder", (block.neck_point, block.shoulder), seam),
        Edge("armhole", above, seam),
        Edge("yoke", (end, corners[0]), seam),
        Edge("back", corners, back.facing),
    )
    return Draft(
        "back yoke",
        edges,
        notches=((0.0, top), (0.0, end[1]), (end[0] / 2, end[1])),
        remark="At its back edge the dashed line is the fold of the facing.",
    )
