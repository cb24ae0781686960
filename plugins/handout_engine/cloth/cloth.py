"""Cloth as it is bought: its usable width, and how much to order for what is cut from it."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from handout_engine.amounts.declaring import value
from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import CLOTH, length, percentage, yardage
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import LAYOUT, PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.laying import lay
from handout_engine.working.layouts import Item, Layout, Order
from handout_engine.working.shortfalls import refuse_no_size
from handout_engine.working.technique import Bought, Technique
from handout_engine.working.workings import Supply


@dataclass(frozen=True)
class Cloth:
    """A cloth on the bolt. Shrinkage is the share of a length that is lost in washing."""

    width: Length
    selvage: Length
    shrinkage_length: Fraction
    shrinkage_width: Fraction
    spare: Length
    order_step: Length

    @property
    def usable(self) -> Length:
        """The width between the selvages once the cloth is washed.

        Raises RefusalError when the selvages leave nothing.
        """
        usable = self.width * (1 - self.shrinkage_width) - 2 * self.selvage
        if usable.mm <= 0:
            raise RefusalError("the selvages take the whole cloth; give its full width", "selvage")
        return usable

    @property
    def order(self) -> Order:
        """How a used length of it is ordered."""
        return Order(self.spare, self.shrinkage_length, self.order_step)


class ClothInputs(Technique):
    """The inputs of every technique that is cut from cloth across its width."""

    cloth_width = length(
        "cloth width",
        "Width of the cloth from edge to edge, as sold.",
        "45 in",
        ("4 in", "120 in"),
        group=CLOTH,
        basis=PRACTICE,
    )
    selvage = length(
        "selvage",
        "What is cut off at each woven edge.",
        "1/2 in",
        ("0 in", "3 in"),
        group=CLOTH,
        basis=PRACTICE,
    )
    shrinkage_length = percentage(
        "shrinkage in length",
        "Share of the length lost in the first wash.",
        "0 %",
        25,
        group=CLOTH,
        basis=PRACTICE,
    )
    shrinkage_width = percentage(
        "shrinkage in width",
        "Share of the width lost in the first wash.",
        "0 %",
        25,
        group=CLOTH,
        basis=PRACTICE,
    )
    other_cloth_width = length(
        "other width",
        "A second width of cloth, to compare what to buy.",
        "54 in",
        ("4 in", "120 in"),
        group=CLOTH,
        basis=PRACTICE,
    )
    spare = length(
        "spare",
        "Extra length bought to straighten the cut ends.",
        "1 in",
        ("0 in", "1 yd"),
        group=CLOTH,
        basis=PRACTICE,
    )
    order_step = yardage(
        "step in which cloth is sold",
        "What you buy is rounded up to a multiple of this length.",
        "1/8 yd",
        ("1 cm", "2 yd"),
        group=CLOTH,
        basis=PRACTICE,
    )

    @value("usable cloth width")
    def usable_width(self) -> Length:
        """The width between the selvages once the cloth is washed; raises RefusalError."""
        return self.usable_of(self.cloth_width)

    def usable_of(self, width: Length) -> Length:
        """What is between the selvages of a cloth of that width; raises RefusalError."""
        usable = width * (1 - self.shrinkage_width) - 2 * self.selvage
        if usable.mm <= 0:
            raise RefusalError("the selvages take the whole cloth; give its full width", "selvage")
        return usable

    def cloth(self) -> Cloth:
        """The cloth these inputs describe."""
        return Cloth(
            self.cloth_width,
            self.selvage,
            self.shrinkage_length.number,
            self.shrinkage_width.number,
            self.spare,
            self.order_step,
        )


class ClothBought(Bought):
    """A cloth of a technique: how the pieces of that name lie on it, and what to buy."""

    def __init__(
        self, technique: ClothInputs, name: str, prefix: str = "", width: Length | None = None
    ) -> None:
        """Take the name that pieces give their cloth, and its width as sold where that is its own.

        `prefix` opens the names of its values.
        """
        super().__init__(prefix)
        self.technique, self.name = technique, name
        self.width = technique.cloth_width if width is None else width

    @property
    def words(self) -> str:
        """The name of the cloth."""
        return self.name

    @cached_property
    def items(self) -> list[Item]:
        """Its pieces as they are laid out; raises RefusalError for one without a size."""
        pieces = self.technique.cutting.pieces
        for piece in pieces:
            refuse_no_size(piece, self.technique.written)
        return [
            Item(
                piece.name,
                *piece.extents,
                number,
                piece.on_fold,
                outline=piece.lying,
                pair=piece.pair,
            )
            for number, piece in enumerate(pieces, 1)
            if piece.cloth == self.name and not piece.worked
            for _ in range(piece.count)
        ]

    @cached_property
    def layout(self) -> Layout:
        """How the pieces lie on it."""
        return self._laid(self.width)

    def _laid(self, width: Length) -> Layout:
        usable, order = self.technique.usable_of(width), self.technique.cloth().order
        with unheard():
            return lay(self.name, usable, self.items, order)

    @value("{} used, along the selvage", basis=LAYOUT)
    def cloth_used(self) -> Length:
        """By the layout."""
        return self.layout.used

    @value("{} to buy", saying=Saying.YARDAGE)
    def cloth_to_buy(self) -> Length:
        """What is used and the spare, before washing, in the steps that cloth is sold by."""
        cloth = self.technique
        washed = (self.cloth_used + cloth.spare) / (1 - cloth.shrinkage_length)
        return washed.rounded_up_to(cloth.order_step)

    @value("{} to buy in the other width", basis=LAYOUT, saying=Saying.YARDAGE)
    def cloth_to_buy_other(self) -> Length | None:
        """The same pieces on cloth of the other width; None where they do not fit it."""
        other = self.technique.other_cloth_width
        if other.mm == self.width.mm:
            return None
        try:
            laid = self._laid(other)
        except RefusalError:
            return None
        return Length(laid.order.to_buy(laid.used).mm)

    @property
    def supply(self) -> Supply:
        """How much of it to buy, and in the other width."""
        buy, other = self.find("cloth_to_buy"), self.find("cloth_to_buy_other")
        width = self.technique.inputs["other_cloth_width"]
        words = "or {other} of cloth {width} wide"
        note = sentence(words, other=other, width=width) if other is not None else None
        return Supply(self.name, buy, note)
