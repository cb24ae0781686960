"""Slip: worked example by hand, then its seams, openings and outlines over many babies."""

from itertools import pairwise
from math import dist, hypot

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.affinity import scale
from shapely.geometry import Polygon
from shapely.ops import unary_union

from handout_engine.amounts.lengths import millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.families.garments.slip import Slip
from measured_babies import SIZES, area, babies, check_outlines
from worked import length, refusal, steps, work

BABY = {
    "size": "62", "neck": "20 cm", "chest": "40 cm", "shoulder_breadth": "20 cm", "head": "42 cm",
    "back_waist": "18 cm",
}  # fmt: skip
TRIM = {"hem_trim": "6 cm"}


def test_for_a_baby_of_62_cm_by_hand():
    # chest 40 + 6 2/3, since the ease falls from 8 at 50 to 6 at 68; a quarter is 11 2/3; neck
    # 20 + 3 = 23; shoulder ends 0.45 x 20 = 9 from the centre; armhole 40 / 4 + 0.5 = 10.5 deep;
    # 18 + 0.3 x 62 - 2 = 34.6 long; the head needs 42 + 2 = 44 round, so (44 - 23) / 2 = 10.5 of
    # opening
    working = work("slip", **BABY)
    found = [length(working, name).mm / 10 for name in (
        "finished_chest", "quarter_chest", "neck_edge", "shoulder_end", "armhole_depth",
        "finished_length", "opened_neck",
    )]  # fmt: skip
    assert found == pytest.approx([46 + 2 / 3, 11 + 2 / 3, 23, 9, 10.5, 34.6, 44])
    assert working.inputs["opening"].length == millimetres(105)


def test_the_side_and_the_hem_by_hand():
    # The side drops 346 - 105 = 241 and leans by atan(50 / 241) = 11.72°, so it ends at
    # 116.7 + 241 sin = 165.6 and 105 + 241 cos = 341.0; from there to the centre the hem is at
    # least sqrt(165.6² + 5.0²) = 165.7, and at most 0.5 longer by its bend: 663 to 665 round.
    working = work("slip", **BABY)
    assert 662.5 <= float(length(working, "hem_edge")) <= 665
    lean = hypot(50, 241)
    ends = (350 / 3 + 241 * 50 / lean, 105 + 241 * 241 / lean)
    assert any(dist(corner, ends) < 0.01 for corner in sewn(working, "slip front"))


def sewn(working, name):
    """The seam outline of a piece with the neck point at y = 0, the centre at x = 0."""
    piece = next(each for each in working.pieces if each.name == name)
    points = [(x, y) for y, x in piece.seam_outline]
    left, top = min(x for x, _ in points), min(y for _, y in points)
    return [(x - left, y - top) for x, y in points]


@pytest.mark.parametrize(
    ("size", "neck", "shoulder", "armhole", "chest"),
    [("50", 19.5, 4, 9, 42), ("74", 24.5, 5.5, 12, 51), ("98", 27, 7, 13.5, 58)],
)
def test_the_figures_to_expect(size, neck, shoulder, armhole, chest):
    """In cm; common knowledge, no source. A slip's chest is 2 to 3 less than a dress's, and its
    armhole, without a sleeve, 1 less deep."""
    working = work("slip", size=size)
    found = {name: float(length(working, name)) / 10 for name in (
        "neck_edge", "shoulder_seam", "armhole_depth", "finished_chest")}  # fmt: skip
    assert found["neck_edge"] == pytest.approx(neck, abs=0.5)
    assert found["shoulder_seam"] == pytest.approx(shoulder, abs=0.7)
    assert found["armhole_depth"] == pytest.approx(armhole, abs=0.5)
    assert found["finished_chest"] == pytest.approx(chest, abs=0.5)


@given(babies(Slip))
def test_head_and_chest_have_room_and_the_seams_match(baby):
    try:
        working = work("slip", **baby)
    except RefusalError:
        return
    check_outlines(working)
    given = working.inputs
    assert length(working, "opened_neck") >= given["head"].length + given["head_room"].length
    assert length(working, "finished_chest") > given["chest"].length
    front, back = (sewn(working, name) for name in ("slip front", "slip back"))
    half = float(length(working, "quarter_chest"))
    deep = float(length(working, "armhole_depth"))
    for points in (front, back):
        # the corners by their place: end of the shoulder, underarm, lower end of the side
        assert min(dist(each, (half, deep)) for each in points) < 0.01
    # all that lies below the neck is alike in front and back, so shoulders and sides match
    assert front[40:] == [pytest.approx(each, abs=1e-6) for each in back[40:]]
    neck = sum(dist(*pair) for points in (front, back) for pair in pairwise(points[:41]))
    assert 2 * neck == pytest.approx(float(length(working, "neck_edge")), abs=0.5)


