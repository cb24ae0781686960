"""The pictures of a front band."""

from __future__ import annotations

from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Line, Tone
from handout_engine.families.closures.front_band_drawing import (
    FrontBand,
    band_section,
    cut_on_edge,
    lapped_fronts,
)
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def add_pictures(sheet: Worksheet, two: bool, cut_on: bool) -> None:
    """The lapped fronts, the strips or the cut edge with their lines, and the band cut through."""
    drawn = FrontBand(
        opening=sheet["opening"],
        width=sheet["band_width"],
        beyond=sheet["beyond_centre"],
        button=sheet["button"],
        seam=sheet["facing_turn" if cut_on else "seam"],
        edge=sheet["edge"] if two else None,
        joining=sheet.values.get("joining"),
        facing=sheet.values.get("facing_used"),
    )
    sheet.pictures.append(
        Picture("finished", sentence("Both fronts lapped, seen from the right side; the dash-dot "
                                     "line is the centre line of both."),
                lapped_fronts(drawn), finished=True)
    )  # fmt: skip
    if cut_on:
        lines = (sheet["facing_turn"], sheet["fold_line"], sheet["cut_beyond"])
        sheet.pictures.append(
            Picture("lines", sentence("The edge of the front before it is folded, turned a "
                                      "quarter: distances count from the cut edge."),
                    cut_on_edge(drawn, lines))
        )  # fmt: skip
    else:
        sheet.pictures.append(strips_picture(_flat(sheet, two), "The strips with their lines."))
    sheet.pictures.append(
        Picture("section", sentence("The band cut through, front edge at the right; its cloth is "
                                    "drawn thick."),
                band_section(drawn))
    )  # fmt: skip


def _flat(sheet: Worksheet, two: bool) -> list[FlatStrip]:
    long = sheet["band_length"]
    seam = Rule(Line.STITCH, sheet["seam"])
    fold = Rule(Line.FOLD, sheet["fold_line"])
    if not two:
        turned = Rule(Line.FOLD, sheet["turned_edge"])
        return [FlatStrip(sentence("band strip"), sheet["strip_width"], long, (seam, fold, turned),
                          grain_across=False)]  # fmt: skip
    joined = Rule(Line.STITCH, sheet["joined_line"])
    return [
        FlatStrip(sentence("outer strip"), sheet["outer_width"], long, (seam, joined),
                  grain_across=False),
        FlatStrip(sentence("facing strip"), sheet["facing_width"], long,
                  (Rule(Line.STITCH, sheet["joining"]), fold), Tone.SECOND, grain_across=False),
    ]  # fmt: skip
