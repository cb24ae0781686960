"""A course's pages among the site's files."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cache

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File
from mkdocs.utils import get_relative_url

from handout_site.course_pages import CoursePages, Link
from handout_site.course_work import work_course
from handout_site.library import Entry
from handout_site.scenario import Scenario
from handout_site.seat_pages import SeatPages, seat_pages
from handout_site.size_pages import SizePage
from handout_site.slips import Slip


@dataclass(frozen=True)
class CourseFiles:
    """The pages of a course with those of its seats, and what is wrong in its scenario."""

    files: tuple[File, ...] = ()
    seats: SeatPages = field(default_factory=SeatPages)
    slips: tuple[Slip, ...] = ()


def course_files(
    config: MkDocsConfig,
    scenario: Scenario,
    entries: Iterable[Entry],
    sized: Mapping[str, SizePage],
) -> CourseFiles:
    """The pages of the scenario's course or wardrobe; nothing where it has none.

    `sized` are the pages of handouts by size, by address.
    """
    if scenario.course is None:
        return CourseFiles()
    every = list(entries)
    seats = seat_pages(config, scenario, every, sized)
    worked = work_course(scenario.course, every, scenario.terms, scenario.file)
    pages = CoursePages(
        scenario.course,
        worked,
        scenario.tape,
        {entry.name: entry.address for entry in every},
        seats.leads,
        seats.added,
        _links(config),
    )
    files = [File.generated(config, address, content=text) for address, text in pages.pages()]
    return CourseFiles((*files, *seats.files), seats, (*worked.slips, *seats.slips))


def _links(config: MkDocsConfig) -> Link:
    """Links from page to page as the site is set up."""

    @cache
    def url(address: str) -> str:
        return str(File.generated(config, address, content="").url)

    return lambda here, there: get_relative_url(url(there), url(here))
