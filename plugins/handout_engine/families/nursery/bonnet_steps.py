"""The notions, sample and steps of a bonnet, by its back."""

from __future__ import annotations

from handout_engine.drafting.garment_steps import add_cloth_step, add_stay_step
from handout_engine.families.nursery.bonnet_measures import CIRCLE, WORKED, BonnetInputs
from handout_engine.shared.hems import FINISHED, hem_step
from handout_engine.working.cautions import (
    BONNET_COMES_OFF,
    FASTENERS_AS_SMALL_PARTS,
    LOOSE_THREADS,
    PINS_AND_IRON,
    THIN_COTTON,
)
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet


def add_supplies(sheet: Worksheet) -> None:
    """Notions and cautions."""
    sheet.supplies.append(Supply("soft hook-and-loop tape, a piece as wide as the strap"))
    sheet.have(
        "fine thread to match", "strong thread to gather with", "a fine needle for the cloth"
    )
    sheet.cautions.extend(
        (PINS_AND_IRON, BONNET_COMES_OFF, LOOSE_THREADS, FASTENERS_AS_SMALL_PARTS, THIN_COTTON)
    )


def add_sample(sheet: Worksheet) -> None:
    """A bonnet of paper cloth, tried on."""
    sheet.trial(
        "Cut the straight piece in muslin and lay it over the child's head from jaw to "
        "jaw, its front edge at the brow.",
        "{front_edge} reaches from one corner of the jaw over the head to the other, and "
        "{depth_line} from the brow to where the head begins to fall away behind.",
    )


def add_steps(sheet: Worksheet, bonnet: BonnetInputs) -> None:
    """From the cut pieces to the strap."""
    add_cloth_step(sheet)
    if bonnet.crown == WORKED:
        sheet.step(
            "Make up the cloth of the straight piece first, at least {crown_length} long "
            "and {crown_depth} across, and press it."
        )
    sheet.step(
        "Cut the straight piece {crown_length} along the front edge and {crown_depth} from front "
        "to back, the back {back_cut_width} by {back_cut_height}, the bias strip {binding_cut} by "
        "{binding_length}, and the strap {strap_cut_width} by {strap_cut_length}."
    )
    add_stay_step(sheet, "the curve of the back")
    sheet.put_by()
    words = hem_step(bonnet.hem).replace("lower edge", "front edge")
    sheet.step(
        words
        if bonnet.hem == FINISHED
        else f"Along one long side, the front edge: {_lower_first(words)}",
        "from the finished front edge to the raw edge at the back it is {hemmed_depth}.",
    )
    if bonnet.back == CIRCLE:
        _add_circle(sheet)
    else:
        _add_horseshoe(sheet, flat=bonnet.back_fullness == 1)
    _add_neck(sheet)


def _lower_first(text: str) -> str:
    return text[0].lower() + text[1:]


def _add_circle(sheet: Worksheet) -> None:
    sheet.step(
        "Run two rows of gathering along the back edge, from end to end, {seam_allowance} from the "
        "edge and half of that. Mark the quarters of the edge, and of the circle, where they are "
        "{back_quarter} apart on its seam line."
    )
    sheet.step(
        "Draw the back edge up to the circle, right sides together, so that the two ends of the "
        "edge meet at one mark, which is the nape. Spread the gathers and sew, {seam_allowance} "
        "from the edges.",
        "the back edge is drawn up to {back_seam}, and the circle is {back_width} across and flat.",
    )
    sheet.step(
        "Trim the seam, overcast it, and press it toward the straight piece. Draw the "
        "gathering threads out."
    )


def _add_horseshoe(sheet: Worksheet, *, flat: bool) -> None:
    if flat:
        sheet.step(
            "Stay-stitch the back edge, a thread's width nearer to the raw edge than the "
            "seam line at {seam_allowance}, and clip it to the stitching where it goes "
            "round the curve."
        )
    else:
        sheet.step(
            "Run two rows of gathering along the back edge, {seam_allowance} from the edge "
            "and half of that, and draw it up.",
            "it measures {back_seam}.",
        )
    sheet.step(
        "Pin the middle of the back edge to the top of the horseshoe, and its ends to the two "
        "corners of the nape, right sides together. Sew round, {seam_allowance} from the edges; "
        "the flat nape is not sewn.",
        "the ends are level with the nape, and the seam is {back_seam} long.",
    )
    sheet.step("Trim the seam, overcast it, and press it toward the back.")


def _add_neck(sheet: Worksheet) -> None:
    sheet.step(
        "Fold the strap in half along its length, right sides together, sew its long side and one "
        "end, {seam_allowance} from the edges, turn and press.",
        "it is {strap_width} wide.",
    )
    sheet.step(
        "Gather the neck edge, {ungathered_neck} long, from front to front, and baste the open end "
        "of the strap to one end of it.",
        "drawn up it is {neck_edge}.",
    )
    sheet.step(
        "Bind it with the bias strip: sewn on {binding} from the edges, its ends turned in, folded "
        "over and felled inside.",
        "the binding is {binding} wide, and {neck_edge} long between the front edges.",
    )
    sheet.step(
        "Sew the loop half of the tape to the end of the strap and the hook half, its face away "
        "from the skin, to the other end of the binding.",
        "a light pull at the strap opens it, and two fingers go in under the chin.",
    )
