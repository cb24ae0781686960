"""Baby jacket: worked example, then its outlines walked for measured babies."""

from fractions import Fraction
from itertools import pairwise
from math import dist, hypot, sqrt

import pytest
from hypothesis import given
from shapely import LineString, Point, Polygon

from handout_engine.amounts.lengths import millimetres
from handout_engine.drawing.scene import Grain, Note
from handout_engine.families.garments.baby_jacket import GARMENT
from measured_babies import (
    SIZES,
    area,
    babies,
    check_outlines,
    check_that_babies_near_the_table_get_one,
    made_for,
)
from worked import length, refusal, steps, work

PIECES = ("jacket front", "jacket back", "front facing", "back neck facing")


def walk(points):
    return sum(dist(*pair) for pair in pairwise(points))


def seam(working, name):
    """The line a piece is sewn on, x across and y down, from its first edge on."""
    piece = next(each for each in working.pieces if each.name == name)
    return [(across, down) for down, across in piece.seam_outline]


def test_size_62_by_hand():
    # chest 401 and an ease that falls from 140 at 50 to 120 at 68: 401 + 126 2/3; crown to rump
    # 421 × 0.65; wrist 91 + 60; neck 193 + 40; upper arm 129 + 80
    working = work("baby-jacket", size="62")
    assert length(working, "finished_chest") == millimetres(Fraction(1583, 3))
    assert length(working, "finished_length") == millimetres("273.65")
    assert length(working, "sleeve_edge") == millimetres(151)
    assert length(working, "neck_edge") == millimetres(233)
    assert length(working, "sleeve_girth") == millimetres(209)
    # button 10.16 / 2 + 6.35, twice
    assert length(working, "front_overlap") == millimetres("22.86")
    assert length(working, "neck_with_fronts") == millimetres("255.86")
    # shoulder 183 × 0.45 = 82.35, drop 8 + 4 × 120 / 480 = 9; the sleeve runs on for the arm, 208
    half = float(length(working, "neck_half_width"))
    along = 82.35 - half
    shoulder = hypot(along, 9)
    assert float(length(working, "over_arm")) == pytest.approx(shoulder + 208, abs=1e-6)
    # under the arm: the shoulder's fall to the side at 527 2/3 / 4, and half the girth square to it
    slope = 9 / along
    deep = (1583 / 12 - half) * slope + 104.5 * sqrt(1 + slope**2)
    assert float(length(working, "underarm_depth")) == pytest.approx(deep, abs=1e-6)
    front = 273.65 - (half + 3)
    assert float(length(working, "front_edge")) == pytest.approx(front, abs=1e-6)


@pytest.mark.parametrize("size", SIZES)
def test_the_chest_has_a_jackets_ease(size):
    # 12 to 14 cm: common knowledge, no source
    working = work("baby-jacket", size=size)
    ease = length(working, "finished_chest") - length(working, "chest")
    assert millimetres(120) <= ease <= millimetres(140)


def check_seams(working):
    """Front and back are one line over the arm and under it; the facing is as long as its edges."""
    front, back = seam(working, "jacket front"), seam(working, "jacket back")
    out = float(length(working, "beyond_centre"))
    top = [min(y for _, y in points) for points in (front, back)]
    centred = [
        {(round(x - left, 4), round(y - high, 4)) for x, y in points}
        for points, left, high in zip(
            (front, back), (min(x for x, _ in front) + out, min(x for x, _ in back)), top,
            strict=True,
        )
    ]  # fmt: skip
    tip = max(x for x, _ in centred[0])
    beyond_neck = float(length(working, "neck_half_width")) - 1e-3
    arms = [sorted(each for each in points if each[0] > beyond_neck) for points in centred]
    assert len(arms[0]) > 40
    assert arms[0] == arms[1]
    assert tip == max(x for x, _ in centred[1])
    for name, edge in (("jacket front", front), ("front facing", seam(working, "front facing"))):
        left = min(x for x, _ in edge)
        down = [y for x, y in edge if abs(x - left) < 1e-6]
        wanted = float(length(working, "front_edge"))
        assert max(down) - min(down) == pytest.approx(wanted, abs=0.5), name
    facing = 2 * neck(seam(working, "front facing"), working, out)
    facing += 2 * neck(seam(working, "back neck facing"), working, 0.0)
    assert facing == pytest.approx(float(length(working, "neck_with_fronts")), abs=0.5)


def neck(points, working, out):
    """The neck edge of a piece, from its first corner to the neck point."""
    left = min(x for x, _ in points)
    half = float(length(working, "neck_half_width")) + out
    end = next(n for n, (x, _) in enumerate(points) if abs(x - left - half) < 1e-3)
    return walk(points[: end + 1])


def check_sleeve(working):
    """The hand passes; the arm has its room, square to the sleeve; the curve joins smoothly."""
    assert length(working, "sleeve_edge") >= length(working, "wrist") + millimetres(40)
    points = seam(working, "jacket back")
    tip = max(points)
    end = points[points.index(tip) + 1]
    assert dist(tip, end) * 2 == pytest.approx(float(length(working, "sleeve_edge")), abs=1e-3)
    over = LineString([next(p for p in points if p[1] == min(y for _, y in points)), tip])
    corner = Point(
        float(length(working, "quarter_chest")) + min(x for x, _ in points),
        float(length(working, "underarm_depth")) + over.coords[0][1],
    )
    room = 2 * over.distance(corner)
    assert room >= float(length(working, "sleeve_girth")) - 1e-3
    under = points[points.index(end) :]
    for before, at, after in zip(under, under[1:41], under[2:42], strict=False):
        first = (at[0] - before[0], at[1] - before[1])
        then = (after[0] - at[0], after[1] - at[1])
        turn = (first[0] * then[0] + first[1] * then[1]) / hypot(*first) / hypot(*then)
        assert turn > 0.95


