"""How ties are sewn and caught in their seams."""

from __future__ import annotations

from handout_engine.amounts.values import sentence
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet, tube: bool) -> None:
    """A finger's length of tie from a scrap."""
    how = (
        "sew it {depth} from its edges and turn it"
        if tube
        else "turn both its edges {depth} twice and hem them"
    )
    sheet.sample.append(
        Step(
            sentence(
                f"Cut a scrap {{width}} wide and a finger long, {how}, and press it.",
                width=sheet["cut_width"],
                depth=sheet["seam" if tube else "hem_turn"],
            ),
            sentence(
                "it is {finished} wide. If it is narrower, add what is missing to the width before "
                "you cut the ties.",
                finished=sheet["tie_width"],
            ),
        )
    )


def add_steps(sheet: Worksheet, tube: bool, drawn: bool) -> None:
    """From the strips to what holds them: a seam, or the band that is `drawn` through a casing."""
    add_washing_step(sheet)
    sheet.step("Cut {ties} ties {cut_width} wide and {cut_length} long, along the selvage.")
    if tube:
        sheet.step(
            "Fold each lengthwise, right sides together. Sew {seam} from the raw edges along the "
            "long side and across one end; leave the other end open.",
            "from the fold to the stitching it is {tie_width} all along.",
        )
        sheet.step(
            "Trim the corners, turn the tie through its open end, push the corners out and press, "
            "the seam on the very edge.",
            "it is {tie_width} wide and {with_end} long.",
        )
    else:
        sheet.step(
            "At one end and then along both long sides turn {hem_turn} to the wrong side, and the "
            "same once more. Press and stitch close to the inner fold, or hem by hand.",
            "it is {tie_width} wide and {with_end} long.",
        )
    if drawn:
        sheet.step(
            "Lay the raw end of each tie {end_allowance} over an end of the band or elastic that "
            "runs in the casing, and sew a square across both. Draw the joins into the casing.",
            "each hangs {tie_length} out of its opening, {longest} at most.",
        )
        sheet.step(
            "Spread the garment, and stitch the band down at the middle of the casing through all "
            "layers, so that it cannot be pulled out.",
            "a hard pull at either tie moves nothing.",
        )
        return
    sheet.step(
        "Lay a tie on the right side of the garment at each mark, its finished end inward, its raw "
        "end {end_allowance} beyond the seam line, whatever the garment's allowance, and baste it. "
        "A tie wider than its place is laid in a pleat.",
        "from the seam line to the finished end each tie is {tie_length} long.",
    )
    sheet.step(
        "Sew the seam over them, and a second time inside the allowance. Press the ties outward.",
        "each hangs {tie_length} free, and a hard pull does not move it.",
    )


def add_bow_step(sheet: Worksheet) -> None:
    """Tying it on the child, and what may hang."""
    untied = (
        " Untied each reaches {untied_below} below the hem, so tie it whenever it is worn."
        if sheet["untied_below"].length
        else ""
    )
    sheet.step(
        f"Tie the bow, {{reach}} from each seam, so that it opens at one pull.{untied}",
        "its ends hang {bow_end} from the knot and stay {above_hem} above the hem. If they are "
        "nearer to it, shorten both ties.",
    )
