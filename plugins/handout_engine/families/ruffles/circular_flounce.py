"""A flounce cut as a ring or as arcs: smooth along its seam, full at its hem, never gathered."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.angles import Angle, arc, cosine, sine
from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import angle, count
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import more_than, ways
from handout_engine.drawing.scene import Point, Scene
from handout_engine.families.ruffles.flounces import (
    CLOSED,
    Flounce,
    add_flounce_supplies,
    at_corner,
    sector,
    sewn_sector,
)
from handout_engine.families.ruffles.flounces_drawing import cut_outline
from handout_engine.families.ruffles.flutes_drawing import flounce_hanging
from handout_engine.shared.hems import hem_step
from handout_engine.working.workings import Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet

MOST_PIECES = 24
LEAST_TURN = 20
"""In degrees."""
HALF_TURN = constant("half a turn", Angle(Fraction(180)), GEOMETRY)
FULL_TURN = Angle(Fraction(360))


class CircularFlounce(Flounce):
    """A flounce of one or more rings or arcs."""

    title = "Circular flounce"
    family = "ruffles"
    summary = (
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
        return self.pieces == 1 and self.turn == FULL_TURN and self.ends == CLOSED

    @value("seam line of all pieces")
    def whole_seam_line(self) -> Length:
        """The edge, and what the joins and the hems of open ends take."""
        if self.uncut:
            return self.edge
        if self.ends == CLOSED:
            return self.edge + 2 * self.pieces * self.join_allowance
        return self.edge + 2 * self.end_hem + 2 * (self.pieces - 1) * self.join_allowance

    @value("seam line of each piece")
    def seam_line(self) -> Length:
        """All pieces are alike."""
        return self.whole_seam_line / self.pieces

    @value("radius of the seam line")
    def seam_radius(self) -> Length:
        """So that its arc is as long as the seam line."""
        return self.seam_line / arc(self.turn)

    @check
    def an_allowance_lies_inside_the_seam_line(self) -> None:
        """Refuse a seam line that is too tight for its allowance."""
        if self.seam_radius <= self.edge_allowance:
            lacking = (self.edge_allowance * arc(self.turn) - self.seam_line) * self.pieces
            way = ways(
                more_than(self, "edge", self.edge + lacking, "more than {} of edge"),
                "a smaller turn" if self.pieces == 1 else "fewer pieces, or a smaller turn",
            )
            raise RefusalError(
                f"the seam line would have a radius of {TAPE.both(self.seam_radius)}, not more "
                f"than the edge_allowance {TAPE.say(self.edge_allowance)}; use {way}",
                "edge",
            )

    @value("inner radius to cut")
    def inner_radius(self) -> Length:
        """The allowance lies inside the seam line."""
        return self.seam_radius - self.edge_allowance

    @value("outer radius to cut")
    def outer_radius(self) -> Length:
        """The depth and the hem lie outside it."""
        return self.seam_radius + self.depth + self.hem_taken.hem_allowance

    @value("from inner to outer cut edge")
    def cut_depth(self) -> Length:
        """What is measured of each piece once it is cut."""
        return self.outer_radius - self.inner_radius

    @value("fullness at the hem")
    def hem_fullness(self) -> Ratio:
        """Two arcs of one angle are as long as their radii."""
        return (self.seam_radius + self.depth) / self.seam_radius

    @value("finished hem, all pieces")
    def hem_line(self) -> Length:
        """So much of it hangs from the edge."""
        return self.edge * self.hem_fullness

    @value("each piece, across the cloth")
    def piece_across(self) -> Length:
        """A whole circle's width, or that between the ends of a shallow arc."""
        if self.turn >= HALF_TURN:
            return 2 * self.outer_radius
        return 2 * self.outer_radius * sine(self.turn / 2)

    @value("each piece, along the cloth")
    def piece_along(self) -> Length:
        """From the lowest point up to the ends: the outer ones of a deep arc, else the inner."""
        if self.turn == FULL_TURN:
            return 2 * self.outer_radius
        if self.turn > HALF_TURN:
            return self.outer_radius - self.outer_radius * cosine(self.turn / 2)
        return self.outer_radius - self.inner_radius * cosine(self.turn / 2)

    @check
    def each_piece_fits_the_cloth(self) -> None:
        """Refuse rings and arcs that are wider than the cloth."""
        if self.piece_across > self.usable_width:
            raise RefusalError(
                f"each piece is {TAPE.both(self.piece_across)} across and the cloth only "
                f"{TAPE.both(self.usable_width)} between its selvages; use "
                f"{ways(self._smaller_arcs(), 'wider cloth')}",
                "pieces",
            )

    def _smaller_arcs(self) -> str:
        """The fewest arcs of the same fullness that fit on the cloth; empty where none do."""
        for number in range(2, MOST_PIECES // self.pieces.number + 1):
            turn = self.turn / number
            if turn < LEAST_TURN:
                break
            arcs = self.with_inputs(pieces=self.pieces * number, turn=turn)
            if turn <= HALF_TURN and arcs.piece_across <= self.usable_width:
                pieces = f"pieces: {arcs.pieces} with turn: {float(turn):g} deg"
                return f"smaller arcs of the same fullness, {pieces}"
        return ""

    @value("pieces in all")
    def pieces_in_all(self) -> Count:
        """Those of every flounce that is made."""
        return self.pieces * self.make

    @value("from one clip in the allowance to the next", basis=PRACTICE)
    def clips_apart(self) -> Length:
        """Close enough for the inner edge to open out straight."""
        return 2 * self.edge_allowance

    def cut(self, sheet: Worksheet) -> None:
        """The rings or arcs."""
        inner, outer, turn = float(self.inner_radius), float(self.outer_radius), float(self.turn)
        outline = sector(inner, outer, turn)
        piece = Piece(
            "flounce",
            "flounce cloth",
            self.pieces_in_all.number,
            sheet["piece_along"],
            sheet["piece_across"],
            Grain.CROSS,
            outline=at_corner(outline),
            seam_outline=self._sewn(outline),
            whole=self.uncut,
        )
        sheet.pieces.append(piece)
        sheet.seams.append(Seam("flounce to edge", self.edge_allowance))

    def _sewn(self, outline: tuple[Point, ...]) -> tuple[Point, ...]:
        """The line it is sewn on, in the coordinates of its piece; none where its ends differ."""
        inset = self._inset()
        if inset is None:
            return ()
        seam = float(self.seam_radius)
        left, top = (min(each) for each in zip(*outline, strict=True))
        sewn = sewn_sector(seam, seam + float(self.depth), float(self.turn), inset)
        return tuple((x - left, y - top) for x, y in sewn)

    def _inset(self) -> float | None:
        """How far inside its ends each piece is sewn, in mm; None where the ends differ."""
        if self.uncut:
            return 0.0
        if self.ends == CLOSED:
            return float(self.join_allowance)
        if self.pieces == 1 or self.end_hem == self.join_allowance:
            return float(self.end_hem)
        return None

    def sew(self, sheet: Worksheet) -> None:
        """Cut, joined, stay-stitched, sewn on flat, hung and hemmed."""
        add_flounce_supplies(sheet, "a beam or a string and pencil to draw the arcs")
        sheet.trial(
            "Cut a quarter of the ring from paper or muslin, sew it to a straight scrap.",
            "the ripples are as deep as you want; {hem_fullness} lengths of hem hang from "
            "each length of edge.",
        )
        shape = "ring" if self.turn == FULL_TURN else "arc"
        plural = "" if self.pieces_in_all == 1 else "s"
        sheet.step(
            f"Draw {{pieces_in_all}} {shape}{plural} on the cloth: from one centre an inner line "
            "at {inner_radius} and an outer line at {outer_radius}. Cut on both lines.",
            "from inner to outer cut edge it is {cut_depth} everywhere.",
        )
        if self.turn == FULL_TURN and not self.uncut:
            sheet.step("Slit each ring along the lengthwise grain, from outer to inner edge.")
        if self.pieces > 1 or (self.ends == CLOSED and not self.uncut):
            sheet.step(
                "Join the pieces end to end, right sides together, with {join_allowance} "
                "allowance, and finish the joins."
            )
        sheet.step(
            "Stay-stitch the inner edge: a row of short stitches a thread's width nearer to "
            "the raw edge than the seam line at {edge_allowance}."
        )
        sheet.step(
            "Clip the allowance of the inner edge every {clips_apart} up to the stay stitching.",
            "opened straight, the stay stitching measures {whole_seam_line} from end to end.",
        )
        if self.ends != CLOSED:
            sheet.step("Hem each open end, {end_hem}.")
        sheet.step(
            "Sew flounce and edge right sides together, {edge_allowance} from the raw edges.",
            "it lies smooth along the seam, neither stretched nor eased.",
        )
        sheet.step(
            "Let it hang for a day, since parts of it are on the bias and drop. Trim the lower "
            "edge level."
        )
        sheet.step(hem_step(self.hem), "it hangs {depth} below the seam all round.")

    def draw(self, sheet: Worksheet) -> None:
        """The flounce hanging, and one piece to cut."""
        radii = sheet["inner_radius"], sheet["seam_radius"], sheet["outer_radius"]
        cut = Scene(
            sentence("Flounce to cut"),
            sheet.sentence(
                "Inner radius {inner_radius}, seam line {seam_radius}, outer radius "
                "{outer_radius}; an arc of {turn}."
            ),
            cut_outline(radii, float(self.turn), slit=not self.uncut),
        )
        full = float(self.hem_fullness)
        hanging = Scene(
            sentence("Circular flounce, finished"),
            sheet.sentence("It hangs {depth} deep from an edge of {edge}."),
            flounce_hanging(sheet["edge"], sheet["depth"], full, full),
        )
        caption = sheet.sentence(
            "The finished flounce: smooth at the seam, fullness {hem_fullness} at the hem."
        )
        outline = sentence("One piece to cut, with its seam line and grain.")
        sheet.pictures.extend(
            (Picture("finished", caption, hanging, True), Picture("outline", outline, cut))
        )


TECHNIQUE = CircularFlounce
