"""Yokes of gowns and dresses: front on the fold, back in two that lap and button.

The yoke is the upper part of the body block, down to a level inside the armhole; the skirt takes
the rest (`gathered_skirts`).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil

from handout_engine.amounts.inputs import SEWING, choice, count, length, length_by_choice, ratio
from handout_engine.amounts.lengths import ZERO, Length, from_float, inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import DRAWN, PRACTICE, published
from handout_engine.amounts.ways_out import at_least, ways, would_be
from handout_engine.bodies.measures import measured
from handout_engine.drafting.block import BlockInputs
from handout_engine.drafting.body_block import BodyBlock
from handout_engine.drafting.centre_panels import note_centre_panel
from handout_engine.drafting.clearances import (
    STEP,
    head_room,
    least_opening,
    note_head_clearance,
    opening,
)
from handout_engine.drafting.curves import Line, split_at_level
from handout_engine.drafting.drafts import FOLD, Draft, Edge
from handout_engine.drafting.pieces import Cutting, note_piece
from handout_engine.geometry.points import Point
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)
PLAIN, WORKED = "plain", "worked"
BOUND, COLLAR = "bound", "collar"
LEAST_FRONT = millimetres(25)
"""The front yoke's least depth at its centre: common practice."""
LEAST_PLACKET = millimetres(10)
"""How much longer than its lap is wide the placket usually is at least: common practice."""

NARROWEST_LAP = inches("1/2")


class YokeInputs(BlockInputs):
    """The inputs of a garment with a yoke that buttons at the back."""

    head = measured("head")
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
    opening: Length = opening()
    head_room: Length = head_room()
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
        neck, head, chest = (self._own(name, usual) for name in ("neck", "head", "chest"))
        yoke = (chest / 4 + self.armhole_ease) * self.yoke_share - self.back_neck_depth
        head_needs = least_opening(neck + self.neck_ease, head, self.head_room)
        return {**usual, "lap": lap, "opening": max(head_needs, _up(yoke + lap + LEAST_PLACKET))}

    def _own(self, name: str, usual: Mapping[str, Amount]) -> Length:
        """The baby's own measure, or the table's."""
        measure = getattr(self, name) or usual[name]
        assert isinstance(measure, Length)
        return measure


def _up(least: Length) -> Length:
    return STEP * ceil(least / STEP)


@dataclass(frozen=True)
class Yoke:
    """The drafted yoke: its level below the neck point, and the armhole above and below it.

    Its seam runs from the centre to `end`, all in mm.
    """

    front: Draft
    back: Draft
    level: float
    below: Line

    @property
    def end(self) -> Point:
        """Where the yoke seam meets the armhole."""
        return self.below[0]


def note_yoke(sheet: Worksheet, garment: YokeInputs, block: BodyBlock, cloth: str) -> Yoke:
    """Note the yoke's figures and cut it; raises RefusalError where it cannot be."""
    _note_lap(sheet, garment)
    depth = sheet.note("yoke_depth", "yoke, from the neck point to its seam",
                       sheet["armhole_depth"].length * garment.yoke_share,
                       "{armhole_depth} × {yoke_share}")  # fmt: skip
    _note_front_depth(sheet)
    above, below = split_at_level(block.armhole, depth.mm)
    front, back = _front(garment, block, above), _back(garment, block, above)
    edge = sheet.note("yoke_edge", "yoke seam at the front, from armhole to armhole",
                      from_float(2 * front.edge("yoke").length), "", basis=DRAWN)  # fmt: skip
    sheet.note("back_yoke_edge", "yoke seam of one back yoke, from the armhole to its edge",
               edge.length / 2 + garment.lap / 2, "{yoke_edge} / 2 + {beyond_centre}")  # fmt: skip
    _note_opening(sheet, garment)
    note_centre_panel(sheet, block)
    note_piece(sheet, front, Cutting(cloth, worked=garment.front == WORKED))
    note_piece(sheet, back, Cutting(cloth, 2))
    return Yoke(front, back, depth.mm, below)


def _note_lap(sheet: Worksheet, garment: YokeInputs) -> None:
    least = sheet.note("least_lap", "least lap for this button",
                       garment.button + 2 * garment.clearance, "{button} + 2 × {clearance}",
                       basis=published("extension-576"))  # fmt: skip
    sheet.note("beyond_centre", "back yoke, from the centre back to its edge", garment.lap / 2,
               "{lap} / 2")  # fmt: skip
    if garment.lap < least.length:
        raise RefusalError(
            f"lap {TAPE.say(garment.lap)} leaves less than {TAPE.say(garment.clearance)} beside a "
            f"button of {TAPE.say(garment.button)}; use "
            f"{ways(at_least(garment, 'lap', least.length), 'a smaller button')}",
            "lap",
        )
    if garment.facing < garment.lap:
        raise RefusalError(
            f"facing {TAPE.say(garment.facing)} does not reach under the buttons; use "
            f"{ways(at_least(garment, 'facing', garment.lap), 'a narrower lap')}",
            "facing",
        )


