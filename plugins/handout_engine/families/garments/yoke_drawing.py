"""A finished gown or dress with a yoke, from the front: gathers or tucks, sleeves, measures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import hypot

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import Dimension, Line, Point, Side
from handout_engine.families.garments.garment_drawing import View
from handout_engine.geometry.points import snapped

REACHES = (0.34, 0.2, 0.44, 0.26, 0.38, 0.18, 0.3)
"""How far gathers reach down the skirt, by turns: they are never quite even."""
GATHER = 9.0
"""About so far apart gathers are drawn, in mm."""


@dataclass(frozen=True)
class YokeView:
    """The right half, in mm: `top` from the centre front over neck and armhole to the underarm.

    `back` is the neck at the back, `end` where yoke seam and armhole meet, `hem` the lower edge
    from the side to the centre, `tucks` where tucks are stitched and how far down; `trim` and
    `sleeve_trim` are how far a trim reaches at hem and sleeve.
    """

    top: Sequence[Point]
    back: Sequence[Point]
    end: Point
    hem: Sequence[Point]
    length: Value
    yoke: Value
    sleeve: Sequence[Point] = ()
    tucks: tuple[tuple[float, ...], float] = ((), 0.0)
    trim: float = 0.0
    sleeve_trim: float = 0.0

    def view(self) -> View:
        """All of it as a view of the garment."""
        level, long = self.end[1], self.length.mm
        lines = [((self.end, (0.0, level)), Line.THIN), *self._falls()]
        if self.trim:
            lines.append((self._trim_seam(), Line.THIN))
        neck = (self.back[0], *self.back, (0.0, long))
        behind = [*self._sleeves(), neck]
        right = max(x for x, _ in (*self.top, *self.sleeve))
        left = -max(self.hem[0][0], right)
        return View(
            (*self.top, *self.hem),
            lines=lines,
            behind=behind,
            dimensions=[
                Dimension((left, 0.0), (left, long), self.length, Side.LEFT),
                Dimension((right, 0.0), (right, level), self.yoke, Side.RIGHT),
            ],
        )

    def _sleeves(self) -> Iterator[Sequence[Point]]:
        """The sleeve, and over it its trim."""
        if not self.sleeve:
            return
        shoulder, tip, inner, underarm = self.sleeve
        yield self.sleeve
        if self.sleeve_trim:
            seam = _back(tip, shoulder, self.sleeve_trim), _back(inner, underarm, self.sleeve_trim)
            yield (seam[0], tip, inner, seam[1])

    def _trim_seam(self) -> tuple[Point, ...]:
        """Where the trim of the hem begins: the hem moved up, between the sides."""
        (under, depth), (across, low) = self.top[-1], self.hem[0]
        narrower = (under + (across - under) * (1 - self.trim / (low - depth))) / across
        return tuple((snapped(x * narrower), snapped(y - self.trim)) for x, y in self.hem)

    def _falls(self) -> Iterator[tuple[tuple[Point, ...], Line]]:
        """Tucks and gathers below the yoke seam, spreading with the skirt."""
        (end, level), (across, low) = self.end, self.hem[0]
        places, stitched = self.tucks
        for place in places:
            yield ((place, level), (place, snapped(level + stitched))), Line.THIN
        if places:
            return
        number = max(3, round(end / GATHER))
        for each in range(1, number + 1):
            place = end * (each - 0.5) / number
            reach = REACHES[each % len(REACHES)] * (low - level)
            aside = (across - end) * place / end * reach / (low - level)
            yield (
                ((snapped(place), level), (snapped(place + aside), snapped(level + reach))),
                (Line.THIN),
            )


def _back(end: Point, start: Point, by: float) -> Point:
    """The point so far from the end of a straight side towards its start."""
    share = min(1.0, by / hypot(end[0] - start[0], end[1] - start[1]))
    return (
        snapped(end[0] + (start[0] - end[0]) * share),
        snapped(end[1] + (start[1] - end[1]) * share),
    )
