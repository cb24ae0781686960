"""Declared inputs: what a technique asks for, with unit, bounds, default and a sentence of help.

A technique is a dataclass; each of its fields is made by one of the functions at the end
(`length`, `ratio`, `count`, ...). From that one declaration come the reading of a block, the
sentence of a refusal, the reader's form and the reference page.
"""

from __future__ import annotations

from dataclasses import Field, dataclass, field, fields, replace
from fractions import Fraction
from functools import cache
from typing import Any

from handout_engine.kinds import (
    AngleKind,
    ChoiceKind,
    CountKind,
    FineLengthKind,
    Kind,
    LengthKind,
    PercentageKind,
    RatioKind,
    ReelKind,
    ThreadCountKind,
    YardageKind,
)
from handout_engine.lengths import Length, NamedLength, Place
from handout_engine.list_kinds import ListKind, NamedLengthsKind, PlacesKind
from handout_engine.reading import read_length
from handout_engine.saying import Amount
from handout_engine.sources import GIVEN, USUAL, Basis
from handout_engine.thread_counts import read_thread_count

BODY = "Baby"
MEASURES = "Measures"
SEWING = "Sewing"
CLOTH = "Cloth"
GROUPS = (BODY, MEASURES, SEWING, CLOTH)


@dataclass(frozen=True)
class Input:
    """One declared input of a technique.

    `default` is text, read by the same reader as the author's; None means that the input may be
    left out, and `otherwise` then says what is used instead. Where the technique notes that as a
    value, `in_use` is its name. `basis` is what the default rests on.
    """

    name: str
    label: str
    help: str
    kind: Kind
    default: str | None
    otherwise: str = ""
    group: str = MEASURES
    basis: Basis = GIVEN
    in_use: str = ""


@dataclass(frozen=True)
class Asked:
    """The part of a declaration that is the same for every kind of input.

    `in_use` is the name of the value that holds what is used when the input is left out.
    """

    label: str
    help: str
    group: str = MEASURES
    basis: Basis = GIVEN
    in_use: str = ""


_KEY = "input"


@cache
def declared_inputs(technique: type) -> tuple[Input, ...]:
    """The inputs of a technique by group, in each in the order in which they are declared."""
    every = [_input(each) for each in fields(technique) if _KEY in each.metadata]
    return tuple(sorted(every, key=lambda each: GROUPS.index(each.group)))


def _input(declared: Field[Any]) -> Input:
    asked, kind, default, otherwise = declared.metadata[_KEY]
    return Input(
        declared.name,
        asked.label,
        asked.help,
        kind,
        default,
        otherwise,
        asked.group,
        asked.basis,
        asked.in_use,
    )


def _field(asked: Asked, kind: Kind, default: str | None, otherwise: str = "") -> Any:  # noqa: ANN401
    amount: Amount = None if default is None else kind.read(default)
    return field(default=amount, metadata={_KEY: (asked, kind, default, otherwise)})


def _lengths(bounds: tuple[str, str]) -> LengthKind:
    return LengthKind(read_length(bounds[0]), read_length(bounds[1]))


def length(asked: Asked, default: str, bounds: tuple[str, str]) -> Length:
    """Declare a length; `bounds` are its least and its most, as text."""
    found: Length = _field(asked, _lengths(bounds), default)
    return found


def yardage(asked: Asked, default: str, bounds: tuple[str, str]) -> Length:
    """Declare a length in which cloth is sold, said in yards or metres."""
    kind = YardageKind(read_length(bounds[0]), read_length(bounds[1]))
    found: Length = _field(asked, kind, default)
    return found


def fine_length(asked: Asked, default: str, bounds: tuple[str, str]) -> Length:
    """Declare a length smaller than a tape can measure, said in hundredths of a millimetre."""
    kind = FineLengthKind(read_length(bounds[0]), read_length(bounds[1]))
    found: Length = _field(asked, kind, default)
    return found


def optional_fine_length(asked: Asked, otherwise: str, bounds: tuple[str, str]) -> Length | None:
    """Declare such a small length that may be left out."""
    kind = FineLengthKind(read_length(bounds[0]), read_length(bounds[1]))
    found: Length | None = _field(asked, kind, None, otherwise)
    return found


