"""Buttons along an edge, walked from its upper end with a pair of dividers."""

from fractions import Fraction
from itertools import pairwise
from math import hypot, pi
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.paper.true_scale import true_scale
from worked import length, refusal, said, steps, work

THIRTY_SECOND = Fraction(127, 160)


def middles(working):
    """Every button's distance from the upper end, as the chart has it."""
    return [row[1].length for row in working.charts[0].rows]


def test_five_buttons_by_hand():
    """8 in, the first 1/2 in from the top, the last 1 in from the bottom: 6 1/2 in in 4 steps.

    6 1/2 / 4 = 1 5/8 in. A button of 16 lines is 2/5 in: half of it and 1/4 in are 9/20 in beyond
    the centre line, its hole 2/5 + 1/8 = 21/40 in, from 9/20 - 1/8 = 13/40 in to 34/40 in from
    the edge.
    """
    working = work("button-spacing", opening="8 in", first="1/2 in", last="1 in", buttons=5)
    assert said(working, "step") == "1 5/8 in"
    assert middles(working) == [inches(Fraction(n, 8)) for n in (4, 17, 30, 43, 56)]
    assert length(working, "beyond_centre") == inches("9/20")
    assert length(working, "buttonhole") == inches("21/40")
    assert length(working, "hole_starts") == inches("13/40")
    assert length(working, "hole_ends") == inches("34/40")
    assert any("every 1 5/8 in" in step for step in steps(working))


def test_the_thread_of_one_button_by_hand():
    """1/16 + 1/16 + 1/8 in and 2 mm, there and back, 4 times; 5 turns round 2 mm; two strands."""
    working = work("button-spacing")
    through = 2 * (0.25 * 25.4 + 2.0)
    strand = 4 * through + 5 * pi * 2.0 + 8 * 25.4
    assert float(length(working, "thread_for_one")) == pytest.approx(2 * strand, abs=1e-6)


def test_without_a_number_the_distance_decides_it():
    """16 in less 2 x 3/5 in is 14 4/5 in: 5 steps of 2 24/25 in keep 3 in, 4 would not."""
    working = work("button-spacing", opening="16 in", button="24 lines", greatest_gap="3 in")
    assert working.named["all_buttons"].amount == 6
    assert length(working, "step") == inches("74/25")


@given(st.integers(20, 400), st.integers(8, 60))
def test_the_number_found_is_the_fewest_that_keeps_the_distance(opening, gap):
    written = {"opening": inches(Fraction(opening, 8)), "greatest_gap": inches(Fraction(gap, 8))}
    try:
        working = work("button-spacing", **written)
    except RefusalError:
        return
    places = middles(working)
    gaps = {after - before for before, after in pairwise(places)}
    assert len(gaps) <= 1
    assert all(each <= written["greatest_gap"] for each in gaps)
    if len(places) > 2:
        span = places[-1] - places[0]
        assert span / (len(places) - 2) > written["greatest_gap"]


def test_a_thousand_edges_stepped_off_with_dividers_end_at_the_last_button():
    """From the first button step by step; holes and buttons, drawn as circles and slits, never
    touch one another, and none reaches past an end or the edge."""
    random = Random(576)
    worked = 0
    for _ in range(1000):
        written = {
            "opening": Length(random.randint(100, 1200) * THIRTY_SECOND),
            "first": Length(random.randint(4, 60) * THIRTY_SECOND),
            "last": Length(random.randint(4, 60) * THIRTY_SECOND),
            "button": Length(random.randint(6, 40) * THIRTY_SECOND),
            "buttons": random.randint(1, 14),
            "holes": random.choice(["crosswise", "upright"]),
        }
        try:
            working = work("button-spacing", **written)
        except RefusalError:
            continue
        worked += 1
        place = written["first"]
        for middle in middles(working)[1:]:
            place += length(working, "step")
            assert middle == place
        if written["buttons"] > 1:
            assert place + written["last"] == written["opening"]
        no_button_or_hole_meets_another(working, written)
    assert worked > 400


