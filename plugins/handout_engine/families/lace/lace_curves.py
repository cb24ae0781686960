"""Centre line and edges of lace laid in a scallop, a diamond or a loop.

The centre line is what a template shows; the lace is cut as long as the outer edge of each shape,
which is the longer one, and the inner edge is drawn up to fit.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import acos, asin, degrees, radians, sqrt

from handout_engine.amounts.lengths import FINEST, Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import less_than, more_than, ways
from handout_engine.working.worksheet import Worksheet

SCALLOP, DIAMOND, LOOP = "scallop", "diamond", "loop"


@dataclass(frozen=True)
class ShapeLines:
    """One shape: the length of its centre line, of its outer edge and of its inner edge."""

    centre: Value
    outer: Value
    inner: Value


def note_shape(sheet: Worksheet, shape: str, across: Value, height: Value) -> ShapeLines:
    """Note the three lines of one shape that is `across` wide and `height` high on its centre line.

    Speaks of the input `lace_width`; raises RefusalError when the lace is too wide to turn so.
    """
    if shape == DIAMOND:
        return _diamond(sheet, across, height)
    return _scallop(sheet, across, height) if shape == SCALLOP else _loop(sheet, across, height)


def _ratio(number: float) -> Fraction:
    return Fraction(round(number * FINEST), FINEST)


def _scallop(sheet: Worksheet, chord: Value, rise: Value) -> ShapeLines:
    """An arc on a chord; above half a circle the arc is the longer one of the two."""
    quarter = chord.length.mm * chord.length.mm / 4
    radius = sheet.note(
        "radius", "radius of the centre line",
        Length((quarter + rise.length.mm * rise.length.mm) / (2 * rise.length.mm)),
        "({chord} × {chord} / 4 + {rise} × {rise}) / (2 × {rise})", chord=chord, rise=rise,
    )  # fmt: skip
    _check_radius(sheet, radius)
    half = degrees(asin(min(1.0, chord.mm / (2 * radius.mm))))
    deep = 2 * rise.length > chord.length
    turn = sheet.note(
        "arc_turn", "turn of the arc", _ratio(360 - 2 * half if deep else 2 * half),
        ("360 - " if deep else "") + "2 × arcsin({chord} / (2 × {radius}))",
        saying=Saying.DEGREES, chord=chord,
    )  # fmt: skip
    return _note_arcs(sheet, radius, turn, None)


def _loop(sheet: Worksheet, across: Value, height: Value) -> ShapeLines:
    """An arc that two straight arms, drawn from the foot of the loop, run into."""
    if height.length <= across.length:
        tape = Tape(finest=32)
        higher = more_than(sheet.technique, "height", across.length, "a height of more than {}")
        raise RefusalError(
            f"a loop {tape.say(across.amount)} wide must be higher than that to close at its foot; "
            f"use {ways(higher, 'a smaller shape_width')}",
            "height",
        )
    radius = sheet.note("radius", "radius of the centre line", across.length / 2, "{across} / 2",
                        across=across)  # fmt: skip
    _check_radius(sheet, radius)
    centre = sheet.note("foot_to_centre", "from the foot of the loop to the centre of its arc",
                        height.length - radius.length, "{height} - {radius}",
                        height=height)  # fmt: skip
    arm = sheet.note(
        "arm", "straight arm of the loop", from_float(sqrt(centre.mm**2 - radius.mm**2)),
        "√({foot_to_centre} × {foot_to_centre} - {radius} × {radius})",
    )  # fmt: skip
    turn = sheet.note(
        "arc_turn", "turn of the arc", _ratio(360 - 2 * degrees(acos(radius.mm / centre.mm))),
        "360 - 2 × arccos({radius} / {foot_to_centre})", saying=Saying.DEGREES,
    )  # fmt: skip
    return _note_arcs(sheet, radius, turn, arm)


def _check_radius(sheet: Worksheet, radius: Value) -> None:
    width = sheet["lace_width"].length
    if width >= 2 * radius.length:
        tape = Tape(finest=32)
        raise RefusalError(
            f"lace_width {tape.say(width)} is too wide for a curve of {tape.say(radius.amount)} "
            f"radius, its inner edge would cross itself; use "
            f"{ways(_narrower(sheet, 2 * radius.length), 'larger shapes')}",
            "lace_width",
        )


def _narrower(sheet: Worksheet, limit: Length) -> str:
    return less_than(sheet.technique, "lace_width", limit, "lace narrower than {}")


def _note_arcs(sheet: Worksheet, radius: Value, turn: Value, arm: Value | None) -> ShapeLines:
    """Note the three lines of an arc, with two arms where it has them."""
    assert isinstance(turn.amount, Fraction)
    once = radians(float(turn.amount))
    straight = 2 * arm.mm if arm else 0.0
    arms = "2 × {arm} + " if arm else ""
    half = float(sheet["lace_width"].length) / 2
    made = []
    for name, label, away, reach in (
        ("centre_line", "centre line of one shape", 0.0, "{radius}"),
        ("outer_edge", "outer edge of one shape", half, "({radius} + {lace_width} / 2)"),
        ("inner_edge", "inner edge of one shape", -half, "({radius} - {lace_width} / 2)"),
    ):
        length = from_float(straight + (radius.mm + away) * once)
        made.append(sheet.note(name, label, length, f"{arms}{reach} × π × {{arc_turn}} / 180"))
    return ShapeLines(*made)


def _diamond(sheet: Worksheet, across: Value, height: Value) -> ShapeLines:
    """Four equal sides with mitred points; offsetting a diamond by half the lace lengthens it."""
    side = sheet.note(
        "diamond_side", "side of the diamond, centre line",
        from_float(sqrt(across.mm**2 + height.mm**2) / 2),
        "√({across} × {across} + {height} × {height}) / 2", across=across, height=height,
    )  # fmt: skip
    ratio = across.length / height.length + height.length / across.length
    points = sheet.note(
        "points_take", "the four mitres, between centre line and outer edge",
        2 * ratio * sheet["lace_width"].length,
        "2 × {lace_width} × ({across} / {height} + {height} / {across})",
        across=across, height=height,
    )  # fmt: skip
    centre = sheet.note("centre_line", "centre line of one shape", 4 * side.length,
                        "4 × {diamond_side}")  # fmt: skip
    if points.length >= centre.length:
        tape = Tape(finest=32)
        widest = centre.length / (2 * ratio)
        raise RefusalError(
            f"lace_width {tape.say(sheet['lace_width'].amount)} fills the whole diamond; use "
            f"{ways(_narrower(sheet, widest), 'larger shapes')}",
            "lace_width",
        )
    outer = sheet.note("outer_edge", "outer edge of one shape", centre.length + points.length,
                       "{centre_line} + {points_take}")  # fmt: skip
    inner = sheet.note("inner_edge", "inner edge of one shape", centre.length - points.length,
                       "{centre_line} - {points_take}")  # fmt: skip
    return ShapeLines(centre, outer, inner)