def _note_front_depth(sheet: Worksheet) -> None:
    """Note the front yoke's depth at its centre; refuses too little."""
    neck = sheet["front_neck_depth"].length
    front = sheet.note("front_yoke_depth", "front yoke at its centre, from neck to seam",
                       sheet["yoke_depth"].length - neck,
                       "{yoke_depth} - {front_neck_depth}")  # fmt: skip
    if front.length < LEAST_FRONT:
        share = (neck + LEAST_FRONT) / sheet["armhole_depth"].length
        deeper = at_least(sheet.technique, "yoke_share", share, "a yoke_share of at least {}")
        raise RefusalError(
            f"the front yoke {would_be(front.length, 'deep at its centre')}, less than "
            f"{TAPE.no_less(LEAST_FRONT)}; use {ways(deeper, 'less neck_ease or neck_drop')}",
            "yoke_share",
        )


def _front(garment: YokeInputs, block: BodyBlock, above: Line) -> Draft:
    seam, end = float(garment.seam_allowance), above[-1]
    bottom = (end, (0.0, end[1]))
    edges = (
        Edge("neck", block.front_neckline, seam),
        Edge("shoulder", (block.neck_point, block.shoulder), seam),
        Edge("armhole", above, seam),
        Edge("yoke", bottom, seam),
        Edge(FOLD, (bottom[1], block.front_neckline[0])),
    )
    return Draft("front yoke", edges, notches=((end[0] / 2, end[1]),))


def _back(garment: YokeInputs, block: BodyBlock, above: Line) -> Draft:
    """Its back edge is the fold of the facing, and the facing what is cut beyond it."""
    seam, end = float(garment.seam_allowance), above[-1]
    beyond, top = -float(garment.lap) / 2, block.back_neck
    corners = ((beyond, end[1]), (beyond, top))
    edges = (
        Edge("neck", (corners[1], *block.back_neckline), seam),
        Edge("shoulder", (block.neck_point, block.shoulder), seam),
        Edge("armhole", above, seam),
        Edge("yoke", (end, corners[0]), seam),
        Edge("back", corners, float(garment.facing)),
    )
    centre = ((0.0, top), (0.0, end[1]))
    return Draft(
        "back yoke",
        edges,
        notches=(*centre, (end[0] / 2, end[1])),
        remark="At its back edge the dashed line is the fold of the facing.",
    )


def _note_opening(sheet: Worksheet, garment: YokeInputs) -> None:
    """Note the opening in yoke and placket; refuses one too short for head or lap."""
    note_head_clearance(sheet, garment.opening)
    sheet.note("neck_run", "neck from one back edge to the other, with the lap",
               sheet["neck_edge"].length + garment.lap, "{neck_edge} + {lap}")  # fmt: skip
    edge = sheet.note("back_edge", "one back edge of the yoke, from neck to yoke seam",
                      sheet["yoke_depth"].length - garment.back_neck_depth,
                      "{yoke_depth} - {back_neck_depth}")  # fmt: skip
    _note_buttons(sheet, garment, edge.length)
    placket = sheet.note("placket_edge", "placket below the yoke seam",
                         garment.opening - edge.length, "{opening} - {back_edge}")  # fmt: skip
    if placket.length <= garment.lap:
        least = edge.length + garment.lap + millimetres(5)
        raise RefusalError(
            f"opening {TAPE.say(garment.opening)} leaves too little below the yoke for a placket "
            f"that laps {TAPE.say(garment.lap)}; use at least {TAPE.no_less(least)}, or a smaller "
            "lap",
            "opening",
        )
    sheet.note("placket_slit", "slit for the placket, from the raw edge of the skirt",
               placket.length + garment.seam_allowance,
               "{placket_edge} + {seam_allowance}")  # fmt: skip


def _note_buttons(sheet: Worksheet, garment: YokeInputs, edge: Length) -> None:
    """Note how far apart the buttons are; refuses those that have no room or would touch."""
    room = edge - 2 * garment.button
    if room < ZERO:
        most = sheet["yoke_depth"].length - 2 * garment.button
        raise RefusalError(
            f"back_neck_depth {TAPE.say(garment.back_neck_depth)} leaves no room for a button of "
            f"{TAPE.say(garment.button)} at the back edge of the yoke; use at most "
            f"{TAPE.no_more(most)}, or a smaller button, or more yoke_share",
            "back_neck_depth",
        )
    if garment.buttons == 1:
        return
    step = sheet.note("button_step", "from button to button", room / (garment.buttons - 1),
                      "({back_edge} - 2 × {button}) / ({buttons} - 1)", basis=PRACTICE)  # fmt: skip
    if step.length <= garment.button:
        most_buttons = max(1, ceil(room / garment.button))
        raise RefusalError(
            f"{garment.buttons} buttons of {TAPE.say(garment.button)} would touch on a back edge "
            f"of {TAPE.both(edge)}; use at most {most_buttons}, or smaller buttons",
            "buttons",
        )
