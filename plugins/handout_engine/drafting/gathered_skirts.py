"""Skirts sewn to a yoke: wider than it at the centre, gathered or tucked in, the side flared."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import ClassVar

from handout_engine.amounts.inputs import choice, count, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import would_be
from handout_engine.drafting.block import note_armhole
from handout_engine.drafting.body_block import BodyBlock
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
from handout_engine.drafting.yokes import PLAIN, WORKED, Yoke
from handout_engine.geometry.points import snapped
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
GATHERED, TUCKED = "gathered", "tucked"
FRONT_WORKED = "front worked"
LEAST_SIDE = millimetres(50)


class SkirtInputs(TurnedHemInputs):
    """The inputs of a garment whose skirt is sewn to its yoke."""

    usual_hem: ClassVar[Length] = inches(2)

    skirt_fullness = ratio(
        "skirt fullness",
        "Width of the skirt's top for each length of yoke seam.",
        "2",
        ("1", "3.5"),
        basis=PRACTICE,
    )
    taken_in = choice(
        "taken in",
        "How the skirt front goes into the yoke: gathered, or by tucks that "
        "take the place of its fullness. The back is gathered.",
        GATHERED,
        TUCKED,
    )
    tucks = count(
        "tucks", "How many take in the skirt front, if it is tucked.", 8, 40, basis=PRACTICE
    )
    tuck_depth = length(
        "depth of a tuck",
        "From its stitching to its fold, if the skirt is tucked.",
        "1/4 in",
        ("1/16 in", "1 in"),
        basis=PRACTICE,
    )
    tuck_spacing = length_by_choice(
        "spacing of the tucks",
        "From stitching to stitching, finished.",
        "one and a half times their depth",
        ("1/16 in", "3 in"),
        basis=PRACTICE,
    )
    tuck_length = length(
        "length of the tucks",
        "Stitched down from the raw edge at the yoke.",
        "2 1/2 in",
        ("1/2 in", "12 in"),
        basis=PRACTICE,
    )
    skirt = choice(
        "skirt",
        "Plain, or its front, or front and back, cut from cloth that is worked first.",
        PLAIN,
        FRONT_WORKED,
        WORKED,
    )
    flare = length(
        "flare",
        "How much wider each half of front and back is at the hem than under the arm.",
        "3 cm",
        ("0 cm", "20 cm"),
        basis=PRACTICE,
    )
    hem_trim = length(
        "trim at the hem",
        "How far a ruffle or band will reach beyond the skirt, which is cut so much shorter.",
        "0 cm",
        ("0 cm", "30 cm"),
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The usual figures of what comes with the skirt, and the spacing of its tucks."""
        return {**super().usual, "tuck_spacing": self.tuck_depth * 3 / 2}


@dataclass(frozen=True)
class Skirt:
    """The drafted skirt."""

    front: Draft
    back: Draft


def note_skirt_armhole(sheet: Worksheet, garment: SkirtInputs, block: BodyBlock) -> BodyBlock:
    """Note the armhole's length and return the block with it, square to the skirt's flared side.

    Speaks of `finished_length`, the value that says where the hem is.
    """
    low = sheet["finished_length"].length - garment.hem_trim
    return note_armhole(sheet, block, (float(garment.flare), float(low) - block.depth))


def note_skirt(sheet: Worksheet, garment: SkirtInputs, yoke: Yoke, cloth: str) -> Skirt:
    """Note the skirt's figures below the yoke and cut it; raises RefusalError.

    Speaks of `finished_length`, the value that says where the hem is.
    """
    low = _note_low(sheet, garment)
    _note_tops(sheet, garment)
    tops = [sheet[top].mm / 2 for top in ("skirt_top", "skirt_back_top")]
    halves = [_half(garment, yoke, top, low) for top in tops]
    lower = note_lower_edge(sheet, garment, halves, trimmed=bool(garment.hem_trim))
    front, back = (
        _draft(garment, name, yoke, (top, half, lower))
        for name, top, half in zip(("skirt front", "skirt back"), tops, halves, strict=True)
    )
    note_piece(sheet, front, Cutting(cloth, worked=garment.skirt != PLAIN))
    note_piece(sheet, _with_slit(sheet, back), Cutting(cloth, worked=garment.skirt == WORKED))
    if lower.faced:
        note_facings(sheet, halves, cloth)
    if garment.taken_in == TUCKED:
        sheet.note("skirt_panel_width", "panel for the skirt front, its tucks stitched",
                   sheet["skirt_front_across"].length - 2 * garment.tuck_depth * garment.tucks,
                   "{skirt_front_across} - 2 × {tuck_depth} × {tucks}")  # fmt: skip
    hem = 2 * (front.edge("hem").length + back.edge("hem").length)
    sheet.note("hem_edge", "once round the hem", from_float(hem), "", basis=DRAWN)
    return Skirt(front, back)


