"""The evaluator that the other tests hold formulas against must itself say no."""

from fractions import Fraction

import pytest

from arithmetic import Exact, is_true, work_out
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.values import sentence


def test_a_formula_with_every_kind_of_part():
    formula = sentence("({a} + 2 × {b}) / {b}, rounded up, at least 1", a=inches(1), b=inches(2))
    assert work_out(formula) == Exact(Fraction(3))
    step = sentence("{a} × {n}, rounded up to the next {b}", a=inches(1), n=3, b=inches(2))
    assert work_out(step) == Exact(inches(4).mm, 1)
    assert work_out(sentence("{a} / {b}, rounded down", a=inches(1), b=inches(2))) == Exact(
        Fraction(0)
    )
    assert work_out(sentence("{a} - {b}, at least 0", a=inches(1), b=inches(2))) == Exact(
        Fraction(0), 1
    )


@pytest.mark.parametrize(
    "template",
    ["{a} + {n}", "{a} - 1", "{a}, rounded up", "{a} ** 2", "__import__({n})", "{a}, more or less",
     "{a}, at least 1"],
)  # fmt: skip
def test_what_is_no_formula_of_the_trade_is_refused(template):
    with pytest.raises((ValueError, AssertionError)):
        work_out(sentence(template, a=inches(1), n=2))


def test_roots_angles_and_pi_are_worked_out_to_a_millionth():
    root = sentence("√({a} × {a} + {b} × {b}) / {a}", a=inches(3), b=inches(4))
    assert work_out(root) == Exact(Fraction(5, 3))
    assert work_out(sentence("{a} × tan({n} / 2)", a=inches(1), n=90)) == Exact(inches(1).mm, 1)
    assert work_out(sentence("2 × arcsin({a} / {b})", a=inches(1), b=inches(2))) == Exact(
        Fraction(60)
    )
    assert work_out(sentence("{a} × π", a=inches(1))) != Exact(inches(3).mm, 1)
    with pytest.raises((ValueError, AssertionError)):
        work_out(sentence("√({a})", a=inches(4)))


def test_a_reason_is_held_against_its_numbers():
    parts = {"a": inches(1), "b": inches(2)}
    assert is_true(sentence("{a} is at most {b}", **parts))
    assert not is_true(sentence("{a} is more than {b}", **parts))
    assert is_true(sentence("{a} × 2 is at least {b}, and “ends” is “open”", **parts))
    with pytest.raises(ValueError, match="no reason"):
        is_true(sentence("{a} may be {b}", **parts))
