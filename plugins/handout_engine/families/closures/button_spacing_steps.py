"""How buttonholes are worked and buttons sewn on."""

from __future__ import annotations

from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """One hole on a scrap of the same layers."""
    sheet.trial(
        "On a scrap of the same layers, with the same strip of firm cloth between them, "
        "work one hole {buttonhole} long, cut it and pass the button through ten times.",
        "the button passes without force and does not come back by itself. By the other "
        "rule the hole would be {buttonhole_compared}; if yours has to be longer or shorter, write "
        "the thickness that gives it.",
    )


def add_steps(sheet: Worksheet, upright: bool) -> None:
    """From the centre line to the last button."""
    several = sheet["all_buttons"].whole > 1
    sheet.step(
        "Finish the edge first, facing and all, with a strip of firm cloth between the layers. "
        "Baste the centre line on both sides of the opening, {beyond_centre} from the finished "
        "edge.",
        "lapped, centre line on centre line, the edges lie {overlap} over one another.",
    )
    sheet.step(
        "On the side that will lie on top mark each button across the centre line from the chart, "
        "or lay the placement sheet under it: the first {first_place} from the upper end"
        + (", then every {step}." if several else "."),
        "the last mark is {last_place} from the lower end." if several else "",
    )
    sheet.step(
        "Mark each hole on the centre line, from {beyond} above its mark, {buttonhole} long."
        if upright
        else "Mark each hole square to the edge, from {hole_starts} to {hole_ends} from it, so "
        "that it begins {beyond} beyond the centre line.",
        "each hole is {buttonhole} long.",
    )
    sheet.step(
        "Work the holes, one after another in the same direction. Put a pin across each end before "
        "you cut it open from the middle, so that the blade stops there."
    )
    sheet.step(
        "Lap the edges, centre line on centre line, ends level. Put a pin through each hole at its "
        "mark, straight down, and mark the lower layer there on its centre line."
    )
    sheet.step(
        "For each button take {strands} strands, {thread_for_one} of thread in all. Sew it on at "
        "its mark with {stitches} stitches over a pin, take the pin away, wind the thread {wraps} "
        "times round the shank, and fasten off on the wrong side.",
        "the shank is {shank} long: the buttonholed edge lies flat under the button.",
    )
    sheet.step(
        "Button the edge and shake it.",
        "it is {opening} long and lies flat; no hole gapes, and no button comes off at a hard "
        "pull.",
    )
