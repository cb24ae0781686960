"""The page that lists all published handouts by the practice they ask for, easiest first."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from mkdocs.utils.meta import get_data

from handout_engine.pages.fragments.gallery import family_title
from handout_site.library import Entry, title_of
from handout_site.plain_text import plain

ADDRESS = "practice.md"
LEVELS = {
    "First project": "Straight seams, or one new thing at a time.",
    "Some practice": "Even stitches and exact folds; one sample before the good cloth.",
    "Experienced": "Many steps that build on each other, or fine work by hand.",
}
"""What a handout's `practice` may say, and what it means."""
OTHERS = "Not said"


@dataclass(frozen=True)
class Handout:
    """What a handout says of itself before its text."""

    entry: Entry
    title: str
    summary: str
    practice: str
    time: str


def described(entry: Entry) -> Handout:
    """A handout as its front matter describes it."""
    _, meta = get_data(entry.path.read_text(encoding="utf-8-sig", errors="replace"))
    summary, practice, time = (str(meta.get(key, "")) for key in ("summary", "practice", "time"))
    return Handout(entry, title_of(entry), summary, practice, time)


def by_practice(entries: Iterable[Entry]) -> str:
    """The whole page as Markdown."""
    every = [described(entry) for entry in entries if not entry.is_introduction]
    return "\n".join(_lines(every))


def _lines(every: list[Handout]) -> Iterator[str]:
    yield "# By practice\n\nEvery handout, those to begin with first.\n"
    for level, meaning in {**LEVELS, OTHERS: ""}.items():
        found = [each for each in every if _level(each) == level]
        if found:
            yield f"## {level}\n\n{meaning}\n"
            yield "| Handout | Family | Time |\n|---|---|---|"
            yield from map(_row, sorted(found, key=lambda each: each.title))
            yield ""


def _level(handout: Handout) -> str:
    return handout.practice if handout.practice in LEVELS else OTHERS


def _row(handout: Handout) -> str:
    family = family_title(handout.entry.name.partition("/")[0])
    link = f"[{handout.title}]({handout.entry.address})"
    told = (f"{link}: {_cell(handout.summary)}", _cell(family), _cell(handout.time))
    return f"| {' | '.join(told)} |"


def _cell(text: str) -> str:
    """Text that cannot end its cell of the table."""
    return plain(text).replace("|", "\\|").replace("\n", " ")
