"""A continuous lap drawn: closed, spread on its strip to be sewn, and cut through."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import left_out, measured
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Note,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
    rectangle,
)
from handout_engine.families.closures.front_band_drawing import THICK, TURN, folded_strip

LONGEST = 9.0
"""A slit is drawn no longer than so many times its seam or the width of its lap."""


@dataclass(frozen=True)
class Placket:
    """A slit and the strip round it, by their named lengths."""

    slit: Value
    opening: Value
    width: Value
    seam: Value
    at_point: Value
    end: Value


def closed_placket(placket: Placket) -> Scene:
    """The placket closed, from the right side, the strip behind it as hidden lines."""
    return Scene(
        sentence("The placket closed"),
        sentence(
            "An opening {opening} deep whose edges overlap by {width}.",
            opening=placket.opening,
            width=placket.width,
        ),
        tuple(_closed(placket)),
        tallest=240,
    )


def _closed(placket: Placket) -> Iterable[Shape]:
    high, wide = min(placket.opening.mm, LONGEST * placket.width.mm), placket.width.mm
    side, foot = max(2.4 * wide, 0.45 * high), 1.25 * high
    yield Area(rectangle(-side, 0, 2 * side, foot), outline=None)
    yield Stroke(((-side, 0), (side, 0)), Line.CUT)
    yield Stroke(((0, 0), (0, high)), Line.CUT)
    yield Stroke(((wide, 0), (wide, high - 0.15 * wide), (0, high)), Line.HIDDEN)
    yield Stroke(((0, high), (wide, high - wide)), Line.STITCH)
    yield Dimension((0, 0), (wide, 0), placket.width, Side.ABOVE)
    if high < placket.opening.mm:
        yield from left_out(((-1.05 * side, 0.6 * high), (1.05 * side, 0.65 * high)))
    yield measured((-side, 0), (-side, high), placket.opening, Side.LEFT)
    yield Note((side / 2 + wide / 2, foot * 0.93), sentence("right side"))


def spread_slit(placket: Placket) -> Scene:
    """The garment, wrong side up, with its slit pulled straight on the edge of the strip."""
    return Scene(
        sentence("The slit spread on the strip"),
        sentence(
            "The seam is {seam} from the edge of the strip; it takes {seam} of the garment at "
            "both ends of the slit and {point} at its point.",
            seam=placket.seam,
            point=placket.at_point,
        ),
        tuple(_spread(placket)),
        tallest=220,
    )


def _spread(placket: Placket) -> Iterable[Shape]:
    seam, end = placket.seam.mm, placket.end.mm
    half = min(placket.slit.mm, LONGEST * seam)
    inside = seam - placket.at_point.mm
    deep = 2 * (placket.width.mm + seam)
    far, foot = min(deep, 5 * seam), min(deep, 4 * seam)
    yield Area(rectangle(-half - end, 0, 2 * (half + end), foot), Tone.SECOND)
    corners = ((-half, 0.0), (0.0, inside), (half, 0.0), (half, far), (-half, far))
    yield Area(corners, Tone.WRONG, outline=None)
    yield Stroke((corners[4], *corners[:4]), Line.CUT)
    yield Stroke(((-half - end, seam), (half + end, seam)), Line.STITCH)
    for way in (-1, 1) if half < placket.slit.mm else ():
        gap = sorted((way * 0.5 * half, way * 0.56 * half))
        yield from left_out(((gap[0], -0.2 * seam), (gap[1], far + 0.2 * seam)), down=True)
    yield measured((-half, 0), (0, 0), placket.slit, Side.ABOVE)
    yield Dimension((half, 0), (half + end, 0), placket.end, Side.ABOVE)
    yield Dimension((half + end, 0), (half + end, seam), placket.seam, Side.RIGHT)
    if placket.at_point.mm < seam:
        yield Dimension((-half - end, inside), (-half - end, seam), placket.at_point, Side.LEFT)
        yield Stroke(((-half - end, inside), (0, inside)), Line.THIN)


def lap_section(placket: Placket) -> Scene:
    """One edge of the slit in its strip, cut through."""
    wide = placket.width.mm
    step = THICK * wide
    return Scene(
        sentence("One edge of the placket cut through"),
        sentence(
            "A strip {width} wide over a seam of {seam}.", width=placket.width, seam=placket.seam
        ),
        (
            *folded_strip(wide, placket.seam.mm),
            Stroke(((-0.02 * wide, -3.5 * step), (-0.02 * wide, 3.5 * step)), Line.STITCH),
            Dimension((0, -TURN * step), (wide, -TURN * step), placket.width, Side.ABOVE),
            Note((-0.6 * wide, 2.6 * step), sentence("garment")),
        ),
        tallest=150,
    )
