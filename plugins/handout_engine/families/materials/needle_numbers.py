"""Numbers of machine needles: metric and old, twin and wing, and what the number measures."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import choice, optional_fine_length
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, decimal
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.materials.materials import NEEDLE_SIZES
from handout_engine.families.materials.needles_drawing import blade_row, needle_points
from handout_engine.working.cautions import NEEDLE_BREAKS, PINS_AND_IRON, WING_NEEDLE
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

FINE = Saying.FINE
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

    title: ClassVar[str] = "Needle numbers"
    family: ClassVar[str] = "materials"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """The numbers; raises RefusalError for needles that are not made."""
        _check(self)
        sheet = Worksheet(technique=self)
        blade = _note_numbers(sheet, self)
        spacing = _note_code(sheet, self, blade)
        sheet.charts.append(_chart())
        _add_supplies(sheet, self)
        _add_steps(sheet, self)
        _draw(sheet, blade, spacing)
        return sheet


def _check(needle: NeedleNumbers) -> None:
    if needle.kind == WING and _metric(needle) not in WING_NUMBERS:
        raise RefusalError(
            f"wing needles are numbered 100 and 120, not {_metric(needle)}; use size 100/16 or "
            "120/19",
            "size",
        )
    if needle.kind != TWIN and needle.spacing is not None:
        raise RefusalError(
            f"only a twin needle has two blades; leave spacing out, or use kind {TWIN}", "spacing"
        )
    if needle.kind == TWIN and needle.spacing is not None:
        blade = millimetres("1/100") * _metric(needle)
        if needle.spacing <= blade:
            raise RefusalError(
                f"blades {_mm(blade)} thick cannot stand {_mm(needle.spacing)} apart; use more "
                f"than {_mm(blade)}, or a finer needle",
                "spacing",
            )


def _metric(needle: NeedleNumbers) -> int:
    return int(needle.size.partition("/")[0])


def _mm(length: Length) -> str:
    return f"{decimal(length.mm)} mm"


def _note_numbers(sheet: Worksheet, needle: NeedleNumbers) -> Value:
    """Note both numbers and the diameter of the blade; returns that."""
    basis = published("needle-systems")
    metric = sheet.note("metric", "metric number", _metric(needle), "", basis=basis)
    old = sheet.note("old", "old number", NEEDLE_SIZES[metric.whole], "", basis=basis)
    if old.whole < 19:
        sheet.note("from_old", "metric number worked out from the old one",
                   (old.whole - 8) * 5 + 60, "({old} - 8) × 5 + 60", basis=basis)  # fmt: skip
    unit = sheet.note("needle_unit", "one step of metric numbers", millimetres("1/100"), "",
                      basis=basis, saying=FINE)  # fmt: skip
    words = "diameter of the blade"
    if needle.kind == WING:
        words += ", its wings left out"
    return sheet.note("blade", words, unit.length * metric.whole, "{metric} × {needle_unit}",
                      saying=FINE)  # fmt: skip


def _note_code(sheet: Worksheet, needle: NeedleNumbers, blade: Value) -> Value | None:
    """Note what stands on the package, and for a twin its widths; returns its spacing."""
    number = _metric(needle)
    if needle.kind != TWIN:
        code = needle.size if needle.kind == PLAIN else f"wing {number}"
        sheet.note("code", "on the package", code, "", basis=PRACTICE)
        return None
    given = needle.spacing
    apart = sheet.note("twin_spacing", "from blade to blade, middle to middle",
                       USUAL_SPACING if given is None else given,
                       "" if given is None else "{spacing}", basis=PRACTICE,
                       saying=FINE)  # fmt: skip
    sheet.note("across", "across both blades", apart.length + blade.length,
               "{twin_spacing} + {blade}", saying=FINE)  # fmt: skip
    sheet.note("between", "clear between the blades", apart.length - blade.length,
               "{twin_spacing} - {blade}", saying=FINE)  # fmt: skip
    tenths = decimal(apart.length.mm)
    code = f"{tenths if '.' in tenths else tenths + '.0'}/{number}"
    sheet.note("code", "on the package", code, "", basis=PRACTICE)
    return apart


def _chart() -> Chart:
    rows = tuple(
        (f"{metric}/{old}", Value("", "", millimetres(f"{metric}/100"), PRACTICE, saying=FINE),
         USES[metric])
        for metric, old in NEEDLE_SIZES.items()
    )  # fmt: skip
    headings = ("Number", "Blade", "Where to begin (common practice)")
    return Chart("Needles as they are sold", headings, rows)


def _add_supplies(sheet: Worksheet, needle: NeedleNumbers) -> None:
    sheet.supplies.append(Supply(f"machine needle, {needle.kind}: {sheet['code'].amount}"))
    if needle.kind != PLAIN:
        sheet.supplies.append(Supply("fine two-ply thread, the same above and below"))
        sheet.supplies.append(Supply("a plate and a foot with a wide opening, not a "
                                     "straight-stitch plate with one round hole"))  # fmt: skip
    sheet.supplies.append(Supply("a scrap of the cloth"))
    sheet.cautions.append(PINS_AND_IRON)
    if needle.kind == TWIN:
        sheet.cautions.append(NEEDLE_BREAKS)
    if needle.kind == WING:
        sheet.cautions.append(WING_NEEDLE)


def _add_steps(sheet: Worksheet, needle: NeedleNumbers) -> None:
    sheet.step("Read the package: {code}. Its metric number is {metric}, its old number {old}, and "
               "the blade is {blade} thick.")  # fmt: skip
    sheet.step("See that the system on the package is your machine's own; the handbook names it. "
               "A needle of another system may be too long for the hook.")  # fmt: skip
    if needle.kind == TWIN:
        sheet.step("Take off the straight-stitch plate. The blades stand {twin_spacing} apart and "
                   "are {across} wide together; what swings must pass the opening.")  # fmt: skip
    if needle.kind == WING:
        sheet.step("Take off the straight-stitch plate: the wings are wider than {blade}, and "
                   "strike a round hole. Thread with fine two-ply thread.")  # fmt: skip
    sheet.step(
        "Switch the machine off or lock its pedal, lower the foot, loosen the screw, push the new "
        "needle up as far as it goes, flat side as the handbook shows, and fasten it.",
        "turn the hand wheel through one whole stitch: it touches neither plate nor foot.",
    )
    sheet.sample.append(
        Step(
            sentence("Sew a hand's length on two layers of the scrap with needle {code}.",
                     code=sheet["code"]),
            sentence("no thread frays, no stitch is missed, and the holes "
                     + ("stay open." if needle.kind == WING else "close when you scratch across "
                        "them.")),
        )
    )  # fmt: skip


def _draw(sheet: Worksheet, blade: Value, spacing: Value | None) -> None:
    wings = sheet["kind"].amount == WING
    words = sentence("Needle {code}, its blade {blade} thick.", code=sheet["code"], blade=blade)
    front = Scene(sentence("Needle from the front"), words,
                  tuple(needle_points(blade, spacing, wings)), 200)  # fmt: skip
    row = Scene(sentence("All sizes of needle"), words,
                tuple(blade_row(tuple(NEEDLE_SIZES), sheet["metric"], blade)), 200)  # fmt: skip
    caption = "The needle from the front, much enlarged; thicknesses to scale."
    if wings:
        caption += " How wide wings are differs from maker to maker: measure yours."
    sheet.pictures.append(Picture("finished", sentence(caption), front, True))
    sheet.pictures.append(
        Picture("sizes", sentence("All sizes side by side, thicknesses to one scale."), row)
    )


TECHNIQUE = NeedleNumbers
