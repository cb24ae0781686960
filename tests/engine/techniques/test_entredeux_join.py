"""Entredeux to cloth, against layers sewn place by place in `stitching`."""

from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from stitching import sewn_width
from worked import length, refusal, said, steps, work

small = st.fractions(Fraction(1, 8), 1, max_denominator=32).map(inches)
panels = st.fractions(1, 30, max_denominator=16).map(inches)


def test_a_yoke_gathered_to_entredeux_worked_by_hand():
    """Common practice, no source: allowance 1/4 in, trimmed to 1/8 in.

    Cloth cut 8 + 1/4 + 1/2 = 8 3/4 in wide and 2 × 12 + 1 = 25 in long; entredeux 13 in long.
    """
    working = work("entredeux-join", cloth_side="gathered cloth")
    assert said(working, "cut_width") == "8 3/4 in"
    assert said(working, "cloth_length") == "25 in"
    assert said(working, "entredeux_length") == "13 in"
    assert said(working, "entredeux_cut_width") == "5/8 in"
    assert said(working, "trimmed_away") == "1/8 in"
    assert (said(working, "first_row"), said(working, "second_row")) == ("1/8 in", "3/8 in")


@settings(max_examples=300)
@given(panels, small, st.fractions(Fraction(1, 16), 1, max_denominator=32).map(inches), small)
def test_sewn_together_cloth_and_entredeux_are_as_wide_as_the_page_says(panel, own, visible, far):
    working = work("entredeux-join", panel=panel, entredeux_allowance=own, visible=visible,
                   far_allowance=far, trim="1/16 in", cloth_width="60 in")  # fmt: skip
    cloth = length(working, "cut_width").mm, far.mm, own.mm
    entredeux = length(working, "entredeux_cut_width").mm, own.mm, own.mm
    assert sewn_width([cloth, entredeux]) == length(working, "finished_width").mm
    assert length(working, "finished_width") == panel + visible
    left = length(working, "entredeux_allowance") - length(working, "trimmed_away")
    assert left == inches("1/16")


@given(st.fractions(1, 6, max_denominator=12), st.fractions(1, 40, max_denominator=8).map(inches))
def test_gathered_the_cloth_is_longer_by_its_fullness_and_flat_it_is_not(fullness, edge):
    gathered = work("entredeux-join", cloth_side="gathered cloth", fullness=fullness, edge=edge)
    flat = work("entredeux-join", fullness=fullness, edge=edge)
    assert (length(gathered, "cloth_length") - inches(1)) / edge == fullness
    assert length(flat, "cloth_length") == length(flat, "entredeux_length")
    assert "first_row" not in flat.values


def test_nothing_can_be_trimmed_to_more_than_there_is():
    written = {"trim": "1/4 in", "entredeux_allowance": "1/8 in"}
    assert refusal("entredeux-join", **written) == (
        "trim 1/4 in is more than the allowance 1/8 in leaves; use at most 1/8 in (3 mm)"
    )


def test_the_other_side_is_sewn_last_and_only_when_it_is_joined():
    assert steps(work("entredeux-join"))[-1].startswith("Trim the other allowance")
    assert "flat cloth alike" in steps(work("entredeux-join", other_side="flat cloth"))[-1]
    assert "Press the roll" in steps(work("entredeux-join", other_side="left free"))[-1]
