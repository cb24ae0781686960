"""A front band for buttons: a strip sewn on, of one cloth or two, or cut on with its facing.

The front reaches as far beyond its centre line as the button needs, and as far to the inside, so
that the band is twice that wide and two bands, lapped centre on centre, cover one another.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth
from handout_engine.families.closures.front_band_pictures import add_pictures
from handout_engine.families.closures.front_band_steps import add_sample, add_steps
from handout_engine.shared.buttons import TAPE, ButtonInputs, note_extension
from handout_engine.working.cautions import BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

ONE, TWO, CUT_ON = "a folded strip", "two cloths", "cut on with its facing"
EDGE, OPENING = "a front edge", "an opening cut into the front"
WIDEST_FILLED, USUAL_ALLOWANCE = inches("1/2"), inches("1/4")


class FrontBand(ButtonInputs, ClothInputs, Technique):
    """Bands for the two fronts of a buttoned opening."""

    title: ClassVar[str] = "Front band"
    family: ClassVar[str] = "closures"
    summary: ClassVar[str] = (
        "The overlap of a buttoned front: a folded strip, a strip with a narrow contrast edge, or "
        "a facing cut on."
    )

    opening = length(
        "length of the band",
        "Finished, from its upper to its lower end.",
        "12 in",
        ("1 in", "60 in"),
    )
    made = choice(
        "made of",
        "A strip folded in half, two cloths of which the second shows as a narrow "
        "edge, or the front itself with its facing cut on.",
        ONE,
        TWO,
        CUT_ON,
        group=SEWING,
    )
    edge = length(
        "contrast edge",
        "Of two cloths: what of the second shows along the front edge.",
        "1/8 in",
        ("1/16 in", "1 in"),
    )
    onto = choice(
        "set onto",
        "An open front, or an opening that is cut into a front; there the garment's own seams "
        "take the ends of the band.",
        EDGE,
        OPENING,
        group=SEWING,
    )
    edge_seam = optional_length(
        "edge seam",
        "Of two cloths: allowance of the seam that joins them; it lies in the edge.",
        "as wide as the edge up to 1/2 in, so that it fills it; 1/4 in for a wider one",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    seam = length(
        "band seam",
        "Allowance between band and front; as much is turned under inside.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing = optional_length(
        "facing",
        "Cut on: finished width of the facing, from the fold to its inner edge.",
        "as wide as the band",
        ("1/4 in", "8 in"),
        group=SEWING,
    )
    facing_turn = length(
        "turned under",
        "Cut on: what is turned under along the facing's inner edge.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "Beyond the band at its upper and at its lower end.",
        "1/4 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    bands = count("how many", "Two for one garment, right and left.", 2, 200)

    def whole(self) -> Worksheet:
        """Extension, strips, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        if self.onto == OPENING and self.made == CUT_ON:
            raise RefusalError(
                "a band that is cut on belongs to an open front; make it of strips, or set it onto "
                f"{EDGE}",
                "onto",
            )
        beyond = note_extension(sheet, self)
        sheet.note("band_width", "finished band, and what the fronts overlap", 2 * beyond.length,
                   "2 × {beyond_centre}")  # fmt: skip
        sheet.note("band_length", "band, cut length", self.opening + 2 * self.end_allowance,
                   "{opening} + 2 × {end_allowance}", finishes="opening")  # fmt: skip
        {ONE: _note_one, TWO: _note_two, CUT_ON: _note_cut_on}[self.made](sheet, self)
        _add_supplies(sheet, self)
        add_sample(sheet)
        add_steps(sheet, self.made, self.onto == OPENING)
        add_pictures(sheet, self.made == TWO, self.made == CUT_ON)
        return sheet


def _check_seam(inputs: FrontBand, band: Length) -> None:
    if inputs.seam > band:
        raise RefusalError(
            f"seam {TAPE.say(inputs.seam)} is wider than the band {TAPE.say(band)}, in which it "
            f"has to lie flat; use {ways(at_most(inputs, 'seam', band), 'a wider band')}, trimmed "
            "after sewing if need be",
            "seam",
        )


def _note_one(sheet: Worksheet, inputs: FrontBand) -> None:
    """Note the strip that is folded in half."""
    band = sheet["band_width"].length
    _check_seam(inputs, band)
    width = sheet.note("strip_width", "band strip, cut width", 2 * band + 2 * inputs.seam,
                       "2 × {band_width} + 2 × {seam}")  # fmt: skip
    fold = sheet.note("fold_line", "fold, from the edge that is sewn to the front",
                      band + inputs.seam, "{band_width} + {seam}")  # fmt: skip
    sheet.note("turned_edge", "turned under, from that same edge",
               width.length - inputs.seam, "{strip_width} - {seam}")  # fmt: skip
    _add_piece(sheet, "band strip", "cloth", width, (fold,))
    note_cloth(sheet, "cloth", inputs.cloth())


