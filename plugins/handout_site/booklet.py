"""Booklets: pages that hold many handouts in the order of the menu, to be printed in one go.

Each section of the menu that holds handouts has a booklet, and so has the whole site. Where there
is a course its lessons come first, each with what is sewn in it, and each kit has a booklet with
the handouts as they are sewn at its seat. All are made from the finished HTML of the handouts:
nothing is worked out twice. What they look like stands in overrides/booklet.html.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from itertools import chain, count
from pathlib import PurePosixPath
from posixpath import dirname, join, normpath, relpath
from typing import Any

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files, InclusionLevel
from mkdocs.structure.nav import Navigation, Section
from mkdocs.structure.pages import Page

from handout_site.escaping import title_text

WHOLE = "booklet"
TEMPLATE = "booklet.html"
LONGEST_NAME = 60
"""Of a booklet's file, in letters: a title may be longer than a file system takes."""
_SOURCE = f"""\
---
template: {TEMPLATE}
search: {{exclude: true}}
hide: [navigation, toc]
---
"""
_NAMING = "id|for|headers|aria-labelledby|aria-describedby|aria-controls"
_TAG = re.compile(rf'<[a-zA-Z][^<>]*\s(?:{_NAMING}|href|src)="[^<>]*>')
_ATTRIBUTE = re.compile(rf'(\s)({_NAMING}|href|src)="([^"]*)"')
_ELSEWHERE = re.compile(r"[a-zA-Z][\w+.-]*:|/|$")


@dataclass(frozen=True)
class Chapter:
    """A section of the menu with its pages that are handouts or introduce them."""

    title: str
    pages: tuple[Page, ...]


@dataclass(frozen=True)
class Bound:
    """A handout in a booklet: its number there, and its HTML made to stand there."""

    number: int
    title: str
    size: str
    seat: str
    content: str


@dataclass(frozen=True)
class Booklet:
    """A booklet to be made: its title and what stands in it."""

    title: str
    chapters: tuple[Chapter, ...]

    def holds(self, page: Page) -> bool:
        """Whether a page is bound in it."""
        sources = (each.file.src_uri for chapter in self.chapters for each in chapter.pages)
        return page.file.src_uri in sources


@dataclass
class Bindery:
    """The booklets of one build: the finished handouts, and the booklets to be made of them.

    `handouts` are the addresses of all handouts among the site's sources; `lessons` are those of a
    course: the title of each, and the addresses of its own page and of its handouts; `kits` those
    of each kit and of its seat's handouts.
    """

    handouts: frozenset[str] = frozenset()
    lessons: tuple[tuple[str, tuple[str, ...]], ...] = ()
    kits: tuple[tuple[str, tuple[str, ...]], ...] = ()
    finished: dict[str, str] = field(default_factory=dict)
    booklets: dict[str, Booklet] = field(default_factory=dict)

    def plan(self, nav: Navigation, files: Files, config: MkDocsConfig) -> None:
        """Add a page for each booklet; what stands in it comes when all handouts are finished."""
        every = tuple(_each_once([*self._lessons(files), *self._chapters(nav.items)]))
        if not every:
            return
        whole = "The course in one booklet" if self.lessons else "All handouts in one booklet"
        planned = [(WHOLE, Booklet(whole, every))]
        if len(every) > 1:
            for number, chapter in enumerate(every, 1):
                booklet = Booklet(f"{chapter.title} in one booklet", (chapter,))
                planned.append((f"{WHOLE}-{_slug(chapter.title) or number}", booklet))
        for title, addresses in self.kits:
            kit = Chapter(title, _pages(addresses, files))
            booklet = Booklet(f"{title}, with its handouts", (kit,))
            planned.append((f"{WHOLE}-{PurePosixPath(addresses[0]).stem}", booklet))
        for name, booklet in planned:
            address = _free(name, files)
            inclusion = InclusionLevel.NOT_IN_NAV
            files.append(File.generated(config, address, content=_SOURCE, inclusion=inclusion))
            self.booklets[address] = booklet

    def entitle(self, page: Page) -> None:
        """Give a booklet's page its title; others are left as they are."""
        booklet = self.booklets.get(page.file.src_uri)
        if booklet is not None:
            page.meta["title"] = booklet.title

    def _lessons(self, files: Files) -> Iterator[Chapter]:
        for title, addresses in self.lessons:
            yield Chapter(title, _pages(addresses, files))

    def _chapters(self, items: Iterable[Any]) -> Iterator[Chapter]:
        for section in items:
            if isinstance(section, Section):
                pages = [each for each in section.children if isinstance(each, Page)]
                ours = [page for page in pages if page.file.src_uri in self.handouts]
                yield Chapter(str(section.title), tuple(ours))
                yield from self._chapters(section.children)

    def holding(self, page: Page) -> list[tuple[str, str]]:
        """Title and address of each booklet that holds a page, the smallest first."""
        found = [
            (booklet.title, f"{address[:-3]}.html")
            for address, booklet in self.booklets.items()
            if booklet.holds(page)
        ]
        return found[::-1]

    def keep(self, page: Page, content: str) -> None:
        """Keep a page's finished HTML, before it gets what only a screen can use."""
        if any(booklet.holds(page) for booklet in self.booklets.values()):
            self.finished[page.file.src_uri] = content

    def bind(self, files: Files) -> None:
        """Give each booklet's page its chapters, for the template to show."""
        for address, booklet in self.booklets.items():
            file = files.get_file_from_path(address)
            assert file is not None and file.page is not None
            file.page.meta["chapters"] = self._bound(booklet.chapters, file.url)

    def _bound(self, chapters: Iterable[Chapter], url: str) -> list[tuple[str, list[Bound]]]:
        numbers: dict[str, int] = {}
        for chapter in chapters:
            for page in chapter.pages:
                numbers.setdefault(page.url, len(numbers) + 1)
        return [
            (
                chapter.title,
                [
                    Bound(
                        numbers[page.url],
                        title_text(page),
                        str(page.meta.get("size", "")),
                        str(page.meta.get("seat", "")),
                        bound(self.finished.get(page.file.src_uri, ""), page.url, url, numbers),
                    )
                    for page in chapter.pages
                ],
            )
            for chapter in chapters
        ]


