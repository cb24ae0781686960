"""How full to gather: advice by cloth and by what is gathered, beside what has been published."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from handout_engine.amounts.inputs import choice, length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.shared.fullness_drawing import compared
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.working.cautions import LOOSE_THREADS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Supply
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


class FullnessAdvice(Technique):
    """Which fullness to begin with, and the strip lengths that go with it."""

    title: ClassVar[str] = "How full to gather"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Least, most and beginning fullness, with their strips."""
        sheet = Worksheet(technique=self)
        advice = ADVICE[self.gathered]
        for name, words, ratio in (
            ("least", "least fullness", advice.least),
            ("begin", "fullness to begin with", advice.begin),
            ("most", "most fullness", advice.most),
        ):
            noted = sheet.note(f"{name}_fullness", words, ratio, "", basis=PRACTICE)
            sheet.note(f"{name}_strip", f"strip at the {words}", self.edge * ratio,
                       "{noted} × {edge}", noted=noted)  # fmt: skip
        sheet.charts.append(_chart())
        sheet.supplies.append(Supply("scraps of the cloth for samples"))
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS))
        _add_steps(sheet)
        _draw(sheet)
        return sheet


def _chart() -> Chart:
    rows = tuple(
        (kind, each.least, each.begin, each.most, each.why) for kind, each in ADVICE.items()
    )
    return Chart(
        "Fullness by cloth and trim (common practice, no source)",
        ("Cloth or trim", "Least", "Begin", "Most", "Why"),
        rows,
    )


def _add_steps(sheet: Worksheet) -> None:
    sheet.step(
        "Begin with {begin_fullness}: for an edge of {edge} that is a strip of {begin_strip}."
    )
    sheet.step(
        "Gather a sample at that fullness. If it looks thin, go up to {most_fullness}, a strip of "
        "{most_strip}; if it will not draw up or stands away, go down to {least_fullness}, a strip "
        "of {least_strip}.",
        "the gathered sample lies as you want it at the length of its edge.",
    )
    sheet.step("Write the fullness you chose into the handout of the ruffle.")


def _draw(sheet: Worksheet) -> None:
    edge = sheet["edge"]
    strips = [sheet[f"{name}_strip"] for name in ("least", "begin", "most")]
    beside = Scene(
        sentence("An edge and three strips"),
        sentence("An edge of {edge}; strips of {a}, {b} and {c}.",
                 edge=edge, a=strips[0], b=strips[1], c=strips[2]),
        compared(edge, strips),
    )  # fmt: skip
    begun = Scene(
        sentence("Edge and strip"),
        sentence("A strip of {strip} is drawn up to {edge}.", strip=strips[1], edge=edge),
        quarters(edge, strips[1]),
    )
    caption = sentence("The edge, and the strip at the least, the beginning and the most fullness.")
    sheet.pictures.extend(
        (
            Picture("compared", caption, beside, True),
            Picture("quarters", sentence("The fullness to begin with, quarter by quarter."), begun),
        )
    )


TECHNIQUE = FullnessAdvice
