"""Lattice and true-scale sheets against the outside world, each figure with where it stands."""

from fractions import Fraction
from math import asin, degrees, sqrt

import pytest

from handout_engine.amounts.lengths import inches
from handout_engine.paper.true_scale import SQUARES
from worked import length, said, work


def test_the_two_inch_square_is_by_the_yard_of_1960():
    """Addendum to NBS Circular 572: 1 yd = 0.9144 m, so 2 in = 50.8 mm."""
    assert dict(SQUARES)["2 in"] == float(Fraction(9144, 10) / 36 * 2)


@pytest.mark.parametrize(
    ("tube", "allowance", "strip"),
    [("3/8 in", "1/4 in", "1 1/4 in"), ("1/4 in", "1/8 in", "3/4 in")],
)
def test_strips_for_tubes(tube, allowance, strip):
    """Common practice, no source: twice the finished width and twice the allowance."""
    working = work("lattice-panel", tube_width=tube, tube_allowance=allowance)
    assert said(working, "strip_width") == strip


def test_lines_on_the_bias_are_the_width_times_the_root_of_two_along_the_grain():
    """Geometry, as in The New Dressmaker (1921), p. 15: true bias by equal distances on selvage
    and cut end. A triangle of equal sides e on the grain is e / √2 high."""
    working = work("lattice-panel")
    step = float(length(working, "edge_step"))
    assert step / sqrt(2) == pytest.approx(float(length(working, "strip_width")), abs=1e-6)


def test_at_45_degrees_openings_are_squares_of_the_gap():
    """Geometry: two sets at a right angle leave squares, and cross once every tube and gap."""
    working = work("lattice-panel", rising_angle="45", falling_angle="45")
    assert length(working, "opening_side") == length(working, "gap")
    assert length(working, "crossing_spacing") == length(working, "pitch")


def test_at_60_degrees_it_is_the_equilateral_triangle_s_height():
    """Geometry: at 60° both ways the sets cross at 120°, whose sine is √3 / 2."""
    working = work("lattice-panel", rising_angle="60", falling_angle="60", gap="1 in")
    ratio = float(length(working, "pitch") / length(working, "crossing_spacing"))
    assert degrees(asin(ratio)) == pytest.approx(60, abs=1e-7)
    assert ratio == pytest.approx(sqrt(3) / 2, abs=1e-9)


def test_a_small_part_s_cylinder_is_quoted_as_the_regulation_has_it():
    """16 CFR 1501: 31.7 mm wide, 25.4 to 57.1 mm deep (read in a copy)."""
    working = work("lattice-panel")
    (source,) = [each for each in working.sources if each.key == "cfr-1501"]
    assert "31.7 mm wide and 25.4 to 57.1 mm deep" in source.detail
    assert inches(1).mm == Fraction("25.4")
