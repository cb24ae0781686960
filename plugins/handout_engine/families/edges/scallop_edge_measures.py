"""Scallops along an edge: whole ones, each an arc over its chord.

A scallop hangs by its rise below the line on which all of them begin and end, the foot line. At a
rise of half the chord it is a half circle, and neighbours meet in a slit of no width.
"""

from __future__ import annotations

from fractions import Fraction
from math import asin, pi

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_least, at_most, less_than, ways
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

STRAIGHT, RING = "straight edge", "round a hem"
FACED, SATIN = "faced and turned", "satin stitched"
TAPE = Tape(finest=32)


class ScallopInputs:
    """The inputs of an edge that is divided into scallops."""

    form = choice("edge", "Open, with two ends, or closed round a hem or a sleeve.", STRAIGHT, RING)
    edge = length(
        "length of the edge",
        "Along the foot line, from end to end or once round.",
        "24 in",
        ("1 in", "10 yd"),
    )
    scallops = count("how many scallops", "Along the whole edge.", 8, 120)
    rise = optional_length(
        "rise",
        "From the foot line to the lowest point of a scallop.",
        "three tenths of the chord",
        ("1/16 in", "40 in"),
        in_use="scallop_rise",
    )
    gap = length(
        "gap", "Straight edge left between one scallop and the next.", "0 in", ("0 in", "20 in")
    )
    finish = choice(
        "finish",
        "Sewn to a facing and turned, or satin stitched and cut out.",
        FACED,
        SATIN,
        group=SEWING,
    )
    rise_limit = ratio(
        "deepest faced scallop",
        "Greatest rise for each length of chord that still turns "
        "and presses flat where scallops touch.",
        "0.35",
        ("0.05", "0.5"),
        group=SEWING,
        basis=PRACTICE,
    )
    least_gap = length(
        "gap that turns",
        "A gap this wide lets deeper faced scallops be turned.",
        "1/8 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )


def note_scallops(sheet: Worksheet, inputs: ScallopInputs) -> None:
    """Note chord, rise, radius and arc; raises RefusalError for scallops that cannot be sewn."""
    pitch = sheet.note("pitch", "from one scallop to the next", inputs.edge / inputs.scallops,
                       "{edge} / {scallops}")  # fmt: skip
    if inputs.gap >= pitch.length:
        raise RefusalError(
            f"gap {TAPE.say(inputs.gap)} leaves nothing of the {TAPE.say(pitch.amount)} from one "
            f"scallop to the next; use "
            f"{ways(less_than(inputs, 'gap', pitch.length), 'fewer scallops')}",
            "gap",
        )
    chord = sheet.note("chord", "chord of one scallop", pitch.length - inputs.gap,
                       "{pitch} - {gap}")  # fmt: skip
    rise = _note_rise(sheet, inputs, chord)
    _note_arc(sheet, chord, rise)
    if inputs.finish == FACED:
        _check_turning(inputs, chord, rise)
    _check_neighbours(sheet, inputs, chord, rise)
    sheet.note("outline", "length along all scallops, for piping or a trim",
               (sheet["arc"].length + inputs.gap) * inputs.scallops,
               "{scallops} × ({arc} + {gap})")  # fmt: skip


def _note_rise(sheet: Worksheet, inputs: ScallopInputs, chord: Value) -> Value:
    label = "rise of one scallop"
    if inputs.rise is None:
        return sheet.note("scallop_rise", label, chord.length * 3 / 10, "3 × {chord} / 10",
                          basis=PRACTICE)  # fmt: skip
    return sheet.note("scallop_rise", label, inputs.rise, "", basis=GIVEN)


def _note_arc(sheet: Worksheet, chord: Value, rise: Value) -> None:
    """Note radius, half angle and arc length of a scallop."""
    c, h = chord.length.mm, rise.length.mm
    radius = sheet.note("radius", "radius of one scallop", Length((c * c / 4 + h * h) / (2 * h)),
                        "({chord} × {chord} / 4 + {rise} × {rise}) / (2 × {rise})",
                        rise=rise)  # fmt: skip
    half = asin(float(c / (2 * radius.length.mm)))
    words = "arcsin({chord} / (2 × {radius}))"
    if 2 * h > c:
        half, words = pi - half, f"180 - {words}"
    sheet.note("half_angle", "half of the angle of its arc",
               Fraction(round(half * 180 / pi * 10**9), 10**9), words,
               saying=Saying.DEGREES)  # fmt: skip
    sheet.note("arc", "length of one scallop along its curve",
               from_float(2 * float(radius.length) * half), f"2 × {{radius}} × ({words}) × π / 180",
               rise=rise)  # fmt: skip


def _check_turning(inputs: ScallopInputs, chord: Value, rise: Value) -> None:
    """Refuse a facing that cannot be turned at the points between its scallops."""
    most = chord.length * inputs.rise_limit
    if rise.length > most and inputs.gap < inputs.least_gap:
        apart = at_least(inputs, "gap", inputs.least_gap, "a gap of at least {}")
        raise RefusalError(
            f"rise {TAPE.say(rise.amount)} on a chord of {TAPE.say(chord.amount)} is too deep to "
            f"face and turn where scallops touch; use "
            f"{ways(at_most(inputs, 'rise', most), apart, 'satin stitch')}",
            "rise",
        )


def _check_neighbours(sheet: Worksheet, inputs: ScallopInputs, chord: Value, rise: Value) -> None:
    """Note the angle between touching neighbours; refuse scallops that would overlap."""
    half = sheet["half_angle"].amount
    assert isinstance(half, Fraction)
    if 2 * rise.length <= chord.length:
        if not inputs.gap:
            sheet.note("between", "angle between two scallops, where they meet", 180 - 2 * half,
                       "180 - 2 × {half_angle}", saying=Saying.DEGREES)  # fmt: skip
        return
    bulge = sheet.note("bulge", "what a scallop is wider than its chord",
                       2 * sheet["radius"].length - chord.length,
                       "2 × {radius} - {chord}")  # fmt: skip
    if inputs.gap < bulge.length:
        flatter = at_most(inputs, "rise", chord.length / 2)
        raise RefusalError(
            f"rise {TAPE.say(rise.amount)} is more than half of the chord, so each scallop bulges "
            f"over its neighbour; use {ways(flatter, 'a wider gap', 'fewer scallops')}",
            "rise",
        )


def feet_chart(sheet: Worksheet, inputs: ScallopInputs) -> Chart:
    """Where each scallop begins, is deepest and ends along the foot line."""
    pitch, chord = sheet["pitch"].length, sheet["chord"].length
    rows = []
    for number in range(inputs.scallops):
        begins = pitch * number + inputs.gap / 2
        rows.append((str(number + 1), begins, begins + chord / 2, begins + chord))
    headings = ("Scallop", "Begins at", "Lowest at", "Ends at")
    start = "from the first end" if inputs.form == STRAIGHT else "once round, from the first mark"
    return Chart(f"Scallops along the foot line, {start}", headings, tuple(rows))


def slit(sheet: Worksheet) -> bool:
    """Whether neighbours meet in a slit of no width: half circles that touch."""
    touching = sheet["gap"].length == ZERO
    return touching and 2 * sheet["scallop_rise"].length == sheet["chord"].length
