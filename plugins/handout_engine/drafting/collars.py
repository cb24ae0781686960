"""Flat collars: front and back neckline joined at the shoulder, and a border of even depth on them.

The front lies as in the block, its centre at x = 0. The back is turned about the neck point until
its shoulder seam lies on that of the front, and a little further: at the outer end of the shoulder
the two overlap, which shortens the collar's outer edge so that it hides the neck seam.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import fsum, hypot, sqrt

from handout_engine.drafting.body_block import ROUND, BodyBlock
from handout_engine.drafting.curves import Line, bend, point_along, run, solved
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.geometry.points import Point, snapped

SHORTEST = 1e-6
"""An end shorter than this, in mm, is none: the corner is rounded up to the neck."""


@dataclass(frozen=True)
class JoinedNeck:
    """Front and back necklines of a block joined at the shoulder; `overlap` is in mm."""

    block: BodyBlock
    overlap: float

    @cached_property
    def _turn(self) -> tuple[float, float]:
        """Cosine and sine of the angle by which the back, turned over, comes onto the front.

        Twice the slope of the shoulder, and the angle whose chord is the overlap.
        """
        (x, y), along = self.block.shoulder, run((self.block.neck_point, self.block.shoulder))
        slope = ((x - self.block.neck_half) / along, y / along)
        half = self.overlap / (2 * along)
        chord = (sqrt(max(0.0, 1 - half * half)), half)
        return _added(_added(slope, slope), _added(chord, chord))

    def laid_back(self, points: Sequence[Point]) -> Line:
        """Points of the back where they lie when it is joined to the front."""
        (cosine, sine), half = self._turn, self.block.neck_half
        return tuple(
            (
                snapped(half + (x - half) * cosine + y * sine),
                snapped((x - half) * sine - y * cosine),
            )
            for x, y in points
        )

    @property
    def back_line(self) -> Point:
        """The direction of the centre back, away from the neck, of length 1."""
        cosine, sine = self._turn
        return sine, -cosine

    @cached_property
    def curve(self) -> Line:
        """The neck edge of the collar from centre front to centre back.

        The corner that the overlap makes at the shoulder is smoothed between the middle of the
        front and that of the back; the length stays what it was. Raises ValueError where no
        smooth line is so long.
        """
        front = self.block.front_neckline
        back = tuple(reversed(self.laid_back(self.block.back_neckline)))
        first, last = _middle(front), _middle(back)
        kept, rest = front[: first + 1], back[last:]
        wanted = run(front[first:]) + run(back[: last + 1])
        start, end = (_direction(line, at) for line, at in ((front, first), (back, last)))
        between = _bridge((front[first], start), (back[last], end), wanted)
        return (*kept, *between[1:-1], *rest)

    @property
    def shoulder_mark(self) -> Point:
        """Where on that edge the shoulder seam of the garment meets it."""
        return point_along(self.curve, run(self.block.front_neckline))

    def border(self, depth: float) -> Line:
        """The line at an even distance outside the neck edge, from centre front to centre back."""
        curve = self.curve
        outward = [
            (0.0, 1.0),
            *(_aside(before, after) for before, after in zip(curve, curve[2:], strict=False)),
            self.back_line,
        ]
        return tuple(
            (snapped(x + depth * across), snapped(y + depth * down))
            for (x, y), (across, down) in zip(curve, outward, strict=True)
        )


def collar_draft(  # noqa: PLR0913 - a collar has these parts
    name: str, neck: JoinedNeck, depth: float, *, rounding: float, seam: float, on_fold: bool
) -> Draft:
    """One half of a collar, on the fold at the centre front or with an end there too.

    `rounding` is how far from a corner its curve begins, 0 for square corners; at most the depth.
    """
    curve, border = neck.curve, tuple(reversed(neck.border(depth)))
    left = depth - rounding
    low_front, low_back = (
        _towards(end, corner, left)
        for end, corner in ((curve[0], border[-1]), (curve[-1], border[0]))
    )
    front_rounding = 0.0 if on_fold else rounding
    outer = _rounded(border, low_back, rounding)
    outer = tuple(reversed(_rounded(tuple(reversed(outer)), low_front, front_rounding)))
    edges = [Edge("neck", curve, seam)]
    if left > SHORTEST:
        edges.append(Edge("back end", (curve[-1], low_back), seam))
    edges.append(Edge("outer edge", outer, seam))
    if on_fold:
        edges.append(Edge(FOLD, (outer[-1], curve[0])))
    elif left > SHORTEST:
        edges.append(Edge("front end", (low_front, curve[0]), seam))
    return Draft(name, tuple(edges), notches=(neck.shoulder_mark,))


def sewn_edge(draft: Draft) -> float:
    """The outer edge of a half collar with its open ends, all that is sewn but the neck."""
    return snapped(fsum(each.length for each in draft.edges if each.name not in {"neck", FOLD}))


def _added(first: Point, second: Point) -> Point:
    """Cosine and sine of the sum of two angles given by theirs."""
    return (
        first[0] * second[0] - first[1] * second[1],
        first[1] * second[0] + first[0] * second[1],
    )


def _middle(line: Line) -> int:
    """The number of the point from which about as much of the line lies before it as after."""
    half, so_far = run(line) / 2, 0.0
    for number, ((x1, y1), (x2, y2)) in enumerate(pairwise(line), 1):
        so_far += hypot(x2 - x1, y2 - y1)
        if so_far >= half:
            return min(number, len(line) - 2)
    return len(line) // 2


def _direction(line: Line, at: int) -> Point:
    """Where a line goes at one of its inner points, of length 1."""
    return _unit(line[at - 1], line[at + 1])


def _unit(start: Point, end: Point) -> Point:
    across, down = end[0] - start[0], end[1] - start[1]
    length = hypot(across, down)
    return across / length, down / length


def _aside(before: Point, after: Point) -> Point:
    """The direction to the right of the way from one point to another, of length 1."""
    across, down = _unit(before, after)
    return -down, across


def _bridge(start: tuple[Point, Point], end: tuple[Point, Point], wanted: float) -> Line:
    """The smooth line of that length between two points, each given with its direction.

    Raises ValueError where there is none.
    """
    (first, along), (last, onward) = start, end
    cross = along[0] * onward[1] - along[1] * onward[0]
    gap = (last[0] - first[0], last[1] - first[1])
    before = (gap[0] * onward[1] - gap[1] * onward[0]) / cross if cross else 0.0
    after = (gap[1] * along[0] - gap[0] * along[1]) / cross if cross else 0.0
    if before <= 0 or after <= 0:
        raise ValueError("the two directions do not meet between the points")

    def line(share: float) -> Line:
        return bend(
            first,
            (first[0] + along[0] * before * share, first[1] + along[1] * before * share),
            (last[0] - onward[0] * after * share, last[1] - onward[1] * after * share),
            last,
        )

    return line(solved(lambda share: run(line(share)), wanted, 0.05, 1.0))


def _towards(start: Point, end: Point, distance: float) -> Point:
    return point_along((start, end), distance) if distance > 0 else start


def _rounded(line: Line, onto: Point, rounding: float) -> Line:
    """A line whose first corner is rounded: it begins at `onto`, on the side that meets it there.

    Raises ValueError where the line is no longer than the rounding.
    """
    if rounding <= 0:
        return line
    corner, so_far = line[0], 0.0
    for number, ((x1, y1), (x2, y2)) in enumerate(pairwise(line), 1):
        so_far += hypot(x2 - x1, y2 - y1)
        if so_far > rounding:
            end, (across, down) = point_along(line, rounding), _unit((x1, y1), (x2, y2))
            reach = ROUND * hypot(end[0] - corner[0], end[1] - corner[1])
            arrives = (end[0] - across * reach, end[1] - down * reach)
            return (*bend(onto, _share(onto, corner), arrives, end), *line[number:])
    raise ValueError("the line is no longer than the rounding")


def _share(start: Point, corner: Point) -> Point:
    """The guide of a quarter curve."""
    return start[0] + (corner[0] - start[0]) * ROUND, start[1] + (corner[1] - start[1]) * ROUND
