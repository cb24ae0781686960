"""Flat collar: worked example, then its neck walked against the garment's, over many babies."""

from fractions import Fraction
from itertools import pairwise
from math import atan2, cos, dist, hypot, pi, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon
from shapely.geometry import Point as ShapelyPoint

from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.collars import JoinedNeck, collar_draft
from handout_engine.drafting.curves import run
from handout_engine.families.garments.collar import Collar
from handout_engine.working.technique import make
from measured_babies import SIZES, babies, check_outlines
from worked import length, refusal, steps, work

FORMS = ("two pieces", "one piece")
BLOCK = BodyBlock(115.0, 42.0, 45.0, 10.0, (90.0, 16.0), 115.0)
"""A block of about size 68, with round figures; its shoulder is 50.6 long."""


def test_the_overlap_turns_the_back_by_hand():
    # Shoulder from (42, 0) to (90, 16): long sqrt(48² + 16²) = 50.596, slope 18.435°. Laid shoulder
    # to shoulder the back is turned by 36.87°; a chord of 8 takes 2 asin(4 / 50.596) = 9.069° more.
    # The centre back neck, 42 left of the neck point and 10 above it once it is turned over, comes
    # by 45.939° to (42 - 42 cos + 10 sin, -42 sin - 10 cos) = (19.978, -37.135).
    neck = JoinedNeck(BLOCK, 8.0)
    ((x, y),) = neck.laid_back([(0.0, 10.0)])
    assert (x, y) == pytest.approx((19.978, -37.135), abs=2e-3)
    ((x, y),) = neck.laid_back([(90.0, 16.0)])
    assert dist((x, y), (90.0, 16.0)) == pytest.approx(8)
    assert neck.laid_back([(42.0, 0.0)]) == ((42.0, 0.0),)


def test_without_overlap_the_shoulders_lie_on_each_other_and_the_curve_hardly_moves():
    neck = JoinedNeck(BLOCK, 0.0)
    ((x, y),) = neck.laid_back([(90.0, 16.0)])
    assert (x, y) == pytest.approx((90, 16))
    drawn = LineString([*BLOCK.front_neckline, *reversed(neck.laid_back(BLOCK.back_neckline))])
    assert LineString(neck.curve).hausdorff_distance(drawn) < 1.5


def test_figures_of_size_98_by_hand():
    # N 24.2 + 3 = 27.2 cm of neck; usual depth 5 cm; rounding 3/4 of it 3.75 cm
    working = work("collar", size="98")
    assert length(working, "neck_edge") == millimetres(272)
    assert float(length(working, "collar_neck")) == pytest.approx(272, abs=0.5)
    assert length(working, "collar_depth") == millimetres(50)
    assert length(working, "corner_rounding") == millimetres("37.5")


@pytest.mark.parametrize(("size", "neck"), [("50", 19.5), ("74", 24.5), ("98", 27)])
def test_the_neckline_is_the_one_to_expect(size, neck):
    """In cm; common knowledge, no source."""
    assert float(length(work("collar", size=size), "collar_neck")) / 10 == pytest.approx(
        neck, abs=1
    )


@given(babies(Collar), st.sampled_from(FORMS), st.integers(5, 10))
def test_its_neck_is_as_long_as_that_of_a_slip_for_the_same_baby(baby, form, overlap):
    """The seam lines of the pieces walked: half a millimetre is allowed, and not used."""
    try:
        working = work("collar", **baby, form=form, overlap=millimetres(overlap))
    except RefusalError:
        return
    slip = work("slip", **baby)
    neckline = 2 * sum(neck_of(slip, name) for name in ("slip front", "slip back"))
    assert neckline == pytest.approx(float(length(slip, "neck_edge")), abs=0.5)
    for name in ("upper collar", "under collar"):
        assert 2 * neck_of(working, name) == pytest.approx(neckline, abs=0.5)
    assert float(length(working, "collar_neck")) == pytest.approx(neckline, abs=0.5)


def neck_of(working, name):
    """The length of a piece's neck edge, with which its seam outline begins, up to a corner."""
    piece = next(each for each in working.pieces if each.name == name)
    points = [(x, y) for y, x in piece.seam_outline]
    walked = dist(*points[:2])
    for before, corner, after in zip(points, points[1:], points[2:], strict=False):
        turn = atan2(after[1] - corner[1], after[0] - corner[0]) - atan2(
            corner[1] - before[1], corner[0] - before[0]
        )
        if abs(cos(turn)) < cos(pi / 6) or cos(turn) < 0:
            return walked
        walked += dist(corner, after)
    raise AssertionError("no corner")


