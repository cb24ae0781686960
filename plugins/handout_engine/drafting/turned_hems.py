"""Hems of a flared lower edge: how deep it can be turned up, and a facing where that is too little.

The edge is curved, so that the raw edge of what is turned up is longer than where it lands. So much
must be eased in. The depth is kept to what can be; where that leaves no hem, or less than was asked
for, the edge is faced with a strip of its own shape, which lies flat however deep it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from math import ceil, floor, fsum
from typing import ClassVar

from handout_engine.amounts.declaring import Worked, check, drafted, group, value
from handout_engine.amounts.inputs import SEWING, optional_length, percentage
from handout_engine.amounts.lengths import ZERO, Length, from_float, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.amounts.working_out import Group
from handout_engine.drafting.allowances import Segment, beside, cut_off, mirrored_in
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.curves import Line, beyond, run
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import HalfPiece
from handout_engine.geometry.points import snapped

STEP = inches("1/8")
"""A hem that is made shallower is made so in whole steps of this."""
LEAST_HEM = inches("3/8")
"""The shallowest hem that is turned up, its raw edge turned under: common practice, no source."""
TURN = inches("1/4")
"""What is turned under along the upper edge of a facing: common practice, no source."""
LEAST_EASED = millimetres(1)
"""Less than this is taken up by the stitches, and not spoken of."""
DRAWN_UP = Fraction(1, 100)
"""Above this share of the hem a thread is needed to ease it in: common practice, no source."""


@dataclass(frozen=True)
class Half:
    """One half of a piece at its lower edge: the side down to it, and from there to the centre."""

    side: Line
    hem: Line
    _eased: dict[float, tuple[float, float]] = field(
        default_factory=dict, init=False, repr=False, compare=False
    )

    def eased(self, depth: float) -> tuple[float, float]:
        """How much longer the raw edge of a hem is than where it lands, and how long that is: mm.

        The slope of the allowance at the side takes out what is full near it, within the hem's own
        depth; it takes out nothing of what is full further off.
        """
        if depth not in self._eased:
            folded = mirrored_in(self._low, (self.hem[0], self.hem[-1]))
            assert folded is not None, "the side meets the hem"
            landing, rest = run(self.landing(depth)), beyond(self.hem, depth)
            every = run(self._beside(depth, folded)) - landing
            off = run(beside(rest, depth)) - run(beside(rest, -depth))
            longer = snapped(max(0.0, off) + max(0.0, every - off))
            self._eased[depth] = longer, landing
        return self._eased[depth]

    def landing(self, depth: float) -> Line:
        """Where the raw edge of a hem lands, from the side to the centre."""
        return self._beside(-depth, self._low)

    def _beside(self, by: float, border: Segment) -> Line:
        """The hem moved by so much, from its border at the side to the centre."""
        start, end = self.hem[0], self.hem[-1]
        middle = (end, (end[0], end[1] + 1))
        line = cut_off(beside(self.hem, by), border, end)
        line = tuple(reversed(cut_off(tuple(reversed(line)), middle, start)))
        return tuple((snapped(x), snapped(y)) for x, y in line)

    @property
    def _low(self) -> Segment:
        return self.side[-2], self.side[-1]


def deepest(halves: Sequence[Half], wanted: Length, easing: Fraction) -> Length:
    """The wanted depth of a hem, or the most below it that can be eased in, in whole steps."""

    def fits(depth: Length) -> bool:
        each = (half.eased(float(depth)) for half in halves)
        return all(longer <= float(easing) * landing for longer, landing in each)

    if fits(wanted):
        return wanted
    steps = range(ceil(wanted / STEP) - 1, 0, -1)
    return next((STEP * number for number in steps if fits(STEP * number)), ZERO)


class TurnedHemInputs(BlockInputs):
    """The inputs of a garment whose lower edge is turned up or faced.

    `usual_hem` of a garment is how deep its hem is where nothing is said; `halves` are one half of
    its front and of its back.
    """

    usual_hem: ClassVar[Length]
    halves: Worked[tuple[Half, Half]]

    hem = optional_length(
        "hem",
        "Turned up at the lower edge, its turning under included; where a trim is "
        "sewn on, the allowance that it takes.",
        "usual for the garment, less where that could not be eased in; a seam's beside a trim",
        ("1/8 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="hem_depth",
    )
    hem_easing = percentage(
        "most ease at the hem",
        "How much longer the raw edge of the hem may be than where it lands; it is eased in there.",
        "3 %",
        15,
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def trimmed(self) -> bool:
        """Whether a trim is sewn to the lower edge, which is then not turned up."""
        return False

    @check
    def the_hem_is_no_deeper_than_the_side(self) -> None:
        """Refuse a hem that would reach above the side seam."""
        if self.hem and not self.trimmed and self.hem > self._room:
            longer = ways(at_most(self, "hem", self._room), "a longer garment")
            raise RefusalError(
                f"hem {TAPE.say(self.hem)} is deeper than the side seam above it is long, "
                f"{TAPE.both(self._room)}; use {longer}",
                "hem",
            )

    @property
    def _room(self) -> Length:
        return from_float(min(run(half.side) for half in self.halves))

    @drafted
    def wanted_hem(self) -> Length:
        """As deep as was asked for, or as is usual where the side is long enough."""
        self.the_hem_is_no_deeper_than_the_side()
        usual, room = self.usual_hem, self._room
        return self.hem or (usual if usual <= room else STEP * floor(room / STEP))

    @drafted
    def deepest_hem(self) -> Length:
        """The most of it that can be eased in."""
        return deepest(self.halves, self.wanted_hem, self.hem_easing.number)

    @group
    def lower_edge(self) -> LowerEdge:
        """A seam to a trim, a hem, or a facing where too little of a hem could be eased in."""
        if self.trimmed:
            return TrimSeam(self)
        most = self.deepest_hem
        if most < self.wanted_hem and (self.hem or most < LEAST_HEM):
            return FacedEdge(self)
        return TurnedUpHem(self)


class LowerEdge(Group):
    """How the lower edge of a garment is finished, and what is cut beyond it."""

    remark = ""
    """What is said beneath the drawing of a piece that has it."""
    turned_up = False

    def __init__(self, garment: TurnedHemInputs) -> None:
        """Take the garment that it belongs to."""
        super().__init__()
        self.garment = garment

    @property
    def allowance(self) -> Length:
        """What is cut beyond it: a seam's, where nothing is turned up."""
        return self.garment.seam_allowance

    def edge(self, hem: Line) -> Edge:
        """The lower edge of a piece, from its side to its centre."""
        return Edge("hem", hem, float(self.allowance), self.turned_up)

    def facings(self) -> tuple[HalfPiece, ...]:
        """What it is faced with: mostly nothing."""
        return ()


