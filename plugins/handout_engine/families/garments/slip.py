"""A slip cut in one from shoulder to hem, widening towards the hem, with a slit at the back."""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, length, optional_length, ratio
from handout_engine.amounts.lengths import Length, from_float, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.bodies.measures import measured
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drafting.block import SleevelessInputs, note_armhole, note_block
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.clearances import (
    head_room,
    least_opening,
    note_head_clearance,
    opening,
)
from handout_engine.drafting.curves import shifted
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.drafting.skirts import flared_side, side_notch
from handout_engine.drafting.turned_hems import (
    Half,
    LowerEdge,
    TurnedHemInputs,
    note_facings,
    note_lower_edge,
)
from handout_engine.drawing.scene import Dimension, Side
from handout_engine.drawing.scene import Line as Kind
from handout_engine.families.garments.garment_drawing import View, scene
from handout_engine.families.garments.slip_steps import (
    BOUND,
    PLAIN,
    TRIMMED,
    WORKED,
    add_steps,
    add_supplies,
)
from handout_engine.geometry.points import snapped
from handout_engine.working.workings import Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"
TAPE = Tape(finest=32)
LEAST_SIDE = millimetres(30)
SLIT_FACING, BELOW_SLIT = millimetres(60), millimetres(30)
"""How wide the facing of the slit is cut, and how far it goes on below: common practice."""


class Slip(SleevelessInputs, TurnedHemInputs):
    """A slip to wear under a dress or gown."""

    title: ClassVar[str] = "Slip"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A sleeveless slip widening to the hem, for under a dress or a christening gown."
    )
    eases: ClassVar[tuple[str, str]] = ("8 cm", "6 cm")
    usual_hem: ClassVar[Length] = inches("5/4")

    head = measured("head")
    back_waist = measured("back_waist")
    knee_share = ratio(
        "share below the waist",
        "From the waist down, for each unit of body length.",
        "0.3",
        ("0.1", "1.5"),
        basis=PRACTICE,
    )
    shorter = length(
        "shorter",
        "How much shorter than the dress over it.",
        "2 cm",
        ("0 cm", "20 cm"),
        basis=PRACTICE,
    )
    reach = optional_length(
        "length",
        "From the neck point to the finished hem.",
        "the waist and its share of the body length",
        ("20 cm", "140 cm"),
        in_use="finished_length",
    )
    hem_trim = length(
        "trim at the hem",
        "How far a band, an edging or a ruffle will reach beyond the hem "
        "of the cloth, which is cut so much shorter.",
        "0 cm",
        ("0 cm", "40 cm"),
    )
    front = choice(
        "front", "Cut from plain cloth, or from cloth that is tucked or laced first.", PLAIN, WORKED
    )
    armholes = choice(
        "armholes",
        "Bound like the neck, or finished with a trim of their own.",
        BOUND,
        TRIMMED,
        group=SEWING,
    )
    flare = length(
        "flare",
        "How much wider each half of front and back is at the hem than under the arm.",
        "5 cm",
        ("0 cm", "30 cm"),
        basis=PRACTICE,
    )
    opening: Length = opening()
    head_room: Length = head_room()

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, and the shortest opening that lets the head through."""
        usual = super().usual
        neck, head = self.neck or usual["neck"], self.head or usual["head"]
        assert isinstance(neck, Length)
        assert isinstance(head, Length)
        return {**usual, "opening": least_opening(neck + self.neck_ease, head, self.head_room)}

    def whole(self) -> Worksheet:
        """Outlines, edges, pieces, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        block = note_block(sheet, self)
        note_head_clearance(sheet, self.opening)
        _note_reach(sheet, self)
        low = _note_cloth_reach(sheet, self, block)
        block = note_armhole(sheet, block, (float(self.flare), low - block.depth))
        half = Half(*flared_side(block.underarm, low, float(self.flare)))
        lower = note_lower_edge(sheet, self, (half, half), trimmed=bool(self.hem_trim))
        front, back = (_draft(self, name, block, (half, lower))
                       for name in ("slip front", "slip back"))  # fmt: skip
        note_piece(sheet, front, Cutting(CLOTH, worked=self.front == WORKED))
        note_piece(sheet, back, Cutting(CLOTH))
        if lower.faced:
            note_facings(sheet, (half, half), CLOTH)
        if self.opening:
            _add_slit_facing(sheet, self)
        hem = 2 * (front.edge("hem").length + back.edge("hem").length)
        sheet.note("hem_edge", "once round the finished hem", from_float(hem), "", basis=DRAWN)
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("shoulders and sides", self.seam_allowance))
        add_supplies(sheet)
        add_steps(sheet)
        sheet.pictures.insert(0, _finished(sheet, front, block))
        return sheet


