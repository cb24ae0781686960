"""Strips of a built-up band: what each join between two kinds of strip takes, and how it is sewn.

The finished width of a band is what shows of its strips. Lace has finished edges and gives nothing
away; entredeux carries an allowance of its own that is trimmed off; cloth gives what its join
needs.
"""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import total
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.working.worksheet import Worksheet

LACE, ENTREDEUX, BEADING = "lace", "entredeux", "beading"
PUFFING, EMBROIDERED, CLOTH = "puffing", "embroidered", "cloth"
STRIPS = (LACE, ENTREDEUX, BEADING, PUFFING, EMBROIDERED, CLOTH)
FINISHED_EDGES = frozenset({LACE, BEADING})
CUT_FROM_CLOTH = frozenset({PUFFING, CLOTH})


class BandJoinInputs:
    """What the joins of a band take, one input for each habit of the trade."""

    roll = length(
        "roll takes",
        "Cloth rolled and whipped over a lace heading.",
        "3 mm",
        ("1 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )
    entredeux_allowance = length(
        "entredeux allowance",
        "The allowance on each side of the entredeux, and of the cloth that is sewn to it.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    trim = length(
        "trimmed to",
        "What is left of that allowance to roll.",
        "1/8 in",
        ("1/16 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    cloth_allowance = length(
        "cloth allowance",
        "Seam between two strips of cloth.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    outer_allowance = length(
        "outer allowance",
        "Added where cloth is the outer strip.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strip_allowance = length(
        "strip allowance",
        "Where a strip of cloth is joined to length.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )


def taken_from(kind: str, neighbour: str | None) -> str:
    """The input that says what a strip gives to its neighbour; empty when it gives nothing.

    `None` for a neighbour is the outer edge of the band.
    """
    if kind in FINISHED_EDGES:
        return ""
    if ENTREDEUX in (kind, neighbour):
        return "entredeux_allowance"
    if neighbour is None:
        return "outer_allowance"
    return "roll" if neighbour in FINISHED_EDGES else "cloth_allowance"


@dataclass(frozen=True)
class Strip:
    """One strip of a band, from top to bottom: its number, kind, widths and what its joins take."""

    number: int
    kind: str
    visible: Value
    above: str
    below: str
    cut: Value

    @property
    def name(self) -> str:
        """`2 entredeux`."""
        return f"{self.number} {self.kind}"

    @property
    def bought(self) -> bool:
        """Whether it is bought in its width."""
        return self.kind not in CUT_FROM_CLOTH


def note_strip(
    sheet: Worksheet, number: int, kinds: tuple[str, str | None, str | None], visible: Value
) -> Strip:
    """Note the cut width of a strip; `kinds` are its own, and those above and below it."""
    kind, over, under = kinds
    above, below = taken_from(kind, over), taken_from(kind, under)
    names = [name for name in (above, below) if name]
    amount = total([visible.length, *(sheet[name].length for name in names)])
    cut = sheet.note(
        f"strip{number}_cut_width",
        f"strip {number} {kind}, cut width",
        amount,
        " + ".join(["{visible}", *(f"{{{name}}}" for name in names)]),
        visible=visible,
    )
    return Strip(number, kind, visible, above, below, cut)


def joining(upper: str, lower: str) -> str:
    """How two neighbours are joined, speaking of the inputs of the allowances by name."""
    pair = {upper, lower}
    if pair <= FINISHED_EDGES:
        return (
            "Lay the two finished edges side by side, right sides up, just touching, and zigzag "
            "or whip over both; the stitch is just wide enough to take in both headings."
        )
    if pair & FINISHED_EDGES and ENTREDEUX in pair:
        return (
            "Trim the {entredeux_allowance} allowance off that side of the entredeux, lay it side "
            "by side with the lace, and let the zigzag swing into each hole and over the heading."
        )
    if pair & FINISHED_EDGES:
        return (
            "Lay the lace on the cloth right sides together, its heading {roll} from the raw edge, "
            "and roll and whip the cloth over the heading; press the lace down, the roll toward "
            "the cloth."
        )
    if ENTREDEUX in pair:
        return (
            "Right sides together, raw edges level, stitch in the ditch of the entredeux, "
            "{entredeux_allowance} from the edges; trim to {trim}, roll and whip what is left, and "
            "press it away from the entredeux."
        )
    return (
        "Right sides together, sew {cloth_allowance} from the raw edges; overcast the two together "
        "and press to one side."
    )
