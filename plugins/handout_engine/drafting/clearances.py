"""Whether the head passes the neck of a garment with its opening."""

from __future__ import annotations

from collections.abc import Mapping
from math import ceil

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.bodies.measures import measured
from handout_engine.drafting.block import BlockInputs

STEP = millimetres(5)
"""Openings are made in whole steps of this."""


class HeadOpening(BlockInputs):
    """The inputs of a garment that goes over the head, with an opening at its neck."""

    head = measured("head")
    opening = length_by_choice(
        "opening",
        "From the neck edge down, for the head to pass.",
        "as long as the head needs, up to the next 5 mm",
        ("0 cm", "40 cm"),
        basis=PRACTICE,
    )
    head_room = length(
        "room for the head",
        "What neck and opening together measure beyond the head.",
        "2 cm",
        ("1 cm", "10 cm"),
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, and the shortest opening through which the head passes."""
        return {**super().usual, "opening": self.least_opening}

    @property
    def least_opening(self) -> Length:
        """The shortest opening through which the head passes, up to the next whole step."""
        usual = super().usual
        around = self.own("head", usual) + self.head_room
        neck = self.own("neck", usual) + self.neck_ease
        return up_to_step(max((around - neck) / 2, ZERO))

    def own(self, name: str, usual: Mapping[str, Amount]) -> Length:
        """The baby's own measure, or the table's among those usual ones."""
        measure = getattr(self, name) or usual[name]
        assert isinstance(measure, Length)
        return measure

    @value("neck edge with both sides of the opening")
    def opened_neck(self) -> Length:
        """What the head passes."""
        return self.neck_edge + 2 * self.opening

    @value("what the head needs to pass")
    def head_needs(self) -> Length:
        """Her ears and a hand beside the head."""
        return self.head + self.head_room

    @check
    def the_head_passes(self) -> None:
        """Refuse an opening that is too short for the head."""
        if self.opened_neck < self.head_needs:
            least = (self.head_needs - self.neck_edge) / 2
            raise RefusalError(
                f"the head, {TAPE.both(self.head)}, with {TAPE.both(self.head_room)} of room does "
                f"not pass a neck that opens to {TAPE.both(self.opened_neck)}; give opening at "
                f"least {TAPE.both(least, Saying.UP)}, or neck_ease more",
                "opening",
            )


def up_to_step(least: Length) -> Length:
    """The next length that an opening is made."""
    return STEP * ceil(least / STEP)
