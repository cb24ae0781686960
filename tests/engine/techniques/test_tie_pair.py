"""Ties folded by `pleat_folding`, and the places where none are sewn."""

from fractions import Fraction
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drawn import check_dimensions
from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.bodies.measures import LENGTHS
from handout_engine.drawing.scene import Area, Dimension, Shown
from handout_engine.geometry.polygons import extents
from handout_engine.pages.blocks import read_block
from handout_engine.pages.page import work_page
from pleat_folding import fold
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)
TUBE, HEMMED = "a turned tube", "one layer, hemmed"
DRAWN = "drawn through at waist or hem"


def test_a_tube_by_hand():
    """1 in wide, seam 1/4 in: 2 1/2 in cut. 18 in, a seam across the end and 1/2 in: 18 3/4."""
    working = work("tie-pair", tie_length="18 in", tie_width="1 in", hem_below="9 in")
    assert said(working, "cut_width") == "2 1/2 in"
    assert said(working, "cut_length") == "18 3/4 in"
    (piece,) = working.pieces
    assert piece.count == 2


def test_a_hemmed_tie_by_hand():
    """4 in wide with hems of 1/4 + 1/4 in: 5 in cut; 18 in, one hem and 1/2 in: 19 in long."""
    working = work("tie-pair", made=HEMMED, tie_length="18 in", tie_width="4 in",
                   hem_turn="1/4 in", pairs=3, hem_below="9 in")  # fmt: skip
    assert said(working, "cut_width") == "5 in"
    assert said(working, "cut_length") == "19 in"
    assert working.pieces[0].count == 6


def random_ties(made):
    """A thousand ties as written and worked; those that are refused are left out."""
    random = Random(14682)
    for _ in range(1000):
        written = {
            "made": made,
            "hem_below": "40 in",
            "tie_length": Length(random.randint(32, 640) * SIXTEENTH),
            "tie_width": Length(random.randint(4, 80) * SIXTEENTH),
            "seam": Length(random.randint(1, 8) * SIXTEENTH),
            "hem_turn": Length(random.randint(1, 12) * SIXTEENTH),
            "end_allowance": Length(random.randint(4, 30) * SIXTEENTH),
        }
        try:
            yield written, work("tie-pair", **written)
        except RefusalError:
            continue


def test_a_thousand_tubes_folded_and_sewn_are_as_wide_and_long_as_asked():
    worked = 0
    for written, working in random_ties(TUBE):
        worked += 1
        seam, width = written["seam"].mm, length(working, "cut_width").mm
        at = length(working, "fold_line").mm
        first, second, inside = fold(width - seam, [at - seam, width - 2 * seam]).stretches
        assert first == (0, written["tie_width"].mm)
        assert second[1] == 0, "the two stitching lines meet"
        assert max(inside) <= written["tie_width"].mm, "the allowance lies in the tie"
        whole = length(working, "cut_length") - written["seam"]
        assert whole - written["end_allowance"] == written["tie_length"]
    assert worked > 900


def test_a_thousand_hemmed_ties_folded_twice_at_both_edges_are_as_wide_as_asked():
    worked = 0
    for written, working in random_ties(HEMMED):
        worked += 1
        creases = [length(working, name).mm for name in
                   ("first_fold", "second_fold", "far_second_fold", "far_first_fold")]  # fmt: skip
        raw, turn, face, other, end = fold(length(working, "cut_width").mm, creases).stretches
        assert abs(face[1] - face[0]) == written["tie_width"].mm
        for part in (raw, turn, other, end):
            assert abs(part[1] - part[0]) == written["hem_turn"].mm
        assert max(turn) <= min(other) or max(other) <= min(turn), "no hem lies on the other"
        free = length(working, "cut_length") - 2 * written["hem_turn"] - written["end_allowance"]
        assert free == written["tie_length"]
    assert worked > 700


def test_at_neck_and_hood_none_are_made():
    assert refusal("tie-pair", place="neck or hood") == (
        "no tie or cord belongs at the neck or hood of a child's garment, where it can catch and "
        "pull tight; close it with a button or a loop, or sew a bow down flat through its knot"
    )


@pytest.mark.parametrize(("tie", "made"), [("75 mm", True), ("76 mm", False), ("3 in", False)])
def test_drawn_through_no_more_than_seventy_five_millimetres_hang_free(tie, made):
    if made:
        working = work("tie-pair", place=DRAWN, tie_length=tie)
        assert length(working, "longest") == millimetres(75)
    else:
        assert "use at most 2 15/16 in (75 mm)" in refusal("tie-pair", place=DRAWN, tie_length=tie)


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"tie_width": "1/4 in", "seam": "3/8 in"}, "write at most 1/4 in (6 mm)"),
        ({"made": HEMMED, "tie_width": "1/2 in", "hem_turn": "3/8 in"}, "use at most 1/4 in"),
    ],
)
def test_the_refusals_name_the_nearest_that_can_be_sewn(written, sentence):
    assert sentence in refusal("tie-pair", **written)


