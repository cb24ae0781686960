"""A continuous lap: one strip sewn round both edges of a slit, which then lap over one another."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, less_than, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth
from handout_engine.drawing.scene import Line
from handout_engine.families.closures.lap_placket_drawing import (
    Placket,
    closed_placket,
    lap_section,
    spread_slit,
)
from handout_engine.shared.buttons import TAPE
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Picture, Piece, Seam, Step
from handout_engine.working.worksheet import Worksheet


class LapPlacket(ClothInputs, Technique):
    """One strip for both edges of a slit."""

    title: ClassVar[str] = "Continuous lap placket"
    family: ClassVar[str] = "closures"
    summary: ClassVar[str] = (
        "One strip sewn round both edges of a slit, without a break at its point."
    )

    slit = length(
        "slit", "How deep it is cut, from the raw edge to its point.", "4 in", ("1 in", "24 in")
    )
    width = length(
        "width of the lap",
        "Finished width of the strip, and what the edges overlap.",
        "1/2 in",
        ("1/4 in", "2 in"),
        basis=PRACTICE,
    )
    edge_girth = optional_length(
        "edge that it opens",
        "Finished length of the neck or other edge, all round.",
        "not looked at",
        ("4 in", "60 in"),
    )
    must_pass = optional_length(
        "what must pass",
        "Girth of the head, or whatever else the opened edge lets through.",
        "not looked at",
        ("4 in", "60 in"),
    )
    pass_ease = length(
        "room to pass",
        "More than that girth, for comfort.",
        "2 cm",
        ("0 cm", "10 cm"),
        group=SEWING,
        basis=PRACTICE,
    )
    seam = length(
        "seam",
        "Allowance between strip and garment; as much is turned under inside.",
        "1/4 in",
        ("1/8 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    at_point = length(
        "at the point",
        "What the seam still takes of the garment at the slit's point.",
        "1/16 in",
        ("1/32 in", "1/4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    edge_allowance = length(
        "edge allowance",
        "Seam of the neck or waist in which the slit begins.",
        "1/4 in",
        ("0 in", "7/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "Strip beyond each end of the slit, trimmed off later.",
        "1/2 in",
        ("1/8 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "How many plackets are made, two for a pair of cuffs.", 1, 200)

    def whole(self) -> Worksheet:
        """Strip, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _note_opening(sheet, self)
        width = sheet.note("strip_width", "strip, cut width", 2 * self.width + 2 * self.seam,
                           "2 × {width} + 2 × {seam}")  # fmt: skip
        long = sheet.note("strip_length", "strip, cut length",
                          2 * self.slit + 2 * self.end_allowance,
                          "2 × {slit} + 2 × {end_allowance}", finishes="slit")  # fmt: skip
        fold = sheet.note("fold_line", "fold, from the edge that is sewn to the slit",
                          self.width + self.seam, "{width} + {seam}")  # fmt: skip
        turned = sheet.note("turned_edge", "turned under, from that same edge",
                            width.length - self.seam, "{strip_width} - {seam}")  # fmt: skip
        marks = tuple(Mark(each.label, each.length) for each in (fold, turned))
        sheet.pieces.append(
            Piece("strip", "placket cloth", self.make.number, width, long, Grain.STRAIGHT, marks)
        )
        sheet.seams.append(Seam("strip to slit, at its upper end", self.seam))
        sheet.seams.append(Seam("strip to slit, at its point", self.at_point))
        note_cloth(sheet, "placket cloth", self.cloth())
        sheet.have(
            "fine thread to match", "a fine needle for the cloth", "scissors with sharp points"
        )
        sheet.cautions.append(PINS_AND_IRON)
        _add_sample(sheet)
        _add_steps(sheet)
        _draw(sheet)
        return sheet


def _note_opening(sheet: Worksheet, inputs: LapPlacket) -> None:
    """Note how deep it opens; refuses a lap too wide, a seam too narrow, too small an opening."""
    opening = inputs.slit - inputs.edge_allowance
    sheet.note("opening", "opening below the finished edge", opening,
               "{slit} - {edge_allowance}")  # fmt: skip
    if inputs.width >= opening:
        raise RefusalError(
            f"width {TAPE.say(inputs.width)} of the lap is as much as the opening is deep, "
            f"{TAPE.say(opening)}, so that the fold stitched across its lower end would close it; "
            f"use {ways(less_than(inputs, 'width', opening), 'a deeper slit')}",
            "width",
        )
    if inputs.at_point > inputs.seam:
        raise RefusalError(
            f"at_point {TAPE.say(inputs.at_point)} is more than the seam {TAPE.say(inputs.seam)}, "
            f"but the seam runs out toward the point; use at most {TAPE.no_more(inputs.seam)}",
            "at_point",
        )
    sheet.note("runs_out", "from the edge of the strip to the point of the slit",
               inputs.seam - inputs.at_point, "{seam} - {at_point}")  # fmt: skip
    _note_passing(sheet, inputs, opening)


