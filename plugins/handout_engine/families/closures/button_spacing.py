"""Buttons and buttonholes at equal distances along an edge.

The first and the last are set from the ends, and what lies between is divided equally; the number
is given, or follows from the greatest distance that is wanted between two.
"""

from __future__ import annotations

from math import ceil, floor
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GEOMETRY, GIVEN, LAYOUT, PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.families.closures.button_spacing_steps import add_sample, add_steps
from handout_engine.shared.buttons import (
    TAPE,
    ButtonInputs,
    HoleInputs,
    ShankInputs,
    note_buttonhole,
    note_extension,
    note_shank,
)
from handout_engine.shared.buttons_drawing import (
    ButtonedEdge,
    Shank,
    closed_edge,
    hole_detail,
    placement,
    shank_section,
)
from handout_engine.working.cautions import BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Supply
from handout_engine.working.worksheet import Worksheet

CROSSWISE, UPRIGHT = "crosswise", "upright"
MOST = 60


class ButtonSpacing(ShankInputs, HoleInputs, ButtonInputs, Technique):
    """Equal steps from the first button to the last."""

    title: ClassVar[str] = "Buttons and buttonholes"
    family: ClassVar[str] = "closures"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Places, holes, shank, thread and the placement sheet; raises RefusalError."""
        sheet = Worksheet(technique=self)
        extension = note_extension(sheet, self)
        hole = note_buttonhole(sheet, self, self.button)
        _note_hole_place(sheet, self, extension)
        _note_ends(sheet, self)
        places = _note_places(sheet, self)
        note_shank(sheet, self)
        edge = ButtonedEdge(sheet["opening"], places, sheet["button"], hole, extension,
                            sheet["beyond"], sheet.values.get("hole_starts"))  # fmt: skip
        _add_chart(sheet, edge)
        _add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet, edge.upright)
        _draw(sheet, edge)
        return sheet


def _note_hole_place(sheet: Worksheet, inputs: ButtonSpacing, extension: Value) -> None:
    """Note where a crosswise hole lies, seen from the edge; refuses one that would cut it."""
    if inputs.holes == UPRIGHT:
        return
    if inputs.beyond >= extension.length:
        raise RefusalError(
            f"beyond {TAPE.say(inputs.beyond)} takes the hole through the edge, only "
            f"{TAPE.say(extension.length)} from the centre line; use less than "
            f"{TAPE.no_more(extension.length)}",
            "beyond",
        )
    start = sheet.note("hole_starts", "hole begins, from the finished edge",
                       extension.length - inputs.beyond, "{beyond_centre} - {beyond}")  # fmt: skip
    sheet.note("hole_ends", "hole ends, from the finished edge",
               start.length + sheet["buttonhole"].length,
               "{hole_starts} + {buttonhole}")  # fmt: skip


def _note_ends(sheet: Worksheet, inputs: ButtonSpacing) -> None:
    """Note the first and the last place; refuses a button or a hole beyond an end."""
    hole = sheet["buttonhole"].length
    half = inputs.button / 2
    above, below, above_words, below_words = half, half, "{button} / 2", "{button} / 2"
    if inputs.holes == UPRIGHT:
        above = max(half, inputs.beyond + inputs.clearance)
        above_words = "{button} / 2, at least {beyond} + {clearance}"
        below = max(half, hole - inputs.beyond + inputs.clearance)
        below_words = "{button} / 2, at least {buttonhole} - {beyond} + {clearance}"
    basis = GEOMETRY if inputs.holes == UPRIGHT else published("icar-garment")
    for end, least, words in (("first", above, above_words), ("last", below, below_words)):
        limit = sheet.note(f"least_{end}", f"least distance of the {end} button from its end",
                           least, words, basis=basis)  # fmt: skip
        label = f"{end} button, from the {'upper' if end == 'first' else 'lower'} end"
        given: Length | None = getattr(inputs, end)
        if given is None:
            sheet.note(f"{end}_place", label, max(inputs.button, least),
                       f"{{button}}, at least {{least_{end}}}", basis=PRACTICE)  # fmt: skip
        elif given < limit.length:
            raise RefusalError(
                f"{end} {TAPE.say(given)} takes a button of {TAPE.say(inputs.button)}, or its "
                f"hole, beyond the end of the edge; use at least {TAPE.no_less(limit.length)}",
                end,
            )
        else:
            sheet.note(f"{end}_place", label, given, "", basis=GIVEN)


def _note_places(sheet: Worksheet, inputs: ButtonSpacing) -> list[Value]:
    """Note number and step; refuses buttons that would touch or run past an end."""
    first, last = sheet["first_place"].length, sheet["last_place"].length
    if inputs.opening < first + last:
        raise RefusalError(
            f"first {TAPE.say(first)} and last {TAPE.say(last)} do not fit on an edge of "
            f"{TAPE.say(inputs.opening)}; use an edge of at least {TAPE.no_less(first + last)}",
            "opening",
        )
    span = sheet.note("span", "from the first button to the last",
                      inputs.opening - first - last,
                      "{opening} - {first_place} - {last_place}").length  # fmt: skip
    upright, hole = inputs.holes == UPRIGHT, sheet["buttonhole"].length
    least = sheet.note(
        "least_step", "least from button to button",
        max(inputs.button, hole + inputs.clearance) if upright else inputs.button,
        "{button}, at least {buttonhole} + {clearance}" if upright else "{button}",
    ).length  # fmt: skip
    if inputs.buttons is None:
        count = _count_by_gap(sheet, inputs, span, least)
    else:
        count = inputs.buttons.number
        sheet.note("all_buttons", "buttons to sew on", count, "", basis=GIVEN)
    step = span / max(1, count - 1)
    if count > 1 and step < least:
        raise RefusalError(
            f"{count} buttons would stand {TAPE.say(step)} apart and overlap, or their holes "
            f"would; use at most {floor(span / least) + 1}",
            "buttons",
        )
    if count > 1:
        sheet.note("step", "from button to button", step,
                   "({opening} - {first_place} - {last_place}) / ({all_buttons} - 1)")  # fmt: skip
    return [
        Value(f"button_{number}", f"button {number}", first + step * (number - 1), LAYOUT)
        for number in range(1, count + 1)
    ]


def _count_by_gap(sheet: Worksheet, inputs: ButtonSpacing, span: Length, least: Length) -> int:
    """Note how many buttons keep the greatest distance; refuses where none do."""
    gaps = ceil(span / inputs.greatest_gap)
    room = min(MOST - 1, floor(span / least))
    if gaps > room:
        if room == 0:
            longer = at_least(inputs, "opening", inputs.opening - span + least, "{} of edge")
            raise RefusalError(
                f"two buttons need {TAPE.say(least)} between their middles, and the edge leaves "
                f"{TAPE.say(span)}; use {ways('buttons: 1', longer and f'at least {longer}')}",
                "opening",
            )
        raise RefusalError(
            f"greatest_gap {TAPE.say(inputs.greatest_gap)} asks for {gaps + 1} buttons, more than "
            f"find room; use at least {TAPE.no_less(span / room)}",
            "greatest_gap",
        )
    sheet.note("steps", "equal steps between them", gaps, "{span} / {greatest_gap}, rounded up")
    sheet.note("all_buttons", "buttons to sew on", gaps + 1, "{steps} + 1")
    return gaps + 1


def _add_chart(sheet: Worksheet, edge: ButtonedEdge) -> None:
    """Every button, and for upright holes both ends of each."""
    beyond, hole = edge.beyond.length, edge.hole.length
    rows = tuple(
        (place.label, place.length, place.length - beyond, place.length - beyond + hole)
        if edge.upright
        else (place.label, place.length, sheet["hole_starts"], sheet["hole_ends"])
        for place in edge.places
    )
    headings = (
        ("Button", "Its middle, from the upper end", "Hole from", "Hole to")
        if edge.upright
        else ("Button", "Its middle, from the upper end", "Hole from the edge", "Hole ends")
    )
    sheet.charts.append(Chart("Where every button stands", headings, rows))


def _add_supplies(sheet: Worksheet) -> None:
    sheet.supplies.append(
        Supply("buttons", sheet["all_buttons"],
               sentence("{button} across, and a spare one", button=sheet["button"]))
    )  # fmt: skip
    sheet.supplies.append(Supply("strong thread for the buttons", sheet["thread_for_all"]))
    sheet.have(
        "fine thread for the holes",
        "a strip of firm cloth between the layers where the holes are worked",
    )
    sheet.supplies.append(
        Supply("a pin or cardboard to hold the shank", None,
               sentence("{shank} thick", shank=sheet["shank"]))
    )  # fmt: skip
    sheet.cautions.extend((BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON))


def _draw(sheet: Worksheet, edge: ButtonedEdge) -> None:
    shank = Shank(sheet["button"], sheet["button_thickness"], sheet["shank"],
                  sheet["edge_thickness"], sheet["shank_width"])  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The edge buttoned; distances count from its upper end, "
                                         "the hidden edge is that of the lower layer."),
                    closed_edge(edge), finished=True),
            Picture("hole", sentence("One hole enlarged, and the button that goes through it; the "
                                     "dash-dot line is the centre line."),
                    hole_detail(edge)),
            Picture("placement", sentence("Placement sheet: every mark, its button and its hole."),
                    placement(edge, every=False), sheet=placement(edge, every=True)),
            Picture("shank", sentence("A button on its shank, cut through."),
                    shank_section(shank)),
        )
    )  # fmt: skip


TECHNIQUE = ButtonSpacing
