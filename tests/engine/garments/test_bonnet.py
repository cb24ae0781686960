"""Bonnet: worked example, then both seams walked on the pieces that are cut, 1,000 random times."""

from fractions import Fraction
from itertools import pairwise
from math import dist, pi
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Point as ShapelyPoint
from shapely.geometry import Polygon

from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.bodies.measures import LENGTHS
from handout_engine.families.nursery.bonnet_outlines import circle, horseshoe
from worked import length, refusal, said, steps, work


def test_from_a_head_of_40_cm_by_hand():
    # front 0.85 x 40 = 34 cm, depth 0.34 x 40 = 13.6 cm, circle 2.5 + 40 / 14
    # = 5.357 cm; neck edge 27.2
    working = work("bonnet", head="40 cm", neck="20 cm", hem_depth="5 mm", seam_allowance="6 mm")
    assert length(working, "front_edge") == millimetres(340)
    assert length(working, "depth_line") == millimetres(136)
    assert length(working, "back_width").mm == 25 + Fraction(400, 14)
    assert length(working, "ungathered_neck") == millimetres(272)
    assert length(working, "neck_edge") == millimetres(240)
    # 136 + two turns of 5 + 6 of back seam
    assert length(working, "crown_depth") == millimetres(152)
    assert length(working, "crown_length") == millimetres(340)
    assert float(working.values["back_gathers"].amount) == pytest.approx(340 / (53.5714 * pi))


def test_a_horseshoe_joins_by_its_arc_alone_and_gives_its_nape_to_the_neck():
    # nape 10 cm, arc 34: half circle 15.708, so sides (34 - 15.708) / 2 = 9.146, height 14.146
    working = work("bonnet", head="40 cm", neck="20 cm", back="horseshoe", nape="10 cm")
    assert float(length(working, "back_height")) == pytest.approx(141.46, abs=0.01)
    assert length(working, "back_seam") == millimetres(340)
    assert length(working, "ungathered_neck") == millimetres(272 + 100)
    assert any("flat nape is not sewn" in step for step in steps(working))


@pytest.mark.parametrize(("size", "front", "deep"), [(50, 30, 12), (74, 39, 15.5), (98, 42, 17)])
def test_the_sizes_give_the_figures_to_expect(size, front, deep):
    """Front and depth in cm at three sizes: common knowledge, no source."""
    working = work("bonnet", size=str(size))
    assert float(length(working, "front_edge")) / 10 == pytest.approx(front, abs=0.5)
    assert float(length(working, "depth_line")) / 10 == pytest.approx(deep, abs=0.25)


@given(st.sampled_from(list(LENGTHS)), st.sampled_from(["drawn up to a circle", "horseshoe"]))
def test_at_every_size_the_circle_is_small_and_the_neck_is_gathered(size, back):
    working = work("bonnet", size=size, back=back)
    if back != "horseshoe":
        assert 50 <= float(length(working, "back_width")) <= 61
    assert length(working, "ungathered_neck") >= length(working, "neck_edge")
    neck = working.inputs["neck"].length
    assert length(working, "neck_edge") == neck + millimetres(40)


def test_an_edging_takes_its_width_off_the_cloth_and_off_the_neck_edge():
    # 16 cm deep with 2 cm of edging: 14 of cloth, so 28 round the neck; cut 140 + 12.7 + 6.35
    working = work("bonnet", depth="16 cm", front_trim="2 cm")
    assert length(working, "depth_line") == millimetres(160)
    assert length(working, "cloth_depth") == millimetres(140)
    assert length(working, "ungathered_neck") == millimetres(280)
    assert float(length(working, "crown_depth")) == pytest.approx(159.05)


def laid(working):
    return {each.item.name for layout in working.layouts for each in layout.laid}


def test_a_straight_piece_that_is_made_up_first_is_not_bought_as_cloth():
    plain, made_up = work("bonnet"), work("bonnet", crown="worked")
    assert [each.worked for each in plain.pieces] == [False] * 4
    assert [each.worked for each in made_up.pieces] == [True, False, False, False]
    assert "straight piece" in laid(plain)
    assert "straight piece" not in laid(made_up)
    assert "Make up the cloth" in " ".join(steps(made_up))
    assert "Make up the cloth" not in " ".join(steps(plain))


@pytest.mark.parametrize(("back", "notches"), [("drawn up to a circle", 4), ("horseshoe", 1)])
def test_the_back_carries_its_seam_line_and_what_must_meet(back, notches):
    working = work("bonnet", back=back)
    piece = next(each for each in working.pieces if each.name == "back")
    seam = Polygon(piece.seam_outline)
    assert Polygon(piece.outline).buffer(1e-3).contains(seam)
    wide, high = (float(length(working, f"back_{size}")) for size in ("width", "height"))
    assert seam.bounds == pytest.approx((6.35, 6.35, 6.35 + wide, 6.35 + high))
    assert len(piece.notches) == notches
    assert all(seam.boundary.distance(ShapelyPoint(each)) < 0.05 for each in piece.notches)


