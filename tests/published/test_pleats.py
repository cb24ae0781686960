"""Pleats against what stands in print."""

import pytest

from handout_engine.amounts.sources import published
from worked import length, said, work


@pytest.mark.parametrize("visible", ["1/2 in", "1 in", "1 1/2 in"])
def test_side_plaiting_takes_three_times_its_length(visible):
    """The New Dressmaker, Butterick Publishing Company, 1921, p. 142."""
    working = work("knife-pleats", visible=visible, pleats=8)
    pleats = length(working, "pleat_visible") * 8
    assert pleats + length(working, "take_up") == 3 * pleats
    assert working.values["take_up"].basis == published("butterick-1921")


def test_boxes_that_meet_take_three_to_one_too():
    """Common practice, no source."""
    assert said(work("box-pleats"), "ratio") == "3"
