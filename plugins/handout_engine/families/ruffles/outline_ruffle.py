"""A ruffle round a curved outline: a collar, a pillow, a round neck, a scalloped inset.

Round a convex outline the hem has a longer way than the edge, so that the ruffle is less full at
its hem than at its seam; round a hollow outline it is fuller.
"""

from __future__ import annotations

from math import pi
from typing import ClassVar

from handout_engine.amounts.inputs import angle, choice, length, ratio
from handout_engine.amounts.lengths import ZERO, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape, decimal
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, less_than, ways
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line, Scene
from handout_engine.families.ruffles.edge_seams import (
    EdgeSeamInputs,
    add_edge_seam_steps,
    note_edge_line,
)
from handout_engine.families.ruffles.outline_ruffle_drawing import round_outline
from handout_engine.shared.gathering import (
    GatherInputs,
    fullness,
    note_gathered_length,
    note_gathered_strips,
    note_rows,
    strip_piece,
)
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import quarters_picture, strips_picture
from handout_engine.shared.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.shared.hems import HemInputs, hem_step, note_hem
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import NOTHING_LOOSE_IN_THE_COT
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Mark, Picture, Seam
from handout_engine.working.worksheet import Worksheet

CONVEX, HOLLOW = "convex", "hollow"


class OutlineRuffle(HemInputs, EdgeSeamInputs, GatherInputs, Technique):
    """A gathered ruffle sewn round a curve, with its fullness at seam and hem."""

    title: ClassVar[str] = "Ruffle round an outline"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "A gathered ruffle round a collar, pillow or neck, full enough at its hem as well."
    )

    depth = length(
        "finished depth",
        "From the joining seam to the finished outer edge.",
        "1 1/2 in",
        ("1/4 in", "20 in"),
    )
    turning = angle(
        "turning of the edge",
        "By how much the edge turns in all, corners included: 360 for a closed outline, 180 "
        "for a half circle.",
        "360 deg",
        ("0", "720"),
    )
    curve = choice(
        "curve",
        "Convex when the ruffle lies outside the curve, hollow when inside it.",
        CONVEX,
        HOLLOW,
    )
    least_hem_fullness = ratio(
        "least fullness at the hem",
        "Below this the hem looks starved, and the handout says so.",
        "1.2",
        ("1", "3"),
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Hem line, fullness at the hem, strips, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        cloth = self.cloth()
        note_gathered_length(sheet)
        _note_hem_fullness(sheet, self)
        width = _note_width(sheet, self)
        note_gathered_strips(sheet, cloth)
        line = note_edge_line(sheet)
        rows = note_rows(sheet, line, line, self.rows_apart)
        marks = tuple(Mark(row.label, row.length) for row in rows)
        sheet.pieces.append(strip_piece(sheet, "ruffle strip", "ruffle cloth", marks=marks))
        sheet.seams.append(Seam("ruffle to edge", self.edge_allowance))
        note_cloth(sheet, "ruffle cloth", cloth)
        add_gathering_supplies(sheet)
        sheet.cautions.append(NOTHING_LOOSE_IN_THE_COT)
        add_sample(sheet, width, "a strip")
        _add_steps(sheet, self)
        _draw(sheet, self, rows)
        return sheet


def _note_hem_fullness(sheet: Worksheet, ruffle: OutlineRuffle) -> None:
    """Note the length of the hem line and what fullness is left there; refuse less than 1."""
    way = from_float(float(ruffle.depth) * float(ruffle.turning) * pi / 180)
    sheet.note("hem_gain", "longer way of the hem", way, "{depth} × {turning} × π / 180")
    sign = "+" if ruffle.curve == CONVEX else "-"
    hem = ruffle.edge + way if ruffle.curve == CONVEX else ruffle.edge - way
    if hem <= ZERO:
        deepest = from_float(float(ruffle.edge) * 180 / pi / float(ruffle.turning))
        raise RefusalError(
            f"depth {Tape(finest=32).say(ruffle.depth)} is deeper than the hollow is round; use "
            f"{ways(less_than(ruffle, 'depth', deepest), 'a longer edge that turns less')}",
            "depth",
        )
    sheet.note("hem_line", "line along the hem", hem, f"{{edge}} {sign} {{hem_gain}}")
    full = ruffle.fullness * (ruffle.edge / hem)
    needed = ruffle.least_hem_fullness * (hem / ruffle.edge)
    if full < 1:
        raise RefusalError(
            f"fullness {decimal(ruffle.fullness)} does not reach round the hem, which is "
            f"{decimal(hem / ruffle.edge)} times the edge; use "
            f"{ways(at_least(ruffle, 'fullness', hem / ruffle.edge), 'a shallower ruffle')}",
            "fullness",
        )
    sheet.note("hem_fullness", "fullness at the hem", full, "{fullness} × {edge} / {hem_line}")
    sheet.note("fullness_needed", "fullness that leaves enough at the hem", needed,
               "{least_hem_fullness} × {hem_line} / {edge}")  # fmt: skip


def _note_width(sheet: Worksheet, ruffle: OutlineRuffle) -> Value:
    if ruffle.folded:
        return sheet.note("cut_width", "ruffle strip, cut width",
                          2 * (ruffle.depth + sheet["edge_allowance"].length),
                          "2 × ({depth} + {edge_allowance})")  # fmt: skip
    hem = note_hem(sheet, ruffle, sheet["depth"])
    return sheet.note("cut_width", "ruffle strip, cut width",
                      ruffle.depth + sheet["edge_allowance"].length + hem.length,
                      "{depth} + {edge_allowance} + {hem_allowance}")  # fmt: skip


def _add_steps(sheet: Worksheet, ruffle: OutlineRuffle) -> None:
    add_washing_step(sheet)
    if fullness(sheet) < sheet["fullness_needed"].ratio:
        sheet.step(
            "Decide first: at the hem only {hem_fullness} lengths of cloth are left for each "
            "length of line. For {least_hem_fullness} there, work with a fullness of "
            "{fullness_needed}."
        )
    sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
    add_joining_steps(sheet, "", "ruffle")
    prepared = ruffle.depth + sheet["edge_allowance"].length
    sheet.step(hem_step(ruffle.hem), "from raw edge to finished edge it is {prepared} deep.",
               prepared=prepared)  # fmt: skip
    add_gathering_steps(sheet, "both layers" if ruffle.folded else "the strip")
    sheet.step(
        "Before pinning, push a little more of the gathers toward each corner and each tight "
        "curve, where the hem has farthest to go. Clip or notch the allowance of the curve."
    )
    add_edge_seam_steps(
        sheet,
        "laid flat, the hem measures {hem_line} along its line, and no part of it is drawn tight.",
        hem_line=sheet["hem_line"],
    )


def _draw(sheet: Worksheet, ruffle: OutlineRuffle, rows: tuple[Value, Value]) -> None:
    edge, depth = sheet["edge"], sheet["depth"]
    strip = FlatStrip(sentence("ruffle strip"), sheet["cut_width"], sheet["strip_length"],
                      [Rule(Line.GATHER, row) for row in rows])  # fmt: skip
    around = Scene(
        sentence("Ruffle round its outline"),
        sentence(
            "An edge of {edge} bent by {turning}, with a ruffle {depth} deep; the hem line is "
            "{hem}, the fullness there {full}.",
            edge=edge, turning=sheet["turning"], depth=depth, hem=sheet["hem_line"],
            full=sheet["hem_fullness"],
        ),
        round_outline(edge, GatheredLayer(depth, ruffle.fullness.number), sheet["hem_line"],
                      float(ruffle.turning), ruffle.curve == CONVEX),
    )  # fmt: skip
    caption = sentence(
        "The edge as an even curve of its own length and turning; fullness {fullness} at the "
        "seam is {hem_fullness} at the hem.",
        fullness=sheet["fullness"], hem_fullness=sheet["hem_fullness"],
    )  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", caption, around, True),
            strips_picture([strip], "One strip, with the gathering rows."),
            quarters_picture(sheet),
        )
    )


TECHNIQUE = OutlineRuffle
