"""Sets of tucks, against cloth folded crease by crease in `pleat_folding`."""

from fractions import Fraction
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.working.workings import Working
from pleat_folding import charted, folded_by_chart, sewn_tucks
from worked import length, refusal, said, steps, work

PRESSES = ("to the right", "to the left", "away from the centre", "towards the centre")
SIXTEENTH = Fraction(127, 80)


def to_the_left(press: str, tucks: int) -> list[bool]:
    half = [number < tucks // 2 for number in range(tucks)]
    return {
        "to the right": [False] * tucks,
        "to the left": [True] * tucks,
        "away from the centre": half,
        "towards the centre": [not left for left in half],
    }[press]


def test_five_spaced_tucks_by_hand():
    """5 tucks of 1/4 in, 3/8 in from stitching to stitching, 6 in between the seams.

    They take 5 x 2 x 1/4 = 2 1/2 in, so with 1/2 in of spare the panel is cut 6 + 2 1/2 + 2 x 1/4 +
    1/2 = 9 1/2 in. The row spans 4 x 3/8 = 1 1/2 in, each margin is (6 - 1 1/2) / 2 = 2 1/4 in, the
    first line lies half of the spare farther in, 1/4 + 1/4 + 2 1/4 = 2 3/4 in from the raw edge,
    and on the flat each tuck begins 3/8 + 1/2 = 7/8 in after the one before.
    """
    working = work("tuck-set", tucks=5, depth="1/4 in", spacing="3/8 in", finished_width="6 in")
    assert said(working, "take_up") == "2 1/2 in"
    assert said(working, "panel_cut_width") == "9 1/2 in"
    assert said(working, "margin") == said(working, "last_margin") == "2 1/4 in"
    assert said(working, "first_line") == "2 3/4 in"
    assert said(working, "flat_step") == "7/8 in"
    assert said(working, "space") == "1/8 in"
    lines = [Length(distance) for _, distance in charted(working, "Lines")]
    assert lines[:4] == [inches("11/4"), inches(3), inches("13/4"), inches("29/8")]


def test_the_kinds_have_their_own_spacing():
    pin, blind = work("tuck-set", kind="pin"), work("tuck-set", kind="blind")
    assert (said(pin, "tuck_depth"), said(pin, "tuck_spacing")) == ("1/16 in", "1/8 in")
    assert (said(blind, "tuck_depth"), said(blind, "tuck_spacing")) == ("1/4 in", "1/4 in")
    assert said(blind, "space") == "0 in"


def test_from_one_edge_the_rest_goes_to_the_other_margin():
    working = work("tuck-set", first_margin="1/2 in", spacing="1/2 in")
    assert said(working, "margin") == "1/2 in"
    assert said(working, "last_margin") == "3 1/2 in"


def test_the_distances_from_the_centre_mirror_each_other():
    (chart,) = work("tuck-set", tucks=4).charts
    offsets = [row[2] for row in chart.rows]
    half = length(work("tuck-set", tucks=4), "panel_cut_width") / 2
    for row, mirror in zip(chart.rows, reversed(chart.rows), strict=True):
        assert row[1] - half == half - mirror[1]
    assert len(offsets) == 12


def test_tucks_nearer_than_they_are_deep_are_refused_unless_asked_for_by_name():
    assert refusal("tuck-set", depth="1/2 in", spacing="3/8 in") == (
        "tucks 1 and 2 stand 3/8 in apart, and 1/2 in of tuck would lie over that gap; use a "
        "spacing of at least 1/2 in (13 mm), or shallower tucks, or write overlap: allowed"
    )
    assert work("tuck-set", depth="1/2 in", spacing="1/2 in")
    assert work("tuck-set", depth="1/2 in", spacing="3/8 in", overlap="allowed")


def test_towards_the_centre_two_tucks_lie_over_its_gap():
    written = {"tucks": 4, "press": "towards the centre", "depth": "1/4 in"}
    assert "1/2 in of tuck would lie" in refusal("tuck-set", spacing="3/8 in", **written)
    assert work("tuck-set", spacing="1/2 in", **written)


def test_a_middle_tuck_lies_with_the_right_half_and_the_step_says_so():
    pressing = [step for step in steps(work("tuck-set", tucks=5, press="away from the centre"))
                if step.startswith("Press")]  # fmt: skip
    assert "away from the centre, the middle one with the right half" in pressing[0]


def test_a_tuck_that_would_be_caught_in_the_seam_is_refused_with_the_width_it_needs():
    sentence = refusal("tuck-set", tucks=5, depth="1/4 in", spacing="1/2 in",
                       finished_width="2 1/4 in")  # fmt: skip
    assert sentence == (
        "the tucks leave a margin of 1/8 in at the right, and the last one would be caught in the "
        "seam; use a finished_width of at least 2 1/2 in (64 mm), or fewer, shallower or closer "
        "tucks"
    )
    assert work("tuck-set", tucks=5, depth="1/4 in", spacing="1/2 in", finished_width="2 1/2 in")
    assert "use a first_margin of at least 1/4 in" in refusal(
        "tuck-set", first_margin="1/8 in", press="to the left"
    )


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"kind": "blind", "spacing": "1/2 in"}, "they stand 1/4 in (6 mm) apart"),
        ({"finished_width": "2 in", "spacing": "1 in"}, "over more than the finished width"),
    ],
)
def test_impossible_measures_are_refused(written, sentence):
    assert sentence in refusal("tuck-set", **written)


