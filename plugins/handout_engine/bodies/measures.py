"""What a garment is sized to: a size of the body table, and any measure of the baby's own.

`size` names a column of the table; `body_length` moves to a place between the columns; every
other measure, where it is given, takes the place of the table's.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from handout_engine.amounts.inputs import BODY, choice, length_by_choice
from handout_engine.amounts.kinds import LengthKind
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.saying import decimal
from handout_engine.amounts.sources import ESTIMATE, Basis, published
from handout_engine.bodies.body_table import CENTIMETRES, KILOGRAMS, MONTHS, SIZES

SIZE, BODY_LENGTH = "size", "body_length"
"""The names of the inputs that say how long the baby is: by a size, or measured."""
USUAL_SIZE = "62"
SPAN = ("50 cm", "98 cm")
"""The body lengths that the table reaches."""
LENGTHS = {str(size): Length(Fraction(size * 10)) for size in SIZES}
"""Each size with the body length that it names."""


@dataclass(frozen=True)
class Measure:
    """One measure of a baby: where the tape goes, and what the table's figure rests on.

    `bounds` are the least and the most that is read as a baby's, as text.
    """

    label: str
    help: str
    bounds: tuple[str, str]
    basis: Basis


_SNYDER = published("snyder-1977")

MEASURES: Mapping[str, Measure] = {
    "head": Measure(
        "head",
        "Round the head above the ears, where it is widest.",
        ("30 cm", "56 cm"),
        published("cdc-2000"),
    ),
    "neck": Measure("neck", "Round the base of the neck.", ("13 cm", "30 cm"), ESTIMATE),
    "chest": Measure("chest", "Round the chest under the arms.", ("28 cm", "65 cm"), _SNYDER),
    "waist": Measure("waist", "Round the belly at the navel.", ("26 cm", "65 cm"), _SNYDER),
    "hip": Measure(
        "hip", "Round the widest part of the seat, without a nappy.", ("28 cm", "68 cm"), _SNYDER
    ),
    "shoulder_breadth": Measure(
        "shoulder breadth", "Across the shoulders, over both arms.", ("12 cm", "32 cm"), _SNYDER
    ),
    "back_waist": Measure(
        "back waist",
        "From the bone at the base of the neck to the waist.",
        ("12 cm", "32 cm"),
        ESTIMATE,
    ),
    "crown_rump": Measure(
        "crown to rump", "From the top of the head to the seat, lying.", ("30 cm", "68 cm"), _SNYDER
    ),
    "arm_length": Measure(
        "arm", "From the end of the shoulder to the wrist.", ("12 cm", "42 cm"), _SNYDER
    ),
    "upper_arm": Measure(
        "upper arm", "Round the thickest part of the upper arm.", ("8 cm", "24 cm"), _SNYDER
    ),
    "forearm": Measure(
        "forearm", "Round the thickest part of the forearm.", ("8 cm", "24 cm"), _SNYDER
    ),
    "wrist": Measure("wrist", "Round the wrist.", ("6 cm", "17 cm"), ESTIMATE),
    "hand_length": Measure(
        "hand", "From the wrist to the tip of the longest finger.", ("4 cm", "15 cm"), _SNYDER
    ),
    "thigh": Measure("thigh", "Round the middle of the thigh.", ("12 cm", "42 cm"), _SNYDER),
    "upper_thigh": Measure(
        "upper thigh",
        "Round the top of the thigh, in the fold of the groin.",
        ("13 cm", "46 cm"),
        ESTIMATE,
    ),
    "calf": Measure("calf", "Round the thickest part of the calf.", ("9 cm", "30 cm"), _SNYDER),
    "ankle": Measure("ankle", "Round the ankle.", ("7 cm", "22 cm"), _SNYDER),
    "foot_length": Measure(
        "foot", "From the heel to the tip of the longest toe.", ("5.5 cm", "20 cm"), _SNYDER
    ),
}


def size_choice() -> str:
    """Declare the size: the body length in cm that a baby's clothes are named by."""
    words = "The baby's body length in cm, down to a step of 6 cm; her own measures go before it."
    basis = published("en-13402")
    return choice("size", words, *LENGTHS, usual=USUAL_SIZE, group=BODY, basis=basis)


def body_length() -> Length:
    """Declare the body length, for a baby between two sizes."""
    words, basis = "From the crown to the sole, lying.", published("en-13402")
    return length_by_choice("body length", words, "the size's own", SPAN, group=BODY, basis=basis)


def kinds_of_measures() -> dict[str, LengthKind]:
    """How the body length and each measure are read, by name."""
    bounds = {BODY_LENGTH: SPAN, **{name: each.bounds for name, each in MEASURES.items()}}
    return {
        name: LengthKind(read_length(least), read_length(most))
        for name, (least, most) in bounds.items()
    }


def measured(name: str) -> Length:
    """Declare a body measure by its name; left out, it is the table's."""
    its = MEASURES[name]
    otherwise = "the table's for the size"
    return length_by_choice(its.label, its.help, otherwise, its.bounds, group=BODY, basis=its.basis)


def figure(name: str, length: Length) -> Length:
    """A measure from the table at a body length of 50 to 98 cm, between two sizes in proportion.

    Raises ValueError beyond the table, which nothing is known of.
    """
    return Length(_between([Fraction(each) * 10 for each in CENTIMETRES[name]], length))


def size_of(length: Length) -> str:
    """The size that a body length names; empty between two sizes."""
    return next((size for size, named in LENGTHS.items() if named == length), "")


def size_below(length: Length) -> str:
    """The size of a body length: the greatest that is no longer; the least for a shorter one."""
    within = [size for size, named in LENGTHS.items() if named.mm <= length.mm]
    return within[-1] if within else next(iter(LENGTHS))


def length_in_words(length: Length) -> str:
    """A body length in centimetres, as sizes are named: `70.5 cm`."""
    return f"{decimal(length.mm / 10, 1)} cm"


def fit_in_words(length: Length) -> str:
    """Whom something is made to by a body length: `size 74`, or `body length 70.5 cm`."""
    size = size_of(length)
    return f"size {size}" if size else f"body length {length_in_words(length)}"


def months(sex: str, length: Length) -> Fraction:
    """The age in months at which half of the girls or boys have reached a body length."""
    return _between([Fraction(each) for each in MONTHS[sex]], length)


def kilograms(length: Length) -> Fraction:
    """The median weight at a body length."""
    return _between([Fraction(each) for each in KILOGRAMS], length)


def _between(row: list[Fraction], length: Length) -> Fraction:
    places = [each.mm for each in LENGTHS.values()]
    for number in range(1, len(places)):
        if places[number - 1] <= length.mm <= places[number]:
            share = (length.mm - places[number - 1]) / (places[number] - places[number - 1])
            return row[number - 1] + share * (row[number] - row[number - 1])
    raise ValueError(f"{float(length.mm)} mm is beyond the body table")
