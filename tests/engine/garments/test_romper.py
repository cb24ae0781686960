"""Romper: worked example, figures to expect, then its outlines walked for measured babies."""

from fractions import Fraction
from itertools import pairwise
from math import dist

import pytest
from hypothesis import given
from shapely import LineString, Point, Polygon

from handout_engine.amounts.lengths import millimetres
from handout_engine.bodies.measures import LENGTHS, figure
from handout_engine.drawing.scene import Note
from handout_engine.families.garments.romper import GARMENT
from measured_babies import (
    SIZES,
    area,
    babies,
    check_outlines,
    check_that_babies_near_the_table_get_one,
    made_for,
)
from worked import length, refusal, said, steps, work


def walk(points):
    return sum(dist(*pair) for pair in pairwise(points))


def seam(working, name):
    """The line a piece is sewn on, x across and y down, from the top of its cut outline."""
    piece = next(each for each in working.pieces if each.name == name)
    return [(across, down) for down, across in piece.seam_outline]


def test_size_62_by_hand():
    # chest 401 and an ease that falls from 100 at 50 to 80 at 68: 401 + 86 2/3; hip 403 + 120;
    # upper thigh 227 + 55, × 1.3; crown to rump 421 × 0.84 + 50
    working = work("romper", size="62")
    assert length(working, "finished_chest") == millimetres(Fraction(1463, 3))
    assert length(working, "finished_seat") == millimetres(523)
    assert length(working, "leg_edge") == millimetres(282)
    assert length(working, "leg_cut_edge") == millimetres("366.6")
    assert length(working, "finished_length") == millimetres("403.64")
    assert length(working, "front_reach") == millimetres("393.64")
    assert length(working, "back_reach") == millimetres("413.64")
    # crotch 80 + (620 - 500) / 480 × 10; with two bands of 5/8 in, 31.75
    assert length(working, "crotch_edge") == millimetres("114.25")
    # three quarters of the back waist, 179: 134.25, up to 135; the head needs (414 + 20 - 223) / 2
    assert length(working, "front_edge") == millimetres(135)
    # button 10.16 / 2 + 6.35, so the bands are 22.86 wide and the opened neck 223 + 22.86
    assert length(working, "front_overlap") == millimetres("22.86")
    assert length(working, "neck_with_bands") == millimetres("245.86")
    # the band lies flat beyond the crotch lines: 10 / 2 + 6.35, and a seam of 6.35
    assert length(working, "band_end") == millimetres("17.7")
    assert length(working, "leg_band_length") == millimetres("317.4")
    assert said(working, "leg_band_width") == "1 3/4 in"


@pytest.mark.parametrize(("size", "half"), [("50", 350), ("74", 450), ("98", 520)])
def test_the_half_loop_is_what_is_expected(size, half):
    # common knowledge, no source
    assert float(length(work("romper", size=size), "finished_length")) == pytest.approx(half, abs=5)


@pytest.mark.parametrize(("size", "neck", "chest"),
                         [("50", 195, 440), ("74", 245, 531), ("98", 270, 600)])  # fmt: skip
def test_neck_and_chest_are_what_is_expected(size, neck, chest):
    # common knowledge, no source
    working = work("romper", size=size)
    assert float(length(working, "neck_edge")) == pytest.approx(neck, abs=3)
    assert float(length(working, "finished_chest")) == pytest.approx(chest, abs=12)


def test_over_a_cloth_nappy_there_is_more_room():
    thin, thick = (work("romper", size="74", nappy=nappy) for nappy in ("thin", "cloth"))
    for name, more in (("finished_length", 30), ("finished_seat", 40), ("leg_edge", 20)):
        assert length(thick, name) - length(thin, name) == millimetres(more)
    assert millimetres(100) < length(thick, "crotch_width") < millimetres(120)


@pytest.mark.parametrize("size", SIZES)
def test_a_leg_band_is_as_wide_as_the_thigh_where_it_sits(size):
    # 5 to 6 cm beyond the top of the thigh, more over a cloth nappy: common practice, no source
    thigh = figure("upper_thigh", LENGTHS[size])
    thin, thick = (length(work("romper", size=size, nappy=nappy), "leg_edge") - thigh
                   for nappy in ("thin", "cloth"))  # fmt: skip
    assert millimetres(50) <= thin <= millimetres(60) < thick


