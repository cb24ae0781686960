"""Which parts of a working have anything in them, told without making them."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from handout_engine.working.workings import Working

_SHOWN: Mapping[str, Callable[[Working], object]] = {
    "finished": lambda working: any(each.finished for each in working.pictures),
    "measures": lambda working: working.inputs,
    "supplies": lambda working: working.supplies,
    "sample": lambda working: working.sample,
    "cuts": lambda working: working.pieces,
    "layout": lambda working: working.layouts,
    "marks": lambda working: any(piece.marks for piece in working.pieces),
    "chart": lambda working: working.charts,
    "drawing": lambda working: any(not each.finished for each in working.pictures),
    "steps": lambda working: working.steps,
    "begin": lambda working: working.put_by,
    "finish": lambda working: working.put_by,
    "sizes": lambda working: working.graded,
    "numbers": lambda working: working.values,
}


def has_part(working: Working, part: str) -> bool:
    """Whether a working has anything to show in one of the parts that a block may list."""
    return bool(_SHOWN[part](working))
