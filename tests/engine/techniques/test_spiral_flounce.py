"""Spiral flounce: its length against numeric integration, its cutting as printed, its refusals."""

from fractions import Fraction
from itertools import pairwise
from math import dist, pi, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, make_valid

from handout_engine.amounts.lengths import inches
from handout_engine.amounts.saying import Tape
from handout_engine.families.ruffles.flounces import Spiral
from spiral_cutting import cut
from worked import length, refusal, said, steps, work

radii = st.floats(8, 200)
pitches = st.floats(10, 150)


def integrated(spiral: Spiral, turns: float, steps: int = 4000) -> float:
    """The integral of sqrt(r^2 + (pitch / 2 pi)^2) d(angle) by Simpson's rule."""
    step = 2 * pi * turns / steps
    k = spiral.pitch / (2 * pi)

    def speed(number: int) -> float:
        return sqrt((spiral.start + k * number * step) ** 2 + k**2)

    odd = sum(speed(n) for n in range(1, steps, 2))
    even = sum(speed(n) for n in range(2, steps, 2))
    return step / 3 * (speed(0) + 4 * odd + 2 * even + speed(steps))


@given(radii, pitches, st.floats(0.1, 6))
def test_the_length_is_the_integral(start, pitch, turns):
    spiral = Spiral(start, pitch)
    assert spiral.length(turns) == pytest.approx(integrated(spiral, turns), rel=1e-9)


@given(radii, pitches, st.floats(50, 3000))
def test_the_turns_for_a_length_give_it_back(start, pitch, wanted):
    spiral = Spiral(start, pitch)
    assert spiral.length(spiral.turns_for(wanted)) == pytest.approx(wanted, rel=1e-7)


@given(radii, pitches, st.floats(0.3, 4))
def test_the_line_that_is_drawn_has_that_length(start, pitch, turns):
    spiral = Spiral(start, pitch)
    drawn = sum(dist(*pair) for pair in pairwise(spiral.points(turns)))
    assert drawn == pytest.approx(spiral.length(turns), rel=5e-3)


def test_a_spiral_for_a_two_foot_edge_by_hand():
    # cut 1/4 + 2 + 1/8 = 2 3/8 in deep; it begins 1 1/2 in from the centre at the seam, where a
    # hem 2 in farther out is 3.5 / 1.5 times as long
    working = work("spiral-flounce", edge="24 in")
    assert said(working, "cut_depth") == "2 3/8 in"
    assert said(working, "inner_radius") == "1 1/4 in"
    assert said(working, "seam_line") == "24 1/2 in"
    closed = work("spiral-flounce", edge="24 in", ends="closed", join_allowance="1/2 in")
    assert said(closed, "seam_line") == "25 in"
    assert float(working.values["first_fullness"].amount) == pytest.approx(3.5 / 1.5)
    seam = Spiral(float(inches("3/2")), float(length(working, "cut_depth")))
    turns = float(working.values["turns"].amount)
    assert integrated(seam, turns) == pytest.approx(float(length(working, "seam_line")), rel=1e-6)


@given(st.integers(8, 60).map(inches))
def test_it_is_always_less_full_at_its_end(edge):
    working = work("spiral-flounce", edge=edge, cloth_width="120 in")
    assert working.values["last_fullness"].amount < working.values["first_fullness"].amount


def test_a_start_inside_its_own_allowance_is_refused():
    assert refusal("spiral-flounce", start="1/4 in") == (
        "start 1/4 in leaves no cloth inside the edge_allowance 1/4 in; use more than 1/4 in (7 mm)"
    )


def test_a_spiral_wider_than_the_cloth_is_refused_with_a_way_out():
    assert "use several spirals, each for at most" in refusal(
        "spiral-flounce", edge="10 yd", depth="6 in"
    )


@pytest.mark.parametrize("tape", [Tape("inches", 16), Tape("metric")])
@pytest.mark.parametrize(
    "measures",
    [
        {"edge": "140 cm"},
        {"edge": "14 in", "depth": "2 1/2 in"},  # less than one turn
        {"edge": "26 in", "depth": "1 1/4 in", "start": "3/4 in"},
        {"edge": "55 in", "depth": "3 cm", "start": "2 cm"},
        {"edge": "30 in", "depth": "2 in", "start": "5 in", "ends": "closed"},
    ],
)
def test_what_its_steps_say_cuts_the_flounce_that_is_promised(measures, tape):
    """Drawn, ruled and cut as printed; the tape's marks may cost two in the hundred."""
    working = work("spiral-flounce", cloth_width="60 in", **measures)
    found = cut(steps(working, tape))
    promised = working.values["seam_line"].mm
    deep = working.values["cut_depth"].mm
    assert found.seam == pytest.approx(promised, rel=0.02)
    assert found.ends == pytest.approx((deep, deep), abs=1)
    # a strip so deep: as long as its middle line, more or less
    (piece,) = working.pieces
    assert found.area == pytest.approx(Polygon(piece.outline).area, rel=0.03)


@given(st.integers(4, 80).map(inches), st.integers(2, 24).map(lambda n: inches(f"{n}/4")))
def test_a_turn_more_is_drawn_than_the_flounce_has(edge, start):
    working = work("spiral-flounce", edge=edge, start=start, cloth_width="120 in")
    turns, drawn = (working.values[name].amount for name in ("turns", "drawn_turns"))
    assert 0 <= drawn - (turns + 1) < Fraction(1, 4)


def test_its_sheet_shows_the_seam_line_as_long_as_it_is_sewn():
    working = work("spiral-flounce", edge="24 in")
    (piece,) = working.pieces
    sewn, whole = Polygon(piece.seam_outline), make_valid(Polygon(piece.outline))
    assert sewn.is_valid
    assert whole.buffer(0.1).contains(sewn)
    start, deep, pitch = (working.named[name].mm for name in ("start", "depth", "cut_depth"))
    hem, ends = Spiral(start + deep, pitch), 2 * deep
    turns = float(working.values["turns"].amount)
    long = working.inputs["edge"].mm + ends + hem.length(turns) - inches("1/2").mm
    assert sewn.exterior.length == pytest.approx(float(long), rel=0.005)


@pytest.mark.parametrize("ends", ["open", "closed"])
def test_the_line_it_is_sewn_on_is_as_long_as_the_edge(ends):
    """Walked point by point, whatever its ends take."""
    (piece,) = work("spiral-flounce", edge="24 in", ends=ends, end_hem="1/4 in",
                    join_allowance="1 in").pieces  # fmt: skip
    sides = list(pairwise(piece.seam_outline))
    last = max(range(len(sides)), key=lambda number: dist(*sides[number]))
    assert sum(dist(*side) for side in sides[last + 1 :]) == pytest.approx(24 * 25.4, rel=2e-3)
