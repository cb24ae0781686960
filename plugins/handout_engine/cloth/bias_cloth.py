"""Bias strips taken from cloth: their inputs, numbers, chart and the cloth to buy."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from handout_engine.amounts.inputs import CLOTH, SEWING, length
from handout_engine.amounts.lengths import Length, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import LAYOUT, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.cloth.bias import (
    Band,
    Enough,
    Pieces,
    bands,
    diagonal,
    fewest_joined,
    fewest_whole,
    gives_whole,
    join_take_up,
    joins_into,
    smallest_cloth_by_length,
)
from handout_engine.cloth.cloth import Cloth, ClothInputs, note_cloth, note_usable_width
from handout_engine.working.workings import Cell, Chart, Grain, Piece
from handout_engine.working.worksheet import Worksheet


class BiasClothInputs(ClothInputs):
    """The inputs of every technique whose strips lie on the bias."""

    size_step = length(
        "size step",
        "The cloth for the strips is cut in steps of this.",
        "1/2 in",
        ("1/8 in", "6 in"),
        group=CLOTH,
        basis=PRACTICE,
    )


class JoinInputs(BiasClothInputs):
    """The inputs of every technique whose bias strips are joined."""

    strip_allowance = length(
        "joining allowance",
        "Allowance of the seams that join strips.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )


class BiasInputs(JoinInputs):
    """The inputs of every technique whose strips are cut one by one on the bias."""

    least_strip = length(
        "least useful strip",
        "Shorter strips are left as scraps.",
        "12 in",
        ("1/2 in", "60 in"),
        group=CLOTH,
        basis=PRACTICE,
    )


@dataclass(frozen=True)
class Strips:
    """Bias strips on their piece of cloth: all bands, and those that are used."""

    across: Value
    along: Value
    width: Value
    every: tuple[Band, ...]
    used: tuple[Band, ...]


def note_take_up(sheet: Worksheet, inputs: BiasInputs) -> Value:
    """Note what one join takes; refuses useful strips that a join would use up."""
    takes = join_take_up(inputs.strip_allowance)
    if inputs.least_strip <= takes:
        tape = Tape(finest=32)
        raise RefusalError(
            f"least_strip {tape.say(inputs.least_strip)} would be used up by its join; use more "
            f"than {tape.no_less(takes)}",
            "least_strip",
        )
    return sheet.note(
        "join_takes", "length taken by each join", takes, "2 × {strip_allowance} × √(2)"
    )


def useful(cut: Sequence[Band], least: Length) -> list[Band]:
    """The bands that are long enough to be used."""
    return [band for band in cut if band.usable >= least]


def note_joined_strips(
    sheet: Worksheet, inputs: BiasInputs, width: Value, wanted: Value, name: str
) -> Strips:
    """Strips that join into the wanted length, from as little cloth as will do; with its cloth."""
    takes = note_take_up(sheet, inputs)

    least = min(inputs.least_strip, wanted.length)
    strips = _note_strips(
        sheet,
        inputs,
        width,
        Search(
            least,
            lambda usable: joins_into(usable, least, wanted.length, takes.length),
            lambda cut: fewest_joined(useful(cut, least), wanted.length, takes.length),
        ),
        name,
    )
    note_joined(sheet, strips, strips.used)
    return strips


def note_joined(sheet: Worksheet, strips: Strips, listed: Sequence[Band]) -> Value:
    """Note what the used strips give together, and list some; returns their joined length."""
    count = sheet.note("strips_used", "strips used", len(strips.used), "", basis=LAYOUT)
    sheet.note(
        "strips_total",
        "all strips used, on their centre lines",
        total(band.usable for band in strips.used),
        "",
        basis=LAYOUT,
    )
    joined = sheet["strips_total"].length - (count.whole - 1) * sheet["join_takes"].length
    chart = Listed("With its ends on the grain", _on_grain, _one)
    _add_chart(sheet, strips, listed, chart)
    return sheet.note(
        "joined_length",
        "strips joined end to end",
        joined,
        "{strips_total} - ({strips_used} - 1) × {join_takes}",
    )


def note_whole_strips(
    sheet: Worksheet, inputs: BiasClothInputs, width: Value, wanted: Pieces, name: str
) -> Strips:
    """Strips cut again into whole pieces without a join, from as little cloth as will do."""
    search = Search(
        wanted.least,
        lambda usable: gives_whole(usable, wanted),
        lambda cut: fewest_whole(useful(cut, wanted.least), wanted),
    )
    strips = _note_strips(sheet, inputs, width, search, name)
    sheet.note("strips_used", "strips used", len(strips.used), "", basis=LAYOUT)
    chart = Listed("With its ends cut square", wanted.squared, wanted.of)
    _add_chart(sheet, strips, strips.used, chart)
    return strips


@dataclass(frozen=True)
class Search:
    """What strips are looked for: the shortest, when they are enough, which of them are used."""

    shortest: Length
    enough: Enough
    chosen: Callable[[Sequence[Band]], Sequence[Band]]


def _note_strips(
    sheet: Worksheet, inputs: BiasClothInputs, width: Value, search: Search, name: str
) -> Strips:
    cloth = inputs.cloth()
    usable = note_usable_width(sheet, cloth)
    _refuse_too_long(search.shortest, usable.length)
    across, along = smallest_cloth_by_length(
        usable.length, width.length, inputs.size_step, search.enough
    )
    sheet.note("across", "cloth for the strips, across", across, "", basis=LAYOUT)
    sheet.note("along", "cloth for the strips, along the selvage", along, "", basis=LAYOUT)
    strips = note_bands(sheet, width, search.chosen)
    add_cloth(sheet, cloth, name)
    return strips


def _refuse_too_long(shortest: Length, usable: Length) -> None:
    """No strip is longer than the diagonal across the cloth, however long that is."""
    longest = diagonal(usable)
    if shortest > longest:
        tape = Tape(finest=32)
        raise RefusalError(
            f"cloth {tape.say(usable)} wide between its selvages gives no strip of "
            f"{tape.both(shortest)} without a join; the longest is {tape.no_more(longest)}: use "
            "wider cloth, or shorter strips",
            "cloth_width",
        )


def note_bands(
    sheet: Worksheet, width: Value, chosen: Callable[[Sequence[Band]], Sequence[Band]]
) -> Strips:
    """Note how the bands lie on the cloth whose size is noted; `chosen` picks those used."""
    across, along = sheet["across"], sheet["along"]
    every = bands(across.length, along.length, width.length)
    sheet.note(
        "edge_step",
        "from line to line, along the edges of the cloth",
        diagonal(width.length),
        "{width} × √(2)",
        width=width,
    )
    sheet.note(
        "bands",
        "whole strips from corner to corner",
        len(every),
        "({across} + {along}) / {edge_step}, rounded down",
        across=across,
        along=along,
    )
    return Strips(across, along, width, every, tuple(chosen(every)))


def add_cloth(sheet: Worksheet, cloth: Cloth, name: str) -> None:
    """The piece of cloth from which the strips are cut, and what to buy for it."""
    sheet.pieces.append(
        Piece(f"{name} for the strips", name, 1, sheet["across"], sheet["along"], Grain.STRAIGHT)
    )
    note_cloth(sheet, name, cloth)


def _one(band: Band) -> int:
    del band
    return 1


def _on_grain(band: Band) -> Length:
    return band.usable


@dataclass(frozen=True)
class Listed:
    """How strips are listed: the length that counts, under its heading, and the pieces it gives."""

    heading: str
    measured: Callable[[Band], Length]
    pieces: Callable[[Band], int]


def _add_chart(sheet: Worksheet, strips: Strips, listed: Sequence[Band], how: Listed) -> None:
    """Each strip: its number, what becomes of it, its lengths and its shape."""
    used = {band.number: how.pieces(band) for band in strips.used}
    rows: list[tuple[Cell, ...]] = [
        (
            str(band.number),
            _use(used.get(band.number, 0)),
            how.measured(band),
            band.centre,
            band.shape,
        )
        for band in listed
    ]
    headings = ("Strip", "Use", how.heading, "Centre line", "Shape")
    sheet.charts.append(Chart("The strips, from the marked corner on", headings, tuple(rows)))


def _use(pieces: int) -> str:
    if pieces == 0:
        return "spare"
    return "used" if pieces == 1 else f"used, {pieces} pieces"
