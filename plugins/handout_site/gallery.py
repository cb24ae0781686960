"""Leaves out of the gallery of techniques what a scenario does not publish."""

from __future__ import annotations

import re
from collections.abc import Collection

_ENTRY = re.compile(r'<li class="gallery-entry" data-handout="([^"]+)">.*?</li>', re.DOTALL)
_EMPTY = re.compile(
    r'<section class="gallery-family"[^>]*><h2[^>]*>(?:(?!</h2>).)*</h2><ul></ul></section>',
    re.DOTALL,
)


def published_only(html: str, names: Collection[str]) -> str:
    """A page's HTML with only those entries of a gallery whose handouts have these names.

    A family without an entry goes as well. A page without a gallery is given back as it is.
    """
    kept = _ENTRY.sub(lambda entry: entry[0] if entry[1] in names else "", html)
    return _EMPTY.sub("", kept)
