"""The sample and the steps of a built-up band."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.families.lace.insertion_band_measures import PUFFING, Join, Strip
from handout_engine.families.lace.lace import SCRAP, add_lace_washing_step
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_band_sample(sheet: Worksheet, strips: Sequence[Strip]) -> None:
    """A short piece of the whole band, and of its puffing."""
    sheet.sample.append(
        Step(
            sheet.sentence(
                "Cut {scrap} of every strip in its width and join them in order.", scrap=SCRAP
            ),
            sheet.sentence(
                "across all strips it is {finished_width}. What it is more or less came from the "
                "joins: find the join that is off and sew it again before the long one, or write "
                "the width that the strip shows now."
            ),
        )
    )
    if any(strip.kind == PUFFING for strip in strips):
        sheet.sample.append(
            Step(
                sheet.sentence(
                    "Gather a scrap of the puffing, {sample_puffing} long, to {sample_drawn_up}."
                ),
                sheet.sentence("the gathers stand close and still turn easily under a fingernail."),
            )
        )


def add_band_steps(
    sheet: Worksheet, strips: Sequence[Strip], joins: Sequence[Join], fit: int | None
) -> None:
    """Preparing, cutting and joining the strips; `fit` is the one that was made to give way."""
    add_washing_step(sheet)
    if any(strip.bought for strip in strips):
        add_lace_washing_step(sheet)
        sheet.step("Cut every bought strip {cut_length} long.")
    for strip in strips:
        if not strip.bought:
            _add_cutting_step(sheet, strip)
    if fit is not None and strips[fit - 1].bought:
        sheet.step(
            f"Strip {strips[fit - 1].name} is bought in its width: look for one that shows "
            "{width}, or let a strip of cloth or puffing give way instead.",
            width=strips[fit - 1].width,
        )
    for join in joins:
        named = "; ".join(f"{upper.name} to {lower.name}" for upper, lower in join.pairs)
        sheet.step(
            f"Join {named}. {join.way}", f"{join.words} together show {{show}}.", show=join.show
        )
    sheet.step(
        "Press the band face down on a folded towel, without pulling it, and square its ends.",
        "the band is {finished_width} wide at both ends and in the middle, and {run} long "
        "between its end allowances.",
    )


def _add_cutting_step(sheet: Worksheet, strip: Strip) -> None:
    strips = sheet[f"{strip.prefix}strips"]
    sheet.step(
        f"Strip {strip.name}: cut {{strips}} piece(s) {{width}} wide and {{each}} long across the "
        "cloth, and join them end to end with {strip_allowance} allowance where there are several."
        if strips.whole > 1
        else f"Strip {strip.name}: cut it {{width}} wide and {{each}} long across the cloth.",
        strips=strips,
        width=strip.cut_width,
        each=sheet[f"{strip.prefix}strip_length"],
    )
    if strip.kind == PUFFING:
        sheet.step(
            f"Strip {strip.name}: run two gathering rows along each long edge, one on either side "
            "of its seam line, mark the quarters, and draw both edges up to {run} between the "
            "end allowances.",
            "both edges are equally long, and each quarter is {run_quarter}.",
        )
