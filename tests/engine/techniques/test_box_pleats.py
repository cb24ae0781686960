"""Box pleats, against cloth folded crease by crease in `pleat_folding`."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import fold, folded_by_chart
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)


def test_six_boxes_that_meet_by_hand():
    """6 boxes of 2 in on 12 1/2 in with margins of 1/4 in; folds 1 in deep meet behind each.

    Each box takes 4 x 1 = 4 in, together 24 in: cut 12 1/2 + 24 + 1/2 = 37 in, three to one.
    """
    working = work("box-pleats", finished_width="12 1/2 in", pleats=6)
    assert said(working, "box_width") == "2 in"
    assert said(working, "pleat_depth") == "1 in"
    assert said(working, "take_up") == "24 in"
    assert said(working, "flat_width") == "37 in"
    assert said(working, "ratio") == "3"
    assert length(working, "space") == ZERO
    assert (said(working, "sample_before"), said(working, "sample_after")) == ("10 in", "6 in")


def test_boxes_that_stand_apart_take_less_than_three_to_one():
    working = work("box-pleats", finished_width="12 1/2 in", pleats=4, box="2 in", depth="1/2 in")
    assert said(working, "space") == "1 in"
    assert said(working, "ratio") == "1.67"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        (
            {"finished_width": "12 1/2 in", "pleats": 6, "depth": "1 1/4 in"},
            "two depths lie behind 2 in of pleat, 2 1/2 in in all, so the folds would overlap; "
            "use a depth of at most 1 in (25 mm), or overlap: allowed",
        ),
        (
            {"finished_width": "12 1/2 in", "pleats": 6, "box": "3 in"},
            "use a box of at most 2 in (50 mm), or at most 4 pleats",
        ),
        ({"finished_width": "8 in", "margin": "4 in"}, "leave nothing to pleat"),
    ],
)
def test_boxes_without_room_are_refused(written, sentence):
    assert sentence in refusal("box-pleats", **written)


def by_hand(edge, margin, space, *, box, depth, boxes):
    """At each box: placement line, inner fold, outer fold, box, outer fold, inner fold."""
    at, creases = edge + margin + space / 2, []
    for _ in range(boxes):
        creases += [at + depth, at + 2 * depth]
        creases += [at + 2 * depth + box, at + 3 * depth + box]
        at += 4 * depth + box + space
    return fold(2 * (edge + margin) + boxes * (space + box + 4 * depth), creases)


def test_a_thousand_rows_fold_to_what_the_page_says_or_are_refused_for_a_reason():
    random = Random(3)
    worked = 0
    for _ in range(1000):
        boxes, box, depth = random.randint(1, 10), random.randint(4, 40), random.randint(2, 28)
        space, margin = random.choice([0, random.randint(0, 20)]), random.randint(0, 12)
        folded = by_hand(
            *(n * SIXTEENTH for n in (4, margin, space)),
            box=box * SIXTEENTH, depth=depth * SIXTEENTH, boxes=boxes,
        )  # fmt: skip
        possible = folded.layers <= 3 and folded.clear_of(4 * SIXTEENTH)
        finished = (2 * margin + boxes * (box + space)) * SIXTEENTH
        if finished < 64 * SIXTEENTH:
            continue
        try:
            working = work(
                "box-pleats", pleats=boxes, box=Length(box * SIXTEENTH),
                depth=Length(depth * SIXTEENTH), margin=Length(margin * SIXTEENTH),
                finished_width=Length(finished),
            )  # fmt: skip
        except RefusalError:
            assert not possible
            continue
        assert possible
        worked += 1
        charted_fold = folded_by_chart(working, "flat_width")
        assert charted_fold == folded
        assert charted_fold.width == length(working, "pleated_width").mm
        assert charted_fold.cloth == length(working, "flat_width").mm
    assert 200 < worked < 900
