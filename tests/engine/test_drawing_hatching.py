from math import cos, hypot, pi, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LineString, Polygon

from handout_engine.drawing.hatching import hatch
from handout_engine.drawing.scene import rectangle

SPACING = 7.0


def test_a_square_is_hatched_at_forty_five_degrees():
    lines = hatch(rectangle(0, 0, 10, 10), 5)
    assert lines == [
        ((0, 5), (5, 0)), ((0, 10), (10, 0)), ((5, 10), (10, 5)),
    ]  # fmt: skip


def test_an_hourglass_is_hatched_in_both_its_halves():
    waist = ((0.0, 0.0), (20.0, 0.0), (11.0, 20.0), (20.0, 40.0), (0.0, 40.0), (9.0, 20.0))
    lines = hatch(waist, 3)
    assert {end[1] > 20 for line in lines for end in line} == {True, False}


@st.composite
def outlines(draw: st.DrawFn) -> tuple[tuple[float, float], ...]:
    """Star-shaped outlines, hollow or not: corners in order of their angle."""
    reaches = draw(st.lists(st.floats(5, 100), min_size=3, max_size=12))
    turn = 2 * pi / len(reaches)
    x, y = draw(st.floats(-300, 300)), draw(st.floats(-300, 300))
    return tuple(
        (x + reach * cos(number * turn), y + reach * sin(number * turn))
        for number, reach in enumerate(reaches)
    )


@given(outlines())
def test_every_line_of_hatching_lies_inside_its_outline(outline):
    polygon = Polygon(outline)
    assume(polygon.is_valid)
    inside = polygon.buffer(1e-6)
    for line in hatch(outline, SPACING):
        assert inside.covers(LineString(line))


@given(outlines())
def test_no_stretch_of_the_outline_is_left_without_hatching(outline):
    """Compared with a polygon library cutting the same family of lines."""
    polygon = Polygon(outline)
    assume(polygon.is_valid)
    ours = sum(hypot(x2 - x1, y2 - y1) for (x1, y1), (x2, y2) in hatch(outline, SPACING))
    theirs = sum(
        polygon.intersection(LineString([(c - 2000, 2000), (c + 2000, -2000)])).length
        for c in (number * SPACING for number in range(-200, 200))
    )
    assert ours == pytest.approx(theirs, abs=1e-3)
