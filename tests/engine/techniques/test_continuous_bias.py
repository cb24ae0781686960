"""A continuous strip, against squares and rectangles that are cut, sewn and walked."""

from fractions import Fraction
from math import sqrt

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import Polygon, box
from shapely.affinity import translate

from bias_cutting import Walked, walk_continuous
from handout_engine.amounts.lengths import Length, inches
from worked import length, refusal, said, steps, work

wanted_lengths = st.integers(20, 700).map(inches)
widths = st.fractions(1, 4, max_denominator=16).map(inches)


def test_three_yards_of_strip_by_hand():
    """108 in of 1 1/4 in strip, seams 1/4 in.

    Seven rows need 7 x 1.7678 + 1/4 = 12.62 in of square to lie in, and rows long enough need
    (108 / 1.4142 + 12 x 1/4) / 7 + 1/4 = 11.59 in: so 12.62, in half inches 13 in.
    """
    working = work("continuous-bias")
    assert said(working, "across") == said(working, "along") == "13 in"
    assert working.named["rows"].amount == 7
    assert said(working, "strip_length") == "121 31/32 in"


def test_a_rectangle_where_a_square_wastes_by_hand():
    """55 in of 2 1/2 in strip, seams 1/4 in.

    Three rows need a square of (55 / 1.4142 + 4 x 1/4) / 3 + 1/4 = 13.55 in, so 14, and 3.1 in of
    it lie beyond the last row. Four rows need 4 x 3.5355 + 1/4 = 14.39 in by
    (38.89 + 6 x 1/4) / 4 + 1/4 = 10.35 in: 14 1/2 by 10 1/2 in, 152 square inches in place of 196.
    """
    working = work("continuous-bias", width="2 1/2 in", wanted="55 in")
    assert (said(working, "across"), said(working, "along")) == ("14 1/2 in", "10 1/2 in")
    assert working.named["rows"].amount == 4
    assert said(working, "square_side") == "14 in"
    assert said(working, "cloth_saved") == "22.3 %"
    square = work("continuous-bias", width="2 1/2 in", wanted="55 in", least_saving="100 %")
    assert said(square, "across") == said(square, "along") == "14 in"
    assert said(square, "cloth_saved") == "0 %"


def walked_from(one: int, other: int, width: Length) -> Walked:
    """The strip from cloth of so many half inches each way, in mm."""
    short, long = sorted((one * 12.7, other * 12.7))
    return walk_continuous(short, long, float(width), 6.35)


