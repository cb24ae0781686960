"""Numbers of machine needles: metric and old, twin and wing, and what the number measures."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import choice, optional_fine_length
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, decimal
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.materials.materials import NEEDLE_SIZES
from handout_engine.families.materials.needles_drawing import blade_row, needle_points
from handout_engine.working.cautions import NEEDLE_BREAKS, PINS_AND_IRON, WING_NEEDLE
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Supply
from handout_engine.working.worksheet import Worksheet

FINE = Saying.FINE
NUMBERED = published("needle-systems")
OTHERWISE_NUMBERED = 19
"""From this old number on, the rule for the metric one does not hold."""
PLAIN, TWIN, WING = "one needle", "twin", "wing"
WING_NUMBERS = (100, 120)
USUAL_SPACING = millimetres(2)
SIZES = tuple(f"{metric}/{old}" for metric, old in NEEDLE_SIZES.items())
USES = {
    60: "the finest silk and net",
    65: "batiste, voile, organdy, net",
    70: "lawn, handkerchief linen",
    75: "gingham, dupioni, fine knits",
    80: "pique, flannel, most dress cloth",
    90: "towelling, several layers",
    100: "thick wool; wing needles",
    110: "canvas",
    120: "heavy canvas; wing needles",
}


class NeedleNumbers(Technique):
    """What the numbers on a package of needles say."""

    title = "Needle numbers"
    family = "materials"
    summary = (
        "What the numbers on a package of machine needles mean: metric and old sizes, twin and "
        "wing needles."
    )

    size = choice(
        "size on the package",
        "Metric number before the stroke, old number behind it.",
        "80/12",
        *(size for size in SIZES if size != "80/12"),
        basis=PRACTICE,
    )
    kind = choice(
        "kind",
        "A twin needle has two blades on one shank, a wing needle two flat wings.",
        PLAIN,
        TWIN,
        WING,
        basis=PRACTICE,
    )
    spacing = optional_fine_length(
        "needles apart",
        "For a twin needle: between its blades, the first figure.",
        "2 mm for a twin needle, nothing for others",
        ("1 mm", "8 mm"),
    )

    @property
    def twin(self) -> bool:
        """Whether it has two blades."""
        return str(self.kind) == TWIN

    @property
    def winged(self) -> bool:
        """Whether its blade has wings."""
        return str(self.kind) == WING

    def label_of(self, label: str) -> str:
        """A label, with what is left out of the blade."""
        return super().label_of(label).replace("{wings}", ", its wings left out" * self.winged)

    @value("metric number", basis=NUMBERED)
    def metric(self) -> Count:
        """Before the stroke."""
        return Count(int(self.size.partition("/")[0]))

    @value("old number", basis=NUMBERED)
    def old(self) -> Count:
        """Behind the stroke."""
        return Count(NEEDLE_SIZES[self.metric.number])

    @value("metric number worked out from the old one", basis=NUMBERED)
    def from_old(self) -> Count | None:
        """For a package that says the old one alone; the thickest are numbered otherwise."""
        if self.old.number >= OTHERWISE_NUMBERED:
            return None
        return (self.old - 8) * 5 + 60

    @value("one step of metric numbers", basis=NUMBERED, saying=FINE)
    def needle_unit(self) -> Length:
        """Needles are numbered by the hundredth of a millimetre."""
        return millimetres("1/100")

    @value("diameter of the blade{wings}", saying=FINE)
    def blade(self) -> Length:
        """That is what the metric number says."""
        return self.metric * self.needle_unit

    @check
    def such_needles_are_made(self) -> None:
        """Refuse wings of other numbers, and blades apart where there is only one."""
        if self.winged and self.metric.number not in WING_NUMBERS:
            raise RefusalError(
                f"wing needles are numbered 100 and 120, not {self.metric}; use size 100/16 or "
                "120/19",
                "size",
            )
        if self.spacing is None:
            return
        if not self.twin:
            raise RefusalError(
                f"only a twin needle has two blades; leave spacing out, or use kind {TWIN}",
                "spacing",
            )
        if self.spacing <= self.blade:
            raise RefusalError(
                f"blades {_mm(self.blade)} thick cannot stand {_mm(self.spacing)} apart; use more "
                f"than {_mm(self.blade)}, or a finer needle",
                "spacing",
            )

    @value("from blade to blade, middle to middle", basis=PRACTICE, saying=FINE)
    def twin_spacing(self) -> Length | None:
        """As asked for, or as most are sold."""
        if not self.twin:
            return None
        return USUAL_SPACING if self.spacing is None else self.spacing

    @value("across both blades", saying=FINE)
    def across(self) -> Length | None:
        """What swings through the opening of the plate."""
        return self.twin_spacing + self.blade if self.twin_spacing else None

    @value("clear between the blades", saying=FINE)
    def between(self) -> Length | None:
        """What a cord or a tuck has room in."""
        return self.twin_spacing - self.blade if self.twin_spacing else None

    @value("on the package", basis=PRACTICE)
    def code(self) -> str:
        """A twin is named by its spacing and its number."""
        if self.twin_spacing is not None:
            tenths = decimal(self.twin_spacing.mm)
            return f"{tenths if '.' in tenths else tenths + '.0'}/{self.metric}"
        return f"wing {self.metric}" if self.winged else str(self.size)

    def cut(self, sheet: Worksheet) -> None:
        """Nothing is cut: all needles that are sold, to compare."""
        rows = tuple(
            (
                f"{metric}/{old}",
                Value("", "", millimetres(f"{metric}/100"), PRACTICE, saying=FINE),
                USES[metric],
            )
            for metric, old in NEEDLE_SIZES.items()
        )
        headings = ("Number", "Blade", "Where to begin (common practice)")
        sheet.charts.append(Chart("Needles as they are sold", headings, rows))

    def sew(self, sheet: Worksheet) -> None:
        """From the package to the first seam."""
        self._add_supplies(sheet)
        sheet.step(
            "Read the package: {code}. Its metric number is {metric}, its old number {old}, and "
            "the blade is {blade} thick."
        )
        sheet.step(
            "See that the system on the package is your machine's own; the handbook names it. A "
            "needle of another system may be too long for the hook."
        )
        if self.twin:
            sheet.step(
                "Take off the straight-stitch plate. The blades stand {twin_spacing} apart and are "
                "{across} wide together; what swings must pass the opening."
            )
        if self.winged:
            sheet.step(
                "Take off the straight-stitch plate: the wings are wider than {blade}, and strike "
                "a round hole. Thread with fine two-ply thread."
            )
        sheet.step(
            "Switch the machine off or lock its pedal, lower the foot, loosen the screw, push the "
            "new needle up as far as it goes, flat side as the handbook shows, and fasten it.",
            "turn the hand wheel through one whole stitch: it touches neither plate nor foot.",
        )
        holes = "stay open." if self.winged else "close when you scratch across them."
        sheet.trial(
            "Sew a hand's length on two layers of the scrap with needle {code}.",
            f"no thread frays, no stitch is missed, and the holes {holes}",
        )

    def _add_supplies(self, sheet: Worksheet) -> None:
        sheet.supplies.append(Supply(f"machine needle, {self.kind}: {self.code}"))
        if self.twin or self.winged:
            sheet.have(
                "fine two-ply thread, the same above and below",
                "a plate and a foot with a wide opening, not a straight-stitch plate with one "
                "round hole",
            )
        sheet.have("a scrap of the cloth")
        sheet.cautions.append(PINS_AND_IRON)
        if self.twin:
            sheet.cautions.append(NEEDLE_BREAKS)
        if self.winged:
            sheet.cautions.append(WING_NEEDLE)

    def draw(self, sheet: Worksheet) -> None:
        """The needle from the front, and all sizes side by side."""
        blade, spacing = sheet["blade"], sheet["twin_spacing"] if self.twin else None
        words = sheet.sentence("Needle {code}, its blade {blade} thick.")
        points = tuple(needle_points(blade, spacing, self.winged))
        front = Scene(sentence("Needle from the front"), words, points, 200)
        caption = "The needle from the front, much enlarged; thicknesses to scale."
        if self.winged:
            caption += " How wide wings are differs from maker to maker: measure yours."
        sheet.show("finished", caption, front, finished=True)
        sizes = tuple(blade_row(tuple(NEEDLE_SIZES), sheet["metric"], blade))
        row = Scene(sentence("All sizes of needle"), words, sizes, 200)
        caption = "All sizes side by side, thicknesses to one scale."
        sheet.show("sizes", caption, row)


def _mm(length: Length) -> str:
    return f"{decimal(length.mm)} mm"


TECHNIQUE = NeedleNumbers
