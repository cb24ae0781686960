"""The seams of fine sewing: what each takes of the cloth on either side, and what it leaves.

A `Join` is the vocabulary every technique may join with: what is consumed of the first and of the
second layer, from the raw edge to the line where the two meet, and the width of the finished
ridge. Allowances are habits of the trade, so each is an input with a default.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from handout_engine.amounts.inputs import SEWING, choice, length, optional_length
from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_least, at_most, less_than, ways
from handout_engine.working.workings import Seam
from handout_engine.working.worksheet import Worksheet

PLAIN = "plain"
FRENCH = "French"
FLAT_FELL = "flat fell"
ROLLED = "rolled and whipped"
ROLLED_GATHERS = "rolled and whipped gathers"
PIN_STITCH = "pin stitch"
KINDS = (FRENCH, PLAIN, FLAT_FELL, ROLLED, ROLLED_GATHERS, PIN_STITCH)

ON_AN_EDGE: Mapping[str, Length] = {
    PLAIN: inches("1/4"),
    FRENCH: inches("3/8"),
    FLAT_FELL: inches("1/2"),
    ROLLED: millimetres(3),
    PIN_STITCH: inches("1/4"),
}
"""What each seam usually takes of a ruffle along the edge it is sewn to (common practice)."""


@dataclass(frozen=True)
class Join:
    """What a seam takes of its two layers, and the width of its ridge on the wrong side."""

    kind: str
    first: Value
    second: Value
    ridge: Value

    @property
    def gathers(self) -> bool:
        """Whether the second layer is gathered into the seam."""
        return self.kind == ROLLED_GATHERS

    @property
    def seams(self) -> tuple[Seam, Seam]:
        """The seam as a working lists it, once for each layer."""
        return (
            Seam(f"{self.kind} seam, first layer", self.first.length),
            Seam(f"{self.kind} seam, second layer", self.second.length),
        )


class SeamInputs:
    """The inputs of a technique that may be joined by any of the fine seams."""

    seam = choice("seam", "The kind of seam.", *KINDS, group=SEWING)
    seam_allowance = length(
        "plain allowance",
        "Allowance of a plain seam.",
        "1/4 in",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    french_first = length(
        "first French seam",
        "Sewn with wrong sides together.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    french_trim = optional_length(
        "trimmed to",
        "What is left of the first French seam.",
        "half of the second seam",
        ("1/32 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="trimmed",
    )
    french_second = length(
        "second French seam",
        "Sewn with right sides together.",
        "1/8 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    fell_width = length(
        "width of the fell",
        "Between its two rows of stitching.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    fell_turn = optional_length(
        "turned under the fell",
        "Raw edge folded in under the fell.",
        "as wide as the fell",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    roll = length(
        "roll takes",
        "Cloth that one rolled and whipped edge takes.",
        "3 mm",
        ("1 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    pin_turn = length(
        "folded under",
        "Turned under on the layer that lies on top.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    pin_lap = length(
        "lap",
        "How far the lower layer reaches under that fold.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )


def note_join(sheet: Worksheet, inputs: SeamInputs) -> Join:
    """Note what the chosen seam takes; raises RefusalError when it cannot be folded so."""
    _check(inputs)
    _note_parts(sheet, inputs)
    first, second, ridge = _FORMULAS[inputs.seam]
    amounts = _amounts(inputs)
    return Join(
        inputs.seam,
        sheet.note("first_takes", "seam takes of the first layer", amounts[0], first),
        sheet.note("second_takes", "seam takes of the second layer", amounts[1], second),
        sheet.note("ridge", "finished width of the seam", amounts[2], ridge),
    )


_FORMULAS: Mapping[str, tuple[str, str, str]] = {
    PLAIN: ("{seam_allowance}", "{seam_allowance}", "2 × {seam_allowance}"),
    FRENCH: (
        "{french_first} + {french_second}",
        "{french_first} + {french_second}",
        "{french_second}",
    ),
    FLAT_FELL: ("{fell_width} + {turned}", "{fell_width} + {turned}", "{fell_width}"),
    ROLLED: ("{roll}", "{roll}", "{roll} / 2 + {roll} / 2"),
    ROLLED_GATHERS: ("{roll}", "{roll}", "{roll} / 2 + {roll} / 2"),
    PIN_STITCH: ("{pin_turn}", "{pin_lap}", "{pin_turn}, at least {pin_lap}"),
}


def _note_parts(sheet: Worksheet, inputs: SeamInputs) -> None:
    """Note what hangs on another input where it was left out: the trimmed edge, the turn."""
    if inputs.seam == FRENCH and inputs.french_trim is None:
        sheet.note("trimmed", "first French seam trimmed to", inputs.french_second / 2,
                   "{french_second} / 2", basis=PRACTICE)  # fmt: skip
    elif inputs.seam == FRENCH:
        sheet.note("trimmed", "first French seam trimmed to", inputs.french_trim, "", basis=GIVEN)
    if inputs.seam == FLAT_FELL and inputs.fell_turn is None:
        sheet.note("turned", "turned in under the fell", inputs.fell_width, "{fell_width}",
                   basis=PRACTICE)  # fmt: skip
    elif inputs.seam == FLAT_FELL:
        sheet.note("turned", "turned in under the fell", inputs.fell_turn, "", basis=GIVEN)


def _amounts(inputs: SeamInputs) -> tuple[Length, Length, Length]:
    """What the seam takes of both layers, and its ridge.

    A roll turns twice, so it is half as wide as the cloth it takes; two of them lie side by side.
    """
    both = inputs.french_first + inputs.french_second
    fell = inputs.fell_width + (inputs.fell_turn or inputs.fell_width)
    rolls = (inputs.roll, inputs.roll, inputs.roll)
    return {
        PLAIN: (inputs.seam_allowance, inputs.seam_allowance, 2 * inputs.seam_allowance),
        FRENCH: (both, both, inputs.french_second),
        FLAT_FELL: (fell, fell, inputs.fell_width),
        ROLLED: rolls,
        ROLLED_GATHERS: rolls,
        PIN_STITCH: (inputs.pin_turn, inputs.pin_lap, max(inputs.pin_turn, inputs.pin_lap)),
    }[inputs.seam]


def _check(inputs: SeamInputs) -> None:
    tape = Tape(finest=32)
    trim, turn, deeper = inputs.french_trim, inputs.fell_turn, "a deeper second seam"
    if inputs.seam == FRENCH and trim is not None and trim >= inputs.french_second:
        raise RefusalError(
            f"french_trim {tape.say(trim)} would show beyond the second seam; use "
            f"{ways(less_than(inputs, 'french_trim', inputs.french_second), deeper)}",
            "french_trim",
        )
    least = inputs.french_second / 2 if trim is None else trim
    if inputs.seam == FRENCH and least > inputs.french_first:
        raise RefusalError(
            f"french_first {tape.say(inputs.french_first)} leaves less than the "
            f"{tape.say(least)} it is trimmed to; use "
            f"{ways(at_least(inputs, 'french_first', least), 'a narrower second seam')}",
            "french_first",
        )
    if inputs.seam == FLAT_FELL and turn is not None and turn > inputs.fell_width:
        raise RefusalError(
            f"fell_turn {tape.say(turn)} is wider than fell_width {tape.say(inputs.fell_width)}; "
            f"the turned edge would reach past the seam (use "
            f"{ways(at_most(inputs, 'fell_turn', inputs.fell_width), 'a wider fell')})",
            "fell_turn",
        )


def seam_steps(kind: str) -> tuple[tuple[str, str], ...]:
    """How the seam is sewn: each step and its checkpoint, speaking of the inputs by name."""
    return _STEPS[kind]


_WHIP = (
    "Run a row of fine straight stitches {roll} from the raw edge of each layer and trim the edge "
    "even. Roll the edge over this row between thumb and finger and whip over the roll, the needle "
    "going under the roll and never through it; by machine, let a narrow zigzag swing off the edge."
)

_STEPS: Mapping[str, tuple[tuple[str, str], ...]] = {
    PLAIN: (
        ("Lay the layers right sides together, raw edges level, and sew {seam_allowance} from the "
         "edges.", "the allowance is {seam_allowance} at both ends and in the middle."),
        ("Press the seam as it was sewn, then open. Overcast each raw edge by itself.",
         "the opened allowances are {ridge} wide together."),
    ),
    FRENCH: (
        ("Lay the layers WRONG sides together, raw edges level, and sew {french_first} from the "
         "edges. Press.", ""),
        ("Trim both allowances to {trimmed}, and pick off every whisker of thread.",
         "no place is left wider than {trimmed}."),
        ("Turn right sides together, with the seam exactly on the fold. Press, and sew "
         "{french_second} from the fold.",
         "no thread of the first allowance shows on the right side."),
        ("Open the layers flat and press the seam to one side.",
         "the closed ridge is {french_second} wide."),
    ),
    FLAT_FELL: (
        ("Lay the layers WRONG sides together for a fell on the right side (right sides together "
         "for one inside), and sew {first_takes} from the edges.", ""),
        ("Trim the allowance that will lie beneath to half of {fell_width}. Fold {turned} of "
         "the other one in.", ""),
        ("Open the layers flat, lay the folded allowance over the trimmed one, pin, and stitch "
         "close to the fold.", "between the two rows of stitching it is {fell_width}."),
    ),
    ROLLED: (
        (_WHIP, "each roll is thinner than a matchstick, and has taken {roll} of the cloth."),
        ("Lay the two rolled edges side by side, right sides up, and whip or zigzag them together "
         "through the edge of each roll.", "both rolls together are {ridge} wide."),
    ),
    ROLLED_GATHERS: (
        (_WHIP + " On the layer that is gathered, whip over a strong thread laid in the roll.",
         "each roll has taken {roll} of the cloth."),
        ("Draw the laid thread up until the gathered layer is as long as the other, quarter mark "
         "to quarter mark, and fasten it.", ""),
        ("Lay the two rolls side by side, right sides up, and whip them together, one stitch in "
         "each scallop of the gathers.", "both rolls together are {ridge} wide."),
    ),
    PIN_STITCH: (
        ("Turn {pin_turn} under along the edge of the layer that lies on top, and press.", ""),
        ("Lay the fold over the lower layer so that the lower one reaches {pin_lap} beneath it. "
         "Baste.", "the raw edge of the lower layer is {pin_lap} behind the fold."),
        ("With a wing needle and fine thread pin stitch along the fold: the forward stitches lie "
         "on the lower layer close beside the fold, each side stitch bites into it.", ""),
        ("Trim what lies beneath to the stitching, the longer layer last.",
         "before trimming, the seam was {ridge} wide."),
    ),
}  # fmt: skip
