"""A course's pages among the site's files."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File
from mkdocs.utils import get_relative_url

from handout_site.course_pages import CoursePages, Link
from handout_site.course_work import work_course
from handout_site.library import Entry
from handout_site.scenario import Scenario
from handout_site.size_pages import SizePage
from handout_site.slips import Slip


def course_files(
    config: MkDocsConfig,
    scenario: Scenario,
    entries: Iterable[Entry],
    sized: Mapping[str, SizePage],
) -> tuple[list[File], list[Slip]]:
    """The pages of the scenario's course, and what is wrong in it; nothing where it has none.

    `sized` are the pages of handouts by size, by address.
    """
    if scenario.course is None:
        return [], []
    every = list(entries)
    worked = work_course(scenario.course, every, scenario.terms, scenario.file)
    pages = CoursePages(
        scenario.course,
        worked,
        scenario.tape,
        {entry.name: entry.address for entry in every},
        dict(_sizes(every, sized)),
        _links(config),
    )
    files = [File.generated(config, address, content=text) for address, text in pages.pages()]
    return files, worked.slips


def _sizes(
    entries: Iterable[Entry], sized: Mapping[str, SizePage]
) -> Iterable[tuple[tuple[str, str], str]]:
    """The address of each handout at each of its sizes."""
    for entry in entries:
        page = sized.get(entry.address)
        folder = entry.address.rpartition("/")[0]
        for size, name in page.names.items() if page else ():
            yield (entry.name, size), f"{folder}/{name}.md"


def _links(config: MkDocsConfig) -> Link:
    """Links from page to page as the site is set up."""

    @cache
    def url(address: str) -> str:
        return str(File.generated(config, address, content="").url)

    return lambda here, there: get_relative_url(url(there), url(here))
