"""A course in a scenario: every slip has its sentence, with the file and the line."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from handout_engine.pages.kits import Spares
from handout_site.course import Sewn
from handout_site.scenario import Scenario, load_scenario
from handout_site.slips import SlipsError

KNOWN = ("nursery/bib", "ruffles/banded", "tucks/pin")
LESSON = "lessons:\n  - title: One\n"
SIZES = "50, 56, 62, 68, 74, 80, 86, 92, 98"
WRONG = {
    "lessons that are no list": (
        "lessons:\n  title: One\n",
        "1: lessons: write a list here, such as - title: The first lesson",
    ),
    "no lessons": (
        "lessons: []\n",
        "1: lessons: the list is empty; write - title: The first lesson, or take it out",
    ),
    "empty wardrobe": (
        "wardrobe: []\n",
        "1: wardrobe: the list is empty; write - nursery/bib, or take it out",
    ),
    "lesson that is no mapping": (
        "lessons:\n  - One\n",
        "2: lesson 1: write fields here, such as title: The first lesson",
    ),
    "lesson that is a list": (
        "lessons:\n  - title: One\n  - [Two]\n",
        "3: lesson 2: write fields here, such as title: The first lesson",
    ),
    "lesson without title": ("lessons:\n  - aim: To sew\n", "2: lesson 1: it has no title"),
    "unknown field of a lesson": (
        LESSON + "    homwork: Sew.\n",
        '3: lesson 1: there is no field "homwork"; did you mean "homework"?',
    ),
    "unknown handout": (
        LESSON + "    handouts:\n      - nursery/bib\n      - ruffles/bandit\n",
        '5: lesson 1: handouts: item 2: there is no handout "ruffles/bandit" among those '
        'published; did you mean "ruffles/banded"?',
    ),
    "handout outside the project": (
        LESSON + "    handouts: [../../etc/passwd]\n",
        '3: lesson 1: handouts: item 1: there is no handout "../../etc/passwd" among those '
        "published; known: nursery/bib, ruffles/banded, tucks/pin",
    ),
    "handout that is not published": (
        "handouts: [tucks/pin]\n" + LESSON + "    handouts: [nursery/bib]\n",
        '4: lesson 1: handouts: item 1: there is no handout "nursery/bib" among those published; '
        "known: tucks/pin",
    ),
    "handout as a list": (
        LESSON + "    handouts:\n      - [nursery/bib]\n",
        "4: lesson 1: handouts: item 1: write a handout here, such as nursery/bib, or "
        "nursery/bib: [bib]",
    ),
    "blocks that are no list": (
        LESSON + "    handouts:\n      - nursery/bib: bib\n",
        "4: lesson 1: handouts: item 1: nursery/bib: write a list here, such as [bib, binding]",
    ),
    "list of words as one": (
        LESSON + "    bring: thread\n",
        "3: lesson 1: bring: write a list here, such as - thread",
    ),
    "mapping in a list of words": (
        LESSON + "    order:\n      - Cut: out\n",
        "4: lesson 1: order: item 1: write text here",
    ),
    "aim as a list": (LESSON + "    aim: [a]\n", "3: lesson 1: aim: write text here"),
    "prepare with something else": (
        LESSON + "    prepare:\n      - cuts: [front]\n",
        '4: lesson 1: prepare: item 1: there is no field "cuts"; did you mean "cut"?',
    ),
    "pieces that are no list": (
        LESSON + "    prepare:\n      - cut: front\n",
        "4: lesson 1: prepare: item 1: cut: write a list here, such as [front, back]",
    ),
    "seats without lessons": (
        "seats:\n  - size: 62\n",
        "1: seats: there are no lessons; write lessons as well, or take it out",
    ),
    "seats that are a mapping": (
        LESSON + "seats:\n  one: 62\n",
        "3: seats: write a list here, such as - size: 62",
    ),
    "seat that is a word": (
        LESSON + "seats:\n  - 62\n",
        "4: seat 1: write fields here, such as size: 62",
    ),
    "unknown size": (
        LESSON + "seats:\n  - size: 62\n  - name: Two\n    size: 63\n",
        f'6: seat 2: size: "63" is not one of {SIZES}',
    ),
    "wrong measure": (
        LESSON + "seats:\n  - measures:\n      head: 4 m\n",
        "5: seat 1: measures: head: 4 m is too large; use at most 22 1/32 in (56 cm)",
    ),
    "unknown input": (
        LESSON + "seats:\n  - inputs:\n      cloth_widht: 60 in\n",
        '5: seat 1: inputs: there is no input "cloth_widht"; did you mean "cloth_width"?',
    ),
    "cloths in a list": (
        LESSON + "seats:\n  - cloths: [lawn]\n",
        "4: seat 1: cloths: write cloths here, such as front cloth: white lawn",
    ),
    "two seats of one name": (
        LESSON + "seats:\n  - name: Seat 2\n  - size: 62\n",
        '5: seat 2: the name "Seat 2" is taken by another seat',
    ),
    "10,000 seats": (
        LESSON + "seats:\n" + "  - size: 62\n" * 10_000,
        "3: seats: 10000 are too many; the most is 60",
    ),
    "1,000 lessons": (
        LESSON + "  - title: More\n" * 1000,
        "1: lessons: 1001 are too many; the most is 40",
    ),
    "spares that are no share": (
        LESSON + "spares:\n  cloth: much\n",
        '4: spares: cloth: "much" does not start with a number',
    ),
    "spares beyond all": (
        LESSON + "spares:\n  cloth: 200 %\n",
        "4: spares: cloth: 200 % is too large; use at most 100 %",
    ),
    "unknown spares": (
        LESSON + "spares:\n  thread: 10 %\n",
        '4: spares: there is no field "thread"; known: cloth, counts, lengths',
    ),
    "wardrobe beside lessons": (
        LESSON + "wardrobe:\n  - nursery/bib\n",
        "3: wardrobe: a scenario has lessons or a wardrobe; take one out",
    ),
    "wardrobe that is no list": (
        "wardrobe: nursery/bib\n",
        "1: wardrobe: write a list here, such as - nursery/bib",
    ),
    "unknown handout in a wardrobe": (
        "wardrobe:\n  - nursery/bob\n",
        '2: wardrobe: item 1: there is no handout "nursery/bob" among those published; '
        'did you mean "nursery/bib"?',
    ),
    "spares in a list": (
        LESSON + "spares: [10 %]\n",
        "3: spares: write fields here, such as cloth: 10 %",
    ),
}  # fmt: skip


def read(text: str, folder: Path) -> Scenario:
    path = folder / "course.yml"
    path.write_text(text, encoding="utf-8")
    return load_scenario(path, "scenarios/course.yml", KNOWN)


@pytest.mark.parametrize(("text", "expected"), WRONG.values(), ids=WRONG)
def test_a_wrong_course_is_refused(text: str, expected: str, tmp_path: Path):
    with pytest.raises(SlipsError) as caught:
        read(text, tmp_path)
    assert [str(each) for each in caught.value.slips] == [f"scenarios/course.yml:{expected}"]


def test_a_course_is_read(tmp_path: Path):
    text = """\
