"""The pictures of single and double bindings."""

from __future__ import annotations

from handout_engine.amounts.values import Value
from handout_engine.cloth.bias_cloth import StripsOnCloth
from handout_engine.drawing.scene import Line
from handout_engine.families.bias.bias_pictures import cloth_picture, flat_picture
from handout_engine.families.bias.binding import BIAS, BindingInputs
from handout_engine.shared.binding_drawing import BoundEdge, bound_edge, brought_round, sewn_on
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.worksheet import Worksheet


def draw_binding(
    sheet: Worksheet, binding: BindingInputs, last_fold: Value, turn: Value | None = None
) -> None:
    """The finished edge, the strip with its lines, both sections, and the strips on the cloth.

    `turn` is what a single binding turns under; a double one has none.
    """
    corner = bool(binding.corners_mitred)
    edge = BoundEdge(sheet["binding"], sheet["seam"], turn, corner=corner)
    bias = binding.grain == BIAS
    rules = (
        Rule(Line.STITCH, sheet["seam"]),
        Rule(Line.FOLD, sheet["edge_fold"]),
        Rule(Line.FOLD, last_fold),
    )
    length = sheet["length_for_all" if bias else "binding_strip_length"]
    sheet.show("finished", "The bound edge from its right side.", bound_edge(edge), finished=True)
    sheet.pictures.append(
        flat_picture("binding strip", sheet["strip_width"], length, rules, bias=bias)
    )
    sheet.show(
        "sewn-on",
        "Cut through after the first seam; the strip is tinted, its thickness enlarged.",
        sewn_on(edge),
    )
    sheet.show("section", "Cut through, finished; thickness enlarged.", brought_round(edge))
    if isinstance(binding.strips, StripsOnCloth):
        sheet.pictures.append(cloth_picture(sheet, binding.strips))
