"""The drawings of a lattice panel: finished, how it is set out, and its placement sheet."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import ceil, fsum, sqrt

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.page import PAGE_WIDTH
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.families.lattice.weave import FALLING, RISING, Tube, Weave, tubes
from handout_engine.families.lattice.weave_drawing import Woven, knot, whole_edges, woven
from handout_engine.geometry.points import Point, snapped, turned_back
from handout_engine.geometry.polygons import Polygon, extents

KNOT_OF_WIDTH = 0.2
"""A knot is drawn with this share of a tube's width as its radius."""
NAME_ON_PAGE = 21.0
"""Room for a tube's name on the page, in page units."""
NUMBER_ON_PAGE = 18.0
"""Room for a strip's number on the page, in page units."""
NAME_ON_SHEET = 5.0
"""Room for a tube's name at true scale, in mm."""


@dataclass(frozen=True)
class LatticeDrawing:
    """What the drawings of a lattice show: the weave, the tubes by name, the knots."""

    woven: Woven
    named: Sequence[tuple[str, Tube]]
    knots: Sequence[Point]
    width: Value
    depth: Value

    @property
    def outline(self) -> Polygon:
        """The finished outline."""
        return self.woven.outline

    @property
    def knot_radius(self) -> float:
        """How large a knot is drawn, in mm."""
        return min(1.5, self.woven.weave.width * KNOT_OF_WIDTH)


def finished(drawing: LatticeDrawing) -> Scene:
    """The panel as it is when its edge is finished."""
    (left, top), (right, bottom) = extents(drawing.outline)
    shapes: list[Shape] = [Area(drawing.outline, Tone.SHADE, outline=None)]
    shapes.extend(woven(drawing.woven))
    shapes.extend(knot(at, drawing.knot_radius) for at in drawing.knots)
    shapes.append(Stroke((*drawing.outline, drawing.outline[0]), Line.CUT))
    shapes.append(Dimension((left, bottom), (right, bottom), drawing.width, Side.BELOW))
    shapes.append(Dimension((left, top), (left, bottom), drawing.depth, Side.LEFT))
    return Scene(
        sentence("Lattice panel, finished"),
        sentence(
            "Tubes woven over and under inside an outline {width} wide and {depth} deep.",
            width=drawing.width,
            depth=drawing.depth,
        ),
        tuple(shapes),
    )


def placement(drawing: LatticeDrawing, name_room: float, every_name: bool) -> Scene:
    """Where each tube lies, from end to end with its margins; names where there is room, or all."""
    shapes: list[Shape] = []
    for _, tube in drawing.named:
        shapes.extend(whole_edges(drawing.woven, tube))
    shapes.append(Stroke((*drawing.outline, drawing.outline[0]), Line.STITCH))
    shapes.extend(_centre_lines(drawing))
    shapes.extend(knot(at, drawing.knot_radius) for at in drawing.knots)
    shapes.extend(_names(drawing, name_room, every_name))
    return Scene(
        sentence("Lattice panel, placement sheet"),
        sentence(
            "Every tube with its name and its margins; the dashed outline is {width} wide and "
            "{depth} deep.",
            width=drawing.width,
            depth=drawing.depth,
        ),
        tuple(shapes),
    )


def room_on_page(drawing: LatticeDrawing) -> float:
    """How many mm of the panel a name takes where the whole sheet is drawn on the page."""
    (left, _), (right, _) = extents(drawing.outline)
    whole = right - left + 2 * drawing.woven.weave.margin
    return NAME_ON_PAGE / (PAGE_WIDTH * 0.9 / whole)


def _centre_lines(drawing: LatticeDrawing) -> Iterable[Shape]:
    """A cross at the centre, where the first crossing lies."""
    x, y = drawing.woven.weave.centre
    arm = drawing.woven.weave.pitch / 2
    yield Stroke(((snapped(x - arm), y), (snapped(x + arm), y)), Line.FOLD)
    yield Stroke(((x, snapped(y - arm)), (x, snapped(y + arm))), Line.FOLD)


