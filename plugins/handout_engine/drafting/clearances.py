"""Whether head, hands and feet pass the openings of a garment; refused with the figure if not."""

from __future__ import annotations

from math import ceil

from handout_engine.amounts.inputs import length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
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


def note_head_clearance(sheet: Worksheet, opened: Length) -> Value:
    """Note what neck and opening measure together; refuses what the head does not pass.

    Speaks of the inputs head and head_room and of the values opening and neck_edge.
    """
    neck, head, room = (sheet[name].length for name in ("neck_edge", "head", "head_room"))
    around = sheet.note("opened_neck", "neck edge with both sides of the opening",
                        neck + 2 * opened, "{neck_edge} + 2 × {opening}")  # fmt: skip
    if around.length < head + room:
        least = (head + room - neck) / 2
        raise RefusalError(
            f"the head, {TAPE.both(head)}, with {TAPE.both(room)} of room does not pass a neck "
            f"that opens to {TAPE.both(around.length)}; give opening at least "
            f"{TAPE.both(least, Saying.UP)}, or neck_ease more",
            "opening",
        )
    return around


def refuse_too_narrow(
    end: Length, limb: Length, room: Length, words: tuple[str, str], field: str
) -> None:
    """Refuse the end of a sleeve or leg that a hand or foot does not pass.

    `words` name the limb that passes and what it passes through.
    """
    if end < limb + room:
        passes, through = words
        raise RefusalError(
            f"{passes} needs {TAPE.both(limb + room, Saying.UP)} and {through} is only "
            f"{TAPE.both(end)}; give it at least that, or let it open",
            field,
        )