def test_its_cautions_speak_of_cords_and_of_bonnets():
    assert {"neck-cords", "ties-catch"} <= {each.key for each in work("tie-pair").cautions}
    bonnet = {each.key for each in work("tie-pair", place="bonnet").cautions}
    assert "bonnet-comes-off" in bonnet


def test_the_finished_tie_is_measured_with_its_end():
    working = work("tie-pair", tie_length="18 in", hem_below="9 in")
    assert length(working, "with_end") == inches("37/2")
    assert sum("18 1/2 in long" in each for each in steps(working)) == 1


def test_a_tie_that_is_drawn_through_is_sewn_to_what_runs_in_the_casing():
    drawn = steps(work("tie-pair", place=DRAWN, tie_length="2 in"))
    assert any("stitch the band down at the middle" in each for each in drawn)
    assert not any("Sew the seam over them" in each for each in drawn)


def test_a_sash_on_a_dress_of_fourteen_inches_by_hand():
    """From the waist 7 in to the hem; 5 in round to the back, 5 in for loop and knot.

    17 in reach the hem exactly. 18 in, 24 in and 28 in, as the page once had them, pass it.
    """
    dress = {"hem_below": "7 in", "reach": "5 in", "bow": "5 in"}
    to_the_hem = work("tie-pair", tie_length="17 in", **dress)
    assert said(to_the_hem, "bow_end") == "7 in"
    assert said(to_the_hem, "above_hem") == "0 in"
    for long in ("17 1/16 in", "18 in", "24 in", "28 in"):
        assert "use at most 17 in (43.1 cm)" in refusal("tie-pair", tie_length=long, **dress)


@given(st.integers(32, 640), st.integers(16, 320), st.integers(0, 160), st.integers(0, 160))
def test_no_bow_hangs_below_its_hem(tie, hem, reach, bow):
    """The tie laid out: round to the knot, into the bow, and down; it ends above the hem."""
    written = {"tie_length": tie, "hem_below": hem, "reach": reach, "bow": bow}
    try:
        working = work("tie-pair", **{name: Length(n * SIXTEENTH) for name, n in written.items()})
    except RefusalError:
        assert tie - reach - bow > hem
        return
    hangs = max(0, tie - reach - bow)
    assert hangs <= hem
    assert length(working, "bow_end") == Length(hangs * SIXTEENTH)
    assert length(working, "above_hem") == Length((hem - hangs) * SIXTEENTH)
    untied = any("Untied each reaches" in step for step in steps(working))
    assert untied == (tie > hem)


def test_a_sash_says_which_rules_were_consulted():
    (said_of_it,) = [each for each in work("tie-pair").cautions if each.key == "sash-length"]
    assert {each.key for each in said_of_it.sources} == {"en-14682", "cfr-1120"}
    assert "No rule that could be consulted" in said_of_it.text
    drawn = {each.key for each in work("tie-pair", place=DRAWN, tie_length="2 in").cautions}
    assert "sash-length" not in drawn


@pytest.mark.parametrize("size", LENGTHS)
def test_a_sash_on_a_summer_dress_takes_its_length_from_the_dress(size):
    page = work_page(
        [
            read_block({"garment": "summer-dress", "size": size}),
            read_block({"technique": "tie-pair", "name": "sash", "tie_length": "14 in",
                        "hem_below": "garment.waist_to_hem"}),
        ],
        Tape(),
    )  # fmt: skip
    assert not page.problems
    dress, sash = page.workings["garment"], page.workings["sash"]
    below = length(dress, "finished_length") - dress.inputs["back_waist"].length
    assert length(dress, "waist_to_hem") == below
    assert length(sash, "bow_end") + length(sash, "above_hem") == below


@pytest.mark.parametrize(
    ("reach", "below", "width"), [("1 in", "30 in", "1 in"), ("1 in", "4 in", "3 in")]
)
def test_a_bow_near_its_seam_is_drawn_to_scale(reach, below, width):
    """The garment goes on beyond the knot; neither the way to it nor the tie is drawn otherwise."""
    written = {"tie_length": "6 in", "bow": "4 in"}
    near = work("tie-pair", reach=reach, hem_below=below, tie_width=width, **written)
    (scene,) = [picture.scene for picture in near.pictures if picture.name == "worn"]
    check_dimensions(scene)
    measured = {each.amount.name: each for each in scene.shapes if isinstance(each, Dimension)}
    assert set(measured) == {"reach", "hem_below", "bow_end"}
    assert {each.shown for each in measured.values()} == {Shown.TO_SCALE}
    across = float(length(near, "reach")), float(length(near, "tie_width"))
    boxes = [extents(each.points) for each in scene.shapes if isinstance(each, Area)]
    assert across in [(right - left, low - top) for (left, top), (right, low) in boxes]
