"""A handout's Markdown, read into blocks and worked out by the engine.

This is all that the plugin, `handouts check` and the tests share; it knows no MkDocs.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from handout_engine.blocks import REFERENCE, Block, Written, read_block
from handout_engine.pages import Inline, Page, work_page
from handout_engine.refusals import RefusalsError, quoted
from handout_engine.saying import Tape
from handout_site.fences import Fence, Mention, Scan, scan, signature
from handout_site.mappings import DocumentError, Plain, read_mapping
from handout_site.slips import Slip

EXAMPLE = "a block has lines such as edge: 9 in"
MOST_BLOCKS = 100


@dataclass
class Handout:
    """A page worked out: where each fence's result is found, and what must be mended."""

    file: str
    page: Page
    inlines: tuple[Inline, ...] = ()
    slips: list[Slip] = field(default_factory=list)
    numbers: dict[tuple[str, ...], list[int]] = field(default_factory=dict)
    faulty: dict[tuple[str, ...], str] = field(default_factory=dict)

    @property
    def has_blocks(self) -> bool:
        """Whether anything is computed on the page."""
        return bool(self.page.blocks)

    def next_fragment(self, source: str) -> str:
        """The HTML of the next fence with that source; empty when it has none."""
        places = self.numbers.get(signature(source))
        if not places:
            return ""
        number = places.pop(0) if len(places) > 1 else places[0]
        return self.page.fragment(number)

    def slips_at(self, source: str) -> list[str]:
        """The slips of a fence, to be shown in its place while the author is writing."""
        mark = signature(source)
        if mark in self.faulty:
            return [self.faulty[mark]]
        places = self.numbers.get(mark, [])
        names = {self.page.blocks[number].name for number in places}
        return [problem.text for problem in self.page.problems if problem.block in names]


def read_handout(
    markdown: str,
    file: str,
    tape: Tape,
    defaults: Mapping[str, str] | None = None,
    first_line: int = 1,
) -> Handout:
    """Read and work out all blocks of a page whose text begins at `first_line` of its file."""
    found = scan(markdown, first_line)
    read = _read_fences(found, file)
    inlines, loose = _read_mentions(found.mentions, file)
    page = work_page([block for block, _ in read.blocks], tape, defaults, inlines)
    handout = Handout(file, page, inlines)
    handout.slips.extend([*read.slips, *loose])
    handout.slips.extend(Slip(file, problem.line, problem.text) for problem in page.problems)
    handout.faulty.update(read.faulty)
    for number, (_, fence) in enumerate(read.blocks):
        handout.numbers.setdefault(signature(fence.body), []).append(number)
    return handout


def first_line(whole: str, markdown: str) -> int:
    """The line of its file at which a page's Markdown begins, front matter taken off."""
    return whole.replace("\r\n", "\n").count("\n") - markdown.count("\n") + 1


@dataclass
class _Read:
    blocks: list[tuple[Block, Fence]] = field(default_factory=list)
    slips: list[Slip] = field(default_factory=list)
    faulty: dict[tuple[str, ...], str] = field(default_factory=dict)


def _read_fences(found: Scan, file: str) -> _Read:
    read = _Read()
    if len(found.fences) > MOST_BLOCKS:
        line = found.fences[MOST_BLOCKS].line
        text = f"{len(found.fences)} blocks are too many for a page; the most is {MOST_BLOCKS}"
        read.slips.append(Slip(file, line, text))
    for fence in found.fences[:MOST_BLOCKS]:
        try:
            read.blocks.append((_block(fence), fence))
        except DocumentError as error:
            read.slips.append(Slip(file, fence.line + error.line, f"calc: {error.message}"))
            read.faulty[signature(fence.body)] = error.message
        except RefusalsError as error:
            read.faulty[signature(fence.body)] = str(error)
            lines = _lines(fence)
            for refusal in error.refusals:
                line = lines.get(refusal.field or "", fence.line)
                read.slips.append(Slip(file, line, f"calc: {refusal.message}"))
    return read


def _block(fence: Fence) -> Block:
    if not fence.closed:
        raise DocumentError(0, "the block is not closed; end it with the marks it began with")
    document = read_mapping(fence.body, EXAMPLE)
    fields = {
        name: _written(name, value, document.lines) for name, value in document.fields.items()
    }
    return read_block(fields, fence.line, _lines(fence))


def _lines(fence: Fence) -> dict[str, int]:
    lines = read_mapping(fence.body, EXAMPLE).lines
    return {name: fence.line + line for name, line in lines.items()}


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
