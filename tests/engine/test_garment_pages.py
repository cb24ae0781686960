"""Pages that name a garment: what refers to it, what follows it, what her browser is answered."""

from __future__ import annotations

import json
from typing import Any

import pytest

from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalsError
from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import LENGTHS, figure
from handout_engine.pages.authored import Authored, authored, from_plain, to_json
from handout_engine.pages.blocks import read_block
from handout_engine.pages.browser import answer
from handout_engine.pages.page import Page, work_page
from handout_engine.pages.problems import Inline
from worked import INCHES, work

SLIP = {"garment": "slip", "size": "56"}
RUFFLE = {"technique": "gathered-ruffle", "name": "ruffle", "edge": "garment.hem_edge"}
UNDER = {"garment": "slip", "name": "under"}


def page(*written: dict[str, Any]) -> Page:
    return work_page([read_block(each, 10 * n) for n, each in enumerate(written, 1)], INCHES)


def problems(*written: dict[str, Any]) -> list[str]:
    return [found.text for found in page(*written).problems]


def amount(made: Page, reference: str) -> Any:
    block, _, value = reference.partition(".")
    return made.workings[block].named[value].amount


def refused(written: dict[str, Any]) -> str:
    with pytest.raises(RefusalsError) as several:
        read_block(written)
    return " ".join(each.message for each in several.value.refusals)


def browser_page(*written: dict[str, Any], **more: Any) -> Authored:
    made = page(*written)
    assert not made.problems
    return authored(made, "a4", {}, more.get("inlines", ()))


def ask(own: Authored, **choices: dict[str, str]) -> dict[str, Any]:
    question = {"page": json.loads(to_json(own)), "choices": choices, "tape": {"first": "metric"}}
    told: dict[str, Any] = json.loads(answer(json.dumps(question)))
    return told


def test_a_technique_takes_the_garment_s_edge_by_its_name():
    made = page(RUFFLE, SLIP)
    assert not made.problems
    assert amount(made, "ruffle.edge") == work("slip", size="56").values["hem_edge"].amount


def test_the_first_garment_is_called_garment_and_another_by_its_own_name():
    made = page(SLIP, UNDER, {**RUFFLE, "edge": "under.hem_edge"})
    assert not made.problems
    assert list(made.workings) == ["garment", "under", "ruffle"]


def test_a_garment_may_have_another_name_and_is_then_called_by_that():
    made = page({**SLIP, "name": "petticoat"}, {**RUFFLE, "edge": "petticoat.hem_edge"})
    assert not made.problems
    assert problems({**SLIP, "name": "petticoat"}, RUFFLE) == [
        'gathered-ruffle "ruffle": edge: this page names no garment to take it from'
    ]


def test_two_garments_follow_the_first_in_size_and_body_length():
    third = {"garment": "slip", "name": "over", "shorter": "0 cm"}
    made = page({**SLIP, "body_length": "60 cm"}, UNDER, third)
    assert not made.problems
    for name in ("garment", "under", "over"):
        assert amount(made, f"{name}.size") == "56"
        assert amount(made, f"{name}.body_length") == millimetres(600)
        assert amount(made, f"{name}.chest") == figure("chest", millimetres(600))


def test_a_garment_with_a_size_of_its_own_does_not_follow():
    made = page(SLIP, {**UNDER, "size": "92"})
    assert amount(made, "under.size") == "92"
    assert amount(made, "under.body_length") == LENGTHS["92"]


def test_what_follows_may_stand_before_what_it_follows_only_by_size():
    """The first garment of the page is the one that is followed, wherever others refer to it."""
    made = page(UNDER, {"garment": "slip", "name": "over"})
    assert not made.problems
    assert amount(made, "over.size") == amount(made, "under.size") == "62"


def test_what_follows_takes_every_measure_that_both_ask_for():
    """A collar for a dress must fit its neck, whose measure the page gives once."""
    dress = {"garment": "summer-dress", "size": "74", "neck": "24 cm", "chest": "47 cm"}
    made = page(dress, {"garment": "collar", "name": "collar"})
    assert not made.problems
    assert amount(made, "collar.neck") == millimetres(240)
    assert amount(made, "collar.neck_edge") == amount(made, "garment.neck_edge")
    assert amount(made, "collar.chest") == millimetres(470)
    assert amount(made, "collar.shoulder_breadth") == amount(made, "garment.shoulder_breadth")


