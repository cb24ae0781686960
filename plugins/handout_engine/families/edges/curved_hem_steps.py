"""The sample and the steps of a curved hem."""

from __future__ import annotations

from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """A quarter of the curve, tried on a scrap."""
    sheet.trial(
        "Cut a scrap with a quarter of this edge, or a part of it, and hem it as below.",
        "its inner edge lies flat without pleats, having lost {quarter_excess} in a "
        "quarter of the edge. If it does not, make the hem shallower or face it.",
    )


def add_steps(sheet: Worksheet, faced: bool) -> None:
    """From the hanging skirt to the pressed hem, in sewing order."""
    sheet.step(
        "Hang the garment for a day, then mark the finished edge level from the floor and trim "
        "{hem_allowance} below it.",
        "the finished edge is {edge} once round.",
    )
    if faced:
        _add_faced(sheet)
    else:
        _add_eased(sheet)
    sheet.step(
        "Press from the wrong side only, lifting the iron, and let it dry before you hang it.",
        "the hem is {hem_depth} deep everywhere, and lies flat on the table.",
    )


def _add_eased(sheet: Worksheet) -> None:
    if sheet["turn"].length:
        sheet.step(
            "Turn {turn} under and press. Run a row of long stitches close to this fold, and mark "
            "the quarters of it and of the garment.",
            "the turned edge is {inner_fold} long, {excess} more than the line it will lie on.",
        )
    else:
        sheet.step(
            "Overcast the raw edge, run a row of long stitches beside it, and mark the quarters of "
            "it and of the garment.",
            "the edge is {inner_fold} long, {excess} more than the line it will lie on.",
        )
    sheet.step(
        "Turn up {hem_depth}, baste near the fold, and pin the quarters to the garment. Draw the "
        "row up quarter by quarter and spread the ease until it lies flat; on wool shrink it with "
        "steam.",
        "each quarter has lost {quarter_excess}, and the inner edge is {line_lies} long.",
    )
    sheet.step("Slip stitch the hem's edge, one thread of the garment at a time.")


def _add_faced(sheet: Worksheet) -> None:
    sheet.step(
        "Cut and join bias strip {facing_width} wide to a length of {facing_length}. Stretch one "
        "edge under the iron and shrink the other until it curves like the hem."
    )
    sheet.step(
        "Sew the stretched edge to the lower edge, right sides together, {facing_seam} from both; "
        "join the ends where they meet. Trim, clip the allowances, and press them to the facing.",
        "the seam is {edge} long once round.",
    )
    sheet.step(
        "Turn the facing up inside, a thread's width of the garment rolling in with it. Turn "
        "{turn} of its upper edge under, ease it flat, and slip stitch."
        if sheet["turn"].length
        else "Turn the facing up inside, a thread's width of the garment rolling in with it, ease "
        "its upper edge flat, and slip stitch.",
        "each quarter of its upper edge has lost {quarter_excess}.",
    )
