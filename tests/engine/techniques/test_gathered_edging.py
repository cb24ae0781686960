"""Gathered lace edging: its length, its corners, and the marks that share it out."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from worked import INCHES, length, refusal, said, steps, work

edges = st.fractions(10, 200, max_denominator=16).map(inches)
fullnesses = st.fractions(1, 4, max_denominator=12)


def test_a_collar_with_two_corners_worked_by_hand():
    """24 in × 1.5 = 36 in, two corners of 2 × 1/2 in, two ends of 1/2 in: 39 in.

    The extra of two widths at a corner is common practice, no source.
    """
    working = work("gathered-edging", corners="2", lace_width="1/2 in")
    assert said(working, "gathered_length") == "36 in"
    assert said(working, "corner_takes") == "1 in"
    assert said(working, "lace_length") == "39 in"
    assert said(working, "lace_quarter") == "9 1/2 in"


@given(edges, fullnesses, st.integers(1, 8))
def test_drawn_up_it_is_as_long_as_the_edge_and_its_corners_fan(edge, fullness, corners):
    working = work("gathered-edging", edge=edge, fullness=fullness, corners=corners)
    straight = length(working, "lace_length") - 2 * inches("1/2")
    fanned = corners * length(working, "corner_takes")
    assert (straight - fanned) / edge == fullness
    assert 4 * length(working, "lace_quarter") == straight


@given(edges, fullnesses)
def test_quarter_meets_quarter(edge, fullness):
    (chart,) = work("gathered-edging", edge=edge, fullness=fullness).charts
    for number, (_, on_edge, on_lace) in enumerate(chart.rows):
        assert on_edge == edge * Fraction(number, 4)
        assert (on_lace - inches("1/2")) == on_edge * fullness


def test_a_corner_fans_wide_enough_to_lie_flat():
    """Round a square corner the outer edge runs a quarter circle, 1.57 widths; 2 are given."""
    working = work("gathered-edging", corners="1")
    quarter_circle = Fraction(11, 14) * 2 * length(working, "lace_width")
    assert length(working, "corner_takes") > quarter_circle


def test_too_many_corners_for_the_edge_are_refused():
    assert refusal("gathered-edging", edge="4 in", corners="8") == (
        "corners 8 on an edge of 4 in leave less than one width of lace between them; use at most "
        "6 corners, or narrower lace"
    )
    assert work("gathered-edging", edge="4 in", corners="6")


def test_no_row_is_sewn_the_heading_thread_is_drawn():
    told = steps(work("gathered-edging"))
    assert any("Do not sew a gathering row" in step for step in told)
    assert not any("corner" in step for step in told)
    assert any("the ring is 36 in" in step for step in steps(work("gathered-edging", ends="ring")))


def test_on_entredeux_no_cloth_is_rolled_and_the_lace_is_as_long():
    rolled, holes = (work("gathered-edging", onto=each) for each in ("a rolled edge", "entredeux"))
    assert length(rolled, "lace_length") == length(holes, "lace_length")
    assert "cloth_edge" not in holes.values
    assert "roll it toward you" in " ".join(steps(rolled))
    assert "roll it" not in " ".join(steps(holes))
    assert "into each hole" in " ".join(steps(holes))
    assert [seam.name for seam in holes.seams] == ["lace heading"]


def test_lace_to_buy_is_named_with_its_width():
    """Two laces of one page are two things to buy."""
    (supply,) = [each for each in work("gathered-edging").supplies if each.name == "lace"]
    assert supply.note.first(INCHES) == "5/8 in wide"
