"""The banded ruffle, against two strips sewn and folded point by point in `folding`."""

from fractions import Fraction

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from folding import fold_pair
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.working.workings import Working
from worked import length, refusal, said, steps, work

AWAY = "away from the band"

sixteenths = st.integers(1, 32).map(lambda n: Fraction(n, 16))
widths = st.fractions(Fraction(1, 4), 40, max_denominator=32).map(inches)
bands = st.fractions(Fraction(1, 16), 6, max_denominator=32).map(inches)
allowances = sixteenths.map(inches)


@pytest.mark.parametrize(
    ("front", "band", "seam", "facing"),
    [
        # common practice, no source
        ("2 in", "1/2 in", None, "3 in"),
        ("1 1/2 in", "1/4 in", "1/4 in", "2 in"),
    ],
)
def test_the_facing_is_cut_twice_the_band_wider(front, band, seam, facing):
    written = {"front": front, "band": band} | ({"seam_allowance": seam} if seam else {})
    assert said(work("banded-ruffle", **written), "facing_cut_width") == facing


def test_a_sleeve_ruffle_worked_by_hand():
    """Common practice, no source: 1 1/2 in of front shows above a 1/4 in band.

    The front is cut 1 1/2 + 1/4 (band seam) + 1/4 (edge seam) = 2 in, the facing 2 1/2 in. Sewn
    and opened flat they are 2 + 2 1/2 - 1/2 = 4 in; folded 2 in; below the edge seam hang 1 3/4.
    """
    working = work("banded-ruffle", shows="1 1/2 in", band="1/4 in")
    assert said(working, "front_cut_width") == "2 in"
    assert said(working, "facing_cut_width") == "2 1/2 in"
    assert said(working, "opened_width") == "4 in"
    assert said(working, "finished_depth") == "2 in"
    assert said(working, "hangs") == "1 3/4 in"
    assert said(working, "fold_line") == "1/2 in"
    assert said(working, "front_seam_line") == "1 3/4 in"


@pytest.mark.parametrize(
    ("band", "seam"), [("1/4 in", "1/4 in"), ("1/2 in", "1/2 in"), ("9/16 in", "1/4 in")]
)
def test_a_narrow_band_is_filled_by_its_allowance(band, seam):
    working = work("banded-ruffle", band=band)
    assert said(working, "band_seam") == seam
    assert working.values["band_seam"].basis == PRACTICE
    assert (
        work("banded-ruffle", band=band, seam_allowance="1/8 in").values["band_seam"].basis == GIVEN
    )


def test_an_allowance_wider_than_the_band_it_is_pressed_into_is_refused():
    assert refusal("banded-ruffle", band="1/4 in", seam_allowance="1/2 in") == (
        "seam_allowance 1/2 in is wider than band 1/4 in; it cannot lie flat inside it (use at "
        "most 1/4 in, trim it to 1/4 in after sewing and write that, or press it away: press: "
        '"away from the band")'
    )


def test_each_way_out_that_the_refusal_names_is_open():
    narrow = work("banded-ruffle", band="1/4 in", seam_allowance="1/4 in")
    away = work("banded-ruffle", band="1/4 in", seam_allowance="1/2 in", press=AWAY)
    for working in (narrow, away):
        assert said(working, "facing_cut_width") == said(
            work("banded-ruffle", front=length(working, "front_cut_width"), band="1/4 in"),
            "facing_cut_width",
        )
    assert any("away from the band" in step for step in steps(away))
    assert any("toward the facing" in step for step in steps(narrow))


def test_an_allowance_of_just_the_band_lies_in_it():
    assert work("banded-ruffle", band="3/8 in", seam_allowance="3/8 in")
    assert "wider than band" in refusal("banded-ruffle", band="3/8 in", seam_allowance="13/32 in")


def test_front_and_shows_are_not_both_written():
    assert refusal("banded-ruffle", front="2 in", shows="1 in") == (
        "front and shows say the same thing twice; write one of them"
    )