def test_what_follows_keeps_a_measure_that_it_writes_itself():
    made = page({**SLIP, "chest": "40 cm"}, {**UNDER, "chest": "42 cm"})
    assert amount(made, "under.chest") == millimetres(420)


def test_with_the_table_s_measures_following_changes_nothing():
    made = page(SLIP, UNDER)
    assert made.workings["under"] == page({**UNDER, "size": "56"}).workings["under"]


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"technique": "slip"}, "slip: slip is a garment; write garment: slip"),
        (
            {"garment": "hem"},
            'hem "garment": hem is a technique; write technique: hem',
        ),
        (
            {"garment": "slipp"},
            'slipp "garment": there is no garment "slipp"; did you mean "slip"?',
        ),
    ],
)
def test_a_garment_and_a_technique_are_not_taken_for_each_other(written, sentence):
    assert problems(written) == [sentence]


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"garment": "slip", "technique": "hem"},
            "a block has a technique or a garment, not both",
        ),
        (
            {"technique": "hem", "sizes": "all"},
            "sizes: only a garment is graded; take sizes out",
        ),
        ({"garment": "slip", "sizes": []}, "sizes: the list is empty; write sizes here, or all"),
        ({"garment": "slip", "sizes": "51"}, 'sizes: "51" is not one of 50, 56, 62, '),
        ({"garment": "slip", "sizes": "50 to 200"}, 'sizes: "200" is not one of 50, 56, 62, '),
        ({"garment": ["slip", "bib"]}, "garment: a list is not a name"),
        ({"garment": "slip", "name": "garment"}, 'name: "garment" cannot name a block;'),
    ],
)
def test_what_a_garment_s_block_may_not_say(written, sentence):
    assert sentence in refused(written)


@pytest.mark.parametrize(
    ("written", "expected"),
    [
        ("all", tuple(LENGTHS)),
        ("56 to 68", ("56", "62", "68")),
        ("68 to 56", ("56", "62", "68")),
        ("74, 50", ("50", "74")),
        (["74", "50"], ("50", "74")),
        ("62", ("62",)),
    ],
)
def test_sizes_are_read_as_a_range_a_list_or_all(written, expected):
    assert read_block({"garment": "slip", "sizes": written}).sizes == expected


def test_sizes_to_show_need_a_garment():
    hem = {"technique": "hem", "name": "hem", "show": "sizes"}
    assert problems(hem) == ["show: sizes needs a garment on the page; take it out, or name one"]
    assert problems(SLIP, hem) == []


def test_without_a_range_the_table_has_every_size():
    made = page({**SLIP, "show": "sizes"})
    assert list(made.graded) == list(LENGTHS)
    assert list(page({**SLIP, "sizes": "50 to 62", "show": "sizes"}).graded) == ["50", "56", "62"]


def test_a_page_without_a_graded_table_is_not_worked_out_for_every_size():
    assert page({**SLIP, "sizes": "all"}).graded == {}


def test_further_parts_of_the_garment_are_of_garment():
    made = page({**SLIP, "show": "finished"}, {"of": "garment", "show": "cuts"})
    assert not made.problems
    assert "<table" in made.fragment(1)


def test_in_every_size_nothing_of_a_baby_s_own_is_kept():
    measured = {**SLIP, "chest": "50 cm", "body_length": "60 cm", "sizes": "all", "show": "sizes"}
    plain = {**SLIP, "sizes": "all", "show": "sizes"}
    for size, made in page(measured).graded.items():
        assert made.workings == page(plain).graded[size].workings


GARMENT_PAGE = (
    {**SLIP, "sizes": "50 to 62", "chest": "40 cm", "show": ["cuts", "sizes"]},
    UNDER,
    {"of": "garment", "show": ["steps"]},
    RUFFLE,
)
INLINES = (Inline("garment.finished_chest"), Inline("ruffle.edge"))


