"""What a jacket with cut-on sleeves is sewn with, and how."""

from __future__ import annotations

from handout_engine.drafting.garment_steps import WHOLE, add_cloth_step, add_stay_step, easing
from handout_engine.drafting.turned_hems import LowerEdge
from handout_engine.working.cautions import (
    BUTTONS_AS_SMALL_PARTS,
    GARMENT_IS_DAYWEAR,
    MEASURE_THE_BABY,
    NOTHING_UNDER_THE_HARNESS,
    OLD_BUTTONS,
    PINS_AND_IRON,
    RAISED_CLOTH,
)
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet


def add_supplies(sheet: Worksheet) -> None:
    """Notions and cautions."""
    size = sheet.sentence("two pieces {front_facing_width} wide and {front_facing_length} long")
    sheet.supplies.append(Supply("light firm cloth to lay into the front facings", None, size))
    across = sheet.sentence("{button} across")
    sheet.supplies.append(
        Supply("flat buttons for the front", None, across, unless=("button-spacing",))
    )
    sheet.have("fine thread to match")
    sheet.cautions.extend(
        (
            PINS_AND_IRON,
            GARMENT_IS_DAYWEAR,
            MEASURE_THE_BABY,
            RAISED_CLOTH,
            NOTHING_UNDER_THE_HARNESS,
            BUTTONS_AS_SMALL_PARTS,
            OLD_BUTTONS,
        )
    )


def add_steps(sheet: Worksheet, hem: LowerEdge) -> None:
    """From the cloth to the last button."""
    add_cloth_step(sheet)
    sheet.step(
        f"Cut the back and its neck facing, each {WHOLE}, and of fronts and front facings a pair "
        "each. Snip the notches, and mark the centre front from neck to hem, and the hem lines, "
        "{hem_depth} above the lower cut edge and {sleeve_hem} from that of the sleeves.",
        "from the centre front to the cut edge it is {cut_beyond}.",
    )
    add_stay_step(sheet, "the neck of fronts and back")
    sheet.step(
        "Sew fronts to back over shoulder and arm, {seam_allowance} from the edge, the notches at "
        "the shoulder ends on one another. Overcast each edge, and press the seams open.",
        "from the neck point to the hem line of the sleeve it is {over_arm}.",
    )
    sheet.step(
        "Sew the seam under the arm and down the side in one, {seam_allowance} from the edge, with "
        "shorter stitches round the curve. Sew the curve a second time just inside the first row, "
        "and snip the allowance there every fingertip's width, to a thread before the stitches. "
        "Overcast the edges, along the snips too.",
        "from the sleeve's hem line to that of the jacket the seam is {under_arm} long, and the "
        "curve lies flat when the arm is raised.",
    )
    _add_facings(sheet)
    sheet.step(
        "Turn the sleeve ends up by {sleeve_hem}, the raw edge turned under or overcast, and sew "
        "them by hand.",
        "each sleeve measures {sleeve_edge} round its end.",
    )
    sheet.step(
        f"{easing(sheet, hem)}Turn the lower edge up by {{hem_depth}} between the facings, its raw "
        "edge turned under or overcast, and sew it by hand; catch the lower ends of the facings "
        "over it.",
        "from the neck point to the hem it is {finished_length}, and both fronts are alike.",
    )
    sheet.step(
        "Work the buttonholes in the front that will lie on top, lap the fronts centre line on "
        "centre line, and sew the buttons on.",
        "buttoned, the fronts overlap by {front_overlap} and the neck measures {neck_edge}; laid "
        "flat, the chest is {chest_across} across.",
    )


def _add_facings(sheet: Worksheet) -> None:
    sheet.step(
        "Baste the firm cloth to the wrong side of the front facings. Sew the front facings to the "
        "back neck facing at the shoulders, {seam_allowance} from the edge, and press. Turn "
        "{seam_allowance} of the long inner edge under and stitch it, or overcast it.",
        "along its neck edge the whole facing measures {neck_with_fronts}, as the jacket's does.",
    )
    sheet.step(
        "Lay the facing on the jacket, right sides together, centres and shoulder seams on one "
        "another. Sew up one front edge, round the neck and down the other, {seam_allowance} from "
        "the edge, and across the lower ends of the facings on the jacket's hem line."
    )
    sheet.step(
        "Trim the hem behind the facings, grade the allowances, cut the corners off and snip the "
        "neck. Turn the facing in, press the edge, and catch it to the shoulder seams.",
        "each front edge is {front_edge} long, and from it to the centre line it is "
        "{beyond_centre}.",
    )
