"""Names for regions of the theme that have none, so that each can be told from the others.

The theme names a section of the menu by a label that holds an arrow only, where the section has an
introduction. Here its title names it, behind those of the sections around it: the handouts have
garments, and so has the reference. The theme's search opens as a dialog without a name.
"""

from __future__ import annotations

import re

_SECTION = re.compile(
    r'(?P<nav><nav class="md-nav"[^>]*?) aria-labelledby="(?P<id>__nav(?:_\d+)+)_label"'
    r'(?P<rest>[^>]*>\s*<label class="md-nav__title") for="(?P=id)"'
)
_SEARCH = 'data-md-component="search" role="dialog"'


def with_names(page: str) -> str:
    """A whole page as the theme writes it, its regions named."""
    named = _SECTION.sub(_named, page)
    return named.replace(_SEARCH, f'{_SEARCH} aria-label="Search"')


def _named(section: re.Match[str]) -> str:
    """A section of the menu, whose id holds the numbers of all sections it stands in."""
    root, *numbers = section["id"].removeprefix("__").split("_")
    path = [f"__{root}_{'_'.join(numbers[:depth])}" for depth in range(1, len(numbers) + 1)]
    titles = " ".join(f"{each}_title" for each in path)
    own = section["id"]
    return (
        f'{section["nav"]} aria-labelledby="{titles}"{section["rest"]} for="{own}" id="{own}_title"'
    )
