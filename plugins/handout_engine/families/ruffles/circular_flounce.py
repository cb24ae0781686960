"""A flounce cut as a ring or as arcs: smooth along its seam, full at its hem, never gathered."""

from __future__ import annotations

from dataclasses import replace
from math import pi, radians, sin
from typing import ClassVar

from handout_engine.amounts.inputs import angle, count
from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import more_than, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Scene
from handout_engine.families.ruffles.flounces import (
    CLOSED,
    FlounceInputs,
    at_corner,
    extent,
    sector,
    sewn_sector,
)
from handout_engine.families.ruffles.flounces_drawing import cut_outline
from handout_engine.families.ruffles.flutes_drawing import flounce_hanging
from handout_engine.shared.hems import hem_step, note_hem
from handout_engine.working.cautions import NOT_SLEEPWEAR, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Picture, Piece, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

MOST_PIECES = 24
LEAST_TURN = 20
"""In degrees."""


class CircularFlounce(FlounceInputs, ClothInputs, Technique):
    """A flounce of one or more rings or arcs."""

    title: ClassVar[str] = "Circular flounce"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "Cut as a ring or as arcs, so that it lies smooth along its seam and ripples at its hem."
    )

    pieces = count("pieces", "How many rings or arcs are joined end to end.", 1, MOST_PIECES)
    turn = angle(
        "arc of each piece",
        "360 for whole rings; less lies less full at the hem, and fits narrower cloth.",
        "360 deg",
        (str(LEAST_TURN), "360"),
    )

    @property
    def uncut(self) -> bool:
        """Whether it is one whole ring sewn to a closed edge, with no seam in it."""
        return self.pieces == 1 and self.turn == 360 and self.ends == CLOSED

    def whole(self) -> Worksheet:
        """Radii, outline, cloth, fullness at the hem and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        cloth = self.cloth()
        _note_seam_line(sheet, self)
        _note_radii(sheet, self)
        usable = note_usable_width(sheet, cloth)
        _note_piece(sheet, self, usable)
        sheet.seams.append(Seam("flounce to edge", self.edge_allowance))
        note_cloth(sheet, "flounce cloth", cloth)
        sheet.supplies.append(Supply("a beam or a string and pencil to draw the arcs"))
        sheet.have("fine thread to match", "a fine needle for the cloth")
        sheet.cautions.extend((PINS_AND_IRON, NOT_SLEEPWEAR, THIN_COTTON))
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet


def _note_seam_line(sheet: Worksheet, flounce: CircularFlounce) -> None:
    """Note the length of each piece along the seam, joins and end hems included."""
    if flounce.uncut:
        sheet.note("seam_line", "seam line of each piece", flounce.edge, "{edge}")
        return
    joins = 2 * flounce.pieces if flounce.ends == CLOSED else 2 * (flounce.pieces - 1)
    ends = 0 if flounce.ends == CLOSED else 2
    whole = flounce.edge + flounce.end_hem * ends + flounce.join_allowance * joins
    sheet.note(
        "seam_line",
        "seam line of each piece",
        whole / flounce.pieces,
        "({edge} + {ends} × {end_hem} + {joins} × {join_allowance}) / {pieces}",
        ends=ends,
        joins=joins,
    )


def _note_radii(sheet: Worksheet, flounce: CircularFlounce) -> None:
    line = sheet["seam_line"].length
    radius = from_float(float(line) * 180 / (pi * float(flounce.turn)))
    sheet.note("seam_radius", "radius of the seam line", radius, "{seam_line} × 180 / (π × {turn})")
    if radius <= flounce.edge_allowance:
        tape = Tape(finest=32)
        least = from_float(float(flounce.edge_allowance) * pi * float(flounce.turn) / 180)
        lacking = (least - line) * flounce.pieces
        way = ways(
            more_than(flounce, "edge", flounce.edge + lacking, "more than {} of edge"),
            "a smaller turn" if flounce.pieces == 1 else "fewer pieces, or a smaller turn",
        )
        raise RefusalError(
            f"the seam line would have a radius of {tape.both(radius)}, not more than the "
            f"edge_allowance {tape.say(flounce.edge_allowance)}; use {way}",
            "edge",
        )
    hem = note_hem(sheet, flounce, sheet["depth"])
    sheet.note("inner_radius", "inner radius to cut", radius - flounce.edge_allowance,
               "{seam_radius} - {edge_allowance}")  # fmt: skip
    sheet.note("outer_radius", "outer radius to cut", radius + flounce.depth + hem.length,
               "{seam_radius} + {depth} + {hem_allowance}")  # fmt: skip
    sheet.note("hem_fullness", "fullness at the hem", (radius + flounce.depth) / radius,
               "({seam_radius} + {depth}) / {seam_radius}")  # fmt: skip
    hem_line = flounce.edge * ((radius + flounce.depth) / radius)
    sheet.note("hem_line", "finished hem, all pieces", hem_line, "{edge} × {hem_fullness}")


def _note_piece(sheet: Worksheet, flounce: CircularFlounce, usable: Value) -> None:
    """Note what each piece takes of the cloth; refuse what is wider than the cloth."""
    inner, outer = sheet["inner_radius"].mm, sheet["outer_radius"].mm
    outline = sector(inner, outer, float(flounce.turn))
    across, along = (from_float(size) for size in extent(outline))
    if flounce.turn >= 180:
        wide = sheet.note("piece_across", "each piece, across the cloth",
                          2 * sheet["outer_radius"].length, "2 × {outer_radius}")  # fmt: skip
    else:
        wide = sheet.note("piece_across", "each piece, across the cloth", across,
                          "2 × {outer_radius} × sin({turn} / 2)")  # fmt: skip
    if flounce.turn > 180:
        formula = "{outer_radius} - {outer_radius} × cos({turn} / 2)"
    else:
        formula = "{outer_radius} - {inner_radius} × cos({turn} / 2)"
    high = sheet.note("piece_along", "each piece, along the cloth", along, formula)
    if flounce.turn == 360:
        high = sheet.note("piece_along", "each piece, along the cloth", wide.length,
                          "2 × {outer_radius}")  # fmt: skip
    _refuse_too_wide(flounce, wide.length, usable.length)
    number = flounce.pieces * flounce.make
    piece = Piece("flounce", "flounce cloth", number.number, high, wide, Grain.CROSS,
                  outline=at_corner(outline), whole=flounce.uncut)  # fmt: skip
    inset = _inset(flounce)
    if inset is not None:
        seam = sheet["seam_radius"].mm
        sewn = sewn_sector(seam, seam + float(flounce.depth), float(flounce.turn), inset)
        left, top = min(x for x, _ in outline), min(y for _, y in outline)
        piece = replace(piece, seam_outline=tuple((x - left, y - top) for x, y in sewn))
    sheet.pieces.append(piece)


def _inset(flounce: CircularFlounce) -> float | None:
    """How far inside its ends each piece is sewn, in mm; None where the ends differ."""
    if flounce.uncut:
        return 0.0
    if flounce.ends == CLOSED:
        return float(flounce.join_allowance)
    if flounce.pieces == 1 or flounce.end_hem == flounce.join_allowance:
        return float(flounce.end_hem)
    return None


def _refuse_too_wide(flounce: CircularFlounce, wide: Length, usable: Length) -> None:
    if wide <= usable:
        return
    tape = Tape(finest=32)
    raise RefusalError(
        f"each piece is {tape.both(wide)} across and the cloth only {tape.both(usable)} between "
        f"its selvages; use {ways(_smaller_arcs(flounce, usable), 'wider cloth')}",
        "pieces",
    )


def _smaller_arcs(flounce: CircularFlounce, usable: Length) -> str:
    """The fewest arcs of the same fullness that fit on the cloth; empty where none do."""
    for number in range(2, MOST_PIECES // flounce.pieces.number + 1):
        turn = flounce.turn / number
        if turn < LEAST_TURN:
            break
        arcs = flounce.with_inputs(pieces=flounce.pieces * number, turn=turn)
        sheet = Worksheet(technique=arcs)
        _note_seam_line(sheet, arcs)
        _note_radii(sheet, arcs)
        if turn <= 180 and 2 * sheet["outer_radius"].mm * sin(radians(turn / 2)) <= float(usable):
            pieces = f"pieces: {arcs.pieces} with turn: {float(turn):g} deg"
            return f"smaller arcs of the same fullness, {pieces}"
    return ""


def _add_steps(sheet: Worksheet, flounce: CircularFlounce) -> None:
    number = flounce.pieces * flounce.make
    shape = "ring" if flounce.turn == 360 else "arc"
    plural = "" if number == 1 else "s"
    sheet.step(
        f"Draw {number} {shape}{plural} on the cloth: from one centre an inner line at "
        "{inner_radius} and an outer line at {outer_radius}. Cut on both lines.",
        "from inner to outer cut edge it is {cut_depth} everywhere.",
        cut_depth=sheet["outer_radius"].length - sheet["inner_radius"].length,
    )
    if flounce.turn == 360 and not flounce.uncut:
        sheet.step("Slit each ring along the lengthwise grain, from outer to inner edge.")
    if flounce.pieces > 1 or (flounce.ends == CLOSED and not flounce.uncut):
        sheet.step(
            "Join the pieces end to end, right sides together, with {join_allowance} allowance, "
            "and finish the joins."
        )
    sheet.step(
        "Stay-stitch the inner edge: a row of short stitches a thread's width nearer to "
        "the raw edge than the seam line at {edge_allowance}."
    )
    sheet.step("Clip the allowance of the inner edge every {clip} up to the stay stitching.",
               "opened straight, the stay stitching measures {whole} from end to end.",
               clip=flounce.edge_allowance * 2,
               whole=sheet["seam_line"].length * flounce.pieces)  # fmt: skip
    if flounce.ends != CLOSED:
        sheet.step("Hem each open end, {end_hem}.")
    sheet.step("Sew flounce and edge right sides together, {edge_allowance} from the raw edges.",
               "it lies smooth along the seam, neither stretched nor eased.")  # fmt: skip
    sheet.step(
        "Let it hang for a day, since parts of it are on the bias and drop. Trim the lower edge "
        "level."
    )
    sheet.step(hem_step(flounce.hem), "it hangs {depth} below the seam all round.")
    sheet.sample.append(
        Step(
            sentence("Cut a quarter of the ring from paper or muslin, sew it to a straight scrap."),
            sentence("the ripples are as deep as you want; {full} lengths of hem hang from each "
                     "length of edge.", full=sheet["hem_fullness"]),
        )
    )  # fmt: skip


def _draw(sheet: Worksheet, flounce: CircularFlounce) -> None:
    radii = sheet["inner_radius"], sheet["seam_radius"], sheet["outer_radius"]
    cut = Scene(
        sentence("Flounce to cut"),
        sentence("Inner radius {inner}, seam line {seam}, outer radius {outer}; an arc of {turn}.",
                 inner=radii[0], seam=radii[1], outer=radii[2], turn=sheet["turn"]),
        cut_outline(radii, float(flounce.turn), slit=not flounce.uncut),
    )  # fmt: skip
    hanging = Scene(
        sentence("Circular flounce, finished"),
        sentence("It hangs {depth} deep from an edge of {edge}.",
                 depth=sheet["depth"], edge=sheet["edge"]),
        flounce_hanging(sheet["edge"], sheet["depth"], _full(sheet), _full(sheet)),
    )  # fmt: skip
    caption = sentence(
        "The finished flounce: smooth at the seam, fullness {full} at the hem.",
        full=sheet["hem_fullness"],
    )
    outline = sentence("One piece to cut, with its seam line and grain.")
    sheet.pictures.extend(
        (Picture("finished", caption, hanging, True), Picture("outline", outline, cut))
    )


def _full(sheet: Worksheet) -> float:
    return float(sheet["hem_fullness"].ratio)


TECHNIQUE = CircularFlounce
