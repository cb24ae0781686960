"""A spiral flounce cut out of paper as its steps say, figure by figure as they are printed.

Nothing is taken from the engine but the words: the line is drawn by the radii and the turns that
the first step names, the ends are ruled where the second says, and the paper is cut along all of
them by shapely. What comes free is measured.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, dist, floor, pi, sin

from shapely import LineString, Point
from shapely.ops import polygonize, unary_union

from handout_engine.amounts.reading import read_length

FIGURE = r"([\d/. ]+ (?:in|mm|cm))"
DRAWN = re.compile(
    rf"begin {FIGURE} from the centre and come {FIGURE} farther out .* for ([\d.]+) turns"
)
ENDED = re.compile(rf"seam line {FIGURE} outside the line, measure {FIGURE} along it")
STEPS_A_TURN = 720


@dataclass(frozen=True)
class Cut:
    """What comes free: how long its seam line is, how deep it is at its ends, and its area."""

    seam: float
    ends: tuple[float, float]
    area: float


def cut(steps: Sequence[str]) -> Cut:
    """Follow the printed steps (in inches or in metric) with pencil, rule and scissors."""
    start, pitch, turns = _figures(DRAWN, steps)
    inset, wanted = _figures(ENDED, steps) if _told(ENDED, steps) else (0.0, 0.0)
    number = floor(turns * STEPS_A_TURN)
    line = [_at(start, pitch, step / STEPS_A_TURN) for step in range(number + 1)]
    seam = [_at(start + inset, pitch, step / STEPS_A_TURN) for step in range(number + 1)]
    last = _last_step(seam, wanted) if wanted else max(0, number - STEPS_A_TURN)
    if last + STEPS_A_TURN > number:
        raise AssertionError("the line ends before the flounce has its outer edge")
    rules = [(line[0], line[STEPS_A_TURN]), (line[last], line[last + STEPS_A_TURN])]
    cuts = unary_union([LineString(line[: last + STEPS_A_TURN + 1]), *map(LineString, rules)])
    middle = Point(_at(start + pitch / 2, pitch, last / 2 / STEPS_A_TURN))
    (free,) = [piece for piece in polygonize(cuts) if piece.contains(middle)]
    return Cut(
        LineString(seam[: last + 1]).length,
        (dist(*rules[0]), dist(*rules[1])),
        free.area,
    )


def _told(what: re.Pattern[str], steps: Sequence[str]) -> bool:
    return any(what.search(step) for step in steps)


def _figures(what: re.Pattern[str], steps: Sequence[str]) -> list[float]:
    (found,) = [match for match in map(what.search, steps) if match]
    return [
        float(read_length(text)) if text[-1].isalpha() else float(text) for text in found.groups()
    ]


def _at(start: float, pitch: float, turned: float) -> tuple[float, float]:
    radius, angle = start + pitch * turned, 2 * pi * turned
    return radius * cos(angle), radius * sin(angle)


def _last_step(seam: list[tuple[float, float]], wanted: float) -> int:
    """The step of the drawn line at which so much of the seam line is measured off."""
    measured = 0.0
    for step in range(1, len(seam)):
        measured += dist(seam[step - 1], seam[step])
        if measured >= wanted:
            return step
    raise AssertionError("the line that is drawn is too short for the seam line")
