"""Nursery things against the figures that others have printed."""

import pytest

from handout_engine.amounts.lengths import Length, inches
from worked import length, said, work


def test_thirty_blocks_of_twelve_inches_make_seventy_eight_by_ninety_three():
    """Worked example of no known origin, arithmetic checked: 5 x 6 blocks of 12 in, 3 in sashing
    between them, 3 in border: 72 x 87, then 78 x 93."""
    working = work("nap-cover", blocks_across=5, blocks_down=6, block="12 in", sashing="3 in",
                   border="3 in")  # fmt: skip
    assert (said(working, "inner_width"), said(working, "inner_length")) == ("72 in", "87 in")
    assert (said(working, "top_width"), said(working, "top_length")) == ("78 in", "93 in")


def test_a_quilt_of_54_by_60_takes_six_strips_of_binding():
    """Worked example of no known origin, arithmetic checked: 228 + 10 = 238 in, 6 strips of 42 in.
    The raw edge is 54 x 60: 8 x 9 blocks of 6 in, 2 3/4 in border, two allowances."""
    working = work("nap-cover", blocks_across=8, blocks_down=9, block="6 in", sashing="0 in",
                   border="11/4 in", cloth_width="42 in", selvage="0 in")  # fmt: skip
    assert (said(working, "raw_width"), said(working, "raw_length")) == ("54 in", "60 in")
    assert (said(working, "around"), said(working, "binding_length")) == ("228 in", "238 in")
    assert working.values["binding_strips"].amount == 6


def test_a_quilt_of_40_by_50_takes_five_strips_and_twelve_inches_and_a_half_of_cloth():
    """Worked example of no known origin, arithmetic checked: 180 in / 40, 5 strips x 2 1/2 in =
    12 1/2 in. The raw edge is 40 x 50: 3 x 4 blocks of 8 in, 2 in sashing, 5 3/4 in border. A strip
    of 2 1/2 in makes a binding of 3/8 in and leaves 1/8 in on each layer for the thickness."""
    working = work("nap-cover", blocks_across=3, blocks_down=4, block="8 in", sashing="2 in",
                   border="23/4 in", binding="3/8 in", cloth_width="40 in", selvage="0 in",
                   backing_seams="across the back")  # fmt: skip
    assert (said(working, "raw_width"), said(working, "raw_length")) == ("40 in", "50 in")
    assert said(working, "around") == "180 in"
    assert said(working, "binding_cut") == "2 1/2 in"
    assert working.values["binding_strips"].amount == 5
    assert said(working, "binding_cloth_used") == "12 1/2 in"


# Printed table of no known origin, arithmetic checked: squares from 1 yd of 44 in cloth.
SQUARES = [("7/2", 120), ("5", 56), ("13/2", 30), ("8", 20), ("10", 12)]


@pytest.mark.parametrize(("cut", "number"), SQUARES)
def test_squares_from_a_yard_are_those_of_the_printed_table(cut, number):
    block: Length = inches(cut) - 2 * inches("1/4")
    working = work("nap-cover", block=block, cloth_width="44 in", selvage="0 in")
    assert working.values["squares_in_a_yard"].amount == number


def test_a_cot_mattress_is_as_large_as_the_rule_says():
    """16 CFR 1241.2(b)(3): at least 27 1/4 x 51 5/8 in (690 x 1310 mm)."""
    working = work("nap-cover")
    assert (said(working, "mattress_width"), said(working, "mattress_length")) == (
        "27 1/4 in", "51 5/8 in",
    )  # fmt: skip
    assert float(length(working, "mattress_width")) == pytest.approx(690, abs=3)
    assert float(length(working, "mattress_length")) == pytest.approx(1310, abs=3)


def test_a_band_of_two_inches_takes_four_and_three_cloths_come_from_twenty_four():
    """Common practice, no source: band 2 in, 4 in of extra cloth; about three from 24 in."""
    working = work("burp-cloth", band="2 in", make=3)
    assert said(working, "extra_for_a_band") == "4 in"
    assert said(working, "cloth_used") == "24 in"


def test_a_double_equal_turn_takes_four_hems_and_the_mitre_two_of_both_turns():
    """Common practice, no source: cut = F + 4 h; the seam on x + y = 2 (h + t)."""
    working = work("shawl-square", finished="36 in", hem="1/2 in", turn="1/2 in")
    assert said(working, "cut_side") == "38 in"
    assert said(working, "mitre_at") == "2 in"


def test_a_bib_is_drawn_from_neck_and_chest():
    """Common practice, no source: circle N + 8, overlap 2, width 0.45 C, drop 0.40 C (cm)."""
    working = work("bib", neck="20 cm", chest="40 cm")
    found = [length(working, name).mm for name in ("neck_circle", "bib_width", "bib_drop")]
    assert found == [280, 180, 160]
    assert working.inputs["overlap"].length.mm == 20


def test_a_bonnet_is_cut_from_the_head():
    """Common practice, no source: front 0.85 Hd, depth 0.34 Hd, a circle of 5 to 6 cm growing with
    Hd, neck edge of 2 depths gathered to N + 4 (cm)."""
    for head in (40, 44, 48):
        working = work("bonnet", head=f"{head} cm", neck="20 cm")
        assert length(working, "front_edge").mm == head * 17 / 2
        assert float(length(working, "depth_line")) == pytest.approx(head * 3.4)
        assert 50 <= length(working, "back_width").mm <= 60
        assert length(working, "ungathered_neck") == 2 * length(working, "depth_line")
        assert length(working, "neck_edge").mm == 240
