"""Whole repeats of a stitch along a line: the repeat is stretched a little until it comes out."""

from __future__ import annotations

from abc import abstractmethod
from dataclasses import dataclass
from fractions import Fraction
from math import floor

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, fine_length, percentage
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count, Ratio, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import just, ways
from handout_engine.amounts.working_out import Group
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart

HALF = Fraction(1, 2)
MOST_REPEATS = 20_000
MOST_CHECKS = 8
"""A row is compared with its chart so often at most."""
CHARTED_SIZES = 5
"""Sizes that need no adjustment: the wanted one in the middle."""


class RepeatInputs(Technique):
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


@dataclass(frozen=True)
class Row:
    """A line to fill: the input it comes from, its words, and what the row leaves of it.

    `left_out` is the part of the input's length that no repeat covers: hems, corner units.
    """

    name: str
    words: str
    run: Length
    left_out: Length


class Repeats(Group):
    """Whole repeats along one line."""

    def __init__(self, technique: RepeatInputs, row: Row) -> None:
        """Take the technique whose repeat it is, and the line."""
        super().__init__(suffix=f"_{row.name}")
        self.technique, self.row = technique, row

    @property
    def words(self) -> str:
        """What the line is called."""
        return self.row.words

    @property
    @abstractmethod
    def number(self) -> Count:
        """How many repeats there are."""

    @property
    @abstractmethod
    def each(self) -> Length:
        """How long each is sewn."""

    @check
    def they_can_be_counted(self) -> None:
        """Refuse more repeats than anyone sews in a row."""
        if self.number > MOST_REPEATS:
            raise RefusalError(
                f"repeat {TAPE.say(self.technique.repeat)} makes more than {MOST_REPEATS} repeats; "
                "use a longer one",
                "repeat",
            )

    @abstractmethod
    def fills(self, size: Length) -> bool:
        """Whether whole repeats fill a size as it is said."""

    def sizes_that_do(self) -> str:
        """The sizes beside the wanted one, smaller and larger, that repeats fill unchanged."""
        below = floor(self.row.run / self.technique.repeat)
        sizes = (
            self.technique.repeat * number + self.row.left_out
            for number in (below, below + 1)
            if number
        )
        said = (just(self.technique, self.row.name, size, self.fills) for size in sizes)
        return " or ".join(filter(None, said))

    def sizes_chart(self, size: str, words: str = "") -> Chart:
        """The sizes round the wanted one that whole repeats fill as the machine sews them."""
        first = max(1, self.number.number - CHARTED_SIZES // 2)
        rows = tuple(
            (str(number), self.technique.repeat * number + self.row.left_out)
            for number in range(first, first + CHARTED_SIZES)
        )
        caption = f"Sizes that need no adjustment: {words or self.words}"
        return Chart(caption, ("Repeats", size), rows)

    def checks_chart(self, words: str = "") -> Chart:
        """Where the row must be after some of its repeats, to correct it on the way."""
        return _checks_chart(words or self.words, self.each, self.number.number)


class FittedRepeats(Repeats):
    """Whole repeats, each stretched or shortened a little until they fill the line."""

    @property
    def number(self) -> Count:
        """The nearest whole number."""
        return self.repeats

    @property
    def each(self) -> Length:
        """The adjusted repeat."""
        return self.repeat

    @value("repeats along the {}")
    def repeats(self) -> Count:
        """The whole number nearest to what the line holds, so that each changes least."""
        nearest = (self.row.run / self.technique.repeat + HALF).rounded_down()
        return larger(nearest, whole(1))

    @value("adjusted repeat along the {}", saying=Saying.FINE)
    def repeat(self) -> Length:
        """An equal share of the line."""
        return self.row.run / self.repeats

    @value("change of the repeat along the {}", saying=Saying.PERCENT, difference=True)
    def change(self) -> Ratio:
        """What is held against the tolerance."""
        return self.repeat / self.technique.repeat - 1

    @value("ten adjusted repeats along the {}")
    def ten(self) -> Length:
        """One alone is too short to be measured."""
        return 10 * self.repeat

    @check
    def each_changes_little(self) -> None:
        """Refuse repeats that would look different, naming the nearest sizes that need none."""
        tolerance = self.technique.tolerance
        if abs(self.change) <= tolerance:
            return
        named = self.sizes_that_do()
        percent = TAPE.say(abs(self.change), Saying.PERCENT)
        way = "longer" if self.change > 0 else "shorter"
        raise RefusalError(
            f"{self.row.name} {TAPE.say(self.row.run + self.row.left_out)}: each repeat would have "
            f"to be {percent} {way}, more than the tolerance of "
            f"{TAPE.say(tolerance, Saying.PERCENT)}; use "
            f"{ways(named and f'{named}, which needs no adjustment', 'another repeat')}",
            self.row.name,
        )

    def fills(self, size: Length) -> bool:
        """Whether it is filled by repeats within the tolerance."""
        repeats = (size - self.row.left_out) / self.technique.repeat
        nearest = max(1, floor(repeats + HALF))
        return abs(repeats / nearest - 1) <= self.technique.tolerance


def _checks_chart(words: str, each: Length, number: int) -> Chart:
    parts = min(MOST_CHECKS, number)
    counted = sorted({number * part // parts for part in range(1, parts + 1)})
    rows = tuple((str(repeats), each * repeats) for repeats in counted)
    return Chart(f"Where the row must be: {words}", ("After repeats", "From its start"), rows)
