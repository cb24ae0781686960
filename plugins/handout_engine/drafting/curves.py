"""The curves of a draft, as rows of points close enough together to be measured and cut.

Everything is in mm, x to the right and y downward.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise
from math import cos, fsum, hypot, inf, sin

from handout_engine.geometry.points import Point, snapped

STEPS = 40
TRIALS = 60
"""The most that a number is tried for a length; about ten are enough."""
NEAR = 1e-9
"""In mm: no length is kept closer."""

Line = tuple[Point, ...]


def bend(start: Point, towards: Point, from_: Point, end: Point) -> Line:
    """A smooth curve that leaves `start` towards one point and comes to `end` from another.

    It is the cubic curve of those four points (Bezier's).
    """
    return tuple(
        (
            snapped(_cubic(step / STEPS, start[0], towards[0], from_[0], end[0])),
            snapped(_cubic(step / STEPS, start[1], towards[1], from_[1], end[1])),
        )
        for step in range(STEPS + 1)
    )


def _cubic(at: float, start: float, towards: float, from_: float, end: float) -> float:
    left = 1 - at
    return fsum(
        (
            left * left * left * start,
            3 * left * left * at * towards,
            3 * left * at * at * from_,
            at * at * at * end,
        )
    )


def run(line: Sequence[Point]) -> float:
    """The length of a line from its first point to its last."""
    return snapped(fsum(hypot(x2 - x1, y2 - y1) for (x1, y1), (x2, y2) in pairwise(line)))


def split_at_level(line: Line, level: float) -> tuple[Line, Line]:
    """A line that runs downward, in the parts above and below a level; both hold the point there.

    Raises ValueError where the line does not reach the level.
    """
    for number, ((x1, y1), (x2, y2)) in enumerate(pairwise(line), 1):
        if y1 <= level <= y2 and y1 < y2:
            at = (snapped(x1 + (x2 - x1) * (level - y1) / (y2 - y1)), snapped(level))
            above = tuple(dict.fromkeys((*line[:number], at)))
            below = tuple(dict.fromkeys((at, *line[number:])))
            return above, below
    raise ValueError(f"the line does not reach {level}")


def point_along(line: Sequence[Point], distance: float) -> Point:
    """The point so far along a line from its first; its last where it is shorter."""
    left = distance
    for (x1, y1), (x2, y2) in pairwise(line):
        step = hypot(x2 - x1, y2 - y1)
        if step and left <= step:
            return snapped(x1 + (x2 - x1) * left / step), snapped(y1 + (y2 - y1) * left / step)
        left -= step
    return line[-1]


def beyond(line: Line, distance: float) -> Line:
    """The rest of a line from the point so far along it; half its last stretch if it is shorter."""
    left = distance
    for number, (start, end) in enumerate(pairwise(line), 1):
        step = run((start, end))
        if left < step or number == len(line) - 1:
            return (point_along((start, end), left if left < step else step / 2), *line[number:])
        left -= step
    return line


def shifted(line: Sequence[Point], across: float = 0.0, down: float = 0.0) -> Line:
    """A line moved to another place."""
    return tuple((snapped(x + across), snapped(y + down)) for x, y in line)


def round_corner(start: Point, corner: Point, end: Point, share: float) -> Line:
    """A smooth curve round a corner, its guides so great a share of the way towards it."""
    return bend(start, _part_way(start, corner, share), _part_way(end, corner, share), end)


def _part_way(start: Point, goal: Point, share: float) -> Point:
    return start[0] + (goal[0] - start[0]) * share, start[1] + (goal[1] - start[1]) * share


def straight_and_arc(start: Point, end: Point, turn: float) -> Line:
    """A level line from `start`, and an arc that rises from it to `end`, turning by that angle."""
    rise = start[1] - end[1]
    around = rise / (1 - cos(turn))
    level = end[0] - around * sin(turn)
    whole = level + around * turn
    points = [start]
    for step in range(1, STEPS):
        so_far = whole * step / STEPS - level
        angle = max(0.0, so_far) / around
        x = level + min(0.0, so_far) + around * sin(angle)
        points.append((snapped(x), snapped(start[1] - around * (1 - cos(angle)))))
    return (*points, end)


def between(one: Line, other: Line, share: float) -> Line:
    """The line so far on the way from one line to another, which has as many points."""
    parts = (_part_way(start, goal, share) for start, goal in zip(one, other, strict=True))
    return tuple((snapped(x), snapped(y)) for x, y in parts)


def radius(line: Sequence[Point]) -> float:
    """The radius of a line's tightest turn: of the circle through three neighbouring points."""
    tightest = inf
    for first, (x, y), last in zip(line, line[1:], line[2:], strict=False):
        before, after = (x - first[0], y - first[1]), (last[0] - x, last[1] - y)
        turned = abs(before[0] * after[1] - before[1] * after[0])
        if turned:
            across = hypot(last[0] - first[0], last[1] - first[1])
            tightest = min(tightest, hypot(*before) * hypot(*after) * across / (2 * turned))
    return tightest


def solved(length: Callable[[float], float], wanted: float, low: float, high: float) -> float:
    """The number between two others at which a length that grows with it is the wanted one.

    It is looked for where a straight line between the two would reach it; an end that stays for a
    second time counts half, so that both close in (the false position after Illinois). Raises
    ValueError when it is shorter than wanted at the higher, or longer at the lower.
    """
    below, above = length(low) - wanted, length(high) - wanted
    if not below <= 0 <= above:
        raise ValueError(f"no number from {low} to {high} gives {wanted}")
    stayed = 0.0
    for _ in range(TRIALS):
        if above - below <= NEAR:
            break
        trial = low - below * (high - low) / (above - below)
        off = length(trial) - wanted
        if abs(off) <= NEAR:
            return snapped(trial)
        if off < 0:
            low, below, above = trial, off, above / 2 if stayed > 0 else above
            stayed = 1.0
        else:
            high, above, below = trial, off, below / 2 if stayed < 0 else below
            stayed = -1.0
    return snapped((low + high) / 2)
