"""Puffing: by hand, then joined and measured, then its refusals."""

from fractions import Fraction
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from stitching import sewn_width
from worked import length, refusal, said, work

sizes = st.fractions(1, 12, max_denominator=16).map(inches)
allowances = st.fractions("1/8", 1, max_denominator=16).map(inches)


def test_a_sleeve_puffing_by_hand():
    """Common practice, no source: 1 in between the seams, 1/4 in at each, 1 3/4 to 1.

    Cut 1 1/2 in wide; 10 in of edge take 17 1/2 in and 1/4 in at each end, 18 in.
    """
    working = work("puffing-strip", edge="10 in", width="1 in")
    assert said(working, "cut_width") == "1 1/2 in"
    assert said(working, "ruffle_length") == "18 in"
    assert [said(working, name) for name in ("first_row", "second_row")] == ["1/8 in", "3/8 in"]
    assert [said(working, name) for name in ("second_row_lower", "first_row_lower")] == [
        "1 1/8 in",
        "1 3/8 in",
    ]


@given(sizes, allowances, st.fractions(0, 1, max_denominator=8).map(inches))
def test_sewn_between_two_edges_it_measures_its_width_and_loft(width, allowance, loft):
    working = work("puffing-strip", width=width, edge_allowance=allowance, loft=loft)
    # two needles, one along each edge: what is left between them is what shows
    upper, lower = allowance, length(working, "cut_width") - allowance
    assert lower - upper == width + loft


def test_a_thousand_puffings_between_two_strips_and_gathered_at_both_edges():
    """Sewn place by place; then the strip laid along its edge in stretches of one gather each."""
    chance = Random(17)
    for _ in range(1000):
        width, allowance, edge = (Fraction(chance.randint(low, high), 16) for low, high in
                                  ((16, 192), (2, 16), (16, 640)))  # fmt: skip
        full = Fraction(chance.randint(8, 24), 8)
        working = work("puffing-strip", width=inches(width), edge_allowance=inches(allowance),
                       edge=inches(edge), fullness=full, end_allowance="0 in", rows_apart="1/16 in",
                       cloth_width="120 in")  # fmt: skip
        cut, seam = length(working, "cut_width").mm, inches(allowance).mm
        beside = (Fraction(100), Fraction(6), seam)
        bands = [beside, (cut, seam, seam), (Fraction(100), seam, Fraction(6))]
        sewn = sewn_width(bands)
        assert sewn - 2 * (100 - 6 - seam) == inches(width).mm
        gathers = 2 * int(edge * 8)
        taken = sum(inches(edge).mm / gathers * full for _ in range(gathers))
        assert taken == length(working, "ruffle_length").mm


def test_rows_that_would_meet_in_a_narrow_strip_are_kept_apart():
    working = work("puffing-strip", width="1/4 in", edge_allowance="1/2 in")
    assert length(working, "second_row") < length(working, "second_row_lower")
    assert "puts one row off the edge" in refusal(
        "puffing-strip", width="1/4 in", edge_allowance="1/2 in", rows_apart="1/2 in"
    )
