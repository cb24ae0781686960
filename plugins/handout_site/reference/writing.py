"""Rows, cells and bounds, as the pages of the reference write them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from html import escape

from handout_engine.amounts.inputs import Input
from handout_engine.amounts.kinds import LengthKind
from handout_engine.amounts.saying import TAPE, Tape
from handout_engine.amounts.sources import Ground

INCHES, METRIC = TAPE, Tape("metric", 32)
NOTED = {Ground.PRACTICE: "common practice, no source", Ground.ESTIMATE: "an estimate"}
"""Grounds that a default's row says in a few words; a published one names its source."""


def pairs(heading: str, told: Mapping[str, str]) -> Iterator[str]:
    """A table of names and what each is."""
    yield from rows(heading, ((code(name), text) for name, text in told.items()))


def rows(
    heading: str, told: Iterable[tuple[str, str]], second: str = "What it is"
) -> Iterator[str]:
    """A table of two columns, the second with what the first is."""
    yield f"| {heading} | {second} |\n|---|---|"
    for name, text in told:
        yield f"| {cell(name)} | {cell(text)} |"


def cell(text: str) -> str:
    """Text that cannot end its cell of the table."""
    return text.replace("|", "\\|").replace("\n", " ")


def code(name: str) -> str:
    """A name as it is written, which may break behind `_` where a column is narrow."""
    return f"<code>{escape(name).replace('_', '_<wbr>')}</code>"


def told(asked: Input) -> str:
    """What an input is, its default and its bounds, in sentences."""
    default = f"If left out: {_default(asked)}{_basis(asked)}."
    return f"{asked.help} {default} {capital(bounds(asked))}."


def _default(asked: Input) -> str:
    return asked.otherwise if asked.default is None else asked.default


def _basis(asked: Input) -> str:
    basis = asked.basis
    if basis.source is not None:
        return f" (published: {basis.source.author})"
    return f" ({NOTED[basis.ground]})" if basis.ground in NOTED else ""


def bounds(asked: Input) -> str:
    """The bounds in both systems, first in that in which they are exact."""
    systems = sorted((INCHES, METRIC), key=lambda tape: not _exact(asked, tape))
    first, beside = (asked.kind.bounds(tape) for tape in systems)
    return first if first == beside else f"{first} ({beside.removeprefix('from ')})"


def _exact(asked: Input, tape: Tape) -> bool:
    """Whether the largest that is allowed stands on a tape as it is."""
    kind = asked.kind
    if not isinstance(kind, LengthKind):
        return True
    return kind.parse(tape.say(kind.most, kind.saying)) == kind.most


def capital(text: str) -> str:
    """The text with a capital at its beginning, as a sentence or a title has it."""
    return text[:1].upper() + text[1:]