@given(babies(Slip), st.sampled_from([4, 6, 10]))
def test_the_cut_line_is_the_offset_that_another_library_draws(baby, allowance):
    """With one allowance all round, the whole piece unfolded is its seam line grown by it."""
    try:
        working = work("slip", **baby, seam_allowance=millimetres(allowance),
                       hem=millimetres(allowance))  # fmt: skip
    except RefusalError:
        return
    for piece in (each for each in working.pieces if each.outline):
        cut, seam = (unfolded(each) for each in (piece.outline, piece.seam_outline))
        grown = seam.buffer(allowance, join_style="mitre", mitre_limit=3)
        assert grown.symmetric_difference(cut).area < 0.004 * cut.area


def unfolded(points):
    half = Polygon([(x, y) for y, x in points])
    return unary_union([half, scale(half, xfact=-1, origin=(0, 0))])


@pytest.mark.parametrize(
    "name", ["neck_edge", "armhole_edge", "hem_edge", "shoulder_seam", "finished_length"]
)
def test_it_grows_with_the_size(name):
    found = [length(work("slip", size=size), name) for size in SIZES]
    assert found == sorted(found)
    assert len(set(found)) == len(found)


def test_its_pieces_grow_with_the_size():
    areas = [[area(piece) for piece in work("slip", size=size).pieces] for size in SIZES]
    assert areas == sorted(areas)


def test_a_trim_shortens_the_cloth_and_leaves_the_slip_as_long():
    plain, trimmed = (work("slip", **BABY, hem="1/4 in", **trim) for trim in ({}, TRIM))
    assert length(plain, "finished_length") == length(trimmed, "finished_length")
    assert length(trimmed, "cloth_length").mm == length(plain, "cloth_length").mm - 60
    less = length(plain, "slip_front_length") - length(trimmed, "slip_front_length")
    assert float(less) == pytest.approx(60, abs=0.5)
    assert length(trimmed, "hem_edge") < length(plain, "hem_edge") + millimetres(5)
    assert any("Turn the hem up" in step for step in steps(plain))
    assert not any("Turn the hem up" in step for step in steps(trimmed))


def test_a_front_that_is_made_up_first_is_not_bought_as_cloth():
    plain, made_up = work("slip"), work("slip", front="worked")
    assert [each.name for each in made_up.pieces if each.worked] == ["slip front"]
    assert length(made_up, "cloth_to_buy") <= length(plain, "cloth_to_buy")
    assert {each.item.name for each in made_up.layouts[0].laid} == {
        "slip back",
        "slit facing",
    }
    made = [number for number, step in enumerate(steps(made_up)) if "Make up the cloth" in step]
    cut = [number for number, step in enumerate(steps(made_up)) if "Cut front and back" in step]
    assert [number + 1 for number in made] == cut
    assert not any("Make up the cloth" in step for step in steps(plain))


def test_trimmed_armholes_are_not_bound():
    bound, trimmed = work("slip"), work("slip", armholes="trimmed")
    assert any("neck and both armholes" in step for step in steps(bound))
    assert any("Sew their trim to both armholes" in step for step in steps(trimmed))
    assert not any("neck and both armholes" in step for step in steps(trimmed))


@pytest.mark.parametrize(("share", "trips"), [("0.3", False), ("1.05", True)])
def test_a_hem_below_the_foot_is_cautioned(share, trips):
    keys = {each.key for each in work("slip", knee_share=share).cautions}
    assert ("long-hem" in keys) == trips


def test_the_hem_hangs_level_all_round():
    """From the neck point over the underarm the side is as long as the centre from its level."""
    working = work("slip", **BABY)
    points = sewn(working, "slip front")
    low = max(y for _, y in points)
    end = max(points)
    underarm = (350 / 3, 105.0)
    assert dist(underarm, end) == pytest.approx(low - 105, abs=0.01)


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"opening": "5 cm"},
         "the head, 16 17/32 in (42 cm), with 25/32 in (20 mm) of room does not pass a neck that "
         "opens to 13 in (33 cm); give opening at least 4 5/32 in (10.5 cm), or neck_ease more"),
        ({"reach": "20 cm", "hem_trim": "10 cm"},
         "the cloth would end less than 1 3/16 in (30 mm) below the arms; use a reach of at "
         "least 9 9/32 in (23.5 cm), or a narrower trim or a longer slip"),
    ],
)  # fmt: skip
def test_what_cannot_be_worn_is_refused(written, sentence):
    assert refusal("slip", **BABY, **written) == sentence
