"""Twin needles drawn: the rows they sew, a ridge cut through, and the slot they pass."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import ceil, cos, pi, sin

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.values import Sentence, Value, sentence
from handout_engine.drawing.breaks import enlarged
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
from handout_engine.shared.folds_drawing import MOST_TAGS, TALLEST, room


@dataclass(frozen=True)
class PinTucks:
    """Rows of pin tucks: how many, how far apart, and where they lie on the flat panel."""

    rows: int
    spacing: Value
    margin: Value
    finished: Value
    seams: Value
    flat: Value
    places: tuple[Length, ...]
    needles: Value


def pin_tucks_scene(tucks: PinTucks, title: Sentence, words: Sentence) -> Scene:
    """The finished panel, each row as its two lines of stitching, and one ridge cut through."""
    return Scene(title, words, tuple(_panel(tucks)))


def _panel(tucks: PinTucks) -> Iterable[Shape]:
    width = tucks.finished.mm
    tall = 0.4 * width
    yield room(width, tall)
    yield Area(rectangle(0, 0, width, tall), Tone.RIGHT)
    first = tucks.seams.mm + tucks.margin.mm
    half = min(tucks.needles.mm / 2, tucks.spacing.mm * 0.3)
    for row in range(tucks.rows):
        at = first + row * tucks.spacing.mm
        yield Area(rectangle(at - half, 0, 2 * half, tall), Tone.SHADE, outline=None)
        for x in (at - half, at + half):
            yield Stroke(((x, 0), (x, tall)), Line.STITCH)
    for x in (tucks.seams.mm, width - tucks.seams.mm):
        yield Stroke(((x, 0), (x, tall)), Line.STITCH)
    yield Dimension((tucks.seams.mm, 0), (first, 0), tucks.margin, Side.ABOVE)
    if tucks.rows > 1:
        last = first + (tucks.rows - 1) * tucks.spacing.mm
        yield Dimension((last - tucks.spacing.mm, 0), (last, 0), tucks.spacing, Side.ABOVE)
    yield from _ridge(tucks, width, tall)


def _ridge(tucks: PinTucks, width: float, tall: float) -> Iterable[Shape]:
    """One ridge between its two needles, a fifth of the panel wide."""
    level, middle = tall + 0.25 * width, width / 2
    half = max(0.1 * width, tucks.needles.mm / 2)
    arch = [
        (middle - half * cos(pi * step / 16), level - 1.1 * half * sin(pi * step / 16))
        for step in range(17)
    ]
    yield Stroke(((0.15 * width, level), *arch, (0.85 * width, level)), Line.CUT)
    for x in (middle - half, middle + half):
        yield Stroke(((x, level - 0.08 * width), (x, level + 0.06 * width)), Line.STITCH)
    below = level + 0.05 * width
    yield enlarged((middle - half, below), (middle + half, below), tucks.needles, Side.BELOW)
    yield Dimension((0, tall), (width, tall), tucks.finished, Side.BELOW)


def row_chart_scene(tucks: PinTucks, title: Sentence, words: Sentence) -> Scene:
    """The flat panel, a quarter turned, with the distances of its rows at both sides."""
    return Scene(title, words, tuple(_row_chart(tucks)), TALLEST)


def _row_chart(tucks: PinTucks) -> Iterable[Shape]:
    length = tucks.flat.mm
    across, half = 0.42 * length, tucks.flat.length / 2
    yield Area(rectangle(0, 0, across, length), Tone.RIGHT)
    yield Stroke(((-0.05 * across, length / 2), (1.05 * across, length / 2)), Line.THIN)
    yield Note((0, 0), sentence("left edge"), anchor="start", above=True)
    for place in tucks.places:
        yield Stroke(((0, float(place)), (across, float(place))), Line.STITCH)
    for place in tucks.places[:: ceil(tucks.rows / MOST_TAGS)]:
        away = max(place - half, half - place)
        yield Tag((across, float(place)), place, Side.RIGHT, (across, 0.0))
        yield Tag((0.0, float(place)), away if away else "centre", Side.LEFT)
    yield Tag((across, length), tucks.flat, Side.RIGHT, (across, 0.0))


@dataclass(frozen=True)
class Slot:
    """An opening with two needles in it, and how far they may swing.

    `measured` is set when the opening is a slot; else it is a greatest stitch width, which a
    machine counts from the middle of the needle, so that its slot is wider by one blade.
    """

    opening: Value
    needles: Value
    blade: Value
    swing: Value
    kept: Value
    measured: bool


def slot_scene(slot: Slot, title: Sentence, words: Sentence) -> Scene:
    """The opening from above, the needles at both ends of their swing."""
    return Scene(title, words, tuple(_slot(slot)))


def _slot(slot: Slot) -> Iterable[Shape]:
    wide, blade = slot.opening.mm, slot.blade.mm
    deep = max(0.3 * wide, 1.8 * blade)
    edge, middle = 0.35 * wide, deep / 2
    yield Area(rectangle(-edge, -edge, wide + 2 * edge, deep + 2 * edge), Tone.SHADE)
    more = 0.0 if slot.measured else blade / 2
    yield Area(rectangle(-more, 0, wide + 2 * more, deep), Tone.GROUND)
    left = (wide - slot.needles.mm - slot.swing.mm) / 2
    for at in (left, left + slot.needles.mm):
        yield Area(_circle((at, middle), blade / 2), Tone.RIGHT)
    if slot.swing.length:
        for at in (left + slot.swing.mm, left + slot.swing.mm + slot.needles.mm):
            yield Stroke((*_circle((at, middle), blade / 2), (at + blade / 2, middle)), Line.HIDDEN)
    top, bottom = -edge, deep + edge
    yield Dimension((0, top), (wide, top), slot.opening, Side.ABOVE)
    yield Dimension((left, bottom), (left + slot.needles.mm, bottom), slot.needles, Side.BELOW)


def _circle(centre: Point, radius: float, steps: int = 24) -> tuple[Point, ...]:
    return tuple(
        (
            centre[0] + radius * cos(2 * pi * step / steps),
            centre[1] + radius * sin(2 * pi * step / steps),
        )
        for step in range(steps)
    )


def swing_scene(slot: Slot, title: Sentence, words: Sentence) -> Scene:
    """A bar as wide as the opening: needles, swing, and what is kept free."""
    return Scene(title, words, tuple(_bar(slot)))


def _bar(slot: Slot) -> Iterable[Shape]:
    wide = slot.opening.mm
    tall = 0.1 * wide
    yield room(wide, tall)
    swing_end = slot.needles.mm + slot.swing.mm
    yield Area(rectangle(0, 0, slot.needles.mm, tall), Tone.SECOND)
    if slot.swing.length:
        yield Area(rectangle(slot.needles.mm, 0, slot.swing.mm, tall), Tone.RIGHT)
    yield Area(rectangle(swing_end, 0, wide - swing_end, tall), Tone.WRONG)
    yield Dimension((0, 0), (slot.needles.mm, 0), slot.needles, Side.ABOVE)
    if slot.swing.length:
        yield Dimension((slot.needles.mm, 0), (swing_end, 0), slot.swing, Side.ABOVE)
    yield Dimension((swing_end, 0), (wide, 0), slot.kept, Side.ABOVE)
    yield Dimension((0, tall), (wide, tall), slot.opening, Side.BELOW)
    yield Note((slot.needles.mm / 2, tall / 2), sentence("needles"))
    if slot.swing.length:
        yield Note((slot.needles.mm + slot.swing.mm / 2, tall / 2), sentence("stitch"))
