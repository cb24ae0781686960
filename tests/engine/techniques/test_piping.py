from math import cos, hypot, pi, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import inches
from worked import length, said, steps, work

cords = st.fractions("1/32", 1, max_denominator=32).map(inches)
allowances = st.fractions("1/16", 1, max_denominator=16).map(inches)


def covered(strip: float, cord: float) -> float:
    """Wrap a strip round a cord, thread by thread, and measure what stands out of each end."""
    parts = 20000
    around = sum(
        hypot(
            cord / 2 * (cos(2 * pi * (n + 1) / parts) - cos(2 * pi * n / parts)),
            cord / 2 * (sin(2 * pi * (n + 1) / parts) - sin(2 * pi * n / parts)),
        )
        for n in range(parts)
    )
    return (strip - around) / 2


def test_a_collar_by_hand():
    """1/16 in cord: 3.1416 / 16 = 0.196 in round, and twice 1/4 in: 0.696 in, 23/32 on the tape."""
    working = work("piping", seam_length="16 in")
    assert said(working, "strip_width") == "23/32 in"
    assert said(working, "piping_length") == "18 in"


@given(cords, allowances)
def test_round_the_cord_the_allowance_is_left_at_both_edges(cord, seam):
    working = work("piping", cord=cord, seam_allowance=seam)
    left = covered(float(length(working, "strip_width")), float(cord))
    assert left == pytest.approx(float(seam), abs=1e-5)


@given(st.integers(4, 200).map(inches), st.integers(1, 4))
def test_strip_and_cord_are_long_enough_for_every_seam(seam_length, make):
    working = work("piping", seam_length=seam_length, make=make)
    needed = (seam_length + inches(2)) * make
    assert length(working, "length_for_all") == needed
    assert length(working, "joined_length") >= needed


def test_corners_are_clipped_and_eased():
    assert any("ease the cord round" in step for step in steps(work("piping", corners="4")))
    assert not any("ease the cord round" in step for step in steps(work("piping")))


def test_wide_allowances_leave_no_cord_in_the_textbook_strip():
    assert "published_cord" not in work("piping", seam_allowance="5/8 in").named


def test_a_printed_strip_covers_a_cord_as_thick_as_what_the_allowances_leave_over_pi():
    """1 1/4 in less twice 1/4 in leave 3/4 in, and 0.75 / 3.1416 = 0.2387 in."""
    cord = length(work("piping", seam_allowance="1/4 in"), "published_cord")
    assert float(cord / inches(1)) == pytest.approx(0.2387, abs=0.0001)
    assert "published_cord" not in work("piping", seam_allowance="5/8 in").values
