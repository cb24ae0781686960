"""Bands of a rectangle against a polygon library, and against cutting by hand."""

from __future__ import annotations

import random
from dataclasses import replace
from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon, box

from bias_cutting import longest_with_ends_on_grain
from handout_engine.amounts.lengths import ZERO, Length, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.cloth.bias import (
    Band,
    Pieces,
    bands,
    diagonal,
    fewest_joined,
    fewest_whole,
    gives_whole,
    joins_into,
    smallest_cloth,
    smallest_cloth_by_length,
    usable_lengths,
)
from handout_engine.families.bias.bias_strips import BiasStrips

TECHNIQUES = ("bias-strips",)
NEAR = 1e-6
CASES = 1000
sizes = st.fractions(2, 60, max_denominator=16).map(inches)
widths = st.fractions(1, 6, max_denominator=16).map(inches)


def random_cloth(number: int) -> tuple[Length, Length, Length]:
    """A rectangle and a width, mostly in sixteenths, with squares and strips among them."""
    chance = random.Random(number)
    across = inches(chance.randint(8, 800)) / 16
    along = across if number % 10 == 0 else inches(chance.randint(8, 800)) / 16
    return across, along, inches(chance.randint(8, 100)) / 16


def counted(across: float, along: float, width: float) -> int:
    """How many bands lie side by side: as long as the next line still meets the cloth."""
    cloth, reach = box(0, 0, across, along), across + along
    count = 0
    while True:
        line = (count + 1) * width * sqrt(2)
        if not LineString([(line + reach, -reach), (line - reach, reach)]).intersects(cloth):
            return count
        count += 1


def strip_of(band: Band, reach: float) -> Polygon:
    """The band as an endless strip."""
    low, high = float(band.begins), float(band.ends)
    return Polygon(
        [(low + reach, -reach), (high + reach, -reach), (high - reach, reach), (low - reach, reach)]
    )


def test_ten_by_fourteen_inches_in_two_inch_strips_by_hand():
    """Along the edges a strip takes 2 x 1.4142 = 2.83 in; (10 + 14) / 2.83 = 8.49, so 8 strips.

    The first is a triangle with a centre line as long as it is high, 2 in; the next two grow by
    twice the width, 4 in each; the fourth reaches the corner.
    """
    cut = bands(inches(10), inches(14), inches(2))
    assert [band.shape for band in cut] == [
        "triangle", "trapezoid", "trapezoid", "trapezoid", "parallelogram", "trapezoid",
        "trapezoid", "trapezoid",
    ]  # fmt: skip
    assert [round(float(band.centre / inches(1)), 3) for band in cut] == [
        2.0, 6.0, 10.0, 14.0, 14.142, 11.941, 7.941, 3.941,
    ]  # fmt: skip
    pointed = [band.number for band in cut if band.usable < band.centre]
    assert pointed == [4, 5]  # the corners at 10 in and at 14 in fall into these


def test_counts_and_centre_lines_are_those_of_a_polygon_library():
    for number in range(CASES):
        across, along, width = random_cloth(number)
        a, c = float(across), float(along)
        cut = bands(across, along, width)
        assert len(cut) == counted(a, c, float(width))
        cloth, reach = box(0, 0, a, c), a + c
        for band in cut:
            middle = float(band.begins + band.ends) / 2
            line = LineString([(middle + reach, -reach), (middle - reach, reach)])
            assert abs(line.intersection(cloth).length - float(band.centre)) < NEAR


def test_the_outline_of_each_band_is_that_of_a_polygon_library():
    for number in range(0, CASES, 10):
        across, along, width = random_cloth(number)
        cloth, reach = box(0, 0, float(across), float(along)), float(across + along)
        for band in bands(across, along, width):
            there = strip_of(band, reach).intersection(cloth)
            assert Polygon(band.outline).symmetric_difference(there).area < NEAR


def test_with_its_ends_on_the_grain_each_band_is_as_long_as_the_cloth_allows():
    for number in range(CASES):
        across, along, width = random_cloth(number)
        for band in bands(across, along, width):
            longest = longest_with_ends_on_grain(
                float(band.begins), float(band.ends), float(across), float(along)
            )
            assert abs(float(band.usable) - longest) < NEAR
            assert band.usable <= band.centre


