"""A handout's Markdown, read into blocks and worked out by the engine.

This is all that the plugin, `handouts check` and the tests share; it knows no MkDocs.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.refusals import RefusalsError, quoted
from handout_engine.amounts.saying import Tape
from handout_engine.pages.blocks import REFERENCE, Block, Written, read_block
from handout_engine.pages.ordering import named
from handout_engine.pages.page import Page, work_page
from handout_engine.pages.problems import Inline
from handout_engine.pages.sized import fitted
from handout_engine.register import find, known
from handout_site.closing import with_closing_parts
from handout_site.fences import OF_PAGE, Fence, Mention, Scan, scan, signature
from handout_site.mappings import Document, DocumentError, Plain, read_mapping
from handout_site.numbered import Text
from handout_site.slips import Slip
from handout_site.usual_sections import (
    MOST_ADDED,
    Top,
    drawn_at_the_top,
    is_at_the_top,
    laid_out,
)

EXAMPLE = "a block has lines such as edge: 9 in"
MOST_BLOCKS = 100
UNKNOWN = -1
"""The number of a fence that was not found beforehand."""

NOT_FOUND = (
    "a block of this page cannot be found; look for a comment or a block before it that is opened "
    "or closed wrongly"
)
NO_TEXT = "the file cannot be read as text"
UNCLOSED = "the block is not closed; end it with the marks it began with"
NOT_TAKEN = (
    "the block would be printed as code; begin it with ```calc and nothing behind it, and indent "
    "its lines as its first (to show a block as code, put it into a longer fence)"
)


@dataclass
class Handout:
    """A page worked out: the result of each fence, by its number, and what must be mended.

    `markdown` is its text with the sections that its author left to the build. `inputs` are the
    defaults it was worked out with, `sizes` the addresses of its pages at all its sizes, where it
    has several.
    """

    file: str
    page: Page
    markdown: str = ""
    fences: tuple[Fence, ...] = ()
    inlines: tuple[Inline, ...] = ()
    inputs: Mapping[str, str] = field(default_factory=dict)
    slips: list[Slip] = field(default_factory=list)
    numbers: dict[tuple[str, ...], list[int]] = field(default_factory=dict)
    blocks: dict[int, int] = field(default_factory=dict)
    faulty: dict[int, str] = field(default_factory=dict)
    sizes: Mapping[str, str] = field(default_factory=dict)

    @property
    def has_blocks(self) -> bool:
        """Whether anything is computed on the page."""
        return bool(self.page.blocks)

    def next_number(self, source: str) -> int:
        """The number of the next fence with that source; UNKNOWN when there is none."""
        places = self.numbers.get(signature(source), [UNKNOWN])
        return places.pop(0) if len(places) > 1 else places[0]

    def fragment(self, number: int) -> str:
        """The HTML of a fence's block; empty when it has a problem."""
        return self.page.fragment(self.blocks[number]) if number in self.blocks else ""

    def slips_at(self, number: int) -> list[str]:
        """The slips of a fence, to be shown in its place while the author is writing."""
        if number in self.faulty:
            return [self.faulty[number]]
        if number not in self.blocks:
            return []
        name = self.page.blocks[self.blocks[number]].name
        return [problem.text for problem in self.page.problems if problem.block == name]

    def slips_of_places(self, numbers: Collection[int], left: Iterable[str]) -> list[Slip]:
        """What Markdown did not take as it was meant: fences and values that it left as text."""
        slips = [
            Slip(self.file, fence.line, NOT_TAKEN)
            for number, fence in enumerate(self.fences)
            if number not in numbers
        ]
        if UNKNOWN in numbers:
            slips.append(Slip(self.file, 1, NOT_FOUND))
        lines = {inline.reference: inline.line for inline in reversed(self.inlines)}
        for words in left:
            text = f"{{{{ {quoted(words)} }}}} cannot be put in here; put it into plain text"
            slips.append(Slip(self.file, lines.get(words, 1), text))
        return slips


@dataclass(frozen=True)
class Terms:
    """What a page is worked out with besides its own text.

    `inputs` stand in for the techniques' defaults; `fit` is the size, and the measures, that the
    page's garment is made to instead of the page's.
    """

    tape: Tape = field(default_factory=Tape)
    inputs: Mapping[str, str] = field(default_factory=dict)
    fit: Mapping[str, str] = field(default_factory=dict)


def read_handout(markdown: str, file: str, terms: Terms, first_line: int = 1) -> Handout:
    """Read and work out all blocks of a page whose text begins at `first_line` of its file."""
    written = Text.written(markdown, first_line)
    whole = _laid_out(written, file, terms)
    text = with_closing_parts(whole)
    found = scan(text.markdown, text.numbers)
    read = _read_fences(found, file, MOST_BLOCKS + (0 if whole is written else MOST_ADDED))
    inlines, loose = _read_mentions(found.mentions, file)
    blocks = made_for([block for block, _ in read.blocks], terms.fit)
    page = work_page(blocks, terms.tape, terms.inputs, inlines)
    handout = Handout(file, page, text.markdown, tuple(found.fences), inlines, terms.inputs)
    handout.slips.extend([*read.slips, *loose])
    handout.slips.extend(Slip(file, line, UNCLOSED) for line in found.unclosed)
    handout.slips.extend(Slip(file, problem.line, problem.text) for problem in page.problems)
    handout.faulty.update(read.faulty)
    handout.blocks.update((fence, block) for block, (_, fence) in enumerate(read.blocks))
    for number, fence in enumerate(found.fences):
        handout.numbers.setdefault(signature(fence.body), []).append(number)
    return handout


