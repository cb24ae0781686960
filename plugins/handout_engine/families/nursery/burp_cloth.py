"""A burp cloth: a washable pad under a trim cloth whose pleat is stitched down as a band.

The band is a tuck as deep as the band is wide. It takes twice its depth of the trim cloth, its seam
stands one band from the finished end, and its fold comes back to that end.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothInputs, note_cloth
from handout_engine.families.nursery.burp_cloth_drawing import BurpCloth as Drawn
from handout_engine.families.nursery.burp_cloth_drawing import (
    band_section,
    finished_scene,
    flat_scene,
)
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import NOTHING_LOOSE_IN_THE_COT, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Grain, Mark, Picture, Piece, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

CUT, READY = "cut to size", "ready made"
TRIM, PAD = "trim cloth", "pad cloth"


class BurpCloth(ClothInputs, Technique):
    """A pad with a trim cloth that has a stitched-down pleat at one end or both."""

    title: ClassVar[str] = "Burp cloth with a pleat band"
    family: ClassVar[str] = "nursery"
    summary: ClassVar[str] = (
        "A soft pad with a trim cloth on top, a pleat stitched down at its end as a band."
    )

    pad = choice(
        "pad",
        "Cut from towelling or flannel and turned inside out with the trim cloth, or a folded "
        "nappy or towel that is ready made.",
        CUT,
        READY,
    )
    pad_width = length(
        "pad width", "Finished width of the pad.", "13 1/2 in", ("4 in", "40 in"), basis=PRACTICE
    )
    pad_length = length(
        "pad length",
        "Finished length of the pad, from end to end.",
        "19 1/2 in",
        ("6 in", "60 in"),
        basis=PRACTICE,
    )
    band = length(
        "band",
        "Finished width of the pleat that is stitched down.",
        "2 in",
        ("1/2 in", "8 in"),
        basis=PRACTICE,
    )
    bands = count("bands", "One at one end, or two, one at each end.", 1, 2)
    make = count("how many", "How many cloths are made.", 3, 24)
    seam_allowance = length(
        "seam allowance",
        "Allowance round the pad; on a ready-made pad it is turned under.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    edge_stitch = length(
        "edge stitching",
        "From the finished edge and from the fold.",
        "1/8 in",
        ("1/16 in", "3/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Trim cloth, lines, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _check(self)
        _note_trim(sheet, self)
        _note_lines(sheet)
        _add_pieces(sheet, self)
        sheet.seams.append(Seam("round the pad", self.seam_allowance))
        _add_supplies(sheet, self)
        _add_sample(sheet)
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet


def _check(cloth: BurpCloth) -> None:
    if cloth.band * cloth.bands > cloth.pad_length:
        tape = Tape(finest=32)
        which = "the two bands" if cloth.bands > 1 else "the band"
        raise RefusalError(
            f"{which} would cover more than the pad, {tape.both(cloth.pad_length)} long; use a "
            f"band of at most {tape.no_more(cloth.pad_length / cloth.bands)}, or a longer pad",
            "band",
        )


def _note_trim(sheet: Worksheet, cloth: BurpCloth) -> None:
    """Note the trim cloth: as the pad, and twice the band longer for each band."""
    around = 2 * cloth.seam_allowance
    extra = sheet.note("extra_for_a_band", "extra cloth for each band", 2 * cloth.band,
                       "2 × {band}")  # fmt: skip
    sheet.note("trim_width", "trim cloth, cut width", cloth.pad_width + around,
               "{pad_width} + 2 × {seam_allowance}", saying=Saying.UP)  # fmt: skip
    sheet.note("trim_length", "trim cloth, cut length",
               cloth.pad_length + around + extra.length * cloth.bands,
               "{pad_length} + 2 × {seam_allowance} + {bands} × {extra_for_a_band}",
               saying=Saying.UP)  # fmt: skip
    sheet.note("plain_length", "trim cloth that shows beside the bands",
               cloth.pad_length - cloth.band * cloth.bands,
               "{pad_length} - {bands} × {band}")  # fmt: skip


def _note_lines(sheet: Worksheet) -> None:
    """Note the three lines of a pleat, each from the raw edge at its end."""
    band = sheet["band"].length
    seam = sheet.note("pleat_seam", "pleat, first line of its seam",
                      sheet["seam_allowance"].length + band,
                      "{seam_allowance} + {band}")  # fmt: skip
    fold = sheet.note("pleat_fold", "pleat, its fold", seam.length + band,
                      "{pleat_seam} + {band}")  # fmt: skip
    sheet.note("pleat_back", "pleat, second line of its seam", fold.length + band,
               "{pleat_fold} + {band}")  # fmt: skip
    lines = tuple(sheet[name] for name in ("pleat_seam", "pleat_fold", "pleat_back"))
    sheet.charts.append(
        Chart(
            "Lines on the trim cloth, from the raw edge at a banded end",
            ("Line", "From the raw edge"),
            tuple((line.label, line) for line in lines),
        )
    )


def _add_pieces(sheet: Worksheet, cloth: BurpCloth) -> None:
    names = ("pleat_seam", "pleat_fold", "pleat_back")
    marks = tuple(Mark(sheet[name].label, sheet[name].length) for name in names)
    sheet.pieces.append(
        Piece("trim", TRIM, cloth.make.number, sheet["trim_width"], sheet["trim_length"],
              Grain.STRAIGHT, marks)
    )  # fmt: skip
    note_cloth(sheet, TRIM, cloth.cloth())
    if cloth.pad == READY:
        return
    long = sheet.note("pad_cut_length", "pad, cut length",
                      cloth.pad_length + 2 * cloth.seam_allowance,
                      "{pad_length} + 2 × {seam_allowance}", saying=Saying.UP)  # fmt: skip
    wide = sheet.note("pad_cut_width", "pad, cut width", sheet["trim_width"].length,
                      "{trim_width}", saying=Saying.UP)  # fmt: skip
    sheet.pieces.append(Piece("pad", PAD, cloth.make.number, wide, long, Grain.STRAIGHT))
    note_cloth(sheet, PAD, cloth.cloth(), "pad_")


def _add_supplies(sheet: Worksheet, cloth: BurpCloth) -> None:
    if cloth.pad == READY:
        sheet.supplies.append(
            Supply("ready-made pad, washed once", None,
                   sentence("{make} of {width} by {length}", make=cloth.make,
                            width=sheet["pad_width"], length=sheet["pad_length"]))
        )  # fmt: skip
    sheet.have("fine thread to match", "a needle for the thickness of the pad")
    sheet.have("a removable marker tried on a scrap", "a ruler", "pins or clips")
    sheet.cautions.extend((PINS_AND_IRON, NOTHING_LOOSE_IN_THE_COT))


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Wash and dry a scrap of trim cloth and one of the pad, each {square} square "
                "before, and measure both again.",
                square=inches(8),
            ),
            sentence(
                "they have shrunk alike. If not, wash both cloths before cutting, and again if the "
                "pad goes on shrinking: otherwise the trim will pucker on it for good.",
            ),
        )
    )


def _add_steps(sheet: Worksheet, cloth: BurpCloth) -> None:
    ends = "one end" if cloth.bands == 1 else "both ends"
    add_washing_step(sheet)
    sheet.step("For each cloth cut the trim {trim_width} wide and {trim_length} long"
               + (", and the pad {pad_cut_width} wide and {pad_cut_length} long."
                  if cloth.pad == CUT else "."))  # fmt: skip
    sheet.step(
        f"Rule the three lines across the trim at {ends}: {{pleat_seam}}, {{pleat_fold}} and "
        "{pleat_back} from the raw edge."
    )
    sheet.step(
        "Fold the trim wrong sides together on the middle line, so that the outer two meet, and "
        "stitch on them, {band} from the fold.",
        "the trim is {shorter} long now.",
        shorter=sheet["trim_length"].length - 2 * cloth.band * cloth.bands,
    )
    sheet.step(
        "Press the pleat toward the end of the cloth, and baste its two sides.",
        "its fold lies {seam_allowance} short of the raw edge, just where the end seam will run.",
    )
    if cloth.pad == CUT:
        _add_bagging(sheet)
    else:
        sheet.step(
            "Press {seam_allowance} to the wrong side along all four edges of the trim, at the end "
            "behind the fold, and lay it on the pad, edge on edge. Pin from the middle outward.",
            "it covers the pad to its edges, {pad_width} by {pad_length}, and lies flat.",
        )
    sheet.step(
        "Stitch round, {edge_stitch} from the edge: at a banded end this stitches the fold of the "
        "pleat down through all layers.",
        "the band is {band} wide from its seam to its fold, at both sides, and {plain_length} of "
        "the trim shows beside it.",
    )


def _add_bagging(sheet: Worksheet) -> None:
    sheet.step(
        "Lay trim and pad right sides together and sew round, {seam_allowance} from the edges: the "
        "sides of the pleat are caught, its fold is not, a needle's breadth inside the seam. Leave "
        "a hand's width open in one long side, away from the pleat."
    )
    sheet.step(
        "Clip the corners, turn right side out, press, and turn the opening in.",
        "it measures {pad_width} by {pad_length}.",
    )


def _draw(sheet: Worksheet, cloth: BurpCloth) -> None:
    drawn = Drawn(
        {name: sheet[name] for name in ("pad_width", "pad_length", "band", "seam_allowance",
                                        "edge_stitch", "trim_width", "trim_length", "pleat_seam",
                                        "pleat_fold", "pleat_back")},
        cloth.bands.number,
    )  # fmt: skip
    flat = sentence("The trim cloth laid flat, the lines of the pleat measured from its end.")
    section = sentence("The banded end cut through, thickness enlarged: the pleat's seam at the "
                       "left, its fold stitched down at the right.")  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The finished cloth, its band at the right." if (
                cloth.bands == 1) else "The finished cloth, a band at each end."),
                    finished_scene(drawn), finished=True),
            Picture("trim", flat, flat_scene(drawn)),
            Picture("section", section, band_section(drawn)),
        )
    )  # fmt: skip


TECHNIQUE = BurpCloth
