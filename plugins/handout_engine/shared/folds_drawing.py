"""Folded cloth drawn: the flat panel with its lines, the finished one, and the section of both.

The flat panel is drawn a quarter turned, its left edge at the top, since the distances of many
lines can be written one below another and not one beside another.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import ceil

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
    Tag,
    Tone,
    rectangle,
)
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.working.workings import Picture

MOST_TAGS = 15
TALLEST = 380.0
RISE = 0.3
"""How high the far end of folded cloth stands in a section, for each length of its depth."""
DENSE = 0.006
"""Lines nearer to each other than so much of the drawn width would run into one."""
LEAST_RISE = 0.02
"""The same for shallow folds, for each length of the panel's width."""


@dataclass(frozen=True)
class Drawn:
    """A folded panel with what a drawing says of it.

    `behind` is set for pleats, whose folded cloth lies behind; `kinds` are the kinds of the three
    lines of each fold; `seams` is the allowance at both edges.
    """

    panel: FoldedPanel
    finished: Value
    flat: Value
    seams: Value
    behind: bool = False
    kinds: tuple[tuple[Line, Line, Line], ...] = ()


def chart_picture(drawn: Drawn, caption: str, words: Sentence) -> Picture:
    """The flat panel, a quarter turned, with the distances of its lines at both sides."""
    scene = Scene(sentence("Marking chart"), words, tuple(_chart(drawn)), TALLEST)
    return Picture("chart", sentence(caption), scene)


def _chart(drawn: Drawn) -> Iterable[Shape]:
    length = float(drawn.panel.flat)
    across, centre = length * 0.42, length / 2
    yield Area(rectangle(0, 0, across, length), Tone.RIGHT)
    for lines, kinds in zip(drawn.panel.lines(), drawn.kinds, strict=True):
        dense = float(lines.fold - lines.first) < DENSE * length
        ruled = [(lines.first, Line.THIN)] if dense else zip(lines.all, kinds, strict=True)
        for distance, kind in ruled:
            yield Stroke(((0, float(distance)), (across, float(distance))), kind)
    yield Stroke(((-0.05 * across, centre), (1.05 * across, centre)), Line.THIN)
    yield Note((0, 0), sentence("left edge"), anchor="start", above=True)
    yield from _distances(drawn, across)


def _distances(drawn: Drawn, across: float) -> Iterable[Shape]:
    """As many lines as can be read: all, or the first of each fold, or of some folds."""
    lines = drawn.panel.lines()
    shown = [distance for each in lines for distance in each.all]
    if len(shown) > MOST_TAGS:
        step = ceil(len(lines) / MOST_TAGS)
        shown = [each.first for each in lines[::step]]
    half = drawn.panel.flat / 2
    for distance in dict.fromkeys(shown):
        offset = distance - half
        away = max(offset, -offset)
        yield Tag((across, float(distance)), distance, Side.RIGHT, (across, 0.0))
        yield Tag((0.0, float(distance)), away if away else "centre", Side.LEFT)
    bottom = float(drawn.panel.flat)
    yield Tag((across, bottom), drawn.flat, Side.RIGHT, (across, 0.0))


def finished_picture(drawn: Drawn, what: str, caption: str, words: Sentence) -> Picture:
    """The folded panel, whatever it is, from its right side, and its cross-section below it."""
    scene = Scene(sentence(f"{what}, finished"), words, tuple(_finished(drawn)))
    return Picture("finished", sentence(f"{what}{caption}"), scene, True)


def _finished(drawn: Drawn) -> Iterable[Shape]:
    width = float(drawn.panel.finished)
    tall = 0.45 * width
    yield room(width, tall)
    yield Area(rectangle(0, 0, width, tall), Tone.RIGHT, outline=None)
    for fold in drawn.panel.folds:
        dense = float(fold.depth) < DENSE * width
        yield from _seen(fold, tall, drawn.behind, dense)
    for x in (float(drawn.seams.length), width - float(drawn.seams.length)):
        yield Stroke(((x, 0), (x, tall)), Line.STITCH)
    yield Stroke((*rectangle(0, 0, width, tall), (0, 0)), Line.CUT)
    yield from _spaces(drawn)
    below = tall + 0.09 * width
    reach = rise(drawn.panel) * max(float(fold.depth) for fold in drawn.panel.folds)
    level = below if drawn.behind else below + reach
    yield Stroke(section(drawn.panel, level, drawn.behind), Line.CUT)
    bottom = level + (reach if drawn.behind else 0) + 0.03 * width
    yield Dimension((0, bottom), (width, bottom), drawn.finished, Side.BELOW)


