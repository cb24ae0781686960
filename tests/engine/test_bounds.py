"""The bounds of an input as they are said: whoever writes one down as she reads it is not refused.

Everything in the register is asked, so a new technique or garment is taken in by itself.
"""

import re
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import FineLengthKind, LengthKind, Quantity, ReelKind, YardageKind
from handout_engine.amounts.lengths import MILLIMETRES_PER_INCH, Length, inches, millimetres
from handout_engine.amounts.list_kinds import SeveralKind
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape

TAPES = [Tape(first, finest) for first, finest in product(("inches", "metric"), (8, 16, 32))]
SAID = re.compile(r"from (.+) to (.+)")
REFUSED = re.compile(r".* is too (?:small|large); use at (?:least|most) ([^()]+?)(?: \((.+)\))?")
lengths = st.fractions(Fraction(1, 100), 10**4, max_denominator=10**3).map(Length)


def quantities(key):
    """What each input holds; of a list, what each item holds."""
    for each in declared_inputs(register.find(key)):
        kind = each.kind.each if isinstance(each.kind, SeveralKind) else each.kind
        if isinstance(kind, Quantity):
            yield kind


def said_bounds(kind, tape):
    least, most = SAID.fullmatch(kind.bounds(tape)).groups()
    return kind.read(least), kind.read(most)


def refused(kind, raw):
    """The bound that a refusal names, in each system in which it does."""
    with pytest.raises(RefusalError) as refusal:
        kind.read(raw)
    named = REFUSED.fullmatch(refusal.value.message).groups()
    return [kind.read(each) for each in named if each]


@pytest.mark.parametrize("key", register.keys())
def test_a_bound_that_help_names_is_accepted_and_near(key):
    """Within a mark of the bound, or a hundredth of a unit; a tenth of a yard for thread."""
    for kind in quantities(key):
        for tape in TAPES:
            least, most = said_bounds(kind, tape)
            assert kind.least <= least <= kind.most
            assert kind.least <= most <= kind.most
            if isinstance(kind, LengthKind) and not isinstance(kind, ReelKind):
                mark = MILLIMETRES_PER_INCH / tape.finest if tape.first == "inches" else 1
                assert (least - kind.least).mm < mark
                assert (kind.most - most).mm < mark
            elif not isinstance(kind, LengthKind):
                assert least - kind.least < Fraction(1, 100)
                assert kind.most - most < Fraction(1, 100)


@pytest.mark.parametrize("key", register.keys())
def test_a_bound_that_a_refusal_names_is_accepted(key):
    for kind in quantities(key):
        below, above = kind.least - kind.least / 1000, kind.most * 2
        if below != kind.least and not isinstance(kind.least, int):
            assert refused(kind, below)
        assert refused(kind, above)


@given(st.sampled_from([LengthKind, YardageKind, FineLengthKind, ReelKind]), lengths, lengths)
def test_whatever_the_bounds_are_they_are_accepted_as_said(kind_of, first, second):
    """Also where no mark of the tape lies between them."""
    kind = kind_of(*sorted((first, second)))
    for tape in TAPES:
        said_bounds(kind, tape)
    refused(kind, kind.least - Length(Fraction(1, 1000)))
    refused(kind, kind.most + Length(Fraction(1, 1000)))


def test_the_least_is_said_up_and_the_most_down():
    kind = LengthKind(inches("3/32"), inches("5/32"))
    assert kind.bounds(Tape(finest=32)) == "from 3/32 in to 5/32 in"
    assert kind.bounds(Tape(finest=16)) == "from 1/8 in to 1/8 in"
    assert kind.bounds(Tape("metric")) == "from 3 mm to 3 mm"
    assert kind.bounds(Tape(finest=8)) == "from 1/8 in to 1/8 in"
    with pytest.raises(RefusalError, match=r"use at least 3/32 in \(3 mm\)$"):
        kind.read("2 mm")
    with pytest.raises(RefusalError, match=r"use at most 5/32 in \(3 mm\)$"):
        kind.read("4 mm")


def test_bounds_between_two_marks_are_said_exactly():
    kind = LengthKind(millimetres("3.3"), millimetres("3.4"))
    assert kind.bounds(Tape()) == "from 3 3/10 mm to 3 2/5 mm"
    with pytest.raises(RefusalError, match=r"use at most 3 2/5 mm$"):
        kind.read("4 mm")


def test_thread_and_needles_are_bounded_in_their_own_units():
    assert FineLengthKind(millimetres("0.333"), millimetres("0.666")).bounds(Tape()) == (
        "from 0.34 mm to 0.66 mm"
    )
    assert ReelKind(millimetres(1001), millimetres(2009)).bounds(Tape("metric")) == (
        "from 1.01 m to 2 m"
    )
