"""Two or more ruffles of different depths, gathered together into one edge."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from handout_engine.amounts.inputs import CLOTH, choice, lengths
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line
from handout_engine.families.ruffles.edge_seams import (
    EdgeSeamInputs,
    add_edge_seam_steps,
    note_edge_line,
)
from handout_engine.shared.gathering import (
    GatherInputs,
    note_gathered_length,
    note_gathered_strips,
    note_rows,
    strip_piece,
)
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import (
    finished_picture,
    quarters_picture,
    strips_picture,
)
from handout_engine.shared.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.shared.hems import HemInputs, hem_step, note_hem
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import NOTHING_UNDER_THE_HARNESS
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Mark, Seam
from handout_engine.working.worksheet import Worksheet

ONE_CLOTH, OWN_CLOTHS = "one for all", "one for each layer"
MOST_LAYERS = 6


class LayeredRuffle(HemInputs, EdgeSeamInputs, GatherInputs, Technique):
    """Ruffles of several depths in one seam, the shortest on top."""

    title: ClassVar[str] = "Layered ruffle"
    family: ClassVar[str] = "ruffles"
    summary: ClassVar[str] = "Ruffles of two or more depths gathered as one into the same edge."

    depths = lengths(
        "finished depths",
        "Depth of each layer below the seam, from the top layer down.",
        "1 1/2 in; 2 1/2 in",
        ("1/4 in", "40 in"),
        MOST_LAYERS,
    )
    cloths = choice(
        "cloths", "One cloth for all layers, or one for each.", ONE_CLOTH, OWN_CLOTHS, group=CLOTH
    )

    def whole(self) -> Worksheet:
        """Each layer's strips, the cloth, and one set of steps; raises RefusalError."""
        if len(self.depths) < 2:
            raise RefusalError(
                "one depth makes a single ruffle; write two or more, or use gathered-ruffle",
                "depths",
            )
        sheet = Worksheet(technique=self)
        note_gathered_length(sheet)
        line = note_edge_line(sheet)
        rows = note_rows(sheet, line, line, self.rows_apart)
        if not self.folded:
            note_hem(sheet, self, _shallowest(self))
        layers = [_note_layer(sheet, self, number) for number in range(1, len(self.depths) + 1)]
        _note_cloth(sheet, self, layers, rows)
        sheet.seams.append(Seam("all layers to edge", self.edge_allowance))
        add_gathering_supplies(sheet)
        sheet.cautions.append(NOTHING_UNDER_THE_HARNESS)
        widest = max(
            (sheet[f"{layer.prefix}cut_width"] for layer in layers), key=lambda v: v.length
        )
        add_sample(sheet, widest, f"{len(layers)} layers of strip")
        _add_steps(sheet, self, layers)
        _draw(sheet, self, layers, rows)
        return sheet


def _shallowest(ruffle: LayeredRuffle) -> Value:
    return Value("depths", "the shallowest layer", min(ruffle.depths), GIVEN)


@dataclass(frozen=True)
class _Layer:
    """One layer: the prefix of its values, its words, its depth."""

    prefix: str
    name: str
    depth: Value


def _note_layer(sheet: Worksheet, ruffle: LayeredRuffle, number: int) -> _Layer:
    prefix, name = f"layer_{number}_", f"layer {number}"
    depth = sheet.note(
        f"{prefix}depth", f"{name}, finished depth", ruffle.depths[number - 1], "", basis=GIVEN
    )
    if ruffle.folded:
        sheet.note(f"{prefix}cut_width", f"{name} strip, cut width",
                   2 * (depth.length + ruffle.edge_allowance),
                   "2 × ({depth} + {edge_allowance})", depth=depth)  # fmt: skip
        return _Layer(prefix, name, depth)
    sheet.note(f"{prefix}cut_width", f"{name} strip, cut width",
               depth.length + ruffle.edge_allowance + sheet["hem_allowance"].length,
               "{depth} + {edge_allowance} + {hem_allowance}", depth=depth)  # fmt: skip
    return _Layer(prefix, name, depth)


def _note_cloth(
    sheet: Worksheet, ruffle: LayeredRuffle, layers: Sequence[_Layer], rows: tuple[Value, Value]
) -> None:
    """Note each layer's strips and what to buy, of one cloth or of one a layer."""
    cloth = ruffle.cloth()
    own = ruffle.cloths == OWN_CLOTHS
    marks = tuple(Mark(row.label, row.length) for row in rows)
    for layer in layers:
        note_gathered_strips(sheet, cloth, layer.prefix)
        name = f"{layer.name} cloth" if own else "ruffle cloth"
        sheet.pieces.append(strip_piece(sheet, f"{layer.name} strip", name, layer.prefix, marks))
        if own:
            note_cloth(sheet, name, cloth, layer.prefix)
    if not own:
        note_cloth(sheet, "ruffle cloth", cloth)


def _add_steps(sheet: Worksheet, ruffle: LayeredRuffle, layers: Sequence[_Layer]) -> None:
    add_washing_step(sheet)
    for layer in layers:
        sheet.step(
            f"For {layer.name}, cut the strips {{width}} wide and {{length}} long, "
            "across the cloth.",
            width=sheet[f"{layer.prefix}cut_width"],
            length=sheet[f"{layer.prefix}strip_length"],
        )
    for layer in layers:
        add_joining_steps(sheet, layer.prefix, layer.name)
    prepared = {f"depth{n}": layer.depth.length + ruffle.edge_allowance
                for n, layer in enumerate(layers)}  # fmt: skip
    measured = " and ".join(f"{{{name}}}" for name in prepared)
    sheet.step(
        "Prepare each layer by itself. " + hem_step(ruffle.hem),
        f"from raw edge to finished edge the layers are {measured} deep.",
        **prepared,
    )
    sheet.step(
        "Lay the layers on each other, all right sides up, the shortest on top, raw edges and ends "
        "level, and baste them together along the raw edge."
    )
    add_gathering_steps(sheet, "all layers")
    hanging: dict[str, Any] = {f"depth{n}": layer.depth for n, layer in enumerate(layers)}
    add_edge_seam_steps(
        sheet,
        f"below the seam the layers hang {measured}.",
        "; grade the allowances",
        **hanging,
    )


def _draw(
    sheet: Worksheet, ruffle: LayeredRuffle, layers: Sequence[_Layer], rows: tuple[Value, Value]
) -> None:
    rules = [Rule(Line.GATHER, row) for row in rows]
    strips = [
        FlatStrip(
            sentence(layer.name),
            sheet[f"{layer.prefix}cut_width"],
            sheet[f"{layer.prefix}strip_length"],
            rules,
        )
        for layer in layers
    ]
    hung = [GatheredLayer(layer.depth, ruffle.fullness.number) for layer in layers]
    sheet.pictures.extend(
        (
            finished_picture(sheet, hung),
            strips_picture(strips, "One strip of each layer, with the gathering rows."),
            quarters_picture(sheet),
        )
    )


TECHNIQUE = LayeredRuffle
