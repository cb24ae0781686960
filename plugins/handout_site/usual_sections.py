"""The usual sections of a handout: how a page is laid out whose author does not lay it out herself.

A page whose block at the top does not say what it shows gets all of `SECTIONS`, in their order,
each with its parts of that block. What its author writes goes before: words below a heading of that
name, a block there, a heading at another place, and what she shows elsewhere is not shown twice.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from handout_engine.pages.blocks import PAGE, Block
from handout_engine.pages.fragments.presence import has_part
from handout_engine.working.workings import Working
from handout_site.fences import Heading, Scan, scan
from handout_site.numbered import Text

LEVEL = 2
"""The level of a section's heading: below the page's title."""


@dataclass(frozen=True)
class Section:
    """A section: its heading, and the parts that it shows, a block for each group of them.

    The parts are of the block at the top, or `of_page`. `below` are sections inside it. If it is
    not written, it comes behind all those before it; at the end of the page if it is `closing`.
    """

    heading: str
    shows: tuple[tuple[str, ...], ...]
    of_page: bool = False
    level: int = LEVEL
    below: tuple[Section, ...] = ()
    closing: bool = False


AT_A_GLANCE = Section("At a glance", (("supplies",),))
YOUR_MEASURES = Section("Your measures", (("measures",),))
CAUTIONS = Section("Cautions", (("cautions",),), of_page=True, level=LEVEL + 1)
SEW = Section("Sew", (("steps",),))
SOURCES = Section("Sources", (("sources",),), of_page=True, closing=True)
SECTIONS = (
    AT_A_GLANCE,
    YOUR_MEASURES,
    Section("Before you cut", (("sample",),), below=(CAUTIONS,)),
    Section("Cut", (("cuts", "layout"),)),
    Section("Mark", (("marks",), ("chart",), ("drawing",))),
    SEW,
    Section("Other sizes", (("sizes",),), closing=True),
    Section("Where the numbers come from", (("numbers",),), closing=True),
    SOURCES,
)
"""All of them, in order: the one place where the headings of handouts are written."""
MOST_ADDED = sum(len(section.shows) for section in SECTIONS)
"""How many blocks a page gets at most that are not of the page."""
SHOWN_AT_THE_TOP = ("finished",)
"""What the block at the top shows itself: the other parts have their sections."""
IN_TWO_PARTS = frozenset({"begin", "finish"})


@dataclass(frozen=True)
class Top:
    """The block at the top of a page, and its working; None where it cannot be worked out."""

    block: Block
    working: Working | None

    def has(self, part: str) -> bool:
        """Whether it has something to show there; of what cannot be worked out, all may come."""
        if part == "sizes":
            return bool(self.block.sizes)
        return self.working is None or has_part(self.working, part)


def is_at_the_top(block: Block, found: Scan) -> bool:
    """Whether a block lays out its page: it stands above all sections, and names no parts."""
    above = all(block.line < each.line for each in found.headings if each.level >= LEVEL)
    return bool(block.technique) and above and "show" not in block.lines


def drawn_at_the_top(block: Block) -> Block:
    """The block at the top, as it is shown there."""
    return replace(block, show=SHOWN_AT_THE_TOP)


def written_out(section: Section, blocks: Iterable[str], level: int = LEVEL) -> str:
    """A section as Markdown: its heading, and what stands below it."""
    return "\n\n".join([f"{'#' * level} {section.heading}", *blocks])


def block_of(name: str, parts: Sequence[str]) -> str:
    """A block that shows parts of another, or of the page, as Markdown."""
    return f"```calc\nof: {name}\nshow: [{', '.join(parts)}]\n```"


def laid_out(text: Text, top: Top, blocks: Sequence[Block]) -> Text:
    """A page's text with the usual sections; `blocks` are those that its author wrote."""
    page = _Page(text, top, _shown(blocks, top.block.name))
    after = page.first_section
    for section in SECTIONS:
        if not section.closing:
            after = max(after, page.put(section, after))
    closing = [section for section in SECTIONS if section.closing]
    for number, section in enumerate(closing, 1):
        page.put(section, page.first_of(closing[number:]))
    return page.laid_out()


