"""A page of a handout for a seat whose baby has measures of her own, or that has inputs of its own.

The kit of a seat leads to the handouts as they are sewn there. Where a handout has a page that is
worked out with the very same size and inputs, that page is it; else the seat has a page of its own
beside the handout, its text the same, its numbers those of the kit.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from pathlib import PurePosixPath

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, InclusionLevel
from mkdocs.structure.pages import Page
from mkdocs.utils import get_relative_url

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.bodies.measures import SIZE, USUAL_SIZE
from handout_engine.drawing.markup import Child, element
from handout_engine.pages.blocks import Block, Written
from handout_engine.pages.made_to import MadeTo
from handout_engine.register import find, keys
from handout_site.below_title import below_title, cannot_be_made
from handout_site.course import Seat
from handout_site.course_menu import kit_address, kit_title
from handout_site.course_work import blocks_of, seat_terms
from handout_site.library import Entry
from handout_site.reading import Handout, Terms, made_for
from handout_site.scenario import Scenario
from handout_site.size_pages import SizePage
from handout_site.slips import Slip

TAKEN = "a course has a page of this name for one of its seats; name the file anew"


@dataclass(frozen=True)
class SeatPage:
    """A handout worked out for one seat: what it is called, and the address of its kit."""

    seat: Seat
    with_terms: Terms
    kit: str

    def terms(self, terms: Terms) -> Terms:
        """What the page is worked out with, whatever the scenario says."""
        del terms
        return self.with_terms

    @property
    def is_own(self) -> bool:
        """It is never the handout's own page."""
        return False

    def mark(self, page: Page) -> None:
        """Give the page its seat and its title; searching does not find it."""
        page.meta["seat"] = self.seat.name
        page.meta["title"] = f"{page.title}, {self.seat.name}"
        page.meta["search"] = {"exclude": True}

    @property
    def addresses(self) -> dict[str, str]:
        """It has no pages at other sizes."""
        return {}

    def with_choice(self, content: str, shown: MadeTo | None) -> str:
        """A page's HTML that says below its title for which seat it is, and leads to the kit.

        `shown` is what the page is made to; None where it is not sized, or cannot be made.
        """
        told: list[Child] = []
        if shown:
            words = f"{shown.words[0].lower()}{shown.words[1:]}"
            told = [": ", element("span", words, class_="made-to")]
        called = element("strong", self.seat.name)
        kit = element("a", "Its kit", href=self.kit, class_="screen-only")
        note = element("p", called, *told, ". ", kit)
        return below_title(content, element("div", note, class_="of-seat"))

    def impossible(self, title: str, handout: Handout) -> str:
        """What stands on a page whose handout cannot be made for the seat."""
        return cannot_be_made(title, f"This cannot be made for {self.seat.name}.", handout)


@dataclass
class SeatPages:
    """All pages of seats: those added to the site, by address, and where each kit leads.

    `leads` holds the address of every handout that is sewn at a seat, by the number of the seat and
    the handout's name; `kits` the title of each kit, its address, and those of its handouts;
    `slips` are handouts that have the name of such a page.
    """

    added: dict[str, SeatPage] = field(default_factory=dict)
    files: list[File] = field(default_factory=list)
    leads: dict[tuple[int, str], str] = field(default_factory=dict)
    kits: tuple[tuple[str, tuple[str, ...]], ...] = ()
    slips: list[Slip] = field(default_factory=list)


def seat_pages(
    config: MkDocsConfig,
    scenario: Scenario,
    entries: Iterable[Entry],
    sized: Mapping[str, SizePage],
) -> SeatPages:
    """The pages of all seats of the scenario's course; `sized` are pages by size, by address."""
    found = SeatPages()
    course = scenario.course
    if course is None or course.wardrobe:
        return found
    by_name = {entry.name: entry for entry in entries}
    handouts = {entry.address for entry in by_name.values()}
    for name in course.sewn:
        handout = _Read(by_name[name], sized.get(by_name[name].address), scenario.terms)
        for number, seat in enumerate(course.seats, 1):
            address = handout.page_for(seat)
            if address is None:
                address = f"{by_name[name].address[:-3]}-seat-{number}.md"
                if address in handouts:
                    found.slips.append(Slip(address, 1, TAKEN))
                else:
                    file = handout.file(config, address)
                    kit = File.generated(config, kit_address(number), content="")
                    found.files.append(file)
                    found.added[address] = SeatPage(
                        seat, seat_terms(seat, scenario.terms), get_relative_url(kit.url, file.url)
                    )
            found.leads[number, name] = address
    found.kits = tuple(
        (
            kit_title(seat),
            (kit_address(number), *(found.leads[number, name] for name in course.sewn)),
        )
        for number, seat in enumerate(course.seats, 1)
    )
    return found


class _Read:
    """A handout read once, to be held against what is sewn at each seat."""

    def __init__(self, entry: Entry, sized: SizePage | None, terms: Terms) -> None:
        """Read its blocks; `terms` are those of the scenario."""
        self.entry, self.sized, self.terms = entry, sized, terms
        known = set(keys())
        self.blocks = [block for block in blocks_of(entry) if block.technique in known]

    def file(self, config: MkDocsConfig, address: str) -> File:
        """A file among the site's sources with its text, at another address."""
        text = self.entry.text
        return File.generated(config, address, content=text, inclusion=InclusionLevel.NOT_IN_NAV)

    def page_for(self, seat: Seat) -> str | None:
        """The address of the page that is worked out as at the seat; None if there is none."""
        wanted = seat_terms(seat, self.terms)
        usual = self.terms.inputs
        changed = {name for name, text in seat.inputs.items() if usual.get(name) != text}
        if changed & self._asked:
            return None
        pages = [(self.entry.address, self.terms)]
        size = seat.fit.get(SIZE, "")
        if self.sized is not None and size in self.sized.names:
            name = self.sized.names[size]
            folder = PurePosixPath(self.entry.address).parent
            of_size = replace(self.sized, size=size).terms(self.terms)
            pages.insert(0, (f"{folder}/{name}.md", of_size))
        made = self._made(wanted.fit)
        return next((address for address, terms in pages if self._made(terms.fit) == made), None)

    @property
    def _asked(self) -> set[str]:
        """The names of all inputs of its blocks."""
        techniques = {block.technique for block in self.blocks}
        return {each.name for key in techniques for each in declared_inputs(find(key))}

    def _made(self, fit: Mapping[str, str]) -> list[Mapping[str, Written]]:
        """Its blocks' fields as they are made to a size and measures."""
        return [_with_size(block) for block in made_for(self.blocks, fit)]


def _with_size(block: Block) -> Mapping[str, Written]:
    """A block's fields; a garment that names no size has the usual one."""
    return {SIZE: USUAL_SIZE, **block.fields} if block.is_garment else block.fields