def _names(drawing: LatticeDrawing, room: float, every: bool) -> Iterable[Shape]:
    """Names beyond the ends of the tubes, each at the first end where no other name stands."""
    taken: list[Point] = []
    for name, tube in drawing.named:
        along = drawing.woven.weave.along(tube.set_name)
        level = drawing.woven.weave.middle(tube.set_name, tube.number)
        ends = (tube.stretch[0] - 0.6 * room, tube.stretch[1] + 0.6 * room)
        places = [turned_back((snapped(end), level), along) for end in ends]
        free = [at for at in places if all(_apart(at, other) >= room for other in taken)]
        if free or every:
            taken.append((free or places)[0])
            yield Note(taken[-1], sentence(name))


def _apart(one: Point, other: Point) -> float:
    across, down = one[0] - other[0], one[1] - other[1]
    return sqrt(across * across + down * down)


@dataclass(frozen=True)
class Spacing:
    """The measures of the weave that a detail shows."""

    tube: Value
    gap: Value
    pitch: Value
    along: Value
    falling: Point


def detail(spacing: Spacing) -> Scene:
    """A few tubes turned so that one set lies level, with the distances between them."""
    step, pitch, half = spacing.along.mm, spacing.pitch.mm, spacing.tube.mm / 2
    rows = 1.5 * pitch + half
    columns = (min(max(2, ceil(2 * rows / step)), 4) + 0.6) * step
    weave = Weave((1.0, 0.0), spacing.falling, (columns / 2, rows), 2 * half, pitch, 0.0)
    window = rectangle(0, 0, columns, 2 * rows)
    found = (*tubes(window, weave, RISING), *tubes(window, weave, FALLING))
    shapes: list[Shape] = list(woven(Woven(window, weave, found)))
    cut = columns / 2 + rows * spacing.falling[0] / spacing.falling[1]
    first = cut - step * int(cut / step) if cut >= 0 else cut + step * ceil(-cut / step)
    bottom = 2 * rows
    shapes.extend(
        (
            Dimension((0, rows - pitch + half), (0, rows - half), spacing.gap, Side.LEFT),
            Dimension((0, rows - half), (0, rows + half), spacing.tube, Side.LEFT),
            Dimension((columns, rows), (columns, rows + pitch), spacing.pitch, Side.RIGHT),
            Dimension((first, bottom), (first + step, bottom), spacing.along, Side.BELOW),
        )
    )
    return Scene(
        sentence("How the tubes are spaced"),
        sentence(
            "Tubes {tube} wide with gaps of {gap}; along a tube a crossing comes every {along}.",
            tube=spacing.tube,
            gap=spacing.gap,
            along=spacing.along,
        ),
        tuple(shapes),
    )


@dataclass(frozen=True)
class BiasBlock:
    """The cloth from which the strips are cut: its size, the step between lines, the bands."""

    across: Value
    along: Value
    step: Value
    bands: Sequence[tuple[str, Polygon]]


def bias_block(block: BiasBlock) -> Scene:
    """The strips that are used, on their piece of cloth, numbered from its upper left corner."""
    across, along = block.across.mm, block.along.mm
    shapes: list[Shape] = [Area(rectangle(0, 0, across, along), Tone.RIGHT)]
    every = ceil(NUMBER_ON_PAGE / (block.step.mm * PAGE_WIDTH * 0.75 / across))
    for place, (number, points) in enumerate(block.bands):
        middle = [fsum(each) / len(points) for each in zip(*points, strict=True)]
        shapes.append(Area(points, Tone.SECOND, Line.THIN))
        if place % every == 0:
            shapes.append(Note((middle[0], middle[1]), sentence(number)))
    shapes.append(Dimension((0, along), (across, along), block.across, Side.BELOW))
    shapes.append(Dimension((0, 0), (0, along), block.along, Side.LEFT))
    step = block.step.mm
    shapes.append(Dimension((0, 0), (step, 0), block.step, Side.ABOVE))
    shapes.append(Grain((across * 0.07, along * 0.8), (0, 1)))
    return Scene(
        sentence("Bias strips on the cloth"),
        sentence(
            "A piece {across} across and {along} along the selvage, with lines on the bias every "
            "{step} along its edges.",
            across=block.across,
            along=block.along,
            step=block.step,
        ),
        tuple(shapes),
    )
