"""The register of techniques: one module each, found by its name.

A technique `banded-ruffle` lives in `banded_ruffle.py` and is that module's `TECHNIQUE`. Adding a
module adds the technique; nothing else needs to be told.
"""

from __future__ import annotations

import pkgutil
import re
from functools import cache
from importlib import import_module

from handout_engine.refusals import RefusalError, nearest_name, quoted
from handout_engine.technique import Technique


@cache
def keys() -> tuple[str, ...]:
    """The names of all techniques, in alphabetical order."""
    return tuple(sorted(each.name.replace("_", "-") for each in pkgutil.iter_modules(__path__)))


@cache
def _load(key: str) -> type[Technique]:
    module = import_module(f"{__name__}.{key.replace('-', '_')}")
    technique: type[Technique] = module.TECHNIQUE
    return technique


def find(key: str) -> type[Technique]:
    """The technique of that name; raises RefusalError, naming the nearest, when there is none."""
    if not re.fullmatch(r"[a-z][a-z0-9-]*", key) or key not in keys():
        raise RefusalError(
            f'there is no technique "{quoted(key)}"{nearest_name(key, keys())}', "technique"
        )
    return _load(key)
