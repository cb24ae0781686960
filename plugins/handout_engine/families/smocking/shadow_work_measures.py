"""Shadow work: threads that cross behind sheer cloth from one line of back stitch to another.

Holes lie opposite each other on two lines, one repeat apart. On the wrong side the thread goes in
at the next hole and out at the one behind it, now on the one line, now on the other: it crosses
one repeat further on, and comes back two repeats further on.
"""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

from handout_engine.amounts.lengths import Length, from_float, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

GUIDE = Length(Fraction(150))
"""The printed guide is about so long; it is moved along the edge."""
LEAST = 2
"""Threads cross one another from the second stitch of a line on."""
NARROWEST = inches("1/16")
TAPE = Tape(finest=32)


def note_holes(sheet: Worksheet, ring: bool) -> None:
    """Note the holes of each line and the length of the guide; speaks of `repeats_edge`.

    Raises RefusalError for a row too short for threads to cross.
    """
    number = sheet["repeats_edge"].whole
    if number < LEAST:
        raise RefusalError(
            f"edge {TAPE.both(sheet['edge'].length)} holds no more than one stitch on each line; "
            f"at least {LEAST} are needed for threads to cross: use shorter stitches, smaller "
            "margins or a longer edge",
            "edge",
        )
    sheet.note("holes", "holes on each line", number if ring else number + 1,
               "{repeats_edge}" if ring else "{repeats_edge} + 1")  # fmt: skip
    step = sheet["repeat_edge"].length
    guide = max(1, min(number, int(GUIDE / step)))
    sheet.note("guide_length", "length of the printed guide", step * guide,
               f"{guide} × {{repeat_edge}}")  # fmt: skip


def note_crossings(sheet: Worksheet) -> None:
    """Note both crossings behind the cloth. Raises RefusalError where one would catch."""
    gap, step = sheet["gap"].length, sheet["repeat_edge"].length
    crossings = (
        ("crossing_over", "crossing to the far line", 1),
        ("crossing_back", "crossing back to the near line", 2),
    )
    for name, label, repeats in crossings:
        along = "" if repeats == 1 else f"{repeats * repeats} × "
        sheet.note(name, label, from_float(_slanting(gap, step * repeats)),
                   f"√({{gap}} × {{gap}} + {along}{{repeat_edge}} × {{repeat_edge}})",
                   saying=Saying.FINE)  # fmt: skip
    longest = sheet["longest_crossing"].length
    if sheet["crossing_back"].length > longest:
        _refuse_crossing(sheet, step, longest)


def _slanting(across: Length, along: Length) -> float:
    return sqrt(float(across) ** 2 + float(along) ** 2)


def _refuse_crossing(sheet: Worksheet, step: Length, longest: Length) -> None:
    """Say which channel would do with these stitches, or which stitches if none does."""
    crossing = sheet["crossing_back"].length
    widest = from_float(sqrt(max(0.0, float(longest) ** 2 - 4 * float(step) ** 2)))
    narrower = at_most(sheet.technique, "gap", widest, "a gap of at most {}")
    way = ways(narrower, "shorter stitches" if narrower else "much shorter stitches")
    raise RefusalError(
        f"gap {TAPE.both(sheet['gap'].length)} makes threads {TAPE.say(crossing, Saying.FINE)} "
        f"long behind the cloth, and more than {TAPE.say(longest, Saying.FINE)} catches; use {way},"
        " or several narrow rows",
        "gap",
    )


def note_thread(sheet: Worksheet, ring: bool) -> Value:
    """Note the thread of a row on both sides, and what to have ready; returns that.

    Every row is begun with a needleful of its own: thread carried from one to the next would show.
    """
    number, step = sheet["repeats_edge"].whole, sheet["repeat_edge"].length
    over, back = sheet["crossing_over"].length, sheet["crossing_back"].length
    front = sheet.note("thread_front", "thread on the right side, each row", step * 2 * number,
                       "2 × {repeats_edge} × {repeat_edge}")  # fmt: skip
    crossed = "{repeats_edge} × {crossing_over} + "
    behind = sheet.note(
        "thread_behind",
        "thread behind the cloth, each row",
        over * number + back * (number if ring else number - 1),
        crossed + ("{repeats_edge}" if ring else "({repeats_edge} - 1)") + " × {crossing_back}",
    )
    laid = sheet.note("thread_laid", "thread of each row, laid straight",
                      front.length + behind.length,
                      "{thread_front} + {thread_behind}")  # fmt: skip
    used = sheet.note("thread_used", "thread worked up in each row",
                      laid.length * (1 + sheet["take_up"].ratio),
                      "{thread_laid} × (1 + {take_up})", saying=Saying.UP)  # fmt: skip
    useful = sheet.note("useful", "of each needleful, worked up",
                        sheet["needleful"].length - sheet["fastening"].length,
                        "{needleful} - {fastening}")  # fmt: skip
    fills = sheet.note("needlefuls", "needlefuls of each row",
                       -int(-used.length.mm // useful.length.mm),
                       "{thread_used} / {useful}, rounded up")  # fmt: skip
    return sheet.note("thread", "thread to have ready",
                      sheet["needleful"].length * fills.whole * sheet["rows"].whole,
                      "{rows} × {needlefuls} × {needleful}", saying=Saying.UP)  # fmt: skip


def lines_chart(sheet: Worksheet) -> Chart:
    """Where both lines of every row lie, with their holes and stitches."""
    gap, between = sheet["gap"].length, sheet["between"].length
    several = sheet["rows"].whole > 1
    lines = []
    for row in range(sheet["rows"].whole):
        near = sheet["from_edge"].length + (gap + between) * row
        which = f" of row {row + 1}" if several else ""
        for name, at in ((f"near line{which}", near), (f"far line{which}", near + gap)):
            lines.append((name, at, sheet["holes"].whole, sheet["repeats_edge"].whole))
    return Chart("The drawn lines", ("Line", "From the finished edge", "Holes", "Stitches"),
                 tuple(lines))  # fmt: skip