@given(babies(Collar), st.sampled_from(FORMS), st.sampled_from(["rounded", "square"]))
def test_no_outline_crosses_itself_and_the_border_is_even(baby, form, corners):
    try:
        working = work("collar", **baby, form=form, corners=corners)
    except RefusalError:
        return
    check_outlines(working)
    depth = float(length(working, "collar_depth"))
    piece = working.pieces[0]
    seam = Polygon(piece.seam_outline)
    assert depth <= 0.8 * float(length(working, "shoulder_seam")) + 1e-6
    assert piece.on_fold == (form == "one piece")
    assert piece.count == (1 if form == "one piece" else 2)
    assert all(seam.boundary.distance(ShapelyPoint(each)) < 1e-6 for each in piece.notches)


@given(st.floats(20, 45), st.floats(0, 12), st.floats(10, 45))
def test_the_outer_edge_is_the_parallel_that_another_library_draws(half, overlap, depth):
    block = BodyBlock(150.0, half, half + 3, 10.0, (half + 55.0, 17.0), 115.0)
    neck = JoinedNeck(block, overlap)
    curve, border = neck.curve, LineString(neck.border(depth))
    parallel = LineString(curve).parallel_offset(depth, "left", resolution=64, join_style=1)
    if dist(parallel.coords[0], border.coords[0]) > dist(parallel.coords[-1], border.coords[0]):
        parallel = LineString(list(parallel.coords)[::-1])
    # at its ends the other library follows the first chord, which leans by a degree or two
    assert border.hausdorff_distance(parallel) < 0.04 * depth
    assert border.is_simple
    assert run(curve) == pytest.approx(block.neckline / 2, abs=1e-6)


@given(st.floats(20, 45), st.floats(0, 12), st.floats(10, 45))
def test_it_turns_smoothly_all_along(half, overlap, depth):
    """No corner of more than 12° in neck or border, between points a few mm apart."""
    block = BodyBlock(150.0, half, half + 3, 10.0, (half + 55.0, 17.0), 115.0)
    neck = JoinedNeck(block, overlap)
    for line in (neck.curve, neck.border(depth)):
        for before, corner, after in zip(line, line[1:], line[2:], strict=False):
            first = atan2(corner[1] - before[1], corner[0] - before[0])
            turn = atan2(after[1] - corner[1], after[0] - corner[0]) - first
            assert cos(turn) > cos(pi / 15)


def test_the_ends_stand_square_on_neck_and_border():
    neck = JoinedNeck(BLOCK, 8.0)
    across, down = neck.back_line
    assert hypot(across, down) == pytest.approx(1)
    draft = collar_draft("collar", neck, 30.0, rounding=0.0, seam=6.0, on_fold=False)
    start, end = draft.edge("back end").points
    assert dist(start, end) == pytest.approx(30)
    assert (end[0] - start[0], end[1] - start[1]) == pytest.approx((30 * across, 30 * down))
    front, low = reversed(draft.edge("front end").points)
    assert (front[0], low[0]) == (0, 0)
    assert low[1] - front[1] == pytest.approx(30)


def test_rounding_takes_off_the_ends_and_the_outer_edge():
    # 20 of 30 are rounded: 10 of each end are left straight
    neck = JoinedNeck(BLOCK, 8.0)
    square, rounded, full = (
        collar_draft("collar", neck, 30.0, rounding=each, seam=6.0, on_fold=False)
        for each in (0.0, 20.0, 30.0)
    )
    assert rounded.edge("front end").length == pytest.approx(10)
    assert rounded.edge("back end").length == pytest.approx(10)
    assert {each.name for each in full.edges} == {"neck", "outer edge"}
    areas = [Polygon(each.seam_outline).area for each in (square, rounded, full)]
    assert areas == sorted(areas, reverse=True)
    # a quarter circle of 20 in a square of 20 takes (1 - pi / 4) x 400 = 85.8 at each corner
    assert areas[0] - areas[1] == pytest.approx(2 * 85.8, rel=0.2)
    for each in (square, rounded, full):
        joined = [edge.points for edge in each.edges]
        for before, after in pairwise([*joined, joined[0]]):
            assert before[-1] == after[0]


def test_more_overlap_shortens_the_outer_edge_and_leaves_the_neck():
    edges = [length(work("collar", overlap=f"{each} mm"), "collar_edge") for each in (0, 5, 10, 15)]
    necks = {length(work("collar", overlap=f"{each} mm"), "neck_edge") for each in (0, 5, 10, 15)}
    assert edges == sorted(edges, reverse=True)
    assert len(set(edges)) == 4
    assert len(necks) == 1


