"""What a drawing consists of, in real millimetres: x to the right, y downward.

Shapes say what they are (a cut edge, a fold, the wrong side of the cloth); how that looks is
decided once, in `layout` and `svg`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from handout_engine.amounts.saying import Amount
from handout_engine.amounts.values import Sentence, Value

Point = tuple[float, float]


class Line(Enum):
    """Kinds of line after ISO 128; the value is the name of its style."""

    CUT = "cut"
    """Cut edge or outline: thick continuous."""
    STITCH = "stitch"
    """Stitching: dashed."""
    FOLD = "fold"
    """Fold: long dash, dot."""
    HIDDEN = "hidden"
    """What lies behind: thin dashed."""
    GATHER = "gather"
    """Gathering row: dotted."""
    THIN = "thin"
    """Thin continuous: creases, leaders."""
    BREAK = "break"
    """Where a part is left out, or the cloth goes on: thin, freehand or with a zigzag."""


class Tone(Enum):
    """What a face of cloth shows; the value is the name of its style."""

    RIGHT = "right"
    """The right side, plain."""
    SECOND = "second"
    """The right side of a second cloth, tinted."""
    WRONG = "wrong"
    """A wrong side, hatched."""
    GROUND = "ground"
    """No cloth: the ground of the drawing, to open a gap."""
    SHADE = "shade"
    """Cloth that lies in the shade of a fold."""


class Side(Enum):
    """Where a dimension stands, seen from what it measures."""

    ABOVE = (0, -1)
    BELOW = (0, 1)
    LEFT = (-1, 0)
    RIGHT = (1, 0)


@dataclass(frozen=True)
class Area:
    """A face of cloth with its outline."""

    points: tuple[Point, ...]
    tone: Tone = Tone.RIGHT
    outline: Line | None = Line.CUT


@dataclass(frozen=True)
class Stroke:
    """An open line."""

    points: tuple[Point, ...]
    line: Line


class Shown(Enum):
    """How the distance of a dimension is drawn; the value is what a reader is told of it."""

    TO_SCALE = ""
    """As long as the amount beside it, at the scale of the drawing."""
    BROKEN = "shortened at the break lines"
    """Shorter: a part between its ends is left out, and break lines say where."""
    ENLARGED = "enlarged"
    """Longer: at the scale of the drawing it could not be seen."""


@dataclass(frozen=True)
class Dimension:
    """A measured distance between two points: across the drawing, or down it, as its side says."""

    start: Point
    end: Point
    amount: Amount | Value
    side: Side
    shown: Shown = Shown.TO_SCALE

    @property
    def span(self) -> float:
        """How long it is drawn, in mm of the drawing."""
        across = self.side in (Side.ABOVE, Side.BELOW)
        return abs(self.end[not across] - self.start[not across])


@dataclass(frozen=True)
class Tag:
    """The distance at which a line lies, written beside its end at the left or right.

    With an `origin`, an arrowed line shows from where the distance is measured; tags of one origin
    share that line.
    """

    at: Point
    amount: Amount | Value
    side: Side
    origin: Point | None = None


@dataclass(frozen=True)
class Note:
    """A few words at a point, or just above it; with `target`, a leader runs to it."""

    at: Point
    text: Sentence
    target: Point | None = None
    anchor: str = "middle"
    above: bool = False


@dataclass(frozen=True)
class Grain:
    """An arrow along the lengthwise grain, through a point; `along` is its direction."""

    at: Point
    along: Point


@dataclass(frozen=True)
class Dots:
    """Many small round marks, such as the dots of smocking or knots seen from far."""

    at: tuple[Point, ...]


Shape = Area | Stroke | Dimension | Tag | Note | Grain | Dots


@dataclass(frozen=True)
class Scene:
    """A drawing: what it is, what it shows in words, and its shapes from back to front.

    `tallest` bounds the height of what is drawn, in units of which the page is 360 wide.
    """

    title: Sentence
    description: Sentence
    shapes: tuple[Shape, ...]
    tallest: float = 260.0

    @property
    def shortened(self) -> bool:
        """Whether a part of what is measured is left out between break lines."""
        dimensions = (shape for shape in self.shapes if isinstance(shape, Dimension))
        return any(each.shown is Shown.BROKEN for each in dimensions)


def rectangle(left: float, top: float, width: float, height: float) -> tuple[Point, ...]:
    """The corners of an upright rectangle."""
    right, bottom = left + width, top + height
    return ((left, top), (right, top), (right, bottom), (left, bottom))
