"""Buttons and buttonholes at equal distances along an edge.

The first and the last are set from the ends, and what lies between is divided equally; the number
is given, or follows from the greatest distance that is wanted between two.
"""

from __future__ import annotations

from functools import cached_property
from math import floor

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, optional_length
from handout_engine.amounts.lengths import Length, most
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.families.closures.button_places import ButtonPlace
from handout_engine.families.closures.button_spacing_steps import add_sample, add_steps
from handout_engine.shared.buttons import ShankInputs
from handout_engine.shared.buttons_drawing import (
    ButtonedEdge,
    Shank,
    closed_edge,
    hole_detail,
    placement,
    shank_section,
)
from handout_engine.working.cautions import BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON
from handout_engine.working.workings import Cell, Chart, Picture, Supply
from handout_engine.working.worksheet import Worksheet

CROSSWISE, UPRIGHT = "crosswise", "upright"
MOST = 60


class ButtonSpacing(ShankInputs):
    """Equal steps from the first button to the last."""

    title = "Buttons and buttonholes"
    family = "closures"
    summary = (
        "Buttons at equal distances along an edge, with the length and the place of every "
        "buttonhole, the shank and the thread."
    )

    opening = length(
        "length of the edge",
        "Finished, from its upper to its lower end.",
        "10 in",
        ("1 in", "3 yd"),
    )
    first = optional_length(
        "first button",
        "Its middle, from the upper end.",
        "one button's diameter from the end",
        ("1/16 in", "12 in"),
        in_use="first_place",
    )
    last = optional_length(
        "last button",
        "Its middle, from the lower end.",
        "one button's diameter from the end, or as an upright hole needs",
        ("1/16 in", "12 in"),
        in_use="last_place",
    )
    buttons = optional_count(
        "buttons", "How many buttons.", "as few as keep the greatest distance", MOST
    )
    greatest_gap = length(
        "greatest distance",
        "From button to button, where their number is left out.",
        "3 in",
        ("1/2 in", "12 in"),
        basis=published("icar-garment"),
    )
    holes = choice(
        "holes",
        "Crosswise, square to the edge, or upright, on the centre line.",
        CROSSWISE,
        UPRIGHT,
        group=SEWING,
    )
    beyond = length(
        "hole begins beyond",
        "How far the hole begins beyond the mark of its button: "
        "toward the edge, or upward where it is upright.",
        "1/8 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=published("extension-576"),
    )

    @check
    def a_crosswise_hole_lies_on_the_front(self) -> None:
        """Refuse a hole that would cut the edge."""
        if self.holes == CROSSWISE and self.beyond >= self.beyond_centre:
            raise RefusalError(
                f"beyond {TAPE.say(self.beyond)} takes the hole through the edge, only "
                f"{TAPE.say(self.beyond_centre)} from the centre line; use less than "
                f"{TAPE.no_more(self.beyond_centre)}",
                "beyond",
            )

    @value("hole begins, from the finished edge")
    def hole_starts(self) -> Length | None:
        """Beyond the centre line, on which the button pulls; None for an upright hole."""
        return None if self.holes == UPRIGHT else self.beyond_centre - self.beyond

    @value("hole ends, from the finished edge")
    def hole_ends(self) -> Length | None:
        """Where the cloth of the front begins again."""
        return None if self.hole_starts is None else self.hole_starts + self.buttonhole

    @value("least from the middle of a button to an end", basis=published("icar-garment"))
    def least_at_end(self) -> Length:
        """The button lies on the edge."""
        return self.button / 2

    @value("least distance of the first button from its end")
    def least_first(self) -> Length:
        """An upright hole leaves cloth above it."""
        if self.holes == CROSSWISE:
            return self.least_at_end
        return most(self.least_at_end, self.beyond + self.clearance)

    @value("least distance of the last button from its end")
    def least_last(self) -> Length:
        """An upright hole leaves cloth below it."""
        if self.holes == CROSSWISE:
            return self.least_at_end
        return most(self.least_at_end, self.buttonhole - self.beyond + self.clearance)

    @check
    def both_ends_keep_their_distance(self) -> None:
        """Refuse a button or a hole beyond an end."""
        ends = (("first", self.first, self.least_first), ("last", self.last, self.least_last))
        for end, given, limit in ends:
            if given is not None and given < limit:
                raise RefusalError(
                    f"{end} {TAPE.say(given)} takes a button of {TAPE.say(self.button)}, or its "
                    f"hole, beyond the end of the edge; use at least {TAPE.no_less(limit)}",
                    end,
                )

    @value("first button, from the upper end", basis=PRACTICE)
    def first_place(self) -> Length:
        """As asked for, or a button's width from the end."""
        return most(self.button, self.least_first) if self.first is None else self.first

    @value("last button, from the lower end", basis=PRACTICE)
    def last_place(self) -> Length:
        """As asked for, or a button's width from the end."""
        return most(self.button, self.least_last) if self.last is None else self.last

    @check
    def both_ends_fit_on_the_edge(self) -> None:
        """Refuse an edge that its ends take whole."""
        ends = self.first_place + self.last_place
        if self.opening < ends:
            raise RefusalError(
                f"first {TAPE.say(self.first_place)} and last {TAPE.say(self.last_place)} do not "
                f"fit on an edge of {TAPE.say(self.opening)}; use an edge of at least "
                f"{TAPE.no_less(ends)}",
                "opening",
            )

    @value("from the first button to the last")
    def span(self) -> Length:
        """What is divided equally."""
        return self.opening - self.first_place - self.last_place

    @value("least from button to button")
    def least_step(self) -> Length:
        """Buttons side by side, or upright holes one above another with cloth between."""
        if self.holes == CROSSWISE:
            return self.button
        return most(self.button, self.buttonhole + self.clearance)

    @value("equal steps between them")
    def steps(self) -> Count | None:
        """As few as keep the greatest distance; None where the buttons are counted already."""
        return (self.span / self.greatest_gap).rounded_up() if self.buttons is None else None

    @value("buttons to sew on")
    def all_buttons(self) -> Count:
        """One more than steps."""
        if self.buttons is not None:
            return self.buttons
        assert self.steps is not None
        return self.steps + 1

    @check
    def the_buttons_find_room(self) -> None:
        """Refuse buttons that would touch."""
        self.both_ends_fit_on_the_edge()
        room = floor(self.span / self.least_step)
        if self.steps is not None and self.steps > room == 0:
            longer = self.opening - self.span + self.least_step
            least = at_least(self, "opening", longer, "at least {} of edge")
            raise RefusalError(
                f"two buttons need {TAPE.say(self.least_step)} between their middles, and the edge "
                f"leaves {TAPE.say(self.span)}; use {ways('buttons: 1', least)}",
                "opening",
            )
        if self.steps is not None and self.steps > min(MOST - 1, room):
            widest = self.span / min(MOST - 1, room)
            raise RefusalError(
                f"greatest_gap {TAPE.say(self.greatest_gap)} asks for {self.all_buttons} buttons, "
                f"more than find room; use at least {TAPE.no_less(widest)}",
                "greatest_gap",
            )
        if self.step is not None and self.step < self.least_step:
            raise RefusalError(
                f"{self.all_buttons} buttons would stand {TAPE.say(self.step)} apart and overlap, "
                f"or their holes would; use at most {room + 1}",
                "buttons",
            )

    @value("from button to button")
    def step(self) -> Length | None:
        """An equal share; None for a single button."""
        return self.span / (self.all_buttons - 1) if self.all_buttons.number > 1 else None

    @value("what the edges lie over one another")
    def overlap(self) -> Length:
        """Centre line on centre line."""
        return 2 * self.beyond_centre

    @cached_property
    def places(self) -> list[ButtonPlace]:
        """Every button on its edge, for the chart."""
        hole = (self.beyond, self.buttonhole) if self.holes == UPRIGHT else None
        return [
            ButtonPlace(number, self.first_place, self.step, hole)
            for number in range(1, self.all_buttons.number + 1)
        ]

    def cut(self, sheet: Worksheet) -> None:
        """Every button, and its hole: along the edge where it is upright, else from the edge."""
        upright = self.holes == UPRIGHT
        hole = ("Hole from", "Hole to") if upright else ("Hole from the edge", "Hole ends")
        headings = ("Button", "Its middle, from the upper end", *hole)
        alike = () if upright else (sheet["hole_starts"], sheet["hole_ends"])
        rows: list[tuple[Cell, ...]] = [
            (place.words.strip(), *place.values.values(), *alike) for place in self.places
        ]
        sheet.charts.append(Chart("Where every button stands", headings, tuple(rows)))

    def sew(self, sheet: Worksheet) -> None:
        """From the centre line to the last button."""
        spare = sentence("{button} across, and a spare one", button=sheet["button"])
        sheet.supplies.append(Supply("buttons", sheet["all_buttons"], spare))
        sheet.supplies.append(Supply("strong thread for the buttons", sheet["thread_for_all"]))
        sheet.have(
            "fine thread for the holes",
            "a strip of firm cloth between the layers where the holes are worked",
        )
        thick = sentence("{shank} thick", shank=sheet["shank"])
        sheet.supplies.append(Supply("a pin or cardboard to hold the shank", note=thick))
        sheet.cautions.extend((BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON))
        add_sample(sheet)
        add_steps(sheet, self.holes == UPRIGHT)

    def draw(self, sheet: Worksheet) -> None:
        """The edge buttoned, one hole, the placement sheet and the shank."""
        middles = [place.values[f"{place.prefix}middle"] for place in self.places]
        measures = ("button", "buttonhole", "beyond_centre", "beyond")
        button, hole, beyond_centre, beyond = (sheet[name] for name in measures)
        around = (hole, beyond_centre, beyond, self.find("hole_starts"))
        edge = ButtonedEdge(sheet["opening"], middles, button, *around)
        names = ("button", "button_thickness", "shank", "edge_thickness", "shank_width")
        shank = Shank(*(sheet[name] for name in names))
        finished = sentence(
            "The edge buttoned; distances count from its upper end, the hidden edge is that of the "
            "lower layer."
        )
        enlarged = sentence(
            "One hole enlarged, and the button that goes through it; the dash-dot line is the "
            "centre line."
        )
        marks = sentence("Placement sheet: every mark, its button and its hole.")
        some, every = (placement(edge, every=each) for each in (False, True))
        sheet.pictures.append(Picture("finished", finished, closed_edge(edge), finished=True))
        sheet.pictures.append(Picture("hole", enlarged, hole_detail(edge)))
        sheet.pictures.append(Picture("placement", marks, some, sheet=every))
        sheet.show("shank", "A button on its shank, cut through.", shank_section(shank))


TECHNIQUE = ButtonSpacing