lessons:
  - title: One
    aim: To   cut
      and to mark.
    handouts: [nursery/bib: [bib], tucks/pin]
    prepare:
      - Wash the cloth.
      - cut: [front, back]
  - title: Two
    handouts: [nursery/bib: [binding], ruffles/banded]
seats:
  - size: 62
    measures: {head: 42 cm}
    inputs: {cloth_width: 60 in}
    cloths: {cloth: white   lawn}
  - name: By the window
spares: {cloth: 10 %, counts: 5 %}
"""
    scenario = read(text, tmp_path)
    course = scenario.course
    assert course is not None
    one, _ = course.lessons
    assert one.aim == "To cut and to mark."
    assert (one.prepare, one.cut) == (("Wash the cloth.",), {"front": 8, "back": 8})
    assert list(course.sewn.values()) == [
        Sewn("nursery/bib", ("bib", "binding"), 5),
        Sewn("tucks/pin", (), 5),
        Sewn("ruffles/banded", (), 10),
    ]
    assert scenario.handouts == ("nursery/bib", "tucks/pin", "ruffles/banded")
    first, second = course.seats
    assert (first.name, second.name) == ("Seat 1", "By the window")
    assert first.fit == {"size": "62", "head": "42 cm"}
    assert first.cloths == {"cloth": "white lawn"}
    assert course.spares == Spares(cloth=Fraction(1, 10), counts=Fraction(1, 20))


def test_a_scenario_without_lessons_has_no_course(tmp_path: Path):
    assert read("publisher: The guild\n", tmp_path).course is None
