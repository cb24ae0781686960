"""Smocking against what stands in print."""

from fractions import Fraction

import pytest

from handout_engine.inputs import declared_inputs
from handout_engine.lengths import inches
from handout_engine.register import find
from handout_engine.sources import PRACTICE, published
from worked import length, said, work


@pytest.mark.parametrize("finished", ["4 in", "6 in", "9 in"])
def test_four_to_one(finished):
    """Laura I. Baldt, Clothing for Women, 1916: four times the finished width."""
    working = work("smocking-grid", finished=finished, fullness="4:1")
    assert length(working, "flat_width") == 4 * length(working, "finished")
    assert said(working, "true_fullness") == "4"


@pytest.mark.parametrize(
    ("name", "least", "most"), [("dot_spacing", "1/8", "3/8"), ("row_spacing", "3/8", "3/4")]
)
def test_dots_and_rows_start_within_the_printed_bounds(name, least, most):
    """Laura I. Baldt, Clothing for Women, 1916: dots 1/8 to 3/8 in, rows 3/8 to 3/4 in apart."""
    for key in ("smocking-grid", "smocked-neck"):
        value = work(key).inputs[name]
        assert inches(least) <= value.length <= inches(most)
        assert value.basis == published("baldt-1916")


def test_three_to_one_is_called_a_habit():
    """Common practice, no source: three to one."""
    (fullness,) = [each for each in declared_inputs(find("smocking-grid"))
                   if each.name == "fullness"]  # fmt: skip
    assert fullness.kind.read(fullness.default) == Fraction(3)
    assert fullness.basis == PRACTICE
