"""The tail by which the ends of a strip that goes round an edge are joined."""

from __future__ import annotations

from collections.abc import Hashable

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_least


def check_tail(asked: Hashable, tail: Value, takes: Length) -> None:
    """Refuse a tail that is used up where the ends are joined, so that the strip falls short.

    `asked` has an input of that name.
    """
    if tail.length < takes:
        raise RefusalError(
            f"{tail.name} {TAPE.say(tail.length)} is used up where the ends are joined; use "
            f"{at_least(asked, tail.name, takes)}",
            tail.name,
        )
