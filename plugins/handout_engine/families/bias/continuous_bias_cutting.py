"""A continuous bias strip: a parallelogram sewn into a tube one row out of step, and cut round.

The triangle cut off one end of a rectangle is sewn to its other end. Where the two are sewn, each
loses the allowance j; laid so that their cut edges cross on the stitching line, they make a
parallelogram whose grain edges are the long side less j, and whose height is the short side less
j. Its rows are ruled along the bias; only whole rows count.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor

from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.cloth.bias import diagonal

MOST_ROWS = 300


def whole_rows(long_side: Length, width: Length, join: Length) -> int:
    """How many whole rows lie side by side; raises RefusalError when they are too many."""
    rows = floor((long_side - join) / diagonal(width))
    if rows > MOST_ROWS:
        raise RefusalError(
            f"{rows} rows would be ruled, more than {MOST_ROWS}; use wider strips or less cloth"
        )
    return rows


def rows_of_smallest_square(wanted: Length, width: Length, join: Length) -> int:
    """The number of rows with which the smallest square gives the wanted length.

    More rows need a larger square to lie in, fewer need longer rows: the smallest is where the
    two needs meet. Raises RefusalError when the rows are too many.
    """
    rows = 1
    while square_for(rows + 1, wanted, width, join) < square_for(rows, wanted, width, join):
        rows += 1
        if rows > MOST_ROWS:
            raise RefusalError(
                f"more than {MOST_ROWS} rows would be ruled; use wider strips or a shorter length",
                "wanted",
            )
    return rows


def square_for(rows: int, wanted: Length, width: Length, join: Length) -> Length:
    """The side of the square that holds so many rows and gives the wanted length with them."""
    return max(diagonal(width) * rows + join, short_side_for(rows, wanted, join))


def short_side_for(rows: int, wanted: Length, join: Length) -> Length:
    """The short side that gives the wanted length with so many rows."""
    return (_on_grain(wanted) + 2 * (rows - 1) * join) / rows + join


@dataclass(frozen=True)
class Rectangle:
    """A rectangle of cloth and the rows that lie along its long side; a square has equal sides."""

    rows: int
    short: Length
    long: Length

    @property
    def area(self) -> Fraction:
        """Its area in square millimetres."""
        return self.short.mm * self.long.mm


@dataclass(frozen=True)
class RectangleWanted:
    """What a rectangle is to give, and what it may measure, its sides in whole steps.

    `slender` is how many times as long as wide it may be; None leaves that open.
    """

    wanted: Length
    width: Length
    join: Length
    step: Length
    most_short: Length
    most_long: Length
    slender: Fraction | None

    def up(self, side: Length) -> Length:
        """A side rounded up to the next step."""
        return self.step * ceil(side / self.step)

    def with_rows(self, rows: int) -> Rectangle:
        """The smallest rectangle that gives the wanted length with so many rows."""
        short = self.up(short_side_for(rows, self.wanted, self.join))
        return Rectangle(rows, short, self.up(max(diagonal(self.width) * rows + self.join, short)))

    def allows(self, found: Rectangle) -> bool:
        """Whether a rectangle can be cut, and its tube be sewn."""
        return (
            3 * self.join < found.short <= self.most_short
            and found.long <= self.most_long
            and (self.slender is None or found.long <= found.short * self.slender)
        )


def smallest_rectangle(asked: RectangleWanted) -> Rectangle | None:
    """The rectangle of least area that gives the wanted length; of equal ones the squarest.

    More rows make it longer and narrower, so the search ends where none can be long enough.
    """
    best = None
    for rows in range(1, MOST_ROWS + 1):
        found = asked.with_rows(rows)
        if found.short < asked.most_long < found.long:
            break
        if asked.allows(found) and (best is None or found.area < best.area):
            best = found
    return best


def _on_grain(length: Length) -> Length:
    """A length along the bias, measured along the grain."""
    return from_float(float(length) / 2**0.5)
