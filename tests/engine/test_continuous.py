"""The continuous strip, against a panel that is sewn and a strip that is walked."""

from __future__ import annotations

import random
from math import sqrt

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bias_cutting import Panel, walk_continuous
from handout_engine.amounts.lengths import inches
from handout_engine.families.bias.continuous_bias import ContinuousBias
from handout_engine.families.bias.continuous_bias_cutting import (
    rows_of_smallest_square,
    short_side_for,
    square_for,
    whole_rows,
)

TECHNIQUES = ("continuous-bias",)
NEAR = 1e-6
sides = st.fractions(4, 60, max_denominator=16).map(inches)
widths = st.fractions(1, 5, max_denominator=16).map(inches)
joins = st.fractions("1/8", "5/8", max_denominator=16).map(inches)
wanted_lengths = st.integers(5, 600).map(inches)


def cut_from(short, long, width, join):
    return ContinuousBias(cloth_across=short, cloth_along=long, width=width, strip_allowance=join)


def length_of_rows(rows, short, join):
    """By the rule, in mm: rows on the bias, less what each loses where it passes into the next."""
    return float(rows * (short - join) - 2 * (rows - 1) * join) * sqrt(2)


def test_a_thousand_strips_walked_from_end_to_end():
    chance = random.Random(1921)
    for _ in range(1000):
        short = inches(chance.randint(40, 700)) / 16
        long = short if chance.random() < 0.3 else short + inches(chance.randint(0, 600)) / 16
        width, join = inches(chance.randint(8, 60)) / 16, inches(chance.randint(1, 10)) / 16
        rows = whole_rows(long, width, join)
        walked = walk_continuous(float(short), float(long), float(width), float(join))
        assert walked.rows == rows
        if rows:
            length = cut_from(short, long, width, join).strip_length
            assert abs(walked.length - float(length)) < NEAR


def test_thirteen_inches_square_by_hand():
    """13 in square, strips 1 1/4 in, seams 1/4 in.

    12 3/4 in of grain edge hold 12.75 / 1.7678 = 7.2 rows, so 7, each 12 3/4 x 1.4142 = 18.03 in;
    six joins take 0.7071 in each: 7 x 18.03 - 6 x 0.7071 = 121.98 in.
    """
    cut = cut_from(inches(13), inches(13), inches("5/4"), inches("1/4"))
    assert whole_rows(inches(13), inches("5/4"), inches("1/4")) == cut.rows == 7
    length = cut.strip_length
    assert float(length / inches(1)) == pytest.approx(121.975, abs=0.001)


@given(sides, joins)
def test_edges_laid_level_lose_a_whole_allowance_more(side, join):
    """The rule needs edges that cross on the stitching line; laid level the panel is narrower."""
    crossed = Panel(float(side), float(side), float(join), slide=float(join))
    level = Panel(float(side), float(side), float(join), slide=0.0)
    assert crossed.last_line - crossed.first_line == pytest.approx(float(side - join))
    assert level.last_line - level.first_line == pytest.approx(float(side - 2 * join))


@given(sides, sides, widths, joins)
def test_the_area_rule_is_never_reached(one, other, width, join):
    short, long = min(one, other), max(one, other)
    assume(short > 3 * join)
    rows = whole_rows(long, width, join)
    assume(rows)
    assert cut_from(short, long, width, join).strip_length < short * (long / width)


@given(sides, sides, widths, joins)
def test_more_cloth_never_gives_less_strip(one, other, width, join):
    short, long = min(one, other), max(one, other)
    assume(short > 3 * join)

    def length(a, c):
        rows = whole_rows(c, width, join)
        return cut_from(a, c, width, join).strip_length if rows else inches(0)

    assert length(short, long + inches("1/2")) >= length(short, long)
    if short + inches("1/2") <= long:
        assert length(short + inches("1/2"), long) >= length(short, long)


@given(wanted_lengths, widths, joins)
def test_the_smallest_square_gives_the_length_and_a_hair_less_does_not(wanted, width, join):
    rows = rows_of_smallest_square(wanted, width, join)
    side = square_for(rows, wanted, width, join)
    assume(side > 3 * join + inches("1/8"))

    def length(square):
        count = whole_rows(square, width, join)
        return cut_from(square, square, width, join).strip_length if count else inches(0)

    hair = inches("1/1000")
    assert length(side + hair) >= wanted
    assert length(side - hair) < wanted


@given(wanted_lengths, sides, joins)
def test_rows_for_a_length_on_a_given_short_side(wanted, short, join):
    assume(short > 3 * join)
    asked = ContinuousBias(wanted=wanted, cloth_across=short, strip_allowance=join)
    assume(not asked.sides.shorter)
    rows = asked.sides.rows_wanted.number
    assert length_of_rows(rows, short, join) - float(wanted) > -NEAR
    if rows > 1:
        assert length_of_rows(rows - 1, short, join) < float(wanted)
    least = short_side_for(rows, wanted, join)
    assert abs(length_of_rows(rows, least, join) - float(wanted)) < NEAR
