"""Cross-sections: layers of cloth seen at their cut ends, their thickness much enlarged."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import cos, hypot, pi, sin

from handout_engine.drawing.scene import Area, Line, Point, Shape, Stroke, Tone


def layer(path: Sequence[Point], thickness: float, tone: Tone) -> Area:
    """A layer of cloth that follows a path, `thickness` mm thick, as a closed face."""
    left, right = [], []
    for before, here, after in zip([path[0], *path[:-1]], path, [*path[1:], path[-1]], strict=True):
        along_x, along_y = after[0] - before[0], after[1] - before[1]
        length = hypot(along_x, along_y) or 1.0
        across_x, across_y = -along_y / length * thickness / 2, along_x / length * thickness / 2
        left.append((here[0] + across_x, here[1] + across_y))
        right.append((here[0] - across_x, here[1] - across_y))
    return Area((*left, *reversed(right)), tone, Line.CUT)


def fold(centre: Point, half: float, depth: float, steps: int = 12) -> list[Point]:
    """A half turn below `centre`, from its left to its right, `half` wide to each side."""
    return [
        (centre[0] - half * cos(pi * step / steps), centre[1] + depth * sin(pi * step / steps))
        for step in range(steps + 1)
    ]


def broken(at: Point, thickness: float, down: bool) -> Iterable[Shape]:
    """A break across a layer that runs `down` or across the drawing: a gap between two strokes."""
    reach, gap, lean = 1.7 * thickness, 0.8 * thickness, 0.6 * thickness

    def turned(along: float, across: float) -> Point:
        return (at[0] + across, at[1] + along) if down else (at[0] + along, at[1] + across)

    corners = [
        (-gap - lean, -reach),
        (gap - lean, -reach),
        (gap + lean, reach),
        (-gap + lean, reach),
    ]
    yield Area(tuple(turned(*each) for each in corners), Tone.GROUND, outline=None)
    for side in (-gap, gap):
        yield Stroke((turned(side - lean, -reach), turned(side + lean, reach)), Line.BREAK)
