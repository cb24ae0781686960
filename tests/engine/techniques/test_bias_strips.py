import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import ZERO, inches, total
from handout_engine.cloth.bias import bands
from worked import length, refusal, said, steps, work

sizes = st.fractions(8, 44, max_denominator=16).map(inches)
widths = st.fractions(1, 3, max_denominator=16).map(inches)


def test_a_fat_quarter_by_hand():
    """18 x 22 in, strips 1 1/4 in: (18 + 22) / 1.7678 = 22.6, so 22 strips.

    The middle ones are 18 x 1.4142 = 25.46 in long. Two at the first corner are shorter than 6 in
    (1 1/4 and 3 3/4), and two at the last.
    """
    working = work("bias-strips")
    assert working.named["bands"].amount == 22
    assert working.named["strips_used"].amount == 18
    (chart,) = working.charts
    assert len(chart.rows) == 22
    assert [row[1] for row in chart.rows] == ["spare"] * 2 + ["used"] * 18 + ["spare"] * 2


@given(sizes, sizes, widths)
def test_joined_they_are_all_useful_strips_less_their_joins(across, along, width):
    cut = [each for each in bands(across, along, width) if each.usable >= inches(6)]
    assume(cut)
    working = work("bias-strips", cloth_across=across, cloth_along=along, width=width)
    takes = length(working, "join_takes")
    joined = total(each.usable for each in cut) - takes * (len(cut) - 1)
    assert length(working, "joined_length") == joined


@given(st.integers(10, 500).map(inches), widths)
def test_a_length_that_is_wanted_is_reached(wanted, width):
    working = work("bias-strips", wanted=wanted, width=width)
    assert length(working, "joined_length") >= wanted
    (piece,) = working.pieces
    assert piece.width.length <= length(working, "usable_width")
    area = piece.width.length * (piece.length.length / inches(1))
    assert length(working, "joined_length") * (width / inches(1)) < area


def test_only_the_strips_that_are_needed_are_used():
    working = work("bias-strips", wanted="20 in", width="1 in", least_strip="20 in")
    assert working.named["strips_used"].amount == 1
    assert not any("Join" in step for step in steps(working))


def test_the_refusals_name_the_ways_out():
    assert refusal("bias-strips", wanted="2 yd", cloth_across="20 in") == (
        "wanted and the cloth at hand exclude each other; write the length wanted, or the size of "
        "the cloth"
    )
    assert refusal("bias-strips", least_strip="1/2 in") == (
        "least_strip 1/2 in would be used up by its join; use more than 23/32 in (18 mm)"
    )
    assert refusal("bias-strips", cloth_across="4 in", cloth_along="4 in", width="1 in") == (
        "the longest strip is 4 5/16 in (11 cm), shorter than the least useful strip 6 in, and no "
        "strip of this cloth can be longer than 5 21/32 in (14.3 cm); use a shorter least_strip, "
        "narrower strips, or more cloth"
    )
    assert "gives no whole strip in this cloth" in refusal(
        "bias-strips", cloth_across="2 in", cloth_along="2 in", width="3 in"
    )


def test_the_first_checkpoint_measures_the_true_bias():
    (step,) = [each for each in steps(work("bias-strips")) if "true bias" in each]
    assert "in steps" not in step and "17 11/16 in along either edge" in step


@pytest.mark.parametrize("width", ["1/4 in", "12 in"])
def test_narrow_and_wide_strips(width):
    working = work("bias-strips", width=width, cloth_across="44 in", cloth_along="40 in")
    assert length(working, "joined_length") > ZERO
    assert said(working, "strip_width" if "strip_width" in working.named else "width")
