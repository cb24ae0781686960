"""Kinds of input that hold several things in order: lengths, points, named widths."""

from __future__ import annotations

import re
from abc import abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass

from handout_engine.kinds import Kind, LengthKind, Raw, seen
from handout_engine.lengths import Length, NamedLength, Place
from handout_engine.refusals import RefusalError, nearest_name, quoted
from handout_engine.saying import Amount, Tape


@dataclass(frozen=True)
class SeveralKind(Kind):
    """Several items of one kind, each length in them within the same bounds."""

    each: LengthKind
    fewest: int
    most: int

    def parts(self, raw: Raw, separator: str) -> Sequence[Raw]:
        """The items of a YAML list, of a reference, or of one text; raises RefusalError."""
        found: Sequence[Raw]
        if isinstance(raw, str):
            found = [part.strip() for part in re.split(separator, raw) if part.strip()]
        elif isinstance(raw, list | tuple):
            found = raw
        else:
            raise RefusalError(f"{seen(raw)} is not {self.word}")
        if not self.fewest <= len(found) <= self.most:
            raise RefusalError(
                f"{len(found)} given; write from {self.fewest} to {self.most} of them"
            )
        return found

    @abstractmethod
    def read(self, raw: Raw) -> Amount:
        """The items in order."""


class ListKind(SeveralKind):
    """Several lengths in order."""

    word = "a list of lengths"

    def read(self, raw: Raw) -> tuple[Length, ...]:
        """Read a YAML list, or one text with `;` (or a comma and a space) between lengths."""
        return tuple(self.each.read(part) for part in self.parts(raw, r";|,\s+"))

    def bounds(self, tape: Tape) -> str:
        """How many lengths, and the bounds of each."""
        return f"{self.fewest} to {self.most} lengths, each {self.each.bounds(tape)}"


class PlacesKind(SeveralKind):
    """Several points on flat cloth, in order round an outline."""

    word = "a list of points"

    def read(self, raw: Raw) -> tuple[Place, ...]:
        """Read a YAML list of `across, down`, or one text with `;` between the points."""
        return tuple(self._place(part) for part in self.parts(raw, ";"))

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
        return tuple(self._named(part) for part in self.parts(raw, ";"))

    def _named(self, part: Raw) -> NamedLength:
        if isinstance(part, NamedLength):
            return self._checked(part.name, part.length)
        words = " ".join(part.split()) if isinstance(part, str) else ""
        match = re.fullmatch(r"(?P<name>[a-z][a-z -]*?) (?P<length>[^a-z].*)", words)
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
