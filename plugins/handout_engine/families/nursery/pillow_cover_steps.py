"""The notions, sample and steps of a pillow cover, by its edge."""

from __future__ import annotations

from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import NOTHING_LOOSE_IN_THE_COT, PINS_AND_IRON
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet

FLANGED, RUFFLED, PLAIN = "flanged", "ruffled", "plain"


def add_supplies(sheet: Worksheet) -> None:
    """The pillow, its ruffle where it has one, notions and cautions."""
    sheet.supplies.append(
        Supply("firm pillow", None, sheet.sentence("{make} of {pillow_width} by {pillow_length}"))
    )
    if sheet["edge"].amount == RUFFLED:
        sheet.supplies.append(
            Supply("ruffle, made first", None, sheet.sentence("to an edge of {ruffle_edge}"))
        )
    sheet.have("fine thread to match", "a removable marker tried on a scrap")
    sheet.cautions.extend((PINS_AND_IRON, NOTHING_LOOSE_IN_THE_COT))


def add_sample(sheet: Worksheet) -> None:
    """What goes wrong first with each edge, tried on scraps."""
    edge = str(sheet["edge"].amount)
    what = {
        FLANGED: "stitch a line {flange} from the edge of two layers",
        RUFFLED: "sew one rounded corner with its ruffle between two layers",
        PLAIN: "turn one corner out",
    }
    wanted = {
        FLANGED: "the two layers have not crept apart: if they have, baste the line first",
        RUFFLED: "the hem of the ruffle lies round the corner without cupping: if it does "
        "not, gather more of it into the corner",
        PLAIN: "it is square, and no allowance shows through",
    }
    sheet.trial(f"From scraps of the cloth {what[edge]}.", wanted[edge] + ".")


def add_steps(sheet: Worksheet) -> None:
    """From the cut pieces to the filled cover."""
    edge = sheet["edge"].amount
    add_washing_step(sheet)
    sheet.step(
        "For each cover cut a front {cut_width} by {front_cut_length}, and two back panels "
        "{cut_width} by {panel_cut_length}."
    )
    if edge == RUFFLED:
        sheet.step(
            "Round the four corners: draw an arc of radius {cut_corner} at each corner "
            "of the front, and cut on it. Cut the outer corners of the back panels to it."
        )
    sheet.step(
        "Hem one edge of each back panel, top to bottom: turn {back_hem} under, then {back_hem} "
        "again, and stitch close to the inner fold.",
        "each panel measures {panel_hemmed} from its raw edge to the hem.",
    )
    if edge == RUFFLED:
        sheet.step(
            "Gather the ruffle to the edge of the front, {ruffle_edge} along its seam, "
            "right sides together, more of it in the corners than along the sides, and "
            "baste it.",
            "it lies inward everywhere, clear of the seam.",
        )
    sheet.step(
        "Lay the back panels on the front, right sides together, raw edges level, so that they lap "
        "in the middle. Pin.",
        "they lap {overlap} from hem to hem, at top and bottom.",
    )
    sheet.step(
        "Sew all round, {seam_allowance} from the edges, twice where the hems lie. Finish the "
        "edges, clip the corners, and turn right side out through the lap.",
        "the cover measures {cover_width} by {cover_length}.",
    )
    if edge == FLANGED:
        sheet.step(
            "Press the edge. Mark a line {flange} from it all round, pin along it through all "
            "layers, and stitch on it, pivoting at the corners.",
            "inside the line it is {inner_width} by {inner_length}.",
        )
    sheet.step("Slip the pillow in, one end after the other.")
