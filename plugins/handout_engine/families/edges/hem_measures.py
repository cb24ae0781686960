"""Hems of a straight lower edge: their usual depths, what they take, and what can be let down."""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.amounts.inputs import SEWING, choice, length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

DOUBLE, SINGLE, ROLLED, FACED = "double", "single", "rolled and whipped", "faced"
TAPE = Tape(finest=32)
FLARE = "moderate flare"
DEPTHS: Mapping[str, tuple[Length, Length]] = {
    FLARE: (inches(2), inches(3)),
    "straight and sheer": (inches(4), inches(4)),
    "flared": (inches("3/2"), inches("3/2")),
    "circle": (inches("1/4"), inches("1/4")),
    "narrow hem": (inches("1/4"), inches("1/4")),
}
"""Least and greatest depth by the cut of the skirt (Oregon State 4-H, L-87)."""


class StraightHemInputs:
    """The inputs of a hem along a straight lower edge."""

    hem = choice(
        "hem",
        "Double, its raw edge turned under; single, its raw edge overcast; rolled and whipped "
        "by hand; or faced with a strip of cloth.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FACED,
        group=SEWING,
    )
    skirt = choice("cut of the skirt", "What the usual depth of the hem depends on.", *DEPTHS)
    hem_depth = length_by_choice(
        "hem depth",
        "From the finished edge up to the hem's inner edge.",
        "by the cut of the skirt: 2, 4, 1 1/2 or 1/4 in",
        ("1/16 in", "20 in"),
        group=SEWING,
        basis=published("oregon-l87"),
    )
    turn = length(
        "turned under",
        "Raw edge turned under, of a double hem or a facing.",
        "1/4 in",
        ("1/16 in", "12 in"),
        group=SEWING,
        basis=published("oregon-l87"),
    )
    roll = length(
        "roll takes",
        "Cloth that a rolled hem takes.",
        "1/8 in",
        ("1/16 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing_seam = length(
        "facing seam",
        "Allowance of the seam that joins facing and edge.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    growth = length(
        "growth",
        "Hidden in the hem, to be let down when the child has grown.",
        "0 in",
        ("0 in", "12 in"),
    )
    least_turn = length(
        "least hem",
        "One turn of the narrow double hem that is kept when all is let down.",
        "1/4 in",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=published("oregon-l87"),
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The published depth for the cut of the skirt."""
        return {"hem_depth": DEPTHS[self.skirt][0]}


def note_hem_made(sheet: Worksheet, inputs: StraightHemInputs) -> Value:
    """Note what the hem takes of the panel; raises RefusalError where it cannot be folded."""
    if inputs.hem in (ROLLED, FACED) and inputs.growth:
        raise RefusalError(
            f"a {inputs.hem} hem holds no growth to let down; use a double or single hem, or a "
            "growth tuck above it",
            "growth",
        )
    if inputs.hem == ROLLED:
        return sheet.note("hem_allowance", "hem allowance", inputs.roll, "{roll}")
    made = sheet.note("hem_made", "hem as it is folded now", inputs.hem_depth + inputs.growth,
                      "{hem_depth} + {growth}")  # fmt: skip
    if inputs.hem != SINGLE and inputs.turn > made.length:
        raise RefusalError(
            f"turn {TAPE.say(inputs.turn)} is deeper than the hem, {TAPE.say(made.amount)}; use "
            f"{ways(at_most(inputs, 'turn', made.length), 'a deeper or a single hem')}",
            "turn",
        )
    if inputs.hem == FACED:
        return sheet.note("hem_allowance", "hem allowance", inputs.facing_seam, "{facing_seam}")
    turn = inputs.turn if inputs.hem == DOUBLE else ZERO
    return sheet.note("hem_allowance", "hem allowance", made.length + turn,
                      "{hem_made} + {turn}" if turn else "{hem_made}")  # fmt: skip


def note_letting_down(sheet: Worksheet, inputs: StraightHemInputs, allowance: Value) -> bool:
    """Note how much a turned hem can be let down; returns whether there is anything."""
    if inputs.hem in (ROLLED, FACED):
        return False
    most = allowance.length - 2 * inputs.least_turn
    if most <= ZERO:
        return False
    sheet.note("most_let_down", "most that can be let down, leaving the least hem", most,
               "{hem_allowance} - 2 × {least_turn}")  # fmt: skip
    return True


def depths_chart() -> Chart:
    """The published depths by the cut of the skirt."""
    rows = tuple((name, least, most) for name, (least, most) in DEPTHS.items())
    return Chart("Usual depths", ("Cut of the skirt", "From", "To"), rows)
