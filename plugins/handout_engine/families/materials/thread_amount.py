"""How much thread a seam takes, and how many spools hold it."""

from __future__ import annotations

from fractions import Fraction
from math import ceil
from typing import ClassVar

from handout_engine.amounts.inputs import (
    SEWING,
    choice,
    count,
    fine_length,
    length,
    optional_length,
    optional_ratio,
    percentage,
    reel,
)
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.materials.stitch_types import LOCKSTITCH, STITCH_TYPES, lockstitch_path
from handout_engine.families.materials.thread_amount_drawing import lockstitch
from handout_engine.shared.fullness_drawing import compared
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

FINE, SOLD = Saying.FINE, Saying.YARDAGE


class ThreadAmount(Technique):
    """Thread for a number of seams, and spools to buy."""

    title: ClassVar[str] = "Thread for a seam"
    family: ClassVar[str] = "materials"
    summary: ClassVar[str] = (
        "How much thread seams take, by the kind of stitch or by a sample, and how many spools "
        "hold it."
    )
    known_by: ClassVar[str] = "path"

    seam_length = length(
        "length of a seam",
        "One seam from end to end, every row of it counted once.",
        "1 yd",
        ("1 in", "50 yd"),
    )
    seams = count(
        "how many seams", "Seams of that length, each row of stitching for itself.", 8, 2000
    )
    stitch = choice("kind of stitch", "What the seam is sewn with.", *STITCH_TYPES, basis=PRACTICE)
    factor = optional_ratio(
        "thread for each length of seam",
        "All threads together.",
        "what is usual for the stitch, or the sample's",
        ("1", "60"),
        in_use="used_factor",
    )
    sample_seam = length(
        "sample seam",
        "Length of a seam that is sewn and unpicked.",
        "4 in",
        ("1 in", "1 yd"),
        basis=PRACTICE,
    )
    sample_thread = optional_length(
        "thread of the sample",
        "All threads that were unpicked from it, end to end.",
        "no sample; the factor of the stitch is used",
        ("1 in", "40 yd"),
    )
    tail = length(
        "tail",
        "Left of each thread at each end of a seam.",
        "4 in",
        ("0 in", "12 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    spare = percentage(
        "spare",
        "For bobbins, breaks and seams sewn twice.",
        "15 %",
        100,
        group=SEWING,
        basis=PRACTICE,
    )
    spool = reel(
        "thread on a spool",
        "As its label says.",
        "100 m",
        ("5 m", "10000 m"),
        group=SEWING,
        basis=PRACTICE,
    )
    stitch_length = fine_length(
        "stitch length",
        "For the path of a lockstitch.",
        "2 mm",
        ("0.5 mm", "6 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    thickness = fine_length(
        "thickness of all layers",
        "Pressed between two fingers; two of batiste are about half a millimetre.",
        "0.5 mm",
        ("0.05 mm", "10 mm"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Thread and spools; raises RefusalError for a sample shorter than its own seam."""
        sheet = Worksheet(technique=self)
        factor = _note_factor(sheet, self)
        path = _note_path(sheet, self)
        one = _note_amount(sheet, self, factor)
        sheet.charts.append(_chart())
        _add_supplies(sheet, self)
        _add_steps(sheet, self)
        _draw(sheet, one, path)
        return sheet


def _note_factor(sheet: Worksheet, asked: ThreadAmount) -> Value:
    """Note the factor that is used: the sample's, the one given, or the usual one."""
    kind = STITCH_TYPES[asked.stitch]
    sheet.note("type_number", "number of the stitch type", kind.number, "",
               basis=published("iso-4915"))  # fmt: skip
    sheet.note("threads", "threads it is sewn with", kind.threads, "", basis=published("iso-4915"))
    usual = sheet.note("usual_factor", "usual thread for each length of this stitch", kind.factor,
                       "", basis=PRACTICE)  # fmt: skip
    name, words = "used_factor", "thread reckoned for each length of seam"
    if asked.sample_thread is not None:
        if asked.sample_thread < asked.sample_seam:
            tape = Tape(finest=32)
            raise RefusalError(
                f"sample_thread {tape.say(asked.sample_thread)} is shorter than its seam of "
                f"{tape.say(asked.sample_seam)}; measure every thread of it, at least "
                f"{tape.no_less(asked.sample_seam)}",
                "sample_thread",
            )
        return sheet.note(name, words, asked.sample_thread / asked.sample_seam,
                          "{sample_thread} / {sample_seam}")  # fmt: skip
    if asked.factor is not None:
        return sheet.note(name, words, asked.factor, "{factor}", basis=GIVEN)
    return sheet.note(name, words, kind.factor, "{usual}", basis=PRACTICE, usual=usual)


def _note_path(sheet: Worksheet, asked: ThreadAmount) -> Value:
    """Note what a lockstitch takes by the path of its threads, to compare."""
    return sheet.note("path_factor", "lockstitch by the path of its threads",
                      lockstitch_path(asked.stitch_length, asked.thickness),
                      "2 × ({stitch_length} + {thickness}) / {stitch_length}")  # fmt: skip


def _note_amount(sheet: Worksheet, asked: ThreadAmount, factor: Value) -> Value:
    """Note thread for one seam, for all, and the spools that hold it; returns that of one."""
    assert isinstance(factor.amount, Fraction)
    sewn = sheet.note("in_seam", "thread in one seam", asked.seam_length * factor.amount,
                      "{used_factor} × {seam_length}", saying=Saying.UP)  # fmt: skip
    tails = sheet.note("tails", "tails of one seam", 2 * sheet["threads"].whole * asked.tail,
                       "2 × {threads} × {tail}")  # fmt: skip
    every = (sewn.length + tails.length) * asked.seams * (1 + asked.spare)
    thread = sheet.note("thread", "thread for all seams", every,
                        "({in_seam} + {tails}) × {seams} × (1 + {spare})", saying=SOLD)  # fmt: skip
    sheet.note("spools", "spools to buy", ceil(thread.length / asked.spool),
               "{thread} / {spool}, rounded up")  # fmt: skip
    return sewn


def _chart() -> Chart:
    rows = tuple((name, kind.number, kind.factor, kind.use)
                 for name, kind in STITCH_TYPES.items())  # fmt: skip
    headings = ("Stitch", "Type", "Times", "Use")
    return Chart("Thread by stitch type (common practice, no source)", headings, rows)


def _add_supplies(sheet: Worksheet, asked: ThreadAmount) -> None:
    spools = sentence("of {spool} each, {thread} in all", spool=sheet["spool"],
                      thread=sheet["thread"])  # fmt: skip
    sheet.supplies.append(Supply("spools of thread, of one dye lot", sheet["spools"], spools))
    if sheet["threads"].whole > 1 and asked.stitch == LOCKSTITCH:
        sheet.supplies.append(Supply("bobbins, wound from the same thread"))
    sheet.cautions.append(PINS_AND_IRON)


def _add_steps(sheet: Worksheet, asked: ThreadAmount) -> None:
    sheet.sample.append(
        Step(
            sentence("Sew {seam} of the real seam on scraps, mark both its ends on the stitches, "
                     "and unpick it without breaking the threads.", seam=sheet["sample_seam"]),
            sentence("lay all threads end to end: {times} times the seam, or write what you "
                     "measured into this page.", times=sheet["used_factor"]),
        )
    )  # fmt: skip
    sheet.step("Add up the rows of stitching: {seams} of {seam_length}; a French seam has two "
               "rows, a hem one, and each is counted.")  # fmt: skip
    sheet.step("One seam takes {in_seam} of thread, and {tails} for its ends.")
    sheet.step("All seams take {thread} with {spare} to spare. Spools of {spool} to buy: {spools}.",
               "the spools have one dye-lot number.")  # fmt: skip
    if asked.stitch == LOCKSTITCH:
        sheet.step("Wind bobbins before you begin: about half of the thread lies beneath.")


def _draw(sheet: Worksheet, one: Value, path: Value) -> None:
    stitch, thick = sheet["stitch_length"], sheet["thickness"]
    seam = sheet["seam_length"]
    bars = Scene(sentence("A seam and its thread"),
                 sentence("A seam of {seam} takes {thread}.", seam=seam, thread=one),
                 compared(seam, [one]))  # fmt: skip
    section = Scene(sentence("Threads of a lockstitch"),
                    sentence("Stitches of {stitch} in layers of {thick} take {path} times the "
                             "seam.", stitch=stitch, thick=thick, path=path),
                    tuple(lockstitch(stitch, thick)))  # fmt: skip
    sheet.pictures.append(Picture("finished", sentence("A seam above, its thread below."), bars,
                                  True))  # fmt: skip
    sheet.pictures.append(
        Picture("path", sentence("A lockstitch cut along the seam: the thicker the cloth and the "
                                 "shorter the stitch, the more thread goes up and down."), section)
    )  # fmt: skip


TECHNIQUE = ThreadAmount
