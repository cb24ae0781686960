"""A scenario: who publishes which handouts, in which units and on which paper."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from handout_engine.amounts.refusals import RefusalError, nearest_name, quoted
from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import SIZE
from handout_engine.pages.blocks import read_sizes
from handout_site import course
from handout_site.made_for import read_choice, read_inputs, read_measures, read_size
from handout_site.mappings import (
    Document,
    DocumentError,
    Plain,
    read_mapping,
    refuse_unknown,
    refused,
)
from handout_site.reading import Terms
from handout_site.slips import Slip, SlipsError

LARGEST = 200_000
EXAMPLE = "a scenario has lines such as publisher: The guild"
KEYS: dict[str, str] = {
    "publisher": "Who publishes; printed on every page.",
    "version": "The edition, such as a month; printed on every page.",
    "units": "Which system is said first: inches or metric.",
    "finest": "The finest fraction of an inch on the tape: 8, 16 or 32.",
    "paper": "The paper pages are printed on: a4 or letter.",
    "licence": "One line on what readers may do with the handouts.",
    "inputs": "Defaults for techniques' inputs, in place of the techniques' own.",
    "handouts": "Which handouts are published: all, or a list such as ruffles/banded-ruffle. If "
    "left out, those of the lessons or the wardrobe, or all where there is neither.",
    "size": "The size of the one baby that everything is made for, such as 68.",
    "measures": "Her own measures, such as head: 44 cm; each goes before the size's.",
    "sizes": "Which sizes have pages of their own, in place of each handout's own range: "
    "all, none, a range such as 50 to 74, or a list.",
    **course.KEYS,
}
UNITS = ("inches", "metric")
FINEST = {"8": 8, "16": 16, "32": 32}
PAPERS = ("a4", "letter")


@dataclass(frozen=True)
class Scenario:
    """What one site publishes.

    `handouts` is None for all of them. `fit` holds the size and the measures that garments are
    made to; `sizes` those that have pages of their own, None where each handout says it. `file` is
    its path as messages show it.
    """

    name: str
    publisher: str = ""
    licence: str = ""
    paper: str = "a4"
    tape: Tape = field(default_factory=Tape)
    inputs: Mapping[str, str] = field(default_factory=dict)
    handouts: tuple[str, ...] | None = None
    version: str = ""
    fit: Mapping[str, str] = field(default_factory=dict)
    sizes: tuple[str, ...] | None = None
    course: course.Course | None = None
    file: str = ""

    @property
    def page_sizes(self) -> tuple[str, ...] | None:
        """The sizes that have pages; what is made for one baby has none but hers."""
        return () if self.fit else self.sizes

    @property
    def terms(self) -> Terms:
        """What its pages are worked out with."""
        return Terms(self.tape, self.inputs, self.fit)


def load_scenario(path: Path, shown: str, known: tuple[str, ...]) -> Scenario:
    """Read a scenario; `known` are the handouts there are, `shown` the path in messages.

    Raises SlipsError with file and line for whatever is wrong in it.
    """
    try:
        document = read_mapping(_text(path), EXAMPLE, LARGEST)
        refuse_unknown(document, KEYS)
        return replace(_scenario(path.stem, document, known), file=shown)
    except DocumentError as error:
        raise SlipsError([Slip(shown, error.line, error.message)]) from None


def _text(path: Path) -> str:
    try:
        if path.stat().st_size > LARGEST:
            raise DocumentError(1, f"the file is larger than {LARGEST} bytes")
        return path.read_text(encoding="utf-8-sig")
    except FileNotFoundError:
        raise DocumentError(1, _missing(path)) from None
    except (OSError, UnicodeDecodeError):
        raise DocumentError(1, "the file cannot be read as text") from None


def _missing(path: Path) -> str:
    there = sorted(each.stem for each in path.parent.glob("*.yml"))
    return f'there is no scenario "{quoted(path.stem)}"{nearest_name(path.stem, there)}'


def _scenario(name: str, document: Document, known: tuple[str, ...]) -> Scenario:
    units = _field(document, "units", "inches", lambda value: read_choice(value, UNITS))
    finest = _field(document, "finest", "16", lambda value: read_choice(value, tuple(FINEST)))
    handouts = _field(document, "handouts", None, lambda value: _handouts(value, known))
    taught = course.read_course(document, handouts or known)
    if taught is not None and "handouts" not in document.fields:
        handouts = tuple(taught.sewn)
    return Scenario(
        name=name,
        publisher=_field(document, "publisher", "", _words),
        licence=_field(document, "licence", "", _words),
        paper=_field(document, "paper", "a4", lambda value: read_choice(value, PAPERS)),
        tape=Tape(units, FINEST[finest]),  # type: ignore[arg-type]
        inputs=_field(document, "inputs", {}, read_inputs),
        handouts=handouts,
        version=_field(document, "version", "", _words),
        fit=_fit(document),
        sizes=_field(document, "sizes", None, _sizes),
        course=taught,
    )


def _fit(document: Document) -> dict[str, str]:
    """The size and the measures; one baby's measures need no size, since the table gives one."""
    size = _field(document, SIZE, "", read_size)
    measures = _field(document, "measures", {}, read_measures)
    return {**({SIZE: size} if size else {}), **measures}


def _sizes(value: Plain) -> tuple[str, ...]:
    if value == "none":
        return ()
    refusals: list[RefusalError] = []
    if not isinstance(value, str | list) or not all(isinstance(each, str) for each in value):
        raise RefusalError("write all, none, a range such as 50 to 74, or a list of sizes")
    found = read_sizes(value, refusals)
    if refusals:
        raise RefusalError(refusals[0].message.removeprefix("sizes: "))
    return found


def _field(document: Document, name: str, otherwise: Any, read: Callable[[Plain], Any]) -> Any:  # noqa: ANN401
    if name not in document.fields:
        return otherwise
    try:
        return read(document.fields[name])
    except RefusalError as refusal:
        raise refused(document, name, refusal) from None


def _words(value: Plain) -> str:
    if not isinstance(value, str):
        raise RefusalError("write one line of text here")
    return value


def _handouts(value: Plain, known: tuple[str, ...]) -> tuple[str, ...] | None:
    if value == "all":
        return None
    if not isinstance(value, list) or not all(isinstance(each, str) for each in value):
        raise RefusalError("write all, or a list of handouts such as ruffles/banded-ruffle")
    names = tuple(str(each) for each in value)
    for number, name in enumerate(names, 1):
        if name not in known:
            hint = nearest_name(name, known)
            raise RefusalError(f'there is no handout "{quoted(name)}"{hint}', str(number))
    return names
