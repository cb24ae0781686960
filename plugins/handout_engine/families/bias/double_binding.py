"""A binding of two layers: the strip is folded in half first, and its fold is felled."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.families.bias.binding_pictures import draw_binding
from handout_engine.shared.binding import (
    BindingInputs,
    note_binding_strips,
    note_length,
    note_seam,
    note_width,
)
from handout_engine.shared.binding_steps import (
    add_cutting_steps,
    add_sample,
    add_sewing_steps,
    add_supplies,
)
from handout_engine.working.cautions import NOTHING_LOOSE_IN_THE_COT
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet


class DoubleBinding(BindingInputs, Technique):
    """Two layers round the edge: wears longest, and has a ready fold to fell."""

    title: ClassVar[str] = "Double binding"
    family: ClassVar[str] = "bias"
    summary: ClassVar[str] = (
        "A strip folded in half and wrapped round a raw edge, for blankets, quilts and bibs."
    )
    known_by: ClassVar[str] = "section"

    tail = length(
        "tail",
        "Extra length to join the ends of a round binding.",
        "10 in",
        ("1 in", "30 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Strip width, length, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        seam = note_seam(sheet, self)
        width = note_width(
            sheet,
            2 * (seam.length + 2 * self.binding + self.turn_of_cloth),
            "2 × ({seam} + 2 × {binding} + {turn_of_cloth})",
        )
        sheet.note("folded_width", "strip folded in half", width.length / 2, "{strip_width} / 2")
        note_length(sheet, self, sheet["tail"])
        strips = note_binding_strips(sheet, self, width)
        add_supplies(sheet, self)
        sheet.cautions.append(NOTHING_LOOSE_IN_THE_COT)
        add_sample(sheet, self)
        _add_steps(sheet, self)
        draw_binding(sheet, self, strips, double=True)
        return sheet


def _add_steps(sheet: Worksheet, inputs: DoubleBinding) -> None:
    add_cutting_steps(sheet, inputs)
    sheet.step(
        "Fold the strip in half along its length, wrong sides together, and press without pulling.",
        "folded it is {folded_width} wide all along.",
    )
    add_sewing_steps(
        sheet,
        inputs,
        "Lay both raw edges of the folded strip on the raw edge, at the right side, and sew {seam} "
        "from the edges.",
        "Bring it over the edge to the wrong side, lay its fold on the stitching, and fell it by "
        "hand.",
        folded=True,
    )


TECHNIQUE = DoubleBinding
