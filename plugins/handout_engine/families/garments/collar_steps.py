"""The notions, sample and steps of a flat collar."""

from __future__ import annotations

from handout_engine.drafting.garment_steps import WHOLE, add_cloth_step, add_stay_step
from handout_engine.working.cautions import (
    GARMENT_IS_DAYWEAR,
    MEASURE_THE_BABY,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet


def add_supplies(sheet: Worksheet) -> None:
    """Notions and cautions."""
    covers = sheet.sentence("it covers {neck_edge} of seam")
    sheet.supplies.append(
        Supply("bias strip for the neck seam", None, covers, unless=("bias-strips",))
    )
    sheet.have("fine thread to match", "a fine needle for the cloth")
    sheet.cautions.extend((PINS_AND_IRON, GARMENT_IS_DAYWEAR, MEASURE_THE_BABY, THIN_COTTON))


def add_sample(sheet: Worksheet) -> None:
    """The paper collar walked along the garment's neck."""
    sheet.trial(
        "Cut the upper collar in paper on its seam line, and walk its neck edge along the "
        "neck seam line of the garment's front and back, standing it on edge.",
        "it ends with the neck: the whole edge is {collar_neck}, and from the centre front "
        "to the shoulder it is {front_to_shoulder}.",
    )


def add_steps(sheet: Worksheet) -> None:
    """From the cut pieces to the collar in the neck of its garment."""
    in_one = sheet["form"].amount == "one piece"
    add_cloth_step(sheet)
    if in_one:
        sheet.step(
            f"Cut upper and under collar once each, {WHOLE}. Mark the shoulders and the centre "
            "front at the neck edge."
        )
    else:
        sheet.step(
            "Cut a pair of each, upper and under collar: a left one, and a right one that is its "
            "mirror image. Mark the shoulders at the neck edge."
        )
    add_stay_step(sheet, "the neck edge of upper and under collar")
    sheet.step(
        "Work embroidery or an insertion on the upper collar now, while it is flat. Lay an "
        "edging or a ruffle along its outer edge, heading to the edge."
    )
    _add_outer_edge(sheet)
    sheet.step(
        "Roll each collar over your hand as it will lie, and baste the neck edges together as "
        "they fall.",
        "from the neck seam line to the outer edge it is {collar_depth} deep everywhere.",
    )
    sheet.put_by()
    meeting = (
        "the two ends meet on the neck seam line at the centre back"
        if in_one
        else "the pieces meet on the neck seam line at the centre front, and at the centre back"
    )
    sheet.step(
        "Finish the opening of the garment, but leave its neck, once it is stay-stitched, raw. Pin "
        "the collar to the right "
        f"side of the neck, under collar down, the marks at the shoulder seams; {meeting}.",
        "collar and neck are equally long, {neck_edge}, and nothing is eased.",
    )
    sheet.step(
        "Lay a bias strip over the collar, right side down, and sew through all, {seam_allowance} "
        "from the edges. Trim and clip the seam, turn the strip to the inside over it and fell it "
        "down.",
        "the collar lies flat all round and hides the seam.",
    )


def _add_outer_edge(sheet: Worksheet) -> None:
    if sheet["collar_ease"].length:
        sheet.step(
            "Lay upper and under collar right sides together, raw edges level, and ease the upper "
            "one in, {collar_ease} in all. Sew the outer edge and the open ends, {seam_allowance} "
            "from the edges, the under collar on top.",
            "along the seam it is {under_edge} in all.",
        )
    else:
        sheet.step(
            "Lay upper and under collar right sides together and sew the outer edge and the open "
            "ends, {seam_allowance} from the edges.",
            "along the seam it is {collar_edge} in all.",
        )
    sheet.step(
        "Trim the seam, notch it along the curves, turn the collar and press it with the "
        "seam a thread to the under side."
    )
