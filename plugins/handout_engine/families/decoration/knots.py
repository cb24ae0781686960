"""Knots or bullions on a line, on a grid or at chosen points, and the thread for them."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import (
    SEWING,
    choice,
    count,
    fine_length,
    length,
    optional_count,
    optional_length,
    optional_places,
)
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.decoration.knots_drawing import (
    KnotPlan,
    Wrapped,
    knots_placed,
    numbered,
    wraps_round_needle,
)
from handout_engine.families.decoration.knots_measures import (
    BULLIONS,
    GRID,
    KNOTS,
    LINE,
    POINTS,
    STAGGERED,
    Laid,
    lay_knots,
    note_size,
    note_thread,
    note_wraps,
)
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON, WORKED_KNOTS
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

MOST_POINTS, MOST_NUMBERED = 60, 12


class Knots(Technique):
    """Worked knots in their places."""

    title: ClassVar[str] = "Knots and bullions"
    family: ClassVar[str] = "decoration"
    summary: ClassVar[str] = (
        "Knots or bullions on a line, a grid or at points of your own: how many, where, and how "
        "much thread."
    )

    kind = choice("kind", "Round knots, or longer bullions.", KNOTS, BULLIONS)
    arrangement = choice("arrangement", "How they lie.", LINE, GRID, STAGGERED, POINTS)
    run = length(
        "length", "From the first knot of a line to its last.", "6 in", ("1/4 in", "60 in")
    )
    height = length(
        "height", "On a grid, from the first line to the last.", "2 in", ("1/4 in", "60 in")
    )
    spacing = length(
        "spacing",
        "From knot to knot; changed a little so that it comes out whole.",
        "1/2 in",
        ("1/16 in", "20 in"),
        basis=PRACTICE,
    )
    points = optional_places(
        "points",
        "Chosen points, each as across, down, in the order of working.",
        "a line or a grid is worked",
        ("0 in", "30 in"),
        (1, MOST_POINTS),
    )
    wraps = optional_count(
        "wraps",
        "How often the thread goes round the needle.",
        "2 for a knot, 7 for a bullion, common practice",
        40,
        group=SEWING,
        in_use="turns",
    )
    needle = fine_length(
        "needle",
        "Its thickness where the thread is wrapped.",
        "0.8 mm",
        ("0.3 mm", "3 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    thread = fine_length(
        "thread",
        "Its thickness as it is worked, all strands together.",
        "0.5 mm",
        ("0.1 mm", "3 mm"),
        group=SEWING,
        basis=PRACTICE,
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
    sample_thread = optional_length(
        "sample, thread",
        "How much thread the sample took, with the way between.",
        "the thread is reckoned from the wraps",
        ("1/2 in", "10 yd"),
        group=SEWING,
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

    def whole(self) -> Worksheet:
        """Count, places, thread, steps and placement sheet; raises RefusalError."""
        sheet = Worksheet(technique=self)
        note_wraps(sheet, self.kind, self.wraps.number if self.wraps else None)
        note_size(sheet, self.kind)
        laid = lay_knots(sheet, self.arrangement, self.points)
        thread = note_thread(sheet, laid.count, laid.travel, self.sample_thread is not None)
        sheet.supplies.append(Supply("stranded cotton or silk for the knots", thread))
        sheet.supplies.append(Supply("a needle no thicker at its eye than along its shaft"))
        sheet.supplies.append(Supply("a marker that washes out, tried on a scrap"))
        sheet.cautions.extend((WORKED_KNOTS, LONG_FLOATS, PINS_AND_IRON))
        _add_sample(sheet)
        if self.arrangement == POINTS:
            sheet.charts.append(_chart(laid))
        _add_steps(sheet, self)
        _draw(sheet, self, laid)
        return sheet


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "On a scrap of the same cloth, over the same backing, work ten of them as far "
                "apart as they will lie. Measure the thread in the needle before and after."
            ),
            sentence(
                "it became shorter by about ten times {each}. Give what it took as the sample: "
                "how tightly you wrap decides it.",
                each=sheet["knot_thread"],
            ),
        )
    )


def _chart(laid: Laid) -> Chart:
    rows = tuple((f"point {number}", place.across, place.down)
                 for number, place in enumerate(laid.places, 1))  # fmt: skip
    return Chart("Chosen points", ("Point", "Across", "Down"), rows)


def _add_steps(sheet: Worksheet, asked: Knots) -> None:
    where = {
        LINE: ("Mark {knots} points along the line, {true_spacing} from one to the next.",
               "the last one lies {run} from the first."),
        GRID: ("Mark {rows} lines, {true_row_spacing} apart, and on each {columns} points "
               "{true_spacing} apart, exactly below each other.", "{knots} points in all."),
        STAGGERED: ("Mark {rows} lines, {true_row_spacing} apart: {columns} points {true_spacing} "
                    "apart on the first, on every second line one fewer, halfway between.",
                    "{knots} points in all."),
        POINTS: ("Trace the {knots} points from the printed sheet, or mark them from the chart.",
                 "each lies on its dot."),
    }  # fmt: skip
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


def _draw(sheet: Worksheet, asked: Knots, laid: Laid) -> None:
    chosen = asked.arrangement == POINTS
    places = [(float(place.across), float(place.down)) for place in laid.places]
    bullion = sheet["size"].mm if asked.kind == BULLIONS else 0.0
    tall = sheet["height"] if asked.arrangement in {GRID, STAGGERED} else None
    plan = KnotPlan(places, None if chosen else sheet["true_spacing"],
                    None if chosen else sheet["run"], tall, bullion,
                    0.0 if bullion else sheet["size"].mm)  # fmt: skip
    words = sentence("{knots} in their places; bullions stand upright." if bullion
                     else "{knots} knots in their places.", knots=laid.count)  # fmt: skip
    shown = numbered(plan) if chosen and len(places) <= MOST_NUMBERED else knots_placed(plan)
    finished = Scene(sentence("Where they lie"), words, shown, tallest=220.0)
    at_scale = Scene(sentence("Placement sheet"), words, numbered(plan, True) if chosen
                     else knots_placed(plan, True))  # fmt: skip
    long = sheet["size"] if bullion else None
    wrapped = Wrapped(sheet["needle"], sheet["thread"], sheet["turns"].whole, long)
    some = "some of the wraps" if sheet["turns"].whole > 14 else "the wraps"
    sheet.pictures.extend(
        (
            Picture("finished", words, finished, True, at_scale),
            Picture("wraps", sentence(f"The needle with {some}, enlarged."),
                    wraps_round_needle(wrapped)),
        )
    )  # fmt: skip


TECHNIQUE = Knots
