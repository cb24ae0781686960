"""How a continuous bias strip is sewn and cut."""

from __future__ import annotations

from handout_engine.amounts.values import Value
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """A paper rehearsal: the shift by one row is understood best with tape and paper."""
    sheet.trial(
        "Before the cloth, do it once in paper: a rectangle of any size, the triangle "
        "taped to the other end, three or four rows ruled, the tube taped one row out of "
        "step. Cut round it.",
        "you hold one strip, not several rings; rings mean that row met itself.",
    )


def add_steps(sheet: Worksheet, short: Value, long: Value) -> None:
    """From the rectangle to the strip."""
    sheet.step(
        "Press the cloth and straighten it on a thread. Cut it {across} across and {along} along "
        "the selvage, its corners square."
    )
    where = (
        "Cut it from corner to corner"
        if short.length == long.length
        else "From one corner measure {short} along a long side, and cut from there to the other "
        "corner of the same short side"
    )
    sheet.step(where + ": the cut lies on the true bias.", short=short)
    _add_first_seam(sheet, short, long)
    sheet.step(
        "On the wrong side rule lines parallel to one of the bias edges, {width} apart: {rows} "
        "rows. Cut off what is left beyond the last line.",
        "along both grain edges it is {edge_step} from line to line.",
    )
    if sheet["rows"].whole > 1:
        _add_tube(sheet)
    else:
        sheet.step("Cut along the line.", "the strip is {strip_length} long in the middle.")


def _add_first_seam(sheet: Worksheet, short: Value, long: Value) -> None:
    step = (
        ""
        if short.length == long.length
        else " The long edges now step by {strip_allowance} at the seam: trim the one that stands "
        "out level with the other."
    )
    sheet.step(
        "Lay the straight short edge of the triangle on the straight short edge at the other end, "
        "right sides together, moved along by {strip_allowance} so that their edges cross on the "
        "stitching line and the sharp tip stands out. Sew with {strip_allowance} allowance and "
        "press open." + step,
        "the grain edges are {grain_edge} long and {height} apart. If the edges were laid level "
        "instead of crossing on the stitching line, a row may be lost.",
    )


def _add_tube(sheet: Worksheet) -> None:
    sheet.step(
        "Number the ends of the lines as in the drawing: at the upper edge 0 for the bias edge, "
        "then 1, 2 and on; at the lower edge leave the bias edge without a number and begin with "
        "0 at the first line."
    )
    sheet.step(
        "Right sides together, bring the two grain edges to each other so that equal numbers meet: "
        "one row stands free at each end. Push a pin through both lines {strip_allowance} from "
        "the edges, on the stitching line, not at the raw edges. The tube twists; that is right.",
        "each pair of lines meets at its pin, on the stitching line, before a stitch is sewn.",
    )
    sheet.step("Sew with {strip_allowance} allowance, short stitches, and press the seam open.")
    sheet.step(
        "Begin at the free end of a row and cut along the line, round and round, to the other "
        "free end.",
        "the strip is {strip_length} long in the middle, and {width} wide.",
    )
