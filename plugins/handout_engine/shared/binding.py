"""What single and double bindings share: inputs, length, strips and the order of sewing.

A binding wraps a raw edge: sewn on at one side, brought round the edge and fastened at the other.
Its length is that of the raw edge; a mitred square corner then costs nothing extra, as long as the
allowance is as wide as the binding (what the corner's fold takes, the seam line lacks).
"""

from __future__ import annotations

from collections.abc import Hashable
from math import ceil

from handout_engine.amounts.inputs import (
    CLOTH,
    SEWING,
    choice,
    count,
    length,
    optional_count,
    optional_length,
)
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.cloth.bias import join_take_up
from handout_engine.cloth.bias_cloth import BiasInputs, Strips, note_joined_strips, note_take_up
from handout_engine.cloth.cloth import note_cloth, note_usable_width
from handout_engine.shared.strips import StripsWanted, note_strips
from handout_engine.working.workings import Grain, Piece
from handout_engine.working.worksheet import Worksheet

ROUND, OPEN = "round", "open"
BIAS, ACROSS = "bias", "across"
FILLED, TRIMMED = "left as sewn", "trimmed to the binding"
NAME = "binding cloth"
TAPE = Tape(finest=32)


class BindingInputs(BiasInputs):
    """The inputs of every binding."""

    edge = length(
        "raw edge to bind",
        "Length of the raw edge, all the way round or end to end.",
        "24 in",
        ("1 in", "60 yd"),
    )
    binding = length(
        "binding", "Finished width of the binding on each side.", "1/4 in", ("1/8 in", "2 in")
    )
    ends = choice(
        "ends",
        "Round when the binding meets itself, open when its ends are turned in.",
        ROUND,
        OPEN,
    )
    corners = optional_count(
        "square corners", "Outside corners of 90 degrees, each mitred.", "none", 40
    )
    make = count("how many", "How many such edges are bound.", 1, 40)
    seam_allowance = optional_length(
        "seam allowance",
        "From the raw edges to the first stitching.",
        "as wide as the binding, so that the edge fills it",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="seam",
    )
    after = choice(
        "allowance",
        "Left as sewn, or trimmed to the binding after sewing.",
        FILLED,
        TRIMMED,
        group=SEWING,
    )
    end_turn = length(
        "end turning",
        "Turned in at each end of an open binding.",
        "1/2 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn_of_cloth = length(
        "turn of cloth",
        "What the way round thick layers takes of the strip: as much as a "
        "sample falls short at the back.",
        "0 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    grain = choice(
        "grain of strips",
        "On the bias for curves; across the cloth for straight edges.",
        BIAS,
        ACROSS,
        group=CLOTH,
    )


def note_seam(sheet: Worksheet, inputs: BindingInputs) -> Value:
    """Note the seam allowance; refuses one wider than the binding that is to hold it."""
    seam = inputs.binding if inputs.seam_allowance is None else inputs.seam_allowance
    if seam > inputs.binding and inputs.after == FILLED:
        binding, most = TAPE.say(inputs.binding), TAPE.say(inputs.binding, Saying.DOWN)
        raise RefusalError(
            f"seam_allowance {TAPE.say(seam)} is wider than binding {binding}; the edge cannot lie "
            f"inside it (use at most {most}, or trim it after sewing: after: "
            f'"{TRIMMED}")',
            "seam_allowance",
        )
    basis = PRACTICE if inputs.seam_allowance is None else GIVEN
    return sheet.note("seam", "allowance of the first seam", seam, "", basis=basis)


def note_length(sheet: Worksheet, inputs: BindingInputs, tail: Value) -> Value:
    """Note how long the joined strip must be for one edge. Raises RefusalError."""
    bound = _note_bound(sheet, inputs)
    label = "strip needed for one edge"
    if inputs.ends == OPEN:
        return sheet.note("strip_length", label, bound.length + 2 * inputs.end_turn,
                          "{bound_edge} + 2 × {end_turn}", finishes="bound_edge")  # fmt: skip
    check_tail(inputs, tail, join_take_up(inputs.strip_allowance))
    return sheet.note("strip_length", label, bound.length + tail.length, "{bound_edge} + {tail}",
                      finishes="bound_edge", tail=tail)  # fmt: skip


