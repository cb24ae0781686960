"""The handouts there are: Markdown files in folders by family, and how they stand in the menu."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from handout_engine.amounts.refusals import quoted
from handout_site.plain_text import as_read
from handout_site.slips import Slip, SlipsError

SECTION = "handouts"
NO_NAME = "the file's name cannot be read as text; name it in letters, digits and hyphens"
_HEADING = re.compile(r"^#\s+(.+?)\s*#*\s*$", re.MULTILINE)


@dataclass(frozen=True)
class Entry:
    """One Markdown file of the library: its name (`ruffles/banded-ruffle`) and its path."""

    name: str
    path: Path

    @property
    def address(self) -> str:
        """Its place among the site's sources."""
        return f"{SECTION}/{self.name}.md"

    @property
    def text(self) -> str:
        """All that is written in it; what is no text is replaced here, and refused elsewhere."""
        return self.path.read_text(encoding="utf-8-sig", errors="replace")

    @property
    def is_introduction(self) -> bool:
        """Whether it introduces its family instead of being a handout."""
        return self.path.stem == "index"


def entries(folder: Path) -> tuple[Entry, ...]:
    """All Markdown files below a folder, in order of name.

    Raises SlipsError for files whose names are no text, so that no address can be made of them.
    """
    found = (path for path in folder.rglob("*.md") if path.is_file())
    named = [Entry(path.relative_to(folder).with_suffix("").as_posix(), path) for path in found]
    odd = [Slip(quoted(each.address), 1, NO_NAME) for each in named if not _is_text(each.name)]
    if odd:
        raise SlipsError(odd)
    return tuple(sorted(named, key=lambda entry: entry.name))


def _is_text(name: str) -> bool:
    try:
        name.encode()
    except UnicodeEncodeError:
        return False
    return True


def handout_names(every: Iterable[Entry]) -> tuple[str, ...]:
    """The names of all handouts, introductions left out."""
    return tuple(entry.name for entry in every if not entry.is_introduction)


def published(every: Iterable[Entry], wanted: tuple[str, ...] | None) -> tuple[Entry, ...]:
    """The wanted handouts with the introductions of their families; None wants all."""
    every = tuple(every)
    if wanted is None:
        return every
    families = {name.rpartition("/")[0] for name in wanted}
    return tuple(
        entry
        for entry in every
        if entry.name in wanted
        or (entry.is_introduction and entry.name.rpartition("/")[0] in {*families, ""})
    )


def menu(every: Iterable[Entry]) -> list[Any]:
    """The handouts as a menu: one section a family, its introduction first."""
    families: dict[str, list[Entry]] = {}
    for entry in every:
        families.setdefault(entry.name.rpartition("/")[0], []).append(entry)
    sections: list[Any] = [entry.address for entry in families.pop("", [])]
    for family, members in families.items():
        members.sort(key=lambda entry: not entry.is_introduction)
        sections.append({_title(family, members): [entry.address for entry in members]})
    return sections


def title_of(entry: Entry) -> str:
    """The first heading of a page, or what its name says."""
    return _heading(entry) or _as_title(entry.name.rpartition("/")[2])


def _title(family: str, members: list[Entry]) -> str:
    """The first heading of the family's introduction, or its folder's name."""
    introduced = members[0].is_introduction and _heading(members[0])
    return as_read(introduced) if introduced else _as_title(family)


def _heading(entry: Entry) -> str:
    found = _HEADING.search(entry.text)
    return found[1] if found else ""


def _as_title(name: str) -> str:
    return name.replace("-", " ").capitalize()
