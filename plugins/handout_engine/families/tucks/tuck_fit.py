"""Tucks fitted between a flat panel and a finished one: three measures give the fourth.

The flat panel is the finished one and twice the depth for every tuck. A count is whole, so what is
left over when it is worked out goes to the margins.
"""

from __future__ import annotations

from math import ceil, floor
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, optional_length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import GIVEN, PRACTICE, published
from handout_engine.amounts.ways_out import at_least, at_most, more_than, ways
from handout_engine.cloth.cloth import note_cloth
from handout_engine.families.tucks.tucking import (
    LEFT,
    RIGHT,
    TAPE,
    EqualRow,
    SpareInputs,
    TuckInputs,
    add_panel,
    add_sample,
    add_supplies,
    add_tuck_chart,
    note_cut_length,
    note_lines,
    note_spare,
)
from handout_engine.families.tucks.tucking_pictures import TuckPictures, add_pictures
from handout_engine.families.tucks.tucking_room import check_gaps, check_margins
from handout_engine.families.tucks.tucking_steps import add_cutting_step, add_tuck_steps
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet

MOST_TUCKS = 40
LABELS = {
    "panel": "flat panel, raw edge to raw edge",
    "finished_width": "wanted width, raw edge to raw edge",
    "tucks": "tucks",
    "depth": "depth of a tuck",
}
USUAL: dict[str, Amount] = {
    "panel": inches(12), "finished_width": inches(8), "tucks": None, "depth": inches("1/4")
}  # fmt: skip


