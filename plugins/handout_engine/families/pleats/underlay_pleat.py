"""An inverted pleat over an underlay of a second cloth, closed at rest or open by a chosen gap.

The underlay is seen when the pleat opens. Depth is half of it: from the centre of the pleat to the
seam on one side. With a gap at rest the folds of the main cloth stand that far apart and are turned
back by so much less.
"""

from __future__ import annotations

from dataclasses import replace
from typing import ClassVar

from handout_engine.amounts.inputs import CLOTH, SEWING, length, optional_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line, Tone
from handout_engine.families.pleats.pleating import (
    TAPE,
    PleatedInputs,
    add_pleat_supplies,
    note_cut_length,
)
from handout_engine.families.pleats.pleating_drawing import (
    UnderlayPleat,
    underlay_scene,
    underlay_section,
)
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.hems import hem_step
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Grain, Mark, Picture, Piece, Seam, Step
from handout_engine.working.worksheet import Worksheet

MAIN, UNDER = "main cloth", "underlay cloth"


class ContrastUnderlayPleat(PleatedInputs, Technique):
    """Two main pieces that meet over an underlay of another cloth."""

    title: ClassVar[str] = "Inverted pleat over a contrast underlay"
    family: ClassVar[str] = "pleats"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Three pieces, what shows at rest and open, cloth and steps; raises RefusalError."""
        self._check()
        sheet = Worksheet(technique=self)
        _note_widths(sheet, self)
        note_cut_length(sheet, self)
        _add_pieces(sheet, self)
        note_cloth(sheet, MAIN, self.cloth(), "main_")
        second = self.cloth()
        if self.underlay_cloth_width is not None:
            second = replace(second, width=self.underlay_cloth_width)
        note_cloth(sheet, UNDER, second, "underlay_")
        add_pleat_supplies(sheet)
        _add_sample(sheet)
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet

    def _check(self) -> None:
        """Refuse folds that would never meet their underlay, or be caught in the side seams."""
        if self.gap >= 2 * self.depth:
            raise RefusalError(
                f"gap {TAPE.say(self.gap)} shows all of the underlay, which is "
                f"{TAPE.say(2 * self.depth)} between its seams, so nothing is left to open; use a "
                f"gap of less than {TAPE.no_more(2 * self.depth)}, or a depth of more than "
                f"{TAPE.no_less(self.gap / 2)}",
                "gap",
            )
        if 2 * self.depth > self.finished_width:
            raise RefusalError(
                f"an underlay of {TAPE.say(2 * self.depth)} is wider than finished_width "
                f"{TAPE.say(self.finished_width)}, and its seams would be caught in the side "
                f"seams; use a depth of at most {TAPE.no_more(self.finished_width / 2)}",
                "depth",
            )


def _note_widths(sheet: Worksheet, pleat: ContrastUnderlayPleat) -> None:
    front = sheet.note("main_shows", "what shows of each main piece",
                       (pleat.finished_width - pleat.gap) / 2,
                       "({finished_width} - {gap}) / 2")  # fmt: skip
    turned = sheet.note("turned_back", "main piece turned back, from its fold to the seam",
                        pleat.depth - pleat.gap / 2, "{depth} - {gap} / 2")  # fmt: skip
    sheet.note("extension", "what each main piece is cut wider beyond its fold",
               turned.length + pleat.underlay_seam, "{turned_back} + {underlay_seam}")  # fmt: skip
    sheet.note("main_cut_width", "each main piece, cut width",
               pleat.side_allowance + front.length + turned.length + pleat.underlay_seam,
               "{side_allowance} + {main_shows} + {extension}")  # fmt: skip
    sheet.note("underlay_cut_width", "underlay, cut width",
               2 * pleat.depth + 2 * pleat.underlay_seam,
               "2 × {depth} + 2 × {underlay_seam}")  # fmt: skip
    sheet.note("shows_open", "what shows of the underlay, opened", 2 * pleat.depth, "2 × {depth}")
    sheet.note("opened_width", "whole width pulled open, between the side seams",
               2 * (front.length + turned.length) + 2 * pleat.depth,
               "2 × ({main_shows} + {turned_back}) + {shows_open}")  # fmt: skip
    sheet.note("fold_line", "fold of a main piece, from its inner raw edge",
               turned.length + pleat.underlay_seam, "{extension}")  # fmt: skip


def _add_pieces(sheet: Worksheet, pleat: ContrastUnderlayPleat) -> None:
    fold = sheet["fold_line"]
    sheet.pieces.append(
        Piece("main piece, one of each a mirrored pair", MAIN, 2 * pleat.make.number,
              sheet["main_cut_width"], sheet["panel_cut_length"], Grain.STRAIGHT,
              (Mark(fold.label, fold.length),))
    )  # fmt: skip
    sheet.pieces.append(
        Piece("underlay", UNDER, pleat.make.number, sheet["underlay_cut_width"],
              sheet["panel_cut_length"], Grain.STRAIGHT)
    )  # fmt: skip
    sheet.seams.append(Seam("main piece to underlay", pleat.underlay_seam))
    sheet.seams.append(Seam("seam that holds the pleat", pleat.top_allowance))
    rows = (
        ("at rest", sheet["finished_width"], sheet["gap"]),
        ("opened", sheet["opened_width"], sheet["shows_open"]),
    )
    sheet.charts.append(
        Chart("At rest and opened", ("Pleat", "Whole width", "Underlay that shows"), rows)
    )


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Hold both cloths together against the light and over your hand: press a fold of "
                "the main cloth over a scrap of the underlay."
            ),
            sentence(
                "the underlay does not show through the main cloth, and both shrink alike: wash a "
                "square of each and measure them."
            ),
        )
    )


def _add_steps(sheet: Worksheet, pleat: ContrastUnderlayPleat) -> None:
    add_washing_step(sheet)
    sheet.step(
        "For each piece cut two main pieces, a mirrored pair, {main_cut_width} wide, and one "
        "underlay {underlay_cut_width} wide, all {panel_cut_length} long, the length along the "
        "selvage. Mark the fold of each main piece {fold_line} from its inner raw edge."
    )
    sheet.step(
        "Sew a main piece to each side of the underlay, right sides together, with "
        "{underlay_seam} allowance. Press both allowances away from the underlay.",
        "spread flat it is {spread} from side edge to side edge, and the underlay is {shows_open} "
        "between its seams.",
        spread=sheet["opened_width"].length + 2 * pleat.side_allowance,
    )
    if sheet["hem_allowance"].length:
        sheet.step(
            "Hem all three together, before the folds are pressed. " + hem_step(pleat.hem),
            "from the upper raw edge to the finished hem it is {hemmed}.",
            hemmed=pleat.pleated_length + pleat.top_allowance,
        )
    meet = (
        "until they stand {gap} apart" if pleat.gap else "until they meet at the underlay's centre"
    )
    sheet.step(
        f"Fold each main piece on its line, wrong sides together, and bring both folds {meet}. "
        "Press, and baste across the upper edge.",
        "from each fold to the seam behind it it is {turned_back}; from side edge to side edge "
        "{rest}.",
        rest=pleat.finished_width + 2 * pleat.side_allowance,
    )
    sheet.step(
        "Sew the upper edge into its seam with {top_allowance} allowance, and fasten the top of "
        "the pleat with a bar of small stitches across both folds.",
        ("at rest {gap} of the underlay shows" if pleat.gap else "at rest no underlay shows")
        + "; pulled open {shows_open}.",
    )


def _draw(sheet: Worksheet, pleat: ContrastUnderlayPleat) -> None:
    drawn = UnderlayPleat(
        sheet["finished_width"], sheet["depth"], sheet["gap"], sheet["underlay_seam"],
        sheet["turned_back"], sheet["shows_open"],
    )  # fmt: skip
    words = sentence(
        "At rest {gap} of the underlay shows, opened {open}.", gap=sheet["gap"],
        open=sheet["shows_open"],
    )  # fmt: skip
    tall = min(float(pleat.pleated_length), 0.45 * float(pleat.finished_width))
    flat = [
        FlatStrip(sentence("main piece, inner edge at the top"), sheet["main_cut_width"],
                  sheet["panel_cut_length"],
                  [Rule(Line.STITCH, sheet["underlay_seam"]), Rule(Line.FOLD, sheet["fold_line"])],
                  grain_across=False),
        FlatStrip(sentence("underlay"), sheet["underlay_cut_width"], sheet["panel_cut_length"],
                  [Rule(Line.STITCH, sheet["underlay_seam"])], Tone.SECOND, grain_across=False),
    ]  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The pleat at rest and opened; its hidden seams dashed."),
                    underlay_scene(drawn, tall, sentence("Pleat over an underlay"), words), True),
            Picture("section", sentence("The pleat at rest, cut through; thickness enlarged."),
                    underlay_section(drawn, sentence("Pleat cut through"), words)),
            strips_picture(flat, "The pieces flat, with their lines; the arrow is the grain."),
        )
    )  # fmt: skip


TECHNIQUE = ContrastUnderlayPleat
