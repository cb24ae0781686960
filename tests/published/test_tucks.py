"""Tucks and twin needles against what stands in print, or in the trade's own habit."""

import pytest

from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.sources import published
from worked import length, refusal, said, work


@pytest.mark.parametrize(
    ("tucks", "depth", "taken"), [(5, "1/4 in", "2 1/2 in"), (3, "1/2 in", "3 in")]
)
def test_the_allowance_is_twice_the_depth_times_the_number(tucks, depth, taken):
    """Baldt, Clothing for Women, 1916."""
    working = work("tuck-set", tucks=tucks, depth=depth)
    assert said(working, "take_up") == taken
    assert working.values["take_up"].basis == published("baldt-1916")


@pytest.mark.parametrize("depth", ["1/16 in", "1/8 in", "1/4 in", "1/2 in"])
def test_touching_tucks_take_three_times_their_depth_of_flat_cloth_each(depth):
    """Home and School Sewing, chapter XXI, about 1901."""
    working = work("tuck-set", kind="blind", depth=depth)
    assert length(working, "flat_step") == 3 * length(working, "depth")


def test_four_tucks_of_an_eighth_take_an_inch():
    """Worked example of no known origin, arithmetic checked."""
    assert said(work("tuck-set", tucks=4, depth="1/8 in"), "take_up") == "1 in"


@pytest.mark.parametrize(("kind", "share"), [("spaced", (1, 2)), ("pin", (1, 1))])
def test_the_space_is_half_the_depth_or_for_very_narrow_tucks_the_depth(kind, share):
    """Home and School Sewing, chapter XXI; A Sewing Course for Teachers, no. 34."""
    working = work("tuck-set", kind=kind)
    top, bottom = share
    assert length(working, "space") * bottom == length(working, "tuck_depth") * top


def test_the_default_number_of_tucks_is_odd():
    """Home and School Sewing: odd numbers, 3, 5 or 7."""
    assert work("tuck-set").named["tucks"].whole in {3, 5, 7}


@pytest.mark.parametrize("depth", ["1/16 in", "2 in"])
def test_the_depths_of_the_textbooks_can_be_sewn(depth):
    """Home and School Sewing: 1/16 in to about 2 in; The New Dressmaker, 1921, p. 97."""
    assert work("tuck-set", tucks=3, depth=depth, finished_width="12 in", cloth_width="60 in")


def test_a_six_millimetre_twin_needle_sews_a_straight_stitch_only():
    """Common practice, no source: greatest stitch width 7 mm, margin 1 mm."""
    working = work(
        "twin-needle-clearance", needle_spacing="6 mm", greatest_stitch="7 mm", margin="1 mm"
    )
    assert said(working, "greatest_width") == "0 mm"
    assert said(working, "verdict") == "straight stitch only"
    assert "a needle_spacing of at most 6 mm" in refusal(
        "twin-needle-clearance", needle_spacing="6.1 mm"
    )


@pytest.mark.parametrize("number", [60, 65, 70, 75, 80, 90, 100, 110, 120])
def test_a_needle_number_is_its_blade_in_hundredths_of_a_millimetre(number):
    """The trade's needle systems; definition without authority."""
    working = work("twin-needle-clearance", needle_number=number)
    assert length(working, "blade") == millimetres(f"{number}/100")


def test_letting_out_a_growth_tuck_adds_twice_its_depth():
    """Baldt, Clothing for Women, 1916: the same allowance, the other way round."""
    working = work("growth-tuck", depth="3/4 in", tucks=1)
    assert length(working, "grown_length") - length(working, "panel_length") == inches("3/2")
