"""What an author or reader must mend, and the values that running text mentions."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Problem:
    """Something an author or reader must mend: where, in which block and field, and what."""

    line: int
    text: str
    block: str = ""
    field: str = ""


@dataclass(frozen=True)
class Inline:
    """A `{{ name.value }}` in running text and its source line."""

    reference: str
    line: int = 1
