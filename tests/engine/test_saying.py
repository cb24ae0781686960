from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import ZERO, Length, inches, millimetres
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.saying import Saying, Tape, decimal, metres, mixed, yards

TAPE = Tape()
METRIC = Tape("metric")
positive = st.fractions(0, 10**5, max_denominator=10**4).map(Length)
finest = st.sampled_from([8, 16, 32])


@pytest.mark.parametrize(
    ("length", "inch_side", "metric_side"),
    [
        (inches("9/4"), "2 1/4 in", "57 mm"),
        (inches(3), "3 in", "76 mm"),
        (inches("1/16"), "1/16 in", "2 mm"),
        (inches("1/33"), "under 1/16 in", "1 mm"),
        (inches("1/100"), "under 1/16 in", "under 1 mm"),
        (inches("31/32"), "1 in", "25 mm"),
        (millimetres(99), "3 7/8 in", "99 mm"),
        (millimetres("99.5"), "3 15/16 in", "10 cm"),
        (millimetres(123), "4 13/16 in", "12.3 cm"),
        (inches(45), "45 in", "114.3 cm"),
        (ZERO, "0 in", "0 mm"),
        (-inches("1/4"), "-1/4 in", "-6 mm"),
    ],
)
def test_a_length_is_said_to_the_nearest_mark(length, inch_side, metric_side):
    assert TAPE.say(length) == METRIC.beside(length) == inch_side
    assert TAPE.beside(length) == METRIC.say(length) == metric_side
    assert TAPE.both(length) == f"{inch_side} ({metric_side})"


def test_the_tape_decides_how_fine():
    length = inches("11/32")
    assert Tape(finest=8).say(length) == "3/8 in"
    assert Tape(finest=16).say(length) == "3/8 in"
    assert Tape(finest=32).say(length) == "11/32 in"


def test_half_a_mark_is_said_as_the_next_one():
    assert TAPE.say(inches("1/32")) == "1/16 in"
    assert METRIC.say(millimetres("2.5")) == "3 mm"


def test_what_must_not_be_too_little_is_said_up():
    assert TAPE.both(inches("17/16") + millimetres("0.02"), Saying.UP) == "1 1/8 in (28 mm)"
    assert TAPE.both(inches(1), Saying.UP) == "1 in (26 mm)"


def test_what_must_not_be_too_much_is_said_down():
    assert TAPE.both(inches("17/16") - millimetres("0.02"), Saying.DOWN) == "1 in (26 mm)"
    assert TAPE.both(inches(1), Saying.DOWN) == "1 in (25 mm)"


def test_what_is_less_than_a_mark_is_said_down_in_hundredths_of_a_millimetre():
    assert TAPE.both(inches("1/25"), Saying.DOWN) == "1.01 mm (1 mm)"
    assert TAPE.both(millimetres("0.349"), Saying.DOWN) == "0.34 mm"
    assert TAPE.both(ZERO, Saying.DOWN) == "0 in (0 mm)"


def test_a_refusal_names_a_length_that_is_enough_and_one_that_is_not_too_much():
    assert TAPE.no_less(inches("33/32")) == "1 1/16 in (27 mm)"
    assert TAPE.no_more(inches("33/32")) == "1 in (26 mm)"


def test_cloth_is_ordered_up():
    assert yards(inches(37)) == "1 1/8 yd"
    assert yards(inches(36)) == "1 yd"
    assert metres(millimetres(991)) == "1 m"
    assert metres(millimetres(1001)) == "1.01 m"
    assert metres(millimetres(250)) == "25 cm"
    assert TAPE.both(inches("9/2"), Saying.YARDAGE) == "1/8 yd (12 cm)"


def test_a_step_of_the_order_is_said_as_it_is_and_not_rounded_to_another():
    assert TAPE.both(inches("9/2"), Saying.STEP) == "1/8 yd (11.4 cm)"
    assert TAPE.both(millimetres(100), Saying.STEP) == "3 15/16 in (10 cm)"


def test_what_has_no_unit_is_said_once():
    assert TAPE.both(Fraction(3, 2)) == "1.5"
    assert TAPE.both(7) == "7"
    assert TAPE.both("ring") == "ring"
    assert TAPE.both(None) == ""
    assert TAPE.both(Fraction(1, 20), Saying.PERCENT) == "5 %"
    assert TAPE.both(()) == ""


