"""The named outlines, against circles drawn another way."""

from fractions import Fraction
from itertools import pairwise
from math import asin, hypot, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.geometry.outlines import pocket_top, rectangle, sagging_arc, yoke_inset
from handout_engine.geometry.polygons import area, extents, perimeter, sides_that_meet

widths = st.floats(20, 400)


def test_a_half_circle_by_hand():
    """20 mm wide and 10 mm deep: a half circle of radius 10, 31.4 mm long."""
    arc = sagging_arc((5.0, 2.0), 20.0, 10.0)
    assert arc[0] == (5, 2) and arc[-1] == (25, 2)
    assert max(y for _, y in arc) == 12
    long = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(arc))
    assert long == pytest.approx(10 * pi, rel=1e-3)
    assert all(hypot(x - 15, y - 2) == pytest.approx(10, abs=1e-8) for x, y in arc)


@given(widths, st.floats(0.001, 0.5))
def test_an_arc_is_mirrored_and_true_to_a_hundredth(width, share):
    sag = round(width * share, 6)
    if not 0 < sag <= width / 2:
        return
    arc = sagging_arc((0.0, 0.0), width, sag)
    mirrored = [(width - x, y) for x, y in reversed(arc)]
    assert all(
        (x, y) == pytest.approx(other, abs=1e-8)
        for (x, y), other in zip(arc, mirrored, strict=True)
    )
    radius = (width * width / 4 + sag * sag) / (2 * sag)
    middles = [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in pairwise(arc)]
    for x, y in middles:
        assert radius - hypot(x - width / 2, y - (sag - radius)) < 0.0101


def test_a_yoke_inset_is_hollow_by_the_circle_s_segment():
    """100 wide, 60 deep, hollow 60 × 20: radius 32.5, half angle asin(30 / 32.5)."""
    half = asin(30 / 32.5)
    segment = 32.5**2 / 2 * (2 * half - 2 * (30 / 32.5) * (12.5 / 32.5))
    shape = yoke_inset(100, 100, 60, (60, 20))
    assert area(shape) == pytest.approx(6000 - segment, abs=0.6)
    assert extents(shape) == ((0, 0), (100, 60))


@pytest.mark.parametrize(
    "shape",
    [
        yoke_inset(100, 80, 60, (60, 20)),
        yoke_inset(80, 100, 60, (80, 20)),
        yoke_inset(100, 100, 60, (50, 0)),
        pocket_top(100, 40, 60),
        pocket_top(100, 60, 60),
        rectangle(30, 20),
    ],
)
def test_no_named_outline_crosses_or_repeats_a_corner(shape):
    corners = [(Fraction(x), Fraction(y)) for x, y in shape]
    assert sides_that_meet(corners) is None
    assert perimeter(shape) > 0
