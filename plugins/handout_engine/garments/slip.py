"""A slip cut in one from shoulder to hem, widening towards the hem, with a slit at the back."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from handout_engine.bodies import measured
from handout_engine.cautions import (
    BUTTONS_AS_SMALL_PARTS,
    GARMENT_IS_DAYWEAR,
    LONG_HEM,
    MEASURE_THE_BABY,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.cloth import note_cloth
from handout_engine.drafting.block import BlockInputs, BodyBlock, note_block
from handout_engine.drafting.clearances import (
    head_room,
    least_opening,
    note_head_clearance,
    opening,
)
from handout_engine.drafting.curves import Line, shifted
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.drafting.skirts import flared_side
from handout_engine.drawing.garment_views import View, scene
from handout_engine.drawing.scene import Dimension, Side
from handout_engine.drawing.scene import Line as Kind
from handout_engine.garment_steps import add_shoulder_step, add_side_step, add_slit_step
from handout_engine.gathering_steps import add_washing_step
from handout_engine.inputs import SEWING, Asked, choice, length, optional_length, ratio
from handout_engine.lengths import Length, from_float, millimetres
from handout_engine.refusals import RefusalError
from handout_engine.saying import Amount, Tape
from handout_engine.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.values import Value, sentence
from handout_engine.ways_out import at_least, ways
from handout_engine.workings import BINDINGS, Picture, Seam, Supply, Working
from handout_engine.worksheet import Worksheet

CLOTH = "cloth"
BOUND, TRIMMED = "bound", "trimmed"
PLAIN, WORKED = "plain", "worked"
TAPE = Tape(finest=32)
TO_THE_FOOT = Fraction(3, 4)
"""Of her length, from the neck point to the sole of a baby's foot at the least; an estimate."""
LEAST_SIDE = millimetres(30)