def check_seams(working):
    """Front and back meet at side and shoulder; both leg curves make the edge that is gathered."""
    front, back = seam(working, "romper front"), seam(working, "romper back")
    reach = float(length(working, "quarter_chest")), float(length(working, "quarter_seat"))
    sides = [
        next(pair for pair in pairwise(points)
             if (pair[0][0], pair[1][0]) == pytest.approx(reach, abs=1e-3))
        for points in (front, back)
    ]  # fmt: skip
    for side in sides:
        assert walk(side) == pytest.approx(float(length(working, "side_seam")), abs=0.5)
    legs = []
    half = float(length(working, "crotch_width")) / 2
    for points, side in zip((front, back), sides, strict=True):
        start = points.index(side[1])
        end = next(n for n in range(start, len(points)) if abs(points[n][0] - half) < 1e-3)
        legs.append(walk(points[start : end + 1]))
    assert sum(legs) == pytest.approx(float(length(working, "leg_cut_edge")), abs=0.5)
    band = (length(working, "leg_band_length") - 2 * length(working, "band_end")).mm
    assert float(length(working, "leg_cut_edge")) == pytest.approx(float(band) * 1.3, abs=0.5)
    marked = length(working, "band_side") - length(working, "band_end")
    assert legs[0] == pytest.approx(float(marked) * 1.3, abs=0.5)


def check_openings(working):
    """The head passes, the legs open, and the chest has ease."""
    head, neck = length(working, "head"), length(working, "neck_edge")
    assert neck + 2 * length(working, "front_edge") >= head + millimetres(20)
    assert length(working, "finished_chest") > length(working, "chest")
    assert length(working, "front_overlap") >= length(working, "button") + millimetres("12.7")
    assert any("each leg lies flat, so that no foot has to pass" in step for step in steps(working))


def foot_passes(size):
    """Even closed, the band of a size would let the foot through."""
    tall = LENGTHS[size]
    foot = max(figure("ankle", tall) + millimetres(20), figure("foot_length", tall) * 14 / 10)
    return length(work("romper", size=size), "leg_edge") >= foot


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("nappy", ["thin", "cloth"])
def test_every_size_fits_together(size, nappy):
    working = work("romper", size=size, nappy=nappy)
    check_seams(working)
    check_openings(working)
    check_outlines(working)
    assert foot_passes(size)


@given(babies(GARMENT))
def test_a_measured_baby_gets_a_romper_that_fits_together(baby):
    working = made_for("romper", baby)
    if working is not None:
        check_seams(working)
        check_openings(working)
        check_outlines(working)


def test_hardly_a_measured_baby_is_refused():
    """All measures a twentieth larger or smaller than the table's, at every size."""
    check_that_babies_near_the_table_get_one("romper")


def test_everything_grows_with_the_size():
    rows = [work("romper", size=size) for size in SIZES]
    for name in ("finished_chest", "finished_seat", "neck_edge", "armhole_edge", "leg_edge",
                 "leg_cut_edge", "side_seam", "front_edge", "finished_length",
                 "crotch_edge"):  # fmt: skip
        for small, large in pairwise(rows):
            assert length(large, name) > length(small, name), name
    for number in (0, 1):
        areas = [area(each.pieces[number]) for each in rows]
        assert areas == sorted(set(areas))


@pytest.mark.parametrize("size", SIZES)
def test_the_notches_of_the_armholes_leave_as_much_as_is_said_between_them(size):
    """Walked from the shoulder to the notch, front and back."""
    working = work("romper", size=size)
    walked = []
    for piece in working.pieces[:2]:
        line = LineString([(across, down) for down, across in piece.seam_outline])
        end = float(length(working, "shoulder_end")) + line.bounds[0]
        shoulder = min(line.coords, key=lambda point: abs(point[0] - end))
        notch = Point(tuple(reversed(piece.notches[0])))
        assert line.distance(notch) < 1e-3
        walked.append(line.project(notch) - line.project(Point(shoulder)))
    said_edge = float(length(working, "shoulder_ruffle_edge"))
    assert sum(walked) == pytest.approx(said_edge, abs=0.5)
    assert 0.5 < said_edge / float(length(working, "armhole_edge")) < 0.7