def _note_two(sheet: Worksheet, inputs: FrontBand) -> None:
    """Note outer strip and facing by the banded rule; refuses an edge that cannot be."""
    band = sheet["band_width"].length
    _check_seam(inputs, band)
    if inputs.edge >= band:
        raise RefusalError(
            f"edge {TAPE.say(inputs.edge)} leaves nothing of the outer strip on a band "
            f"{TAPE.say(band)} wide; use less than {TAPE.no_more(band)}, or a wider extension",
            "edge",
        )
    seam = _note_edge_seam(sheet, inputs)
    sheet.note("outer_shows", "outer strip that shows", band - inputs.edge,
               "{band_width} - {edge}")  # fmt: skip
    outer = sheet.note("outer_width", "outer strip, cut width",
                       band - inputs.edge + inputs.seam + seam.length,
                       "{outer_shows} + {seam} + {joining}")  # fmt: skip
    facing = sheet.note("facing_width", "facing strip, cut width",
                        outer.length + 2 * inputs.edge, "{outer_width} + 2 × {edge}")  # fmt: skip
    sheet.note("strip_width", "both strips joined, opened flat",
               outer.length + facing.length - 2 * seam.length,
               "{outer_width} + {facing_width} - 2 × {joining}")  # fmt: skip
    fold = sheet.note("fold_line", "fold on the facing, from its edge that is joined",
                      seam.length + inputs.edge, "{joining} + {edge}")  # fmt: skip
    line = sheet.note("joined_line", "joining seam on the outer strip, from the edge that is sewn "
                      "to the front", outer.length - seam.length,
                      "{outer_width} - {joining}")  # fmt: skip
    _add_piece(sheet, "outer strip", "band cloth", outer, (line,))
    _add_piece(sheet, "facing strip", "edge cloth", facing, (fold,))
    sheet.seams.append(Seam("outer strip to facing", seam.length))
    note_cloth(sheet, "band cloth", inputs.cloth(), "band_")
    note_cloth(sheet, "edge cloth", inputs.cloth(), "edge_")


def _note_edge_seam(sheet: Worksheet, inputs: FrontBand) -> Value:
    usual = inputs.edge if inputs.edge <= WIDEST_FILLED else USUAL_ALLOWANCE
    seam = usual if inputs.edge_seam is None else inputs.edge_seam
    if seam > inputs.edge:
        raise RefusalError(
            f"edge_seam {TAPE.say(seam)} is wider than the edge {TAPE.say(inputs.edge)}; it cannot "
            f"lie flat inside it (use {at_most(inputs, 'edge_seam', inputs.edge)}, trimmed after "
            "sewing if need be)",
            "edge_seam",
        )
    basis = PRACTICE if inputs.edge_seam is None else GIVEN
    return sheet.note("joining", "allowance between outer strip and facing", seam, "", basis=basis)


def _note_cut_on(sheet: Worksheet, inputs: FrontBand) -> None:
    """Note how far the front is cut beyond its centre line; refuses a facing too narrow."""
    band = sheet["band_width"].length
    facing = band if inputs.facing is None else inputs.facing
    if facing < band:
        raise RefusalError(
            f"facing {TAPE.say(facing)} is narrower than the band {TAPE.say(band)}, so that holes "
            f"and buttons would stand partly in one layer; use "
            f"{ways(at_least(inputs, 'facing', band), 'a narrower band')}",
            "facing",
        )
    words, basis = ("{band_width}", GEOMETRY) if inputs.facing is None else ("", GIVEN)
    sheet.note("facing_used", "facing, from the fold to its inner edge", facing, words,
               basis=basis)  # fmt: skip
    sheet.note("fold_line", "fold, from the cut edge", inputs.facing_turn + facing,
               "{facing_turn} + {facing_used}")  # fmt: skip
    sheet.note("cut_beyond", "front, cut beyond its centre line",
               inputs.facing_turn + facing + sheet["beyond_centre"].length,
               "{facing_turn} + {facing_used} + {beyond_centre}")  # fmt: skip


def _add_piece(
    sheet: Worksheet, name: str, cloth: str, width: Value, lines: tuple[Value, ...]
) -> None:
    marks = tuple(Mark(each.label, each.length) for each in lines)
    sheet.pieces.append(
        Piece(name, cloth, sheet["bands"].whole, width, sheet["band_length"], Grain.STRAIGHT, marks)
    )


def _add_supplies(sheet: Worksheet, inputs: FrontBand) -> None:
    if inputs.made != CUT_ON:
        sheet.seams.append(Seam("band to front", inputs.seam))
    sheet.supplies.append(
        Supply("light firm cloth to lay between, for each band", None,
               sentence("{wide} wide and {long} long", wide=sheet["band_width"],
                        long=sheet["opening"]))
    )  # fmt: skip
    sheet.supplies.append(Supply("fine thread to match"))
    sheet.cautions.extend((BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON))


TECHNIQUE = FrontBand
