"""Whether a twin needle clears plate and foot."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import millimetres
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, steps, work

tenths = st.integers(10, 100).map(lambda n: millimetres(f"{n}/10"))


def test_by_the_greatest_stitch_width_by_hand():
    """7 mm - 2 mm between the needles - 1 mm of margin = 4 mm."""
    working = work("twin-needle-clearance", needle_spacing="2 mm", greatest_stitch="7 mm")
    assert said(working, "greatest_width") == "4 mm"
    assert any("at most 4 mm" in step for step in steps(working))


def test_by_a_measured_slot_by_hand():
    """2.5 mm between needles of number 80 (0.8 mm) with 0.5 mm to spare: 3.8 of a 6 mm slot."""
    working = work("twin-needle-clearance", needle_spacing="2.5 mm", plate_slot="8 mm",
                   foot_slot="6 mm")  # fmt: skip
    assert said(working, "blade") == "0.8 mm"
    assert said(working, "slot") == "6 mm"
    assert said(working, "by_slot") == "2.2 mm"
    assert said(working, "greatest_width") == "2.2 mm"


def test_nothing_left_means_a_straight_stitch_only():
    working = work("twin-needle-clearance", needle_spacing="6 mm")
    assert said(working, "greatest_width") == "0 mm"
    assert said(working, "verdict") == "straight stitch only"
    assert any(step.startswith("Set a straight stitch") for step in steps(working))


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"needle_spacing": "6.5 mm"}, "use a needle_spacing of at most 6 mm"),
        ({"needle_spacing": "2 mm", "greatest_stitch": "1 mm"}, "use one needle"),
        (
            {"needle_spacing": "4 mm", "foot_slot": "5 mm"},
            "use a wider slot, or a needle_spacing of at most",
        ),
        ({"needle_spacing": "1 mm", "plate_slot": "1 mm"}, "or one needle"),
    ],
)
def test_needles_that_do_not_pass_are_refused_with_a_way_out(written, sentence):
    assert sentence in refusal("twin-needle-clearance", **written)


@given(tenths, tenths, st.none() | tenths, st.none() | tenths, st.integers(60, 120))
def test_at_both_ends_of_its_swing_no_blade_touches(spacing, greatest, plate, foot, number):
    """Move the needles, from the middle, half of the width to each side, and look at the gaps."""
    slots = {"plate_slot": plate, "foot_slot": foot}
    written = {name: slot for name, slot in slots.items() if slot is not None}
    try:
        working = work("twin-needle-clearance", needle_spacing=spacing, greatest_stitch=greatest,
                       needle_number=number, **written)  # fmt: skip
    except RefusalError:
        return
    swing = length(working, "greatest_width").mm / 2
    outermost = spacing.mm / 2 + swing
    assert 2 * outermost + 1 <= greatest.mm
    for slot in written.values():
        assert outermost + millimetres(number).mm / 200 <= slot.mm / 2
    tight = [2 * outermost + 1 == greatest.mm]
    tight += [2 * outermost + number / millimetres(100).mm + millimetres("1/2").mm == slot.mm
              for slot in written.values()]  # fmt: skip
    assert any(tight), "a wider stitch would still pass"
