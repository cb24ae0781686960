"""The outline of a flat panel: a rectangle, corners of one's own, or a named shape."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.inputs import choice, length, optional_length, optional_places
from handout_engine.amounts.lengths import Length, Place, from_float, least, most
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import DRAWN, PRACTICE
from handout_engine.geometry import outlines
from handout_engine.geometry.polygons import Polygon, perimeter, sides_that_meet
from handout_engine.working.technique import Technique

RECTANGLE, YOKE, POCKET, POLYGON = "rectangle", "yoke inset", "pocket top", "polygon"
BOUNDS = ("1 in", "16 in")
MOST_CORNERS = 40


class PanelInputs(Technique):
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

    @check
    def a_polygon_has_corners(self) -> None:
        """Refuse a polygon without corners, or one whose sides meet."""
        if self.outline != POLYGON:
            return
        if self.corners is None:
            raise RefusalError(
                "a polygon needs its corners; write them in order, as in 0 in, 0 in; 4 in, 0 in; "
                "2 in, 3 in",
                "corners",
            )
        meeting = sides_that_meet([(each.across.mm, each.down.mm) for each in self.corners])
        if meeting is not None:
            first, second = meeting
            what = f"sides {first} and {second} of the outline cross or touch each other"
            if first == second:
                what = f"corners {first} and {first % len(self.corners) + 1} are the same point"
            raise RefusalError(
                f"{what}; write each corner once, in order round the outline", "corners"
            )

    @property
    def placed_corners(self) -> list[Place]:
        """The corners of a polygon, counted from its own left and top."""
        self.a_polygon_has_corners()
        corners = self.corners or ()
        left = min((each.across for each in corners), key=lambda each: each.mm)
        top = min((each.down for each in corners), key=lambda each: each.mm)
        return [Place(each.across - left, each.down - top) for each in corners]

    @value("lower edge of the inset")
    def lower_edge(self) -> Length | None:
        """Of a yoke inset; straight down from its top, unless it flares or narrows."""
        if self.outline != YOKE:
            return None
        return self.width if self.lower_width is None else self.lower_width

    @value("hollow of the inset, width", basis=PRACTICE)
    def hollow_width(self) -> Length | None:
        """Half of the top is left at the shoulders, unless the neck is given."""
        if self.outline != YOKE:
            return None
        return self.width / 2 if self.neck_width is None else self.neck_width

    @value("hollow of the inset, depth at its middle", basis=PRACTICE)
    def hollow_depth(self) -> Length | None:
        """Shallow enough for a shallow inset and for a narrow neck."""
        if self.hollow_width is None:
            return None
        if self.neck_depth is not None:
            return self.neck_depth
        return least(self.depth / 4, self.hollow_width / 4)

    @check
    def the_hollow_lies_in_the_inset(self) -> None:
        """Refuse a hollow that is wider than the inset, deeper than a half circle or than it."""
        hollow, sag = self.hollow_width, self.hollow_depth
        if hollow is None or sag is None:
            return
        if hollow > self.width:
            raise RefusalError(
                f"neck_width {TAPE.say(hollow)} is wider than the inset; use at most its width, "
                f"{TAPE.no_more(self.width)}",
                "neck_width",
            )
        if sag > hollow / 2:
            raise RefusalError(
                f"neck_depth {TAPE.say(sag)} is more than a half circle; use at most half of the "
                f"hollow's width, {TAPE.no_more(hollow / 2)}",
                "neck_depth",
            )
        if sag >= self.depth:
            raise RefusalError(
                f"neck_depth {TAPE.say(sag)} cuts the inset in two; use less than its depth, "
                f"{TAPE.no_more(self.depth)}",
                "neck_depth",
            )

    @check
    def the_sides_stay_clear_of_the_hollow(self) -> None:
        """Refuse sides that slant into the hollow: judged at its deepest level."""
        lower, hollow, sag = self.lower_edge, self.hollow_width, self.hollow_depth
        if lower is None or hollow is None or sag is None or lower >= self.width:
            return
        at_sag = self.width - (self.width - lower) * (sag / self.depth)
        if hollow > at_sag:
            raise RefusalError(
                f"lower_width {TAPE.say(lower)} brings the sides into the hollow of the neck; use "
                f"a neck_width of at most {TAPE.no_more(at_sag)}, or a wider lower edge",
                "lower_width",
            )

    @value("pocket top, depth at its sides", basis=PRACTICE)
    def depth_at_sides(self) -> Length | None:
        """A shallow arc along its lower edge, unless the sides are given."""
        if self.outline != POCKET:
            return None
        if self.side_depth is not None:
            return self.side_depth
        return most(self.depth - self.width / 8, self.depth / 2)

    @check
    def the_pocket_hangs_at_its_middle(self) -> None:
        """Refuse sides deeper than the middle, or a lower edge of more than a half circle."""
        side = self.depth_at_sides
        if side is None:
            return
        if side > self.depth:
            raise RefusalError(
                f"side_depth {TAPE.say(side)} is deeper than the middle; use at most the depth, "
                f"{TAPE.no_more(self.depth)}",
                "side_depth",
            )
        shallowest = self.depth - self.width / 2
        if side < shallowest:
            raise RefusalError(
                f"side_depth {TAPE.say(side)} makes the lower edge more than a half circle; use at "
                f"least {TAPE.no_less(shallowest)}",
                "side_depth",
            )

    @value("panel, finished width", basis=DRAWN)
    def panel_width(self) -> Length:
        """Where it is widest."""
        if self.outline != POLYGON:
            return self.width if self.lower_edge is None else most(self.width, self.lower_edge)
        return Length(max(each.across.mm for each in self.placed_corners))

    @value("panel, finished depth", basis=DRAWN)
    def panel_depth(self) -> Length:
        """Where it is deepest."""
        if self.outline != POLYGON:
            return self.depth
        return Length(max(each.down.mm for each in self.placed_corners))

    @drafted
    def panel_shape(self) -> Polygon:
        """The finished outline in mm, its upper left corner of all at the origin."""
        self.the_hollow_lies_in_the_inset()
        self.the_sides_stay_clear_of_the_hollow()
        self.the_pocket_hangs_at_its_middle()
        width, depth = float(self.width), float(self.depth)
        lower, hollow, sag = self.lower_edge, self.hollow_width, self.hollow_depth
        if self.outline == POLYGON:
            return tuple((float(each.across), float(each.down)) for each in self.placed_corners)
        if lower is not None and hollow is not None and sag is not None:
            return outlines.yoke_inset(width, float(lower), depth, (float(hollow), float(sag)))
        if self.depth_at_sides is not None:
            return outlines.pocket_top(width, float(self.depth_at_sides), depth)
        return outlines.rectangle(width, depth)

    @value("finished edge, once round", basis=DRAWN)
    def edge_length(self) -> Length:
        """What a binding or cord has to go round."""
        return from_float(perimeter(self.panel_shape))

    @value("centre of the panel, from its left")
    def centre_across(self) -> Length:
        """Where the first crossing lies, from side to side."""
        return self.panel_width / 2

    @value("centre of the panel, from its top")
    def centre_down(self) -> Length:
        """Where the first crossing lies, from top to bottom."""
        return self.panel_depth / 2
