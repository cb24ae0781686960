"""Drawings cut into pages, made into a PDF, read back by another library, and put together."""

import re
from collections import Counter
from math import dist
from random import Random

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from shapely import LineString, MultiLineString, box
from shapely.ops import unary_union

from handout_engine.amounts.refusals import RefusalError, RefusalsError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import sentence
from handout_engine.drawing.markup import xml
from handout_engine.drawing.scene import Area, Dots, Line, Note, Stroke, rectangle
from handout_engine.paper.cutting import cut
from handout_engine.paper.ink import DOT, Rule, Spots, Words, inked
from handout_engine.paper.ink_svg import document, elements
from handout_engine.paper.joins import joins
from handout_engine.paper.sheet_pages import sheet_pages
from handout_engine.paper.sheets import sheets
from handout_engine.paper.strip import JOIN, Label
from handout_engine.paper.tiling import PAPERS, tiled
from handout_engine.paper.true_scale import PRINT_AT
from handout_engine.register import find, keys
from handout_engine.working.technique import make
from printed import Printed, printer, read_back
from random_outlines import star
from worked import work
from written_inputs import inputs_of

CUT_WIDTH, MARGIN, OVERLAP = 0.5, 6, 10
"""In mm, written here anew so that a change of the pages is noticed."""
METRIC = Tape("metric")
LABEL = Label("A trial: front", ("Cut 2 from lawn.", "20 cm wide, 90 mm high."))
HERE = re.compile(r"row(\d+),column(\d+)page(\d+)of(\d+)")


def pages_of(*shapes, paper="a4"):
    return [xml(page) for page in sheet_pages(shapes, LABEL, paper, Tape())]


def printed(*shapes, paper="a4") -> list[Printed]:
    return read_back(pages_of(*shapes, paper=paper))


def cut_lines(page: Printed) -> list[tuple]:
    """The lines of the drawing itself: nothing else on a page is as wide."""
    return [each.points for each in page.lines if each.width == pytest.approx(CUT_WIDTH, abs=0.01)]


def window(page: Printed):
    """Where a page's window must be, and the strip beside it, from the paper's size alone."""
    edge = MARGIN + 1
    if page.width > page.height:
        return box(edge, edge, page.width - edge - 54, page.height - edge)
    return box(edge, edge, page.width - edge, page.height - edge - 54)


def put_together(pages: list[Printed]) -> list[tuple]:
    """The cut lines of all pages, each page laid where its words say that it belongs."""
    laid = []
    for page in pages:
        row, column = map(int, HERE.search(page.words).groups()[:2]) if len(pages) > 1 else (1, 1)
        left, top, right, bottom = window(page).bounds
        across = (column - 1) * (right - left - OVERLAP) - left
        down = (row - 1) * (bottom - top - OVERLAP) - top
        laid += [[(x + across, y + down) for x, y in line] for line in cut_lines(page)]
    return laid


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("turn", [0, 1, 2])
def test_a_line_of_100_mm_measures_100_mm(paper, turn):
    ends = [((0.0, 0.0), (100.0, 0.0)), ((0.0, 0.0), (0.0, 100.0)), ((0.0, 0.0), (60.0, 80.0))]
    (page,) = printed(Stroke(ends[turn], Line.CUT), paper=paper)
    (line,) = cut_lines(page)
    assert dist(*line) == pytest.approx(100, abs=0.02)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize(
    "shape", [rectangle(0, 0, 50, 60), rectangle(0, 0, 700, 90), rectangle(0, 0, 225, 185)]
)
def test_every_page_has_a_square_of_5_cm_and_one_of_2_in(paper, shape):
    for page in printed(Area(shape), paper=paper):
        sizes = [
            (dist(*line.points[:2]), dist(*line.points[1:3]))
            for line in page.lines
            if len(line.points) == 4 and not line.filled and not line.dashed
        ]
        for side in (50.0, 50.8):
            assert any(size == pytest.approx((side, side), abs=0.02) for size in sizes)
        assert "thissquareis5cm" in page.words and "thissquareis2in" in page.words
        assert PRINT_AT.replace(" ", "") in page.words


