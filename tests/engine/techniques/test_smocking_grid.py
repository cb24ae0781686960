"""Smocking on a grid of dots, against pleats gathered one by one along a thread."""

from fractions import Fraction
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import html
from handout_engine.drawing.scene import Dots
from handout_engine.paper.true_scale import true_scale
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)


def test_six_inches_by_hand():
    """3 to 1 is 18 in of cloth, 72 spaces of 1/4 in, so 72 pleats and 73 dots.

    1 1/2 in holds 4 spaces of 3/8 in: 5 rows, with a holding row above and below 7, 2 1/4 in from
    the first to the last. Cut 18 + 2 x 1/2 in wide, 1/2 + 2 1/4 + 10 in deep.
    """
    working = work("smocking-grid", finished="6 in", height="1 1/2 in", below="10 in")
    assert said(working, "pleats") == "72"
    assert said(working, "dots") == "73"
    assert said(working, "rows") == "5"
    assert said(working, "all_rows") == "7"
    assert said(working, "dotted_height") == "2 1/4 in"
    assert said(working, "cut_width") == "19 in"
    assert said(working, "cut_depth") == "12 3/4 in"
    assert said(working, "pleat_depth") == "1/8 in"
    assert said(working, "threads_total") == "133 in"


def test_a_sample_goes_before_the_fullness():
    working = work("smocking-grid", sample_flat="6 in", sample_smocked="1 1/2 in", fullness="2")
    assert said(working, "sample_fullness") == "4"
    assert said(working, "flat_width") == "24 in"


def gathered(flat, spacing):
    """Walk along the flat cloth from dot to dot until it is used: each step becomes a pleat.

    The thread is drawn up, so each dot comes to lie on the one before, with the cloth between them
    folded in half behind it.
    """
    at, pleats, cloth, deepest = Fraction(0), 0, Fraction(0), Fraction(0)
    while at < flat:
        fold = at + spacing / 2
        deepest = max(deepest, fold - at)
        cloth += 2 * (fold - at)
        at += spacing
        pleats += 1
    return pleats, cloth, deepest


def test_a_thousand_panels_gather_to_what_the_page_says():
    random = Random(1916)
    worked = 0
    for _ in range(1000):
        finished = random.randint(16, 200) * SIXTEENTH
        fullness = Fraction(random.randint(9, 30), 6)
        spacing = random.randint(1, 8) * SIXTEENTH
        side = random.randint(2, 16) * SIXTEENTH
        written = {
            "finished": Length(finished), "fullness": fullness, "dot_spacing": Length(spacing),
            "side": Length(side), "cloth_width": "120 in",
        }  # fmt: skip
        try:
            working = work("smocking-grid", **written)
        except RefusalError:
            continue
        worked += 1
        pleats, cloth, deepest = gathered(finished * fullness, spacing)
        assert working.values["pleats"].amount == pleats
        assert working.values["dots"].amount == pleats + 1
        assert length(working, "flat_width").mm == cloth
        assert length(working, "pleat_depth").mm == deepest
        assert length(working, "cut_width").mm == side + cloth + side
        assert length(working, "ten_pleats").mm * pleats == 10 * finished
    assert worked > 700


@given(st.integers(24, 128), st.integers(3, 12))
def test_whole_pleats_never_give_less_than_the_fullness_asked_nor_a_whole_pleat_more(n, spacing):
    working = work("smocking-grid", finished=Length(n * SIXTEENTH), cloth_width="120 in",
                   dot_spacing=Length(spacing * SIXTEENTH / 2))  # fmt: skip
    wanted, flat = length(working, "flat_wanted"), length(working, "flat_width")
    assert wanted <= flat < wanted + length(working, "dot_spacing")


@given(st.integers(4, 60), st.integers(2, 12))
def test_rows_fit_into_the_height_and_leave_less_than_one_space(height, spacing):
    written = {"height": Length(height * SIXTEENTH), "row_spacing": Length(spacing * SIXTEENTH)}
    if height < spacing:
        assert "does not hold two rows" in refusal("smocking-grid", **written)
        return
    working = work("smocking-grid", **written)
    left = height * SIXTEENTH - length(working, "worked_height").mm
    assert 0 <= left < spacing * SIXTEENTH
    assert len(working.charts[0].rows) == working.values["all_rows"].amount


def test_the_sheet_holds_its_dots_at_true_distances_in_a_small_file():
    working = work("smocking-grid", dot_spacing="1/8 in", row_spacing="1/8 in", height="6 in")
    (sheet,) = [picture.sheet for picture in working.pictures if picture.sheet]
    (dots,) = [shape for shape in sheet.shapes if isinstance(shape, Dots)]
    assert len(dots.at) == 57 * 51
    assert dots.at[1][0] - dots.at[0][0] == pytest.approx(3.175)
    assert dots.at[57][1] - dots.at[0][1] == pytest.approx(3.175)
    assert len(html(true_scale(sheet, Tape()))) < 80_000


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"height": "1/4 in", "row_spacing": "1/2 in"}, "use at least 1/2 in (13 mm)"),
        ({"sample_flat": "3 in", "sample_smocked": "3 in"}, "is not less than the 3 in (76 mm)"),
        ({"finished": "20 in"}, "smock at most 14 5/16 in (36.4 cm)"),
        ({"finished": "1 in", "dot_spacing": "1/2 in"},
         "would take 6 pleats, fewer than 10, which is no smocking"),
        ({"finished": "24 in", "fullness": "5", "dot_spacing": "1/16 in", "cloth_width": "120 in"},
         "finished would take 1920 pleats, more than 1500"),
        ({"dot_spacing": "1/16 in", "row_spacing": "1/8 in", "height": "8 in"},
         "use a sheet at most 3 5/8 in (92 mm) wide"),
    ],
)  # fmt: skip
def test_what_cannot_be_smocked_is_refused_with_the_way_out(written, sentence):
    assert sentence in refusal("smocking-grid", **written)


def test_the_ways_out_that_a_refusal_names_are_ways_out():
    assert said(work("smocking-grid", finished="14 5/16 in"), "cut_width") == "44 in"
    work("smocking-grid", finished="1 in", dot_spacing="1/4 in")
    work("smocking-grid", dot_spacing="1/16 in", row_spacing="1/8 in", height="8 in",
         sheet_width="3 5/8 in")  # fmt: skip
