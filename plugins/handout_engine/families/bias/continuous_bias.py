"""One continuous bias strip from a square or rectangle, sewn into a tube and cut round it."""

from __future__ import annotations

from math import sqrt
from typing import ClassVar

from handout_engine.amounts.inputs import CLOTH, length, optional_length, percentage
from handout_engine.amounts.lengths import ZERO, Length, from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GEOMETRY, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, more_than, ways
from handout_engine.cloth.bias import SURE, diagonal, join_take_up
from handout_engine.cloth.bias_cloth import JoinInputs, add_cloth
from handout_engine.families.bias.bias_drawing import joined_strip
from handout_engine.families.bias.continuous_bias_cutting import strip_length, whole_rows
from handout_engine.families.bias.continuous_bias_drawing import Rows, cut_cloth, ruled_rows
from handout_engine.families.bias.continuous_bias_sizes import note_sides
from handout_engine.families.bias.continuous_bias_steps import add_sample, add_steps
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Seam
from handout_engine.working.worksheet import Worksheet


class ContinuousBias(JoinInputs, Technique):
    """A strip that needs only two seams, whatever its length."""

    title: ClassVar[str] = "Continuous bias strip"
    family: ClassVar[str] = "bias"
    summary: ClassVar[str] = (
        "A square or rectangle sewn into a tube one row out of step and cut round into one strip."
    )
    known_by: ClassVar[str] = "rows"

    width = length("strip width", "Cut width of the strip.", "1 1/4 in", ("1/4 in", "12 in"))
    wanted = optional_length(
        "length wanted",
        "Length of strip; the cloth for it is then worked out.",
        "3 yd, unless the size of the cloth is given",
        ("1 in", "100 yd"),
        in_use="length_wanted",
    )
    cloth_across = optional_length(
        "cloth at hand, across",
        "Size of the cloth, square to the selvage.",
        "a square",
        ("2 in", "120 in"),
    )
    cloth_along = optional_length(
        "cloth at hand, along",
        "Size of the cloth, along the selvage.",
        "a square",
        ("2 in", "20 yd"),
    )
    least_saving = percentage(
        "saving that makes it a rectangle",
        "A rectangle is worked out where it takes so much less cloth than "
        "the smallest square; at 100 % it stays a square.",
        "10 %",
        100,
        group=CLOTH,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Rows, length, cloth and lines to rule; raises RefusalError."""
        sheet = Worksheet(technique=self)
        short, long = note_sides(sheet, self.width, self.strip_allowance, self.cloth().usable)
        rows = _note_rows(sheet, self, short, long)
        _note_length(sheet, self, short, rows)
        add_cloth(sheet, self.cloth(), "cloth")
        drawn = _drawn(sheet, short, long)
        _add_chart(sheet, rows.whole, self.width)
        sheet.seams.append(Seam("both seams of the tube", self.strip_allowance))
        sheet.have("a long ruler with a 45-degree line", "a removable marker tried on a scrap")
        sheet.have("pins", "sharp shears")
        sheet.cautions.append(PINS_AND_IRON)
        add_sample(sheet)
        add_steps(sheet, short, long)
        _draw(sheet, drawn)
        return sheet


def _note_rows(sheet: Worksheet, inputs: ContinuousBias, short: Value, long: Value) -> Value:
    """Note the parallelogram and its rows; refuses cloth too small for one row."""
    join = inputs.strip_allowance
    least = join + diagonal(inputs.width)
    tape = Tape(finest=32)
    if short.length <= 3 * join:
        sides = ("across", "along")
        small = [f"cloth_{side}" for side in sides if sheet[side].length <= 3 * join]
        way = more_than(inputs, small[0], 3 * join, f"more than {{}} for {' and '.join(small)}")
        raise RefusalError(
            f"{short.label} {tape.say(short.length)} is used up by the seams; use "
            f"{ways(way, 'narrower seams')}",
            small[0],
        )
    if long.length < least:
        narrow = from_float(float(long.length - join) / sqrt(2))
        way = ways(at_most(inputs, "width", narrow, "a width of at most {}"), "more cloth")
        raise RefusalError(
            f"width {tape.say(inputs.width)} leaves no whole row in cloth of "
            f"{tape.say(long.length)}; use {way}",
            "width",
        )
    sheet.note("grain_edge", "sewn, along the grain edge", long.length - join,
               "{long} - {strip_allowance}", long=long)  # fmt: skip
    sheet.note("height", "sewn, from grain edge to grain edge", short.length - join,
               "{short} - {strip_allowance}", short=short)  # fmt: skip
    sheet.note("edge_step", "from line to line, along the grain edge", diagonal(inputs.width),
               "{width} × √(2)")  # fmt: skip
    return sheet.note(
        "rows",
        "whole rows",
        whole_rows(long.length, inputs.width, join),
        "{grain_edge} / {edge_step}, rounded down",
    )


def _note_length(sheet: Worksheet, inputs: ContinuousBias, short: Value, rows: Value) -> None:
    join = inputs.strip_allowance
    sheet.note("row_length", "one row, on its centre line", diagonal(short.length - join),
               "{height} × √(2)")  # fmt: skip
    sheet.note("join_takes", "length taken where a row passes into the next", join_take_up(join),
               "2 × {strip_allowance} × √(2)")  # fmt: skip
    found = strip_length(rows.whole, short.length, join)
    sheet.note("strip_length", "length of the strip", found,
               "{rows} × {row_length} - ({rows} - 1) × {join_takes}")  # fmt: skip
    sheet.note(
        "area_length",
        "length by the area rule, no seam counted (never reached)",
        sheet["across"].length * (sheet["along"].length / inputs.width),
        "{across} × {along} / {width}",
        basis=GEOMETRY,
    )
    between = sheet["height"].length - 2 * join
    sheet.note(
        "most_length",
        "length by area, seams counted (an upper bound: as if no part of a row were left over)",
        sheet["grain_edge"].length * (between / inputs.width) + sheet["join_takes"].length,
        "{grain_edge} × ({height} - 2 × {strip_allowance}) / {width} + {join_takes}",
    )
    if inputs.wanted is not None and float(inputs.wanted - found) > SURE:
        tape = Tape(finest=32)
        raise RefusalError(
            f"this cloth gives {tape.both(found)} in whole rows, less than wanted "
            f"{tape.say(inputs.wanted)}; leave cloth_along out to have it worked out, or want less",
            "wanted",
        )


def _drawn(sheet: Worksheet, short: Value, long: Value) -> Rows:
    return Rows(
        short, long, sheet["strip_allowance"], sheet["grain_edge"], sheet["height"],
        sheet["edge_step"], sheet["rows"], sheet["width"], long is sheet["along"],
    )  # fmt: skip


def _add_chart(sheet: Worksheet, rows: int, width: Length) -> None:
    """Each ruled line: how far from the first bias edge, and its number at either grain edge.

    The lower edge is numbered one row on, as in the drawing, so that equal numbers meet.
    """
    lines = [
        (
            str(line),
            width * line if line else ZERO,
            diagonal(width) * line,
            str(line - 1) if line and rows > 1 else "none",
        )
        for line in range(rows + 1)
    ]
    headings = (
        "Line, its number at the upper edge",
        "From the first bias edge, square to it",
        "Along either grain edge",
        "Its number at the lower edge",
    )
    sheet.charts.append(Chart("Lines to rule, counted from one bias edge", headings, tuple(lines)))


def _draw(sheet: Worksheet, rows: Rows) -> None:
    strip = joined_strip(sheet["width"], sheet["strip_length"], sheet["strip_allowance"])
    pictures = [
        Picture("finished", sentence("The strip, with its slanting seams."),
                strip, finished=True),
        Picture("cut", sentence("The one cut: the triangle A moves to the other end of B."),
                cut_cloth(rows)),
        Picture(
            "rows",
            sentence("Sewn together and ruled in steps of {step} along the grain edges, seen from "
                     "the wrong side (its hatching is left out so that the lines can be read). "
                     "Match equal numbers; what lies beyond the last line is cut off.",
                     step=sheet["edge_step"]),
            ruled_rows(rows),
        ),
    ]  # fmt: skip
    sheet.pictures.extend(pictures)


TECHNIQUE = ContinuousBias
