"""The handouts of a course worked out for each seat: its size, measures, inputs and cloths."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from mkdocs.utils.meta import get_data

from handout_engine.amounts.refusals import nearest_name, quoted
from handout_engine.pages.blocks import Block
from handout_engine.pages.fragments.kits import Making, Packed
from handout_engine.pages.kits import kit_of_pages
from handout_engine.pages.ordering import named
from handout_engine.pages.page import Page, work_page
from handout_engine.register import find, keys
from handout_engine.working.workings import Working
from handout_site.course import Course, Seat, Sewn
from handout_site.library import Entry, title_of
from handout_site.plain_text import as_read
from handout_site.reading import Terms, first_line, made_for, read_blocks
from handout_site.slips import Slip


@dataclass
class Worked:
    """A course worked out, and what must be mended in its scenario.

    `titles` are those of its handouts, `parts` those of their blocks by handout and block;
    `garments` are the names of the blocks that the handouts are sized by.
    """

    seats: tuple[Packed, ...] = ()
    titles: Mapping[str, str] = field(default_factory=dict)
    parts: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    garments: Mapping[str, str] = field(default_factory=dict)
    slips: list[Slip] = field(default_factory=list)


@dataclass(frozen=True)
class _Read:
    """A handout that is sewn: its title, its blocks, and the names of those that are sewn."""

    sewn: Sewn
    title: str
    blocks: Sequence[Block]
    names: Sequence[str]


def work_course(course: Course, entries: Iterable[Entry], terms: Terms, file: str) -> Worked:
    """Work all handouts out for every seat; `file` is the scenario as messages show it."""
    worked = Worked()
    by_name = {entry.name: entry for entry in entries}
    handouts = [_read(sewn, by_name[sewn.handout]) for sewn in course.sewn.values()]
    worked.slips.extend(_unknown_blocks(course, handouts, file))
    worked.titles = {each.sewn.handout: each.title for each in handouts}
    worked.parts = {each.sewn.handout: _titles(each.blocks) for each in handouts}
    worked.garments = {
        each.sewn.handout: block.name
        for each in handouts
        for block in reversed(each.blocks)
        if block.is_garment
    }
    problems: list[Slip] = []
    worked.seats = tuple(_packed(seat, handouts, terms, problems, file) for seat in course.seats)
    worked.slips.extend(problems)
    if not worked.slips:
        worked.slips.extend(_unknown_names(course, worked.seats, file))
    return worked


def seat_terms(seat: Seat, terms: Terms) -> Terms:
    """What is worked out at a seat: the scenario's terms, with the seat's own before them."""
    return replace(
        terms,
        inputs={**terms.inputs, **seat.inputs},
        fit={**terms.fit, **seat.fit, **seat.inputs},
    )


def blocks_of(entry: Entry) -> Sequence[Block]:
    """The blocks of a handout as they are written, each with its name."""
    text = entry.text
    body, _ = get_data(text)
    blocks, _ = read_blocks(body, entry.name, first_line(text, body))
    return named(blocks)


def _unknown_names(course: Course, seats: Sequence[Packed], file: str) -> Iterable[Slip]:
    """Cloths and pieces that the scenario names and nothing that is sewn has."""
    for seat, packed in zip(course.seats, seats, strict=True):
        yield from _unknown_cloths(seat, packed, file)
    if seats:
        yield from _unknown_pieces(course, seats, file)


def _read(sewn: Sewn, entry: Entry) -> _Read:
    every = [replace(each, show=()) for each in blocks_of(entry) if each.technique]
    known = [each.name for each in every]
    names = [name for name in known if name in (sewn.blocks or known)]
    return _Read(sewn, as_read(title_of(entry)), every, names)


def _unknown_blocks(course: Course, handouts: Iterable[_Read], file: str) -> Iterable[Slip]:
    known = {each.sewn.handout: [block.name for block in each.blocks] for each in handouts}
    for sewn in course.every_mention:
        names = known[sewn.handout]
        for name in sewn.blocks:
            if name not in names:
                text = f'there is no block "{quoted(name)}" in {sewn.handout}'
                yield Slip(file, sewn.line, text + nearest_name(name, names))


def _titles(blocks: Iterable[Block]) -> dict[str, str]:
    """What each block makes, where there is such a thing."""
    known = set(keys())
    return {each.name: find(each.technique).title for each in blocks if each.technique in known}


def _needed(handout: _Read) -> list[Block]:
    """The blocks that are sewn and those they refer to; a page's garment always."""
    by_name = {each.name: each for each in handout.blocks}
    found = {each.name for each in handout.blocks if each.is_garment}
    waiting = [*handout.names, *found]
    while waiting:
        name = waiting.pop()
        found.add(name)
        mentioned = by_name[name].mentioned & by_name.keys()
        waiting.extend(mentioned - found)
    return [each for each in handout.blocks if each.name in found]


def _packed(
    seat: Seat, handouts: Iterable[_Read], terms: Terms, slips: list[Slip], file: str
) -> Packed:
    """What one seat sews and takes; notes what cannot be made for it."""
    own = seat_terms(seat, terms)
    makings = []
    for each in handouts:
        page = work_page(made_for(_needed(each), own.fit), terms.tape, own.inputs)
        slips.extend(_problems(seat, each, page, file))
        found = {name: page.workings[name] for name in each.names if name in page.workings}
        makings.append(Making(each.title, _called(found)))
    pages = [list(making.workings.values()) for making in makings]
    needed = kit_of_pages(pages, terms.tape.first, seat.cloths)
    return Packed(
        seat.name, tuple(makings), needed, seat.cloths, frozenset({*terms.fit, *seat.fit})
    )


def _problems(seat: Seat, handout: _Read, page: Page, file: str) -> Iterable[Slip]:
    for problem in page.problems:
        if problem.block in handout.names or problem.block == "":
            line = seat.lines.get(problem.field, seat.line)
            yield Slip(file, line, f"{seat.name}: {handout.sewn.handout}: {problem.text}")


def _called(workings: Mapping[str, Working]) -> dict[str, Working]:
    """Workings by their titles, those of one title told apart by their blocks' names."""
    twins = Counter(each.title for each in workings.values())
    return {
        each.title if twins[each.title] == 1 else f"{each.title} “{name}”": each
        for name, each in workings.items()
    }


def _unknown_cloths(seat: Seat, packed: Packed, file: str) -> Iterable[Slip]:
    known = {piece.cloth for piece in packed.every_piece}
    for name in seat.cloths:
        if name not in known:
            text = f'{seat.name}: cloths: there is no cloth "{quoted(name)}"'
            yield Slip(file, seat.lines.get(name, seat.line), text + nearest_name(name, known))


def _unknown_pieces(course: Course, seats: Sequence[Packed], file: str) -> Iterable[Slip]:
    known = {piece.name for packed in seats for piece in packed.every_piece}
    for number, lesson in enumerate(course.lessons, 1):
        for name, line in lesson.cut.items():
            if name not in known:
                text = f'lesson {number}: there is no piece "{quoted(name)}" in what is sewn'
                yield Slip(file, line, text + nearest_name(name, known))
