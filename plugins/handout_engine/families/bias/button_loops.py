"""Button loops of fine bias tube along an edge."""

from __future__ import annotations

from functools import cached_property
from math import floor

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import CLOTH, SEWING, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.bias import Pieces
from handout_engine.cloth.bias_cloth import BiasClothInputs, StripsForPieces
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
from handout_engine.working.workings import Cell, Chart, Seam, Supply
from handout_engine.working.worksheet import Worksheet


class ButtonLoops(BiasClothInputs):
    """Equal loops at equal distances, each just passing its button."""

    title = "Button loops"
    family = "bias"
    summary = "Loops of fine bias tube along an opening, worked out from the button they pass."
    cloth_name = "loop cloth"

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

    @value("round the button as it passes, flat")
    def passes(self) -> Length:
        """A loop drawn over a button lies on both its faces and both its edges."""
        return 2 * (self.button + self.button_thickness) + self.ease

    @value("gap between its ends", basis=PRACTICE)
    def gap_used(self) -> Length:
        """As asked for, or so that the loop holds the shank."""
        return self.button / 2 if self.gap is None else self.gap

    @check
    def the_loop_spans_its_gap(self) -> None:
        """Refuse ends further apart than half a round that passes the button."""
        widest = self.passes / (1 + PI / 2)
        if self.gap_used > widest:
            raise RefusalError(
                f"gap {TAPE.say(self.gap_used)} is too wide for a loop that is to pass the button; "
                f"use at most {TAPE.no_more(widest)}",
                "gap",
            )

    @value("inside of the loop, from end to end")
    def inner_loop(self) -> Length:
        """The edge itself closes the gap."""
        return self.passes - self.gap_used

    @value("tube for one loop, on its middle")
    def loop_strip(self) -> Length:
        """Its middle goes half a round of the tube further than its inside."""
        return self.inner_loop + PI / 2 * self.tube + 2 * self.end_allowance

    @value("how far a loop stands out")
    def loop_stands(self) -> Length:
        """Two straight legs and half a round."""
        legs = self.inner_loop - PI / 2 * self.gap_used
        return legs / 2 + self.gap_used / 2 + self.tube

    @value("a loop with both its ends, along the edge")
    def loop_takes(self) -> Length:
        """A tube stands on either side of the gap."""
        return self.gap_used + 2 * self.tube

    @check
    def the_loops_lie_on_the_opening(self) -> None:
        """Refuse ends that leave nothing of the opening, or half a loop beyond one of them."""
        if self.opening < self.first + self.last:
            raise RefusalError(
                f"first and last leave nothing of opening {TAPE.say(self.opening)}; together they "
                "may take no more than that",
                "first",
            )
        for name, end in (("first", self.first), ("last", self.last)):
            if end < self.loop_takes / 2:
                raise RefusalError(
                    f"{name} {TAPE.say(end)} puts half a loop beyond the end of the opening; use "
                    f"{at_least(self, name, self.loop_takes / 2)}",
                    name,
                )

    @value("from loop to loop")
    def spacing(self) -> Length | None:
        """Equal shares of what lies between the first and the last; None for a single loop."""
        if self.loops.number == 1:
            return None
        return (self.opening - self.first - self.last) / (self.loops - 1)

    @check
    def neither_loops_nor_buttons_overlap(self) -> None:
        """Refuse more loops than the opening holds."""
        least = max(self.loop_takes, self.button)
        if self.spacing is not None and self.spacing < least:
            fitting = floor((self.opening - self.first - self.last) / least) + 1
            raise RefusalError(
                f"{self.loops} loops would stand {TAPE.both(self.spacing)} apart and overlap, or "
                f"their buttons would; use at most {fitting} loops",
                "loops",
            )

    @value("allowance inside the tube", basis=PRACTICE)
    def tube_allowance(self) -> Length:
        """As wide as the tube, which it then fills."""
        return self.tube if self.tube_seam is None else self.tube_seam

    @check
    def the_allowance_lies_in_the_tube(self) -> None:
        """Refuse an allowance that is wider than the tube."""
        if self.tube_allowance > self.tube:
            raise RefusalError(
                f"tube_seam {TAPE.say(self.tube_allowance)} cannot lie inside a tube "
                f"{TAPE.say(self.tube)} thick; use {at_most(self, 'tube_seam', self.tube)}, "
                "trimmed after sewing if need be",
                "tube_seam",
            )

    @value("strip, cut width", saying=Saying.UP)
    def strip_width(self) -> Length:
        """Two layers, each with its allowance."""
        return 2 * self.tube + 2 * self.tube_allowance

    @value("fold, from either edge")
    def fold(self) -> Length:
        """Along the middle."""
        return self.tube + self.tube_allowance

    @group
    def strips(self) -> StripsForPieces:
        """The strips that give whole loops, none of them too short to turn."""
        each, width = Length(self.loop_strip.mm), Length(self.strip_width.mm)
        shortest = min(self.least_tube.mm, each.mm * self.loops.number)
        wanted = Pieces(self.loops.number, each, width, Length(shortest) + width)
        return StripsForPieces(self, self.strip_width, wanted)

    @cached_property
    def places(self) -> list[LoopPlace]:
        """Every loop on its edge, for the chart."""
        return [LoopPlace(self, number) for number in range(1, self.loops.number + 1)]

    def cut(self, sheet: Worksheet) -> None:
        """The places of the loops, their strips and their seam."""
        headings = ("Loop", "Middle", "Upper end", "Lower end")
        caption = "Loops from the upper end of the opening, ends measured at their inside"
        rows: list[tuple[Cell, ...]] = [
            (str(place.number), *place.values.values()) for place in self.places
        ]
        sheet.charts.append(Chart(caption, headings, tuple(rows)))
        self.strips.cut(sheet)
        sheet.seams.append(Seam("ends of the loops", self.end_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the strips to the buttons."""
        sheet.supplies.append(Supply("buttons", sheet["loops"]))
        sheet.supplies.append(Supply("a fine loop turner, or a blunt needle and strong thread"))
        sheet.cautions.extend((PINS_AND_IRON, BUTTONS_AS_SMALL_PARTS, LOOPS_CATCH, NECK_CORDS))
        add_sample(sheet)
        add_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The loops on their edge, one of them, its strip and the cloth."""
        names = ("gap_used", "loop_stands", "tube", "end_allowance", "button")
        loop = Loop(*(sheet[name] for name in names))
        middles = [place.values[f"{place.prefix}middle"] for place in self.places]
        rules = [Rule(Line.STITCH, sheet["tube_allowance"]), Rule(Line.FOLD, sheet["fold"])]
        sheet.show(
            "finished",
            "The loops on the edge; distances count from its upper end.",
            loops_on_edge(sheet["opening"], middles, loop),
            finished=True,
        )
        sheet.show(
            "loop",
            "One loop: left the ends in the allowance, right what stands out.",
            one_loop(loop),
        )
        sheet.pictures.append(
            flat_picture("loop strip", sheet["strip_width"], sheet["loop_strip"], rules)
        )
        sheet.pictures.append(cloth_picture(sheet, self.strips))


class LoopPlace(Group):
    """Where the middle and the two ends of one loop lie, from the upper end of the opening."""

    def __init__(self, technique: ButtonLoops, number: int) -> None:
        """Take the loops, and which of them it is."""
        super().__init__(f"loop_{number}_")
        self.technique, self.number = technique, number

    @value("middle")
    def middle(self) -> Length:
        """One step further from loop to loop."""
        loops = self.technique
        if loops.spacing is None or self.number == 1:
            return loops.first
        return loops.first + (self.number - 1) * loops.spacing

    @value("upper end")
    def upper_end(self) -> Length:
        """Half of the gap before it."""
        return self.middle - self.technique.gap_used / 2

    @value("lower end")
    def lower_end(self) -> Length:
        """Half of the gap behind it."""
        return self.middle + self.technique.gap_used / 2


TECHNIQUE = ButtonLoops
