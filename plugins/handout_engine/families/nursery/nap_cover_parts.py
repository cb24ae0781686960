"""The strips of a pieced top, and the layers below it."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from handout_engine.amounts.declaring import value
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.working_out import Group
from handout_engine.shared.strips import Joined, Strips

if TYPE_CHECKING:
    from handout_engine.families.nursery.nap_cover_cloth import QuiltInputs


class Bar(Group):
    """A kind of strip in the top."""

    def __init__(self, quilt: QuiltInputs, prefix: str, along: Length, number: Count) -> None:
        """Take its finished length, and how many there are."""
        super().__init__(prefix)
        self.quilt, self.along, self.number = quilt, along, number

    @property
    def name(self) -> str:
        """What the cut list calls it."""
        return self.prefix.rstrip("_").replace("_", " ")

    @property
    def words(self) -> str:
        """What labels call it."""
        return self.name

    @property
    def width(self) -> str:
        """The name of the value that is its cut width."""
        return "border_cut" if "border" in self.prefix else "sashing_cut"

    @value("{}, cut length in one piece", saying=Saying.UP)
    def whole(self) -> Length:
        """With the seams at both ends."""
        return self.along + 2 * self.quilt.seam_allowance

    @cached_property
    def parts(self) -> Strips:
        """What is longer than the cloth is wide is cut in equal parts."""
        quilt = self.quilt
        cut = quilt.border_cut if self.width == "border_cut" else quilt.sashing_cut
        assert cut is not None
        joined = Joined(quilt.strip_allowance)
        return Strips(self.whole, cut, quilt.usable_width, joined, self.prefix)

    @value("{}, pieces to cut")
    def pieces(self) -> Count:
        """Of every strip all parts."""
        return self.number * self.parts.strips


class Layer(Group):
    """A layer that is larger than the top."""

    def __init__(self, quilt: QuiltInputs, prefix: str, margin: Length) -> None:
        """Take what it has beyond the top on each side."""
        super().__init__(prefix)
        self.quilt, self.margin = quilt, margin

    @property
    def words(self) -> str:
        """What labels call it."""
        return self.prefix.rstrip("_")

    @value("{}, width", saying=Saying.UP)
    def width(self) -> Length:
        """Across the top."""
        return self.quilt.raw_width + 2 * self.margin

    @value("{}, length", saying=Saying.UP)
    def length(self) -> Length:
        """Down the top."""
        return self.quilt.raw_length + 2 * self.margin
