"""Bib: worked example, then its outline walked and measured all round, 1,000 random times."""

from fractions import Fraction
from itertools import pairwise
from math import dist, hypot, pi
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Point as ShapelyPoint
from shapely.geometry import Polygon

from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.refusals import RefusalError, RefusalsError
from handout_engine.bodies.measures import LENGTHS
from handout_engine.families.nursery.bib_outlines import STEPS
from worked import length, refusal, said, steps, work


def test_from_neck_and_chest_by_hand():
    # N 200 mm + 80: radius 280 / 2 pi = 44.563; width 0.45 x 440 = 198, drop 0.4 x 440 = 176
    working = work("bib", neck="20 cm", chest="44 cm")
    assert float(length(working, "neck_radius")) == pytest.approx(280 / (2 * pi))
    assert length(working, "bib_width") == millimetres(198)
    assert length(working, "bib_drop") == millimetres(176)
    # ends 15 mm apart, so the edge is about 280 - 15, and closed 20 less
    assert float(length(working, "closed_neck")) == pytest.approx(245, abs=0.1)
    assert float(length(working, "cut_height")) == pytest.approx(44.56 + 176 + 74.56, abs=0.5)


@pytest.mark.parametrize(("size", "circle"), [(50, 245), (74, 295), (98, 322)])
def test_left_out_neck_and_chest_are_those_of_the_size(size, circle):
    """Neck of the body table and 8 cm; width and drop 0.45 and 0.40 of its chest."""
    working = work("bib", size=str(size))
    assert length(working, "neck_circle").mm == circle
    chest = working.inputs["chest"].length
    assert length(working, "bib_width") == chest * Fraction(45, 100)
    assert length(working, "bib_drop") == chest * Fraction(2, 5)


@given(st.sampled_from(list(LENGTHS)))
def test_at_every_size_it_goes_round_the_neck_with_room(size):
    working = work("bib", size=size)
    assert 35 <= length(working, "neck_room").mm <= 60


def test_a_turned_bib_carries_its_seam_and_the_middle_of_neck_and_edge():
    turned, bound = work("bib", edge="turned"), work("bib")
    front = turned.pieces[0]
    seam, cut = Polygon(front.seam_outline), Polygon(front.outline)
    assert cut.contains(seam)
    assert cut.boundary.distance(seam) == pytest.approx(6.35, abs=0.05)  # chords of the neck
    drop = float(length(turned, "bib_drop"))
    assert dist(*front.notches) == pytest.approx(drop)
    assert all(seam.boundary.distance(ShapelyPoint(each)) < 1e-6 for each in front.notches)
    assert bound.pieces[0].seam_outline == bound.pieces[0].notches == ()


def test_a_width_of_its_own_needs_no_share():
    working = work("bib", width="9 in", drop="8 in")
    assert (said(working, "bib_width"), said(working, "bib_drop")) == ("9 in", "8 in")


def test_only_a_turned_bib_has_an_allowance():
    bound, turned = work("bib"), work("bib", edge="turned")
    for name in ("cut_width", "cut_height"):
        more = length(turned, name) - length(bound, name)
        assert float(more) == pytest.approx(12.7, abs=0.5)
    assert any("Bind the edge" in step for step in steps(bound))
    assert not any("Bind" in step for step in steps(turned))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"width": "5 in"}, "the front, 5 in (12.7 cm), would be no wider than the neck with its "
                            "straps; use a width of more than 5 15/16 in (15.1 cm), or narrower "
                            "straps"),
        ({"corner": "12 cm"}, "corner 4 23/32 in rounds more than the front allows; use at most "
                              "3 15/16 in (10 cm)"),
        ({"edge": "turned", "gap": "1 cm"}, "gap 13/32 in leaves no room for the allowances of "
                                            "both ends; use at least 1/2 in (13 mm), or bind the "
                                            "edge"),
        ({"gap": "6 cm"}, "gap 2 3/8 in opens more of the neck than a strap can bridge; use at "
                          "most 1 3/4 in (45 mm)"),
    ],
)  # fmt: skip
def test_what_cannot_be_drawn_is_refused(written, sentence):
    baby = {"neck": "8 in", "chest": "17 1/2 in"}
    assert refusal("bib", **baby, **written) == sentence