def test_a_front_edge_that_is_finished_is_not_hemmed():
    finished, hemmed = (" ".join(steps(work("bonnet", hem=hem))) for hem in ("finished", "double"))
    assert "The front edge is finished already." in finished
    assert "Along one long side" not in finished
    assert "Along one long side, the front edge: turn up" in hemmed


def test_a_plain_rectangle_may_be_given():
    working = work("bonnet", front="14 in", depth="6 in")
    assert (said(working, "front_edge"), said(working, "depth_line")) == ("14 in", "6 in")
    assert said(working, "crown_depth") == "6 3/4 in"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"circle": "8 in", "front": "14 in"},
         "the circle is 25 1/8 in (63.8 cm) round, longer than the edge of 14 in (35.6 cm) that "
         "is gathered to it; use a circle of at most 4 7/16 in (11.3 cm) across"),
        ({"back": "horseshoe", "nape": "10 in", "front": "14 in"},
         "a horseshoe 10 in (25.4 cm) wide has a half circle of 15 23/32 in (39.9 cm), longer than "
         "the whole back seam, 14 in (35.6 cm); use a nape of at most 8 29/32 in (22.6 cm), or "
         "less fullness"),
        ({"depth": "3 in", "neck": "8 in", "neck_ease": "1 in"},
         "the neck edge is only 6 in (15.2 cm) and cannot be gathered to 9 in (22.9 cm); make the "
         "depth at least 4 1/2 in (11.5 cm), or the neck ease smaller"),
        ({"depth": "10 cm", "front_trim": "8 cm"},
         "front_trim 3 5/32 in leaves less than 1 3/16 in (30 mm) of cloth behind it; use at most "
         "2 3/4 in (70 mm), or make the depth more"),
    ],
)  # fmt: skip
def test_what_cannot_be_sewn_is_refused(written, sentence):
    assert refusal("bonnet", **written) == sentence


def walked(points) -> float:
    return sum(dist(*pair) for pair in pairwise(points))


def test_walked_on_the_pieces_the_seams_are_as_long_as_the_edges_that_join_them():
    """The finished back is walked round its seam, and taken off the neck edge where it is bound."""
    random = Random(31)
    worked = 0
    for _ in range(1000):
        round_back = random.random() < 0.5
        fullness = Fraction(random.randint(20, 40), 20)
        written = {
            "back": "drawn up to a circle" if round_back else "horseshoe",
            "head": millimetres(random.randint(320, 560)),
            "neck": millimetres(random.randint(150, 260)),
            "nape": millimetres(random.randint(50, 160)),
            "circle": millimetres(random.randint(30, 90)),
            "back_fullness": fullness,
            "neck_ease": millimetres(random.randint(0, 50)),
        }
        try:
            working = work("bonnet", **written)
        except RefusalError:
            continue
        worked += 1
        front = float(length(working, "front_edge"))
        wide, high = (float(length(working, f"back_{size}")) for size in ("width", "height"))
        if round_back:
            ring = circle(wide)
            seam, full, nape = walked([*ring, ring[0]]), front / (pi * wide), 0.0
        else:
            arc = horseshoe(wide, high)
            seam, full, nape = walked(arc), float(fullness), dist(arc[0], arc[-1])
        assert seam == pytest.approx(float(length(working, "back_seam")), rel=1e-3)
        assert seam * full == pytest.approx(front, rel=1e-3)
        edge = 2 * float(length(working, "depth_line")) + nape
        assert edge == pytest.approx(float(length(working, "ungathered_neck")))
        assert edge >= float(length(working, "neck_edge")) - 1e-6
        piece = next(each for each in working.pieces if each.name == "back")
        assert max(x for x, _ in piece.outline) == pytest.approx(float(piece.length.length))
        assert max(y for _, y in piece.outline) == pytest.approx(float(piece.width.length))
    assert worked > 400


@given(st.integers(0, 24))
def test_a_larger_head_makes_every_part_larger(eighths):
    small = work("bonnet", head=inches(16))
    large = work("bonnet", head=inches(16) + inches(Fraction(eighths + 1, 8)))
    for name in ("front_edge", "depth_line", "back_width", "ungathered_neck"):
        assert length(large, name) > length(small, name)


@given(st.integers(20, 50))
def test_the_horseshoe_is_lower_the_more_is_gathered_to_it(twentieths):
    flat = work("bonnet", back="horseshoe", nape="2 in")
    gathered = work("bonnet", back="horseshoe", nape="2 in",
                    back_fullness=Fraction(twentieths, 20))  # fmt: skip
    lower = length(flat, "back_height") - length(gathered, "back_height")
    saved = length(flat, "back_seam") - length(gathered, "back_seam")
    assert lower == saved / 2 >= Length(Fraction(0))
