from hypothesis import given
from hypothesis import strategies as st

from folding import fold_double
from handout_engine.amounts.lengths import inches
from worked import length, said, work

widths = st.fractions("1/2", 20, max_denominator=16).map(inches)


def test_a_narrow_trim_by_hand():
    """Common practice, no source: 1 1/2 in wide with rolled edges of 1/8 in: 1 3/4 in to cut."""
    working = work("centre-gathered-ruffle", width="1 1/2 in", hem="rolled")
    assert said(working, "cut_width") == "1 3/4 in"
    assert said(working, "half_width") == "3/4 in"
    assert said(working, "gathering_line") == "7/8 in"


@given(widths, st.sampled_from(["rolled", "finished"]))
def test_its_gathering_line_is_its_middle(width, hem):
    working = work("centre-gathered-ruffle", width=width, hem=hem)
    assert length(working, "gathering_line") * 2 == length(working, "cut_width")


@given(widths)
def test_folded_into_a_tube_its_raw_edges_meet_behind_its_middle(width):
    working = work("centre-gathered-ruffle", width=width, hem="folded")
    tube = fold_double(
        length(working, "cut_width").mm,
        length(working, "upper_fold").mm,
        length(working, "lower_fold").mm,
    )
    assert tube.depth == width.mm
    assert tube.upper_raw_edge == tube.lower_raw_edge == (width / 2).mm