class TuckFit(SpareInputs, TuckInputs, Technique):
    """The missing one of panel, finished width, number of tucks and depth."""

    title: ClassVar[str] = "Tucks to fit"
    family: ClassVar[str] = "tucks"
    summary: ClassVar[str] = (
        "Of flat panel, finished width, number of tucks and their depth, three give the fourth."
    )

    one_left_out: ClassVar[tuple[str, ...]] = ("panel", "finished_width", "tucks", "depth")

    spare_width = length(
        "spare width",
        "Added to the width that is wanted, for what the turns of the tucks take; none, unless "
        "you keep some, since what a whole count leaves over is spare enough.",
        "0 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    panel = optional_length(
        "panel",
        "Width of the flat panel, raw edge to raw edge.",
        "worked out from the other three; 12 in when none of the four is given",
        ("4 in", "120 in"),
    )
    finished_width = optional_length(
        "finished width",
        "Width of the panel once tucked, raw edge to raw edge too.",
        "worked out from the other three; 8 in when none of the four is given",
        ("2 in", "40 in"),
    )
    tucks = optional_count(
        "tucks", "How many tucks.", "worked out from the other three", MOST_TUCKS
    )
    depth = optional_length(
        "depth of a tuck",
        "From the stitching to the fold.",
        "worked out from the other three; 1/4 in when none of the four is given",
        ("1/32 in", "2 in"),
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished.",
        "the wanted width shared out evenly, margins as wide as the spacing",
        ("1/32 in", "6 in"),
        in_use="tuck_spacing",
    )
    press = choice("press", "Which way the tucks lie, seen from the right side.", RIGHT, LEFT)

    def whole(self) -> Worksheet:
        """The missing measure, then panel, lines, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _solve(sheet, self)
        row = _note_row(sheet, self)
        panel = row.placed(sheet)
        check_gaps(sheet, panel, "spacing")
        check_margins(sheet, panel, symmetrical=True, width=None)
        note_cut_length(sheet)
        note_lines(sheet, row)
        add_panel(sheet, "panel for tucks")
        add_tuck_chart(sheet, panel)
        note_cloth(sheet, "cloth", self.cloth())
        add_supplies(sheet)
        add_sample(sheet, row.depth, row.spacing)
        add_cutting_step(sheet, panel)
        add_tuck_steps(sheet, row.depth, self.press, row.tucks.whole)
        add_pictures(sheet, TuckPictures(panel, row.depth, self.title))
        return sheet


def _solve(sheet: Worksheet, fit: TuckFit) -> None:
    """Note all four measures, the missing one with its formula; raises RefusalError."""
    given: dict[str, Amount] = {name: getattr(fit, name) for name in fit.one_left_out}
    basis = GIVEN
    if not any(amount is not None for amount in given.values()):
        given, basis = USUAL, PRACTICE
    missing = [name for name, amount in given.items() if amount is None]
    if not missing:
        raise RefusalError(
            "all four of panel, finished_width, tucks and depth are given; leave one out, and it "
            "is worked out from the others",
            "tucks",
        )
    if len(missing) > 1:
        raise RefusalError(
            f"{' and '.join(missing)} are both missing; give three of panel, finished_width, tucks "
            "and depth, and the fourth is worked out",
            missing[0],
        )
    names = {"panel": "panel_cut_width", "finished_width": "wanted_width", "tucks": "tuck_count",
             "depth": "tuck_depth"}  # fmt: skip
    for name, amount in given.items():
        if amount is not None:
            sheet.note(names[name], LABELS[name], amount, "", basis=basis)
    {"panel": _panel, "finished_width": _finished, "tucks": _count, "depth": _depth}[missing[0]](
        sheet
    )
    _note_results(sheet)


def _panel(sheet: Worksheet) -> None:
    take_up = 2 * sheet["tuck_count"].whole * sheet["tuck_depth"].length
    sheet.note("panel_cut_width", LABELS["panel"],
               sheet["wanted_width"].length + take_up + sheet["spare_width"].length,
               "{wanted_width} + 2 × {tuck_count} × {tuck_depth} + {spare_width}")  # fmt: skip


def _finished(sheet: Worksheet) -> None:
    take_up = 2 * sheet["tuck_count"].whole * sheet["tuck_depth"].length
    panel = sheet["panel_cut_width"].length - sheet["spare_width"].length
    if take_up >= panel:
        most = ceil(panel / (2 * sheet["tuck_depth"].length)) - 1
        fewer = at_most(sheet.technique, "tucks", most, "at most {} tucks")
        raise RefusalError(
            f"the tucks take {TAPE.both(take_up)}, all of the panel of "
            f"{TAPE.say(sheet['panel_cut_width'].length)}{_and_spare(sheet)}; use "
            f"{ways(fewer, 'shallower ones')}",
            "tucks",
        )
    sheet.note("wanted_width", LABELS["finished_width"], panel - take_up,
               "{panel_cut_width} - 2 × {tuck_count} × {tuck_depth} - {spare_width}")  # fmt: skip


def _to_take(sheet: Worksheet) -> Length:
    """What the tucks have to take up; refuses a panel that is no wider than it shall become."""
    panel = sheet["panel_cut_width"].length
    wanted = sheet["wanted_width"].length + sheet["spare_width"].length
    if panel <= wanted:
        wider = more_than(sheet.technique, "panel", wanted, "a panel wider than {}")
        raise RefusalError(
            f"panel {TAPE.say(panel)} is no wider than finished_width "
            f"{TAPE.say(sheet['wanted_width'].length)}{_and_spare(sheet)}, so no tuck can be taken "
            f"from it; use {ways(wider, 'a smaller finished_width')}",
            "panel",
        )
    return panel - wanted


def _and_spare(sheet: Worksheet) -> str:
    return " with its spare" if sheet["spare_width"].length else ""


def _count(sheet: Worksheet) -> None:
    """Note the count, which is whole and rounded down."""
    to_take, depth = _to_take(sheet), sheet["tuck_depth"].length
    tucks = floor(to_take / (2 * depth))
    if tucks < 1:
        shallower = at_most(sheet.technique, "depth", to_take / 2, "a depth of at most {}")
        raise RefusalError(
            f"one tuck {TAPE.say(depth)} deep takes {TAPE.both(2 * depth)}, and only "
            f"{TAPE.both(to_take)} is to be taken up; use {ways(shallower, 'a wider panel')}",
            "depth",
        )
    if tucks > MOST_TUCKS:
        deeper = at_least(sheet.technique, "depth", to_take / (2 * MOST_TUCKS),
                          "a depth of at least {}")  # fmt: skip
        raise RefusalError(
            f"{tucks} tucks would be needed, more than {MOST_TUCKS}; use "
            f"{ways(deeper, 'a narrower panel')}",
            "depth",
        )
    sheet.note("tuck_count", LABELS["tucks"], tucks,
               "({panel_cut_width} - {wanted_width} - {spare_width}) / (2 × {tuck_depth}), "
               "rounded down")  # fmt: skip


def _depth(sheet: Worksheet) -> None:
    sheet.note(
        "tuck_depth",
        LABELS["depth"],
        _to_take(sheet) / (2 * sheet["tuck_count"].whole),
        "({panel_cut_width} - {wanted_width} - {spare_width}) / (2 × {tuck_count})",
    )


def _note_results(sheet: Worksheet) -> None:
    """Note what the tucks take, the width that comes of it, and what is left over."""
    take_up = sheet.note("take_up", "cloth taken by the tucks",
                         2 * sheet["tuck_count"].whole * sheet["tuck_depth"].length,
                         "2 × {tuck_depth} × {tuck_count}",
                         basis=published("baldt-1916"))  # fmt: skip
    tucked = sheet.note("tucked_width", "tucked panel, raw edge to raw edge",
                        sheet["panel_cut_width"].length - take_up.length
                        - sheet["spare_width"].length,
                        "{panel_cut_width} - {take_up} - {spare_width}")  # fmt: skip
    note_spare(sheet)
    sheet.note("left_over", "left over for the margins, since a count is whole",
               tucked.length - sheet["wanted_width"].length,
               "{tucked_width} - {wanted_width}")  # fmt: skip


def _note_row(sheet: Worksheet, fit: TuckFit) -> EqualRow:
    """Note spacing and margins: both margins take half of what is left over."""
    tucks, seams = sheet["tuck_count"], 2 * fit.side_allowance
    if sheet["wanted_width"].length <= seams:
        wider = more_than(fit, "finished_width", seams, "a finished_width of more than {}")
        raise RefusalError(
            f"finished_width {TAPE.say(sheet['wanted_width'].length)} is all seam, for it runs "
            f"from raw edge to raw edge; use {ways(wider, 'narrower side allowances')}",
            "finished_width",
        )
    inside = sheet.note("wanted_inside", "wanted width, seam to seam",
                        sheet["wanted_width"].length - seams,
                        "{wanted_width} - 2 × {side_allowance}")  # fmt: skip
    if fit.spacing is not None:
        spacing = sheet.note("tuck_spacing", "from stitching to stitching", fit.spacing, "",
                             basis=GIVEN)  # fmt: skip
    else:
        spacing = sheet.note("tuck_spacing", "from stitching to stitching",
                             inside.length / (tucks.whole + 1),
                             "{wanted_inside} / ({tuck_count} + 1)")  # fmt: skip
    margin = sheet.note(
        "margin", "margin from each seam to the nearest stitching",
        (sheet["tucked_width"].length - seams - spacing.length * (tucks.whole - 1)) / 2,
        "({tucked_width} - 2 × {side_allowance} - {tuck_spacing} × ({tuck_count} - 1)) / 2",
    )  # fmt: skip
    return EqualRow(tucks, sheet["tuck_depth"], spacing, margin, fit.press)


TECHNIQUE = TuckFit
