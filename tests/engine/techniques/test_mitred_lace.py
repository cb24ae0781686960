"""Mitred lace, against offset outlines and cut strips measured by a polygon library."""

from fractions import Fraction
from math import cos, radians, sin

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import LineString, Polygon

from handout_engine.amounts.lengths import inches, millimetres
from worked import length, refusal, said, work

NEAR = 1e-5


def walked(sides, turn):
    """The corners of an inner line that turns by the same angle to the right at each of them."""
    points, heading = [(0.0, 0.0)], 0.0
    for side in sides:
        x, y = points[-1]
        points.append((x + side * cos(heading), y - side * sin(heading)))
        heading += radians(turn)
    return points


def test_a_square_corner_takes_two_widths_of_the_lace():
    """Common practice, no source: 2 × width × tan(45) = 2 widths, and the seam.

    Sides of 6, 9 and 6 in inside: 21 in, 2 corners of 2 × 5/8 + 2 × 1/16 in, 2 ends of 1/2 in.
    """
    working = work("mitred-lace")
    assert said(working, "corner_takes") == "1 3/8 in"
    assert length(working, "lace_length") == inches(21 + Fraction(11, 4) + 1)
    bare = work("mitred-lace", mitre_seam="0 in")
    assert length(bare, "corner_takes") == 2 * inches("5/8")
    assert bare.values["corner_widths"].amount == 2


def test_on_the_outer_line_nothing_is_added_but_the_seams():
    working = work("mitred-lace", measured="outer line", mitre_seam="0 in", end_allowance="0 in")
    assert said(working, "lace_length") == "21 in"
    assert said(working, "inner2") == "7 3/4 in"


@settings(max_examples=1000)
@given(
    st.lists(st.integers(80, 400), min_size=2, max_size=5),
    st.integers(5, 85),
    st.integers(5, 30),
)
def test_the_outer_line_is_as_long_as_the_offset_of_the_inner_one(sides, turn, wide):
    assume(turn * (len(sides) - 1) <= 200)
    working = work(
        "mitred-lace", sides=tuple(map(millimetres, sides)), turn=Fraction(turn),
        lace_width=millimetres(wide), mitre_seam="0 in", end_allowance="0 in",
    )  # fmt: skip
    line = LineString(walked(sides, turn))
    outer = line.offset_curve(wide, join_style="mitre", mitre_limit=100)
    assert length(working, "lace_length").mm == pytest.approx(outer.length, abs=NEAR)
    inner = sum(length(working, f"inner{n}").mm for n in range(1, len(sides) + 1))
    assert float(inner) == pytest.approx(line.length)


@settings(max_examples=200)
@given(st.integers(3, 9), st.integers(60, 400), st.integers(5, 30), st.integers(0, 6))
def test_a_ring_is_as_long_as_the_outline_round_it(corners, side, wide, seam):
    turn = Fraction(360, corners)
    working = work(
        "mitred-lace", sides=(millimetres(side),) * corners, turn=turn, ends="ring",
        lace_width=millimetres(wide), mitre_seam=millimetres(seam),
    )  # fmt: skip
    ring = Polygon(walked([side] * corners, float(turn))[:-1])
    around = ring.buffer(wide, join_style="mitre", mitre_limit=100)
    wanted = around.exterior.length + 2 * seam * corners
    assert float(length(working, "lace_length").mm) == pytest.approx(wanted, abs=NEAR)


@settings(max_examples=200)
@given(
    st.lists(st.integers(150, 400), min_size=2, max_size=5),
    st.integers(5, 120),
    st.integers(5, 25),
    st.integers(0, 5),
)
def test_cut_on_its_stitching_lines_the_strip_covers_the_shape(sides, turn, wide, seam):
    """Cut the flat lace on the lines of the chart: the pieces have the area of the finished lace.

    What is cut away between them is the mitres; nothing is lost, so cloth is conserved.
    """
    assume(turn * (len(sides) - 1) <= 180)
    working = work(
        "mitred-lace", sides=tuple(map(millimetres, sides)), turn=Fraction(turn),
        lace_width=millimetres(wide), mitre_seam=millimetres(seam), end_allowance="10 mm",
    )  # fmt: skip
    (chart,) = working.charts
    total, half = float(length(working, "lace_length").mm), length(working, "half_mitre").mm
    strip = Polygon([(0, 0), (total, 0), (total, wide), (0, wide)])
    kept = strip
    for _, fold, left, right in chart.rows:
        at = float(fold.length.mm)
        dart = Polygon([(at - seam, 0), (at + seam, 0), (float(right.mm), wide),
                        (float(left.mm), wide)])  # fmt: skip
        assert float(right.mm - left.mm) == pytest.approx(2 * seam + 2 * float(half), abs=NEAR)
        kept = kept.difference(dart)
    ends = 2 * 10 * wide
    line = LineString(walked(sides, turn))
    outer = line.offset_curve(wide, join_style="mitre", mitre_limit=100)
    shape = Polygon([*line.coords, *reversed(outer.coords)])
    assert kept.area - ends == pytest.approx(shape.area, rel=1e-9)


@given(st.integers(5, 159), st.integers(1, 100))
def test_a_sharper_corner_takes_more(turn, wide):
    one = work("mitred-lace", sides="20 in; 20 in", turn=Fraction(turn),
               lace_width=millimetres(wide + 3))  # fmt: skip
    next_one = work("mitred-lace", sides="20 in; 20 in", turn=Fraction(turn + 1),
                    lace_width=millimetres(wide + 3))  # fmt: skip
    assert length(next_one, "corner_takes") > length(one, "corner_takes")


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"sides": "6 in"}, "one open side has no corner to mitre; write at least 2 sides"),
        (
            {"sides": "6 in; 6 in; 6 in; 6 in", "turn": "160"},
            "turn 160° at 3 corners goes more than once round; use at most 120°, or fewer sides",
        ),
        (
            {"sides": "6 in; 9 in; 6 in; 8 in", "ends": "ring"},
            "the sides do not close to a ring, the end misses the start by 1 in (25 mm); make "
            "opposite sides equal, or leave the ends open",
        ),
        (
            {"sides": "6 in; 6 in; 6 in", "ends": "ring", "turn": "90"},
            "a ring needs turn 120° at each of its 3 corners; write that, or leave the ends open",
        ),
        (
            {"sides": "4 in; 1 in; 4 in", "measured": "outer line", "lace_width": "1/2 in"},
            "lace_width 1/2 in leaves nothing of side 2 inside, 1 in on the outer line; use lace "
            "narrower than 1/2 in (12 mm), or longer sides",
        ),
    ],
)
def test_what_cannot_be_laid_is_refused_with_a_way_out(written, sentence):
    assert refusal("mitred-lace", **written) == sentence


def test_the_ends_of_a_ring_meet_in_its_last_mitre():
    working = work("mitred-lace", sides="9 in; 9 in; 9 in; 9 in", ends="ring")
    name, fold, _, start = working.charts[0].rows[-1]
    assert name == "mitre 4, where the ends meet"
    assert fold.length == length(working, "lace_length")
    assert 2 * start == length(working, "corner_takes")
