"""The handouts of a course worked out for each seat: its size, measures, inputs and cloths."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from mkdocs.utils.meta import get_data

from handout_engine.blocks import Block
from handout_engine.fragments.kits import Making, Packed
from handout_engine.kits import kit
from handout_engine.ordering import named
from handout_engine.pages import Page, work_page
from handout_engine.refusals import nearest_name, quoted
from handout_engine.workings import Working
from handout_site.course import Course, Seat, Sewn
from handout_site.library import Entry, title_of
from handout_site.reading import Terms, first_line, made_for, read_blocks
from handout_site.slips import Slip


@dataclass
class Worked:
    """A course worked out, and what must be mended in its scenario."""

    seats: tuple[Packed, ...] = ()
    titles: Mapping[str, str] = field(default_factory=dict)
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
    handouts = [
        read
        for sewn in course.sewn.values()
        if (read := _read(sewn, by_name[sewn.handout], worked.slips, file))
    ]
    worked.titles = {each.sewn.handout: each.title for each in handouts}
    worked.seats = tuple(
        _packed(seat, handouts, terms, worked.slips, file) for seat in course.seats
    )
    if worked.seats and not worked.slips:
        worked.slips.extend(_unknown_pieces(course, worked.seats, file))
    return worked


def _read(sewn: Sewn, entry: Entry, slips: list[Slip], file: str) -> _Read | None:
    text = entry.path.read_text(encoding="utf-8-sig", errors="replace")
    body, _ = get_data(text)
    blocks, wrong = read_blocks(body, sewn.handout, first_line(text, body))
    every = [replace(each, show=()) for each in named(blocks) if each.technique]
    known = [each.name for each in every]
    for name in sewn.blocks:
        if name not in known:
            sentence = f'there is no block "{quoted(name)}" in {sewn.handout}'
            slips.append(Slip(file, sewn.line, sentence + nearest_name(name, known)))
    if wrong:  # its own page says what is wrong
        return None
    names = [name for name in known if name in (sewn.blocks or known)]
    return _Read(sewn, title_of(entry), _needed(every, names), names)


def _needed(blocks: Sequence[Block], names: Iterable[str]) -> list[Block]:
    """The blocks of these names and those they refer to; a page's garment always."""
    by_name = {each.name: each for each in blocks}
    found = {each.name for each in blocks if each.is_garment}
    waiting = [*names, *found]
    while waiting:
        name = waiting.pop()
        found.add(name)
        waiting.extend(
            each for each in by_name[name].mentioned if each in by_name and each not in found
        )
    return [each for each in blocks if each.name in found]


def _packed(
    seat: Seat, handouts: Iterable[_Read], terms: Terms, slips: list[Slip], file: str
) -> Packed:
    """What one seat sews and takes; notes what cannot be made for it."""
    fit = {**terms.fit, **seat.fit, **seat.inputs}
    inputs = {**terms.inputs, **seat.inputs}
    makings = []
    for each in handouts:
        page = work_page(made_for(each.blocks, fit), terms.tape, inputs)
        slips.extend(_problems(seat, each, page, file))
        found = {name: page.workings[name] for name in each.names if name in page.workings}
        makings.append(Making(each.title, _called(found)))
    every = [working for making in makings for working in making.workings.values()]
    slips.extend(_unknown_cloths(seat, every, file))
    return Packed(seat.name, tuple(makings), kit(every, terms.tape.first, seat.cloths), seat.cloths)


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


def _unknown_cloths(seat: Seat, workings: Iterable[Working], file: str) -> Iterable[Slip]:
    known = {piece.cloth for each in workings for piece in each.pieces}
    for name in seat.cloths:
        if name not in known:
            text = f'{seat.name}: cloths: there is no cloth "{quoted(name)}"'
            yield Slip(file, seat.lines.get(name, seat.line), text + nearest_name(name, known))


def _unknown_pieces(course: Course, seats: Sequence[Packed], file: str) -> Iterable[Slip]:
    known = {
        piece.name
        for seat in seats
        for making in seat.makings
        for working in making.workings.values()
        for piece in working.pieces
    }
    for number, lesson in enumerate(course.lessons, 1):
        for name, line in lesson.cut.items():
            if name not in known:
                text = f'lesson {number}: there is no piece "{quoted(name)}" in what is sewn'
                yield Slip(file, line, text + nearest_name(name, known))
