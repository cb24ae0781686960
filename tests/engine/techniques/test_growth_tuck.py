"""Growth tucks, folded from top to bottom in `pleat_folding`."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.working.workings import Working
from pleat_folding import fold
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_two_tucks_by_hand():
    """18 in long, two tucks of 1/2 in, a hem of 1/4 + 1/4 in, 1/4 in at the top.

    Each tuck adds 1 in when let out: 20 in. Cut 18 + 2 + 1/4 + 1/2 = 20 3/4 in. The lowest
    stitching 1 1/4 in above the edge lies 20 3/4 - 1/2 - 1 1/4 = 19 in from the top, its fold
    18 1/2, its upper line 18; the next tuck begins 3/4 in higher, at 17 1/4 in.
    """
    working = work("growth-tuck", panel_length="18 in", depth="1/2 in", tucks=2)
    assert said(working, "adds") == "1 in"
    assert said(working, "grown_length") == "20 in"
    assert said(working, "panel_cut_length") == "20 3/4 in"
    marks = ["lower_stitching_1", "fold_1", "upper_stitching_1", "lower_stitching_2"]
    assert [said(working, mark) for mark in marks] == ["19 in", "18 1/2 in", "18 in", "17 1/4 in"]
    (chart,) = working.charts
    assert [row[1] for row in chart.rows] == [
        length(working, "panel_length"),
        length(working, "panel_length") + length(working, "adds"),
        length(working, "grown_length"),
    ]


def test_hidden_on_the_wrong_side_the_cloth_is_folded_the_other_way():
    (step,) = [each for each in steps(work("growth-tuck", placed="on the wrong side"))
               if "lowest fold line" in each]  # fmt: skip
    assert step.startswith("Fold right sides together")


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"above_hem": "1/2 in"}, "use at least 3/4 in (20 mm)"),
        ({"spacing": "1/4 in"}, "each tuck would lie over the next; use at least 1/2 in"),
        ({"panel_length": "2 in", "tucks": 3}, "a panel_length of more than 2 3/4 in"),
    ],
)
def test_tucks_without_room_above_the_hem_are_refused(written, sentence):
    assert sentence in refusal("growth-tuck", **written)


def from_top_to_edge(working: Working, let_out: int):
    """Fold the tucks that are still sewn, pressed down, and turn the hem up out of the way."""
    sewn = range(working.named["tucks"].whole - let_out, 0, -1)
    creases: list[Fraction] = []
    for number in sewn:  # the highest is let out first
        creases.append(length(working, f"fold_{number}").mm)
        creases.append(length(working, f"lower_stitching_{number}").mm)
    edge = length(working, "panel_cut_length") - length(working, "hem_allowance")
    return fold(edge.mm, creases)


def test_a_thousand_panels_are_as_long_as_the_page_says_however_many_are_let_out():
    random = Random(98)
    worked = 0
    for _ in range(1000):
        depth, tucks = random.randint(2, 16), random.randint(1, 5)
        written = {
            "tucks": tucks, "depth": Length(depth * SIXTEENTH),
            "panel_length": Length(random.randint(40, 500) * SIXTEENTH),
            "above_hem": Length(random.randint(max(depth, 4), 60) * SIXTEENTH),
            "spacing": Length(random.randint(depth, 30) * SIXTEENTH),
            "hem": random.choice(["double", "single", "rolled", "finished"]),
        }  # fmt: skip
        try:
            working = work("growth-tuck", **written)
        except RefusalError:
            continue
        worked += 1
        top = length(working, "end_allowance").mm
        for let_out, row in enumerate(working.charts[0].rows):
            folded = from_top_to_edge(working, let_out)
            assert folded.width - top == row[1].mm
            assert folded.layers <= 3
            hanging = max((end for _, end in folded.stretches[:-1]), default=Fraction(0))
            assert hanging <= folded.width - length(working, "hem_turn").mm
    assert worked > 300
