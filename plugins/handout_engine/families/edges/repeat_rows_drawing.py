"""Rows of a repeating stitch: along the sides of an article, and enlarged where a row begins."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

MOST_TICKS = 90
"""A row of more repeats than this is drawn as a dashed line."""
SHOWN = 6
"""Repeats drawn in an enlarged row."""


def ticked_row(start: Point, end: Point, number: int, reach: float) -> Iterable[Shape]:
    """A straight row with a tick of `reach` to both sides wherever a repeat begins or ends."""
    (x1, y1), (x2, y2) = start, end
    yield Stroke((start, end), Line.STITCH if number > MOST_TICKS else Line.THIN)
    if number > MOST_TICKS:
        return
    length = abs(x2 - x1) + abs(y2 - y1)
    across = ((y2 - y1) / length * reach, (x2 - x1) / length * reach)
    for place in range(number + 1):
        x, y = x1 + (x2 - x1) * place / number, y1 + (y2 - y1) * place / number
        yield Stroke(((x - across[0], y - across[1]), (x + across[0], y + across[1])), Line.THIN)


@dataclass(frozen=True)
class Rows:
    """An article with rows of repeats at the inner edge of its hems.

    `numbers` are the repeats along its width and along its length; the latter is None for a towel,
    whose rows run across its ends from side to side. `corner` is what a corner's stitch fills.
    """

    width: Value
    length: Value
    depth: Value
    corner: float
    numbers: tuple[int, int | None]

    @property
    def reach(self) -> float:
        """Half of the length of a tick."""
        return min(self.depth.mm * 0.3, 0.014 * max(self.width.mm, self.length.mm))


def article_rows(rows: Rows) -> tuple[Shape, ...]:
    """The whole article from its right side."""
    across, down, inside = rows.width.mm, rows.length.mm, rows.depth.mm
    shapes: list[Shape] = [Area(rectangle(0, 0, across, down))]
    along, upright = rows.numbers
    left = inside + rows.corner if upright is not None else 0.0
    for y in (inside, down - inside):
        shapes.extend(ticked_row((left, y), (across - left, y), along, rows.reach))
    if upright is not None:
        top = inside + rows.corner
        for x in (inside, across - inside):
            shapes.extend(ticked_row((x, top), (x, down - top), upright, rows.reach))
        inner = rectangle(inside, inside, across - 2 * inside, down - 2 * inside)
        for near, far in zip(rectangle(0, 0, across, down), inner, strict=True):
            shapes.append(Stroke((near, far), Line.HIDDEN))
    shapes.append(Dimension((0, down), (across, down), rows.width, Side.BELOW))
    shapes.append(Dimension((0, 0), (0, down), rows.length, Side.LEFT))
    shapes.append(Dimension((across, down - inside), (across, down), rows.depth, Side.RIGHT))
    return tuple(shapes)


@dataclass(frozen=True)
class RowStart:
    """Where a row begins: the hem's depth, one repeat each way, and the corner's own stitch.

    `upright` is None where no row turns the corner.
    """

    depth: Value
    across: Value
    upright: Value | None
    corner: Value | None
    at_side: bool = True
    """Whether the row begins at a finished side of the cloth."""


def row_start(start: RowStart) -> tuple[Shape, ...]:
    """A corner enlarged, its first repeats; a hem much deeper than they are is broken off."""
    repeat = start.across.mm
    band = min(start.depth.mm, 5 * repeat)
    whole = band == start.depth.mm
    free = start.corner.mm if start.corner else 0.0
    left = band if start.upright else 0.0
    wide = left + free + (SHOWN + 0.5) * repeat
    tall = band + (free + 3.5 * start.upright.mm if start.upright else 2 * repeat)
    edge = Line.CUT if whole else Line.THIN
    shapes: list[Shape] = [
        Area(rectangle(0, 0, wide, tall), Tone.RIGHT, outline=None),
        Stroke(((0, 0), (wide, 0)), edge),
        Stroke(
            ((0, 0), (0, tall)), edge if start.upright else Line.CUT if start.at_side else Line.THIN
        ),
        Stroke(((wide, 0), (wide, tall), (0, tall)), Line.THIN),
    ]
    first = (left + free, band)
    shapes.extend(
        ticked_row(first, (first[0] + SHOWN * repeat, band), SHOWN, min(0.3 * repeat, 0.6 * band))
    )
    shapes.append(Dimension((first[0], 0), (first[0] + repeat, 0), start.across, Side.ABOVE))
    if start.upright:
        shapes.extend(_turned(start.upright, left, band + free))
    if start.corner and free:
        shapes.append(Dimension((left, tall), (left + free, tall), start.corner, Side.BELOW))
        shapes.extend(_corner(left, band, free))
    if whole:
        shapes.append(Dimension((wide, 0), (wide, band), start.depth, Side.RIGHT))
    return tuple(shapes)


def _turned(upright: Value, left: float, top: float) -> Iterable[Shape]:
    """The first repeats of the row down the side."""
    yield from ticked_row(
        (left, top), (left, top + 3 * upright.mm), 3, min(0.3 * upright.mm, 0.6 * left)
    )
    yield Dimension((0, top), (0, top + upright.mm), upright, Side.LEFT)


def _corner(left: float, top: float, free: float) -> Iterable[Shape]:
    """The room of the corner's own stitch."""
    yield Stroke(((left, top + free), (left, top), (left + free, top)), Line.HIDDEN)


def plain_row(run: Value, number: int, repeat: Value, margin: Value | None) -> tuple[Shape, ...]:
    """A row along an edge that is drawn as a band of cloth."""
    start = margin.mm if margin else 0.0
    whole = run.mm + 2 * start
    band = max(0.14 * whole, min(0.3 * whole, 3 * repeat.mm))
    middle = band * 0.6
    shapes: list[Shape] = [
        Area(rectangle(0, 0, whole, band), Tone.RIGHT, outline=None),
        Stroke(((0, band), (whole, band)), Line.CUT),
        Stroke(((0, band), (0, 0), (whole, 0), (whole, band)), Line.THIN),
    ]
    shapes.extend(ticked_row((start, middle), (start + run.mm, middle), number, 0.12 * band))
    shapes.append(Dimension((start, band), (start + run.mm, band), run, Side.BELOW))
    shapes.append(Dimension((start, 0), (start + repeat.mm, 0), repeat, Side.ABOVE))
    if margin and margin.mm:
        shapes.append(Dimension((0, band), (start, band), margin, Side.BELOW))
    return tuple(shapes)
