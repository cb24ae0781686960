"""The seams of fine sewing: what each takes of the cloth on either side, and what it leaves.

What is taken is measured from the raw edge to the line where the two layers meet. Allowances are
habits of the trade, so each is an input with a default.
"""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, length, optional_length
from handout_engine.amounts.lengths import Length, inches, millimetres, most
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most, less_than, ways
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Seam

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


class SeamInputs(Technique):
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

    @value("first French seam trimmed to", basis=PRACTICE)
    def trimmed(self) -> Length | None:
        """So narrow that no thread of it shows beyond the second."""
        if self.seam != FRENCH:
            return None
        return self.french_second / 2 if self.french_trim is None else self.french_trim

    @value("turned in under the fell", basis=PRACTICE)
    def turned(self) -> Length | None:
        """As asked for, or so much that it fills the fell."""
        if self.seam != FLAT_FELL:
            return None
        return self.fell_width if self.fell_turn is None else self.fell_turn

    @check
    def the_second_french_seam_hides_the_first(self) -> None:
        """Refuse a first seam that is trimmed wider than the second, or to more than there is."""
        trimmed = self.trimmed
        if trimmed is None:
            return
        if self.french_trim is not None and trimmed >= self.french_second:
            less = less_than(self, "french_trim", self.french_second)
            raise RefusalError(
                f"french_trim {TAPE.say(trimmed)} would show beyond the second seam; use "
                f"{ways(less, 'a deeper second seam')}",
                "french_trim",
            )
        if trimmed > self.french_first:
            raise RefusalError(
                f"french_first {TAPE.say(self.french_first)} leaves less than the "
                f"{TAPE.say(trimmed)} it is trimmed to; use "
                f"{ways(at_least(self, 'french_first', trimmed), 'a narrower second seam')}",
                "french_first",
            )

    @check
    def the_turn_lies_in_the_fell(self) -> None:
        """Refuse a turned edge that would reach past the seam."""
        if self.turned is not None and self.turned > self.fell_width:
            raise RefusalError(
                f"fell_turn {TAPE.say(self.turned)} is wider than fell_width "
                f"{TAPE.say(self.fell_width)}; the turned edge would reach past the seam (use "
                f"{ways(at_most(self, 'fell_turn', self.fell_width), 'a wider fell')})",
                "fell_turn",
            )

    @value("seam takes of the first layer")
    def first_takes(self) -> Length:
        """From its raw edge to the line where the two layers meet."""
        if self.turned is not None:
            return self.fell_width + self.turned
        if self.seam == FRENCH:
            return self.french_first + self.french_second
        if self.seam == PLAIN:
            return self.seam_allowance
        return self.pin_turn if self.seam == PIN_STITCH else self.roll

    @value("seam takes of the second layer")
    def second_takes(self) -> Length:
        """As much, save where one layer only reaches under the fold of the other."""
        return self.first_takes if self.seam != PIN_STITCH else self.pin_lap

    @value("finished width of the seam")
    def ridge(self) -> Length:
        """On the wrong side. A roll turns twice, so it is half as wide as the cloth it takes."""
        if self.seam == FRENCH:
            return self.french_second
        if self.seam == FLAT_FELL:
            return self.fell_width
        if self.seam == PLAIN:
            return 2 * self.seam_allowance
        if self.seam == PIN_STITCH:
            return most(self.pin_turn, self.pin_lap)
        return self.roll / 2 + self.roll / 2

    @property
    def gathers(self) -> bool:
        """Whether the second layer is gathered into the seam."""
        return self.seam == ROLLED_GATHERS

    @property
    def seams_of_both_layers(self) -> tuple[Seam, Seam]:
        """The seam as a working lists it, once for each layer."""
        return (
            Seam(f"{self.seam} seam, first layer", self.first_takes),
            Seam(f"{self.seam} seam, second layer", self.second_takes),
        )
