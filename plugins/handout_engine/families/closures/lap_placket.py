"""A continuous lap: one strip sewn round both edges of a slit, which then lap over one another."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, less_than, ways
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Line
from handout_engine.families.closures.lap_placket_drawing import (
    Placket,
    closed_placket,
    lap_section,
    spread_slit,
)
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.workings import Grain, Piece, Seam, marked
from handout_engine.working.worksheet import Worksheet


class LapPlacket(ClothInputs):
    """One strip for both edges of a slit."""

    title = "Continuous lap placket"
    family = "closures"
    summary = "One strip sewn round both edges of a slit, without a break at its point."

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

    @value("opening below the finished edge")
    def opening(self) -> Length:
        """The seam of the edge takes the rest of the slit."""
        return self.slit - self.edge_allowance

    @check
    def the_lap_leaves_it_open(self) -> None:
        """Refuse a lap as wide as the opening is deep."""
        if self.width >= self.opening:
            raise RefusalError(
                f"width {TAPE.say(self.width)} of the lap is as much as the opening is deep, "
                f"{TAPE.say(self.opening)}, so that the fold stitched across its lower end would "
                f"close it; use {ways(less_than(self, 'width', self.opening), 'a deeper slit')}",
                "width",
            )

    @check
    def the_seam_runs_out_to_the_point(self) -> None:
        """Refuse a seam that would take more at the point than at the edge."""
        if self.at_point > self.seam:
            raise RefusalError(
                f"at_point {TAPE.say(self.at_point)} is more than the seam {TAPE.say(self.seam)}, "
                f"but the seam runs out toward the point; use at most {TAPE.no_more(self.seam)}",
                "at_point",
            )

    @value("from the edge of the strip to the point of the slit")
    def runs_out(self) -> Length:
        """What the seam no longer takes of the garment there."""
        return self.seam - self.at_point

    @check
    def both_girths_are_given(self) -> None:
        """Refuse one girth without the other."""
        if (self.edge_girth is None) != (self.must_pass is None):
            raise RefusalError(
                "to see whether it passes both girths are needed; write edge_girth and must_pass, "
                "or leave both out",
                "edge_girth" if self.edge_girth is None else "must_pass",
            )

    @value("edge when the slit is spread")
    def opened_girth(self) -> Length | None:
        """The edge, and both edges of the opening; None where nothing is to pass."""
        return None if self.edge_girth is None else self.edge_girth + 2 * self.opening

    @value("girth that it needs")
    def needed_girth(self) -> Length | None:
        """What passes, with room; None where nothing is to pass."""
        return None if self.must_pass is None else self.must_pass + self.pass_ease

    @check
    def it_opens_wide_enough(self) -> None:
        """Refuse a slit too short for what must pass."""
        self.both_girths_are_given()
        edge, opened, needed = self.edge_girth, self.opened_girth, self.needed_girth
        if edge is not None and opened is not None and needed is not None and opened < needed:
            least = (needed - edge) / 2 + self.edge_allowance
            deeper = at_least(self, "slit", least, "at least {} of slit")
            raise RefusalError(
                f"slit {TAPE.say(self.slit)} opens the edge to {TAPE.say(opened)}, and "
                f"{TAPE.say(needed)} are needed to pass; use {ways(deeper, 'a wider edge')}",
                "slit",
            )

    @value("strip, cut width")
    def strip_width(self) -> Length:
        """Both halves of the lap, and the edge that is turned under beside the seam."""
        return 2 * self.width + 2 * self.seam

    @value("both edges of the slit, opened out in one line")
    def opened_slit(self) -> Length:
        """From raw edge to point and back."""
        return 2 * self.slit

    @value("strip, cut length", finishes="slit")
    def strip_length(self) -> Length:
        """Along both edges of the slit, and some beyond."""
        return 2 * self.slit + 2 * self.end_allowance

    @value("fold, from the edge that is sewn to the slit")
    def fold_line(self) -> Length:
        """The lap ends there."""
        return self.width + self.seam

    @value("turned under, from that same edge")
    def turned_edge(self) -> Length:
        """As much as the seam takes."""
        return self.strip_width - self.seam

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the strip."""
        return ClothBought(self, "placket cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The strip with its folds, and what its seam takes at either end."""
        width, long = sheet["strip_width"], sheet["strip_length"]
        marks = marked(self.fold_line, self.turned_edge)
        count = self.make.number
        sheet.pieces.append(
            Piece("strip", "placket cloth", count, width, long, Grain.STRAIGHT, marks)
        )
        sheet.seams.append(Seam("strip to slit, at its upper end", self.seam))
        sheet.seams.append(Seam("strip to slit, at its point", self.at_point))

    def sew(self, sheet: Worksheet) -> None:
        """The slit stitched and cut, the strip sewn round it and folded over."""
        sheet.have(
            "fine thread to match", "a fine needle for the cloth", "scissors with sharp points"
        )
        sheet.cautions.append(PINS_AND_IRON)
        _add_sample(sheet)
        add_washing_step(sheet)
        sheet.step(
            "Mark the slit along a thread, {slit} deep from the raw edge. With short stitches sew "
            "{seam} beside it at the raw edge, running in to {at_point} at the point, one stitch "
            "across, and out again on the other side. Cut the slit to its very point, between the "
            "stitches.",
            "opened out, the two edges lie in one line, {opened_slit} long.",
        )
        sheet.step(
            f"Cut {counted(sheet, 'strip')} "
            "{strip_width} wide and {strip_length} long, along the selvage. Turn {seam} "
            "under along one long edge and press.",
            "from that fold to the other edge it is {turned_edge}.",
        )
        sheet.step(
            "Pull the slit straight and lay it on the raw edge of the strip, right sides together, "
            "{end_allowance} of strip beyond both its ends. There the edges are level; at the "
            "point the garment lies {runs_out} inside the edge of the strip. Garment on top, sew "
            "{seam} from the edge of the strip, just beside the short stitches, and push the "
            "garment's folds away from the needle at the point.",
            "the seam is one straight line, {seam} from the edge of the strip all along, and takes "
            "{at_point} of the garment at the point.",
        )
        sheet.step(
            "Press the allowances into the strip, fold it over them, and lay the turned edge just "
            "over the stitching. Slip stitch it down.",
            "the strip is {width} wide from end to end, at the point too.",
        )
        sheet.step(
            "Fold the garment right sides together so that both halves of the strip lie on one "
            "another, and stitch across them at the point, from the seam upward to the outer fold "
            "at a slant, so that the lap cannot turn out."
        )
        sheet.step(
            "Fold the strip under on the side that will lie on top, and let it stand out on the "
            "other. Baste both at the upper edge and trim the ends of the strip level with it.",
            "the edges overlap by {width}, and the opening is {opening} deep below the finished "
            "edge.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The placket closed, spread on its strip, the strip, and one edge cut through."""
        names = ("slit", "opening", "width", "seam", "at_point", "end_allowance")
        placket = Placket(*(sheet[name] for name in names))
        lines = [
            Rule(Line.STITCH, sheet["seam"]),
            Rule(Line.FOLD, sheet["fold_line"]),
            Rule(Line.FOLD, sheet["turned_edge"]),
        ]
        width, long = sheet["strip_width"], sheet["strip_length"]
        strip = FlatStrip(sentence("strip"), width, long, lines, grain_across=False)
        closed = "The placket closed, from the right side; the strip lies behind."
        spread = "The slit spread on the strip, its wrong side up, ready to sew."
        section = "One edge cut through, the strip at the right; its cloth is drawn thick."
        sheet.show("finished", closed, closed_placket(placket), finished=True)
        sheet.show("spread", spread, spread_slit(placket))
        sheet.pictures.append(strips_picture([strip], "The strip with its lines."))
        sheet.show("section", section, lap_section(placket))


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Cut a slit as long as your hand is wide into a scrap, and sew a short strip "
        "{strip_width} wide round it, {seam} from the edge of the strip.",
        "at the point there is no pucker on the right side and no hole, and the finished "
        "lap is {width} wide. A pucker: the garment was not spread straight there.",
    )


TECHNIQUE = LapPlacket
