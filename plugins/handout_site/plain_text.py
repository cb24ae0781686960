"""Text put into Markdown that must mean itself."""

from __future__ import annotations

SIGNS = {"<": "&lt;", "{": "&#123;"}
"""Signs that are written as entities: those of tags, and of values to put in."""


def plain(text: str) -> str:
    """Text that means nothing to Markdown, and names no value to put in."""
    for sign in "\\*_`[]":
        text = text.replace(sign, f"\\{sign}")
    for sign, entity in SIGNS.items():
        text = text.replace(sign, entity)
    return text
