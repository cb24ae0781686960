"""A bonnet drawn: from the side when finished, and its back to cut, a true-scale sheet as well."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import fsum

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
)
from handout_engine.families.nursery.bonnet_outlines import circle, horseshoe
from handout_engine.geometry.points import snapped
from handout_engine.geometry.polygons import Polygon, extents, sides

STEPS = 24
FOLDS = 11
NOTCH = 2.5
"""How far the tick of a notch reaches to both sides of the seam, in mm."""


@dataclass(frozen=True)
class Bonnet:
    """The named values of a bonnet, and whether its back is a circle."""

    named: Mapping[str, Value]
    round_back: bool

    def mm(self, name: str) -> float:
        """A named length in mm."""
        return self.named[name].mm

    def back_outline(self, allowance: float = 0.0) -> Polygon:
        """The back in its box, with an allowance along its seam; a bound nape has none."""
        wide = self.mm("back_width") + 2 * allowance
        if self.round_back:
            return circle(wide)
        return horseshoe(wide, self.mm("back_height") + allowance)

    @property
    def back_seam_outline(self) -> Polygon:
        """The finished back, lying in the box of the back to cut."""
        return self._in_the_cut_box(self.back_outline())

    @property
    def back_notches(self) -> Polygon:
        """The quarters of a round back on its seam; of a horseshoe the top."""
        wide = self.mm("back_width")
        half = wide / 2
        top = (half, 0.0)
        quarters = (top, (wide, half), (half, wide), (0.0, half)) if self.round_back else (top,)
        return self._in_the_cut_box(quarters)

    def _in_the_cut_box(self, points: Polygon) -> Polygon:
        inset = self.mm("seam_allowance")
        return tuple((snapped(x + inset), snapped(y + inset)) for x, y in points)


def side_scene(bonnet: Bonnet) -> Scene:
    """The finished bonnet from its left side, the face to the left."""
    return Scene(
        sentence("Bonnet, finished"),
        sentence(
            "The front edge is {front} round the face, the depth {depth}.",
            front=bonnet.named["front_edge"],
            depth=bonnet.named["depth_line"],
        ),
        tuple(_side(bonnet)),
    )


def _side(bonnet: Bonnet) -> Iterable[Shape]:
    """Seen from the side the back is a narrow oval; the neck edge rises toward it, drawn up."""
    high, deep = bonnet.mm("half_front"), bonnet.mm("depth_line")
    reach = min(bonnet.mm("back_height"), 0.86 * high) / 2
    middle = 0.5 * high if bonnet.round_back else 0.1 * high + reach
    back = _foreshortened(bonnet, (deep, middle), min(0.35 * reach, 0.2 * deep), reach)
    top = _bent((0.0, 0.0), (0.6 * deep, -0.06 * high), (deep, middle - reach))
    corner = deep if bonnet.round_back else min(x for x, _ in back)
    neck = _bent((corner, middle + reach), (0.6 * deep, 0.97 * high), (0.0, high))
    yield from _strap(bonnet, high)
    yield Area((*top, *neck), Tone.RIGHT, outline=None)
    yield from _gathers(bonnet, back, (deep, middle))
    for line in (top, neck, ((0.0, high), (0.0, 0.0))):
        yield Stroke(tuple(line), Line.CUT)
    band = min(bonnet.mm("binding"), 0.1 * high)
    trim = bonnet.mm("front_trim")
    yield Stroke(tuple((x, y - band) for x, y in neck if x >= trim), Line.THIN)
    yield Area(back, Tone.SECOND)
    if trim:
        yield Area(
            ((0.0, 0.0), (trim, -0.015 * high), (trim, 0.99 * high), (0.0, high)), Tone.SECOND
        )
    hem = min(bonnet.mm("hem_turn"), 0.3 * (deep - trim))
    if hem:
        yield Stroke(((trim + hem, -0.01 * high), (trim + hem, high - band)), Line.STITCH)
    yield Dimension((0, 0), (deep, 0), bonnet.named["depth_line"], Side.ABOVE)
    yield Dimension((0, 0), (0, high), bonnet.named["half_front"], Side.LEFT)


def _bent(start: Point, by: Point, end: Point) -> list[Point]:
    """A curve from start to end, drawn toward the point between."""
    points = []
    for step in range(STEPS + 1):
        t = step / STEPS
        shares = ((1 - t) ** 2, 2 * t * (1 - t), t * t)
        corners = (start, by, end)
        x = fsum(share * corner[0] for share, corner in zip(shares, corners, strict=True))
        y = fsum(share * corner[1] for share, corner in zip(shares, corners, strict=True))
        points.append((x, y))
    return points


def _foreshortened(bonnet: Bonnet, centre: Point, wide: float, high: float) -> Polygon:
    """The back seen nearly from its edge: so `wide` and `high` to each side of its centre."""
    outline = bonnet.back_outline()
    (left, top), (right, bottom) = extents(outline)
    return tuple(
        (
            centre[0] + (2 * (x - left) / (right - left) - 1) * wide,
            centre[1] + (2 * (y - top) / (bottom - top) - 1) * high,
        )
        for x, y in outline
    )


def _gathers(bonnet: Bonnet, back: Polygon, centre: Point) -> Iterable[Shape]:
    """Folds running from the back into the straight piece, where the back edge is gathered."""
    if bonnet.mm("front_edge") < 1.05 * bonnet.mm("back_seam"):
        return
    (_, top), (_, bottom) = extents(back)
    half = (bottom - top) / 2
    fan = min(1.5, 0.6 * (0.5 * bonnet.mm("half_front") / half - 1))
    for number in range(FOLDS):
        y = top + (bottom - top) * (number + 1) / (FOLDS + 1)
        reach = (0.42, 0.26, 0.34)[number % 3]
        start = (_left_side(back, y), y)
        end = (start[0] - reach * centre[0], y + fan * reach * (y - centre[1]))
        yield Stroke((start, end), Line.THIN)


def _left_side(outline: Polygon, y: float) -> float:
    """Where the left side of an outline lies at a height."""
    return min(
        x1 + (y - y1) / (y2 - y1) * (x2 - x1)
        for (x1, y1), (x2, y2) in sides(outline)
        if (y1 > y) != (y2 > y)
    )


def _strap(bonnet: Bonnet, high: float) -> Iterable[Shape]:
    """The strap hangs from the front of the neck, shortened where it is very long."""
    long = min(bonnet.mm("strap_length"), 0.45 * high)
    wide = min(bonnet.mm("strap_width"), 0.3 * bonnet.mm("depth_line"))
    left, top = bonnet.mm("front_trim"), high - 0.3 * wide
    yield Area(
        ((left, top), (left + wide, top), (left + wide, high + long), (left, high + long)),
        Tone.SECOND,
    )
    yield Note((left + 1.4 * wide, high + 0.6 * long), sentence("strap"), anchor="start")


def back_scene(bonnet: Bonnet) -> Scene:
    """The back to cut, with its seam line and grain."""
    return Scene(
        sentence("Back of the bonnet"),
        sentence(
            "Its seam is {seam} long; cut {width} across and {height} high.",
            seam=bonnet.named["back_seam"],
            width=bonnet.named["back_cut_width"],
            height=bonnet.named["back_cut_height"],
        ),
        tuple(_back(bonnet)),
        tallest=220,
    )


def _back(bonnet: Bonnet) -> Iterable[Shape]:
    allowance = bonnet.mm("seam_allowance")
    wide, high = bonnet.mm("back_cut_width"), bonnet.mm("back_cut_height")
    yield Area(bonnet.back_outline(allowance), Tone.RIGHT)
    seam = bonnet.back_seam_outline
    yield Stroke((*seam, seam[0]) if bonnet.round_back else seam, Line.STITCH)
    middle = allowance + bonnet.mm("back_width") / 2
    for x, y in bonnet.back_notches:
        out = ((x - middle) / (middle - allowance), (y - middle) / (middle - allowance))
        tick = ((x - NOTCH * out[0], y - NOTCH * out[1]), (x + NOTCH * out[0], y + NOTCH * out[1]))
        yield Stroke(tick, Line.CUT)
    yield Grain((wide / 2, high / 2), (0.0, 1.0))
    yield Dimension((0, high), (wide, high), bonnet.named["back_cut_width"], Side.BELOW)
    yield Dimension((0, 0), (0, high), bonnet.named["back_cut_height"], Side.LEFT)
    yield Dimension(
        (wide / 2 - bonnet.mm("back_width") / 2, 0),
        (wide / 2 + bonnet.mm("back_width") / 2, 0),
        bonnet.named["back_width"],
        Side.ABOVE,
    )
