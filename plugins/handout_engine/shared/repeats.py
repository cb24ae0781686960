"""Whole repeats of a stitch along a line: the repeat is stretched a little until it comes out."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import floor

from handout_engine.amounts.inputs import SEWING, fine_length, percentage
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import just, ways
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
HALF = Fraction(1, 2)
MOST_REPEATS = 20_000


class RepeatInputs:
    """The inputs of a technique that fits whole repeats of a stitch into a line."""

    repeat = fine_length(
        "repeat",
        "One repeat of the stitch as your machine sews it: sew ten, measure, divide by ten.",
        "1/4 in",
        ("1 mm", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    tolerance = percentage(
        "tolerance",
        "How much one repeat may be stretched or shortened before it looks different.",
        "5 %",
        30,
        group=SEWING,
        basis=PRACTICE,
    )


def nearest_number(run: Length, repeat: Length) -> int:
    """The whole number nearest to the repeats that the line holds; at least one."""
    return max(1, floor(run / repeat + HALF))


def nearest_runs(run: Length, repeat: Length) -> tuple[Length, ...]:
    """The lengths beside `run`, shorter and longer, that whole repeats fill unchanged."""
    below = floor(run / repeat)
    return tuple(repeat * number for number in (below, below + 1) if number)


@dataclass(frozen=True)
class Line:
    """A line to fill: the input it comes from, its words, and what the row leaves of it.

    `left_out` is the part of the input's length that no repeat covers: hems, corner units.
    """

    name: str
    words: str
    run: Value
    left_out: Length


def note_repeats(sheet: Worksheet, line: Line) -> Value:
    """Note how many repeats fill a line, and how long each is then; returns that.

    Raises RefusalError, naming the nearest sizes that need no adjustment, when each would change
    by more than the tolerance.
    """
    repeat, run = sheet["repeat"].length, line.run
    number = sheet.note(f"repeats_{line.name}", f"repeats along the {line.words}",
                        nearest_number(run.length, repeat),
                        "{run} / {repeat} + 1 / 2, rounded down, at least 1", run=run)  # fmt: skip
    if number.whole > MOST_REPEATS:
        raise RefusalError(
            f"repeat {TAPE.say(repeat)} makes more than {MOST_REPEATS} repeats; use a longer one",
            "repeat",
        )
    adjusted = sheet.note(f"repeat_{line.name}", f"adjusted repeat along the {line.words}",
                          run.length / number.whole, "{run} / {number}", saying=Saying.FINE,
                          run=run, number=number)  # fmt: skip
    change = sheet.note_difference(
        f"change_{line.name}",
        f"change of the repeat along the {line.words}",
        adjusted.length / repeat - 1,
        "{adjusted} / {repeat} - 1",
        saying=Saying.PERCENT,
        adjusted=adjusted,
    )
    tolerance = sheet["tolerance"].amount
    assert isinstance(change.amount, Fraction)
    assert isinstance(tolerance, Fraction)
    if abs(change.amount) > tolerance:
        _refuse(sheet, line, change.amount, tolerance)
    sheet.note(f"ten_{line.name}", f"ten adjusted repeats along the {line.words}",
               adjusted.length * 10, "10 × {adjusted}", adjusted=adjusted)  # fmt: skip
    return adjusted


def _refuse(sheet: Worksheet, line: Line, change: Fraction, tolerance: Fraction) -> None:
    repeat = sheet["repeat"].length

    def fills(size: Length) -> bool:
        """Whether the size as it is said is filled by repeats within the tolerance."""
        run = size - line.left_out
        return abs(run / repeat / nearest_number(run, repeat) - 1) <= tolerance

    sizes = [run + line.left_out for run in nearest_runs(line.run.length, repeat)]
    named = " or ".join(
        filter(None, (just(sheet.technique, line.name, size, fills) for size in sizes))
    )
    percent = TAPE.say(abs(change), Saying.PERCENT)
    way = "longer" if change > 0 else "shorter"
    raise RefusalError(
        f"{line.name} {TAPE.say(line.run.length + line.left_out)}: each repeat would have to be "
        f"{percent} {way}, more than the tolerance of {TAPE.say(tolerance, Saying.PERCENT)}; use "
        f"{ways(named and f'{named}, which needs no adjustment', 'another repeat')}",
        line.name,
    )


def sizes_chart(sheet: Worksheet, line: Line, size: str) -> Chart:
    """The sizes round the wanted one that whole repeats fill as the machine sews them."""
    repeat = sheet["repeat"].length
    middle = sheet[f"repeats_{line.name}"].whole
    numbers = range(max(1, middle - 2), max(1, middle - 2) + 5)
    rows = tuple((str(number), repeat * number + line.left_out) for number in numbers)
    return Chart(f"Sizes that need no adjustment: {line.words}", ("Repeats", size), rows)


def checks_chart(line: Line, adjusted: Value, number: int, start: Length) -> Chart:
    """Where the row must be after some of its repeats, so that it can be corrected on the way."""
    parts = min(8, number)
    counted = sorted({number * part // parts for part in range(1, parts + 1)})
    rows = tuple((str(each), start + adjusted.length * each) for each in counted)
    return Chart(f"Where the row must be: {line.words}", ("After repeats", "From its start"), rows)
