"""Puffing: a strip gathered along both long edges and let in between two straight edges."""

from __future__ import annotations

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.inputs import length, ratio
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drawing.scene import Line, Scene
from handout_engine.families.ruffles.edge_seams import add_edge_seam_steps
from handout_engine.families.ruffles.puffing_strip_drawing import puffed
from handout_engine.families.ruffles.seamed_ruffle import SeamedRuffle
from handout_engine.shared.gathering import GatheringRows, strip_piece
from handout_engine.shared.gathering_drawing import LOWER_EDGE, UPPER_EDGE
from handout_engine.shared.gathering_pictures import quarters_picture, row_rules, strip_picture
from handout_engine.shared.gathering_steps import add_strip_steps
from handout_engine.shared.strips import Strips
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.workings import Mark, Picture, Seam
from handout_engine.working.worksheet import Worksheet


class PuffingStrip(SeamedRuffle):
    """A gathered insertion."""

    title = "Puffing strip"
    family = "ruffles"
    summary = "A strip gathered along both long edges and let in as an insertion between two edges."

    width = length(
        "finished width", "Between its two seams, lying flat.", "1 in", ("1/4 in", "20 in")
    )
    fullness = ratio(
        "fullness",
        "Length of the strip before gathering, for each length of edge.",
        "1.75",
        ("1", "6"),
        basis=PRACTICE,
    )
    loft = length(
        "loft",
        "Extra width that lets the strip stand up in a puff.",
        "0 in",
        ("0 in", "4 in"),
        basis=PRACTICE,
    )

    @value("puffing strip, cut width")
    def cut_width(self) -> Length:
        """What lies between the seams, what lets it stand up, and both seams."""
        return self.width + self.loft + 2 * self.edge_allowance

    @value("half of the cut strip")
    def half_strip(self) -> Length:
        """The rows of one edge stay on their half."""
        return self.cut_width / 2

    @value("half of what lies between the seams")
    def half_inside(self) -> Length:
        """The room of one edge's rows inside its seam."""
        return self.half_strip - self.edge_allowance

    @group
    def rows(self) -> GatheringRows:
        """The rows of each edge: not past its raw edge, nor past the middle of the strip."""
        room = min(self.edge_line, self.half_inside)
        return GatheringRows(self, self.edge_line, room, self.rows_apart)

    @value("second gathering row, from the raw edge, along the lower edge")
    def second_row_lower(self) -> Length:
        """The inner row of the lower edge, as it is drawn from the upper one."""
        return self.cut_width - self.rows.second_row

    @value("first gathering row, from the raw edge, along the lower edge")
    def first_row_lower(self) -> Length:
        """The outer row of the lower edge."""
        return self.cut_width - self.rows.first_row

    @group
    def strips(self) -> Strips:
        """The strips that join into the puffing."""
        return self.joined_strips(self.cut_width)

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the puffing."""
        return ClothBought(self, "puffing cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The strips, with rows to mark along both edges."""
        rows = self.rows.first_row, self.rows.second_row
        marks = tuple(Mark(f"{row.label}, along each edge", row) for row in rows)
        sheet.pieces.append(strip_piece(sheet, "puffing strip", "puffing cloth", marks=marks))
        sheet.seams.append(Seam("puffing to each edge", self.edge_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """Gathered along both edges, and sewn in between two others, one after the other."""
        add_strip_steps(sheet, "puffing")
        sheet.step(
            "Along both long edges run two rows of long stitches, {first_row} and {second_row} "
            "from the raw edge, all in the same direction. Mark the quarters of the strip on both "
            "edges, straight across from each other, and the quarters of the two edges it is let "
            "in between."
        )
        sheet.step(
            "Match the quarter marks of the first edge, draw up and spread the gathers evenly.",
            "the gathered edge is {edge} long.",
        )
        add_edge_seam_steps(sheet, "no gather is caught askew along the seam.", what="puffing")
        sheet.step(
            "Draw up and sew the second edge alike, with each fold running straight across.",
            "from seam to seam it lies {width} wide, and the marks face each other.",
        )
        sheet.step("Press the seams only, never the puffing.")

    def draw(self, sheet: Worksheet) -> None:
        """The puffing let in, its strip, and its quarters."""
        lower = [Rule(Line.GATHER, sheet[row]) for row in ("second_row_lower", "first_row_lower")]
        rules = [*row_rules(sheet), *lower]
        rows = "One strip, with gathering rows along both edges."
        finished = Scene(
            sentence("Puffing strip, let in"),
            sheet.sentence("Puffing {width} wide between two edges {edge} long."),
            puffed(sheet["edge"], sheet["width"], float(self.fullness)),
        )
        caption = sentence("The puffing let in between two edges.")
        sheet.pictures.extend(
            (
                Picture("finished", caption, finished, True),
                strip_picture(sheet, "puffing strip", rules, rows),
                quarters_picture(sheet, (UPPER_EDGE, LOWER_EDGE)),
            )
        )


TECHNIQUE = PuffingStrip
