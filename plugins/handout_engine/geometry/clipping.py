"""Clips a straight band to an outline that may be hollow, so that it gives several pieces."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from handout_engine.geometry.points import Point, snapped, turned, turned_back
from handout_engine.geometry.polygons import Polygon, area

LEAST_AREA = 1e-6
"""Square mm: what is smaller than this is a touch, not a piece."""


@dataclass(frozen=True)
class Band:
    """An endless band: the direction it runs in (of length 1), and between which distances.

    The distances are measured square to it, to the right of the direction, from the origin.
    """

    along: Point
    near: float
    far: float


def clip(outline: Sequence[Point], band: Band) -> list[Polygon]:
    """The pieces of a band inside an outline, in no special order; the outline crosses nowhere."""
    pieces = clip_turned([turned(point, band.along) for point in outline], band.near, band.far)
    return [tuple(turned_back(point, band.along) for point in piece) for piece in pieces]


def clip_turned(outline: Sequence[Point], near: float, far: float) -> list[Polygon]:
    """The same for an outline seen along the band: the band lies level from `near` to `far`."""
    pieces = []
    for beyond_near in beyond(outline, snapped(near)):
        mirrored = [(along, -aside) for along, aside in beyond_near]
        for piece in beyond(mirrored, -snapped(far)):
            whole = tuple((along, -aside) for along, aside in piece)
            if area(whole) > LEAST_AREA:
                pieces.append(whole)
    return pieces


@dataclass(frozen=True)
class _Crossing:
    """Where an outline passes the level: how far along, which chain of points it belongs to."""

    along: float
    chain: int
    enters: bool


def beyond(outline: Sequence[Point], level: float) -> list[Polygon]:
    """The parts of an outline beyond a level (of the second coordinate).

    The outline is cut into the chains of points that lie beyond; where it crosses the level, the
    crossings in order pair up into the stretches inside, which join the chains into closed parts.
    A corner on the level counts as not beyond, as if the level lay a hair further on: so a corner
    that only touches, and a side along the level, need no case of their own, and parts that meet
    on the level alone stay apart.
    """
    chains, crossings = _chains(outline, level)
    if not crossings:
        return [tuple(outline)] if outline and outline[0][1] > level else []
    follows = {leaving.chain: entering.chain for leaving, entering in _pairs(crossings)}
    parts: list[Polygon] = []
    while follows:
        chain, after = follows.popitem()
        points = list(chains[chain])
        while after != chain:
            points.extend(chains[after])
            after = follows.pop(after)
        parts.append(_without_repeats(points))
    return [part for part in parts if len(part) >= 3]


def _chains(outline: Sequence[Point], level: float) -> tuple[list[list[Point]], list[_Crossing]]:
    """The chains of points beyond the level, each from one crossing to the next."""
    start = next((n for n, (_, aside) in enumerate(outline) if aside <= level), None)
    if start is None:
        return [], []
    chains: list[list[Point]] = []
    crossings: list[_Crossing] = []
    for before, after in pairwise([*outline[start:], *outline[: start + 1]]):
        enters = after[1] > level
        if enters != (before[1] > level):
            lean = (after[0] - before[0]) / (after[1] - before[1])
            at = snapped(before[0] + (level - before[1]) * lean)
            if enters:
                chains.append([])
            chains[-1].append((at, level))
            crossings.append(_Crossing(at, len(chains) - 1, enters))
        if enters:
            chains[-1].append(after)
    return chains, crossings


def _pairs(crossings: Sequence[_Crossing]) -> list[tuple[_Crossing, _Crossing]]:
    """Each crossing that leaves with the one that enters at the other end of its stretch."""
    waiting = sorted(crossings, key=lambda each: each.along)
    pairs = []
    while waiting:
        first = waiting.pop(0)
        # Two crossings at one place may stand in either order: the partner is of the other kind.
        other = next(n for n, each in enumerate(waiting) if each.enters != first.enters)
        second = waiting.pop(other)
        pairs.append((second, first) if first.enters else (first, second))
    return pairs


def _without_repeats(points: Sequence[Point]) -> Polygon:
    return tuple(
        point
        for before, point in zip([points[-1], *points[:-1]], points, strict=True)
        if before != point
    )
