"""A value of a document with the way to it, read with sentences that name its place and line."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass
from typing import TypeVar

from handout_engine.amounts.refusals import RefusalError, nearest_name, quoted
from handout_site.mappings import Document, DocumentError, Plain

Read = TypeVar("Read")
LONGEST_WORDS = 2000


@dataclass(frozen=True)
class Field:
    """A value somewhere in a document: `way` leads to it, `seats/2/size`; `called` says it."""

    document: Document
    way: str
    called: str
    value: Plain

    @property
    def line(self) -> int:
        """The line it begins at."""
        return self.document.lines.get(self.way, 1)

    def wrong(self, sentence: str, line: int | None = None) -> DocumentError:
        """An error about it, to be raised."""
        return DocumentError(line or self.line, f"{self.called}: {sentence}")

    def below(self, name: str, value: Plain) -> Field:
        """One of the fields of a mapping."""
        called = f"{self.called}: {quoted(name)}"
        return Field(self.document, f"{self.way}/{name}", called, value)

    def fields(self, known: Collection[str], example: str) -> dict[str, Field]:
        """The fields of a mapping, each of them known."""
        if not isinstance(self.value, dict):
            raise self.wrong(f"write fields here, such as {example}")
        found = {}
        for name, value in self.value.items():
            field = self.below(name, value)
            if name not in known:
                hint = nearest_name(name, known)
                raise self.wrong(f'there is no field "{quoted(name)}"{hint}', field.line)
            found[name] = field
        return found

    def items(self, most: int, example: str, called: str = "") -> list[Field]:
        """The items of a list, at most so many; each is `called` by its number."""
        if not isinstance(self.value, list):
            raise self.wrong(f"write a list here, such as {example}")
        if len(self.value) > most:
            raise self.wrong(f"{len(self.value)} are too many; the most is {most}")
        name = called or f"{self.called}: item"
        return [
            Field(self.document, f"{self.way}/{number}", f"{name} {number}", value)
            for number, value in enumerate(self.value, 1)
        ]

    def words(self) -> str:
        """One line or paragraph of text."""
        if not isinstance(self.value, str):
            raise self.wrong("write text here")
        if len(self.value) > LONGEST_WORDS:
            raise self.wrong(
                f"{len(self.value)} characters are too many; the most is {LONGEST_WORDS}"
            )
        return " ".join(self.value.split())

    def read(self, read: Callable[[Plain], Read]) -> Read:
        """What a reader makes of it; a refusal is told with the line of the place it names."""
        try:
            return read(self.value)
        except RefusalError as refusal:
            line = self.document.lines.get(f"{self.way}/{refusal.field}", self.line)
            raise self.wrong(refusal.message, line) from None
