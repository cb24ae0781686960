"""Armholes: where the sleeve is set in, or where a garment without one is bound."""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import length
from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.curves import run


class Armholes(BlockInputs):
    """A garment on the block with an armhole."""

    @value("one armhole, front and back", basis=DRAWN)
    def armhole_edge(self) -> Length:
        """Its curves from shoulder to underarm."""
        return from_float(2 * run(self.block.armhole))


class FrenchSeams(BlockInputs):
    """A garment whose shoulders and sides are French seams where its cloth is sheer."""

    @value("half the seam allowance, for each row of a French seam")
    def half_allowance(self) -> Length:
        """A French seam is sewn twice."""
        return self.seam_allowance / 2


class SleevelessInputs(Armholes, FrenchSeams):
    """The inputs of a garment without sleeves, whose armhole lies higher."""

    armhole_ease = length(
        "armhole ease",
        "Added to a quarter of the chest for the depth of the armhole, "
        "1 cm less than where a sleeve is set in.",
        "5 mm",
        ("0 cm", "8 cm"),
        basis=PRACTICE,
    )
