"""The sample, steps and pictures that pleated panels share."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.values import sentence
from handout_engine.families.pleats.pleating import OPEN, RING, PleatInputs
from handout_engine.families.pleats.pleating_drawing import PLEAT_LINES, pleat_scene
from handout_engine.shared.folds import Fold, FoldedPanel
from handout_engine.shared.folds_drawing import Drawn, chart_picture, finished_picture
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.hems import hem_step
from handout_engine.working.cautions import LONG_HEM, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def add_pleat_supplies(sheet: Worksheet) -> None:
    """The notions and cautions of pleated work; cloth was added with what to buy of it."""
    sheet.have("fine thread to match", "basting thread of another colour")
    sheet.have("a removable marker tried on a scrap", "pins", "a pressing cloth")
    sheet.cautions.extend((PINS_AND_IRON, THIN_COTTON, LONG_HEM))


def add_pleat_steps(sheet: Worksheet, pleats: PleatInputs, how: str) -> None:
    """Supplies, one trial pleat, and all steps; `how` says which way the folds are brought."""
    add_pleat_supplies(sheet)
    sheet.trial(
        "Cut a scrap of the same cloth {sample_before} wide and a hand long, mark one "
        "pleat {pleat_depth} deep in its middle, fold, press and hang it up.",
        "it is {sample_after} wide where it is folded. If it springs open below, the cloth "
        "wants a deeper pleat, an edge stitched along the fold, or gathers instead.",
    )
    _add_cutting_steps(sheet, pleats)
    _add_folding_steps(sheet, how)


def _add_cutting_steps(sheet: Worksheet, pleats: PleatInputs) -> None:
    """Washing, cutting, joining, hemming before the pleats are folded, and marking."""
    add_washing_step(sheet)
    sheet.step(
        "For each piece cut {panels} × {panel_cut_width} wide and {panel_cut_length} long, the "
        "length along the selvage."
    )
    if pleats.panels > 1 or pleats.ends == RING:
        sheet.step(
            f"Join {'into a ring' if pleats.ends == RING else 'side by side'} with "
            "{join_allowance} allowance and press. Where a seam would come on the front of a "
            "pleat, shift the chart along the cloth until it falls on an inner fold.",
            "the joined cloth is {flat_width} " + ("round." if pleats.ends == RING else "wide."),
        )
    if pleats.hemmed.hem_allowance:
        sheet.step(
            "Hem before you pleat. " + hem_step(pleats.hem),
            "from the upper raw edge to the finished hem it is {hemmed_length}.",
        )
    start = "the left raw edge" if pleats.ends == OPEN else "one joining seam"
    sheet.step(
        f"Mark the lines of the chart at the upper edge and at the hem, each measured from {start} "
        "and never from the line before it: folds with one colour of thread, placement lines with "
        "another."
    )


def _add_folding_steps(sheet: Worksheet, how: str) -> None:
    """Folding, basting, pressing; `how` says which way the folds are brought."""
    sheet.step(
        f"{how} Pin at the upper edge and at the hem.",
        "each fold lies on its placement line, and {pleat_depth} of cloth lies behind it.",
    )
    sheet.step(
        "Baste every pleat from the upper edge down, along its fold, then across the upper edge "
        "inside the allowance. Press from the wrong side, then from the right one over a cloth, "
        "with strips of paper under the folds so that they leave no mark.",
        "the upper edge is {pleated_width} from end to end. Too wide or too narrow: share the "
        "difference out over all pleats, a thread's width on each.",
    )
    sheet.step(
        "Sew the upper edge into its band or seam with {top_allowance} allowance. Take the basting "
        "out last.",
        "between its seams the pleated edge is {finished_width}, and it hangs {pleated_length} "
        "below the seam.",
    )


def add_pleat_pictures(
    sheet: Worksheet, pleats: PleatInputs, one: Sequence[Fold], width: Length
) -> None:
    """The finished panel, the marking chart, and one pleat of so much cloth enlarged."""
    what, panel, depth = pleats.title, pleats.panel, sheet["pleat_depth"]
    finished, flat, edge = sheet["pleated_width"], sheet["flat_width"], sheet["edge"]
    kinds = tuple(PLEAT_LINES[fold.lies] for fold in panel.folds)
    drawn = Drawn(panel, finished, flat, edge, behind=True, kinds=kinds)
    words = sheet.sentence("{flat_width} of flat cloth become {pleated_width} once pleated.")
    twice = sheet.sentence("Each fold takes twice {pleat_depth}.")
    enlarged = FoldedPanel(width, tuple(one))
    hidden = " from the right side, and cut through below; hidden folds dashed."
    chart = (
        "The joined cloth turned a quarter, its left edge at the top. At the right each line's "
        "distance from that edge, at the left its distance from the centre; the table has every "
        "line."
    )
    folded = sentence("One pleat enlarged: flat with its lines, and folded, cut through.")
    scene = pleat_scene(enlarged, depth, sentence("One pleat"), twice)
    sheet.pictures.append(finished_picture(drawn, what, hidden, words))
    sheet.pictures.append(chart_picture(drawn, chart, words))
    sheet.pictures.append(Picture("pleat", folded, scene))
