"""The body table as garments ask it: by size, between two sizes, and with a baby's own measures."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import Ground
from handout_engine.bodies.body_table import CENTIMETRES, SIZES
from handout_engine.bodies.measures import (
    LENGTHS,
    MEASURES,
    SPAN,
    USUAL_SIZE,
    figure,
    kilograms,
    kinds_of_measures,
    months,
)
from handout_engine.register import find
from handout_engine.working.technique import make

every_measure = pytest.mark.parametrize("name", MEASURES)
names = st.sampled_from(sorted(MEASURES))
body_lengths = st.builds(
    lambda part: Length(Fraction(part, 16)), st.integers(SIZES[0] * 160, SIZES[-1] * 160)
)


def neighbours(length: Length) -> tuple[int, int]:
    """The places in the table on both sides of a body length; the same twice at a size."""
    at = [size * 10 for size in SIZES]
    below = max(place for place, each in enumerate(at) if each <= length.mm)
    return below, below if at[below] == length.mm else below + 1


def column(name: str, place: int) -> Fraction:
    return Fraction(CENTIMETRES[name][place]) * 10


def test_a_baby_of_65_cm_by_hand():
    # Half-way from 62 to 68: head 41.4 and 43.7, so 42.55 cm; chest 40.1 and 42.7, so 41.4 cm.
    assert figure("head", millimetres(650)) == millimetres(Fraction("425.5"))
    assert figure("chest", millimetres(650)) == millimetres(414)
    # Weight 6.3 and 8.1 kg, so 7.2; girls 4.2 and 7.7 months, so 5.95; boys 3.5 and 6.6, so 5.05.
    assert kilograms(millimetres(650)) == Fraction("7.2")
    assert months("girls", millimetres(650)) == Fraction("5.95")
    assert months("boys", millimetres(650)) == Fraction("5.05")


def test_a_third_of_the_way_by_hand():
    # 58 cm is a third of the way from 56 to 62: foot 8.0 and 9.0, so 8 1/3 cm, exactly.
    assert figure("foot_length", millimetres(580)) == millimetres(Fraction(250, 3))


@every_measure
def test_at_a_size_it_is_the_table_s_figure_exactly(name):
    for place, size in enumerate(SIZES):
        assert figure(name, LENGTHS[str(size)]).mm == column(name, place)


@given(names, body_lengths)
def test_between_two_sizes_it_lies_between_their_figures(name, length):
    below, above = neighbours(length)
    assert column(name, below) <= figure(name, length).mm <= column(name, above)


@given(names, st.lists(body_lengths, min_size=2, max_size=2, unique=True).map(sorted))
def test_a_longer_baby_has_more_of_every_measure(name, two):
    shorter, longer = two
    assert figure(name, shorter) < figure(name, longer)


@given(names, body_lengths, st.fractions(0, 1, max_denominator=60))
def test_on_the_way_from_one_size_to_the_next_equal_parts_are_equal(name, length, share):
    """Independent: the share of the way, taken of the figures' difference."""
    below, above = neighbours(length)
    start, end = SIZES[below] * 10, SIZES[above] * 10
    place = Length(start + share * (end - start))
    expected = column(name, below) + share * (column(name, above) - column(name, below))
    assert figure(name, place).mm == expected


@every_measure
@pytest.mark.parametrize("beyond", ["499.9", "980.1", "0", "10000"])
def test_beyond_the_table_nothing_is_said(name, beyond):
    with pytest.raises(ValueError, match="beyond the body table"):
        figure(name, millimetres(Fraction(beyond)))


def test_sizes_stand_six_centimetres_apart_and_are_named_by_their_length():
    assert {large - small for small, large in pairwise(SIZES)} == {6}
    assert [float(length) for length in LENGTHS.values()] == [size * 10 for size in SIZES]
    assert tuple(map(read_length, SPAN)) == (LENGTHS["50"], LENGTHS["98"])
    assert USUAL_SIZE in LENGTHS


@every_measure
def test_every_size_may_be_typed_as_a_baby_s_own_measure(name):
    """With a tenth to spare on both sides, since babies of one length differ."""
    least, most = map(read_length, MEASURES[name].bounds)
    assert least.mm < column(name, 0) * Fraction(9, 10)
    assert most.mm > column(name, len(SIZES) - 1) * Fraction(11, 10)


@every_measure
def test_each_measure_says_how_it_is_taken_and_what_its_figures_rest_on(name):
    measure = MEASURES[name]
    assert measure.help.endswith(".") and measure.label
    assert measure.basis.ground in {Ground.PUBLISHED, Ground.ESTIMATE}


def test_what_no_baby_was_measured_for_is_an_estimate():
    guessed = {name for name, each in MEASURES.items() if each.basis.ground is Ground.ESTIMATE}
    assert guessed == {"neck", "wrist", "back_waist", "upper_thigh"}


def test_the_kinds_read_what_the_bounds_say():
    kinds = kinds_of_measures()
    assert set(kinds) == {"body_length", *MEASURES}
    assert kinds["head"].read("44 cm") == millimetres(440)
    with pytest.raises(RefusalError, match="too large; use at most"):
        kinds["head"].read("57 cm")


def made(**written: str):
    return make(find("slip"), written)


def test_a_garment_takes_the_table_s_measures_by_hand():
    slip = made(size="62")
    assert (slip.chest, slip.head) == (millimetres(401), millimetres(414))
    assert slip.body_length == millimetres(620)


def test_a_measure_of_the_baby_s_own_goes_before_the_table_s_and_moves_no_other():
    own, usual = made(size="62", chest="44 cm"), made(size="62")
    assert own.chest == millimetres(440)
    for each in declared_inputs(type(own)):
        if each.name in MEASURES and each.name != "chest":
            assert getattr(own, each.name) == getattr(usual, each.name), each.name


def test_a_body_length_moves_every_measure_whatever_the_size_says():
    assert made(size="62", body_length="65 cm").chest == figure("chest", millimetres(650))
    assert made(size="98", body_length="65 cm").chest == figure("chest", millimetres(650))
