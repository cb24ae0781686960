import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bias_cutting import walk_continuous
from handout_engine.lengths import inches
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


def test_the_chart_rules_every_line_and_says_which_it_meets():
    working = work("continuous-bias", cloth_across="10 in", cloth_along="10 in", width="2 in")
    (chart,) = working.charts
    assert working.named["rows"].amount == 3
    assert [(row[0], row[3]) for row in chart.rows] == [
        ("0", "1"), ("1", "2"), ("2", "3"), ("3", "free"),
    ]  # fmt: skip
    assert chart.rows[3][1] == inches(6)


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
