"""Random inputs that a technique may be given, made from what it declares.

Lengths come from the tape (sixteenths, millimetres), and from nowhere on it (thirds, sevenths), as
references give them. Small ones are commoner, since that is where things cannot be sewn.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import ceil, floor

from hypothesis import strategies as st

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import ChoiceKind, CountKind, Kind, LengthKind, Quantity, Raw
from handout_engine.amounts.lengths import MILLIMETRES_PER_INCH, Length, NamedLength, Place
from handout_engine.amounts.list_kinds import ListKind, NamedLengthsKind, PlacesKind, SeveralKind
from handout_engine.working.technique import Technique

MARKS = (MILLIMETRES_PER_INCH / 16, Fraction(1), MILLIMETRES_PER_INCH / 4, Fraction(127, 15))


def lengths(least: Length, most: Length) -> st.SearchStrategy[Length]:
    """Lengths between two others, both allowed."""

    def on_marks(mark: Fraction) -> st.SearchStrategy[Length]:
        low, high = ceil(least.mm / mark), floor(most.mm / mark)
        near = st.integers(low, min(high, low + 24)) if low <= high else st.nothing()
        return (near | st.integers(low, max(low, high))).map(lambda n: Length(mark * n))

    fitting = [mark for mark in MARKS if ceil(least.mm / mark) <= floor(most.mm / mark)]
    return st.one_of(st.sampled_from([least, most]), *map(on_marks, fitting))


def ratios(least: Fraction, most: Fraction, parts: int = 60) -> st.SearchStrategy[Fraction]:
    """Ratios between two others, in sixtieths."""
    return st.integers(ceil(least * parts), floor(most * parts)).map(lambda n: Fraction(n, parts))


def amounts(kind: Kind) -> st.SearchStrategy[Raw]:
    """Amounts that an input of this kind accepts."""
    match kind:
        case SeveralKind(fewest=fewest, most=most):
            return st.lists(_item(kind), min_size=fewest, max_size=min(most, 8)).map(tuple)
        case ChoiceKind(choices=choices):
            return st.sampled_from(choices)
        case LengthKind(least=least, most=most):
            return lengths(least, most)
        case CountKind(least=least, most=most):
            return st.integers(least, min(most, 12)) | st.integers(least, most)
        case Quantity(least=least, most=most):
            return ratios(Fraction(least), Fraction(most))
        case _:
            raise ValueError(f"no random amounts are known for {type(kind).__name__}")


def _item(kind: SeveralKind) -> st.SearchStrategy[Length | Place | NamedLength]:
    """One item of a list that an input of this kind accepts."""
    each = lengths(kind.each.least, kind.each.most)
    match kind:
        case ListKind():
            return each
        case PlacesKind():
            return st.builds(Place, each, each)
        case NamedLengthsKind(names=names):
            return st.builds(NamedLength, st.sampled_from(names), each)
        case _:
            raise ValueError(f"no random items are known for {type(kind).__name__}")


def inputs_of(technique: type[Technique]) -> st.SearchStrategy[Mapping[str, Raw]]:
    """Some of a technique's inputs, each with an amount it accepts; the rest keep their default.

    Of the inputs that a technique names in `one_left_out`, all but one are given.
    """
    declared = {each.name: amounts(each.kind) for each in declared_inputs(technique)}
    needed: tuple[str, ...] = getattr(technique, "one_left_out", ())
    if not needed:
        return st.fixed_dictionaries({}, optional=declared)
    free = {name: found for name, found in declared.items() if name not in needed}
    return st.sampled_from(needed).flatmap(
        lambda missing: st.fixed_dictionaries(
            {name: declared[name] for name in needed if name != missing}, optional=free
        )
    )
