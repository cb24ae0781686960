"""A lattice worked out with shapely: strips cut by an outline, lines cut by lines.

It shares no formula with the engine: a strip is a long rectangle turned about the centre, a
crossing is where two long lines meet.
"""

from __future__ import annotations

from dataclasses import dataclass

from shapely import affinity
from shapely.geometry import LineString, Point, Polygon, box

FAR = 2000.0
REACH = 300.0
"""No outline of these tests reaches further from its centre."""


@dataclass(frozen=True)
class Cut:
    """What shapely found: every length to cut, and every crossing inside."""

    lengths: list[float]
    crossings: list[tuple[float, float]]

    @property
    def total(self) -> float:
        return sum(self.lengths)


def lattice_by_shapely(outline, centre, angles, *, width, gap, margin) -> Cut:
    """Angles (rising, falling) in degrees, y downward: the rising set is turned by -angle."""
    shape = Polygon(outline)
    lengths: list[float] = []
    lines: list[list[LineString]] = []
    for angle in (-angles[0], angles[1]):
        upright = affinity.rotate(shape, -angle, origin=centre)
        reach = int(REACH / (width + gap)) + 1
        lines.append([])
        for number in range(-reach, reach + 1):
            middle = centre[1] + number * (width + gap)
            strip = box(-FAR, middle - width / 2, FAR, middle + width / 2)
            lengths.extend(_lengths(upright.intersection(strip), margin))
            line = LineString([(centre[0] - FAR, middle), (centre[0] + FAR, middle)])
            lines[-1].append(affinity.rotate(line, angle, origin=centre))
    crossings = []
    for one in lines[0]:
        for other in lines[1]:
            at = one.intersection(other)
            if (
                isinstance(at, Point)
                and not at.is_empty
                and shape.contains(at)
                and shape.exterior.distance(at) > 1e-6
            ):
                crossings.append((at.x, at.y))
    return Cut(lengths, crossings)


def _lengths(found, margin: float) -> list[float]:
    """Each connected part reaches from end to end, with margins; what then overlaps is one tube."""
    parts = [part for part in getattr(found, "geoms", [found]) if part.area > 1e-6]
    reaches = [box(part.bounds[0] - margin, 0, part.bounds[2] + margin, 1) for part in parts]
    if not reaches:
        return []
    joined = reaches[0]
    for reach in reaches[1:]:
        joined = joined.union(reach)
    return [each.bounds[2] - each.bounds[0] for each in getattr(joined, "geoms", [joined])]
