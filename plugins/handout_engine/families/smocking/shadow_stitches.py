"""Shadow work: threads that cross behind sheer cloth from one line of back stitch to another.

Holes lie opposite each other on two lines, one repeat apart. On the wrong side the thread goes in
at the next hole and out at the one behind it, now on the one line, now on the other: it crosses
one repeat further on, and comes back two repeats further on.
"""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import SEWING, choice, count, fine_length, length, percentage
from handout_engine.amounts.lengths import ZERO, Length, from_float
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.shared.repeats import FittedRepeats, RepeatInputs
from handout_engine.shared.repeats import Row as Line

EDGE, RING = "along an edge", "round a ring"
GUIDE = Length(Fraction(150))
"""The printed guide is about so long; it is moved along the edge."""
LEAST = 2
"""Threads cross one another from the second stitch of a line on."""


class ShadowStitches(RepeatInputs):
    """The stitches of a band: how many, how they cross, and the thread that they take."""

    form = choice(
        "row", "From one end of an edge to the other, or round until it meets itself.", EDGE, RING
    )
    edge = length(
        "length of the edge", "Measured where the band is to run.", "12 in", ("1 in", "200 in")
    )
    margin = length(
        "margin",
        "Kept free at each end or corner of an edge; a ring has none.",
        "1/2 in",
        ("0 in", "4 in"),
    )
    from_edge = length(
        "distance from the edge",
        "From the finished edge to the nearer line.",
        "1/2 in",
        ("1/8 in", "12 in"),
    )
    gap = length(
        "channel",
        "From one drawn line to the other: the width of the band.",
        "3/16 in",
        ("1/16 in", "3/4 in"),
        basis=PRACTICE,
    )
    rows = count("how many rows", "Bands one behind the other, all alike.", 1, 9)
    between = length(
        "between rows",
        "From the far line of a row to the near line of the next.",
        "3/8 in",
        ("1/16 in", "12 in"),
    )
    repeat = fine_length(
        "stitch",
        "Length of one back stitch on either line: one repeat.",
        "2 mm",
        ("1 mm", "6 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    longest_crossing = fine_length(
        "longest crossing",
        "A thread longer than this, loose behind the cloth, catches. "
        "Allow more where the work is lined.",
        "10 mm",
        ("3 mm", "25 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    take_up = percentage(
        "take-up",
        "Thread used beyond its straight way: through the cloth and to and fro in "
        "the needle's eye. Your sample says better.",
        "10 %",
        30,
        group=SEWING,
        basis=PRACTICE,
    )
    needleful = length(
        "needleful",
        "Length of thread that you work with.",
        "18 in",
        ("10 in", "40 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    fastening = length(
        "fastening",
        "Of each needleful, for both its ends.",
        "4 in",
        ("1 in", "5 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def ring(self) -> bool:
        """Whether the row meets itself."""
        return self.form == RING

    @property
    def ends(self) -> Length:
        """What the two margins take of the edge."""
        return ZERO if self.ring else 2 * self.margin

    def label_of(self, label: str) -> str:
        """A label as it is for a ring or an edge."""
        return label.format(where="once round" if self.ring else "between the margins")

    @check
    def the_margins_leave_something(self) -> None:
        """Refuse margins that take the whole edge."""
        if self.ends >= self.edge:
            raise RefusalError(
                f"two margins of {TAPE.say(self.margin)} leave nothing of an edge "
                f"{TAPE.say(self.edge)} long; use margins of less than "
                f"{TAPE.no_more(self.edge / 2)}",
                "margin",
            )

    @value("length to fill {where}")
    def row_edge(self) -> Length:
        """What the margins leave."""
        self.the_margins_leave_something()
        return self.edge - self.ends

    @group
    def stitches(self) -> FittedRepeats:
        """Whole stitches on either line."""
        return FittedRepeats(self, Line("edge", "edge", self.row_edge, self.ends))

    @check
    def threads_cross(self) -> None:
        """Refuse a row too short for threads to cross."""
        self.stitches.look()
        if self.stitches.number < LEAST:
            raise RefusalError(
                f"edge {TAPE.both(self.edge)} holds no more than one stitch on each line; at least "
                f"{LEAST} are needed for threads to cross: use shorter stitches, smaller margins "
                "or a longer edge",
                "edge",
            )

    @value("holes on each line")
    def holes(self) -> Count:
        """A ring has as many as stitches, an open row one more."""
        return self.stitches.number if self.ring else self.stitches.number + 1

    @value("length of the printed guide")
    def guide_length(self) -> Length:
        """As many whole stitches as go on the paper."""
        step = self.stitches.each
        with unheard():
            shown = max(1, min(self.stitches.number.number, int(GUIDE / step)))
        return shown * step

    @value("crossing to the far line", saying=Saying.FINE)
    def crossing_over(self) -> Length:
        """One stitch further on, on the other line."""
        step = self.stitches.each
        return (self.gap * self.gap + step * step).root()

    @value("crossing back to the near line", saying=Saying.FINE)
    def crossing_back(self) -> Length:
        """Two stitches further on."""
        step = self.stitches.each
        return (self.gap * self.gap + 4 * step * step).root()

    @check
    def no_crossing_catches(self) -> None:
        """Refuse threads so long that they catch; say which channel would do, if any does."""
        longest, crossing = self.longest_crossing, self.crossing_back
        if crossing <= longest:
            return
        squared = float(longest) ** 2 - 4 * float(self.stitches.each) ** 2
        widest = from_float(sqrt(max(0.0, squared)))
        narrower = at_most(self, "gap", widest, "a gap of at most {}")
        way = ways(narrower, "shorter stitches" if narrower else "much shorter stitches")
        raise RefusalError(
            f"gap {TAPE.both(self.gap)} makes threads {TAPE.say(crossing, Saying.FINE)} long "
            f"behind the cloth, and more than {TAPE.say(longest, Saying.FINE)} catches; use {way}, "
            "or several narrow rows",
            "gap",
        )

    @value("thread on the right side, each row")
    def thread_front(self) -> Length:
        """Two lines of stitches, end to end."""
        return 2 * self.stitches.number * self.stitches.each

    @value("thread behind the cloth, each row")
    def thread_behind(self) -> Length:
        """An open row ends on the far line, so it crosses back once less."""
        over, back = self.crossing_over, self.crossing_back
        number = self.stitches.number
        if self.ring:
            return number * over + number * back
        return number * over + (number - 1) * back

    @value("thread of each row, laid straight")
    def thread_laid(self) -> Length:
        """Both sides."""
        return self.thread_front + self.thread_behind

    @value("thread worked up in each row", saying=Saying.UP)
    def thread_used(self) -> Length:
        """With what is taken up on the way."""
        return self.thread_laid * (1 + self.take_up)

    @value("of each needleful, worked up")
    def useful(self) -> Length:
        """Both ends are fastened."""
        return self.needleful - self.fastening

    @value("needlefuls of each row")
    def needlefuls(self) -> Count:
        """Whole ones: thread carried from one row to the next would show."""
        return (self.thread_used / self.useful).rounded_up()

    @value("thread to have ready", saying=Saying.UP)
    def thread(self) -> Length:
        """Whole needlefuls for every row."""
        return self.rows * self.needlefuls * self.needleful

    @value("from the finished edge to the last line")
    def reach(self) -> Length | None:
        """Of several rows."""
        if self.rows.number == 1:
            return None
        return self.from_edge + self.rows * self.gap + (self.rows - 1) * self.between

    @value("tail at the start")
    def tail(self) -> Length:
        """Half of what both ends of a needleful take."""
        return self.fastening / 2