def check_tail(asked: Hashable, tail: Value, takes: Length) -> None:
    """Refuse a tail that is used up where the ends are joined, so that the strip falls short.

    `asked` has an input of that name.
    """
    if tail.length < takes:
        raise RefusalError(
            f"{tail.name} {TAPE.say(tail.length)} is used up where the ends are joined; use "
            f"{at_least(asked, tail.name, takes)}",
            tail.name,
        )


def _note_bound(sheet: Worksheet, inputs: BindingInputs) -> Value:
    """Note how long the edge is as it is bound: what mitres add to the raw edge, or spare of it.

    A wider allowance is trimmed to the binding, and the corners that are cut off with it are not
    bound.
    """
    corners = sheet.note(
        "corners_mitred", "square corners mitred", inputs.corners or 0, "", basis=GIVEN
    )
    label = "edge as it is bound"
    if not corners.whole:
        return sheet.note("bound_edge", label, inputs.edge, "{edge}")
    _check_corners(sheet, inputs, corners)
    more = 2 * corners.whole * (inputs.binding - sheet["seam"].length)
    narrower = more < ZERO
    sheet.note("corners_take", "taken by the mitres beyond the raw edge", max(more, ZERO),
               "2 × {corners} × ({binding} - {seam})" + (", at least 0" if narrower else ""),
               corners=corners)  # fmt: skip
    if not narrower:
        return sheet.note("bound_edge", label, inputs.edge + more, "{edge} + {corners_take}")
    sheet.note("corners_spare", "spared where the corners are trimmed off", -more,
               "2 × {corners} × ({seam} - {binding})", corners=corners)  # fmt: skip
    return sheet.note("bound_edge", label, inputs.edge + more, "{edge} - {corners_spare}")


def _check_corners(sheet: Worksheet, inputs: BindingInputs, corners: Value) -> None:
    """Refuse corners between which nothing is left to sew.

    The first stitching ends its allowance before a corner, and begins as far beyond it.
    """
    seam = sheet["seam"].length
    taken = 2 * corners.whole * seam
    if taken < inputs.edge:
        return
    most = ceil(inputs.edge / (2 * seam)) - 1
    fewer = at_most(inputs, "corners", most, "use at most {}") or "leave it out"
    raise RefusalError(
        f"corners {corners.whole} with an allowance of {TAPE.both(seam)} on both sides of each "
        f"take {TAPE.both(taken)} of edge {TAPE.both(inputs.edge)}, and nothing is left to sew "
        f"between them; {ways(fewer, 'a narrower allowance')}",
        "corners",
    )


def note_binding_strips(sheet: Worksheet, inputs: BindingInputs, width: Value) -> Strips | None:
    """Note the strips and their cloth: bands of bias, or straight strips (then None)."""
    wanted = sheet["strip_length"]
    if inputs.grain == BIAS:
        every = sheet.note("length_for_all", "strip needed in all", wanted.length * inputs.make,
                           "{make} × {strip_length}")  # fmt: skip
        return note_joined_strips(sheet, inputs, width, every, NAME)
    note_take_up(sheet, inputs)
    usable = note_usable_width(sheet, inputs.cloth())
    asked = StripsWanted(usable, wanted, width, ring=False, diagonal=True, prefix="binding_")
    note_strips(sheet, asked)
    strips = sheet.note("strips_used", "strips for all edges",
                        inputs.make * sheet["binding_strips"].whole,
                        "{make} × {binding_strips}")  # fmt: skip
    sheet.pieces.append(
        Piece("binding strip", NAME, strips.whole, width, sheet["binding_strip_length"],
              Grain.CROSS)
    )  # fmt: skip
    note_cloth(sheet, NAME, inputs.cloth())
    return None


def note_width(sheet: Worksheet, amount: Length, formula: str) -> Value:
    """Note the cut width of the strip, rounded up so that it is never too narrow to come round."""
    return sheet.note("strip_width", "strip, cut width", amount, formula, saying=Saying.UP)
