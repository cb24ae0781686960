"""A finished gown or dress with a yoke, from the front: gathers or tucks, sleeves, measures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from handout_engine.drawing.garment_views import View
from handout_engine.drawing.scene import Dimension, Line, Point, Side
from handout_engine.geometry.points import snapped
from handout_engine.values import Value

REACHES = (0.34, 0.2, 0.44, 0.26, 0.38, 0.18, 0.3)
"""How far gathers reach down the skirt, by turns: they are never quite even."""
GATHER = 9.0
"""About so far apart gathers are drawn, in mm."""


@dataclass(frozen=True)
class YokeView:
    """The right half, in mm: `top` from the centre front over neck and armhole to the underarm.

    `back` is the neck at the back, `end` where yoke seam and armhole meet, `hem` half the hem's
    width at its lower end, `tucks` where tucks are stitched and how far down.
    """

    top: Sequence[Point]
    back: Sequence[Point]
    end: Point
    hem: Point
    length: Value
    yoke: Value
    sleeve: Sequence[Point] = ()
    tucks: tuple[tuple[float, ...], float] = ((), 0.0)
    trim: float = 0.0

    def view(self) -> View:
        """All of it as a view of the garment."""
        (across, low), (_, level) = self.hem, self.end
        outline = (*self.top, self.hem, (0.0, self.length.mm))
        lines = [((self.end, (0.0, level)), Line.THIN), *self._falls()]
        if self.trim:
            up = self.trim
            lines.append((((across, low - up), (0.0, self.length.mm - up)), Line.THIN))
        neck = (self.back[0], *self.back, (0.0, self.length.mm))
        behind = [self.sleeve, neck] if self.sleeve else [neck]
        right = max(x for x, _ in (*self.top, *self.sleeve))
        left = -max(across, right)
        return View(
            outline,
            lines=lines,
            behind=behind,
            dimensions=[
                Dimension((left, 0.0), (left, self.length.mm), self.length, Side.LEFT),
                Dimension((right, 0.0), (right, level), self.yoke, Side.RIGHT),
            ],
        )

    def _falls(self) -> Iterator[tuple[tuple[Point, ...], Line]]:
        """Tucks and gathers below the yoke seam, spreading with the skirt."""
        (end, level), (across, low) = self.end, self.hem
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
