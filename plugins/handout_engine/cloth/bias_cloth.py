"""Bias strips taken from cloth: their inputs, numbers, chart and the cloth to buy."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Sequence
from functools import cached_property
from typing import ClassVar

from handout_engine.amounts.angles import ROOT_OF_TWO
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import CLOTH, SEWING, length
from handout_engine.amounts.lengths import Length, total
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import LAYOUT, PRACTICE
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.bias import (
    Band,
    Enough,
    Pieces,
    cut_bands,
    diagonal,
    fewest_joined,
    fewest_whole,
    gives_whole,
    joins_into,
    smallest_cloth_by_length,
)
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.working.workings import Cell, Chart, Grain, Piece
from handout_engine.working.worksheet import Worksheet


class BiasClothInputs(ClothInputs):
    """The inputs of every technique whose strips lie on the bias; `cloth_name` says of which."""

    cloth_name: ClassVar[str] = "cloth"

    size_step = length(
        "size step",
        "The cloth for the strips is cut in steps of this.",
        "1/2 in",
        ("1/8 in", "6 in"),
        group=CLOTH,
        basis=PRACTICE,
    )

    @group
    def cloth_bought(self) -> ClothBought:
        """The one cloth that the strips are cut from."""
        return ClothBought(self, self.cloth_name)


class JoinInputs(BiasClothInputs):
    """The inputs of every technique whose bias strips are joined."""

    strip_allowance = length(
        "joining allowance",
        "Allowance of the seams that join strips.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )


class BiasInputs(JoinInputs):
    """The inputs of every technique whose strips are cut one by one on the bias."""

    least_strip = length(
        "least useful strip",
        "Shorter strips are left as scraps.",
        "12 in",
        ("1/2 in", "60 in"),
        group=CLOTH,
        basis=PRACTICE,
    )

    @value("length taken by each join")
    def join_takes(self) -> Length:
        """The allowance of both ends, measured along the strip, which it crosses at a slant."""
        return 2 * self.strip_allowance * ROOT_OF_TWO

    @check
    def a_join_leaves_some_of_the_strip(self) -> None:
        """Refuse useful strips that a join would use up."""
        if self.least_strip <= self.join_takes:
            raise RefusalError(
                f"least_strip {TAPE.say(self.least_strip)} would be used up by its join; use more "
                f"than {TAPE.no_less(self.join_takes)}",
                "least_strip",
            )


class StripsOnCloth(Group):
    """Bias strips of a width on their piece of cloth: all that lie on it, and those used."""

    heading: ClassVar[str] = "With its ends on the grain"
    """What the chart calls the length of a strip that counts."""

    def __init__(self, technique: BiasClothInputs, width: Length) -> None:
        """Take the technique that they belong to, and how wide they are cut."""
        super().__init__()
        self.technique, self.width = technique, width

    @property
    @abstractmethod
    def sides(self) -> tuple[Length, Length]:
        """How large the piece of cloth is, across and along; raises RefusalError."""

    @abstractmethod
    def chosen(self, cut: Sequence[Band]) -> Sequence[Band]:
        """Those of the strips that are used."""

    def measured(self, band: Band) -> Length:
        """The length of a strip that counts."""
        return band.usable

    def pieces(self, band: Band) -> int:
        """How many pieces a used strip gives."""
        del band
        return 1

    @cached_property
    def every(self) -> tuple[Band, ...]:
        """All strips on the cloth; raises RefusalError where they are too many."""
        across, along, width = (Length(each.mm) for each in (self.across, self.along, self.width))
        return cut_bands(across, along, width)

    @cached_property
    def used(self) -> tuple[Band, ...]:
        """The strips that are used."""
        with unheard():
            return tuple(self.chosen(self.every))

    @property
    def listed(self) -> Sequence[Band]:
        """The strips in the chart."""
        return self.used

    @value("cloth for the strips, across", basis=LAYOUT)
    def across(self) -> Length:
        """As little as gives the strips, once it is as short as it can be."""
        return self.sides[0]

    @value("cloth for the strips, along the selvage", basis=LAYOUT)
    def along(self) -> Length:
        """As little as gives the strips on cloth of this width."""
        return self.sides[1]

    @value("from line to line, along the edges of the cloth")
    def edge_step(self) -> Length:
        """A strip at 45 degrees takes its diagonal of the edge."""
        return self.width * ROOT_OF_TWO

    @value("whole strips from corner to corner")
    def bands(self) -> Count:
        """The lines run over both edges that meet in a corner."""
        return ((self.across + self.along) / self.edge_step).rounded_down()

    @value("strips used", basis=LAYOUT)
    def strips_used(self) -> Count:
        """The longest, as few as are enough."""
        return Count(len(self.used))

    def cut(self, sheet: Worksheet) -> None:
        """Put their piece of cloth on the worksheet, and a chart of them."""
        name = self.technique.cloth_name
        sheet.pieces.append(
            Piece(
                f"{name} for the strips", name, 1, sheet["across"], sheet["along"], Grain.STRAIGHT
            )
        )
        headings = ("Strip", "Use", self.heading, "Centre line", "Shape")
        used = {band.number for band in self.used}
        rows = tuple(self._row(band, band.number in used) for band in self.listed)
        sheet.charts.append(Chart("The strips, from the marked corner on", headings, rows))

    def _row(self, band: Band, used: bool) -> tuple[Cell, ...]:
        """A strip: its number, what becomes of it, its lengths and its shape."""
        use = _use(self.pieces(band)) if used else "spare"
        return str(band.number), use, self.measured(band), band.centre, band.shape

    def smallest(self, shortest: Length, enough: Enough) -> tuple[Length, Length]:
        """The sides of the smallest cloth that gives enough; raises RefusalError."""
        asked = self.technique
        usable, width, step = (
            Length(each.mm) for each in (asked.usable_width, self.width, asked.size_step)
        )
        _refuse_too_long(Length(shortest.mm), usable)
        return smallest_cloth_by_length(usable, width, step, enough)


class JoinedStrips(StripsOnCloth):
    """Bias strips that are joined end to end."""

    technique: BiasInputs

    @value("all strips used, on their centre lines", basis=LAYOUT)
    def strips_total(self) -> Length:
        """Before they are joined."""
        return total(band.usable for band in self.used)

    @value("strips joined end to end")
    def joined_length(self) -> Length:
        """There is one join less than strips."""
        return self.strips_total - (self.strips_used - 1) * self.technique.join_takes

    @value("tip that stands out at either end of a join")
    def tip(self) -> Length | None:
        """Ends at 45 degrees cross in their seam where the tips stand out twice the allowance."""
        return 2 * self.technique.strip_allowance if len(self.used) > 1 else None


class StripsForLength(JoinedStrips):
    """Bias strips that join into a wanted length, from as little cloth as will do."""

    def __init__(self, technique: BiasInputs, width: Length, wanted: Length) -> None:
        """Take besides how long the joined strip must be."""
        super().__init__(technique, width)
        self.wanted = Length(wanted.mm)
        self.least = Length(min(technique.least_strip.mm, wanted.mm))

    @cached_property
    def sides(self) -> tuple[Length, Length]:
        """The smallest that give enough."""
        return self.smallest(self.least, self._join_into_it)

    def _join_into_it(self, usable: Sequence[float]) -> bool:
        return joins_into(usable, self.least, self.wanted, self.technique.join_takes)

    def chosen(self, cut: Sequence[Band]) -> Sequence[Band]:
        """The fewest that are long enough together."""
        takes = Length(self.technique.join_takes.mm)
        return fewest_joined(useful(cut, self.least), self.wanted, takes)


class StripsForPieces(StripsOnCloth):
    """Bias strips cut again into whole pieces without a join, from as little cloth as will do."""

    heading = "With its ends cut square"

    def __init__(self, technique: BiasClothInputs, width: Length, wanted: Pieces) -> None:
        """Take besides the pieces that are wanted."""
        super().__init__(technique, width)
        self.wanted = wanted

    def measured(self, band: Band) -> Length:
        """What is left between square ends."""
        return self.wanted.squared(band)

    def pieces(self, band: Band) -> int:
        """How many whole ones it gives."""
        return self.wanted.of(band)

    @cached_property
    def sides(self) -> tuple[Length, Length]:
        """The smallest that give enough."""
        return self.smallest(self.wanted.least, self._give_them)

    def _give_them(self, usable: Sequence[float]) -> bool:
        return gives_whole(usable, self.wanted)

    def chosen(self, cut: Sequence[Band]) -> Sequence[Band]:
        """The fewest that give all pieces."""
        return fewest_whole(useful(cut, self.wanted.least), self.wanted)


def useful(cut: Sequence[Band], least: Length) -> list[Band]:
    """The bands that are long enough to be used."""
    return [band for band in cut if band.usable >= least]


def _refuse_too_long(shortest: Length, usable: Length) -> None:
    """No strip is longer than the diagonal across the cloth, however long that is."""
    longest = diagonal(usable)
    if shortest > longest:
        raise RefusalError(
            f"cloth {TAPE.say(usable)} wide between its selvages gives no strip of "
            f"{TAPE.both(shortest)} without a join; the longest is {TAPE.no_more(longest)}: use "
            "wider cloth, or shorter strips",
            "cloth_width",
        )


def _use(pieces: int) -> str:
    if pieces == 0:
        return "spare"
    return "used" if pieces == 1 else f"used, {pieces} pieces"
