"""The fullness a gathered sample shows, by hand or by a ruffling attachment at one setting."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.working.cautions import LOOSE_THREADS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Supply
from handout_engine.working.worksheet import Worksheet


class FullnessSample(Technique):
    """Fullness from a test strip, and the strip that an edge then needs."""

    title: ClassVar[str] = "Fullness from a sample"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Fullness and strip length; raises RefusalError when the sample did not get shorter."""
        if self.after > self.before:
            tape = Tape(finest=32)
            raise RefusalError(
                f"after {tape.say(self.after)} is longer than before {tape.say(self.before)}; "
                "gathering only shortens a strip, so the two may be exchanged",
                "after",
            )
        sheet = Worksheet(technique=self)
        sheet.note("fullness", "fullness of the sample", self.before / self.after,
                          "{before} / {after}")  # fmt: skip
        strip = sheet.note(
            "strip_length",
            "strip before gathering",
            self.edge * (self.before / self.after) + 2 * self.end_allowance,
            "{fullness} × {edge} + 2 × {end_allowance}",
            saying=Saying.UP,
            finishes="edge",
        )

        sheet.supplies.append(Supply("a strip of the same cloth, cut on the same grain"))
        sheet.supplies.append(Supply("the thread, needle and stitch length of the real work"))
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS))
        _add_steps(sheet)
        sheet.pictures.append(_picture("finished", sheet["after"], sheet["before"], True))
        sheet.pictures.append(_picture("strip", sheet["edge"], strip, False))
        return sheet


def _add_steps(sheet: Worksheet) -> None:
    sheet.step("Cut a strip {before} long, as wide as the real one and on the same grain.",
               "laid flat it is {before} long.")  # fmt: skip
    sheet.step(
        "Gather it as the real one will be gathered: two rows by machine, rolled and whipped, or "
        "with a ruffling attachment. Note the stitch length, the thread tension and the setting."
    )
    sheet.step(
        "Draw it up until it is as full as you like it, or let it lie as the attachment made it. "
        "Do not stretch it.",
        "it is {after} long, so the fullness is {fullness}.",
    )
    sheet.step("For an edge of {edge} cut a strip {strip_length} long.")
    sheet.step(
        "Keep the sample with its figures: at another setting, in another cloth or on another "
        "grain the fullness is another."
    )


def _picture(name: str, edge: Value, strip: Value, finished: bool) -> Picture:
    scene = Scene(
        sentence("Sample before and after" if finished else "Strip and edge"),
        sentence("A strip of {strip} is drawn up to {edge}.", strip=strip, edge=edge),
        quarters(edge, strip),
    )
    words = "The sample before and after." if finished else "The same fullness on the real edge."
    return Picture(name, sentence(words), scene, finished)


TECHNIQUE = FullnessSample