def _shown(blocks: Iterable[Block], top: str) -> frozenset[str]:
    """The parts of the block at the top, or of the page, that its author shows where she wants."""
    shown = {part for each in blocks if each.of in {PAGE, top} for part in each.show}
    return frozenset(shown | {"steps"} if shown & IN_TWO_PARTS else shown)


class _Page:
    """A page's lines, counted from 0, its headings below the top, and what comes between them."""

    def __init__(self, text: Text, top: Top, shown: frozenset[str]) -> None:
        self.text = text
        self.top = top
        self.shown = shown
        self.lines = text.markdown.split("\n")
        found = scan(text.markdown, range(len(self.lines)))
        start = text.numbers.index(top.block.line)
        self.headings = [each for each in found.headings if each.line > start]
        self.fences = [each.line for each in found.fences]
        self.added: dict[int, list[str]] = {}

    @property
    def first_section(self) -> int:
        """Where the first section begins that the author wrote; the end of a page without any."""
        return min((each.line for each in self.headings), default=len(self.lines))

    def first_of(self, sections: Iterable[Section]) -> int:
        """Where the first of some sections begins that is written; the end where none is."""
        written = filter(None, map(self._written, sections))
        return min((each.line for each in written), default=len(self.lines))

    def put(self, section: Section, missing: int) -> int:
        """Give the page a section, at the line `missing` if it is not written; where it ends."""
        written = self._written(section)
        if written is None:
            end = missing
            self._add(end, self._whole(section))
        else:
            own, end = self._ends(written)
            if not any(written.line < line < own for line in self.fences):
                self._add(own, "\n\n".join(self._blocks(section)))
        for each in section.below:
            if written or self._written(each):
                self.put(each, end)
        return end

    def laid_out(self) -> Text:
        """The page's text with all that was put in; such a line has the number of that before."""
        lines: list[tuple[str, int]] = []
        for number in range(len(self.lines) + 1):
            for added in self.added.get(number, ()):
                before = self.text.numbers[max(number - 1, 0)]
                lines.extend((line, before) for line in ("", *added.split("\n"), ""))
            if number < len(self.lines):
                lines.append((self.lines[number], self.text.numbers[number]))
        return Text("\n".join(line for line, _ in lines), [number for _, number in lines])

    def _add(self, line: int, markdown: str) -> None:
        if markdown:
            self.added.setdefault(line, []).append(markdown)

    def _whole(self, section: Section) -> str:
        """A section that is not written, with those below it; empty if it would show nothing."""
        below = (self._whole(each) for each in section.below if not self._written(each))
        blocks = [*self._blocks(section), *filter(None, below)]
        return written_out(section, blocks, section.level) if blocks else ""

    def _blocks(self, section: Section) -> Iterator[str]:
        """The blocks of a section, of what there is and is not shown elsewhere."""
        for group in section.shows:
            parts = [part for part in group if part not in self.shown]
            if not section.of_page:
                parts = [part for part in parts if self.top.has(part)]
            if parts:
                yield block_of(PAGE if section.of_page else self.top.block.name, parts)

    def _written(self, section: Section) -> Heading | None:
        """The heading of a section, where its author wrote it; of one below others at any level."""
        for each in self.headings:
            fits = each.level == LEVEL or (each.level > LEVEL and section.level > LEVEL)
            if fits and each.words.casefold() == section.heading.casefold():
                return each
        return None

    def _ends(self, heading: Heading) -> tuple[int, int]:
        """Where a section's own text ends, and where all ends that stands below its heading."""
        later = [each for each in self.headings if each.line > heading.line]
        own = min((each.line for each in later), default=len(self.lines))
        whole = (each.line for each in later if each.level <= heading.level)
        return own, min(whole, default=len(self.lines))