def test_a_garment_s_page_survives_its_way_to_the_browser():
    own = browser_page(*GARMENT_PAGE, inlines=INLINES)
    back = from_plain(json.loads(to_json(own)))
    assert to_json(back) == to_json(own)
    assert back.blocks[0].sizes == ("50", "56", "62")
    assert back.blocks[0].is_garment and not back.blocks[3].is_garment
    there, here = back.work({}), page(*GARMENT_PAGE)
    for number in range(len(GARMENT_PAGE)):
        assert there.fragment(number) == here.fragment(number)


def test_the_names_of_garments_survive_too():
    for written in ((SLIP, UNDER), ({**SLIP, "name": "petticoat"}, {**UNDER, "size": "62"})):
        own = browser_page(*written)
        back = from_plain(json.loads(to_json(own))).work({})
        assert list(back.workings) == [each.name for each in own.blocks]


def inline(told: dict[str, Any], reference: str) -> str:
    return str(told["values"][reference]).replace("\u00a0", " ")


def test_another_size_moves_the_garment_what_follows_it_and_what_refers_to_it():
    own = browser_page(SLIP, UNDER, {**RUFFLE, "edge": "under.hem_edge"}, inlines=INLINES)
    told = ask(own, garment={"size": "80"})
    assert not told["problems"]
    alone = work("slip", size="80")
    metric = Tape("metric")
    for reference, name in (("garment.finished_chest", "finished_chest"),
                            ("ruffle.edge", "hem_edge")):  # fmt: skip
        value = alone.values[name]
        assert metric.say(value.amount, value.saying) in inline(told, reference)


def test_a_baby_s_own_measures_are_worked_with_as_they_are_typed():
    # Chest 43 cm, and a slip's 6 cm above size 56: 49 cm.
    own = browser_page(SLIP, inlines=INLINES[:1])
    told = ask(own, garment={"size": "68", "chest": "43 cm", "head": "44 cm"})
    assert not told["problems"]
    assert ">49 cm" in inline(told, "garment.finished_chest")


def test_in_the_browser_it_is_what_it_is_with_the_same_words_on_the_page():
    """The whole answer against a page that was written so from the start."""
    typed = {"size": "68", "chest": "43 cm", "neck": "21 cm"}
    told = ask(browser_page(SLIP, RUFFLE), garment=typed)
    written = ask(browser_page({**SLIP, **typed}, RUFFLE))
    assert told["fragments"] == written["fragments"]


def test_a_measure_that_is_no_baby_s_is_refused_beside_its_field():
    told = ask(browser_page(SLIP), garment={"chest": "2 m"})
    (problem,) = told["problems"]
    assert (problem["block"], problem["field"]) == ("garment", "chest")
    assert "too large; use at most" in problem["text"]
    assert "fragments" not in told


def test_a_size_that_is_none_is_refused_beside_its_field():
    told = ask(browser_page(SLIP), garment={"size": "63"})
    (problem,) = told["problems"]
    assert (problem["block"], problem["field"]) == ("garment", "size")


def test_the_graded_table_stays_when_a_reader_types_her_baby_s_measures():
    own = browser_page({**SLIP, "sizes": "50 to 62", "show": "sizes"})
    before, after = ask(own), ask(own, garment={"size": "62", "chest": "46 cm"})
    for told in (before, after):
        assert told["fragments"][0].count('scope="col"') == 4
    chest: Length = figure("chest", LENGTHS["50"]) + millimetres(80)
    assert Tape("metric").say(chest).replace(" ", "\u00a0") in after["fragments"][0]


def test_the_form_asks_for_the_baby_once_and_what_follows_follows():
    dress = {"garment": "summer-dress", "size": "74"}
    edges = [Inline("collar.neck_edge"), Inline("garment.neck_edge")]
    own = browser_page(dress, {"garment": "collar", "name": "collar"}, inlines=edges)
    told = ask(own, garment={"neck": "25 cm"}, collar={"neck": "20 cm", "size": "50"})
    assert not told["problems"]
    assert (
        inline(told, "collar.neck_edge").split(">", 1)[1]
        == (inline(told, "garment.neck_edge").split(">", 1)[1])
    )
    assert 'name="garment.neck"' in told["form"] and 'name="garment.size"' in told["form"]
    assert 'name="collar.neck"' not in told["form"] and 'name="collar.size"' not in told["form"]
    assert 'name="collar.depth"' in told["form"]
