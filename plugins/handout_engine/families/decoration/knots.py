"""Knots or bullions on a line, on a grid or at chosen points, and the thread for them."""

from __future__ import annotations

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import (
    SEWING,
    count,
    length,
)
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.decoration.knots_drawing import (
    KnotPlan,
    Wrapped,
    knots_placed,
    numbered,
    wraps_round_needle,
)
from handout_engine.families.decoration.placed_knots import (
    BULLIONS,
    GRID,
    LINE,
    POINTS,
    STAGGERED,
    PlacedKnots,
)
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON, WORKED_KNOTS
from handout_engine.working.workings import Chart, Picture, Supply
from handout_engine.working.worksheet import Worksheet

MOST_NUMBERED = 12


class Knots(PlacedKnots):
    """Worked knots in their places."""

    title = "Knots and bullions"
    family = "decoration"
    summary = (
        "Knots or bullions on a line, a grid or at points of your own: how many, where, and how "
        "much thread."
    )

    passing = length(
        "through the cloth",
        "Thread that each takes to go down and come up again.",
        "1/2 in",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    sample_knots = count(
        "sample, knots", "How many you worked as a sample.", 10, 100, group=SEWING, basis=PRACTICE
    )
    needleful = length(
        "needleful",
        "Length of thread that you work with.",
        "18 in",
        ("6 in", "40 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    fastening = length(
        "fastening",
        "Of each needleful, for both its ends.",
        "4 in",
        ("1 in", "5 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("thread for one, {found}")
    def knot_thread(self) -> Length:
        """By the sample, or an estimate by the way of the thread round the needle."""
        if self.sample_thread is not None:
            return self.sample_thread / self.sample_knots
        return self.turns * PI * (self.needle + self.thread) + self.passing

    @value("thread worked up")
    def thread_used(self) -> Length:
        """A sample was measured with the way between; else that is added."""
        used = self.knots * self.knot_thread
        return used if self.sample_thread is not None else used + self.travel

    @value("of each needleful, worked up")
    def useful(self) -> Length:
        """Both ends are fastened."""
        return self.needleful - self.fastening

    @check
    def a_needleful_lasts_for_one(self) -> None:
        """Refuse a needleful that is used up before the first is worked."""
        if self.useful < self.knot_thread:
            least = self.knot_thread + self.fastening
            raise RefusalError(
                f"needleful {TAPE.both(self.needleful)} does not last for one; use "
                f"{ways(at_least(self, 'needleful', least), 'fewer wraps')}",
                "needleful",
            )

    @value("needlefuls")
    def needlefuls(self) -> Count:
        """Whole ones."""
        return (self.thread_used / self.useful).rounded_up()

    @value("thread to have ready", saying=Saying.UP)
    def thread_total(self) -> Length:
        """Whole needlefuls."""
        return self.needlefuls * self.needleful

    def cut(self, sheet: Worksheet) -> None:
        """Nothing is cut; chosen points have their chart."""
        if self.arrangement == POINTS:
            rows = tuple(
                (f"point {number}", place.across, place.down)
                for number, place in enumerate(self.laid, 1)
            )
            sheet.charts.append(Chart("Chosen points", ("Point", "Across", "Down"), rows))

    def sew(self, sheet: Worksheet) -> None:
        """A sample, then from point to point."""
        thread = sheet["thread_total"]
        sheet.supplies.append(Supply("stranded cotton or silk for the knots", thread))
        sheet.supplies.append(Supply("a needle no thicker at its eye than along its shaft"))
        sheet.supplies.append(Supply("a marker that washes out, tried on a scrap"))
        sheet.cautions.extend((WORKED_KNOTS, LONG_FLOATS, PINS_AND_IRON))
        _add_sample(sheet)
        _add_steps(sheet, self)

    def draw(self, sheet: Worksheet) -> None:
        """Where they lie, at true scale as well, and the needle with its wraps."""
        _draw(sheet, self)


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "On a scrap of the same cloth, over the same backing, work ten of them as far "
        "apart as they will lie. Measure the thread in the needle before and after.",
        "it became shorter by about ten times {knot_thread}. Give what it took as the sample: "
        "how tightly you wrap decides it.",
    )


def _add_steps(sheet: Worksheet, asked: Knots) -> None:
    where = {
        LINE: (
            "Mark {knots} points along the line, {true_spacing} from one to the next.",
            "the last one lies {run} from the first.",
        ),
        GRID: (
            "Mark {rows} lines, {true_row_spacing} apart, and on each {columns} points "
            "{true_spacing} apart, exactly below each other.",
            "{knots} points in all.",
        ),
        STAGGERED: (
            "Mark {rows} lines, {true_row_spacing} apart: {columns} points {true_spacing} "
            "apart on the first, on every second line one fewer, halfway between.",
            "{knots} points in all.",
        ),
        POINTS: (
            "Trace the {knots} points from the printed sheet, or mark them from the chart.",
            "each lies on its dot.",
        ),
    }
    sheet.step(*where[asked.arrangement])
    sheet.step("Back thin cloth with a second layer of itself, and stretch both in a hoop.")
    sheet.step(
        "Cut the thread {needleful} long, fasten it on the wrong side with two small stitches, "
        "never with a knot alone, and bring it up at the first point."
    )
    if asked.kind == BULLIONS:
        sheet.step(
            "Go down {size} away and up again at the point, but leave the needle in the cloth. "
            "Wrap the thread round it {turns} times, side by side. Hold the wraps, draw the needle "
            "through, and go down where you began.",
            "the wraps fill the stitch: {size}, flat and even.",
        )
    else:
        sheet.step(
            "Hold the thread taut, wrap it {turns} times round the needle, and go down a thread or "
            "two beside the point. Slide the wraps down to the cloth before you draw through.",
            "it sits on the cloth and does not slip through when you pull at it.",
        )
    sheet.step(
        "Go on from point to point. Fasten off behind one whenever the next is further away than "
        "a finger's breadth, and when the needleful is used. Needlefuls in all: {needlefuls}.",
        "nothing on the wrong side is loose.",
    )


def _draw(sheet: Worksheet, asked: Knots) -> None:
    chosen = asked.arrangement == POINTS
    places = [(float(place.across), float(place.down)) for place in asked.laid]
    bullion = sheet["size"].mm if asked.kind == BULLIONS else 0.0
    tall = sheet["height"] if asked.arrangement in {GRID, STAGGERED} else None
    plan = KnotPlan(
        places,
        None if chosen else sheet["true_spacing"],
        None if chosen else sheet["run"],
        tall,
        bullion,
        0.0 if bullion else sheet["size"].mm,
    )
    words = sentence(
        "{knots} in their places; bullions stand upright."
        if bullion
        else "{knots} knots in their places.",
        knots=sheet["knots"],
    )
    shown = numbered(plan) if chosen and len(places) <= MOST_NUMBERED else knots_placed(plan)
    finished = Scene(sentence("Where they lie"), words, shown, tallest=220.0)
    at_scale = Scene(
        sentence("Placement sheet"),
        words,
        numbered(plan, True) if chosen else knots_placed(plan, True),
    )
    long = sheet["size"] if bullion else None
    wrapped = Wrapped(sheet["needle"], sheet["thread"], sheet["turns"].whole, long)
    some = "some of the wraps" if sheet["turns"].whole > 14 else "the wraps"
    sheet.pictures.append(Picture("finished", words, finished, True, at_scale))
    sheet.show("wraps", f"The needle with {some}, enlarged.", wraps_round_needle(wrapped))


TECHNIQUE = Knots
