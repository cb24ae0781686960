"""A band built up of strips: lace, entredeux, beading, puffing, embroidery and cloth."""

from __future__ import annotations

from itertools import pairwise
from typing import ClassVar

from handout_engine.amounts.inputs import (
    length,
    named_lengths,
    optional_count,
    optional_length,
    ratio,
)
from handout_engine.amounts.lengths import ZERO, Length, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.families.lace.insertion_band_measures import (
    CUT_FROM_CLOTH,
    PUFFING,
    STRIPS,
    BandJoinInputs,
    Strip,
    note_strip,
)
from handout_engine.families.lace.insertion_band_pictures import band_pictures
from handout_engine.families.lace.insertion_band_steps import add_band_sample, add_band_steps
from handout_engine.families.lace.lace import TrimInputs, add_lace_supplies, note_lace_to_buy
from handout_engine.shared.strips import StripsWanted, note_strips
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Grain, Mark, Piece, Seam
from handout_engine.working.worksheet import Worksheet

MOST_STRIPS = 15


class InsertionBand(BandJoinInputs, TrimInputs, ClothInputs, Technique):
    """A band of ordered strips, joined each in its own way."""

    title: ClassVar[str] = "Built-up insertion band"
    family: ClassVar[str] = "lace"
    summary: ClassVar[str] = (
        "Strips of lace, entredeux, beading, puffing, embroidery and cloth joined into one band "
        "of a wanted width."
    )

    strips = named_lengths(
        "strips",
        "The strips from top to bottom, each with the width that shows.",
        "lace 5/8 in; entredeux 1/8 in; puffing 1 1/2 in; entredeux 1/8 in; lace 5/8 in",
        ("1/16 in", "6 in"),
        STRIPS,
    )
    run = length(
        "finished length", "Length of the band between its ends.", "18 in", ("1 in", "10 yd")
    )
    wanted = optional_length(
        "wanted width",
        "Finished width that the band must have; one strip gives way.",
        "the sum of the strips",
        ("1/2 in", "60 in"),
        in_use="finished_width",
    )
    fit = optional_count(
        "strip that gives way",
        "Number of the strip that is made to fit, from the top.",
        "the first strip cut from cloth",
        MOST_STRIPS,
    )
    fullness = ratio(
        "fullness of puffing",
        "Its length for each length of band.",
        "1.75",
        ("1", "4"),
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Widths, lengths, what to buy, and how each join is sewn; raises RefusalError."""
        sheet = Worksheet(technique=self)
        strips = _note_strips(sheet, self)
        _note_lengths(sheet, self, strips)
        _note_trims(sheet, strips)
        _note_cloth(sheet, self, strips)
        _add_seams(sheet, strips)
        add_lace_supplies(sheet, "lightweight starch", "a pressing cloth")
        add_band_sample(sheet, strips)
        add_band_steps(sheet, strips, self.fit.number if self.fit else None)
        sheet.pictures.extend(band_pictures(sheet, strips))
        sheet.charts.append(_chart(sheet, strips))
        return sheet


def _note_strips(sheet: Worksheet, band: InsertionBand) -> list[Strip]:
    """Note what shows of each strip, and its cut width."""
    kinds = [each.name for each in band.strips]
    widths = [each.length for each in band.strips]
    fitted = _fitted(band, kinds)
    if fitted:
        others = total(widths) - widths[fitted - 1]
        _check_wanted(band, others, fitted)
        widths[fitted - 1] = (band.wanted or ZERO) - others
    visible = [
        sheet.note(f"strip{number}_width", f"strip {number} {kind}, shows", width, "", basis=GIVEN)
        for number, (kind, width) in enumerate(zip(kinds, widths, strict=True), 1)
    ]
    if fitted:
        visible[fitted - 1] = _note_fitted(sheet, visible, fitted, kinds[fitted - 1])
    sheet.note(
        "finished_width",
        "finished width of the band",
        total(each.length for each in visible),
        " + ".join(f"{{strip{number}_width}}" for number in range(1, len(kinds) + 1)),
    )
    around = [None, *kinds, None]
    return [
        note_strip(sheet, number, (kind, around[number - 1], around[number + 1]), value)
        for number, (kind, value) in enumerate(zip(kinds, visible, strict=True), 1)
    ]


def _note_fitted(sheet: Worksheet, visible: list[Value], fitted: int, kind: str) -> Value:
    """Note the strip that gives way: what the others leave of the wanted width."""
    rest = [each for number, each in enumerate(visible, 1) if number != fitted]
    minus = "".join(f" - {{{each.name}}}" for each in rest)
    return sheet.note(f"strip{fitted}_width", f"strip {fitted} {kind}, shows",
                      visible[fitted - 1].length, "{wanted}" + minus)  # fmt: skip


def _fitted(band: InsertionBand, kinds: list[str]) -> int | None:
    """The number of the strip that gives way, where a width is wanted."""
    if band.wanted is None:
        if band.fit is not None:
            raise RefusalError("fit needs the wanted width; write wanted, or leave fit out", "fit")
        return None
    if band.fit is not None and band.fit > len(kinds):
        raise RefusalError(
            f"fit {band.fit} is not a strip of this band; use a number from 1 to {len(kinds)}",
            "fit",
        )
    if band.fit is not None:
        return band.fit.number
    found = [number for number, kind in enumerate(kinds, 1) if kind in CUT_FROM_CLOTH]
    if not found:
        raise RefusalError(
            "no strip of this band is cut from cloth, so none can be cut to fit; use a number from "
            f"1 to {len(kinds)} for the strip that gives way, or add a strip of cloth or puffing",
            "fit",
        )
    return found[0]


def _check_wanted(band: InsertionBand, others: Length, number: int) -> None:
    assert band.wanted is not None
    if band.wanted <= others:
        tape = Tape(finest=32)
        raise RefusalError(
            f"wanted {tape.say(band.wanted)} leaves nothing for strip {number}; the other strips "
            f"alone are {tape.both(others)} wide, so want more than that or take one out",
            "wanted",
        )


def _note_lengths(sheet: Worksheet, band: InsertionBand, strips: list[Strip]) -> None:
    ends = 2 * band.end_allowance
    sheet.note("cut_length", "flat strips, cut length", band.run + ends,
               "{run} + 2 × {end_allowance}")  # fmt: skip
    if any(strip.kind == PUFFING for strip in strips):
        sheet.note("puffing_length", "puffing, cut length before gathering",
                   band.run * band.fullness + ends,
                   "{fullness} × {run} + 2 × {end_allowance}")  # fmt: skip


def _note_trims(sheet: Worksheet, strips: list[Strip]) -> None:
    """Note what to buy of every trim, strips of one kind and width together."""
    groups: dict[tuple[str, Length], list[Strip]] = {}
    for strip in strips:
        if strip.bought:
            groups.setdefault((strip.kind, strip.visible.length), []).append(strip)
    for (kind, _), group in groups.items():
        numbers = ", ".join(str(strip.number) for strip in group)
        name = f"{kind} for strip{'s' if len(group) > 1 else ''} {numbers}"
        note_lace_to_buy(sheet, sheet["cut_length"], name, f"strip{group[0].number}", len(group),
                         group[0].visible)  # fmt: skip


def _note_cloth(sheet: Worksheet, band: InsertionBand, strips: list[Strip]) -> None:
    """Note the strips cut from cloth, lay them out and buy the cloth."""
    cut = [strip for strip in strips if not strip.bought]
    if not cut:
        return
    cloth = band.cloth()
    usable = note_usable_width(sheet, cloth)
    for strip in cut:
        wanted = sheet["puffing_length" if strip.kind == PUFFING else "cut_length"]
        prefix = f"strip{strip.number}_"
        count = note_strips(sheet, StripsWanted(usable, wanted, strip.cut, False, False, prefix))
        marks = tuple(
            Mark(f"seam line {place}", distance)
            for place, distance in _seam_lines(sheet, strip)
            if distance
        )
        sheet.pieces.append(
            Piece(f"strip {strip.name}", "cloth", count.whole * band.make.number, strip.cut,
                  sheet[f"{prefix}strip_length"], Grain.CROSS, marks)
        )  # fmt: skip
    note_cloth(sheet, "cloth", cloth)


def _seam_lines(sheet: Worksheet, strip: Strip) -> list[tuple[str, Length]]:
    above = sheet[strip.above].length if strip.above else ZERO
    below = sheet[strip.below].length if strip.below else ZERO
    return [("above", above), ("below", strip.cut.length - below if below else ZERO)]


def _add_seams(sheet: Worksheet, strips: list[Strip]) -> None:
    for upper, lower in pairwise(strips):
        for strip, taken in ((upper, upper.below), (lower, lower.above)):
            allowance = sheet[taken].length if taken else ZERO
            name = f"{upper.number} to {lower.number}, on strip {strip.name}"
            sheet.seams.append(Seam(name, allowance))


def _chart(sheet: Worksheet, strips: list[Strip]) -> Chart:
    rows = tuple(
        (
            strip.name,
            strip.visible,
            strip.cut,
            sheet["puffing_length" if strip.kind == PUFFING else "cut_length"],
        )
        for strip in strips
    )
    return Chart("The strips from top to bottom", ("Strip", "Shows", "Cut wide", "Cut long"), rows)


TECHNIQUE = InsertionBand
