"""The pictures that techniques with bias strips share."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.bias_cloth import StripsOnCloth
from handout_engine.drawing.scene import Scene
from handout_engine.families.bias.bias_drawing import OnCloth, bias_strips_flat, strips_on_cloth
from handout_engine.shared.strips_drawing import FlatStrip, Rule, flat_strips
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def cloth_picture(sheet: Worksheet, strips: StripsOnCloth) -> Picture:
    """The piece of cloth with its strips."""
    step = sheet["edge_step"]
    scene = strips_on_cloth(
        sheet["across"],
        sheet["along"],
        step,
        [OnCloth(band.number, band.outline) for band in strips.every],
        {band.number for band in strips.used},
    )
    spare = len(strips.every) > len(strips.used)
    words = "The strips on the cloth, ruled at 45 degrees in steps of {step} along its edges"
    caption = words + ("; thin lines are spare strips." if spare else ".")
    return Picture("cloth", sentence(caption, step=step), scene)


def flat_picture(
    title: str, width: Value, length: Value, rules: Sequence[Rule], bias: bool = True
) -> Picture:
    """A strip laid flat with its lines; their distances count from its upper edge."""
    strip = FlatStrip(sentence(title), width, length, rules)
    shapes = (bias_strips_flat if bias else flat_strips)([strip], width.mm)
    scene = Scene(
        sentence("The strip laid flat"),
        sentence("A strip {width} wide and {length} long.", width=width, length=length),
        shapes,
        tallest=150,
    )
    caption = "The strip with its lines; distances are measured from its upper edge in the drawing."
    return Picture("strip", sentence(caption), scene)
