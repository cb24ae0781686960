"""Lace edging gathered to an edge by its own heading thread."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, ratio
from handout_engine.amounts.lengths import ZERO
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.edgings_drawing import edging
from handout_engine.families.lace.lace import (
    LaceInputs,
    add_lace_supplies,
    add_lace_washing_step,
    note_lace_to_buy,
)
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.working.cautions import NOT_SLEEPWEAR
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Seam, Step
from handout_engine.working.worksheet import Worksheet

OPEN, RING = "open", "ring"
ROLLED, ENTREDEUX = "a rolled edge", "entredeux"


class GatheredEdging(LaceInputs, Technique):
    """Lace edging drawn up on its heading thread and whipped to a rolled edge or an entredeux."""

    title: ClassVar[str] = "Gathered lace edging"
    family: ClassVar[str] = "lace"
    summary: ClassVar[str] = (
        "Lace edging gathered by its own heading thread and whipped to an edge, with more at each "
        "corner."
    )

    edge = length(
        "edge",
        "Length of the finished edge that the lace is sewn to, round all corners.",
        "24 in",
        ("1 in", "20 yd"),
    )
    fullness = ratio(
        "fullness", "Length of the lace for each length of edge.", "1.5", ("1", "4"), basis=PRACTICE
    )
    corners = optional_count("corners", "Outward corners that the lace turns.", "none", 24)
    corner_widths = ratio(
        "extra at a corner",
        "Lace eased in at each corner beyond the fullness, in widths of the lace.",
        "2",
        ("0", "6"),
        group=SEWING,
        basis=PRACTICE,
    )
    onto = choice(
        "sewn to",
        "Cloth whose edge is rolled, or the holes of an entredeux.",
        ROLLED,
        ENTREDEUX,
        group=SEWING,
    )
    ends = choice("ends", "Open, or a ring whose ends are joined.", OPEN, RING, group=SEWING)
    roll = length(
        "roll takes",
        "Cloth that the rolled and whipped edge takes.",
        "3 mm",
        ("0 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Length, marks, what the cloth gives to its roll, and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _note_lengths(sheet, self)
        note_lace_to_buy(sheet, sheet["lace_length"])
        if self.onto == ROLLED:
            sheet.seams.append(Seam("edge, rolled and whipped", self.roll))
        sheet.seams.append(Seam("lace heading", ZERO))
        add_lace_supplies(sheet, "pins", "lace edging with a heading thread that can be drawn")
        sheet.cautions.append(NOT_SLEEPWEAR)
        _add_sample(sheet, self)
        sheet.charts.append(_chart(sheet, self))
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet


def _note_lengths(sheet: Worksheet, lace: GatheredEdging) -> None:
    number = lace.corners or 0
    if number and lace.edge < lace.lace_width * number:
        tape = Tape(finest=32)
        most = int(lace.edge / lace.lace_width)
        fewer = at_most(lace, "corners", most, "at most {} corners")
        raise RefusalError(
            f"corners {number} on an edge of {tape.say(lace.edge)} leave less than one width of "
            f"lace between them; use {ways(fewer, 'narrower lace')}",
            "corners",
        )
    sheet.note("gathered_length", "lace for the edge itself", lace.edge * lace.fullness,
               "{fullness} × {edge}")  # fmt: skip
    formula, extra = "{gathered_length}", ZERO
    if number:
        one = sheet.note("corner_takes", "extra lace at one corner",
                         lace.lace_width * lace.corner_widths,
                         "{corner_widths} × {lace_width}", basis=GEOMETRY)  # fmt: skip
        formula, extra = formula + " + {corners} × {corner_takes}", one.length * number
    sheet.note("lace_length", "lace, cut length",
               sheet["gathered_length"].length + extra + 2 * lace.end_allowance,
               formula + " + 2 × {end_allowance}", finishes="edge")  # fmt: skip
    sheet.note("edge_quarter", "one quarter of the edge", lace.edge / 4, "{edge} / 4")
    sheet.note("lace_quarter", "one quarter of the lace",
               (sheet["lace_length"].length - 2 * lace.end_allowance) / 4,
               "({lace_length} - 2 × {end_allowance}) / 4")  # fmt: skip
    if lace.onto == ROLLED:
        sheet.note("cloth_edge", "raw edge of the cloth, beyond the line where the lace begins",
                   lace.roll, "{roll}")  # fmt: skip


def _add_sample(sheet: Worksheet, lace: GatheredEdging) -> None:
    scrap = sheet.note("sample_scrap", "scrap of lace to gather", 8 * lace.lace_width,
                       "8 × {lace_width}")  # fmt: skip
    drawn = sheet.note("sample_drawn_up", "scrap of lace, drawn up",
                       scrap.length / lace.fullness, "{sample_scrap} / {fullness}")  # fmt: skip
    sheet.sample.append(
        Step(
            sentence("Draw {scrap} of the lace up to {drawn} by its heading thread.",
                     scrap=scrap, drawn=drawn),
            sentence("it should look as full as you want. Fine narrow lace takes more, wide lace "
                     "with a large pattern less; the scrap's length divided by what it measures "
                     "now is your fullness."),
        )
    )  # fmt: skip


def _chart(sheet: Worksheet, lace: GatheredEdging) -> Chart:
    """Quarter marks on lace and edge."""
    rows = tuple(
        (
            f"mark {number}",
            sheet["edge_quarter"].length * number,
            lace.end_allowance + sheet["lace_quarter"].length * number,
        )
        for number in range(5)
    )
    return Chart("Quarter marks, from the first end", ("Mark", "On the edge", "On the lace"), rows)


def _add_steps(sheet: Worksheet, lace: GatheredEdging) -> None:
    add_lace_washing_step(sheet)
    sheet.step("Cut the lace {lace_length} long.")
    if lace.ends == RING:
        sheet.step(
            "Join the ends in a fine seam, {end_allowance} from each, matching the pattern of the "
            "lace, and trim and overcast it.",
            "round its heading the ring is {around}.",
            around=sheet["lace_length"].length - 2 * lace.end_allowance,
        )
    else:
        sheet.step("Turn half of the {end_allowance} at each end under twice, and hem it down.")
    sheet.step("Mark the quarters of lace and edge with pins as the chart says.")
    sheet.step(
        "Pull the strongest thread in the straight heading of the lace from both ends toward the "
        "middle, and stroke the gathers even. Do not sew a gathering row: the thread is there.",
        "drawn up, each quarter of the lace is {edge_quarter} along its heading"
        + (", with the extra for the corners pushed to them." if lace.corners else "."),
    )
    if lace.corners:
        sheet.step(
            "At each corner push {corner_takes} of lace together, half of it on either side, so "
            "that the outer edge fans out and does not cup.",
            "laid flat, the outer edge of the lace stands square at the corner.",
        )
    if lace.onto == ROLLED:
        sheet.step(
            "Cut the edge of the cloth {cloth_edge} beyond the line where the lace is to begin, "
            "roll it toward you and whip the heading of the lace to the roll, right sides "
            "together, one stitch to each thread of the heading.",
            "opened out, the heading lies on the edge line and the whole edge is {edge}.",
        )
    else:
        sheet.step(
            "Trim the free allowance of the entredeux off close to its cord, lay the heading of "
            "the lace beside it, right sides together, and whip the two, one stitch into each "
            "hole.",
            "opened out, lace and entredeux lie flat and the whole edge is {edge}.",
        )
    sheet.step("Fasten the drawn thread with three small stitches and cut it off.")


def _draw(sheet: Worksheet, lace: GatheredEdging) -> None:
    finished = Scene(
        sentence("Gathered lace edging, finished"),
        sentence("Lace {width} wide, gathered {fullness} to 1 on an edge of {edge}.",
                 width=sheet["lace_width"], fullness=lace.fullness, edge=sheet["edge"]),
        edging(sheet["edge"], sheet["lace_width"], float(lace.fullness), bool(lace.corners)),
    )  # fmt: skip
    ratio = Scene(
        sentence("Lace and edge"),
        sentence("{lace} of lace is drawn up to {edge}.", lace=sheet["lace_length"],
                 edge=sheet["edge"]),
        quarters(sheet["edge"], sheet["lace_length"]),
    )  # fmt: skip
    part = ", round one corner" if lace.corners else ""
    sheet.pictures.append(
        Picture("finished", sentence(f"A part of the finished edge{part}, right side up."),
                finished, finished=True)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("quarters", sentence("Above the lace, below the edge it is drawn up to, at their "
                                     "true ratio; quarter mark meets quarter mark."), ratio)
    )  # fmt: skip


TECHNIQUE = GatheredEdging
