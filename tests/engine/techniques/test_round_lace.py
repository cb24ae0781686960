"""Lace in the round, against arcs measured point by point."""

from fractions import Fraction
from math import cos, radians, sin

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches, millimetres
from lace_geometry import polyline
from worked import length, refusal, said, work


def measured(radius, turn, steps=20_000):
    """The length of an arc by its points."""
    return polyline([
        (radius * cos(radians(turn) * n / steps), radius * sin(radians(turn) * n / steps))
        for n in range(steps + 1)
    ])  # fmt: skip


def test_a_circle_of_four_inches_worked_by_hand():
    """2 π 4 = 25.13 in outside, 2 π 3 3/8 = 21.21 in inside: 3.93 in to lose."""
    working = work("round-lace", radius="4 in", lace_width="5/8 in")
    assert said(working, "outer_line") == "25 1/8 in"
    assert said(working, "inner_line") == "21 7/32 in"
    assert said(working, "inside_loses") == "3 15/16 in"
    assert said(working, "lace_length") == "26 1/8 in"


@settings(max_examples=60)
@given(st.integers(30, 900), st.integers(4, 29), st.integers(10, 360))
def test_both_lines_are_as_long_as_their_points_measure(radius, wide, turn):
    working = work("round-lace", radius=millimetres(radius), lace_width=millimetres(wide),
                   turn=Fraction(turn), end_allowance="0 in")  # fmt: skip
    outer, inner = measured(radius, turn), measured(radius - wide, turn)
    assert float(length(working, "outer_line").mm) == pytest.approx(outer, rel=1e-6)
    assert float(length(working, "inner_line").mm) == pytest.approx(inner, rel=1e-6)
    assert float(length(working, "inside_loses").mm) == pytest.approx(outer - inner, rel=1e-4)
    assert length(working, "lace_length") == length(working, "outer_line")


@given(st.integers(30, 900), st.integers(4, 17))
def test_the_radius_may_be_measured_to_either_line(radius, wide):
    outer = work("round-lace", radius=millimetres(radius), lace_width=millimetres(wide))
    inner = work("round-lace", radius=millimetres(radius - wide), lace_width=millimetres(wide),
                 measured="inner line")  # fmt: skip
    assert length(inner, "outer_line") == length(outer, "outer_line")


@given(st.integers(20, 360), st.integers(1, 24))
def test_the_marks_share_both_lines_out(turn, parts):
    working = work("round-lace", turn=Fraction(turn), parts=parts)
    (chart,) = working.charts
    assert len(chart.rows) == parts + 1
    name, on_lace, outer, inner = chart.rows[-1]
    assert name == f"mark {parts}"
    assert outer == length(working, "outer_part") * parts
    assert on_lace - inches("1/2") == outer > inner
    assert abs((outer - length(working, "outer_line")).mm) < Fraction(1, 10**6)


def test_lace_that_fills_the_circle_is_refused():
    assert refusal("round-lace", radius="1/2 in", lace_width="5/8 in") == (
        "radius 1/2 in is no more than lace_width 5/8 in, so nothing is left inside; use a radius "
        "of more than 5/8 in (16 mm) or narrower lace"
    )
    assert work("round-lace", radius="1/2 in", lace_width="5/8 in", measured="inner line")
