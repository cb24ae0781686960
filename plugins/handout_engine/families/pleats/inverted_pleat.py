"""Inverted pleats: two folds that meet in front, their cloth lying away from each other behind."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.sources import PRACTICE
from handout_engine.families.pleats.pleating import PleatInputs
from handout_engine.families.pleats.pleating_steps import add_pleat_pictures, add_pleat_steps
from handout_engine.shared.folds import Fold, Lie
from handout_engine.working.worksheet import Worksheet


class InvertedPleat(PleatInputs):
    """One or several inverted pleats, folded from the same cloth."""

    title = "Inverted pleat"
    family = "pleats"
    summary = (
        "Two folds that meet in front, taking four times their depth; one at a centre, or several "
        "evenly spaced."
    )

    pleats = count("pleats", "How many, evenly spaced over the width.", 1, 40)
    depth = length(
        "depth",
        "How far each of the two folds lies behind.",
        "1 1/2 in",
        ("1/8 in", "8 in"),
        basis=PRACTICE,
    )

    @value("depth of each fold")
    def pleat_depth(self) -> Length:
        """As it is asked for."""
        return self.depth

    @value("folds, two in each pleat")
    def folds(self) -> Count:
        """They meet in front."""
        return 2 * self.pleats

    @value("from one meeting line to the next, finished")
    def apart(self) -> Length:
        """The pleats are spread over the whole width."""
        return self.finished_width / self.pleats

    @value("first meeting line, from the left seam")
    def first_pleat(self) -> Length:
        """Half of that lies at each side."""
        return self.apart / 2

    @value("what one pleat adds where it opens")
    def opens(self) -> Length:
        """Both of its folds open, each by twice its depth."""
        return 4 * self.pleat_depth

    @value("cloth for each width")
    def ratio(self) -> Ratio:
        """By it one sees how full it falls."""
        return self.flat_width / self.pleated_width

    @property
    def doubled(self) -> Count:
        """At every fold."""
        return self.folds

    @property
    def shown(self) -> Length:
        """As much plain cloth as a fold is deep."""
        return self.pleat_depth

    @property
    def lying(self) -> Sequence[Fold]:
        """The folds from left to right, two at each meeting line."""
        first = self.edge + self.first_pleat
        meeting = [first + self.apart * number for number in range(self.pleats)]
        return [fold for at in meeting for fold in self._meeting(at)]

    def _meeting(self, at: Length) -> Sequence[Fold]:
        return Fold(self.pleat_depth, at, Lie.LEFT), Fold(self.pleat_depth, at, Lie.RIGHT)

    def sew(self, sheet: Worksheet) -> None:
        """Joined, hemmed, folded and sewn into its seam."""
        how = (
            "Bring the two folds of each pleat towards each other until they meet on their common "
            "placement line."
        )
        add_pleat_steps(sheet, self, how)

    def draw(self, sheet: Worksheet) -> None:
        """The panel, finished and flat, and one pleat."""
        side = self.pleat_depth * 5 / 4
        add_pleat_pictures(sheet, self, self._meeting(side), 2 * side)


TECHNIQUE = InvertedPleat