def _note_low(sheet: Worksheet, garment: SkirtInputs) -> float:
    """Note where the cloth of the skirt ends; refuses a skirt too short to be one."""
    finished = sheet["finished_length"].length
    sheet.note("skirt_reach", "skirt from the yoke seam to the finished hem",
               finished - sheet["yoke_depth"].length,
               "{finished_length} - {yoke_depth}")  # fmt: skip
    cloth = finished - garment.hem_trim
    side = cloth - sheet["armhole_depth"].length
    if side < LEAST_SIDE:
        raise RefusalError(
            f"the skirt's side seam {would_be(side, 'long')}, less than "
            f"{TAPE.both(LEAST_SIDE)}; make the garment longer, or hem_trim smaller",
            "hem_trim",
        )
    return float(cloth)


def _note_tops(sheet: Worksheet, garment: SkirtInputs) -> None:
    """Note the width of both tops between the armhole seams, and where the placket lies."""
    edge = sheet["yoke_edge"].length
    full, words = edge * garment.skirt_fullness, "{yoke_edge} × {skirt_fullness}"
    label = "top of the skirt {}, from armhole to armhole, before it is taken in"
    if garment.taken_in == TUCKED:
        _note_tucks(sheet, garment)
        sheet.note("skirt_top", label.format("front"),
                   edge + 2 * garment.tuck_depth * garment.tucks,
                   "{yoke_edge} + 2 × {tuck_depth} × {tucks}")  # fmt: skip
    else:
        sheet.note("skirt_top", label.format("front"), full, words)
    sheet.note("skirt_back_top", label.format("back"), full, words)
    sheet.note("slit_aside", "placket, beside the centre of the skirt back",
               sheet["beyond_centre"].length * garment.skirt_fullness,
               "{beyond_centre} × {skirt_fullness}")  # fmt: skip


def _note_tucks(sheet: Worksheet, garment: SkirtInputs) -> None:
    """Note how far the tucks reach; refuses what the yoke seam has no room for."""
    edge = sheet["yoke_edge"].length
    span = sheet.note("tuck_span", "from the first tuck's stitching to the last one's",
                      garment.tuck_spacing * (garment.tucks - 1),
                      "{tuck_spacing} × ({tucks} - 1)")  # fmt: skip
    if garment.tuck_spacing < garment.tuck_depth:
        raise RefusalError(
            f"tuck_spacing {TAPE.say(garment.tuck_spacing)} lays each tuck over the next one's "
            f"stitching; use at least {TAPE.no_less(garment.tuck_depth)}, their depth",
            "tuck_spacing",
        )
    over = span.length + 2 * garment.tuck_depth
    if over > edge:
        raise RefusalError(
            f"the tucks stand over {TAPE.no_less(over)} and the yoke seam is only "
            f"{TAPE.no_more(edge)} long; make fewer, or give tuck_spacing less",
            "tucks",
        )
    reach = sheet["skirt_reach"].length - garment.hem_trim
    if garment.tuck_length >= reach:
        raise RefusalError(
            f"tuck_length {TAPE.say(garment.tuck_length)} is as long as the skirt; use at most "
            f"{TAPE.no_more(reach / 2)}",
            "tuck_length",
        )


def _half(garment: SkirtInputs, yoke: Yoke, top: float, low: float) -> Half:
    """Side and hem of front or back, from half its top's width and the level of its hem."""
    underarm = shifted(yoke.below, top - yoke.end[0])[-1]
    return Half(*flared_side(underarm, low, float(garment.flare)))


def _draft(
    garment: SkirtInputs, name: str, yoke: Yoke, parts: tuple[float, Half, LowerEdge]
) -> Draft:
    """Half of front or back, from half its top's width, its side and hem, and what is cut there."""
    half, sewn, lower = parts
    more, (_, level) = half - yoke.end[0], yoke.end
    armhole = shifted(yoke.below, more)
    seam, top = float(garment.seam_allowance), (0.0, level)
    edges = (
        Edge("top", (top, armhole[0]), seam),
        Edge("armhole", armhole, seam),
        Edge("side", sewn.side, seam),
        lower.edge(sewn.hem),
        Edge(FOLD, (sewn.hem[-1], top)),
    )
    return Draft(
        name,
        edges,
        notches=((snapped(half / 2), level), side_notch(sewn.side)),
        remark=lower.remark,
    )


def _with_slit(sheet: Worksheet, back: Draft) -> Draft:
    """The skirt back with the slit for its placket, which lies in one half of it."""
    (_, level), seam = back.edges[0].points[0], sheet["seam_allowance"].mm
    across, raw = sheet["slit_aside"].mm, level - seam
    slit = ((across, snapped(raw)), (across, snapped(raw + sheet["placket_slit"].mm)))
    only = "The slit for the placket is cut in one half only, the one that will lie beneath."
    return replace(back, slit=slit, remark=" ".join(filter(None, (back.remark, only))))
