"""Names for regions of the theme that have none, so that each can be told from the others.

The theme names a section of the menu by a label that holds an arrow only, where the section has an
introduction; the section's title stands in it, and names it here. Its search opens as a dialog
without a name.
"""

from __future__ import annotations

import re

_SECTION = re.compile(
    r'(<nav class="md-nav"[^>]*?) aria-labelledby="(?P<id>[\w-]+)_label"'
    r'(?P<rest>[^>]*>\s*<label class="md-nav__title") for="(?P=id)"'
)
_NAMED = r'\1 aria-labelledby="\g<id>_title"\g<rest> for="\g<id>" id="\g<id>_title"'
_SEARCH = 'data-md-component="search" role="dialog"'


def with_names(page: str) -> str:
    """A whole page as the theme writes it, its regions named."""
    named = _SECTION.sub(_NAMED, page)
    return named.replace(_SEARCH, f'{_SEARCH} aria-label="Search"')