def _note_reach(sheet: Worksheet, slip: Slip) -> Value:
    if slip.reach is not None:
        return sheet.note("finished_length", "slip from the neck point to the hem", slip.reach, "",
                          basis=GIVEN)  # fmt: skip
    return sheet.note(
        "finished_length",
        "slip from the neck point to the hem",
        slip.back_waist + slip.body_length * slip.knee_share - slip.shorter,
        "{back_waist} + {body_length} × {knee_share} - {shorter}",
        basis=PRACTICE,
    )


def _note_cloth_reach(sheet: Worksheet, slip: Slip, block: BodyBlock) -> float:
    """Note how long the slip is without its trim, in mm; refuses what ends at the armhole."""
    bare = sheet.note("cloth_length", "slip without its trim, from the neck point",
                      sheet["finished_length"].length - slip.hem_trim,
                      "{finished_length} - {hem_trim}").length  # fmt: skip
    least = from_float(block.depth) + LEAST_SIDE
    if bare < least:
        longer = at_least(slip, "reach", least + slip.hem_trim, "a reach of at least {}")
        raise RefusalError(
            f"the cloth would end less than {TAPE.both(LEAST_SIDE)} below the arms; use "
            f"{ways(longer, 'a narrower trim or a longer slip')}",
            "reach",
        )
    return float(bare)


def _draft(slip: Slip, name: str, block: BodyBlock, parts: tuple[Half, LowerEdge]) -> Draft:
    """Front or back, half of it, from its neckline round to the fold."""
    half, lower = parts
    front = name.endswith("front")
    neckline = block.front_neckline if front else block.back_neckline
    seam, centre = float(slip.seam_allowance), neckline[0]
    slit = () if front or not slip.opening else (
        (0.0, snapped(centre[1] - seam)), (0.0, snapped(centre[1] + float(slip.opening)))
    )  # fmt: skip
    return Draft(
        name,
        (
            Edge("neck", neckline, seam),
            Edge("shoulder", (block.neck_point, block.shoulder), seam),
            Edge("armhole", block.armhole, seam),
            Edge("side", half.side, seam),
            lower.edge(half.hem),
            Edge(FOLD, (half.hem[-1], centre)),
        ),
        notches=(side_notch(half.side),),
        remark=lower.remark,
        slit=slit,
    )


def _add_slit_facing(sheet: Worksheet, slip: Slip) -> None:
    """The facing of the slit, so that its edges meet: a rectangle on the straight grain."""
    wide = sheet.note("slit_facing_width", "facing of the slit, cut width", SLIT_FACING, "",
                      basis=PRACTICE)  # fmt: skip
    below = sheet.note("slit_facing_below", "facing of the slit, below its end", BELOW_SLIT, "",
                       basis=PRACTICE)  # fmt: skip
    long = sheet.note("slit_facing_length", "facing of the slit, cut length",
                      slip.seam_allowance + slip.opening + below.length,
                      "{seam_allowance} + {opening} + {slit_facing_below}")  # fmt: skip
    sheet.pieces.append(Piece("slit facing", CLOTH, 1, wide, long, Grain.STRAIGHT))


def _finished(sheet: Worksheet, front: Draft, block: BodyBlock) -> Picture:
    body = tuple(point for edge in front.edges[:-2] for point in edge.points)
    hem, reach, trim = front.edge("hem").points, sheet["finished_length"], sheet["hem_trim"].mm
    low = hem[0]
    view = View(
        (*body, *shifted(hem, down=trim)),
        lines=[(hem, Kind.THIN)],
        behind=[((0.0, block.back_neck), *block.back_neckline, block.neck_point, (0.0, low[1]))],
        dimensions=[Dimension((-low[0], 0.0), (-low[0], reach.mm), reach, Side.LEFT)],
    )
    caption = sentence("The slip from the front; once round its hem it measures {hem_edge}.",
                       hem_edge=sheet["hem_edge"])  # fmt: skip
    words = sentence("{finished_length} long, {finished_chest} round the chest.",
                     finished_length=reach, finished_chest=sheet["finished_chest"])  # fmt: skip
    return Picture("finished", caption, scene(sentence("Slip, finished"), words, view),
                   finished=True)  # fmt: skip


GARMENT = Slip