class TrimSeam(LowerEdge):
    """A lower edge that a trim is sewn to, in a seam."""

    @property
    def allowance(self) -> Length:
        """What the trim takes."""
        return self.hem_depth

    @value("allowance that the trim takes at the lower edge")
    def hem_depth(self) -> Length:
        """As given, or that of any other seam."""
        return self.garment.hem or self.garment.seam_allowance


class TurnedUpHem(LowerEdge):
    """A lower edge that is turned up, its raw edge eased in."""

    remark = "At its lower edge the dashed line is the fold of the hem."
    turned_up = True

    @property
    def allowance(self) -> Length:
        """The hem itself."""
        return self.hem_depth

    @value("hem, from its fold to its raw edge", basis=DRAWN)
    def hem_depth(self) -> Length:
        """As given or usual, or as much of it as can be eased in."""
        return self.garment.deepest_hem

    @value("raw edge of the hem, longer than where it lands, once round", basis=DRAWN)
    def hem_ease(self) -> Length:
        """The lower edge is curved, so the raw edge is longer below it than it is above."""
        deep = float(self.hem_depth)
        return from_float(2 * fsum(half.eased(deep)[0] for half in self.garment.halves))

    @property
    def lies_flat(self) -> bool:
        """Whether the stitches take up what there is to ease in."""
        return self.hem_ease < LEAST_EASED

    def is_drawn_up(self, hem: Length) -> bool:
        """Whether a thread is needed for it, in a hem that is so long once round."""
        return self.hem_ease > hem * DRAWN_UP


class FacedEdge(LowerEdge):
    """A lower edge that is faced with strips of its own shape, which lie flat however deep."""

    @value("facing of the lower edge, finished depth", basis=DRAWN)
    def hem_depth(self) -> Length:
        """As deep as the hem would be."""
        return self.garment.wanted_hem

    def facings(self) -> tuple[HalfPiece, ...]:
        """One for the front, one for the back."""
        seam, depth = float(self.garment.seam_allowance), float(self.hem_depth)
        found = []
        for name, half in zip(("front", "back"), self.garment.halves, strict=True):
            upper, hem = half.landing(depth), half.hem
            edges = (
                Edge("hem", hem, seam),
                Edge(FOLD, (hem[-1], upper[-1])),
                Edge("upper edge", tuple(reversed(upper)), float(TURN)),
                Edge("side", (upper[0], hem[0]), seam),
            )
            found.append(HalfPiece(Draft(f"{name} hem facing", edges)))
        return tuple(found)
