"""A binding of one layer, both long edges turned in (packaged tape calls it double-fold)."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.families.bias.binding import FILLED, TRIMMED, BindingInputs
from handout_engine.families.bias.binding_pictures import draw_binding
from handout_engine.families.bias.binding_steps import (
    add_cutting_steps,
    add_sample,
    add_sewing_steps,
    add_supplies,
)
from handout_engine.working.worksheet import Worksheet


class SingleBinding(BindingInputs):
    """One layer round the edge, its back turned under and felled."""

    title = "Single binding"
    family = "bias"
    summary = "One layer of bias wrapped round a raw edge, for necks, armholes and bibs."
    known_by = "section"

    turn_under = optional_length(
        "turning",
        "Turned under at the back edge of the strip.",
        "as wide as the binding",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="turn",
    )

    @value("turned under at the back", basis=PRACTICE)
    def turn(self) -> Length:
        """As wide as the binding, so that it lies flat behind it."""
        return self.binding if self.turn_under is None else self.turn_under

    @check
    def the_turning_lies_in_the_binding(self) -> None:
        """Refuse a turning that reaches past the fold."""
        if self.turn > self.binding and self.after == FILLED:
            binding, most = TAPE.say(self.binding), TAPE.say(self.binding, Saying.DOWN)
            raise RefusalError(
                f"turn_under {TAPE.say(self.turn)} is deeper than binding {binding}; it would "
                f'reach past the fold (use at most {most}, or trim it: after: "{TRIMMED}")',
                "turn_under",
            )

    @value("strip, cut width", saying=Saying.UP)
    def strip_width(self) -> Length:
        """From the raw edge round to the back, never too narrow to come round."""
        return self.seam + 2 * self.binding + self.turn + self.turn_of_cloth

    @value("fold of the turning, from the sewn edge")
    def turn_fold(self) -> Length:
        """What lies at the back beyond it is turned under."""
        return self.seam + 2 * self.binding + self.turn_of_cloth

    def sew(self, sheet: Worksheet) -> None:
        """The strip turned at one edge, sewn on by the other and brought round."""
        add_supplies(sheet)
        add_sample(sheet, self)
        add_cutting_steps(sheet, self)
        sheet.step("Press one long edge of the strip {turn} to the wrong side.")
        add_sewing_steps(
            sheet,
            self,
            "Lay the other long edge on the raw edge, right sides together, and sew {seam} from "
            "the edges; on an inward curve stretch the strip a little, on an outward one ease it.",
            "Bring it over the edge to the wrong side, lay its pressed fold on the stitching, and "
            "fell it by hand, or stitch from the right side in the seam.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The bound edge, its strip, and how it goes round."""
        draw_binding(sheet, self, sheet["turn_fold"], sheet["turn"])


TECHNIQUE = SingleBinding
