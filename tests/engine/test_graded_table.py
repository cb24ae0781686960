"""The graded table: sizes across, values down, the reason where there is none, the rest once."""

from __future__ import annotations

from dataclasses import replace
from itertools import count
from xml.etree.ElementTree import Element, fromstring

import pytest

from drawn import check_fragment
from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import LENGTHS
from handout_engine.pages.blocks import read_block
from handout_engine.pages.fragments.sizes import sizes
from handout_engine.pages.page import work_page
from handout_engine.working.workings import Working
from worked import INCHES, changed, work

SLIP = {"garment": "slip", "sizes": "50 to 62", "show": "sizes"}
CASING = {"technique": "gathered-ruffle", "name": "ruffle", "edge": "garment.hem_edge"}


def words(tree: Element) -> str:
    return " ".join(" ".join(tree.itertext()).replace("\u00a0", " ").split())


def cells(tree: Element) -> list[list[str]]:
    return [[words(cell) for cell in row] for row in tree.iter("tr")]


def graded(*columns: tuple[str, Working | str]) -> Working:
    return replace(work("slip", size="50"), graded=columns)


def shown(working: Working, tape: Tape = INCHES) -> Element:
    made = sizes(working, tape, "b0-garment")
    assert made is not None
    check_fragment(made)
    return made


def grid(tree: Element) -> list[list[str]]:
    """The body of a table as it is seen: each cell goes to its row's next free place, and stands in
    as many rows as it reaches over."""
    rows = tree.findall(".//tbody/tr")
    seen: dict[tuple[int, int], str] = {}
    for number, row in enumerate(rows):
        for cell in row:
            place = next(n for n in count() if (number, n) not in seen)
            for below in range(int(cell.get("rowspan", "1"))):
                seen[number + below, place] = words(cell)
    wide = max(place for _, place in seen) + 1
    return [[seen[number, place] for place in range(wide)] for number in range(len(rows))]


def test_three_sizes_of_a_slip_by_hand():
    # Chest 34.0, 37.2 and 40.1 cm, with 8, 7 1/3 and 6 2/3 cm of ease: 42, 44.5 and 46.8 cm.
    made = shown(graded(*((size, work("slip", size=size)) for size in ("50", "56", "62"))),
                 Tape("metric"))  # fmt: skip
    heading, *rows = cells(made)
    assert heading == ["Size", "50", "56", "62"]
    found = {row[0]: [cell.split(" (")[0] for cell in row[1:]] for row in rows}
    assert found["chest of the garment"] == ["42 cm", "44.5 cm", "46.8 cm"]


def test_what_no_size_changes_stands_below_the_table_once():
    ruffle = work("gathered-ruffle", edge="9 in")
    other = work("gathered-ruffle", edge="10 in")
    made = shown(replace(ruffle, graded=(("50", ruffle), ("56", other))))
    below = words(made.findall("p")[-1])
    assert below.startswith("The same in every size: ")
    labels = [row[0] for row in cells(made)[1:]]
    assert labels
    for name, value in ruffle.values.items():
        same = value.amount == other.values[name].amount
        assert (value.label in labels) == (not same), name
        assert (f"{value.label} " in below) == same, name


@pytest.mark.parametrize("at", range(3))
def test_an_impossible_size_says_why_down_its_whole_column(at):
    columns: list[tuple[str, Working | str]] = [
        (size, work("slip", size=size)) for size in ("50", "56", "62")
    ]
    columns[at] = (columns[at][0], "the head does not pass")
    made = shown(graded(*columns))
    rows = grid(made)
    assert {len(row) for row in rows} == {4}
    for row in rows:
        assert [cell == "the head does not pass" for cell in row[1:]] == [n == at for n in range(3)]
    assert made.findall(".//td[@class='impossible']")[0].get("rowspan") == str(len(rows))


def test_where_every_size_is_impossible_each_still_says_why():
    made = shown(graded(("50", "too small"), ("56", "too wide")))
    assert grid(made) == [["not possible", "too small", "too wide"]]
    assert not made.findall("p")


def test_a_value_that_a_size_does_not_have_is_said_to_be_none():
    whole = work("slip", size="56")
    values = {name: value for name, value in whole.values.items() if name != "hem_edge"}
    made = shown(graded(("50", work("slip", size="50")), ("56", changed(whole, values=values))))
    (row,) = [row for row in cells(made) if row[0] == whole.values["hem_edge"].label]
    assert row[2] == "none"


def test_without_sizes_there_is_nothing_to_show():
    assert sizes(work("slip"), INCHES, "b0-garment") is None


def test_every_column_and_row_has_its_head_and_the_area_can_be_scrolled_by_keyboard():
    made = shown(graded(*((size, work("slip", size=size)) for size in LENGTHS)))
    for row in made.iter("tr"):
        assert {cell.get("scope") for cell in row if cell.tag == "th"} in ({"col"}, {"row"})
    (area,) = made.findall("div")
    assert (area.get("tabindex"), area.get("role")) == ("0", "group")
    assert area.get("aria-label") == "Slip, by size"


def test_on_a_page_each_column_is_the_garment_at_that_size():
    """The page's columns against workings of each size by themselves."""
    made = work_page([read_block({**SLIP, "size": "98"})], INCHES)
    assert not made.problems
    tree = fromstring(made.fragment(0))
    heading, *rows = cells(tree)
    assert heading == ["Size", "50", "56", "62"]
    for number, size in enumerate(("50", "56", "62"), 1):
        alone = work("slip", size=size)
        column = {row[0]: row[number] for row in rows}
        for value in alone.values.values():
            if value.label in column:
                assert column[value.label] == INCHES.both(value.amount, value.saying), value.name


def test_a_technique_on_a_garment_s_edge_is_graded_with_it():
    made = work_page([read_block(SLIP), read_block({**CASING, "show": "sizes"})], INCHES)
    assert not made.problems
    tree = fromstring(made.fragment(1))
    heading, *rows = cells(tree)
    assert heading[1:] == ["50", "56", "62"]
    assert len({tuple(row[1:]) for row in rows}) > 1
    for row in rows:
        assert len(set(row[1:])) > 1, "what stays the same does not stand in the table"


def test_a_technique_that_only_some_sizes_allow_says_why_in_the_others():
    # Head and 2 cm of room, less the neck edge, is 10.6 cm at size 62 and 11.1 cm at size 68.
    slip = {**SLIP, "opening": "11 cm", "sizes": "all"}
    page = work_page([read_block(slip), read_block({**CASING, "show": "sizes"})], INCHES)
    assert not page.problems
    for number in range(2):
        tree = fromstring(page.fragment(number))
        reasons = [words(each) for each in tree.iterfind(".//td[@class='impossible']")]
        assert len(reasons) == len(("68", "74", "80", "86", "92", "98"))
        for reason in reasons:
            assert "the head, " in reason and "give opening at least" in reason
