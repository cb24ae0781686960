"""Units of measure against what is published; the source stands beside each check."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import MILLIMETRES_PER_INCH, Length, inches, millimetres
from handout_engine.amounts.reading import UNITS, read_length
from handout_engine.amounts.saying import Tape, mixed
from handout_engine.amounts.units import registry

# The inch marks are no words that pint knows.
MARKS = {'"', "″", "”", "''"}
BUTTON_LINES = {"ligne", "lignes", "line", "lines", "l"}


def test_the_international_yard_is_0_9144_metres():
    # Addendum of 1960 to NBS Circular 572: 1 yard = 0.9144 m exactly, 1 inch = 25.4 mm
    assert read_length("1 yd") == read_length("0.9144 m") == millimetres("914.4")
    assert Fraction("25.4") == MILLIMETRES_PER_INCH


@pytest.mark.parametrize("word", sorted(UNITS.keys() - MARKS - BUTTON_LINES))
def test_every_factor_is_pint_s_own(word):
    # pint, which holds the exact definitions of the units, at the version installed
    name = {"yds": "yards"}.get(word, word)
    one = registry().Quantity(Fraction(1), name).to("millimetre").magnitude
    assert Fraction(one) == UNITS[word]


def test_buttons_are_counted_in_fortieths_of_an_inch():
    # trade unit (US tariff heading 9606 counts buttons by it): 16 lines are 10.16 mm, 40 an inch
    assert {UNITS[word] for word in BUTTON_LINES} == {Fraction("0.635")}
    assert read_length("16 lines") == millimetres("10.16")
    assert read_length("40 ligne") == inches(1)
    assert read_length("32 L") == read_length("32L") == read_length("32 ligne")


def test_inch_marks_are_inches():
    # The trade's own marks, ′ and ″ and their like, which pint does not know.
    assert {UNITS[mark] for mark in MARKS} == {MILLIMETRES_PER_INCH}


@given(st.fractions(0, 1000, max_denominator=64), st.sampled_from(["in", "mm", "cm", "m", "yd"]))
def test_any_length_is_converted_as_pint_converts_it(number, unit):
    # pint, at the version installed
    theirs = registry().Quantity(number, unit).to("millimetre").magnitude
    assert read_length(f"{mixed(number)} {unit}").mm == Fraction(theirs)


@pytest.mark.parametrize("unit", ["decimeter", "furlong", "fathom", "mile", "micrometer"])
def test_a_unit_beyond_the_sewing_table_is_read_exactly_through_pint(unit):
    # pint, at the version installed
    theirs = registry().Quantity(Fraction(3), unit).to("millimetre").magnitude
    assert read_length(f"3 {unit}") == Length(Fraction(theirs))


def test_pint_s_whole_registry_gives_lengths_or_a_refusal():
    # pint, at the version installed: every word of it
    words = [word for word in registry() if word.isalpha() and word.isascii()]
    assert len(words) > 200
    read = 0
    for word in words:
        try:
            length = read_length(f"1 {word}")
        except ValueError as refusal:
            assert "a length is written in in, mm, cm, m, ft or yd" in str(refusal)
        else:
            assert length.mm > 0
            read += 1
    assert read > 20


@pytest.mark.parametrize(
    ("inch", "metric"),
    [("1/4", "6 mm"), ("1/2", "13 mm"), ("5/8", "16 mm"), ("1", "25 mm"), ("36", "91.4 cm")],
)
def test_a_converted_value_keeps_the_precision_of_a_tape(inch, metric):
    # NIST LC 1137: a converted value keeps the precision of the datum; a tape reads millimetres
    assert Tape().beside(inches(inch)) == metric


def test_sheets_of_paper():
    # Letter is 8 1/2 x 11 in; ANSI/ASME Y14.1 (the standard's number from memory): 215.9 x 279.4
    assert (inches("17/2"), inches(11)) == (millimetres("215.9"), millimetres("279.4"))
