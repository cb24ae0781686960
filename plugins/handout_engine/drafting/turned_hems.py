"""Hems of a flared lower edge: how deep it can be turned up, and a facing where that is too little.

The edge is curved, so that the raw edge of what is turned up is longer than where it lands. So much
must be eased in. The depth is kept to what can be; where that leaves no hem, or less than was asked
for, the edge is faced with a strip of its own shape, which lies flat however deep it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor, fsum
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, optional_length, percentage
from handout_engine.amounts.lengths import ZERO, Length, from_float, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import DRAWN, GIVEN, PRACTICE, Basis
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drafting.allowances import Segment, beside, cut_off, mirrored_in
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.curves import Line, beyond, run
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.geometry.points import snapped
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
STEP = inches("1/8")
"""A hem that is made shallower is made so in whole steps of this."""
LEAST_HEM = inches("3/8")
"""The shallowest hem that is turned up, its raw edge turned under: common practice, no source."""
TURN = inches("1/4")
"""What is turned under along the upper edge of a facing: common practice, no source."""


class TurnedHemInputs(BlockInputs):
    """The inputs of a garment whose lower edge is turned up or faced.

    `usual_hem` of a garment is how deep its hem is where nothing is said.
    """

    usual_hem: ClassVar[Length]

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


@dataclass(frozen=True)
class LowerEdge:
    """What is cut beyond the lower edge, in mm, and whether that is turned up; or it is faced."""

    allowance: float
    turned_up: bool = False
    faced: bool = False

    @property
    def remark(self) -> str:
        """What is said beneath the drawing of a piece that has it; empty where nothing need be."""
        return "At its lower edge the dashed line is the fold of the hem." if self.turned_up else ""

    def edge(self, hem: Line) -> Edge:
        """The lower edge of a piece, from its side to its centre."""
        return Edge("hem", hem, self.allowance, self.turned_up)


@dataclass(frozen=True)
class Half:
    """One half of a piece at its lower edge: the side down to it, and from there to the centre."""

    side: Line
    hem: Line

    def longer(self, depth: float) -> float:
        """How much longer the raw edge of a hem is than where it lands, in mm.

        The slope of the allowance at the side takes out what is full near it, within the hem's own
        depth; it takes out nothing of what is full further off.
        """
        folded = mirrored_in(self._low, (self.hem[0], self.hem[-1]))
        assert folded is not None, "the side meets the hem"
        every = run(self._beside(depth, folded)) - run(self.landing(depth))
        rest = beyond(self.hem, depth)
        off = run(beside(rest, depth)) - run(beside(rest, -depth))
        return snapped(max(0.0, off) + max(0.0, every - off))

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


def note_lower_edge(
    sheet: Worksheet, garment: TurnedHemInputs, halves: Sequence[Half], *, trimmed: bool
) -> LowerEdge:
    """Note how the lower edge is finished; `halves` are one half of front and of back.

    Notes `hem_depth`, and of a hem that is turned up `hem_ease`, once round. Raises RefusalError
    where the hem that was given is deeper than the side is long.
    """
    if trimmed:
        return _seam_of_trim(sheet, garment)
    room = from_float(min(run(half.side) for half in halves))
    if garment.hem and garment.hem > room:
        raise RefusalError(
            f"hem {TAPE.say(garment.hem)} is deeper than the side seam above it is long, "
            f"{TAPE.both(room)}; use {ways(at_most(garment, 'hem', room), 'a longer garment')}",
            "hem",
        )
    wanted = garment.hem or min(garment.usual_hem, STEP * floor(room / STEP))
    basis = GIVEN if garment.hem else PRACTICE
    most = deepest(halves, wanted, garment.hem_easing.number)
    if most < wanted and (garment.hem or most < LEAST_HEM):
        sheet.note("hem_depth", "facing of the lower edge, finished depth", wanted, "", basis=basis)
        return LowerEdge(float(garment.seam_allowance), faced=True)
    return note_turned_up(sheet, halves, most, basis if most == wanted else DRAWN)


def _seam_of_trim(sheet: Worksheet, garment: TurnedHemInputs) -> LowerEdge:
    """A trim is sewn on in a seam: what is cut beyond it is not turned up."""
    taken = garment.hem or garment.seam_allowance
    sheet.note("hem_depth", "allowance that the trim takes at the lower edge", taken, "",
               basis=GIVEN if garment.hem else PRACTICE)  # fmt: skip
    return LowerEdge(float(taken))


def note_turned_up(
    sheet: Worksheet, halves: Sequence[Half], depth: Length, basis: Basis
) -> LowerEdge:
    """Note a hem that is turned up, and how much of its raw edge is eased in."""
    sheet.note("hem_depth", "hem, from its fold to its raw edge", depth, "", basis=basis)
    ease = 2 * fsum(half.longer(float(depth)) for half in halves)
    sheet.note("hem_ease", "raw edge of the hem, longer than where it lands, once round",
               from_float(ease), "", basis=DRAWN)  # fmt: skip
    return LowerEdge(float(depth), turned_up=True)


def deepest(halves: Sequence[Half], wanted: Length, easing: Fraction) -> Length:
    """The wanted depth of a hem, or the most below it that can be eased in, in whole steps."""

    def fits(depth: Length) -> bool:
        deep = float(depth)
        return all(half.longer(deep) <= float(easing) * run(half.landing(deep)) for half in halves)

    if fits(wanted):
        return wanted
    steps = range(ceil(wanted / STEP) - 1, 0, -1)
    return next((STEP * number for number in steps if fits(STEP * number)), ZERO)


def note_facings(sheet: Worksheet, halves: Sequence[Half], cloth: str) -> None:
    """Cut the facings of a lower edge that is not turned up, one for the front, one for the back.

    Speaks of the input seam_allowance and of `hem_depth`.
    """
    seam, depth = float(sheet["seam_allowance"].length), sheet["hem_depth"].mm
    for name, half in zip(("front", "back"), halves, strict=True):
        upper, hem = half.landing(depth), half.hem
        edges = (
            Edge("hem", hem, seam),
            Edge(FOLD, (hem[-1], upper[-1])),
            Edge("upper edge", tuple(reversed(upper)), float(TURN)),
            Edge("side", (upper[0], hem[0]), seam),
        )
        note_piece(sheet, Draft(f"{name} hem facing", edges), Cutting(cloth))
