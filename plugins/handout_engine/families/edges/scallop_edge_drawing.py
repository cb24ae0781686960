"""Scallops drawn: a row of them hanging from their foot line, and the template to trace."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
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
from handout_engine.shared.round_lace_drawing import arc

MOST_DRAWN = 8
STEPS = 40


@dataclass(frozen=True)
class Scallops:
    """A row of scallops: how far apart, their chord, rise and radius, half an arc in degrees."""

    pitch: Value
    chord: Value
    rise: Value
    radius: Value
    half: float
    number: int
    ring: bool

    @property
    def gap(self) -> float:
        """Straight edge between two scallops."""
        return self.pitch.mm - self.chord.mm

    def curve(self, left: float) -> list[Point]:
        """One scallop below the foot line, from its left foot at `left` to its right one."""
        centre = (left + self.chord.mm / 2, self.rise.mm - self.radius.mm)
        return arc(centre, self.radius.mm, 180 + self.half, 180 - self.half, STEPS)

    def edge(self, number: int) -> list[Point]:
        """The lower edge of so many scallops, half a gap at both ends."""
        points: list[Point] = [(0.0, 0.0)]
        for place in range(number):
            points.extend(self.curve(place * self.pitch.mm + self.gap / 2))
        points.append((number * self.pitch.mm, 0.0))
        return points


def scallop_row(scallops: Scallops) -> tuple[Shape, ...]:
    """The finished edge, or its beginning where the scallops are many."""
    drawn = min(scallops.number, MOST_DRAWN)
    wide = drawn * scallops.pitch.mm
    tall = max(0.12 * wide, scallops.rise.mm)
    edge = scallops.edge(drawn)
    cloth = ((0.0, -tall), (wide, -tall), *reversed(edge))
    start = Line.THIN if scallops.ring else Line.CUT
    end = start if drawn == scallops.number else Line.THIN
    first = scallops.gap / 2
    middle = first + scallops.chord.mm / 2
    return (
        Area(cloth, Tone.RIGHT, outline=None),
        Stroke(((0, -tall), (wide, -tall)), Line.THIN),
        Stroke(((0, -tall), (0, 0)), start),
        Stroke(((wide, -tall), (wide, 0)), end),
        Stroke(tuple(edge), Line.CUT),
        Stroke(((0, 0), (wide, 0)), Line.HIDDEN),
        Stroke(((middle, scallops.rise.mm), (0, scallops.rise.mm)), Line.THIN),
        Dimension((first, -tall), (first + scallops.chord.mm, -tall), scallops.chord, Side.ABOVE),
        Dimension((0, 0), (0, scallops.rise.mm), scallops.rise, Side.LEFT),
    )


@dataclass(frozen=True)
class Template:
    """What is traced: scallops, the allowance below them, and what the facing has above them."""

    scallops: Scallops
    below: Value
    above: Value
    faced: bool


def scallop_template(template: Template) -> tuple[Shape, ...]:
    """Two scallops (or the only one) with foot line, seam line and the straight raw edge."""
    scallops = template.scallops
    drawn = min(2, scallops.number)
    wide = drawn * scallops.pitch.mm
    rise = scallops.rise.mm
    top = -template.above.mm if template.faced else -0.4 * scallops.chord.mm
    raw = rise + template.below.mm
    edge = scallops.edge(drawn)
    first = scallops.gap / 2
    shapes: list[Shape] = [
        Area(((0, top), (wide, top), (wide, raw), (0, raw)), Tone.RIGHT, outline=None),
        Stroke(((0, raw), (wide, raw)), Line.CUT),
        Stroke(((0, raw), (0, top)), Line.THIN),
        Stroke(((wide, raw), (wide, top)), Line.THIN),
        Stroke(((0, top), (wide, top)), Line.CUT if template.faced else Line.THIN),
        Stroke(tuple(edge), Line.STITCH),
        Stroke(((0, 0), (wide, 0)), Line.HIDDEN),
    ]
    for place in range(drawn + 1):
        foot = place * scallops.pitch.mm
        shapes.append(Stroke(((foot, top), (foot, 0)), Line.THIN))
    shapes.append(Stroke(((first + scallops.chord.mm / 2, rise), (0, rise)), Line.THIN))
    shapes.append(Dimension((0, raw), (scallops.pitch.mm, raw), scallops.pitch, Side.BELOW))
    shapes.append(Dimension((0, 0), (0, rise), scallops.rise, Side.LEFT))
    shapes.append(Dimension((wide, rise), (wide, raw), template.below, Side.RIGHT))
    if template.faced:
        shapes.append(Dimension((wide, top), (wide, 0), template.above, Side.RIGHT))
    shapes.append(Note((wide / 2, top), sentence("match the upright lines"), above=True))
    return tuple(shapes)
