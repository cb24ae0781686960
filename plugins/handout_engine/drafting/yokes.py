"""Yokes of gowns and dresses: front on the fold, back in two that lap and button.

The yoke is the upper part of the body block, down to a level inside the armhole; the skirt takes
the rest (`gathered_skirts`).
"""

from __future__ import annotations

from collections.abc import Mapping
from math import ceil

from handout_engine.amounts.declaring import check, drafted, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, length_by_choice, ratio
from handout_engine.amounts.lengths import Length, from_float, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import DRAWN, PRACTICE, published
from handout_engine.amounts.ways_out import at_least, ways, would_be
from handout_engine.drafting.clearances import HeadOpening, up_to_step
from handout_engine.drafting.curves import split_at_level
from handout_engine.drafting.pieces import CutPiece, HalfPiece
from handout_engine.drafting.yoke_drafts import BackEdge, Yoke, draft_yoke

PLAIN, WORKED = "plain", "worked"
BOUND, COLLAR = "bound", "collar"
LEAST_FRONT = millimetres(25)
"""The front yoke's least depth at its centre: common practice."""
LEAST_PLACKET = millimetres(10)
"""How much longer than its lap is wide the placket usually is at least: common practice."""
LEAST_MORE = millimetres(5)
"""How much longer than its lap is wide a placket is advised to be at least."""
NARROWEST_LAP = inches("1/2")


