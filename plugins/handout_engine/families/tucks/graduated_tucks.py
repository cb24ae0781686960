"""Tucks of different depths in one panel, in one set or in two that face the centre.

Each gap must be at least as wide as the tuck that lies over it, so the direction of pressing
decides which tuck that is.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import accumulate

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.inputs import choice, length, lengths, optional_length
from handout_engine.amounts.lengths import ZERO, Length, total
from handout_engine.amounts.naming import constant
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE, published
from handout_engine.amounts.working_out import Group
from handout_engine.families.tucks.tuck_rows import (
    AWAY,
    LEFT,
    RIGHT,
    TOWARDS,
    TucksSewnThrough,
    lies,
)
from handout_engine.families.tucks.tucking import FinishedWidth
from handout_engine.families.tucks.tucking_pictures import add_pictures
from handout_engine.families.tucks.tucking_steps import add_preparing, add_pressing_step
from handout_engine.shared.folds import Fold, Lie
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

ONE, TWO = "one from the left edge", "two facing the centre"
NO_GAP = constant("no gap beside a single tuck", ZERO, GEOMETRY)


class DepthGiven(Group):
    """The depth of one tuck of the list."""

    def __init__(self, number: int, given: Length) -> None:
        """Take which it is, and its depth."""
        super().__init__(suffix=f"_{number}")
        self.given = given

    @value("depth of tuck {}", basis=GIVEN)
    def depth(self) -> Length:
        """As it stands in the list."""
        return Length(self.given.mm)


class Gap(Group):
    """What lies between two stitching lines."""

    def __init__(self, number: int, parts: Sequence[Length]) -> None:
        """Take the number of the tuck before it, and what it is made up of."""
        super().__init__(suffix=f"_{number}")
        self.number, self.parts = number, parts

    @property
    def words(self) -> str:
        """The two lines."""
        return f"stitching {self.number} to stitching {self.number + 1}"

    @value("from {}")
    def gap(self) -> Length:
        """The tucks that lie over it, and the space that shows."""
        return total(self.parts)


class GraduatedTucks(TucksSewnThrough, FinishedWidth):
    """Tucks whose depths go up in steps."""

    title = "Graduated tucks"
    family = "tucks"
    summary = (
        "Tucks that grow deeper in steps, each gap as wide as the tuck lying over it; one set, or "
        "two facing a centre."
    )

    depths = lengths(
        "depths",
        "Depth of each tuck from left to right, or from the centre outward for two sets.",
        "1/4 in; 3/8 in; 1/2 in; 5/8 in",
        ("1/32 in", "1 1/2 in"),
        20,
    )
    sets = choice("sets", "One set from the left edge, or two that mirror each other.", ONE, TWO)
    finished_width = length(
        "finished width",
        "Width of the tucked panel between its side seams.",
        "8 in",
        ("4 in", "40 in"),
    )
    space = length(
        "space",
        "What shows of the panel between the fold of a tuck and the next stitching.",
        "1/8 in",
        ("0 in", "3 in"),
        basis=PRACTICE,
    )
    spacing = optional_length(
        "spacing",
        "One distance from stitching to stitching for all, instead of space.",
        "worked out gap by gap from the tuck that lies over it and the space",
        ("1/8 in", "6 in"),
    )
    centre_space = optional_length(
        "space at the centre",
        "What shows between two sets, beside the tucks that lie over their gap.",
        "as wide as the space, or as the spacing says",
        ("0 in", "12 in"),
    )
    first_margin = optional_length(
        "margin at the left edge",
        "From the left seam to the first stitching.",
        "what lies over it, and the space; two sets stand in the middle",
        ("0 in", "6 in"),
        in_use="margin",
    )
    press = choice(
        "press", "Which way the tucks lie, seen from the right side.", RIGHT, LEFT, AWAY, TOWARDS
    )

    @group
    def in_order(self) -> tuple[DepthGiven, ...]:
        """The tucks from left to right, each by its depth; two sets are told of one list."""
        given = [DepthGiven(number, depth) for number, depth in enumerate(self.depths, 1)]
        return tuple(given if self.sets == ONE else [*reversed(given), *given])

    @property
    def turns(self) -> list[Lie]:
        """How each of them lies."""
        many = len(self.in_order)
        return [lies(self.press, number, many) for number in range(many)]

    def over(self, number: int) -> list[Length]:
        """The depths of the tucks that lie over the gap behind the tuck of that number."""
        tucks, turns = self.in_order, self.turns
        before = number > 0 and turns[number - 1] is Lie.RIGHT
        after = number < len(tucks) and turns[number] is Lie.LEFT
        covering = tucks[number - 1 : number] * before + tucks[number : number + 1] * after
        return [each.depth for each in covering]

    def in_gap(self, number: int) -> list[Length]:
        """What the gap behind the tuck of that number is made up of."""
        at_centre = self.sets == TWO and number == len(self.depths)
        if at_centre and self.centre_space is not None:
            return [*self.over(number), self.centre_space]
        return [*self.over(number), self.space] if self.spacing is None else [self.spacing]

    @group
    def gaps(self) -> tuple[Gap, ...]:
        """The gaps from left to right."""
        return tuple(Gap(number, self.in_gap(number)) for number in range(1, len(self.in_order)))

    @value("from the first stitching to the last")
    def span(self) -> Length:
        """All gaps one after the other."""
        return total(each.gap for each in self.gaps) if self.gaps else NO_GAP

    @value("margin from the left seam to the first stitching")
    def margin(self) -> Length:
        """As asked for, half of what two sets leave, or what lies over it and the space."""
        if self.first_margin is not None:
            return self.first_margin
        if self.sets == TWO:
            return (self.finished_width - self.span) / 2
        return total([*self.over(0), self.space])

    @value("margin from the last stitching to the right seam")
    def last_margin(self) -> Length:
        """What the tucks and the margin at the left leave."""
        return self.finished_width - self.span - self.margin

    @value("cloth taken by the tucks", basis=published("baldt-1916"))
    def take_up(self) -> Length:
        """Twice each depth, and of two sets twice that."""
        depths = total(each.depth for each in self.in_order[-len(self.depths) :])
        return 4 * depths if self.sets == TWO else 2 * depths

    @property
    def deepest(self) -> DepthGiven:
        """The deepest of the tucks, which is tried on the sample."""
        return max(self.in_order, key=lambda each: each.given.mm)

    @value("from stitching to stitching on the sample")
    def sample_spacing(self) -> Length:
        """Each tuck of the sample is as deep as the deepest."""
        return self.deepest.depth + self.space

    @property
    def trial(self) -> tuple[Length, Length]:
        """The deepest tucks, the space between them."""
        return self.deepest.depth, self.sample_spacing

    @property
    def first_depth(self) -> Length:
        """The depth of the tuck at the left."""
        return self.in_order[0].depth

    @property
    def gap_input(self) -> str:
        """One spacing for all, or the space."""
        return "space" if self.spacing is None else "spacing"

    @property
    def centred(self) -> bool:
        """Two sets are, unless their margin is given."""
        return self.sets == TWO and self.first_margin is None

    @property
    def folds(self) -> Sequence[Fold]:
        """The tucks from left to right."""
        places = accumulate((each.gap for each in self.gaps), initial=self.first_line)
        depths = [each.depth for each in self.in_order]
        return list(map(Fold, depths, places, self.turns))

    def cut(self, sheet: Worksheet) -> None:
        """The panel, with the lines to mark on it."""
        rows = tuple(
            (f"tuck {number}", fold.depth, fold.at) for number, fold in enumerate(self.folds, 1)
        )
        headings = ("Tuck", "Depth", "Stitching, finished, from left")
        sheet.charts.append(Chart("Depth of each tuck", headings, rows))
        super().cut(sheet)

    def sew(self, sheet: Worksheet) -> None:
        """Each tuck at its own depth, then pressed and trimmed."""
        add_preparing(sheet, self)
        depths = [each.whole_name("depth") for each in self.in_order]
        sheet.step(
            "Fold wrong sides together along the first fold line, so that its two stitching lines "
            f"lie on each other; press the fold. Stitch {{{depths[0]}}} from the fold, from end to "
            "end, on the side that will be seen.",
            f"the tuck is {{{depths[0]}}} deep all along, and the panel is now {{first_sewn}} from "
            "raw edge to raw edge.",
        )
        if len(depths) > 1:
            order = "; ".join(f"tuck {number} {{{name}}}" for number, name in enumerate(depths, 1))
            sheet.step(
                f"Sew the others from left to right, each at its own depth: {order}. Set the "
                "gauge anew for each, and press each flat before you fold the next."
            )
        add_pressing_step(sheet, self.press, len(depths))

    def draw(self, sheet: Worksheet) -> None:
        """The panel, finished and flat, and its deepest tuck."""
        add_pictures(sheet, self, sheet[self.deepest.whole_name("depth")])


TECHNIQUE = GraduatedTucks
