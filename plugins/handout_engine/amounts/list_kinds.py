"""Kinds of input that hold several things in order: lengths, points, named widths."""

from __future__ import annotations

import re
from abc import abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass
from typing import ClassVar

from handout_engine.amounts.kinds import Kind, LengthKind, Raw, seen
from handout_engine.amounts.lengths import Length, NamedLength, Place
from handout_engine.amounts.reading import is_bare
from handout_engine.amounts.refusals import RefusalError, nearest_name, quoted
from handout_engine.amounts.saying import Amount, System, Tape

NAMED = re.compile(r"(?P<name>[a-z][a-z -]*?) (?P<length>[^a-z].*)")
"""A name and its width, such as `lace 5/8 in`."""


@dataclass(frozen=True)
class SeveralKind(Kind):
    """Several items of one kind, each length in them within the same bounds."""

    each: LengthKind
    fewest: int
    most: int
    separator: ClassVar[str] = ";"

    def parts(self, raw: Raw) -> Sequence[Raw]:
        """The items of a YAML list, of a reference, or of one text; raises RefusalError."""
        found: Sequence[Raw]
        if isinstance(raw, str):
            found = self._split(raw)
        elif isinstance(raw, list | tuple):
            found = raw
        else:
            raise RefusalError(f"{seen(raw)} is not {self.word}")
        if not self.fewest <= len(found) <= self.most:
            raise RefusalError(
                f"{len(found)} given; write from {self.fewest} to {self.most} of them"
            )
        return found

    def _split(self, text: str) -> list[str]:
        return [part.strip() for part in re.split(self.separator, text) if part.strip()]

    @abstractmethod
    def read(self, raw: Raw) -> Amount:
        """The items in order."""

    def with_units(self, text: str, first: System) -> str:
        """Every item with a unit, where none has one: beside a written unit all must be written."""
        items = self._split(text)
        whole = [self.item_with_unit(item, first) for item in items]
        return _where_all_lack(items, whole, "; ") or text

    def item_with_unit(self, item: str, first: System) -> str:
        """One item with the unit that it lacks, or as it is."""
        return self.each.with_units(item, first)


def _where_all_lack(parts: Sequence[str], whole: Sequence[str], between: str) -> str:
    """The parts made whole, in a row, if every one of them lacked its unit; empty otherwise."""
    lacking = all(part != made for part, made in zip(parts, whole, strict=True))
    return between.join(whole) if lacking else ""


class ListKind(SeveralKind):
    """Several lengths in order."""

    word = "a list of lengths"
    separator = r";|,\s+"

    def read(self, raw: Raw) -> tuple[Length, ...]:
        """Read a YAML list, or one text with `;` (or a comma and a space) between lengths."""
        return tuple(self.each.read(part) for part in self.parts(raw))

    def bounds(self, tape: Tape) -> str:
        """How many lengths, and the bounds of each."""
        return f"{self.fewest} to {self.most} lengths, each {self.each.bounds(tape)}"


class PlacesKind(SeveralKind):
    """Several points on flat cloth, in order round an outline."""

    word = "a list of points"

    def read(self, raw: Raw) -> tuple[Place, ...]:
        """Read a YAML list of `across, down`, or one text with `;` between the points."""
        return tuple(self._place(part) for part in self.parts(raw))

    def item_with_unit(self, item: str, first: System) -> str:
        """Both distances of a point with the unit that they lack."""
        halves = re.split(r",\s+", item)
        whole = [self.each.with_units(half, first) for half in halves]
        return _where_all_lack(halves, whole, ", ") or item

    def _place(self, part: Raw) -> Place:
        if isinstance(part, Place):
            return Place(self.each.read(part.across), self.each.read(part.down))
        halves = re.split(r",\s+", part) if isinstance(part, str) else []
        if len(halves) != 2:
            raise RefusalError(f"{seen(part)} is not a point; write across, down as in 2 in, 3 in")
        across, down = (self.each.read(half) for half in halves)
        return Place(across, down)

    def bounds(self, tape: Tape) -> str:
        """How many points, and the bounds of each distance."""
        return f"{self.fewest} to {self.most} points (across, down), each {self.each.bounds(tape)}"


@dataclass(frozen=True)
class NamedLengthsKind(SeveralKind):
    """Several named widths in order, each name one of a few."""

    names: tuple[str, ...]
    word = "a list of named widths"

    def read(self, raw: Raw) -> tuple[NamedLength, ...]:
        """Read a YAML list of `lace 5/8 in`, or one text with `;` between them."""
        return tuple(self._named(part) for part in self.parts(raw))

    def item_with_unit(self, item: str, first: System) -> str:
        """A name and its width with the unit that it lacks."""
        match = NAMED.fullmatch(" ".join(item.split()))
        if match is None or not is_bare(match["length"]):
            return item
        return f"{match['name']} {self.each.with_units(match['length'], first)}"

    def _named(self, part: Raw) -> NamedLength:
        if isinstance(part, NamedLength):
            return self._checked(part.name, part.length)
        words = " ".join(part.split()) if isinstance(part, str) else ""
        match = NAMED.fullmatch(words)
        if match is None:
            raise RefusalError(f"{seen(part)} has no name and width; write {self.names[0]} 1/2 in")
        return self._checked(match["name"], match["length"])

    def _checked(self, name: str, length: Raw) -> NamedLength:
        if name not in self.names:
            hint = nearest_name(name, self.names)
            raise RefusalError(f'there is no strip called "{quoted(name)}"{hint}')
        return NamedLength(name, self.each.read(length))

    def bounds(self, tape: Tape) -> str:
        """How many, which names, and the bounds of each width."""
        names = ", ".join(self.names)
        return f"{self.fewest} to {self.most} of {names}, each {self.each.bounds(tape)}"
