"""The page that says, for every technique, which checks it has and against what.

Made from the register and from `assets/checks.json`, which tests/checks.py reads out of the tests:
an installed site has no tests, so they are read when the project is developed.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Collection, Iterable, Sequence
from functools import cache
from pathlib import Path
from typing import TypedDict

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File

from handout_engine.amounts.sources import Ground
from handout_engine.register import find, keys
from handout_engine.working.technique import Technique, make
from handout_site.library import Entry
from handout_site.plain_text import plain

ADDRESS = "checks.md"
KEPT = Path(__file__).parent / "assets" / "checks.json"
TITLE = "What is checked, and against what"
KINDS = {
    "worked example": "By hand: figures worked out beforehand.",
    "property": "Any measures: what must hold whatever they are.",
    "simulation": "Another way: an independent model that folds, joins, walks or measures.",
    "published": "In print: a published figure, looked up where it stands.",
    "from memory": "Remembered: a published figure as it is remembered, not looked up again.",
    "library": "A library: what a general library of units or curves works out.",
    "unknown origin": "Of no known origin: an example or a table that is handed on without saying "
    "where it comes from; its arithmetic is done again.",
    "common practice": "Common practice: a habit of the trade, which has no source.",
    "refusal": "Refused: what cannot be sewn.",
    "other": "More: what else must hold.",
}
"""The kinds of check in the order in which they are shown, and what each means."""


class Check(TypedDict):
    """One test: its kind, what holds, against what, and where it stands."""

    kind: str
    what: str
    against: str
    where: str


class Kept(TypedDict):
    """What was read out of the tests."""

    every: list[str]
    shared: list[Check]
    techniques: dict[str, list[Check]]


@cache
def kept() -> Kept:
    """What was read out of the tests when the project was last developed."""
    found: Kept = json.loads(KEPT.read_text(encoding="utf-8"))
    return found


def file(config: MkDocsConfig, entries: Iterable[Entry]) -> File:
    """The page among the site's files."""
    return File.generated(config, ADDRESS, content=checks(entries))


def checks(entries: Iterable[Entry]) -> str:
    """The whole page as Markdown; `entries` are the handouts that are published."""
    return "\n".join(_lines({entry.address for entry in entries}))


def _lines(published: Collection[str]) -> Iterable[str]:
    yield f"# {TITLE}"
    yield "\nGenerated from the tests and from the code, so it says what is so.\n"
    yield "## Of every technique\n"
    yield "With its own measures, and with many drawn at random:\n"
    yield from (f"- {plain(each)}" for each in kept()["every"])
    yield "\n## Of what all share\n"
    yield "Units, bodies, cloth and paper.\n"
    yield from _by_kind(kept()["shared"])
    yield "\n## Kinds of check\n"
    yield from (f"- {words}" for words in KINDS.values())
    every = sorted(map(find, keys()), key=lambda each: (each.family, each.key()))
    yield f"\n## {len(every)} techniques\n"
    for technique in every:
        yield from _technique(technique, published)


def _technique(technique: type[Technique], published: Collection[str]) -> Iterable[str]:
    key = technique.key()
    found = kept()["techniques"].get(key, [])
    yield f"### {technique.title} (`{key}`)\n"
    address = f"handouts/{technique.family}/{key}.md"
    if address in published:
        yield f"[Its handout]({address}). {_grounds(technique)}\n"
    else:
        yield f"{_grounds(technique)}\n"
    if not found:
        yield "Only what is checked of every technique.\n"
        return
    yield from _by_kind(found)


def _by_kind(found: Sequence[Check]) -> Iterable[str]:
    """Checks under the heading of what they are and stand on."""
    for kind, words in KINDS.items():
        yield from _listed(
            words.partition(":")[0], [each for each in found if each["kind"] == kind]
        )


def _listed(heading: str, found: Sequence[Check]) -> Iterable[str]:
    """The checks of one kind."""
    if not found:
        return
    yield f"**{heading}**\n"
    yield from _items(found)
    yield ""


def _items(found: Sequence[Check]) -> Iterable[str]:
    """Each check with what it stands against, where its test says so."""
    for each in found:
        against = f": {each['against']}" if each["against"] else ""
        yield f"- {plain(each['what'] + against)}"


def _grounds(technique: type[Technique]) -> str:
    """How many of its numbers rest on what, with the usual measures."""
    working = make(technique, {}).work()
    grounds = Counter(value.basis.ground for value in working.values.values())
    told = [
        f"{ground.value.partition(':')[0]} {grounds[ground]}"
        for ground in Ground
        if grounds[ground]
    ]
    return f"What its numbers rest on: {'; '.join(told)}."
