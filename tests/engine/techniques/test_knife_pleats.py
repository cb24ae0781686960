"""Knife pleats, against cloth folded crease by crease in `pleat_folding`."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import published
from pleat_folding import charted, fold, folded_by_chart
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)


def test_ten_full_pleats_by_hand():
    """10 pleats of 1 in on 10 1/2 in with margins of 1/4 in, as deep as they show: 1 in.

    They take 10 x 2 x 1 = 20 in: cut 10 1/2 + 20 + 2 x 1/4 = 31 in, and each fold lies 3 in after
    the one before. Turned to the right the first fold lies 1/4 + 1/4 + 1 = 1 1/2 in from the edge.
    """
    working = work("knife-pleats", finished_width="10 1/2 in", pleats=10)
    assert said(working, "pleat_visible") == said(working, "pleat_depth") == "1 in"
    assert said(working, "take_up") == "20 in"
    assert said(working, "flat_width") == "31 in"
    assert said(working, "flat_step") == "3 in"
    assert (said(working, "sample_before"), said(working, "sample_after")) == ("5 in", "3 in")
    assert said(working, "hemmed_length") == "12 1/4 in"
    assert said(working, "ratio") == "3"
    assert working.values["pleat_depth"].basis == published("butterick-1921")
    lines = [Length(distance) / Length(16 * SIXTEENTH) for _, distance in charted(working, "Lines")]
    assert lines[:3] == [Fraction(3, 2), Fraction(5, 2), Fraction(7, 2)]


def test_three_to_one_only_where_the_depth_is_what_shows():
    assert said(work("knife-pleats", visible="1 in", depth="1/2 in"), "ratio") == "2"
    assert said(work("knife-pleats", visible="1 in"), "ratio") == "3"


def test_in_a_ring_there_is_no_margin_and_no_side_allowance():
    working = work("knife-pleats", finished_width="12 in", pleats=12, ends="ring")
    assert said(working, "pleat_visible") == "1 in"
    assert said(working, "flat_width") == "36 in"
    assert said(working, "panels") == "1"
    assert said(working, "panel_cut_width") == "36 1/2 in"


def test_what_pleats_of_a_given_width_leave_goes_to_the_margins():
    assert said(work("knife-pleats", visible="1 1/2 in"), "pleat_margin") == "1 in"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"visible": "1 in", "depth": "1 1/2 in"},
            "one depth lies behind 1 in of pleat, 1 1/2 in in all, so the folds would overlap; "
            "use a depth of at most 1 in (25 mm), or overlap: allowed",
        ),
        ({"visible": "2 in"}, "use at most 1 21/32 in (42 mm) each, or at most 10 pleats"),
        ({"visible": "1 in", "margin": "1 in"}, "say the same thing twice"),
        ({"finished_width": "8 in", "margin": "4 in"}, "leave nothing to pleat"),
        (
            {"finished_width": "5 in", "pleats": 1, "visible": "1 in", "depth": "6 in"},
            "would be caught in the seam",
        ),
    ],
)
def test_pleats_without_room_are_refused(written, sentence):
    assert sentence in refusal("knife-pleats", **written)


def test_overlapping_pleats_are_folded_when_asked_for_by_name():
    written = {"visible": "1 in", "depth": "1 1/2 in", "finished_width": "14 in", "pleats": 12}
    working = work("knife-pleats", overlap="allowed", **written)
    folded = folded_by_chart(working, "flat_width")
    assert folded.width == length(working, "pleated_width").mm
    assert folded.layers > 3


def by_hand(edge, margin, visible, depth, *, pleats, right):
    """Fold them as at the ironing board: a plain stretch, then fold by fold."""
    at = edge + margin + (visible if right else 0)
    creases = []
    for _ in range(pleats):
        creases += [at, at + depth] if right else [at + depth, at + 2 * depth]
        at += 2 * depth + visible
    flat = 2 * edge + 2 * margin + pleats * (visible + 2 * depth)
    return fold(flat, creases)


def test_a_thousand_rows_fold_to_what_the_page_says_or_are_refused_for_a_reason():
    random = Random(1921)
    worked = 0
    for _ in range(1000):
        pleats, visible = random.randint(1, 16), random.randint(4, 24)
        depth, margin = random.randint(2, 28), random.randint(0, 12)
        right = random.random() < 0.5
        folded = by_hand(
            *(n * SIXTEENTH for n in (4, margin, visible, depth)), pleats=pleats, right=right
        )
        possible = folded.layers <= 3 and folded.clear_of(4 * SIXTEENTH)
        finished = (2 * margin + pleats * visible) * SIXTEENTH
        written = {
            "pleats": pleats, "visible": Length(visible * SIXTEENTH),
            "depth": Length(depth * SIXTEENTH),
            "turned": "to the right" if right else "to the left",
            "finished_width": Length(finished),
        }  # fmt: skip
        if finished < 64 * SIXTEENTH:
            continue
        try:
            working = work("knife-pleats", **written)
        except RefusalError:
            assert not possible, written
            continue
        assert possible, written
        worked += 1
        charted_fold = folded_by_chart(working, "flat_width")
        assert charted_fold == folded
        assert charted_fold.width == length(working, "pleated_width").mm
        assert charted_fold.cloth == length(working, "flat_width").mm
    assert 200 < worked < 900
