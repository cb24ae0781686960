"""Declared inputs: what a technique asks for, with unit, bounds, usual amount and a word of help.

A technique declares each in its class by one of the functions at the end (`length`, `ratio`,
`count`, ...). From that one declaration come the reading of a block, the sentence of a refusal,
the reader's form and the reference page; read from a technique, it gives the amount there, which
knows its name.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any, Protocol, TypedDict, Unpack

from handout_engine.amounts.angles import Angle
from handout_engine.amounts.kinds import (
    AngleKind,
    ChoiceKind,
    CountKind,
    FineLengthKind,
    Kind,
    LengthKind,
    PercentageKind,
    RatioKind,
    Raw,
    ReelKind,
    ThreadCountKind,
    YardageKind,
)
from handout_engine.amounts.lengths import Length, NamedLength, Place
from handout_engine.amounts.list_kinds import ListKind, NamedLengthsKind, PlacesKind
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.sources import GIVEN, USUAL, Basis
from handout_engine.amounts.thread_counts import read_thread_count

BODY = "Baby"
MEASURES = "Measures"
SEWING = "Sewing"
CLOTH = "Cloth"
GROUPS = (BODY, MEASURES, SEWING, CLOTH)

MOST_NAMED = 15
"""A list of named widths has so many at most: a band of more strips is sewn in two."""

Within = tuple[str, str]
"""The least and the most that is accepted, both as text."""


@dataclass(frozen=True, eq=False)
class Later:
    """An amount that another block works out: it is looked up when the input is first read.

    `find` raises RefusalError where there is none.
    """

    find: Callable[[], Raw]


class Asking(Protocol):
    """What has declared inputs: a technique."""

    def given(self, asked: Input) -> object:
        """The amount of one of its inputs, named."""


@dataclass(eq=False)
class Input:
    """One declared input of a technique.

    `default` is text, read by the same reader as the author's; None means that the input may be
    left out, and `otherwise` then says what is used instead. Where the technique works that out as
    a value, `in_use` is its name. `basis` is what the default rests on.
    """

    label: str
    help: str
    kind: Kind
    default: str | None
    otherwise: str = ""
    group: str = MEASURES
    basis: Basis = GIVEN
    in_use: str = ""
    name: str = ""

    def __set_name__(self, owner: type, name: str) -> None:
        """Know the name that it is declared by."""
        self.name = name

    def __get__(self, technique: Asking | None, owner: type) -> Any:  # noqa: ANN401
        """The amount in a technique; the declaration itself where a class is asked."""
        return self if technique is None else technique.given(self)


@cache
def declared_inputs(technique: type) -> tuple[Input, ...]:
    """The inputs of a technique by group, in each in the order in which they are declared."""
    found: dict[str, Input] = {}
    for each in reversed(technique.__mro__):
        found.update((name, held) for name, held in vars(each).items() if isinstance(held, Input))
    return tuple(sorted(found.values(), key=lambda each: GROUPS.index(each.group)))


class More(TypedDict, total=False):
    """What an input of any kind may say besides: its group, its basis, the value in its place."""

    group: str
    basis: Basis
    in_use: str


def _declared(label: str, words: str, kind: Kind, usual: str, **more: Unpack[More]) -> Any:  # noqa: ANN401 - an `Input`, which gives its technique an amount
    return Input(label, words, kind, usual, **more)


def _left_out(label: str, words: str, kind: Kind, otherwise: str, **more: Unpack[More]) -> Any:  # noqa: ANN401
    return Input(label, words, kind, None, otherwise, **more)


def _lengths(within: Within) -> LengthKind:
    return LengthKind(read_length(within[0]), read_length(within[1]))


def length(label: str, words: str, usual: str, within: Within, **more: Unpack[More]) -> Length:
    """Declare a length."""
    found: Length = _declared(label, words, _lengths(within), usual, **more)
    return found


def optional_length(
    label: str, words: str, otherwise: str, within: Within, **more: Unpack[More]
) -> Length | None:
    """Declare a length that may be left out; `otherwise` says what is used then."""
    found: Length | None = _left_out(label, words, _lengths(within), otherwise, **more)
    return found


def length_by_choice(
    label: str, words: str, otherwise: str, within: Within, **more: Unpack[More]
) -> Length:
    """Declare a length that, when left out, is filled in by `Technique.usual`.

    `otherwise` says what it is then; the technique itself always holds a length.
    """
    found: Length = _left_out(label, words, _lengths(within), otherwise, **more)
    return found


def yardage(label: str, words: str, usual: str, within: Within, **more: Unpack[More]) -> Length:
    """Declare a length in which cloth is sold, said in yards or metres."""
    found: Length = _declared(label, words, YardageKind(*map(read_length, within)), usual, **more)
    return found


def reel(label: str, words: str, usual: str, within: Within, **more: Unpack[More]) -> Length:
    """Declare a length of thread, said in yards or metres."""
    found: Length = _declared(label, words, ReelKind(*map(read_length, within)), usual, **more)
    return found


def fine_length(label: str, words: str, usual: str, within: Within, **more: Unpack[More]) -> Length:
    """Declare a length smaller than a tape can measure, said in hundredths of a millimetre."""
    found: Length = _declared(
        label, words, FineLengthKind(*map(read_length, within)), usual, **more
    )
    return found


def optional_fine_length(
    label: str, words: str, otherwise: str, within: Within, **more: Unpack[More]
) -> Length | None:
    """Declare such a small length that may be left out."""
    found: Length | None = _left_out(
        label, words, FineLengthKind(*map(read_length, within)), otherwise, **more
    )
    return found


def lengths(
    label: str, words: str, usual: str, within: Within, most: int, **more: Unpack[More]
) -> tuple[Length, ...]:
    """Declare a list of one to `most` lengths."""
    found: tuple[Length, ...] = _declared(
        label, words, ListKind(_lengths(within), 1, most), usual, **more
    )
    return found


def named_lengths(
    label: str, words: str, usual: str, within: Within, names: tuple[str, ...], **more: Unpack[More]
) -> tuple[NamedLength, ...]:
    """Declare a list of named widths, such as the strips of a band."""
    kind = NamedLengthsKind(_lengths(within), 1, MOST_NAMED, names)
    found: tuple[NamedLength, ...] = _declared(label, words, kind, usual, **more)
    return found


def places(
    label: str,
    words: str,
    usual: str,
    within: Within,
    corners: tuple[int, int],
    **more: Unpack[More],
) -> tuple[Place, ...]:
    """Declare the corners of an outline, the fewest and the most of them given."""
    found: tuple[Place, ...] = _declared(
        label, words, PlacesKind(_lengths(within), *corners), usual, **more
    )
    return found


def optional_places(
    label: str,
    words: str,
    otherwise: str,
    within: Within,
    corners: tuple[int, int],
    **more: Unpack[More],
) -> tuple[Place, ...] | None:
    """Declare the corners of an outline that may be left out."""
    found: tuple[Place, ...] | None = _left_out(
        label, words, PlacesKind(_lengths(within), *corners), otherwise, **more
    )
    return found


def angle(label: str, words: str, usual: str, within: Within, **more: Unpack[More]) -> Angle:
    """Declare an angle in degrees."""
    found: Angle = _declared(label, words, AngleKind(*map(Fraction, within)), usual, **more)
    return found


def ratio(label: str, words: str, usual: str, within: Within, **more: Unpack[More]) -> Ratio:
    """Declare a plain ratio."""
    found: Ratio = _declared(label, words, RatioKind(*map(Fraction, within)), usual, **more)
    return found


def optional_ratio(
    label: str, words: str, otherwise: str, within: Within, **more: Unpack[More]
) -> Ratio | None:
    """Declare a plain ratio that may be left out."""
    found: Ratio | None = _left_out(
        label, words, RatioKind(*map(Fraction, within)), otherwise, **more
    )
    return found


def percentage(label: str, words: str, usual: str, most: int, **more: Unpack[More]) -> Ratio:
    """Declare a share in per cent, from 0 to `most` per cent."""
    found: Ratio = _declared(
        label, words, PercentageKind(Fraction(0), Fraction(most, 100)), usual, **more
    )
    return found


def optional_thread(
    label: str, words: str, otherwise: str, within: Within, **more: Unpack[More]
) -> Ratio | None:
    """Declare how fine a thread is, in tex whatever count it is written in; may be left out."""
    found: Ratio | None = _left_out(
        label, words, ThreadCountKind(*map(read_thread_count, within)), otherwise, **more
    )
    return found


def count(label: str, words: str, usual: int, most: int, **more: Unpack[More]) -> Count:
    """Declare a whole number from 1 to `most`."""
    found: Count = _declared(label, words, CountKind(1, most), str(usual), **more)
    return found


def optional_count(
    label: str, words: str, otherwise: str, most: int, **more: Unpack[More]
) -> Count | None:
    """Declare a whole number that may be left out."""
    found: Count | None = _left_out(label, words, CountKind(1, most), otherwise, **more)
    return found


def choice(label: str, words: str, *choices: str, usual: str = "", **more: Unpack[More]) -> str:
    """Declare a choice; without a usual one the first named is it."""
    more.setdefault("basis", USUAL)
    found: str = _declared(label, words, ChoiceKind(choices), usual or choices[0], **more)
    return found
