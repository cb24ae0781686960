"""A ruffle of two strips whose band is the turned-up edge of its wider facing.

Front and facing are sewn together along one edge and folded so that their raw edges meet. The
facing is cut twice the band wider than the front, so it comes round the fold and shows on the
right side as a band; the seam allowance, pressed into the band, fills it.
"""

from __future__ import annotations

from dataclasses import replace
from typing import ClassVar

from handout_engine.banded_pictures import add_banded_pictures
from handout_engine.cloth import note_cloth
from handout_engine.edge_seams import EdgeSeamInputs, add_edge_seam_steps, note_edge_line
from handout_engine.gathering import (
    GatherInputs,
    note_gathered_length,
    note_gathered_strips,
    note_rows,
    strip_piece,
)
from handout_engine.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.inputs import (
    CLOTH,
    SEWING,
    choice,
    length,
    optional_length,
    ratio,
)
from handout_engine.lengths import ZERO, Length, inches
from handout_engine.refusals import RefusalError
from handout_engine.saying import Saying, Tape
from handout_engine.sources import GIVEN, PRACTICE
from handout_engine.technique import Technique
from handout_engine.values import Value
from handout_engine.workings import Mark, Seam
from handout_engine.worksheet import Worksheet

INTO_BAND, AWAY = "into the band", "away from the band"
CONTRAST, SAME = "contrast", "same"
WIDEST_FILLED = inches("1/2")
USUAL_ALLOWANCE = inches("1/4")
USUAL_SHOWS = inches("3/2")


