"""`{{ name.value }}` in running text, as an inline pattern that only looks results up.

Being a pattern of the Markdown parser, it leaves code spans and code blocks alone.
"""

from __future__ import annotations

from collections.abc import Callable
from re import Match
from xml.etree.ElementTree import Element

from markdown import Markdown
from markdown.extensions import Extension
from markdown.inlinepatterns import InlineProcessor
from markdown.util import AtomicString

from handout_engine.pages.blocks import REFERENCE
from handout_site.fences import INLINE

AFTER_CODE = 185
Lookup = Callable[[str], Element | None]


class InlineValues(Extension):
    """Puts computed values into running text; `lookup` gives the element for a reference."""

    def __init__(self, lookup: Lookup) -> None:
        """Keep the lookup."""
        super().__init__()
        self.lookup = lookup

    def extendMarkdown(self, md: Markdown) -> None:  # noqa: N802 - the parser's own name
        """Add the pattern behind the one for code spans."""
        md.inlinePatterns.register(_Pattern(self.lookup, md), "handout-values", AFTER_CODE)


class _Pattern(InlineProcessor):
    def __init__(self, lookup: Lookup, md: Markdown) -> None:
        super().__init__(INLINE.pattern, md)
        self.lookup = lookup

    def handleMatch(  # type: ignore[override]  # noqa: N802 - the parser's own name
        self, m: Match[str], data: str
    ) -> tuple[Element | None, int | None, int | None]:
        del data
        words = m["words"].strip()
        found = self.lookup(words) if REFERENCE.fullmatch(words) else None
        if found is None:
            return None, None, None
        for part in found.iter():
            part.text = AtomicString(part.text) if part.text else part.text
            part.tail = AtomicString(part.tail) if part.tail else part.tail
        return found, m.start(0), m.end(0)
