"""Drafts that values are read from: made once, no values themselves, and no hole in the order."""

import pytest

from handout_engine.amounts.declaring import drafted, value
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.working_out import Group, RingError


class Square(Group):
    """A square whose seam is read from its outline."""

    def __init__(self):
        super().__init__()
        self.drawn = 0

    @value("seam")
    def seam(self) -> Length:
        return inches(4 * len(self.outline))

    @drafted
    def outline(self) -> str:
        self.drawn += 1
        assert self.side > inches(1)
        return "abcd"

    @value("side")
    def side(self) -> Length:
        return inches(2)


class Ring(Group):
    """A corner that hangs on the outline that is drawn from it."""

    @value("corner")
    def corner(self) -> Length:
        return inches(len(self.outline))

    @drafted
    def outline(self) -> str:
        return "a" * int(self.corner.mm)


def test_a_draft_is_made_once_and_is_no_value():
    square = Square()
    assert list(square.values) == ["side", "seam"]
    assert square.seam == inches(16) and square.outline == "abcd"
    assert square.drawn == 1
    assert square.find("outline") is None


def test_what_is_read_from_a_draft_stands_after_what_the_draft_is_made_from():
    # whoever asked for the draft first
    square = Square()
    assert square.outline == "abcd"
    assert list(square.values) == ["side", "seam"]


def test_a_ring_through_a_draft_is_refused_with_its_path():
    with pytest.raises(RingError, match="corner needs outline, which needs corner"):
        _ = Ring().corner
