"""Shawl square: worked example, then its corner folded point by point, 1,000 random times."""

from math import sqrt
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

Point = tuple[float, float]


def test_a_yard_square_by_hand():
    # 36 + 2 x (1 + 1/4) = 38 1/2; mitre 2 x 1 1/4 from the raw corner, 2 x 1 from the folded one
    working = work("shawl-square")
    assert said(working, "cut_side") == "38 1/2 in"
    assert (said(working, "mitre_at"), said(working, "mitre_mark")) == ("2 1/2 in", "2 in")
    assert said(working, "inner_square") == "34 in"
    assert not any("lace" in step for step in steps(working))


def test_a_double_equal_turn_adds_four_hems():
    working = work("shawl-square", hem="1/2 in", turn="1/2 in", finished="30 in")
    assert length(working, "cut_side") == inches(30) + 4 * inches("1/2")


def test_lace_takes_two_of_its_widths_at_each_corner_and_its_join():
    # 4 x 36 + 8 x 2 + 2 x 1/2 = 161 in
    working = work("shawl-square", lace_width="2 in")
    assert said(working, "lace_length") == "161 in"
    assert said(working, "overall") == "40 in"


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"turn": "2 in"}, "turn 2 in is deeper than hem 1 in and would stick out under it; use "
                           "at most 1 in (25 mm)"),
        ({"hem": "1/8 in", "turn": "1/8 in"}, "mitre_allowance 1/4 in cannot lie inside a hem of "
                                             "1/8 in; use at most 1/8 in (3 mm)"),
        ({"finished": "8 in", "hem": "3 in"}, "hem 3 in leaves the mitres of a side no room beside "
                                             "each other; use at most a quarter of the side, "
                                             "2 in (50 mm), or a larger square"),
        ({"finished": "44 in"}, "the square is cut 46 1/2 in (118.1 cm) and the cloth is only 44 "
                                "in (111.8 cm) wide between its selvages; use a square of at most "
                                "41 1/2 in (105.4 cm), or wider cloth"),
    ],
)  # fmt: skip
def test_what_cannot_be_hemmed_is_refused(written, sentence):
    assert refusal("shawl-square", **written) == sentence


def over(point: Point, start: Point, end: Point) -> Point:
    """A point turned over a fold: mirrored in the line through two points."""
    (x, y), (x1, y1), (x2, y2) = point, start, end
    dx, dy = x2 - x1, y2 - y1
    share = ((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy)
    foot = (x1 + share * dx, y1 + share * dy)
    return 2 * foot[0] - x, 2 * foot[1] - y


def test_folded_point_by_point_the_two_ends_of_the_hem_meet_in_the_mitre():
    """The raw corner is at the origin. The turn and then the hem of each side are turned over
    their folds; the seam line of one side must come to lie on that of the other, along the
    diagonal, with its inner end at the inner edge of both hems and its outer end at the corner."""
    random = Random(9)
    worked = 0
    for _ in range(1000):
        hem, turn = random.randint(4, 120), random.randint(2, 120)
        try:
            working = work("shawl-square", finished=millimetres(1200), cloth_width="90 in",
                           hem=millimetres(hem), turn=millimetres(turn),
                           mitre_allowance="1/16 in")  # fmt: skip
        except RefusalError:
            assert turn > hem or 4 * hem > 1200
            continue
        worked += 1
        mark = length(working, "mitre_mark").mm + turn
        fold = float(length(working, "hem_takes"))
        ends = (float(mark), float(turn)), (float(turn), float(mark))
        assert ends[0][0] + ends[0][1] == float(length(working, "mitre_at"))
        crossing = (fold, fold)
        assert sqrt(2) * abs(ends[0][0] - crossing[0]) == pytest.approx(
            float(length(working, "mitre_seam"))
        )
        upper = over(ends[0], (0, fold), (1, fold))
        left = over(ends[1], (fold, 0), (fold, 1))
        assert upper == pytest.approx(left)
        assert upper[0] == pytest.approx(upper[1])
        assert upper[1] - fold == pytest.approx(hem)
        cut = float(length(working, "cut_side"))
        assert cut - 2 * fold == pytest.approx(1200)
    assert worked > 300


@given(st.integers(1, 16), st.integers(1, 16))
def test_the_trimming_line_lies_one_allowance_from_the_seam(hem, allowance):
    if allowance > hem:
        return
    working = work("shawl-square", hem=inches(f"{hem}/8"), turn="1/16 in", finished="30 in",
                   mitre_allowance=inches(f"{allowance}/16"))  # fmt: skip
    apart = length(working, "mitre_at") - length(working, "mitre_trim")
    assert float(apart) / sqrt(2) == pytest.approx(allowance * 25.4 / 16)
