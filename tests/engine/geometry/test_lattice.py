"""Bands woven through an outline, against shapely on 1,000 random outlines."""

from fractions import Fraction
from math import hypot, sin
from math import radians as turn_to_radians
from random import Random

import pytest
from shapely.geometry import Polygon as Shape

from handout_engine.families.lattice.weave import (
    FALLING,
    RISING,
    Weave,
    crossing_point,
    crossings,
    tubes,
)
from handout_engine.geometry.points import cosine, sine
from handout_engine.geometry.polygons import area
from random_outlines import outline
from shapely_lattice import lattice_by_shapely

TECHNIQUES = ("lattice-panel",)
SQUARE = ((0.0, 0.0), (40.0, 0.0), (40.0, 40.0), (0.0, 40.0))


def weave(rising=45, falling=45, *, width=4.0, gap=6.0, margin=5.0, centre=(20.0, 20.0)):
    rise, fall = Fraction(rising), Fraction(falling)
    return Weave(
        (cosine(rise), -sine(rise)), (cosine(fall), sine(fall)), centre, width, width + gap, margin
    )


def both(points, woven):
    return [*tubes(points, woven, RISING), *tubes(points, woven, FALLING)]


def test_level_and_upright_tubes_in_a_square_worked_by_hand():
    """Angles 0 and 90, 4 mm tubes every 10 mm in a square of 40: middles at 20 ± 10 and, with half
    of their width inside, at 20 ± 20. Five each way of 40 + 2 × 5 mm; 3 × 3 crossings inside, those
    on the outline are not."""
    found = both(SQUARE, weave(0, 90))
    assert [tube.length for tube in found] == [50] * 10
    assert sum(tube.edge_only for tube in found) == 4
    places = {each.at for each in crossings(SQUARE, weave(0, 90))}
    assert places == {(x, y) for x in (10, 20, 30) for y in (10, 20, 30)}


def test_one_diagonal_tube_worked_by_hand():
    """The band through the corners of a square reaches from corner to corner: 40 √2, + 2 × 5."""
    (middle,) = [tube for tube in tubes(SQUARE, weave(gap=60.0), RISING) if tube.number == 0]
    assert middle.length == pytest.approx(40 * 2**0.5 + 10, abs=1e-9)
    assert not middle.edge_only


def test_a_tube_that_enters_by_an_edge_only_is_as_long_as_that_edge_needs():
    """Bands at 45° every 29 mm: the next band's middle lies 29 from the centre, beyond the corner
    at 28.28; its edge 27 from it, so a triangle 2 × 1.28 long enters."""
    first = [tube for tube in tubes(SQUARE, weave(gap=25.0), RISING) if tube.number == 1]
    assert len(first) == 1 and first[0].edge_only
    assert first[0].length == pytest.approx(2 * (20 * 2**0.5 - 27) + 10, abs=1e-8)


def test_a_hollow_parts_a_tube_and_a_narrow_one_does_not():
    notch = ((0.0, 0.0), (10.0, 0.0), (10.0, 30.0), (30.0, 30.0), (30.0, 0.0), (40.0, 0.0),
             (40.0, 40.0), (0.0, 40.0))  # fmt: skip
    level = [tube.length for tube in tubes(notch, weave(0, 90, centre=(20.0, 10.0)), RISING)]
    assert level == [20] * 6 + [50, 50]  # three rows of two legs, then two right through
    wide_margin = tubes(notch, weave(0, 90, margin=10.0, centre=(20.0, 10.0)), RISING)
    assert [tube.length for tube in wide_margin] == [60] * 5
    assert [len(tube.shapes) for tube in wide_margin] == [2, 2, 2, 1, 1]


def test_over_and_under_come_by_turns_along_every_tube():
    found = crossings(SQUARE, weave(35, 60, gap=2.0))
    over = {(each.rising, each.falling): each.rising_is_over for each in found}
    assert over[0, 0] and len(found) > 20
    for (rising, falling), up in over.items():
        assert over.get((rising + 1, falling), not up) != up
        assert over.get((rising, falling + 1), not up) != up


@pytest.mark.parametrize(("rising", "falling"), [(45, 45), (60, 60), (30, 70), (0, 90), (20, 12)])
def test_crossings_repeat_every_pitch_over_the_sine(rising, falling):
    """(v + g) / sin 2a where both angles are a; the sine of both together where they differ."""
    woven = weave(rising, falling, width=3.0, gap=5.0)
    (x1, y1), (x2, y2) = crossing_point(woven, 2, 1), crossing_point(woven, 2, 2)
    every = 8 / sin(turn_to_radians(rising + falling))
    assert hypot(x2 - x1, y2 - y1) == pytest.approx(every, abs=1e-8)


def test_the_pieces_inside_never_lie_outside_and_cover_their_band():
    random = Random(5)
    for _ in range(60):
        points = outline(random)
        shape = Shape(points)
        if not shape.is_valid:
            continue
        for tube in both(points, weave(50, 35, centre=(100.0, 80.0))):
            for piece in tube.shapes:
                part = Shape(piece)
                assert part.difference(shape.buffer(1e-6)).area < 1e-5
                assert part.area == pytest.approx(area(piece), abs=1e-6)


def near(point):
    """An order that a difference in the last digits does not upset."""
    return round(point[0], 4), point[1]


def test_a_thousand_random_outlines_give_shapely_s_lengths_and_crossings():
    random = Random(41)
    compared = hollow = merged = 0
    while compared < 1000:
        points = outline(random)
        shape = Shape(points)
        if not shape.is_valid or shape.area < 100:
            continue
        rising, falling = random.choice([(45, 45), (60, 60), (30, 75), (25, 40), (72, 51)])
        width, gap = random.uniform(4, 12), random.uniform(5, 20)
        margin = random.uniform(1, 15)
        centre = tuple(
            (low + high) / 2 for low, high in zip(shape.bounds[:2], shape.bounds[2:], strict=True)
        )
        spaced = {"width": width, "gap": gap, "margin": margin}
        woven = weave(rising, falling, **spaced, centre=centre)
        mine = both(points, woven)
        theirs = lattice_by_shapely(points, centre, (rising, falling), **spaced)
        assert len(mine) == len(theirs.lengths)
        assert sum(tube.length for tube in mine) == pytest.approx(theirs.total, abs=1e-6)
        places = [each.at for each in crossings(points, woven)]
        assert len(places) == len(theirs.crossings)
        matched = zip(sorted(places, key=near), sorted(theirs.crossings, key=near), strict=True)
        for (x, y), (other_x, other_y) in matched:
            assert hypot(x - other_x, y - other_y) < 1e-6
        compared += 1
        hollow += len({(t.set_name, t.number) for t in mine}) < len(mine)
        merged += any(len(tube.shapes) > 1 for tube in mine)
    assert hollow > 200 and merged > 100, "the outlines must be hollow enough to matter"
