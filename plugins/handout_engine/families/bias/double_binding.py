"""A binding of two layers: the strip is folded in half first, and its fold is felled."""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.families.bias.binding import BindingInputs
from handout_engine.families.bias.binding_pictures import draw_binding
from handout_engine.families.bias.binding_steps import (
    add_cutting_steps,
    add_sample,
    add_sewing_steps,
    add_supplies,
)
from handout_engine.working.cautions import NOTHING_LOOSE_IN_THE_COT
from handout_engine.working.worksheet import Worksheet


class DoubleBinding(BindingInputs):
    """Two layers round the edge: wears longest, and has a ready fold to fell."""

    title = "Double binding"
    family = "bias"
    summary = "A strip folded in half and wrapped round a raw edge, for blankets, quilts and bibs."
    known_by = "section"

    tail = length(
        "tail",
        "Extra length to join the ends of a round binding.",
        "10 in",
        ("1 in", "30 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("strip, cut width", saying=Saying.UP)
    def strip_width(self) -> Length:
        """Twice what goes from the raw edges round to the back, never too narrow to come round."""
        return 2 * (self.seam + 2 * self.binding + self.turn_of_cloth)

    @value("strip folded in half")
    def folded_width(self) -> Length:
        """Raw edge on raw edge."""
        return self.strip_width / 2

    def sew(self, sheet: Worksheet) -> None:
        """The strip folded, sewn on by its raw edges and brought round."""
        add_supplies(sheet)
        sheet.cautions.append(NOTHING_LOOSE_IN_THE_COT)
        add_sample(sheet, self)
        add_cutting_steps(sheet, self)
        sheet.step(
            "Fold the strip in half along its length, wrong sides together, and press without "
            "pulling.",
            "folded it is {folded_width} wide all along.",
        )
        add_sewing_steps(
            sheet,
            self,
            "Lay both raw edges of the folded strip on the raw edge, at the right side, and sew "
            "{seam} from the edges.",
            "Bring it over the edge to the wrong side, lay its fold on the stitching, and fell it "
            "by hand.",
            folded=True,
        )

    def draw(self, sheet: Worksheet) -> None:
        """The bound edge, its strip, and how it goes round."""
        draw_binding(sheet, self, sheet["folded_width"])


TECHNIQUE = DoubleBinding
