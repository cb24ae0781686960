"""Amounts and sentences as HTML: the first system plain, the other beside it in small."""

from __future__ import annotations

from xml.etree.ElementTree import Element

from handout_engine.markup import Child, element
from handout_engine.saying import Amount, Tape
from handout_engine.sheets import Sheet
from handout_engine.values import Said, Sentence, Value, said

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


def of_the_table(own_length: bool) -> str:
    """Whose a measure is that was not given: the table's, for her size or for her own length."""
    return f"of the table for her {'body length' if own_length else 'size'}"