@dataclass(frozen=True, kw_only=True)
class Slip(BlockInputs):
    """A slip to wear under a dress or gown."""

    title: ClassVar[str] = "Slip"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A sleeveless slip widening to the hem, for under a dress or a christening gown."
    )
    eases: ClassVar[tuple[str, str]] = ("8 cm", "6 cm")

    head: Length = measured("head")
    back_waist: Length = measured("back_waist")
    knee_share: Fraction = ratio(
        Asked("share below the waist", "From the waist down, for each unit of body length.",
              basis=PRACTICE),
        "0.3",
        ("0.1", "1.5"),
    )  # fmt: skip
    shorter: Length = length(
        Asked("shorter", "How much shorter than the dress over it.", basis=PRACTICE),
        "2 cm",
        ("0 cm", "20 cm"),
    )
    reach: Length | None = optional_length(
        Asked("length", "From the neck point to the finished hem."),
        "the waist and its share of the body length",
        ("20 cm", "140 cm"),
    )
    hem_trim: Length = length(
        Asked("trim at the hem", "How far a band, an edging or a ruffle will reach beyond the hem "
              "of the cloth, which is cut so much shorter."),
        "0 cm",
        ("0 cm", "40 cm"),
    )  # fmt: skip
    front: str = choice(
        Asked("front", "Cut from plain cloth, or from cloth that is tucked or laced first."),
        PLAIN,
        WORKED,
    )
    armholes: str = choice(
        Asked("armholes", "Bound like the neck, or finished with a trim of their own.", SEWING),
        BOUND,
        TRIMMED,
    )
    flare: Length = length(
        Asked("flare", "How much wider each half of front and back is at the hem than under the "
              "arm.", basis=PRACTICE),
        "5 cm",
        ("0 cm", "30 cm"),
    )  # fmt: skip
    opening: Length = opening()
    head_room: Length = head_room()
    hem: Length = length(
        Asked("hem", "Turned up at the lower edge, its turning under included; where a trim is "
              "sewn on, the allowance that it takes.", SEWING, PRACTICE),
        "1 1/4 in",
        ("1/8 in", "6 in"),
    )  # fmt: skip

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, and the shortest opening that lets the head through."""
        usual = super().usual
        neck, head = self.neck or usual["neck"], self.head or usual["head"]
        assert isinstance(neck, Length)
        assert isinstance(head, Length)
        return {**usual, "opening": least_opening(neck + self.neck_ease, head, self.head_room)}

    def work(self) -> Working:
        """Outlines, edges, pieces, cloth and steps; raises RefusalError."""
        sheet = Worksheet(self)
        block = note_block(sheet, self)
        note_head_clearance(sheet, self.opening)
        _note_reach(sheet, self)
        low = _note_cloth_reach(sheet, self, block)
        front, back = (_draft(self, name, line, block, low)
                       for name, line in (("slip front", block.front_neckline),
                                          ("slip back", block.back_neckline)))  # fmt: skip
        note_piece(sheet, front, Cutting(CLOTH, worked=self.front == WORKED))
        note_piece(sheet, back, Cutting(CLOTH))
        hem = 2 * (front.edge("hem").length + back.edge("hem").length)
        sheet.note("hem_edge", "once round the finished hem", from_float(hem), "", basis=DRAWN)
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("shoulders and sides", self.seam_allowance))
        _add_supplies(sheet)
        _add_steps(sheet)
        sheet.pictures.insert(0, _finished(sheet, front, block))
        return sheet.finish()


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


def _draft(slip: Slip, name: str, neckline: Line, block: BodyBlock, low: float) -> Draft:
    """Front or back, half of it, from its neckline round to the fold."""
    side, hem = flared_side(block.underarm, low, float(slip.flare))
    seam = float(slip.seam_allowance)
    return Draft(
        name,
        (
            Edge("neck", neckline, seam),
            Edge("shoulder", (block.neck_point, block.shoulder), seam),
            Edge("armhole", block.armhole, seam),
            Edge("side", side, seam),
            Edge("hem", hem, float(slip.hem)),
            Edge(FOLD, (hem[-1], neckline[0])),
        ),
    )


def _add_supplies(sheet: Worksheet) -> None:
    where = "for the neck, {neck_edge}"
    if sheet["armholes"].amount == BOUND:
        where += ", and two armholes, {armhole_edge} each"
    edges = {name: sheet[name] for name in ("neck_edge", "armhole_edge")}
    sheet.supplies.append(Supply("bias binding", None, sentence(where, **edges), unless=BINDINGS))
    sheet.have("one small flat button", "fine thread to match")
    sheet.cautions.extend((PINS_AND_IRON, GARMENT_IS_DAYWEAR, MEASURE_THE_BABY, THIN_COTTON,
                           BUTTONS_AS_SMALL_PARTS))  # fmt: skip
    if sheet["finished_length"].length > sheet["body_length"].length * TO_THE_FOOT:
        sheet.cautions.append(LONG_HEM)


BINDING = (
    "To bind, first trim the allowance of {seam_allowance} away, down to the seam line; to face, "
    "sew the facing on that line. In one of the two ways finish"
)
EDGES = "finished, the neck measures {neck_edge} and each armhole {armhole_edge}."


def _add_steps(sheet: Worksheet) -> None:
    add_washing_step(sheet)
    if sheet["front"].amount == WORKED:
        sheet.step(
            "Make up the cloth of the front first, at least {slip_front_across} wide and "
            "{slip_front_length} long, its middle marked, and fold it there to cut the front."
        )
    sheet.step(
        "Cut front and back on the fold. Mark the centre back from the neck down by {opening}, "
        "and the hem line {hem} above the cut edge."
    )
    add_slit_step(sheet)
    add_shoulder_step(sheet)
    add_side_step(sheet, "the hem line measures {hem_edge} once round.")
    if sheet["armholes"].amount == BOUND:
        sheet.step(f"{BINDING} the neck and both armholes.", EDGES)
    else:
        sheet.step("Sew their trim to both armholes, {armhole_edge} each.")
        sheet.step(f"{BINDING} the neck.", "finished, the neck measures {neck_edge}.")
    if sheet["hem_trim"].length:
        sheet.step("Sew the trim to the hem line, once round; it takes the allowance of {hem}.",
                   "with its trim the slip is {finished_length} from the neck point.")  # fmt: skip
    else:
        sheet.step("Turn the hem up by {hem}, its raw edge turned under, and sew it by hand.",
                   "from the neck point to the hem it is {finished_length}.")  # fmt: skip
    sheet.step("Work a thread loop at the back of the neck and sew the button on.",
               "buttoned up, the neck measures {neck_edge}; open, {opened_neck}.")  # fmt: skip


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
