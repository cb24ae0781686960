"""A continuous bias strip: a parallelogram sewn into a tube one row out of step, and cut round.

The triangle cut off one end of a rectangle is sewn to its other end. Where the two are sewn, each
loses the allowance j; laid so that their cut edges cross on the stitching line, they make a
parallelogram whose grain edges are the long side less j, and whose height is the short side less
j. Its rows are ruled along the bias; only whole rows count.
"""

from __future__ import annotations

from math import ceil, floor

from handout_engine.bias import diagonal, join_take_up
from handout_engine.lengths import Length, from_float
from handout_engine.refusals import RefusalError

MOST_ROWS = 300


def whole_rows(long_side: Length, width: Length, join: Length) -> int:
    """How many whole rows lie side by side; raises RefusalError when they are too many."""
    rows = floor((long_side - join) / diagonal(width))
    if rows > MOST_ROWS:
        raise RefusalError(
            f"{rows} rows would be ruled, more than {MOST_ROWS}; use wider strips or less cloth"
        )
    return rows


def strip_length(rows: int, short_side: Length, join: Length) -> Length:
    """The length of the strip: every row, less what its joins to the next take."""
    return rows * diagonal(short_side - join) - (rows - 1) * join_take_up(join)


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


def rows_for(wanted: Length, short_side: Length, join: Length) -> int:
    """The rows that give the wanted length on a given short side; the side is over 3 joins."""
    return max(1, ceil((_on_grain(wanted) - 2 * join) / (short_side - 3 * join)))


def _on_grain(length: Length) -> Length:
    """A length along the bias, measured along the grain."""
    return from_float(float(length) / 2**0.5)
