"""Release tucks: narrow where they are sewn, as wide as they were cut where they are freed."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import fold, folded_by_chart
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_six_release_tucks_by_hand():
    """6 tucks of 1/4 in take 3 in: 6 in between the seams above, 9 in below; fullness 1.5."""
    working = work("release-tucks", tucks=6, depth="1/4 in", finished_width="6 in", stitched="3 in")
    assert said(working, "released_width") == "9 in"
    assert said(working, "fullness") == "1.5"
    assert said(working, "panel_cut_width") == "9 1/2 in"
    assert said(working, "stitch_end") == "3 1/4 in"
    assert any("from the upper raw edge to the mark at 3 1/4 in" in step for step in steps(working))


def test_freed_above_too_the_stitching_begins_below_the_seam():
    working = work("release-tucks", freed="above and below", top="2 in", stitched="3 in")
    assert said(working, "stitch_start") == "2 1/4 in"
    assert said(working, "stitch_end") == "5 1/4 in"
    assert any("from the mark 2 1/4 in below it" in step for step in steps(working))


def test_towards_the_centre_they_stand_further_apart():
    assert said(work("release-tucks", press="towards the centre"), "tuck_spacing") == "1/2 in"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"stitched": "10 in"}, "nothing is released; use less than 10 in"),
        (
            {"stitched": "8 in", "freed": "above and below"},
            "nothing is released; use less than 8 in",
        ),
        ({"spacing": "1/8 in"}, "use a spacing of at least 1/4 in"),
        ({"finished_width": "2 in"}, "would be caught in the seam"),
    ],
)
def test_tucks_that_release_nothing_or_have_no_room_are_refused(written, sentence):
    assert sentence in refusal("release-tucks", **written)


def test_a_thousand_panels_are_narrow_above_and_flat_below():
    random = Random(7)
    worked = 0
    for _ in range(1000):
        tucks, depth = random.randint(1, 16), random.randint(1, 12)
        written = {
            "tucks": tucks, "depth": Length(depth * SIXTEENTH),
            "spacing": Length(random.randint(depth, 40) * SIXTEENTH),
            "finished_width": Length(random.randint(32, 400) * SIXTEENTH),
            "cloth_width": "120 in",
        }  # fmt: skip
        try:
            working = work("release-tucks", **written)
        except RefusalError:
            continue
        worked += 1
        sewn = folded_by_chart(working, "panel_cut_width", [False] * tucks)
        freed = fold(length(working, "panel_cut_width").mm, [])
        edges = 2 * length(working, "side_allowance").mm
        assert sewn.width - edges == length(working, "finished_width").mm
        assert freed.width - edges == length(working, "released_width").mm
        assert freed.cloth == sewn.cloth
        assert sewn.layers <= 3 and sewn.clear_of(edges / 2)
    assert worked > 300
