"""Equal tucks side by side in a panel: pin tucks, touching tucks, or tucks with a space between.

Every tuck takes twice its depth of the cloth. Where the lines lie on the flat panel does not
depend on how the tucks are pressed; whether the tucks have room does.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import choice, count, length, optional_length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.families.tucks.tuck_rows import (
    AWAY,
    LEFT,
    RIGHT,
    TOWARDS,
    EqualTucks,
    TucksSewnThrough,
)
from handout_engine.families.tucks.tucking import FinishedWidth
from handout_engine.families.tucks.tucking_pictures import add_pictures
from handout_engine.families.tucks.tucking_steps import add_preparing, add_tuck_steps
from handout_engine.working.worksheet import Worksheet

SPACED, PIN, BLIND = "spaced", "pin", "blind"
USUAL_DEPTH = constant("usual depth of a tuck", inches("1/4"), PRACTICE)
PIN_DEPTH = constant("usual depth of a pin tuck", inches("1/16"), published("home-school-sewing"))


class TuckSet(TucksSewnThrough, EqualTucks, FinishedWidth):
    """A number of equal tucks in a panel."""

    title = "Set of tucks"
    family = "tucks"
    summary = (
        "Equal tucks side by side: pin tucks, touching (blind) ones, or spaced, from the centre or "
        "from one edge."
    )

    kind = choice(
        "kind of tucks",
        "Spaced; pin, as narrow as can be sewn; or blind, touching.",
        SPACED,
        PIN,
        BLIND,
    )
    tucks = count("tucks", "How many tucks in one panel.", 5, 40)
    depth = optional_length(
        "depth of a tuck",
        "From the stitching to the fold.",
        "1/4 in, or 1/16 in for pin tucks",
        ("1/32 in", "3 in"),
        in_use="tuck_depth",
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished: the tuck's depth and the space "
        "that shows.",
        "the depth and half as much for spaced tucks, twice the depth for pin tucks, the depth "
        "for blind ones",
        ("1/32 in", "6 in"),
        in_use="tuck_spacing",
    )
    finished_width = length(
        "finished width",
        "Width of the tucked panel between its side seams.",
        "6 in",
        ("2 in", "40 in"),
    )
    first_margin = optional_length(
        "margin at the left edge",
        "From the left seam to the first stitching, for a set that starts from that edge.",
        "the set stands in the middle, both margins alike",
        ("0 in", "40 in"),
        in_use="margin",
    )
    press = choice(
        "press", "Which way the tucks lie, seen from the right side.", RIGHT, LEFT, AWAY, TOWARDS
    )

    @value("depth of a tuck")
    def tuck_depth(self) -> Length:
        """As asked for, or as is usual for the kind."""
        if self.depth is not None:
            return self.depth
        return PIN_DEPTH if self.kind == PIN else USUAL_DEPTH

    @check
    def blind_tucks_touch(self) -> None:
        """Refuse touching tucks that are told to stand apart."""
        if self.kind == BLIND and self.spacing not in (None, self.tuck_depth):
            raise RefusalError(
                f"blind tucks touch, so they stand {TAPE.both(self.tuck_depth)} apart, their own "
                f"depth; leave spacing out, or write kind: {SPACED}",
                "spacing",
            )

    @value("usual distance of such tucks", basis=published("home-school-sewing"))
    def usual_spacing(self) -> Length | None:
        """Half a depth shows, and of pin tucks a whole; None for those that touch."""
        if self.kind == BLIND:
            return None
        return 2 * self.tuck_depth if self.kind == PIN else self.tuck_depth * 3 / 2

    @value("from stitching to stitching")
    def tuck_spacing(self) -> Length:
        """As asked for, or as is usual; blind tucks touch."""
        if self.spacing is not None:
            return self.spacing
        return self.tuck_depth if self.usual_spacing is None else self.usual_spacing

    @value("flat cloth for one touching tuck", basis=published("home-school-sewing"))
    def blind_step(self) -> Length | None:
        """Three times its depth; None for tucks of another kind."""
        return 3 * self.tuck_depth if self.kind == BLIND else None

    @value("from each tuck's first line to the next one's, flat")
    def flat_step(self) -> Length:
        """What every line of a tuck is moved by for the next."""
        if self.blind_step is not None:
            return self.blind_step
        return self.tuck_spacing + 2 * self.tuck_depth

    @value("space that shows between two tucks")
    def space(self) -> Length | None:
        """None where tucks lie over one another."""
        space = self.tuck_spacing - self.tuck_depth
        return space if space.mm >= 0 else None

    @value("margin from the left seam to the first stitching")
    def margin(self) -> Length:
        """As asked for, or half of what the set leaves."""
        if self.first_margin is not None:
            return self.first_margin
        return (self.finished_width - self.span) / 2

    @value("margin from the last stitching to the right seam")
    def last_margin(self) -> Length:
        """What the set and the margin at the left leave."""
        return self.finished_width - self.span - self.margin

    @property
    def tucks_and_depth(self) -> tuple[Count, Length]:
        """How many tucks, and how deep each."""
        return self.tucks, self.tuck_depth

    @property
    def centred(self) -> bool:
        """A set that starts from the left edge is not."""
        return self.first_margin is None

    def sew(self, sheet: Worksheet) -> None:
        """Tuck by tuck, then pressed and trimmed."""
        add_preparing(sheet, self)
        add_tuck_steps(sheet, self.press, self.tucks.number)

    def draw(self, sheet: Worksheet) -> None:
        """The panel, finished and flat, and one tuck."""
        add_pictures(sheet, self, sheet["tuck_depth"])


TECHNIQUE = TuckSet