@pytest.mark.parametrize("seed", range(12))
def test_pages_put_together_give_the_outline_back(seed):
    """To 0.2 mm, both ways: nothing of it is missing, and nothing else is drawn."""
    random = Random(seed)
    outline = star(random, random.randint(3, 30), size=random.uniform(40, 420))
    paper = random.choice(sorted(PAPERS))
    laid = MultiLineString(put_together(printed(Area(outline), paper=paper)))
    whole = LineString((*outline, outline[0]))
    place = tiled(inked((Area(outline),), METRIC), paper).origin
    moved = LineString([(x - place[0], y - place[1]) for x, y in whole.coords])
    assert moved.difference(laid.buffer(0.05)).length < 1e-6
    assert laid.difference(moved.buffer(0.05)).length < 1e-6


@pytest.mark.parametrize(
    ("technique", "inputs"),
    [
        ("circular-flounce", {"edge": "60 in", "depth": "9 in"}),
        ("spiral-flounce", {"edge": "40 in", "depth": "5 in"}),
    ],
)
@pytest.mark.parametrize("paper", PAPERS)
def test_a_flounce_s_pages_put_together_give_its_outline_back(technique, inputs, paper):
    working = work(technique, **inputs)
    (piece,) = working.pieces
    (sheet,) = sheets(working, Tape())
    pages = read_back(sheet.pages(paper, Tape()))
    assert len(pages) >= 4
    laid = MultiLineString(put_together(pages))
    outline = LineString((*piece.outline, piece.outline[0]))
    place = tiled(inked(sheet.drawings[0].shapes, Tape()), paper).origin
    moved = LineString([(x - place[0], y - place[1]) for x, y in outline.coords])
    assert moved.hausdorff_distance(laid) < 0.2
    assert moved.difference(laid.buffer(0.05)).length < 1e-6
    assert laid.difference(moved.buffer(0.05)).length < 1e-6


@pytest.mark.parametrize("seed", range(6))
def test_arrowheads_meet_tip_to_tip_as_a_cutter_lays_the_pages(seed):
    """Each tip, laid where its page belongs, is met by that of one other page, no more."""
    outline = star(Random(seed), 14, size=300)
    pages = printed(Area(outline))
    tips = Counter()
    for page in pages:
        row, column = map(int, HERE.search(page.words).groups()[:2])
        left, top, right, bottom = window(page).bounds
        across = (column - 1) * (right - left - OVERLAP) - left
        down = (row - 1) * (bottom - top - OVERLAP) - top
        for line in page.lines:
            if len(line.points) == 4 and line.points[0] == line.points[3] and line.width:
                x, y = tip(line.points[:3])
                tips[round(x + across, 1), round(y + down, 1)] += 1
    assert len(tips) > 4 and set(tips.values()) == {2}


def tip(corners):
    """The corner across the shortest side."""
    sides = {dist(a, b): c for a, b, c in zip(
        corners, corners[1:] + corners[:1], corners[2:] + corners[:2], strict=True)}  # fmt: skip
    return sides[min(sides)]


def test_each_pair_of_arrowheads_has_a_number_of_its_own():
    inks = inked((Area(rectangle(0, 0, 900, 700)),), METRIC)
    tiling = tiled(inks, "a4")
    every = joins(tiling, cut(inks, tiling))
    numbers = [number for join in every for _, number in join.heads]
    assert numbers == list(range(1, 2 * len(every) + 1))


ALL_SHEETS = [key for key in keys() if sheets(work(key), Tape())]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("key", ALL_SHEETS)
def test_nothing_lies_in_the_margin_nor_the_drawing_in_the_strip(key, paper):
    tape = METRIC if paper == "a4" else Tape()
    for sheet in sheets(work(key), tape):
        for page in read_back(sheet.pages(paper, tape)):
            free_of_the_margin(page)
            for line in cut_lines(page):
                assert window(page).buffer(0.01).contains(MultiLineString([line]))


