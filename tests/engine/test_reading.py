from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.reading import (
    UNITS,
    VULGAR,
    read_count,
    read_length,
    read_percentage,
    read_ratio,
)
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import mixed


def refused(read, text):
    with pytest.raises(RefusalError) as refusal:
        read(text)
    return refusal.value.message


@pytest.mark.parametrize(
    ("written", "length"),
    [
        ("1 1/2 in", inches("3/2")),
        ('1-1/2"', inches("3/2")),
        ("1½ in", inches("3/2")),
        ("1.5in", inches("3/2")),
        ("1,5 in", inches("3/2")),
        ("  1   1/2   inches ", inches("3/2")),
        ("1 1⁄2 in", inches("3/2")),
        ("3/2 in", inches("3/2")),
        ("½″", inches("1/2")),
        (".5 in", inches("1/2")),
        ("0 in", inches(0)),
        ("+2 in", inches(2)),
        ("1 IN", inches(1)),
        ("38 mm", millimetres(38)),
        ("3,8 cm", millimetres(38)),
        ("3.8cm", millimetres(38)),
        ("0.25 yd", inches(9)),
        ("2 yards", inches(72)),
        ("1 ft", inches(12)),
        ("1,2 m", millimetres(1200)),
        ("32 L", inches("32/40")),
        ("32L", inches("32/40")),
        ("1\N{NO-BREAK SPACE}1/2\N{NO-BREAK SPACE}in", inches("3/2")),
    ],
)
def test_a_length_is_read_as_a_tape_is(written, length):
    assert read_length(written) == length


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ("5", '"5" has no unit; write 5 in, 5 cm or 5 mm'),
        ("1.5", '"1.5" has no unit; write 1 1/2 in, 1 1/2 cm or 1 1/2 mm'),
        ("5 kg", "kg does not measure length; a length is written in in, mm, cm, m, ft or yd"),
        ("5 s", "s does not measure length; a length is written in in, mm, cm, m, ft or yd"),
        ("5 nan", '"nan" is not a unit; a length is written in in, mm, cm, m, ft or yd'),
        ("5 ells!", '"ells!" is not a unit; a length is written in in, mm, cm, m, ft or yd'),
        ("5 furbelow", '"furbelow" is not a unit; a length is written in in, mm, cm, m, ft or yd'),
        ("2 in 3", '"in 3" is not a unit; a length is written in in, mm, cm, m, ft or yd'),
        (
            "2 in + 1 in",
            '"in + 1 in" is not a unit; a length is written in in, mm, cm, m, ft or yd',
        ),
        ("2**9 in", '"**9 in" is not a unit; a length is written in in, mm, cm, m, ft or yd'),
        ("-2 in", '"-2 in" is negative; write a number of 0 or more'),
        ("−2 in", '"−2 in" is negative; write a number of 0 or more'),
        ("1/0 in", '"1/0 in" divides by nothing; the lower figure cannot be 0'),
        ("1 1/0 in", '"1 1/0 in" divides by nothing; the lower figure cannot be 0'),
        ("nan", '"nan" does not start with a number'),
        ("", '"" does not start with a number'),
        ("in", '"in" does not start with a number'),
        ("٣ in", '"٣ in" does not start with a number'),
        ("1" * 1_000_000, '"' + "1" * 40 + '..." is too long to be a measurement'),
        ("1" * 13 + " in", '"1111111111111 in" has too many digits'),
        (
            "1,234 mm",
            '"1,234 mm" may be read in two ways; write it without the comma, 1234 or 1.234',
        ),
    ],
)
def test_what_is_no_length_is_refused_in_one_sentence(written, sentence):
    assert refused(read_length, written) == sentence


@pytest.mark.parametrize("letters", [*VULGAR])
def test_every_fraction_sign_is_what_unicode_says_it_is(letters):
    import unicodedata  # noqa: PLC0415 - the standard library's copy of the Unicode tables

    sixtieths = round(unicodedata.numeric(letters) * 120)
    assert read_length(f"{letters} in") == inches(Fraction(sixtieths, 120))


@pytest.mark.parametrize(
    ("written", "ratio"),
    [("2", 2), ("2.5", Fraction(5, 2)), ("1 3/4", Fraction(7, 4)), ("2:1", 2), ("3 to 1", 3)],
)
def test_a_ratio(written, ratio):
    assert read_ratio(written) == ratio


@pytest.mark.parametrize("written", ["2 in", "2:3", "2 %", "2x"])
def test_what_is_no_ratio(written):
    assert refused(read_ratio, written) == (
        f'"{written}" is not a plain ratio; write 2, 2.5 or 2:1'
    )


def test_a_percentage_needs_its_sign():
    assert read_percentage("3 %") == read_percentage("3%") == Fraction(3, 100)
    assert read_percentage("2,5 per cent") == Fraction(1, 40)
    assert refused(read_percentage, "3") == '"3" is not a percentage; write 3 %'
    assert refused(read_percentage, "1/2") == '"1/2" is not a percentage; write 1/2 %'


def test_a_count_is_whole():
    assert read_count("12") == 12
    assert refused(read_count, "1 1/2") == '"1 1/2" is not a whole number'
    assert refused(read_count, "3 in") == '"3 in" is not a whole number'


@given(st.fractions(0, 10**4, max_denominator=9999), st.sampled_from(sorted(UNITS)))
def test_what_is_written_exactly_is_read_exactly(number, unit):
    assert read_length(f"{mixed(number)} {unit}") == Length(number * UNITS[unit])


@given(st.decimals(0, 10**5, places=3), st.sampled_from(["mm", "cm", "in", "yd"]))
def test_a_decimal_point_and_a_decimal_comma_read_alike(number, unit):
    with_point = read_length(f"{number} {unit}")
    assert with_point == Length(Fraction(number) * UNITS[unit])
    if not 1 <= number < 1000:  # "1,234" is refused: it may be a thousand
        assert read_length(f"{number} {unit}".replace(".", ",")) == with_point


some_text = st.text(max_size=70) | st.from_regex(r"[0-9½ ./,-]{0,8} ?[a-z\"]{0,8}", fullmatch=True)


@given(some_text)
def test_no_text_does_worse_than_be_refused_in_one_printable_line(text):
    for read in (read_length, read_ratio, read_percentage, read_count):
        try:
            read(text)
        except RefusalError as refusal:
            assert refusal.message.isprintable()
            assert len(refusal.message) < 200
