"""A pillow cover drawn: its front, its lapped back, and the lap cut through."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import cos, pi, sin, sqrt

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.drawing.sections import layer

STEPS = 10


@dataclass(frozen=True)
class Pillow:
    """The named values of a pillow cover, and which edge it has."""

    named: Mapping[str, Value]
    flanged: bool
    ruffled: bool

    def mm(self, name: str) -> float:
        """A named length in mm."""
        return self.named[name].mm


def front_scene(pillow: Pillow) -> Scene:
    """The cover from its front."""
    return Scene(
        sentence("Pillow cover, finished"),
        sentence(
            "For a pillow {width} by {length}.",
            width=pillow.named["inner_width"],
            length=pillow.named["inner_length"],
        ),
        tuple(_front(pillow)),
    )


def _front(pillow: Pillow) -> Iterable[Shape]:
    wide, long = pillow.mm("inner_width"), pillow.mm("inner_length")
    out = pillow.mm("flange") if pillow.flanged else 0.0
    low = wide + out
    if pillow.ruffled:
        radius = pillow.mm("corner")
        deep = 0.13 * min(wide, long)
        yield from _ruffle(long, wide, radius, deep)
        yield Area(tuple(_rounded(0, 0, long, wide, radius)), Tone.RIGHT)
        low = wide + deep
    elif pillow.flanged:
        yield Area(rectangle(-out, -out, long + 2 * out, wide + 2 * out), Tone.SECOND)
        yield Area(rectangle(0, 0, long, wide), Tone.RIGHT, Line.STITCH)
        yield Dimension((long, -out), (long + out, -out), pillow.named["flange"], Side.ABOVE)
    else:
        yield Area(rectangle(0, 0, long, wide), Tone.RIGHT)
    yield Dimension((0, low), (long, low), pillow.named["inner_length"], Side.BELOW)
    left = -(low - wide)
    yield Dimension((left, 0), (left, wide), pillow.named["inner_width"], Side.LEFT)


def _rounded(left: float, top: float, width: float, height: float, radius: float) -> list[Point]:
    """The corners of a rectangle, each rounded by a radius, in order round it."""
    right, bottom = left + width, top + height
    centres = (
        (right - radius, top + radius),
        (right - radius, bottom - radius),
        (left + radius, bottom - radius),
        (left + radius, top + radius),
    )
    points = []
    for quarter, (x, y) in enumerate(centres):
        for step in range(STEPS + 1):
            turn = pi / 2 * (quarter - 1 + step / STEPS)
            points.append((x + radius * cos(turn), y + radius * sin(turn)))
    return points


def _ruffle(long: float, wide: float, radius: float, deep: float) -> Iterable[Shape]:
    """A ruffle round the pillow, its hem in waves, its folds as thin lines."""
    seam = _walk(_rounded(0, 0, long, wide, radius))
    outer = _walk(_rounded(-deep, -deep, long + 2 * deep, wide + 2 * deep, radius + deep))
    count = len(outer)
    waves = max(24, round(2 * (long + wide) / deep))
    middle = (long / 2, wide / 2)
    hem = []
    for number, (x, y) in enumerate(outer):
        swing = 1 + 0.012 * sin(2 * pi * waves * number / count)
        hem.append((middle[0] + (x - middle[0]) * swing, middle[1] + (y - middle[1]) * swing))
    yield Area(tuple(hem), Tone.SECOND)
    for number in range(waves):
        at = number * count // waves
        (x1, y1), (x2, y2) = seam[at], outer[at]
        reach = (0.85, 0.55, 0.7)[number % 3]
        yield Stroke(((x1, y1), (x1 + (x2 - x1) * reach, y1 + (y2 - y1) * reach)), Line.THIN)


def _walk(corners: list[Point], count: int = 480) -> list[Point]:
    """Points at equal shares of each straight stretch and corner of a rounded rectangle."""
    closed = [*corners, corners[0]]
    quarter = len(corners) // 4
    found = []
    for number in range(count):
        share = number / count * 4
        side, within = int(share), share - int(share)
        if within < 0.25:
            at = side * quarter + within * 4 * (quarter - 1)
        else:
            at = side * quarter + quarter - 1 + (within - 0.25) / 0.75
        low = int(at)
        (x1, y1), (x2, y2) = closed[low], closed[low + 1]
        found.append((x1 + (x2 - x1) * (at - low), y1 + (y2 - y1) * (at - low)))
    return found


def back_scene(pillow: Pillow) -> Scene:
    """The cover from its back, one panel over the other."""
    return Scene(
        sentence("Back of the pillow cover"),
        sentence(
            "Two panels of {panel} lap by {overlap}.",
            panel=pillow.named["panel_length"],
            overlap=pillow.named["overlap"],
        ),
        tuple(_back(pillow)),
    )


def _back(pillow: Pillow) -> Iterable[Shape]:
    wide, long = pillow.mm("cover_width"), pillow.mm("cover_length")
    panel, overlap, hem = (pillow.mm(each) for each in ("panel_length", "overlap", "back_hem"))
    start = long - panel
    if pillow.ruffled:
        corner = pillow.mm("corner")
        whole = tuple(_rounded(0, 0, long, wide, corner))
    else:
        whole = rectangle(0, 0, long, wide)
    yield Area(whole, Tone.RIGHT)
    over = tuple((max(x, start), y) for x, y in whole)
    yield Area(over, Tone.SECOND, outline=None)
    yield Stroke((*whole, whole[0]), Line.CUT)
    lines = ((start, Line.CUT), (start + hem, Line.STITCH), (panel, Line.HIDDEN))
    for x, line in lines:
        top = _beside_corner(min(x, long - x), pillow.mm("corner") if pillow.ruffled else 0.0)
        yield Stroke(((x, top), (x, wide - top)), line)
    yield Dimension((start, 0), (start + overlap, 0), pillow.named["overlap"], Side.ABOVE)
    yield Dimension((start, wide), (long, wide), pillow.named["panel_length"], Side.BELOW)
    yield Dimension((0, wide), (long, wide), pillow.named["cover_length"], Side.BELOW)
    yield Dimension((0, 0), (0, wide), pillow.named["cover_width"], Side.LEFT)


def _beside_corner(across: float, radius: float) -> float:
    """How far down a rounded corner has come, so far across from its side."""
    if across >= radius:
        return 0.0
    return radius - sqrt(radius * radius - (radius - across) ** 2)


def section_scene(pillow: Pillow) -> Scene:
    """The lap cut through from side to side: front below, panels above."""
    return Scene(
        sentence("Lapped back, cut through"),
        sentence(
            "Each hem is turned twice, {hem} deep; the panels lap {overlap}.",
            hem=pillow.named["back_hem"],
            overlap=pillow.named["overlap"],
        ),
        tuple(_section(pillow)),
        tallest=170,
    )


def _section(pillow: Pillow) -> Iterable[Shape]:
    overlap, hem = pillow.mm("overlap"), pillow.mm("back_hem")
    thick = 0.03 * overlap
    gap = 2.1 * thick
    reach = 1.1 * overlap
    yield layer(((-reach, 11 * gap), (overlap + reach, 11 * gap)), thick, Tone.RIGHT)
    under = (
        (-reach, 4 * gap),
        (overlap, 4 * gap),
        (overlap, 5 * gap),
        (overlap - hem, 5 * gap),
        (overlap - hem, 6 * gap),
        (overlap - thick, 6 * gap),
    )
    upper = ((overlap + reach, 0), (0, 0), (0, gap), (hem, gap), (hem, 2 * gap), (thick, 2 * gap))
    yield layer(under, thick, Tone.RIGHT)
    yield layer(upper, thick, Tone.SECOND)
    for x, top in ((overlap - 0.85 * hem, 3.3 * gap), (0.85 * hem, -0.7 * gap)):
        yield Stroke(((x, top), (x, top + 3.4 * gap)), Line.STITCH)
    yield Dimension((0, -gap), (overlap, -gap), pillow.named["overlap"], Side.ABOVE)
    yield Dimension((0, 11 * gap), (hem, 11 * gap), pillow.named["back_hem"], Side.BELOW)
    yield Note((-0.6 * reach, 8.3 * gap), sentence("pillow"))
