"""The pages of a course, written from its scenario: lessons, kits, what the class buys, what the
teacher cuts beforehand; or the one page of a wardrobe.

Each is a heading in Markdown and, below it, HTML built by the engine, so that nothing that a
scenario says is taken for Markdown.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import MEASURES, SIZE
from handout_engine.drawing.markup import Child, element, html
from handout_engine.pages.fragments.kits import (
    Packed,
    baby_measures,
    class_list,
    cut_beforehand,
    kit_list,
    kit_pieces,
)
from handout_engine.pages.kits import total
from handout_site.course import Course, Lesson, Seat, Sewn
from handout_site.course_menu import (
    CLASS,
    INDEX,
    KITS,
    PREPARATION,
    TITLES,
    WARDROBE,
    kit_address,
    kit_title,
    lesson_address,
)
from handout_site.course_work import Worked
from handout_site.plain_text import plain

Link = Callable[[str, str], str]
"""The address of a page, from another."""


@dataclass(frozen=True)
class CoursePages:
    """The pages of a course that is worked out; `handouts` are their addresses by name.

    `seats` are the addresses of the handouts as they are sewn at a seat, by its number and theirs;
    `of_seats` those that are pages of one seat.
    """

    course: Course
    worked: Worked
    tape: Tape
    handouts: Mapping[str, str]
    seats: Mapping[tuple[int, str], str]
    of_seats: Collection[str]
    link: Link

    def pages(self) -> Iterator[tuple[str, str]]:
        """Every page: its address, and its Markdown."""
        if self.course.wardrobe:
            yield WARDROBE, _page("The wardrobe", self._wardrobe())
            return
        yield INDEX, _page("The course", self._index())
        for number, lesson in enumerate(self.course.lessons, 1):
            yield lesson_address(number), _page(_numbered(number, lesson), self._lesson(number))
        if not self.worked.seats:
            return
        every = list(zip(self.course.seats, self.worked.seats, strict=True))
        for number, (seat, packed) in enumerate(every, 1):
            yield kit_address(number), _page(kit_title(seat), self._kit(number, seat, packed))
        yield KITS, _page(TITLES[KITS], self._kits(every))
        yield CLASS, _page(TITLES[CLASS], self._class())
        yield PREPARATION, _page(TITLES[PREPARATION], self._preparation())

    def _index(self) -> Iterator[Element | str]:
        lessons = self.course.lessons
        yield _paragraph(f"{_count(len(lessons), 'lesson')}, one built on another.")
        yield "Lessons"
        items = (self._in_short(number, each) for number, each in enumerate(lessons, 1))
        yield element("ol", *items, class_="lessons")
        if self.course.seats:
            yield "Seats"
            yield _paragraph(
                "Each seat sews for one baby, from its own cloth, and has a kit of its own. ",
                self._a(INDEX, KITS, "All kits"),
                " are on one page to print, ",
                self._a(INDEX, CLASS, "what the whole class needs"),
                " on another, and ",
                self._a(INDEX, PREPARATION, "what to prepare"),
                " on a third.",
            )
            yield element(
                "ul",
                *(self._seat(number, each) for number, each in enumerate(self.course.seats, 1)),
            )

    def _wardrobe(self) -> Iterator[Element | str]:
        yield _paragraph("All that is sewn for her, and what it takes together.")
        names = self.course.sewn
        yield element("ul", *(element("li", self._handout(WARDROBE, each)) for each in names))
        yield "To buy and have ready"
        yield from self._packed(self.course.seats[0], self.worked.seats[0])

    def _in_short(self, number: int, lesson: Lesson) -> Element:
        time = f" ({lesson.time})" if lesson.time else ""
        title = self._a(INDEX, lesson_address(number), lesson.title)
        aim = element("span", lesson.aim, class_="detail") if lesson.aim else None
        return element("li", title, time, aim)

    def _seat(self, number: int, seat: Seat) -> Element:
        told = "; ".join(_told(seat))
        name = self._a(INDEX, kit_address(number), seat.name)
        return element("li", name, f": {told}" if told else "")

    def _lesson(self, number: int) -> Iterator[Element | str]:
        lesson, address = self.course.lessons[number - 1], lesson_address(number)
        if lesson.aim:
            yield _paragraph(lesson.aim)
        if lesson.time:
            yield _paragraph(element("strong", "Time: "), lesson.time)
        if lesson.bring:
            yield "Bring"
            yield element("ul", *(element("li", each) for each in lesson.bring), class_="supplies")
        if lesson.order:
            yield "In this order"
            yield element("ol", *(element("li", each) for each in lesson.order), class_="steps")
        if lesson.handouts:
            yield "Handouts"
            yield element(
                "ul",
                *(
                    element("li", self._handout(address, each.handout), self._parts(each))
                    for each in lesson.handouts
                ),
            )
        if lesson.homework:
            yield "At home, before the next lesson"
            yield _paragraph(lesson.homework)
        if lesson.prepare or lesson.cut:
            yield _paragraph(
                "For the teacher: ",
                self._a(address, PREPARATION, "what to prepare"),
                ".",
                class_="screen-only",
            )

    def _handout(self, here: str, name: str) -> Element:
        """A link to a handout."""
        return self._a(here, self.handouts[name], self.worked.titles.get(name, name))

    def _sheet(self, number: int, seat: Seat, name: str) -> Element:
        """A link to a handout as it is sewn at a seat: to its own page, or to that of its size."""
        title, address = self.worked.titles.get(name, name), self.seats[number, name]
        of = ""
        if address in self.of_seats:
            of = f", for {seat.name}"
        elif name in self.worked.garments and SIZE in seat.fit:
            of = f", size {seat.fit[SIZE]}"
        return self._a(kit_address(number), address, f"{title}{of}")

    def _parts(self, sewn: Sewn) -> str:
        """What of a handout is sewn in a lesson, where that is not all of it."""
        titles = self.worked.parts.get(sewn.handout, {})
        told = dict.fromkeys(titles[name].lower() for name in sewn.blocks if name in titles)
        return f": {', '.join(told)}" if told else ""

    def _kit(self, number: int, seat: Seat, packed: Packed) -> Iterator[Element | str]:
        yield from self._packed(seat, packed)
        links = element(
            "ul", *(element("li", self._sheet(number, seat, each)) for each in self.course.sewn)
        )
        yield element(
            "div", element("p", "Handouts", class_="part-title"), links, class_="screen-only"
        )

    def _packed(self, seat: Seat, packed: Packed) -> Iterator[Element]:
        told = [_sentence(each) for each in _told(seat)]
        if told:
            yield _paragraph(" ".join(told))
        yield kit_list(packed, self.tape)
        yield kit_pieces(packed, self.tape)
        measures = baby_measures(packed, self.tape)
        if measures is not None:
            yield measures

    def _kits(self, every: Iterable[tuple[Seat, Packed]]) -> Iterator[Element]:
        yield _paragraph("To print: one kit to a sheet.", class_="screen-only")
        for seat, packed in every:
            name = element("h2", seat.name)
            yield element("section", name, *self._packed(seat, packed), class_="kit")

    def _class(self) -> Iterator[Element]:
        seats = _count(len(self.worked.seats), "kit")
        yield _paragraph(
            f"{seats} together. Each kit is cut off by itself, so every total is the sum of the "
            "kits; what is bought to spare is rounded up to how the thing is sold."
        )
        found = total([each.kit for each in self.worked.seats], self.course.spares)
        yield class_list(found, self.tape)

    def _preparation(self) -> Iterator[Element | str]:
        yield _paragraph("What the teacher does before each lesson.")
        for number, lesson in enumerate(self.course.lessons, 1):
            if not lesson.prepare and not lesson.cut:
                continue
            yield _numbered(number, lesson)
            if lesson.prepare:
                items = (element("li", each) for each in lesson.prepare)
                yield element("ul", *items, class_="supplies")
            if lesson.cut:
                yield cut_beforehand(self.worked.seats, list(lesson.cut), self.tape)

    def _a(self, here: str, there: str, words: str) -> Element:
        return element("a", words, href=self.link(here, there))


def _page(title: str, parts: Iterable[Element | str]) -> str:
    """A page as Markdown: strings are headings of its parts, elements their HTML."""
    lines = [f"# {plain(title)}"]
    for part in parts:
        lines.append(f"## {plain(part)}" if isinstance(part, str) else _html(part))
    return "\n\n".join(lines) + "\n"


def _html(part: Element) -> str:
    """HTML on one line, in which nothing reads as a value to put in."""
    return html(part).replace("\n", " ").replace("{", "&#123;")


def _paragraph(*children: Child, class_: str = "") -> Element:
    return element("p", *children, class_=class_) if class_ else element("p", *children)


def _numbered(number: int, lesson: Lesson) -> str:
    return f"Lesson {number}: {lesson.title}"


def _told(seat: Seat) -> Iterator[str]:
    """Size, measures and cloths of a seat in words."""
    if SIZE in seat.fit:
        yield f"size {seat.fit[SIZE]}"
    own = [
        MEASURES[name].label if name in MEASURES else name.replace("_", " ")
        for name in seat.fit
        if name != SIZE
    ]
    if own:
        yield f"measured: {', '.join(own)}"
    if seat.cloths:
        yield f"sewn from {', '.join(dict.fromkeys(seat.cloths.values()))}"


def _sentence(words: str) -> str:
    return f"{words[:1].upper()}{words[1:]}."


def _count(number: int, name: str) -> str:
    return f"{number} {name}{'' if number == 1 else 's'}"
