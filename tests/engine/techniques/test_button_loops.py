from itertools import pairwise
from math import cos, hypot, pi, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from worked import length, refusal, said, steps, work

diameters = st.fractions("1/4", 1, max_denominator=32).map(inches)
thicknesses = st.fractions("1/16", "1/2", max_denominator=32).map(inches)
tubes = st.fractions("1/16", "1/4", max_denominator=32).map(inches)


def bent(gap: float, stands: float, tube: float, out: float) -> float:
    """Bend a tube into a loop and measure it along a line `out` of its inside, step by step.

    Its legs run straight out from the edge; the far end is half a circle.
    """
    radius = gap / 2 + out
    legs = stands - tube - gap / 2
    parts = 20000
    turn = sum(
        hypot(
            radius * (cos(pi * (n + 1) / parts) - cos(pi * n / parts)),
            radius * (sin(pi * (n + 1) / parts) - sin(pi * n / parts)),
        )
        for n in range(parts)
    )
    return 2 * legs + turn


def test_five_loops_for_ten_millimetre_buttons_by_hand():
    """16 lines are 2/5 in, thickness 1/8 in, ease 1/16 in: 2 x 21/40 + 1/16 = 1.1125 in.

    Less a gap of 1/5 in, 0.9125 in inside; on the middle of a 1/8 in tube half a turn is 0.196 in
    longer; and twice 1/2 in in the seam: 2.109 in.
    """
    working = work("button-loops")
    assert float(length(working, "passes") / inches(1)) == pytest.approx(1.1125)
    assert float(length(working, "inner_loop") / inches(1)) == pytest.approx(0.9125)
    assert float(length(working, "loop_strip") / inches(1)) == pytest.approx(2.1089, abs=1e-3)
    assert said(working, "spacing") == "1 1/4 in"
    assert said(working, "strip_width") == "1/2 in"


@given(diameters, thicknesses, tubes)
def test_bent_the_loop_passes_its_button_and_uses_what_the_page_says(diameter, thick, tube):
    working = work(
        "button-loops", button=diameter, button_thickness=thick, tube=tube, loops="1",
        opening="3 in", first="1 1/2 in", last="1 1/2 in",
    )  # fmt: skip
    gap, stands = float(length(working, "gap_used")), float(length(working, "loop_stands"))
    inside = bent(gap, stands, float(tube), 0.0)
    assert inside + gap >= 2 * float(diameter + thick) - 1e-5
    assert inside == pytest.approx(float(length(working, "inner_loop")), abs=1e-5)
    middle = bent(gap, stands, float(tube), float(tube) / 2)
    ends = 2 * float(length(working, "end_allowance"))
    assert middle + ends == pytest.approx(float(length(working, "loop_strip")), abs=1e-5)


@given(st.integers(2, 20), st.integers(4, 40).map(inches))
def test_the_loops_stand_at_equal_distances_from_first_to_last(loops, opening):
    assume(opening - inches(1) >= inches("1/2") * (loops - 1))
    working = work("button-loops", loops=loops, opening=opening)
    chart = working.charts[0]
    middles = [row[1].length for row in chart.rows]
    assert len(middles) == loops
    assert middles[0] == inches("1/2")
    assert opening - middles[-1] == inches("1/2")
    gaps = {after - before for before, after in pairwise(middles)}
    assert len(gaps) == 1 and gaps.pop() == length(working, "spacing")
    for row in chart.rows:
        middle, upper, lower = (cell.length for cell in row[1:])
        assert lower - upper == length(working, "gap_used")
        assert (upper + lower) / 2 == middle


def test_the_refusals_name_the_nearest_that_can_be_sewn():
    assert refusal("button-loops", gap="1 in") == (
        "gap 1 in is too wide for a loop that is to pass the button; use at most 13/32 in (10 mm)"
    )
    assert refusal("button-loops", loops="20") == (
        "20 loops would stand 1/4 in (7 mm) apart and overlap, or their buttons would; use at most "
        "12 loops"
    )
    assert work("button-loops", loops="12")
    assert refusal("button-loops", opening="1 in", first="3/4 in") == (
        "first and last leave nothing of opening 1 in; together they may take no more than that"
    )
    assert refusal("button-loops", tube_seam="1/4 in") == (
        "tube_seam 1/4 in cannot lie inside a tube 1/8 in thick; use at most 1/8 in (3 mm), "
        "trimmed after sewing if need be"
    )


def test_loops_are_cut_from_tubes_long_enough_to_turn():
    working = work("button-loops", loops="20", opening="30 in")
    used = [row for row in working.charts[1].rows if row[1] != "spare"]
    assert all(row[2] >= inches(10) for row in used)
    assert any("from middle to middle" in step.lower() for step in steps(working))


def test_its_cautions_speak_of_small_parts_and_cords():
    keys = {caution.key for caution in work("button-loops").cautions}
    assert {"buttons-small-parts", "neck-cords", "loops-catch"} <= keys
