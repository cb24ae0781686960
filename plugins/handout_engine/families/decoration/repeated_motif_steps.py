"""How repeated motifs are marked: from the finished edge, or from the raw edge beyond it."""

from __future__ import annotations

from handout_engine.working.worksheet import Worksheet


def add_base_line(sheet: Worksheet) -> None:
    """The lines that the motifs stand on, from the edge that is there to measure from."""
    allowance, above = sheet["allowance"].length, sheet["above"].length
    middle = above + sheet["motif_height"].length / 2
    if not allowance:
        sheet.step(
            "Press the edge. Baste a line {above} from it, on which all motifs stand, and another "
            "at the height of their centres, {middle} from the edge.",
            middle=middle,
        )
        return
    sheet.step(
        "Press the edge; it is still raw, and will be finished {allowance} inside. Baste a line "
        "{stand} from the raw edge, on which all motifs stand, and another at the height of their "
        "centres, {middle} from the raw edge.",
        stand=allowance + above,
        middle=allowance + middle,
    )


def add_corner_step(sheet: Worksheet) -> None:
    """The squares of the corner motifs, and the centres between them."""
    square = (
        "In each corner mark a square of {corner} for its motif, {allowance} inside both raw edges,"
        if sheet["allowance"].length
        else "Mark a square of {corner} in each corner for its motif,"
    )
    sheet.step(
        square + " and the centre of each side. Mark the centres of the {number} motifs between "
        "them from the chart.",
        "the gaps beside both corners of a side are alike.",
    )


def add_tracing_step(sheet: Worksheet) -> None:
    """Tracing the motifs from the printed sheet."""
    inside = "{allowance} inside the raw edge" if sheet["allowance"].length else "on the edge"
    sheet.step(
        f"Print the sheet at its actual size. Lay a cross on a centre and its line {inside}, and "
        "trace the motif; the ovals stand for it, so draw yours over them first."
    )