@settings(max_examples=settings.default.max_examples // 3)
@given(
    st.integers(20, 200).map(inches),
    st.fractions(1, 3, max_denominator=8).map(inches),
    st.sampled_from(["0 %", "10 %", "25 %"]),
)
def test_of_all_squares_and_rectangles_that_are_walked_ours_is_the_smallest(wanted, width, least):
    """Every size in half inches, at most twice as long as wide: the smallest that is enough."""
    working = work("continuous-bias", wanted=wanted, width=width, least_saving=least)
    enough = [
        (one * other, one == other)
        for one in range(2, 88)
        for other in range(one, min(2 * one, 88) + 1)
        if one * 12.7 > 3 * 6.35
        and one * other * 161.29 >= float(wanted) * float(width)
        and walked_from(one, other, width).length > float(wanted) - 1e-6
    ]
    square = min(area for area, is_square in enough if is_square)
    smallest = min(enough)[0]
    ours = (length(working, "across") / inches("1/2")) * (length(working, "along") / inches("1/2"))
    worth_it = 1 - Fraction(smallest, square) >= Fraction(least.split()[0]) / 100
    assert ours == (smallest if worth_it else square)


def test_cloth_too_narrow_for_the_square_is_cut_as_a_rectangle():
    """100 yd of 3 in take 106 1/2 in square; from 45 in cloth they come in a long rectangle."""
    working = work("continuous-bias", width="3 in", wanted="100 yd")
    assert said(working, "square_side") == "106 1/2 in"
    assert length(working, "across") <= inches(44)
    short, long = sorted((length(working, "across").mm, length(working, "along").mm))
    assert walk_continuous(float(short), float(long), 76.2, 6.35).length > 3600 * 25.4 - 1e-6


def sewn_panel(short: float, long: float, join: float) -> Polygon:
    """The cloth cut and sewn, as far as it lies inside both stitchings; by shapely.

    The triangle beyond x + y = short moves to the other end; each piece loses the allowance there,
    and the grain edges lose theirs in the tube's seam, but for what stands free at either end.
    """
    whole = box(0, 0, long, short)
    triangle = Polygon([(0, 0), (short, 0), (0, short)])
    rest = whole.difference(triangle).intersection(box(0, 0, long - join, short))
    moved = translate(triangle.intersection(box(join, 0, short, short)), long - 2 * join, join)
    panel = rest.union(moved.buffer(1e-9))
    return panel.intersection(box(-long, join, 3 * long, short))


@given(
    st.fractions(5, 40, max_denominator=8).map(inches),
    st.fractions(5, 40, max_denominator=8).map(inches),
    widths,
    st.fractions("1/8", "5/8", max_denominator=16).map(inches),
)
def test_the_upper_bound_counts_its_seams(one, other, width, join):
    """By the area of the sewn panel, less the tube's seam, more the two slants left free."""
    short, long = sorted((float(one), float(other)))
    assume((long - float(join)) > float(width) * sqrt(2))
    working = work(
        "continuous-bias",
        cloth_across=one,
        cloth_along=other,
        width=width,
        strip_allowance=join,
        cloth_width="120 in",
    )
    panel = sewn_panel(short, long, float(join))
    seam = 2 * float(join) * (long - float(join))
    bound = (panel.area - seam) / float(width) + 2 * sqrt(2) * float(join)
    assert float(length(working, "most_length")) == pytest.approx(bound, rel=1e-6)
    walked = walk_continuous(short, long, float(width), float(join))
    assert walked.length <= float(length(working, "most_length")) + 1e-6
    assert length(working, "most_length") < length(working, "area_length")


def test_the_upper_bound_is_reached_where_no_part_of_a_row_is_left():
    """Four rows of 2 1/2 in on a grain edge just as long as they are."""
    side = Length(Fraction(4 * 63.5 * sqrt(2) + 1e-7)) + inches("1/4")
    working = work("continuous-bias", cloth_across=side, cloth_along="10 1/2 in", width="2 1/2 in")
    assert working.named["rows"].amount == 4
    reached = float(length(working, "strip_length"))
    assert reached == pytest.approx(float(length(working, "most_length")), abs=1e-6)


@given(wanted_lengths, widths)
def test_the_cloth_worked_out_gives_the_length_when_it_is_walked(wanted, width):
    working = work("continuous-bias", wanted=wanted, width=width, cloth_width="120 in")
    short, long = sorted((length(working, "across").mm, length(working, "along").mm))
    walked = walk_continuous(float(short), float(long), float(width), 6.35)
    assert walked.rows == working.named["rows"].amount
    assert abs(walked.length - float(length(working, "strip_length"))) < 1e-6
    assert walked.length > float(wanted) - 1e-6


@given(
    st.integers(20, 300).map(inches),
    st.fractions(1, 2, max_denominator=16).map(inches),
    st.fractions(12, 44, max_denominator=16).map(inches),
    st.booleans(),
)
def test_the_other_side_is_enough_and_one_step_less_is_not(wanted, width, side, across):
    given_side, other = ("cloth_across", "along") if across else ("cloth_along", "across")
    working = work(
        "continuous-bias", wanted=wanted, width=width, cloth_width="120 in", size_step="1/2 in",
        **{given_side: side},
    )  # fmt: skip
    assert float(length(working, "strip_length") - wanted) > -1e-6
    less = length(working, other) - inches("1/2")
    assume(less >= inches(2))
    short, long = sorted((float(side), float(less)))
    if short > 3 * 6.35:
        assert walk_continuous(short, long, float(width), 6.35).length < float(wanted) + 1e-6


def test_the_chart_gives_each_line_the_same_two_numbers_as_the_drawing():
    working = work("continuous-bias", cloth_across="10 in", cloth_along="10 in", width="2 in")
    (chart,) = working.charts
    assert working.named["rows"].amount == 3
    assert [(row[0], row[3]) for row in chart.rows] == [
        ("0", "none"), ("1", "0"), ("2", "1"), ("3", "2"),
    ]  # fmt: skip
    assert chart.rows[3][1].length == inches(6)
    assert chart.rows[3][2].mm == pytest.approx(6 * 25.4 * sqrt(2))


def test_one_row_needs_no_tube():
    working = work("continuous-bias", cloth_across="4 in", cloth_along="4 in", width="2 in")
    assert working.named["rows"].amount == 1
    assert not any("tube" in step for step in steps(working))


def test_a_rectangle_is_trimmed_where_its_edges_step_and_a_square_is_not():
    square = work("continuous-bias", cloth_across="12 in", cloth_along="12 in")
    longer = work("continuous-bias", cloth_across="12 in", cloth_along="20 in")
    assert not any("trim the one" in step for step in steps(square))
    assert any("trim the one" in step for step in steps(longer))


@pytest.mark.parametrize(
    ("written", "words"),
    [
        (
            {"cloth_across": "2 in", "cloth_along": "2 in", "width": "2 in"},
            "width 2 in leaves no whole row in cloth of 2 in; use a width of at most 1 7/32 in "
            "(31 mm), or more cloth",
        ),
        (
            {"cloth_across": "2 in", "cloth_along": "20 in", "strip_allowance": "3/4 in"},
            "cloth, across 2 in is used up by the seams; use more than 2 1/4 in (58 mm) for "
            "cloth_across, or narrower seams",
        ),
        (
            {"cloth_across": "10 in", "cloth_along": "12 in", "wanted": "9 yd"},
            "this cloth gives 79 3/16 in (201.2 cm) in whole rows, less than wanted 324 in; leave "
            "cloth_along out to have it worked out, or want less",
        ),
    ],
)
def test_refusals(written, words):
    assert refusal("continuous-bias", **written) == words