@given(st.integers(1, 30), st.integers(1, 8), st.integers(0, 8))
def test_cloth_is_conserved_and_the_steps_say_so(tucks, depth, space):
    working = work(
        "tuck-set", tucks=tucks, depth=Length(depth * SIXTEENTH),
        spacing=Length((depth + space) * SIXTEENTH), finished_width="40 in", cloth_width="120 in",
    )  # fmt: skip
    flat, tucked = length(working, "panel_cut_width"), length(working, "tucked_width")
    assert flat - tucked == length(working, "take_up") + length(working, "spare_width")
    assert sum("Measure" in step or ">" in step for step in steps(working)) >= 3


def random_set(random: Random) -> dict[str, object]:
    depth = random.randint(1, 24)
    spacing = random.choice([depth, random.randint(1, 60)])
    tucks = random.randint(1, min(16, 500 // spacing))
    finished = max(32, spacing * (tucks - 1) + random.randint(1, 80))
    return {
        "tucks": tucks,
        "depth": Length(depth * SIXTEENTH),
        "spacing": Length(spacing * SIXTEENTH),
        "finished_width": Length(finished * SIXTEENTH),
        "press": random.choice(PRESSES),
        "side_allowance": Length(random.randint(0, 8) * SIXTEENTH),
        "spare_width": Length(random.randint(0, 16) * SIXTEENTH),
        "cloth_width": "120 in",
    }


def sewn(written: dict[str, object]):
    """The same tucks sewn one by one, symmetrical about the centre of the finished width."""
    tucks, depth, spacing, finished, edge, spare = (
        value.mm if isinstance(value := written[name], Length) else value
        for name in ("tucks", "depth", "spacing", "finished_width", "side_allowance",
                     "spare_width")
    )  # fmt: skip
    edge += spare / 2
    margin = edge + (finished - spacing * (tucks - 1)) / 2
    return sewn_tucks(
        margin, [depth] * tucks, [spacing] * (tucks - 1), margin,
        to_the_left(written["press"], tucks),
    ), edge  # fmt: skip


def test_a_thousand_sets_fold_to_what_the_page_says_or_are_refused_for_a_reason():
    """Refused exactly when the simulation has a fourth layer, or cloth caught in a side seam."""
    random = Random(1901)
    worked = 0
    for _ in range(1000):
        written = random_set(random)
        folded, edge = sewn(written)
        possible = folded.layers <= 3 and folded.clear_of(edge)
        try:
            working: Working = work("tuck-set", **written)
        except RefusalError:
            assert not possible, written
            continue
        assert possible, written
        worked += 1
        charted_fold = folded_by_chart(
            working, "panel_cut_width", to_the_left(written["press"], written["tucks"])
        )
        assert charted_fold == folded
        assert charted_fold.width == length(working, "worked_width").mm
        assert charted_fold.cloth == length(working, "panel_cut_width").mm
    assert 300 < worked < 900
