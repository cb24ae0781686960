"""A pillow cover with an envelope back: plain, with a flange, or with a ruffle in its seam.

The back is two panels that lap over one another in the middle, each with a double hem; a flange is
the part of the cover beyond a line of stitching round the pillow.
"""

from __future__ import annotations

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.families.nursery.pillow_cover_drawing import (
    Pillow,
    back_scene,
    front_scene,
    section_scene,
)
from handout_engine.families.nursery.pillow_cover_steps import (
    FLANGED,
    PLAIN,
    RUFFLED,
    add_sample,
    add_steps,
    add_supplies,
)
from handout_engine.working.workings import Grain, Piece, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "cover cloth"


class PillowCover(ClothInputs):
    """A cover that is slipped off through the lapped back."""

    title = "Pillow cover"
    family = "nursery"
    summary = "A small pillow's cover with a lapped back: with a flange, with a ruffle, or plain."

    edge = choice(
        "edge",
        "A flange beyond the pillow, a ruffle in the seam, or neither.",
        FLANGED,
        RUFFLED,
        PLAIN,
    )
    pillow_width = length(
        "pillow width",
        "The pillow from top to bottom, seam to seam.",
        "12 in",
        ("4 in", "30 in"),
        basis=PRACTICE,
    )
    pillow_length = length(
        "pillow length",
        "The pillow from side to side, the longer way.",
        "16 in",
        ("4 in", "40 in"),
        basis=PRACTICE,
    )
    ease = length(
        "ease",
        "Added to both measures; a full pillow wants none.",
        "0 in",
        ("0 in", "2 in"),
        basis=PRACTICE,
    )
    flange = length(
        "flange",
        "Width beyond the pillow, where there is a flange.",
        "2 in",
        ("1/2 in", "6 in"),
        basis=PRACTICE,
    )
    corner = length(
        "rounding",
        "Radius of the corners that a ruffle goes round.",
        "1 in",
        ("0 in", "6 in"),
        basis=PRACTICE,
    )
    make = count("how many", "How many covers are made.", 1, 12)
    overlap = length(
        "overlap",
        "How far the two panels of the back lie over each other.",
        "4 in",
        ("1 in", "12 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    back_hem = length(
        "back hem",
        "Depth of one turn of the double hem at the opening.",
        "1 in",
        ("1/4 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    seam_allowance = length(
        "seam allowance",
        "Of the seam round the cover.",
        "1/2 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("cover over the pillow, top to bottom")
    def inner_width(self) -> Length:
        """The pillow and its ease."""
        return self.pillow_width + self.ease

    @value("cover over the pillow, side to side")
    def inner_length(self) -> Length:
        """The pillow and its ease."""
        return self.pillow_length + self.ease

    @value("flange of this cover", basis=GIVEN)
    def no_flange(self) -> Length | None:
        """Nothing, where there is none."""
        return None if self.edge == FLANGED else ZERO

    @property
    def beyond(self) -> Length:
        """What the cover has beyond the pillow."""
        return self.flange if self.no_flange is None else self.no_flange

    @value("whole cover, top to bottom")
    def cover_width(self) -> Length:
        """With its flange."""
        return self.inner_width + 2 * self.beyond

    @value("whole cover, side to side")
    def cover_length(self) -> Length:
        """With its flange."""
        return self.inner_length + 2 * self.beyond

    @check
    def the_panels_lap_on_the_pillow(self) -> None:
        """Refuse panels that lap further than the pillow is long."""
        if self.overlap > self.inner_length:
            less = at_most(self, "overlap", self.inner_length)
            raise RefusalError(
                f"overlap {TAPE.say(self.overlap)} is more than the pillow is long, "
                f"{TAPE.say(self.inner_length)}; use {ways(less, 'a longer pillow')}",
                "overlap",
            )

    @check
    def the_hem_lies_in_the_lap(self) -> None:
        """Refuse a hem that would show beyond the other panel."""
        if self.back_hem > self.overlap:
            raise RefusalError(
                f"back_hem {TAPE.say(self.back_hem)} is deeper than the panels lap, "
                f"{TAPE.say(self.overlap)}; use "
                f"{ways(at_most(self, 'back_hem', self.overlap), 'more overlap')}",
                "back_hem",
            )

    @check
    def corners_leave_some_of_each_side(self) -> None:
        """Refuse corners that are rounder than the pillow."""
        short = min(self.inner_length, self.inner_width)
        if self.edge == RUFFLED and 2 * self.corner > short:
            raise RefusalError(
                f"corner {TAPE.say(self.corner)} rounds more than a whole side of the pillow; use "
                f"{ways(at_most(self, 'corner', short / 2), 'a larger pillow')}",
                "corner",
            )

    @value("front and back panels, cut from top to bottom", saying=Saying.UP)
    def cut_width(self) -> Length:
        """With both seams."""
        return self.cover_width + 2 * self.seam_allowance

    @value("front, cut from side to side", saying=Saying.UP)
    def front_cut_length(self) -> Length:
        """With both seams."""
        return self.cover_length + 2 * self.seam_allowance

    @check
    def the_front_fits_the_cloth(self) -> None:
        """Refuse a front that no way of laying fits on the cloth."""
        if self.front_cut_length > self.usable_width:
            most = self.usable_width - (self.front_cut_length - self.pillow_length)
            shorter = at_most(self, "pillow_length", most, "a pillow at most {} long")
            raise RefusalError(
                f"the front is cut {TAPE.both(self.front_cut_length)} and the cloth is only "
                f"{TAPE.both(self.usable_width)} wide between its selvages; use "
                f"{ways(shorter, 'wider cloth')}",
                "pillow_length",
            )

    @value("back panel, finished")
    def panel_length(self) -> Length:
        """Both together are the cover and what they lap."""
        return (self.cover_length + self.overlap) / 2

    @value("back panel, cut from side to side", saying=Saying.UP)
    def panel_cut_length(self) -> Length:
        """With a seam at one end and a double hem at the other."""
        return self.panel_length + self.seam_allowance + 2 * self.back_hem

    @value("back panel, hemmed, from its raw edge")
    def panel_hemmed(self) -> Length:
        """What is measured before it is sewn on."""
        return self.panel_length + self.seam_allowance

    @value("back panels in all")
    def panels(self) -> Count:
        """Two to a cover."""
        return 2 * self.make

    @value("seam round the pillow, edge of the ruffle")
    def ruffle_edge(self) -> Length | None:
        """A rounded corner is shorter than a square one by (2 - π / 2) of its radius."""
        if self.edge != RUFFLED:
            return None
        return 2 * (self.inner_width + self.inner_length) - (8 - 2 * PI) * self.corner

    @value("rounding as it is cut")
    def cut_corner(self) -> Length | None:
        """The cut runs a seam outside the seam."""
        return self.corner + self.seam_allowance if self.edge == RUFFLED else None

    @group
    def cloth_bought(self) -> ClothBought:
        """One cloth."""
        return ClothBought(self, CLOTH)

    def cut(self, sheet: Worksheet) -> None:
        """The front, and two panels for the back."""
        wide = sheet["cut_width"]
        front, panel = sheet["front_cut_length"], sheet["panel_cut_length"]
        sheet.pieces.append(Piece("front", CLOTH, self.make.number, wide, front, Grain.CROSS))
        sheet.pieces.append(
            Piece("back panel", CLOTH, self.panels.number, wide, panel, Grain.CROSS)
        )
        sheet.seams.append(Seam("round the cover", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the cut pieces to the filled cover."""
        add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The cover, its back, and the lap cut through."""
        _draw(sheet, self)


def _draw(sheet: Worksheet, cover: PillowCover) -> None:
    names = (
        "inner_width",
        "inner_length",
        "cover_width",
        "cover_length",
        "flange",
        "overlap",
        "panel_length",
        "back_hem",
        "corner",
    )
    drawn = Pillow(
        {name: sheet[name] for name in names}, cover.edge == FLANGED, cover.edge == RUFFLED
    )
    caption = {
        FLANGED: "The finished cover, its flange beyond the stitching.",
        RUFFLED: "The finished cover; its ruffle has a page of its own.",
        PLAIN: "The finished cover.",
    }[cover.edge]
    sheet.show("finished", caption, front_scene(drawn), finished=True)
    sheet.show("back", "The back: the right panel lies over the left one.", back_scene(drawn))
    sheet.show(
        "section",
        "The back cut through from side to side, thickness "
        "enlarged: both panels end in a double hem.",
        section_scene(drawn),
    )


TECHNIQUE = PillowCover
