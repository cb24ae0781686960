"""What every page that computes ends with: its cautions and its sources."""

from __future__ import annotations

import re

from handout_site.fences import OF_PAGE, scan

_TECHNIQUE = re.compile(r"^\s*(?:technique|garment)\s*:", re.MULTILINE)

CLOSING = {
    "cautions": "\n\n## Cautions\n\n```calc\nof: page\nshow: cautions\n```\n",
    "sources": "\n\n## Sources\n\n```calc\nof: page\nshow: sources\n```\n",
}


def with_closing_parts(markdown: str) -> str:
    """A page with cautions and sources at its end, unless it computes nothing or places them."""
    found = scan(markdown)
    bodies = [fence.body for fence in found.fences]
    if found.unclosed or not any(_TECHNIQUE.search(body) for body in bodies):
        return markdown
    of_page = [body for body in bodies if OF_PAGE.search(body)]
    placed = {part for part in CLOSING for body in of_page if part in body or "show" not in body}
    return markdown + "".join(text for part, text in CLOSING.items() if part not in placed)
