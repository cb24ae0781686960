"""Box pleats: two folds turned away from each other, the box between them in front.

Each takes four times its depth. Three to one is the rule only where the boxes meet and what shows
of each is twice the depth.
"""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import count, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.families.pleats.pleating import MarginInputs
from handout_engine.families.pleats.pleating_steps import add_pleat_pictures, add_pleat_steps
from handout_engine.shared.folds import Fold, Lie
from handout_engine.working.worksheet import Worksheet


class BoxPleats(MarginInputs):
    """A row of box pleats, touching or with plain cloth between them."""

    title = "Box pleats"
    family = "pleats"
    one_is = "box"
    summary = (
        "Pleats whose two folds turn away from each other, each taking four times its depth; boxes "
        "that meet, or stand apart."
    )

    pleats = count("pleats", "How many boxes.", 8, 60)
    box = optional_length(
        "box",
        "What shows of each box, from fold to fold.",
        "as wide as makes the boxes meet",
        ("1/4 in", "12 in"),
        in_use="box_width",
    )
    depth = optional_length(
        "depth",
        "How far each of the two folds lies behind its box.",
        "half of the box, so that the folds meet behind it",
        ("1/8 in", "6 in"),
        in_use="pleat_depth",
    )
    margin = optional_length(
        "margin",
        "Plain cloth at each side, from the seam to the first pleat.",
        "1/4 in; none in a ring",
        ("0 in", "6 in"),
        in_use="pleat_margin",
    )

    @value("plain margin at each side")
    def pleat_margin(self) -> Length:
        """As asked for, or as is usual."""
        return self.usual_margin

    @value("from each box to the next one")
    def period(self) -> Length:
        """What the margins leave is shared out."""
        return (self.finished_width - 2 * self.pleat_margin) / self.pleats

    @check
    def the_boxes_fit_the_width(self) -> None:
        """Refuse boxes that would lie over one another."""
        self.margins_leave_some_to_pleat()
        if self.box is not None and self.box > self.period:
            room = self.finished_width - 2 * self.pleat_margin
            way = ways(
                at_most(self, "box", self.period, "a box of at most {}"),
                at_most(self, "pleats", (room / self.box).rounded_down(), "at most {} pleats"),
                "a wider panel",
            )
            raise RefusalError(
                f"{self.pleats} boxes of {TAPE.say(self.box)} do not fit in {TAPE.say(room)}; "
                f"use {way}",
                "box",
            )

    @value("what shows of each box", basis=PRACTICE)
    def box_width(self) -> Length:
        """As asked for, or so that the boxes meet."""
        return self.period if self.box is None else self.box

    @value("plain space between two boxes")
    def space(self) -> Length:
        """What the boxes leave."""
        return self.period - self.box_width

    @value("depth of each fold", basis=PRACTICE)
    def pleat_depth(self) -> Length:
        """As asked for, or so that the two folds meet behind their box."""
        return self.box_width / 2 if self.depth is None else self.depth

    @value("folds, two in each box")
    def folds(self) -> Count:
        """One at each side of it."""
        return 2 * self.pleats

    @value("from each box to the next one, flat")
    def flat_step(self) -> Length:
        """Two folds lie between, each doubled."""
        return self.period + 4 * self.pleat_depth

    @value("cloth for each width of pleats")
    def ratio(self) -> Ratio:
        """Three where the boxes meet in front and their folds behind."""
        return self.flat_step / self.period

    @property
    def doubled(self) -> Count:
        """At every fold."""
        return self.folds

    @property
    def shown(self) -> Length:
        """The box."""
        return self.box_width

    @property
    def lying(self) -> Sequence[Fold]:
        """The folds from left to right."""
        depth, box = self.pleat_depth, self.box_width
        first = self.edge + self.pleat_margin + self.space / 2
        starts = [first + self.period * number for number in range(self.pleats)]
        return [
            fold
            for at in starts
            for fold in (Fold(depth, at, Lie.RIGHT), Fold(depth, at + box, Lie.LEFT))
        ]

    def sew(self, sheet: Worksheet) -> None:
        """Joined, hemmed, folded and sewn into its seam."""
        how = (
            "Bring the two folds of each box away from each other, each onto its placement line, "
            "so that the box stands in front and its folded cloth lies behind it."
        )
        add_pleat_steps(sheet, self, how)

    def draw(self, sheet: Worksheet) -> None:
        """The panel, finished and flat, and one box."""
        depth, box = self.pleat_depth, self.box_width
        side = box * 3 / 4
        one = (Fold(depth, side, Lie.RIGHT), Fold(depth, side + box, Lie.LEFT))
        add_pleat_pictures(sheet, self, one, 2 * side + box)


TECHNIQUE = BoxPleats
