"""Loops of an outline moved outward: by hand, then against the offsets of another library."""

from math import cos, pi, sin
from random import Random

import pytest
from shapely import LinearRing, Polygon

from handout_engine.drafting.allowances import outside
from handout_engine.geometry.loops import without_loops
from random_outlines import star


def test_a_loop_is_left_out_where_its_sides_cross():
    # two sides cross in (2, 2); beyond that they run round a little triangle
    crossed = [(0, 0), (4, 4), (4, 2), (0, 2), (-4, 2), (-4, 0)]
    assert without_loops(crossed) == ((0, 0), (2, 2), (0, 2), (-4, 2), (-4, 0))


def test_the_loop_may_hold_the_first_corner():
    crossed = [(4, 4), (4, 2), (0, 2), (-4, 2), (-4, 0), (0, 0)]
    assert set(without_loops(crossed)) == {(2, 2), (0, 2), (-4, 2), (-4, 0), (0, 0)}


def test_what_crosses_nowhere_stays_as_it_is():
    square = ((0, 0), (5, 0), (5, 5), (0, 5))
    assert without_loops(square) == square


@pytest.mark.parametrize("allowance", [3.0, 6.0, 9.0])
def test_a_notch_tighter_than_its_allowance_is_offset_as_by_another_library(allowance):
    """A bar with a half-round notch of radius 5 in its upper side."""
    notch = [(50 + 5 * cos(turn * pi / 20), 5 * sin(turn * pi / 20)) for turn in range(20, -1, -1)]
    bar = [(0.0, 0.0), *notch, (100.0, 0.0), (100.0, 40.0), (0.0, 40.0)]
    moved = outside(bar, [allowance] * len(bar))
    wanted = Polygon(bar).buffer(allowance, join_style="mitre", mitre_limit=3)
    assert LinearRing(moved).is_simple
    assert Polygon(moved).symmetric_difference(wanted).area < 0.002 * wanted.area


def test_random_outlines_moved_a_little_agree_with_another_library():
    random, alike = Random(5), 0
    for _ in range(150):
        outline = star(random, random.randint(5, 14))
        if not Polygon(outline).is_valid or Polygon(outline).area < 200:
            continue
        moved = outside(outline, [2.0] * len(outline))
        assert LinearRing(moved).is_simple
        wanted = Polygon(outline).buffer(2, join_style="mitre", mitre_limit=3)
        if wanted.interiors:
            continue
        alike += 1
        # Corners are cut off at a different length.
        assert Polygon(moved).symmetric_difference(wanted).area < 0.02 * wanted.area
    assert alike > 100
