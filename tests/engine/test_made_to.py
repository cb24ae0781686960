"""Whom a page is made to, in every place that names it, after the reader's choices."""

import json
import re

import pytest

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import LENGTHS, MEASURES, figure
from handout_engine.drawing.markup import html
from handout_engine.pages.authored import authored, to_json
from handout_engine.pages.blocks import read_block
from handout_engine.pages.browser import answer
from handout_engine.pages.fragments.size_choice import size_choice
from handout_engine.pages.made_to import made_to
from handout_engine.pages.page import work_page

PAGES = {size: f"gown-size-{size}.html" for size in LENGTHS}
GOWN = {"garment": "day-gown", "size": "62", "sizes": "all", "show": "measures"}
BONNET = {"garment": "bonnet", "name": "bonnet", "show": "measures"}


def asked(choices, *blocks, **more):
    page = work_page([read_block(block) for block in blocks or (GOWN,)], Tape())
    own = authored(page, "a4", {}, [], PAGES)
    question = {"page": json.loads(to_json(own)), "choices": choices, **more}
    return json.loads(answer(json.dumps(question)))


def marked(told):
    return re.findall(r'aria-current="page">(\d+)<', told["sizes"])


def guide(told):
    return re.search(r'class="detail">(.*?)</p>', told["sizes"])[1]


@pytest.mark.parametrize("size", LENGTHS)
def test_another_size_is_named_everywhere(size):
    told = asked({"garment": {"size": size}})
    assert told["made_to"] == f"Size {size}"
    assert marked(told) == [size]
    assert guide(told).startswith(f"Size {size} is a body length of {size} cm: about ")
    assert set(re.findall(r'href="(.*?)"', told["sizes"])) == {
        address for other, address in PAGES.items() if other != size
    }


def test_what_the_build_writes_is_what_the_browser_shows():
    built = work_page([read_block({**GOWN, "size": "74"})], Tape())
    told = asked({"garment": {"size": "74"}})
    assert told["made_to"] == made_to(built).words
    assert told["sizes"] == html(size_choice(PAGES, made_to(built)))


def test_a_body_length_goes_before_the_size():
    told = asked({"garment": {"size": "86", "body_length": "70.5 cm"}})
    assert told["made_to"] == "Body length 70.5 cm"
    assert marked(told) == []
    assert guide(told).startswith("Between sizes 68 and 74 lies a body length of 70.5 cm: about 8 ")
    assert "86" not in told["chosen"]
    assert "body length 70.5 cm" in told["chosen"]
    (row,) = re.findall(r'<tr><th scope="row">size</th><td>.*?</td>', told["fragments"][0])
    assert "68" in row


def test_a_body_length_that_is_a_size_is_that_size():
    told = asked({"garment": {"body_length": "68 cm"}})
    assert (told["made_to"], marked(told)) == ("Size 68", ["68"])


def test_a_baby_who_was_measured_is_said_to_be():
    told = asked({"garment": {"size": "74", "chest": "46 cm"}})
    assert told["made_to"] == "Size 74, her own measures"
    assert guide(told).endswith("Her own measures go before the table's.")
    assert guide(asked({})).endswith("Measure the baby.")


def test_a_garment_that_follows_is_of_the_same_baby():
    told = asked({"bonnet": {"crown_rump": "1 cm"}, "garment": {"size": "74"}}, GOWN, BONNET)
    assert told["made_to"] == "Size 74"
    other = asked({"other": {"head": "45 cm"}}, GOWN, {**BONNET, "name": "other", "size": "50"})
    assert other["made_to"] == "Size 62", "a bonnet of a size of its own is not the page's baby"


def test_a_page_of_another_size_takes_along_all_but_the_baby():
    told = asked(
        {"garment": {"size": "74", "chest": "46 cm", "hem": "3 in"}},
        tape={"first": "metric"},
        paper="letter",
    )
    assert told["taken_along"] == {"garment.hem": "3 in", "units": "metric", "paper": "letter"}


def test_a_page_without_a_garment_names_no_size():
    told = asked({}, {"technique": "gathered-ruffle"})
    assert not {"made_to", "sizes", "taken_along"} & told.keys()


@pytest.mark.parametrize("key", register.garment_keys())
def test_true_scale_pieces_name_the_body_length_they_are_drawn_for(key):
    page = work_page([read_block({"garment": key, "body_length": "70.5 cm"})], Tape())
    drawn = [sheet.document("a4", Tape()) for sheet in page.sheets().values()]
    said = {words for each in drawn for words in re.findall(r"For (size \d+|body [^,<]*)", each)}
    assert said == {"body length 70.5 cm"}


def placeholder(told, name):
    (found,) = re.findall(rf'<input[^>]*name="garment.{name}"[^>]*>', told["form"])
    return (re.findall(r'placeholder="(.*?)"', found) or [""])[0]


@pytest.mark.parametrize("key", register.garment_keys())
def test_an_empty_box_shows_the_measure_of_the_table_and_follows_the_size(key):
    """Against the table itself, in both systems, for every measure that a garment asks for."""
    block = {"garment": key}
    asked_for = [each.name for each in declared_inputs(register.find_garment(key))]
    measures = [name for name in MEASURES if name in asked_for]
    for choices, length in (
        ({}, "62 cm"),
        ({"size": "74"}, "74 cm"),
        ({"size": "50", "body_length": "70.5 cm"}, "70.5 cm"),
    ):
        for tape in (Tape(), Tape("metric")):
            told = asked({"garment": choices}, block, tape={"first": tape.first})
            for name in measures:
                table = tape.say(figure(name, read_length(length)))
                assert placeholder(told, name) == f"table: {table}", name
                assert f"the table's for the size (here {table})" in told["form"]


def test_the_table_s_measure_is_still_said_beside_her_own():
    told = asked({"garment": {"chest": "42 cm"}}, tape={"first": "metric"})
    assert "Left empty: the table's for the size (here 40.1 cm)." in told["form"]


def test_the_body_length_of_the_size_is_said_beside_her_own():
    told = asked({"garment": {"size": "74", "body_length": "70.5 cm"}}, tape={"first": "metric"})
    assert "Left empty: the size's own (here 74 cm)." in told["form"]
    assert placeholder(told, "body_length") == "table: 74 cm"


def test_other_boxes_say_what_is_usual_for_what_stands_in_the_form():
    small, large = (asked({"garment": {"size": size}}) for size in ("50", "98"))
    assert placeholder(small, "shoulder_drop") == "usual: 9/16 in"
    assert placeholder(large, "shoulder_drop") == "usual: 13/16 in"
