"""What a build makes for paper: lines for notes, booklets, and PDFs ready to download."""

from __future__ import annotations

import logging
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from mkdocs.structure.files import Files
from mkdocs.structure.pages import Page

from handout_engine.drawing.markup import element, html
from handout_site.booklet import Bindery
from handout_site.course import Course
from handout_site.course_menu import lesson_address
from handout_site.library import SECTION, Entry
from handout_site.ready_pdfs import ReadyPdfs, find_program

log = logging.getLogger("mkdocs.plugins.handouts")

NUMBERS = '<h2 id="where-the-numbers-come-from"'
LINES = 5


@dataclass
class Paper:
    """The paper side of one build: its booklets, and its PDFs."""

    bindery: Bindery = field(default_factory=Bindery)
    ready: ReadyPdfs = field(default_factory=ReadyPdfs)

    def take(self, page: Page, content: str, *, computed: bool) -> str:
        """A page's finished HTML as paper wants it, which is kept for the booklets.

        `computed` says whether anything is worked out on the page. The page is told what of it
        can be had for paper: titles and addresses, which its template shows.
        """
        handout = page.file.src_uri.startswith(f"{SECTION}/")
        if handout and computed:
            content = with_notes(content)
        self.bindery.keep(page, content)
        printed = handout or page.file.src_uri in self.bindery.booklets
        pdfs = self.ready.add(page.file.dest_uri) if printed else []
        page.meta["on_paper"] = [*pdfs, *self.bindery.holding(page)]
        return content

    def bind(self, files: Files) -> None:
        """Fill the booklets, once all handouts are finished."""
        self.bindery.bind(files)

    def write(self, site: Path, kept: Path) -> None:
        """Write the PDFs, once all pages are written."""
        self.ready.write(site, kept)


def for_paper(entries: Iterable[Entry], course: Course | None, url: str, *, pdf: bool) -> Paper:
    """The paper side of a build of these handouts, for a site at `url` (empty if it says none).

    `pdf` asks for PDFs; when what makes them is missing, that is said.
    """
    program, missing = find_program() if pdf else (None, "")
    if missing:
        log.info(missing)
    addresses = {entry.name: entry.address for entry in entries}
    lessons = tuple(_lessons(course, addresses)) if course else ()
    bindery = Bindery(frozenset(addresses.values()), lessons)
    return Paper(bindery, ReadyPdfs(program, url))


def _lessons(course: Course, addresses: Mapping[str, str]) -> Iterator[tuple[str, tuple[str, ...]]]:
    """The title of each lesson, its page and those of its handouts that are published."""
    for number, lesson in enumerate(course.lessons, 1):
        sewn = (addresses.get(each.handout, "") for each in lesson.handouts)
        yield f"Lesson {number}: {lesson.title}", (lesson_address(number), *filter(None, sewn))


def with_notes(content: str) -> str:
    """A handout's HTML with lines to write on behind its text, before its numbers if it has them.

    A screen does not show them; assets/print.css does.
    """
    lines = (element("hr") for _ in range(LINES))
    notes = html(
        element("section", element("p", "Notes", class_="part-title"), *lines, class_="print-notes")
    )
    text, numbers, rest = content.partition(NUMBERS)
    return f"{text}{notes}\n{numbers}{rest}"
