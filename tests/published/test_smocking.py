"""Smocking against what stands in print."""

from fractions import Fraction

import pytest

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.register import find
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


@pytest.mark.parametrize("name", ["gap", "repeat", "longest_crossing", "take_up"])
def test_the_measures_of_shadow_work_are_called_a_habit(name):
    """Common practice, no source."""
    assert work("shadow-work").inputs[name].basis == PRACTICE


def test_shadow_work_has_back_stitch_in_front_and_crosses_behind():
    """Common practice, no source: of each stitch the front shows one repeat, the rest is behind."""
    working = work("shadow-work", margin="0 in", edge="10 in", repeat="2.54 mm", gap="1/8 in")
    assert length(working, "thread_front") == 2 * inches(10)
    assert length(working, "thread_behind") > length(working, "thread_front")
