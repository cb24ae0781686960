"""Everything that can be worked out, by its name: the techniques, and the garments."""

from __future__ import annotations

from handout_engine import garments, techniques
from handout_engine.refusals import RefusalError, nearest_name, quoted
from handout_engine.technique import Technique


def keys() -> tuple[str, ...]:
    """The names of all techniques and garments, in alphabetical order."""
    return tuple(sorted([*techniques.keys(), *garments.keys()]))


def find(key: str) -> type[Technique]:
    """The technique or the garment of that name; raises RefusalError when there is none."""
    if key in set(garments.keys()):
        return garments.find(key)
    if key in set(techniques.keys()):
        return techniques.find(key)
    near = nearest_name(key, keys())
    raise RefusalError(f'there is no technique "{quoted(key)}"{near}', "technique")


def find_of_kind(key: str, *, garment: bool) -> type[Technique]:
    """The garment, or else the technique; raises RefusalError where it is the other."""
    if garment:
        if key in set(techniques.keys()):
            raise RefusalError(f"{key} is a technique; write technique: {key}", "garment")
        return garments.find(key)
    if key in set(garments.keys()):
        raise RefusalError(f"{key} is a garment; write garment: {key}", "technique")
    return find(key)
