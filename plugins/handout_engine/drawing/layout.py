"""Lays a scene out on a page: scales it to fit and places its words and dimensions.

Everything after this is in page units (a drawing is `PAGE_WIDTH` of them wide), so that text has
one size however large the cloth is.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import chain
from math import hypot

from handout_engine.amounts.saying import Tape
from handout_engine.drawing.dimensions import Dimensions, arrow, kept_on_page
from handout_engine.drawing.hatching import hatch
from handout_engine.drawing.page import PAGE_WIDTH, TEXT, Hatch, Page, Path, Text
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Dots,
    Grain,
    Note,
    Point,
    Scene,
    Shape,
    Shown,
    Side,
    Stroke,
    Tag,
    Tone,
)

MARGIN = 6.0
HATCH_SPACING = 7.0
GRAIN = 10.0
NARROWEST = 60.0
REMARK = 16.0
"""From what is drawn to the line below it that says of the whole drawing how it is drawn."""


def lay_out(scene: Scene, tape: Tape) -> Page:
    """Scale a scene to the page and place its words."""
    return _Layout(scene, tape).page()


@dataclass
class _Layout:
    scene: Scene
    tape: Tape
    parts: list[Path | Hatch | Text] = field(default_factory=list)
    scale: float = 1.0
    origin: Point = (0.0, 0.0)

    def page(self) -> Page:
        dimensions = Dimensions(self.scene.shapes, self.tape)
        self._fit(dimensions.room(Side.LEFT), dimensions.room(Side.RIGHT))
        for shape in self.scene.shapes:
            match shape:
                case Area():
                    self._area(shape)
                case Stroke():
                    self._path(shape.points, shape.line.value)
                case Grain():
                    self._grain(shape)
                case Note():
                    self._note(shape)
                case Dots():
                    placed = [self._at(point) for point in shape.at]
                    self.parts.append(Hatch(tuple((point, point) for point in placed), "cut"))
                case Dimension() | Tag():
                    pass
        self.parts.extend(dimensions.placed(self._at))
        if self.scene.shortened:
            below = (PAGE_WIDTH / 2, self._reach()[1] + REMARK)
            self.parts.append(Text(below, Shown.BROKEN.value))
        top, bottom = self._reach()
        return Page(tuple(self.parts), top - MARGIN, bottom - top + 2 * MARGIN)

    def _fit(self, left: float, right: float) -> None:
        """One scale for both directions; room is left for the words at both sides."""
        xs, ys = zip(
            *chain.from_iterable(_geometry(shape) for shape in self.scene.shapes), strict=True
        )
        free = max(NARROWEST, PAGE_WIDTH - 2 * MARGIN - left - right)
        width, height = max(xs) - min(xs), max(ys) - min(ys)
        self.scale = min(free / max(width, 1e-6), self.scene.tallest / max(height, 1e-6))
        spare = free - width * self.scale
        self.origin = (MARGIN + left + spare / 2 - min(xs) * self.scale, -min(ys) * self.scale)

    def _at(self, point: Point) -> Point:
        return (
            self.origin[0] + point[0] * self.scale,
            self.origin[1] + point[1] * self.scale,
        )

    def _path(self, points: tuple[Point, ...], style: str, closed: bool = False) -> None:
        self.parts.append(Path(tuple(self._at(point) for point in points), style, closed))

    def _area(self, area: Area) -> None:
        placed = tuple(self._at(point) for point in area.points)
        self.parts.append(Path(placed, f"face-{area.tone.value}", closed=True))
        if area.tone is Tone.WRONG:
            self.parts.append(Hatch(tuple(hatch(placed, HATCH_SPACING))))
        if area.outline is not None:
            self.parts.append(Path(placed, area.outline.value, closed=True))

    def _grain(self, grain: Grain) -> None:
        (x, y), (along_x, along_y) = self._at(grain.at), grain.along
        length = hypot(along_x, along_y)
        step_x, step_y = along_x / length * GRAIN, along_y / length * GRAIN
        self.parts.extend(arrow((x, y), (x + step_x, y + step_y)))
        self.parts.extend(arrow((x, y), (x - step_x, y - step_y)))

    def _note(self, note: Note) -> None:
        x, y = self._at(note.at)
        if note.target is not None:
            self.parts.append(Path(((x, y), self._at(note.target)), "thin"))
        below = note.target is not None and self._at(note.target)[1] < y
        drop = -5.0 if note.above else TEXT if below else -3.0 if note.target else TEXT / 3
        words = Text((x, y + drop), note.text.first(self.tape), note.anchor)
        self.parts.append(kept_on_page(words))

    def _reach(self) -> tuple[float, float]:
        heights: list[float] = []
        for part in self.parts:
            match part:
                case Path():
                    heights.extend(y for _, y in part.points)
                case Text():
                    heights.extend(part.reach)
                case Hatch():
                    pass
        return min(heights), max(heights)


def _geometry(shape: Shape) -> tuple[Point, ...]:
    match shape:
        case Area() | Stroke():
            return shape.points
        case Dimension():
            return shape.start, shape.end
        case Dots():
            return shape.at
        case Note() | Grain() | Tag():
            return (shape.at,)
