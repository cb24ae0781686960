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
    LOOPS_CATCH,
    MEASURE_THE_BABY,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.cloth import note_cloth
from handout_engine.drafting.block import BodyBlock, note_block
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
from handout_engine.drawing.garment_views import View, scene
from handout_engine.drawing.scene import Dimension, Side
from handout_engine.drawing.scene import Line as Kind
from handout_engine.garment_steps import (
    WHOLE,
    add_cloth_step,
    add_lower_edge_steps,
    add_shoulder_step,
    add_side_step,
    add_slit_step,
    add_stay_step,
)
from handout_engine.geometry.points import snapped
from handout_engine.inputs import SEWING, Asked, choice, length, optional_length, ratio
from handout_engine.lengths import Length, from_float, inches, millimetres
from handout_engine.refusals import RefusalError
from handout_engine.saying import Amount, Tape
from handout_engine.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.values import Value, sentence
from handout_engine.workings import BINDINGS, Grain, Picture, Piece, Seam, Supply, Working
from handout_engine.worksheet import Worksheet

CLOTH = "cloth"
BOUND, TRIMMED = "bound", "trimmed"
PLAIN, WORKED = "plain", "worked"
TAPE = Tape(finest=32)
TO_THE_FOOT = Fraction(3, 4)
"""Of her length, from the neck point to the sole of a baby's foot at the least; an estimate."""
LEAST_SIDE = millimetres(30)
SLIT_FACING, BELOW_SLIT = millimetres(60), millimetres(30)
"""How wide the facing of the slit is cut, and how far it goes on below: common practice."""


@dataclass(frozen=True, kw_only=True)
class Slip(TurnedHemInputs):
    """A slip to wear under a dress or gown."""

    title: ClassVar[str] = "Slip"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A sleeveless slip widening to the hem, for under a dress or a christening gown."
    )
    eases: ClassVar[tuple[str, str]] = ("8 cm", "6 cm")
    usual_hem: ClassVar[Length] = inches("5/4")

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
        raise RefusalError(
            f"the cloth would end less than {TAPE.both(LEAST_SIDE)} below the arms; give reach at "
            f"least {TAPE.no_less(least + slip.hem_trim)}, or a narrower trim",
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
        remark="At its lower edge the dashed line is the fold of the hem." * lower.turned_up,
        slit=slit,
    )


def _add_slit_facing(sheet: Worksheet, slip: Slip) -> None:
    """The facing of the slit, so that its edges meet: a rectangle on the straight grain."""
    wide = sheet.note("slit_facing_width", "facing of the slit, cut width", SLIT_FACING, "",
                      basis=PRACTICE)  # fmt: skip
    long = sheet.note("slit_facing_length", "facing of the slit, cut length",
                      slip.seam_allowance + slip.opening + BELOW_SLIT,
                      "{seam_allowance} + {opening} + {below}", below=BELOW_SLIT)  # fmt: skip
    sheet.pieces.append(Piece("slit facing", CLOTH, 1, wide, long, Grain.STRAIGHT))


def _add_supplies(sheet: Worksheet) -> None:
    where = "for the neck, {neck_edge}"
    if sheet["armholes"].amount == BOUND:
        where += ", and two armholes, {armhole_edge} each"
    edges = {name: sheet[name] for name in ("neck_edge", "armhole_edge")}
    sheet.supplies.append(Supply("bias binding", None, sentence(where, **edges), unless=BINDINGS))
    sheet.have("fine thread to match")
    sheet.cautions.extend((PINS_AND_IRON, GARMENT_IS_DAYWEAR, MEASURE_THE_BABY, THIN_COTTON))
    if sheet["opening"].length:
        sheet.have("one small flat button")
        sheet.cautions.extend((BUTTONS_AS_SMALL_PARTS, LOOPS_CATCH))
    if sheet["finished_length"].length > sheet["body_length"].length * TO_THE_FOOT:
        sheet.cautions.append(LONG_HEM)


BINDING = (
    "To bind, first trim the allowance of {seam_allowance} away, down to the seam line; to face, "
    "sew the facing on that line. In one of the two ways finish"
)
EDGES = "finished, the neck measures {neck_edge} and each armhole {armhole_edge}."


def _add_steps(sheet: Worksheet) -> None:
    add_cloth_step(sheet)
    if sheet["front"].amount == WORKED:
        sheet.step(
            "Make up the cloth of the front first, at least {slip_front_across} wide and "
            "{slip_front_length} long, its middle marked; the fold line of the front lies there."
        )
    marked = ["the hem line {hem_depth} above the cut edge"] if _hem_line(sheet) else []
    if sheet["opening"].length:
        marked.insert(0, "the centre back from the neck seam line down by {opening}")
    mark = f", and mark {' and '.join(marked)}" if marked else ""
    sheet.step(f"Cut front and back, each {WHOLE}. Snip the notches{mark}.")
    add_stay_step(sheet, "the neck and the armholes of front and back")
    add_slit_step(sheet)
    add_shoulder_step(sheet)
    add_side_step(sheet, "the hem line measures {hem_edge} once round.")
    if sheet["armholes"].amount == BOUND:
        sheet.step(f"{BINDING} the neck and both armholes.", EDGES)
    else:
        sheet.step("Sew their trim to both armholes, {armhole_edge} each.")
        sheet.step(f"{BINDING} the neck.", "finished, the neck measures {neck_edge}.")
    if sheet["hem_trim"].length:
        sheet.step(
            "Sew the trim to the hem line, once round; it takes the allowance of {hem_depth}.",
            "with its trim the slip is {finished_length} from the neck point.",
        )
    else:
        add_lower_edge_steps(sheet)
    if sheet["opening"].length:
        sheet.step(
            "At the top of the slit, where its edges meet, work a thread loop on one of them, just "
            "long enough for the button, and sew the button to the other.",
            "buttoned up, the neck measures {neck_edge}; open, {opened_neck}.",
        )


def _hem_line(sheet: Worksheet) -> bool:
    """Whether the hem line is marked; a facing is sewn on along the raw edge."""
    return bool(sheet["hem_trim"].length) or "hem_ease" in sheet.values


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
