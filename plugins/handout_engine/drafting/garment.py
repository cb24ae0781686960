"""What every garment is: a technique that is sized to a baby.

A garment's inputs are the size, the body measures it goes by, its ease and style, and its cloth;
what it works out are its finished edges, which techniques refer to (`garment.neck_edge`), and the
outlines of its pieces.
"""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.saying import Amount
from handout_engine.bodies.measures import (
    BODY_LENGTH,
    LENGTHS,
    MEASURES,
    SIZE,
    body_length,
    figure,
    size_below,
    size_choice,
)
from handout_engine.cloth.cloth import ClothInputs
from handout_engine.working.technique import Technique


class Garment(ClothInputs, Technique):
    """A garment with a size; it declares with `measured` the body measures it goes by."""

    size = size_choice()
    body_length = body_length()

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The table's figures for the body length, wherever the baby's own are not given."""
        length = self.body_length or LENGTHS[self.size]
        declared = {each.name for each in declared_inputs(type(self))}
        table = {name: figure(name, length) for name in MEASURES if name in declared}
        return {BODY_LENGTH: LENGTHS[self.size], **table}

    def noted(self, name: str) -> Amount:
        """Of a body length that is given, the size is the one below it, whatever was chosen."""
        return size_below(self.body_length) if name == SIZE else super().noted(name)
