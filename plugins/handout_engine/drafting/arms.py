"""What all sleeves share: the measures of the arm, room for a trim, an end the hand passes."""

from __future__ import annotations

from handout_engine.amounts.inputs import length
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.values import Value
from handout_engine.bodies.measures import measured
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.clearances import refuse_too_narrow
from handout_engine.working.worksheet import Worksheet

HAND_ROOM = millimetres(40)
"""What the end of a sleeve measures at least beyond the wrist, for the hand to pass."""


class ArmInputs(BlockInputs):
    """The measures of every garment with sleeves."""

    arm_length = measured("arm_length")
    upper_arm = measured("upper_arm")
    wrist = measured("wrist")


def sleeve_trim() -> Length:
    """Declare how far a trim will reach beyond the end of the sleeve."""
    words = "How far a band or ruffle will reach beyond the sleeve, which is cut so much shorter."
    return length("trim at the sleeve end", words, "0 cm", ("0 cm", "10 cm"))


def note_sleeve_edge(sheet: Worksheet, limb: Value) -> Value:
    """Note the finished edge of a sleeve that ends at the wrist or on the arm.

    Speaks of the inputs wrist and sleeve_end_ease; refuses what the hand does not pass.
    """
    edge = sheet.note("sleeve_edge", "finished edge at the end of one sleeve",
                      limb.length + sheet["sleeve_end_ease"].length,
                      "{limb} + {sleeve_end_ease}", limb=limb)  # fmt: skip
    words = ("the hand", "the end of the sleeve")
    refuse_too_narrow(edge.length, sheet["wrist"].length, HAND_ROOM, words, "sleeve_end_ease")
    return edge
