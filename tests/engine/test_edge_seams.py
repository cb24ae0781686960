"""The seam along a ruffle's edge: what each kind takes, and that the ruffle hangs the same."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.sources import GIVEN, PRACTICE
from worked import length, refusal, said, steps, work

USUAL = {
    # common practice, no source
    "plain": inches("1/4"),
    "French": inches("3/8"),
    "flat fell": inches("1/2"),
    "rolled and whipped": millimetres(3),
    "pin stitch": inches("1/4"),
}
kinds = st.sampled_from(list(USUAL))


def after_sewing(kind: str, width: Length, taken: Length) -> Length:
    """A ruffle of that cut width, with what lies beyond its sewn line taken away, step by step."""
    if kind == "French":
        first = taken * Fraction(2, 3)  # sewn wrong sides together: the line moves in by that
        return width - first - (taken - first)  # turned, and sewn again below the fold
    return width - taken


@pytest.mark.parametrize("kind", USUAL)
def test_left_out_the_allowance_is_what_the_seam_usually_takes(kind):
    working = work("gathered-ruffle", edge_seam=kind)
    assert working.named["edge_allowance"].amount == USUAL[kind]
    assert working.inputs["edge_allowance"].basis == PRACTICE
    assert working.seams[-1].allowance == USUAL[kind]


def test_a_given_allowance_is_given():
    working = work("gathered-ruffle", edge_seam="French", edge_allowance="1/2 in")
    assert working.inputs["edge_allowance"].basis == GIVEN
    assert length(working, "edge_first_seam") == inches("1/3")


@given(kinds, st.fractions(Fraction(1, 16), Fraction(3, 16), max_denominator=32).map(inches))
def test_whatever_the_seam_the_ruffle_hangs_as_deep_as_it_was_asked_to(kind, allowance):
    written = {"edge_seam": kind, "edge_allowance": allowance}
    ruffle = work("gathered-ruffle", depth="2 in", hem="double", hem_depth="1/4 in", **written)
    hung = after_sewing(kind, length(ruffle, "cut_width") - inches("1/2"), allowance)
    assert hung == inches(2)
    banded = work("banded-ruffle", shows="1 1/2 in", band="1/4 in", **written)
    front = after_sewing(kind, length(banded, "front_cut_width") - inches("1/4"), allowance)
    assert front == inches("3/2")


def test_a_french_seam_is_sewn_twice_and_its_rows_stand_at_the_first():
    working = work("gathered-ruffle", edge_seam="French")
    assert said(working, "edge_first_seam") == "1/4 in"
    assert said(working, "edge_second_seam") == "1/8 in"
    assert [said(working, row) for row in ("first_row", "second_row")] == ["1/8 in", "3/8 in"]
    assert any("WRONG sides together, 1/4 in" in step for step in steps(working))


def test_a_roll_as_thick_as_a_rope_is_refused():
    assert refusal("gathered-ruffle", edge_seam="rolled and whipped", edge_allowance="1/2 in") == (
        "edge_allowance 1/2 in is too much to roll; use at most 7/32 in (6 mm), or another "
        "edge_seam"
    )


def test_grading_is_spoken_of_where_there_are_layers():
    layered = steps(work("layered-ruffle"))
    assert any("row that shows; grade the allowances, and finish" in step for step in layered)
    assert any("row that shows, and finish the seam" in step for step in steps(work(
        "gathered-ruffle"
    )))  # fmt: skip
