"""A drawing on the page: paths, hatching and words in page units, ready to be written."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.drawing.scene import Point

PAGE_WIDTH = 360.0
TEXT = 11.0
SMALL = 9.5
CHARACTER = 0.56
"""Average width of a character, for each unit of its size."""


@dataclass(frozen=True)
class Path:
    """A line or a filled face on the page, with the name of its style."""

    points: tuple[Point, ...]
    style: str
    closed: bool = False


@dataclass(frozen=True)
class Hatch:
    """The hatching of one face, or many dots: many short lines drawn as one."""

    lines: tuple[tuple[Point, Point], ...]
    style: str = "hatch"


@dataclass(frozen=True)
class Text:
    """Words on the page; `anchor` is start, middle or end, as in SVG.

    `beside` is the amount in the other system, in small: behind the words, or under them when
    `stacked`.
    """

    at: Point
    words: str
    anchor: str = "middle"
    beside: str = ""
    stacked: bool = False

    @property
    def width(self) -> float:
        """How much room the words take across, by an average width of a character."""
        first, second = len(self.words) * TEXT, len(self.beside) * SMALL
        return CHARACTER * (max(first, second) if self.stacked else first + second)

    @property
    def extent(self) -> tuple[float, float]:
        """From where to where the words reach across."""
        shares = {"start": 0.0, "middle": 0.5, "end": 1.0}
        left = self.at[0] - self.width * shares[self.anchor]
        return left, left + self.width

    @property
    def reach(self) -> tuple[float, float]:
        """From where to where the words reach down the page."""
        below = SMALL + 1 if self.stacked and self.beside else 0.0
        return self.at[1] - TEXT, self.at[1] + below + TEXT / 3


@dataclass(frozen=True)
class Page:
    """A scene laid out: its parts from back to front and its height in page units."""

    parts: tuple[Path | Hatch | Text, ...]
    top: float
    height: float