def free_of_the_margin(page: Printed):
    """Lines with their width, faces and letters; the white ground alone fills the page."""
    ground, *lines = page.lines
    assert ground.filled and not ground.width
    for line in lines:
        xs, ys = zip(*line.points, strict=True)
        reach = line.width / 2
        assert min(xs) - reach >= MARGIN and max(xs) + reach <= page.width - MARGIN, line
        assert min(ys) - reach >= MARGIN and max(ys) + reach <= page.height - MARGIN, line
    for letter in page.letters:
        assert letter.left >= MARGIN and letter.right <= page.width - MARGIN, letter
        assert letter.top >= MARGIN and letter.bottom <= page.height - MARGIN, letter


def test_long_words_at_the_edge_of_a_drawing_stay_on_the_page():
    words = sentence("a very long name that stands at the very edge of all that is drawn here")
    places = ((0, 0, "end"), (600, 500, "start"), (195, 300, "middle"))
    notes = [Note((x, y), words, anchor=anchor) for x, y, anchor in places]
    pages = printed(Area(rectangle(0, 0, 600, 500)), *notes)
    for page in pages:
        free_of_the_margin(page)
    said = sum(page.words.count(words.template.replace(" ", "")) for page in pages)
    assert said >= 3, "each is shown whole"


def test_words_over_the_edge_of_a_page_are_shown_whole():
    """Wherever a name stands, some page shows all of it."""
    for place in range(150, 260, 7):
        pages = printed(Area(rectangle(0, 0, 420, 40)), Note((place, 20), sentence("frontpiece")))
        assert any("frontpiece" in page.words for page in pages), place


def test_each_page_says_what_it_is_and_where_it_belongs():
    pages = printed(Area(rectangle(0, 0, 500, 300)))
    assert len(pages) > 2
    places = [tuple(map(int, HERE.search(page.words).groups())) for page in pages]
    assert [number for *_, number, _ in places] == list(range(1, len(pages) + 1))
    assert [place[:2] for place in places] == sorted(place[:2] for place in places)
    for page in pages:
        assert "Atrial:front" in page.words and "Cut2fromlawn." in page.words
        assert "20cmwide,90mmhigh." in page.words
        assert JOIN.replace(" ", "") in page.words
        assert f"{len(pages)}pagesofA4" in page.words


def test_a_small_drawing_takes_one_page_and_says_nothing_of_joins():
    (page,) = printed(Area(rectangle(0, 0, 150, 200)))
    assert "column" not in page.words and "glue" not in page.words
    assert "onepageofA4" in page.words


def test_pages_with_nothing_on_them_are_left_out_and_the_map_says_so():
    """A ring so large that the middle page of three by three is empty."""
    pages = printed(Area(rectangle(0, 0, 560, 560)))
    tiling = tiled(inked((Area(rectangle(0, 0, 560, 560)),), METRIC), "a4")
    assert len(pages) < tiling.rows * tiling.columns
    assert all("dashed:nothingisonit,leftout" in page.words for page in pages)
    whole = printed(Area(rectangle(0, 0, 300, 100)))
    assert not any("leftout" in page.words for page in whole)


@pytest.mark.parametrize("seed", range(40))
def test_every_page_shows_what_no_other_page_shows(seed):
    random = Random(seed)
    outline = star(random, 9, size=random.uniform(150, 500))
    inks = inked((Area(outline),), METRIC)
    tiling = tiled(inks, random.choice(sorted(PAPERS)))
    whole = LineString((*outline, outline[0]))
    frames = [box(w.left, w.top, w.right, w.bottom) for w in map(tiling.window, tiling.kept)]
    assert whole.difference(unary_union(frames).buffer(1e-6)).length < 1e-6
    joined = [
        other for row, column in tiling.kept
        for other in ((row, column + 1), (row + 1, column)) if other in tiling.kept
    ]  # fmt: skip
    assert len(joined) >= len(tiling.kept) - 1, "the pages hang together"


def test_pages_that_meet_at_a_corner_alone_have_a_third_between_them():
    """A line through the corner where four windows overlap: two pages would show all of it."""
    line = Stroke(((360.0, 20.0), (191.0, 224.0), (20.0, 428.0)), Line.CUT)
    corners = [Stroke(((x, y), (x + 1, y)), Line.CUT) for x, y in ((0.5, 447.0), (380.5, 0.5))]
    tiling = tiled(inked((line, *corners), METRIC), "a4")
    assert (tiling.rows, tiling.columns) == (2, 2)
    assert len(tiling.kept) == 3


