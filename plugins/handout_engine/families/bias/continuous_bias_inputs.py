"""What is asked of a continuous bias strip: its width, and its length or the cloth at hand."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.angles import ROOT_OF_TWO
from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import CLOTH, length, optional_length, percentage
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.sources import PRACTICE
from handout_engine.cloth.bias import LONGEST_CLOTH
from handout_engine.cloth.bias_cloth import JoinInputs
from handout_engine.families.bias.continuous_bias_cutting import RectangleWanted

USUAL_LENGTH = constant("usual length", inches(108), PRACTICE)
SLENDER = Fraction(2)
"""A rectangle is so many times as long as wide at most: a narrower tube is hard to sew."""


class ContinuousInputs(JoinInputs):
    """The inputs of a continuous strip, and what settles its cloth."""

    width = length("strip width", "Cut width of the strip.", "1 1/4 in", ("1/4 in", "12 in"))
    wanted = optional_length(
        "length wanted",
        "Length of strip; the cloth for it is then worked out.",
        "3 yd, unless the size of the cloth is given",
        ("1 in", "100 yd"),
        in_use="length_wanted",
    )
    cloth_across = optional_length(
        "cloth at hand, across",
        "Size of the cloth, square to the selvage.",
        "a square",
        ("2 in", "120 in"),
    )
    cloth_along = optional_length(
        "cloth at hand, along",
        "Size of the cloth, along the selvage.",
        "a square",
        ("2 in", "20 yd"),
    )
    least_saving = percentage(
        "saving that makes it a rectangle",
        "A rectangle is worked out where it takes so much less cloth than "
        "the smallest square; at 100 % it stays a square.",
        "10 %",
        100,
        group=CLOTH,
        basis=PRACTICE,
    )

    @value("from line to line, along the grain edge")
    def edge_step(self) -> Length:
        """A row at 45 degrees takes its diagonal of the edge."""
        return self.width * ROOT_OF_TWO

    @value("length wanted")
    def length_wanted(self) -> Length | None:
        """As asked for, or as is usual; None where the cloth at hand decides."""
        across, along = self.cloth_across, self.cloth_along
        if across is None and along is None:
            return USUAL_LENGTH if self.wanted is None else self.wanted
        return self.wanted if across is None or along is None else None

    @property
    def plain_wanted(self) -> RectangleWanted | None:
        """What is looked for among sizes of cloth; None where the cloth at hand decides."""
        if self.length_wanted is None:
            return None
        return RectangleWanted(
            Length(self.length_wanted.mm),
            Length(self.width.mm),
            Length(self.strip_allowance.mm),
            Length(self.size_step.mm),
            most_short=Length(self.usable_width.mm),
            most_long=LONGEST_CLOTH,
            slender=SLENDER,
        )
