"""Inputs that may be left out: the value that is said to be in use instead is the one in use.

Whoever writes it down where nothing stood gets the very same sheet.
"""

from __future__ import annotations

import json
import re

import pytest

from handout_engine.amounts.inputs import Input, declared_inputs
from handout_engine.amounts.saying import Tape
from handout_engine.pages.authored import authored, to_json
from handout_engine.pages.blocks import read_block
from handout_engine.pages.browser import answer
from handout_engine.pages.page import work_page
from handout_engine.register import find, keys
from handout_engine.working.technique import make
from handout_engine.working.workings import Working

NOTHING_IN_USE = {
    # There is nothing, or nothing is looked at, until something is written.
    "corners", "edge_girth", "foot_slot", "lace_width", "must_pass", "opening", "plate_slot",
    "points", "sample_after", "sample_before", "sample_smocked", "sample_stitched",
    "sample_thread", "sample_turned", "wanted",
    # What is used is another input, which its own box shows.
    "facing_cloth_width", "fell_turn", "needle_spread", "other_side", "underlay_cloth_width",
    # Used in some forms only, or worked out together with others, as the chart shows.
    "centre_space", "circle", "cloth_across", "cloth_along", "depth", "edge_seam", "facing",
    "finished_width", "fit", "lower_width", "motifs", "nape", "neck_depth", "neck_width", "panel",
    "rows_apart", "side_depth", "spacing", "tucks", "buttons",
}  # fmt: skip


def left_out(key: str) -> list[Input]:
    """The inputs of a technique that are settled by its working, not before."""
    technique = find(key)
    usual = make(technique, {}).usual
    return [
        each
        for each in declared_inputs(technique)
        if each.default is None and each.name not in usual
    ]


def amounts(working: Working) -> dict[str, object]:
    return {name: value.amount for name, value in working.values.items()}


@pytest.mark.parametrize("key", keys())
def test_what_is_said_to_be_in_use_makes_the_same_sheet(key):
    technique = find(key)
    working = make(technique, {}).work()
    for each in left_out(key):
        value = working.values.get(each.in_use)
        if value is not None:
            written = make(technique, {each.name: value.amount}).work()
            assert amounts(written) == amounts(working), each.name


@pytest.mark.parametrize("key", keys())
def test_an_empty_box_shows_what_is_in_use_unless_nothing_is(key):
    for each in left_out(key):
        assert each.in_use or each.name in NOTHING_IN_USE, each.name


def test_the_box_of_a_ruffle_s_rows_follows_its_allowance():
    """1/4 in, or less where the allowance is narrower; with a figure of her own it says nothing."""
    for written, shown in (
        ({}, "usual: 1/4 in"),
        ({"edge_allowance": "1/8 in"}, "usual: 1/8 in"),
        ({"rows_apart": "3/16 in"}, ""),
    ):
        assert placeholder({"ruffle": written}, "ruffle.rows_apart") == shown


def placeholder(choices: dict[str, dict[str, str]], name: str) -> str:
    """What an empty box of a gathered ruffle's form shows."""
    block = read_block({"technique": "gathered-ruffle", "name": "ruffle", "show": "cuts"})
    page = work_page([block], Tape())
    question = {"page": json.loads(to_json(authored(page, "a4", {}, []))), "choices": choices}
    form = json.loads(answer(json.dumps(question)))["form"]
    (control,) = re.findall(rf'<input [^>]*name="{re.escape(name)}"[^>]*>', form)
    return (re.findall(r'placeholder="(.*?)"', control) or [""])[0]
