"""A continuous bias strip: the cloth with its cut, and the parallelogram with its rows."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from math import ceil

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Grain,
    Line,
    Note,
    Scene,
    Shape,
    Side,
    Stroke,
    rectangle,
)

PAGE_PART = 240.0
NUMBER_ROOM = 13.0


@dataclass(frozen=True)
class Rows:
    """What is drawn of a continuous strip; lengths are those that the table names."""

    short: Value
    long: Value
    join: Value
    grain_edge: Value
    height: Value
    edge_step: Value
    count: Value
    width: Value
    grain_along_long: bool = field(kw_only=True)

    @property
    def grain(self) -> tuple[float, float]:
        """The direction of the lengthwise grain; the long side lies across the drawing."""
        return (1.0, 0.0) if self.grain_along_long else (0.0, 1.0)


def cut_cloth(rows: Rows) -> Scene:
    """The rectangle with the cut that takes a triangle off one end."""
    short, long = rows.short.mm, rows.long.mm
    return Scene(
        sentence("The cloth and its one cut"),
        sentence(
            "Cloth {long} by {short}; a cut at 45 degrees takes off the triangle A, which "
            "moves to the other end.",
            long=rows.long,
            short=rows.short,
        ),
        (
            Area(rectangle(0, 0, long, short)),
            Stroke(((short, 0), (0, short)), Line.CUT),
            _triangle_name(short, long),
            Note((max(long * 0.62, short * 0.7), short * 0.72), sentence("B")),
            Dimension((0, short), (long, short), rows.long, Side.BELOW),
            Dimension((long, 0), (long, short), rows.short, Side.RIGHT),
            Dimension((0, 0), (short, 0), rows.short, Side.ABOVE),
            Grain((long * 1.0 - short * 0.2, short * 0.5), rows.grain),
        ),
    )


def _triangle_name(short: float, long: float) -> Note:
    """Its A inside it, or beside it where it is small in the drawing."""
    if long > 5 * short:
        return Note((-0.015 * long, short / 2), sentence("A"), anchor="end")
    return Note((short * 0.3, short * 0.3), sentence("A"))


def ruled_rows(rows: Rows) -> Scene:
    """The parallelogram, its rows ruled and the ends of the lines numbered to match."""
    return Scene(
        sentence("The rows and their numbers"),
        sentence(
            "{count} rows, each {width} wide; equal numbers at the upper and the lower edge "
            "meet in the tube.",
            count=rows.count,
            width=rows.width,
        ),
        (*_parallelogram(rows), *_lines(rows), *_measures(rows)),
    )


def _parallelogram(rows: Rows) -> Iterable[Shape]:
    height, edge = rows.height.mm, rows.grain_edge.mm
    ruled = rows.edge_step.mm * rows.count.whole
    yield Area(((height, 0), (height + edge, 0), (edge, height), (0, height)), outline=Line.THIN)
    yield Area(((height, 0), (height + ruled, 0), (ruled, height), (0, height)))
    yield Stroke(((edge, 0), (edge, height)), Line.STITCH)


def _lines(rows: Rows) -> Iterable[Shape]:
    """The ruled lines; where the lower edge meets line k of the upper one, it is called k too."""
    height, step, count = rows.height.mm, rows.edge_step.mm, rows.count.whole
    scale = PAGE_PART / (height + rows.grain_edge.mm)
    every = ceil(NUMBER_ROOM / (step * scale))
    every = every if every < 3 else 5 * ceil(every / 5)
    for line in range(count + 1):
        at = line * step
        if 0 < line < count:
            yield Stroke(((height + at, 0), (at, height)), Line.THIN)
        if line % every == 0 and count > 1:
            yield Note((height + at, 0), sentence(str(line)), above=True)
            if line < count:
                yield Note((at + step, height + 8 / scale), sentence(str(line)))


def _measures(rows: Rows) -> Iterable[Shape]:
    height, edge = rows.height.mm, rows.grain_edge.mm
    yield Dimension((0, height), (edge, height), rows.grain_edge, Side.BELOW)
    yield Dimension((height + edge, 0), (edge, height), rows.height, Side.RIGHT)
