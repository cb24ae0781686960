"""A flat round collar on the block of any garment: in one piece, or in two that meet."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length, from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import DRAWN, GIVEN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.bodies.measures import LENGTHS
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drafting.block import BlockInputs, note_armhole, note_block
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.collars import JoinedNeck, collar_draft, sewn_edge
from handout_engine.drafting.curves import Line, run
from handout_engine.drafting.drafts import FOLD, Draft
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.families.garments.collar_drawing import DrawnCollar, drafting_scene, flat_scene
from handout_engine.families.garments.collar_steps import add_sample, add_steps, add_supplies
from handout_engine.working.workings import Picture, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "cloth"
ONE, TWO = "one piece", "two pieces"
ROUND, SQUARE = "rounded", "square"
PLAIN, WORKED = "plain", "worked"
TAPE = Tape(finest=32)


class Collar(BlockInputs):
    """A flat collar for a garment drafted on the block; its neck follows the same inputs."""

    title: ClassVar[str] = "Flat collar"
    family: ClassVar[str] = "garments"
    summary: ClassVar[str] = (
        "A flat round collar, in one piece for a back opening or in two that meet, drafted to fit "
        "the neck of any garment of these pages."
    )

    form = choice(
        "form",
        "Two pieces that meet at front and back, or one piece that opens at the back.",
        TWO,
        ONE,
    )
    depth = optional_length(
        "depth",
        "From the neck seam to the outer edge, the same all round.",
        "3.5 cm at size 50 to 5 cm at size 98, where the shoulder is long enough",
        ("1 cm", "12 cm"),
        in_use="collar_depth",
    )
    depth_share = ratio(
        "most depth",
        "What the collar may cover of the shoulder seam.",
        "0.8",
        ("0.3", "0.95"),
        basis=PRACTICE,
    )
    upper = choice(
        "upper collar",
        "Plain, or cut from cloth that is worked first: tucked, laced, embroidered.",
        PLAIN,
        WORKED,
    )
    overlap = length(
        "overlap at the shoulder",
        "How far front and back overlap at the end of the "
        "shoulder while the collar is drawn; more makes it roll.",
        "8 mm",
        ("0 mm", "2 cm"),
        basis=PRACTICE,
    )
    corners = choice("corners", "At the ends that meet.", ROUND, SQUARE)
    rounding = optional_length(
        "rounding",
        "How far from a corner its curve begins.",
        "three quarters of the depth",
        ("3 mm", "12 cm"),
        in_use="corner_rounding",
    )
    roll = length(
        "under collar smaller",
        "How much less deep the under collar is, so that its seam rolls out of sight.",
        "1.5 mm",
        ("0 mm", "4 mm"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Outlines, edges, pieces, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        block = note_armhole(sheet, note_block(sheet, self))
        depth = _note_depth(sheet, self)
        rounding = _note_rounding(sheet, self, depth)
        neck = _note_neck(sheet, self, block)
        upper, under = (
            collar_draft(name, neck, float(deep), rounding=min(float(rounding), float(deep)),
                         seam=float(self.seam_allowance), on_fold=self.form == ONE)
            for name, deep in (("upper collar", depth.length),
                               ("under collar", depth.length - self.roll))
        )  # fmt: skip
        count = 1 if self.form == ONE else 2
        note_piece(sheet, upper, Cutting(CLOTH, count, worked=self.upper == WORKED))
        note_piece(sheet, under, Cutting(CLOTH, count))
        _note_edges(sheet, upper, under)
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("outer edge, and neck", self.seam_allowance))
        add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet)
        _add_pictures(sheet, neck, block, upper)
        return sheet


def _note_depth(sheet: Worksheet, collar: Collar) -> Value:
    """Note the depth: given, usual for the size, or what the shoulder allows."""
    label = "depth of the collar"
    most = sheet["shoulder_seam"].length * collar.depth_share
    if collar.depth is not None:
        if collar.depth > most:
            raise RefusalError(
                f"depth {TAPE.both(collar.depth)} covers more than {TAPE.say(collar.depth_share)} "
                f"of the shoulder seam, {TAPE.both(sheet['shoulder_seam'].length)}; use "
                f"{ways(at_most(collar, 'depth', most), 'more depth_share')}",
                "depth",
            )
        return sheet.note("collar_depth", label, collar.depth, "", basis=GIVEN)
    usual = millimetres(35) + (collar.body_length - LENGTHS["50"]) * Fraction(15, 480)
    if usual <= most:
        return sheet.note("collar_depth", label, usual, "", basis=PRACTICE)
    return sheet.note("collar_depth", label, most, "{depth_share} × {shoulder_seam}",
                      basis=PRACTICE)  # fmt: skip


def _note_rounding(sheet: Worksheet, collar: Collar, depth: Value) -> Length:
    """Note how far from a corner its curve begins; refuses more than the depth."""
    if collar.corners == SQUARE:
        return ZERO
    label = "rounding of the corners"
    if collar.rounding is None:
        return sheet.note("corner_rounding", label, depth.length * Fraction(3, 4),
                          "{collar_depth} × 3 / 4", basis=PRACTICE).length  # fmt: skip
    if collar.rounding > depth.length:
        raise RefusalError(
            f"rounding {TAPE.say(collar.rounding)} is more than the collar is deep; use at most "
            f"{TAPE.no_more(depth.length)}",
            "rounding",
        )
    return sheet.note("corner_rounding", label, collar.rounding, "", basis=GIVEN).length


def _note_neck(sheet: Worksheet, collar: Collar, block: BodyBlock) -> JoinedNeck:
    """Note the collar's own neck edge, as long as that of the garment."""
    neck = JoinedNeck(block, float(collar.overlap))
    try:
        curve = neck.curve
    except ValueError:
        raise RefusalError(
            f"with {TAPE.both(collar.overlap)} of overlap on a shoulder seam of "
            f"{TAPE.both(sheet['shoulder_seam'].length)} no smooth neck edge can be drawn; give "
            "overlap less",
            "overlap",
        ) from None
    sheet.note("collar_neck", "neck edge of the collar, measured on its curve",
               from_float(2 * run(curve)), "", basis=DRAWN)  # fmt: skip
    sheet.note("front_to_shoulder", "neck edge from the centre front to the shoulder",
               from_float(run(block.front_neckline)), "", basis=DRAWN)  # fmt: skip
    return neck


