"""Front bands drawn: the lapped fronts, the band cut through, and a front before it is folded."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, pi, sin

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import left_out, measured
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
    Tag,
    Tone,
    rectangle,
)
from handout_engine.drawing.sections import layer
from handout_engine.shared.buttons_drawing import circle

STEPS = 10
THICK = 0.055
"""From layer to layer, as a share of the width of the band."""
TURN = 2.0
"""Half the height of a band cut through, in steps from layer to layer."""


@dataclass(frozen=True)
class FrontBand:
    """A band: its widths, the button it is for, and how it is made.

    `seam` is the allowance at the front, or what a facing that is cut on turns under. `edge` and
    `joining` belong to a band of two cloths, `facing` to one that is cut on.
    """

    opening: Value
    width: Value
    beyond: Value
    button: Value
    seam: Value
    edge: Value | None
    joining: Value | None
    facing: Value | None


def lapped_fronts(band: FrontBand) -> Scene:
    """Both fronts lapped centre on centre, from the right side."""
    return Scene(
        sentence("The fronts lapped"),
        sentence(
            "Bands {width} wide, {beyond} to each side of the centre line.",
            width=band.width,
            beyond=band.beyond,
        ),
        tuple(_lapped(band)),
        tallest=300,
    )


def _lapped(band: FrontBand) -> Iterable[Shape]:
    out, high = band.beyond.mm, min(band.opening.mm, 9 * band.width.mm)
    wide = max(3.2 * out, 0.28 * high)
    yield Area(rectangle(-wide, 0, wide + out, high), outline=None)
    yield Area(rectangle(out, 0, wide - out, high), Tone.SHADE, outline=None)
    yield Stroke(((-wide, 0), (wide, 0)), Line.CUT)
    yield Stroke(((-wide, high), (wide, high)), Line.CUT)
    if band.edge is not None:
        yield Area(rectangle(out - band.edge.mm, 0, band.edge.mm, high), Tone.SECOND, Line.THIN)
    yield Stroke(((out, 0), (out, high)), Line.CUT)
    if band.facing is None:
        yield Stroke(((-out, 0), (-out, high)), Line.THIN)
    else:  # the inner edge of the facing, and the edge of the lower front
        for hidden in (out - band.facing.mm, -out):
            yield Stroke(((hidden, 0), (hidden, high)), Line.HIDDEN)
    yield Stroke(((0, 0), (0, high)), Line.FOLD)
    yield Area(circle((0.0, high / 2), band.button.mm / 2), Tone.SHADE)
    if high < band.opening.mm:
        yield from left_out(((-1.05 * wide, 0.7 * high), (1.05 * wide, 0.74 * high)))
    yield Dimension((-out, 0), (out, 0), band.width, Side.ABOVE)
    yield Dimension((0, high), (out, high), band.beyond, Side.BELOW)
    yield measured((wide, 0), (wide, high), band.opening, Side.RIGHT)


def band_section(band: FrontBand) -> Scene:
    """The band cut through, its edge at the right, the right side up."""
    shapes = {True: _two_cloths, False: _one_cloth}[band.edge is not None]
    return Scene(
        sentence("The band cut through"),
        sentence("{width} from its inner line to the fold at the edge.", width=band.width),
        tuple(shapes(band) if band.facing is None else _cut_on(band, band.facing.mm)),
        tallest=150,
    )


def _one_cloth(band: FrontBand) -> Iterable[Shape]:
    yield from folded_strip(band.width.mm, band.seam.mm)
    yield from _measured(band, THICK * band.width.mm)


def folded_strip(wide: float, seam: float) -> Iterable[Shape]:
    """A strip folded over the edge of a layer and turned under, cut through; the edge is x = 0."""
    step = THICK * wide
    inside = min(seam, 0.9 * wide)
    path = (
        (inside, -step),
        (0.0, -step),
        (0.0, -TURN * step),
        *_turn(wide, TURN * step),
        (0.0, TURN * step),
        (0.0, step),
        (inside, step),
    )
    yield layer(((-0.9 * wide, 0.0), (inside, 0.0)), 0.5 * step, Tone.SECOND)
    yield layer(path, 0.5 * step, Tone.RIGHT)


def _two_cloths(band: FrontBand) -> Iterable[Shape]:
    assert band.edge is not None and band.joining is not None
    wide, step = band.width.mm, min(THICK * band.width.mm, 0.35 * band.edge.mm)
    line = wide - band.edge.mm
    inside = min(band.seam.mm, 0.85 * line)
    reach = min(line + max(band.joining.mm, 1.6 * step), wide - step)
    outer = (
        (inside, -step),
        (0.0, -step),
        (0.0, -TURN * step),
        (line, -TURN * step),
        (line, -step),
        (reach, -step),
    )
    facing = (
        (reach, 0.0),
        (line + 0.4 * step, 0.0),
        (line + 0.4 * step, -TURN * step),
        *_turn(wide, TURN * step),
        (0.0, TURN * step),
        (0.0, step),
        (inside, step),
    )
    yield layer(((-0.9 * wide, 0.0), (inside, 0.0)), 0.5 * step, Tone.RIGHT)
    yield layer(facing, 0.5 * step, Tone.SECOND)
    yield layer(outer, 0.5 * step, Tone.RIGHT)
    yield Dimension((line, TURN * step), (wide, TURN * step), band.edge, Side.BELOW)
    yield from _measured(band, step)


def _measured(band: FrontBand, step: float) -> Iterable[Shape]:
    """The seam, and how wide the band is."""
    yield Stroke(
        ((-0.02 * band.width.mm, -3.5 * step), (-0.02 * band.width.mm, 3.5 * step)), Line.STITCH
    )
    yield Dimension((0, -TURN * step), (band.width.mm, -TURN * step), band.width, Side.ABOVE)
    yield Note((-0.6 * band.width.mm, 2.6 * step), sentence("front"))


def _cut_on(band: FrontBand, facing: float) -> Iterable[Shape]:
    wide, step = band.width.mm, THICK * band.width.mm
    left = wide - facing
    turned = min(band.seam.mm, 0.6 * facing)
    path = (
        (min(-0.9 * wide, left - 0.3 * wide), -step),
        *_turn(wide, step),
        (left, step),
        (left, 0.0),
        (left + turned, 0.0),
    )
    yield layer(path, 0.5 * step, Tone.RIGHT)
    yield Stroke(((wide / 2, -3 * step), (wide / 2, 3 * step)), Line.FOLD)
    yield Dimension((wide / 2, -step), (wide, -step), band.beyond, Side.ABOVE)
    assert band.facing is not None
    yield Dimension((left, step), (wide, step), band.facing, Side.BELOW)


def _turn(edge: float, half: float) -> list[Point]:
    """Round the fold at the edge, from above to below."""
    return [
        (edge - half * (1 - sin(pi * step / STEPS)), -half * cos(pi * step / STEPS))
        for step in range(STEPS + 1)
    ]


def cut_on_edge(band: FrontBand, lines: Sequence[Value]) -> Scene:
    """The edge of a front with its facing cut on, cut edge at the top: turn, fold, centre line."""
    turn, fold, centre = lines
    return Scene(
        sentence("The front before it is folded"),
        sentence(
            "From the cut edge {turn} are turned under, the fold lies at {fold}, the centre "
            "line at {centre}.",
            turn=turn,
            fold=fold,
            centre=centre,
        ),
        tuple(_unfolded(band, lines)),
        tallest=200,
    )


def _unfolded(band: FrontBand, lines: Sequence[Value]) -> Iterable[Shape]:
    deep = lines[-1].mm + 1.3 * band.width.mm
    long = 1.7 * deep
    yield Area(rectangle(0, 0, long, deep), outline=None)
    yield Stroke(((0, deep), (0, 0), (long, 0), (long, deep)), Line.CUT)
    for distance in lines:
        yield Stroke(((0, distance.mm), (long, distance.mm)), Line.FOLD)
        yield Tag((long, distance.mm), distance, Side.RIGHT, (long, 0.0))
    for words, upper, lower in (
        ("facing", lines[0].mm, lines[1].mm),
        ("front", lines[2].mm, deep),
    ):
        yield Note((long / 2, (upper + lower) / 2), sentence(words))
