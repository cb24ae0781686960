"""Places dimension lines and their words round a drawing, so that none lies on another.

Above and below, dimensions stand in rows, at the sides in columns; one is taken further out where
the nearer row or column is occupied. Words at a side stand in two lines and are spread apart, with
a leader where they have moved away from what they measure.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from math import cos, fsum, hypot, sin

from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import said
from handout_engine.drawing.page import PAGE_WIDTH, SMALL, TEXT, Path, Text
from handout_engine.drawing.scene import Dimension, Point, Shape, Shown, Side, Tag

LEVEL = 16.0
"""From the cloth to the first dimension line."""
ROW = 19.0
LEADER = 8.0
STACK = TEXT + SMALL + 3
ARROW = 5.0
TAIL = 9.0
DOT = 2.0
CLEAR = 4.0

Column = list[Dimension | Tag]


@dataclass(frozen=True)
class Dimensions:
    """The dimensions and tags of a scene, said by a tape."""

    shapes: Sequence[Shape]
    tape: Tape

    def room(self, side: Side) -> float:
        """The room that the words at one side take."""
        return fsum(self._width(column) for column in self._columns(side))

    def placed(self, at: Callable[[Point], Point]) -> Iterable[Path | Text]:
        """Lines and words, with `at` saying where on the page a point of the scene lies."""
        for side in (Side.ABOVE, Side.BELOW):
            yield from self._rows(side, at)
        for side in (Side.LEFT, Side.RIGHT):
            out = 0.0
            for column in self._columns(side):
                yield from self._column(column, at, out)
                out += self._width(column)

    def _of(self, side: Side) -> list[Dimension]:
        dimensions = (shape for shape in self.shapes if isinstance(shape, Dimension))
        return [each for each in dimensions if each.side is side]

    def _text(self, shape: Dimension | Tag, at: Point, anchor: str, stacked: bool) -> Text:
        spoken = said(shape.amount, self.tape)
        beside = f"({spoken.beside})" if spoken.beside else ""
        if beside and not stacked:
            beside = f" {beside}"
        large = isinstance(shape, Dimension) and shape.shown is Shown.ENLARGED
        words = f"{spoken.first}, {Shown.ENLARGED.value}" if large else spoken.first
        return Text(at, words, anchor, beside, stacked)

    def _rows(self, side: Side, at: Callable[[Point], Point]) -> Iterable[Path | Text]:
        """Dimensions above or below: the shortest nearest, each in the first row with room.

        One whose words are wider than itself goes further out, so that no line runs through them.
        """
        taken: list[tuple[float, int, float, float]] = []

        def occupied(base: float, row: int, left: float, right: float) -> bool:
            return any(
                (at_base, at_row) == (base, row) and left < end - 0.1 and right > start + 0.1
                for at_base, at_row, start, end in taken
            )

        def order(each: Dimension) -> tuple[bool, float]:
            length = abs(at(each.end)[0] - at(each.start)[0])
            return self._text(each, (0, 0), "middle", False).width > length, length

        for each in sorted(self._of(side), key=order):
            (x1, y1), (x2, y2) = sorted((at(each.start), at(each.end)))
            base = min(y1, y2) if side is Side.ABOVE else max(y1, y2)
            words = kept_on_page(self._text(each, ((x1 + x2) / 2, 0.0), "middle", False))
            left, right = min(x1, words.extent[0] - CLEAR), max(x2, words.extent[1] + CLEAR)
            row = 0
            while occupied(base, row, left, right):
                row += 1
            taken.append((base, row, left, right))
            height = base + side.value[1] * (LEVEL + row * ROW)
            yield from _measured(at(each.start), at(each.end), side, height)
            baseline = height - 4 if side is Side.ABOVE else height + TEXT
            yield Text((words.at[0], baseline), words.words, "middle", words.beside)

    def _columns(self, side: Side) -> list[Column]:
        """Dimensions at a side: the shortest nearest, none beside another; tags come first."""
        tags = [shape for shape in self.shapes if isinstance(shape, Tag) and shape.side is side]
        columns: list[Column] = [[*tags]] if tags else []
        for each in sorted(self._of(side), key=_extent_down):
            free = [column for column in columns if not any(_beside(each, one) for one in column)]
            if not free:
                free = [[]]
                columns.append(free[0])
            free[0].append(each)
        return columns

    def _width(self, column: Column) -> float:
        return max(self._text(each, (0, 0), "start", True).width + _lead(each) for each in column)

    def _column(
        self, column: Column, at: Callable[[Point], Point], out: float
    ) -> Iterable[Path | Text]:
        """One column of lines, and its words spread so that none lies on another."""
        found: list[tuple[float, float, Dimension | Tag]] = []
        for each in column:
            way = each.side.value[0]
            if isinstance(each, Tag):
                x, y = at(each.at)
                if each.origin:
                    x += way * LEVEL
                    yield from _running(at(each.origin), at(each.at), x, way)
                found.append((y, x + way * out, each))
                continue
            start, end = at(each.start), at(each.end)
            x = (max if way > 0 else min)(start[0], end[0]) + way * (LEVEL + out)
            yield from _measured(start, end, each.side, x)
            found.append(((start[1] + end[1]) / 2, x, each))
        found.sort(key=lambda place: place[0])
        heights = spread([middle for middle, _, _ in found], STACK)
        for height, (middle, x, each) in zip(heights, found, strict=True):
            yield from self._word(each, (x, middle), height)

    def _word(self, each: Dimension | Tag, at: Point, height: float) -> Iterable[Path | Text]:
        x, middle = at
        way = each.side.value[0]
        lead = LEVEL + 2 if isinstance(each, Tag) else LEADER
        if abs(height - middle) > 2 or isinstance(each, Tag):
            yield Path(((x + 2 * way, middle), (x + lead * way, height)), "thin")
        anchor = "start" if way > 0 else "end"
        yield self._text(each, (x + (lead + 2) * way, height - 1), anchor, True)


def _measured(start: Point, end: Point, side: Side, edge: float) -> Iterable[Path]:
    """Extension lines, and between them the arrowed line at `edge` across or down the page."""
    side_x, side_y = side.value
    ends = [(edge, start[1]), (edge, end[1])] if side_x else [(start[0], edge), (end[0], edge)]
    for (from_x, from_y), (x, y) in zip((start, end), ends, strict=True):
        gap = (from_x + 2 * side_x, from_y + 2 * side_y)
        yield Path((gap, (x + 3 * side_x, y + 3 * side_y)), "thin")
    (x1, y1), (x2, y2) = ends
    length = hypot(x2 - x1, y2 - y1)
    if length >= 3 * ARROW:
        middle = ((x1 + x2) / 2, (y1 + y2) / 2)
        yield from arrow(middle, ends[0])
        yield from arrow(middle, ends[1])
        return
    along = ((x2 - x1) / length, (y2 - y1) / length) if length else (0.0, 0.0)
    yield Path((ends[0], ends[1]), "thin")
    for (x, y), way in zip(ends, (-TAIL, TAIL), strict=True):
        tail = min(max(1.0, x + way * along[0]), PAGE_WIDTH - 1)
        yield from arrow((tail, y + way * along[1]), (x, y))


def _running(origin: Point, end: Point, edge: float, way: int) -> Iterable[Path]:
    """From a dot at the origin along a line at `edge` to the level of the end."""
    for point in (origin, end):
        yield Path(((point[0] + 2 * way, point[1]), (edge + 3 * way, point[1])), "thin")
    ring = ((edge + DOT * cos(turn), origin[1] + DOT * sin(turn)) for turn in range(7))
    yield Path(tuple(ring), "head", closed=True)
    yield from arrow((edge, origin[1]), (edge, end[1]))


def arrow(start: Point, end: Point) -> Iterable[Path]:
    """A thin line with a filled head at its end."""
    (x1, y1), (x2, y2) = start, end
    length = hypot(x2 - x1, y2 - y1)
    yield Path((start, end), "thin")
    if length < 1e-6:
        return
    head = min(ARROW, length)
    dx, dy = (x2 - x1) / length * head, (y2 - y1) / length * head
    wings = (x2 - dx - dy / 3, y2 - dy + dx / 3), (x2 - dx + dy / 3, y2 - dy - dx / 3)
    yield Path((end, *wings), "head", closed=True)


def _lead(each: Dimension | Tag) -> float:
    """From what is measured to the words that say it."""
    if isinstance(each, Dimension):
        return LEVEL + LEADER + 2
    return 2 * LEVEL + 4 if each.origin else LEVEL + 4


def _extent_down(each: Dimension) -> float:
    return abs(each.end[1] - each.start[1])


def _beside(one: Dimension, other: Dimension | Tag) -> bool:
    """Whether two dimensions at a side measure stretches that overlap."""
    if isinstance(other, Tag):
        return True
    first, second = sorted((one.start[1], one.end[1])), sorted((other.start[1], other.end[1]))
    return first[0] < second[1] - 1e-6 and second[0] < first[1] - 1e-6


def kept_on_page(words: Text) -> Text:
    """Words moved sideways as far as needed to stay on the page."""
    left, right = words.extent
    shift = max(0.0, 2 - left) - max(0.0, right - PAGE_WIDTH + 2)
    return Text((words.at[0] + shift, words.at[1]), words.words, words.anchor, words.beside)


def spread(wanted: list[float], apart: float) -> list[float]:
    """Heights near the wanted ones, in the same order, at least `apart` from each other."""
    groups: list[list[float]] = []
    for height in wanted:
        groups.append([height])
        while len(groups) > 1 and (
            _top(groups[-1], apart) < _top(groups[-2], apart) + len(groups[-2]) * apart
        ):
            groups[-2:] = [groups[-2] + groups[-1]]
    return [_top(group, apart) + place * apart for group in groups for place in range(len(group))]


def _top(group: list[float], apart: float) -> float:
    return fsum(group) / len(group) - (len(group) - 1) * apart / 2
