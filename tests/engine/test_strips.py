"""Strips joined end to end, against strips joined one by one in `joining`."""

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.shared.strips import MOST_STRIPS, Joined, Strips, plan_strips
from joining import diagonal_take_up, fewest_strips, joined, straight_take_up
from worked import length, refusal, said, work

USABLE = inches(44)  # cloth 45 in wide, 1/2 in selvage at each edge
QUARTER = inches("1/4")

positive = st.fractions(Fraction(1, 4), 400, max_denominator=32).map(inches)
small = st.fractions(Fraction(1, 16), 3, max_denominator=16).map(inches)
either = st.booleans()


@pytest.mark.parametrize(
    ("wanted", "ring", "count", "each"),
    [
        # 44 in in a row is one whole strip; closed into a ring it has a seam, so it takes two
        ("44", False, 1, "44"),
        ("44", True, 2, "45/2"),
        # 90 in: two strips give 87 1/2 in a row, three give 131; (90 + 2 x 1/2) / 3 = 30 1/3
        ("90", False, 3, "91/3"),
        ("90", True, 3, "61/2"),
        # the most that two strips give: 44 + 44 - 1/2
        ("175/2", False, 2, "44"),
        ("87", True, 2, "44"),
        ("1", False, 1, "1"),
        ("1", True, 1, "3/2"),
    ],
)
def test_straight_joins_on_cloth_of_45_inches(wanted, ring, count, each):
    plan = plan_strips(inches(wanted), USABLE, 2 * QUARTER, ring)
    assert (plan.count, plan.each) == (count, inches(each))


@pytest.mark.parametrize(
    ("wanted", "ring", "count", "each"),
    [
        # a strip 3 in wide: every diagonal join takes 3 in
        ("44", False, 1, "44"),
        ("44", True, 2, "25"),
        ("90", False, 3, "32"),  # two give 85, three 126; (90 + 2 x 3) / 3
        ("90", True, 3, "33"),
        ("85", False, 2, "44"),
    ],
)
def test_diagonal_joins_of_strips_three_inches_wide(wanted, ring, count, each):
    plan = plan_strips(inches(wanted), USABLE, inches(3), ring)
    assert (plan.count, plan.each) == (count, inches(each))


@pytest.mark.parametrize("take_up", ["44", "45"])
@pytest.mark.parametrize("ring", [True, False])
def test_a_join_as_long_as_the_strip_is_refused(take_up, ring):
    with pytest.raises(RefusalError, match="a join would take the whole usable width") as refused:
        plan_strips(inches(90), USABLE, inches(take_up), ring)
    assert "use wider cloth or a narrower join" in refused.value.message


def test_more_strips_than_anyone_cuts_are_refused():
    most = joined(MOST_STRIPS, Fraction(44), Fraction(1, 2), ring=False)
    assert plan_strips(inches(most), USABLE, 2 * QUARTER, ring=False).count == MOST_STRIPS
    with pytest.raises(RefusalError) as refused:
        plan_strips(inches(most + 1), USABLE, 2 * QUARTER, ring=False)
    assert refused.value.message == (
        "401 strips would be needed, more than 400; use a shorter edge or wider cloth"
    )


@given(small)
def test_what_a_join_takes_is_what_the_seam_uses_when_it_is_sewn(size):
    assert straight_take_up(size.mm) == (2 * size).mm
    assert diagonal_take_up(size.mm) == size.mm


@given(positive, positive, small, either)
def test_as_few_strips_as_sewing_them_one_by_one_needs(wanted, usable, take_up, ring):
    assume(take_up < usable and wanted / (usable - take_up) < 200)
    plan = plan_strips(wanted, usable, take_up, ring)
    assert plan.count == fewest_strips(wanted.mm, usable.mm, take_up.mm, ring)


@given(positive, positive, small, either)
def test_n_strips_reach_the_length_and_one_fewer_does_not(wanted, usable, take_up, ring):
    assume(take_up < usable and wanted / (usable - take_up) < MOST_STRIPS - 1)
    count = plan_strips(wanted, usable, take_up, ring).count
    assert joined(count, usable.mm, take_up.mm, ring) >= wanted.mm
    if count > 1:
        assert joined(count - 1, usable.mm, take_up.mm, ring) < wanted.mm


