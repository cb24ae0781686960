"""What people write, read into exact amounts.

Numbers are read as a tape is: whole, decimal (point or comma), `1/2`, `1 1/2`, `1-1/2`, `1½`.
A length needs its unit. The units of the sewing table are held here as exact factors, so that
the reader's browser need not load pint to read "38 mm"; every other word goes to pint, which
knows its dimension (`units.other_unit`). tests/published/ holds these factors against pint's.
"""

from __future__ import annotations

import re
from fractions import Fraction

from handout_engine.amounts.lengths import MILLIMETRES_PER_INCH, Length
from handout_engine.amounts.refusals import RefusalError, quoted

LONGEST_TEXT = 60
MOST_DIGITS = 12

VULGAR = {
    "½": "1/2",
    "⅓": "1/3",
    "⅔": "2/3",
    "¼": "1/4",
    "¾": "3/4",
    "⅕": "1/5",
    "⅖": "2/5",
    "⅗": "3/5",
    "⅘": "4/5",
    "⅙": "1/6",
    "⅚": "5/6",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
}

LIGNE = MILLIMETRES_PER_INCH / 40
"""The fortieth of an inch by which buttons are sized, written `32 L` or `32 ligne`."""

UNITS: dict[str, Fraction] = {
    **dict.fromkeys(("in", "inch", "inches", '"', "″", "”", "''"), MILLIMETRES_PER_INCH),
    **dict.fromkeys(("mm", "millimetre", "millimetres", "millimeter", "millimeters"), Fraction(1)),
    **dict.fromkeys(("cm", "centimetre", "centimetres", "centimeter", "centimeters"), Fraction(10)),
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters"), Fraction(1000)),
    **dict.fromkeys(("ft", "foot", "feet"), 12 * MILLIMETRES_PER_INCH),
    **dict.fromkeys(("yd", "yds", "yard", "yards"), 36 * MILLIMETRES_PER_INCH),
    **dict.fromkeys(("line", "lines", "ligne", "lignes", "l"), LIGNE),
}

_NUMBER = re.compile(
    r"(?P<sign>[-+−]?)\s*(?:"
    r"(?P<whole>\d+)(?:\s+|-)(?P<top>\d+)/(?P<bottom>\d+)"
    r"|(?P<only_top>\d+)\s?/\s?(?P<only_bottom>\d+)"
    r"|(?P<decimal>\d*[.,]?\d+|\d+[.,])"
    r")",
    re.ASCII,
)


def _plain(text: str) -> str:
    """The text without odd spaces and with ½ spelled 1/2, so that one pattern reads all."""
    if len(text) > LONGEST_TEXT:
        raise RefusalError(f'"{quoted(text)}" is too long to be a measurement')
    for sign, spelled in VULGAR.items():
        text = text.replace(sign, f" {spelled}")
    return " ".join(text.replace("⁄", "/").split())


def number_and_rest(text: str) -> tuple[Fraction, str]:
    """The leading number of a text and what follows it; refuses what is not one number."""
    plain = _plain(text)
    match = _NUMBER.match(plain)
    if match is None:
        raise RefusalError(f'"{quoted(text)}" does not start with a number')
    found = match.groupdict()
    if any(len(digits or "") > MOST_DIGITS for digits in found.values()):
        raise RefusalError(f'"{quoted(text)}" has too many digits')
    if found["sign"] in {"-", "−"}:
        raise RefusalError(f'"{quoted(text)}" is negative; write a number of 0 or more')
    return _value(found, text), plain[match.end() :].strip()


def _value(found: dict[str, str | None], text: str) -> Fraction:
    decimal = found["decimal"]
    if decimal is not None:
        if re.fullmatch(r"[1-9]\d{0,2},\d{3}", decimal):
            raise RefusalError(
                f'"{quoted(text)}" may be read in two ways; write it without the comma, '
                f"{decimal.replace(',', '')} or {decimal.replace(',', '.')}"
            )
        return Fraction(decimal.replace(",", ".").rstrip("."))
    bottom = int(found["bottom"] or found["only_bottom"] or 0)
    if bottom == 0:
        raise RefusalError(f'"{quoted(text)}" divides by nothing; the lower figure cannot be 0')
    return int(found["whole"] or 0) + Fraction(int(found["top"] or found["only_top"] or 0), bottom)


def is_bare(text: str) -> bool:
    """Whether a text is one number of 0 or more and nothing else, so that a unit is missing."""
    try:
        return not number_and_rest(text)[1]
    except RefusalError:
        return False


def read_length(text: str) -> Length:
    """Read a length of 0 or more, with its unit: `1 1/2 in`, `1½"`, `3,8 cm`, `0.25 yd`.

    Raises RefusalError for a missing or wrong unit, a negative number, or anything else.
    """
    number, unit = number_and_rest(text)
    if not unit:
        plain = _tidy(number)
        raise RefusalError(
            f'"{quoted(text)}" has no unit; write {plain} in, {plain} cm or {plain} mm'
        )
    factor = UNITS.get(unit) or UNITS.get(unit.lower())
    if factor is None:
        from handout_engine.amounts.units import other_unit  # noqa: PLC0415 - pint loads only when needed

        factor = other_unit(unit)
    return Length(number * factor)


def _tidy(number: Fraction) -> str:
    """A number the way the author may have meant it: whole, or a mixed fraction."""
    whole, rest = divmod(number, 1)
    return f"{whole} {rest}".removeprefix("0 ") if rest else str(whole)


def read_ratio(text: str) -> Fraction:
    """Read a plain ratio: `2`, `2.5`, `1 3/4`, `2:1` or `2 to 1` (so many of the first to one)."""
    number, rest = number_and_rest(text)
    if rest and not re.fullmatch(r"(?::|to)\s*1", rest):
        raise RefusalError(f'"{quoted(text)}" is not a plain ratio; write 2, 2.5 or 2:1')
    return number


def read_percentage(text: str) -> Fraction:
    """Read a share written in per cent, with its sign: `3 %` gives 3/100."""
    number, rest = number_and_rest(text)
    if rest not in {"%", "percent", "per cent"}:
        raise RefusalError(f'"{quoted(text)}" is not a percentage; write {_tidy(number)} %')
    return number / 100


def read_angle(text: str) -> Fraction:
    """Read an angle in degrees: `45`, `45 deg` or `45°`."""
    number, rest = number_and_rest(text)
    if rest not in {"", "°", "deg", "degree", "degrees"}:
        raise RefusalError(f'"{quoted(text)}" is not an angle; write {_tidy(number)} deg')
    return number


def read_count(text: str) -> int:
    """Read a whole number."""
    number, rest = number_and_rest(text)
    if rest or number.denominator != 1:
        raise RefusalError(f'"{quoted(text)}" is not a whole number')
    return number.numerator
