"""Lace edging gathered to an edge by its own heading thread."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, ratio
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.edgings_drawing import edging
from handout_engine.families.lace.lace import (
    LaceInputs,
    add_lace_supplies,
    add_lace_washing_step,
    marks,
)
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.working.cautions import NOT_SLEEPWEAR
from handout_engine.working.workings import Chart, Seam
from handout_engine.working.worksheet import Worksheet

OPEN, RING = "open", "ring"
ROLLED, ENTREDEUX = "a rolled edge", "entredeux"


class GatheredEdging(LaceInputs):
    """Lace edging drawn up on its heading thread and whipped to a rolled edge or an entredeux."""

    title = "Gathered lace edging"
    family = "lace"
    summary = (
        "Lace edging gathered by its own heading thread and whipped to an edge, with more at each "
        "corner."
    )

    edge = length(
        "edge",
        "Length of the finished edge that the lace is sewn to, round all corners.",
        "24 in",
        ("1 in", "20 yd"),
    )
    fullness = ratio(
        "fullness", "Length of the lace for each length of edge.", "1.5", ("1", "4"), basis=PRACTICE
    )
    corners = optional_count("corners", "Outward corners that the lace turns.", "none", 24)
    corner_widths = ratio(
        "extra at a corner",
        "Lace eased in at each corner beyond the fullness, in widths of the lace.",
        "2",
        ("0", "6"),
        group=SEWING,
        basis=PRACTICE,
    )
    onto = choice(
        "sewn to",
        "Cloth whose edge is rolled, or the holes of an entredeux.",
        ROLLED,
        ENTREDEUX,
        group=SEWING,
    )
    ends = choice("ends", "Open, or a ring whose ends are joined.", OPEN, RING, group=SEWING)
    roll = length(
        "roll takes",
        "Cloth that the rolled and whipped edge takes.",
        "3 mm",
        ("0 mm", "12 mm"),
        group=SEWING,
        basis=PRACTICE,
    )

    @check
    def there_is_lace_between_the_corners(self) -> None:
        """Refuse corners that stand less than a width of the lace apart."""
        if self.corners is None or self.edge >= self.lace_width * self.corners:
            return
        most = int(self.edge / self.lace_width)
        fewer = at_most(self, "corners", most, "at most {} corners")
        raise RefusalError(
            f"corners {self.corners} on an edge of {TAPE.say(self.edge)} leave less than one width "
            f"of lace between them; use {ways(fewer, 'narrower lace')}",
            "corners",
        )

    @value("lace for the edge itself")
    def gathered_length(self) -> Length:
        """As much longer than the edge as the fullness says."""
        return self.fullness * self.edge

    @value("extra lace at one corner")
    def corner_takes(self) -> Length | None:
        """The outer edge runs a quarter circle round a corner, and must not cup."""
        return None if self.corners is None else self.corner_widths * self.lace_width

    @value("lace, cut length", finishes="edge")
    def lace_length(self) -> Length:
        """Along the edge, round its corners, and what its ends take."""
        ends = 2 * self.end_allowance
        if self.corners is None or self.corner_takes is None:
            return self.gathered_length + ends
        return self.gathered_length + self.corners * self.corner_takes + ends

    @value("lace between its end allowances")
    def heading(self) -> Length:
        """What is drawn up, or goes round a ring whose ends are joined."""
        return self.lace_length - 2 * self.end_allowance

    @value("one quarter of the edge")
    def edge_quarter(self) -> Length:
        """Between two marks on the edge."""
        return self.edge / 4

    @value("one quarter of the lace")
    def lace_quarter(self) -> Length:
        """Between two marks on the lace."""
        return self.heading / 4

    @value("raw edge of the cloth, beyond the line where the lace begins")
    def cloth_edge(self) -> Length | None:
        """The roll brings the raw edge back to that line."""
        return self.roll if self.onto == ROLLED else None

    @value("scrap of lace to gather")
    def sample_scrap(self) -> Length:
        """Long enough to see how full it looks."""
        return 8 * self.lace_width

    @value("scrap of lace, drawn up")
    def sample_drawn_up(self) -> Length:
        """What a scrap of that fullness measures."""
        return self.sample_scrap / self.fullness

    def cut(self, sheet: Worksheet) -> None:
        """What the cloth gives to its roll, and the marks."""
        if self.onto == ROLLED:
            sheet.seams.append(Seam("edge, rolled and whipped", self.roll))
        sheet.seams.append(Seam("lace heading", ZERO))
        names = [f"mark {number}" for number in range(5)]
        on_edge = marks(self.edge_quarter, 5)
        on_lace = marks(self.lace_quarter, 5, self.end_allowance)
        rows = tuple(zip(names, on_edge, on_lace, strict=True))
        headings = ("Mark", "On the edge", "On the lace")
        sheet.charts.append(Chart("Quarter marks, from the first end", headings, rows))

    def sew(self, sheet: Worksheet) -> None:
        """The lace cut, marked, drawn up and whipped on."""
        add_lace_supplies(sheet, "pins", "lace edging with a heading thread that can be drawn")
        sheet.cautions.append(NOT_SLEEPWEAR)
        sheet.trial(
            "Draw {sample_scrap} of the lace up to {sample_drawn_up} by its heading thread.",
            "it should look as full as you want. Fine narrow lace takes more, wide lace "
            "with a large pattern less; the scrap's length divided by what it measures now "
            "is your fullness.",
        )
        add_lace_washing_step(sheet)
        sheet.step("Cut the lace {lace_length} long.")
        if self.ends == RING:
            sheet.step(
                "Join the ends in a fine seam, {end_allowance} from each, matching the pattern of "
                "the lace, and trim and overcast it.",
                "round its heading the ring is {heading}.",
            )
        else:
            sheet.step("Turn half of the {end_allowance} at each end under twice, and hem it down.")
        sheet.step("Mark the quarters of lace and edge with pins as the chart says.")
        self._add_gathering(sheet)
        if self.onto == ROLLED:
            sheet.step(
                "Cut the edge of the cloth {cloth_edge} beyond the line where the lace is to "
                "begin, roll it toward you and whip the heading of the lace to the roll, right "
                "sides together, one stitch to each thread of the heading.",
                "opened out, the heading lies on the edge line and the whole edge is {edge}.",
            )
        else:
            sheet.step(
                "Trim the free allowance of the entredeux off close to its cord, lay the heading "
                "of the lace beside it, right sides together, and whip the two, one stitch into "
                "each hole.",
                "opened out, lace and entredeux lie flat and the whole edge is {edge}.",
            )
        sheet.step("Fasten the drawn thread with three small stitches and cut it off.")

    def _add_gathering(self, sheet: Worksheet) -> None:
        sheet.step(
            "Pull the strongest thread in the straight heading of the lace from both ends toward "
            "the middle, and stroke the gathers even. Do not sew a gathering row: the thread is "
            "there.",
            "drawn up, each quarter of the lace is {edge_quarter} along its heading"
            + (", with the extra for the corners pushed to them." if self.corners else "."),
        )
        if self.corners:
            sheet.step(
                "At each corner push {corner_takes} of lace together, half of it on either side, "
                "so that the outer edge fans out and does not cup.",
                "laid flat, the outer edge of the lace stands square at the corner.",
            )

    def draw(self, sheet: Worksheet) -> None:
        """A part of the finished edge, and how lace and edge are shared out."""
        edge, width = sheet["edge"], sheet["lace_width"]
        finished = Scene(
            sheet.sentence("Gathered lace edging, finished"),
            sheet.sentence(
                "Lace {lace_width} wide, gathered {fullness} to 1 on an edge of {edge}."
            ),
            edging(edge, width, float(self.fullness), bool(self.corners)),
        )
        ratio = Scene(
            sheet.sentence("Lace and edge"),
            sheet.sentence("{lace_length} of lace is drawn up to {edge}."),
            quarters(edge, sheet["lace_length"]),
        )
        part = ", round one corner" if self.corners else ""
        sheet.show(
            "finished",
            f"A part of the finished edge{part}, right side up.",
            finished,
            finished=True,
        )
        sheet.show(
            "quarters",
            "Above the lace, below the edge it is drawn up to, at their true ratio; quarter mark "
            "meets quarter mark.",
            ratio,
        )


TECHNIQUE = GatheredEdging
