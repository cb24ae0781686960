"""How much thread a seam takes, and how many spools hold it."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
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
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.materials.stitch_types import LOCKSTITCH, STITCH_TYPES, StitchType
from handout_engine.families.materials.thread_amount_drawing import lockstitch
from handout_engine.shared.fullness_drawing import compared
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Supply
from handout_engine.working.worksheet import Worksheet


class ThreadAmount(Technique):
    """Thread for a number of seams, and spools to buy."""

    title = "Thread for a seam"
    family = "materials"
    summary = (
        "How much thread seams take, by the kind of stitch or by a sample, and how many spools "
        "hold it."
    )
    known_by = "path"

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

    @property
    def kind(self) -> StitchType:
        """What the standard and the trade say of the stitch."""
        return STITCH_TYPES[str(self.stitch)]

    @value("number of the stitch type", basis=published("iso-4915"))
    def type_number(self) -> Count:
        """What machines and patterns call it by."""
        return Count(self.kind.number)

    @value("threads it is sewn with", basis=published("iso-4915"))
    def threads(self) -> Count:
        """Each leaves a tail at both ends."""
        return Count(self.kind.threads)

    @value("usual thread for each length of this stitch", basis=PRACTICE)
    def usual_factor(self) -> Ratio:
        """All its threads together; it hangs on stitch, cloth and tension."""
        return Ratio(self.kind.factor)

    @check
    def the_sample_was_measured_whole(self) -> None:
        """Refuse a sample whose thread is shorter than its own seam."""
        thread, seam = self.sample_thread, self.sample_seam
        if thread is not None and thread < seam:
            raise RefusalError(
                f"sample_thread {TAPE.say(thread)} is shorter than its seam of {TAPE.say(seam)}; "
                f"measure every thread of it, at least {TAPE.no_less(seam)}",
                "sample_thread",
            )

    @value("thread reckoned for each length of seam")
    def used_factor(self) -> Ratio:
        """The sample's, the one given, or the usual one."""
        if self.sample_thread is not None:
            return self.sample_thread / self.sample_seam
        return self.usual_factor if self.factor is None else self.factor

    @value("lockstitch by the path of its threads")
    def path_factor(self) -> Ratio:
        """Each of two threads runs along the cloth, and once to its middle and back."""
        return 2 * (self.stitch_length + self.thickness) / self.stitch_length

    @value("thread in one seam", saying=Saying.UP)
    def in_seam(self) -> Length:
        """Its tails left out."""
        return self.used_factor * self.seam_length

    @value("tails of one seam")
    def tails(self) -> Length:
        """At both ends of each thread."""
        return 2 * self.threads * self.tail

    @value("thread for all seams", saying=Saying.YARDAGE)
    def thread(self) -> Length:
        """With what is spared for breaks and seams sewn twice."""
        return (self.in_seam + self.tails) * self.seams * (1 + self.spare)

    @value("spools to buy")
    def spools(self) -> Count:
        """Spools are sold whole."""
        return (self.thread / self.spool).rounded_up()

    def cut(self, sheet: Worksheet) -> None:
        """Nothing is cut: all stitch types, to compare."""
        rows = tuple(
            (name, kind.number, kind.factor, kind.use) for name, kind in STITCH_TYPES.items()
        )
        caption = "Thread by stitch type (common practice, no source)"
        sheet.charts.append(Chart(caption, ("Stitch", "Type", "Times", "Use"), rows))

    def sew(self, sheet: Worksheet) -> None:
        """From a seam that is unpicked to the spools to buy."""
        locked = self.stitch == LOCKSTITCH
        spools = sheet.sentence("of {spool} each, {thread} in all")
        sheet.supplies.append(Supply("spools of thread, of one dye lot", sheet["spools"], spools))
        if locked:
            sheet.have("bobbins, wound from the same thread")
        sheet.cautions.append(PINS_AND_IRON)
        sheet.trial(
            "Sew {sample_seam} of the real seam on scraps, mark both its ends on the "
            "stitches, and unpick it without breaking the threads.",
            "lay all threads end to end: {used_factor} times the seam, or write what you "
            "measured into this page.",
        )
        sheet.step(
            "Add up the rows of stitching: {seams} of {seam_length}; a French seam has two rows, a "
            "hem one, and each is counted."
        )
        sheet.step("One seam takes {in_seam} of thread, and {tails} for its ends.")
        sheet.step(
            "All seams take {thread} with {spare} to spare. Spools of {spool} to buy: {spools}.",
            "the spools have one dye-lot number.",
        )
        if locked:
            sheet.step("Wind bobbins before you begin: about half of the thread lies beneath.")

    def draw(self, sheet: Worksheet) -> None:
        """A seam beside its thread, and the path of a lockstitch."""
        seam, thread = sheet["seam_length"], sheet["in_seam"]
        bars = Scene(
            sentence("A seam and its thread"),
            sheet.sentence("A seam of {seam_length} takes {in_seam}."),
            compared(seam, [thread]),
        )
        caption = "A seam above, its thread below."
        sheet.show("finished", caption, bars, finished=True)
        section = Scene(
            sentence("Threads of a lockstitch"),
            sheet.sentence(
                "Stitches of {stitch_length} in layers of {thickness} take {path_factor} times the "
                "seam."
            ),
            tuple(lockstitch(sheet["stitch_length"], sheet["thickness"])),
        )
        caption = (
            "A lockstitch cut along the seam: the thicker the cloth and the shorter the stitch, "
            "the more thread goes up and down."
        )
        sheet.show("path", caption, section)


TECHNIQUE = ThreadAmount
