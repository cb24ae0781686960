"""Which sheets a working has, what is said on them, and how fragments link to them."""

import re
from itertools import pairwise
from math import dist
from xml.etree.ElementTree import fromstring

import pytest
from shapely import Point, Polygon, box

from handout_engine.amounts.lengths import millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GEOMETRY
from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import Area, Line, Note, Stroke
from handout_engine.pages.blocks import read_block
from handout_engine.pages.page import work_page
from handout_engine.paper.ink import inked
from handout_engine.paper.lettering import wrapped
from handout_engine.paper.sheets import alike, can_be_printed, pieces_sheet, sheets, whole_sheet
from handout_engine.working.workings import Collected, Grain, Piece
from worked import changed, work

TRIANGLE = ((0.0, 0.0), (200.0, 0.0), (200.0, 90.0))


def value(name, mm):
    return Value(name, name, millimetres(mm), GEOMETRY)


def piece(name="front", outline=TRIANGLE, **fields):
    usual = {"cloth": "lawn", "count": 2, "width": value("width", 90),
             "length": value("length", 200), "grain": Grain.CROSS}  # fmt: skip
    return Piece(name, outline=outline, **{**usual, **fields})


def printed(*pieces, **inputs):
    """The sheet of these pieces."""
    cut = Collected(pieces=list(pieces))
    made = changed(work("gathered-ruffle"), title="Trial", cutting=cut, inputs=inputs)
    return pieces_sheet(made, Tape())


def words(sheet):
    lines = [line for each in sheet.drawings for line in each.label.lines]
    return " ".join(lines)


def strokes(sheet, line):
    (drawing,) = sheet.drawings
    drawn = [each for each in drawing.shapes if isinstance(each, Stroke)]
    return [each.points for each in drawn if each.line is line]


def test_a_piece_s_sheet_says_its_name_size_count_cloth_and_grain():
    sheet = printed(piece())
    assert sheet.drawings[0].label.heading == "Trial: front"
    assert "Cut 2 from lawn." in words(sheet)
    assert "7 7/8 in (20 cm) wide, 3 9/16 in (90 mm) high." in words(sheet)
    assert "Lengthwise grain: up and down the page." in words(sheet)
    assert "nothing is to be added to it" in words(sheet)
    notes = [each.text.template for each in sheet.drawings[0].shapes if isinstance(each, Note)]
    assert notes == ["front: cut 2"]


def test_rectangles_need_no_sheet():
    assert printed(piece(outline=())) is None


def test_pieces_alike_share_a_sheet_and_each_is_named():
    backing = piece("backing", cloth="batiste", count=1)
    sheet = printed(piece(), backing, piece("sleeve", TRIANGLE[::-1]))
    headings = [each.label.heading for each in sheet.drawings]
    assert headings == ["Trial: front and backing", "Trial: sleeve"]
    assert "front: cut 2 from lawn. backing: cut 1 from batiste." in words(sheet)


def test_a_piece_along_the_selvage_stands_upright():
    """Its outline runs along its length, which is the lengthwise grain: so that goes downward."""
    (drawing,) = printed(piece(grain=Grain.STRAIGHT)).drawings
    (face,) = [each for each in drawing.shapes if isinstance(each, Area)]
    assert face.points == tuple((y, x) for x, y in TRIANGLE)
    assert "3 9/16 in (90 mm) wide, 7 7/8 in (20 cm) high." in " ".join(drawing.label.lines)


def test_a_piece_on_the_bias_has_a_slanting_arrow():
    sheet = printed(piece(grain=Grain.BIAS))
    arrow = next(points for points in strokes(sheet, Line.THIN) if len(points) == 2)
    across, down = arrow[1][0] - arrow[0][0], arrow[1][1] - arrow[0][1]
    assert across == pytest.approx(down) and across > 0
    assert "Lengthwise grain: along the arrow." in words(sheet)


def test_a_piece_on_the_fold_is_cut_everywhere_but_there():
    """A half front, its fold at the left once it stands upright: cut line open, fold its own."""
    half = ((0.0, 0.0), (200.0, 0.0), (200.0, 90.0), (20.0, 90.0))
    seam = ((10.0, 0.0), (190.0, 0.0), (190.0, 80.0), (30.0, 80.0))
    sheet = printed(piece(outline=half, seam_outline=seam, on_fold=True, grain=Grain.STRAIGHT))
    (fold,) = strokes(sheet, Line.FOLD)
    assert fold == ((0.0, 0.0), (0.0, 200.0))
    (cut,) = strokes(sheet, Line.CUT)
    assert cut == ((0.0, 200.0), (90.0, 200.0), (90.0, 20.0), (0.0, 0.0))
    (sewn,) = strokes(sheet, Line.STITCH)
    assert sewn == ((0.0, 190.0), (80.0, 190.0), (80.0, 30.0), (0.0, 10.0))
    assert "half of it" in words(sheet) and "is the middle of the piece" in words(sheet)
    assert "seams and turned edges lie on the dashed one" in words(sheet)


