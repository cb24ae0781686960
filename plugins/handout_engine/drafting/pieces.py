"""Drafted pieces as pieces to cut: noted with their sizes, and drawn with what joins where."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot

from handout_engine.amounts.lengths import from_float
from handout_engine.amounts.sources import DRAWN
from handout_engine.amounts.values import Value, sentence
from handout_engine.drafting.drafts import FOLD, Draft
from handout_engine.drafting.piece_words import grain_arrow, name_note
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Line,
    Point,
    Scene,
    Shape,
    Side,
    Stroke,
    Tone,
)
from handout_engine.drawing.slits import slit_shapes
from handout_engine.geometry.points import snapped
from handout_engine.geometry.polygons import extents, sides
from handout_engine.working.workings import Grain as Lies
from handout_engine.working.workings import Picture, Piece
from handout_engine.working.worksheet import Worksheet

TALLEST = 300.0
HALF_DRAWN = "Half of it is drawn; the line of long dashes and dots is its middle."
NOTCH = 4.0
"""How far the tick of a notch reaches to both sides of the seam, in mm."""


@dataclass(frozen=True)
class Cutting:
    """What a drafted piece is cut from, and how many; `worked` cloth is made up first.

    What a garment has two of it has on its left and on its right, so two are a pair.
    """

    cloth: str
    count: int = 1
    worked: bool = False


def note_piece(sheet: Worksheet, draft: Draft, cutting: Cutting) -> Piece:
    """Note a drafted piece's size as it is cut, add it to the cut list, and draw it.

    Notes `{name}_width` across the cloth (half of it on the fold) and `{name}_length`; of a piece
    on the fold also `{name}_across`, opened out, which cloth worked for it must measure.
    """
    outline = draft.cut_outline
    (left, top), (right, bottom) = extents(outline)
    name = draft.name.replace(" ", "_").replace("-", "_")
    half = ", to the fold" if draft.on_fold else ""
    wide = sheet.note(f"{name}_width", f"{draft.name}, cut across{half}",
                      from_float(right - left), "", basis=DRAWN)  # fmt: skip
    if draft.on_fold:
        sheet.note(f"{name}_across", f"{draft.name}, cut across and opened out", 2 * wide.length,
                   "2 × {wide}", wide=wide)  # fmt: skip
    long = sheet.note(f"{name}_length", f"{draft.name}, cut along the grain",
                      from_float(bottom - top), "", basis=DRAWN)  # fmt: skip

    def turned(points: Sequence[Point]) -> tuple[Point, ...]:
        # A piece's outline runs along its length, which here is upright.
        return tuple((snapped(y - top), snapped(x - left)) for x, y in points)

    piece = Piece(
        draft.name,
        cutting.cloth,
        cutting.count,
        wide,
        long,
        Lies.STRAIGHT,
        outline=turned(outline),
        on_fold=draft.on_fold,
        seam_outline=turned(draft.seam_outline),
        notches=turned(draft.notches),
        worked=cutting.worked,
        pair=cutting.count > 1 and not draft.on_fold,
        slit=turned(draft.slit),
    )
    sheet.pieces.append(piece)
    sheet.pictures.append(_picture(draft, wide, long, name))
    return piece


def _picture(draft: Draft, wide: Value, long: Value, name: str) -> Picture:
    on_fold = f" {HALF_DRAWN}" if draft.on_fold else ""
    more = f" {draft.remark}" if draft.remark else ""
    words = (
        f"{draft.name.capitalize()}: cut on the thick line, sewn on the dashed one.{on_fold}{more}"
    )
    return Picture(name.replace("_", "-"), sentence(words), draft_scene(draft, wide, long))


def draft_scene(draft: Draft, wide: Value, long: Value) -> Scene:
    """A drafted piece upright, with its seam line, its edges named, and how large it is cut."""
    return Scene(
        sentence(f"{draft.name.capitalize()} to cut"),
        sentence("{wide} across and {long} along the grain.", wide=wide, long=long),
        tuple(_shapes(draft, wide, long)),
        tallest=TALLEST,
    )


def _shapes(draft: Draft, wide: Value, long: Value) -> list[Shape]:
    outline, seam = draft.cut_outline, draft.seam_outline
    (left, top), (right, bottom) = extents(outline)
    shapes: list[Shape] = [
        Area(outline, Tone.RIGHT, None),
        Stroke((*seam, seam[0]), Line.STITCH),
        *_border(draft),
    ]
    shapes.extend(Stroke(_tick(draft, notch), Line.CUT) for notch in draft.notches)
    if draft.slit:
        shapes.extend(slit_shapes(draft.slit, NOTCH, (2 * NOTCH, 0.0)))
    shapes.append(grain_arrow(outline))
    shapes.append(name_note(outline, draft.name, TALLEST))
    shapes.append(Dimension((left, bottom), (right, bottom), wide, Side.BELOW))
    shapes.append(Dimension((left, top), (left, bottom), long, Side.LEFT))
    return shapes


def _border(draft: Draft) -> list[Shape]:
    """The cut line, and the fold where the piece has one."""
    outline = draft.cut_outline
    if not draft.on_fold:
        return [Stroke((*outline, outline[0]), Line.CUT)]
    at = draft.edge(FOLD).points[0][0]
    number = next(
        number for number, (start, end) in enumerate(sides(outline)) if start[0] == end[0] == at
    )
    around = (*outline[number + 1 :], *outline[: number + 1])
    return [Stroke(around, Line.CUT), Stroke((around[-1], around[0]), Line.FOLD)]


def _tick(draft: Draft, notch: Point) -> tuple[Point, Point]:
    """A short line through a notch, across the seam."""
    start, end = min(sides(draft.seam_outline), key=lambda side: _off(notch, *side))
    across, down = end[0] - start[0], end[1] - start[1]
    length = hypot(across, down)
    aside = (-down / length * NOTCH, across / length * NOTCH)
    return (
        (snapped(notch[0] - aside[0]), snapped(notch[1] - aside[1])),
        (snapped(notch[0] + aside[0]), snapped(notch[1] + aside[1])),
    )


def _off(point: Point, start: Point, end: Point) -> float:
    """How much longer the way over a point is than the straight side: nothing on the side."""
    (x, y), (x1, y1), (x2, y2) = point, start, end
    return hypot(x - x1, y - y1) + hypot(x - x2, y - y2) - hypot(x2 - x1, y2 - y1)
