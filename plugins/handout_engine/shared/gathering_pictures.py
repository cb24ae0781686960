"""The pictures that all gathered ruffles share."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from handout_engine.amounts.values import Value, sentence
from handout_engine.drawing.scene import Line, Scene
from handout_engine.shared.gathering_drawing import UPPER_EDGE, GatheredLayer, hanging, quarters
from handout_engine.shared.hems import DOUBLE, SINGLE
from handout_engine.shared.strips_drawing import FlatStrip, Rule, flat_strips
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet

TALLEST_STRIP = 140.0
"""How tall a strip laid flat and the gap below it may be drawn, on a page 360 wide."""


def finished_picture(sheet: Worksheet, layers: Sequence[GatheredLayer]) -> Picture:
    """The finished ruffle hanging from its edge."""
    title = sheet.technique.title
    deepest = max((layer.depth for layer in layers), key=lambda depth: depth.mm)
    scene = Scene(
        sentence(f"{title}, finished"),
        sentence(
            "It hangs {depth} deep from an edge of {edge}.", depth=deepest, edge=sheet["edge"]
        ),
        hanging(sheet["edge"], [_with_hem(sheet, layer) for layer in layers]),
    )
    return Picture("finished", sentence("The finished ruffle."), scene, True)


def _with_hem(sheet: Worksheet, layer: GatheredLayer) -> GatheredLayer:
    """The layer with its row of hem stitching, where its hem is stitched."""
    hem = sheet.technique.find("hem_turn")
    stitched = hem is not None and sheet["hem"].amount in (DOUBLE, SINGLE)
    return replace(layer, hem=hem) if stitched else layer


def quarters_picture(sheet: Worksheet, lines: Sequence[float] = (UPPER_EDGE,)) -> Picture:
    """Edge and strip at their true ratio.

    `lines` are the places where the strip is gathered, as shares of its width from its upper edge.
    """
    edge, strip = sheet["edge"], sheet["ruffle_length"]
    scene = Scene(
        sentence("Edge and strip"),
        sentence("A strip of {strip} is drawn up to an edge of {edge}.", strip=strip, edge=edge),
        quarters(edge, strip, lines),
    )
    caption = sentence(
        "Above the edge, below it the joined strip with its gathering rows, at their true ratio; "
        "quarter mark meets quarter mark."
    )
    return Picture("quarters", caption, scene)


def row_rules(sheet: Worksheet) -> list[Rule]:
    """The two gathering rows as they are ruled on a strip."""
    return [Rule(Line.GATHER, sheet[row]) for row in ("first_row", "second_row")]


def strip_picture(sheet: Worksheet, name: str, rules: Sequence[Rule], caption: str) -> Picture:
    """The one kind of strip that a ruffle is cut in, with the lines to mark."""
    strip = FlatStrip(sentence(name), sheet["cut_width"], sheet["strip_length"], rules)
    return strips_picture([strip], caption)


def strips_picture(strips: Sequence[FlatStrip], caption: str) -> Picture:
    """Strips laid flat with the lines to mark."""
    parts: dict[str, Value] = {}
    words = []
    for number, strip in enumerate(strips):
        parts |= {f"width{number}": strip.width, f"length{number}": strip.length}
        words.append(f"{strip.title.template}: {{width{number}}} wide, {{length{number}}} long")
    gap = 1.1 * max(strip.width.mm for strip in strips)
    scene = Scene(
        sentence("Strips laid flat"),
        sentence("; ".join(words) + ".", **parts),
        flat_strips(strips, gap),
        tallest=TALLEST_STRIP * len(strips),
    )
    return Picture("strips", sentence(caption), scene)
