"""How full to gather: advice by cloth and by what is gathered, beside what has been published."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.inputs import choice, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.working_out import Group
from handout_engine.drawing.scene import Scene
from handout_engine.shared.fullness_drawing import compared
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.working.cautions import LOOSE_THREADS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet


@dataclass(frozen=True)
class Advice:
    """Least and most fullness for one cloth or trim; the middle is where to begin."""

    least: Fraction
    most: Fraction
    why: str

    @property
    def begin(self) -> Fraction:
        """Where to begin sampling."""
        return (self.least + self.most) / 2


ADVICE: dict[str, Advice] = {
    "fine sheer": Advice(Fraction(5, 2), Fraction(3), "so thin that less looks starved"),
    "light cotton": Advice(Fraction(2), Fraction(5, 2), "batiste, lawn, voile: soft and crisp"),
    "middling cloth": Advice(Fraction(7, 4), Fraction(9, 4), "most cottons and linens for dresses"),
    "stiff or heavy": Advice(Fraction(5, 4), Fraction(7, 4), "it stands: pique, flannel, silk"),
    "two layers": Advice(Fraction(5, 4), Fraction(7, 4), "folded and banded ruffles gather thick"),
    "lace edging": Advice(Fraction(3, 2), Fraction(2), "more hides the pattern of the lace"),
    "puffing": Advice(Fraction(3, 2), Fraction(2), "more stands up: it is held at two seams"),
}


class AtFullness(Group):
    """One of the advised fullnesses, and the strip that an edge then takes."""

    def __init__(self, edge: Length, prefix: str, words: str, advised: Fraction) -> None:
        """Take the edge, how the names begin, what this fullness is called, and how much it is."""
        super().__init__(prefix)
        self.edge, self.phrase, self.advised = edge, words, advised

    @property
    def words(self) -> str:
        """What this fullness is called."""
        return self.phrase

    @value("{}", basis=PRACTICE)
    def fullness(self) -> Ratio:
        """As it stands in the chart."""
        return Ratio(self.advised)

    @value("strip at the {}")
    def strip(self) -> Length:
        """Gathered so full, without its ends."""
        return self.fullness * self.edge


class FullnessAdvice(Technique):
    """Which fullness to begin with, and the strip lengths that go with it."""

    title = "How full to gather"
    family = "ruffles"
    summary = (
        "Where to begin for a cloth or trim, and what an edge takes at the least and at the most."
    )

    gathered = choice(
        "what is gathered",
        "The kind of cloth or trim.",
        "light cotton",
        *(kind for kind in ADVICE if kind != "light cotton"),
        basis=PRACTICE,
    )
    edge = length(
        "finished edge", "Length of the edge that it is gathered to.", "18 in", ("1 in", "20 yd")
    )

    @group
    def advised(self) -> tuple[AtFullness, ...]:
        """The least, where to begin, and the most."""
        advice = ADVICE[self.gathered]
        return (
            AtFullness(self.edge, "least_", "least fullness", advice.least),
            AtFullness(self.edge, "begin_", "fullness to begin with", advice.begin),
            AtFullness(self.edge, "most_", "most fullness", advice.most),
        )

    def cut(self, sheet: Worksheet) -> None:
        """The whole advice in a chart."""
        rows = tuple(
            (kind, each.least, each.begin, each.most, each.why) for kind, each in ADVICE.items()
        )
        sheet.charts.append(
            Chart(
                "Fullness by cloth and trim (common practice, no source)",
                ("Cloth or trim", "Least", "Begin", "Most", "Why"),
                rows,
            )
        )

    def sew(self, sheet: Worksheet) -> None:
        """A sample, and which way to go from it."""
        sheet.have("scraps of the cloth for samples")
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS))
        sheet.step(
            "Begin with {begin_fullness}: for an edge of {edge} that is a strip of {begin_strip}."
        )
        sheet.step(
            "Gather a sample at that fullness. If it looks thin, go up to {most_fullness}, a strip "
            "of {most_strip}; if it will not draw up or stands away, go down to {least_fullness}, "
            "a strip of {least_strip}.",
            "the gathered sample lies as you want it at the length of its edge.",
        )
        sheet.step("Write the fullness you chose into the handout of the ruffle.")

    def draw(self, sheet: Worksheet) -> None:
        """The edge with its three strips, and quarter by quarter with the middle one."""
        edge, begin = sheet["edge"], sheet["begin_strip"]
        beside = Scene(
            sentence("An edge and three strips"),
            sheet.sentence(
                "An edge of {edge}; strips of {least_strip}, {begin_strip} and {most_strip}."
            ),
            compared(edge, [sheet["least_strip"], begin, sheet["most_strip"]]),
        )
        begun = Scene(
            sentence("Edge and strip"),
            sheet.sentence("A strip of {begin_strip} is drawn up to {edge}."),
            quarters(edge, begin),
        )
        strips = "The edge, and the strip at the least, the beginning and the most fullness."
        quarter = "The fullness to begin with, quarter by quarter."
        sheet.show("compared", strips, beside, finished=True)
        sheet.show("quarters", quarter, begun)


TECHNIQUE = FullnessAdvice
