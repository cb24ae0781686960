"""A jacket with cut-on sleeves finished, seen from the front with its arms spread."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from handout_engine.amounts.values import Value, sentence
from handout_engine.drafting.curves import Line as Points
from handout_engine.drafting.drafts import Draft
from handout_engine.drawing.scene import Area, Dimension, Line, Scene, Shape, Side, Stroke, Tone
from handout_engine.families.garments.garment_drawing import View, scene
from handout_engine.geometry.points import mirrored
from handout_engine.shared.buttons_drawing import circle

BUTTONS = 4
HIGHEST, LOWEST = 1.5, 5.0
"""How many button widths the first and the last are drawn from the ends of the front."""


@dataclass(frozen=True)
class Jacket:
    """A jacket to draw: its front as it is sewn, and the back of its neck."""

    front: Draft
    back_neck: Points
    measures: Mapping[str, Value]


def finished_scene(jacket: Jacket) -> Scene:
    """The jacket buttoned."""
    long, across = jacket.measures["long"], jacket.measures["across"]
    words = sentence(
        "{long} from the neck point to the hem, {across} across the hem.", long=long, across=across
    )
    neck = [point for point in jacket.front.edge("neck").points if point[0] >= 0]
    edges = (*jacket.back_neck, *reversed(neck))
    inside = (*edges, *mirrored(edges))
    names = ("over the arm", "sleeve end", "under the arm", "side", "hem")
    around = [point for name in names for point in jacket.front.edge(name).points if point[0] >= 0]
    view = View((*neck, *around), behind=[inside], dimensions=_dimensions(jacket))
    drawn = scene(sentence("Baby jacket, finished"), words, view)
    return replace(drawn, shapes=(*drawn.shapes, *_front(jacket)))


def _front(jacket: Jacket) -> list[Shape]:
    """The front edge that lies on top, the hidden one under it, and buttons."""
    beyond, radius = jacket.measures["beyond"].mm, jacket.measures["button"].mm / 2
    neck = jacket.front.edge("neck").points
    top, low = neck[0][1], jacket.measures["long"].mm
    meet = next(point for point in neck if point[0] >= beyond)
    first, last = top + 2 * radius * HIGHEST, low - 2 * radius * LOWEST
    return [
        Stroke(((beyond, meet[1]), (beyond, low)), Line.CUT),
        Stroke(((-beyond, meet[1]), (-beyond, low)), Line.HIDDEN),
        *(
            Area(circle((0.0, first + (last - first) * number / (BUTTONS - 1)), radius), Tone.SHADE)
            for number in range(BUTTONS)
        ),
    ]


def _dimensions(jacket: Jacket) -> list[Dimension]:
    low = jacket.measures["long"].mm
    out = max(x for x, _ in jacket.front.edge("sleeve end").points)
    corner = jacket.front.edge("hem").points[0][0]
    return [
        Dimension((out, 0.0), (out, low), jacket.measures["long"], Side.RIGHT),
        Dimension((-corner, low), (corner, low), jacket.measures["across"], Side.BELOW),
    ]
