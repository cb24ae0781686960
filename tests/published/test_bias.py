"""Bias strips, bindings and buttons against the figures that others have printed."""

from __future__ import annotations

from fractions import Fraction
from math import pi

import pytest

from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.reading import read_length
from worked import length, said, work

YARD = inches(36)
JOIN = inches("1/4")


def from_a_yard(cloth_width: int, strip: str) -> Length:
    """The strip that the page of a continuous strip names for one yard of cloth of that width."""
    working = work(
        "continuous-bias",
        width=inches(strip),
        cloth_across=inches(cloth_width),
        cloth_along=YARD,
        strip_allowance=JOIN,
        selvage="0 in",
        cloth_width=inches(cloth_width),
    )
    return length(working, "strip_length")


# Printed table of no known origin, arithmetic checked: yards of strip from one yard of cloth.
BIAS_YIELD = [
    (45, "5/4", 30), (45, "7/4", Fraction(43, 2)), (45, "9/4", 16), (45, "11/4", 14),
    (45, "15/4", 10),
    (35, "5/4", 23), (35, "7/4", 15), (35, "9/4", 12), (35, "11/4", 10), (35, "15/4", 8),
]  # fmt: skip


@pytest.mark.parametrize(("cloth_width", "strip", "yards"), BIAS_YIELD)
def test_ours_lies_between_the_printed_table_and_gross_area(cloth_width, strip, yards):
    ours = from_a_yard(cloth_width, strip)
    area = inches(cloth_width) * (YARD / inches(strip))
    assert YARD * yards <= ours < area


@pytest.mark.parametrize(("cloth_width", "strip", "yards"), BIAS_YIELD)
def test_cut_strips_lie_between_the_printed_table_and_gross_area(cloth_width, strip, yards):
    """Printed table of no known origin, arithmetic checked."""
    working = work(
        "bias-strips", width=inches(strip), cloth_across=inches(cloth_width), cloth_along=YARD,
        selvage="0 in", cloth_width="45 in", least_strip="1 in",
    )  # fmt: skip
    area = inches(cloth_width) * (YARD / inches(strip))
    assert YARD * yards <= length(working, "joined_length") < area


def test_the_area_rule_is_an_upper_bound_and_not_safe():
    """Worked example of no known origin, arithmetic checked: 10 yd of 3 in strip from a
    square of 34 in, by area.

    Its sum is right, sqrt(360 x 3) = 32.86 in and a seam; but the cloth gives 7 whole rows and
    330 in, 30 in less than wanted.
    """
    working = work("continuous-bias", width="3 in", cloth_across="34 in", cloth_along="34 in")
    assert working.named["rows"].amount == 7
    assert length(working, "area_length") > inches(360)
    assert round(float(length(working, "strip_length") / inches(1))) == 330


def test_a_twelve_inch_square_gives_sixty_four_inches_not_the_seventy_two_of_its_area():
    """Worked example of no known origin, arithmetic checked: 12 in square, 2 in strip, by area
    72 in.
    """
    working = work("continuous-bias", width="2 in", cloth_across="12 in", cloth_along="12 in")
    assert length(working, "area_length") == inches(72)
    assert round(float(length(working, "strip_length") / inches(1))) == 64


def test_a_hundred_inches_of_three_and_a_half_need_more_than_the_area_rule_says():
    """Worked example of no known origin, arithmetic checked: sqrt(350) = 18.71, by area 19 in."""
    working = work("continuous-bias", width="3 1/2 in", wanted="100 in", least_saving="100 %")
    assert length(working, "across") >= inches(19)
    by_area = work("continuous-bias", width="3 1/2 in", cloth_across="19 in", cloth_along="19 in")
    assert length(by_area, "strip_length") < inches(100)


@pytest.mark.parametrize("finished", ["3/8", "1/2", "3/4"])
def test_a_bias_band_is_twice_its_finished_width_and_three_eighths_on_each_edge(finished):
    """The New Dressmaker, Butterick Publishing Company, 1921, p. 131."""
    working = work(
        "single-binding", binding=inches(finished), seam_allowance="3/8 in", turn_under="3/8 in"
    )
    assert length(working, "strip_width") == 2 * inches(finished) + inches("3/4")


