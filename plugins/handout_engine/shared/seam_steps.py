"""How each of the fine seams is sewn."""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.shared.seams import (
    FLAT_FELL,
    FRENCH,
    PIN_STITCH,
    PLAIN,
    ROLLED,
    ROLLED_GATHERS,
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
        (
            "Lay the layers right sides together, raw edges level, and sew {seam_allowance} from "
            "the edges.",
            "the allowance is {seam_allowance} at both ends and in the middle.",
        ),
        (
            "Press the seam as it was sewn, then open. Overcast each raw edge by itself.",
            "the opened allowances are {ridge} wide together.",
        ),
    ),
    FRENCH: (
        (
            "Lay the layers WRONG sides together, raw edges level, and sew {french_first} from the "
            "edges. Press.",
            "",
        ),
        (
            "Trim both allowances to {trimmed}, and pick off every whisker of thread.",
            "no place is left wider than {trimmed}.",
        ),
        (
            "Turn right sides together, with the seam exactly on the fold. Press, and sew "
            "{french_second} from the fold.",
            "no thread of the first allowance shows on the right side.",
        ),
        (
            "Open the layers flat and press the seam to one side.",
            "the closed ridge is {french_second} wide.",
        ),
    ),
    FLAT_FELL: (
        (
            "Lay the layers WRONG sides together for a fell on the right side (right sides "
            "together for one inside), and sew {first_takes} from the edges.",
            "",
        ),
        (
            "Trim the allowance that will lie beneath to half of {fell_width}. Fold {turned} of "
            "the other one in.",
            "",
        ),
        (
            "Open the layers flat, lay the folded allowance over the trimmed one, pin, and stitch "
            "close to the fold.",
            "between the two rows of stitching it is {fell_width}.",
        ),
    ),
    ROLLED: (
        (_WHIP, "each roll is thinner than a matchstick, and has taken {roll} of the cloth."),
        (
            "Lay the two rolled edges side by side, right sides up, and whip or zigzag them "
            "together through the edge of each roll.",
            "both rolls together are {ridge} wide.",
        ),
    ),
    ROLLED_GATHERS: (
        (
            _WHIP + " On the layer that is gathered, whip over a strong thread laid in the roll.",
            "each roll has taken {roll} of the cloth.",
        ),
        (
            "Draw the laid thread up until the gathered layer is as long as the other, quarter "
            "mark to quarter mark, and fasten it.",
            "",
        ),
        (
            "Lay the two rolls side by side, right sides up, and whip them together, one stitch in "
            "each scallop of the gathers.",
            "both rolls together are {ridge} wide.",
        ),
    ),
    PIN_STITCH: (
        ("Turn {pin_turn} under along the edge of the layer that lies on top, and press.", ""),
        (
            "Lay the fold over the lower layer so that the lower one reaches {pin_lap} beneath it. "
            "Baste.",
            "the raw edge of the lower layer is {pin_lap} behind the fold.",
        ),
        (
            "With a wing needle and fine thread pin stitch along the fold: the forward stitches "
            "lie on the lower layer close beside the fold, each side stitch bites into it.",
            "",
        ),
        (
            "Trim what lies beneath to the stitching, the longer layer last.",
            "before trimming, the seam was {ridge} wide.",
        ),
    ),
}
