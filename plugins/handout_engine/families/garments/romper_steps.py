"""What a romper is sewn with, and how: opening, neck and armholes, legs, crotch."""

from __future__ import annotations

from handout_engine.drafting.garment_steps import (
    WHOLE,
    add_cloth_step,
    add_shoulder_step,
    add_side_step,
    add_stay_step,
)
from handout_engine.working.cautions import (
    BUTTONS_AS_SMALL_PARTS,
    FASTENERS_AS_SMALL_PARTS,
    GARMENT_IS_DAYWEAR,
    LOOSE_THREADS,
    MEASURE_THE_BABY,
    OLD_BUTTONS,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.working.workings import BINDINGS, Supply
from handout_engine.working.worksheet import Worksheet

PRESS_FASTENERS, BUTTONS = "press fasteners", "buttons"


def add_supplies(sheet: Worksheet) -> None:
    """Notions and cautions."""
    bound = sheet.sentence("for the neck, {neck_with_bands}, and two armholes, {armhole_edge} each")
    kind = sheet["fastening"].amount
    sheet.supplies.extend(
        (
            Supply("bias binding or bias strips", None, bound, unless=BINDINGS),
            Supply(
                "small flat buttons for the front",
                None,
                sheet.sentence("{button} across"),
                unless=("button-spacing",),
            ),
            Supply(
                f"{kind} for the crotch", sheet["fasteners"], sheet.sentence("{fastener} across")
            ),
        )
    )
    sheet.have("light firm cloth to lay into front bands and crotch facings")
    sheet.have("fine thread to match", "pins", "a removable marker tried on a scrap")
    sheet.cautions.extend(
        (
            PINS_AND_IRON,
            GARMENT_IS_DAYWEAR,
            MEASURE_THE_BABY,
            THIN_COTTON,
            BUTTONS_AS_SMALL_PARTS,
            OLD_BUTTONS,
        )
    )
    if kind == PRESS_FASTENERS:
        sheet.cautions.append(FASTENERS_AS_SMALL_PARTS)
    if sheet["leg_fullness"].ratio > 1:
        sheet.cautions.append(LOOSE_THREADS)


def add_steps(sheet: Worksheet) -> None:
    """From the cloth to the last button."""
    add_cloth_step(sheet)
    sheet.step(
        f"Cut front and back, each {WHOLE}, the leg bands and the crotch facings. Snip the notches "
        "and mark the crotch line on front and back at its notches, the notches of the armholes, "
        "and the centre front from the neck down by {opening}.",
        "from the crotch line to the cut edge below it is {band_end}.",
    )
    add_stay_step(sheet, "the neck and the armholes of front and back")
    _add_front(sheet)
    add_shoulder_step(sheet)
    sheet.step(
        "Bind the neck, or face it with a bias strip, from the edge of one front band to that of "
        "the other.",
        "the neck measures {neck_with_bands} from edge to edge, and {neck_edge} once the bands are "
        "lapped.",
    )
    add_side_step(
        sheet,
        "each side seam is {side_seam} long; laid flat, the seat measures "
        "{seat_across} across where the legs begin.",
    )
    sheet.step(
        "Bind or face both armholes, which measure {armhole_edge} each; a ruffle over the shoulder "
        "goes into this seam, from notch to notch.",
        "from notch to notch over the shoulder it is {shoulder_ruffle_edge}.",
    )
    _add_legs(sheet)
    _add_crotch(sheet)
    sheet.step(
        "Work the buttonholes of the front, and sew the buttons on.",
        "buttoned up, the neck measures {neck_edge}; open, {opened_neck}, enough for the head. "
        "From the neck point to the crotch line the front is {front_reach} long and the back "
        "{back_reach}.",
    )


def _add_front(sheet: Worksheet) -> None:
    sheet.step(
        "On both sides of the centre front draw the line of the band seam, {beyond_centre} away, "
        "and join the two lines across at the lower end of the opening. Cut {cut_away} to each "
        "side of the centre, down to {seam_allowance} above the line across, and from there snip "
        "to a thread before both corners.",
        "a tongue {front_overlap} wide and {seam_allowance} deep is left at the lower end.",
    )
    sheet.put_by()
    sheet.step(
        "Sew a front band, {front_overlap} wide and {front_edge} long when finished, to each side "
        "of the opening, {seam_allowance} from its edge, down to the corner exactly."
    )
    sheet.step(
        "Lap the bands. Turn the tongue and the lower ends of both bands to the wrong side, and "
        "sew the tongue to them along the line across, twice.",
        "the opening is {opening} long and closes flat, band on band.",
    )


def _add_legs(sheet: Worksheet) -> None:
    if sheet["leg_fullness"].ratio > 1:
        sheet.step(
            "Run two gathering rows round each leg edge, from the crotch line of the front to that "
            "of the back. Mark each band {band_end} from both ends for the crotch lines, and "
            "{band_side} from its front end for the side seam."
        )
        sheet.step(
            "Draw each leg up to its band, right sides together, crotch lines and side seam on "
            "their marks, and sew it {seam_allowance} from the edge.",
            "between the crotch lines the band measures {leg_edge}.",
        )
    else:
        sheet.step(
            "Mark each band {band_end} from both ends for the crotch lines, and {band_side} from "
            "its front end for the side seam. Sew it to its leg, right sides together, "
            "{seam_allowance} from the edge.",
            "between the crotch lines the band measures {leg_edge}.",
        )
    sheet.step(
        "Press the seam into the band, turn {seam_allowance} of its other long edge under, fold it "
        "in half and slip stitch it over the seam on the wrong side.",
        "the band is {band_depth} deep.",
    )


def _add_crotch(sheet: Worksheet) -> None:
    sheet.step(
        "Baste firm cloth to the wrong side of both crotch facings, and turn {seam_allowance} of "
        "one long edge under. Sew a facing to the crotch edge of the front and of the back, right "
        "sides together, {seam_allowance} from the edge, bands and all; let {seam_allowance} of it "
        "stand beyond each band.",
        "the seam is {crotch_edge} long.",
    )
    sheet.step(
        "Turn the ends of the facings in, turn the facings to the wrong side, and sew their inner "
        "edges and ends down.",
        "from the crotch line to the finished edge it is {crotch_beyond}.",
    )
    what = "buttons and buttonholes" if sheet["fastening"].amount == BUTTONS else "press fasteners"
    sheet.step(
        f"Lap the front over the back, crotch line on crotch line. Set the {what}, {{fasteners}} "
        "in all, on that line: the outer ones in the leg bands, the others at equal steps between."
        if sheet["fasteners"].whole > 1
        else f"Lap the front over the back, crotch line on crotch line. Set one of the {what} in "
        "the middle of that line.",
        "they overlap by {crotch_overlap}. Open, each leg lies flat, so that no foot has to pass a "
        "ring.",
    )
