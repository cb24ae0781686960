"""Amounts and sentences as HTML: the first system plain, the other beside it in small."""

from __future__ import annotations

from collections.abc import Collection
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import Ground
from handout_engine.amounts.values import Said, Sentence, Value, said
from handout_engine.bodies.measures import BODY_LENGTH, SIZE
from handout_engine.drawing.markup import Child, element
from handout_engine.paper.sheets import Sheet
from handout_engine.working.workings import Working

GIVEN_FOR_HER = "given for her"
NO_BREAK = "\u00a0"
PAIR = "a pair, one the mirror image of the other"
"""How two of a piece are cut that are a left and a right one."""
LONGEST_WHOLE = 24
"""Words longer than this may break like any sentence."""


def amount(part: Amount | Value, tape: Tape) -> Element:
    """One amount; it never breaks across lines within one system, unless it is a phrase."""
    plain = part.amount if isinstance(part, Value) else part
    if isinstance(plain, str) and len(plain) > LONGEST_WHOLE:
        return element("span", plain, class_="amount")
    return _said(said(part, tape))


def pair(width: Amount | Value, length: Amount | Value, tape: Tape) -> Element:
    """Two amounts as `width × length`, each system by itself; it may break behind the sign."""
    wide, long = said(width, tape), said(length, tape)
    made = _said(Said(f"{wide.first} × {long.first}", f"{wide.beside} × {long.beside}"))
    for part in made.iter():
        part.text = (part.text or "").replace(f"×{NO_BREAK}", "× ")
    return made


def phrase(sentence: Sentence, tape: Tape) -> list[Child]:
    """A sentence as words and amounts, to be children of an element."""
    return [run if isinstance(run, str) else _said(run) for run in sentence.runs(tape)]


def sheet_link(words: str, sheet: Sheet) -> Element:
    """A paragraph with the link to a true-scale sheet."""
    return element(
        "p", element("a", words, href=sheet.address, class_="sheet-link"), class_="sheet"
    )


def _said(spoken: Said) -> Element:
    first = spoken.first.replace(" ", NO_BREAK)
    if not spoken.beside:
        return element("span", first, class_="amount")
    beside = element("span", f"({spoken.beside})".replace(" ", NO_BREAK), class_="beside")
    return element("span", first, " ", beside, class_="amount")


def whose(value: Value, working: Working, given: Collection[str] = ()) -> str:
    """Whose a measure of a baby is: given for her, or the table's for her size or own length.

    `given` are the names of measures known to be given, even where the table has the very same;
    all others are judged by what they rest on. Empty for the size itself, which is no measure.
    """
    if value.name == SIZE:
        return ""
    if _is_given(value, given):
        return GIVEN_FOR_HER
    own_length = _is_given(working.inputs[BODY_LENGTH], given)
    return f"of the table for her {'body length' if own_length else 'size'}"


def _is_given(value: Value, given: Collection[str]) -> bool:
    return value.name in given or value.basis.ground is Ground.GIVEN