def _note_passing(sheet: Worksheet, inputs: LapPlacket, opening: Length) -> None:
    """Where both girths are given, note what passes; refuses a slit too short for it."""
    edge, passing = inputs.edge_girth, inputs.must_pass
    if edge is None and passing is None:
        return
    if edge is None or passing is None:
        missing = "edge_girth" if edge is None else "must_pass"
        raise RefusalError(
            "to see whether it passes both girths are needed; write edge_girth and must_pass, or "
            "leave both out",
            missing,
        )
    opened = sheet.note("opened_girth", "edge when the slit is spread", edge + 2 * opening,
                        "{edge_girth} + 2 × {opening}")  # fmt: skip
    needed = sheet.note("needed_girth", "girth that it needs", passing + inputs.pass_ease,
                        "{must_pass} + {pass_ease}")  # fmt: skip
    if opened.length < needed.length:
        least = (needed.length - edge) / 2 + inputs.edge_allowance
        raise RefusalError(
            f"slit {TAPE.say(inputs.slit)} opens the edge to {TAPE.say(opened.length)}, and "
            f"{TAPE.say(needed.length)} are needed to pass; use "
            f"{ways(at_least(inputs, 'slit', least, 'at least {} of slit'), 'a wider edge')}",
            "slit",
        )


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Cut a slit as long as your hand is wide into a scrap, and sew a short strip "
                "{width} wide round it, {seam} from the edge of the strip.",
                width=sheet["strip_width"],
                seam=sheet["seam"],
            ),
            sentence(
                "at the point there is no pucker on the right side and no hole, and the finished "
                "lap is {lap} wide. A pucker: the garment was not spread straight there.",
                lap=sheet["width"],
            ),
        )
    )


def _add_steps(sheet: Worksheet) -> None:
    add_washing_step(sheet)
    sheet.step(
        "Mark the slit along a thread, {slit} deep from the raw edge. With short stitches sew "
        "{seam} beside it at the raw edge, running in to {at_point} at the point, one stitch "
        "across, and out again on the other side. Cut the slit to its very point, between the "
        "stitches.",
        "opened out, the two edges lie in one line, {both} long.",
        both=2 * sheet["slit"].length,
    )
    sheet.step(
        f"Cut {counted(sheet, 'strip')} "
        "{strip_width} wide and {strip_length} long, along the selvage. Turn {seam} "
        "under along one long edge and press.",
        "from that fold to the other edge it is {turned_edge}.",
    )
    sheet.step(
        "Pull the slit straight and lay it on the raw edge of the strip, right sides together, "
        "{end_allowance} of strip beyond both its ends. There the edges are level; at the point "
        "the garment lies {runs_out} inside the edge of the strip. Garment on top, sew {seam} from "
        "the edge of the strip, just beside the short stitches, and push the garment's folds away "
        "from the needle at the point.",
        "the seam is one straight line, {seam} from the edge of the strip all along, and takes "
        "{at_point} of the garment at the point.",
    )
    sheet.step(
        "Press the allowances into the strip, fold it over them, and lay the turned edge just over "
        "the stitching. Slip stitch it down.",
        "the strip is {width} wide from end to end, at the point too.",
    )
    sheet.step(
        "Fold the garment right sides together so that both halves of the strip lie on one "
        "another, and stitch across them at the point, from the seam upward to the outer fold at a "
        "slant, so that the lap cannot turn out."
    )
    sheet.step(
        "Fold the strip under on the side that will lie on top, and let it stand out on the other. "
        "Baste both at the upper edge and trim the ends of the strip level with it.",
        "the edges overlap by {width}, and the opening is {opening} deep below the finished edge.",
    )


def _draw(sheet: Worksheet) -> None:
    placket = Placket(
        sheet["slit"], sheet["opening"], sheet["width"], sheet["seam"], sheet["at_point"],
        sheet["end_allowance"],
    )  # fmt: skip
    lines = [Rule(Line.STITCH, sheet["seam"]), Rule(Line.FOLD, sheet["fold_line"]),
             Rule(Line.FOLD, sheet["turned_edge"])]  # fmt: skip
    strip = FlatStrip(sentence("strip"), sheet["strip_width"], sheet["strip_length"], lines,
                      grain_across=False)  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The placket closed, from the right side; the strip lies "
                                         "behind."), closed_placket(placket), finished=True),
            Picture("spread", sentence("The slit spread on the strip, its wrong side up, ready to "
                                       "sew."), spread_slit(placket)),
            strips_picture([strip], "The strip with its lines."),
            Picture("section", sentence("One edge cut through, the strip at the right; its cloth "
                                        "is drawn thick."), lap_section(placket)),
        )
    )  # fmt: skip


TECHNIQUE = LapPlacket
