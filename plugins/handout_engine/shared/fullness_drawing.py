"""An edge and the strips that different fullness would gather to it, at one scale."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.values import Value
from handout_engine.drawing.scene import Area, Dimension, Shape, Side, Tone, rectangle

THICK, GAP = 0.045, 0.16
"""How thick a bar is drawn and how far apart, for each length of the longest strip."""


def compared(edge: Value, strips: Sequence[Value]) -> tuple[Shape, ...]:
    """The edge above, the strips below it, all from the same left end."""
    longest = max(strip.mm for strip in strips)
    shapes: list[Shape] = []
    for row, value in enumerate((edge, *strips)):
        top = row * GAP * longest
        tone = Tone.SECOND if value is edge else Tone.RIGHT
        shapes.append(Area(rectangle(0, top, value.mm, THICK * longest), tone))
        shapes.append(Dimension((0, top), (value.mm, top), value, Side.ABOVE))
    return tuple(shapes)
