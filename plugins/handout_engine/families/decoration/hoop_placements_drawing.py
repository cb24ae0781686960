"""Hoop placements: the whole design with its fields, and one field with its basting frame."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import ceil

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)

NUMBER = 0.14
"""Room for a number, as a share of the width of the cloth."""


@dataclass(frozen=True)
class Pair:
    """Two measures of one thing: across and along."""

    across: Value
    along: Value


@dataclass(frozen=True)
class Placements:
    """The cloth as cut, the design on it, the usable field, and the centre of each placement.

    Centres are measured from the upper left corner of the design.
    """

    cloth: Pair
    design: Pair
    field: Pair
    centres: Sequence[Point]
    step_across: Value | None
    step_along: Value | None


def placements(plan: Placements) -> tuple[Shape, ...]:
    """The cloth with the design's outline dashed, fields thin, a cross at each centre."""
    wide, tall = plan.cloth.across.mm, plan.cloth.along.mm
    left = (wide - plan.design.across.mm) / 2
    top = (tall - plan.design.along.mm) / 2
    shapes: list[Shape] = [Area(rectangle(0, 0, wide, tall), Tone.RIGHT)]
    across, along = plan.field.across.mm, plan.field.along.mm
    for number, (x, y) in enumerate(plan.centres):
        outline = rectangle(left + x - across / 2, top + y - along / 2, across, along)
        if number == 0:
            shapes.append(Area(outline, Tone.SECOND, Line.THIN))
        else:
            shapes.append(Stroke((*outline, outline[0]), Line.THIN))
    shapes.extend(_crosses(plan, (left, top)))
    design = rectangle(left, top, plan.design.across.mm, plan.design.along.mm)
    shapes.append(Stroke((*design, design[0]), Line.STITCH))
    shapes.extend(_measures(plan, (left, top)))
    return tuple(shapes)


def _crosses(plan: Placements, at: Point) -> Iterable[Shape]:
    """A cross at each centre, and its number where there is room for one."""
    room = NUMBER * plan.cloth.across.mm
    columns = sorted({x for x, _ in plan.centres})
    rows = sorted({y for _, y in plan.centres})
    skip_columns = ceil(room / plan.step_across.mm) if plan.step_across else 1
    skip_rows = ceil(room / plan.step_along.mm) if plan.step_along else 1
    arm = min(0.12 * min(plan.field.across.mm, plan.field.along.mm), 0.02 * plan.cloth.across.mm)
    for number, (x, y) in enumerate(plan.centres, 1):
        across, down = at[0] + x, at[1] + y
        yield Stroke(((across - arm, down), (across + arm, down)), Line.CUT)
        yield Stroke(((across, down - arm), (across, down + arm)), Line.CUT)
        if columns.index(x) % skip_columns == 0 and rows.index(y) % skip_rows == 0:
            yield Note((across + arm, down - arm), sentence(str(number)), anchor="start")


def _measures(plan: Placements, at: Point) -> list[Shape]:
    left, top = at
    wide, tall = plan.cloth.across.mm, plan.cloth.along.mm
    design_wide, design_tall = plan.design.across, plan.design.along
    shapes: list[Shape] = [
        Dimension((left, tall), (left + design_wide.mm, tall), design_wide, Side.BELOW),
        Dimension((0, tall), (wide, tall), plan.cloth.across, Side.BELOW),
        Dimension((0, top), (0, top + design_tall.mm), design_tall, Side.LEFT),
        Dimension((0, 0), (0, tall), plan.cloth.along, Side.LEFT),
        Grain((left / 2, tall / 2), (0, 1)),
    ]
    x, y = plan.centres[0]
    if plan.step_across is not None:
        start = left + x
        far = start + plan.step_across.mm
        shapes.append(Dimension((start, 0), (far, 0), plan.step_across, Side.ABOVE))
    if plan.step_along is not None:
        start = top + y
        far = start + plan.step_along.mm
        shapes.append(Dimension((wide, start), (wide, far), plan.step_along, Side.RIGHT))
    return shapes


@dataclass(frozen=True)
class Hooping:
    """One placement: the hoop's field, what of it is used, the frame's distance, the border."""

    field: Pair
    used: Pair
    frame: Value
    border: Value


def one_field(hoop: Hooping, at_scale: bool) -> Scene:
    """The field with its basting frame and its centre lines; at true scale a template to pin on."""
    wide, tall = hoop.field.across.mm, hoop.field.along.mm
    frame, border = hoop.frame.mm, hoop.border.mm
    shapes: list[Shape] = []
    if not at_scale:
        outside = rectangle(-border, -border, wide + 2 * border, tall + 2 * border)
        shapes.append(Area(outside, Tone.SHADE, Line.THIN))
    shapes.append(Area(rectangle(0, 0, wide, tall), Tone.RIGHT, Line.STITCH))
    used = rectangle(frame, frame, hoop.used.across.mm, hoop.used.along.mm)
    if frame:
        shapes.append(Stroke((*used, used[0]), Line.HIDDEN))
    shapes.append(Stroke(((wide / 2, 0), (wide / 2, tall)), Line.FOLD))
    shapes.append(Stroke(((0, tall / 2), (wide, tall / 2)), Line.FOLD))
    if not at_scale:
        low = tall + border
        shapes.append(Dimension((0, low), (wide, low), hoop.field.across, Side.BELOW))
        shapes.append(Dimension((-border, 0), (-border, tall), hoop.field.along, Side.LEFT))
        right = wide + border
        shapes.append(Dimension((right, -border), (right, 0), hoop.border, Side.RIGHT))
        if frame:
            shapes.append(Dimension((right, tall - frame), (right, tall), hoop.frame, Side.RIGHT))
    return Scene(
        sentence("Template of one placement" if at_scale else "One placement in its hoop"),
        sentence(
            "The basting frame is {across} by {along}, the stitches stay {frame} inside it; the "
            "dash-dotted lines cross at the centre.",
            across=hoop.field.across,
            along=hoop.field.along,
            frame=hoop.frame,
        ),
        tuple(shapes),
        tallest=220.0,
    )
