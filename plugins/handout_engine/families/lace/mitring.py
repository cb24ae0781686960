"""Mitres of lace: what a corner of any angle takes, and where each falls on the flat lace.

A strip that turns by an angle c leaves a fold between its arms; along its inner edge the fold
takes 2 × width × tan(c / 2), along its outer edge nothing but the seam.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import radians, tan

from handout_engine.amounts.inputs import SEWING, angle, choice, length, lengths
from handout_engine.amounts.lengths import ZERO, Length, from_float, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_most, less_than, ways
from handout_engine.families.lace.lace import LaceInputs
from handout_engine.families.lace.mitring_drawing import MitreWalk
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

INNER, OUTER = "inner line", "outer line"
OPEN, RING = "open", "ring"
CLOSES_WITHIN = 1.0
"""A ring whose end misses its start by more than so many mm is refused."""


class MitreInputs(LaceInputs):
    """The inputs of lace that is mitred round corners."""

    sides = lengths(
        "sides",
        "The straight sides in order, from one end to the other.",
        "6 in; 9 in; 6 in",
        ("1/4 in", "5 yd"),
        12,
    )
    measured = choice(
        "sides measured on", "The line on which the sides were measured.", INNER, OUTER
    )
    turn = angle(
        "turn at a corner",
        "Change of direction at each corner: 90 for a square one, less for a blunt one, more "
        "for a sharp point.",
        "90",
        ("5", "160"),
    )
    ends = choice(
        "ends", "Open, or a ring whose ends meet in the last mitre.", OPEN, RING, group=SEWING
    )
    mitre_seam = length(
        "mitre seam",
        "Lace left beyond the stitching at the outer point, on each side of it.",
        "1/16 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )


def check_shape(lace: MitreInputs) -> None:
    """Raise RefusalError when the sides and turns make no open line or ring."""
    number = len(lace.sides)
    if lace.ends == OPEN and number == 1:
        raise RefusalError("one open side has no corner to mitre; write at least 2 sides", "sides")
    corners = number if lace.ends == RING else number - 1
    most = 360 / Fraction(corners)
    if lace.turn > most:
        raise RefusalError(
            f"turn {Tape().say(lace.turn, Saying.DEGREES)} at {corners} corners goes more than "
            f"once round; use {ways(at_most(lace, 'turn', most), 'fewer sides')}",
            "turn",
        )
    if lace.ends == RING:
        _check_ring(lace, most)


def _check_ring(lace: MitreInputs, turn: Fraction) -> None:
    number = len(lace.sides)
    if number < 3 or abs(float(lace.turn - turn)) > 0.01:
        shown = Tape().say(turn, Saying.DEGREES)
        way = f"turn {shown} at each of its {number} corners" if number > 2 else "3 sides or more"
        raise RefusalError(f"a ring needs {way}; write that, or leave the ends open", "turn")
    walk = MitreWalk([float(side) for side in lace.sides], float(turn), closed=True)
    if walk.gap > CLOSES_WITHIN:
        missed = Tape(finest=32).both(from_float(walk.gap))
        raise RefusalError(
            f"the sides do not close to a ring, the end misses the start by {missed}; make "
            "opposite sides equal, or leave the ends open",
            "sides",
        )


def note_corner(sheet: Worksheet, lace: MitreInputs) -> tuple[Value, Value]:
    """Note how many corners there are and what one takes; returns the count and half a mitre."""
    ring = lace.ends == RING
    number = len(lace.sides)
    sides = sheet.note("number_of_sides", "number of sides", number, "", basis=GIVEN)
    corners = sheet.note("corners", "corners to mitre", number if ring else number - 1,
                         "{sides}" if ring else "{sides} - 1", sides=sides)  # fmt: skip
    half = sheet.note(
        "half_mitre", "half of a mitre, along the inner edge",
        from_float(float(lace.lace_width) * tan(radians(float(lace.turn) / 2))),
        "{lace_width} × tan({turn} / 2)",
    )  # fmt: skip
    sheet.note("corner_takes", "one mitre, along the inner edge of the lace",
               2 * half.length + 2 * lace.mitre_seam,
               "2 × {half_mitre} + 2 × {mitre_seam}")  # fmt: skip
    return corners, half


def note_sides(sheet: Worksheet, lace: MitreInputs, half: Value) -> list[Value]:
    """Note both lines of every side; returns the outer ones."""
    last = len(lace.sides)
    mitres = [2 if lace.ends == RING or 1 < number < last else 1
              for number in range(1, last + 1)]  # fmt: skip
    if lace.measured != INNER:
        _check_inner(lace, [half.length * ends for ends in mitres])
    outers = []
    for number, (given, ends) in enumerate(zip(lace.sides, mitres, strict=True), 1):
        away = half.length * ends
        inner_label, outer_label = f"side {number}, inner line", f"side {number}, outer line"
        if lace.measured == INNER:
            inner = sheet.note(f"inner{number}", inner_label, given, "", basis=GIVEN)
            outers.append(
                sheet.note(f"outer{number}", outer_label, given + away,
                           "{inner} + {ends} × {half_mitre}", inner=inner, ends=ends)
            )  # fmt: skip
            continue
        outer = sheet.note(f"outer{number}", outer_label, given, "", basis=GIVEN)
        sheet.note(f"inner{number}", inner_label, given - away,
                   "{outer} - {ends} × {half_mitre}", outer=outer, ends=ends)  # fmt: skip
        outers.append(outer)
    return outers


def _check_inner(lace: MitreInputs, taken: Sequence[Length]) -> None:
    """Refuse mitres that leave nothing of a side; the side that is worst off is named."""
    shares = [given / away for given, away in zip(lace.sides, taken, strict=True)]
    worst = min(shares)
    if worst <= 1:
        tape, number = Tape(finest=32), shares.index(worst)
        narrow = less_than(lace, "lace_width", lace.lace_width * worst, "lace narrower than {}")
        raise RefusalError(
            f"lace_width {tape.say(lace.lace_width)} leaves nothing of side {number + 1} inside, "
            f"{tape.say(lace.sides[number])} on the outer line; use "
            f"{ways(narrow, 'longer sides')}",
            "lace_width",
        )


def note_mitred_length(sheet: Worksheet, lace: MitreInputs, corners: Value) -> None:
    """Note the cut length of the lace."""
    line = "inner" if lace.measured == INNER else "outer"
    names = [f"{line}{number}" for number in range(1, len(lace.sides) + 1)]
    along = sheet.note("along", f"all sides, {lace.measured}",
                       total(sheet[name].length for name in names),
                       " + ".join(f"{{{name}}}" for name in names))  # fmt: skip
    if lace.measured == INNER:
        extra, words = sheet["corner_takes"].length, "{corner_takes}"
    else:
        extra, words = 2 * lace.mitre_seam, "2 × {mitre_seam}"
    ends = ZERO if lace.ends == RING else 2 * lace.end_allowance
    sheet.note(
        "lace_length",
        "lace, cut length",
        along.length + extra * corners.whole + ends,
        f"{{along}} + {{corners}} × {words}"
        + ("" if lace.ends == RING else " + 2 × {end_allowance}"),
    )
    if lace.measured == INNER:
        widths = extra / lace.lace_width
        sheet.note("corner_widths", "one mitre in widths of the lace", widths,
                   "{corner_takes} / {lace_width}")  # fmt: skip


def fold_chart(sheet: Worksheet, lace: MitreInputs, outer: list[Value], corners: int) -> Chart:
    """Where every mitre falls on the flat lace, measured from its first end."""
    rows = []
    reached, words = ZERO, ""
    if lace.ends == OPEN:
        reached, words = lace.end_allowance, "{end_allowance} + "
    for number in range(1, corners + 1):
        reached = reached + outer[number - 1].length
        seams = 2 * number - (1 if lace.ends == OPEN else 0)
        named = words + " + ".join(f"{{outer{each}}}" for each in range(1, number + 1))
        fold = sheet.note(f"fold{number}", f"mitre {number}, fold line from the first end",
                          reached + lace.mitre_seam * seams,
                          named + " + {seams} × {mitre_seam}", seams=seams)  # fmt: skip
        aside = sheet["half_mitre"].length + lace.mitre_seam
        meets = lace.ends == RING and number == corners
        name = f"mitre {number}, where the ends meet" if meets else f"mitre {number}"
        rows.append((name, fold, fold.length - aside, aside if meets else fold.length + aside))
    headings = ("Mitre", "Fold at", "Inner edge, stitch from", "and from")
    return Chart("Mitres along the flat lace, from its first end", headings, tuple(rows))
