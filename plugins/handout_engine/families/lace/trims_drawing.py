"""Lace, entredeux, beading and other trims seen from the right side, each with its own pattern.

The patterns only tell the trims apart; widths are to scale, meshes and holes are not.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from itertools import pairwise
from math import cos, pi, sin

from handout_engine.drawing.scene import Area, Line, Point, Shape, Stroke, Tone, rectangle

MOST_REPEATS = 48


@dataclass(frozen=True)
class TrimPlace:
    """Where a trim lies in a drawing: its upper left corner, its length and its width."""

    left: float
    top: float
    length: float
    width: float

    def at(self, along: float, across: float) -> Point:
        """A point by its distance along the trim, and its share of the width."""
        return self.left + along, self.top + across * self.width

    def steps(self, share: float) -> Iterable[tuple[float, float]]:
        """The trim's length in equal steps near `share` of its width: start and end of each."""
        wanted = self.length / (share * self.width)
        number = max(2, min(MOST_REPEATS, round(wanted)))
        return pairwise(self.length * n / number for n in range(number + 1))


def trim_face(kind: str, place: TrimPlace) -> tuple[Shape, ...]:
    """A trim with its pattern and its outline."""
    tone = Tone.SECOND if kind == "cloth" else Tone.RIGHT
    corners = rectangle(place.left, place.top, place.length, place.width)
    return (
        Area(corners, tone, outline=None),
        *_PATTERNS[kind](place),
        Stroke((corners[0], corners[1]), Line.CUT),
        Stroke((corners[3], corners[2]), Line.CUT),
    )


def _lace(place: TrimPlace) -> Iterable[Shape]:
    """A net between two headings."""
    for across in (0.14, 0.86):
        yield Stroke((place.at(0, across), place.at(place.length, across)), Line.THIN)
    steps = list(place.steps(0.4))
    for first, second in ((0.14, 0.86), (0.86, 0.14)):
        zigzag = [place.at(0, first)]
        for number, (_, end) in enumerate(steps):
            zigzag.append(place.at(end, first if number % 2 else second))
        yield Stroke(tuple(zigzag), Line.THIN)


def _entredeux(place: TrimPlace) -> Iterable[Shape]:
    """A row of square holes between two cords."""
    for across in (0.22, 0.78):
        yield Stroke((place.at(0, across), place.at(place.length, across)), Line.THIN)
    for start, end in place.steps(0.9):
        gap = (end - start) * 0.25
        yield Stroke((place.at(start + gap, 0.22), place.at(start + gap, 0.78)), Line.THIN)
        yield Stroke((place.at(end - gap, 0.22), place.at(end - gap, 0.78)), Line.THIN)


def _beading(place: TrimPlace) -> Iterable[Shape]:
    """A row of upright openings for a ribbon, drawn as it runs through them."""
    for number, (start, end) in enumerate(place.steps(0.7)):
        gap = (end - start) * 0.3
        yield Area(_between(place, start + gap, end - gap, 0.2, 0.8), Tone.GROUND, Line.THIN)
        if number % 2 == 0:
            yield Area(_between(place, start + gap, end - gap, 0.3, 0.7), Tone.SECOND, None)


def _between(
    place: TrimPlace, start: float, end: float, top: float, foot: float
) -> tuple[Point, ...]:
    return place.at(start, top), place.at(end, top), place.at(end, foot), place.at(start, foot)


def _puffing(place: TrimPlace) -> Iterable[Shape]:
    """Gathers from both edges, long and short by turns."""
    for number, (start, end) in enumerate(place.steps(0.12)):
        middle, reach = (start + end) / 2, (0.42, 0.2, 0.34, 0.14)[number % 4]
        yield Stroke((place.at(middle, 0), place.at(middle, reach)), Line.THIN)
        other = (0.2, 0.36, 0.14, 0.42)[number % 4]
        yield Stroke((place.at(middle, 1), place.at(middle, 1 - other)), Line.THIN)


def _embroidered(place: TrimPlace) -> Iterable[Shape]:
    """Small flowers of four eyelets in a row."""
    for start, end in place.steps(1.1):
        middle = (start + end) / 2
        petal = min(place.width, end - start) * 0.13
        for quarter in range(4):
            turn = pi / 4 + quarter * pi / 2
            centre = place.at(middle, 0.5)
            away = (centre[0] + 1.6 * petal * cos(turn), centre[1] + 1.6 * petal * sin(turn))
            yield Area(_ring(away, petal), Tone.GROUND, Line.THIN)


def _ring(centre: Point, radius: float) -> tuple[Point, ...]:
    return tuple(
        (centre[0] + radius * cos(pi * n / 6), centre[1] + radius * sin(pi * n / 6))
        for n in range(12)
    )


def _cloth(place: TrimPlace) -> Iterable[Shape]:
    """Plain cloth has no pattern."""
    del place
    return ()


_PATTERNS: Mapping[str, Callable[[TrimPlace], Iterable[Shape]]] = {
    "lace": _lace,
    "entredeux": _entredeux,
    "beading": _beading,
    "puffing": _puffing,
    "embroidered": _embroidered,
    "cloth": _cloth,
}