def test_a_bib_that_would_choke_is_refused_with_the_ease_it_needs():
    said_no = refusal("bib", neck="20 cm", neck_ease="2 cm")
    assert said_no.startswith("closed, the neck would measure 7 9/32 in (18.5 cm), not more than")
    needed = work("bib", neck="20 cm", neck_ease="3.6 cm")
    assert length(needed, "neck_room") > Length(Fraction(0))


def outline(working, name="front"):
    """The piece's outline with the bib's height down again."""
    piece = next(each for each in working.pieces if each.name == name)
    return [(x, y) for y, x in piece.outline]


def beside(point, start, end):
    """The distance of a point from a side."""
    (x, y), (x1, y1), (x2, y2) = point, start, end
    dx, dy = x2 - x1, y2 - y1
    squared = dx * dx + dy * dy
    share = max(0.0, min(1.0, ((x - x1) * dx + (y - y1) * dy) / squared)) if squared else 0.0
    return hypot(x - x1 - share * dx, y - y1 - share * dy)


def test_walked_round_the_outline_is_what_the_page_says():
    """The neck edge walked, the front and drop measured, both halves alike."""
    random = Random(23)
    worked = 0
    for _ in range(1000):
        written = {
            "neck": millimetres(random.randint(160, 300)),
            "chest": millimetres(random.randint(380, 650)),
            "neck_ease": millimetres(random.randint(50, 120)),
            "strap": millimetres(random.randint(10, 60)),
            "corner": millimetres(random.randint(0, 90)),
            "gap": millimetres(random.randint(0, 30)),
        }
        try:
            working = work("bib", **written)
        except (RefusalError, RefusalsError):
            continue
        worked += 1
        points = outline(working)
        right = points[: STEPS + 1]
        walked = 2 * sum(dist(*pair) for pair in pairwise(right))
        assert walked == pytest.approx(float(length(working, "neck_edge")), rel=2e-3)
        xs, ys = zip(*points, strict=True)
        middle = (min(xs) + max(xs)) / 2
        assert max(xs) - min(xs) == pytest.approx(float(length(working, "bib_width")))
        assert max(ys) - points[0][1] == pytest.approx(float(length(working, "bib_drop")))
        assert points[0][0] == pytest.approx(middle)
        ends = [x for x, y in right[-1:]]
        assert 2 * (ends[0] - middle) == pytest.approx(float(written["gap"]), abs=1e-6)
        whole = sum(dist(*pair) for pair in pairwise([*points, points[0]]))
        assert whole == pytest.approx(float(length(working, "edge_length")))
        mirrored = {(round(2 * middle - x, 3), round(y, 3)) for x, y in points}
        assert {(round(x, 3), round(y, 3)) for x, y in points} == mirrored
    assert worked > 500


def test_the_cutting_line_runs_one_allowance_outside_the_seam_everywhere():
    random = Random(7)
    worked = 0
    for _ in range(40):
        written = {
            "neck": millimetres(random.randint(180, 260)),
            "chest": millimetres(random.randint(420, 650)),
            "strap": millimetres(random.randint(15, 40)),
            "gap": millimetres(random.randint(13, 30)),
            "edge": "turned",
        }
        try:
            turned, seam = work("bib", **written), work("bib", **(written | {"edge": "bound"}))
        except RefusalError:
            continue
        worked += 1
        cut, sewn = outline(turned), outline(seam)
        # both are shifted to the corner of their box: lay neck on neck
        across, down = cut[0][0] - sewn[0][0], cut[0][1] + 6.35 - sewn[0][1]
        sides = list(pairwise([*sewn, sewn[0]]))
        for x, y in cut:
            away = min(beside((x - across, y - down), *side) for side in sides)
            # 6.35 along lines and curves; a little more in the mitred corners of the ends
            assert 6.3 < away < 6.35 * 1.7
    assert worked > 20


@given(st.integers(4, 12))
def test_more_chest_makes_a_larger_bib_with_the_same_neck(quarters):
    small = work("bib", chest=inches(16))
    large = work("bib", chest=inches(16) + inches(Fraction(quarters, 4)))
    assert length(large, "bib_width") > length(small, "bib_width")
    assert length(large, "edge_length") > length(small, "edge_length")
    assert length(large, "neck_edge") == length(small, "neck_edge")
