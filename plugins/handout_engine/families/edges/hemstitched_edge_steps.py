"""The sample and the steps of a hem that is sewn down with a row of hemstitches."""

from __future__ import annotations

from handout_engine.families.edges.corner_hems import add_corner_steps
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """The trial that measures one repeat, and the setting that adjusts it."""
    sheet.trial(
        "Starch two layers of the same cloth, folded as in the hem, and sew twelve repeats "
        "along the fold with the {needle} needle. Measure the ten in the middle.",
        "ten repeats are {ten_repeats}. If not, write a tenth of what you measured as the "
        "repeat, and work this page out again.",
    )
    sheet.trial(
        "Now change the stitch length, a little at a time, until ten repeats along the "
        "width come out as this page needs them, and note the setting.",
        "ten repeats are {ten_width}.",
    )


def add_steps(sheet: Worksheet, towel: bool) -> None:
    """From cutting to the last corner, in sewing order."""
    add_washing_step(sheet)
    sheet.step(
        "Draw a thread for each edge and cut along the gaps: {make} × {cut_width} by "
        "{cut_length}. Starch the cloth well and press it dry.",
        "opposite sides are alike.",
    )
    if towel:
        _add_towel_hems(sheet)
    else:
        add_corner_steps(sheet)
        sheet.step("Sew the other three corners and press the hem down all round.")
    sheet.step(
        "Baste the hem on the right side, close to its inner edge, {hem_depth} from the finished "
        "edge: the basting is the line to sew on.",
        "the basting lies {hem_depth} inside the finished edge everywhere.",
    )
    _add_row_steps(sheet, towel)
    sheet.put_by()
    sheet.step(
        "Draw the thread ends to the wrong side and hide them in the hem. Rinse the starch out, "
        "and press face down on a towel.",
        "the article is {width} by {length}.",
    )


def _add_towel_hems(sheet: Worksheet) -> None:
    if sheet["side_hem"].length:
        sheet.step(
            "Turn the two long sides under twice by {side_hem}, press and stitch.",
            "the towel is {width} wide.",
        )
    under = (
        "Turn {turn} under along both ends and press, then turn {hem_depth} more"
        if sheet["turn"].length
        else "Overcast both ends, then turn {hem_depth}"
    )
    sheet.step(
        f"{under} to the wrong side, press, and close the ends of the hems by hand.",
        "from end to end the towel is {length}.",
    )


def _add_row_steps(sheet: Worksheet, towel: bool) -> None:
    wing = str(sheet["needle"].amount).startswith("wing")
    holes = " Its one swing goes into the hem's edge, its other into the single cloth." * wing
    if towel:
        sheet.step(
            "Put in the {needle} needle and the foot whose guide runs along the fold, and sew "
            "across one end, right side up, with the adjusted setting." + holes + " Help neither "
            "by pushing nor by pulling.",
            "after ten repeats the row is {ten_width} long; at the side it has {repeats_width} "
            "repeats.",
        )
        sheet.step("Sew the other end alike, beginning at the same side.")
        return
    sheet.step(
        "Put in the {needle} needle and the foot whose guide runs along the fold. Begin at a "
        "corner, right side up, with the adjusted setting, and sew along the width."
        + holes
        + " Help neither by pushing nor by pulling.",
        "after ten repeats the row is {ten_width} long; at the next corner it has "
        "{repeats_width} repeats.",
    )
    corner = (
        "Sew the corner's own stitch over {corner_unit}, then turn with the needle down"
        if sheet["corner_unit"].length
        else "At the corner stop with the needle down in the hem's edge, lift the foot and turn"
    )
    if sheet["width"].length == sheet["length"].length:
        sheet.step(
            f"{corner} and sew on alike along all four sides.",
            "every side has {repeats_width} repeats.",
        )
        return
    sheet.step(
        f"{corner}. Set the stitch for the length and sew on; alternate so round all four sides.",
        "along the length ten repeats are {ten_length}, and there are {repeats_length}.",
    )
