"""Each seat of the project's own course has its sheets: what the kit says, they say too.

The kits and sheets are read as a reader sees them, in the HTML of the course's two projects.
"""

from __future__ import annotations

import re
from html import unescape
from pathlib import Path
from posixpath import dirname, join, normpath

import pytest

from handout_site.course import Course
from handout_site.library import entries, handout_names
from handout_site.scenario import load_scenario
from small_sites import REPOSITORY, Built, site_of

LIBRARY = REPOSITORY / "handouts"
SCENARIO = REPOSITORY / "scenarios" / "course.yml"
SEATS = range(1, 9)
OF_THEIR_OWN = {3, 5, 7}
"""The seats with measures, or with inputs; all others are of a plain size."""
TABLE = re.compile(r"<table[^>]*>\s*<caption>(.*?)</caption>(.*?)</table>", re.DOTALL)
DETAIL = re.compile(r'<span class="detail">.*?</span>', re.DOTALL)


@pytest.fixture(scope="module")
def course() -> Course:
    found = load_scenario(SCENARIO, "course.yml", handout_names(entries(LIBRARY))).course
    assert found is not None
    return found


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Built:
    """The course, with no handouts but those that are sewn in it."""
    text = SCENARIO.read_text(encoding="utf-8")
    sewn_only = re.sub(r"^handouts:\n(  - .*\n)+", "", text, flags=re.MULTILINE)
    assert sewn_only != text
    handouts = {
        path.relative_to(LIBRARY).as_posix(): path.read_bytes() for path in LIBRARY.rglob("*.md")
    }
    site = site_of(tmp_path_factory.mktemp("seats"), handouts, scenario=sewn_only)
    yml = site.config_file.read_text(encoding="utf-8")
    site.config_file.write_text(yml + "      booklets: true\n", encoding="utf-8")
    return site.build()


def plain(markup: str) -> str:
    return " ".join(unescape(re.sub("<[^>]*>", " ", markup)).split())


def tables(article: str) -> list[tuple[str, list[tuple[str, ...]]]]:
    """The caption and the rows of each table, what stands in small print left out."""
    found = []
    for caption, body in TABLE.findall(article):
        rows = re.findall(r"<tr>(.*?)</tr>", DETAIL.sub("", body), re.DOTALL)
        cells = (re.findall(r"<t[hd][^>]*>(.*?)</t[hd]>", row, re.DOTALL) for row in rows)
        found.append((plain(caption), [tuple(map(plain, each)) for each in cells]))
    return found


def kit(number: int) -> str:
    return f"course/kit-{number}.html"


def sheets(built: Built, number: int) -> dict[str, str]:
    """Where a kit leads: the addresses of its sheets, by the title of the handout."""
    links = built.article(kit(number)).split('class="part-title">Handouts<')[1]
    found = re.findall(r'<a href="([^"]*)">([^<]*)</a>', links)
    return {
        re.split(", (?:for|size) ", words)[0]: normpath(join(dirname(kit(number)), unescape(link)))
        for link, words in found
    }


@pytest.mark.parametrize("number", SEATS)
def test_what_is_cut_for_a_kit_is_what_its_sheets_say(built: Built, number: int):
    """Every piece, how many of it and how large, in both systems."""
    cut = dict(tables(built.article(kit(number))))
    compared = 0
    for title, address in sheets(built, number).items():
        said = {row for _, rows in tables(built.article(address)) for row in rows}
        for row in cut[title][1:]:
            assert row in said, f"{kit(number)}: {row} is not on {address}"
            compared += 1
    assert compared >= 10


@pytest.mark.parametrize("number", SEATS)
def test_the_measures_of_a_kit_are_those_of_its_sheets(built: Built, number: int):
    """Her measures, and whose each is."""
    measures = dict(tables(built.article(kit(number))))["Her measures"][1:]
    sheet = {}
    for address in sheets(built, number).values():
        for caption, rows in tables(built.article(address)):
            if caption == "Measures used":
                sheet |= {(name, amount): basis for name, amount, basis in rows[1:]}
    for name, amount, whose in measures:
        assert sheet[name, amount].startswith(whose), f"{kit(number)}: {name}"
    assert len(measures) > 5


@pytest.mark.parametrize("number", SEATS)
def test_what_is_counted_for_a_kit_is_counted_on_its_sheets(built: Built, number: int):
    counted = re.search(r"Counted buttons: (\d+)", built.words(kit(number)))
    assert counted
    gown = built.words(sheets(built, number)["Tucked day gown"])
    assert re.search(rf"\b{counted[1]} buttons|buttons: {counted[1]}\b", gown)


@pytest.mark.parametrize("number", SEATS)
def test_only_a_seat_with_something_of_its_own_has_pages_of_its_own(
    built: Built, course: Course, number: int
):
    seat = course.seats[number - 1]
    own = bool(set(seat.fit) - {"size"} or seat.inputs)
    assert own is (number in OF_THEIR_OWN)
    for address in sheets(built, number).values():
        of_seat = address.endswith(f"-seat-{number}.html")
        assert own or not of_seat
        if not of_seat:
            words = built.words(address)
            assert f"Size {seat.fit['size']} " in words and "her own measures" not in words
    gown = sheets(built, number)["Tucked day gown"]
    assert own is gown.endswith(f"-seat-{number}.html")


@pytest.mark.parametrize("number", sorted(OF_THEIR_OWN))
def test_a_sheet_of_a_seat_names_it_on_screen_and_on_paper(
    built: Built, course: Course, number: int
):
    name, size = f"Seat {number}", course.seats[number - 1].fit["size"]
    own = ", her own measures" if number != 5 else ""
    page = sheets(built, number)["Tucked day gown"]
    assert f'<p class="print-seat">{name}</p>' in built.article(page)
    assert re.search(rf'<p class="print-size"[^>]*>Size {size}{own}</p>', built.article(page))
    assert f"{name} : size {size}{own} ." in built.words(page)
    assert f'<span class="made-to">size {size}{own}</span>. ' in built.article(page)
    assert f"<title>Tucked day gown, {name} - " in built.page(page)
    assert kit(number).rpartition("/")[2] in built.article(page)


@pytest.mark.parametrize("number", SEATS)
def test_a_kit_has_a_booklet_with_the_sheets_of_its_seat(built: Built, number: int):
    booklet = built.article(f"booklet-kit-{number}.html")
    assert f"booklet-kit-{number}.html" in built.article(kit(number))
    assert "data-handout=" not in booklet, "a name for the form's script, which booklets have not"
    assert booklet.count('class="bound"') == 1 + len(sheets(built, number))
    rows = {row for _, rows in tables(booklet) for row in rows}
    for address in sheets(built, number).values():
        assert {row for _, rows in tables(built.article(address)) for row in rows} <= rows
        assert "data-handout=" in built.article(address)
        seat = re.search(r'<p class="print-seat">[^<]*</p>', built.article(address))
        assert seat is None or seat[0] in booklet


def test_no_sheet_is_made_that_no_kit_leads_to(built: Built):
    led_to = {address for number in SEATS for address in sheets(built, number).values()}
    made = {address for address in built.pages() if "-seat-" in Path(address).name}
    assert made
    assert made <= led_to
