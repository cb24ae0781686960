"""A ruffle round an outline: hem lengths against buffered shapes of an independent geometry."""

from math import cos, pi, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, Polygon

from handout_engine.amounts.lengths import inches
from worked import length, refusal, said, steps, work


def test_a_round_collar_by_hand():
    # 24 in round, 1 1/2 in deep: the hem line is 24 + 2 pi 1.5 = 33.4 in; fullness 2 leaves
    # 48 / 33.4 = 1.44 there
    working = work("outline-ruffle", edge="24 in", depth="1 1/2 in")
    assert float(length(working, "hem_line") / inches(1)) == pytest.approx(24 + 3 * pi)
    assert float(working.values["hem_fullness"].amount) == pytest.approx(48 / (24 + 3 * pi))


@given(st.integers(8, 40), st.integers(1, 5))
def test_round_a_circle_the_hem_is_the_circle_grown_by_the_depth(edge, depth):
    working = work("outline-ruffle", edge=inches(edge), depth=inches(depth), fullness="6",
                   hem="finished")  # fmt: skip
    grown = Point(0, 0).buffer(edge / (2 * pi) + depth, quad_segs=2000).exterior.length
    assert float(length(working, "hem_line") / inches(1)) == pytest.approx(grown, rel=1e-4)


@given(st.integers(4, 20), st.integers(4, 20), st.integers(1, 4))
def test_round_a_square_pillow_the_corners_add_one_full_turn(width, height, depth):
    # independent: shapely grows the rectangle by the depth, with round corners
    pillow = Polygon([(0, 0), (width, 0), (width, height), (0, height)])
    working = work("outline-ruffle", edge=inches(2 * (width + height)), depth=inches(depth),
                   fullness="6", hem="finished")  # fmt: skip
    grown = pillow.buffer(depth, quad_segs=2000).exterior.length
    assert float(length(working, "hem_line") / inches(1)) == pytest.approx(grown, rel=1e-4)


@given(st.integers(20, 40), st.integers(1, 3), st.integers(30, 180))
def test_inside_a_hollow_curve_the_hem_is_shorter_and_fuller(edge, depth, turn):
    radius = edge / radians(turn)
    steps_round = [radians(turn) * step / 500 for step in range(501)]
    curve = LineString([(radius * cos(angle), radius * sin(angle)) for angle in steps_round])
    working = work("outline-ruffle", edge=inches(edge), depth=inches(depth), turning=f"{turn} deg",
                   curve="hollow", hem="finished")  # fmt: skip
    inner = curve.parallel_offset(depth, "left", resolution=200).length
    assert float(length(working, "hem_line") / inches(1)) == pytest.approx(inner, rel=3e-3)
    assert working.values["hem_fullness"].amount > 2


def test_a_ruffle_deeper_than_its_hollow_is_refused_with_the_radius():
    """6 in once round have a radius of 6 / 2π = 0.955 in, 24.3 mm."""
    sentence = refusal("outline-ruffle", edge="6 in", depth="2 in", curve="hollow")
    assert sentence == (
        "depth 2 in is deeper than the hollow is round; use less than 15/16 in (24 mm), or a "
        "longer edge that turns less"
    )


def test_a_hem_that_gathers_cannot_reach_is_refused_with_the_least_that_can():
    sentence = refusal("outline-ruffle", edge="8 in", depth="4 in", fullness="2")
    assert sentence == (
        "fullness 2 does not reach round the hem, which is 4.14 times the edge; use at least 4.15, "
        "or a shallower ruffle"
    )
    work("outline-ruffle", edge="8 in", depth="4 in", fullness="4.15")


def test_a_starved_hem_is_said_before_anything_is_cut():
    thin = work("outline-ruffle", edge="24 in", depth="3 in", fullness="2")
    assert steps(thin)[0].startswith("Decide first: at the hem only 1.12 lengths")
    assert said(thin, "fullness_needed") == "2.14"
    assert not steps(work("outline-ruffle", edge="24 in"))[0].startswith("Decide first")
