"""Text put into Markdown that must mean itself, and text taken out of it."""

from __future__ import annotations

import re
from html import unescape

SIGNS = {"&": "&amp;", "<": "&lt;", "{": "&#123;"}
"""Signs that are written as entities, in this order: those of entities, tags, values to put in."""
_ESCAPED = re.compile(r"\\([\\`*_{}\[\]()#+.!<>&|~-])")


def plain(text: str) -> str:
    """Text that means nothing to Markdown, and names no value to put in."""
    for sign in "\\*_`[]":
        text = text.replace(sign, f"\\{sign}")
    for sign, entity in SIGNS.items():
        text = text.replace(sign, entity)
    return text


def as_read(markdown: str) -> str:
    """A line of Markdown that is plain text but for its escapes, as it is read."""
    return unescape(_ESCAPED.sub(r"\1", markdown))
