"""A slab of cloth cut through, and the shortest way round its edge, by an independent geometry."""

from shapely import MultiPoint, Point, box


def reach_round(thick: float, deep: float) -> float:
    """How long a band must be to go from the top of a slab round its edge to the bottom, in mm.

    It starts and ends `deep` inside the edge, opposite itself, and is drawn tight: it lies along
    the hull of what it goes round.
    """
    start, end = Point(-deep, thick), Point(-deep, 0)
    slab = box(-deep, 0, 0, thick)
    wrapped = MultiPoint([start, *map(Point, slab.exterior.coords), end]).convex_hull
    through = start.distance(end)  # that side of the hull lies inside the slab
    return float(wrapped.length) - through if thick else 2 * deep