def bound(content: str, own: str, url: str, numbers: Mapping[str, int]) -> str:
    """A handout's HTML as it stands in a booklet at `url`.

    `own` is the handout's own address, `numbers` are the numbers of all bound handouts by theirs.
    Every id begins with the handout's number, links to bound handouts lead to their place in the
    booklet, and all other addresses are those from the booklet.
    """
    here = f"h{numbers[own]}-"

    def _attribute(match: re.Match[str]) -> str:
        space, name, value = match.groups()
        if name == "src":
            return f'{space}src="{_moved(value, own, url)}"'
        if name != "href":
            return f'{space}{name}="{" ".join(here + each for each in value.split())}"'
        if value.startswith("#"):
            return f'{space}href="#{here}{value[1:]}"'
        target, _, anchor = value.partition("#")
        number = numbers.get(normpath(join(dirname(own), target)))
        if number is None or _ELSEWHERE.match(value):
            return f'{space}href="{_moved(value, own, url)}"'
        place = f"h{number}-{anchor}" if anchor else f"handout-{number}"
        return f'{space}href="#{place}" data-number="{number}"'

    return _TAG.sub(lambda tag: _ATTRIBUTE.sub(_attribute, tag[0]), content)


def _moved(value: str, own: str, url: str) -> str:
    """A relative address of a handout as it reads from a booklet."""
    if _ELSEWHERE.match(value):
        return value
    path, mark, rest = value.partition("#")
    return relpath(join(dirname(own), path), dirname(url) or ".") + mark + rest


def _each_once(chapters: Iterable[Chapter]) -> Iterator[Chapter]:
    """The chapters, each page in the first that has it; none that would only introduce others."""
    seen: set[str] = set()
    for chapter in chapters:
        pages = tuple(page for page in chapter.pages if page.file.src_uri not in seen)
        seen.update(page.file.src_uri for page in pages)
        if any(not _introduces(page) for page in pages):
            yield Chapter(chapter.title, pages)


def _pages(addresses: Iterable[str], files: Files) -> tuple[Page, ...]:
    """The pages at these addresses among the site's sources."""
    found = (files.get_file_from_path(address) for address in addresses)
    return tuple(file.page for file in found if file is not None and file.page is not None)


def _introduces(page: Page) -> bool:
    return page.file.src_uri.rpartition("/")[2] == "index.md"


def _slug(title: str) -> str:
    return re.sub(r"[^a-z0-9]+", "-", title.lower()).strip("-")[:LONGEST_NAME].strip("-")


def _free(name: str, files: Files) -> str:
    """The address of a booklet's page that no other page of the site has."""
    numbered = (f"{name}-{number}.md" for number in count(2))
    every = chain([f"{name}.md"], numbered)
    return next(each for each in every if files.get_file_from_path(each) is None)
