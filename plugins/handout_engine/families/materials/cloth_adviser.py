"""What a cloth asks for: needle, thread in every count, stitch, fullness, washing and pressing.

The figures are those of `materials`, cell by cell with their basis. A thread at hand and a washed
sample take the place of the table's thread and shrinkage.
"""

from __future__ import annotations

from math import sqrt
from typing import ClassVar

from handout_engine.amounts.inputs import choice, length, optional_length, optional_thread
from handout_engine.amounts.lengths import from_float, inches
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.materials.material_charts import material_charts
from handout_engine.families.materials.materials import MATERIALS, NOT, Material
from handout_engine.families.materials.needles_drawing import (
    blade_and_thread,
    stitch_row,
    thread_bars,
)
from handout_engine.families.materials.thread_and_needle import (
    ThreadInputs,
    note_counts,
    note_needle,
    number,
)
from handout_engine.working.cautions import PINS_AND_IRON, RAISED_CLOTH, THIN_COTTON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

TEX, FINE, PERCENT = Saying.TEX, Saying.FINE, Saying.PERCENT


class ClothAdviser(ThreadInputs, Technique):
    """Needle, thread, stitch, fullness and care of a cloth."""

    title: ClassVar[str] = "Needle, thread and stitch for a cloth"
    family: ClassVar[str] = "materials"
    summary: ClassVar[str] = (
        "For a cloth: needle number, thread in every count, stitch length, fullness, fraying, "
        "shrinkage and pressing."
    )

    cloth = choice(
        "cloth", "The cloth to be sewn, or the one most like it.", *MATERIALS, basis=PRACTICE
    )
    thread_at_hand = optional_thread(
        "thread at hand",
        "What its spool says: 60/2 Ne, 50 Nm, 30 tex or 270 denier.",
        "the middle of what suits the cloth",
        ("5 tex", "120 tex"),
        in_use="thread",
    )
    wanted = length(
        "cloth wanted", "Length that is needed once the cloth is washed.", "1 yd", ("1 in", "50 yd")
    )
    sample_before = length(
        "sample before washing",
        "A piece marked on the cloth, along the selvage.",
        "10 in",
        ("4 in", "2 yd"),
        basis=PRACTICE,
    )
    sample_after = optional_length(
        "sample after washing",
        "The same marks, measured again once it is dry.",
        "not washed yet; the usual shrinkage of that cloth is used",
        ("3 in", "2 yd"),
    )

    def whole(self) -> Worksheet:
        """Everything the table knows; raises RefusalError for a thread that no needle takes."""
        sheet = Worksheet(technique=self)
        material = MATERIALS[self.cloth]
        _note_thread(sheet, self, material)
        note_counts(sheet)
        usual = sheet.note("usual_needle", "usual needle of this cloth", material.needle.what, "",
                           basis=material.needle.basis)  # fmt: skip
        note_needle(sheet, self, usual)
        sheet.note("point", "point of the needle", material.point.what, "",
                   basis=material.point.basis)  # fmt: skip
        _note_stitch(sheet, material)
        _note_care(sheet, self, material)
        sheet.charts.extend(material_charts())
        _add_supplies(sheet, material)
        _add_steps(sheet)
        _draw(sheet)
        return sheet


def _note_thread(sheet: Worksheet, asked: ClothAdviser, material: Material) -> None:
    """Note the threads that suit, the one that is used, and how it compares."""
    cell = material.thread
    sheet.note("thread_least", "finest thread for this cloth", cell.what.least, "",
               basis=cell.basis, saying=TEX)  # fmt: skip
    sheet.note("thread_most", "thickest thread for this cloth", cell.what.most, "",
               basis=cell.basis, saying=TEX)  # fmt: skip
    hand, verdict = asked.thread_at_hand, "what this cloth wants"
    if hand is None:
        sheet.note("thread", "thread", (cell.what.least + cell.what.most) / 2,
                   "({thread_least} + {thread_most}) / 2", saying=TEX)  # fmt: skip
    else:
        sheet.note("thread", "thread", hand, "{thread_at_hand}", saying=TEX)
        if hand < cell.what.least:
            verdict = "finer than usual: the seam may part before the cloth does"
        elif hand > cell.what.most:
            verdict = "thicker than usual: the seam may pucker and show"
    sheet.note("verdict", "the thread is", verdict, "", basis=PRACTICE)


def _note_stitch(sheet: Worksheet, material: Material) -> None:
    """Note the length of a stitch, how many make an inch, and how full the cloth gathers."""
    stitch = sheet.note("stitch_length", "stitch length", material.stitch.what, "",
                        basis=material.stitch.basis, saying=FINE)  # fmt: skip
    inch = sheet.note("inch", "one inch", inches(1), "", basis=published("yard"))
    sheet.note("stitches", "stitches to the inch", inch.length / stitch.length,
               "{inch} / {stitch_length}")  # fmt: skip
    full = material.fullness
    for name, words, amount in (
        ("fullness_least", "least fullness", full.what.least),
        ("fullness_most", "most fullness", full.what.most),
    ):
        sheet.note(name, words, amount, "", basis=full.basis)


