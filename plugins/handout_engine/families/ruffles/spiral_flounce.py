"""A flounce cut as one spiral: very full where it begins, less and less full toward its end."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.inputs import length
from handout_engine.amounts.lengths import FINEST, Length, from_float
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_most, more_than, ways
from handout_engine.drawing.scene import Point, Scene
from handout_engine.families.ruffles.flounces import (
    CLOSED,
    Flounce,
    Spiral,
    add_flounce_supplies,
    at_corner,
    extent,
)
from handout_engine.families.ruffles.flounces_drawing import cut_spiral
from handout_engine.families.ruffles.flutes_drawing import flounce_hanging
from handout_engine.shared.hems import hem_step
from handout_engine.working.workings import Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

MOST_TURNS = 12
HALVINGS = 24
"""So often is the search for the most turns halved: to a millionth of a turn."""


class SpiralFlounce(Flounce):
    """A flounce that unrolls from a spiral without a join."""

    title = "Spiral flounce"
    family = "ruffles"
    summary = (
        "Cut as one spiral without a join; it ripples most where it begins and less to its end."
    )
    known_by = "outline"

    start = length(
        "first radius",
        "From the centre to the seam line where the spiral begins; smaller is fuller.",
        "1 1/2 in",
        ("1/4 in", "20 in"),
        basis=PRACTICE,
    )

    @check
    def the_allowance_lies_inside_the_first_radius(self) -> None:
        """Refuse a spiral that begins too near its centre."""
        if self.start <= self.edge_allowance:
            raise RefusalError(
                f"start {TAPE.say(self.start)} leaves no cloth inside the edge_allowance "
                f"{TAPE.say(self.edge_allowance)}; use "
                f"{more_than(self, 'start', self.edge_allowance)}",
                "start",
            )

    @value("first radius to cut")
    def inner_radius(self) -> Length:
        """The allowance lies inside the seam line."""
        return self.start - self.edge_allowance

    @value("seam line with its ends")
    def seam_line(self) -> Length:
        """The edge, and what both ends take where they are joined or hemmed."""
        return self.edge + 2 * (self.join_allowance if self.ends == CLOSED else self.end_hem)

    @value("cut depth")
    def cut_depth(self) -> Length:
        """By as much each turn lies outside the one before."""
        return self.edge_allowance + self.depth + self.hem_taken.hem_allowance

    @property
    def sewn(self) -> Spiral:
        """Its seam line."""
        return Spiral(float(self.start), float(self.cut_depth))

    @property
    def cut_line(self) -> Spiral:
        """The line it is cut on."""
        return Spiral(float(self.inner_radius), float(self.cut_depth))

    @drafted
    def turned(self) -> float:
        """How often the seam line turns until it is long enough."""
        return self.sewn.turns_for(float(self.seam_line))

    @check
    def the_turns_can_be_drawn(self) -> None:
        """Refuse more turns than anyone draws."""
        if self.turned > MOST_TURNS:
            raise RefusalError(
                f"the spiral would turn {self.turned:.1f} times, more than {MOST_TURNS}; cut "
                "several shorter ones, or use a larger start",
                "start",
            )

    @value("turns of the spiral", basis=DRAWN)
    def turns(self) -> Ratio:
        """As the seam line is drawn."""
        return Ratio(Fraction(round(self.turned * FINEST), FINEST))

    @value("quarter turns of the line to draw")
    def drawn_quarters(self) -> Count:
        """A turn past the flounce, whose outer edge the line is by then."""
        return (4 * (self.turns + 1)).rounded_up()

    @value("turns of the line to draw")
    def drawn_turns(self) -> Ratio:
        """It is drawn quarter turn by quarter turn."""
        return self.drawn_quarters / 4

    @value("seam radius at the end")
    def end_radius(self) -> Length:
        """As much farther out as it has turned."""
        return self.start + self.turns * self.cut_depth

    @value("fullness at the hem where it begins")
    def first_fullness(self) -> Ratio:
        """There the hem lies farthest outside its seam line, for its radius."""
        return (self.start + self.depth) / self.start

    @value("fullness at the hem where it ends")
    def last_fullness(self) -> Ratio:
        """The larger the radius, the less full."""
        return (self.end_radius + self.depth) / self.end_radius

    @drafted
    def outline(self) -> tuple[Point, ...]:
        """What is cut of it."""
        return _outline(self.cut_line, self.turned)

    @value("spiral, across the cloth", basis=DRAWN)
    def piece_across(self) -> Length:
        """As wide as its outline."""
        return from_float(extent(self.outline)[0])

    @value("spiral, along the cloth", basis=DRAWN)
    def piece_along(self) -> Length:
        """As high as its outline."""
        return from_float(extent(self.outline)[1])

    @check
    def it_fits_the_cloth(self) -> None:
        """Refuse a spiral that is wider than the cloth."""
        if self.piece_across > self.usable_width:
            longest = self.edge + self._longest_line() - self.seam_line
            several = at_most(self, "edge", longest, "several spirals, each for at most {} of edge")
            raise RefusalError(
                f"the spiral is {TAPE.both(self.piece_across)} across and the cloth only "
                f"{TAPE.both(self.usable_width)} between its selvages; use "
                f"{ways(several, 'wider cloth')}",
                "edge",
            )

    def _longest_line(self) -> Length:
        """The longest seam line whose spiral is no wider than the cloth; nothing where none is."""
        low, high = 0.0, float(MOST_TURNS)
        for _ in range(HALVINGS):
            middle = (low + high) / 2
            wide, _ = extent(_outline(self.cut_line, middle))
            low, high = (middle, high) if wide <= float(self.usable_width) else (low, middle)
        return from_float(self.sewn.length(low))

    def cut(self, sheet: Worksheet) -> None:
        """The spiral."""
        left, top = (min(each) for each in zip(*self.outline, strict=True))
        piece = Piece(
            "spiral",
            "flounce cloth",
            self.make.number,
            sheet["piece_along"],
            sheet["piece_across"],
            Grain.CROSS,
            outline=at_corner(self.outline),
            seam_outline=tuple((x - left, y - top) for x, y in self._sewn_outline()),
        )
        sheet.pieces.append(piece)
        sheet.seams.append(Seam("flounce to edge", self.edge_allowance))

    def _sewn_outline(self) -> tuple[Point, ...]:
        """Its seam line and its hem, so far inside both ends as they are turned or joined."""
        inset = float(self.join_allowance if self.ends == CLOSED else self.end_hem)
        hem = Spiral(float(self.start + self.depth), float(self.cut_depth))
        seam = self.sewn.within(self.turned, inset)
        return (*hem.within(self.turned, inset), *reversed(seam))

    def sew(self, sheet: Worksheet) -> None:
        """Drawn, cut, stay-stitched, sewn on flat, hung and hemmed."""
        add_flounce_supplies(sheet, "paper as large as the spiral, to draw it on first")
        sheet.trial(
            "Cut the first turn from paper and hang it from a straight strip.",
            "it ripples as much as you want where the flounce begins; fullness there is "
            "{first_fullness}.",
        )
        sheet.step(
            "Draw the line on paper: begin {inner_radius} from the centre and come {cut_depth} "
            "farther out with each turn, a quarter of that with each quarter turn, for "
            "{drawn_turns} turns. One line is both edges, the inner one first and a turn later the "
            "outer one, so it runs more than a turn past the end of the flounce.",
            "each turn lies {cut_depth} outside the one before it, everywhere.",
        )
        sheet.step(
            "Where the line begins, rule straight out to its next turn: that is one end of the "
            "flounce. Draw the seam line {edge_allowance} outside the line, measure {seam_line} "
            "along it from that end, and rule straight out again: that is the other end.",
            "both ends are {cut_depth} long, and the other end lies {turns} turns after the first.",
        )
        sheet.step(
            "Lay the paper on the cloth, trace it, and cut both ends and along the line, from the "
            "beginning of the flounce until the line is its outer edge at the other end.",
            "a single strip comes free, {cut_depth} deep from end to end.",
        )
        sheet.step(
            "Stay-stitch the inner edge, a thread's width nearer to the raw edge than its seam "
            "line at {edge_allowance}, and clip its allowance up to the stitching, closest "
            "together where the spiral begins.",
            "opened straight, the stay stitching measures {seam_line}.",
        )
        sheet.step(
            "Trim both ends square and join them with {join_allowance} allowance."
            if self.ends == CLOSED
            else "Taper or square the two ends, and hem each, {end_hem}."
        )
        sheet.step(
            "Sew flounce and edge right sides together, {edge_allowance} from the raw edges."
        )
        sheet.step("Let it hang for a day, then trim the lower edge level.")
        sheet.step(hem_step(self.hem), "it hangs {depth} below the seam from end to end.")

    def draw(self, sheet: Worksheet) -> None:
        """The flounce hanging, and the spiral to cut."""
        measures = sheet["inner_radius"], sheet["start"], sheet["cut_depth"]
        cut = Scene(
            sentence("Spiral to cut"),
            sheet.sentence(
                "It begins {inner_radius} from the centre and widens by {cut_depth} with each turn."
            ),
            cut_spiral(self.cut_line, self.turned, measures),
        )
        first, last = float(self.first_fullness), float(self.last_fullness)
        hanging = Scene(
            sentence("Spiral flounce, finished"),
            sheet.sentence("It hangs {depth} deep from an edge of {edge}."),
            flounce_hanging(sheet["edge"], sheet["depth"], first, last),
        )
        caption = sheet.sentence(
            "Fullness at the hem: {first_fullness} where it begins, {last_fullness} where it ends."
        )
        sheet.pictures.append(Picture("finished", caption, hanging, True))
        sheet.show("outline", "The spiral to cut, drawn to scale.", cut)


def _outline(spiral: Spiral, turns: float) -> tuple[Point, ...]:
    """What is cut: the line so far, and back along the line of the turn before."""
    outer = Spiral(spiral.start + spiral.pitch, spiral.pitch).points(turns)
    return (*outer, *reversed(spiral.points(turns)))


TECHNIQUE = SpiralFlounce
