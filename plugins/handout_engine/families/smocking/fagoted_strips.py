"""The folded strips of a fagoted band: as they show, and as they are cut."""

from __future__ import annotations

from typing import TYPE_CHECKING

from handout_engine.amounts.declaring import value
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.working_out import Group
from handout_engine.working.workings import Mark

if TYPE_CHECKING:
    from handout_engine.families.smocking.fagoted_band import FagotedBand


class FinishedStrip(Group):
    """A strip as it shows in the band."""

    def __init__(self, width: Length, place: int) -> None:
        """Take its width and its place from the top."""
        super().__init__(suffix=f"_{place}")
        self.width = width

    @value("strip {}, finished width", basis=GIVEN)
    def strip(self) -> Length:
        """As it was asked for."""
        return self.width


class CutStrip(Group):
    """Strips that are cut alike."""

    def __init__(self, band: FagotedBand, alike: list[Length], outer: bool, number: int) -> None:
        """Take the finished widths, all equal, and whether one edge is an edge of the band."""
        super().__init__(prefix=f"strip{number}_")
        self.band, self.finished, self.outer = band, alike[0], outer
        self.many, self.number = len(alike), number

    @property
    def name(self) -> str:
        """What the cut list calls them."""
        return f"{'outer' if self.outer else 'inner'} strip {self.number}"

    @property
    def words(self) -> str:
        """What labels call them."""
        return self.name

    @value("{}, cut width")
    def cut(self) -> Length:
        """With what is turned under, or left at an edge of the band."""
        if self.outer:
            return self.finished + self.band.turn + self.band.outer
        return self.finished + 2 * self.band.turn

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The folds, from one raw edge."""
        last = self.cut - self.band.turn
        if self.outer:
            return (Mark("fold", last),)
        return Mark("first fold", self.band.turn), Mark("second fold", last)