def whole_markdown(markdown: str, file: str, terms: Terms) -> str:
    """A page's text with all that its author leaves to the build: usual sections, closing parts."""
    return with_closing_parts(_laid_out(Text.written(markdown), file, terms)).markdown


def _laid_out(text: Text, file: str, terms: Terms) -> Text:
    """A page's text with the usual sections, if it has a block at its top that leaves them out.

    Which of them have something to show is known when that block is worked out. All blocks are then
    worked out again with their page, which takes from what is kept.
    """
    found = scan(text.markdown, text.numbers)
    blocks = named([block for block, _ in _read_fences(found, file).blocks])
    top = next((block for block in blocks if block.technique), None)
    if top is None or found.unclosed or not is_at_the_top(top, found):
        return text
    unshown = [replace(block, show=()) for block in made_for(blocks, terms.fit)]
    working = work_page(unshown, terms.tape, terms.inputs).workings.get(top.name)
    return laid_out(text, Top(top, working), blocks)


def made_for(blocks: Sequence[Block], fit: Mapping[str, str]) -> list[Block]:
    """The blocks with their garments made to a size and measures, each given what it asks for."""
    garments = {each.technique for each in blocks if each.is_garment and known(each.technique)}
    asked = {key: [each.name for each in declared_inputs(find(key))] for key in garments}
    return fitted(blocks, fit, asked)


def read_blocks(markdown: str, file: str, first_line: int = 1) -> tuple[list[Block], list[Slip]]:
    """The blocks of a page as they are written, and what is wrong with those that are left out."""
    text = Text.written(markdown, first_line)
    read = _read_fences(scan(text.markdown, text.numbers), file)
    return [block for block, _ in read.blocks], read.slips


def first_line(whole: str, markdown: str) -> int:
    """The line of its file at which a page's Markdown begins, front matter taken off."""
    return whole.replace("\r\n", "\n").count("\n") - markdown.count("\n") + 1


@dataclass
class _Read:
    blocks: list[tuple[Block, int]] = field(default_factory=list)
    slips: list[Slip] = field(default_factory=list)
    faulty: dict[int, str] = field(default_factory=dict)


def _read_fences(found: Scan, file: str, most: int = MOST_BLOCKS) -> _Read:
    read = _Read()
    own = [fence for fence in found.fences if not OF_PAGE.search(fence.body)]
    if len(own) > most:
        text = f"{len(own)} blocks are too many for a page; the most is {most}"
        read.slips.append(Slip(file, own[most].line, text))
        return read
    for number, fence in enumerate(found.fences):
        lines: dict[str, int] = {}
        try:
            document = read_mapping(fence.body, EXAMPLE, wraps=False)
            lines = {name: fence.line + line for name, line in document.lines.items()}
            read.blocks.append((read_block(_fields(document), fence.line, lines), number))
        except DocumentError as error:
            read.slips.append(Slip(file, fence.line + error.line, f"calc: {error.message}"))
            read.faulty[number] = error.message
        except RefusalsError as error:
            read.faulty[number] = str(error)
            for refusal in error.refusals:
                line = lines.get(refusal.field or "", fence.line)
                read.slips.append(Slip(file, line, f"calc: {refusal.message}"))
    first = next((n for n, (block, _) in enumerate(read.blocks) if block.technique), None)
    if first is not None and is_at_the_top(read.blocks[first][0], found):
        block, number = read.blocks[first]
        read.blocks[first] = drawn_at_the_top(block), number
    return read


def _fields(document: Document) -> dict[str, Written]:
    return {name: _written(name, value, document.lines) for name, value in document.fields.items()}


def _written(name: str, value: Plain, lines: Mapping[str, int]) -> Written:
    if isinstance(value, str):
        return value
    if isinstance(value, list) and all(isinstance(each, str) for each in value):
        return [str(each) for each in value]
    raise DocumentError(lines[name], f"{quoted(name)}: write one value or a plain list of values")


def _read_mentions(mentions: Iterable[Mention], file: str) -> tuple[tuple[Inline, ...], list[Slip]]:
    inlines: list[Inline] = []
    slips: list[Slip] = []
    for mention in mentions:
        if REFERENCE.fullmatch(mention.words):
            inlines.append(Inline(mention.words, mention.line))
        else:
            words = quoted(mention.words)
            text = f"{{{{ {words} }}}} names no value; write {{{{ block.value }}}}"
            slips.append(Slip(file, mention.line, text))
    return tuple(inlines), slips
