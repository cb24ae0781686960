"""Markdown that is put together from an author's file and what the build adds to it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True)
class Text:
    """Markdown, with the line of its author's file that each of its lines stands in, or follows."""

    markdown: str
    numbers: Sequence[int]

    @classmethod
    def written(cls, markdown: str, first_line: int = 1) -> Text:
        """Markdown as its author wrote it, from that line of its file on."""
        text = markdown.replace("\r\n", "\n")
        return cls(text, range(first_line, first_line + text.count("\n") + 1))

    def followed_by(self, markdown: str) -> Text:
        """The same with more at its end."""
        last = [self.numbers[-1]] * markdown.count("\n")
        return Text(self.markdown + markdown, [*self.numbers, *last])
