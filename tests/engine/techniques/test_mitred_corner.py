"""Mitred corners, folded point by point from the raw corner."""

from fractions import Fraction
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import ZERO, Length, inches, millimetres
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)
Point = tuple[Fraction, Fraction]


def test_a_napkin_with_a_double_hem_of_an_inch_by_hand():
    """18 in finished, 1 + 1 in on every side: 18 + 4 = 22 in, which is F + 4 h.

    The mitre seam meets both raw edges 2 × (1 + 1) = 4 in from the corner and a turned edge 2 in
    from its corner; 1/4 in beyond it along the edge is 1/4 × √2 = 0.354 in: 3.646 in.
    """
    working = work("mitred-corner", width="18 in", length="18 in", hem="double", hem_depth="1 in")
    assert said(working, "cut_width") == said(working, "cut_length") == "22 in"
    assert said(working, "mitre_mark") == "4 in"
    assert said(working, "mitre_on_fold") == "2 in"
    assert said(working, "turns_take") == "2 in"
    assert abs(length(working, "trim_mark").mm / inches(1).mm - Fraction(3646447, 10**6)) < 1e-6
    assert [mark.distance for mark in working.pieces[0].marks] == [inches(1), inches(2)]
    assert any("Cut the piece, 22 in by 22 in" in step for step in steps(working))


def test_a_single_hem_turns_nothing_under():
    working = work("mitred-corner", width="18 in", length="24 in", hem="single", hem_depth="1 in")
    assert said(working, "cut_width") == "20 in"
    assert said(working, "cut_length") == "26 in"
    assert said(working, "mitre_mark") == said(working, "mitre_on_fold") == "2 in"
    assert any("Overcast all four raw edges" in step for step in steps(working))


def folded(point: Point, fold: Fraction) -> Point:
    """Both hems of a corner turned in along the lines x = fold and y = fold."""
    x, y = (2 * fold - place if place < fold else place for place in point)
    return x, y


def on_sewn_corner(points: tuple[Point, Point], fold: Fraction) -> None:
    """Two points that the mitre seam sews together lie on each other, on the diagonal."""
    first, second = (folded(point, fold) for point in points)
    assert first == second, points
    assert first[0] == first[1], "it is not on the diagonal of the corner"


def test_a_thousand_corners_lie_flat_when_their_points_are_folded():
    """Points of the seam sewn to their mirror images meet on the diagonal of a square corner."""
    random = Random(41)
    for _ in range(1000):
        depth = random.randint(4, 60)
        turn = random.choice([0, depth, random.randint(1, depth)])
        written = {
            "width": Length(random.randint(130, 900) * SIXTEENTH),
            "length": Length(random.randint(130, 900) * SIXTEENTH),
            "hem": "double" if turn else "single", "hem_depth": Length(depth * SIXTEENTH),
            "cloth_width": "120 in",
            "mitre_allowance": Length(random.randint(1, min(depth, 32)) * SIXTEENTH),
        }  # fmt: skip
        if turn:
            written["turn"] = Length(turn * SIXTEENTH)
        working = work("mitred-corner", **written)
        mark = length(working, "mitre_mark").mm
        fold = (length(working, "cut_width") - length(working, "width")).mm / 2
        assert fold == (depth + turn) * SIXTEENTH
        for part in range(6):  # from the crossing of the folds out to the turned edge
            x = turn * SIXTEENTH + (fold - turn * SIXTEENTH) * part / 5
            on_sewn_corner(((x, mark - x), (mark - x, x)), fold)
        reached = folded((turn * SIXTEENTH, mark - turn * SIXTEENTH), fold)
        inner = fold + depth * SIXTEENTH
        assert reached == (inner, inner), "the seam ends at the inner corner of the hem"
        on_edge = length(working, "mitre_on_fold").mm
        assert on_edge == mark - 2 * turn * SIXTEENTH
        seam = float(length(working, "mitre_seam"))
        allowance = length(working, "mitre_allowance")
        assert abs(seam**2 - 2 * (depth * float(SIXTEENTH)) ** 2) < 1e-4
        trimmed = float(mark - length(working, "trim_mark").mm)
        assert abs(trimmed**2 - 2 * float(allowance) ** 2) < 1e-4, "measured square to the seam"


@given(st.integers(1, 60), st.integers(1, 60))
def test_a_deeper_hem_takes_more_and_leaves_the_finished_size(depth, more):
    hems = {"width": "40 in", "length": "40 in", "hem": "double", "cloth_width": "120 in"}
    small = work("mitred-corner", hem_depth=millimetres(4 + depth), **hems)
    large = work("mitred-corner", hem_depth=millimetres(4 + depth + more), **hems)
    grown = length(large, "cut_width") - length(small, "cut_width")
    assert grown == millimetres(4 * more)
    assert length(small, "cut_width") - 2 * length(small, "hem_takes") == inches(40)


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"turn": "1 1/4 in"}, "turn 1 1/4 in is deeper than the hem itself, 1 in"),
        ({"hem": "single", "turn": "1/4 in"}, "a single hem turns nothing under"),
        ({"width": "2 in"}, "use hems of less than 1 in (25 mm), or more than 2 in (51 mm) for"),
        ({"hem_depth": "1/4 in", "mitre_allowance": "1/2 in"}, "use at most 1/4 in (6 mm)"),
    ],
)
def test_what_cannot_be_folded_is_refused(written, sentence):
    assert sentence in refusal("mitred-corner", **written)


def test_small_hems_get_a_small_mitre_allowance():
    working = work("mitred-corner", hem_depth="1/4 in")
    assert said(working, "mitre_allowance") == "1/8 in"
    assert length(working, "trim_mark") > ZERO
