"""Steps that garments with a yoke and a skirt share, in sewing order, each with what to measure."""

from __future__ import annotations

from handout_engine.drafting.garment_steps import (
    WHOLE,
    add_cloth_step,
    add_lower_edge_steps,
    add_stay_step,
)
from handout_engine.drafting.gathered_skirts import FRONT_WORKED, TUCKED, SkirtInputs
from handout_engine.drafting.yokes import BOUND, PLAIN, WORKED
from handout_engine.working.cautions import (
    BUTTONS_AS_SMALL_PARTS,
    GARMENT_IS_DAYWEAR,
    LOOSE_THREADS,
    MEASURE_THE_BABY,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.working.workings import BINDINGS, Supply
from handout_engine.working.worksheet import Worksheet

FROM_WORKED = ", out of the cloth that was worked for it, the middle of the work at its fold line"


def add_supplies(sheet: Worksheet, armholes: str = "") -> None:
    """Notions and cautions; `armholes` speaks of what is bound besides the neck."""
    neck = "for the neck, {neck_run}" if sheet["neck_finish"].amount == BOUND else ""
    bound = " and ".join(filter(None, (neck, armholes)))
    if bound:
        sheet.supplies.append(Supply("bias binding", None, sheet.sentence(bound), unless=BINDINGS))
    sheet.supplies.append(
        Supply(
            "buttons",
            sheet["buttons"],
            sheet.sentence("flat, {button} across"),
            unless=("button-spacing",),
        )
    )
    sheet.have(
        "fine thread to match",
        "a fine needle for the cloth",
        "a removable marker tried on a scrap",
    )
    sheet.cautions.extend(
        (
            PINS_AND_IRON,
            GARMENT_IS_DAYWEAR,
            MEASURE_THE_BABY,
            THIN_COTTON,
            LOOSE_THREADS,
            BUTTONS_AS_SMALL_PARTS,
        )
    )


def add_cutting_steps(sheet: Worksheet, also: str = "") -> None:
    """Cutting out, and what is marked before a piece is moved; `also` names further pieces."""
    add_cloth_step(sheet)
    skirt = sheet["skirt"].amount
    front = "" if sheet["front"].amount == PLAIN else FROM_WORKED
    of_skirt = {
        PLAIN: "",
        FRONT_WORKED: f"; the front{FROM_WORKED}",
        WORKED: f"; both{FROM_WORKED}",
    }[str(skirt)]
    sheet.step(f"Cut the front yoke {WHOLE}{front}.")
    pieces = f"Cut skirt front and skirt back, each {WHOLE}{of_skirt}."
    if sheet["taken_in"].amount == TUCKED and skirt == FRONT_WORKED:
        pieces = (
            f"Cut the skirt back {WHOLE}, and the skirt front out of the cloth that was tucked for "
            "it, along its outline, which was marked while that lay flat."
        )
    sheet.step(
        f"{pieces} Cut a pair of back yokes, one the mirror image of the other{also}. Snip the "
        "notches."
    )
    add_stay_step(sheet, "the necks of the yokes and the armholes of yokes and skirt")
    sheet.step(
        "On each back yoke mark the fold of its facing, {facing} from the raw back edge, and the "
        "centre back, {beyond_centre} from that fold.",
        "along the yoke seam it is {back_yoke_edge} from that fold to the armhole's seam line.",
    )


def add_sample(sheet: Worksheet) -> None:
    """A strip to gather as full as the skirt will be."""
    sheet.trial(
        "From the same cloth cut a strip {skirt_back_top} long and a hand wide, run two "
        "rows of long stitches along it, and draw it up to {yoke_edge}.",
        "it looks as full as the skirt should. Too thick to draw up: give the skirt a "
        "fullness of less than {skirt_fullness}; too thin: of more.",
    )


def add_placket_step(sheet: Worksheet) -> None:
    """The placket in the skirt back, made while it lies flat."""
    sheet.step(
        "On the skirt back mark the slit along a thread: {slit_aside} beside the centre, towards "
        "the half that will lie beneath (the left one, where right buttons over left), and "
        "{placket_slit} deep from the upper raw edge. Sew a continuous lap {lap} wide round it.",
        "the lap is {lap} wide down to its point, and below the seam line of the yoke it opens "
        "{placket_edge}.",
    )
    sheet.put_by()


def add_facing_step(sheet: Worksheet) -> None:
    """The facings of the back yokes, turned and pressed before anything is joined."""
    sheet.step(
        "Turn {seam_allowance} under along the raw back edge of each back yoke and stitch it. "
        "Press the facing to the wrong side along its fold, trim its upper end level with the "
        "neck, and open it out again.",
        "from the pressed fold to the mark of the centre back it is {beyond_centre}.",
    )


def add_yoke_seam_steps(sheet: Worksheet) -> None:
    """Taking in the skirt's tops and sewing both yokes to them."""
    tucked = sheet["taken_in"].amount == TUCKED
    if tucked and sheet["skirt"].amount != PLAIN:
        sheet.step(
            "The {tucks} tucks of the skirt front were stitched in its cloth before it was cut "
            "out. Baste them down along its top, if they are not yet.",
            "the top measures {yoke_edge} between the seam lines of the armholes.",
        )
    elif tucked:
        sheet.step(
            "Stitch the {tucks} tucks of the skirt front, {tuck_depth} deep, {tuck_spacing} from "
            "stitching to stitching, as many on each side of the centre, and {tuck_length} down "
            "from the raw edge. Fasten their lower ends and baste them down along the top.",
            "the top measures {yoke_edge} between the seam lines of the armholes.",
        )
    tops = "the two tops" if tucked else "the top of the skirt front and the two tops"
    sheet.step(
        f"Run two rows of long stitches along {tops} of the skirt back, one on each side of the "
        "seam line, from armhole seam to armhole seam or to the lap. Leave the ends long."
    )
    drawn = "" if tucked else " Draw the gathers up to the yoke and spread them evenly."
    sheet.step(
        "Pin the skirt front to the front yoke, right sides together, centre on centre and notch "
        f"on notch.{drawn} Sew, {{seam_allowance}} from the edge, overcast the edges together "
        "and press the seam into the yoke.",
        "between the seam lines of the armholes the seam is {yoke_edge} long.",
    )
    sheet.step(
        "Pin each half of the skirt back to its yoke. On the half that lies on top fold the lap "
        "under, its fold to the pressed fold of the facing; on the other let the lap stand out to "
        "it. Draw up the gathers. Wrap the facing back over skirt and lap, right sides together, "
        "sew the seam, overcast its edges together, and turn the facing to the inside.",
        "each seam is {back_yoke_edge} from the armhole's seam line to the finished back edge; "
        "closed, right and left lap by {lap}.",
    )


def add_set_in_step(sheet: Worksheet) -> None:
    """The sleeves, set in while the sides are open."""
    gathered = sheet["sleeve_head"].amount != 1
    how = "ease its cap in, without a pleat"
    if gathered:
        how = "draw up the gathers of its head"
        sheet.step(
            "Run two gathering rows along the cap of each sleeve, between its two outer notches. "
            "Mark the armhole, front and back, {head_plain} from the side, for where they begin.",
            "from either notch to the seam line under the arm the cap is {head_plain} long.",
        )
    sheet.step(
        "Lay each sleeve to its armhole, right sides together, the notch of its cap on the "
        f"shoulder seam, and {how}. Sew, {{seam_allowance}} from the edge, and overcast the "
        "edges together.",
        "along the garment the seam is {armhole_edge} from side to side.",
    )


def add_sleeve_end_step(sheet: Worksheet) -> None:
    """The sleeve ends, finished while the sleeves lie flat."""
    full = sheet["sleeve_end_width"].length > sheet["sleeve_edge"].length
    drawn = "draw it up and " if full else ""
    if sheet["sleeve_trim"].length:
        how = f"{drawn}sew its band or ruffle to it, {{sleeve_trim}} deep when finished"
    elif drawn:
        how = "draw it up and bind it"
    else:
        how = "roll or turn a narrow hem within its {seam_allowance}"
    sheet.step(
        f"At the end of each sleeve, while it lies flat, {how}.",
        "between the seam lines under the arm the end is {sleeve_edge} wide.",
    )


def add_neck_step(sheet: Worksheet, more: str = "") -> None:
    """The neck, with the facings inside; `more` tells of the armholes."""
    if sheet["neck_finish"].amount == BOUND:
        how = (
            "baste them just inside the seam line of the neck. Trim the allowance off along that "
            "line and bind the raw edge from back edge to back edge, the ends turned in."
        )
    else:
        how = (
            "baste them along the neck. Sew the collar to it from centre back to centre back and "
            "cover the seam with a bias strip from back edge to back edge, the ends turned in."
        )
    sheet.step(
        f"Fold the facings in and {how}{more}",
        "it is {neck_run} from end to end, and {neck_edge} round when it is closed.",
    )


def add_hem_step(sheet: Worksheet, garment: SkirtInputs) -> None:
    """The lower edge: its trim, or a hem sewn by hand."""
    if garment.trimmed:
        sheet.step(
            "Sew the ruffle or band to the lower edge, {hem_depth} from the raw edge.",
            "the seam is {hem_edge} once round, and with its trim the garment is "
            "{finished_length} long from the neck point.",
        )
        return
    add_lower_edge_steps(sheet, garment)


def add_button_step(sheet: Worksheet) -> None:
    """Buttonholes and buttons on the centre back."""
    many = sheet["buttons"].whole > 1
    apart = ", the first {button} below the neck, then {button_step} apart," if many else ""
    holes = "{buttons} buttonholes" if many else "a buttonhole"
    sheet.step(
        f"Lay the centre backs on each other. Work {holes} on the centre back of the yoke that "
        f"lies on top{apart} and sew the buttons to the other one.",
        "buttoned, the neck measures {neck_edge}; open down to the placket's end it lets "
        "{opened_neck} through, and the head needs {head_needs}.",
    )
