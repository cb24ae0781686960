"""Buttons and buttonholes: the closed edge, one hole enlarged, a shank, and the placement sheet.

The edge runs down the drawing. x = 0 is the centre line of the front, the finished edge lies to the
right of it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tag,
    Tone,
    rectangle,
)

STEPS = 32
MOST_TAGS = 14
"""Of more buttons only the first two and the last are measured; the chart has all."""


@dataclass(frozen=True)
class ButtonedEdge:
    """An edge with its buttons: `places` are their distances from the upper end.

    `beyond` is how far a hole begins beyond its mark. A crosswise hole `starts` so far from the
    edge; an upright one has no such distance and begins above its mark.
    """

    opening: Value
    places: Sequence[Value]
    button: Value
    hole: Value
    extension: Value
    beyond: Value
    starts: Value | None

    @property
    def upright(self) -> bool:
        """Whether the holes lie along the centre line."""
        return self.starts is None

    def hole_line(self, middle: float) -> tuple[Point, Point]:
        """The slit of the hole at that height."""
        start, end = self.beyond.mm, self.beyond.mm - self.hole.mm
        if self.upright:
            return (0.0, middle - start), (0.0, middle - end)
        return (start, middle), (end, middle)

    @property
    def inner(self) -> float:
        """How much cloth is drawn at the left of the centre line."""
        return max(0.0 if self.upright else self.hole.mm - self.beyond.mm, self.button.mm / 2) * 1.6

    @property
    def measured(self) -> Sequence[Value]:
        """The buttons whose distances are written."""
        if len(self.places) <= MOST_TAGS:
            return self.places
        return (*self.places[:2], self.places[-1])


def circle(at: Point, radius: float) -> tuple[Point, ...]:
    """A circle as a closed outline."""
    return tuple(
        (at[0] + radius * sin(2 * pi * step / STEPS), at[1] + radius * cos(2 * pi * step / STEPS))
        for step in range(STEPS)
    )


def closed_edge(edge: ButtonedEdge) -> Scene:
    """The closing buttoned, from its right side."""
    return Scene(
        sentence("The edge buttoned"),
        sentence(
            "{count} buttons on an edge {opening} long.",
            count=len(edge.places),
            opening=edge.opening,
        ),
        tuple(_closed(edge)),
        tallest=330,
    )


def _closed(edge: ButtonedEdge) -> Iterable[Shape]:
    high, out = edge.opening.mm, edge.extension.mm
    wide = max(0.22 * high, 1.4 * (edge.inner + out))
    yield Area(rectangle(-out, 0, wide + out, high), Tone.SECOND, outline=None)
    yield Area(rectangle(-wide, 0, wide + out, high), outline=None)
    yield Stroke(((-out, 0), (-out, high)), Line.HIDDEN)
    yield Stroke(((out, 0), (out, high)), Line.CUT)
    for y in (0.0, high):
        yield Stroke(((-wide, y), (wide, y)), Line.CUT if y == 0 else Line.THIN)
    for place in edge.places:
        yield Stroke(edge.hole_line(place.mm), Line.CUT)
        yield from _button((0.0, place.mm), edge.button.mm / 2)
    for place in edge.measured:
        yield Tag((-wide, place.mm), place, Side.LEFT, (-wide, 0.0))
    yield Dimension((wide, 0), (wide, high), edge.opening, Side.RIGHT)


def _button(at: Point, radius: float) -> Iterable[Shape]:
    """A button with its four holes."""
    yield Area(circle(at, radius), Tone.SHADE)
    for across, down in ((-1, -1), (1, -1), (-1, 1), (1, 1)):
        hole = (at[0] + across * 0.25 * radius, at[1] + down * 0.25 * radius)
        yield Area(circle(hole, 0.09 * radius), Tone.GROUND, Line.THIN)


def hole_detail(edge: ButtonedEdge) -> Scene:
    """One hole enlarged, with the button that goes through it."""
    way = "upright, on the centre line" if edge.upright else "crosswise"
    return Scene(
        sentence("One buttonhole"),
        sentence(
            f"A hole {{hole}} long, {way}, beginning {{beyond}} beyond its mark.",
            hole=edge.hole,
            beyond=edge.beyond,
        ),
        tuple(_detail(edge)),
        tallest=200,
    )


def _detail(edge: ButtonedEdge) -> Iterable[Shape]:
    out, radius = edge.extension.mm, edge.button.mm / 2
    (x1, y1), (x2, y2) = edge.hole_line(0.0)
    half = 1.5 * max(radius, edge.hole.mm if edge.upright else radius)
    left = -edge.inner - radius
    yield Area(rectangle(left, -half, out - left, 2 * half), outline=None)
    yield Area(circle((0.0, 0.0), radius), Tone.SHADE, Line.HIDDEN)
    yield Stroke(((0, -half), (0, half)), Line.FOLD)
    yield Stroke(((out, -half), (out, half)), Line.CUT)
    yield Stroke(((x1, y1), (x2, y2)), Line.CUT)
    yield from _bars((x1, y1), (x2, y2), 0.12 * radius)
    yield Dimension((0, half), (out, half), edge.extension, Side.BELOW)
    yield Dimension((left, -radius), (left, radius), edge.button, Side.LEFT)
    if edge.starts is None:
        yield Dimension((out, y1), (out, y2), edge.hole, Side.RIGHT)
        return
    yield Dimension((x2, -half), (x1, -half), edge.hole, Side.ABOVE)
    yield Dimension((x1, -half), (out, -half), edge.starts, Side.ABOVE)


def _bars(start: Point, end: Point, reach: float) -> Iterable[Shape]:
    """The bar at each end of a hole, square to it."""
    upright = start[0] == end[0]
    for x, y in (start, end):
        ends = ((x - reach, y), (x + reach, y)) if upright else ((x, y - reach), (x, y + reach))
        yield Stroke(ends, Line.CUT)


def placement(edge: ButtonedEdge, every: bool) -> Scene:
    """The edge flat with the mark of every button and its hole, to lay under or trace."""
    return Scene(
        sentence("Placement of the buttonholes"),
        sentence(
            "Finished edge at the right, centre line dash-dot, {extension} from it; on it "
            "{count} marks, and through each its hole {hole} long.",
            extension=edge.extension,
            count=len(edge.places),
            hole=edge.hole,
        ),
        tuple(_placement(edge, every)),
        tallest=330,
    )


def _placement(edge: ButtonedEdge, every: bool) -> Iterable[Shape]:
    high, out = edge.opening.mm, edge.extension.mm
    left = -edge.inner - edge.button.mm / 2
    arm = 0.2 * edge.button.mm
    yield Area(rectangle(left, 0, out - left, high), outline=None)
    yield Stroke(((left, 0), (out, 0), (out, high), (left, high)), Line.CUT)
    yield Stroke(((0, 0), (0, high)), Line.FOLD)
    for place in edge.places:
        y = place.mm
        yield Stroke(
            (*circle((0.0, y), edge.button.mm / 2), (0.0, y + edge.button.mm / 2)), Line.HIDDEN
        )
        yield Stroke(((-arm, y), (arm, y)), Line.THIN)
        yield Stroke(((0, y - arm), (0, y + arm)), Line.THIN)
        yield Stroke(edge.hole_line(y), Line.CUT)
    for place in edge.places if every else edge.measured:
        yield Tag((left, place.mm), place, Side.LEFT)
    yield Dimension((0, high), (out, high), edge.extension, Side.BELOW)


@dataclass(frozen=True)
class Shank:
    """A button on its shank: its diameter and thickness, the shank, and the cloth below."""

    button: Value
    thickness: Value
    shank: Value
    cloth: Value
    width: Value


def shank_section(shank: Shank) -> Scene:
    """A button sewn on with its shank, cut through, the buttonholed edge in between."""
    return Scene(
        sentence("A button on its shank, cut through"),
        sentence(
            "The shank is {shank} long, as thick as the edge that lies under the button.",
            shank=shank.shank,
        ),
        tuple(_shank(shank)),
        tallest=140,
    )


def _shank(shank: Shank) -> Iterable[Shape]:
    radius, deep, stem = shank.button.mm / 2, shank.shank.mm, shank.width.mm / 2
    thick, cloth = shank.thickness.mm, shank.cloth.mm
    reach = 2.2 * radius
    air = 0.04 * radius
    yield Area(rectangle(-reach, 0, 2 * reach, cloth), Tone.SECOND)
    gap = min(1.25 * stem + air, 0.9 * reach)
    for left in (-reach, gap):
        yield Area(rectangle(left, -deep + air, reach - gap, deep - 2 * air), Tone.RIGHT)
    yield Area(rectangle(-stem, -deep, 2 * stem, deep), Tone.SHADE, Line.STITCH)
    yield Area(rectangle(-radius, -deep - thick, 2 * radius, thick), Tone.RIGHT)
    yield Dimension((-radius, -deep - thick), (radius, -deep - thick), shank.button, Side.ABOVE)
    yield Dimension((reach, -deep), (reach, 0), shank.shank, Side.RIGHT)
    yield Dimension((-reach, -deep - thick), (-reach, -deep), shank.thickness, Side.LEFT)
