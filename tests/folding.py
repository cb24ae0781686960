"""Cloth folded and sewn in the head: layers as stretches of a line, with no formula of the engine.

A strip seen at its cut end is a row of points, each with the height at which it lies. Sewing puts
a point of one strip on a point of another; folding mirrors every point beyond the fold. What a
ruffle measures is then read off the points, as a tape would read it.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

Point = Fraction


@dataclass(frozen=True)
class FoldedPair:
    """Two strips sewn along one edge and folded with their raw edges level, as measured."""

    opened: Fraction
    depth: Fraction
    band: Fraction
    front_above_band: Fraction

    def front_that_shows(self, edge_allowance: Fraction) -> Fraction:
        """What shows of the front once its raw edge is caught in a seam."""
        return self.front_above_band - edge_allowance


def fold_pair(front: Fraction, facing: Fraction, seam: Fraction) -> FoldedPair:
    """Lay `front` from 0 rightward, sew `facing` to its far end, and fold raw edge on raw edge.

    The front's raw edge is at 0. The two strips are laid right sides together with the edges to be
    seamed level; the needle goes through both, `seam` from those edges. When the facing is turned
    away from the front, its point at the needle keeps its place and its raw edge points away.
    """
    needle_on_front = front - seam
    needle_on_facing = seam
    facing_raw_edge = needle_on_front + (facing - needle_on_facing)
    fold = facing_raw_edge / 2  # the place from which both raw edges are equally far
    assert mirrored(facing_raw_edge, fold) == 0, "the raw edges do not meet"
    return FoldedPair(
        opened=facing_raw_edge,
        depth=fold,
        band=fold - needle_on_front,
        front_above_band=needle_on_front,
    )


def mirrored(point: Point, fold: Point) -> Point:
    """Where a point lies after everything beyond the fold is turned back over it."""
    return 2 * fold - point if point > fold else point


@dataclass(frozen=True)
class TurnedEdge:
    """An edge turned up once or more: where its finished edge lies, and where its layers end."""

    finished: Fraction
    raw_edge: Fraction
    inner_fold: Fraction
    layers: int


def turn_up(width: Fraction, turn: Fraction, times: int) -> TurnedEdge:
    """Turn the lower edge of a strip up by `turn`, so many times.

    The strip runs from its upper raw edge at 0 to its lower raw edge at `width`. Each time the
    whole folded edge, with all the layers it has by then, is turned up by `turn`.
    """
    points = {"raw edge": width, "lowest": width}
    inner = width
    layers = 1
    for _ in range(times):
        lowest = points["lowest"]
        fold = lowest - turn
        points = {name: mirrored(place, fold) for name, place in points.items()}
        inner = mirrored(lowest, fold)
        points["lowest"] = fold
        layers += 1
    return TurnedEdge(points["lowest"], points["raw edge"], inner, layers)


@dataclass(frozen=True)
class Doubled:
    """A strip whose upper edge is folded down and whose lower edge is folded up."""

    depth: Fraction
    upper_raw_edge: Fraction
    lower_raw_edge: Fraction


def fold_double(width: Fraction, upper_fold: Fraction, lower_fold: Fraction) -> Doubled:
    """Fold a strip at two places; places are measured from the upper fold, downward."""
    return Doubled(
        depth=lower_fold - upper_fold,
        upper_raw_edge=upper_fold - 0,
        lower_raw_edge=mirrored(width, lower_fold) - upper_fold,
    )