class YokeInputs(HeadOpening):
    """The inputs of a garment with a yoke that buttons at the back."""

    yoke_share = ratio(
        "yoke share",
        "Depth of the yoke for each unit of the armhole's depth.",
        "0.7",
        ("0.5", "0.9"),
        basis=PRACTICE,
    )
    front = choice(
        "front yoke",
        "Plain, or cut from cloth that is worked first: tucked, laced, embroidered.",
        PLAIN,
        WORKED,
    )
    panel_share = ratio(
        "centre panel share",
        "How far up a panel on the middle of the front yoke follows "
        "the neck, as a share of the neck's depth.",
        "0.6",
        ("0.2", "0.8"),
        basis=PRACTICE,
    )
    neck_finish = choice(
        "neck", "Bound with bias, or finished with a collar.", BOUND, COLLAR, group=SEWING
    )
    buttons = count("buttons", "How many close the back yoke.", 3, 8, basis=PRACTICE)
    button = length("button", "Its diameter.", "3/8 in", ("1/4 in", "3/4 in"), basis=PRACTICE)
    clearance = length(
        "clearance",
        "Least cloth between the button and the finished edge.",
        "1/4 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=published("extension-576"),
    )
    lap = length_by_choice(
        "lap",
        "How far one back yoke lies over the other.",
        "the button and the clearance on both its sides",
        ("1/2 in", "1 3/4 in"),
        basis=published("extension-576"),
    )
    facing = length(
        "back facing",
        "Cut in one with the back yoke, from its fold to the raw edge.",
        "1 1/4 in",
        ("1/2 in", "1 3/4 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The block's, the lap for the button, and an opening for head and placket."""
        usual = super().usual
        lap = self.lap or max(self.button + 2 * self.clearance, NARROWEST_LAP)
        armhole = self.own("chest", usual) / 4 + self.armhole_ease
        back = armhole * self.yoke_share - self.back_neck_depth
        opening = max(self.least_opening, up_to_step(back + lap + LEAST_PLACKET))
        return {**usual, "lap": lap, "opening": opening}

    @value("least lap for this button", basis=published("extension-576"))
    def least_lap(self) -> Length:
        """Half the button and the clearance on both sides of the centre."""
        return self.button + 2 * self.clearance

    @value("back yoke, from the centre back to its edge")
    def beyond_centre(self) -> Length:
        """Each back yoke reaches as far beyond the centre as the other."""
        return self.lap / 2

    @check
    def the_lap_holds_the_button(self) -> None:
        """Refuse a lap that leaves too little cloth beside the button."""
        if self.lap < self.least_lap:
            raise RefusalError(
                f"lap {TAPE.say(self.lap)} leaves less than {TAPE.say(self.clearance)} beside a "
                f"button of {TAPE.say(self.button)}; use "
                f"{ways(at_least(self, 'lap', self.least_lap), 'a smaller button')}",
                "lap",
            )

    @check
    def the_facing_lies_under_the_buttons(self) -> None:
        """Refuse a facing that is narrower than the lap."""
        if self.facing < self.lap:
            raise RefusalError(
                f"facing {TAPE.say(self.facing)} does not reach under the buttons; use "
                f"{ways(at_least(self, 'facing', self.lap), 'a narrower lap')}",
                "facing",
            )

    @value("yoke, from the neck point to its seam")
    def yoke_depth(self) -> Length:
        """Down to a level inside the armhole."""
        return self.armhole_depth * self.yoke_share

    @value("front yoke at its centre, from neck to seam")
    def front_yoke_depth(self) -> Length:
        """What the neck leaves of it."""
        return self.yoke_depth - self.front_neck_depth

    @check
    def the_front_yoke_is_deep_enough(self) -> None:
        """Refuse a front yoke of which the neck leaves too little."""
        if self.front_yoke_depth < LEAST_FRONT:
            share = (self.front_neck_depth + LEAST_FRONT) / self.armhole_depth
            deeper = at_least(self, "yoke_share", share, "a yoke_share of at least {}")
            raise RefusalError(
                f"the front yoke {would_be(self.front_yoke_depth, 'deep at its centre')}, less "
                f"than {TAPE.no_less(LEAST_FRONT)}; use "
                f"{ways(deeper, 'less neck_ease or neck_drop')}",
                "yoke_share",
            )

    @drafted
    def yoke(self) -> Yoke:
        """Front and back; raises RefusalError where it cannot be drafted, or put on."""
        block = self.block
        self.the_lap_holds_the_button()
        self.the_facing_lies_under_the_buttons()
        self.the_front_yoke_is_deep_enough()
        self.the_head_passes()
        self.the_buttons_stand_apart()
        self.the_placket_is_longer_than_its_lap_is_wide()
        back = BackEdge(float(self.beyond_centre), float(self.facing))
        return draft_yoke(block, float(self.yoke_depth), back, float(self.seam_allowance))

    @value("yoke seam at the front, from armhole to armhole", basis=DRAWN)
    def yoke_edge(self) -> Length:
        """What the skirt front is taken in to."""
        return from_float(2 * self.yoke.front.edge("yoke").length)

    @value("yoke seam of one back yoke, from the armhole to its edge")
    def back_yoke_edge(self) -> Length:
        """What half of the skirt back is taken in to."""
        return self.yoke_edge / 2 + self.beyond_centre

    @value("neck from one back edge to the other, with the lap")
    def neck_run(self) -> Length:
        """What is bound: the neck closed, and what laps."""
        return self.neck_edge + self.lap

    @value("one back edge of the yoke, from neck to yoke seam")
    def back_edge(self) -> Length:
        """What the buttons stand on."""
        return self.yoke_depth - self.back_neck_depth

    @check
    def the_back_edge_holds_a_button(self) -> None:
        """Refuse a back edge on which a button has no room above and below."""
        if self.back_edge < 2 * self.button:
            most = self.yoke_depth - 2 * self.button
            raise RefusalError(
                f"back_neck_depth {TAPE.say(self.back_neck_depth)} leaves no room for a button of "
                f"{TAPE.say(self.button)} at the back edge of the yoke; use at most "
                f"{TAPE.no_more(most)}, or a smaller button, or more yoke_share",
                "back_neck_depth",
            )

    @value("from button to button", basis=PRACTICE)
    def button_step(self) -> Length | None:
        """The first and the last stand a button's width from neck and yoke seam."""
        if self.buttons == 1:
            return None
        return (self.back_edge - 2 * self.button) / (self.buttons - 1)

    @check
    def the_buttons_stand_apart(self) -> None:
        """Refuse so many buttons that they would touch."""
        self.the_back_edge_holds_a_button()
        if self.button_step is not None and self.button_step <= self.button:
            room = self.back_edge - 2 * self.button
            raise RefusalError(
                f"{self.buttons} buttons of {TAPE.say(self.button)} would touch on a back edge "
                f"of {TAPE.both(self.back_edge)}; use at most "
                f"{max(1, ceil(room / self.button))}, or smaller buttons",
                "buttons",
            )

    @value("placket below the yoke seam")
    def placket_edge(self) -> Length:
        """What of the opening lies in the skirt."""
        return self.opening - self.back_edge

    @check
    def the_placket_is_longer_than_its_lap_is_wide(self) -> None:
        """Refuse an opening that ends so near below the yoke that no placket can be made."""
        if self.placket_edge <= self.lap:
            least = self.back_edge + self.lap + LEAST_MORE
            raise RefusalError(
                f"opening {TAPE.say(self.opening)} leaves too little below the yoke for a placket "
                f"that laps {TAPE.say(self.lap)}; use at least {TAPE.no_less(least)}, or a smaller "
                "lap",
                "opening",
            )

    @value("slit for the placket, from the raw edge of the skirt")
    def placket_slit(self) -> Length:
        """The yoke seam takes its allowance of it."""
        return self.placket_edge + self.seam_allowance

    @value("centre panel, depth of its hollow for the neck")
    def centre_panel_hollow(self) -> Length:
        """So far up beside the neck a panel on the middle of the front yoke reaches."""
        return self.front_neck_depth * self.panel_share

    @value("centre panel, from side to side", basis=DRAWN)
    def centre_panel_width(self) -> Length:
        """Its upright sides meet the neck there."""
        level = self.block.front_neck - float(self.centre_panel_hollow)
        neckline = tuple(reversed(self.block.front_neckline))
        return from_float(2 * split_at_level(neckline, level)[1][0][0])

    @value("centre panel at its sides, from the neck to the yoke seam")
    def centre_panel_depth(self) -> Length:
        """Its lower edge is the yoke seam."""
        return self.front_yoke_depth + self.centre_panel_hollow

    @group
    def yoke_pieces(self) -> tuple[CutPiece, ...]:
        """The front on the fold, the back twice."""
        front = HalfPiece(self.yoke.front, worked=self.front == WORKED)
        return front, CutPiece(self.yoke.back, 2)
