"""Clipping a band to an outline, against shapely over thousands of random outlines."""

from fractions import Fraction
from random import Random

import pytest
from shapely.geometry import Polygon as Shape
from shapely.geometry import box

from handout_engine.geometry.clipping import Band, clip, clip_turned
from handout_engine.geometry.points import cosine, sine, turned
from handout_engine.geometry.polygons import area
from random_outlines import outline

TECHNIQUES = ("lattice-panel",)
U_SHAPE = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (7.0, 10.0), (7.0, 4.0), (3.0, 4.0),
           (3.0, 10.0), (0.0, 10.0))  # fmt: skip


def areas(pieces):
    return sorted(area(piece) for piece in pieces)


def test_a_band_across_a_hollow_gives_two_pieces():
    """By hand: from 6 to 8 mm down, the two legs of a U of 3 mm each, so 6 square mm each."""
    assert areas(clip_turned(U_SHAPE, 6, 8)) == [6, 6]


def test_a_band_across_the_solid_part_gives_one():
    assert areas(clip_turned(U_SHAPE, 1, 3)) == [20]


def test_a_band_that_reaches_into_the_legs_hangs_together():
    """1 to 5 mm down: 10 × 3 and two legs of 3 × 1."""
    assert areas(clip_turned(U_SHAPE, 1, 5)) == [36]


@pytest.mark.parametrize(("near", "far"), [(4, 6), (2, 4), (-2, 0), (10, 12)])
def test_sides_along_the_edge_of_a_band_need_no_case_of_their_own(near, far):
    expected = {(4, 6): [6, 6], (2, 4): [20], (-2, 0): [], (10, 12): []}[near, far]
    assert areas(clip_turned(U_SHAPE, near, far)) == expected


def test_a_corner_that_only_touches_is_no_piece():
    roof = ((0.0, 5.0), (5.0, 0.0), (10.0, 5.0))
    assert clip_turned(roof, -3, 0) == []
    assert areas(clip_turned(roof, 0, 5)) == [25]


def test_two_teeth_that_touch_the_edge_of_a_band_at_one_place():
    zigzag = ((0.0, 0.0), (8.0, 0.0), (8.0, 4.0), (6.0, 8.0), (4.0, 4.0), (2.0, 8.0), (0.0, 4.0))
    assert areas(clip_turned(zigzag, 4, 9)) == [8, 8]
    assert areas(clip_turned(zigzag, 0, 4)) == [32]


def pieces_by_shapely(shape, band_shape):
    found = shape.intersection(band_shape)
    parts = getattr(found, "geoms", [found])
    return [part for part in parts if part.geom_type == "Polygon" and part.area > 1e-6]


def test_four_thousand_random_outlines_clip_as_in_shapely():
    random = Random(20)
    several = compared = 0
    for _ in range(4000):
        points = outline(random)
        shape = Shape(points)
        if not shape.is_valid or shape.area < 1:
            continue
        whole = random.random() < 0.5
        near = random.randint(0, 190) if whole else random.uniform(0, 190)
        far = near + (random.randint(1, 20) if whole else random.uniform(0.5, 20))
        mine = clip_turned(points, near, far)
        theirs = pieces_by_shapely(shape, box(-1000, near, 2000, far))
        assert areas(mine) == pytest.approx(sorted(part.area for part in theirs), abs=1e-6)
        several += len(mine) > 1
        compared += bool(mine)
    assert compared > 2000 and several > 300, "the outlines must be hollow enough to matter"


def test_a_slanting_band_clips_as_in_shapely():
    random = Random(7)
    for _ in range(1000):
        points = outline(random)
        shape = Shape(points)
        if not shape.is_valid or shape.area < 1:
            continue
        turn = Fraction(random.randint(1, 899), 10)
        along = (cosine(turn), sine(turn))
        near = random.uniform(-100, 150)
        strip = Shape([
            (far * along[0] - aside * along[1], far * along[1] + aside * along[0])
            for far, aside in ((-999, near), (999, near), (999, near + 9), (-999, near + 9))
        ])  # fmt: skip
        mine = clip(points, Band(along, near, near + 9))
        theirs = pieces_by_shapely(shape, strip)
        assert areas(mine) == pytest.approx(sorted(part.area for part in theirs), abs=1e-6)
        for piece in mine:
            for aside in (turned(point, along)[1] for point in piece):
                assert near - 1e-6 <= aside <= near + 9 + 1e-6
