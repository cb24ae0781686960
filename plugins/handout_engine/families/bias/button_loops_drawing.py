"""Button loops: where they stand along an edge, and one of them with its measures."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
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
    Tag,
    Tone,
    rectangle,
)
from handout_engine.drawing.sections import layer

STEPS = 16
MOST_TAGS = 14
"""Of more loops only the first two and the last are measured; the chart has all."""


@dataclass(frozen=True)
class Loop:
    """One loop: the gap between its ends, how far it stands out, its tube and its sewn-in ends."""

    gap: Value
    stands: Value
    tube: Value
    end: Value
    button: Value

    def centre_line(self, middle: float) -> list[Point]:
        """From the end of one leg out round the button and back, the edge at x = 0."""
        radius = (self.gap.mm + self.tube.mm) / 2
        turn = self.stands.mm - self.tube.mm / 2 - radius
        half = [
            (turn + radius * sin(pi * step / STEPS), middle - radius * cos(pi * step / STEPS))
            for step in range(STEPS + 1)
        ]
        return [(-self.end.mm, middle - radius), *half, (-self.end.mm, middle + radius)]


def one_loop(loop: Loop) -> Scene:
    """A loop lying flat before it is sewn in, its ends in the allowance."""
    reach = 1.3 * max(loop.end.mm, loop.gap.mm)
    high = 2.2 * (loop.gap.mm + 2 * loop.tube.mm)
    inner = loop.gap.mm / 2
    return Scene(
        sentence("One loop"),
        sentence(
            "Its ends {gap} apart, it stands out {stands} from the edge.",
            gap=loop.gap,
            stands=loop.stands,
        ),
        (
            Area(rectangle(-reach, -high / 2, reach, high), outline=None),
            layer(loop.centre_line(0.0), loop.tube.mm, Tone.SECOND),
            Stroke(((0, -high / 2), (0, high / 2)), Line.STITCH),
            Stroke(((-loop.end.mm, -high / 2), (-loop.end.mm, high / 2)), Line.CUT),
            Dimension((-loop.end.mm, -high / 2), (0, -high / 2), loop.end, Side.ABOVE),
            Dimension((0, high / 2), (loop.stands.mm, high / 2), loop.stands, Side.BELOW),
            *(() if not inner else (_gap(loop, inner),)),
        ),
        tallest=170,
    )


def _gap(loop: Loop, inner: float) -> Dimension:
    return Dimension((-loop.end.mm, -inner), (-loop.end.mm, inner), loop.gap, Side.LEFT)


def loops_on_edge(opening: Value, centres: Sequence[Value], loop: Loop) -> Scene:
    """The edge with all its loops, and the distance of each from the upper end."""
    return Scene(
        sentence("The loops on the edge"),
        sentence("{count} loops on an opening of {opening}.", count=len(centres), opening=opening),
        tuple(_on_edge(opening, centres, loop)),
    )


def _on_edge(opening: Value, centres: Sequence[Value], loop: Loop) -> Iterable[Shape]:
    high = opening.mm
    cloth = max(0.35 * high, 3 * loop.button.mm)
    yield Area(rectangle(-cloth, 0, cloth, high), outline=None)
    for centre in centres:
        seen = [(max(0.0, x), y) for x, y in loop.centre_line(centre.mm)]
        yield layer(seen, loop.tube.mm, Tone.SECOND)
        yield Area(_button(loop, centre.mm), Tone.RIGHT)
    yield Stroke(((0, 0), (0, high)), Line.CUT)
    yield Stroke(((-cloth, 0), (0, 0)), Line.CUT)
    yield Stroke(((-cloth, high), (0, high)), Line.THIN)
    for centre in centres if len(centres) <= MOST_TAGS else (*centres[:2], centres[-1]):
        yield Tag((-cloth, centre.mm), centre, Side.LEFT)
    right = loop.stands.mm + 1.2 * loop.button.mm
    yield Dimension((right, 0), (right, high), opening, Side.RIGHT)
    yield Note((-cloth / 2, high * 0.08), sentence("right side"))


def _button(loop: Loop, middle: float) -> tuple[Point, ...]:
    """The button held at the far end of its loop."""
    radius = loop.button.mm / 2
    x = max(loop.stands.mm - loop.tube.mm - radius * 0.4, radius)
    return tuple(
        (x + radius * sin(2 * pi * step / 32), middle + radius * cos(2 * pi * step / 32))
        for step in range(32)
    )
