"""What single and double bindings share: inputs, length, strips and the order of sewing.

A binding wraps a raw edge: sewn on at one side, brought round the edge and fastened at the other.
Its length is that of the raw edge; a mitred square corner then costs nothing extra, as long as the
allowance is as wide as the binding (what the corner's fold takes, the seam line lacks).
"""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.bias_cloth import BiasInputs, Strips, note_joined_strips, note_take_up
from handout_engine.cloth import note_cloth, note_usable_width
from handout_engine.inputs import (
    CLOTH,
    SEWING,
    Asked,
    choice,
    count,
    length,
    optional_count,
    optional_length,
)
from handout_engine.lengths import ZERO, Length
from handout_engine.refusals import RefusalError
from handout_engine.saying import Saying, Tape
from handout_engine.sources import GIVEN, PRACTICE
from handout_engine.strips import StripsWanted, note_strips
from handout_engine.values import Value
from handout_engine.workings import Grain, Piece
from handout_engine.worksheet import Worksheet

ROUND, OPEN = "round", "open"
BIAS, ACROSS = "bias", "across"
FILLED, TRIMMED = "left as sewn", "trimmed to the binding"
NAME = "binding cloth"


@dataclass(frozen=True, kw_only=True)
class BindingInputs(BiasInputs):
    """The inputs of every binding."""

    edge: Length = length(
        Asked("raw edge to bind", "Length of the raw edge, all the way round or end to end."),
        "24 in",
        ("1 in", "60 yd"),
    )
    binding: Length = length(
        Asked("binding", "Finished width of the binding on each side."),
        "1/4 in",
        ("1/8 in", "2 in"),
    )
    ends: str = choice(
        Asked("ends", "Round when the binding meets itself, open when its ends are turned in."),
        ROUND,
        OPEN,
    )
    corners: int | None = optional_count(
        Asked("square corners", "Outside corners of 90 degrees, each mitred."), "none", 40
    )
    make: int = count(Asked("how many", "How many such edges are bound."), 1, 40)
    seam_allowance: Length | None = optional_length(
        Asked("seam allowance", "From the raw edges to the first stitching.", SEWING, PRACTICE),
        "as wide as the binding, so that the edge fills it",
        ("1/16 in", "2 in"),
    )
    after: str = choice(
        Asked("allowance", "Left as sewn, or trimmed to the binding after sewing.", SEWING),
        FILLED,
        TRIMMED,
    )
    end_turn: Length = length(
        Asked("end turning", "Turned in at each end of an open binding.", SEWING, PRACTICE),
        "1/2 in",
        ("0 in", "2 in"),
    )
    turn_of_cloth: Length = length(
        Asked("turn of cloth", "Extra width for thick cloth.", SEWING, PRACTICE),
        "0 in",
        ("0 in", "1 in"),
    )
    grain: str = choice(
        Asked("grain of strips", "On the bias for curves; across the cloth for straight edges.",
              CLOTH),
        BIAS,
        ACROSS,
    )  # fmt: skip


def note_seam(sheet: Worksheet, inputs: BindingInputs) -> Value:
    """Note the seam allowance; refuses one wider than the binding that is to hold it."""
    seam = inputs.binding if inputs.seam_allowance is None else inputs.seam_allowance
    if seam > inputs.binding and inputs.after == FILLED:
        tape = Tape(finest=32)
        binding, most = tape.say(inputs.binding), tape.say(inputs.binding, Saying.DOWN)
        raise RefusalError(
            f"seam_allowance {tape.say(seam)} is wider than binding {binding}; the edge cannot lie "
            f"inside it (use at most {most}, or trim it after sewing: after: "
            f'"{TRIMMED}")',
            "seam_allowance",
        )
    basis = PRACTICE if inputs.seam_allowance is None else GIVEN
    return sheet.note("seam", "allowance of the first seam", seam, "", basis=basis)


def note_length(sheet: Worksheet, inputs: BindingInputs, tail: Value) -> Value:
    """Note how long the joined strip must be for one edge."""
    bound, words = _note_corners(sheet, inputs)
    label = "strip needed for one edge"
    if inputs.ends == OPEN:
        return sheet.note("strip_length", label, bound + 2 * inputs.end_turn,
                          words + " + 2 × {end_turn}")  # fmt: skip
    return sheet.note("strip_length", label, bound + tail.length, words + " + {tail}",
                      tail=tail)  # fmt: skip


def _note_corners(sheet: Worksheet, inputs: BindingInputs) -> tuple[Length, str]:
    """Note what mitred corners add to the raw edge, or spare of it; that length and its formula.

    A wider allowance is trimmed to the binding, and the corners that are cut off with it are not
    bound.
    """
    corners = sheet.note(
        "corners_mitred", "square corners mitred", inputs.corners or 0, "", basis=GIVEN
    )
    if not corners.whole:
        return inputs.edge, "{edge}"
    more = 2 * corners.whole * (inputs.binding - sheet["seam"].length)
    narrower = more < ZERO
    sheet.note("corners_take", "taken by the mitres beyond the raw edge", max(more, ZERO),
               "2 × {corners} × ({binding} - {seam})" + (", at least 0" if narrower else ""),
               corners=corners)  # fmt: skip
    if not narrower:
        return inputs.edge + more, "{edge} + {corners_take}"
    sheet.note("corners_spare", "spared where the corners are trimmed off", -more,
               "2 × {corners} × ({seam} - {binding})", corners=corners)  # fmt: skip
    return inputs.edge + more, "{edge} - {corners_spare}"


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