def no_button_or_hole_meets_another(working, written):
    edge = float(length(working, "beyond_centre"))
    radius = float(written["button"]) / 2
    slits = [slit(working, row) for row in working.charts[0].rows]
    for (x1, y1), (x2, y2) in slits:
        assert max(x1, x2) < edge and min(y1, y2) > 0
        assert max(y1, y2) < float(written["opening"])
        assert hypot(x2 - x1, y2 - y1) == pytest.approx(float(length(working, "buttonhole")))
    assert radius <= edge
    for (_, above), (below, _) in pairwise(slits):
        if written["holes"] == "upright":
            assert above[1] < below[1]
    centres = [float(middle) for middle in middles(working)]
    assert all(after - before >= 2 * radius - 1e-9 for before, after in pairwise(centres))
    assert centres[0] >= radius - 1e-9
    if len(centres) > 1:
        assert float(written["opening"]) - centres[-1] >= radius - 1e-9


def slit(working, row):
    """Both ends of a hole, x from the centre line toward the edge, y from the upper end."""
    if working.inputs["holes"].amount == "upright":
        return (0.0, row[2].mm), (0.0, row[3].mm)
    edge = float(length(working, "beyond_centre"))
    return (edge - row[2].mm, row[1].mm), (edge - row[3].mm, row[1].mm)


def test_the_refusals_name_the_nearest_that_can_be_sewn():
    assert refusal("button-spacing", opening="4 in", buttons=20) == (
        "20 buttons would stand 5/32 in apart and overlap, or their holes would; use at most 9"
    )
    assert work("button-spacing", opening="4 in", buttons=9)
    assert refusal("button-spacing", extension="1/4 in") == (
        "extension 1/4 in is too little for a button of 13/32 in, which would stand within 1/4 in "
        "of the edge; use at least 15/32 in (12 mm), a smaller button or less clearance"
    )
    assert refusal("button-spacing", first="1/8 in") == (
        "first 1/8 in takes a button of 13/32 in, or its hole, beyond the end of the edge; use at "
        "least 7/32 in (6 mm)"
    )
    assert work("button-spacing", extension="15/32 in", first="7/32 in")
    assert "use an edge of at least 5 in (12.7 cm)" in refusal(
        "button-spacing", opening="4 in", first="3 in", last="2 in"
    )
    assert "use less than 3/16 in (5 mm)" in refusal(
        "button-spacing", clearance="0 in", beyond="1/4 in"
    )
    assert "use buttons: 1" in refusal("button-spacing", opening="1 in", button="1/2 in",
                                         first="1/2 in", last="3/8 in")  # fmt: skip
    many = {"opening": "40 in", "first": "1/4 in", "last": "1/4 in"}
    assert "use at least 11/16 in (18 mm)" in refusal(
        "button-spacing", greatest_gap="1/2 in", **many
    )
    assert work("button-spacing", greatest_gap="11/16 in", **many)


def test_the_sheet_to_lay_under_is_at_true_scale():
    """One user unit of the sheet is one millimetre, and marks stand on it as the chart has them."""
    working = work("button-spacing", opening="8 in", first="1/2 in", last="1 in", buttons=5)
    (picture,) = [each for each in working.pictures if each.sheet is not None]
    sheet = true_scale(picture.sheet, Tape())
    assert sheet.get("width") == f"{sheet.get('viewBox').split()[2]}mm"
    heights = {point[1] for shape in picture.sheet.shapes for point in getattr(shape, "points", ())}
    assert all(float(middle) in heights for middle in middles(working))


def test_its_cautions_speak_of_small_parts_and_old_buttons():
    keys = {caution.key for caution in work("button-spacing").cautions}
    assert {"buttons-small-parts", "old-buttons"} <= keys


def test_two_fronts_lap_by_what_both_reach_beyond_their_centre_lines():
    assert said(work("button-spacing", extension="5/8 in"), "overlap") == "1 1/4 in"


def test_an_upright_hole_begins_above_its_button_and_is_its_own_length():
    """The first button at 1 in, its hole from 1/8 in above it: 7/8 in, and a hole further."""
    working = work("button-spacing", holes="upright", first="1 in", button="2/5 in")
    name, middle, begins, ends = working.charts[0].rows[0]
    assert name == "button 1"
    assert [cell.length for cell in (middle, begins)] == [inches(1), inches("7/8")]
    assert ends.length == inches("7/8") + length(working, "buttonhole")


def test_more_strands_take_so_many_times_the_thread():
    one, three = (length(work("button-spacing", strands=n), "thread_for_one") for n in (1, 3))
    assert three == 3 * one
