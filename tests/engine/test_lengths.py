from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.angles import Angle
from handout_engine.amounts.lengths import ZERO, Length, from_float, inches, millimetres, total
from handout_engine.amounts.numbers import Count, Ratio

lengths = st.fractions(-(10**6), 10**6, max_denominator=10**4).map(Length)
numbers = st.fractions(-1000, 1000, max_denominator=100)


def test_an_inch_and_a_half_and_a_quarter():
    assert inches("3/2") + inches("1/4") == inches("7/4") == Length(Fraction(889, 20))


def test_inches_and_millimetres_meet_exactly():
    assert 5 * inches(1) == millimetres(127)


def test_a_seam_wider_than_the_strip_leaves_less_than_nothing():
    assert millimetres(5) - millimetres(8) == -millimetres(3)


def test_two_lengths_compare_as_a_ratio():
    assert inches(18) / inches(12) == Fraction(3, 2)


def test_a_length_shared_out_is_a_length():
    assert inches(9) / 4 == inches("9/4")


def test_nothing_is_false_and_the_least_bit_is_true():
    assert not ZERO
    assert Length(Fraction(1, 10**9))


@pytest.mark.parametrize(
    "mixture",
    [
        lambda: inches(1) + 1,
        lambda: 1 + inches(1),
        lambda: inches(1) - Fraction(1, 2),
        lambda: inches(1) * inches(1) + inches(1),
        lambda: inches(1) + Ratio(Fraction(1)),
        lambda: inches(1) + inches(1) * inches(1),
        lambda: inches(1) * Angle(Fraction(1)),
        lambda: Count(1) + Ratio(Fraction(1)),
        lambda: Ratio(Fraction(1)) + Angle(Fraction(1)),
        lambda: Count(1) < Angle(Fraction(1)),
        lambda: inches(1) * 0.5,
        lambda: 2 / inches(1),
        lambda: inches(1) < 1,
    ],
)
def test_a_length_and_a_plain_number_do_not_mix(mixture):
    with pytest.raises((TypeError, AttributeError)):
        mixture()


@given(lengths, lengths, numbers)
def test_taking_away_what_was_added_gives_the_length_back_exactly(first, second, times):
    assert first + second - second == first
    assert times * (first + second) == first * times + second * times


@given(lengths, numbers.filter(bool))
def test_sharing_out_and_repeating_undo_each_other_exactly(length, times):
    assert length / times * times == length


@given(st.lists(lengths))
def test_lengths_end_to_end(several):
    assert total(several).mm == sum(each.mm for each in several)


@given(st.floats(-1e6, 1e6))
def test_an_irrational_step_is_kept_to_a_billionth_of_a_millimetre(mm):
    kept = from_float(mm).mm
    assert abs(kept - Fraction(mm)) <= Fraction(1, 10**9)
    assert (kept * 10**9).denominator == 1
