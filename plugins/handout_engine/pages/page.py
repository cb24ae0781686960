"""All blocks of one page: put in order of their references, worked out, and made into fragments.

The site's build and the reader's browser both call `work_page`; nothing else works a page out.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from xml.etree.ElementTree import Element

from handout_engine.amounts.inputs import Later, declared_inputs
from handout_engine.amounts.kinds import Raw
from handout_engine.amounts.refusals import RefusalError, RefusalsError, nearest_name, quoted
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.working_out import RingError
from handout_engine.bodies.measures import LENGTHS
from handout_engine.drawing.markup import element, html
from handout_engine.pages import kept
from handout_engine.pages.blocks import GARMENT, LIBRARY, PAGE, REFERENCE, SIZES, Block, Written
from handout_engine.pages.fragments import library_parts, page_parts
from handout_engine.pages.fragments.words import amount
from handout_engine.pages.ordering import in_order, named, twins
from handout_engine.pages.problems import Inline, Problem
from handout_engine.pages.sized import following, sized
from handout_engine.paper.sheets import Sheet
from handout_engine.register import find, find_of_kind, known
from handout_engine.working.technique import Technique, make
from handout_engine.working.workings import Working


@dataclass
class Page:
    """A page worked out: techniques and workings by block name, and every problem found."""

    blocks: tuple[Block, ...]
    tape: Tape
    techniques: dict[str, Technique] = field(default_factory=dict)
    workings: dict[str, Working] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    graded: Mapping[str, Page] = field(default_factory=dict)
    rings: set[frozenset[str]] = field(default_factory=set)

    @property
    def garment(self) -> Block | None:
        """The garment that the page is sized by: its first."""
        return next((each for each in self.blocks if each.is_garment), None)

    def fragment(self, number: int) -> str:
        """The HTML of the block with that number, counted from 0; empty if it has a problem."""
        block = self.blocks[number]
        if block.of in {PAGE, LIBRARY}:
            return self._closing_part(number)
        name = block.of or block.name
        if name not in self.techniques:
            return ""
        columns = self._columns(name) if SIZES in block.show else ()
        return kept.fragment(self.techniques[name], block.show, self.tape, number, name, columns)

    def _columns(self, name: str) -> tuple[kept.Column, ...]:
        """A block at each size of the page: its technique there, or why it is impossible."""
        return tuple(
            (size, page.techniques.get(name) or page.reason(name))
            for size, page in self.graded.items()
        )

    def reason(self, name: str) -> str:
        """Why a block could not be worked out; a block that only waits gives the first reason."""
        own = [problem.text for problem in self.problems if problem.block == name]
        return next(iter(own or [problem.text for problem in self.problems]), "")

    def _closing_part(self, number: int) -> str:
        block = self.blocks[number]
        if block.of == PAGE:
            made = page_parts(self.workings.values(), block.show, self.tape)
        else:
            made = library_parts(block.show)
        made.set("data-place", str(number))
        return html(made)

    def sheets(self) -> dict[str, Sheet]:
        """The true-scale sheets of all blocks by their addresses beside the page, each once."""
        every = (kept.true_scale_sheets(each, self.tape) for each in self.techniques.values())
        return {sheet.address: sheet for sheets in every for sheet in sheets}

    def inline_element(self, reference: str) -> Element | None:
        """One value as it stands in running text; None when its block has a problem."""
        block, _, value = reference.partition(".")
        if block not in self.workings or value not in self.workings[block].named:
            return None
        said = amount(self.workings[block].named[value], self.tape)
        return element("span", said, class_="value", data_value=reference)

    def inline(self, reference: str) -> str:
        """The HTML of one value in running text."""
        found = self.inline_element(reference)
        return "" if found is None else html(found)


def work_page(
    blocks: Sequence[Block],
    tape: Tape,
    defaults: Mapping[str, str] | None = None,
    inlines: Sequence[Inline] = (),
    *,
    whole: bool = True,
) -> Page:
    """Work out all blocks of a page; `defaults` replace the techniques' own where they apply.

    A block that is not `whole` has its values worked out and checked, and nothing sewn with them.
    """
    page = Page(following(named(blocks), _asked(blocks)), tape)
    page.problems.extend(twins(page.blocks))
    in_turn = in_order(page.blocks)
    for block in in_turn:
        _make(page, block, defaults or {})
    for block in sorted(in_turn, key=lambda each: each.line):
        _work(page, block, whole=whole)
    _check_mentions(page, inlines)
    page.problems.sort(key=lambda problem: problem.line)
    _grade(page, defaults or {})
    return page


def _asked(blocks: Sequence[Block]) -> dict[str, list[str]]:
    """The names of the inputs of each garment on the page; of none that is not there."""
    garments = {each.technique for each in blocks if each.is_garment and known(each.technique)}
    return {key: [each.name for each in declared_inputs(find(key))] for key in garments}


def _grade(page: Page, defaults: Mapping[str, str]) -> None:
    """Work the page out at each of its sizes, where a block shows them side by side."""
    shown = [block for block in page.blocks if SIZES in block.show]
    if not shown:
        return
    if page.garment is None:
        text = "show: sizes needs a garment on the page; take it out, or name one"
        page.problems.extend(Problem(block.line, text, block.name) for block in shown)
        return
    plain = [replace(block, show=()) for block in page.blocks]
    page.graded = {
        size: work_page(sized(plain, size), page.tape, defaults, whole=False)
        for size in page.garment.sizes or LENGTHS
    }


class WaitingError(RefusalError):
    """A reference to a block that cannot be worked out, of which its own problem tells."""


def _make(page: Page, block: Block, defaults: Mapping[str, str]) -> None:
    """Make the technique of a block, or note what is wrong with what is written for it."""
    try:
        technique = find_of_kind(block.technique, garment=block.is_garment)
        known = {each.name for each in declared_inputs(technique)}
        usual = {name: text for name, text in defaults.items() if name in known}
        made = make(technique, _looked_up(page, {**usual, **block.fields}))
    except WaitingError:
        return
    except RefusalsError as several:
        for refusal in several.refusals:
            _note(page, block, refusal)
    except RefusalError as refusal:
        _note(page, block, refusal)
    else:
        made.called = block.name
        page.techniques[block.name] = made


def _work(page: Page, block: Block, *, whole: bool) -> None:
    """Work one block out, or note what is wrong with it."""
    if block.name not in page.techniques:
        return
    made = page.techniques[block.name]
    waits = _refuse_references(page, block, made)
    if not waits:
        try:
            page.workings[block.name] = kept.working(made) if whole else kept.valued(made)
        except WaitingError:
            waits = True
        except RefusalError as refusal:
            _note(page, block, refusal)
    if block.name not in page.workings:
        del page.techniques[block.name]


def _refuse_references(page: Page, block: Block, made: Technique) -> bool:
    """Look up what other blocks work out; whether one is waited for in vain, or is wrong."""
    waits = False
    for name in made.waiting:
        try:
            made.amount(name)
        except WaitingError:
            waits = True
        except RingError as ring:
            waits = True
            if ring.ring not in page.rings:
                page.rings.add(ring.ring)
                _note(page, block, RefusalError(ring.message, name))
        except RefusalError as refusal:
            waits = True
            _note(page, block, refusal.about(name))
    return waits


def _note(page: Page, block: Block, refusal: RefusalError) -> None:
    name = refusal.field or ""
    line = block.lines.get(name, block.line)
    page.problems.append(Problem(line, f"{block.title}: {refusal.message}", block.name, name))


def _looked_up(page: Page, fields: Mapping[str, Written]) -> dict[str, Raw | Later]:
    """The fields, each that refers to another block to be looked up when it is needed."""
    return {
        name: Later(partial(_raw, page, written)) if _refers(written) else written
        for name, written in fields.items()
    }


def _refers(written: Written) -> bool:
    parts = [written] if isinstance(written, str) else written
    return any(REFERENCE.fullmatch(part.strip()) for part in parts)


def _raw(page: Page, written: Written) -> Raw:
    """Text as it is, or the amounts that references speak of."""
    if not isinstance(written, str):
        return [_part(page, part) for part in written]
    return _part(page, written)


def _part(page: Page, written: str) -> Amount:
    match = REFERENCE.fullmatch(written.strip())
    return written if match is None else _mentioned(page, match["block"], match["value"])


def _mentioned(page: Page, name: str, value: str) -> Amount:
    """The amount of another block's value, nothing else of it being worked out.

    Raises RefusalError for what there is not, WaitingError where the block has failed.
    """
    names = {block.name for block in page.blocks if block.technique}
    if name == GARMENT and name not in names:
        raise RefusalError("this page names no garment to take it from")
    if name not in names:
        raise RefusalError(
            f'there is no block "{quoted(name)}" on this page{nearest_name(name, names)}'
        )
    if name not in page.techniques:
        raise WaitingError(f'"{name}" could not be worked out')
    technique = page.techniques[name]
    try:
        found = technique.found(value)
        known = () if found else [*technique.inputs, *technique.values]
    except RingError:
        raise
    except RefusalError as refusal:
        raise WaitingError(refusal.message) from refusal
    if found is None:
        raise RefusalError(f'"{name}" has no value "{quoted(value)}"{nearest_name(value, known)}')
    if found.amount is None:
        raise RefusalError(f'"{name}" was given no {value}')
    return found.amount


def _check_mentions(page: Page, inlines: Sequence[Inline]) -> None:
    """Blocks `of` another and inline values must speak of something on the page."""
    for block in page.blocks:
        names = {each.name for each in page.blocks if each.technique} | {PAGE, LIBRARY}
        if block.of and block.of not in names:
            text = f'of: there is no block "{quoted(block.of)}" on this page'
            text += nearest_name(block.of, names)
            page.problems.append(Problem(block.lines.get("of", block.line), text, block.of, "of"))
    for inline in inlines:
        name, _, value = inline.reference.partition(".")
        try:
            _mentioned(page, name, value)
        except WaitingError:
            continue
        except RefusalError as refusal:
            text = f"{{{{ {quoted(inline.reference)} }}}}: {refusal.message}"
            page.problems.append(Problem(inline.line, text))
