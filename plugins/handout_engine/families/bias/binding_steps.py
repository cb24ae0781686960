"""The steps, sample and notions that single and double bindings share."""

from __future__ import annotations

from handout_engine.families.bias.binding import ACROSS, BIAS, OPEN, TRIMMED, BindingInputs
from handout_engine.shared.binding_steps import bound_sample
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.worksheet import Worksheet


def add_cutting_steps(sheet: Worksheet, inputs: BindingInputs) -> None:
    """From the cloth to one joined strip."""
    if inputs.grain == ACROSS:
        sheet.step(
            "Across the cloth cut {strips_used} strips {strip_width} wide and "
            "{binding_strip_length} long."
        )
        if sheet["binding_strips"].whole > 1:
            sheet.step(
                "Join them: cross two ends at a right angle, right sides together, sew from corner "
                "to corner, trim to {strip_allowance} and press open.",
                "each joined strip measures {strip_length} from end to end.",
            )
        return
    add_bias_cutting(sheet)


def add_ruling_step(sheet: Worksheet) -> None:
    """Ruling and cutting the strips of a noted piece of cloth."""
    sheet.step(
        "Cut the cloth {across} across and {along} along the selvage, its corners square. Rule it "
        "at 45 degrees into strips {strip_width} wide, beginning with marks {edge_step} from one "
        f"corner along both edges, and cut out {chosen_strips(sheet)}."
    )


def chosen_strips(sheet: Worksheet) -> str:
    """Which of the ruled strips are used, said without their chart: the longest of them."""
    used, every = sheet["strips_used"].whole, sheet["bands"].whole
    if used == every:
        return "the one strip" if used == 1 else "all {strips_used} strips"
    if used == 1:
        return "the longest of them"
    return "{strips_used} of them, the longest"


def add_bias_cutting(sheet: Worksheet) -> None:
    """From the cloth to one joined strip of bias."""
    add_ruling_step(sheet)
    if sheet["strips_used"].whole > 1:
        sheet.step(
            "Join the strips on the grain, right sides together, {strip_allowance} from their "
            "ends, each tip standing out by {tip}; turn a strip end for end where the slants do "
            "not match. Press the seams open.",
            "the strip is {joined_length} long; {length_for_all} is needed.",
        )


def add_sewing_steps(
    sheet: Worksheet, inputs: BindingInputs, sewn: str, closing: str, *, folded: bool = False
) -> None:
    """Sewing the strip to the edge and bringing it round; the two kinds differ in both.

    The ends of a strip that is `folded` are opened out before they are joined.
    """
    corners = (
        " Stop {seam} before a corner, backstitch, fold the strip up so that it makes a slant of "
        "45 degrees, then down along the next side with its fold {binding} beyond the corner of "
        "the stitching, and go on from there."
        if sheet["corners_mitred"].whole
        else ""
    )
    start = (
        "Leave {end_turn} at each end to turn in."
        if inputs.ends == OPEN
        else "Begin in the middle of a side, leaving half of the {tail} tail free."
    )
    sheet.step(sewn + " " + start + corners)
    if inputs.ends != OPEN:
        sheet.step(
            "Leave off so that a hand's width is free. "
            + _joining(inputs.grain, folded)
            + " and sew the rest.",
            "before the last stretch is sewn the strip lies flat on the edge, neither tight nor "
            "loose.",
        )
    if inputs.after == TRIMMED:
        sheet.step("Trim all allowances to {binding}, so that they just fill the binding.")
    turned = " Turn the open ends in first." if inputs.ends == OPEN else ""
    sheet.step(
        "Press the strip away from the edge." + turned + " " + closing,
        "the binding is {binding} wide at the front and covers the first stitching at the back.",
    )


def _joining(grain: str, folded: bool) -> str:
    """Joining the two ends of a binding that goes round."""
    opened = "Open the fold of both ends, cut them " if folded else "Cut both ends "
    slant = "on the grain" if grain == BIAS else "at the same slant of 45 degrees"
    again = ", fold the strip again" if folded else ""
    return (
        f"{opened}{slant} so that they overlap by {{join_takes}}, join them right sides together "
        f"with {{strip_allowance}}{again}"
    )


def add_sample(sheet: Worksheet, inputs: BindingInputs) -> None:
    """A short trial on the real cloth, since thickness takes some of the width."""
    corner = " round one corner" if inputs.corners else ""
    sheet.sample.append(
        bound_sample(
            f"Bind 6 in of a scrap of the real cloth, as thick as the real edge{corner}, with a "
            "strip {width} wide.",
            sheet["strip_width"],
            sheet["binding"],
        )
    )


def add_supplies(sheet: Worksheet) -> None:
    """Notions and cautions."""
    sheet.have("fine thread to match", "pins or clips", "a fine hand needle")
    sheet.have("a long ruler with a 45-degree line", "a removable marker tried on a scrap")
    sheet.cautions.append(PINS_AND_IRON)
