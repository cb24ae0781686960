"""Ribbon through beading: its length, its openings, and ends that cannot be drawn."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from handout_engine.working.cautions import NECK_CORDS
from worked import length, refusal, said, steps, work

BOW = "tied in a bow"


def woven(openings: int, begins: str) -> tuple[int, int]:
    """Run a ribbon through opening after opening; over how many bars it lies, and how many it used.

    It begins behind or in front, and must end on the same side: the last opening is left out where
    it would not. Between two openings it lies over the bar when it is in front.
    """
    used = openings - openings % 2
    side, over = begins, 0
    for number in range(used):
        side = "front" if side == "behind" else "behind"
        over += side == "front" and number < used - 1
    assert side == begins
    return over, used


def test_a_foot_of_beading_worked_by_hand():
    """12 in / 3/8 in = 32 openings; 1.05 × 12 + 2 × 1/2 = 13.6 in of ribbon."""
    working = work("beading-ribbon")
    assert said(working, "openings") == "32"
    assert length(working, "ribbon_length") == inches("68/5")
    assert said(working, "ribbon_to_buy") == "1/2 yd"
    assert said(working, "ribbon_width") == "1/4 in"


@given(st.fractions(2, 100, max_denominator=16).map(inches),
       st.fractions("1/8", 1, max_denominator=16).map(inches))  # fmt: skip
def test_woven_by_hand_it_lies_over_as_many_bars(run, pitch):
    working = work("beading-ribbon", run=run, pitch=pitch)
    openings = working.values["openings"].whole
    assert openings * pitch <= run < (openings + 1) * pitch
    for ends, begins in (("caught in the seams", "behind"), (BOW, "front")):
        working = work("beading-ribbon", run=run, pitch=pitch, ends=ends)
        over, used = woven(openings, begins)
        assert working.values["times_over"].whole == over
        assert working.values["openings_used"].whole == used


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"ribbon": "3/8 in"},
            "ribbon 3/8 in is wider than the opening 1/4 in and would fold in it; use ribbon of at "
            "most 1/4 in (6 mm)",
        ),
        (
            {"slot": "5/8 in"},
            "slot 5/8 in is as wide as the beading itself; use the height of one opening, less "
            "than 5/8 in (15 mm)",
        ),
        (
            {"ends": BOW, "place": "neck or bonnet"},
            "ties at a neck or bonnet can catch and pull tight; catch the ribbon's ends in the "
            'seams (ends: "caught in the seams") and sew on a small separate bow, stitched through '
            "its knot",
        ),
        (
            {"ends": BOW, "place": "waist or hem", "tie": "3 in"},
            "tie 3 in is longer than 2 15/16 in (75 mm), the most that may hang free at waist or "
            "hem; shorten it, or catch the ends in the seams",
        ),
    ],
)
def test_what_is_not_safe_or_does_not_fit_is_refused_with_a_way_out(written, sentence):
    assert refusal("beading-ribbon", **written) == sentence


def test_the_ways_out_are_open_and_every_page_warns_of_cords():
    for written in ({"place": "neck or bonnet"}, {"ends": BOW, "place": "waist or hem"},
                    {"ends": BOW}):  # fmt: skip
        working = work("beading-ribbon", **written)
        assert NECK_CORDS in working.cautions
        assert "cannot be drawn out" in steps(working)[-1]


def test_a_bow_takes_its_ties_and_a_seam_its_allowance():
    bow = work("beading-ribbon", ends=BOW, tie="5 in")
    seamed = work("beading-ribbon", turn_in="1 in")
    assert length(bow, "ribbon_length") - length(seamed, "ribbon_length") == inches(8)
