"""The pictures of a built-up band."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.saying import Amount
from handout_engine.amounts.values import Sentence, Value, sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.insertion_band_drawing import (
    BandStrip,
    cut_strips,
    finished_band,
    measured_band,
)
from handout_engine.families.lace.insertion_band_measures import Strip
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def band_pictures(sheet: Worksheet, strips: Sequence[Strip]) -> tuple[Picture, ...]:
    """The finished band, the width that each strip shows, and the strips as they are cut."""
    total, length = sheet["finished_width"], sheet["run"].mm
    drawn = [_drawn(sheet, strip) for strip in strips]
    finished = Scene(
        sentence("The finished band"),
        _description(strips, total),
        finished_band(drawn, total, length),
    )
    measured = Scene(
        sentence("What shows of each strip"),
        _description(strips, total),
        measured_band(drawn, total, length),
    )
    apart = Scene(
        sentence("The strips as they are cut"),
        sentence("The strips in order, each with its cut width; seam lines dashed."),
        cut_strips(drawn),
        tallest=1200.0,
    )
    return (
        Picture("finished", sentence("A piece of the finished band, to scale in width; meshes and "
                                     "holes are only signs."), finished, True),
        Picture("widths", sentence("What shows of each strip, and the whole band."), measured),
        Picture("strips", sentence("The strips as they are cut, from top to bottom; the plain "
                                   "borders are what the joins take, up to the dashed seam lines."),
                apart),
    )  # fmt: skip


def _drawn(sheet: Worksheet, strip: Strip) -> BandStrip:
    above = sheet[strip.above].mm if strip.above else 0.0
    below = sheet[strip.below].mm if strip.below else 0.0
    title = sentence(strip.name)
    return BandStrip(strip.kind, strip.name, strip.visible, strip.cut, above, below, title)


def _description(strips: Sequence[Strip], total: Value) -> Sentence:
    parts: dict[str, Amount | Value] = {f"width{s.number}": s.visible for s in strips}
    words = ", ".join(f"{strip.kind} {{width{strip.number}}}" for strip in strips)
    return sentence(f"From top to bottom: {words}; {{total}} in all.", **parts, total=total)
