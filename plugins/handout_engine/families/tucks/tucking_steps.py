"""The sample and the steps that tucked panels share, in sewing order."""

from __future__ import annotations

from handout_engine.amounts.lengths import Length
from handout_engine.families.tucks.tuck_rows import AWAY, LEFT, RIGHT, TuckInputs
from handout_engine.families.tucks.tucking import add_supplies
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_preparing(sheet: Worksheet, tucks: TuckInputs) -> None:
    """What to have ready, three trial tucks, and the panel cut and marked."""
    add_supplies(sheet)
    _add_sample(sheet, *tucks.trial)
    _add_cutting_steps(sheet)


def _add_sample(sheet: Worksheet, depth: Length, spacing: Length) -> None:
    """Three trial tucks, and what the scrap must measure before and after them."""
    sheet.sample.append(
        Step(
            sheet.sentence(
                "Cut a scrap of the same cloth {sample_before} wide and a hand long. Mark, stitch "
                "and press three tucks {deep} deep, {apart} from stitching to stitching.",
                deep=depth,
                apart=spacing,
            ),
            sheet.sentence(
                "the scrap is {sample_after} wide. If it is narrower, the tucks were deeper than "
                "{deep} or the cloth was lost in their turns: stitch that much nearer to the fold. "
                "If it is wider, stitch further from it.",
                deep=depth,
            ),
        )
    )


def _add_cutting_steps(sheet: Worksheet) -> None:
    """Washing, cutting, and marking every line from one edge."""
    add_washing_step(sheet)
    sheet.step(
        f"Cut {counted(sheet, 'panel')} "
        "{panel_cut_width} wide and {panel_cut_length} long, the length along the "
        "selvage; straighten both long edges by a drawn thread, since every tuck follows it."
    )
    sheet.step(
        "On the right side mark the lines of the chart at both ends of the panel, each measured "
        "from the left raw edge and never from the line before it, so that no error adds up; join "
        "the marks with a rule, or draw a thread for each fold.",
        "the last line is {last_line} from the left raw edge and {after_last_line} from the right "
        "one.",
    )


def add_tuck_steps(sheet: Worksheet, press: str, tucks: int) -> None:
    """Folding, stitching and pressing equal tucks one after another."""
    sheet.step(
        "Fold wrong sides together along the first fold line, so that its two stitching lines lie "
        "on each other; press the fold. Stitch {tuck_depth} from the fold, from end to end, on the "
        "side that will be seen.",
        "the tuck is {tuck_depth} deep all along, and the panel has become {first_takes} narrower: "
        "{first_sewn} from raw edge to raw edge.",
    )
    if tucks > 1:
        sheet.step(
            "Sew the other tucks in the same way and in the same direction, one after the other. "
            "Press each flat as it was sewn before you fold the next.",
            "from one stitching line to the next it is {tuck_spacing}.",
        )
    add_pressing_step(sheet, press, tucks)


def add_pressing_step(sheet: Worksheet, press: str, tucks: int) -> None:
    """Pressing the finished tucks over, holding them for the seams, and cutting the spare off."""
    left = width_left(sheet, "what the turns of the tucks took")
    sheet.step(
        f"Press the tucks {pressed(press, tucks)}, from the right side over a cloth, then baste "
        "them down across both ends inside the end allowance of {end_allowance}.",
        f"the tucked panel is {left}, some tuck is too deep: measure each, and let that one out.",
    )
    add_trimming_step(sheet)


def width_left(sheet: Worksheet, taken: str) -> str:
    """How wide the tucked panel must be, as the beginning of a sentence on one that is narrower.

    `taken` names what may have gone off its spare; where it has none, nothing may.
    """
    if not has_spare(sheet):
        return "{tucked_width} from raw edge to raw edge. If it is narrower"
    return (
        f"{{worked_width}} from raw edge to raw edge, less {taken}, and at least {{tucked_width}}"
        f"{_cut_out_of(sheet)}. If it is narrower than that"
    )


def add_trimming_step(sheet: Worksheet) -> None:
    """Cutting off what is left of the spare; a piece cut out of the panel leaves it behind."""
    if not has_spare(sheet) or not sheet["side_allowance"].length:
        return
    first = sheet.inputs.get("first_margin")
    if first is not None and first.amount is not None:
        sheet.step(
            "Cut {spare_at_side} off the left edge, and so much off the right one that the panel "
            "is as wide as it is sewn.",
            "it is {tucked_width} from raw edge to raw edge.",
        )
    else:
        sheet.step(
            "Cut what is left of the spare off both long edges in equal strips, along a thread.",
            "the panel is {tucked_width} from raw edge to raw edge, with as much beside the first "
            "tuck as beside the last.",
        )


def has_spare(sheet: Worksheet) -> bool:
    """Whether the panel is worked wider than it is needed."""
    return bool(sheet["spare_width"].length)


def pressed(press: str, tucks: int) -> str:
    """The direction of pressing in words."""
    words = {RIGHT: "all to the right", LEFT: "all to the left"}
    if press in words:
        return words[press]
    both = f"on both sides {'away from' if press == AWAY else 'towards'} the centre"
    return both + (", the middle one with the right half" if tucks % 2 else "")


def _cut_out_of(sheet: Worksheet) -> str:
    """Where the spare stays when a piece is cut out of the panel."""
    out = ", since the piece is cut out of its middle and leaves the spare behind"
    return "" if sheet["side_allowance"].length else out
