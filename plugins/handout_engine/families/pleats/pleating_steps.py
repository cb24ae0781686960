"""The sample, steps and pictures that pleated panels share."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import note_cloth
from handout_engine.families.pleats.pleating import (
    OPEN,
    RING,
    PleatInputs,
    add_panels,
    add_pleat_chart,
    add_pleat_supplies,
    check_gaps,
    note_panels,
)
from handout_engine.families.pleats.pleating_drawing import PLEAT_LINES, pleat_scene
from handout_engine.shared.folds import Fold, FoldedPanel
from handout_engine.shared.folds_drawing import Drawn, chart_scene, finished_scene
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.hems import hem_step
from handout_engine.working.workings import Picture, Step
from handout_engine.working.worksheet import Worksheet


@dataclass(frozen=True)
class PleatRow:
    """A row of pleats: its folds, what one is called, how many folds it has, what shows of it.

    `how` says which way the folds are brought.
    """

    panel: FoldedPanel
    what: str
    folds_each: int
    visible: Value
    how: str


def add_pleat_row(sheet: Worksheet, inputs: PleatInputs, row: PleatRow) -> None:
    """Panels, marking chart, cloth, supplies, sample and steps of a row whose folds are noted.

    Raises RefusalError for folds that lie over each other, or that the cloth cannot hold.
    """
    check_gaps(inputs, row.panel)
    note_panels(sheet, inputs, inputs.cloth())
    add_panels(sheet, inputs)
    add_pleat_chart(sheet, row.panel, row.what, row.folds_each)
    note_cloth(sheet, "cloth", inputs.cloth())
    add_pleat_supplies(sheet)
    add_pleat_sample(sheet, row.visible, row.folds_each)
    add_cutting_steps(sheet, inputs)
    add_folding_steps(sheet, row.how)


def add_pleat_sample(sheet: Worksheet, visible: Value, folds_each: int) -> None:
    """One trial pleat, with as much plain cloth at each side as it shows."""
    before = sheet.note(
        "sample_before", "sample, cut width",
        3 * visible.length + 2 * folds_each * sheet["pleat_depth"].length,
        "3 × {visible} + 2 × {folds} × {pleat_depth}", visible=visible, folds=folds_each,
    )  # fmt: skip
    after = sheet.note(
        "sample_after", "sample, width when it is pleated", 3 * visible.length, "3 × {visible}",
        visible=visible,
    )  # fmt: skip
    sheet.sample.append(
        Step(
            sentence(
                "Cut a scrap of the same cloth {before} wide and a hand long, mark one pleat "
                "{depth} deep in its middle, fold, press and hang it up.",
                before=before, depth=sheet["pleat_depth"],
            ),
            sentence(
                "it is {after} wide where it is folded. If it springs open below, the cloth wants "
                "a deeper pleat, an edge stitched along the fold, or gathers instead.",
                after=after,
            ),
        )
    )  # fmt: skip


def add_cutting_steps(sheet: Worksheet, inputs: PleatInputs) -> None:
    """Washing, cutting, joining, hemming before the pleats are folded, and marking."""
    add_washing_step(sheet)
    sheet.step(
        "For each piece cut {panels} × {panel_cut_width} wide and {panel_cut_length} long, the "
        "length along the selvage."
    )
    if sheet["panels"].whole > 1 or inputs.ends == RING:
        sheet.step(
            f"Join {'into a ring' if inputs.ends == RING else 'side by side'} with "
            "{join_allowance} allowance and press. Where a seam would come on the front of a "
            "pleat, shift the chart along the cloth until it falls on an inner fold.",
            "the joined cloth is {flat_width} " + ("round." if inputs.ends == RING else "wide."),
        )
    if sheet["hem_allowance"].length:
        sheet.step(
            "Hem before you pleat. " + hem_step(inputs.hem),
            "from the upper raw edge to the finished hem it is {hemmed}.",
            hemmed=inputs.pleated_length + inputs.top_allowance,
        )
    start = "the left raw edge" if inputs.ends == OPEN else "one joining seam"
    sheet.step(
        f"Mark the lines of the chart at the upper edge and at the hem, each measured from {start} "
        "and never from the line before it: folds with one colour of thread, placement lines with "
        "another."
    )


def add_folding_steps(sheet: Worksheet, how: str) -> None:
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


@dataclass(frozen=True)
class PleatPictures:
    """What the drawings of a pleated panel are about; `one` is a single pleat with margins."""

    panel: FoldedPanel
    one: Sequence[Fold]
    width: Length
    what: str


def add_pleat_pictures(sheet: Worksheet, about: PleatPictures) -> None:
    """The finished panel, the marking chart, and one pleat enlarged."""
    finished, flat = sheet["pleated_width"], sheet["flat_width"]
    kinds = tuple(PLEAT_LINES[fold.lies] for fold in about.panel.folds)
    drawn = Drawn(about.panel, finished, flat, sheet["edge"], behind=True, kinds=kinds)
    words = sentence(
        "{flat} of flat cloth become {finished} once pleated.", flat=flat, finished=finished
    )
    one = FoldedPanel(about.width, tuple(about.one))
    sheet.pictures.extend(
        (
            Picture("finished", sentence(
                f"{about.what} from the right side, and cut through below; hidden folds dashed."),
                finished_scene(drawn, sentence(f"{about.what}, finished"), words), True),
            Picture("chart", sentence(
                "The joined cloth turned a quarter, its left edge at the top. At the right each "
                "line's distance from that edge, at the left its distance from the centre; the "
                "table has every line."),
                chart_scene(drawn, sentence("Marking chart"), words)),
            Picture("pleat", sentence(
                "One pleat enlarged: flat with its lines, and folded, cut through."),
                pleat_scene(one, sheet["pleat_depth"], sentence("One pleat"),
                            sentence("Each fold takes twice {depth}.",
                                     depth=sheet["pleat_depth"]))),
        )
    )  # fmt: skip
