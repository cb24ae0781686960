"""What every buttoned closing asks for: the button, its hole, and the overlap it needs."""

from __future__ import annotations

from math import pi

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import ZERO, Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE, published
from handout_engine.amounts.values import Value
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
FINE, BULKY = "thin", "bulky"
BY_THICKNESS, FLAT = "diameter and thickness", "flat button"


class ButtonInputs:
    """The button, and how far the cloth reaches beyond it."""

    button = length(
        "button",
        "Its diameter; lines may be written too, 16 lines are 2/5 in (10 mm).",
        "16 lines",
        ("1/8 in", "2 in"),
    )
    clearance = length(
        "clearance",
        "Least cloth between the button and the finished edge.",
        "1/4 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=published("extension-576"),
    )
    extension = optional_length(
        "extension",
        "From the centre line to the finished edge of the front.",
        "half the button and the clearance",
        ("1/8 in", "3 in"),
        in_use="beyond_centre",
    )


def note_extension(sheet: Worksheet, inputs: ButtonInputs) -> Value:
    """Note how far the front reaches beyond its centre line; refuses too little for the button."""
    least = sheet.note("least_extension", "least extension for this button",
                       inputs.button / 2 + inputs.clearance, "{button} / 2 + {clearance}",
                       basis=published("extension-576"))  # fmt: skip
    label = "front, from the centre line to its edge"
    if inputs.extension is None:
        return sheet.note("beyond_centre", label, least.length, "{least_extension}",
                          basis=published("extension-576"))  # fmt: skip
    if inputs.extension < least.length:
        raise RefusalError(
            f"extension {TAPE.say(inputs.extension)} is too little for a button of "
            f"{TAPE.say(inputs.button)}, which would stand within {TAPE.say(inputs.clearance)} of "
            f"the edge; use at least {TAPE.no_less(least.length)}, a smaller button or less "
            "clearance",
            "extension",
        )
    return sheet.note("beyond_centre", label, inputs.extension, "", basis=GIVEN)


class HoleInputs:
    """How long a buttonhole is."""

    button_thickness = length(
        "button thickness",
        "How thick it is; of a ball button, its diameter.",
        "1/8 in",
        ("1/32 in", "1 in"),
    )
    rule = choice(
        "length of the hole",
        "Worked out from diameter and thickness, or as for a flat button from its diameter alone.",
        BY_THICKNESS,
        FLAT,
        group=SEWING,
    )
    cloth = choice(
        "cloth",
        "Bulky cloth, such as flannel or quilted cotton, takes a longer hole.",
        FINE,
        BULKY,
        group=SEWING,
    )
    bulk = length(
        "for bulk",
        "Added to the hole in bulky cloth.",
        "1/8 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=published("extension-576"),
    )
    flat_extra = length(
        "for a flat button",
        "Added to the diameter of a flat button.",
        "3 mm",
        ("0 mm", "12 mm"),
        group=SEWING,
        basis=published("tanzania-2022"),
    )


def note_buttonhole(sheet: Worksheet, inputs: HoleInputs, button: Length) -> Value:
    """Note the hole by the chosen rule, and by the other one to compare."""
    more, words = (inputs.bulk, " + {bulk}") if inputs.cloth == BULKY else (ZERO, "")
    rules = {
        BY_THICKNESS: (button + inputs.button_thickness + more,
                       "{button} + {button_thickness}" + words, "extension-576"),
        FLAT: (button + inputs.flat_extra + more, "{button} + {flat_extra}" + words,
               "tanzania-2022"),
    }  # fmt: skip
    amount, formula, source = rules[inputs.rule]
    hole = sheet.note("buttonhole", "buttonhole, from end to end", amount, formula,
                      basis=published(source))  # fmt: skip
    other = FLAT if inputs.rule == BY_THICKNESS else BY_THICKNESS
    amount, formula, source = rules[other]
    sheet.note("buttonhole_compared", f"buttonhole by the other rule ({other}), to compare",
               amount, formula, basis=published(source))  # fmt: skip
    return hole


class ShankInputs:
    """How a button is sewn on: its shank, and the thread that takes."""

    edge_thickness = length(
        "thickness of the edge",
        "All layers of the buttonholed edge, pressed together.",
        "1/16 in",
        ("1/64 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    stitches = count(
        "stitches", "Up and down again through one button.", 4, 20, group=SEWING, basis=PRACTICE
    )
    strands = count("strands", "Two for doubled thread.", 2, 4, group=SEWING, basis=PRACTICE)
    across_holes = length(
        "across the holes",
        "From one hole of the button to the next.",
        "2 mm",
        ("1 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    wraps = count(
        "turns round the shank", "How often it is wound round.", 5, 20, group=SEWING, basis=PRACTICE
    )
    shank_width = length(
        "width of the shank",
        "Across the stitches under the button.",
        "2 mm",
        ("1 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    thread_ends = length(
        "thread ends",
        "For each strand, to begin, to fasten off and to hold.",
        "8 in",
        ("2 in", "36 in"),
        group=SEWING,
        basis=PRACTICE,
    )


def note_shank(sheet: Worksheet, inputs: ShankInputs) -> None:
    """Note the shank and the thread of all buttons.

    Speaks of `button_thickness` and `all_buttons`.
    """
    shank = sheet.note("shank", "shank between button and cloth", inputs.edge_thickness,
                       "{edge_thickness}")  # fmt: skip
    thick = sheet["button_thickness"].length
    through = inputs.edge_thickness + shank.length + thick + inputs.across_holes
    stitch = sheet.note(
        "stitch_takes", "thread in one stitch, up and down again", 2 * through,
        "2 × ({edge_thickness} + {shank} + {button_thickness} + {across_holes})",
    )  # fmt: skip
    round_shank = from_float(pi * float(inputs.shank_width) * inputs.wraps.number)
    strand = stitch.length * inputs.stitches + round_shank + inputs.thread_ends
    one = sheet.note(
        "thread_for_one", "thread for one button, all strands", strand * inputs.strands,
        "{strands} × ({stitches} × {stitch_takes} + {wraps} × π × {shank_width} + {thread_ends})",
        saying=Saying.UP,
    )  # fmt: skip
    sheet.note("thread_for_all", "thread for all buttons", one.length * sheet["all_buttons"].whole,
               "{all_buttons} × {thread_for_one}", saying=Saying.YARDAGE)  # fmt: skip