def _note_care(sheet: Worksheet, asked: ClothAdviser, material: Material) -> None:
    """Note fraying, weight, shrinkage and the iron; raises RefusalError for a sample that grew."""
    sheet.note("frays", "it frays", material.frays.what, "", basis=material.frays.basis)
    sheet.note("weight", "usual weight, grams in a square metre", material.weight.what, "",
               basis=material.weight.basis)  # fmt: skip
    before, after = asked.sample_before, asked.sample_after
    if after is None:
        share = Ratio(material.shrinkage.what)
        sheet.note("shrinkage", "shrinkage, usual", share, "", basis=material.shrinkage.basis,
                   saying=PERCENT)  # fmt: skip
    elif after > before:
        tape = Tape(finest=32)
        raise RefusalError(
            f"sample_after {tape.say(after)} is longer than sample_before {tape.say(before)}; "
            "cloth shrinks in the wash, so the two may be exchanged",
            "sample_after",
        )
    else:
        share = (before - after) / before
        sheet.note("shrinkage", "shrinkage of the sample", share,
                   "({sample_before} - {sample_after}) / {sample_before}",
                   saying=PERCENT)  # fmt: skip
    sheet.note("buy", "length before washing", asked.wanted / (1 - share),
               "{wanted} / (1 - {shrinkage})", saying=Saying.UP)  # fmt: skip
    sheet.note("press", "press it", material.press.what, "", basis=material.press.basis)


def _add_supplies(sheet: Worksheet, material: Material) -> None:
    needle = sentence("old number {old}, point: {point}", old=sheet["old_needle"],
                      point=sheet["point"])  # fmt: skip
    sheet.supplies.append(Supply("machine needle", size=sheet["needle"], note=needle))
    sheet.supplies.append(Supply("thread", size=sheet["thread"], note=sentence(
        "or Ne {ne}, Nm {nm}, {denier} denier", ne=sheet["thread_ne"], nm=sheet["thread_nm"],
        denier=sheet["thread_denier"])))  # fmt: skip
    sheet.supplies.append(Supply("the cloth, before washing", sheet["buy"]))
    sheet.cautions.append(PINS_AND_IRON)
    if material.burns_fast:
        sheet.cautions.append(THIN_COTTON)
    if material.raised:
        sheet.cautions.append(RAISED_CLOTH)


def _add_steps(sheet: Worksheet) -> None:
    sheet.step(
        "Buy {buy} for {wanted} of washed cloth. It frays {frays}"
        + (
            "."
            if sheet["frays"].amount == NOT
            else ": zigzag or whip its cut ends before it goes into the water."
        )
    )
    sheet.step(
        "Mark {sample_before} along the selvage, wash and dry the cloth as the finished thing will "
        f"be washed, and press it: {sheet['press'].amount}.",
        "the marks are now apart by their length less {shrinkage}; if it is more, buy more before "
        "you cut, and write what you measured into this page.",
    )
    sheet.step("Put in a new needle, number {needle} (old number {old_needle}, point {point}), and "
               "thread of {thread} above and below.")  # fmt: skip
    sheet.step("Set the stitch to {stitch_length}.",
               "{stitches} stitches lie within {inch}, more or less.")  # fmt: skip
    sheet.step("For gathers begin between {fullness_least} and {fullness_most} times the edge.")
    sheet.sample.append(
        Step(
            sentence("Sew a seam a hand long through two layers of the washed cloth, with needle "
                     "{needle} and stitches of {stitch}, and press it.", needle=sheet["needle"],
                     stitch=sheet["stitch_length"]),
            sentence("the seam is flat and as long as the cloth beside it; if it puckers, take a "
                     "finer thread or needle, or a shorter stitch."),
        )
    )  # fmt: skip


def _draw(sheet: Worksheet) -> None:
    blade, thread = sheet["blade"], sheet["thread_diameter"]
    row = sentence("Stitches of {stitch} along {inch}.", stitch=sheet["stitch_length"],
                   inch=sheet["inch"])  # fmt: skip
    ends = sentence("A blade of {blade} and a thread of {thread}.", blade=blade, thread=thread)
    scenes = (
        ("finished", "Stitches along one inch of a seam.",
         Scene(sentence("Stitches to the inch"), row, tuple(stitch_row(sheet["stitch_length"],
                                                                       sheet["inch"])))),
        ("needle", "The needle's blade and the thread, seen from the point and much enlarged.",
         Scene(sentence("Needle and thread"), ends, tuple(blade_and_thread(blade, thread)), 200)),
        ("threads", "Finest, chosen and thickest thread, much enlarged; thickness to scale.",
         _threads(sheet)),
    )  # fmt: skip
    for name, words, scene in scenes:
        sheet.pictures.append(Picture(name, sentence(words), scene, name == "finished"))


def _threads(sheet: Worksheet) -> Scene:
    """Three threads to one scale; those of the table are as dense as the chosen one."""
    chosen = sheet["thread_diameter"]
    shown = []
    for label, name in (("finest", "thread_least"), ("chosen", "thread"),
                        ("thickest", "thread_most")):  # fmt: skip
        share = sqrt(number(sheet, name) / number(sheet, "thread"))
        thick = from_float(chosen.mm * share)
        shown.append((label, Value(name, label, thick, chosen.basis, saying=FINE)))
    words = sentence("Threads of {a}, {b} and {c}.", a=sheet["thread_least"], b=sheet["thread"],
                     c=sheet["thread_most"])  # fmt: skip
    return Scene(sentence("Threads side by side"), words, tuple(thread_bars(shown)))


TECHNIQUE = ClothAdviser
