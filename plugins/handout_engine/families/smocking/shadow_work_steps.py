"""Sample and steps of shadow work, in the order in which it is worked."""

from __future__ import annotations

from handout_engine.working.worksheet import Worksheet

TEN = 10


def add_sample(sheet: Worksheet) -> None:
    """Ten stitches on a scrap, for the colour, the tension and the thread they take."""
    sheet.trial(
        "Trace two lines {gap} apart on a scrap, with ten stitches of {repeat_edge} marked on "
        "each, and work them with one strand, and once more with two. Measure the needleful"
        " before and after.",
        "the scrap lies flat in your hand, out of the hoop, and the lines are still {gap} "
        "apart. Look at it from the right side over what will lie beneath it: too pale, "
        "take more strands or shorter stitches.",
    )


def add_steps(sheet: Worksheet, ring: bool) -> None:
    """From the washed cloth to the pressed band."""
    _add_marking(sheet, ring)
    _add_stitching(sheet)
    _add_ending(sheet, ring)


def _add_marking(sheet: Worksheet, ring: bool) -> None:
    sheet.step("Wash, dry and press the cloth, and finish the edge or mark where it will be.")
    begins = (
        "Begin at a seam. "
        if ring or not sheet["margin"].length
        else "Begin {margin} from the end of the edge. "
    )
    sheet.step(
        "Print the guide at its actual size and lay it under the cloth, wrong side of the cloth up:"
        " sheer cloth shows it. Trace the near line {from_edge} from the finished edge, the far "
        "line {gap} further in, and every hole on both. " + begins + "The guide is {guide_length} "
        "long; move it on until its first holes lie on the last you traced.",
        "each line has {holes} holes"
        + (
            ", and the last lies one stitch from the first."
            if ring
            else ", and from the first to the last it is {row_edge}."
        ),
    )
    if sheet["rows"].whole > 1:
        sheet.step(
            "Trace the other rows alike, {rows} in all, {between} apart.",
            "from the finished edge to the last line it is {reach}.",
        )


def _add_stitching(sheet: Worksheet) -> None:
    sheet.step(
        "Stretch the cloth in a hoop, wrong side up, the finished edge towards you. Cut the thread "
        "{needleful} long, and let a tail of {tail} lie at the start, without a knot.",
    )
    sheet.step(
        "First stitch: on the near line, in at the second hole and out at the first. Second stitch:"
        " on the far line, in at its second hole and out at its first.",
        "one thread slants from line to line, {crossing_over} long, and lies flat without pull.",
    )
    ten = sheet["repeats_edge"].whole >= TEN
    sheet.step(
        "Third stitch: back on the near line, in at the third hole and out at the second, which is "
        "already used. Fourth: the same on the far line. Go on so, one line and then the other: "
        "always in at the next free hole, out at the hole behind it.",
        ("after ten stitches on each line the work is {ten_edge} long; " if ten else "")
        + "on the right side stand two unbroken lines of back stitch.",
    )
    sheet.step(
        "When the needleful is used, run its end along one line, under the ends of the crossing "
        "threads, and cut it close. Begin the next under them too. Nothing may lie outside the "
        "lines: it would show. Needlefuls of each row: {needlefuls}.",
    )


def _add_ending(sheet: Worksheet, ring: bool) -> None:
    if ring:
        sheet.step(
            "The last stitch of each line goes in at its first hole. Cross once more, as if to "
            "begin again, and fasten off under the threads.",
            "{repeats_edge} stitches on each line, and no place shows where they meet.",
        )
    else:
        sheet.step(
            "End with a stitch in at the last hole of the far line, and run the end and the tail "
            "of the beginning in.",
            "{repeats_edge} stitches on each line.",
        )
    if sheet["rows"].whole > 1:
        sheet.step(
            "Work the other rows alike, each with thread of its own: a thread carried from row to "
            "row would show.",
        )
    sheet.step(
        "Wash the marks out in cold water before any iron touches them. Press face down on a "
        "towel.",
        "the lines are {gap} apart and the cloth between them is smooth.",
    )