def optional_length(asked: Asked, otherwise: str, bounds: tuple[str, str]) -> Length | None:
    """Declare a length that may be left out; `otherwise` says what is used then."""
    found: Length | None = _field(asked, _lengths(bounds), None, otherwise)
    return found


def length_by_choice(asked: Asked, otherwise: str, bounds: tuple[str, str]) -> Length:
    """Declare a length that, when left out, is filled in by `Technique.usual`.

    `otherwise` says what it is then; the technique itself always holds a length.
    """
    found: Length = _field(asked, _lengths(bounds), None, otherwise)
    return found


def lengths(asked: Asked, default: str, bounds: tuple[str, str], most: int) -> tuple[Length, ...]:
    """Declare a list of one to `most` lengths."""
    found: tuple[Length, ...] = _field(asked, ListKind(_lengths(bounds), 1, most), default)
    return found


def places(
    asked: Asked, default: str, bounds: tuple[str, str], fewest: int, most: int
) -> tuple[Place, ...]:
    """Declare the corners of an outline."""
    found: tuple[Place, ...] = _field(asked, PlacesKind(_lengths(bounds), fewest, most), default)
    return found


def optional_places(
    asked: Asked, otherwise: str, bounds: tuple[str, str], fewest: int, most: int
) -> tuple[Place, ...] | None:
    """Declare the corners of an outline that may be left out."""
    kind = PlacesKind(_lengths(bounds), fewest, most)
    found: tuple[Place, ...] | None = _field(asked, kind, None, otherwise)
    return found


def named_lengths(
    asked: Asked, default: str, bounds: tuple[str, str], most: int, names: tuple[str, ...]
) -> tuple[NamedLength, ...]:
    """Declare a list of named widths, such as the strips of a band."""
    kind = NamedLengthsKind(_lengths(bounds), 1, most, names)
    found: tuple[NamedLength, ...] = _field(asked, kind, default)
    return found


def angle(asked: Asked, default: str, bounds: tuple[str, str]) -> Fraction:
    """Declare an angle in degrees."""
    found: Fraction = _field(asked, AngleKind(Fraction(bounds[0]), Fraction(bounds[1])), default)
    return found


def optional_ratio(asked: Asked, otherwise: str, bounds: tuple[str, str]) -> Fraction | None:
    """Declare a plain ratio that may be left out."""
    kind = RatioKind(Fraction(bounds[0]), Fraction(bounds[1]))
    found: Fraction | None = _field(asked, kind, None, otherwise)
    return found


def optional_count(asked: Asked, otherwise: str, most: int) -> int | None:
    """Declare a whole number that may be left out."""
    found: int | None = _field(asked, CountKind(1, most), None, otherwise)
    return found


def reel(asked: Asked, default: str, bounds: tuple[str, str]) -> Length:
    """Declare a length of thread, said in yards or metres."""
    kind = ReelKind(read_length(bounds[0]), read_length(bounds[1]))
    found: Length = _field(asked, kind, default)
    return found


def optional_thread(asked: Asked, otherwise: str, bounds: tuple[str, str]) -> Fraction | None:
    """Declare how fine a thread is, in tex whatever count it is written in; may be left out."""
    kind = ThreadCountKind(*map(read_thread_count, bounds))
    found: Fraction | None = _field(asked, kind, None, otherwise)
    return found


def ratio(asked: Asked, default: str, bounds: tuple[str, str]) -> Fraction:
    """Declare a plain ratio."""
    kind = RatioKind(Fraction(bounds[0]), Fraction(bounds[1]))
    found: Fraction = _field(asked, kind, default)
    return found


def percentage(asked: Asked, default: str, most: int) -> Fraction:
    """Declare a share in per cent, from 0 to `most` per cent."""
    kind = PercentageKind(Fraction(0), Fraction(most, 100))
    found: Fraction = _field(asked, kind, default)
    return found


def count(asked: Asked, default: int, most: int) -> int:
    """Declare a whole number from 1 to `most`."""
    found: int = _field(asked, CountKind(1, most), str(default))
    return found


def choice(asked: Asked, *choices: str, default: str = "") -> str:
    """Declare a choice; without a default the first named is it."""
    usual = asked if asked.basis != GIVEN else replace(asked, basis=USUAL)
    found: str = _field(usual, ChoiceKind(choices), default or choices[0])
    return found
