import pytest
from hypothesis import given
from hypothesis import strategies as st

from folding import fold_double
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import published
from worked import length, refusal, said, steps, work

depths = st.fractions(1, 40, max_denominator=16).map(inches)
headings = st.fractions(1, 20, max_denominator=16).map(inches)


def test_a_hemmed_ruffle_with_a_heading_by_hand():
    """Common practice, no source: 2 in below the stitching, 1/2 in above, hems of 1/4 + 1/4 in.

    Cut width 2 + 1/2 + 2 x 1/2 = 3 1/2 in; the gathering line lies 1/2 + 1/2 = 1 in from the
    upper raw edge, the rows 1/8 in to each side of it.
    """
    working = work("headed-ruffle", depth="2 in", heading="1/2 in")
    assert said(working, "cut_width") == "3 1/2 in"
    assert said(working, "gathering_line") == "1 in"
    assert said(working, "first_row") == "7/8 in"
    assert said(working, "second_row") == "1 1/8 in"
    assert said(working, "upper_fold") == "1/2 in"
    assert said(working, "lower_fold") == "3 in"


def test_a_doubled_ruffle_by_hand():
    working = work("headed-ruffle", depth="2 in", heading="1 in", hem="folded")
    assert said(working, "cut_width") == "6 in"
    assert said(working, "gathering_line") == "2 in"
    assert said(working, "upper_fold") == "1 in"
    assert said(working, "lower_fold") == "4 in"
    assert working.values["cut_width"].basis == published("butterick-1921")


def test_gathered_along_its_centre():
    working = work("headed-ruffle", depth="1 in", heading="1 in", hem="rolled")
    assert length(working, "gathering_line") * 2 == length(working, "cut_width")


def test_rows_that_would_leave_the_heading_are_refused():
    assert refusal("headed-ruffle", heading="1/4 in", rows_apart="1/2 in") == (
        "rows_apart 1/2 in puts one row off the edge; use less than 1/2 in (12 mm), or more heading"
    )


@given(depths, headings)
def test_folded_double_the_raw_edges_meet_behind_the_gathering_line(depth, heading):
    working = work("headed-ruffle", depth=depth, heading=heading, hem="folded")
    doubled = fold_double(
        length(working, "cut_width").mm,
        length(working, "upper_fold").mm,
        length(working, "lower_fold").mm,
    )
    assert doubled.depth == (depth + heading).mm
    assert doubled.upper_raw_edge == doubled.lower_raw_edge == heading.mm
    assert length(working, "gathering_line") - length(working, "upper_fold") == heading


@given(depths, headings, st.sampled_from(["double", "single", "rolled", "finished"]))
def test_hemmed_the_heading_and_the_depth_are_what_was_asked_for(depth, heading, hem):
    working = work("headed-ruffle", depth=depth, heading=heading, hem=hem)
    line = length(working, "gathering_line")
    assert line - length(working, "upper_fold") == heading
    assert length(working, "lower_fold") - line == depth
    left = length(working, "cut_width") - length(working, "lower_fold")
    assert left == length(working, "upper_fold") == length(working, "hem_allowance")


@pytest.mark.parametrize("hem", ["double", "folded", "rolled"])
def test_after_the_edges_are_finished_the_rows_are_measured_from_the_finished_edge(hem):
    """Once both edges are folded, no raw edge is left to measure from."""
    working = work("headed-ruffle", depth="2 in", heading="1/2 in", hem=hem)
    (rows,) = [step for step in steps(working) if "run two rows" in step]
    assert "3/8 in and 5/8 in from the finished upper edge" in rows