def test_only_at_three_eighths_is_that_four_times_the_binding():
    """The New Dressmaker, 1921, p. 131, beside the rule of four times, common practice."""
    for sixteenths in range(4, 17):
        binding = inches(Fraction(sixteenths, 16))
        usual = length(work("single-binding", binding=binding), "strip_width")
        assert usual == 4 * binding
        assert (usual == 2 * binding + inches("3/4")) == (sixteenths == 6)


def test_a_narrow_band_is_trimmed_after_sewing():
    """The New Dressmaker, 1921, p. 131, for a neck facing of 1/4 in: turnings deeper than itself.

    Conover, A Complete Course in Dressmaking, vol. 9, p. 35, has infants' neck and armhole
    facings finished 1/4 in, on the bias.
    """
    working = work(
        "single-binding", binding="1/4 in", seam_allowance="3/8 in", turn_under="3/8 in",
        after="trimmed to the binding",
    )  # fmt: skip
    assert said(working, "strip_width") == "1 1/4 in"


def test_a_piping_strip_of_the_textbook_covers_the_cords_of_dressmaking():
    """The New Dressmaker, 1921, p. 131: piping strips 1 1/4 in wide."""
    working = work("piping", cord="5/32 in", seam_allowance="3/8 in")
    assert said(working, "published_strip") == "1 1/4 in"
    assert abs(float(length(working, "strip_width") - inches("5/4"))) < float(inches("1/64"))
    assert length(working, "published_cord") > inches("5/32")


def test_a_cord_covering_is_pi_times_the_cord_and_two_allowances():
    """Worked example of no known origin, arithmetic checked: 1/4 in cord, 1/2 in
    allowances: 0.785 + 1 = 1.785 in.
    """
    working = work("piping", cord="1/4 in", seam_allowance="1/2 in")
    assert float(length(working, "strip_width") / inches(1)) == pytest.approx(pi / 4 + 1)


def test_a_quilt_of_54_by_60_inches_takes_six_strips_of_42_inches():
    """Worked example of no known origin, arithmetic checked: 2 x (54 + 60) = 228, and 10
    in, 238 in.
    """
    working = work(
        "double-binding", edge="228 in", corners="4", binding="3/8 in", grain="across",
        cloth_width="42 in", selvage="0 in",
    )  # fmt: skip
    assert said(working, "strip_length") == "238 in"
    assert working.named["strips_used"].amount == 6


def test_a_quilt_of_40_by_50_inches_takes_five_strips_and_twelve_and_a_half_inches():
    """Worked example of no known origin, arithmetic checked: 180 / 40 = 4.5, so 5 strips
    of 2 1/2 in, 12 1/2 in.

    The strip of 2 1/2 in is 6 x 5/12 in; ours takes the joins and the tail off the five as well.
    """
    working = work(
        "double-binding", edge="180 in", corners="4", binding=inches("5/12"), grain="across",
        cloth_width="40 in", selvage="0 in",
    )  # fmt: skip
    assert said(working, "strip_width") == "2 1/2 in"
    assert working.named["strips_used"].amount == 5
    assert said(working, "cloth_used") == "12 1/2 in"


def test_a_tube_three_eighths_of_an_inch_wide():
    """Common practice, no source: finished 3/8 in from 1 1/4 in with seams of 1/4 in."""
    assert said(work("bias-tube", finished="3/8 in"), "strip_width") == "1 1/4 in"
    back = work("bias-tube", finished="3/8 in", seam="centred on the back")
    assert said(back, "tube_seam") == "3/16 in"
    assert said(back, "strip_width") == "1 1/8 in"


@pytest.mark.parametrize(
    ("lines", "mm"), [(16, "10.16"), (24, "15.24"), (40, "25.4"), (1, "0.635")]
)
def test_buttons_are_numbered_in_fortieths_of_an_inch(lines, mm):
    """Trade unit: one line is 1/40 in."""
    for word in ("lines", "ligne", "line"):
        assert read_length(f"{lines} {word}") == millimetres(mm)