def test_of_a_pair_the_sheet_says_and_shows_that_one_is_mirrored():
    sheet = printed(piece(outline=((0, 0), (200, 0), (200, 150)), pair=True))
    assert "Cut 2 from lawn, one the mirror image of the other: turn this paper over" in words(
        sheet
    )
    (drawing,) = sheet.drawings
    _, printed_one, mirrored = [each for each in drawing.shapes if isinstance(each, Area)]
    one, other = (signed_area(each.points) for each in (printed_one, mirrored))
    assert one == pytest.approx(-other) and one != 0
    (note,) = [each.text.template for each in drawing.shapes if isinstance(each, Note)]
    assert note == "front: cut 2, one mirrored"


def signed_area(points):
    """Below 0 where the corners stand the other way round."""
    return sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairwise((*points, points[0]))) / 2


def test_a_slit_is_drawn_and_named():
    sheet = printed(piece(grain=Grain.STRAIGHT, slit=((0.0, 5.0), (40.0, 5.0))))
    assert ((5.0, 0.0), (5.0, 40.0)) in strokes(sheet, Line.CUT)
    notes = [each.text.template for each in sheet.drawings[0].shapes if isinstance(each, Note)]
    assert "slit" in notes


def test_a_notch_runs_from_the_cut_line_to_the_seam():
    inner = ((30.0, 8.0), (192.0, 8.0), (192.0, 75.0))
    sheet = printed(piece(seam_outline=inner, notches=((100.0, 8.0),)))
    assert ((100.0, 0.0), (100.0, 8.0)) in strokes(sheet, Line.CUT)
    assert "notches" in words(sheet)


def test_a_notch_on_the_cut_line_runs_inward():
    sheet = printed(piece(notches=((100.0, 0.0),)))
    assert ((100.0, 0.0), (100.0, 5.0)) in strokes(sheet, Line.CUT)


def test_the_name_stands_inside_the_piece():
    """Of a ring, whose middle is no cloth, it stands on the cloth."""
    sheet = pieces_sheet(work("circular-flounce"), Tape())
    (note,) = [each for each in sheet.drawings[0].shapes if isinstance(each, Note)]
    (face,) = [each for each in sheet.drawings[0].shapes if isinstance(each, Area)]
    assert Polygon(face.points).buffer(0).contains(Point(note.at))


def test_what_would_take_too_many_pages_is_said_to_be_too_large():
    assert can_be_printed(piece(outline=((0, 0), (1500, 0), (1500, 1500))))
    assert not can_be_printed(piece(outline=((0, 0), (1600, 0), (1600, 1600))))
    block = read_block({"technique": "circular-flounce", "name": "it", "edge": "2 yd",
                        "depth": "30 in", "cloth_width": "118 in", "show": "cuts"})  # fmt: skip
    page = work_page([block], Tape())
    assert page.problems == []
    assert page.sheets() == {} and "sheet-link" not in page.fragment(0)
    assert "The flounce is too large to print at true scale" in page.fragment(0)


def test_a_picture_too_large_to_print_is_said_to_be():
    corners = {"sides": "70 in; 70 in; 70 in", "lace_width": "1 in"}
    block = read_block({"technique": "mitred-lace", "name": "it", **corners, "show": "finished"})
    page = work_page([block], Tape())
    assert page.problems == [] and page.sheets() == {}
    assert "this is too large to print at true scale" in page.fragment(0)
    with pytest.raises(RefusalError, match="too large to print"):
        whole_sheet(work("mitred-lace", **corners), Tape())


def test_the_size_of_a_garment_is_on_its_pages():
    sheet = printed(piece(), body_length=value("body_length", 680))
    assert words(sheet).startswith("For size 68, ")
    sheet = printed(piece(), body_length=value("body_length", 705))
    assert words(sheet).startswith("For body length 70.5 cm, ")


def test_alike_tells_apart_what_differs_in_grain_or_seam():
    every = [piece(), piece("b", grain=Grain.BIAS), piece("c", seam_outline=TRIANGLE), piece("d"),
             piece("e", slit=((0.0, 5.0), (40.0, 5.0)))]  # fmt: skip
    assert [[each.name for each in group] for group in alike(every)] == [
        ["front", "d"],
        ["b"],
        ["c"],
        ["e"],
    ]