class BandedRuffle(EdgeSeamInputs, GatherInputs, Technique):
    """A gathered ruffle with a self-made band along its lower edge."""

    title: ClassVar[str] = "Banded ruffle"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = (
        "Two strips sewn together and folded; the wider facing turns up as a band along the edge."
    )

    shows = optional_length(
        "front that shows",
        "Depth of the front between the edge seam and the band.",
        "1 1/2 in, unless the cut width of the front is given",
        ("1/8 in", "40 in"),
        in_use="front_shows",
    )
    front = optional_length(
        "front strip, cut",
        "Its cut width, instead of how much shows.",
        "worked out from the front that shows",
        ("1/4 in", "44 in"),
        in_use="front_cut_width",
    )
    band = length("band", "Finished width of the band.", "1/4 in", ("1/16 in", "6 in"))
    fullness = ratio(
        "fullness",
        "Length of the strip before gathering, for each length of edge; two layers gather "
        "together, so less than for a single one.",
        "1.5",
        ("1", "6"),
        basis=PRACTICE,
    )
    seam_allowance = optional_length(
        "seam allowance",
        "Allowance of the seam between front and facing.",
        "as wide as the band up to 1/2 in, so that it fills it; 1/4 in for a wider band",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="band_seam",
    )
    press = choice(
        "press allowance",
        "Where the allowance of that seam is pressed.",
        INTO_BAND,
        AWAY,
        group=SEWING,
    )
    turn_of_cloth = length(
        "turn of cloth",
        "Extra on the facing where thick cloth turns.",
        "0 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing_cloth = choice(
        "facing cloth",
        "A contrasting cloth, or the same as the front.",
        CONTRAST,
        SAME,
        group=CLOTH,
    )
    facing_cloth_width = optional_length(
        "facing cloth width",
        "Width of a contrasting cloth as sold.",
        "the same as the cloth width",
        ("4 in", "120 in"),
        group=CLOTH,
    )

    def whole(self) -> Worksheet:
        """Both strips, cloth, marks and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        seam = _note_seam(sheet, self)
        _note_widths(sheet, self, seam)
        note_gathered_length(sheet)
        _note_cloth(sheet, self)
        line = note_edge_line(sheet)
        rows = note_rows(sheet, line, line, self.rows_apart)
        sheet.seams.append(Seam("front to facing", seam.length))
        sheet.seams.append(Seam("ruffle to edge", self.edge_allowance))
        add_gathering_supplies(sheet)
        add_sample(sheet, sheet["finished_depth"], "two layers of strip")
        _add_steps(sheet, self)
        add_banded_pictures(sheet, rows, into_band=self.press == INTO_BAND)
        return sheet


def _note_seam(sheet: Worksheet, ruffle: BandedRuffle) -> Value:
    """Note the seam allowance; refuse one that cannot lie in the band it is pressed into."""
    usual = ruffle.band if ruffle.band <= WIDEST_FILLED else USUAL_ALLOWANCE
    seam = usual if ruffle.seam_allowance is None else ruffle.seam_allowance
    if ruffle.press == INTO_BAND and seam > ruffle.band:
        tape = Tape(finest=32)
        band, most = tape.say(ruffle.band), tape.say(ruffle.band, Saying.DOWN)
        raise RefusalError(
            f"seam_allowance {tape.say(seam)} is wider than band {band}; it cannot lie flat "
            f"inside it (use at most {most}, trim it to {most} after sewing and write that, or "
            f'press it away: press: "{AWAY}")',
            "seam_allowance",
        )
    basis = PRACTICE if ruffle.seam_allowance is None else GIVEN
    return sheet.note("band_seam", "allowance between front and facing", seam, "", basis=basis)


def _note_widths(sheet: Worksheet, ruffle: BandedRuffle, seam: Value) -> None:
    if ruffle.front is not None and ruffle.shows is not None:
        raise RefusalError("front and shows say the same thing twice; write one of them", "front")
    if ruffle.front is None:
        shows = USUAL_SHOWS if ruffle.shows is None else ruffle.shows
        basis = PRACTICE if ruffle.shows is None else GIVEN
        sheet.note("front_shows", "front that shows", shows, "", basis=basis)
        sheet.note("front_cut_width", "front strip, cut width",
                   shows + seam.length + ruffle.edge_allowance,
                   "{front_shows} + {band_seam} + {edge_allowance}")  # fmt: skip
    else:
        sheet.note("front_cut_width", "front strip, cut width", ruffle.front, "", basis=GIVEN)
        sheet.note("front_shows", "front that shows", _shown(ruffle, seam.length),
                   "{front_cut_width} - {band_seam} - {edge_allowance}")  # fmt: skip
    front = sheet["front_cut_width"].length
    sheet.note("facing_cut_width", "facing strip, cut width",
               front + 2 * ruffle.band + ruffle.turn_of_cloth,
               "{front_cut_width} + 2 × {band} + {turn_of_cloth}")  # fmt: skip
    sheet.note("finished_depth", "ruffle from raw edge to fold", front - seam.length + ruffle.band,
               "{front_cut_width} - {band_seam} + {band}")  # fmt: skip
    sheet.note("hangs", "ruffle below the edge seam", sheet["front_shows"].length + ruffle.band,
               "{front_shows} + {band}")  # fmt: skip
    sheet.note("opened_width", "both strips sewn and opened flat",
               2 * (front - seam.length + ruffle.band) + ruffle.turn_of_cloth,
               "{front_cut_width} + {facing_cut_width} - 2 × {band_seam}")  # fmt: skip


def _shown(ruffle: BandedRuffle, seam: Length) -> Length:
    assert ruffle.front is not None
    shown = ruffle.front - seam - ruffle.edge_allowance
    if shown <= ZERO:
        least = Tape(finest=32).both(seam + ruffle.edge_allowance)
        raise RefusalError(
            f"front {Tape(finest=32).say(ruffle.front)} leaves nothing to show; its two seams "
            f"take {least}, so cut it wider than that",
            "front",
        )
    return shown


def _note_cloth(sheet: Worksheet, ruffle: BandedRuffle) -> None:
    """Note the strips of both cloths and what to buy of each."""
    cloth = ruffle.cloth()
    contrast = ruffle.facing_cloth == CONTRAST
    note_gathered_strips(sheet, cloth, "front_")
    if contrast and ruffle.facing_cloth_width is not None:
        facing = replace(cloth, width=ruffle.facing_cloth_width)
        note_gathered_strips(sheet, facing, "facing_", "facing_cloth_width")
    else:
        facing = cloth
        note_gathered_strips(sheet, facing, "facing_")
    _add_pieces(sheet, ruffle)
    if contrast:
        note_cloth(sheet, "front cloth", cloth, "front_")
        note_cloth(sheet, "facing cloth", facing, "facing_")
    else:
        note_cloth(sheet, "cloth", cloth)


def _add_pieces(sheet: Worksheet, ruffle: BandedRuffle) -> None:
    seam_on_front = sheet.note(
        "front_seam_line", "band seam on the front, from its top raw edge",
        sheet["front_cut_width"].length - sheet["band_seam"].length,
        "{front_cut_width} - {band_seam}",
    )  # fmt: skip
    fold = sheet.note(
        "fold_line", "fold on the facing, from its seamed raw edge",
        sheet["band_seam"].length + ruffle.band,
        "{band_seam} + {band}",
    )  # fmt: skip
    front_cloth, facing_cloth = (
        ("front cloth", "facing cloth") if ruffle.facing_cloth == CONTRAST else ("cloth", "cloth")
    )
    sheet.pieces.append(
        strip_piece(sheet, "front strip", front_cloth, "front_",
                    (Mark(seam_on_front.label, seam_on_front.length),))
    )  # fmt: skip
    sheet.pieces.append(
        strip_piece(
            sheet, "facing strip", facing_cloth, "facing_", (Mark(fold.label, fold.length),)
        )
    )


def _add_steps(sheet: Worksheet, ruffle: BandedRuffle) -> None:
    add_washing_step(sheet)
    sheet.step(
        "Cut the front strips {front_cut_width} wide and {front_strip_length} long, and the facing "
        "strips {facing_cut_width} wide and {facing_strip_length} long, across the cloth."
    )
    for prefix, what in (("front_", "front"), ("facing_", "facing")):
        add_joining_steps(sheet, prefix, what)
    sheet.step(
        "Sew front and facing right sides together along one long edge with {band_seam} allowance.",
        "opened flat, it is {opened_width} from raw edge to raw edge; if it is more, the seam was "
        "narrower than {band_seam}.",
    )
    if ruffle.press == INTO_BAND:
        sheet.step("Press both allowances toward the facing, so that they will lie in the band.")
    else:
        sheet.step("Press both allowances toward the front, away from the band.")
    sheet.step(
        "Fold wrong sides together so that the long raw edges meet: the facing comes round the "
        "fold "
        "and shows as a band. Press and baste the raw edges.",
        "from raw edges to fold it is {finished_depth}; if it is less, the seam was deeper than "
        "{band_seam}. The band is {band} deep all along.",
    )
    add_gathering_steps(sheet, "both layers")
    add_edge_seam_steps(
        sheet,
        "below the seam the front shows {front_shows} and the band {band}, {hangs} in all.",
    )


TECHNIQUE = BandedRuffle
