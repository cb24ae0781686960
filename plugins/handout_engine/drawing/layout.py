"""Lays a scene out on a page: scales it to fit and places its words and dimensions.

Everything after this is in page units (a drawing is `PAGE_WIDTH` of them wide), so that text has
one size however large the cloth is.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import chain
from math import hypot

from handout_engine.drawing.hatching import hatch
from handout_engine.drawing.page import CHARACTER, PAGE_WIDTH, TEXT, Hatch, Page, Path, Text
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tag,
    Tone,
)
from handout_engine.saying import Tape
from handout_engine.values import said

TALLEST = 300.0
LINE_HEIGHT = 14.0
LEVEL = 16.0
MARGIN = 6.0
HATCH_SPACING = 7.0
ARROW = 5.0
GRAIN = 10.0


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
        self._fit()
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
                case Dimension() | Tag():
                    pass
        dimensions = [shape for shape in self.scene.shapes if isinstance(shape, Dimension)]
        self._across([each for each in dimensions if each.side in (Side.ABOVE, Side.BELOW)])
        for side in (Side.LEFT, Side.RIGHT):
            tags = [s for s in self.scene.shapes if isinstance(s, Tag) and s.side is side]
            self._upright([each for each in dimensions if each.side is side], tags)
        top, bottom = self._reach()
        return Page(tuple(self.parts), top - MARGIN, bottom - top + 2 * MARGIN)

    def _fit(self) -> None:
        """One scale for both directions; room is left for the words at both sides."""
        xs, ys = zip(
            *chain.from_iterable(_geometry(shape) for shape in self.scene.shapes), strict=True
        )
        rooms = {side: self._room(side) for side in (Side.LEFT, Side.RIGHT)}
        free = PAGE_WIDTH - 2 * MARGIN - sum(rooms.values())
        width, height = max(xs) - min(xs), max(ys) - min(ys)
        self.scale = min(free / max(width, 1e-6), TALLEST / max(height, 1e-6))
        spare = free - width * self.scale
        left = MARGIN + rooms[Side.LEFT] + spare / 2
        self.origin = (left - min(xs) * self.scale, -min(ys) * self.scale)

    def _room(self, side: Side) -> float:
        """The room that the dimensions at one side take."""
        by_level: dict[int, float] = {}
        for shape in self.scene.shapes:
            if isinstance(shape, Dimension | Tag) and shape.side is side:
                level = shape.level if isinstance(shape, Dimension) else 1
                width = len(self._words(shape)) * CHARACTER + LEVEL + 8
                by_level[level] = max(by_level.get(level, 0.0), width)
        return sum(by_level.values())

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
        self._arrow((x, y), (x + step_x, y + step_y))
        self._arrow((x, y), (x - step_x, y - step_y))

    def _note(self, note: Note) -> None:
        x, y = self._at(note.at)
        if note.target is not None:
            self.parts.append(Path(((x, y), self._at(note.target)), "thin"))
        below = note.target is not None and self._at(note.target)[1] < y
        words = Text((x, y + (TEXT if below else -3.0 if note.target else TEXT / 3)),
                     note.text.first(self.tape), note.anchor)  # fmt: skip
        self.parts.append(words)

    def _words(self, dimension: Dimension | Tag) -> str:
        spoken = said(dimension.amount, self.tape)
        return f"{spoken.first} ({spoken.beside})" if spoken.beside else spoken.first

    def _arrow(self, start: Point, end: Point) -> None:
        """A thin line with a filled head at its end."""
        (x1, y1), (x2, y2) = start, end
        length = hypot(x2 - x1, y2 - y1)
        self.parts.append(Path((start, end), "thin"))
        if length < 1e-6:
            return
        head = min(ARROW, length)
        dx, dy = (x2 - x1) / length * head, (y2 - y1) / length * head
        wings = (x2 - dx - dy / 3, y2 - dy + dx / 3), (x2 - dx + dy / 3, y2 - dy - dx / 3)
        self.parts.append(Path((end, *wings), "head", closed=True))

    def _measured(self, dimension: Dimension) -> tuple[Point, Point]:
        """Extension lines and the arrowed line; returns the ends of the arrowed line."""
        start, end = self._at(dimension.start), self._at(dimension.end)
        side_x, side_y = dimension.side.value
        if side_x:
            edge = (max if side_x > 0 else min)(start[0], end[0])
            edge += side_x * (LEVEL + (dimension.level - 1) * self._level_width(dimension.side))
            ends = (edge, start[1]), (edge, end[1])
        else:
            edge = (max if side_y > 0 else min)(start[1], end[1])
            edge += side_y * (LEVEL + (dimension.level - 1) * (LINE_HEIGHT + 6))
            ends = (start[0], edge), (end[0], edge)
        for point, (x, y) in zip((start, end), ends, strict=True):
            self.parts.append(Path((point, (x + 3 * side_x, y + 3 * side_y)), "thin"))
        middle = ((ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2)
        self._arrow(middle, ends[0])
        self._arrow(middle, ends[1])
        return ends

    def _level_width(self, side: Side) -> float:
        first = [s for s in self.scene.shapes
                 if isinstance(s, Dimension) and s.side is side and s.level == 1]  # fmt: skip
        return max((len(self._words(each)) for each in first), default=0) * CHARACTER + LEVEL + 4

    def _across(self, dimensions: list[Dimension]) -> None:
        for each in dimensions:
            (x1, y), (x2, _) = self._measured(each)
            words = Text(((x1 + x2) / 2, y - 4 if each.side is Side.ABOVE else y + TEXT),
                         self._words(each))  # fmt: skip
            self.parts.append(_kept_on_page(words))

    def _upright(self, dimensions: list[Dimension], tags: list[Tag]) -> None:
        """Words at one side, spread so that none lies on another."""
        by_level: dict[int, list[tuple[float, float, Dimension | Tag]]] = {}
        for each in dimensions:
            (x, y1), (_, y2) = self._measured(each)
            by_level.setdefault(each.level, []).append(((y1 + y2) / 2, x, each))
        for tag in tags:
            x, y = self._at(tag.at)
            by_level.setdefault(1, []).append((y, x, tag))
        for placed in by_level.values():
            placed.sort(key=lambda found: found[0])
            heights = _spread([middle for middle, _, _ in placed])
            for height, (middle, x, shape) in zip(heights, placed, strict=True):
                self._beside(middle, x, shape, height)

    def _beside(self, middle: float, x: float, each: Dimension | Tag, height: float) -> None:
        out = each.side.value[0]
        lead = LEVEL if isinstance(each, Tag) else 7.0
        if abs(height - middle) > 2 or isinstance(each, Tag):
            self.parts.append(Path(((x, middle), (x + lead * out, height)), "thin"))
        anchor = "start" if out > 0 else "end"
        place = (x + (lead + 2) * out, height + TEXT / 3)
        self.parts.append(Text(place, self._words(each), anchor))

    def _reach(self) -> tuple[float, float]:
        heights: list[float] = []
        for part in self.parts:
            match part:
                case Path():
                    heights.extend(y for _, y in part.points)
                case Text():
                    heights.extend((part.at[1] - TEXT, part.at[1] + TEXT / 3))
                case Hatch():
                    pass
        return min(heights), max(heights)


def _geometry(shape: Shape) -> tuple[Point, ...]:
    match shape:
        case Area() | Stroke():
            return shape.points
        case Dimension():
            return shape.start, shape.end
        case Note() | Grain() | Tag():
            return (shape.at,)


def _kept_on_page(words: Text) -> Text:
    """Words moved sideways as far as needed to stay on the page."""
    left, right = words.extent
    shift = max(0.0, 2 - left) - max(0.0, right - PAGE_WIDTH + 2)
    return Text((words.at[0] + shift, words.at[1]), words.words, words.anchor)


def _spread(wanted: list[float]) -> list[float]:
    """Heights near the wanted ones, in the same order, at least a line apart."""
    groups: list[list[float]] = []
    for height in wanted:
        groups.append([height])
        while (
            len(groups) > 1 and _top(groups[-1]) < _top(groups[-2]) + len(groups[-2]) * LINE_HEIGHT
        ):
            groups[-2:] = [groups[-2] + groups[-1]]
    return [_top(group) + place * LINE_HEIGHT for group in groups for place in range(len(group))]


def _top(group: list[float]) -> float:
    return sum(group) / len(group) - (len(group) - 1) * LINE_HEIGHT / 2