def test_the_overlap_shortens_the_border_by_its_angle_times_the_depth():
    # The border of a curve is longer by depth x the angle it turns through; an overlap of 8 on a
    # shoulder of 50.596 turns it by 9.069° = 0.15829 less, so a depth of 30 loses 4.75 mm.
    borders = [run(JoinedNeck(BLOCK, overlap).border(30.0)) for overlap in (0.0, 8.0)]
    assert borders[0] - borders[1] == pytest.approx(4.75, abs=0.1)


def test_the_under_collar_is_smaller_by_what_is_eased_in():
    working = work("collar", size="74")
    assert length(working, "collar_ease") == length(working, "collar_edge") - length(
        working, "under_edge"
    )
    assert 0 < float(length(working, "collar_ease")) < 0.04 * float(length(working, "collar_edge"))
    even = work("collar", size="74", roll="0 mm")
    assert length(even, "collar_ease") == Length(Fraction(0))
    assert any("eased in" in step or "ease the upper one in" in step for step in steps(working))
    assert not any("ease the upper" in step for step in steps(even))


@pytest.mark.parametrize("name", ["neck_edge", "collar_neck", "collar_depth", "collar_edge"])
def test_it_grows_with_the_size(name):
    found = [length(work("collar", size=size), name) for size in SIZES]
    assert found == sorted(found)
    assert len(set(found)) == len(found)


def test_the_pieces_of_both_forms_have_one_edge_or_two():
    one, two = (work("collar", form=form) for form in ("one piece", "two pieces"))
    assert length(one, "piece_edge") == length(one, "collar_edge")
    assert length(two, "piece_edge") * 2 == length(two, "collar_edge")
    assert any("once each, whole, its fold line in the middle" in step for step in steps(one))
    assert any("a left one, and a right one" in step for step in steps(two))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"size": "62", "depth": "5 cm"},
         "depth 1 31/32 in (50 mm) covers more than 0.8 of the shoulder seam, 1 23/32 in (44 mm); "
         "use at most 1 3/8 in (34 mm), or more depth_share"),
        ({"size": "98", "rounding": "6 cm"},
         "rounding 2 3/8 in is more than the collar is deep; use at most 1 15/16 in (50 mm)"),
    ],
)  # fmt: skip
def test_what_cannot_be_sewn_is_refused(written, sentence):
    assert refusal("collar", **written) == sentence


def test_an_overlap_that_bends_the_neck_the_other_way_is_refused():
    said = refusal("collar", size="50", overlap="20 mm", shoulder_share="0.38")
    assert said.startswith("with 25/32 in (20 mm) of overlap on a shoulder seam of")
    assert said.endswith("no smooth neck edge can be drawn; give overlap less")


def test_a_page_draws_the_collar_to_the_garments_own_neck():
    """What its dress was given, the collar is given by reference; the size it takes by itself."""
    made = make(Collar, {"size": "74", "neck_ease": millimetres(50)})
    slip = work("slip", size="74", neck_ease="5 cm")
    assert made.work().values["neck_edge"].amount == slip.values["neck_edge"].amount
    assert Tape("metric").say(slip.values["neck_edge"].amount) == "26.5 cm"


def test_turned_by_trigonometry_the_back_lies_where_it_was_laid():
    """The same turn by angles instead of by sums of sines."""
    neck = JoinedNeck(BLOCK, 8.0)
    slope = atan2(16.0, 48.0)
    angle = 2 * slope + 2 * atan2(4.0, (hypot(48, 16) ** 2 - 16) ** 0.5)
    for (x, y), (px, py) in zip(
        BLOCK.back_neckline, neck.laid_back(BLOCK.back_neckline), strict=True
    ):
        dx, dy = x - 42.0, -y
        assert px == pytest.approx(42 + dx * cos(angle) - dy * sin(angle), abs=1e-6)
        assert py == pytest.approx(dx * sin(angle) + dy * cos(angle), abs=1e-6)


def test_an_upper_collar_worked_first_is_bought_with_its_work():
    collar = work("collar", form="one piece", upper="worked")
    assert [piece.name for piece in collar.pieces if piece.worked] == ["upper collar"]
    across = length(collar, "upper_collar_across")
    assert across == 2 * length(collar, "upper_collar_width")
    assert [item.item.name for item in collar.layouts[0].laid] == ["under collar"]


def test_the_collar_leaves_the_neck_of_its_garment_to_the_garment():
    """The garment may not be cut yet when its collar is made up."""
    (stayed,) = [step for step in steps(work("collar")) if step.startswith("Stay-stitch")]
    assert "garment" not in stayed
