"""Graduated tucks, against cloth folded crease by crease in `pleat_folding`."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import folded_by_chart, sewn_tucks
from worked import length, refusal, said, steps, work

TWO = "two facing the centre"
SIXTEENTH = Fraction(127, 80)


def test_three_steps_by_hand():
    """Depths 1/4, 3/8, 1/2 in, pressed to the right, 1/8 in showing.

    Each gap is the depth of the tuck at its left and the space: 3/8 and 1/2 in. The tucks take
    2 x (1/4 + 3/8 + 1/2) = 2 1/4 in; 8 in between seams are cut 8 + 2 1/4 + 1/2 = 10 3/4 in.
    """
    working = work("graduated-tucks", depths="1/4 in; 3/8 in; 1/2 in")
    assert [said(working, f"gap_{number}") for number in (1, 2)] == ["3/8 in", "1/2 in"]
    assert said(working, "take_up") == "2 1/4 in"
    assert said(working, "panel_cut_width") == "11 1/4 in"
    assert any("tuck 1 1/4 in; tuck 2 3/8 in; tuck 3 1/2 in" in step for step in steps(working))


def test_the_direction_of_pressing_decides_which_depth_a_gap_needs():
    left = work("graduated-tucks", depths="1/4 in; 3/8 in; 1/2 in", press="to the left")
    assert [said(left, f"gap_{number}") for number in (1, 2)] == ["1/2 in", "5/8 in"]
    assert said(left, "margin") == "3/8 in"


def test_two_sets_facing_a_centre_need_both_depths_there():
    written = {"depths": "1/4 in; 1/2 in", "sets": TWO, "press": "towards the centre"}
    working = work("graduated-tucks", **written)
    assert said(working, "gap_2") == "5/8 in"
    assert said(working, "take_up") == "3 in"
    assert said(working, "margin") == said(working, "last_margin")
    assert said(work("graduated-tucks", centre_space="1 in", **written), "gap_2") == "1 1/2 in"


def test_two_depths_lie_over_the_centre_however_the_spacing_is_given():
    written = {"depths": "1/2 in", "sets": TWO, "press": "towards the centre"}
    assert refusal("graduated-tucks", spacing="3/4 in", **written) == (
        "tucks 1 and 2 stand 3/4 in apart, and 1 in of tuck would lie over that gap; use a "
        "spacing of at least 1 in (26 mm), or shallower tucks, or write overlap: allowed"
    )
    assert work("graduated-tucks", spacing="1 in", **written)


def test_one_spacing_for_all_must_clear_the_deepest():
    assert "use a spacing of at least 1/2 in" in refusal(
        "graduated-tucks", depths="1/4 in; 1/2 in; 3/8 in", spacing="3/8 in"
    )
    assert work("graduated-tucks", depths="1/4 in; 3/8 in; 1/2 in", spacing="3/8 in")


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"finished_width": "4 in", "first_margin": "2 1/4 in"}, "would be caught in the seam"),
        ({"finished_width": "4 in", "first_margin": "3 in"}, "over more than the finished width"),
    ],
)
def test_tucks_without_room_or_centre_are_refused(written, sentence):
    assert sentence in refusal("graduated-tucks", **written)


def test_a_thousand_sets_fold_to_what_the_page_says():
    random = Random(1916)
    worked = 0
    for _ in range(1000):
        two = random.random() < 0.5
        depths = [random.randint(1, 16) * SIXTEENTH for _ in range(random.randint(1, 6))]
        spacing = random.choice([None, random.randint(4, 40) * SIXTEENTH])
        press = random.choice(
            ["to the right", "to the left", "away from the centre", "towards the centre"]
        )
        edge = random.randint(0, 6) * SIXTEENTH
        try:
            working = work(
                "graduated-tucks", depths=[Length(depth) for depth in depths],
                sets=TWO if two else "one from the left edge", press=press,
                finished_width=inches(random.randint(4, 24)), side_allowance=Length(edge),
                cloth_width="120 in", **({"spacing": Length(spacing)} if spacing else {}),
            )  # fmt: skip
        except RefusalError:
            continue
        worked += 1
        every = [*reversed(depths), *depths] if two else depths
        count = len(every)
        half = [number < count // 2 for number in range(count)]
        left = {
            "to the right": [False] * count, "to the left": [True] * count,
            "away from the centre": half, "towards the centre": [not each for each in half],
        }[press]  # fmt: skip
        folded = folded_by_chart(working, "panel_cut_width", left)
        assert folded.width == length(working, "worked_width").mm
        assert folded.cloth == length(working, "panel_cut_width").mm
        edge += length(working, "spare_width").mm / 2
        assert folded.layers <= 3 and folded.clear_of(edge)
        gaps = [length(working, f"gap_{number}").mm for number in range(1, count)]
        sewn = sewn_tucks(edge + length(working, "margin").mm, every, gaps,
                          edge + length(working, "last_margin").mm, left)  # fmt: skip
        assert sewn == folded
    assert worked > 300