@pytest.mark.parametrize("size", SIZES)
def test_the_cut_line_runs_its_allowance_outside_the_seam(size):
    """Shapely's offset of the seam line, away from the fold, is the cut line."""
    for piece in work("romper", size=size).pieces[:2]:
        line = [(across, down) for down, across in piece.seam_outline]
        cut = Polygon([(across, down) for down, across in piece.outline])
        mitred = Polygon(line).buffer(6.35, join_style="mitre", mitre_limit=3)
        left = min(across for across, _ in line)
        box = Polygon([(left, -99), (999, -99), (999, 999), (left, 999)])
        assert cut.symmetric_difference(mitred.intersection(box)).area < 0.002 * cut.area


@pytest.mark.parametrize("size", SIZES)
def test_the_name_of_a_piece_stands_on_it(size):
    working = work("romper", size=size)
    for piece, picture in zip(working.pieces, working.pictures[1:], strict=False):
        note = next(each for each in picture.scene.shapes if isinstance(each, Note))
        outline = next(each.points for each in picture.scene.shapes if hasattr(each, "tone"))
        room = Polygon(outline)
        (left, _, right, _) = room.bounds
        level = LineString([(left, note.at[1]), (right, note.at[1])]).intersection(room)
        assert Point(note.at).distance(level.centroid) < 1, piece.name
        assert level.length > 0.75 * (right - left)


def test_ungathered_legs_speak_of_no_gathers():
    flat = work("romper", leg_fullness="1", leg_ease="9 cm")
    assert not any("gather" in step for step in steps(flat))
    assert "loose-threads" not in {caution.key for caution in flat.cautions}


def test_a_crotch_with_buttons_needs_no_press_fasteners():
    working = work("romper", fastening="buttons", fasteners="1")
    assert not any("press fastener" in step.lower() for step in steps(working))
    assert any("in the middle of that line" in step for step in steps(working))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"crotch_width": "16 cm", "hip": "28 cm", "seat_ease": "4 cm"},
         "crotch_width 6 5/16 in leaves no legs beside it; use at most 4 23/32 in (12 cm), or more "
         "seat ease"),
        ({"leg_fullness": "2", "upper_thigh": "32 cm"},
         "legs of 29 17/32 in (75 cm) leave too little side above them: with 1 9/16 in (40 mm) of "
         "side seam they are at most 22 1/4 in (56.5 cm) long; give leg_fullness or leg_ease less, "
         "or loop_ease more"),
        ({"leg_fullness": "1", "upper_thigh": "13 cm", "leg_ease": "1 cm"}, "legs of 5 1/2 in "
         "(14 cm) do not reach from the side to the crotch, which takes 7 3/16 in (18.2 cm); give "
         "leg_ease or leg_fullness more, or seat_ease less"),
        ({"opening": "35 cm"}, "opening 13 25/32 in would end less than 1 31/32 in (50 mm) above "
                               "the crotch line; use at most 11 3/4 in (29.8 cm)"),
        ({"button": "2 in", "clearance": "1/2 in"},
         "front bands 3 in (76 mm) wide take the whole front of the neck, 3 9/32 in (84 mm); use "
         "a smaller button, or less clearance or extension"),
        ({"seam_allowance": "3/4 in"}, "seam_allowance 3/4 in leaves nothing to cut out between "
         "the front bands, whose seams lie 7/16 in (11 mm) from the centre; give the seam less, or "
         "the bands more extension"),
        ({"opening": "5 cm"}, "the head, 16 5/16 in (41.4 cm), with 25/32 in (20 mm) of room does "
         "not pass a neck that opens to 12 23/32 in (32.3 cm); give opening at least 4 5/32 in "
         "(10.6 cm), or neck_ease more"),
    ],
)  # fmt: skip
def test_what_cannot_be_sewn_is_refused_with_the_way_out(written, sentence):
    assert refusal("romper", **written) == sentence
