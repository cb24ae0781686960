"""Buttons, buttonholes and overlaps against what stands in print, or in the trade's own habit."""

import pytest

from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.sources import published
from worked import length, refusal, work


@pytest.mark.parametrize(
    ("lines", "mm"), [("16 lines", "10.16"), ("24 lines", "15.24"), ("40 lines", "25.40")]
)
def test_a_button_line_is_a_fortieth_of_an_inch(lines, mm):
    """The trade's own unit; definition without authority."""
    assert read_length(lines) == millimetres(mm)
    assert length(work("button-spacing", button=lines), "button") == millimetres(mm)


def test_a_hole_is_the_diameter_and_the_thickness_and_more_in_bulky_cloth():
    """Extension Bulletin 576, Buttons and Buttonholes, 1965: 1/8 in more in bulky cloth."""
    written = {"button": "1/2 in", "button_thickness": "1/8 in"}
    working = work("button-spacing", **written)
    assert length(working, "buttonhole") == inches("5/8")
    assert working.values["buttonhole"].basis == published("extension-576")
    assert length(work("button-spacing", cloth="bulky", **written), "buttonhole") == inches("3/4")


def test_a_crosswise_hole_begins_an_eighth_beyond_the_centre_line():
    """Extension Bulletin 576."""
    working = work("button-spacing")
    centre = length(working, "beyond_centre")
    assert centre - length(working, "hole_starts") == inches("1/8")


def test_a_flat_button_takes_its_diameter_and_three_millimetres():
    """Tanzania Institute of Education, Textile and Garment, Form Three, 2022, p. 63."""
    working = work("button-spacing", rule="flat button", button="15 mm")
    assert length(working, "buttonhole") == millimetres(18)
    assert working.values["buttonhole"].basis == published("tanzania-2022")
    assert length(work("button-spacing", button="15 mm"), "buttonhole_compared") == millimetres(18)


@pytest.mark.parametrize(("button", "overlap"), [("1/2 in", "1/2"), ("1 in", "3/4")])
def test_the_overlap_is_half_the_button_and_a_quarter_of_an_inch_at_least(button, overlap):
    """Extension Bulletin 576 (the figure is partly unreadable in the copy)."""
    working = work("button-spacing", button=button)
    assert length(working, "beyond_centre") == inches(overlap)


def test_buttons_of_a_shirt_stand_three_to_three_and_a_half_inches_apart():
    """ICAR e-course, garment construction: set first and last, divide equally."""
    working = work("button-spacing", opening="24 in", first="1 in", last="4 in", buttons=7)
    assert inches(3) <= length(working, "step") <= inches("7/2")
    assert length(work("button-spacing", opening="24 in"), "step") <= inches(3)


def test_a_button_stands_at_least_half_its_diameter_from_the_end():
    """ICAR e-course, garment construction."""
    assert work("button-spacing", button="1/2 in", first="1/4 in")
    assert "use at least 1/4 in (7 mm)" in refusal(
        "button-spacing", button="1/2 in", first="7/32 in"
    )


def test_a_front_band_is_twice_the_overlap_that_the_button_asks_for():
    """Extension Bulletin 576: half the diameter and 1/4 in to each side of the centre line."""
    working = work("front-band", button="1/2 in")
    assert length(working, "band_width") == 2 * inches("1/2")
    assert "use at least 1/2 in" in refusal("front-band", button="1/2 in", extension="7/16 in")


def test_a_facing_is_cut_twice_its_edge_wider_than_the_outer_strip():
    """Common practice, no source; the same rule as for a banded ruffle."""
    working = work("front-band", made="two cloths", edge="3/16 in")
    wider = length(working, "facing_width") - length(working, "outer_width")
    assert wider == 2 * inches("3/16")


@pytest.mark.parametrize("slit", ["2 in", "4 in", "9 1/2 in"])
def test_the_strip_of_a_continuous_lap_is_twice_the_slit_and_its_ends(slit):
    """Common practice, no source: strip twice the slit, width twice the lap and two seams."""
    working = work("lap-placket", slit=slit, width="3/8 in", seam="1/4 in")
    ends = 2 * length(working, "end_allowance")
    assert length(working, "strip_length") - ends == 2 * length(working, "slit")
    assert length(working, "strip_width") == inches("5/4")


def test_a_casing_is_the_elastic_its_ease_and_two_turns():
    """Common practice, no source; elastic is the body times a ratio, and an overlap."""
    working = work(
        "elastic-casing", made="a strip sewn on", elastic="3/8 in", ease="1/8 in", turn="1/4 in",
        body="20 in", share="0.9", overlap="1 in",
    )  # fmt: skip
    assert length(working, "strip_width") == inches(1)
    assert length(working, "elastic_cut") == inches(19)


def test_no_tie_at_neck_or_hood_and_little_of_one_drawn_through():
    """16 CFR 1120.3 (after ASTM F1816): none at hood or neck; 75 mm outside the channel below."""
    assert "no tie or cord" in refusal("tie-pair", place="neck or hood")
    drawn = {"place": "drawn through at waist or hem"}
    working = work("tie-pair", tie_length="75 mm", **drawn)
    assert working.values["longest"].basis == published("cfr-1120")
    assert "75 mm" in refusal("tie-pair", tie_length="3 in", **drawn)


def test_small_parts_are_advised_against_and_nothing_is_claimed_to_be_required():
    """16 CFR 1501.3(d): children's clothing and its buttons are exempt in United States law."""
    for key in ("button-spacing", "front-band"):
        cautions = {caution.key: caution for caution in work(key).cautions}
        small = cautions["buttons-small-parts"]
        assert "exempt" in small.sources[0].detail
        words = small.text.split()
        assert not {"must", "required", "law", "forbidden"} & set(words)
