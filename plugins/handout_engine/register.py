"""Everything that can be worked out, by its name: the techniques, and the garments.

A technique `banded-ruffle` lives in `banded_ruffle.py`, in the room of its family, and is that
module's `TECHNIQUE`; a garment is its module's `GARMENT`. Adding a module adds the technique;
nothing else needs to be told. A module is read when its technique is first asked for.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib import import_module
from pkgutil import iter_modules

from handout_engine import families
from handout_engine.amounts.refusals import RefusalError, nearest_name, quoted
from handout_engine.drafting.garment import Garment
from handout_engine.working.technique import Technique


@cache
def keys() -> tuple[str, ...]:
    """The names of all techniques and garments, in alphabetical order."""
    return tuple(sorted(key for key in _modules() if known(key)))


@cache
def technique_keys() -> tuple[str, ...]:
    """The names of the techniques that are no garments, in alphabetical order."""
    return tuple(key for key in keys() if not is_garment(key))


@cache
def garment_keys() -> tuple[str, ...]:
    """The names of all garments, in alphabetical order."""
    return tuple(key for key in keys() if is_garment(key))


def known(key: str) -> bool:
    """Whether there is a technique or a garment of that name."""
    return key in _modules() and _loaded(key) is not None


def is_garment(key: str) -> bool:
    """Whether there is a garment of that name."""
    return known(key) and issubclass(find(key), Garment)


def find(key: str) -> type[Technique]:
    """The technique or the garment of that name; raises RefusalError when there is none."""
    found = _loaded(key) if key in _modules() else None
    if found is None:
        near = nearest_name(key, keys())
        raise RefusalError(f'there is no technique "{quoted(key)}"{near}', "technique")
    return found


def find_garment(key: str) -> type[Garment]:
    """The garment of that name; raises RefusalError when there is none."""
    found = find(key) if known(key) else None
    if found is None or not issubclass(found, Garment):
        near = nearest_name(key, garment_keys())
        raise RefusalError(f'there is no garment "{quoted(key)}"{near}', "garment")
    return found


def find_of_kind(key: str, *, garment: bool) -> type[Technique]:
    """The garment, or else the technique; raises RefusalError where it is the other."""
    if not garment and is_garment(key):
        raise RefusalError(f"{key} is a garment; write garment: {key}", "technique")
    if garment and known(key) and not is_garment(key):
        raise RefusalError(f"{key} is a technique; write technique: {key}", "garment")
    return find_garment(key) if garment else find(key)


@cache
def _modules() -> Mapping[str, str]:
    """The full names of all modules in the rooms of the families, by their names with hyphens."""
    return {
        each.name.replace("_", "-"): f"{families.__name__}.{family.name}.{each.name}"
        for family in iter_modules(families.__path__)
        for each in iter_modules(import_module(f"{families.__name__}.{family.name}").__path__)
    }


@cache
def _loaded(key: str) -> type[Technique] | None:
    module = import_module(_modules()[key])
    for name in ("TECHNIQUE", "GARMENT"):
        found = getattr(module, name, None)
        if isinstance(found, type) and issubclass(found, Technique):
            return found
    return None
