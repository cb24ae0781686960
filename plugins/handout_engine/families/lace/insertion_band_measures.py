"""Strips of a built-up band: what each shows, and what its joins take.

The finished width of a band is what shows of its strips. Lace has finished edges and gives nothing
away; entredeux carries an allowance of its own that is trimmed off; cloth gives what its join
needs.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.working_out import Group
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Mark

LACE, ENTREDEUX, BEADING = "lace", "entredeux", "beading"
PUFFING, EMBROIDERED, CLOTH = "puffing", "embroidered", "cloth"
STRIPS = (LACE, ENTREDEUX, BEADING, PUFFING, EMBROIDERED, CLOTH)
FINISHED_EDGES = frozenset({LACE, BEADING})
CUT_FROM_CLOTH = frozenset({PUFFING, CLOTH})


class BandJoinInputs(Technique):
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

    def taken_from(self, kind: str, neighbour: str | None) -> Length:
        """What a strip of one kind gives to its neighbour; None is the outer edge of the band."""
        if kind in FINISHED_EDGES:
            return ZERO
        if ENTREDEUX in (kind, neighbour):
            return self.entredeux_allowance
        if neighbour is None:
            return self.outer_allowance
        return self.roll if neighbour in FINISHED_EDGES else self.cloth_allowance


class Strip(Group):
    """One strip of a band: its number from the top, its kind, and what its joins take."""

    def __init__(
        self, band: BandJoinInputs, number: int, kinds: tuple[str | None, ...], shows: Length
    ) -> None:
        """Take the band, the kinds of all its strips, and how much of this one shows."""
        super().__init__(f"strip{number}_")
        self.number, self.shows = number, shows
        around = (None, *kinds, None)
        above, kind, below = around[number - 1 : number + 2]
        assert kind is not None
        self.kind = kind
        self.above, self.below = band.taken_from(kind, above), band.taken_from(kind, below)

    @property
    def name(self) -> str:
        """`2 entredeux`."""
        return f"{self.number} {self.kind}"

    @property
    def words(self) -> str:
        """What it is called in labels."""
        return f"strip {self.name}"

    @property
    def bought(self) -> bool:
        """Whether it is bought in its width."""
        return self.kind not in CUT_FROM_CLOTH

    @value("{}, shows", basis=GIVEN)
    def width(self) -> Length:
        """As given, or what the others leave of a wanted width."""
        return self.shows

    @value("{}, cut width")
    def cut_width(self) -> Length:
        """What shows, and what its two joins take."""
        return self.width + self.above + self.below

    @value("{}, lower seam line, from its upper raw edge")
    def lower_seam(self) -> Length | None:
        """Where the strip below is joined to one that is cut from cloth."""
        return None if self.bought or not self.below else self.cut_width - self.below

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The seam lines to mark on it."""
        lines = ("above", self.above), ("below", self.lower_seam)
        return tuple(Mark(f"seam line {place}", line) for place, line in lines if line)


class Join(Group):
    """One way of joining strips, the pairs that are joined so, and what the first of them shows."""

    def __init__(self, way: str, pairs: tuple[tuple[Strip, Strip], ...]) -> None:
        """Take how it is sewn, and the strips above and below each such join."""
        self.way, self.pairs = way, pairs
        self.upper, self.lower = pairs[0]
        super().__init__(f"strips{self.upper.number}_{self.lower.number}_")

    @property
    def words(self) -> str:
        """The first two strips that are joined so."""
        return f"strips {self.upper.number} and {self.lower.number}"

    @value("{} together, show")
    def show(self) -> Length:
        """What is measured when the first pair is joined."""
        return self.upper.width + self.lower.width


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
