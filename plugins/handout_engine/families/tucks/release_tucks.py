"""Tucks stitched over part of their length and left open: narrow where they are sewn, full beyond.

Above the end of the stitching the panel is as narrow as any tucked one; beyond it the cloth of the
tucks is set free and the panel is as wide as it was cut.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import published
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import less_than, ways
from handout_engine.families.tucks.tuck_rows import (
    AWAY,
    LEFT,
    RIGHT,
    TOWARDS,
    EqualTucks,
)
from handout_engine.families.tucks.tucking import FinishedWidth
from handout_engine.families.tucks.tucking_drawing import Released, released_scene
from handout_engine.families.tucks.tucking_pictures import TUCK_LINES, tuck_picture
from handout_engine.families.tucks.tucking_steps import add_preparing, pressed
from handout_engine.shared.folds_drawing import Drawn, chart_picture
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet

BELOW, BOTH = "below", "above and below"


class ReleaseTucks(EqualTucks, FinishedWidth):
    """Tucks whose fullness is let go at the end of the stitching."""

    title = "Release tucks"
    family = "tucks"
    panel_name = "panel for release tucks"
    summary = (
        "Tucks stitched for part of the panel and then freed, so that it is narrow where they are "
        "sewn and full beyond."
    )

    tucks = count("tucks", "How many tucks in one panel.", 6, 40)
    depth = length(
        "depth of a tuck", "From the stitching to the fold.", "1/4 in", ("1/32 in", "2 in")
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished.",
        "one and a half times the depth; twice the depth between two that face the centre",
        ("1/32 in", "6 in"),
        in_use="tuck_spacing",
    )
    finished_width = length(
        "finished width",
        "Width between the side seams where the tucks are sewn.",
        "6 in",
        ("2 in", "40 in"),
    )
    stitched = length(
        "stitched length", "How long each tuck is stitched.", "3 in", ("1/4 in", "18 in")
    )
    freed = choice(
        "freed", "Below the stitching only, or above and below, as at a waist.", BELOW, BOTH
    )
    top = length(
        "free at the top",
        "From the upper seam to the stitching, freed above and below.",
        "2 in",
        ("1/8 in", "12 in"),
    )
    press = choice(
        "press",
        "Which way the tucks lie, seen from the right side.",
        RIGHT,
        LEFT,
        AWAY,
        TOWARDS,
        group=SEWING,
    )

    @check
    def some_of_the_panel_is_released(self) -> None:
        """Refuse stitching that runs to the lower edge."""
        above = self.top if self.freed == BOTH else ZERO
        if above + self.stitched >= self.panel_length:
            way = ways(less_than(self, "stitched", self.panel_length - above), "a longer panel")
            raise RefusalError(
                f"the stitching ends {TAPE.say(above + self.stitched)} below the upper seam, and "
                f"the panel is {TAPE.say(self.panel_length)} long, so nothing is released; use "
                f"{way}",
                "stitched",
            )

    @value("usual distance of such tucks", basis=published("home-school-sewing"))
    def usual_spacing(self) -> Length | None:
        """Half a depth shows; None for two that face the centre, whose folds lie between them."""
        return None if self.press == TOWARDS else self.depth * 3 / 2

    @value("from stitching to stitching")
    def tuck_spacing(self) -> Length:
        """As asked for, or as is usual; two that face the centre touch there."""
        if self.spacing is not None:
            return self.spacing
        return 2 * self.depth if self.usual_spacing is None else self.usual_spacing

    @value("margin from each seam to the nearest stitching")
    def margin(self) -> Length:
        """Half of what the tucks leave."""
        return (self.finished_width - self.span) / 2

    @value("width where the tucks are freed, seam to seam")
    def released_width(self) -> Length:
        """What the tucks take is given back."""
        return self.finished_width + self.take_up

    @value("fullness where they are freed, to the tucked width")
    def fullness(self) -> Ratio:
        """By it one chooses the cloth, as for gathers."""
        return self.released_width / self.finished_width

    @value("start of the stitching, from the upper raw edge")
    def stitch_start(self) -> Length | None:
        """None where the tucks are sewn into the upper seam."""
        return self.end_allowance + self.top if self.freed == BOTH else None

    @value("end of the stitching, from the upper raw edge")
    def stitch_end(self) -> Length:
        """All tucks end level."""
        start = self.end_allowance if self.stitch_start is None else self.stitch_start
        return start + self.stitched

    @property
    def tucks_and_depth(self) -> tuple[Count, Length]:
        """How many tucks, and how deep each."""
        return self.tucks, self.depth

    def sew(self, sheet: Worksheet) -> None:
        """Tucks stitched as far as they are marked, and pressed so far."""
        add_preparing(sheet, self)
        into_seam = self.freed == BELOW
        where = "the upper raw edge" if into_seam else "the mark {stitch_start} below it"
        start = "" if into_seam else ", and one at {stitch_start}, where it begins"
        sheet.step(
            "Across the panel mark a line {stitch_end} below the upper raw edge, where the "
            f"stitching ends{start}."
        )
        sheet.step(
            "Fold wrong sides together along the first fold line, so that its two stitching lines "
            "lie on each other; press only as far as the tuck is sewn.",
        )
        sheet.step(
            f"Stitch {{depth}} from the fold, from {where} to the mark at {{stitch_end}}. Fasten "
            "each free end by drawing the threads to the wrong side and knotting them, or by a few "
            "stitches of no length: the strain of the fullness comes on that stitch. Sew the "
            "others alike.",
            "all tucks end level, {stitch_end} below the upper raw edge, and across them the panel "
            "is {tucked_width} from raw edge to raw edge.",
        )
        ends = (
            "baste the tucks down across the upper edge."
            if into_seam
            else "leave the cloth above and below it round."
        )
        sheet.step(
            f"Press the sewn part {pressed(self.press, self.tucks.number)}, keeping the iron off "
            f"the freed cloth, and {ends}",
            "below the stitching the panel lies {panel_cut_width} wide from raw edge to raw edge.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The panel between its seams, flat, and one tuck."""
        panel, finished, flat = self.folded, sheet["finished_width"], sheet["released_width"]
        words = sheet.sentence(
            "{finished_width} wide between the seams where the tucks are sewn, {released_width} "
            "where they are freed."
        )
        drawn = Drawn(
            panel,
            sheet["tucked_width"],
            sheet["panel_cut_width"],
            sheet["side_allowance"],
            kinds=(TUCK_LINES,) * len(panel.folds),
        )
        released = Released(
            panel,
            sheet["side_allowance"],
            finished,
            flat,
            sheet["stitched"],
            sheet["panel_length"],
            sheet["top"] if self.freed == BOTH else None,
        )
        finished_scene = released_scene(released, sentence("Release tucks, finished"), words)
        caption = sentence("The panel between its seams, tucks sewn and freed.")
        chart = (
            "The flat panel turned a quarter, its left edge at the top: distances from that edge "
            "at the right, from the centre at the left."
        )
        one = sheet.sentence("Stitched {depth} from its fold.")
        sheet.pictures.append(Picture("finished", caption, finished_scene, True))
        sheet.pictures.append(chart_picture(drawn, chart, words))
        sheet.pictures.append(tuck_picture(panel, sheet["depth"], one))


TECHNIQUE = ReleaseTucks
