"""A slit drawn on a piece, on the page as at true scale."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Line, Note, Point, Shape, Stroke
from handout_engine.geometry.points import snapped


def slit_shapes(line: Sequence[Point], stop: float, name: Point) -> tuple[Shape, ...]:
    """The line of a slit, a stop across its closed end, and its name.

    `stop` is how far the stop reaches to both sides; `name`, where the name stands, as seen from
    the closed end.
    """
    x, low = line[-1]
    across, down = name
    return (
        Stroke(tuple(line), Line.CUT),
        Stroke(((snapped(x - stop), low), (snapped(x + stop), low)), Line.CUT),
        Note((snapped(x + across), snapped(low + down)), sentence("slit"), anchor="start"),
    )
