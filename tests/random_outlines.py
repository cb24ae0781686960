"""Random outlines that cross nowhere, most of them hollow, for tests against another library."""

from __future__ import annotations

from math import cos, pi, sin
from random import Random

Point = tuple[float, float]


def star(random: Random, corners: int, size: float = 100.0, places: int = 3) -> tuple[Point, ...]:
    """Corners round a middle, each at its own distance: hollow wherever a near one follows."""
    turns = sorted(random.uniform(0, 2 * pi) for _ in range(corners))
    far = [random.uniform(0.12, 1) * size for _ in turns]
    return tuple(
        (round(size + reach * cos(turn), places), round(size + reach * sin(turn), places))
        for turn, reach in zip(turns, far, strict=True)
    )


def comb(random: Random, teeth: int, depth: float = 80.0) -> tuple[Point, ...]:
    """A bar with teeth of random width and length, all corners on whole millimetres."""
    points: list[Point] = [(0.0, 0.0)]
    across = 0
    for _ in range(teeth):
        long = random.randint(12, int(depth))
        points.append((float(across), float(long)))
        across += random.randint(3, 14)
        points.append((float(across), float(long)))
        points.append((float(across), 10.0))
        across += random.randint(2, 10)
        points.append((float(across), 10.0))
    return (*points[:-1], (points[-2][0], 0.0))


def outline(random: Random) -> tuple[Point, ...]:
    """One of the kinds: fine or coarse star, or comb."""
    kind = random.randrange(4)
    if kind == 0:
        return comb(random, random.randint(1, 6))
    places = 0 if kind == 1 else 3
    return star(random, random.randint(3, 24), places=places)
