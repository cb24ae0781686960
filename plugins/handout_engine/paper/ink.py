"""What a pen draws at true scale: lines, faces, dots and words in mm, from back to front.

A scene says what things are; here it is settled how they look on paper. Everything after this can
be moved and clipped without knowing what it means. Colours are plain, so that any program and any
printer shows them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import said
from handout_engine.drawing.hatching import hatch
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Dots,
    Grain,
    Line,
    Note,
    Point,
    Shape,
    Stroke,
    Tag,
    Tone,
)
from handout_engine.geometry.windows import Window, around
from handout_engine.paper.lettering import ASCENT, DESCENT, width

TEXT = 3.6
BLACK = "#000"
"""Black and nothing else: a printer without colours would break grey lines up into dots."""
HATCH_SPACING = 2.5
OFF = 6.0
"""From the cloth to its dimension line, in mm."""
ARROW = 2.0
GRAIN = 8.0
DOT = 0.9
FACES = {
    Tone.RIGHT: "#fff",
    Tone.SECOND: "#e4e9ef",
    Tone.WRONG: "#fff",
    Tone.GROUND: "#fff",
    Tone.SHADE: "#eee",
}


@dataclass(frozen=True)
class Rule:
    """A line of one of the kinds that `scene.Line` names.

    `offset` is how far into its dashes it begins, in mm: so that the parts of a line that was cut
    have their dashes where the whole line has them.
    """

    points: tuple[Point, ...]
    line: Line
    offset: float = 0.0

    @property
    def reach(self) -> Window:
        """The window it takes."""
        return around(self.points)


@dataclass(frozen=True)
class Face:
    """A filled shape without a line round it."""

    points: tuple[Point, ...]
    colour: str

    @property
    def reach(self) -> Window:
        """The window it takes."""
        return around(self.points)


@dataclass(frozen=True)
class Spots:
    """Many small round marks."""

    at: tuple[Point, ...]

    @property
    def reach(self) -> Window:
        """The window they take."""
        found = around(self.at)
        return found.shrunk(-DOT / 2)


@dataclass(frozen=True)
class Words:
    """Words on their line; `anchor` is start, middle or end; `turned` ones are read upward."""

    text: str
    at: Point
    anchor: str = "start"
    size: float = TEXT
    bold: bool = False
    turned: bool = False
    colour: str = BLACK

    @property
    def width(self) -> float:
        """How wide the words are."""
        return width(self.text, self.size, self.bold)

    @property
    def reach(self) -> Window:
        """The window they take."""
        x, y = self.at
        before = self.width * {"start": 0.0, "middle": 0.5, "end": 1.0}[self.anchor]
        after = self.width - before
        up, down = ASCENT * self.size, DESCENT * self.size
        if self.turned:
            return Window(x - up, y - after, x + down, y + before)
        return Window(x - before, y - up, x + after, y + down)


Ink = Rule | Face | Spots | Words


def inked(shapes: Iterable[Shape], tape: Tape) -> list[Ink]:
    """All shapes as they are drawn, from back to front."""
    return [ink for shape in shapes for ink in _drawn(shape, tape)]


def _drawn(shape: Shape, tape: Tape) -> Iterable[Ink]:
    match shape:
        case Area():
            yield from _area(shape)
        case Stroke():
            yield Rule(shape.points, shape.line)
        case Dimension():
            yield from _dimension(shape, tape)
        case Tag():
            way = shape.side.value[0]
            yield Rule((shape.at, (shape.at[0] + way * OFF, shape.at[1])), Line.THIN)
            at = (shape.at[0] + way * (OFF + 1), shape.at[1] + TEXT / 3)
            yield Words(said(shape.amount, tape).both, at, "start" if way > 0 else "end")
        case Note():
            yield from _note(shape, tape)
        case Grain():
            (x, y), (along_x, along_y) = shape.at, shape.along
            ends = [(x + GRAIN * way * along_x, y + GRAIN * way * along_y) for way in (-1, 1)]
            yield from arrow(ends[0], ends[1])
        case Dots():
            yield Spots(shape.at)


def _area(area: Area) -> Iterable[Ink]:
    yield Face(area.points, FACES[area.tone])
    if area.tone is Tone.WRONG:
        for line in hatch(area.points, HATCH_SPACING):
            yield Rule(line, Line.HIDDEN)
    if area.outline is not None:
        yield Rule(closed(area.points), area.outline)


def _note(note: Note, tape: Tape) -> Iterable[Ink]:
    if note.target is not None:
        yield Rule((note.at, note.target), Line.THIN)
    drop = -TEXT / 2 if note.above or note.target is not None else TEXT / 3
    yield Words(note.text.first(tape), (note.at[0], note.at[1] + drop), note.anchor)


def _dimension(each: Dimension, tape: Tape) -> Iterable[Ink]:
    """Extension lines, an arrowed line beside what it measures, and its words."""
    side_x, side_y = each.side.value
    ends: list[Point] = []
    for (x, y), (other_x, other_y) in ((each.start, each.end), (each.end, each.start)):
        outer = max if side_x + side_y > 0 else min
        if side_x:
            ends.append((outer(x, other_x) + side_x * OFF, y))
        else:
            ends.append((x, outer(y, other_y) + side_y * OFF))
        yield Rule(((x, y), (ends[-1][0] + side_x, ends[-1][1] + side_y)), Line.THIN)
    yield from arrow(ends[0], ends[1])
    middle = ((ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2)
    if side_x:
        at, anchor = (middle[0] + side_x, middle[1] + TEXT / 3), "start" if side_x > 0 else "end"
    else:
        at, anchor = (middle[0], middle[1] + (TEXT if side_y > 0 else -1.0)), "middle"
    yield Words(said(each.amount, tape).both, at, anchor)


def arrow(start: Point, end: Point) -> Iterable[Ink]:
    """A thin line with a head at both ends."""
    yield Rule((start, end), Line.THIN)
    yield _head(end, start)
    yield _head(start, end)


def _head(start: Point, end: Point) -> Face:
    across, down = end[0] - start[0], end[1] - start[1]
    length = (across * across + down * down) ** 0.5 or 1.0
    dx, dy = across / length * ARROW, down / length * ARROW
    wings = (
        (end[0] - dx - dy / 3, end[1] - dy + dx / 3),
        (end[0] - dx + dy / 3, end[1] - dy - dx / 3),
    )
    return Face((end, *wings), BLACK)


def closed(points: Sequence[Point]) -> tuple[Point, ...]:
    """A line that comes back to its beginning."""
    return (*points, points[0])
