"""Fagoting drawn: folded edges with stitches to and fro over the gap between them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import broken_sides, drawn_parts, measured
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.drawing.sections import layer

LONGEST = 3.2
"""A band longer than so many times its width is drawn broken."""
MOST_STITCHES = 60
SHOWN = 5


@dataclass(frozen=True)
class Fagoting:
    """A band: its strips from top to bottom, the gap, the repeat, its length and width."""

    strips: Sequence[Value]
    gap: Value
    repeat: Value
    length: Value
    width: Value
    turn: Value


def fagoted(band: Fagoting) -> tuple[Shape, ...]:
    """The finished band from its right side."""
    span = min(band.length.mm, LONGEST * band.width.mm)
    parts = drawn_parts(band.length, span)
    shapes: list[Shape] = []
    top = 0.0
    for number, strip in enumerate(band.strips):
        low = top + strip.mm
        for left, right in parts:
            shapes.append(Area(rectangle(left, top, right - left, strip.mm), outline=None))
            if number + 1 < len(band.strips):
                shapes.extend(_stitches((left, right), low, band))
            for height in (top, low):
                shapes.append(Stroke(((left, height), (right, height)), Line.CUT))
        shapes.append(Dimension((span, top), (span, low), strip, Side.RIGHT))
        top = low + band.gap.mm
    shapes.extend(broken_sides(parts, 0.0, band.width.mm))
    shapes.append(Dimension((0, 0), (0, band.width.mm), band.width, Side.LEFT))
    shapes.append(measured((0, band.width.mm), (span, band.width.mm), band.length, Side.BELOW))
    return tuple(shapes)


def _stitches(part: tuple[float, float], top: float, band: Fagoting) -> Iterable[Shape]:
    """To and fro over the gap; of very many stitches fewer are drawn."""
    left, right = part
    count = max(1, min(MOST_STITCHES, round((right - left) / band.repeat.mm)))
    step = (right - left) / count
    points = []
    for number in range(count):
        points.append((left + number * step, top))
        points.append((left + (number + 0.5) * step, top + band.gap.mm))
    points.append((right, top))
    yield Stroke(tuple(points), Line.THIN)


def spacing(band: Fagoting, at_scale: bool = False, repeats: int = SHOWN) -> Scene:
    """A few stitches over one gap with their measures; at true scale, the paper to baste on."""
    gap, repeat = band.gap.mm, band.repeat.mm
    reach = repeats * repeat
    cloth = min(band.turn.mm, 1.2 * gap + 0.5 * repeat) if not at_scale else band.turn.mm
    shapes: list[Shape] = [
        Area(rectangle(0, -cloth, reach, cloth), Tone.SECOND, outline=None),
        Area(rectangle(0, gap, reach, cloth), Tone.SECOND, outline=None),
        Stroke(((0, 0), (reach, 0)), Line.FOLD),
        Stroke(((0, gap), (reach, gap)), Line.FOLD),
    ]
    tick = 0.25 * min(gap, repeat)
    for number in range(2 * repeats + 1):
        x, y, way = number * repeat / 2, (number % 2) * gap, 1 if number % 2 else -1
        shapes.append(Stroke(((x, y), (x, y + way * tick)), Line.CUT))
    zigzag = tuple((n * repeat / 2, (n % 2) * gap) for n in range(2 * repeats + 1))
    shapes.append(Stroke(zigzag, Line.THIN))
    start = repeats // 2 * repeat
    shapes.append(Dimension((start, -cloth), (start + repeat, -cloth), band.repeat, Side.ABOVE))
    if not at_scale:
        shapes.append(Dimension((0, 0), (0, gap), band.gap, Side.LEFT))
    return Scene(
        sentence("Guide for fagoting" if at_scale else "Spacing of the stitches"),
        sentence(
            "Folded edges {gap} apart; on each edge a stitch every {repeat}, those of the other "
            "edge between them.",
            gap=band.gap,
            repeat=band.repeat,
        ),
        tuple(shapes),
        tallest=170.0,
    )


def edges_cut_through(band: Fagoting) -> Scene:
    """Two folded edges on their paper, cut through: the turned allowance, the gap."""
    turn, gap = band.turn.mm, band.gap.mm
    thick = 0.05 * (2 * turn + gap)
    reach = 1.6 * turn
    upper = ((-reach, 0.0), (0.0, 0.0), (0.0, 1.6 * thick), (-turn, 1.6 * thick))
    lower = tuple((gap - x, y) for x, y in upper)
    paper = 3.2 * thick
    shapes: list[Shape] = [
        layer(upper, thick, Tone.RIGHT),
        layer(lower, thick, Tone.RIGHT),
        Stroke(((-reach, paper), (gap + reach, paper)), Line.THIN),
        Stroke(((0, -0.6 * thick), (gap, -0.6 * thick)), Line.STITCH),
        Dimension((0, 0), (gap, 0), band.gap, Side.ABOVE),
        Dimension((-turn, paper), (0, paper), band.turn, Side.BELOW),
        Note((gap + reach, paper + 2 * thick), sentence("paper"), anchor="end"),
    ]
    return Scene(
        sentence("Two folded edges, cut through"),
        sentence(
            "Edges turned under {turn}, {gap} apart, basted to paper.", turn=band.turn, gap=band.gap
        ),
        tuple(shapes),
        tallest=120.0,
    )
