"""Puts finished blocks into a page's HTML, and finds what Markdown did not take as it was meant.

While Markdown becomes HTML, a fence only leaves a place behind. What is then found in the page
decides: a fence that left no place would be printed as code, and an inline value that is still
there in its braces would be printed as such; both are for the author to mend.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from html import unescape

from handout_site.fences import COMMENT, INLINE

_PIECES = re.compile(
    rf"{COMMENT}|<(?P<code>pre|code|script)\b(?:(?!<(?P=code)\b).)*?</(?P=code)>"
    r'|<div data-handout-place="(?P<number>-?\d{1,6})"></div>'
    rf"|(?P<left>{INLINE.pattern})",
    re.DOTALL,
)


@dataclass(frozen=True)
class Placed:
    """A page's HTML with its blocks, the fences that were put in, and values that were not."""

    html: str
    numbers: frozenset[int]
    left: tuple[str, ...]


def place(number: int) -> str:
    """What a fence leaves in the HTML for its block to be put in."""
    return f'<div data-handout-place="{number}"></div>'


def put_in(html: str, made: Callable[[int], str]) -> Placed:
    """Put what `made` gives for each fence's number in its place."""
    numbers: set[int] = set()
    left: list[str] = []

    def _piece(match: re.Match[str]) -> str:
        if match["number"] is not None:
            numbers.add(int(match["number"]))
            return made(int(match["number"]))
        if match["left"] is not None:
            left.append(unescape(match["words"]).strip())
        return match[0]

    return Placed(_PIECES.sub(_piece, html), frozenset(numbers), tuple(left))
