"""What a hem takes of the cloth, by its kind."""

from __future__ import annotations

from typing import Protocol

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, optional_length
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.working_out import Group
from handout_engine.working.technique import Technique

DOUBLE, SINGLE, ROLLED, FOLDED, FINISHED = "double", "single", "rolled", "folded", "finished"
USUAL_TURN = constant("usual turn", inches("1/4"), PRACTICE)
USUAL_ROLL = constant("usual turn of a rolled hem", inches("1/8"), PRACTICE)
USUAL = {DOUBLE: USUAL_TURN, SINGLE: USUAL_TURN, ROLLED: USUAL_ROLL}
TURNS = {DOUBLE: 2, SINGLE: 1, ROLLED: 1, FINISHED: 0}


class HemInputs(Technique):
    """The inputs of a technique whose lower edge is hemmed."""

    hem = choice(
        "hem",
        "Double turned, single turned, rolled, a strip folded in half, or an edge that is "
        "finished already.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FOLDED,
        FINISHED,
        group=SEWING,
    )
    hem_depth = optional_length(
        "hem depth",
        "Depth of one turn of the hem.",
        "1/4 in, or 1/8 in for a rolled hem",
        ("1/16 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="hem_turn",
    )

    @property
    def folded(self) -> bool:
        """Whether the strip is folded in half instead of hemmed."""
        return self.hem == FOLDED


class Hemmed(Protocol):
    """Whatever asks for a hem by its kind and the depth of one turn."""

    @property
    def hem(self) -> str:
        """The kind of hem."""

    @property
    def hem_depth(self) -> Length | None:
        """The depth of one turn; None for the usual one."""


class Hem(Group):
    """What one hem takes: its turn, and the allowance of all its turns."""

    def __init__(self, asked: Hemmed, depth: Length) -> None:
        """Take what asks for it, and the named length that it is turned up on."""
        super().__init__()
        self.asked, self.depth = asked, depth

    @value("one turn of the hem", basis=PRACTICE)
    def hem_turn(self) -> Length:
        """As asked for, or as is usual; an edge that is finished takes none."""
        asked = self.asked.hem_depth
        return USUAL.get(self.asked.hem, ZERO) if asked is None else asked

    @check
    def it_is_no_deeper_than_what_it_is_turned_up_on(self) -> None:
        """Refuse a turn that would reach past what it hems."""
        if self.hem_allowance and self.hem_turn > self.depth:
            raise RefusalError(
                f"hem_depth {TAPE.say(self.hem_turn)} is deeper than {self.depth.label} "
                f"{TAPE.say(self.depth)}; use at most {TAPE.no_more(self.depth)}",
                "hem_depth",
            )

    @value("hem allowance")
    def hem_allowance(self) -> Length:
        """A double hem is turned twice."""
        return TURNS[self.asked.hem] * self.hem_turn


def hem_step(kind: str) -> str:
    """How one hem of that kind is sewn, speaking of `hem_allowance`."""
    return {
        DOUBLE: "Turn up half of the {hem_allowance} hem allowance, then the other half, and "
        "stitch close to the inner fold.",
        SINGLE: "Finish the lower edge, turn up {hem_allowance} and stitch.",
        ROLLED: "Roll the {hem_allowance} hem allowance between thumb and finger and whip it, or "
        "roll it by machine.",
        FOLDED: "Fold the strip in half along its length, wrong sides together, and press.",
        FINISHED: "The lower edge is finished already.",
    }[kind]
