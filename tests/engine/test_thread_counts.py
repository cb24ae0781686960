"""Thread counts as spools have them, read into tex."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.kinds import ThreadCountKind
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.thread_counts import NE_ONE, read_thread_count

numbers = st.fractions(1, 500, max_denominator=20).filter(lambda n: n > 0)


@pytest.mark.parametrize(
    ("text", "tex"),
    [
        ("30 tex", Fraction(30)),
        ("300 dtex", Fraction(30)),
        ("270 denier", Fraction(30)),
        ("50 Nm", Fraction(20)),
        ("Nm 50", Fraction(20)),
        ("1 Ne", NE_ONE),
        ("60/2 Ne", NE_ONE / 30),
        ("Ne 30", NE_ONE / 30),
        ("22,5 tex", Fraction("22.5")),
    ],
)
def test_counts_of_spools(text, tex):
    assert read_thread_count(text) == tex


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("30", "has no unit; write 30 tex"),
        ("0 Ne", "is no thread; write a number above 0"),
        ("30 mm", "mm does not measure how fine a thread is"),
        ("30 foo", '"foo" is not a thread count'),
        ("30 nan", '"nan" is not a thread count'),
        ("30 g/km", '"g/km" is not a thread count'),
        ("fine", "does not start with a number"),
        ("-3 tex", "is negative"),
    ],
)
def test_what_is_no_count_is_refused(text, sentence):
    with pytest.raises(RefusalError) as refused:
        read_thread_count(text)
    assert sentence in refused.value.message


@given(numbers)
def test_a_thread_said_in_any_count_is_the_same_thread(tex):
    assert read_thread_count(f"{tex} tex") == tex
    assert read_thread_count(f"{tex * 9} denier") == tex
    assert read_thread_count(f"{1000 / tex} Nm") == tex if (1000 / tex).numerator < 10**12 else True


def test_bounds_are_said_in_tex():
    kind = ThreadCountKind(Fraction(5), Fraction(120))
    with pytest.raises(RefusalError) as refused:
        kind.read("Ne 600")
    assert refused.value.message == "Ne 600 is too small; use at least 5 tex"
