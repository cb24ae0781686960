"""The pictures of single and double bindings."""

from __future__ import annotations

from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.bias_cloth import Strips
from handout_engine.drawing.scene import Line
from handout_engine.families.bias.bias_pictures import cloth_picture, flat_picture
from handout_engine.shared.binding import BIAS, BindingInputs
from handout_engine.shared.binding_drawing import BoundEdge, bound_edge, brought_round, sewn_on
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet


def draw_binding(
    sheet: Worksheet, inputs: BindingInputs, strips: Strips | None, double: bool
) -> None:
    """The finished edge, the strip with its lines, both sections, and the strips on the cloth."""
    turn = None if double else sheet["turn"]
    edge = BoundEdge(
        sheet["binding"], sheet["seam"], turn, corner=bool(sheet["corners_mitred"].whole)
    )
    rules = _double_rules(sheet) if double else _single_rules(sheet, inputs)
    length = sheet["length_for_all" if strips else "binding_strip_length"]
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The bound edge from its right side."), bound_edge(edge),
                    finished=True),
            flat_picture("binding strip", sheet["strip_width"], length, rules,
                         bias=inputs.grain == BIAS),
            Picture("sewn-on",
                    sentence("Cut through after the first seam; the strip is tinted, its "
                             "thickness enlarged."),
                    sewn_on(edge)),
            Picture("section", sentence("Cut through, finished; thickness enlarged."),
                    brought_round(edge)),
        )
    )  # fmt: skip
    if strips is not None:
        sheet.pictures.append(cloth_picture(strips, sheet["edge_step"]))


def _edge_fold(sheet: Worksheet) -> Value:
    return sheet.note(
        "edge_fold",
        "where the strip goes round the edge, from its sewn edge",
        sheet["seam"].length + sheet["binding"].length,
        "{seam} + {binding}",
    )


def _single_rules(sheet: Worksheet, inputs: BindingInputs) -> list[Rule]:
    turned = sheet.note(
        "turn_fold",
        "fold of the turning, from the sewn edge",
        sheet["seam"].length + 2 * inputs.binding + inputs.turn_of_cloth,
        "{seam} + 2 × {binding} + {turn_of_cloth}",
    )
    return [
        Rule(Line.STITCH, sheet["seam"]),
        Rule(Line.FOLD, _edge_fold(sheet)),
        Rule(Line.FOLD, turned),
    ]


def _double_rules(sheet: Worksheet) -> list[Rule]:
    return [
        Rule(Line.STITCH, sheet["seam"]),
        Rule(Line.FOLD, _edge_fold(sheet)),
        Rule(Line.FOLD, sheet["folded_width"]),
    ]
