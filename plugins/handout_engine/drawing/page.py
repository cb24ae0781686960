"""A drawing on the page: paths, hatching and words in page units, ready to be written."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.drawing.scene import Point

PAGE_WIDTH = 400.0
TEXT = 11.0
CHARACTER = 0.56 * TEXT


@dataclass(frozen=True)
class Path:
    """A line or a filled face on the page, with the name of its style."""

    points: tuple[Point, ...]
    style: str
    closed: bool = False


@dataclass(frozen=True)
class Hatch:
    """The hatching of one face: many short lines drawn as one."""

    lines: tuple[tuple[Point, Point], ...]


@dataclass(frozen=True)
class Text:
    """Words on the page; `anchor` is start, middle or end, as in SVG."""

    at: Point
    words: str
    anchor: str = "middle"

    @property
    def extent(self) -> tuple[float, float]:
        """From where to where the words reach across, by an average width of a character."""
        width = len(self.words) * CHARACTER
        left = self.at[0] - {"start": 0.0, "middle": width / 2, "end": width}[self.anchor]
        return left, left + width


@dataclass(frozen=True)
class Page:
    """A scene laid out: its parts from back to front and its height in page units."""

    parts: tuple[Path | Hatch | Text, ...]
    top: float
    height: float
