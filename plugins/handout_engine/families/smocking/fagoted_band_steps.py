"""How a fagoted band is worked: a sample, then its folds basted to paper and joined."""

from __future__ import annotations

from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """Two scraps joined, to see whether the gap stays."""
    sheet.trial(
        "Fold the edges of two scraps, baste them to paper {gap} apart, and work ten "
        "stitches on each edge at {true_repeat}.",
        "off the paper the folds still lie {gap} apart. Closer: the stitches were pulled; "
        "baste the next one a thread wider or work looser.",
    )


def add_steps(sheet: Worksheet) -> None:
    """From the washed cloth to the band off its paper."""
    add_washing_step(sheet)
    sheet.step("Cut the strips of the cut list, {cut_length} long, along the selvage.")
    sheet.step(
        "Turn {turn} under along every edge that will be fagoted, with a narrow hem or overcast, "
        "and press. The outer edges of the band stay as they are cut.",
    )
    sheet.step(
        "Print the guide at its actual size, and draw on firm paper lines {gap} apart, with a mark "
        "every {true_repeat} on each, those of one line halfway between those of the other. The "
        "guide is {guide_length} long; lay it on again from its last mark. Baste the folds to the "
        "lines, right side up.",
        "from fold to fold it is {gap} everywhere, and {finished_width} over the whole band less "
        "its outer allowances.",
    )
    sheet.step(
        "Begin in a fold at the left. Take a small stitch {bite} deep in the one edge, pass the "
        "needle under the thread, and take the next in the other edge half a repeat further. Work "
        "{repeats} repeats along each gap, without pulling.",
        "the last stitch falls on the last mark.",
    )
    sheet.step(
        "Fasten off in a fold. Join new thread there too, never in the gap. Take the basting out, "
        "press face down on a towel, and tear the paper away.",
        "the band is {finished_width} wide and {edge} long between its allowances.",
    )
