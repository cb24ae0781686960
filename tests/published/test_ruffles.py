"""Ruffles and flounces against published figures; the source stands beside each check."""

from fractions import Fraction

import pytest

from handout_engine.amounts.lengths import inches
from handout_engine.families.ruffles.fullness_advice import ADVICE
from worked import length, said, work

TECHNIQUES = ("fullness-advice",)


def test_light_cloth_takes_two_to_three_times_the_edge():
    # Utah State University Extension, Clothing construction, "Straight ruffle"
    light = [ADVICE[kind] for kind in ("light cotton", "fine sheer")]
    assert min(advice.least for advice in light) == 2
    assert max(advice.most for advice in light) == 3


def test_two_gathering_rows_a_quarter_of_an_inch_apart():
    # Utah State University Extension, Clothing construction, "Straight ruffle"
    working = work("gathered-ruffle")
    assert length(working, "second_row") - length(working, "first_row") == inches("1/4")


def test_a_doubled_ruffle_with_a_heading_takes_twice_its_width_and_two_inches():
    # The New Dressmaker, Butterick Publishing Co., 1921: 2 x finished + 2 in for a 1 in heading
    for finished in (2, 3, 5):
        working = work("headed-ruffle", depth=inches(finished), heading="1 in", hem="folded")
        assert length(working, "cut_width") == inches(2 * finished + 2)


def test_a_ring_two_inches_across_and_one_inch_deep_is_two_to_one():
    # Worked example of no known origin, arithmetic checked: inner diameter 2 in, depth
    # 1 in, fullness 2 : 1
    working = work("circular-flounce", edge=inches(Fraction("6.283185307")), depth="1 in",
                   ends="closed")  # fmt: skip
    assert said(working, "seam_radius") == "1 in"
    assert float(working.values["hem_fullness"].amount) == pytest.approx(2, abs=1e-8)
