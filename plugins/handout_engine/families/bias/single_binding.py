"""A binding of one layer, both long edges turned in (packaged tape calls it double-fold)."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length, optional_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.families.bias.binding_pictures import draw_binding
from handout_engine.shared.binding import (
    FILLED,
    TRIMMED,
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
from handout_engine.working.technique import Technique
from handout_engine.working.worksheet import Worksheet


class SingleBinding(BindingInputs, Technique):
    """One layer round the edge, its back turned under and felled."""

    title: ClassVar[str] = "Single binding"
    family: ClassVar[str] = "bias"
    summary: ClassVar[str] = (
        "One layer of bias wrapped round a raw edge, for necks, armholes and bibs."
    )
    known_by: ClassVar[str] = "section"

    tail = length(
        "tail",
        "Extra length to join the ends of a round binding.",
        "3 in",
        ("1 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn_under = optional_length(
        "turning",
        "Turned under at the back edge of the strip.",
        "as wide as the binding",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="turn",
    )

    def whole(self) -> Worksheet:
        """Strip width, length, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        seam = note_seam(sheet, self)
        turn = _note_turn(sheet, self)
        width = note_width(
            sheet,
            seam.length + 2 * self.binding + turn.length + self.turn_of_cloth,
            "{seam} + 2 × {binding} + {turn} + {turn_of_cloth}",
        )
        note_length(sheet, self, sheet["tail"])
        strips = note_binding_strips(sheet, self, width)
        add_supplies(sheet, self)
        add_sample(sheet, self)
        _add_steps(sheet, self)
        draw_binding(sheet, self, strips, double=False)
        return sheet


def _note_turn(sheet: Worksheet, inputs: SingleBinding) -> Value:
    turn = inputs.binding if inputs.turn_under is None else inputs.turn_under
    if turn > inputs.binding and inputs.after == FILLED:
        tape = Tape(finest=32)
        binding, most = tape.say(inputs.binding), tape.say(inputs.binding, Saying.DOWN)
        raise RefusalError(
            f"turn_under {tape.say(turn)} is deeper than binding {binding}; it would reach past "
            f'the fold (use at most {most}, or trim it: after: "{TRIMMED}")',
            "turn_under",
        )
    basis = PRACTICE if inputs.turn_under is None else GIVEN
    return sheet.note("turn", "turned under at the back", turn, "", basis=basis)


def _add_steps(sheet: Worksheet, inputs: SingleBinding) -> None:
    add_cutting_steps(sheet, inputs)
    sheet.step("Press one long edge of the strip {turn} to the wrong side.")
    add_sewing_steps(
        sheet,
        inputs,
        "Lay the other long edge on the raw edge, right sides together, and sew {seam} from the "
        "edges; on an inward curve stretch the strip a little, on an outward one ease it.",
        "Bring it over the edge to the wrong side, lay its pressed fold on the stitching, and fell "
        "it by hand, or stitch from the right side in the seam.",
    )


TECHNIQUE = SingleBinding
