"""What a hem takes of the cloth, by its kind."""

from __future__ import annotations

from typing import Protocol

from handout_engine.amounts.inputs import SEWING, choice, optional_length
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.working.worksheet import Worksheet

DOUBLE, SINGLE, ROLLED, FOLDED, FINISHED = "double", "single", "rolled", "folded", "finished"
USUAL = {DOUBLE: inches("1/4"), SINGLE: inches("1/4"), ROLLED: inches("1/8")}
TURNS = {DOUBLE: 2, SINGLE: 1, ROLLED: 1}


class HemInputs:
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


def note_hem(sheet: Worksheet, inputs: Hemmed, depth: Value) -> Value:
    """Note the allowance of one hem; raises RefusalError when it is deeper than the ruffle."""
    turn = inputs.hem_depth or USUAL.get(inputs.hem, ZERO)
    turns = TURNS.get(inputs.hem, 0)
    if turns and turn > depth.length:
        tape = Tape(finest=32)
        raise RefusalError(
            f"hem_depth {tape.say(turn)} is deeper than {depth.label} {tape.say(depth.amount)}; "
            f"use at most {tape.no_more(depth.length)}",
            "hem_depth",
        )
    basis = PRACTICE if inputs.hem_depth is None else GIVEN
    sheet.note("hem_turn", "one turn of the hem", turn, "", basis=basis)
    return sheet.note(
        "hem_allowance", "hem allowance", turn * turns, "{turns} × {hem_turn}", turns=turns
    )


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
