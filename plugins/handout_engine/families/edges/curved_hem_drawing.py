"""A hem on a curve: flat with its lines, and turned up with the ease it has to lose."""

from __future__ import annotations

from dataclasses import dataclass
from math import degrees

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

STEPS = 60
SHOWN = 7.0
"""Length of edge drawn, counted in what the hem takes."""
WIDEST = 100.0
"""Greatest angle drawn, in degrees."""


@dataclass(frozen=True)
class CurvedHem:
    """A hem round a circle: its radius at the finished edge, its depth and what is turned under.

    `takes` is what is cut outside the finished edge, in mm; a `faced` one has a seam there.
    """

    radius: Value
    depth: Value
    turn: Value | None
    turning: float
    takes: float
    faced: bool

    @property
    def half(self) -> float:
        """Half of the angle that is drawn, in degrees."""
        shown = degrees(SHOWN * max(self.takes, self.depth.mm) / self.radius.mm)
        return min(shown, WIDEST, self.turning) / 2

    def line(self, away: float) -> list[Point]:
        """A line so far outside the finished edge; the centre of the circle is at (0, 0)."""
        radius = self.radius.mm + away
        return arc((0, 0), radius, 180 + self.half, 180 - self.half, STEPS)

    @property
    def top(self) -> list[Point]:
        """Where the drawing leaves the garment."""
        wanted = self.depth.mm + 0.8 * max(self.takes, self.depth.mm)
        return self.line(-min(0.96 * self.radius.mm, wanted))

    @property
    def measured(self) -> tuple[Shape, ...]:
        """The depth, measured in the middle of the drawing and said at its right."""
        lowest, inner = self.radius.mm, self.radius.mm - self.depth.mm
        far = self.line(self.takes)[-1][0]
        return (
            Stroke(((0, inner), (far, inner)), Line.THIN),
            Stroke(((0, lowest), (far, lowest)), Line.THIN),
            Dimension((far, inner), (far, lowest), self.depth, Side.RIGHT),
        )


def flat_curve(hem: CurvedHem, excess: Value) -> tuple[Shape, ...]:
    """A part of the cut edge: raw edge, folds, and dashed the line the hem's edge will lie on."""
    depth, top, raw = hem.depth.mm, hem.top, hem.line(hem.takes)
    shapes: list[Shape] = [
        Area((*top, *reversed(raw)), Tone.WRONG, outline=None),
        Stroke((top[0], raw[0]), Line.THIN),
        Stroke((top[-1], raw[-1]), Line.THIN),
        Stroke(tuple(top), Line.THIN),
        Stroke(tuple(raw), Line.CUT),
        Stroke(tuple(hem.line(0)), Line.STITCH if hem.faced else Line.FOLD),
        Stroke(tuple(hem.line(-depth)), Line.HIDDEN),
    ]
    if hem.turn:
        shapes.append(Stroke(tuple(hem.line(depth)), Line.FOLD))
    shapes.extend(hem.measured)
    foot = max(y for _, y in raw) + 0.4 * max(hem.takes, depth)
    if hem.faced:
        words, target = "the facing loses {excess} here", hem.radius.mm - depth
    else:
        words, target = "{excess} too long in all", hem.radius.mm + depth
    shapes.append(Note((0, foot), sentence(words, excess=excess), (0, target)))
    return tuple(shapes)


def turned_curve(hem: CurvedHem) -> tuple[Shape, ...]:
    """The same part turned up, seen from its wrong side, with the ripples that are held in."""
    depth = hem.depth.mm
    top, edge, inner = hem.top, hem.line(0), hem.line(-depth)
    shapes: list[Shape] = [
        Area((*top, *reversed(edge)), Tone.WRONG, outline=None),
        Area((*inner, *reversed(edge)), Tone.SECOND if hem.faced else Tone.RIGHT, outline=None),
        Stroke(tuple(edge), Line.CUT),
        Stroke(tuple(inner), Line.CUT),
        Stroke(tuple(hem.line(-0.9 * depth)), Line.STITCH),
        Stroke((top[0], edge[0]), Line.THIN),
        Stroke((top[-1], edge[-1]), Line.THIN),
        Stroke(tuple(top), Line.THIN),
    ]
    if not hem.faced:
        outer = hem.line(-0.45 * depth)
        shapes.extend(
            Stroke((inner[place], outer[place]), Line.THIN) for place in range(3, STEPS - 2, 6)
        )
    shapes.extend(hem.measured)
    return tuple(shapes)