def test_a_front_that_is_all_seam_is_refused():
    assert refusal("banded-ruffle", front="1/2 in", band="1/4 in") == (
        "front 1/2 in leaves nothing to show; its two seams take 1/2 in (13 mm), so cut it wider "
        "than that"
    )


@given(widths, bands, allowances)
def test_the_facing_is_front_and_two_bands_whatever_the_allowance(front, band, seam):
    assume(front > seam + inches("1/4"))
    working = work("banded-ruffle", front=front, band=band, seam_allowance=seam, press=AWAY)
    assert length(working, "facing_cut_width") == front + 2 * band


def folded(working: Working):
    return fold_pair(
        length(working, "front_cut_width").mm,
        length(working, "facing_cut_width").mm,
        length(working, "band_seam").mm,
    )


@settings(max_examples=300)
@given(widths, bands, allowances, allowances)
def test_sewn_and_folded_it_measures_what_the_page_says(shows, band, seam, edge):
    working = work(
        "banded-ruffle",
        shows=shows, band=band, seam_allowance=seam, edge_allowance=edge, press=AWAY,
        cloth_width="120 in", rows_apart="1/16 in",
    )  # fmt: skip
    pair = folded(working)
    assert pair.band == band.mm
    assert pair.front_that_shows(edge.mm) == shows.mm == length(working, "front_shows").mm
    assert pair.depth == length(working, "finished_depth").mm
    assert pair.opened == length(working, "opened_width").mm
    assert pair.depth - edge.mm == length(working, "hangs").mm


@given(widths, bands, allowances)
def test_given_the_front_it_folds_to_the_same(front, band, seam):
    assume(front > seam + inches("1/4"))
    working = work("banded-ruffle", front=front, band=band, seam_allowance=seam, press=AWAY)
    assert folded(working).band == band.mm
    assert folded(working).front_that_shows(inches("1/4").mm) == length(working, "front_shows").mm


@given(widths, bands, st.integers(0, 8).map(lambda n: inches(Fraction(n, 16))))
def test_the_fold_is_marked_where_it_falls_and_thick_cloth_turns_beyond_it(shows, band, turn):
    """Half of the turn of cloth goes round to each side, so the fold lies that much lower."""
    working = work("banded-ruffle", shows=shows, band=band, turn_of_cloth=turn)
    assert folded(working).depth - (turn / 2).mm == length(working, "finished_depth").mm
    seam_to_fold = length(working, "fold_line") - length(working, "band_seam")
    assert seam_to_fold == band
    assert folded(working).band == (band + turn / 2).mm


def test_contrasting_cloths_are_bought_each_and_the_same_cloth_once():
    contrast = work("banded-ruffle", edge="60 in", facing_cloth_width="36 in")
    assert {piece.cloth for piece in contrast.pieces} == {"front cloth", "facing cloth"}
    assert said(contrast, "facing_usable_width") == "35 in"
    assert said(contrast, "front_strips") == "3"  # 90 1/2 in: 44 + 44 in lack the seam
    assert "cloth_to_buy" not in contrast.values
    same = work("banded-ruffle", edge="60 in", facing_cloth="same")
    assert {piece.cloth for piece in same.pieces} == {"cloth"}
    # 90 1/2 in: three strips of each, 30 1/2 in long, one across the cloth
    rows = [3 * length(same, f"{each}_cut_width") for each in ("front", "facing")]
    assert length(same, "cloth_used") == rows[0] + rows[1]


def test_every_checkpoint_is_a_number_of_the_working():
    measured = [step for step in steps(work("banded-ruffle", front="2 in")) if ">" in step]
    assert any("opened flat, it is 4 in from raw edge" in step for step in measured)
    assert any("from raw edges to fold it is 2 in" in step for step in measured)
    assert measured[-1].endswith(
        "> below the seam the front shows 1 1/2 in and the band 1/4 in, 1 3/4 in in all."
    )
