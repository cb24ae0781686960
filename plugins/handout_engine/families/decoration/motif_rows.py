"""Whole motifs with equal gaps: along a straight side, between two corners, or round a ring."""

from __future__ import annotations

from abc import abstractmethod
from fractions import Fraction

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.numbers import Count, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.ways_out import at_least, more_than, ways
from handout_engine.amounts.working_out import Group
from handout_engine.families.decoration.motifs import EITHER, GAP, MOST_MOTIFS, MOTIF, Motifs
from handout_engine.shared.marking import from_centre
from handout_engine.working.workings import Cell, Chart


class Row(Group):
    """Motifs in a row on one side: how many, the gap, and the centre of each."""

    def __init__(self, asked: Motifs, side: Length, prefix: str = "") -> None:
        """Take the named length of the side."""
        super().__init__(prefix)
        self.asked, self.side = asked, side

    @property
    def words(self) -> str:
        """The side, where there are two."""
        return f"{self.prefix.removesuffix('_')} side, " if self.prefix else ""

    @property
    def side_name(self) -> str:
        """The input that holds the length of the side."""
        assert self.side.made is not None and self.side.made.only is not None
        return self.side.made.only.name

    @property
    @abstractmethod
    def most(self) -> Count:
        """How many fit."""

    @value("motifs that fit")
    def fitting(self) -> Count:
        """Each with its gap."""
        return self.most

    @check
    def they_can_be_counted(self) -> None:
        """Refuse more motifs than anyone works."""
        if self.most > MOST_MOTIFS:
            raise RefusalError(
                f"{self.most} motifs would fit, more than {MOST_MOTIFS}; use larger motifs or "
                "gaps, or give the edge in parts",
                "least_gap",
            )


class StraightRow(Row):
    """A straight side: on an open edge one gap less than motifs, between corners one more."""

    @property
    def corners(self) -> bool:
        """Whether a corner motif stands at both ends, with a gap beside it."""
        return bool(self.prefix)

    @property
    def clear(self) -> Length:
        """What is left free at each end."""
        return self.asked.corner if self.corners else self.asked.margin

    @value("to divide")
    def between(self) -> Length:
        """What both ends leave."""
        return self.side - 2 * self.clear

    @property
    def most(self) -> Count:
        """As many as fit with their gaps."""
        gap = self.asked.least_gap
        room = self.between - gap if self.corners else self.between + gap
        return larger((room / (self.asked.motif + gap)).rounded_down(), whole(0))

    @check
    def there_is_room(self) -> None:
        """Refuse a side whose ends leave too little for what is wanted at its centre."""
        asked, long, name = self.asked, self.side, self.side_name
        if self.between <= ZERO or (self.corners and self.between < asked.least_gap):
            shortest = 2 * self.clear + (asked.least_gap if self.corners else asked.motif)
            raise RefusalError(
                f"{name} {TAPE.both(long)} leaves no room between its ends; use "
                f"{ways(more_than(asked, name, shortest), 'smaller ends')}",
                name,
            )
        wanted = {MOTIF: 1, GAP: 0 if self.corners else 2, EITHER: 0 if self.corners else 1}
        fewest = wanted[asked.centre]
        if self.most < fewest:
            gaps = fewest - 1 + (2 if self.corners else 0)
            shortest = 2 * self.clear + fewest * asked.motif + gaps * asked.least_gap
            raise RefusalError(
                f"{name} {TAPE.both(long)} holds too few motifs {TAPE.both(asked.motif)} wide for "
                f"{asked.centre} at its centre; use "
                f"{ways(at_least(asked, name, shortest), 'a smaller gap or a smaller motif')}",
                name,
            )

    @property
    def _fits_badly(self) -> int:
        """The remainder by two of a number that puts the other thing at the centre."""
        return {MOTIF: 0, GAP: 1, EITHER: -1}[self.asked.centre]

    @property
    def _best(self) -> Count:
        return self.fitting - 1 if self.fitting.number % 2 == self._fits_badly else self.fitting

    @check
    def so_many_fit(self) -> None:
        """Refuse a number that does not fit, or puts something else at the centre."""
        given = self.asked.motifs
        if given is not None and (given > self.fitting or given.number % 2 == self._fits_badly):
            raise RefusalError(
                f"motifs {given} cannot be laid with {self.asked.centre} at the centre and gaps of "
                f"at least {TAPE.no_less(self.asked.least_gap)}; use {self._best}, or a smaller "
                "gap",
                "motifs",
            )

    @value("motifs")
    def number(self) -> Count:
        """As asked for, or what fits, one less where the centre asks for it."""
        self.there_is_room()
        return self._best if self.asked.motifs is None else self.asked.motifs

    @value("gap")
    def gap(self) -> Length | None:
        """What the motifs leave, in equal parts; None beside one alone."""
        left = self.between - self.number * self.asked.motif
        if self.corners:
            return left / (self.number + 1)
        return None if self.number.number == 1 else left / (self.number - 1)

    @property
    def centres(self) -> tuple[Length, ...]:
        """From the first end to each."""
        if self.gap is None:
            return (self.side / 2,)
        first = self.clear + self.asked.motif / 2
        step = self.asked.motif + self.gap
        start = first + self.gap if self.corners else first
        return tuple(start + step * place if place else start for place in range(self.number))


