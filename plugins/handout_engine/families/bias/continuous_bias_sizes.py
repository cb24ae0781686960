"""The cloth of a continuous bias strip: as given, or as little as gives the wanted length."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Mapping
from dataclasses import replace
from typing import ClassVar

from handout_engine.amounts.angles import ROOT_OF_TWO
from handout_engine.amounts.declaring import value
from handout_engine.amounts.lengths import Length, most
from handout_engine.amounts.numbers import Count, Ratio, larger, whole
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import LAYOUT
from handout_engine.amounts.working_out import Group
from handout_engine.families.bias.continuous_bias_cutting import (
    RectangleWanted,
    rows_of_smallest_square,
    short_side_for,
    smallest_rectangle,
    whole_rows,
)
from handout_engine.families.bias.continuous_bias_inputs import ContinuousInputs


class Sides(Group):
    """Both sides of the cloth, and the rows for which they are worked out."""

    counted: ClassVar[str] = ""
    """How the rows are come by, as their label says it."""

    def __init__(self, technique: ContinuousInputs) -> None:
        """Take what is asked of the strip."""
        super().__init__()
        self.technique = technique

    @property
    @abstractmethod
    def both(self) -> tuple[Length, Length]:
        """Across and along."""

    @property
    def for_rows(self) -> Count | None:
        """The rows that are wanted; None where the cloth at hand decides."""
        return None

    def label_of(self, label: str) -> str:
        """The label by the way the sides are worked out."""
        return label.replace("{}", self.counted)

    @value("rows {}", basis=LAYOUT)
    def rows_wanted(self) -> Count | None:
        """More need a longer side to lie along, fewer need longer rows."""
        return self.for_rows

    @value("cloth, across")
    def across(self) -> Length:
        """Square to the selvage."""
        return self.both[0]

    @value("cloth, along")
    def along(self) -> Length:
        """Along the selvage."""
        return self.both[1]

    def holding(self, rows: Count) -> Length:
        """The side along which so many rows lie."""
        return rows * self.technique.edge_step + self.technique.strip_allowance

    def giving_length(self, rows: Count) -> Length:
        """The side across so many rows with which they give the wanted length."""
        wanted, join = self.technique.length_wanted, self.technique.strip_allowance
        assert wanted is not None
        return (wanted / ROOT_OF_TWO + 2 * (rows - 1) * join) / rows + join


class SidesGiven(Sides):
    """The cloth at hand, a square where one side is given."""

    @property
    def both(self) -> tuple[Length, Length]:
        """As given."""
        across, along = self.technique.cloth_across, self.technique.cloth_along
        one = across or along
        assert one is not None
        return across or one, along or one


class Square(Sides):
    """The smallest square that gives the wanted length."""

    counted = "with which the square is smallest"
    labels: ClassVar[Mapping[str, str]] = {
        "cloth, across": "side of the square",
        "cloth, along": "the other side of the square",
    }

    def __init__(self, technique: ContinuousInputs, square_rows: int) -> None:
        """Take besides with how many rows the square is smallest."""
        super().__init__(technique)
        self.square_count = square_rows

    def label_of(self, label: str) -> str:
        """A square has one measure."""
        return super().label_of(self.labels.get(label, label))

    @property
    def for_rows(self) -> Count:
        """With which it is smallest."""
        return Count(self.square_count)

    @property
    def rows_of_square(self) -> Count:
        """The rows with which the square is smallest, by name."""
        assert self.rows_wanted is not None
        return self.rows_wanted

    @value("side of a square that holds so many rows")
    def square_for_rows(self) -> Length:
        """They lie along it, and its seam."""
        return self.holding(self.rows_of_square)

    @value("side of a square that gives the length in so many rows")
    def square_for_length(self) -> Length:
        """They reach across it, less what they lose where each passes into the next."""
        return self.giving_length(self.rows_of_square)

    @value("side of the smallest square")
    def square_side(self) -> Length:
        """It does both, in steps in which cloth is measured."""
        side = most(self.square_for_rows, self.square_for_length)
        return side.rounded_up_to(self.technique.size_step)

    @property
    def both(self) -> tuple[Length, Length]:
        """Alike."""
        return self.square_side, self.square_side

    @value("cloth saved against the smallest square", saying=Saying.PERCENT, difference=True)
    def cloth_saved(self) -> Ratio:
        """By area."""
        return 1 - self.across * self.along / (self.square_side * self.square_side)


class Oblong(Square):
    """A rectangle that takes less cloth than the smallest square."""

    counted = "with which the rectangle is smallest"
    labels: ClassVar[Mapping[str, str]] = {}

    def __init__(self, technique: ContinuousInputs, square_rows: int, oblong_rows: int) -> None:
        """Take besides with how many rows the rectangle is smallest."""
        super().__init__(technique, square_rows)
        self.oblong_count = oblong_rows

    @value("rows with which the square is smallest", basis=LAYOUT)
    def square_rows(self) -> Count:
        """It is worked out to be compared."""
        return Count(self.square_count)

    @property
    def rows_of_square(self) -> Count:
        """The rows with which the square is smallest, by name."""
        return self.square_rows

    @property
    def for_rows(self) -> Count:
        """With which it is smallest."""
        return Count(self.oblong_count)

    @value("short side of the rectangle")
    def short_side(self) -> Length:
        """Across the rows."""
        assert self.rows_wanted is not None
        return self.giving_length(self.rows_wanted).rounded_up_to(self.technique.size_step)

    @value("long side of the rectangle")
    def long_side(self) -> Length:
        """Along the rows, no shorter than the other."""
        assert self.rows_wanted is not None
        side = most(self.holding(self.rows_wanted), self.short_side)
        return side.rounded_up_to(self.technique.size_step)

    @property
    def both(self) -> tuple[Length, Length]:
        """The long side lies across where the cloth is as wide, so that less is bought."""
        lies_across = self.long_side <= self.technique.usable_width
        sides = self.long_side, self.short_side
        return sides if lies_across else (sides[1], sides[0])


class OtherSide(Sides):
    """One side of the cloth as given, the other as long as the wanted length needs."""

    def __init__(self, technique: ContinuousInputs, fixed: Length, shorter: bool) -> None:
        """Take besides the side that is given, and whether a `shorter` one is enough beside it."""
        super().__init__(technique)
        self.fixed, self.shorter = fixed, shorter

    def label_of(self, label: str) -> str:
        """Say by what the rows are counted."""
        counted = "along the given side" if self.shorter else "for the wanted length"
        return label.replace("{}", counted)

    @property
    def for_rows(self) -> Count:
        """As many as the given side holds, or as give the length across it."""
        asked = self.technique
        if self.shorter:
            return ((self.fixed - asked.strip_allowance) / asked.edge_step).rounded_down()
        assert asked.length_wanted is not None
        between = self.fixed - 3 * asked.strip_allowance
        needed = asked.length_wanted / ROOT_OF_TWO - 2 * asked.strip_allowance
        return larger((needed / between).rounded_up(), whole(1))

    @property
    def both(self) -> tuple[Length, Length]:
        """The side that is not given lies across the rows, or along them and is no shorter."""
        rows, step = self.rows_wanted, self.technique.size_step
        assert rows is not None
        if self.shorter:
            other = self.giving_length(rows).rounded_up_to(step)
        else:
            other = most(self.holding(rows), self.fixed).rounded_up_to(step)
        return self.technique.cloth_across or other, self.technique.cloth_along or other


def sides_for_length(technique: ContinuousInputs, asked: RectangleWanted) -> Sides:
    """The smallest square, or a rectangle where that saves enough, or no square can be cut.

    A rectangle asks for one step more (its long edges are trimmed level), so a small saving is
    not worth it. Where no square fits the cloth it may be as slender as it must.
    """
    square = Square(technique, rows_of_smallest_square(asked.wanted, asked.width, asked.join))
    side = square.square_side
    fits = side <= asked.most_short
    found = smallest_rectangle(asked if fits else replace(asked, slender=None))
    if found is None or (fits and 1 - found.area / (side.mm**2) < technique.least_saving):
        return square
    return Oblong(technique, square.square_count, found.rows)


def other_side(technique: ContinuousInputs, asked: RectangleWanted, fixed: Length) -> OtherSide:
    """The side that is not given: shorter than the given one where that is enough, else longer."""
    rows = whole_rows(fixed, asked.width, asked.join)
    shorter = rows > 0 and asked.up(short_side_for(rows, asked.wanted, asked.join)) <= fixed
    return OtherSide(technique, fixed, shorter)
