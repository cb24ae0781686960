"""The register of garments: one module each, found by its name.

A garment `day-gown` lives in `day_gown.py` and is that module's `GARMENT`. Adding a module adds
the garment; nothing else needs to be told.
"""

from __future__ import annotations

import pkgutil
from functools import cache
from importlib import import_module

from handout_engine.garment import Garment
from handout_engine.refusals import RefusalError, nearest_name, quoted


@cache
def keys() -> tuple[str, ...]:
    """The names of all garments, in alphabetical order."""
    return tuple(sorted(each.name.replace("_", "-") for each in pkgutil.iter_modules(__path__)))


@cache
def _load(key: str) -> type[Garment]:
    module = import_module(f"{__name__}.{key.replace('-', '_')}")
    garment: type[Garment] = module.GARMENT
    return garment


def find(key: str) -> type[Garment]:
    """The garment of that name; raises RefusalError, naming the nearest, when there is none."""
    if key not in keys():
        raise RefusalError(f'there is no garment "{quoted(key)}"{nearest_name(key, keys())}',
                           "garment")  # fmt: skip
    return _load(key)