class Ring(Row):
    """A ring has as many gaps as motifs."""

    @property
    def most(self) -> Count:
        """As many as fit with their gaps."""
        return (self.side / (self.asked.motif + self.asked.least_gap)).rounded_down()

    @check
    def one_fits(self) -> None:
        """Refuse a ring that is too short for one."""
        if self.most < 1:
            least = self.asked.motif + self.asked.least_gap
            raise RefusalError(
                f"{self.side_name} {TAPE.both(self.side)} does not hold one motif and its gap; use "
                f"at least {TAPE.no_less(least)}",
                self.side_name,
            )

    @check
    def so_many_fit(self) -> None:
        """Refuse a number that does not fit."""
        given = self.asked.motifs
        if given is not None and given > self.most:
            raise RefusalError(
                f"motifs {given} leave gaps under {TAPE.both(self.asked.least_gap)}; use at most "
                f"{self.most}, or a smaller gap",
                "motifs",
            )

    @value("motifs")
    def number(self) -> Count:
        """As asked for, or what fits."""
        self.one_fits()
        return self.fitting if self.asked.motifs is None else self.asked.motifs

    @value("from motif to motif")
    def step(self) -> Length:
        """An equal share of the way round."""
        return self.side / self.number

    @value("gap")
    def gap(self) -> Length:
        """What a motif leaves of that."""
        return self.step - self.asked.motif

    @property
    def centres(self) -> tuple[Length, ...]:
        """Going round from the centre front."""
        first = self.step / 2 if self.asked.centre == GAP else ZERO
        return tuple(first + self.step * place for place in range(self.number))


def row_chart(row: StraightRow, words: str, from_where: str, allowance: Length = ZERO) -> Chart:
    """Every motif's centre from one end, and from the centre of the side.

    `allowance` is the cloth beyond the side's ends from which is measured.
    """
    half = row.side / 2
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (f"motif {place}", centre + allowance, from_centre(centre - half))
        for place, centre in enumerate(row.centres, 1)
    )
    return Chart(f"Centres of the motifs{words}", ("Motif", from_where, "From the centre"), rows)


def ring_chart(row: Ring) -> Chart:
    """Every motif's centre on the way round from the centre front, and the shorter way to it."""
    rows: list[tuple[Cell, ...]] = []
    for place, centre in enumerate(row.centres, 1):
        other = min(centre, row.side - centre)
        if other == row.side * Fraction(1, 2):
            side = "on either way"
        else:
            side = "to the right" if centre < row.side / 2 else "to the left"
        rows.append((f"motif {place}", centre, other, side if centre else "at the centre front"))
    headings = ("Motif", "Going round from the centre front", "The shorter way", "Where")
    return Chart("Centres of the motifs", headings, tuple(rows))
