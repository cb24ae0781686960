"""A burp cloth drawn: finished, its trim cloth laid flat, and its banded end cut through."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

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
    Tag,
    Tone,
    rectangle,
)
from handout_engine.drawing.sections import broken, layer


@dataclass(frozen=True)
class BurpCloth:
    """The named values of a burp cloth, and at how many of its ends it has a band."""

    named: Mapping[str, Value]
    bands: int

    def mm(self, name: str) -> float:
        """A named length in mm."""
        return self.named[name].mm


def finished_scene(cloth: BurpCloth) -> Scene:
    """The cloth from above, its length across the drawing."""
    return Scene(
        sentence("Burp cloth, finished"),
        sentence(
            "{length} long and {width} wide, with a band of {band}.",
            length=cloth.named["pad_length"],
            width=cloth.named["pad_width"],
            band=cloth.named["band"],
        ),
        tuple(_finished(cloth)),
    )


def _finished(cloth: BurpCloth) -> Iterable[Shape]:
    long, wide, band, edge = (
        cloth.mm(name) for name in ("pad_length", "pad_width", "band", "edge_stitch")
    )
    yield Area(rectangle(0, 0, long, wide), Tone.RIGHT)
    for right in (True, False)[: cloth.bands]:
        left = long - band if right else 0.0
        yield Area(rectangle(left, 0, band, wide), Tone.SECOND)
        seam = left if right else band
        yield Stroke(((seam, 0), (seam, wide)), Line.FOLD)
    yield Stroke(_closed(edge, edge, long - 2 * edge, wide - 2 * edge), Line.STITCH)
    yield Dimension((0, wide), (long, wide), cloth.named["pad_length"], Side.BELOW)
    yield Dimension((0, 0), (0, wide), cloth.named["pad_width"], Side.LEFT)
    yield Dimension((long - band, 0), (long, 0), cloth.named["band"], Side.ABOVE)


def _closed(left: float, top: float, width: float, height: float) -> tuple[Point, ...]:
    corners = rectangle(left, top, width, height)
    return (*corners, corners[0])


def flat_scene(cloth: BurpCloth) -> Scene:
    """The trim cloth as it is cut, with the lines of its pleats and of the seam."""
    return Scene(
        sentence("Trim cloth laid flat"),
        sentence(
            "Cut {width} wide and {length} long.",
            width=cloth.named["trim_width"],
            length=cloth.named["trim_length"],
        ),
        tuple(_flat(cloth)),
        tallest=320,
    )


def _flat(cloth: BurpCloth) -> Iterable[Shape]:
    """The banded end above, so that its lines are measured down from it."""
    long, wide = cloth.mm("trim_length"), cloth.mm("trim_width")
    allowance = cloth.mm("seam_allowance")
    yield Area(rectangle(0, 0, wide, long), Tone.RIGHT)
    inner = _closed(allowance, allowance, wide - 2 * allowance, long - 2 * allowance)
    yield Stroke(inner, Line.HIDDEN)
    lines = (("pleat_seam", Line.STITCH), ("pleat_fold", Line.FOLD), ("pleat_back", Line.STITCH))
    for name, line in lines:
        for at in (cloth.mm(name), long - cloth.mm(name))[: cloth.bands]:
            yield Stroke(((0, at), (wide, at)), line)
        yield Tag((wide, cloth.mm(name)), cloth.named[name], Side.RIGHT, origin=(wide, 0))
    yield Dimension((0, 0), (0, long), cloth.named["trim_length"], Side.LEFT)
    yield Dimension((0, long), (wide, long), cloth.named["trim_width"], Side.BELOW)
    yield Grain((wide / 2, long / 2), (0, 1))


def band_section(cloth: BurpCloth) -> Scene:
    """The banded end cut through from side to side of the drawing."""
    return Scene(
        sentence("Band, cut through"),
        sentence(
            "The pleat is {band} deep; three layers of trim cloth lie in it.",
            band=cloth.named["band"],
        ),
        tuple(_section(cloth)),
        tallest=150,
    )


def _section(cloth: BurpCloth) -> Iterable[Shape]:
    """Pad below; on it the trim, which runs back under its pleat from seam to end."""
    band = cloth.mm("band")
    thick = 0.045 * band
    step = 2.2 * thick
    start = -1.1 * band
    edge = min(cloth.mm("edge_stitch"), 0.3 * band)
    pad = 3.2 * step
    yield layer(((start, pad), (band, pad)), 2.6 * thick, Tone.WRONG)
    yield from broken((start + 0.4 * band, pad), 1.6 * thick, down=False)
    yield layer(
        (
            (start, step),
            (-step, step),
            (0, 0),
            (band - 0.5 * step, 0),
            (band, 0.5 * step),
            (band - 0.5 * step, step),
            (1.1 * step, step),
            (0.6 * step, 1.5 * step),
            (1.1 * step, 2 * step),
            (band, 2 * step),
        ),
        thick,
        Tone.SECOND,
    )
    yield Stroke(((0.5 * step, -1.2 * step), (0.5 * step, 2.2 * step)), Line.STITCH)
    yield Stroke(((band - edge, -1.2 * step), (band - edge, 4.2 * step)), Line.STITCH)
    yield Dimension((0.0, -1.2 * step), (band, -1.2 * step), cloth.named["band"], Side.ABOVE)
    yield Note((start + 0.5 * band, 0.1 * step), sentence("trim cloth"))
    yield Note((start + 0.5 * band, 5.2 * step), sentence("pad"))
