"""A flounce cut as one spiral: very full where it begins, less and less full toward its end."""

from __future__ import annotations

from fractions import Fraction
from math import ceil
from typing import ClassVar

from handout_engine.amounts.inputs import length
from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, more_than, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Point, Scene
from handout_engine.families.ruffles.flounces import (
    CLOSED,
    FlounceInputs,
    Spiral,
    at_corner,
    extent,
)
from handout_engine.families.ruffles.flounces_drawing import cut_spiral
from handout_engine.families.ruffles.flutes_drawing import flounce_hanging
from handout_engine.shared.hems import hem_step, note_hem
from handout_engine.working.cautions import NOT_SLEEPWEAR, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Picture, Piece, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

MOST_TURNS = 12
HALVINGS = 24
"""So often is the search for the most turns halved: to a millionth of a turn."""
QUARTER_TURN = Fraction(1, 4)
"""The line is drawn in quarter turns, so to a whole number of them."""


class SpiralFlounce(FlounceInputs, ClothInputs, Technique):
    """A flounce that unrolls from a spiral without a join."""

    title: ClassVar[str] = "Spiral flounce"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "Cut as one spiral without a join; it ripples most where it begins and less to its end."
    )
    known_by: ClassVar[str] = "outline"

    start = length(
        "first radius",
        "From the centre to the seam line where the spiral begins; smaller is fuller.",
        "1 1/2 in",
        ("1/4 in", "20 in"),
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Turns, radii, fullness at both ends, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        cloth = self.cloth()
        spiral, turns = _note_spiral(sheet, self)
        _note_fullness(sheet, self)
        _note_piece(sheet, self, spiral, turns, note_usable_width(sheet, cloth))
        sheet.seams.append(Seam("flounce to edge", self.edge_allowance))
        note_cloth(sheet, "flounce cloth", cloth)
        sheet.supplies.append(Supply("paper as large as the spiral, to draw it on first"))
        sheet.have("fine thread to match", "a fine needle for the cloth")
        sheet.cautions.extend((PINS_AND_IRON, NOT_SLEEPWEAR, THIN_COTTON))
        _add_steps(sheet, self)
        _draw(sheet, spiral, turns)
        return sheet


def _note_spiral(sheet: Worksheet, flounce: SpiralFlounce) -> tuple[Spiral, float]:
    """Note seam length, cut depth and turns; returns the cut line's spiral and its turns."""
    if flounce.start <= flounce.edge_allowance:
        tape = Tape(finest=32)
        raise RefusalError(
            f"start {tape.say(flounce.start)} leaves no cloth inside the edge_allowance "
            f"{tape.say(flounce.edge_allowance)}; use "
            f"{more_than(flounce, 'start', flounce.edge_allowance)}",
            "start",
        )
    each_end = sheet["join_allowance" if flounce.ends == CLOSED else "end_hem"]
    line = sheet.note("seam_line", "seam line with its ends", flounce.edge + 2 * each_end.length,
                      "{edge} + 2 × {each_end}", each_end=each_end)  # fmt: skip
    hem = note_hem(sheet, flounce, sheet["depth"])
    depth = sheet.note("cut_depth", "cut depth",
                       flounce.edge_allowance + flounce.depth + hem.length,
                       "{edge_allowance} + {depth} + {hem_allowance}")  # fmt: skip
    seam = Spiral(float(flounce.start), depth.mm)
    turns = seam.turns_for(line.mm)
    if turns > MOST_TURNS:
        raise RefusalError(
            f"the spiral would turn {turns:.1f} times, more than {MOST_TURNS}; cut several shorter "
            "ones, or use a larger start",
            "start",
        )
    sheet.note("turns", "turns of the spiral", Fraction(round(turns * 10**9), 10**9), "",
               basis=DRAWN)  # fmt: skip
    _note_drawn_turns(sheet)
    sheet.note("inner_radius", "first radius to cut", flounce.start - flounce.edge_allowance,
               "{start} - {edge_allowance}")  # fmt: skip
    return Spiral(float(flounce.start - flounce.edge_allowance), depth.mm), turns


def _note_drawn_turns(sheet: Worksheet) -> None:
    """Note how far the line is drawn: a turn past the flounce, whose outer edge it is by then."""
    quarters = ceil((sheet["turns"].ratio + 1) / QUARTER_TURN)
    sheet.note("drawn_turns", "turns of the line to draw", quarters * QUARTER_TURN,
               "{turns} + 1, rounded up to the next {quarter}", quarter=QUARTER_TURN)  # fmt: skip


def _note_fullness(sheet: Worksheet, flounce: SpiralFlounce) -> None:
    """Note the radius at the end, and the fullness at the hem at both ends."""
    turns = sheet["turns"].ratio
    last = sheet.note("end_radius", "seam radius at the end",
                      flounce.start + sheet["cut_depth"].length * turns,
                      "{start} + {turns} × {cut_depth}")  # fmt: skip
    for name, label, radius in (
        ("first_fullness", "fullness at the hem where it begins", sheet["start"]),
        ("last_fullness", "fullness at the hem where it ends", last),
    ):
        sheet.note(name, label, (radius.length + flounce.depth) / radius.length,
                   "({radius} + {depth}) / {radius}", radius=radius)  # fmt: skip


def _note_piece(
    sheet: Worksheet, flounce: SpiralFlounce, spiral: Spiral, turns: float, usable: Value
) -> None:
    outline = _outline(spiral, turns)
    across, along = (from_float(size) for size in extent(outline))
    wide = sheet.note("piece_across", "spiral, across the cloth", across, "", basis=DRAWN)
    high = sheet.note("piece_along", "spiral, along the cloth", along, "", basis=DRAWN)
    if across > usable.length:
        tape = Tape(finest=32)
        longest = (
            flounce.edge + _longest_line(flounce, spiral, usable.length) - sheet["seam_line"].length
        )
        several = at_most(flounce, "edge", longest, "several spirals, each for at most {} of edge")
        raise RefusalError(
            f"the spiral is {tape.both(across)} across and the cloth only "
            f"{tape.both(usable.length)} between its selvages; use {ways(several, 'wider cloth')}",
            "edge",
        )
    left, top = (min(each) for each in zip(*outline, strict=True))
    sewn = tuple((x - left, y - top) for x, y in _sewn_outline(flounce, spiral, turns))
    sheet.pieces.append(
        Piece("spiral", "flounce cloth", flounce.make.number, high, wide, Grain.CROSS,
              outline=at_corner(outline), seam_outline=sewn)
    )  # fmt: skip


def _sewn_outline(flounce: SpiralFlounce, spiral: Spiral, turns: float) -> tuple[Point, ...]:
    """Its seam line and its finished hem, so far inside both ends as they are turned or joined."""
    inset = float(flounce.join_allowance if flounce.ends == CLOSED else flounce.end_hem)
    seam = Spiral(float(flounce.start), spiral.pitch)
    hem = Spiral(float(flounce.start + flounce.depth), spiral.pitch)
    return (*hem.within(turns, inset), *reversed(seam.within(turns, inset)))


def _outline(spiral: Spiral, turns: float) -> tuple[Point, ...]:
    """What is cut: the line so far, and back along the line of the turn before."""
    outer = Spiral(spiral.start + spiral.pitch, spiral.pitch).points(turns)
    return (*outer, *reversed(spiral.points(turns)))


def _longest_line(flounce: SpiralFlounce, spiral: Spiral, usable: Length) -> Length:
    """The longest seam line whose spiral is no wider than the cloth; nothing where none is."""
    seam = Spiral(float(flounce.start), spiral.pitch)
    low, high = 0.0, float(MOST_TURNS)
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        wide, _ = extent(_outline(spiral, middle))
        low, high = (middle, high) if wide <= float(usable) else (low, middle)
    return from_float(seam.length(low))


def _add_steps(sheet: Worksheet, flounce: SpiralFlounce) -> None:
    sheet.sample.append(
        Step(
            sentence("Cut the first turn from paper and hang it from a straight strip."),
            sentence("it ripples as much as you want where the flounce begins; fullness there is "
                     "{first}.", first=sheet["first_fullness"]),
        )
    )  # fmt: skip
    sheet.step(
        "Draw the line on paper: begin {inner_radius} from the centre and come {cut_depth} farther "
        "out with each turn, a quarter of that with each quarter turn, for {drawn_turns} turns. "
        "One line is both edges, the inner one first and a turn later the outer one, so it runs "
        "more than a turn past the end of the flounce.",
        "each turn lies {cut_depth} outside the one before it, everywhere.",
    )
    sheet.step(
        "Where the line begins, rule straight out to its next turn: that is one end of the "
        "flounce. Draw the seam line {edge_allowance} outside the line, measure {seam_line} along "
        "it from that end, and rule straight out again: that is the other end.",
        "both ends are {cut_depth} long, and the other end lies {turns} turns after the first.",
    )
    sheet.step(
        "Lay the paper on the cloth, trace it, and cut both ends and along the line, from the "
        "beginning of the flounce until the line is its outer edge at the other end.",
        "a single strip comes free, {cut_depth} deep from end to end.",
    )
    sheet.step(
        "Stay-stitch the inner edge, a thread's width nearer to the raw edge than its seam line at "
        "{edge_allowance}, and clip its allowance up to the stitching, closest "
        "together where the spiral begins.",
        "opened straight, the stay stitching measures {seam_line}.",
    )
    if flounce.ends == CLOSED:
        sheet.step("Trim both ends square and join them with {join_allowance} allowance.")
    else:
        sheet.step("Taper or square the two ends, and hem each, {end_hem}.")
    sheet.step("Sew flounce and edge right sides together, {edge_allowance} from the raw edges.")
    sheet.step("Let it hang for a day, then trim the lower edge level.")
    sheet.step(hem_step(flounce.hem), "it hangs {depth} below the seam from end to end.")


def _draw(sheet: Worksheet, spiral: Spiral, turns: float) -> None:
    cut = Scene(
        sentence("Spiral to cut"),
        sentence("It begins {inner} from the centre and widens by {depth} with each turn.",
                 inner=sheet["inner_radius"], depth=sheet["cut_depth"]),
        cut_spiral(spiral, turns, (sheet["inner_radius"], sheet["start"], sheet["cut_depth"])),
    )  # fmt: skip
    first, last = (float(sheet[name].ratio) for name in ("first_fullness", "last_fullness"))
    hanging = Scene(
        sentence("Spiral flounce, finished"),
        sentence("It hangs {depth} deep from an edge of {edge}.",
                 depth=sheet["depth"], edge=sheet["edge"]),
        flounce_hanging(sheet["edge"], sheet["depth"], first, last),
    )  # fmt: skip
    caption = sentence(
        "Fullness at the hem: {first} where it begins, {last} where it ends.",
        first=sheet["first_fullness"],
        last=sheet["last_fullness"],
    )
    sheet.pictures.extend(
        (
            Picture("finished", caption, hanging, True),
            Picture("outline", sentence("The spiral to cut, drawn to scale."), cut),
        )
    )


TECHNIQUE = SpiralFlounce
