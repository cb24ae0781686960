"""Button loops of fine bias tube along an edge."""

from __future__ import annotations

from math import floor, pi
from typing import ClassVar

from handout_engine.amounts.inputs import CLOTH, SEWING, count, length, optional_length
from handout_engine.amounts.lengths import from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, LAYOUT, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, at_most
from handout_engine.cloth.bias import Pieces
from handout_engine.cloth.bias_cloth import BiasClothInputs, note_whole_strips
from handout_engine.drawing.scene import Line
from handout_engine.families.bias.bias_pictures import cloth_picture, flat_picture
from handout_engine.families.bias.button_loops_drawing import Loop, loops_on_edge, one_loop
from handout_engine.families.bias.button_loops_steps import add_sample, add_steps
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.cautions import (
    BUTTONS_AS_SMALL_PARTS,
    LOOPS_CATCH,
    NECK_CORDS,
    PINS_AND_IRON,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Seam, Supply
from handout_engine.working.worksheet import Worksheet


class ButtonLoops(BiasClothInputs, Technique):
    """Equal loops at equal distances, each just passing its button."""

    title: ClassVar[str] = "Button loops"
    family: ClassVar[str] = "bias"
    summary: ClassVar[str] = (
        "Loops of fine bias tube along an opening, worked out from the button they pass."
    )

    button = length(
        "button",
        "Its diameter, in lines too: 16 lines are 2/5 in (10 mm).",
        "16 lines",
        ("1/8 in", "3 in"),
    )
    button_thickness = length(
        "button thickness",
        "How thick it is; of a ball button, its diameter.",
        "1/8 in",
        ("1/32 in", "3 in"),
    )
    loops = count("loops", "How many loops.", 5, 60)
    opening = length("opening", "Length of the finished opening.", "6 in", ("1/2 in", "3 yd"))
    first = length(
        "first loop", "Its middle, from the upper end of the opening.", "1/2 in", ("0 in", "2 yd")
    )
    last = length(
        "last loop", "Its middle, from the lower end of the opening.", "1/2 in", ("0 in", "2 yd")
    )
    tube = length("tube", "Finished thickness of the loop's tube.", "1/8 in", ("1/32 in", "1/2 in"))
    gap = optional_length(
        "gap",
        "Between the two ends of a loop on the edge.",
        "half the diameter of the button",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="gap_used",
    )
    ease = length(
        "ease",
        "Extra room for the button to pass.",
        "1/16 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "What of each end is caught in the seam.",
        "1/2 in",
        ("1/8 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    tube_seam = optional_length(
        "tube seam",
        "Allowance inside the tube.",
        "as wide as the tube, so that it fills it",
        ("1/32 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="tube_allowance",
    )

    least_tube = length(
        "shortest tube",
        "Shorter strips are not worth sewing and turning.",
        "10 in",
        ("1/2 in", "30 in"),
        group=CLOTH,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Loops, places, strips and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _note_loop(sheet, self)
        centres = _note_places(sheet, self)
        _add_chart(sheet, centres)
        seam = _note_tube(sheet, self)
        each, width = sheet["loop_strip"].length, sheet["strip_width"].length
        least = min(self.least_tube, each * self.loops) + width
        wanted = Pieces(self.loops.number, each, width, least)
        strips = note_whole_strips(sheet, self, sheet["strip_width"], wanted, "loop cloth")
        sheet.seams.append(Seam("ends of the loops", self.end_allowance))
        sheet.supplies.append(Supply("buttons", sheet["loops"]))
        sheet.supplies.append(Supply("a fine loop turner, or a blunt needle and strong thread"))
        sheet.cautions.extend((PINS_AND_IRON, BUTTONS_AS_SMALL_PARTS, LOOPS_CATCH, NECK_CORDS))
        add_sample(sheet)
        add_steps(sheet)
        shape = Loop(sheet["gap_used"], sheet["loop_stands"], sheet["tube"],
                     sheet["end_allowance"], sheet["button"])  # fmt: skip
        rules = [Rule(Line.STITCH, seam), Rule(Line.FOLD, sheet["fold"])]
        sheet.pictures.extend(
            (
                Picture("finished", sentence("The loops on the edge; distances count from its "
                                             "upper end."),
                        loops_on_edge(sheet["opening"], centres, shape), finished=True),
                Picture("loop", sentence("One loop: left the ends in the allowance, right what "
                                         "stands out."), one_loop(shape)),
                flat_picture("loop strip", sheet["strip_width"], sheet["loop_strip"], rules),
                cloth_picture(strips, sheet["edge_step"]),
            )
        )  # fmt: skip
        return sheet


def _note_loop(sheet: Worksheet, inputs: ButtonLoops) -> None:
    """Note the loop that just passes the button; refuses a gap too wide for it."""
    passes = sheet.note(
        "passes", "round the button as it passes, flat",
        2 * (inputs.button + inputs.button_thickness) + inputs.ease,
        "2 × ({button} + {button_thickness}) + {ease}",
    ).length  # fmt: skip
    most = from_float(float(passes) / (1 + pi / 2))
    gap = inputs.button / 2 if inputs.gap is None else inputs.gap
    if gap > most:
        tape = Tape(finest=32)
        raise RefusalError(
            f"gap {tape.say(gap)} is too wide for a loop that is to pass the button; use at most "
            f"{tape.no_more(most)}",
            "gap",
        )
    if inputs.gap is None:
        sheet.note("gap_used", "gap between its ends", gap, "{button} / 2", basis=PRACTICE)
    else:
        sheet.note("gap_used", "gap between its ends", gap, "", basis=GIVEN)
    inner = sheet.note("inner_loop", "inside of the loop, from end to end", passes - gap,
                       "{passes} - {gap_used}").length  # fmt: skip
    bend = from_float(pi / 2 * float(inputs.tube))
    sheet.note("loop_strip", "tube for one loop, on its middle",
               inner + bend + 2 * inputs.end_allowance,
               "{inner_loop} + π / 2 × {tube} + 2 × {end_allowance}")  # fmt: skip
    stands = from_float((float(inner) - pi / 2 * float(gap)) / 2 + float(gap) / 2)
    sheet.note("loop_stands", "how far a loop stands out", stands + inputs.tube,
               "({inner_loop} - π / 2 × {gap_used}) / 2 + {gap_used} / 2 + {tube}")  # fmt: skip


def _note_places(sheet: Worksheet, inputs: ButtonLoops) -> list[Value]:
    """Note where each loop stands; refuses loops that overlap, or hang over the opening's end."""
    tape = Tape(finest=32)
    span = inputs.opening - inputs.first - inputs.last
    if span.mm < 0:
        raise RefusalError(
            f"first and last leave nothing of opening {tape.say(inputs.opening)}; together they "
            "may take no more than that",
            "first",
        )
    takes = sheet.note("loop_takes", "a loop with both its ends, along the edge",
                       sheet["gap_used"].length + 2 * inputs.tube,
                       "{gap_used} + 2 × {tube}").length  # fmt: skip
    for name in ("first", "last"):
        if sheet[name].length < takes / 2:
            raise RefusalError(
                f"{name} {tape.say(sheet[name].length)} puts half a loop beyond the end of the "
                f"opening; use {at_least(inputs, name, takes / 2)}",
                name,
            )
    if inputs.loops == 1:
        return [sheet["first"]]
    step = sheet.note("spacing", "from loop to loop", span / (inputs.loops - 1),
                      "({opening} - {first} - {last}) / ({loops} - 1)").length  # fmt: skip
    least = max(takes, inputs.button)
    if step < least:
        raise RefusalError(
            f"{inputs.loops} loops would stand {tape.both(step)} apart and overlap, or their "
            f"buttons would; use at most {floor(span / least) + 1} loops",
            "loops",
        )
    return [
        Value(f"loop_{number}", f"loop {number}", inputs.first + step * number, LAYOUT)
        for number in range(inputs.loops)
    ]


def _note_tube(sheet: Worksheet, inputs: ButtonLoops) -> Value:
    seam = inputs.tube if inputs.tube_seam is None else inputs.tube_seam
    if seam > inputs.tube:
        tape = Tape(finest=32)
        raise RefusalError(
            f"tube_seam {tape.say(seam)} cannot lie inside a tube {tape.say(inputs.tube)} thick; "
            f"use {at_most(inputs, 'tube_seam', inputs.tube)}, trimmed after sewing if need be",
            "tube_seam",
        )
    basis = PRACTICE if inputs.tube_seam is None else GIVEN
    noted = sheet.note("tube_allowance", "allowance inside the tube", seam, "", basis=basis)
    sheet.note("strip_width", "strip, cut width", 2 * (inputs.tube + seam),
               "2 × {tube} + 2 × {tube_allowance}", saying=Saying.UP)  # fmt: skip
    sheet.note("fold", "fold, from either edge", inputs.tube + seam,
               "{tube} + {tube_allowance}")  # fmt: skip
    return noted


def _add_chart(sheet: Worksheet, centres: list[Value]) -> None:
    """Where the middle and the two ends of every loop lie."""
    half = sheet["gap_used"].length / 2
    rows = [
        (str(number), centre.length, centre.length - half, centre.length + half)
        for number, centre in enumerate(centres, 1)
    ]
    headings = ("Loop", "Middle", "Upper end", "Lower end")
    caption = "Loops from the upper end of the opening, ends measured at their inside"
    sheet.charts.append(Chart(caption, headings, tuple(rows)))


TECHNIQUE = ButtonLoops
