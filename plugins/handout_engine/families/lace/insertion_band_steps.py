"""The sample and the steps of a built-up band."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from handout_engine.amounts.lengths import inches
from handout_engine.amounts.values import sentence
from handout_engine.families.lace.insertion_band_measures import PUFFING, Strip, joining
from handout_engine.families.lace.lace import add_lace_washing_step
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_band_sample(sheet: Worksheet, strips: list[Strip]) -> None:
    """A short piece of the whole band, and of its puffing."""
    sheet.sample.append(
        Step(
            sentence(
                "Cut {scrap} of every strip in its width and join them in order.", scrap=inches(4)
            ),
            sentence(
                "across all strips it is {finished}. What it is more or less came from the joins: "
                "find the join that is off and sew it again before the long one, or write the "
                "width that the strip shows now.",
                finished=sheet["finished_width"],
            ),
        )
    )
    if any(strip.kind == PUFFING for strip in strips):
        sheet.sample.append(
            Step(
                sentence("Gather a scrap of the puffing, {scrap} long, to {drawn}.",
                         scrap=inches(9), drawn=inches(9) / _fullness(sheet)),
                sentence("the gathers stand close and still turn easily under a fingernail."),
            )
        )  # fmt: skip


def _fullness(sheet: Worksheet) -> Fraction:
    fullness = sheet["fullness"].amount
    assert isinstance(fullness, Fraction)
    return fullness


def add_band_steps(sheet: Worksheet, strips: list[Strip], fit: int | None) -> None:
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
            width=strips[fit - 1].visible,
        )
    _add_joining_steps(sheet, strips)
    sheet.step(
        "Press the band face down on a folded towel, without pulling it, and square its ends.",
        "the band is {finished_width} wide at both ends and in the middle, and {run} long "
        "between its end allowances.",
    )


def _add_cutting_step(sheet: Worksheet, strip: Strip) -> None:
    prefix = f"strip{strip.number}_"
    sheet.step(
        f"Strip {strip.name}: cut {{count}} piece(s) {{width}} wide and {{each}} long across the "
        "cloth, and join them end to end with {strip_allowance} allowance where there are several."
        if sheet[f"{prefix}strips"].whole > 1
        else f"Strip {strip.name}: cut it {{width}} wide and {{each}} long across the cloth.",
        count=sheet[f"{prefix}strips"],
        width=strip.cut,
        each=sheet[f"{prefix}strip_length"],
    )
    if strip.kind == PUFFING:
        sheet.step(
            f"Strip {strip.name}: run two gathering rows along each long edge, one on either side "
            "of its seam line, mark the quarters, and draw both edges up to {run} between the "
            "end allowances.",
            "both edges are equally long, and each quarter is {quarter}.",
            quarter=sheet["run"].length / 4,
        )


def _add_joining_steps(sheet: Worksheet, strips: list[Strip]) -> None:
    """Each way of joining once, with the pairs it is for, and what the first pair measures."""
    ways: dict[str, list[tuple[Strip, Strip]]] = {}
    for upper, lower in pairwise(strips):
        ways.setdefault(joining(upper.kind, lower.kind), []).append((upper, lower))
    for way, pairs in ways.items():
        named = "; ".join(f"{upper.name} to {lower.name}" for upper, lower in pairs)
        first, second = pairs[0]
        sheet.step(
            f"Join {named}. {way}",
            f"strips {first.number} and {second.number} together show {{both}}.",
            both=first.visible.length + second.visible.length,
        )
