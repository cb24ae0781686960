"""Bound edges: seen from the right side, and cut through."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import cos, pi, sin

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
from handout_engine.drawing.sections import broken, layer

STEPS = 12


@dataclass(frozen=True)
class BoundEdge:
    """A bound edge: its binding, the allowance inside it, and what is turned under at the back.

    `turn` is None for a double binding, which has a fold there.
    """

    binding: Value
    seam: Value
    turn: Value | None
    corner: bool

    @property
    def inside(self) -> float:
        """How deep the allowance lies inside the binding, in mm."""
        return min(self.seam.mm, self.binding.mm)


def bound_edge(edge: BoundEdge) -> Scene:
    """The finished edge from its right side, with a mitred corner where there is one."""
    where = "a mitred corner of the bound edge" if edge.corner else "a stretch of the bound edge"
    return Scene(
        sentence("The bound edge"),
        sentence(
            "From the right side, {where}; the binding shows {binding}.",
            where=where,
            binding=edge.binding,
        ),
        tuple(_cornered(edge) if edge.corner else _straight(edge)),
        tallest=150,
    )


def _straight(edge: BoundEdge) -> Iterable[Shape]:
    deep = edge.binding.mm
    long, cloth = 16 * deep, 4 * deep
    yield Area(rectangle(0, deep, long, cloth), outline=None)
    yield Area(rectangle(0, 0, long, deep), Tone.SECOND)
    for x in (0.0, long):
        yield Stroke(((x, deep), (x, deep + cloth)), Line.THIN)
    yield Note((long / 2, deep + cloth / 2), sentence("right side"))
    yield Dimension((long, 0), (long, deep), edge.binding, Side.RIGHT)


def _cornered(edge: BoundEdge) -> Iterable[Shape]:
    deep = edge.binding.mm
    long, high = 12 * deep, 6 * deep
    yield Area(rectangle(deep, deep, long - deep, high - deep), outline=None)
    yield Area(
        ((0, 0), (long, 0), (long, deep), (deep, deep), (deep, high), (0, high)), Tone.SECOND
    )
    yield Stroke(((0, 0), (deep, deep)), Line.CUT)
    yield Stroke(((long, deep), (long, high)), Line.THIN)
    yield Stroke(((deep, high), (long, high)), Line.THIN)
    yield Note((long * 0.58, high * 0.6), sentence("right side"))
    yield Dimension((long, 0), (long, deep), edge.binding, Side.RIGHT)
    yield Dimension((0, high), (deep, high), edge.binding, Side.BELOW)


def sewn_on(edge: BoundEdge) -> Scene:
    """Cut through after the first seam: the strip lies on the edge, right sides together."""
    return Scene(
        sentence("Cut through after the first seam"),
        sentence("The strip is sewn {seam} from the raw edges.", seam=edge.seam),
        tuple(_sewn_on(edge)),
        tallest=120,
    )


def _sewn_on(edge: BoundEdge) -> Iterable[Shape]:
    binding, seam = edge.binding.mm, edge.seam.mm
    thick = 0.1 * binding
    far = -(seam + 2 * binding)
    yield layer(((far - 2 * binding, 0), (0, 0)), thick, Tone.RIGHT)
    yield from broken((far - 1.3 * binding, 0), thick, down=False)
    above = -1.6 * thick
    if edge.turn is None:
        turn = _folded_back((far, above - 0.8 * thick), 0.8 * thick)
        yield layer(((0, above), *turn, (0, above - 1.6 * thick)), thick, Tone.SECOND)
    else:
        turned = far + edge.turn.mm
        yield layer(
            ((0, above), (far, above), (far, above - 1.6 * thick), (turned, above - 1.6 * thick)),
            thick,
            Tone.SECOND,
        )
        yield Dimension((far, above), (turned, above), edge.turn, Side.ABOVE)
    yield Stroke(((-seam, above - 4 * thick), (-seam, 3 * thick)), Line.STITCH)
    yield Dimension((-seam, thick), (0, thick), edge.seam, Side.BELOW)
    yield Note((far - 0.5 * binding, 4.5 * thick), sentence("cloth"))


def brought_round(edge: BoundEdge) -> Scene:
    """Cut through when finished: the strip wraps the edge and covers the seam at the back."""
    return Scene(
        sentence("Cut through, finished"),
        sentence(
            "The binding is {binding} wide on each side; {seam} of allowance lies in it.",
            binding=edge.binding,
            seam=edge.seam,
        ),
        tuple(_brought_round(edge)),
        tallest=130,
    )


def _brought_round(edge: BoundEdge) -> Iterable[Shape]:
    binding, inside = edge.binding.mm, edge.inside
    thick = (0.075 if edge.turn is not None else 0.06) * binding
    gap = 1.5 * thick
    outer = binding - inside
    yield layer(((-inside - 2.6 * binding, 0), (0, 0)), thick, Tone.RIGHT)
    yield from broken((-inside - 2 * binding, 0), thick, down=False)
    for path in _wrapped(edge, outer, gap):
        yield layer(path, thick, Tone.SECOND)
    far = 4.5 * gap if edge.turn is not None else 6 * gap
    yield Stroke(((-inside, -far), (-inside, 1.0 * gap)), Line.STITCH)
    yield Dimension((-inside, -far), (outer, -far), edge.binding, Side.ABOVE)
    yield Note((-inside - 1.2 * binding, -3.2 * gap), sentence("right side"))
    yield Note((-inside - 1.2 * binding, 3.8 * gap), sentence("wrong side"))
    if edge.turn is not None and edge.turn.mm <= binding:  # a wider one is not seen whole here
        turned = -inside + edge.turn.mm
        yield Dimension((-inside, far), (turned, far), edge.turn, Side.BELOW)


def _wrapped(edge: BoundEdge, outer: float, gap: float) -> Iterable[list[Point]]:
    """The strip's path from its raw edge, back at the seam, round the edge, to the back."""
    inside = edge.inside
    if edge.turn is not None:
        turn = min(edge.turn.mm, edge.binding.mm)
        yield [
            (0, -gap),
            (-inside, -gap),
            *_turned((outer, 0), 2.6 * gap, -inside),
            (-inside, 2.6 * gap),
            (-inside, 1.2 * gap),
            (-inside + turn, 1.2 * gap),
        ]
        return
    lean = 0.8 * gap
    middle = -1.15 * gap
    yield [
        (0, -1.2 * gap),
        (-inside, -1.2 * gap),
        *_turned((outer, middle), 3.65 * gap, -inside),
        *_folded_back((-inside + lean, 1.9 * gap), 0.6 * gap),
        *reversed(_turned((outer, middle), 2.45 * gap, -inside + lean)),
        (-inside + lean, -2.4 * gap),
        (0, -2.4 * gap),
    ]


def _turned(centre: Point, half: float, from_x: float) -> list[Point]:
    """From `from_x` along the top to a half turn round the edge, ending below it."""
    x, y = centre
    turn = [
        (x + half * sin(pi * step / STEPS) * 0.5, y - half * cos(pi * step / STEPS))
        for step in range(STEPS + 1)
    ]
    return [(from_x, y - half), *turn]


def _folded_back(centre: Point, half: float) -> list[Point]:
    """The half turn of the folded edge, open to the right, from below to above."""
    x, y = centre
    return [
        (x - half * sin(pi * step / STEPS), y + half * cos(pi * step / STEPS))
        for step in range(STEPS + 1)
    ]
