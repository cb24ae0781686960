"""Layers sewn and folded in one dimension, with no formula of the engine.

A strip is a stretch of a line. Sewing two strips lays the needle's place on the one upon the
needle's place on the other; what lies beyond the needle on either side is allowance, behind the
cloth. What a band or a panel measures is then read off the places.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from folding import mirrored, turn_up


def sewn_width(strips: Iterable[tuple[Fraction, Fraction, Fraction]]) -> Fraction:
    """Strips (raw width, allowance before, allowance behind) sewn one to the next.

    Returns the distance from the first needle line to the last; the outer allowances are behind.
    """
    first = needle = None
    for width, before, behind in strips:
        raw_edge = -before if needle is None else needle - before
        if first is None:
            first = raw_edge + before
        needle = raw_edge + width - behind
    assert first is not None and needle is not None
    return needle - first


@dataclass(frozen=True)
class SewnEdge:
    """One layer after a seam: how much of it is used, and how far its raw edge lies inside."""

    taken: Fraction
    ridge: Fraction
    raw_edge_inside: Fraction


def french(first: Fraction, trim: Fraction, second: Fraction) -> SewnEdge:
    """A layer from -1000 to its raw edge at 0, sewn, trimmed, turned and sewn again."""
    fold = -first  # the first needle line becomes the fold
    raw_edge = mirrored(fold + trim, fold)  # trimmed, and turned back into the seam
    needle = fold - second
    return SewnEdge(-needle, fold - needle, raw_edge - needle)


def flat_fell(width: Fraction, turn: Fraction) -> SewnEdge:
    """The allowance beyond the needle laid over, its raw edge folded in."""
    needle = -(width + turn)
    fold = -turn
    raw_edge = mirrored(Fraction(0), fold)
    return SewnEdge(-needle, fold - needle, raw_edge - needle)


def rolled(taken: Fraction) -> SewnEdge:
    """An edge rolled over twice, each turn half of what the roll takes."""
    edge = turn_up(Fraction(1000), taken / 2, 2)
    return SewnEdge(1000 - edge.finished, edge.finished - edge.inner_fold, Fraction(0))
