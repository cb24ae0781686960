"""Lace shaped to a circle or an arc by drawing up its heading thread on the inside."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.angles import arc
from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import angle, choice, count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.lace import (
    LaceInputs,
    add_lace_supplies,
    add_lace_washing_step,
    marks,
)
from handout_engine.shared.round_lace_drawing import marked_lace, round_lace
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

OUTER, INNER = "outer line", "inner line"
CLOSE_GATHERS = Fraction(1, 3)
"""Lace that is drawn up by more than this share gathers closely."""


class RoundLace(LaceInputs):
    """Lace measured on its outer line and drawn up along its inner one."""

    title = "Lace in the round"
    family = "lace"
    summary = (
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

    @value("outer radius")
    def outer_radius(self) -> Length:
        """As measured, or the width of the lace beyond the inner one."""
        return self.radius if self.measured == OUTER else self.inner_radius + self.lace_width

    @value("inner radius")
    def inner_radius(self) -> Length:
        """As measured, or the width of the lace inside the outer one."""
        return self.radius if self.measured == INNER else self.outer_radius - self.lace_width

    @check
    def something_is_left_inside(self) -> None:
        """Refuse lace that fills its whole circle."""
        if self.measured == OUTER and self.radius <= self.lace_width:
            raise RefusalError(
                f"radius {TAPE.say(self.radius)} is no more than lace_width "
                f"{TAPE.say(self.lace_width)}, so nothing is left inside; use a radius of more "
                f"than {TAPE.no_less(self.lace_width)} or narrower lace",
                "radius",
            )

    @value("outer line of the lace")
    def outer_line(self) -> Length:
        """The longer of its edges, by which it is cut."""
        return self.outer_radius * arc(self.turn)

    @value("inner line of the lace")
    def inner_line(self) -> Length:
        """What its other edge is drawn up to."""
        return self.inner_radius * arc(self.turn)

    @value("the inside must lose")
    def inside_loses(self) -> Length:
        """Flat, both edges are as long as the outer line."""
        return self.outer_line - self.inner_line

    @value("share of the inside that is drawn up", saying=Saying.PERCENT)
    def share_lost(self) -> Ratio:
        """By it one sees how closely it will gather."""
        return self.inside_loses / self.outer_line

    @value("one part on the outer line")
    def outer_part(self) -> Length:
        """From mark to mark, on the flat lace as well."""
        return self.outer_line / self.parts

    @value("one part on the inner line")
    def inner_part(self) -> Length:
        """What each part of the heading is drawn up to."""
        return self.inner_line / self.parts

    @value("lace, cut length")
    def lace_length(self) -> Length:
        """The outer line, and what both ends take."""
        return self.outer_line + 2 * self.end_allowance

    def cut(self, sheet: Worksheet) -> None:
        """Where each mark falls along the flat lace and along both lines."""
        number = self.parts + 1
        rows = zip(
            [f"mark {each}" for each in range(number)],
            marks(self.outer_part, number, self.end_allowance),
            marks(self.outer_part, number),
            marks(self.inner_part, number),
            strict=True,
        )
        headings = ("Mark", "On the flat lace", "On the outer line", "On the inner line")
        sheet.charts.append(Chart("Marks, from the first end", headings, tuple(rows)))

    def sew(self, sheet: Worksheet) -> None:
        """The lace pinned along its outer line, drawn up inside, steamed and sewn on."""
        add_lace_supplies(
            sheet,
            "a firm pad to pin on",
            "fine pins",
            "paper to draw the shape",
            "lace with a heading thread that can be drawn",
        )
        sheet.trial(
            "Mark one part of {outer_part} on a scrap of the lace, and draw the heading "
            "thread on one side until that side is {inner_part}.",
            "steamed flat it curves like the drawing and keeps its fine gathers apart; a "
            "heading that will not draw that far asks for narrower lace or a larger circle.",
        )
        add_lace_washing_step(sheet)
        sheet.step(
            "On paper draw two lines round one centre, {outer_radius} and {inner_radius} from it, "
            "and divide them into {parts} parts.",
            "each part is {outer_part} on the outer line.",
        )
        sheet.step(
            "Cut the lace {lace_length} long, and mark it at both end allowances and at every "
            "part, {outer_part} apart."
        )
        self._add_shaping(sheet)
        sheet.step(
            "Join the two ends in a fine seam with {end_allowance} on each side."
            if self.turn == 360
            else "Leave {end_allowance} at each end to go into the seams there."
        )
        sheet.step(
            "Pin the shape on the cloth and whip or pin stitch the outer edge first, then the "
            "inner one. Cut the cloth away behind it only after both are sewn."
        )

    def _add_shaping(self, sheet: Worksheet) -> None:
        close = " It gathers closely: draw from both ends toward the middle."
        sheet.step(
            "Pin the lace on the paper along the OUTER line, right side up, mark to mark, each pin "
            "slanting outward. Let the inner edge stand up as it likes."
        )
        sheet.step(
            "Find the strongest thread in the inner heading, draw it up a little at a time and "
            "spread the fullness until the inner edge lies on the inner line."
            + (close if self.share_lost > CLOSE_GATHERS else ""),
            "the inner edge is {inner_line} long, {inside_loses} less than it was, and each part "
            "of it {inner_part}.",
        )
        sheet.step(
            "Steam it through a damp cloth without moving the iron, let it dry on the pins, then "
            "fasten the drawn thread at both ends."
        )

    def draw(self, sheet: Worksheet) -> None:
        """The shape with its marks, and one part of it flat and drawn up."""
        radii, width = (sheet["outer_radius"], sheet["inner_radius"]), sheet["lace_width"]
        plan = Scene(
            sheet.sentence("The lace in its shape"),
            sheet.sentence("Outer radius {outer_radius}, inner radius {inner_radius}."),
            round_lace(radii, width, float(self.turn), self.parts.number),
        )
        sheet.show(
            "finished",
            "The finished shape with the marks that divide it.",
            plan,
            finished=True,
            sheet=plan,
        )
        part = Scene(
            sheet.sentence("One part of the lace"),
            sheet.sentence(
                "{outer_part} along the outer edge is drawn up to {inner_part} along the inner one."
            ),
            marked_lace(sheet["outer_part"], sheet["inner_part"], width),
            tallest=220.0,
        )
        sheet.show("part", "One part: flat with its heading thread dotted, and drawn up.", part)


TECHNIQUE = RoundLace