def _note_edges(sheet: Worksheet, upper: Draft, under: Draft) -> None:
    edge = sheet.note("collar_edge", "outer edge of the whole collar, its open ends included",
                      from_float(2 * sewn_edge(upper)), "", basis=DRAWN)  # fmt: skip
    pieces = 1 if upper.on_fold else 2
    sheet.note("piece_edge", "outer edge of one piece, from neck to neck",
               edge.length / pieces, "{collar_edge} / {pieces}", pieces=pieces)  # fmt: skip
    below = sheet.note("under_edge", "outer edge of the whole under collar",
                       from_float(2 * sewn_edge(under)), "", basis=DRAWN)  # fmt: skip
    sheet.note("collar_ease", "eased in at the outer edge, upper collar to under collar",
               edge.length - below.length, "{collar_edge} - {under_edge}")  # fmt: skip


def _add_pictures(sheet: Worksheet, neck: JoinedNeck, block: BodyBlock, upper: Draft) -> None:
    mark, border = neck.shoulder_mark, upper.edge("outer edge").points
    outline = tuple(
        point for each in upper.edges if each.name != FOLD for point in each.points
    )  # fmt: skip
    drawn = DrawnCollar(
        outline,
        upper.edge("neck").points,
        _bodice(block, block.front_neckline),
        neck.laid_back(_bodice(block, block.back_neckline)),
        (mark, min(border, key=lambda point: _across(point, mark, block))),
        upper.on_fold,
        sheet["collar_depth"],
        sheet["overlap"],
        sheet["collar_edge"],
    )
    how = "front and back joined at the shoulder, overlapping there by {overlap}"
    sheet.pictures[:0] = (
        Picture("finished", sentence("The collar laid flat; {edge} once round its outer edge.",
                                     edge=sheet["collar_edge"]), flat_scene(drawn), finished=True),
        Picture("drafting", sentence(f"Half of the collar as it is drawn, on {how}.",
                                     overlap=sheet["overlap"]), drafting_scene(drawn)),
    )  # fmt: skip


def _bodice(block: BodyBlock, neckline: Line) -> Line:
    """Half of a front or back down to the underarm."""
    return (*neckline, *block.armhole, (0.0, block.depth))


def _across(point: tuple[float, float], mark: tuple[float, float], block: BodyBlock) -> float:
    """How far a point lies from the line of the front's shoulder seam, which runs outward."""
    (x, y), (end, low), half = point, block.shoulder, block.neck_half
    return abs((x - mark[0]) * low - (y - mark[1]) * (end - half))


GARMENT = Collar
