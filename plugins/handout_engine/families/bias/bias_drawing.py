"""Bias strips: lying on the cloth they are cut from, and joined into one."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, replace
from math import ceil, sqrt

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.breaks import measured
from handout_engine.drawing.page import PAGE_WIDTH
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
    rectangle,
)
from handout_engine.shared.strips_drawing import FlatStrip, flat_strips

CLOTH_PART = 0.6
"""The share of the page's width that cloth with its dimensions may take, to judge by."""
NUMBER_ROOM = 15.0
STRIP_LONG = 9.0
"""A joined strip is drawn so many times as long as it is wide."""


@dataclass(frozen=True)
class OnCloth:
    """A band on the cloth: its number and its corners."""

    number: int
    outline: tuple[Point, ...]

    @property
    def sums(self) -> tuple[float, float]:
        """Where along the edges it begins and ends: the least and greatest x + y of its corners."""
        every = [x + y for x, y in self.outline]
        return min(every), max(every)

    @property
    def taken(self) -> float:
        """What it takes along the edges."""
        return self.sums[1] - self.sums[0]


def strips_on_cloth(
    across: Value, along: Value, step: Value, every: Sequence[OnCloth], used: Collection[int]
) -> Scene:
    """The cloth with all its bands; those that are used are outlined thick and numbered."""
    return Scene(
        sentence("Strips on the cloth"),
        sentence(
            "Cloth {across} wide and {along} long, with {count} strips at 45 degrees to its edges, "
            "of which {used} are used.",
            across=across,
            along=along,
            count=len(every),
            used=len(used),
        ),
        tuple(_on_cloth(across.mm, along.mm, every, used)) + _cloth_dimensions(across, along, step),
    )


def _on_cloth(
    across: float, along: float, every: Sequence[OnCloth], used: Collection[int]
) -> Iterable[Shape]:
    yield Area(rectangle(0, 0, across, along))
    for band in every:
        if band.number not in used:
            yield Area(band.outline, outline=Line.THIN)
    for band in every:
        if band.number in used:
            yield Area(band.outline)
    yield from _numbers(across, along, [band for band in every if band.number in used])


def _numbers(across: float, along: float, used: Sequence[OnCloth]) -> Iterable[Shape]:
    """The numbers, inside their strips where there is room, else at their lower ends."""
    scale = min(CLOTH_PART * PAGE_WIDTH / across, 260 / along)
    for band in used:
        width = band.taken * scale / sqrt(2)
        if width >= NUMBER_ROOM:
            yield Note(_centre(band.outline), sentence(str(band.number)))
        elif band.number % _every(width * sqrt(2)) == 0:
            yield _outside(band, along, scale)


def _every(room: float) -> int:
    """Every how many strips the numbers find room at the edge."""
    every = ceil(NUMBER_ROOM / room)
    return every if every < 3 else 5 * ceil(every / 5)


def _outside(band: OnCloth, along: float, scale: float) -> Note:
    middle = sum(band.sums) / 2
    words = sentence(str(band.number))
    if middle - along < 8 / scale:
        return Note((-3 / scale, min(middle, along)), words, anchor="end")
    return Note((middle - along, along + 8 / scale), words)


def _centre(outline: Sequence[Point]) -> Point:
    xs, ys = zip(*outline, strict=True)
    return (max(xs) + min(xs)) / 2, (max(ys) + min(ys)) / 2


def _cloth_dimensions(across: Value, along: Value, step: Value) -> tuple[Shape, ...]:
    right, bottom = across.mm, along.mm
    beside = -0.14 * max(right, bottom)
    return (
        Dimension((0, bottom), (right, bottom), across, Side.BELOW),
        Dimension((right, 0), (right, bottom), along, Side.RIGHT),
        *_step(right, bottom, step),
        Grain((beside, bottom / 2), (0.0, 1.0)),
    )


def _step(right: float, bottom: float, step: Value) -> Iterable[Dimension]:
    """What one strip takes along an edge of the cloth, on an edge that is long enough for it."""
    if step.mm <= right:
        yield Dimension((0, 0), (step.mm, 0), step, Side.ABOVE)
    elif step.mm <= bottom:
        yield Dimension((0, 0), (0, step.mm), step, Side.LEFT)


def joined_strip(width: Value, length: Value, seam: Value) -> Scene:
    """A part of the joined strip with its slanting seam, and the grain across it at 45 degrees."""
    deep = width.mm
    long = min(STRIP_LONG * deep, length.mm + deep)
    middle = long * 0.42
    return Scene(
        sentence("The joined strip"),
        sentence(
            "A strip {width} wide and {length} long, joined by slanting seams.",
            width=width,
            length=length,
        ),
        (
            *_drawn_strip(long, deep, long - deep < length.mm),
            Stroke(((middle, deep), (middle + deep, 0)), Line.STITCH),
            Note((middle + deep, 0), sentence("seam {seam}", seam=seam), above=True),
            Grain((long * 0.12, deep / 2), (1.0, 1.0)),
            Dimension((0, 0), (0, deep), width, Side.LEFT),
            measured((0, deep), (long - deep, deep), length, Side.BELOW),
        ),
    )


def _drawn_strip(long: float, deep: float, broken: bool) -> Iterable[Shape]:
    """A strip whose ends lie on the grain, open where a part of it is left out.

    It is `long` from tip to tip, one depth longer than either of its edges.
    """
    if not broken:
        yield Area(((0, deep), (deep, 0), (long, 0), (long - deep, deep)))
        return
    gap = long * 0.7, long * 0.76
    left = ((0, deep), (deep, 0), (gap[0] + deep / 2, 0), (gap[0] - deep / 2, deep))
    right = ((gap[1] - deep / 2, deep), (gap[1] + deep / 2, 0), (long, 0), (long - deep, deep))
    for part, end, open_end in ((left, (0, 1), (2, 3)), (right, (2, 3), (0, 1))):
        yield Area(part, outline=None)
        yield Stroke((part[1], part[2]), Line.CUT)
        yield Stroke((part[3], part[0]), Line.CUT)
        yield Stroke((part[end[0]], part[end[1]]), Line.CUT)
        yield Stroke((part[open_end[0]], part[open_end[1]]), Line.BREAK)


def bias_strips_flat(strips: Sequence[FlatStrip], gap: float) -> tuple[Shape, ...]:
    """Strips laid flat whose grain runs at 45 degrees."""
    return tuple(
        replace(shape, along=(1.0, 1.0)) if isinstance(shape, Grain) else shape
        for shape in flat_strips(strips, gap)
    )
