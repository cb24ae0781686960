"""Curved hems, with points of the cut edge folded up one by one and their distances added."""

from fractions import Fraction
from itertools import pairwise
from math import cos, hypot, pi, sin
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)


def test_a_full_circle_by_hand():
    """100 in round a full circle: radius 100 / 2π = 15.92 in.

    A hem of 1/4 in changes the length by 2π / 4 = 1.571 in; its edge starts 101.571 in long and
    lies on 98.429 in: 3.142 in too long, 3.2 %.
    """
    working = work("curved-hem", edge="100 in", turning="360", hem_depth="1/4 in")
    assert said(working, "radius") == "15 29/32 in"
    assert abs(length(working, "for_the_depth").mm - 1.5707963 * 25.4) < 1e-4
    assert abs(length(working, "excess").mm - 3.1415927 * 25.4) < 1e-4
    assert said(working, "ease_share") == "3.2 %"
    assert length(working, "quarter_excess") * 4 == length(working, "excess")


def test_the_chart_of_other_depths_by_hand():
    """Round 100 in a hem of 2 in has 2 × 2 × 2π = 25.13 in too much, on a line of 100 - 12.57 in.
    Round 4 in that turn three times even 1/4 in has more than the whole edge."""
    depth, excess, share = work("curved-hem").charts[0].rows[-1]
    assert (depth, float(excess) / 25.4) == (inches(2), pytest.approx(8 * pi))
    assert share.text(Tape()) == "28.74 %"
    tight = work("curved-hem", edge="4 in", turning="1080", hem_depth="1/16 in", turn="0 in",
                 finish="faced").charts[0].rows  # fmt: skip
    assert [row[2].text(Tape()) for row in tight] == ["too much"]


def test_a_faced_edge_loses_half_as_much():
    """A straight strip sewn along the edge starts as long as the edge, not longer."""
    eased = work("curved-hem")
    faced = work("curved-hem", finish="faced")
    assert length(eased, "excess") == 2 * length(faced, "excess")
    assert said(faced, "facing_width") == "3/4 in"
    assert said(faced, "facing_length") == "101 in"
    assert any("bias strip 3/4 in wide" in step for step in steps(faced))


def chain(points):
    """The length of a chain of points."""
    return sum(hypot(x2 - x1, y2 - y1) for (x1, y1), (x2, y2) in pairwise(points))


def test_a_thousand_hems_folded_point_by_point():
    """Each point of the hem's edge is mirrored in the finished edge; both chains are measured."""
    random = Random(71)
    refused = worked = 0
    for number in range(1000):
        edge = random.randint(160, 3000) * SIXTEENTH
        turning = random.randint(5, 700)
        depth = random.randint(2, 40) * SIXTEENTH
        ease = Fraction(random.randint(1, 30), 100)
        written = {
            "edge": Length(edge), "turning": Fraction(turning), "hem_depth": Length(depth),
            "turn": Length(min(depth, 4 * SIXTEENTH)), "most_ease": ease,
        }  # fmt: skip
        angle = turning * pi / 180
        radius = float(edge) / angle
        share = 2 * float(depth) * angle / (float(edge) - float(depth) * angle)
        try:
            working = work("curved-hem", **written)
        except RefusalError:
            refused += 1
            assert share > float(ease) or 2 * float(depth) > radius
            continue
        worked += 1
        if number % 10:
            continue
        turns = [angle * place / 4000 for place in range(4001)]
        reach = radius + float(depth)
        near = 2e-6 * float(edge)  # a chain of points is a little shorter than its curve
        cut = [(reach * cos(turn), reach * sin(turn)) for turn in turns]
        folded = [(x * (2 * radius / reach - 1), y * (2 * radius / reach - 1)) for x, y in cut]
        assert abs(chain(cut) - float(length(working, "inner_fold"))) < near
        assert abs(chain(folded) - float(length(working, "line_lies"))) < near
        found = chain(cut) - chain(folded)
        assert abs(found - float(length(working, "excess"))) < near
    assert worked > 300 and refused > 100


@given(st.integers(2, 30), st.integers(2, 30))
def test_the_depth_a_refusal_names_is_accepted(ease, depth):
    written = {"edge": "60 in", "turning": "360", "turn": "0 in", "most_ease": f"{ease} %"}
    try:
        work("curved-hem", hem_depth=f"{depth} mm", **written)
    except RefusalError as no:
        if "at most" not in no.message:
            return
        millimetres = int(no.message.split("at most ")[1].split("(")[1].split(" mm")[0])
        work("curved-hem", hem_depth=f"{max(2, millimetres - 1)} mm", **written)


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"hem_depth": "2 in"}, "leaves 28.7 % to ease in, more than most_ease 6 %; use a hem of"),
        ({"edge": "8 in", "hem_depth": "1 in"}, "more than half of the radius of the curve"),
        ({"turn": "1/2 in"}, "turn 1/2 in is deeper than the hem"),
    ],
)
def test_hems_too_deep_for_their_curve_are_refused(written, sentence):
    assert sentence in refusal("curved-hem", **written)


def test_a_straighter_edge_takes_a_deeper_hem():
    working = work("curved-hem", turning="30", edge="40 in", hem_depth="2 in", most_ease="6 %")
    assert length(working, "excess") < inches("9/4")