@pytest.mark.parametrize("size", SIZES)
def test_every_size_fits_together(size):
    working = work("baby-jacket", size=size)
    check_seams(working)
    check_sleeve(working)
    check_outlines(working)
    assert length(working, "front_overlap") >= length(working, "button") + millimetres("12.7")


@given(babies(GARMENT))
def test_a_measured_baby_gets_a_jacket_that_fits_together(baby):
    working = made_for("baby-jacket", baby)
    if working is not None:
        check_seams(working)
        check_sleeve(working)
        check_outlines(working)


def test_hardly_a_measured_baby_is_refused():
    """All measures a twentieth larger or smaller than the table's, at every size."""
    check_that_babies_near_the_table_get_one("baby-jacket")


def test_everything_grows_with_the_size():
    rows = [work("baby-jacket", size=size) for size in SIZES]
    for name in ("finished_chest", "finished_length", "neck_edge", "sleeve_edge", "over_arm",
                 "under_arm", "front_edge", "hem_edge"):  # fmt: skip
        for small, large in pairwise(rows):
            assert length(large, name) > length(small, name), name
    for number in range(len(PIECES)):
        areas = [area(each.pieces[number]) for each in rows]
        assert areas == sorted(set(areas)), PIECES[number]


def test_it_goes_over_the_dress_of_its_size():
    """At every size it is wider at the neck and round the chest than what it is worn over."""
    for size in SIZES:
        jacket, romper = work("baby-jacket", size=size), work("romper", size=size)
        for name in ("neck_edge", "finished_chest"):
            assert length(jacket, name) > length(romper, name)


@pytest.mark.parametrize("size", SIZES)
def test_the_cut_line_runs_its_allowance_outside_the_seam(size):
    """The front facing has the same allowance all round: shapely's offset is its cut line."""
    piece = next(p for p in work("baby-jacket", size=size).pieces if p.name == "front facing")
    wanted = Polygon(piece.seam_outline).buffer(6.35, join_style="mitre", mitre_limit=3)
    assert Polygon(piece.outline).symmetric_difference(wanted).area < 0.002 * wanted.area


def test_the_name_of_a_narrow_piece_stands_beside_it():
    facing = next(p for p in work("baby-jacket").pictures if p.name == "front-facing")
    note = next(each for each in facing.scene.shapes if isinstance(each, Note))
    outline = facing.scene.shapes[0].points
    assert note.at[0] > max(x for x, _ in outline)


@pytest.mark.parametrize("size", SIZES)
def test_names_and_grain_arrows_stand_on_the_wide_pieces(size):
    for picture in work("baby-jacket", size=size).pictures[1:3]:
        room = Polygon(picture.scene.shapes[0].points)
        for shape in picture.scene.shapes:
            if isinstance(shape, Note | Grain):
                assert room.buffer(-15).contains(Point(shape.at)), picture.name


def test_a_trim_shortens_the_sleeve_by_as_much():
    plain, trimmed = work("baby-jacket"), work("baby-jacket", sleeve_trim="2 cm")
    assert float(length(plain, "over_arm") - length(trimmed, "over_arm")) == pytest.approx(20)
    assert length(plain, "sleeve_edge") == length(trimmed, "sleeve_edge")


def test_a_length_of_its_own_needs_no_share():
    working = work("baby-jacket", reach="30 cm")
    assert length(working, "finished_length") == millimetres(300)
    assert any("30 cm" in step or "11 13/16 in" in step for step in steps(working))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"sleeve_end_ease": "3 cm"}, "the hand needs 5 3/16 in (13.1 cm) and the end of the "
         "sleeve is only 4 3/4 in (12.1 cm); give it at least that, or let it open"),
        ({"underarm_curve": "15 cm", "reach": "60 cm"}, "underarm_curve 5 29/32 in is longer than "
         "the seams under the arm and at the side allow; use at most 5 1/4 in (13.3 cm), or longer "
         "sleeves and sides"),
        ({"reach": "15 cm"}, "a jacket 5 29/32 in (15 cm) long leaves no side below the arm; give "
         "reach at least 8 3/16 in (20.8 cm), or underarm_curve or sleeve_ease less"),
        ({"facing": "2 cm"}, "facing 25/32 in is narrower than the overlap, 29/32 in (23 mm), so "
         "that holes and buttons would stand partly in one layer; use at least 29/32 in (23 mm), "
         "or a smaller button"),
        ({"extension": "1/4 in"}, "extension 1/4 in is too little for a button of 13/32 in, which "
         "would stand within 1/4 in of the edge; use at least 15/32 in (12 mm), a smaller button "
         "or less clearance"),
        ({"neck": "13 cm", "neck_ease": "48 mm", "neck_drop": "3 cm", "button": "1 1/4 in"},
         "fronts that overlap by 1 3/4 in (44 mm) take the whole front of the neck, "
         "1 13/16 in (46 mm); use a smaller button, "
         "or less clearance or extension"),
    ],
)  # fmt: skip
def test_what_cannot_be_sewn_is_refused_with_the_way_out(written, sentence):
    assert refusal("baby-jacket", **written) == sentence
