"""How button loops are made and sewn in."""

from __future__ import annotations

from handout_engine.families.bias.binding_steps import add_ruling_step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """One loop on a scrap, buttoned until it is known to hold and to let go."""
    sheet.trial(
        "Make one loop {loop_strip} long, baste its ends into a folded scrap with {gap_used} "
        "between them, {end_allowance} deep, and button it ten times.",
        "the button passes without force and does not slip out when the scrap is shaken. "
        "Too tight: add what is missing to the ease; too loose: take it away.",
    )


def add_steps(sheet: Worksheet) -> None:
    """From the strips to the buttons."""
    add_ruling_step(sheet)
    sheet.step(
        "Cut the slanting ends of the strips square. Fold each whole strip lengthwise, right "
        "sides together, stitch {tube} from the fold with short stitches, stretching a little, "
        "and turn it. Press lightly or not at all.",
        "the turned tube is {tube} thick; if it is not, change the width of the strip before you "
        "cut more.",
    )
    sheet.step(
        "Cut the tubes into {loops} loops of {loop_strip}, as the chart says how many from each."
    )
    sheet.step(
        "Mark the seam line on the right side of the edge, and on it the middle and both ends of "
        "each loop from the chart of loops."
        + (" From middle to middle it is {spacing}." if sheet["loops"].whole > 1 else ""),
        "the last middle is {last} from the lower end.",
    )
    sheet.step(
        "Lay each loop on the right side, its bend away from the edge and its seam inward, with "
        "{gap_used} between its ends, the ends {end_allowance} beyond the seam line. Baste on the "
        "seam line.",
        "each loop stands {loop_stands} from the seam line to its outermost point.",
    )
    sheet.step(
        "Lay facing or lining over them, right sides together, sew along the seam line with short "
        "stitches, and once more over the ends. Turn and press, loops outward."
    )
    sheet.step(
        "Lap the other edge as it will be worn, mark each button through the end of its loop, and "
        "sew the buttons on with a shank.",
        "every button passes its loop, and the edges lie flat when all are closed.",
    )
