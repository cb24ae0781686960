"""Stitches over an open gap: whole repeats along an edge, and the thread they take."""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.ways_out import just, ways
from handout_engine.working.worksheet import Worksheet

HALF = Fraction(1, 2)
MOST_REPEATS = 4000
GUIDE = Length(Fraction(170))
"""The printed guide is about so long; it is moved along the band."""
TAPE = Tape(finest=32)


def note_repeats(sheet: Worksheet, edge: Length, repeat: Length, tolerance: Fraction) -> None:
    """Whole repeats, and the repeat that comes out. Raises RefusalError beyond the tolerance."""
    number = max(1, int(edge / repeat + HALF))
    if number > MOST_REPEATS:
        raise RefusalError(
            f"repeat {TAPE.both(repeat)} gives {number} stitches, more than {MOST_REPEATS}; "
            f"use at least {TAPE.no_less(edge / MOST_REPEATS)}",
            "repeat",
        )
    adjusted = edge / number
    if abs(adjusted / repeat - 1) > tolerance:
        fewer, more = (
            repeat * max(1, int(edge / repeat)),
            repeat * (int(edge / repeat) + 1),
        )

        def fills(size: Length) -> bool:
            """Whether whole repeats fill the size as it is said, within the tolerance."""
            return abs(size / max(1, int(size / repeat + HALF)) / repeat - 1) <= tolerance

        sizes = (just(sheet.technique, "edge", size, fills) for size in (fewer, more))
        named = " or ".join(filter(None, sizes))
        raise RefusalError(
            f"edge {TAPE.both(edge)} holds no whole number of repeats within the tolerance; use "
            f"{ways(named and f'{named}, which need no change', 'another repeat')}",
            "edge",
        )
    repeats = sheet.note("repeats", "repeats along each gap", number,
                         "{edge} / {repeat} + 1 / 2, rounded down, at least 1")  # fmt: skip
    sheet.note("true_repeat", "repeat that comes out whole", adjusted, "{edge} / {repeats}",
               repeats=repeats)  # fmt: skip
    guide = max(1, min(number, int(GUIDE / adjusted)))
    sheet.note("guide_length", "length of the printed guide", adjusted * guide,
               f"{guide} × {{true_repeat}}")  # fmt: skip


def note_thread(sheet: Worksheet, gap: Length, bite: Length) -> None:
    """Note the thread of one repeat and of all gaps; speaks of `gap`, `bite` and `gaps`."""
    half, wide = sheet["true_repeat"].mm / 2, float(gap)
    across = sheet.note("crossing", "thread over the gap, once",
                        from_float(sqrt(wide * wide + half * half)),
                        "√({gap} × {gap} + {true_repeat} / 2 × {true_repeat} / 2)")  # fmt: skip
    each = sheet.note("repeat_thread", "thread for one repeat",
                      2 * across.length + 4 * bite, "2 × {crossing} + 4 × {bite}")  # fmt: skip
    sheet.note("thread", "thread for all gaps", each.length * sheet["repeats"].whole
               * sheet["gaps"].whole, "{repeats} × {gaps} × {repeat_thread}",
               saying=Saying.UP)  # fmt: skip
