"""What all sleeves share: the measures of the arm, room for a trim, an end the hand passes."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import length
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.bodies.measures import measured
from handout_engine.drafting.block import BlockInputs

HAND_ROOM = millimetres(40)
"""What the end of a sleeve measures at least beyond the wrist, for the hand to pass."""


class ArmInputs(BlockInputs):
    """The measures of every garment with sleeves; each declares the ease at their ends."""

    arm_length = measured("arm_length")
    upper_arm = measured("upper_arm")
    wrist = measured("wrist")
    sleeve_trim = length(
        "trim at the sleeve end",
        "How far a band or ruffle will reach beyond the sleeve, which is cut so much shorter.",
        "0 cm",
        ("0 cm", "10 cm"),
    )

    sleeve_end_ease: Length

    @property
    def limb(self) -> Length:
        """What the end of the sleeve goes round."""
        return self.wrist

    @value("finished edge at the end of one sleeve")
    def sleeve_edge(self) -> Length:
        """So loose that the hand passes and the arm is not marked."""
        return self.limb + self.sleeve_end_ease

    @check
    def the_hand_passes_the_sleeve(self) -> None:
        """Refuse the end of a sleeve that a hand does not pass."""
        needed = self.wrist + HAND_ROOM
        if self.sleeve_edge < needed:
            raise RefusalError(
                f"the hand needs {TAPE.both(needed, Saying.UP)} and the end of the sleeve is only "
                f"{TAPE.both(self.sleeve_edge)}; give it at least that, or let it open",
                "sleeve_end_ease",
            )
