"""Puffing: a strip gathered along both long edges and let in between two straight edges."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import length, ratio
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line, Scene
from handout_engine.families.ruffles.edge_seams import (
    EdgeSeamInputs,
    add_edge_seam_steps,
    note_edge_line,
)
from handout_engine.families.ruffles.puffing_strip_drawing import puffed
from handout_engine.shared.gathering import (
    GatherInputs,
    note_gathered_length,
    note_gathered_strips,
    note_rows,
    strip_piece,
)
from handout_engine.shared.gathering_drawing import LOWER_EDGE, UPPER_EDGE
from handout_engine.shared.gathering_pictures import quarters_picture, strips_picture
from handout_engine.shared.gathering_steps import (
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Mark, Picture, Seam
from handout_engine.working.worksheet import Worksheet


class PuffingStrip(EdgeSeamInputs, GatherInputs, Technique):
    """A gathered insertion."""

    title: ClassVar[str] = "Puffing strip"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "A strip gathered along both long edges and let in as an insertion between two edges."
    )

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

    def whole(self) -> Worksheet:
        """Cut width, strips, cloth, rows along both edges and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        cloth = self.cloth()
        width = sheet.note("cut_width", "puffing strip, cut width",
                           self.width + self.loft + 2 * self.edge_allowance,
                           "{width} + {loft} + 2 × {edge_allowance}")  # fmt: skip
        note_gathered_length(sheet)
        note_gathered_strips(sheet, cloth)
        line = note_edge_line(sheet)
        rows = note_rows(sheet, line, _room(sheet, line), self.rows_apart)
        marks = tuple(Mark(f"{row.label}, along each edge", row.length) for row in rows)
        sheet.pieces.append(strip_piece(sheet, "puffing strip", "puffing cloth", marks=marks))
        sheet.seams.append(Seam("puffing to each edge", self.edge_allowance))
        note_cloth(sheet, "puffing cloth", cloth)
        add_gathering_supplies(sheet)
        add_sample(sheet, width, "a strip")
        _add_steps(sheet)
        _draw(sheet, rows)
        return sheet


def _room(sheet: Worksheet, line: Value) -> Value:
    """What the rows of one edge may take: up to its raw edge, or half of what lies inside."""
    half = sheet.note("half_strip", "half of the cut strip", sheet["cut_width"].length / 2,
                      "{cut_width} / 2")  # fmt: skip
    inside = sheet.note("half_inside", "half of what lies between the seams",
                        half.length - sheet["edge_allowance"].length,
                        "{half_strip} - {edge_allowance}")  # fmt: skip
    return min(line, inside, key=lambda value: value.length)


def _add_steps(sheet: Worksheet) -> None:
    add_washing_step(sheet)
    sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
    add_joining_steps(sheet, "", "puffing")
    sheet.step(
        "Along both long edges run two rows of long stitches, {first_row} and {second_row} from "
        "the raw edge, all in the same direction. Mark the quarters of the strip on both edges, "
        "straight across from each other, and the quarters of the two edges it is let in between."
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


def _draw(sheet: Worksheet, rows: tuple[Value, Value]) -> None:
    cut = sheet["cut_width"]
    lower = [
        sheet.note(f"{name}_lower", f"{row.label}, along the lower edge", cut.length - row.length,
                   "{cut_width} - {row}", row=row)
        for name, row in zip(("second_row", "first_row"), reversed(rows), strict=True)
    ]  # fmt: skip
    rules = [Rule(Line.GATHER, row) for row in (*rows, *lower)]
    strip = FlatStrip(sentence("puffing strip"), cut, sheet["strip_length"], rules)
    finished = Scene(
        sentence("Puffing strip, let in"),
        sentence("Puffing {width} wide between two edges {edge} long.",
                 width=sheet["width"], edge=sheet["edge"]),
        puffed(sheet["edge"], sheet["width"], float(sheet["fullness"].ratio)),
    )  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The puffing let in between two edges."), finished, True),
            strips_picture([strip], "One strip, with gathering rows along both edges."),
            quarters_picture(sheet, (UPPER_EDGE, LOWER_EDGE)),
        )
    )


TECHNIQUE = PuffingStrip
