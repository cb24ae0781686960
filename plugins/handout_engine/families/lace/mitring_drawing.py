"""Lace mitred round corners: the plan of the whole, and one corner before it is folded."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, hypot, radians, sin

from handout_engine.amounts.values import Sentence, Value
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
)
from handout_engine.shared.nets_drawing import lace_between, straight

SHORTEST_NAMED = 0.16
"""A side shorter than this share of the whole width has no room for its length beside it."""


@dataclass(frozen=True)
class MitreWalk:
    """Sides walked one after another, turning by the same angle at each corner (degrees)."""

    sides: Sequence[float]
    turn: float
    closed: bool

    @property
    def headings(self) -> list[float]:
        """The direction of every side; the whole stands upright."""
        start = 0.0 if self.closed else -self.turn * (len(self.sides) - 1) / 2
        return [radians(start + self.turn * number) for number in range(len(self.sides))]

    @property
    def way(self) -> int:
        """1 for a ring; -1 for an open line, whose corners then point down, as a collar's do."""
        return 1 if self.closed else -1

    @property
    def inner(self) -> list[Point]:
        """The corners of the inner line, first and last end included."""
        points = [(0.0, 0.0)]
        for side, heading in zip(self.sides, self.headings, strict=True):
            x, y = points[-1]
            points.append((x + side * cos(heading), y + self.way * side * sin(heading)))
        return points

    def outer(self, width: float) -> list[Point]:
        """The same corners on the outer line, `width` outside the inner one."""
        headings = self.headings
        made = []
        for number, (x, y) in enumerate(self.inner):
            before, after = headings[max(0, number - 1)], headings[min(number, len(headings) - 1)]
            if self.closed and number in (0, len(headings)):
                before, after = headings[-1], headings[0] + radians(360)
            middle, reach = (before + after) / 2, width / cos((after - before) / 2)
            made.append((x + reach * sin(middle), y - self.way * reach * cos(middle)))
        return made

    @property
    def gap(self) -> float:
        """How far the end lies from the start."""
        (x1, y1), (x2, y2) = self.inner[0], self.inner[-1]
        return hypot(x2 - x1, y2 - y1)


def mitre_plan(
    walk: MitreWalk, width: float, names: Sequence[Sentence], outside: bool
) -> tuple[Shape, ...]:
    """The lace round its corners, mitres as fold lines, each side's length in or `outside` it."""
    inner, outer = walk.inner, walk.outer(width)
    shapes: list[Shape] = []
    for number in range(len(walk.sides)):
        steps = max(4, min(40, round(walk.sides[number] / width * 3)))
        shapes.extend(
            lace_between(
                straight(outer[number], outer[number + 1], steps),
                straight(inner[number], inner[number + 1], steps),
            )
        )
    last = len(inner) - 1
    for number, (near, far) in enumerate(zip(inner, outer, strict=True)):
        end = not walk.closed and number in (0, last)
        shapes.append(Stroke((near, far), Line.CUT if end else Line.FOLD))
    shapes.extend(_names(walk, width, names, outside))
    return tuple(shapes)


def _names(
    walk: MitreWalk, width: float, names: Sequence[Sentence], outside: bool
) -> Iterable[Shape]:
    """Each side's length inside its middle, square to the side."""
    span = max(max(x for x, _ in walk.inner) - min(x for x, _ in walk.inner), width)
    for number, (heading, name) in enumerate(zip(walk.headings, names, strict=True)):
        if walk.sides[number] < SHORTEST_NAMED * span:
            continue
        (x1, y1), (x2, y2) = walk.inner[number], walk.inner[number + 1]
        side = -1 if outside else 1
        inward = (-side * sin(heading), side * walk.way * cos(heading))
        away = 0.05 * span + (width if outside else 0)
        at = ((x1 + x2) / 2 + inward[0] * away, (y1 + y2) / 2 + inward[1] * away)
        anchor = "middle" if abs(inward[0]) < 0.4 else "start" if inward[0] > 0 else "end"
        yield Note(at, name, anchor=anchor)


@dataclass(frozen=True)
class CornerSizes:
    """One corner of a mitre: lace width, half of the mitre, its seam, and what it takes in all."""

    width: Value
    half: Value
    seam: Value
    takes: Value


def mitre_corner(sizes: CornerSizes) -> tuple[Shape, ...]:
    """A piece of lace, outer edge up, with the lines to stitch and the fold between them."""
    width, half, seam = sizes.width.mm, sizes.half.mm, sizes.seam.mm
    reach = half + seam + 1.2 * width
    steps = max(8, min(60, round(2 * reach / width * 3)))
    shapes: list[Shape] = list(
        lace_between(
            straight((-reach, 0), (reach, 0), steps),
            straight((-reach, width), (reach, width), steps),
        )
    )
    dart = ((-seam, 0.0), (seam, 0.0), (half + seam, width), (-half - seam, width))
    shapes.append(Area(dart, Tone.WRONG, outline=None))
    shapes.append(Stroke(((-seam, 0), (-half - seam, width)), Line.STITCH))
    shapes.append(Stroke(((seam, 0), (half + seam, width)), Line.STITCH))
    shapes.append(Stroke(((0, -0.2 * width), (0, 1.2 * width)), Line.FOLD))
    shapes.append(Dimension((-half - seam, width), (half + seam, width), sizes.takes, Side.BELOW))
    if seam:
        shapes.append(Dimension((0, 0), (seam, 0), sizes.seam, Side.ABOVE))
    shapes.append(Dimension((-reach, 0), (-reach, width), sizes.width, Side.LEFT))
    for x in (-reach, reach):
        shapes.append(Stroke(((x, 0), (x, width)), Line.THIN))
    return tuple(shapes)
