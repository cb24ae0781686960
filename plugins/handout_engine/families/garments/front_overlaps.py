"""Fronts that overlap and button on their centre line, each reaching beyond it as far."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import published
from handout_engine.drafting.block import BlockInputs
from handout_engine.shared.buttons import ButtonInputs

LEAST_BESIDE = millimetres(5)
"""What is left at least of each half of the neck beside the overlap."""


class FrontOverlap(ButtonInputs, BlockInputs):
    """A garment on the block that buttons in front."""

    @value("least extension for this button", basis=published("extension-576"))
    def least_extension(self) -> Length:
        """The button must not reach over the edge."""
        return self.button / 2 + self.clearance

    @value("front, from the centre line to its edge")
    def beyond_centre(self) -> Length:
        """As asked for, or as far as the button needs."""
        return self.least_extension if self.extension is None else self.extension

    @check
    def the_front_reaches_far_enough_for_the_button(self) -> None:
        """Refuse a front that reaches less far beyond its centre than the button needs."""
        if self.beyond_centre < self.least_extension:
            raise RefusalError(
                f"extension {TAPE.say(self.beyond_centre)} is too little for a button of "
                f"{TAPE.say(self.button)}, which would stand within {TAPE.say(self.clearance)} of "
                f"the edge; use at least {TAPE.no_less(self.least_extension)}, a smaller button or "
                "less clearance",
                "extension",
            )

    def refuse_fronts_as_wide_as_the_neck(self, what: str) -> None:
        """Refuse an overlap that leaves nothing of the neck beside it; `what` says it."""
        half = self.neck_half_width
        if self.beyond_centre > half - LEAST_BESIDE:
            raise RefusalError(
                f"{what} take the whole front of the neck, {TAPE.both(2 * half)}; use a smaller "
                "button, or less clearance or extension",
                "button",
            )
