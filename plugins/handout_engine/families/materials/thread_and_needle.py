"""A thread in the trade's counts, how thick it is, and the needle that takes it."""

from __future__ import annotations

from fractions import Fraction
from math import pi

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, percentage, ratio
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, decimal
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.thread_counts import DENIER, NE_ONE, NM_ONE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.amounts.working_out import Group
from handout_engine.families.materials.materials import NEEDLE_SIZES
from handout_engine.working.technique import Technique

COUNTS, NEEDLES = published("iso-1144"), published("needle-systems")


class ThreadInputs(Technique):
    """What is assumed of a thread that passes a needle."""

    thread_density = ratio(
        "density of the thread",
        "Grams in a cubic centimetre, with the air between fibres; used for how thick it is.",
        "0.9",
        ("0.4", "1.6"),
        group=SEWING,
        basis=PRACTICE,
    )
    greatest_share = percentage(
        "thread to needle",
        "How thick a thread may be, as a share of the blade, to pass its eye freely.",
        "40 %",
        60,
        group=SEWING,
        basis=PRACTICE,
    )


class ThreadInNeedle(Group):
    """A thread, and the needle that it is sewn with."""

    def __init__(self, technique: ThreadInputs, thread: Ratio, usual: Count) -> None:
        """Take the thread in tex, and the number of the needle that the cloth usually wants."""
        super().__init__()
        self.technique, self.thread, self.usual = technique, thread, usual

    @value("tex of English cotton number 1", basis=COUNTS)
    def ne_one(self) -> Ratio:
        """A pound for each 840 yards."""
        return Ratio(NE_ONE)

    @value("tex of metric number 1", basis=COUNTS)
    def nm_one(self) -> Ratio:
        """A gram for each metre."""
        return Ratio(NM_ONE)

    @value("denier of one tex", basis=COUNTS)
    def denier_one(self) -> Count:
        """Denier weighs nine kilometres, tex one."""
        return Count(DENIER)

    @value("thread in English cotton number, Ne", basis=COUNTS)
    def thread_ne(self) -> Ratio:
        """As spools of cotton say it."""
        return self.ne_one / self.thread

    @value("thread in metric number, Nm", basis=COUNTS)
    def thread_nm(self) -> Ratio:
        """As spools of linen and wool say it."""
        return self.nm_one / self.thread

    @value("thread in denier", basis=COUNTS)
    def thread_denier(self) -> Ratio:
        """As spools of silk say it."""
        return self.denier_one * self.thread

    @value("one step of needle numbers", basis=NEEDLES, saying=Saying.FINE)
    def needle_unit(self) -> Length:
        """Needles are numbered by the hundredth of a millimetre."""
        return millimetres("1/100")

    @value("thickness of the thread", saying=Saying.FINE)
    def thread_diameter(self) -> Length:
        """Of a round thread of that weight; 100 steps are a millimetre."""
        density = 1000 * PI * self.technique.thread_density
        return 100 * self.needle_unit * (4 * self.thread / density).root()

    @check
    def some_thread_passes(self) -> None:
        """Refuse a share of nothing."""
        if not self.technique.greatest_share:
            raise RefusalError("greatest_share 0 % lets no thread pass; use 40 %", "greatest_share")

    @value("needle that the thread needs, at least")
    def least_needle(self) -> Count:
        """So thick that the thread fills no more of its eye than it may."""
        self.some_thread_passes()
        share = self.technique.greatest_share * self.needle_unit
        return (self.thread_diameter / share).rounded_up()

    @property
    def sold(self) -> list[int]:
        """The needles that suit thread and cloth, the finest first."""
        wanted = max(self.least_needle.number, self.usual.number)
        return [number for number in NEEDLE_SIZES if number >= wanted]

    @check
    def a_needle_takes_the_thread(self) -> None:
        """Refuse a thread that is too thick for every needle sold."""
        if self.sold:
            return
        largest, asked = max(NEEDLE_SIZES), self.technique
        passing = float(asked.greatest_share * largest / 100)
        fuller = "more of greatest_share, so that it fills more of the needle"
        most = Fraction(int(250 * pi * float(asked.thread_density) * passing**2 * 10), 10)
        raise RefusalError(
            f"a thread {decimal(self.thread_diameter.mm)} mm thick passes no needle up to number "
            f"{largest}; use "
            f"{ways(at_most(asked, 'thread_at_hand', most, 'a thread of at most {}'), fuller)}",
            "thread_at_hand",
        )

    @value("needle number", basis=PRACTICE)
    def needle(self) -> Count:
        """The finest that suits the cloth and takes the thread."""
        self.a_needle_takes_the_thread()
        return Count(self.sold[0])

    @value("its old number", basis=NEEDLES)
    def old_needle(self) -> Count:
        """It stands beside the metric one."""
        return Count(NEEDLE_SIZES[self.needle.number])

    @value("diameter of its blade", saying=Saying.FINE)
    def blade(self) -> Length:
        """That is what the number says."""
        return self.needle * self.needle_unit
