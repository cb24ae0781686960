"""What a scenario has sewn: a course with its lessons, seats and spares, or one wardrobe."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from handout_engine.amounts.kinds import PercentageKind
from handout_engine.amounts.refusals import RefusalError, nearest_name, quoted
from handout_engine.bodies.measures import SIZE
from handout_engine.pages.kits import Spares
from handout_site.fields import Field
from handout_site.made_for import read_inputs, read_measures, read_size
from handout_site.mappings import Document, Plain

LESSONS, SEATS, SPARES, WARDROBE = "lessons", "seats", "spares", "wardrobe"
KEYS = {
    LESSONS: "The lessons of a course in their order, a list; what a lesson has is below.",
    SEATS: "The seats of a course, a list; what a seat has is below. No names of persons.",
    SPARES: "What is bought for the class beyond its kits; what it has is below.",
    WARDROBE: "What is sewn for the one baby, a list like the handouts of a lesson; a page says "
    "what all of it takes.",
}
LESSON_KEYS = {
    "title": "What the lesson is called.",
    "aim": "What is done or known at its end, a sentence.",
    "time": "How long it takes.",
    "handouts": "What is sewn in it, a list: a handout such as nursery/bib, or only some of its "
    "blocks, nursery/bib: [bib, binding].",
    "bring": "What to bring, a list.",
    "order": "What is done one after another, a list.",
    "homework": "What is sewn at home before the next lesson.",
    "prepare": "What the teacher prepares, a list: a sentence, or pieces to cut beforehand for "
    "every seat, cut: [front, back].",
}
SEAT_KEYS = {
    "name": "What the seat is called; if left out, Seat 1, Seat 2 and so on.",
    "size": "The size of the baby that is sewn for.",
    "measures": "The baby's own measures, such as head: 44 cm.",
    "inputs": "Inputs such as cloth_width: 60 in. They go before the scenario's, before the "
    "techniques' own defaults, and in garments before the handout's.",
    "cloths": "Which cloth is sewn with, for each cloth of the handouts: front cloth: white lawn.",
}
SPARE_KEYS = {
    "cloth": "Of each cloth, such as 10 %, rounded up to how it is ordered.",
    "lengths": "Of lace, elastic and all that is sold by length, such as 10 %.",
    "counts": "Of buttons and all that is counted, such as 10 %, rounded up to whole ones.",
}
MOST_LESSONS, MOST_SEATS, MOST_HANDOUTS, MOST_LINES = 40, 60, 20, 40
_SHARE = PercentageKind(Fraction(0), Fraction(1))


@dataclass(frozen=True)
class Sewn:
    """What a lesson sews: a handout, all its blocks or only some, and its line in the scenario."""

    handout: str
    blocks: tuple[str, ...] = ()
    line: int = 1


@dataclass(frozen=True)
class Lesson:
    """One lesson; `cut` are the pieces that the teacher cuts beforehand, with their lines."""

    title: str
    aim: str = ""
    time: str = ""
    handouts: tuple[Sewn, ...] = ()
    bring: tuple[str, ...] = ()
    order: tuple[str, ...] = ()
    homework: str = ""
    prepare: tuple[str, ...] = ()
    cut: Mapping[str, int] = field(default_factory=dict)


@dataclass(frozen=True)
class Seat:
    """One seat: what is sewn there is made for this size and these measures, from these cloths."""

    name: str
    fit: Mapping[str, str] = field(default_factory=dict)
    inputs: Mapping[str, str] = field(default_factory=dict)
    cloths: Mapping[str, str] = field(default_factory=dict)
    line: int = 1
    lines: Mapping[str, int] = field(default_factory=dict)


@dataclass(frozen=True)
class Course:
    """Lessons, seats and spares; or a wardrobe, which has one seat and no lessons."""

    lessons: tuple[Lesson, ...] = ()
    seats: tuple[Seat, ...] = ()
    spares: Spares = field(default_factory=Spares)
    wardrobe: tuple[Sewn, ...] = ()

    @property
    def sewn(self) -> dict[str, Sewn]:
        """All that is sewn, each handout once; with all blocks if a lesson says so."""
        found: dict[str, Sewn] = {}
        for each in self.every_mention:
            before = found.setdefault(each.handout, each)
            whole = not before.blocks or not each.blocks
            blocks = () if whole else tuple(dict.fromkeys([*before.blocks, *each.blocks]))
            found[each.handout] = Sewn(each.handout, blocks, before.line)
        return found

    @property
    def every_mention(self) -> list[Sewn]:
        """Everything sewn as it is written, lesson by lesson."""
        taught = [sewn for lesson in self.lessons for sewn in lesson.handouts]
        return [*taught, *self.wardrobe]


def read_course(document: Document, known: Collection[str]) -> Course | None:
    """The course or the wardrobe of a scenario, None where it has none; `known` are the handouts.

    Raises DocumentError for whatever is wrong.
    """
    fields = {key: Field(document, key, key, value) for key, value in document.fields.items()}
    for key in (SEATS, SPARES):
        if key in fields and LESSONS not in fields:
            raise fields[key].wrong("there are no lessons; write lessons as well, or take it out")
    if WARDROBE in fields:
        if LESSONS in fields:
            raise fields[WARDROBE].wrong("a scenario has lessons or a wardrobe; take one out")
        worn = _listed(fields[WARDROBE], MOST_HANDOUTS, "- nursery/bib")
        line = fields[WARDROBE].line
        return Course(
            seats=(Seat("The baby", line=line),),
            wardrobe=tuple(_sewn(each, known) for each in worn),
        )
    if LESSONS not in fields:
        return None
    lessons = _listed(fields[LESSONS], MOST_LESSONS, "- title: The first lesson", "lesson")
    seats = fields[SEATS].items(MOST_SEATS, "- size: 62", "seat") if SEATS in fields else []
    return Course(
        tuple(_lesson(each, known) for each in lessons),
        _seats(seats),
        _spares(fields[SPARES]) if SPARES in fields else Spares(),
    )


def _listed(written: Field, most: int, example: str, called: str = "") -> list[Field]:
    """The items of a list that holds at least one."""
    items = written.items(most, example, called)
    if not items:
        raise written.wrong(f"the list is empty; write {example}, or take it out")
    return items


def _lesson(written: Field, known: Collection[str]) -> Lesson:
    fields = written.fields(LESSON_KEYS, "title: The first lesson")
    if "title" not in fields:
        raise written.wrong("it has no title")
    prepare = _items(fields, "prepare", "- Wash the cloth.", MOST_LINES)
    cut = (each for each in prepare if not isinstance(each.value, str))
    return Lesson(
        title=fields["title"].words(),
        aim=_words(fields, "aim"),
        time=_words(fields, "time"),
        handouts=tuple(
            _sewn(each, known)
            for each in _items(fields, "handouts", "- nursery/bib", MOST_HANDOUTS)
        ),
        bring=tuple(each.words() for each in _items(fields, "bring", "- thread", MOST_LINES)),
        order=tuple(each.words() for each in _items(fields, "order", "- Cut out.", MOST_LINES)),
        homework=_words(fields, "homework"),
        prepare=tuple(each.words() for each in prepare if isinstance(each.value, str)),
        cut=dict(piece for each in cut for piece in _pieces(each)),
    )


def _words(fields: Mapping[str, Field], name: str) -> str:
    return fields[name].words() if name in fields else ""


def _items(fields: Mapping[str, Field], name: str, example: str, most: int) -> list[Field]:
    return fields[name].items(most, example) if name in fields else []


def _sewn(written: Field, known: Collection[str]) -> Sewn:
    """A handout, or one with a list of its blocks."""
    value = written.value
    blocks: tuple[str, ...] = ()
    if isinstance(value, dict) and len(value) == 1:
        name = next(iter(value))
        listed = written.below(name, value[name]).items(MOST_LINES, "[bib, binding]")
        blocks = tuple(each.words() for each in listed)
    elif isinstance(value, str):
        name = value
    else:
        raise written.wrong("write a handout here, such as nursery/bib, or nursery/bib: [bib]")
    if name not in known:
        hint = nearest_name(name, known)
        raise written.wrong(f'there is no handout "{quoted(name)}" among those published{hint}')
    return Sewn(name, blocks, written.line)


def _pieces(written: Field) -> list[tuple[str, int]]:
    """The pieces to cut beforehand, with their lines."""
    cut = written.fields(("cut",), "cut: [front, back]").get("cut")
    if cut is None:
        raise written.wrong("write a sentence here, or cut: [front, back]")
    return [(each.words(), each.line) for each in cut.items(MOST_LINES, "[front, back]")]


def _seats(written: list[Field]) -> tuple[Seat, ...]:
    seats: dict[str, Seat] = {}
    for number, each in enumerate(written, 1):
        seat = _seat(each, f"Seat {number}")
        if seat.name in seats:
            raise each.wrong(f'the name "{quoted(seat.name)}" is taken by another seat')
        seats[seat.name] = seat
    return tuple(seats.values())


def _seat(written: Field, name: str) -> Seat:
    fields = written.fields(SEAT_KEYS, "size: 62")
    size = {SIZE: fields[SIZE].read(read_size)} if SIZE in fields else {}
    measures = fields["measures"].read(read_measures) if "measures" in fields else {}
    return Seat(
        name=_words(fields, "name") or name,
        fit={**size, **measures},
        inputs=fields["inputs"].read(read_inputs) if "inputs" in fields else {},
        cloths=fields["cloths"].read(_cloths) if "cloths" in fields else {},
        line=written.line,
        lines=_lines_below(written),
    )


def _lines_below(written: Field) -> dict[str, int]:
    """The line of each measure, input and cloth of a seat, by its name."""
    start = f"{written.way}/"
    ways = (
        (way.removeprefix(start), line)
        for way, line in written.document.lines.items()
        if way.startswith(start)
    )
    return {way.rpartition("/")[2]: line for way, line in ways}


def _cloths(value: Plain) -> dict[str, str]:
    if not isinstance(value, dict) or not all(isinstance(each, str) for each in value.values()):
        raise RefusalError("write cloths here, such as front cloth: white lawn")
    return {name: " ".join(str(each).split()) for name, each in value.items()}


def _spares(written: Field) -> Spares:
    fields = written.fields(SPARE_KEYS, "cloth: 10 %")
    return Spares(**{name: each.read(_share) for name, each in fields.items()})


def _share(value: Plain) -> Fraction:
    if not isinstance(value, str):
        raise RefusalError("write a share here, such as 10 %")
    share = _SHARE.read(value)
    assert isinstance(share, Fraction)
    return share
