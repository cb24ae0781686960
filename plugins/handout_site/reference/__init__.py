"""The reference, generated from the code: all that an author may write, and what she gets.

It is Markdown, so that the site gives it the same menu, search and print as any other page; one
page for each family of techniques, so that each can be read on a phone.
"""

from __future__ import annotations

from typing import Any

import click

from handout_engine.register import find, garment_keys, technique_keys
from handout_site.reference import baby, block, commands, scenarios, workable

FOLDER = "reference/"
"""What stands in the site's menu for all of these pages."""
GARMENTS = "garments"


def pages(console: click.Group) -> dict[str, str]:
    """The Markdown of each page by its address; `console` is the console script."""
    told = families()
    of_garments = told.pop(GARMENTS)
    found = {
        "index": block.page({GARMENTS: of_garments, **told}),
        "baby": baby.page(),
        GARMENTS: workable.garments_page(of_garments),
        **{f"garment-{key}": workable.garment_page(key) for key in of_garments},
        **{family: workable.page(family, members) for family, members in told.items()},
        "scenarios": scenarios.page(),
        "commands": commands.page(console),
    }
    return {f"{FOLDER}{name}.md": text for name, text in found.items()}


def families() -> dict[str, list[str]]:
    """The names of all techniques and garments by family: garments first, then by the alphabet."""
    found: dict[str, list[str]] = {GARMENTS: list(garment_keys())}
    for key in sorted(technique_keys(), key=lambda each: (find(each).family, each)):
        found.setdefault(find(key).family, []).append(key)
    return found


def menu() -> list[Any]:
    """The pages as they stand in the site's menu."""
    told = families()
    each_garment = [{find(key).title: _address(f"garment-{key}")} for key in told.pop(GARMENTS)]
    return [
        _address("index"),
        {"A baby's measures": _address("baby")},
        {"Garments": [_address(GARMENTS), *each_garment]},
        *({workable.title(family): _address(family)} for family in told),
        {"Scenarios": _address("scenarios")},
        {"Commands": _address("commands")},
    ]


def _address(name: str) -> str:
    return f"{FOLDER}{name}.md"
