"""A page for each size of a sized handout, with links between them that need no script.

A handout is sized when its first garment block lists `sizes`. The handout itself is the page of
its own size; the others stand beside it, their text the same, their garment at another size.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import PurePosixPath

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, InclusionLevel
from mkdocs.structure.pages import Page

from handout_engine.amounts.refusals import RefusalsError
from handout_engine.bodies.measures import LENGTHS, SIZE, USUAL_SIZE
from handout_engine.pages.blocks import GARMENT, Block, read_block
from handout_engine.pages.fragments.size_choice import size_choice
from handout_engine.pages.made_to import MadeTo
from handout_site.below_title import below_title, cannot_be_made
from handout_site.fences import scan
from handout_site.library import Entry
from handout_site.mappings import DocumentError, read_mapping
from handout_site.reading import EXAMPLE, Handout, Terms
from handout_site.slips import Slip

TAKEN = "a sized handout has a page of this name for one of its sizes; name the file anew"
_GARMENT = re.compile(rf"^\s*{GARMENT}\s*:", re.MULTILINE)


@dataclass(frozen=True)
class SizePage:
    """One page of a sized handout: its size, the handout's own, and the name of each page."""

    size: str
    own: str
    names: Mapping[str, str]

    @property
    def is_own(self) -> bool:
        """Whether it is the handout's own page."""
        return self.size == self.own

    def terms(self, terms: Terms) -> Terms:
        """What the page is worked out with: its own size, if it is not the handout's."""
        return terms if self.is_own else replace(terms, fit={SIZE: self.size})

    def mark(self, page: Page) -> None:
        """Give the page its title; only the handout's own page is found by searching."""
        page.meta["handout"] = str(page.title)
        if not self.is_own:
            page.meta["title"] = f"{page.title}, size {self.size}"
            page.meta["search"] = {"exclude": True}

    @property
    def addresses(self) -> dict[str, str]:
        """The address of each of its pages from another, by size."""
        return {size: f"{name}.html" for size, name in self.names.items()}

    def with_choice(self, content: str, shown: MadeTo | None) -> str:
        """A page's HTML with the sizes to choose from below its title.

        `shown` is what the page is made to; None where it cannot be made in its size.
        """
        made = shown or MadeTo(LENGTHS[self.size])
        return below_title(content, size_choice(self.addresses, made))

    def impossible(self, title: str, handout: Handout) -> str:
        """What stands on a page whose handout cannot be made in its size."""
        return cannot_be_made(title, f"This cannot be made in size {self.size}.", handout)


@dataclass(frozen=True)
class SizePages:
    """The pages of all sized handouts: what each is, by its address, and the files to add."""

    sized: Mapping[str, SizePage]
    files: Sequence[File]
    slips: Sequence[Slip]


def every_size_page(
    entries: Sequence[Entry], sizes: tuple[str, ...] | None, config: MkDocsConfig
) -> SizePages:
    """The pages of all handouts by size; a handout that has the name of one is a slip."""
    handouts = {entry.address for entry in entries}
    pages = [page for entry in entries for page in size_pages(entry, sizes, config)]
    added = {address: file for file, address, _ in pages if file is not None}
    return SizePages(
        {address: sized for _, address, sized in pages},
        [file for address, file in added.items() if address not in handouts],
        [Slip(address, 1, TAKEN) for address in added if address in handouts],
    )


def size_pages(
    entry: Entry, sizes: tuple[str, ...] | None, config: MkDocsConfig
) -> Iterator[tuple[File | None, str, SizePage]]:
    """The pages of a handout by size: the file to add, its address, and what it is.

    `sizes` are those of the scenario, None where each handout says its own. Nothing comes for a
    handout that is not sized, or whose size is none; for its own page there is no file, since it is
    there already.
    """
    text = entry.text
    garment = _first_garment(text)
    wanted = garment.sizes if garment and sizes is None else sizes
    if garment is None or not garment.sizes or not wanted:
        return
    own = garment.fields.get(SIZE, USUAL_SIZE)
    if not isinstance(own, str) or own not in LENGTHS:
        return
    every = sorted({*wanted, own}, key=int)
    stem = PurePosixPath(entry.name).name
    names = {size: stem if size == own else f"{stem}-size-{size}" for size in every}
    for size in every:
        address = entry.address if size == own else entry.address[:-3] + f"-size-{size}.md"
        file = None
        if size != own:
            file = File.generated(
                config, address, content=text, inclusion=InclusionLevel.NOT_IN_NAV
            )
        yield file, address, SizePage(size, own, names)


def _first_garment(text: str) -> Block | None:
    """The first garment block of a handout; None where there is none that can be read."""
    for fence in scan(text).fences:
        if _GARMENT.search(fence.body):
            try:
                return read_block(read_mapping(fence.body, EXAMPLE, wraps=False).fields)  # type: ignore[arg-type]
            except (DocumentError, RefusalsError):
                return None
    return None
