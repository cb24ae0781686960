"""Hoop placements one way: across the cloth, or along it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.lengths import Length, most
from handout_engine.amounts.numbers import Count, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.ways_out import less_than, ways
from handout_engine.amounts.working_out import Group

if TYPE_CHECKING:
    from handout_engine.families.decoration.hoop_placements import HoopPlacements


class OneWay(Group):
    """The placements one way: how many, how far apart, and the cloth they need."""

    def __init__(self, hoop: HoopPlacements, way: str, design: Length, field: Length) -> None:
        """Take the design and the field of the hoop in that direction."""
        super().__init__(suffix=f"_{way}")
        self.hoop, self.design, self.field = hoop, design, field

    @value("field that is used, {}")
    def used(self) -> Length:
        """What the frame leaves of the field."""
        return self.field - 2 * self.hoop.frame

    @check
    def placements_gain_something(self) -> None:
        """Refuse an overlap that leaves nothing of the field."""
        hoop = self.hoop
        if self.used <= hoop.overlap:
            least = min(hoop.field_across, hoop.field_along) - 2 * hoop.frame
            smaller = less_than(hoop, "overlap", least, "an overlap of less than {}")
            raise RefusalError(
                f"overlap {TAPE.both(hoop.overlap)} and a frame {TAPE.both(hoop.frame)} inside "
                f"both edges leave nothing of a field of {TAPE.both(self.field)}; use "
                f"{ways(smaller, 'a smaller frame distance or a larger hoop')}",
                "overlap",
            )

    @value("placements {}")
    def placements(self) -> Count:
        """The fewest that cover the design."""
        self.placements_gain_something()
        gains = self.used - self.hoop.overlap
        return larger(((self.design - self.hoop.overlap) / gains).rounded_up(), whole(1))

    @value("from centre to centre, {}")
    def step(self) -> Length | None:
        """Spread evenly, so that the outermost end with the design; None for one alone."""
        if self.placements.number == 1:
            return None
        return (self.design - self.used) / (self.placements - 1)

    @value("overlap that comes out, {}")
    def true_overlap(self) -> Length | None:
        """What of two neighbours lies over one another."""
        return None if self.step is None else self.used - self.step

    @value("what the placements cover, {}")
    def reach(self) -> Length:
        """The cloth reaches as far as the outermost hoop, even where the design is smaller."""
        return most(self.design, self.used)

    @value("cloth, cut {}")
    def cut(self) -> Length:
        """With what the frame and the hoop need at both ends."""
        return self.reach + 2 * self.hoop.frame + 2 * self.hoop.border

    @value("stabiliser for one placement, {}")
    def backing(self) -> Length:
        """The field with what the hoop needs at both ends."""
        return self.field + 2 * self.hoop.border

    @property
    def before(self) -> Length:
        """From the raw edge to the first edge of the design."""
        return (self.cut - self.design) / 2

    @property
    def centres(self) -> list[Length]:
        """The centres, from the first edge of the design."""
        if self.step is None:
            return [self.design / 2]
        return [self.used / 2 + self.step * place for place in range(self.placements)]