@given(sizes, sizes, widths)
def test_the_bands_and_what_is_left_over_make_up_the_cloth(across, along, width):
    cut = bands(across, along, width)
    left = float(across + along - (cut[-1].ends if cut else ZERO))
    area = sum(Polygon(band.outline).area for band in cut)
    whole = float(across) * float(along)
    if left <= float(min(across, along)):
        assert area + left * left / 2 == pytest.approx(whole)
    assert area <= whole + NEAR


@given(sizes, sizes, widths)
def test_more_cloth_never_shortens_a_strip(across, along, width):
    now = bands(across, along, width)
    for more in (
        bands(across + inches(1), along, width),
        bands(across, along + inches(1), width),
    ):
        assert len(more) >= len(now)
        assert all(
            float(after.usable - before.usable) > -NEAR
            for before, after in zip(now, more, strict=False)
        )


@given(widths, st.integers(20, 400).map(inches))
def test_the_smallest_cloth_is_enough_and_one_step_less_is_not(width, wanted):
    step, usable, takes = (
        inches("1/2"),
        inches(44),
        BiasStrips(strip_allowance=inches("1/4")).join_takes,
    )

    def enough(usable):
        return joins_into(usable, inches(6), wanted, takes)

    across, along = smallest_cloth_by_length(usable, width, step, enough)
    assert (across, along) == smallest_cloth(
        usable, width, step, lambda cut: enough([float(band.usable) for band in cut])
    )
    assert enough(usable_lengths(across, along, width))
    assert not enough(usable_lengths(usable, along - step, width))
    if across < usable:
        assert not enough(usable_lengths(across - step, along, width))


@given(sizes, sizes, widths, st.integers(5, 200).map(inches))
def test_strips_chosen_reach_the_length_and_one_fewer_would_not(across, along, width, wanted):
    takes = BiasStrips(strip_allowance=inches("1/4")).join_takes
    cut = [band for band in bands(across, along, width) if band.usable > takes]
    chosen = fewest_joined(cut, wanted, takes)

    def joined(some):
        return sum((band.usable for band in some), ZERO) - takes * (len(some) - 1)

    lengths = [float(band.usable) for band in cut]
    if not joins_into(lengths, inches("1/2"), wanted, takes):
        assert len(chosen) == len(cut)
        assert not cut or float(joined(cut) - wanted) < NEAR * 3
        return
    assert joined(chosen) >= wanted
    longest = sorted(cut, key=lambda band: -band.usable.mm)[: len(chosen) - 1]
    assert not longest or joined(longest) <= wanted + millimetres("1/1000")


def test_whole_pieces_are_counted_strip_by_strip():
    # 10 x 10 in, 2 in wide, on the grain: 2, 6, 10, 10.28, 10.28, 6.28 and 2.28 in; squared each
    # is 2 in shorter: 0, 4, 8, 8.28, 8.28, 4.28, 0.28; pieces are 4 1/16 in long
    cut = bands(inches(10), inches(10), inches(2))
    wanted = Pieces(3, inches("65/16"), inches(2), inches(0))
    assert [wanted.of(band) for band in cut] == [0, 0, 1, 2, 2, 1, 0]
    lengths = [float(band.usable) for band in cut]
    assert gives_whole(lengths, replace(wanted, count=6))
    assert not gives_whole(lengths, replace(wanted, count=7))
    assert not gives_whole(lengths, replace(wanted, least=inches(13)))
    assert len(fewest_whole(cut, wanted)) == 2


@given(sizes, sizes, widths)
def test_the_quick_lengths_of_a_search_are_those_of_the_bands(across, along, width):
    quick = usable_lengths(across, along, width)
    cut = bands(across, along, width)
    assert len(quick) == len(cut)
    assert all(abs(one - float(band.usable)) < NEAR for one, band in zip(quick, cut, strict=True))


def test_a_join_on_the_grain_takes_the_diagonal_of_its_allowance_twice():
    """Two strips whose ends lie at 45 degrees: the seam line is j from the end, measured square.

    Along the strip that is j / sin 45 on each strip.
    """
    assert float(BiasStrips(strip_allowance=inches("1/4")).join_takes) == pytest.approx(
        2 * 6.35 * sqrt(2), abs=NEAR
    )
    assert float(diagonal(inches(1))) == pytest.approx(25.4 * sqrt(2), abs=NEAR)


def test_more_strips_than_anyone_cuts_are_refused():
    with pytest.raises(RefusalError, match="strips would be cut, more than 400"):
        bands(inches(120), inches(720), inches("1/4"))
