"""Pages that are made from the code and from the handouts, where the menu asks for them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File

from handout_site import checks, practice, reference
from handout_site.console import main
from handout_site.library import Entry


def generated_pages(config: MkDocsConfig, entries: Sequence[Entry]) -> Iterator[File]:
    """The reference, the handouts by practice, and the checks; `entries` are those published."""
    if reference.FOLDER in str(config.nav):
        for address, text in reference.pages(main).items():
            yield File.generated(config, address, content=text)
    if practice.ADDRESS in str(config.nav):
        text = practice.by_practice(entries)
        yield File.generated(config, practice.ADDRESS, content=text)
    if checks.ADDRESS in str(config.nav):
        yield checks.file(config, entries)
