"""Tucks fitted between a flat panel and a finished one: three measures give the fourth.

The flat panel is the finished one and twice the depth for every tuck. A count is whole, so what is
left over when it is worked out goes to the margins.
"""

from __future__ import annotations

from math import ceil

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, optional_length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most, more_than, ways
from handout_engine.families.tucks.tuck_rows import (
    LEFT,
    RIGHT,
    EqualTucks,
    TucksSewnThrough,
)
from handout_engine.families.tucks.tucking_pictures import add_pictures
from handout_engine.families.tucks.tucking_steps import add_preparing, add_tuck_steps
from handout_engine.working.worksheet import Worksheet

MOST_TUCKS = 40
USUAL_PANEL = constant("panel of the example", inches(12), PRACTICE)
USUAL_WIDTH = constant("finished width of the example", inches(8), PRACTICE)
USUAL_DEPTH = constant("depth of the example", inches("1/4"), PRACTICE)


class TuckFit(TucksSewnThrough, EqualTucks):
    """The missing one of panel, finished width, number of tucks and depth."""

    title = "Tucks to fit"
    family = "tucks"
    summary = (
        "Of flat panel, finished width, number of tucks and their depth, three give the fourth."
    )

    one_left_out = ("panel", "finished_width", "tucks", "depth")

    spare_width = length(
        "spare width",
        "Added to the width that is wanted, for what the turns of the tucks take; none, unless "
        "you keep some, since what a whole count leaves over is spare enough.",
        "0 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    panel = optional_length(
        "panel",
        "Width of the flat panel, raw edge to raw edge.",
        "worked out from the other three; 12 in when none of the four is given",
        ("4 in", "120 in"),
    )
    finished_width = optional_length(
        "finished width",
        "Width of the panel once tucked, raw edge to raw edge too.",
        "worked out from the other three; 8 in when none of the four is given",
        ("2 in", "40 in"),
    )
    tucks = optional_count(
        "tucks", "How many tucks.", "worked out from the other three", MOST_TUCKS
    )
    depth = optional_length(
        "depth of a tuck",
        "From the stitching to the fold.",
        "worked out from the other three; 1/4 in when none of the four is given",
        ("1/32 in", "2 in"),
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished.",
        "the wanted width shared out evenly, margins as wide as the spacing",
        ("1/32 in", "6 in"),
        in_use="tuck_spacing",
    )
    press = choice("press", "Which way the tucks lie, seen from the right side.", RIGHT, LEFT)

    @property
    def missing(self) -> list[str]:
        """Which of the four are not given; where none is, there is an example of three."""
        given = {name: getattr(self, name) for name in self.one_left_out}
        found = [name for name, amount in given.items() if amount is None]
        return found if len(found) < len(given) else ["tucks"]

    @check
    def three_are_given(self) -> None:
        """Refuse more or fewer than three of the four."""
        missing = self.missing
        if not missing:
            raise RefusalError(
                "all four of panel, finished_width, tucks and depth are given; leave one out, and "
                "it is worked out from the others",
                "tucks",
            )
        if len(missing) > 1:
            raise RefusalError(
                f"{' and '.join(missing)} are both missing; give three of panel, finished_width, "
                "tucks and depth, and the fourth is worked out",
                missing[0],
            )

    def _given(self, name: str, given: Length | None, usual: Length) -> Length | None:
        """One of the measures, or that of the example; None for the one to work out."""
        self.three_are_given()
        return usual if given is None and name not in self.missing else given

    @value("flat panel, raw edge to raw edge")
    def panel_cut_width(self) -> Length:
        """As given, or the wanted width and what tucks and spare take besides."""
        given = self._given("panel", self.panel, USUAL_PANEL)
        return self.wanted_width + self.take_up + self.spare_width if given is None else given

    @value("wanted width, raw edge to raw edge")
    def wanted_width(self) -> Length:
        """As given, or what tucks and spare leave of the panel."""
        given = self._given("finished_width", self.finished_width, USUAL_WIDTH)
        return self.panel_cut_width - self.take_up - self.spare_width if given is None else given

    @value("cloth to be taken up")
    def to_take(self) -> Length:
        """What lies between the panel and the wanted width."""
        return self.panel_cut_width - self.wanted_width - self.spare_width

    @value("tucks")
    def tuck_count(self) -> Count:
        """As given, or as many as go into the cloth to be taken up: a count is whole."""
        self.three_are_given()
        if self.tucks is not None:
            return self.tucks
        return (self.to_take / (2 * self.tuck_depth)).rounded_down()

    @value("depth of a tuck")
    def tuck_depth(self) -> Length:
        """As given, or half of each tuck's share of the cloth to be taken up."""
        given = self._given("depth", self.depth, USUAL_DEPTH)
        return self.to_take / (2 * self.tuck_count) if given is None else given

    @property
    def _and_spare(self) -> str:
        return " with its spare" if self.spare_width else ""

    @check
    def the_tucks_leave_some_panel(self) -> None:
        """Refuse tucks that take the whole panel."""
        panel = self.panel_cut_width - self.spare_width
        if self.missing == ["finished_width"] and self.take_up >= panel:
            most = ceil(panel / (2 * self.tuck_depth)) - 1
            fewer = at_most(self, "tucks", most, "at most {} tucks")
            raise RefusalError(
                f"the tucks take {TAPE.both(self.take_up)}, all of the panel of "
                f"{TAPE.say(self.panel_cut_width)}{self._and_spare}; use "
                f"{ways(fewer, 'shallower ones')}",
                "tucks",
            )

    @check
    def there_is_cloth_to_take_up(self) -> None:
        """Refuse a panel that is no wider than it shall become."""
        panel, wanted = self.panel_cut_width, self.wanted_width
        if panel <= wanted + self.spare_width:
            wider = more_than(self, "panel", wanted + self.spare_width, "a panel wider than {}")
            raise RefusalError(
                f"panel {TAPE.say(panel)} is no wider than finished_width {TAPE.say(wanted)}"
                f"{self._and_spare}, so no tuck can be taken from it; use "
                f"{ways(wider, 'a smaller finished_width')}",
                "panel",
            )

    @check
    def the_count_can_be_sewn(self) -> None:
        """Refuse a depth of which not one tuck, or too many, would be taken."""
        depth, to_take = self.tuck_depth, self.to_take
        if self.tuck_count < 1:
            shallower = at_most(self, "depth", to_take / 2, "a depth of at most {}")
            raise RefusalError(
                f"one tuck {TAPE.say(depth)} deep takes {TAPE.both(2 * depth)}, and only "
                f"{TAPE.both(to_take)} is to be taken up; use {ways(shallower, 'a wider panel')}",
                "depth",
            )
        if self.tuck_count > MOST_TUCKS:
            least = to_take / (2 * MOST_TUCKS)
            deeper = at_least(self, "depth", least, "a depth of at least {}")
            raise RefusalError(
                f"{self.tuck_count} tucks would be needed, more than {MOST_TUCKS}; use "
                f"{ways(deeper, 'a narrower panel')}",
                "depth",
            )

    @value("tucked panel, raw edge to raw edge")
    def tucked_width(self) -> Length:
        """The width that comes of whole tucks."""
        return self.panel_cut_width - self.take_up - self.spare_width

    @value("left over for the margins, since a count is whole")
    def left_over(self) -> Length:
        """Half of it goes to each margin."""
        return self.tucked_width - self.wanted_width

    @check
    def the_width_is_more_than_its_seams(self) -> None:
        """Refuse a width that its side seams take whole."""
        seams = 2 * self.side_allowance
        if self.wanted_width <= seams:
            wider = more_than(self, "finished_width", seams, "a finished_width of more than {}")
            raise RefusalError(
                f"finished_width {TAPE.say(self.wanted_width)} is all seam, for it runs "
                f"from raw edge to raw edge; use {ways(wider, 'narrower side allowances')}",
                "finished_width",
            )

    @value("wanted width, seam to seam")
    def wanted_inside(self) -> Length:
        """What tucks and margins share."""
        return self.wanted_width - 2 * self.side_allowance

    @value("from stitching to stitching")
    def tuck_spacing(self) -> Length:
        """As asked for, or shared out evenly, the margins as wide."""
        if self.spacing is not None:
            return self.spacing
        return self.wanted_inside / (self.tuck_count + 1)

    @value("margin from each seam to the nearest stitching")
    def margin(self) -> Length:
        """Half of what the tucks leave between the seams."""
        return (self.tucked_width - 2 * self.side_allowance - self.span) / 2

    @property
    def tucks_and_depth(self) -> tuple[Count, Length]:
        """How many tucks, and how deep each."""
        return self.tuck_count, self.tuck_depth

    def sew(self, sheet: Worksheet) -> None:
        """Tuck by tuck, then pressed and trimmed."""
        add_preparing(sheet, self)
        add_tuck_steps(sheet, self.press, self.tuck_count.number)

    def draw(self, sheet: Worksheet) -> None:
        """The panel, finished and flat, and one tuck."""
        add_pictures(sheet, self, sheet["tuck_depth"])


TECHNIQUE = TuckFit
