"""Lace shaped to a circle or an arc by drawing up its heading thread on the inside."""

from __future__ import annotations

from fractions import Fraction
from math import pi
from typing import ClassVar

from handout_engine.amounts.inputs import angle, choice, count, length
from handout_engine.amounts.lengths import from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.lace import (
    LaceInputs,
    add_lace_supplies,
    add_lace_washing_step,
    note_lace_to_buy,
)
from handout_engine.shared.round_lace_drawing import marked_lace, round_lace
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Step
from handout_engine.working.worksheet import Worksheet

OUTER, INNER = "outer line", "inner line"
CLOSE_GATHERS = Fraction(1, 3)


class RoundLace(LaceInputs, Technique):
    """Lace measured on its outer line and drawn up along its inner one."""

    title: ClassVar[str] = "Lace in the round"
    family: ClassVar[str] = "lace"
    summary: ClassVar[str] = (
        "Lace laid in a circle or an arc: cut as long as its outer line, and shaped inside by its "
        "own heading thread."
    )

    radius = length(
        "radius", "From the centre to the line that is measured.", "4 in", ("1/2 in", "40 in")
    )
    measured = choice(
        "radius measured to", "The outer or the inner edge of the lace.", OUTER, INNER
    )
    turn = angle(
        "arc",
        "How far round the lace goes: 360 for a circle, 180 for half of one.",
        "360",
        ("10", "360"),
    )
    parts = count(
        "parts", "Equal parts into which line and lace are marked, so that they match.", 8, 24
    )

    def whole(self) -> Worksheet:
        """Both lines, what the inside loses, the length and the marks; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _note_radii(sheet, self)
        _note_lines(sheet, self)
        _note_parts(sheet, self)
        sheet.note("lace_length", "lace, cut length",
                   sheet["outer_line"].length + 2 * self.end_allowance,
                   "{outer_line} + 2 × {end_allowance}")  # fmt: skip
        note_lace_to_buy(sheet, sheet["lace_length"])
        add_lace_supplies(
            sheet, "a firm pad to pin on", "fine pins", "paper to draw the shape",
            "lace with a heading thread that can be drawn",
        )  # fmt: skip
        _add_sample(sheet)
        sheet.charts.append(_chart(sheet, self))
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet


def _note_radii(sheet: Worksheet, lace: RoundLace) -> None:
    if lace.measured == INNER:
        sheet.note("inner_radius", "inner radius", lace.radius, "", basis=GIVEN)
        sheet.note("outer_radius", "outer radius", lace.radius + lace.lace_width,
                   "{inner_radius} + {lace_width}")  # fmt: skip
        return
    if lace.radius <= lace.lace_width:
        tape = Tape(finest=32)
        raise RefusalError(
            f"radius {tape.say(lace.radius)} is no more than lace_width "
            f"{tape.say(lace.lace_width)}, so nothing is left inside; use a radius of more than "
            f"{tape.no_less(lace.lace_width)} or narrower lace",
            "radius",
        )
    sheet.note("outer_radius", "outer radius", lace.radius, "", basis=GIVEN)
    sheet.note("inner_radius", "inner radius", lace.radius - lace.lace_width,
               "{outer_radius} - {lace_width}")  # fmt: skip


def _note_lines(sheet: Worksheet, lace: RoundLace) -> None:
    round_once = float(lace.turn) * pi / 180
    for line in ("outer", "inner"):
        radius = sheet[f"{line}_radius"]
        sheet.note(f"{line}_line", f"{line} line of the lace",
                   from_float(radius.mm * round_once), "{radius} × π × {turn} / 180",
                   radius=radius)  # fmt: skip
    outer, inner = sheet["outer_line"], sheet["inner_line"]
    sheet.note("inside_loses", "the inside must lose", outer.length - inner.length,
               "{outer_line} - {inner_line}")  # fmt: skip
    sheet.note("share_lost", "share of the inside that is drawn up",
               1 - inner.length / outer.length, "({outer_line} - {inner_line}) / {outer_line}",
               saying=Saying.PERCENT)  # fmt: skip


def _note_parts(sheet: Worksheet, lace: RoundLace) -> None:
    for line in ("outer", "inner"):
        sheet.note(f"{line}_part", f"one part on the {line} line",
                   sheet[f"{line}_line"].length / lace.parts,
                   f"{{{line}_line}} / {{parts}}")  # fmt: skip


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence("Mark one part of {outer} on a scrap of the lace, and draw the heading thread "
                     "on one side until that side is {inner}.",
                     outer=sheet["outer_part"], inner=sheet["inner_part"]),
            sentence("steamed flat it curves like the drawing and keeps its fine gathers apart; a "
                     "heading that will not draw that far asks for narrower lace or a larger "
                     "circle."),
        )
    )  # fmt: skip


def _chart(sheet: Worksheet, lace: RoundLace) -> Chart:
    """Where each mark falls along the flat lace and along both lines."""
    rows = []
    for number in range(lace.parts + 1):
        outer, inner = (sheet[f"{line}_part"].length * number for line in ("outer", "inner"))
        rows.append((f"mark {number}", lace.end_allowance + outer, outer, inner))
    headings = ("Mark", "On the flat lace", "On the outer line", "On the inner line")
    return Chart("Marks, from the first end", headings, tuple(rows))


def _add_steps(sheet: Worksheet, lace: RoundLace) -> None:
    add_lace_washing_step(sheet)
    sheet.step(
        "On paper draw two lines round one centre, {outer_radius} and {inner_radius} from it, "
        "and divide them into {parts} parts.",
        "each part is {outer_part} on the outer line.",
    )
    sheet.step(
        "Cut the lace {lace_length} long, and mark it at both end allowances and at every part, "
        "{outer_part} apart."
    )
    sheet.step(
        "Pin the lace on the paper along the OUTER line, right side up, mark to mark, each pin "
        "slanting outward. Let the inner edge stand up as it likes."
    )
    close = " It gathers closely: draw from both ends toward the middle."
    share = sheet["share_lost"].amount
    assert isinstance(share, Fraction)
    sheet.step(
        "Find the strongest thread in the inner heading, draw it up a little at a time and spread "
        "the fullness until the inner edge lies on the inner line."
        + (close if share > CLOSE_GATHERS else ""),
        "the inner edge is {inner_line} long, {inside_loses} less than it was, and each part of it "
        "{inner_part}.",
    )
    sheet.step(
        "Steam it through a damp cloth without moving the iron, let it dry on the pins, then "
        "fasten the drawn thread at both ends."
    )
    join = (
        "Join the two ends in a fine seam with {end_allowance} on each side."
        if lace.turn == 360
        else "Leave {end_allowance} at each end to go into the seams there."
    )
    sheet.step(join)
    sheet.step(
        "Pin the shape on the cloth and whip or pin stitch the outer edge first, then the inner "
        "one. Cut the cloth away behind it only after both are sewn."
    )


def _draw(sheet: Worksheet, lace: RoundLace) -> None:
    radii = sheet["outer_radius"], sheet["inner_radius"]
    plan = Scene(
        sentence("The lace in its shape"),
        sentence("Outer radius {outer}, inner radius {inner}.", outer=radii[0], inner=radii[1]),
        round_lace(radii, sheet["lace_width"], float(lace.turn), lace.parts.number),
    )
    part = Scene(
        sentence("One part of the lace"),
        sentence("{outer} along the outer edge is drawn up to {inner} along the inner one.",
                 outer=sheet["outer_part"], inner=sheet["inner_part"]),
        marked_lace(sheet["outer_part"], sheet["inner_part"], sheet["lace_width"]),
        tallest=220.0,
    )  # fmt: skip
    sheet.pictures.append(
        Picture("finished", sentence("The finished shape with the marks that divide it."), plan,
                finished=True, sheet=plan)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("part", sentence("One part: flat with its heading thread dotted, and drawn up."),
                part)
    )  # fmt: skip


TECHNIQUE = RoundLace
