"""The outline of a flat panel: a rectangle, corners of one's own, or a named shape."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.inputs import choice, length, optional_length, optional_places
from handout_engine.amounts.lengths import ZERO, Length, Place
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.geometry import outlines
from handout_engine.geometry.polygons import Polygon, sides_that_meet

RECTANGLE, YOKE, POCKET, POLYGON = "rectangle", "yoke inset", "pocket top", "polygon"
BOUNDS = ("1 in", "16 in")
MOST_CORNERS = 40
TAPE = Tape(finest=32)


class PanelInputs:
    """The finished outline of a panel, seen from its right side."""

    outline = choice(
        "outline",
        "A rectangle; a yoke inset, hollowed at its top; a pocket top, hanging lowest at its "
        "middle; or a polygon by its corners.",
        RECTANGLE,
        YOKE,
        POCKET,
        POLYGON,
    )
    width = length(
        "width", "Finished width across its top; a polygon has its corners instead.", "4 in", BOUNDS
    )
    depth = length(
        "depth",
        "Finished depth at its deepest; a polygon has its corners instead.",
        "2 1/2 in",
        BOUNDS,
    )
    lower_width = optional_length(
        "lower width", "Width of a yoke inset along its lower edge.", "as wide as width", BOUNDS
    )
    neck_width = optional_length(
        "neck width",
        "Width of the hollow in the upper edge of a yoke inset.",
        "half of width",
        ("1/4 in", "16 in"),
        basis=PRACTICE,
    )
    neck_depth = optional_length(
        "neck depth",
        "Depth of that hollow at its middle.",
        "a quarter of depth, or of the hollow's width if that is less",
        ("0 in", "8 in"),
        basis=PRACTICE,
    )
    side_depth = optional_length(
        "side depth",
        "Depth of a pocket top at its sides.",
        "depth less an eighth of width, or half of depth if that is more",
        ("1/4 in", "16 in"),
        basis=PRACTICE,
    )
    corners = optional_places(
        "corners",
        "Corners of a polygon in order round it, each so far across from the left and so far "
        "down from the top.",
        "not needed, unless the outline is a polygon",
        ("0 in", "20 in"),
        (3, MOST_CORNERS),
    )


@dataclass(frozen=True)
class Panel:
    """A finished outline in mm, its upper left corner of all at the origin, and its extent."""

    shape: Polygon
    width: Length
    depth: Length


def make_panel(asked: PanelInputs) -> Panel:
    """The outline that the inputs describe; raises RefusalError where there can be none."""
    if asked.outline == POLYGON:
        return _polygon(asked.corners)
    if asked.outline == YOKE:
        return _yoke(asked)
    if asked.outline == POCKET:
        return _pocket(asked)
    shape = outlines.rectangle(float(asked.width), float(asked.depth))
    return Panel(shape, asked.width, asked.depth)


def _polygon(corners: tuple[Place, ...] | None) -> Panel:
    if corners is None:
        raise RefusalError(
            "a polygon needs its corners; write them in order, as in 0 in, 0 in; 4 in, 0 in; "
            "2 in, 3 in",
            "corners",
        )
    left = min((corner.across for corner in corners), key=lambda each: each.mm)
    top = min((corner.down for corner in corners), key=lambda each: each.mm)
    placed = [((each.across - left).mm, (each.down - top).mm) for each in corners]
    meeting = sides_that_meet(placed)
    if meeting is not None:
        first, second = meeting
        what = f"sides {first} and {second} of the outline cross or touch each other"
        if first == second:
            what = f"corners {first} and {first % len(corners) + 1} are the same point"
        raise RefusalError(f"{what}; write each corner once, in order round the outline", "corners")
    width, depth = (Length(max(each)) for each in zip(*placed, strict=True))
    return Panel(tuple((float(x), float(y)) for x, y in placed), width, depth)


def _yoke(asked: PanelInputs) -> Panel:
    lower = asked.lower_width or asked.width
    hollow = asked.neck_width or asked.width / 2
    sag = asked.neck_depth
    if sag is None:
        sag = min(asked.depth, hollow) / 4
    if hollow > asked.width:
        raise RefusalError(
            f"neck_width {TAPE.say(hollow)} is wider than the inset; use at most its width, "
            f"{TAPE.no_more(asked.width)}",
            "neck_width",
        )
    if sag > hollow / 2:
        raise RefusalError(
            f"neck_depth {TAPE.say(sag)} is more than a half circle; use at most half of the "
            f"hollow's width, {TAPE.no_more(hollow / 2)}",
            "neck_depth",
        )
    if sag >= asked.depth:
        raise RefusalError(
            f"neck_depth {TAPE.say(sag)} cuts the inset in two; use less than its depth, "
            f"{TAPE.no_more(asked.depth)}",
            "neck_depth",
        )
    _refuse_cut_sides(asked, lower, hollow, sag)
    shape = outlines.yoke_inset(
        float(asked.width), float(lower), float(asked.depth), (float(hollow), float(sag))
    )
    return Panel(shape, max(asked.width, lower), asked.depth)


def _refuse_cut_sides(asked: PanelInputs, lower: Length, hollow: Length, sag: Length) -> None:
    """Sides that slant inward must stay clear of the hollow: judged at its deepest level."""
    if lower >= asked.width:
        return
    at_sag = asked.width - (asked.width - lower) * (sag / asked.depth)
    if hollow > at_sag:
        raise RefusalError(
            f"lower_width {TAPE.say(lower)} brings the sides into the hollow of the neck; use a "
            f"neck_width of at most {TAPE.no_more(at_sag)}, or a wider lower edge",
            "lower_width",
        )


def _pocket(asked: PanelInputs) -> Panel:
    side = asked.side_depth
    if side is None:
        side = max(asked.depth - asked.width / 8, asked.depth / 2)
    sag = asked.depth - side
    if sag < ZERO:
        raise RefusalError(
            f"side_depth {TAPE.say(side)} is deeper than the middle; use at most the depth, "
            f"{TAPE.no_more(asked.depth)}",
            "side_depth",
        )
    if sag > asked.width / 2:
        least = asked.depth - asked.width / 2
        raise RefusalError(
            f"side_depth {TAPE.say(side)} makes the lower edge more than a half circle; use at "
            f"least {TAPE.no_less(least)}",
            "side_depth",
        )
    shape = outlines.pocket_top(float(asked.width), float(side), float(asked.depth))
    return Panel(shape, asked.width, asked.depth)
