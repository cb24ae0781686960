"""Links to handouts that a scenario does not publish: what is left of them is their words."""

from __future__ import annotations

import re
from collections.abc import Collection
from posixpath import dirname, join, normpath

_LINK = re.compile(
    r"\[(?P<words>(?:[^\[\]]|\[[^\[\]]*\])*)\]\((?P<to>[^()\s#]+\.md)(?:#[^()\s]*)?\)"
    r"(?P<looks>\{[^{}]*\})?"
)
_ENTRY = re.compile(r"^\s*(?:\||[-*+] |\d+\. )\s*$")
"""What stands before a link that a row of a table or an item of a list is about."""


def published_links(markdown: str, address: str, missing: Collection[str]) -> str:
    """A page's Markdown without links to the pages that are `missing` from the site.

    A row or an item that begins with such a link goes as a whole, and so does a button; elsewhere
    its words stay. Lines stay as they are where nothing is missing.
    """
    folder = dirname(address)

    def is_missing(link: re.Match[str]) -> bool:
        return normpath(join(folder, link["to"])) in missing

    kept = []
    gone = False
    for line in markdown.split("\n"):
        first = _LINK.search(line)
        entry = first and is_missing(first) and _ENTRY.match(line[: first.start()])
        gone = bool(entry) or (gone and line[:1].isspace() and bool(line.strip()))
        if not gone:
            kept.append(_LINK.sub(lambda link: _words(link) if is_missing(link) else link[0], line))
    return "\n".join(kept)


def _words(link: re.Match[str]) -> str:
    return "" if "button" in (link["looks"] or "") else link["words"]
