"""Tubes cut without a join from bias strips: which tube comes from which strip, and the cloth."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from handout_engine.amounts.inputs import CLOTH, SEWING, length, optional_length
from handout_engine.amounts.lengths import ZERO, Length, from_float, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, LAYOUT, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.cloth.bias import SURE, Band, bands, diagonal, smallest_cloth
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.working.workings import Cell, Chart, Grain, Piece
from handout_engine.working.worksheet import Worksheet


class TubeInputs(ClothInputs):
    """The inputs of what is made of narrow bias tubes, their seam along one edge."""

    tube_width = length(
        "tube width", "Finished width of a tube, pressed flat.", "1/4 in", ("1/8 in", "2 in")
    )
    tube_allowance = optional_length(
        "tube allowance",
        "Allowance of a tube's seam; it stays inside the tube.",
        "as wide as the tube, up to 1/4 in",
        ("1/16 in", "3/8 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="seam_in_tube",
    )
    size_step = length(
        "size step",
        "The cloth for the strips is cut in steps of this.",
        "1/2 in",
        ("1/8 in", "6 in"),
        group=CLOTH,
        basis=PRACTICE,
    )


USUAL_ALLOWANCE = inches("1/4")


def note_strip_width(sheet: Worksheet, inputs: TubeInputs) -> Value:
    """Note a tube's seam allowance and the cut width of its strip; raises RefusalError."""
    given = inputs.tube_allowance
    allowance = min(inputs.tube_width, USUAL_ALLOWANCE) if given is None else given
    if allowance > inputs.tube_width:
        tape = Tape(finest=32)
        raise RefusalError(
            f"tube_allowance {tape.say(allowance)} is wider than the tube and cannot lie flat in "
            f"it; use at most {tape.no_more(inputs.tube_width)}, or trim it to that after sewing "
            "and write that",
            "tube_allowance",
        )
    basis = PRACTICE if given is None else GIVEN
    sheet.note("seam_in_tube", "allowance of a tube's seam", allowance, "", basis=basis)
    return sheet.note(
        "strip_width",
        "bias strip, cut width",
        2 * inputs.tube_width + 2 * allowance,
        "2 × {tube_width} + 2 × {seam_in_tube}",
        saying=Saying.UP,
    )


@dataclass(frozen=True)
class NamedTube:
    """One tube to cut: its name on the placement sheet, and its length."""

    name: str
    length: Length


@dataclass(frozen=True)
class CutStrip:
    """A bias strip and the tubes cut from it once it is sewn and turned."""

    band: Band
    good: Length
    tubes: tuple[NamedTube, ...]


def packed(
    every: Sequence[Band], width: Length, wanted: Sequence[NamedTube]
) -> tuple[CutStrip, ...] | None:
    """Every tube on a strip, without a join, the longest first on the fullest strip that holds it.

    A strip's ends lie on the grain; squared, they take its width of its length. None when the
    strips do not hold all tubes.
    """
    left = {band.number: band.usable - width - from_float(SURE) for band in every}
    taken: dict[int, list[NamedTube]] = {}
    for tube in sorted(wanted, key=lambda each: -each.length.mm):
        holding = [number for number, free in left.items() if free >= tube.length]
        if not holding:
            return None
        begun = [number for number in holding if number in taken]
        number = min(begun or holding, key=lambda each: (left[each].mm, each))
        left[number] -= tube.length
        taken.setdefault(number, []).append(tube)
    return tuple(
        CutStrip(band, band.usable - width, tuple(taken[band.number]))
        for band in every
        if band.number in taken
    )


def note_tube_cloth(
    sheet: Worksheet, inputs: TubeInputs, wanted: Sequence[NamedTube], name: str
) -> None:
    """Note the piece of cloth for all strips, how it is cut up, and what to buy of it."""
    width = sheet["strip_width"].length
    usable = note_usable_width(sheet, inputs.cloth())
    across, along = smallest_cloth(
        usable.length,
        width,
        inputs.size_step,
        lambda cut: packed(cut, width, wanted) is not None,
    )
    sheet.note("across", "cloth for the strips, across", across, "", basis=LAYOUT)
    sheet.note("along", "cloth for the strips, along the selvage", along, "", basis=LAYOUT)
    strips = packed(bands(across, along, width), width, wanted)
    assert strips is not None
    sheet.note("edge_step", "from line to line, along the edges of the cloth", diagonal(width),
               "{strip_width} × √(2)")  # fmt: skip
    sheet.note("strips", "bias strips to cut", len(strips), "", basis=LAYOUT)
    sheet.charts.append(_chart(strips))
    sheet.pieces.append(
        Piece("block for the bias strips", name, 1, sheet["across"], sheet["along"],
              Grain.STRAIGHT)
    )  # fmt: skip
    note_cloth(sheet, name, inputs.cloth())


def _chart(strips: Sequence[CutStrip]) -> Chart:
    rows: list[tuple[Cell, ...]] = [
        (
            str(strip.band.number),
            Value("good", "good length", strip.good, LAYOUT),
            ", ".join(tube.name for tube in strip.tubes),
            Value("left", "left over", _left_over(strip), LAYOUT),
        )
        for strip in strips
    ]
    headings = ("Strip", "Length, ends squared", "Tubes cut from it", "Left over")
    return Chart("The strips, counted from one corner of the cloth", headings, tuple(rows))


def _left_over(strip: CutStrip) -> Length:
    left = strip.good
    for tube in strip.tubes:
        left -= tube.length
    return max(ZERO, left)
