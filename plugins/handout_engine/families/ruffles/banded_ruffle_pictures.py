"""The pictures of a banded ruffle: its strips, and its cross-section before and after the fold."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Line, Tone
from handout_engine.families.ruffles.banded_ruffle_drawing import (
    BandSection,
    after_the_fold,
    before_the_fold,
)
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import (
    finished_picture,
    quarters_picture,
    row_rules,
    strips_picture,
)
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def add_banded_pictures(sheet: Worksheet, fullness: Fraction, *, into_band: bool) -> None:
    """Draw the finished ruffle, its strips, its cross-section twice, and its quarters."""
    hangs, band = sheet["hangs"], sheet["band"]
    front = FlatStrip(
        sentence("front strip"),
        sheet["front_cut_width"],
        sheet["front_strip_length"],
        [*row_rules(sheet), Rule(Line.STITCH, sheet["front_seam_line"])],
    )
    facing = FlatStrip(
        sentence("facing strip"),
        sheet["facing_cut_width"],
        sheet["facing_strip_length"],
        [Rule(Line.STITCH, sheet["band_seam"]), Rule(Line.FOLD, sheet["fold_line"])],
        Tone.SECOND,
    )
    section = BandSection(
        sheet["front_cut_width"],
        sheet["facing_cut_width"],
        sheet["band_seam"],
        band,
        sheet["finished_depth"],
        into_band,
    )
    caption = (
        "One strip of each, with the lines to mark; on the facing they are measured from the edge "
        "that is seamed."
    )
    before = sentence("Cut through, before the fold.")
    after = sentence("Cut through, after the fold; the thickness is enlarged.")
    sheet.pictures.extend(
        (
            finished_picture(sheet, [GatheredLayer(hangs, fullness, band=band)]),
            strips_picture([front, facing], caption),
            Picture("before-fold", before, before_the_fold(section)),
            Picture("after-fold", after, after_the_fold(section)),
            quarters_picture(sheet),
        )
    )
