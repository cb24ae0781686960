"""Tucks drawn: one of them enlarged, flat and sewn; a panel whose tucks are freed below."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from handout_engine.amounts.lengths import from_float
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
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.shared.folds_drawing import RISE, fold_points


def tuck_scene(depth: Value, lies: Lie, title: Sentence, words: Sentence) -> Scene:
    """One tuck enlarged: its three lines on flat cloth, and the tuck stitched and pressed."""
    return Scene(title, words, tuple(_one_tuck(depth, lies)), 200.0)


def _one_tuck(depth: Value, lies: Lie) -> Iterable[Shape]:
    deep = depth.mm
    at, tall = 2.6 * deep, 1.3 * deep
    yield Area(rectangle(0, 0, 2 * at, tall), Tone.RIGHT)
    for place, kind in ((-1, Line.STITCH), (0, Line.FOLD), (1, Line.STITCH)):
        yield Stroke(((at + place * deep, 0), (at + place * deep, tall)), kind)
    yield Dimension((at - deep, 0), (at, 0), depth, Side.ABOVE)
    yield Dimension((at, tall), (at + deep, tall), depth, Side.BELOW)
    yield Note((0, 0), sentence("flat"), anchor="start", above=True)
    level = 2.7 * deep
    folded = fold_points(Fold(from_float(deep), from_float(at), lies), level, -RISE)
    yield Stroke(((0.0, level), *folded, (2 * at, level)), Line.CUT)
    yield Stroke(((at, level - 0.45 * deep), (at, level + 0.25 * deep)), Line.STITCH)
    yield Note((0, level), sentence("stitched"), anchor="start", above=True)
    below = level + 0.1 * deep
    left, right = sorted((at, at + lies.value * deep))
    yield Dimension((left, below), (right, below), depth, Side.BELOW)


@dataclass(frozen=True)
class Released:
    """A panel with release tucks: widths between the seams, and how far they are stitched.

    `top` is set where the tucks are freed above the stitching too.
    """

    panel: FoldedPanel
    seams: Value
    finished: Value
    flat: Value
    stitched: Value
    length: Value
    top: Value | None = None


def released_scene(released: Released, title: Sentence, words: Sentence) -> Scene:
    """The panel between its seams: narrow where the tucks are sewn, spreading where they end."""
    return Scene(title, words, tuple(_released(released)))


def _released(released: Released) -> Iterable[Shape]:
    wide, narrow = released.flat.mm, released.finished.mm
    start = released.top.mm if released.top else 0.0
    end, foot = start + released.stitched.mm, released.length.mm
    foot = min(foot, end + 1.2 * wide)
    left = (wide - narrow) / 2
    fall = min((foot - end) * 0.4, 0.25 * wide)
    side = [(left, start), *_eased((left, end), (left * 0.1, end + fall)), (0.0, foot)]
    if released.top:
        side = [(0.0, 0.0), *reversed(_eased((left, start), (0.0, 0.3 * start))), *side]
    outline = (*side, *((wide - x, y) for x, y in reversed(side)))
    yield Area(outline, Tone.RIGHT)
    for fold, lines in zip(released.panel.folds, released.panel.lines(), strict=True):
        at = left + float(fold.at - released.seams.length)
        edge = at + fold.lies.value * float(fold.depth)
        near, far = sorted((at, edge))
        yield Area(rectangle(near, start, far - near, end - start), Tone.SHADE, outline=None)
        yield Stroke(((at, start), (at, end)), Line.STITCH)
        below = float(lines.fold - released.seams.length)
        reach = end + 0.75 * (foot - end)
        falling = _eased((edge, end), (below, end + fall))
        yield Stroke(((edge, start), *falling, (below, reach)), Line.THIN)
        if released.top:
            yield Stroke(tuple(_eased((edge, start), (below, 0.3 * start))), Line.THIN)
    yield Dimension((left, 0), (wide - left, 0), released.finished, Side.ABOVE)
    yield Dimension((0, foot), (wide, foot), released.flat, Side.BELOW)
    yield Dimension((wide - left, start), (wide - left, end), released.stitched, Side.RIGHT)
    if released.top:
        yield Dimension((wide, 0), (wide, start), released.top, Side.RIGHT)


def _eased(start: Point, end: Point, steps: int = 8) -> list[Point]:
    """From one point down or up to another, leaving and arriving upright."""
    shares = [step / steps for step in range(steps + 1)]
    return [
        (
            start[0] + (end[0] - start[0]) * share * share * (3 - 2 * share),
            start[1] + (end[1] - start[1]) * share,
        )
        for share in shares
    ]
