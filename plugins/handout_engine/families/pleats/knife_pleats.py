"""Knife pleats: every fold turned the same way, in a row or all round.

Each pleat takes twice its depth. Three to one is the rule only where the depth is what shows.
"""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import choice, count, optional_length
from handout_engine.amounts.lengths import ZERO, Length, most
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import published
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.families.pleats.pleating import MarginInputs
from handout_engine.families.pleats.pleating_steps import add_pleat_pictures, add_pleat_steps
from handout_engine.shared.folds import Fold, Lie
from handout_engine.working.worksheet import Worksheet

RIGHT, LEFT = "to the right", "to the left"


class KnifePleats(MarginInputs):
    """A row of pleats that all turn one way."""

    title = "Knife pleats"
    family = "pleats"
    summary = (
        "Pleats that all turn one way, each taking twice its depth; three to one where the depth "
        "is what shows."
    )

    pleats = count("pleats", "How many pleats.", 12, 120)
    visible = optional_length(
        "visible width",
        "What shows of each pleat, from fold to fold.",
        "the finished width without its margins, shared out by the pleats",
        ("1/8 in", "6 in"),
        in_use="pleat_visible",
    )
    depth = optional_length(
        "depth",
        "How far each fold lies behind, from its outer to its inner fold.",
        "as deep as what shows, so that the pleats take three times their width",
        ("1/8 in", "6 in"),
        in_use="pleat_depth",
    )
    margin = optional_length(
        "margin",
        "Plain cloth at each side, from the seam to the first pleat.",
        "1/4 in, none in a ring, or what the visible width leaves",
        ("0 in", "6 in"),
        in_use="pleat_margin",
    )
    turned = choice(
        "folds turn", "Which way the outer folds point, seen from the right side.", RIGHT, LEFT
    )

    @check
    def the_width_is_given_once(self) -> None:
        """Refuse a margin beside what shows, which settles it."""
        if self.visible is not None and self.margin is not None:
            raise RefusalError(
                "visible and margin say the same thing twice; write one of them", "margin"
            )

    @value("what shows of each pleat")
    def pleat_visible(self) -> Length:
        """As asked for, or shared out between the margins."""
        if self.visible is not None:
            return self.visible
        return (self.finished_width - 2 * self.pleat_margin) / self.pleats

    @check
    def the_pleats_fit_the_width(self) -> None:
        """Refuse pleats that show more than there is."""
        if self.visible is not None and self.visible * self.pleats > self.finished_width:
            each = self.finished_width / self.pleats
            narrower = at_most(self, "visible", each, "at most {} each")
            fewer = (self.finished_width / self.visible).rounded_down()
            fewer_pleats = at_most(self, "pleats", fewer, "at most {} pleats")
            raise RefusalError(
                f"{self.pleats} pleats of {TAPE.say(self.visible)} show "
                f"{TAPE.both(self.visible * self.pleats)}, more than finished_width "
                f"{TAPE.say(self.finished_width)}; use "
                f"{ways(narrower, fewer_pleats, 'a wider panel')}",
                "visible",
            )

    @value("plain margin at each side")
    def pleat_margin(self) -> Length:
        """Half of what pleats of a given width leave, or as is asked for or usual."""
        if self.visible is None:
            return self.usual_margin
        return (self.finished_width - self.pleats * self.pleat_visible) / 2

    @value("depth of each pleat", basis=published("butterick-1921"))
    def pleat_depth(self) -> Length:
        """As asked for, or so that each pleat lies just to the next one's fold."""
        return self.pleat_visible if self.depth is None else self.depth

    @value("twice what all pleats show", basis=published("butterick-1921"))
    def twice_shown(self) -> Length:
        """Pleats as deep as they show take it, so that three widths of cloth make one."""
        return 2 * self.pleat_visible * self.pleats

    @value("cloth taken by the pleats")
    def take_up(self) -> Length:
        """Each fold takes its depth forth and back."""
        return self.twice_shown if self.depth is None else 2 * self.pleat_depth * self.pleats

    @value("from each pleat's fold to the next one's, flat")
    def flat_step(self) -> Length:
        """What shows and what lies behind it."""
        return self.pleat_visible + 2 * self.pleat_depth

    @value("cloth for each width of pleats")
    def ratio(self) -> Ratio:
        """Three where the depth is what shows."""
        return self.flat_step / self.pleat_visible

    @property
    def shown(self) -> Length:
        """From fold to fold."""
        return self.pleat_visible

    @property
    def folds_each(self) -> int:
        """A knife pleat has one."""
        return 1

    @property
    def lies(self) -> Lie:
        """Folds that point to the right have their cloth behind them at the left."""
        return Lie.LEFT if self.turned == RIGHT else Lie.RIGHT

    @property
    def lying(self) -> Sequence[Fold]:
        """The folds from left to right."""
        shown, depth = self.pleat_visible, self.pleat_depth
        first = self.edge + self.pleat_margin + (shown if self.turned == RIGHT else ZERO)
        return [Fold(depth, first + shown * number, self.lies) for number in range(self.pleats)]

    def sew(self, sheet: Worksheet) -> None:
        """Joined, hemmed, folded and sewn into its seam."""
        how = (
            f"Bring each fold {self.turned} onto its placement line, wrong sides together behind "
            "it, one pleat after the other."
        )
        add_pleat_steps(sheet, self, how)

    def draw(self, sheet: Worksheet) -> None:
        """The panel, finished and flat, and one pleat."""
        side = most(self.pleat_visible, self.pleat_depth) * 5 / 4
        add_pleat_pictures(sheet, self, [Fold(self.pleat_depth, side, self.lies)], 2 * side)


TECHNIQUE = KnifePleats