def test_several_lengths_are_said_in_a_row():
    several = (inches("3/2"), inches("5/2"))
    assert TAPE.both(several) == "1 1/2 in, 2 1/2 in (38 mm, 64 mm)"


def test_decimals_carry_no_needless_noughts():
    assert decimal(Fraction(2)) == "2"
    assert decimal(Fraction(4, 3)) == "1.33"
    assert decimal(Fraction(-1, 2)) == "-0.5"
    assert decimal(Fraction(-1, 1000)) == "0"


@given(positive, finest)
def test_saying_is_out_by_half_a_mark_at_most(length, parts):
    spoken = Tape(finest=parts).say(length)
    if spoken.startswith("under"):
        assert length < inches(Fraction(1, parts))
    else:
        assert abs((read_length(spoken) - length).mm) <= inches(Fraction(1, 2 * parts)).mm


@given(positive)
def test_the_metric_side_is_out_by_half_a_millimetre_at_most(length):
    spoken = METRIC.say(length)
    if spoken.startswith("under"):
        assert length < millimetres(1)
    else:
        assert abs((read_length(spoken) - length).mm) <= Fraction(1, 2)


@given(positive.filter(bool), finest)
def test_said_up_is_never_less_and_never_a_whole_mark_more(length, parts):
    for tape, mark in (
        (Tape(finest=parts), inches(Fraction(1, parts))),
        (METRIC, millimetres(1)),
    ):
        over = read_length(tape.say(length, Saying.UP)) - length
        assert ZERO <= over < mark


@given(positive.filter(bool), finest)
def test_said_down_is_never_more_and_never_a_whole_mark_less(length, parts):
    for tape, mark in (
        (Tape(finest=parts), inches(Fraction(1, parts))),
        (METRIC, millimetres(1)),
    ):
        under = length - read_length(tape.say(length, Saying.DOWN))
        assert ZERO <= under < mark


@given(positive)
def test_yards_and_metres_are_never_too_little(length):
    assert ZERO <= read_length(yards(length)) - length < inches(Fraction(36, 8))
    assert ZERO <= read_length(metres(length)) - length < millimetres(10)


@given(st.integers(0, 10**6), finest)
def test_a_length_on_the_tape_is_said_and_read_back_exactly(marks, parts):
    length = inches(Fraction(marks, parts))
    assert read_length(Tape(finest=parts).say(length)) == length


@given(st.fractions(0, 10**5, max_denominator=64))
def test_a_mixed_fraction_is_in_lowest_terms(number):
    whole, _, rest = mixed(number).rpartition(" ")
    assert Fraction(whole or 0) + Fraction(rest) == number
    if "/" in rest:
        assert 0 < Fraction(rest) < 1
        assert int(rest.split("/")[1]) == number.denominator


@given(positive, positive)
def test_a_longer_length_is_never_said_shorter(first, second):
    shorter, longer = sorted((first, second))
    for saying in (Saying.NEAREST, Saying.UP, Saying.DOWN):
        marks = [Tape(finest=16).say(each, saying) for each in (shorter, longer)]
        read = [ZERO if said.startswith("under") else read_length(said) for said in marks]
        assert read[0] <= read[1]


def test_every_fraction_of_an_inch_up_to_a_foot_against_a_tape_measure():
    """Each sixteenth found by halving marks, not by dividing."""
    for mark in range(12 * 16 + 1):
        whole, sixteenths = divmod(mark, 16)
        top, bottom = sixteenths, 16
        while top and top % 2 == 0:
            top, bottom = top // 2, bottom // 2
        words = [str(whole)] if whole else []
        words += [f"{top}/{bottom}"] if top else []
        assert TAPE.say(inches(Fraction(mark, 16))) == f"{' '.join(words) or 0} in"


def test_needles_and_stitches_are_said_in_millimetres_on_every_tape():
    spacing = millimetres("5/2")
    assert TAPE.say(spacing, Saying.FINE) == METRIC.say(spacing, Saying.FINE) == "2.5 mm"
    assert TAPE.both(millimetres("3/4"), Saying.FINE) == "0.75 mm"
