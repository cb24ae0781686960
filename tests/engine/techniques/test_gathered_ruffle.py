from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from handout_engine.working.workings import Grain
from worked import length, said, steps, work

depths = st.fractions(1, 40, max_denominator=16).map(inches)


def test_a_skirt_ruffle_worked_by_hand():
    """Common practice, no source: a ruffle 3 in deep on a 60 in hem, 2 1/2 to 1.

    Cut width 3 + 1/2 + 2 x 1/4 = 4 in. Length 2.5 x 60 = 150 in in a ring; strips of at most
    44 in lose 1/2 in at each join, so 150 / 43 1/2 = 3.4, that is 4 strips of 150 / 4 + 1/2 =
    38 in, one a row: 16 in of cloth, and 1 in spare: 17 in, that is 1/2 yd.
    """
    working = work(
        "gathered-ruffle",
        edge="60 in", depth="3 in", fullness="2.5", ends="ring", edge_allowance="1/2 in",
    )  # fmt: skip
    assert said(working, "cut_width") == "4 in"
    assert said(working, "ruffle_length") == "150 in"
    assert said(working, "strips") == "4"
    assert said(working, "strip_length") == "38 in"
    assert said(working, "cloth_used") == "16 in"
    assert said(working, "cloth_to_buy") == "1/2 yd"


def test_the_cut_list_of_a_pair():
    (piece,) = work("gathered-ruffle", edge="60 in", make="2").pieces
    # 120 1/2 in: three strips for one, six for the pair
    assert (piece.count, piece.grain, piece.cloth) == (6, Grain.CROSS, "ruffle cloth")
    assert [mark.distance for mark in piece.marks] == [inches("1/8"), inches("3/8")]


def test_the_steps_carry_the_numbers_of_the_cut_list():
    first, *_, last = steps(work("gathered-ruffle", edge="10 in", depth="2 in"))
    assert first == "Cut the strips 2 3/4 in wide and 20 1/2 in long, across the cloth."
    assert last.endswith("> the ruffle hangs 2 in below the seam.")


@given(depths, st.sampled_from(["double", "single", "rolled", "folded", "finished"]))
def test_every_bit_of_the_cut_width_is_accounted_for(depth, hem):
    """Conservation of cloth: what is cut is what hangs, what is in the seam and what is turned."""
    working = work("gathered-ruffle", depth=depth, hem=hem)
    seam = inches("1/4")
    layers = 2 if hem == "folded" else 1
    turned = inches(0) if hem == "folded" else length(working, "hem_allowance")
    assert length(working, "cut_width") == layers * (depth + seam) + turned


@given(depths, depths)
def test_a_deeper_ruffle_is_cut_deeper_by_the_same(depth, more):
    shallow, deep = (
        length(work("gathered-ruffle", depth=each), "cut_width") for each in (depth, depth + more)
        if each <= inches(40)
    ) if depth + more <= inches(40) else (depth, depth + more)  # fmt: skip
    assert deep - shallow == more
