"""Whether the head passes the neck of a garment with its opening."""

from __future__ import annotations

from math import ceil

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.drafting.block import BlockInputs

STEP = millimetres(5)


def head_room() -> Length:
    """Declare what the neck with its opening must measure beyond the head."""
    words = "What neck and opening together measure beyond the head."
    return length("room for the head", words, "2 cm", ("1 cm", "10 cm"), basis=PRACTICE)


def opening() -> Length:
    """Declare the length of the opening at the neck, in yoke and placket together."""
    words = "From the neck edge down, for the head to pass."
    otherwise = "as long as the head needs, up to the next 5 mm"
    return length_by_choice("opening", words, otherwise, ("0 cm", "40 cm"), basis=PRACTICE)


def least_opening(neck_edge: Length, head: Length, room: Length) -> Length:
    """The shortest opening through which the head passes, up to the next 5 mm."""
    needed = max((head + room - neck_edge) / 2, ZERO)
    return STEP * ceil(needed / STEP)


class HeadOpening(BlockInputs):
    """A garment that goes over the head, with an opening at its neck; it declares these inputs."""

    head: Length
    opening: Length
    head_room: Length

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