def room(width: float, tall: float) -> Area:
    """An unseen ground a little wider than a panel, so that arrows beside it stay on the page."""
    beside = 0.02 * width
    return Area(rectangle(-beside, 0, width + 2 * beside, tall), Tone.GROUND, outline=None)


def _seen(fold: Fold, tall: float, behind: bool, dense: bool) -> Iterable[Shape]:
    """What the right side shows of a fold: a tuck with its stitching, or the edge of a pleat."""
    at = float(fold.at)
    if behind:
        yield Stroke(((at, 0), (at, tall)), Line.CUT)
        hidden = at + fold.lies.value * float(fold.depth)
        yield Stroke(((hidden, 0), (hidden, tall)), Line.HIDDEN)
        return
    edge = at + fold.lies.value * float(fold.depth)
    left, right = sorted((at, edge))
    yield Area(rectangle(left, 0, right - left, tall), Tone.SHADE, outline=None)
    if not dense:
        yield Stroke(((at, 0), (at, tall)), Line.STITCH)
    yield Stroke(((edge, 0), (edge, tall)), Line.THIN)


def _spaces(drawn: Drawn) -> Iterable[Shape]:
    """The margin at the left, and the last distance between two folds, out of its way."""
    folds, start = drawn.panel.folds, drawn.seams.length
    yield Dimension((float(start), 0), (float(folds[0].at), 0), folds[0].at - start, Side.ABOVE)
    for before, after in reversed(list(pairwise(folds))):
        if after.at != before.at:
            apart = after.at - before.at
            yield Dimension((float(before.at), 0), (float(after.at), 0), apart, Side.ABOVE)
            return


def rise(panel: FoldedPanel) -> float:
    """How steeply folds stand in the section of this panel, so that shallow ones are seen."""
    deepest = max(float(fold.depth) for fold in panel.folds)
    return max(RISE, LEAST_RISE * float(panel.finished) / deepest)


def section(
    panel: FoldedPanel, level: float, behind: bool, steep: float | None = None
) -> tuple[Point, ...]:
    """The panel seen at its cut end, as one line: each fold rises a little towards its far end.

    So the tucks of a row lie over one another like shingles even where they overlap.
    """
    steep = (1 if behind else -1) * (rise(panel) if steep is None else steep)
    points: list[Point] = [(0.0, level)]
    for number, fold in enumerate(panel.folds):
        meeting = _meeting(panel.folds, number)
        points.extend(fold_points(fold, level, steep, meeting))
    points.append((float(panel.finished), level))
    return tuple(points)


def _meeting(folds: Sequence[Fold], number: int) -> int:
    """-1 or 1 where this fold meets the one before or after it at the same place, else 0."""
    at = folds[number].at
    if number + 1 < len(folds) and folds[number + 1].at == at:
        return 1
    return -1 if number and folds[number - 1].at == at else 0


def fold_points(fold: Fold, level: float, steep: float, meeting: int = 0) -> tuple[Point, ...]:
    """From the place of the fold out to its far end and back; the outer layer is the cloth's.

    Two folds that meet (an inverted pleat) share the cloth behind: it runs straight from one far
    end to the other.
    """
    at, depth, way = float(fold.at), float(fold.depth), fold.lies.value
    far, end, gap = at + way * depth, level + steep * depth, steep * 0.22 * depth
    near = (at + way * 0.04 * depth, level)
    if meeting:
        pair = (near, (far, level + steep * depth * 0.4), (far, level + steep * depth * 0.8))
        return pair if meeting > 0 else tuple(reversed(pair))
    out = ((at, level), (far, end + gap))
    back = ((far, end), near)
    return (*out, *back) if fold.lies is Lie.RIGHT else tuple(reversed((*out, *back)))
