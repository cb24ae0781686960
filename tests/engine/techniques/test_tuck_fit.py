"""Tucks to fit, against cloth folded crease by crease in `pleat_folding`."""

from fractions import Fraction
from random import Random

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import folded_by_chart
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)
FOUR = ("panel", "finished_width", "tucks", "depth")


@pytest.mark.parametrize(
    ("written", "name", "found"),
    [
        # 8 tucks of 1/4 in take 4 in: 12 in become 8 in
        ({"panel": "12 in", "finished_width": "8 in", "depth": "1/4 in"}, "tuck_count", "8"),
        ({"panel": "12 in", "finished_width": "8 in", "tucks": 8}, "tuck_depth", "1/4 in"),
        ({"panel": "12 in", "tucks": 8, "depth": "1/4 in"}, "tucked_width", "8 in"),
        ({"finished_width": "8 in", "tucks": 8, "depth": "1/4 in"}, "panel_cut_width", "12 in"),
    ],
)
def test_three_measures_give_the_fourth(written, name, found):
    assert said(work("tuck-fit", **written), name) == found


def test_what_a_whole_count_leaves_goes_to_the_margins():
    """4 1/8 in to take up: 8 tucks of 1/4 in take 4 in, and 1/8 in is left over.

    7 1/2 in between the seams, shared by 9, are 5/6 in from stitching to stitching; each margin is
    that and 1/16 in.
    """
    working = work("tuck-fit", panel="12 1/8 in", finished_width="8 in", depth="1/4 in")
    assert said(working, "tuck_count") == "8"
    assert said(working, "left_over") == "1/8 in"
    assert said(working, "tucked_width") == "8 1/8 in"
    assert length(working, "margin") - length(working, "tuck_spacing") == Length(SIXTEENTH)


def test_with_no_measure_given_there_is_an_example():
    assert said(work("tuck-fit"), "tuck_count") == "8"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"panel": "12 in"}, "finished_width and tucks and depth are both missing"),
        ({"panel": "12 in", "depth": "1/4 in"}, "finished_width and tucks are both missing"),
        (
            {"panel": "12 in", "finished_width": "8 in", "tucks": 8, "depth": "1/4 in"},
            "all four of panel, finished_width, tucks and depth are given",
        ),
        (
            {"panel": "8 in", "finished_width": "8 in", "depth": "1/4 in"},
            "no tuck can be taken from it; use a panel wider than 8 in",
        ),
        (
            {"panel": "8 1/4 in", "finished_width": "8 in", "depth": "1/4 in"},
            "use a depth of at most 1/8 in (3 mm)",
        ),
        ({"panel": "8 in", "tucks": 20, "depth": "1/4 in"}, "use at most 15 tucks"),
        (
            {"panel": "60 in", "finished_width": "10 in", "depth": "1/4 in"},
            "use a depth of at least 5/8 in",
        ),
        (
            {"finished_width": "2 in", "tucks": 1, "depth": "1/4 in", "side_allowance": "1 in"},
            "is all seam",
        ),
    ],
)
def test_what_cannot_be_fitted_is_refused(written, sentence):
    assert sentence in refusal("tuck-fit", **written)


@given(st.integers(64, 320), st.integers(1, 20), st.integers(1, 16))
def test_each_measure_found_is_the_one_that_was_taken_away(finished, tucks, depth):
    widths = Length(finished * SIXTEENTH), Length(depth * SIXTEENTH)
    panel = widths[0] + 2 * tucks * widths[1]
    full = {"panel": panel, "finished_width": widths[0], "tucks": tucks, "depth": widths[1]}
    names = {"panel": "panel_cut_width", "finished_width": "tucked_width", "tucks": "tuck_count",
             "depth": "tuck_depth"}  # fmt: skip
    for missing in FOUR:
        given_three = {name: full[name] for name in FOUR if name != missing}
        try:
            working = work("tuck-fit", cloth_width="120 in", overlap="allowed", **given_three)
        except RefusalError as refused:
            assume("caught in the seam" not in refused.message)
            raise
        assert working.named[names[missing]].amount == full[missing]
        assert length(working, "left_over") == ZERO


def test_a_thousand_fits_fold_to_what_the_page_says():
    random = Random(34)
    worked = 0
    for _ in range(1000):
        full = {
            "panel": Length(random.randint(64, 900) * SIXTEENTH),
            "finished_width": Length(random.randint(40, 500) * SIXTEENTH),
            "tucks": random.randint(1, 20), "depth": Length(random.randint(1, 16) * SIXTEENTH),
        }  # fmt: skip
        full.pop(random.choice(FOUR))
        press = random.choice(["to the right", "to the left"])
        try:
            working = work("tuck-fit", cloth_width="120 in", press=press, **full)
        except RefusalError:
            continue
        worked += 1
        count = working.values["tuck_count"].whole
        folded = folded_by_chart(working, "panel_cut_width", [press == "to the left"] * count)
        assert folded.width == length(working, "tucked_width").mm
        assert folded.cloth == length(working, "panel_cut_width").mm
        assert folded.layers <= 3 and folded.clear_of(SIXTEENTH * 4)
        if "finished_width" in full:
            over = folded.width - full["finished_width"].mm
            assert 0 <= over < 2 * length(working, "tuck_depth").mm
    assert worked > 250
