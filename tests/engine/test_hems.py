"""What a hem takes of the cloth, against an edge turned up point by point in `folding`."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from folding import fold_double, turn_up
from handout_engine.amounts.lengths import Length, inches
from worked import length, refusal, said, work

depths = st.fractions(1, 20, max_denominator=16).map(inches)
turns = st.fractions(Fraction(1, 16), 1, max_denominator=16).map(inches)


@pytest.mark.parametrize(
    ("hem", "allowance", "cut"),
    [
        # finished 2 in, edge allowance 1/4 in, and the usual turn of each hem
        ("double", "1/2 in", "2 3/4 in"),
        ("single", "1/4 in", "2 1/2 in"),
        ("rolled", "1/8 in", "2 3/8 in"),
        ("finished", "0 in", "2 1/4 in"),
    ],
)
def test_each_hem_of_a_ruffle_two_inches_deep(hem, allowance, cut):
    working = work("gathered-ruffle", depth="2 in", hem=hem)
    assert said(working, "hem_allowance") == allowance
    assert said(working, "cut_width") == cut


def test_a_strip_folded_in_half_is_twice_depth_and_allowance():
    working = work("gathered-ruffle", depth="2 in", hem="folded")
    assert said(working, "cut_width") == "4 1/2 in"
    assert said(working, "fold_line") == "2 1/4 in"
    assert "hem_allowance" not in working.values


def test_a_hem_deeper_than_the_ruffle_is_refused():
    assert refusal("gathered-ruffle", depth="1/2 in", hem_depth="3/4 in") == (
        "hem_depth 3/4 in is deeper than finished depth 1/2 in; use at most 1/2 in (12 mm)"
    )
    assert refusal("headed-ruffle", heading="1/8 in") == (
        "hem_depth 1/4 in is deeper than heading 1/8 in; use at most 1/8 in (3 mm)"
    )
    assert refusal("layered-ruffle", depths=["1/4 in", "3 in"], hem_depth="1/2 in") == (
        "hem_depth 1/2 in is deeper than the shallowest layer 1/4 in; use at most 1/4 in (6 mm)"
    )


@given(depths, turns, st.sampled_from([("single", 1), ("double", 2)]))
def test_turned_up_the_strip_has_the_finished_depth(depth, turn, hem):
    kind, times = hem
    working = work("gathered-ruffle", depth=depth, hem=kind, hem_depth=turn)
    edge = turn_up(length(working, "cut_width").mm, turn.mm, times)
    assert edge.finished == (depth + inches("1/4")).mm
    assert edge.layers == times + 1
    assert edge.inner_fold == edge.finished - turn.mm, "the hem is not one turn deep"


@given(depths, turns)
def test_the_second_turn_of_a_double_hem_hides_the_raw_edge_in_its_fold(depth, turn):
    working = work("gathered-ruffle", depth=depth, hem="double", hem_depth=turn)
    edge = turn_up(length(working, "cut_width").mm, turn.mm, 2)
    assert edge.raw_edge == edge.finished, "the raw edge reaches down into the lower fold"
    assert length(working, "fold_line").mm == edge.finished


@given(depths)
def test_folded_in_half_the_raw_edges_meet_in_the_seam(depth):
    working = work("gathered-ruffle", depth=depth, hem="folded")
    width, fold = length(working, "cut_width").mm, length(working, "fold_line").mm
    doubled = fold_double(width, Fraction(0), fold)
    assert doubled.lower_raw_edge == 0
    assert Length(doubled.depth) == depth + inches("1/4")
