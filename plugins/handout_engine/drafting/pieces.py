"""Drafted pieces as pieces to cut: how large they are, and drawn with what joins where."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Sequence
from functools import cached_property
from math import hypot

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.sources import DRAWN
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drafting.drafts import FOLD, Draft
from handout_engine.drafting.garment import Garment
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
NOTCH = 4.0
"""How far the tick of a notch reaches to both sides of the seam, in mm."""
CLOTH = "cloth"
"""What all pieces of a garment are cut from."""


class CutPiece(Group):
    """A drafted piece as it is cut: how large, how many, and how it is drawn.

    What a garment has two of it has on its left and on its right, so two are a pair. A piece of
    `worked` cloth is cut from what another block makes up.
    """

    drawn = ""
    """How much of it is drawn, where that is not the whole."""

    def __init__(self, draft: Draft, count: int = 1, *, worked: bool = False) -> None:
        """Take the draft, and how it is cut; its name opens those of its values."""
        super().__init__(draft.name.replace(" ", "_").replace("-", "_") + "_")
        self.draft, self.count, self.worked = draft, count, worked

    @property
    def words(self) -> str:
        """The name of the piece."""
        return self.draft.name

    @cached_property
    def corners(self) -> tuple[Point, Point]:
        """The upper left and the lower right corner of the rectangle that it is cut from."""
        return extents(self.draft.cut_outline)

    @property
    def _extent(self) -> tuple[Length, Length]:
        (left, top), (right, bottom) = self.corners
        return from_float(right - left), from_float(bottom - top)

    @value("{}, cut across", basis=DRAWN)
    def width(self) -> Length:
        """From its one side to the other, allowances and all."""
        return self._extent[0]

    @value("{}, cut along the grain", basis=DRAWN)
    def length(self) -> Length:
        """From its upper to its lower end, allowances and all."""
        return self._extent[1]

    @property
    def sizes(self) -> tuple[Value, Value]:
        """How wide and how long it is cut."""
        wide, long = self.find("width"), self.find("length")
        assert wide is not None
        assert long is not None
        return wide, long

    @property
    def piece(self) -> Piece:
        """Its line of the cut list."""
        (left, top), _ = self.corners
        draft, (wide, long) = self.draft, self.sizes

        def turned(points: Sequence[Point]) -> tuple[Point, ...]:
            # A piece's outline runs along its length, which here is upright.
            return tuple((snapped(y - top), snapped(x - left)) for x, y in points)

        return Piece(
            draft.name,
            CLOTH,
            self.count,
            wide,
            long,
            Lies.STRAIGHT,
            outline=turned(draft.cut_outline),
            on_fold=draft.on_fold,
            seam_outline=turned(draft.seam_outline),
            notches=turned(draft.notches),
            worked=self.worked,
            pair=self.count > 1 and not draft.on_fold,
            slit=turned(draft.slit),
        )

    @property
    def picture(self) -> Picture:
        """It drawn with its lines, and what is said of them."""
        draft = self.draft
        lines = f"{draft.name.capitalize()}: cut on the thick line, sewn on the dashed one."
        words = " ".join(filter(None, (lines, self.drawn, draft.remark)))
        return Picture(
            self.prefix.removesuffix("_").replace("_", "-"),
            sentence(words),
            draft_scene(draft, *self.sizes),
        )


class HalfPiece(CutPiece):
    """A piece of which half is drafted, to the fold of the cloth."""

    drawn = "Half of it is drawn; the line of long dashes and dots is its middle."

    @value("{}, cut across, to the fold", basis=DRAWN)
    def width(self) -> Length:
        """From its side to its middle."""
        return self._extent[0]

    @value("{}, cut across and opened out")
    def across(self) -> Length:
        """What cloth that is worked for it must measure."""
        return 2 * self.width


class DraftedGarment(Garment):
    """A garment whose pieces are drafted, and cut from one cloth."""

    @property
    @abstractmethod
    def drafts(self) -> tuple[CutPiece, ...]:
        """Its drafted pieces, in the order of the cut list."""

    def look(self) -> None:
        """Look for what cannot be sewn, first in the order of drafting; raises RefusalError."""
        _ = self.drafts
        super().look()

    @group
    def cloths(self) -> ClothBought:
        """What its pieces are cut from."""
        return ClothBought(self, CLOTH)

    def cut(self, sheet: Worksheet) -> None:
        """Put the drafted pieces on the cut list."""
        sheet.pieces.extend(each.piece for each in self.drafts)

    def draw(self, sheet: Worksheet) -> None:
        """Draw each of them."""
        sheet.pictures.extend(each.picture for each in self.drafts)


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
