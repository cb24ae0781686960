"""Pleats drawn: one of them enlarged, flat and folded; a pleat with an underlay of its own."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.amounts.values import Sentence, Value, sentence
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
from handout_engine.drawing.sections import layer
from handout_engine.shared.folds import FoldedPanel, Lie
from handout_engine.shared.folds_drawing import RISE, section

PLEAT_LINES = {
    Lie.LEFT: (Line.FOLD, Line.HIDDEN, Line.THIN),
    Lie.RIGHT: (Line.THIN, Line.HIDDEN, Line.FOLD),
}


def pleat_scene(panel: FoldedPanel, depth: Value, title: Sentence, words: Sentence) -> Scene:
    """A small panel with one pleat: flat with its lines, and below it folded, cut through."""
    return Scene(title, words, tuple(_one_pleat(panel, depth)))


def _one_pleat(panel: FoldedPanel, depth: Value) -> Iterable[Shape]:
    flat, width = float(panel.flat), float(panel.finished)
    tall = 0.25 * flat
    yield Area(rectangle(0, 0, flat, tall), Tone.RIGHT)
    for fold, lines in zip(panel.folds, panel.lines(), strict=True):
        for place, kind in zip(lines.all, PLEAT_LINES[fold.lies], strict=True):
            yield Stroke(((float(place), 0), (float(place), tall)), kind)
    first_lines = [float(place) for place in panel.lines()[0].all]
    yield Dimension((first_lines[0], 0), (first_lines[1], 0), depth, Side.ABOVE)
    yield Dimension((first_lines[1], tall), (first_lines[2], tall), depth, Side.BELOW)
    left, level = (flat - width) / 2, tall + 0.2 * flat
    folded = section(panel, level, behind=True, steep=RISE * 0.6)
    yield Stroke(tuple((x + left, y) for x, y in folded), Line.CUT)
    first = panel.folds[0]
    start, end = sorted((float(first.at), float(first.at) + first.lies.value * depth.mm))
    lowest = max(y for _, y in folded)
    yield Dimension((left + start, lowest), (left + end, lowest), depth, Side.BELOW)


@dataclass(frozen=True)
class UnderlayPleat:
    """A pleat over a second cloth: half of the underlay, the gap at rest, the width of all."""

    finished: Value
    depth: Value
    gap: Value
    seam: Value
    turned: Value
    shown: Value

    @property
    def centre(self) -> float:
        """The centre of the pleat from the left seam."""
        return self.finished.mm / 2


def underlay_scene(pleat: UnderlayPleat, tall: float, title: Sentence, words: Sentence) -> Scene:
    """The pleat from its right side: at rest, and below it opened."""
    return Scene(title, words, tuple(_views(pleat, tall)), 320.0)


def _views(pleat: UnderlayPleat, tall: float) -> Iterable[Shape]:
    width, centre, half = pleat.finished.mm, pleat.centre, pleat.gap.mm / 2
    yield Area(rectangle(0, 0, centre - half, tall), Tone.RIGHT)
    yield Area(rectangle(centre + half, 0, centre - half, tall), Tone.RIGHT)
    if half:
        yield Area(rectangle(centre - half, 0, 2 * half, tall), Tone.SECOND)
        yield Dimension((centre - half, tall), (centre + half, tall), pleat.gap, Side.BELOW)
    for way in (-1, 1):
        x = centre + way * pleat.depth.mm
        yield Stroke(((x, 0), (x, tall)), Line.HIDDEN)
    yield Dimension((0, 0), (width, 0), pleat.finished, Side.ABOVE)
    yield from _opened(pleat, 1.75 * tall + 0.02 * width, tall)


def _opened(pleat: UnderlayPleat, top: float, tall: float) -> Iterable[Shape]:
    """The lower part pulled open: the folds move apart until the underlay lies flat."""
    width, centre, deep = pleat.finished.mm, pleat.centre, pleat.depth.mm
    half = pleat.gap.mm / 2
    reach = max(0.0, centre - deep)
    spread = [(centre - half, top), (centre - deep, top + tall)]
    left: list[Point] = [(0.0, top), *spread, (-reach * 0.15, top + tall)]
    above, at_foot = spread
    right = [(width - x, y) for x, y in spread]
    yield Area((above, *right, at_foot), Tone.SECOND)
    yield Area(tuple(left), Tone.RIGHT)
    yield Area(tuple((width - x, y) for x, y in left), Tone.RIGHT)
    below = top + tall
    yield Dimension((centre - deep, below), (centre + deep, below), pleat.shown, Side.BELOW)
    yield Note((0, 0), sentence("at rest"), anchor="start", above=True)
    yield Note((0, top), sentence("opened"), anchor="start", above=True)


def underlay_section(pleat: UnderlayPleat, title: Sentence, words: Sentence) -> Scene:
    """The pleat at rest cut through: both main edges turned back and sewn to the underlay."""
    return Scene(title, words, tuple(_section(pleat)))


def _section(pleat: UnderlayPleat) -> Iterable[Shape]:
    deep, half, centre = pleat.depth.mm, pleat.gap.mm / 2, 0.0
    reach = 1.35 * deep
    thick, step = 0.02 * deep, 0.13 * deep
    seam = min(pleat.seam.mm, reach - deep)
    for way in (-1, 1):
        fold_at, seam_at = centre + way * half, centre + way * deep
        folded = ((way * reach, 0.0), (fold_at, 0.0), (fold_at, step), (seam_at, step))
        main = (*folded, (seam_at + way * seam, step))
        yield layer(main, thick, Tone.RIGHT)
        yield Stroke(((seam_at, 0.6 * step), (seam_at, 2.4 * step)), Line.STITCH)
        near, far = sorted((fold_at, seam_at))
        yield Dimension((near, 0.0), (far, 0.0), pleat.turned, Side.ABOVE)
    under = ((-deep - seam, 2 * step), (deep + seam, 2 * step))
    yield layer(under, thick, Tone.SECOND)
    yield Note((0, 3.2 * step), sentence("underlay"))
    below = 3.6 * step
    yield Dimension((-deep, below), (deep, below), pleat.shown, Side.BELOW)