def test_a_drawing_lies_the_way_that_takes_fewer_pages():
    """220 mm wide, 150 high: one page on its side, two upright."""
    (page,) = printed(Area(rectangle(0, 0, 220, 150)))
    assert page.width > page.height
    (page,) = printed(Area(rectangle(0, 0, 150, 220)))
    assert page.width < page.height


def test_dashes_run_on_from_page_to_page():
    """A page's part of a dashed line begins as far into its dashes as the whole line there."""
    line = ((0.0, 0.0), (500.0, 30.0))
    inks = inked((Stroke(line, Line.STITCH),), METRIC)
    tiling = tiled(inks, "letter")
    for cell, shown in cut(inks, tiling).items():
        (part,) = [each for each in shown if isinstance(each, Rule)]
        frame, view = tiling.window(cell), tiling.sheet.window
        x, y = part.points[0]
        start = (x - view.left + frame.left, y - view.top + frame.top)
        assert part.offset == pytest.approx(dist(line[0], start), abs=1e-6)


def test_dots_are_all_there_at_their_places():
    dots = tuple((9.0 * x, 11.0 * y) for x in range(40) for y in range(30))
    inks = inked((Dots(dots),), METRIC)
    tiling = tiled(inks, "a4")
    seen = set()
    for cell, shown in cut(inks, tiling).items():
        frame, view = tiling.window(cell), tiling.sheet.window
        seen |= {(round(x - view.left + frame.left, 6), round(y - view.top + frame.top, 6))
                 for each in shown for x, y in each.at}  # fmt: skip
    assert seen == set(dots)


def test_fractions_arrows_and_the_times_sign_are_in_the_pdf_s_text():
    (page,) = printed(Note((0, 0), sentence("½ ¼ ¾ ⅛ → ← ↑ ↓ × 3/8 °")))
    assert "½¼¾⅛→←↑↓×3/8°" in page.words


def test_the_same_pages_give_the_same_bytes_whatever_the_clock_says(monkeypatch):
    pages = pages_of(Area(rectangle(0, 0, 300, 300)))
    first = printer()("Trial", pages)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1234567890")
    assert printer()("Trial", pages) == first
    assert b"20000101000000" in first.replace(b"+00'00", b"")


@pytest.mark.parametrize("bold", [False, True])
def test_words_are_reckoned_rather_too_wide_than_too_narrow(bold):
    text = "Cut 2 from lawn: 11 3/16 in (28.4 cm) across, JOIN WAVES & milliwatt fittings ×½"
    (page,) = read_back([line_of_words(text, bold)])
    wide = max(each.right for each in page.letters) - min(each.left for each in page.letters)
    assert wide <= Words(text, (0, 0), bold=bold).width <= 1.2 * wide


def line_of_words(text, bold):
    return xml(document("t", "d", (297, 210), elements([Words(text, (10, 20), bold=bold)])))


@pytest.mark.parametrize("key", ALL_SHEETS)
def test_whatever_the_measures_every_page_shows_what_lies_in_its_window(key):
    """And there are never more pages than a cutter could put together."""

    @settings(max_examples=12, suppress_health_check=list(HealthCheck))
    @given(inputs_of(find(key)), st.sampled_from(sorted(PAPERS)))
    def look(inputs, paper):
        for drawing in drawings(key, inputs):
            inks = inked(drawing.shapes, METRIC)
            tiling = tiled(inks, paper)
            assert 1 <= len(tiling.kept) <= 90
            for shown in cut(inks, tiling).values():
                assert shown, "an empty page"
                view = tiling.sheet.window.shrunk(-1e-6)
                for ink in shown:
                    reach = ink.reach.shrunk(DOT / 2) if isinstance(ink, Spots) else ink.reach
                    assert view.covers(reach), ink

    look()


def drawings(key, inputs):
    """What is printed with these inputs; nothing where they are refused."""
    try:
        return [each for sheet in sheets(make(find(key), inputs).work(), METRIC)
                for each in sheet.drawings]  # fmt: skip
    except (RefusalError, RefusalsError):
        return []
