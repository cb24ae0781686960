"""Straight hems, folded in `folding`, whatever the kind."""

from fractions import Fraction
from random import Random

import pytest

from folding import mirrored, turn_up
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_skirt_of_moderate_flare_by_hand():
    """18 in long, hem 2 in with 1/4 in turned under, 1/2 in at the top: 18 + 2 1/4 + 1/2 = 20 3/4.

    The fold lies 18 1/2 in from the top, the turned edge 20 1/2 in. Let down to a narrow hem of
    1/4 + 1/4 in it gains 2 1/4 - 1/2 = 1 3/4 in.
    """
    working = work("hem", finished_length="18 in", skirt="moderate flare", hem="double")
    assert said(working, "panel_cut_length") == "20 3/4 in"
    assert said(working, "edge_line") == "18 1/2 in"
    assert said(working, "turn_line") == "20 1/2 in"
    assert said(working, "most_let_down") == "1 3/4 in"


@pytest.mark.parametrize(
    ("kind", "allowance"),
    [("double", "2 1/4 in"), ("single", "2 in"), ("rolled and whipped", "1/8 in"),
     ("faced", "1/4 in")],
)  # fmt: skip
def test_what_each_kind_takes(kind, allowance):
    assert said(work("hem", hem=kind), "hem_allowance") == allowance


def test_growth_makes_the_hem_deeper_and_is_let_down_again():
    """Hem 1 1/2 in and 2 in of growth: folded 3 1/2 in now; the panel is longer by the growth."""
    small = work("hem", skirt="flared")
    grown = work("hem", skirt="flared", growth="2 in")
    assert said(grown, "hem_made") == "3 1/2 in"
    assert length(grown, "panel_cut_length") - length(small, "panel_cut_length") == inches(2)
    let_down = {row[0]: row[1:] for row in grown.charts[-1].rows}
    assert let_down["growth let down"] == (inches(20), inches("3/2"))
    assert let_down["all let down"] == (inches("85/4"), inches("1/4"))


def test_what_is_measured_on_the_way_to_a_hem_by_hand():
    """A 1/8 in roll is stitched at its half; an 18 in panel grows by 1 in first, and in all by its
    hem allowance of 3 1/4 in less two turns of 1/4 in."""
    assert said(work("hem", hem="rolled and whipped"), "stitch_in_roll") == "1/16 in"
    grown = work("hem", growth="1 in")
    assert said(grown, "length_grown") == "19 in"
    assert said(grown, "length_let_down") == "20 3/4 in"


def test_a_thousand_panels_end_where_the_page_says_when_they_are_folded():
    """The panel is turned up as the marks say; what hangs below the top seam is its length."""
    random = Random(29)
    worked = 0
    for _ in range(1000):
        kind = random.choice(["double", "single"])
        written = {
            "hem": kind, "finished_length": Length(random.randint(16, 400) * SIXTEENTH),
            "hem_depth": Length(random.randint(1, 80) * SIXTEENTH),
            "turn": Length(random.randint(1, 16) * SIXTEENTH),
            "growth": Length(random.choice([0, random.randint(0, 40)]) * SIXTEENTH),
            "top_allowance": Length(random.randint(0, 20) * SIXTEENTH),
        }  # fmt: skip
        try:
            working = work("hem", **written)
        except RefusalError:
            continue
        worked += 1
        raw = length(working, "panel_cut_length").mm
        fold = length(working, "edge_line").mm
        if kind == "double":
            turned = length(working, "turn_line").mm
            assert mirrored(raw, turned) == turned - written["turn"].mm
            raw, inner = mirrored(raw, turned), turned
        else:
            inner = raw
        deep = fold - mirrored(inner, fold)
        assert deep == (written["hem_depth"] + written["growth"]).mm
        assert mirrored(raw, fold) <= fold, "the raw edge lies inside the hem"
        assert fold - written["top_allowance"].mm == written["finished_length"].mm
    assert worked > 500


def test_an_equal_double_hem_is_two_turns_of_one_depth():
    working = work("hem", hem_depth="1 in", turn="1 in", top_allowance="0 in")
    turned = turn_up(length(working, "panel_cut_length").mm, inches(1).mm, 2)
    assert turned.finished == length(working, "edge_line").mm == inches(18).mm
    assert turned.inner_fold == turned.finished - inches(1).mm


def test_a_faced_hem_is_cut_from_two_pieces():
    """Facing: 1/4 in seam + 2 in + 1/4 in turned under = 2 1/2 in, as long as the panel is wide."""
    working = work("hem", hem="faced")
    panel, facing = working.pieces
    assert facing.width.length == inches("5/2")
    assert facing.length.length == panel.length.length == inches(21)
    assert "panel_cut_length" in working.values
    assert any("close to the seam" in step for step in steps(working))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"hem": "faced", "growth": "1 in"}, "a faced hem holds no growth"),
        ({"hem": "rolled and whipped", "growth": "1 in"}, "use a double or single hem"),
        ({"hem_depth": "1/8 in"}, "use at most 1/8 in (3 mm), or a deeper or a single hem"),
        ({"finished_length": "2 in"}, "as deep as the panel is long"),
    ],
)
def test_a_hem_that_cannot_be_folded_is_refused(written, sentence):
    assert sentence in refusal("hem", **written)
