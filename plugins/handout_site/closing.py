"""What every page that computes ends with: its cautions and its sources."""

from __future__ import annotations

import re

from handout_engine.pages.blocks import PAGE
from handout_site.fences import OF_PAGE, scan
from handout_site.numbered import Text
from handout_site.usual_sections import CAUTIONS, SOURCES, block_of, written_out

_TECHNIQUE = re.compile(r"^\s*(?:technique|garment)\s*:", re.MULTILINE)

CLOSING = {
    part: f"\n\n{written_out(section, [block_of(PAGE, [part])])}\n"
    for section in (CAUTIONS, SOURCES)
    for (part,) in section.shows
}


def with_closing_parts(text: Text) -> Text:
    """A page with cautions and sources at its end, unless it computes nothing or places them."""
    found = scan(text.markdown)
    bodies = [fence.body for fence in found.fences]
    if found.unclosed or not any(_TECHNIQUE.search(body) for body in bodies):
        return text
    of_page = [body for body in bodies if OF_PAGE.search(body)]
    placed = {part for part in CLOSING for body in of_page if part in body or "show" not in body}
    return text.followed_by("".join(end for part, end in CLOSING.items() if part not in placed))
