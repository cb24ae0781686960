"""Hems of a straight lower edge: their usual depths, what they take, and what can be let down."""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart

DOUBLE, SINGLE, ROLLED, FACED = "double", "single", "rolled and whipped", "faced"
FLARE = "moderate flare"
DEPTHS: Mapping[str, tuple[Length, Length]] = {
    FLARE: (inches(2), inches(3)),
    "straight and sheer": (inches(4), inches(4)),
    "flared": (inches("3/2"), inches("3/2")),
    "circle": (inches("1/4"), inches("1/4")),
    "narrow hem": (inches("1/4"), inches("1/4")),
}
"""Least and greatest depth by the cut of the skirt (Oregon State 4-H, L-87)."""


class StraightHemInputs(Technique):
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

    @property
    def turned_up(self) -> bool:
        """Whether the panel itself is turned up."""
        return str(self.hem) in (DOUBLE, SINGLE)

    @check
    def what_is_to_grow_can_be_let_down(self) -> None:
        """Refuse growth in a hem that holds none."""
        if self.growth and not self.turned_up:
            raise RefusalError(
                f"a {self.hem} hem holds no growth to let down; use a double or single hem, or a "
                "growth tuck above it",
                "growth",
            )

    @value("hem as it is folded now")
    def hem_made(self) -> Length | None:
        """The hem and what is let into it; a rolled one is not folded."""
        return self.hem_depth + self.growth if self.hem != ROLLED else None

    @check
    def the_turn_lies_in_the_hem(self) -> None:
        """Refuse a turn deeper than the hem it lies in."""
        if self.hem == SINGLE or self.hem_made is None:
            return
        if self.turn > self.hem_made:
            most = at_most(self, "turn", self.hem_made)
            raise RefusalError(
                f"turn {TAPE.say(self.turn)} is deeper than the hem, {TAPE.say(self.hem_made)}; "
                f"use {ways(most, 'a deeper or a single hem')}",
                "turn",
            )

    @value("hem allowance")
    def hem_allowance(self) -> Length:
        """What the hem takes of the panel: a facing only its seam."""
        if self.hem_made is None:
            return self.roll
        if self.hem == FACED:
            return self.facing_seam
        return self.hem_made + self.turn if self.hem == DOUBLE else self.hem_made

    @value("most that can be let down, leaving the least hem")
    def most_let_down(self) -> Length | None:
        """Of a turned hem: all but both turns of a narrow one; None where that is nothing."""
        if not self.turned_up:
            return None
        most = self.hem_allowance - 2 * self.least_turn
        return most if most > ZERO else None

    @value("stitching before it is rolled, from the edge")
    def stitch_in_roll(self) -> Length | None:
        """It lies in the middle of what the roll takes."""
        return None if self.hem != ROLLED else self.roll / 2


def depths_chart() -> Chart:
    """The published depths by the cut of the skirt."""
    rows = tuple((name, least, most) for name, (least, most) in DEPTHS.items())
    return Chart("Usual depths", ("Cut of the skirt", "From", "To"), rows)
