"""The site's menu: the sections that the plugin puts into it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any


def filled_menu(nav: list[Any] | None, places: Mapping[str, list[Any]]) -> list[Any] | None:
    """The site's menu with sections where it names a place, left out where there is nothing."""
    if nav is None:
        return None
    found = []
    for item in nav:
        title, target = next(iter(item.items())) if isinstance(item, dict) else ("", item)
        if not isinstance(target, str) or not title or target not in places:
            found.append(item)
        elif places[target]:
            found.append({title: places[target]})
    return found
