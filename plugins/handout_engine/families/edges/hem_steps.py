"""The sample and the steps of a straight hem."""

from __future__ import annotations

from handout_engine.amounts.values import sentence
from handout_engine.families.edges.hem_measures import DOUBLE, FACED, ROLLED
from handout_engine.shared.gathering_steps import counted
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """A short length of the hem on a scrap."""
    kind = sheet["hem"].amount
    deep = sheet["roll" if kind == ROLLED else "hem_made"]
    judged = (
        "the roll is even and no thicker than a cord. If it will not roll, trim less or more."
        if kind == ROLLED
        else "no ridge shows on the right side, and the scrap hangs without stiffness. If a ridge "
        "shows, overcast the raw edge instead of turning it under."
    )
    sheet.sample.append(
        Step(
            sentence("On a scrap of the same cloth, as long as your hand, sew this hem {deep} "
                     "deep, wash it and press it.", deep=deep),
            sentence(judged),
        )
    )  # fmt: skip


def add_hem_steps(sheet: Worksheet, grows: bool) -> None:
    """From cutting to the pressed hem, in sewing order."""
    kind = str(sheet["hem"].amount)
    sheet.step(
        f"Cut {counted(sheet, 'panel')} "
        "{panel_cut_length} from top to bottom and {panel_cut_width} from side to "
        "side. Join the side seams, and trim their allowances to half within the hem.",
        "the lower edge is level: from the upper raw edge it is {panel_cut_length} everywhere.",
    )
    if kind == ROLLED:
        _add_rolled(sheet)
    elif kind == FACED:
        _add_faced(sheet)
    else:
        _add_turned(sheet, kind == DOUBLE)
    if grows:
        sheet.step(
            "Later, to let it down: draw the stitching out, wash and press the crease away, and "
            "hem again. All of it adds {most_let_down}, with a double hem of {least_turn} left."
        )


def _add_turned(sheet: Worksheet, double: bool) -> None:
    if double:
        sheet.step("Turn {turn} under along the lower edge, to the wrong side, and press.")
    else:
        sheet.step("Overcast the lower edge without stretching it.")
    sheet.step(
        "Turn up {hem_made} with a gauge, press the fold lightly, and baste near the fold and near "
        "the upper edge of the hem.",
        "from the upper raw edge to the fold it is {edge_line}.",
    )
    sheet.step(
        "Slip stitch the hem, taking one thread of the garment at a time, or stitch it by machine "
        "close to its upper edge. Draw the basting and press.",
        "from the upper seam line to the finished edge it is {finished_length}.",
    )


def _add_rolled(sheet: Worksheet) -> None:
    sheet.step(
        "Trim the edge clean on the thread. Run a short machine stitch {half} from it, or leave "
        "it, and roll the edge between moistened finger and thumb toward the wrong side.",
        half=sheet["roll"].length / 2,
    )
    sheet.step(
        "Whip over the roll with small slanting stitches, the needle under it and never through "
        "it, a finger's width at a time.",
        "the roll has taken {roll}: from the upper seam line to its edge it is {finished_length}.",
    )


def _add_faced(sheet: Worksheet) -> None:
    sheet.step(
        "Cut {make} facings {facing_cut_width} wide, join their ends like the side seams, and "
        "turn {turn} under along the upper edge."
    )
    sheet.step(
        "Sew facing and lower edge right sides together, {facing_seam} from the raw edges. Trim "
        "the facing's allowance to half, press both toward the facing, and stitch them to it close "
        "to the seam.",
        "from the upper raw edge to the seam it is {edge_line}.",
    )
    sheet.step(
        "Turn the facing up inside, the seam a thread's width beyond the edge, press, and slip "
        "stitch its upper edge.",
        "the facing is {hem_made} deep, and the panel {finished_length} from its upper seam line.",
    )