def test_a_sheet_s_address_is_its_own_and_the_link_leads_to_it():
    def page(**fields):
        block = read_block({"technique": "lattice-panel", "name": "yoke", **fields})
        return work_page([block], Tape())

    one, same, other = page(), page(), page(width="5 in")
    assert set(one.sheets()) == set(same.sheets())
    assert set(one.sheets()).isdisjoint(other.sheets())
    for made in (one, other):
        (address,) = made.sheets()
        assert re.fullmatch(r"sheets/lattice-panel-placement-[0-9a-f]{16}\.html", address)
        assert f'href="{address}"' in made.fragment(0)


def test_the_pieces_are_linked_under_the_cut_list():
    page = work_page(
        [read_block({"technique": "spiral-flounce", "name": "it", "show": "cuts"})], Tape()
    )
    (address,) = page.sheets()
    assert f'href="{address}"' in page.fragment(0)
    assert "Print the pieces at true scale" in page.fragment(0)


def test_a_technique_without_a_sheet_has_no_link():
    page = work_page([read_block({"technique": "gathered-ruffle", "name": "it"})], Tape())
    assert page.sheets() == {} and "sheet-link" not in page.fragment(0)
    with pytest.raises(RefusalError, match="has no true-scale sheet"):
        whole_sheet(work("gathered-ruffle"), Tape())


def test_every_page_is_a_document_of_its_own_and_the_html_holds_them_all():
    (sheet,) = sheets(work("spiral-flounce"), Tape())
    pages = sheet.pages("letter", Tape())
    assert len(pages) > 1
    for page in pages:
        assert fromstring(page).get("width") in {"215.9mm", "279.4mm"}
        assert "var(" not in page
    document = sheet.document("letter", Tape())
    assert document.count("<svg") == len(pages) and "<script" not in document


def test_a_name_that_says_the_title_is_not_headed_by_it_twice():
    sheet = printed(piece("trial front"))
    assert sheet.drawings[0].label.heading == "Trial front"


@pytest.mark.parametrize("key", ["baby-jacket", "collar", "day-gown", "romper", "circular-flounce"])
def test_the_words_on_a_piece_stand_on_it(key):
    """Whole, however narrow it is: nobody writes over the edge of a collar."""
    for drawing in pieces_sheet(work(key), Tape()).drawings:
        face, *small = [each for each in drawing.shapes if isinstance(each, Area)]
        cloth = Polygon(face.points).buffer(0)
        assert all(cloth.contains(Polygon(each.points)) for each in small)
        notes = [each for each in drawing.shapes if isinstance(each, Note)]
        assert "".join(each.text.template for each in notes).count("cut") >= 1
        for words in inked(notes, Tape()):
            reach = words.reach
            assert cloth.contains(box(reach.left, reach.top, reach.right, reach.bottom))


def test_a_piece_of_cloth_made_up_before_is_cut_from_the_worked_cloth():
    assert "Cut 2 from the worked lawn." in words(printed(piece(worked=True)))


def test_numbers_stay_with_their_fractions_and_units():
    lines = wrapped("11 11/16 in wide, cut 2, 5 cm", 1.0, 3.0)
    assert lines == ["11 11/16 in", "wide,", "cut 2,", "5 cm"]


def test_a_whole_ring_is_not_slit_on_paper():
    """A ring sewn to a closed edge: two circles, and no line from one to the other."""
    sheet = pieces_sheet(work("circular-flounce", ends="closed"), Tape())
    rings = strokes(sheet, Line.CUT)
    assert len(rings) == 2
    for ring in rings:
        steps = [dist(one, other) for one, other in pairwise(ring)]
        assert dist(ring[0], ring[-1]) < 1e-6 and max(steps) < 2 * min(steps)
    assert len(strokes(sheet, Line.STITCH)) == 2
    (slit,) = strokes(pieces_sheet(work("circular-flounce"), Tape()), Line.CUT)
    assert len(slit) > max(map(len, rings)), "an open one is slit"


@pytest.mark.parametrize("inputs", [{}, {"turn": "200 deg"}, {"turn": "90 deg", "pieces": "4"}])
def test_a_flounce_is_sewn_inside_its_cut_line_by_its_allowances(inputs):
    """Edge, hem and ends each have an allowance of 1/4 in: its corners lie so far inside."""
    working = work("circular-flounce", end_hem="1/4 in", hem="single", **inputs)
    (piece,) = working.pieces
    cut, sewn = Polygon(piece.outline).buffer(0), Polygon(piece.seam_outline).buffer(0)
    assert cut.contains(sewn)
    least = min(cut.exterior.distance(Point(*corner)) for corner in piece.seam_outline)
    assert least == pytest.approx(6.35, abs=0.1)
