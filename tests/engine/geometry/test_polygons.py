"""Outlines: area, length, inside or outside, and sides that cross, against shapely."""

from fractions import Fraction
from random import Random

import pytest
from shapely.geometry import LinearRing
from shapely.geometry import Point as Dot
from shapely.geometry import Polygon as Shape

from handout_engine.geometry.polygons import (
    area,
    contains,
    distance_to_outline,
    extents,
    perimeter,
    sides_that_meet,
)
from random_outlines import outline

TECHNIQUES = ("lattice-panel",)
L_SHAPE = ((0.0, 0.0), (4.0, 0.0), (4.0, 1.0), (1.0, 1.0), (1.0, 3.0), (0.0, 3.0))


def test_an_l_worked_by_hand():
    """4 × 1 above, 1 × 2 below: 6 square mm, 14 mm round."""
    assert area(L_SHAPE) == area(L_SHAPE[::-1]) == 6
    assert perimeter(L_SHAPE) == 14
    assert extents(L_SHAPE) == ((0, 0), (4, 3))
    assert contains(L_SHAPE, (0.5, 2)) and contains(L_SHAPE, (3, 0.5))
    assert not contains(L_SHAPE, (2, 2)) and not contains(L_SHAPE, (5, 0.5))
    assert distance_to_outline(L_SHAPE, (2, 2)) == 1
    assert distance_to_outline(L_SHAPE, (5, 2)) == pytest.approx(2**0.5)


def test_random_outlines_measure_as_in_shapely():
    random = Random(3)
    for _ in range(500):
        points = outline(random)
        shape = Shape(points)
        if not shape.is_valid or shape.area < 1:
            continue
        assert area(points) == pytest.approx(shape.area, abs=1e-6)
        assert perimeter(points) == pytest.approx(shape.length, abs=1e-9)
        for _ in range(10):
            dot = random.uniform(0, 200), random.uniform(0, 200)
            assert contains(points, dot) == shape.contains(Dot(dot))
            away = LinearRing(points).distance(Dot(dot))
            assert distance_to_outline(points, dot) == pytest.approx(away, abs=1e-9)


def exact(*corners):
    return [(Fraction(x), Fraction(y)) for x, y in corners]


@pytest.mark.parametrize(
    ("corners", "meeting"),
    [
        (exact((0, 0), (4, 0), (4, 4), (0, 4)), None),
        (exact((0, 0), (4, 4), (4, 0), (0, 4)), (1, 3)),  # an hourglass
        (exact((0, 0), (4, 0), (4, 0), (0, 4)), (2, 2)),  # the same corner twice
        (exact((0, 0), (4, 0), (2, 0), (2, 3)), (1, 2)),  # runs back over itself
        (exact((0, 0), (4, 0), (4, 4), (2, 0), (0, 4)), (1, 3)),  # a corner on another side
        (exact((0, 0), (2, 0), (4, 0), (4, 4)), None),  # a corner that turns nowhere
        (exact((0, 0), (0, 4), (0, 2)), (1, 2)),
        (exact((0, 0), (4, 0), (4, 3), (1, 3), (1, 0), (0, 3)), (1, 4)),
    ],
)
def test_sides_that_cross_or_touch_are_found(corners, meeting):
    assert sides_that_meet(corners) == meeting


def test_random_corners_cross_where_shapely_says_so():
    random = Random(11)
    crossing = 0
    for _ in range(1500):
        corners = [
            (random.randint(0, 9), random.randint(0, 9)) for _ in range(random.randint(3, 7))
        ]
        if any(
            one == other for one, other in zip(corners, [*corners[1:], corners[0]], strict=True)
        ):
            continue  # shapely passes over a corner that is repeated; an author means another one
        mine = sides_that_meet(exact(*corners)) is None
        shape = Shape(corners)
        proper = LinearRing(corners).is_simple and shape.area > 0
        assert mine == proper, corners
        crossing += not mine
    assert 300 < crossing < 1400
