"""What all techniques that are cut from lace share: its width, how it is bought, its cautions."""

from __future__ import annotations

from handout_engine.amounts.declaring import Worked, group, value
from handout_engine.amounts.inputs import CLOTH, SEWING, count, length, percentage, yardage
from handout_engine.amounts.lengths import ZERO, Length, NamedLength, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.working.cautions import LACE_CATCHES, LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.technique import Bought, Technique
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet

SCRAP = constant("scrap for a sample", inches(4), PRACTICE)


class TrimInputs(Technique):
    """The inputs of everything that is made of trims bought by length."""

    make = count("how many", "How many such pieces are made, two for a pair.", 1, 200)
    end_allowance = length(
        "end allowance",
        "Added at each end for its seam or finish.",
        "1/2 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    lace_shrinkage = percentage(
        "shrinkage of lace",
        "Share of its length lost in the first wash.",
        "3 %",
        25,
        group=CLOTH,
        basis=PRACTICE,
    )
    lace_spare = length(
        "spare lace",
        "Extra bought for the sample and for a flaw.",
        "4 in",
        ("0 in", "2 yd"),
        group=CLOTH,
        basis=PRACTICE,
    )
    lace_step = yardage(
        "step in which lace is sold",
        "Lace is ordered in steps of this length.",
        "1/4 yd",
        ("1 cm", "10 yd"),
        group=CLOTH,
        basis=PRACTICE,
    )


class LaceBought(Bought):
    """A lace that is bought for one or several strips of a length."""

    def __init__(
        self,
        technique: TrimInputs,
        needed: Length,
        lace: NamedLength,
        prefix: str = "lace_",
        strips: int = 1,
    ) -> None:
        """Take what one strip needs, and the lace, which its width tells from other laces."""
        super().__init__(prefix)
        self.technique, self.needed, self.lace, self.strips = technique, needed, lace, strips

    @property
    def words(self) -> str:
        """The name of the lace."""
        return self.lace.name

    @value("{} to buy", saying=Saying.YARDAGE)
    def to_buy(self) -> Length:
        """It is washed before it is cut, so what is bought is longer by what it loses."""
        asked = self.technique
        strips = asked.make if self.strips == 1 else asked.make * self.strips
        washed = (strips * self.needed + asked.lace_spare) / (1 - asked.lace_shrinkage)
        return washed.rounded_up_to(asked.lace_step)

    @property
    def supply(self) -> Supply:
        """How much of it to buy, in which width."""
        note = sentence("{width} wide", width=self.lace.length)
        return Supply(self.lace.name, self.find("to_buy"), note)


class LaceInputs(TrimInputs):
    """The inputs of a technique made of one lace."""

    lace_width = length(
        "lace width", "Width of the lace from edge to edge.", "5/8 in", ("1/8 in", "12 in")
    )
    lace_length: Worked[Length]

    @group
    def lace_bought(self) -> LaceBought:
        """The lace itself."""
        return LaceBought(self, self.lace_length, NamedLength("lace", self.lace_width))


def marks(part: Length, number: Count | int, first: Length = ZERO) -> tuple[Length, ...]:
    """Where so many marks come, each a part from the one before it."""
    return tuple(first + part * each for each in range(number))


def add_lace_supplies(sheet: Worksheet, *notions: str) -> None:
    """The notions and cautions of everything made of lace."""
    sheet.have("fine thread to match", "a fine needle, number 60 or 65")
    sheet.have(*notions)
    sheet.cautions.extend((PINS_AND_IRON, LACE_CATCHES, LOOSE_THREADS, THIN_COTTON))


def add_lace_washing_step(sheet: Worksheet) -> None:
    """Washing and pressing the lace before it is measured."""
    sheet.step(
        "Rinse the lace in warm water, let it dry flat, and press it under a cloth with starch, "
        "without pulling it, before you measure or cut it."
    )
