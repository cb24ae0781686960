"""Strips cut across the cloth and joined end to end, in a row or in a ring.

Every join takes some of the length: a straight seam twice its allowance, a diagonal one (ends
crossed at a right angle, seam from corner to corner) the whole width of the strip.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.numbers import Count, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.working_out import Group

MOST_STRIPS = 400


@dataclass(frozen=True)
class StripPlan:
    """Equal strips that join into a wanted length: how many, and how long each is cut."""

    count: int
    each: Length


def plan_strips(wanted: Length, usable: Length, take_up: Length, ring: bool) -> StripPlan:
    """The fewest equal strips of at most `usable` that join into `wanted`.

    `take_up` is what one join uses of the total length. A row of n strips has n - 1 joins, a ring
    has n. Raises RefusalError when a join takes the whole strip or the strips are too many.
    """
    if take_up >= usable:
        raise RefusalError(
            "a join would take the whole usable width of the cloth; use wider cloth or a "
            "narrower join"
        )
    closing = ZERO if ring else take_up
    count = max(1, ceil((wanted - closing) / (usable - take_up)))
    if count > MOST_STRIPS:
        raise RefusalError(
            f"{count} strips would be needed, more than {MOST_STRIPS}; use a shorter edge or "
            "wider cloth"
        )
    joins = count if ring else count - 1
    return StripPlan(count, (wanted + take_up * joins) / count)


@dataclass(frozen=True)
class Joined:
    """How strips are joined: by which allowance, in a ring or a row, straight or diagonally."""

    allowance: Length
    ring: bool = False
    diagonal: bool = False


class Strips(Group):
    """The fewest equal strips of a width, cut across the cloth, that join into a wanted length."""

    def __init__(
        self, wanted: Length, width: Length, usable: Length, joined: Joined, prefix: str = ""
    ) -> None:
        """Take what is wanted, what a strip is cut wide, and the usable width of the cloth."""
        super().__init__(prefix)
        self.wanted, self.width, self.usable, self.joined = wanted, width, usable, joined

    @value("length taken by each join")
    def join_takes(self) -> Length:
        """A diagonal seam takes the width of the strip, a straight one its allowance twice."""
        return self.width if self.joined.diagonal else 2 * self.joined.allowance

    @check
    def a_join_leaves_some_of_the_strip(self) -> None:
        """Refuse a join that would take the whole strip."""
        if self.join_takes >= self.usable:
            raise RefusalError(
                "a join would take the whole usable width of the cloth; use wider cloth or a "
                "narrower join"
            )

    @value("strips for one")
    def strips(self) -> Count:
        """A row of strips has one join less than strips, a ring as many."""
        self.a_join_leaves_some_of_the_strip()
        each = self.usable - self.join_takes
        if self.joined.ring:
            return (self.wanted / each).rounded_up()
        return larger(((self.wanted - self.join_takes) / each).rounded_up(), whole(1))

    @check
    def the_strips_can_be_counted(self) -> None:
        """Refuse more strips than anyone joins."""
        if self.strips > MOST_STRIPS:
            raise RefusalError(
                f"{self.strips} strips would be needed, more than {MOST_STRIPS}; use a shorter "
                "edge or wider cloth"
            )

    @value("strip, cut length", saying=Saying.UP)
    def strip_length(self) -> Length:
        """An equal share of the wanted length and of what all joins take."""
        if self.joined.ring:
            return self.wanted / self.strips + self.join_takes
        return (self.wanted + self.join_takes * (self.strips - 1)) / self.strips
