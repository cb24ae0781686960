"""The steps, sample, notions and cautions that all gathered ruffles share."""

from __future__ import annotations

from handout_engine.amounts.values import Value, sentence
from handout_engine.shared.gathering import DIAGONAL, OPEN, RING
from handout_engine.working.cautions import LOOSE_THREADS, NOT_SLEEPWEAR, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet, width: Value, layers: str) -> None:
    """The trial to gather before the good cloth is cut."""
    drawn = sheet["sample_drawn_up"]
    sheet.sample.append(
        Step(
            sentence(
                "From the same cloth cut "
                + layers
                + " {width} wide and {sample} long, run the two "
                "gathering rows, and draw up to {drawn}.",
                width=width,
                sample=sheet["sample_length"],
                drawn=drawn,
            ),
            sentence(
                "it should look as full as you want at {drawn}. Too thin: draw it shorter, and use "
                "the strip's length divided by what it measures now as the fullness. Too thick to "
                "draw up: let it out and do the same.",
                drawn=drawn,
            ),
        )
    )


def add_joining_steps(sheet: Worksheet, prefix: str, what: str) -> None:
    """Joining a set of strips, where there is anything to join."""
    strips, wanted = sheet[f"{prefix}strips"], sheet["ruffle_length"]
    ring, diagonal = sheet["ends"].amount == RING, sheet["strip_join"].amount == DIAGONAL
    if strips.whole == 1 and not ring:
        return
    ends = "into a ring" if ring else "end to end"
    subject = f"the {what} strips" if strips.whole > 1 else f"the ends of the {what} strip"
    how = (
        "crossing the ends at a right angle and sewing from corner to corner; trim to "
        "{strip_allowance}"
        if diagonal
        else "right sides together, with {strip_allowance} allowance"
    )
    measured = "it measures {wanted} " + ("round" if ring else "from end to end") + "."
    sheet.step(f"Join {subject} {ends}, {how}. Press.", measured, wanted=wanted)


def add_gathering_steps(
    sheet: Worksheet,
    layers: str,
    measured_from: str = "raw edge",
    rows: tuple[str, str] = ("first_row", "second_row"),
) -> None:
    """Running the rows and drawing up to the edge.

    `rows` name the distances of the two rows from the edge that is named, where that is not the
    raw edge from which they are marked on the flat strip.
    """
    first, second = rows
    between = " between its end allowances" if sheet["ends"].amount == OPEN else ""
    sheet.step(
        f"Through {layers}, run two rows of long stitches, {{{first}}} and {{{second}}} from "
        f"the {measured_from}, leaving long thread ends. Mark the quarters of the ruffle{between} "
        "and the quarters of the edge."
    )
    sheet.put_by()
    sheet.step(
        "Match the quarter marks, draw up to the edge and spread the gathers evenly.",
        "the gathered part is {edge} long, and each quarter of it {edge_quarter}.",
    )


def add_gathering_supplies(sheet: Worksheet) -> None:
    """The notions and cautions of every gathered ruffle."""
    sheet.have("fine thread to match", "a fine needle for the cloth")
    sheet.have("pins", "a removable marker tried on a scrap")
    sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS, NOT_SLEEPWEAR, THIN_COTTON))


def add_washing_step(sheet: Worksheet) -> None:
    """Washing first, where the cloth is said to shrink."""
    if sheet["shrinkage_length"].amount or sheet["shrinkage_width"].amount:
        sheet.step(
            "Wash, dry and press the cloth as the garment will be washed, then straighten it."
        )


def add_strip_steps(sheet: Worksheet, what: str) -> None:
    """All of a ruffle of one strip that comes before its edges: at last its strips are joined."""
    add_gathering_supplies(sheet)
    add_sample(sheet, sheet["cut_width"], "a strip")
    add_washing_step(sheet)
    sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
    add_joining_steps(sheet, "", what)


def counted(sheet: Worksheet, piece: str) -> str:
    """What to cut of a piece that is made as often as the article: the panel, or two panels."""
    return f"the {piece}," if sheet["make"].whole == 1 else f"{{make}} {piece}s, each"
