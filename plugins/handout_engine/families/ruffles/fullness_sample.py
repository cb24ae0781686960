"""The fullness a gathered sample shows, by hand or by a ruffling attachment at one setting."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.working.cautions import LOOSE_THREADS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


class FullnessSample(Technique):
    """Fullness from a test strip, and the strip that an edge then needs."""

    title = "Fullness from a sample"
    family = "ruffles"
    summary = (
        "Gather a test strip, measure it before and after, and know how long a strip an edge needs."
    )

    before = length(
        "sample before gathering",
        "Length of the test strip, laid flat.",
        "12 in",
        ("2 in", "5 yd"),
        basis=PRACTICE,
    )
    after = length(
        "sample after gathering",
        "Its length once it is gathered as full as you like it.",
        "6 in",
        ("1/2 in", "5 yd"),
    )
    edge = length(
        "finished edge",
        "The edge that the real strip is to be gathered to.",
        "18 in",
        ("1 in", "20 yd"),
    )
    end_allowance = length(
        "end allowance",
        "Added at each end of the strip.",
        "1/4 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @check
    def gathering_shortened_it(self) -> None:
        """Refuse a sample that is longer once it is gathered."""
        if self.after > self.before:
            raise RefusalError(
                f"after {TAPE.say(self.after)} is longer than before {TAPE.say(self.before)}; "
                "gathering only shortens a strip, so the two may be exchanged",
                "after",
            )

    @value("fullness of the sample")
    def fullness(self) -> Ratio:
        """How many lengths of cloth lie in one of the gathered strip."""
        return self.before / self.after

    @value("strip before gathering", saying=Saying.UP, finishes="edge")
    def strip_length(self) -> Length:
        """As full as the sample, and what both ends take."""
        return self.fullness * self.edge + 2 * self.end_allowance

    def sew(self, sheet: Worksheet) -> None:
        """The sample gathered and measured."""
        sheet.have("a strip of the same cloth, cut on the same grain")
        sheet.have("the thread, needle and stitch length of the real work")
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS))
        sheet.step(
            "Cut a strip {before} long, as wide as the real one and on the same grain.",
            "laid flat it is {before} long.",
        )
        sheet.step(
            "Gather it as the real one will be gathered: two rows by machine, rolled and whipped, "
            "or with a ruffling attachment. Note the stitch length, the thread tension and the "
            "setting."
        )
        sheet.step(
            "Draw it up until it is as full as you like it, or let it lie as the attachment made "
            "it. Do not stretch it.",
            "it is {after} long, so the fullness is {fullness}.",
        )
        sheet.step("For an edge of {edge} cut a strip {strip_length} long.")
        sheet.step(
            "Keep the sample with its figures: at another setting, in another cloth or on another "
            "grain the fullness is another."
        )

    def draw(self, sheet: Worksheet) -> None:
        """The sample, and the real edge with its strip."""
        sample = Scene(
            sentence("Sample before and after"),
            sheet.sentence("A strip of {before} is drawn up to {after}."),
            quarters(sheet["after"], sheet["before"]),
        )
        real = Scene(
            sentence("Strip and edge"),
            sheet.sentence("A strip of {strip_length} is drawn up to {edge}."),
            quarters(sheet["edge"], sheet["strip_length"]),
        )
        words = sentence("The same fullness on the real edge.")
        sheet.show("finished", "The sample before and after.", sample, finished=True)
        sheet.pictures.append(Picture("strip", words, real))


TECHNIQUE = FullnessSample
