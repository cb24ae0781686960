"""A romper finished, seen from the front."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import hypot

from handout_engine.amounts.values import Value, sentence
from handout_engine.drafting.curves import Line as Points
from handout_engine.drafting.curves import point_along, run
from handout_engine.drafting.drafts import FOLD, Draft
from handout_engine.drafting.seats import Seat
from handout_engine.drawing.scene import Area, Dimension, Line, Scene, Side, Tone
from handout_engine.families.garments.garment_drawing import View, scene
from handout_engine.geometry.points import Point, mirrored, snapped
from handout_engine.shared.buttons_drawing import circle

BUTTONS = 3
CREASES_APART, CREASE = 9.0, 12.0
"""How far apart the creases of gathers are drawn, and how long."""


@dataclass(frozen=True)
class Romper:
    """A romper to draw: its front as it is sewn, and the back of its neck."""

    front: Draft
    seat: Seat
    back_neck: Points
    measures: Mapping[str, Value]


def finished_scene(romper: Romper) -> Scene:
    """The romper closed, with front band, buttons and leg bands."""
    long, across = romper.measures["long"], romper.measures["across"]
    words = sentence(
        "{long} from the neck point to the crotch, {across} across the seat.",
        long=long,
        across=across,
    )
    seams = [edge.points for edge in romper.front.edges if edge.name.startswith("leg")]
    lines = [*((seam, Line.THIN) for seam in seams), *_front_band(romper)]
    lines.extend((crease, Line.THIN) for crease in creases(romper.seat.front_leg))
    front_neck = romper.front.edge("neck").points
    edges = (*romper.back_neck, *reversed(front_neck))
    inside = (*edges, *mirrored(edges))
    view = View(_outline(romper), lines, [inside], _dimensions(romper))
    drawn = scene(sentence("Romper, finished"), words, view)
    return replace(drawn, shapes=(*drawn.shapes, *_buttons(romper)))


def _outline(romper: Romper) -> tuple[Point, ...]:
    """The front with its leg bands, from the centre to the centre."""
    band = romper.measures["band"].mm
    edges = tuple(
        replace(edge, allowance=band if edge.name.startswith("leg") else 0.0)
        for edge in romper.front.edges
    )
    outline = Draft(romper.front.name, edges).cut_outline
    x, y = romper.front.edge("neck").points[0]
    start = min(range(len(outline)), key=lambda n: hypot(outline[n][0] - x, outline[n][1] - y))
    return (*outline[start:], *outline[:start])


def _front_band(romper: Romper) -> list[tuple[Points, Line]]:
    beyond, neck = romper.measures["beyond"].mm, romper.front.edge("neck").points
    low = neck[0][1] + romper.measures["opening"].mm
    top = next(point for point in neck if point[0] >= beyond)
    return [(((beyond, top[1]), (beyond, low), (0.0, low)), Line.CUT)]


def _buttons(romper: Romper) -> list[Area]:
    top = romper.front.edge("neck").points[0][1]
    radius, opening = romper.measures["button"].mm / 2, romper.measures["opening"].mm
    first, last = top + 2 * radius, top + opening - 3 * radius
    return [
        Area(circle((0.0, first + (last - first) * number / (BUTTONS - 1)), radius), Tone.SHADE)
        for number in range(BUTTONS)
    ]


def creases(seam: Points) -> list[Points]:
    """Short creases of gathers on the inner side of a leg's seam."""
    found: list[Points] = []
    for number in range(1, int(run(seam) / CREASES_APART)):
        at, ahead = (point_along(seam, number * CREASES_APART + more) for more in (0.0, 1.0))
        across, down = ahead[0] - at[0], ahead[1] - at[1]
        reach = CREASE / hypot(across, down) * (1.0 if number % 2 else 0.6)
        found.append((at, (snapped(at[0] + down * -reach), snapped(at[1] + across * reach))))
    return found


def _dimensions(romper: Romper) -> list[Dimension]:
    wide, level = romper.seat.side_end
    low = romper.seat.front_reach
    end = max(edge.points[-1][1] for edge in romper.front.edges if edge.name != FOLD)
    half = romper.measures["crotch"].mm / 2
    return [
        Dimension((-wide, 0.0), (-wide, low), romper.measures["long"], Side.LEFT),
        Dimension((-wide, level), (wide, level), romper.measures["across"], Side.ABOVE),
        Dimension((-half, end), (half, end), romper.measures["crotch"], Side.BELOW),
    ]
