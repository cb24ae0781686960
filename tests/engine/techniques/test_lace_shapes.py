"""Scallops, diamonds and loops of lace, against curves measured point by point."""

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import Polygon

from handout_engine.amounts.lengths import inches, millimetres
from lace_geometry import beside, loop, polyline, through
from worked import length, refusal, said, work


def shaped(shape, wide, high, lace):
    size = {"shape_width": millimetres(wide), "height": millimetres(high)}
    return work(
        "lace-shapes", shape=shape, edge="10 yd", repeats="1", lace_width=millimetres(lace), **size
    )


def mm(working, name):
    return float(length(working, name).mm)


def test_six_scallops_on_two_feet_of_edge_worked_by_hand():
    """Chord 4 in, rise 1 1/5 in: radius (4 + 1.44) / 2.4 = 2.267 in; arc 2 r asin(2 / r).

    asin(0.8824) = 1.0808, so the arc is 4.900 in on the centre line.
    """
    working = work("lace-shapes")
    assert mm(working, "radius") / 25.4 == pytest.approx(2.2667, abs=1e-4)
    assert mm(working, "centre_line") / 25.4 == pytest.approx(4.900, abs=1e-3)
    assert said(working, "foot_takes") == "1 1/4 in"
    whole = 6 * (length(working, "outer_edge") + inches("5/4")) + inches(1)
    assert length(working, "lace_length") == whole


@settings(max_examples=60)
@given(st.integers(40, 300), st.integers(8, 300), st.integers(4, 20))
def test_a_scallop_is_as_long_as_its_points_measure(wide, high, lace):
    radius = (wide * wide / 4 + high * high) / (2 * high)
    assume(lace < 1.9 * radius and radius < 5000)
    working = shaped("scallop", wide, high, lace)
    line = through((-wide / 2, 0.0), (0.0, float(high)), (wide / 2, 0.0))
    assert mm(working, "centre_line") == pytest.approx(polyline(line), rel=1e-5)
    assert mm(working, "outer_edge") == pytest.approx(polyline(beside(line, lace / 2)), rel=1e-4)
    assert mm(working, "inner_edge") == pytest.approx(polyline(beside(line, -lace / 2)), rel=1e-4)


@settings(max_examples=300)
@given(st.integers(40, 300), st.integers(40, 300), st.integers(4, 12))
def test_a_diamond_is_as_long_as_its_offset(wide, high, lace):
    middle = Polygon([(0, high / 2), (wide / 2, 0), (0, -high / 2), (-wide / 2, 0)])
    outer = middle.buffer(lace / 2, join_style="mitre", mitre_limit=1000)
    inner = middle.buffer(-lace / 2, join_style="mitre", mitre_limit=1000)
    assume(not inner.is_empty)
    working = shaped("diamond", wide, high, lace)
    assert mm(working, "centre_line") == pytest.approx(middle.length)
    assert mm(working, "outer_edge") == pytest.approx(outer.length)
    assert mm(working, "inner_edge") == pytest.approx(inner.length)


@settings(max_examples=60)
@given(st.integers(30, 200), st.integers(10, 200), st.integers(4, 20))
def test_a_loop_is_as_long_as_its_points_measure(wide, more, lace):
    assume(lace < wide * 0.9)
    working = shaped("loop", wide, wide + more, lace)
    line = loop(wide, wide + more)
    assert mm(working, "centre_line") == pytest.approx(polyline(line), rel=1e-5)
    assert mm(working, "outer_edge") == pytest.approx(polyline(beside(line, lace / 2)), rel=1e-4)


@given(st.integers(1, 40), st.sampled_from(["scallop", "diamond", "loop"]))
def test_so_many_shapes_take_so_many_times_the_lace(repeats, shape):
    written = {"shape": shape, "shape_width": "2 in", "height": "3 in", "end_allowance": "0 in"}
    working = work("lace-shapes", edge=inches(3 * repeats), repeats=repeats, **written)
    runs = inches((3 if shape == "loop" else 1) * repeats)
    assert length(working, "lace_length") == length(working, "shape_takes") * repeats + runs
    assert len(working.charts[0].rows) == repeats


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"shape_width": "5 in"},
            "shape_width 5 in is more than the 4 in from one scallop to the next leaves room for; "
            "use at most 4 in (10.1 cm), or fewer shapes",
        ),
        (
            {"shape": "loop", "shape_width": "2 in", "height": "2 in"},
            "a loop 2 in wide must be higher than that to close at its foot; use a height of more "
            "than 2 in (51 mm), or a smaller shape_width",
        ),
        (
            {"shape": "loop", "shape_width": "1/2 in", "height": "1 in"},
            "lace_width 5/8 in is too wide for a curve of 1/4 in radius, its inner edge would "
            "cross itself; use lace narrower than 1/2 in (12 mm), or larger shapes",
        ),
        (
            {"shape": "diamond", "repeats": "32", "height": "1 in"},
            "lace_width 5/8 in fills the whole diamond; use lace narrower than 19/32 in (15 mm), "
            "or larger shapes",
        ),
    ],
)
def test_what_cannot_be_bent_is_refused_with_a_way_out(written, sentence):
    assert refusal("lace-shapes", **written) == sentence
