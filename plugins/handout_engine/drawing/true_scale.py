"""Writes a scene at true scale: an SVG of its own in which 1 unit is 1 mm, to print and lay under.

Above the drawing stand its title, the sentence that says how to print it, and two squares to
measure: whoever prints can see whether the printer has kept the scale. Colours are plain, so that
any program and any printer shows them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import chain
from math import ceil
from textwrap import wrap
from xml.etree.ElementTree import Element

from handout_engine.drawing.hatching import hatch
from handout_engine.drawing.page import CHARACTER
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Dots,
    Grain,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tag,
    Tone,
    rectangle,
)
from handout_engine.markup import element
from handout_engine.saying import Tape
from handout_engine.values import said

BORDER = 8.0
TEXT = 3.6
LINE_HEIGHT = 5.0
SQUARES = (("5 cm", 50.0), ("2 in", 50.8))
SQUARE_GAP = 8.0
NARROWEST = 2 * BORDER + sum(size for _, size in SQUARES) + SQUARE_GAP
HATCH_SPACING = 2.5
OFF = 6.0
"""From the cloth to its dimension line, in mm."""
ARROW = 2.0
DOT = 0.9
PRINT_AT = (
    "Print at actual size: 100 %, not fitted to the page. Before you use it measure both squares; "
    "if they are not 5 cm and 2 in, the printer has changed the scale."
)
FONT = "DejaVu Sans, Noto Sans, sans-serif"

# Line width in mm, dashes in mm, colour of the line.
LINES: dict[str, tuple[float, str, str]] = {
    "cut": (0.5, "", "#111"),
    "stitch": (0.35, "2.4 1.4", "#111"),
    "fold": (0.25, "5 1.2 0.6 1.2", "#111"),
    "hidden": (0.25, "1 1", "#555"),
    "gather": (0.5, "0.05 1.4", "#111"),
    "thin": (0.25, "", "#333"),
}
FACES = {
    Tone.RIGHT: "#fff",
    Tone.SECOND: "#e4e9ef",
    Tone.WRONG: "#fff",
    Tone.GROUND: "#fff",
    Tone.SHADE: "#eee",
}


def true_scale(scene: Scene, tape: Tape) -> Element:
    """The scene as a stand-alone `<svg>` whose width and height are given in mm."""
    low, high = _box(scene.shapes)
    width = max(NARROWEST, high[0] - low[0] + 2 * BORDER)
    heading = list(_heading(scene, tape, width))
    top = BORDER + len(heading) * LINE_HEIGHT + SQUARES[1][1] + 3 * LINE_HEIGHT
    height = top + high[1] - low[1] + BORDER
    origin = ((width - (high[0] - low[0])) / 2 - low[0], top - low[1])
    placed = element("g", *chain.from_iterable(_shape(each, tape) for each in scene.shapes))
    placed.set("transform", f"translate({number(origin[0])} {number(origin[1])})")
    return element(
        "svg",
        element("title", scene.title.first(tape)),
        element("desc", scene.description.first(tape)),
        element("rect", width=number(width), height=number(height), fill="#fff"),
        *heading,
        *_squares(BORDER + (len(heading) + 0.5) * LINE_HEIGHT),
        placed,
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 0 {number(width)} {number(height)}",
        width=f"{number(width)}mm",
        height=f"{number(height)}mm",
        font_family=FONT,
    )


def _heading(scene: Scene, tape: Tape, width: float) -> Iterable[Element]:
    """Title, what is shown, and how to print, in lines that fit the width."""
    room = int((width - 2 * BORDER) / (TEXT * CHARACTER))
    said_lines = [scene.title.first(tape), *wrap(scene.description.text(tape), room)]
    for place, line in enumerate([*said_lines, *wrap(PRINT_AT, room)]):
        yield _words(line, (BORDER, BORDER + (place + 0.7) * LINE_HEIGHT), "start", place == 0)


def _squares(top: float) -> Iterable[Element]:
    left = BORDER
    for name, size in SQUARES:
        yield _path(rectangle(left, top, size, size), "cut", closed=True)
        yield _words(f"this square is {name}", (left + size / 2, top + size / 2), "middle")
        left += size + SQUARE_GAP


def _box(shapes: Sequence[Shape]) -> tuple[Point, Point]:
    """The box round all shapes, words and dimension lines included, roughly."""
    points = list(chain.from_iterable(_reach(shape) for shape in shapes))
    xs, ys = zip(*points, strict=True)
    return (min(xs), min(ys)), (max(xs), max(ys))


def _reach(shape: Shape) -> Iterable[Point]:
    match shape:
        case Area() | Stroke():
            return shape.points
        case Dimension():
            room = OFF + (12 * TEXT * CHARACTER if shape.side in (Side.LEFT, Side.RIGHT) else TEXT)
            aside = shape.side.value
            far = [(x + room * aside[0], y + room * aside[1]) for x, y in (shape.start, shape.end)]
            return (shape.start, shape.end, *far)
        case Tag():
            far_x = shape.at[0] + shape.side.value[0] * (OFF + 14 * TEXT * CHARACTER)
            return (shape.at, (far_x, shape.at[1]))
        case Note():
            half = len(shape.text.template) * TEXT * CHARACTER / 2
            left, right = {"start": (0.0, 2.0), "middle": (1.0, 1.0), "end": (2.0, 0.0)}[
                shape.anchor
            ]
            x, y = shape.at
            return ((x - left * half, y - TEXT), (x + right * half, y + TEXT))
        case Grain():
            return (shape.at,)
        case Dots():
            return shape.at


def _shape(shape: Shape, tape: Tape) -> Iterable[Element]:
    match shape:
        case Area():
            yield from _area(shape)
        case Stroke():
            yield _path(shape.points, shape.line.value)
        case Dimension():
            yield from _dimension(shape, tape)
        case Tag():
            way = shape.side.value[0]
            yield _path((shape.at, (shape.at[0] + way * OFF, shape.at[1])), "thin")
            at = (shape.at[0] + way * (OFF + 1), shape.at[1] + TEXT / 3)
            yield _words(_amount(shape, tape), at, "start" if way > 0 else "end")
        case Note():
            if shape.target is not None:
                yield _path((shape.at, shape.target), "thin")
            drop = -TEXT / 2 if shape.above or shape.target is not None else TEXT / 3
            at = (shape.at[0], shape.at[1] + drop)
            yield _words(shape.text.first(tape), at, shape.anchor)
        case Grain():
            (x, y), (along_x, along_y) = shape.at, shape.along
            ends = [(x + 8 * way * along_x, y + 8 * way * along_y) for way in (-1, 1)]
            yield _path(ends, "thin")
            yield from (_head((x, y), end) for end in ends)
        case Dots():
            yield _dots(shape)


def _area(area: Area) -> Iterable[Element]:
    yield element("path", d=_steps(area.points, True), fill=FACES[area.tone])
    if area.tone is Tone.WRONG:
        for line in hatch(area.points, HATCH_SPACING):
            yield _path(line, "hidden")
    if area.outline is not None:
        yield _path(area.points, area.outline.value, closed=True)


def _dimension(each: Dimension, tape: Tape) -> Iterable[Element]:
    """Extension lines, an arrowed line beside what it measures, and its words."""
    side_x, side_y = each.side.value
    ends: list[Point] = []
    for (x, y), (other_x, other_y) in ((each.start, each.end), (each.end, each.start)):
        outer = max if side_x + side_y > 0 else min
        if side_x:
            ends.append((outer(x, other_x) + side_x * OFF, y))
        else:
            ends.append((x, outer(y, other_y) + side_y * OFF))
        yield _path(((x, y), (ends[-1][0] + side_x, ends[-1][1] + side_y)), "thin")
    yield _path(ends, "thin")
    yield from (_head(ends[1 - place], ends[place]) for place in (0, 1))
    middle = ((ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2)
    if side_x:
        at, anchor = (middle[0] + side_x, middle[1] + TEXT / 3), "start" if side_x > 0 else "end"
    else:
        at, anchor = (middle[0], middle[1] + (TEXT if side_y > 0 else -1.0)), "middle"
    yield _words(_amount(each, tape), at, anchor)


def _head(start: Point, end: Point) -> Element:
    across, down = end[0] - start[0], end[1] - start[1]
    length = (across * across + down * down) ** 0.5 or 1.0
    dx, dy = across / length * ARROW, down / length * ARROW
    wings = ((end[0] - dx - dy / 3, end[1] - dy + dx / 3),
             (end[0] - dx + dy / 3, end[1] - dy - dx / 3))  # fmt: skip
    return element("path", d=_steps((end, *wings), True), fill="#333")


def _amount(shape: Dimension | Tag, tape: Tape) -> str:
    return said(shape.amount, tape).both


def _path(points: Sequence[Point], style: str, closed: bool = False) -> Element:
    width, dashes, colour = LINES[style]
    path = element("path", d=_steps(points, closed), fill="none", stroke=colour,
                   stroke_width=str(width), stroke_linejoin="round")  # fmt: skip
    path.set("stroke-linecap", "round" if style == "gather" else "butt")
    if dashes:
        path.set("stroke-dasharray", dashes)
    return path


def _dots(dots: Dots) -> Element:
    """All dots as one path of lines without length, so that thousands of them stay small."""
    steps = "".join(f"M{number(x)} {number(y)}h0" for x, y in dots.at)
    path = element("path", d=steps, fill="none", stroke="#111", stroke_width=str(DOT))
    path.set("stroke-linecap", "round")
    return path


def _words(text: str, at: Point, anchor: str, bold: bool = False) -> Element:
    words = element("text", text, x=number(at[0]), y=number(at[1]), text_anchor=anchor,
                    font_size=number(TEXT), fill="#111")  # fmt: skip
    if bold:
        words.set("font-weight", "bold")
    return words


def _steps(points: Sequence[Point], closed: bool) -> str:
    placed = "L".join(f"{number(x)} {number(y)}" for x, y in points)
    return f"M{placed}{'Z' if closed else ''}"


def number(value: float) -> str:
    """A coordinate in mm to a thousandth, the same on every machine."""
    rounded = ceil(value * 1000 - 0.5) / 1000
    return f"{rounded:.3f}".rstrip("0").rstrip(".") if rounded else "0"
