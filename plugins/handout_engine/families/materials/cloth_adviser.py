"""What a cloth asks for: needle, thread in every count, stitch, fullness, washing and pressing.

The figures are those of `materials`, cell by cell with their basis. A thread at hand and a washed
sample take the place of the table's thread and shrinkage.
"""

from __future__ import annotations

from math import sqrt

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import choice, length, optional_length, optional_thread
from handout_engine.amounts.lengths import Length, from_float, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
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
from handout_engine.families.materials.thread_and_needle import ThreadInNeedle, ThreadInputs
from handout_engine.working.cautions import PINS_AND_IRON, RAISED_CLOTH, THIN_COTTON
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet


class ClothAdviser(ThreadInputs):
    """Needle, thread, stitch, fullness and care of a cloth."""

    title = "Needle, thread and stitch for a cloth"
    family = "materials"
    summary = (
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

    @property
    def material(self) -> Material:
        """What the table knows of the cloth."""
        return MATERIALS[str(self.cloth)]

    def label_of(self, label: str) -> str:
        """A label, with how the shrinkage is known."""
        known = ", usual" if self.sample_after is None else " of the sample"
        return super().label_of(label).replace("{known}", known)

    @value("finest thread for this cloth", basis=PRACTICE, saying=Saying.TEX)
    def thread_least(self) -> Ratio:
        """A finer one parts before the cloth does."""
        return Ratio(self.material.thread.what.least)

    @value("thickest thread for this cloth", basis=PRACTICE, saying=Saying.TEX)
    def thread_most(self) -> Ratio:
        """A thicker one puckers and shows."""
        return Ratio(self.material.thread.what.most)

    @value("thread", saying=Saying.TEX)
    def thread(self) -> Ratio:
        """The one at hand, or the middle of what suits the cloth."""
        if self.thread_at_hand is not None:
            return self.thread_at_hand
        return (self.thread_least + self.thread_most) / 2

    @value("the thread is", basis=PRACTICE)
    def verdict(self) -> str:
        """How a thread at hand compares with the table's."""
        if self.thread < self.thread_least:
            return "finer than usual: the seam may part before the cloth does"
        if self.thread > self.thread_most:
            return "thicker than usual: the seam may pucker and show"
        return "what this cloth wants"

    @value("usual needle of this cloth", basis=PRACTICE)
    def usual_needle(self) -> Count:
        """Before the thread is looked at."""
        return Count(self.material.needle.what)

    @group
    def thread_and_needle(self) -> ThreadInNeedle:
        """The thread in every count, and the needle that takes it."""
        return ThreadInNeedle(self, self.thread, self.usual_needle)

    @value("point of the needle", basis=PRACTICE)
    def point(self) -> str:
        """Round where the cloth is knitted."""
        return self.material.point.what

    @value("stitch length", basis=PRACTICE, saying=Saying.FINE)
    def stitch_length(self) -> Length:
        """The thinner the cloth, the shorter."""
        return self.material.stitch.what

    @value("one inch", basis=published("yard"))
    def inch(self) -> Length:
        """What stitches are counted along."""
        return inches(1)

    @value("stitches to the inch")
    def stitches(self) -> Ratio:
        """As older machines are set."""
        return self.inch / self.stitch_length

    @value("least fullness")
    def fullness_least(self) -> Ratio:
        """Where gathers begin to look like gathers."""
        full = self.material.fullness
        return constant(f"least for {self.cloth}", Ratio(full.what.least), full.basis)

    @value("most fullness")
    def fullness_most(self) -> Ratio:
        """More will not draw up, or stands away."""
        full = self.material.fullness
        return constant(f"most for {self.cloth}", Ratio(full.what.most), full.basis)

    @value("it frays", basis=PRACTICE)
    def frays(self) -> str:
        """How soon its cut ends have to be finished."""
        return self.material.frays.what

    @value("usual weight, grams in a square metre", basis=PRACTICE)
    def weight(self) -> Count:
        """What it is named by where cloth is sold."""
        return Count(self.material.weight.what)

    @check
    def the_sample_did_not_grow(self) -> None:
        """Refuse a sample that is longer after the wash."""
        before, after = self.sample_before, self.sample_after
        if after is not None and after > before:
            raise RefusalError(
                f"sample_after {TAPE.say(after)} is longer than sample_before {TAPE.say(before)}; "
                "cloth shrinks in the wash, so the two may be exchanged",
                "sample_after",
            )

    @value("usual shrinkage of this cloth", basis=PRACTICE, saying=Saying.PERCENT)
    def usual_shrinkage(self) -> Ratio:
        """Before a sample is washed."""
        return Ratio(self.material.shrinkage.what)

    @value("shrinkage{known}", saying=Saying.PERCENT)
    def shrinkage(self) -> Ratio:
        """The sample's where it was washed, the table's until then."""
        if self.sample_after is not None:
            return (self.sample_before - self.sample_after) / self.sample_before
        return self.usual_shrinkage

    @value("length before washing", saying=Saying.UP)
    def buy(self) -> Length:
        """So much that what is wanted is left of it."""
        return self.wanted / (1 - self.shrinkage)

    @value("press it", basis=PRACTICE)
    def press(self) -> str:
        """How hot, how damp, and from which side."""
        return self.material.press.what

    def cut(self, sheet: Worksheet) -> None:
        """Nothing is cut: the whole table, to compare."""
        sheet.charts.extend(material_charts())

    def sew(self, sheet: Worksheet) -> None:
        """From the washed sample to the first gathers."""
        needle = sheet.sentence("old number {old_needle}, point: {point}")
        sheet.supplies.append(Supply("machine needle", size=sheet["needle"], note=needle))
        counts = sheet.sentence("or Ne {thread_ne}, Nm {thread_nm}, {thread_denier} denier")
        sheet.supplies.append(Supply("thread", size=sheet["thread"], note=counts))
        sheet.supplies.append(Supply("the cloth, before washing", sheet["buy"]))
        sheet.cautions.append(PINS_AND_IRON)
        if self.material.burns_fast:
            sheet.cautions.append(THIN_COTTON)
        if self.material.raised:
            sheet.cautions.append(RAISED_CLOTH)
        sheet.trial(
            "Sew a seam a hand long through two layers of the washed cloth, with needle "
            "{needle} and stitches of {stitch_length}, and press it.",
            "the seam is flat and as long as the cloth beside it; if it puckers, take a "
            "finer thread or needle, or a shorter stitch.",
        )
        ends = ": zigzag or whip its cut ends before it goes into the water."
        sheet.step(
            "Buy {buy} for {wanted} of washed cloth. It frays {frays}"
            + ("." if self.frays == NOT else ends)
        )
        sheet.step(
            "Mark {sample_before} along the selvage, wash and dry the cloth as the finished thing "
            f"will be washed, and press it: {self.press}.",
            "the marks are now apart by their length less {shrinkage}; if it is more, buy more "
            "before you cut, and write what you measured into this page.",
        )
        sheet.step(
            "Put in a new needle, number {needle} (old number {old_needle}, point {point}), and "
            "thread of {thread} above and below."
        )
        sheet.step(
            "Set the stitch to {stitch_length}.",
            "{stitches} stitches lie within {inch}, more or less.",
        )
        sheet.step("For gathers begin between {fullness_least} and {fullness_most} times the edge.")

    def draw(self, sheet: Worksheet) -> None:
        """Stitches along an inch; the needle and its thread; three threads side by side."""
        stitch, inch = sheet["stitch_length"], sheet["inch"]
        blade, thread = sheet["blade"], sheet["thread_diameter"]
        row = Scene(
            sentence("Stitches to the inch"),
            sheet.sentence("Stitches of {stitch_length} along {inch}."),
            tuple(stitch_row(stitch, inch)),
        )
        ends = Scene(
            sentence("Needle and thread"),
            sheet.sentence("A blade of {blade} and a thread of {thread_diameter}."),
            tuple(blade_and_thread(blade, thread)),
            200,
        )
        threads = Scene(
            sentence("Threads side by side"),
            sheet.sentence("Threads of {thread_least}, {thread} and {thread_most}."),
            tuple(thread_bars(self._threads(thread))),
        )
        for name, caption, scene in (
            ("finished", "Stitches along one inch of a seam.", row),
            (
                "needle",
                "The needle's blade and the thread, seen from the point and much enlarged.",
                ends,
            ),
            (
                "threads",
                "Finest, chosen and thickest thread, much enlarged; thickness to scale.",
                threads,
            ),
        ):
            sheet.show(name, caption, scene, finished=name == "finished")

    def _threads(self, chosen: Value) -> list[tuple[str, Value]]:
        """Three threads to one scale; those of the table are as dense as the chosen one."""
        shown = []
        for label, tex in (
            ("finest", self.thread_least),
            ("chosen", self.thread),
            ("thickest", self.thread_most),
        ):
            thick = from_float(chosen.mm * sqrt(tex / self.thread))
            shown.append((label, Value(label, label, thick, chosen.basis, saying=Saying.FINE)))
        return shown


TECHNIQUE = ClothAdviser
