"""A neck smocked all round: from above as it lies flat, and its pieces side by side."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Dots,
    Line,
    Note,
    Point,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

MOST_LINES, MOST_CIRCLES, MOST_DOTS = 110, 9, 90
"""So many pleats, rows and dots in a row are drawn at most."""
OPEN = 0.035
"""Half of the opening at the centre back, as a share of the whole turn."""
TONES = (Tone.RIGHT, Tone.SECOND, Tone.RIGHT, Tone.SECOND, Tone.RIGHT)


@dataclass(frozen=True)
class NeckPart:
    """One piece round the neck: its number, its pleats, its flat width between its seam lines."""

    number: int
    pleats: int
    flat: Value


@dataclass(frozen=True)
class SmockedNeck:
    """The pieces in order from one back edge to the other, the neck, the depth of the smocking."""

    parts: Sequence[NeckPart]
    neck: Value
    depth: Value
    rows: int

    @property
    def pleats(self) -> int:
        """All pleats."""
        return sum(part.pleats for part in self.parts)

    @property
    def seams(self) -> list[float]:
        """How many pleats lie before each seam, both back edges included."""
        found = [0.0]
        for part in self.parts:
            found.append(found[-1] + part.pleats)
        return found


def neck_from_above(neck: SmockedNeck) -> tuple[Shape, ...]:
    """The smocking lying flat round the neck, open at the centre back, which is at the top."""
    inner = neck.neck.mm / (2 * pi)
    outer = inner + neck.depth.mm
    shapes: list[Shape] = []
    seams = neck.seams
    for part, tone, start, end in zip(neck.parts, TONES, seams, seams[1:], strict=False):
        shapes.append(Area(_sector(neck, (start, end), (inner, outer)), tone, outline=None))
        shapes.append(Note(_at(neck, (start + end) / 2, outer * 1.1), sentence(str(part.number))))
    shapes.extend(_pleats(neck, (inner, outer)))
    for radius, line in _circles(neck, (inner, outer)):
        shapes.append(Stroke(_arc(neck, (0, neck.pleats), radius), line))
    for seam in seams:
        shapes.append(Stroke((_at(neck, seam, inner), _at(neck, seam, outer)), Line.CUT))
    shapes.append(Dimension((inner, outer), (outer, outer), neck.depth, Side.BELOW))
    words = sentence("neck {neck}", neck=neck.neck)
    if inner > 0.4 * outer:
        shapes.append(Note((0, 0), words))
    else:
        shapes.append(Note((-outer, outer), words, anchor="start"))
    return tuple(shapes)


def _at(neck: SmockedNeck, pleat: float, radius: float) -> Point:
    """Where a pleat lies on a circle, counted from the back opening, clockwise."""
    turn = 2 * pi * (OPEN + (1 - 2 * OPEN) * pleat / neck.pleats)
    return radius * sin(turn), -radius * cos(turn)


def _arc(neck: SmockedNeck, pleats: tuple[float, float], radius: float) -> tuple[Point, ...]:
    start, end = pleats
    steps = max(2, round(96 * (end - start) / neck.pleats))
    return tuple(
        _at(neck, start + (end - start) * step / steps, radius) for step in range(steps + 1)
    )


def _sector(
    neck: SmockedNeck, pleats: tuple[float, float], radii: tuple[float, float]
) -> tuple[Point, ...]:
    return (*_arc(neck, pleats, radii[0]), *reversed(_arc(neck, pleats, radii[1])))


def _pleats(neck: SmockedNeck, radii: tuple[float, float]) -> Iterable[Shape]:
    lines = min(neck.pleats, MOST_LINES)
    for number in range(1, lines):
        pleat = neck.pleats * number / lines
        yield Stroke((_at(neck, pleat, radii[0]), _at(neck, pleat, radii[1])), Line.THIN)


def _circles(neck: SmockedNeck, radii: tuple[float, float]) -> Iterable[tuple[float, Line]]:
    """The neck edge, the rows or some of them, and the last row."""
    inner, outer = radii
    rows = min(neck.rows, MOST_CIRCLES)
    yield inner, Line.CUT
    for row in range(1, rows):
        yield inner + (outer - inner) * row / (rows - 1), Line.STITCH


def pieces_side_by_side(neck: SmockedNeck, total: Value) -> tuple[Shape, ...]:
    """The pieces joined along their seams and laid flat, with their dots, before gathering."""
    wide = total.mm
    tall = max(0.16 * wide, neck.depth.mm)
    step = wide / neck.pleats
    shapes: list[Shape] = []
    for part, tone, start, end in zip(neck.parts, TONES, neck.seams, neck.seams[1:], strict=False):
        left, width = start * step, (end - start) * step
        shapes.append(Area(rectangle(left, 0, width, tall), tone))
        shapes.append(Note((left + width / 2, 0.8 * tall), sentence(str(part.number))))
        if part.number <= 3:
            side, edge = (Side.ABOVE, 0.0) if part.number == 2 else (Side.BELOW, tall)
            shapes.append(Dimension((left, edge), (left + width, edge), part.flat, side))
    every = -(-neck.pleats // MOST_DOTS)
    rows = min(neck.rows, 5)
    shapes.append(
        Dots(
            tuple(
                (column * step, 0.12 * tall * (row + 1))
                for row in range(rows)
                for column in range(0, neck.pleats + 1, every)
            )
        )
    )
    shapes.append(Dimension((0, 0), (wide, 0), total, Side.ABOVE))
    return tuple(shapes)
