"""Shadow work drawn: the band from its right side, and its threads from the wrong side."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import broken_sides, drawn_parts, left_out, measured
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Dots,
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

LONGEST = 3.2
"""An edge longer than so many times what is drawn of its depth is drawn broken."""
MARGINS = 5
"""But so many margins of it are always drawn."""
DEEPEST = 8
"""Cloth below the rows deeper than so many times the rows is drawn broken."""
SHOWN = 5
LEGIBLE = 0.12
"""Stitches shorter than this part of the channel have room for the first two numbers only."""
EDGE_ON_GUIDE = 100.0
"""The finished edge stands on the guide where it lies no further off, in mm."""


@dataclass(frozen=True)
class ShadowBand:
    """A band: rows of a channel between two lines of holes, along an edge.

    `margin` is None where the row goes round, or from end to end.
    """

    gap: Value
    repeat: Value
    edge: Value
    from_edge: Value
    rows: Value
    between: Value
    margin: Value | None

    @property
    def tall(self) -> float:
        """What is drawn of the cloth, in mm, from above the rows to the finished edge."""
        return self.below + self.deep + self.gap.mm

    @property
    def deep(self) -> float:
        """All rows with what is between them, in mm."""
        rows = self.rows.whole
        return rows * self.gap.mm + (rows - 1) * self.between.mm

    @property
    def below(self) -> float:
        """What is drawn between the finished edge and the first row, in mm."""
        return min(self.from_edge.mm, DEEPEST * self.deep)

    @property
    def span(self) -> float:
        """How much of the edge is drawn, in mm."""
        free = self.margin.mm if self.margin else 0.0
        return min(self.edge.mm, max(LONGEST * self.tall, MARGINS * free))

    def channel(self, row: int) -> tuple[float, float]:
        """Height of the far and of the near line of a row in that drawing."""
        near = self.tall - self.below - row * (self.gap.mm + self.between.mm)
        return near - self.gap.mm, near


def finished(band: ShadowBand) -> tuple[Shape, ...]:
    """The band from its right side: two lines of back stitch, the colour between them."""
    parts, span, tall = drawn_parts(band.edge, band.span), band.span, band.tall
    free = band.margin.mm if band.margin else 0.0
    shapes: list[Shape] = []
    for left, right in parts:
        shapes.append(Area(rectangle(left, 0, right - left, tall), outline=None))
        shapes.append(Stroke(((left, tall), (right, tall)), Line.CUT))
        shapes.append(Stroke(((left, 0), (right, 0)), Line.THIN))
        start, end = max(left, free), min(right, span - free)
        for row in range(band.rows.whole):
            shapes.extend(_row(band.channel(row), start, end))
    shapes.extend(broken_sides(parts, 0.0, tall))
    if band.below < band.from_edge.mm:
        half, middle = 0.05 * band.below, tall - band.below / 2
        corners = ((-0.02 * span, middle - half), (1.02 * span, middle + half))
        shapes.extend(left_out(corners))
    shapes.extend(_measures(band))
    return tuple(shapes)


def _row(lines: tuple[float, float], start: float, end: float) -> Iterable[Shape]:
    far, near = lines
    yield Area(rectangle(start, far, end - start, near - far), Tone.SECOND, outline=None)
    for height in lines:
        yield Stroke(((start, height), (end, height)), Line.STITCH)


def _measures(band: ShadowBand) -> Iterable[Shape]:
    span, tall = band.span, band.tall
    far, near = band.channel(0)
    yield measured((0, tall), (span, tall), band.edge, Side.BELOW)
    yield measured((0, near), (0, tall), band.from_edge, Side.LEFT)
    yield Dimension((span, far), (span, near), band.gap, Side.RIGHT)
    if band.rows.whole > 1:
        yield Dimension((0, band.channel(1)[1]), (0, far), band.between, Side.LEFT)
    if band.margin:
        top = band.channel(band.rows.whole - 1)[0]
        yield Stroke(((band.margin.mm, 0), (band.margin.mm, top)), Line.HIDDEN)
        yield Dimension((0, 0), (band.margin.mm, 0), band.margin, Side.ABOVE)


def entries(repeats: int, gap: float, repeat: float) -> tuple[Point, ...]:
    """Where the thread goes in and out on the wrong side, in order; the near line is at `gap`."""
    points = []
    for number in range(1, repeats + 1):
        for height in (gap, 0.0):
            points.append((number * repeat, height))
            points.append(((number - 1) * repeat, height))
    return tuple(points)


def threads(band: ShadowBand) -> Scene:
    """A few repeats from the wrong side, their stitches numbered in the order of work."""
    gap, repeat = band.gap.mm, band.repeat.mm
    reach = SHOWN * repeat
    aside = max(0.15 * gap, 0.22 * repeat)
    outside = 2 * aside
    shapes: list[Shape] = [
        Area(
            rectangle(-0.5 * repeat, -outside, reach + repeat, gap + 2 * outside),
            Tone.WRONG,
            Line.THIN,
        ),
    ]
    thread = entries(SHOWN, gap, repeat)
    for place, (start, end) in enumerate(pairwise(thread)):
        shapes.append(Stroke((start, end), Line.CUT if place % 2 else Line.HIDDEN))
    for number in range(SHOWN + 1):
        for height, way in ((0.0, -1), (gap, 1)):
            x = number * repeat
            shapes.append(Stroke(((x, height), (x, height + way * 0.3 * aside)), Line.THIN))
    for number in range(2 * SHOWN if repeat >= LEGIBLE * gap else 2):
        x = (number // 2 + 0.5) * repeat
        y = -aside if number % 2 else gap + aside
        shapes.append(Note((x, y), sentence(str(number + 1))))
    shapes.append(Dimension((0, -outside), (repeat, -outside), band.repeat, Side.ABOVE))
    shapes.append(Dimension((-0.5 * repeat, 0), (-0.5 * repeat, gap), band.gap, Side.LEFT))
    return Scene(
        sentence("The threads, from the wrong side"),
        sentence(
            "Lines {gap} apart, a hole every {repeat} on both; stitches numbered as worked.",
            gap=band.gap,
            repeat=band.repeat,
        ),
        tuple(shapes),
        tallest=230.0,
    )


def cut_across(band: ShadowBand) -> Scene:
    """The channel cut across: back stitches on the cloth, one crossing thread beneath it."""
    gap = band.gap.mm
    thick, beside = 0.06 * gap, 0.8 * gap
    beneath, knob = 1.9 * thick, 0.5 * thick
    shapes: list[Shape] = [
        Area(rectangle(-beside, 0, gap + 2 * beside, thick)),
        Stroke(((0, -knob), (0, beneath), (gap, beneath), (gap, -knob)), Line.CUT),
    ]
    for x in (0.0, gap):
        shapes.append(Area(rectangle(x - 1.5 * knob, -2 * knob, 3 * knob, 2 * knob), Tone.SECOND))
    shapes.append(Dimension((0, -2 * knob), (gap, -2 * knob), band.gap, Side.ABOVE))
    out = gap + beside
    shapes.append(Note((out, -2 * knob), sentence("right side"), anchor="end", above=True))
    shapes.append(Note((out, 2 * beneath), sentence("wrong side"), anchor="end"))
    return Scene(
        sentence("The channel, cut across"),
        sentence(
            "Back stitches on the cloth {gap} apart, the thread beneath it from one to the other.",
            gap=band.gap,
        ),
        tuple(shapes),
        tallest=90.0,
    )


def guide(band: ShadowBand, repeats: int) -> Scene:
    """The sheet to lay under the cloth: both lines, their holes, the edge where it is near."""
    gap, repeat = band.gap.mm, band.repeat.mm
    reach, edge = repeats * repeat, gap + band.from_edge.mm
    shapes: list[Shape] = [
        Stroke(((0, height), (reach, height)), Line.THIN) for height in (0.0, gap)
    ]
    shapes.append(
        Dots(tuple((n * repeat, height) for height in (0.0, gap) for n in range(repeats + 1)))
    )
    shapes.append(Dimension((reach, 0), (reach, gap), band.gap, Side.RIGHT))
    if band.from_edge.mm <= EDGE_ON_GUIDE:
        shapes.append(Stroke(((0, edge), (reach, edge)), Line.CUT))
        shapes.append(Dimension((reach, gap), (reach, edge), band.from_edge, Side.RIGHT))
        shapes.append(Note((reach / 2, edge + 5), sentence("finished edge")))
    return Scene(
        sentence("Guide for shadow work"),
        sentence(
            "Lines {gap} apart, a hole every {repeat} on both, the near line {from_edge} from "
            "the finished edge.",
            gap=band.gap,
            repeat=band.repeat,
            from_edge=band.from_edge,
        ),
        tuple(shapes),
    )
