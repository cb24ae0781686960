"""Motifs along an edge, round a ring and between corners; a few of them at true scale."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

STEPS = 36


@dataclass(frozen=True)
class Motif:
    """A motif: its width along the edge, its height, its distance from the edge."""

    width: Value
    height: Value
    above: Value

    @property
    def middle(self) -> float:
        """From the edge to the middle of the motif."""
        return self.above.mm + self.height.mm / 2


def _oval(motif: Motif, at: Point, turn: float = 0.0) -> Area:
    """A stand-in for the motif: an oval as wide and as high as it is, turned with its edge."""
    points = []
    for step in range(STEPS):
        phase = 2 * pi * step / STEPS
        x, y = motif.width.mm / 2 * cos(phase), motif.height.mm / 2 * sin(phase)
        points.append(
            (at[0] + x * cos(turn) - y * sin(turn), at[1] + x * sin(turn) + y * cos(turn))
        )
    return Area(tuple(points), Tone.SECOND)


@dataclass(frozen=True)
class Divided:
    """A side divided: its length, the gap, what is clear at its ends, the centre of each motif."""

    side: Value
    gap: Value | None
    clear: Value | None
    centres: Sequence[float]


def along_edge(motif: Motif, row: Divided) -> tuple[Shape, ...]:
    """Motifs on a straight edge, which lies at the bottom, with its centre line."""
    wide = row.side.mm
    tall = max(motif.above.mm + 1.5 * motif.height.mm, 0.08 * wide)
    shapes: list[Shape] = [
        Area(rectangle(0, -tall, wide, tall), Tone.RIGHT, outline=None),
        Stroke(((0, -tall), (0, 0), (wide, 0), (wide, -tall)), Line.CUT),
        Stroke(((wide / 2, -1.15 * tall), (wide / 2, 0.05 * tall)), Line.FOLD),
        Note((wide / 2, -1.15 * tall), sentence("centre"), above=True),
    ]
    shapes.extend(_oval(motif, (x, -motif.middle)) for x in row.centres)
    first, half = row.centres[0], motif.width.mm / 2
    shapes.append(Dimension((first - half, 0), (first + half, 0), motif.width, Side.BELOW))
    if row.gap is not None and row.gap.mm and len(row.centres) > 1:
        left = row.centres[-2] + half
        shapes.append(Dimension((left, 0), (left + row.gap.mm, 0), row.gap, Side.BELOW))
    shapes.append(Dimension((0, 0), (wide, 0), row.side, Side.BELOW))
    return tuple(shapes)


def is_narrow(motif: Motif, row: Divided) -> bool:
    """Whether a ring is too narrow to be drawn laid flat with its motifs inside it."""
    return motif.above.mm + motif.height.mm > 0.8 * row.side.mm / (2 * pi)


def round_ring(motif: Motif, row: Divided) -> tuple[Shape, ...]:
    """Motifs round a ring laid flat, the centre front at the bottom; a narrow one unrolled."""
    if is_narrow(motif, row):
        whole = row.side.mm
        unrolled = sorted((at + whole / 2) % whole for at in row.centres)
        return along_edge(motif, Divided(row.side, row.gap, row.clear, unrolled))
    radius = row.side.mm / (2 * pi)
    inner = max(radius - motif.above.mm - motif.height.mm * 1.2, 0.0)
    shapes: list[Shape] = [Area(_circle(radius), Tone.RIGHT)]
    for along in row.centres:
        turn = 2 * pi * along / row.side.mm
        shapes.append(_oval(motif, _at(turn, radius - motif.middle), -turn))
    arm = max(inner * 0.6, radius * 0.1)
    shapes.append(Stroke(((0, radius - arm * 0.4), (0, radius * 1.06)), Line.FOLD))
    shapes.append(Note((0, radius * 1.13), sentence("centre front")))
    shapes.append(
        Note((-radius, radius * 1.13), sentence("round {edge}", edge=row.side), anchor="start")
    )
    return tuple(shapes)


def _at(turn: float, radius: float) -> Point:
    return radius * sin(turn), radius * cos(turn)


def _circle(radius: float) -> tuple[Point, ...]:
    return tuple(_at(2 * pi * step / 72, radius) for step in range(72))


def between_corners(
    motif: Motif, corner: Value, across: Divided, down: Divided
) -> tuple[Shape, ...]:
    """A rectangle with a motif in each corner and rows of motifs between them."""
    wide, tall = across.side.mm, down.side.mm
    middle, square = motif.middle, corner.mm
    shapes: list[Shape] = [Area(rectangle(0, 0, wide, tall), Tone.RIGHT)]
    for left in (0.0, wide - square):
        for top in (0.0, tall - square):
            shapes.append(Area(rectangle(left, top, square, square), Tone.SHADE, Line.THIN))
    for x in across.centres:
        shapes.append(_oval(motif, (x, middle)))
        shapes.append(_oval(motif, (x, tall - middle)))
    for y in down.centres:
        shapes.append(_oval(motif, (middle, y), pi / 2))
        shapes.append(_oval(motif, (wide - middle, y), pi / 2))
    for row, start, end, side in (
        (across, (square, tall), (square, tall), Side.BELOW),
        (down, (wide, square), (wide, square), Side.RIGHT),
    ):
        if row.gap is not None:
            step = row.gap.mm
            far = (end[0] + step, end[1]) if side is Side.BELOW else (end[0], end[1] + step)
            shapes.append(Dimension(start, far, row.gap, side))
    shapes.append(Dimension((0, 0), (square, 0), corner, Side.ABOVE))
    shapes.append(Dimension((0, 0), (wide, 0), across.side, Side.ABOVE))
    shapes.append(Dimension((0, 0), (0, tall), down.side, Side.LEFT))
    return tuple(shapes)


def few_motifs(motif: Motif, gap: Value | None, shown: int, at_scale: bool) -> Scene:
    """A few motifs in a row with centre marks, to print and trace; with measures on the page."""
    step = motif.width.mm + (gap.mm if gap is not None else 0.0)
    reach = step * (shown - 1) + motif.width.mm
    low = motif.above.mm
    shapes: list[Shape] = [Stroke(((0, 0), (reach, 0)), Line.CUT)]
    for number in range(shown):
        x = motif.width.mm / 2 + number * step
        shapes.append(_oval(motif, (x, -motif.middle)))
        shapes.extend(_cross(motif, x))
    if gap is not None and shown > 1:
        shapes.append(Dimension((motif.width.mm, 0), (step, 0), gap, Side.BELOW))
    shapes.append(
        Dimension(
            (0, -low - motif.height.mm),
            (motif.width.mm, -low - motif.height.mm),
            motif.width,
            Side.ABOVE,
        )
    )
    if not at_scale:
        top = -low - motif.height.mm
        shapes.append(Dimension((reach, top), (reach, -low), motif.height, Side.RIGHT))
        if low:
            shapes.append(Dimension((reach, -low), (reach, 0), motif.above, Side.RIGHT))
    return Scene(
        sentence("Placement sheet for motifs"),
        sentence(
            "Ovals {width} wide and {height} high stand for the motif, each with a cross at its "
            "centre; the line below is the edge.",
            width=motif.width,
            height=motif.height,
        ),
        tuple(shapes),
        tallest=190.0,
    )


def _cross(motif: Motif, x: float) -> Iterable[Shape]:
    arm = 0.15 * min(motif.width.mm, motif.height.mm)
    y = -motif.middle
    yield Stroke(((x - arm, y), (x + arm, y)), Line.THIN)
    yield Stroke(((x, y - arm), (x, y + arm)), Line.THIN)
