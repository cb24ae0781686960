"""How a front band is sewn, by what it is made of."""

from __future__ import annotations

from handout_engine.amounts.values import sentence
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """A hand's length of band with one hole in it."""
    sheet.sample.append(
        Step(
            sentence(
                "Make a hand's length of band from scraps, with the firm cloth in it, press it and "
                "work one buttonhole."
            ),
            sentence(
                "it is {band} wide and lies flat beside the hole. If it is narrower, the cloth "
                "takes room where it turns: make the extension half of the difference larger.",
                band=sheet["band_width"],
            ),
        )
    )


def add_steps(sheet: Worksheet, made: str, opening: bool) -> None:
    """From the centre line to the lapped fronts; those of a cut `opening` its garment laps."""
    add_washing_step(sheet)
    if made.startswith("cut on"):
        _add_cut_on_steps(sheet)
    else:
        _add_strip_steps(sheet, made, opening)
    if opening:
        return
    sheet.step(
        "Lap the fronts, centre line on centre line, ends level, and pin.",
        "they overlap by {band_width}, band on band. Now mark buttons and holes.",
    )


def _add_cut_on_steps(sheet: Worksheet) -> None:
    sheet.step(
        "Draw the centre line of the front, and beyond it the fold at {beyond_centre} and the cut "
        "edge at {cut_beyond}. Cut on that line.",
        "from the fold line to the cut edge it is {fold_line}.",
    )
    sheet.step(
        "Lay the firm cloth on the wrong side of the facing, one edge on the fold line, and baste."
    )
    sheet.step("Turn {facing_turn} of the facing's inner edge under and stitch it.")
    sheet.step(
        "Fold the facing to the right side along the fold line. Sew across its upper and its lower "
        "end, {end_allowance} from the raw edges; trim, turn and push the corners out."
        if sheet["end_allowance"].length
        else "Fold the facing to the wrong side along the fold line; its ends are caught in neck "
        "and hem.",
    )
    sheet.step(
        "Press the fold, and catch the facing's inner edge down at its ends and at every seam.",
        "from the fold to the centre line it is {beyond_centre}, and the facing is {facing_used} "
        "wide.",
    )


def _add_strip_steps(sheet: Worksheet, made: str, opening: bool) -> None:
    two = made.startswith("two")
    if not opening:
        sheet.step(
            "On the front draw the centre line, and {beyond_centre} to the inside of it the line "
            "of the band seam. Cut {seam} from that line, on the side of the centre line."
        )
    sheet.step(
        "Cut the outer strips {outer_width} and the facing strips {facing_width} wide, all "
        "{band_length} long, {bands} of each."
        if two
        else "Cut {bands} strips {strip_width} wide and {band_length} long, along the selvage."
    )
    if two:
        sheet.step(
            "Sew each outer strip to a facing strip along one long edge, right sides together, "
            "with {joining} allowance, and press the allowances toward the facing.",
            "opened flat it is {strip_width} from raw edge to raw edge.",
        )
    sheet.step(
        "Baste the firm cloth to the wrong side of the outer half, between the line of the band "
        "seam and the fold. Turn {seam} under along the long edge of the inner half and press.",
        "from that fold to the other raw edge it is {remaining}.",
        remaining=sheet["strip_width"].length - sheet["seam"].length,
    )
    if opening:
        sheet.put_by()
        sheet.step(
            "Sew the raw edge of the outer half of each band to its side of the opening, right "
            "sides together, {seam} from the edges, down to the corner exactly. Press the "
            "allowances into the band. Both its ends stay raw: the neck seam and the lower end of "
            "the opening take them.",
            "{end_allowance} of the band stand beyond the neck seam line and beyond the corner.",
        )
    else:
        sheet.step(
            "Sew the raw edge of the outer half to the front, right sides together, {seam} from "
            "the edges, the same length of strip beyond both ends. Press the allowances into the "
            "band."
        )
    if sheet["end_allowance"].length and not opening:
        sheet.step(
            "Fold the band lengthwise, right sides together, and sew across both ends, "
            "{end_allowance} from their raw edges. Trim, turn and push the corners out.",
            "the band is {opening} long.",
        )
    sheet.step(
        "Press the fold: the facing comes round it and shows as a narrow edge."
        if two
        else "Press the fold along the middle of the strip.",
        "from the seam to the fold it is {band_width}"
        + (", of which {outer_shows} are outer strip and {edge} are edge." if two else "."),
    )
    sheet.step(
        "Lay the turned edge over the seam on the wrong side, so that it just covers the "
        "stitching, and slip stitch it down."
    )
