"""An inverted pleat over an underlay of a second cloth, closed at rest or open by a chosen gap.

The underlay is seen when the pleat opens. Depth is half of it: from the centre of the pleat to the
seam on one side. With a gap at rest the folds of the main cloth stand that far apart and are turned
back by so much less.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import CLOTH, SEWING, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drawing.scene import Line, Tone
from handout_engine.families.pleats.pleating import PleatedInputs
from handout_engine.families.pleats.pleating_drawing import (
    UnderlayPleat,
    underlay_scene,
    underlay_section,
)
from handout_engine.families.pleats.pleating_steps import add_pleat_supplies
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.hems import hem_step
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.workings import Chart, Grain, Piece, Seam, marked
from handout_engine.working.worksheet import Worksheet

MAIN, UNDER = "main cloth", "underlay cloth"
TALLEST = 0.45
"""A long piece is drawn so tall at most, for each length of its width."""


class ContrastUnderlayPleat(PleatedInputs):
    """Two main pieces that meet over an underlay of another cloth."""

    title = "Inverted pleat over a contrast underlay"
    family = "pleats"
    summary = (
        "Two main pieces turned back and sewn to an underlay of a second cloth, which shows when "
        "the pleat opens."
    )

    finished_width = length(
        "finished width",
        "Width with the pleat at rest, between the side seams.",
        "10 in",
        ("6 in", "2 yd"),
    )
    depth = length(
        "depth",
        "Half of the underlay that shows when the pleat is open: from its centre to the seam.",
        "2 in",
        ("1 in", "6 in"),
        basis=PRACTICE,
    )
    gap = length(
        "gap at rest",
        "What shows of the underlay at rest; 0 in when the folds meet.",
        "0 in",
        ("0 in", "4 in"),
    )
    underlay_seam = length(
        "underlay seam",
        "Allowance of the seams between main pieces and underlay.",
        "3/8 in",
        ("1/8 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    underlay_cloth_width = optional_length(
        "underlay cloth width",
        "Width of the underlay's cloth as sold.",
        "the same as the cloth width",
        ("4 in", "120 in"),
        group=CLOTH,
    )

    @value("what shows of the underlay, opened")
    def shows_open(self) -> Length:
        """All of it between its seams."""
        return 2 * self.depth

    @check
    def the_pleat_can_open(self) -> None:
        """Refuse folds that never meet their underlay."""
        if self.gap >= self.shows_open:
            raise RefusalError(
                f"gap {TAPE.say(self.gap)} shows all of the underlay, which is "
                f"{TAPE.say(self.shows_open)} between its seams, so nothing is left to open; use a "
                f"gap of less than {TAPE.no_more(self.shows_open)}, or a depth of more than "
                f"{TAPE.no_less(self.gap / 2)}",
                "gap",
            )

    @check
    def the_underlay_clears_the_side_seams(self) -> None:
        """Refuse an underlay that would be caught in them."""
        if self.shows_open > self.finished_width:
            raise RefusalError(
                f"an underlay of {TAPE.say(self.shows_open)} is wider than finished_width "
                f"{TAPE.say(self.finished_width)}, and its seams would be caught in the side "
                f"seams; use a depth of at most {TAPE.no_more(self.finished_width / 2)}",
                "depth",
            )

    @value("what shows of each main piece")
    def main_shows(self) -> Length:
        """What the gap leaves, on both sides of it."""
        return (self.finished_width - self.gap) / 2

    @value("main piece turned back, from its fold to the seam")
    def turned_back(self) -> Length:
        """The gap at rest takes half of itself at each side."""
        return self.depth - self.gap / 2

    @value("what each main piece is cut wider beyond its fold")
    def extension(self) -> Length:
        """What lies behind, with its seam."""
        return self.turned_back + self.underlay_seam

    @value("each main piece, cut width")
    def main_cut_width(self) -> Length:
        """From its side seam to its seam with the underlay."""
        return self.side_allowance + self.main_shows + self.extension

    @value("underlay, cut width")
    def underlay_cut_width(self) -> Length:
        """With a seam at each side."""
        return self.shows_open + 2 * self.underlay_seam

    @value("whole width pulled open, between the side seams")
    def opened_width(self) -> Length:
        """Both main pieces and the underlay lie flat."""
        return 2 * (self.main_shows + self.turned_back) + self.shows_open

    @value("fold of a main piece, from its inner raw edge")
    def fold_line(self) -> Length:
        """Where it is turned back."""
        return self.extension

    @value("spread flat, from side edge to side edge")
    def spread_width(self) -> Length:
        """What is measured when all three are joined."""
        return self.opened_width + 2 * self.side_allowance

    @value("at rest, from side edge to side edge")
    def rest_width(self) -> Length:
        """What is measured when it is folded."""
        return self.finished_width + 2 * self.side_allowance

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """The cloth of the main pieces, and that of the underlay."""
        under = ClothBought(self, UNDER, "underlay_", self.underlay_cloth_width)
        return ClothBought(self, MAIN, "main_"), under

    def cut(self, sheet: Worksheet) -> None:
        """Three pieces, and what shows at rest and opened."""
        length, count = sheet["panel_cut_length"], self.make.number
        main, under = sheet["main_cut_width"], sheet["underlay_cut_width"]
        pair, fold = "main piece, one of each a mirrored pair", marked(self.fold_line)
        sheet.pieces.append(Piece(pair, MAIN, 2 * count, main, length, Grain.STRAIGHT, fold))
        sheet.pieces.append(Piece("underlay", UNDER, count, under, length, Grain.STRAIGHT))
        sheet.seams.append(Seam("main piece to underlay", self.underlay_seam))
        sheet.seams.append(Seam("seam that holds the pleat", self.top_allowance))
        rows = (
            ("at rest", sheet["finished_width"], sheet["gap"]),
            ("opened", sheet["opened_width"], sheet["shows_open"]),
        )
        headings = ("Pleat", "Whole width", "Underlay that shows")
        sheet.charts.append(Chart("At rest and opened", headings, rows))

    def sew(self, sheet: Worksheet) -> None:
        """Joined and hemmed flat, then folded over the underlay."""
        add_pleat_supplies(sheet)
        sheet.trial(
            "Hold both cloths together against the light and over your hand: press a fold "
            "of the main cloth over a scrap of the underlay.",
            "the underlay does not show through the main cloth, and both shrink alike: "
            "wash a square of each and measure them.",
        )
        add_washing_step(sheet)
        sheet.step(
            "For each piece cut two main pieces, a mirrored pair, {main_cut_width} wide, and one "
            "underlay {underlay_cut_width} wide, all {panel_cut_length} long, the length along the "
            "selvage. Mark the fold of each main piece {fold_line} from its inner raw edge."
        )
        sheet.step(
            "Sew a main piece to each side of the underlay, right sides together, with "
            "{underlay_seam} allowance. Press both allowances away from the underlay.",
            "spread flat it is {spread_width} from side edge to side edge, and the underlay is "
            "{shows_open} between its seams.",
        )
        if self.hemmed.hem_allowance:
            sheet.step(
                "Hem all three together, before the folds are pressed. " + hem_step(self.hem),
                "from the upper raw edge to the finished hem it is {hemmed_length}.",
            )
        rest = "they stand {gap} apart" if self.gap else "they meet at the underlay's centre"
        sheet.step(
            "Fold each main piece on its line, wrong sides together, and bring both folds until "
            f"{rest}. Press, and baste across the upper edge.",
            "from each fold to the seam behind it it is {turned_back}; from side edge to side edge "
            "{rest_width}.",
        )
        sheet.step(
            "Sew the upper edge into its seam with {top_allowance} allowance, and fasten the top "
            "of the pleat with a bar of small stitches across both folds.",
            ("at rest {gap} of the underlay shows" if self.gap else "at rest no underlay shows")
            + "; pulled open {shows_open}.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """At rest and opened, cut through, and its pieces."""
        finished, seam = sheet["finished_width"], sheet["underlay_seam"]
        turned, shown = sheet["turned_back"], sheet["shows_open"]
        drawn = UnderlayPleat(finished, sheet["depth"], sheet["gap"], seam, turned, shown)
        words = sheet.sentence("At rest {gap} of the underlay shows, opened {shows_open}.")
        tall = min(float(self.pleated_length), TALLEST * float(self.finished_width))
        length, main, under = (
            sheet[name] for name in ("panel_cut_length", "main_cut_width", "underlay_cut_width")
        )
        rules = [Rule(Line.STITCH, seam), Rule(Line.FOLD, sheet["fold_line"])]
        inner = sentence("main piece, inner edge at the top")
        flat = [
            FlatStrip(inner, main, length, rules, grain_across=False),
            FlatStrip(
                sentence("underlay"), under, length, rules[:1], Tone.SECOND, grain_across=False
            ),
        ]
        sheet.show(
            "finished",
            "The pleat at rest and opened; its hidden seams dashed.",
            underlay_scene(drawn, tall, sentence("Pleat over an underlay"), words),
            finished=True,
        )
        sheet.show(
            "section",
            "The pleat at rest, cut through; thickness enlarged.",
            underlay_section(drawn, sentence("Pleat cut through"), words),
        )
        sheet.pictures.append(
            strips_picture(flat, "The pieces flat, with their lines; the arrow is the grain.")
        )


TECHNIQUE = ContrastUnderlayPleat