@given(positive, positive, small, either)
def test_equal_strips_join_into_exactly_the_wanted_length(wanted, usable, take_up, ring):
    assume(take_up < usable and wanted / (usable - take_up) < MOST_STRIPS - 1)
    plan = plan_strips(wanted, usable, take_up, ring)
    assert ZERO < plan.each <= usable
    assert joined(plan.count, plan.each.mm, take_up.mm, ring) == wanted.mm


@given(positive, positive, small)
def test_a_wider_cloth_never_takes_more_strips(wanted, usable, take_up):
    assume(take_up < usable and wanted / (usable - take_up) < MOST_STRIPS - 1)
    for ring in (True, False):
        wider = plan_strips(wanted, usable + QUARTER, take_up, ring)
        assert wider.count <= plan_strips(wanted, usable, take_up, ring).count


def test_strips_of_a_ruffle_from_the_block_to_the_cut_list():
    # an edge of 45 in at 2 to 1, open ends of 1/4 in: 90 1/2 in; straight joins of 1/2 in;
    # (90 1/2 - 1/2) / (44 - 1/2) = 2.07, so 3 strips of (90 1/2 + 2 x 1/2) / 3 = 30 1/2 in,
    # one across the cloth, so the layout has 3 rows of 2 3/4 in
    working = work("gathered-ruffle", edge="45 in", fullness="2")
    assert said(working, "ruffle_length") == "90 1/2 in"
    assert said(working, "strips") == "3"
    assert said(working, "strip_length") == "30 1/2 in"
    assert length(working, "cloth_used") == inches("33/4")


def test_short_strips_lie_side_by_side():
    # 14 1/2 in strips: three across 44 in, so ten of them lie in 4 rows
    working = work("gathered-ruffle", edge="7 in", make="10")
    assert length(working, "cloth_used") == 4 * length(working, "cut_width")


def test_a_diagonal_join_of_a_strip_as_wide_as_the_cloth_is_refused():
    assert refusal(
        "gathered-ruffle", depth="40 in", cloth_width="40 in", strip_join="diagonal"
    ) == (
        "a join would take the whole usable width of the cloth; use wider cloth or a narrower join"
    )


@given(positive, st.integers(1, 12), st.fractions(1, 6, max_denominator=8), either, either)
def test_rows_hold_every_strip_side_by_side(edge, make, fullness, ring, diagonal):
    assume(inches(1) <= edge <= inches(300))
    working = work(
        "gathered-ruffle", edge=edge, make=make, fullness=fullness,
        ends="ring" if ring else "open", strip_join="diagonal" if diagonal else "straight",
    )  # fmt: skip
    (piece,) = working.pieces
    row, left, rows = ZERO, piece.count, 0
    each, usable = piece.length.length, length(working, "usable_width")
    while left:  # lay them down one by one, a new row when the next one does not fit
        rows, row = rows + 1, ZERO
        while left and row + each <= usable:
            row, left = row + each, left - 1
    assert length(working, "cloth_used") == rows * length(working, "cut_width")


@given(positive, st.fractions(Fraction(1, 16), Fraction(1), max_denominator=16))
def test_lengths_are_exact_whatever_the_figures(wanted, allowance):
    plan = plan_strips(wanted, USABLE, inches(2 * allowance), ring=True)
    assert isinstance(plan.each, Length)
    assert plan.each.mm * plan.count - inches(2 * allowance).mm * plan.count == wanted.mm


def test_a_join_that_takes_just_the_whole_width_leaves_nothing_to_join():
    """Crossed at a right angle, strips as wide as the cloth would be used up by their joins."""
    joined_so = Joined(QUARTER, diagonal=True)
    with pytest.raises(RefusalError, match="the whole usable width"):
        _ = Strips(inches(50), USABLE, USABLE, joined_so).strips
    narrower = Strips(inches(50), USABLE - inches(1), USABLE, joined_so)
    assert narrower.strips == 7  # each gives 1 in: (50 - 43) / 1
