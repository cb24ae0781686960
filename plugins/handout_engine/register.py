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
    if key in garments.keys():
        return garments.find(key)
    if key in techniques.keys():
        return techniques.find(key)
    near = nearest_name(key, keys())
    raise RefusalError(f'there is no technique or garment "{quoted(key)}"{near}', "technique")
