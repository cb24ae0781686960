"""Tucks above a hem that are let out when the child has grown.

Letting one out lengthens the garment by twice its depth, and what was folded away has not faded:
so it is planned before cutting.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.ways_out import more_than, ways
from handout_engine.amounts.working_out import Group
from handout_engine.drawing.scene import Line
from handout_engine.families.tucks.growth_tuck_drawing import add_growth_pictures
from handout_engine.families.tucks.tucking import PanelInputs, add_supplies
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.shared.hems import DOUBLE, FINISHED, ROLLED, SINGLE, Hem, HemInputs, hem_step
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.cautions import LONG_HEM
from handout_engine.working.workings import Chart, Grain, Piece, Seam, marked
from handout_engine.working.worksheet import Worksheet

OUTSIDE, INSIDE = "on the right side", "on the wrong side"
MOST = 6


class LetOut(Group):
    """One tuck, counted from below: its lines from the top, and the length as it is let out."""

    def __init__(self, tuck: GrowthTuck, number: int, below: Length, away: Length) -> None:
        """Take its number, the line below it, and how far away from that it begins."""
        super().__init__(suffix=f"_{number}")
        self.tuck, self.number, self.below, self.away = tuck, number, below, away

    @value("tuck {} from below, lower stitching, from the top")
    def lower_stitching(self) -> Length:
        """All lines are measured from the upper raw edge."""
        return self.below - self.away

    @value("tuck {} from below, fold, from the top")
    def fold(self) -> Length:
        """The tuck is folded a depth further up."""
        return self.lower_stitching - self.tuck.depth

    @value("tuck {} from below, upper stitching, from the top")
    def upper_stitching(self) -> Length:
        """A depth further again, where the lower stitching comes to lie."""
        return self.fold - self.tuck.depth

    @value("finished length with {} of them let out")
    def let_out_length(self) -> Length:
        """Each adds as much."""
        return self.tuck.panel_length + self.number * self.tuck.adds

    @property
    def lines(self) -> tuple[Length, Length, Length]:
        """Its lines from the top down."""
        return self.upper_stitching, self.fold, self.lower_stitching


class GrowthTuck(HemInputs, PanelInputs):
    """One or several tucks above a hem, to be let out."""

    title = "Growth tuck"
    family = "tucks"
    summary = (
        "Tucks above a hem that are let out as the child grows, each lengthening the garment by "
        "twice its depth."
    )

    panel_length = length(
        "length now",
        "Finished length from the upper seam to the hem, tucks sewn.",
        "18 in",
        ("2 in", "60 in"),
    )
    width = length(
        "width of the panel",
        "Finished width between the side seams of one panel.",
        "20 in",
        ("2 in", "5 yd"),
    )
    tucks = count("tucks", "How many tucks, let out one after another.", 2, MOST)
    depth = length(
        "depth of a tuck",
        "Half of what letting it out adds.",
        "1/2 in",
        ("1/8 in", "4 in"),
        basis=PRACTICE,
    )
    above_hem = optional_length(
        "height above the hem",
        "From the finished lower edge to the lowest stitching.",
        "1/2 in above a tuck that just clears the hem's stitching",
        ("1/4 in", "50 in"),
        in_use="tuck_height",
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished.",
        "one and a half times the depth",
        ("1/8 in", "12 in"),
        in_use="tuck_spacing",
    )
    hem = choice(
        "hem",
        "Double turned, single turned, rolled, or finished already.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FINISHED,
        group=SEWING,
    )
    placed = choice(
        "tucks lie",
        "On the right side as trimming, or hidden on the wrong side.",
        OUTSIDE,
        INSIDE,
        group=SEWING,
    )

    @group
    def hemmed(self) -> Hem:
        """The hem below the tucks."""
        return Hem(self, self.panel_length)

    @value("from stitching to stitching", basis=published("home-school-sewing"))
    def tuck_spacing(self) -> Length:
        """As asked for, or so that half a depth shows."""
        return self.depth * 3 / 2 if self.spacing is None else self.spacing

    @check
    def no_tuck_lies_over_the_next(self) -> None:
        """Refuse tucks nearer to each other than they are deep."""
        if self.tuck_spacing < self.depth:
            raise RefusalError(
                f"spacing {TAPE.say(self.tuck_spacing)} is less than the depth "
                f"{TAPE.say(self.depth)}, so each tuck would lie over the next; use at least "
                f"{TAPE.no_less(self.depth)}",
                "spacing",
            )

    @value("least height above the hem, clear of its stitching")
    def least_height(self) -> Length:
        """The lowest tuck hangs over what is above the hem."""
        return self.hemmed.hem_turn + self.depth

    @value("lowest stitching, above the finished edge", basis=PRACTICE)
    def tuck_height(self) -> Length:
        """As asked for, or well clear of the hem."""
        usual = 2 * self.hemmed.hem_turn + self.depth * 3 / 2
        return usual if self.above_hem is None else self.above_hem

    @check
    def the_hem_shows_below_the_tucks(self) -> None:
        """Refuse a lowest tuck that hangs over the stitching of the hem."""
        if self.tuck_height < self.least_height:
            raise RefusalError(
                f"above_hem {TAPE.say(self.tuck_height)} lays the tuck over the stitching of the "
                f"hem, or below its edge; use at least {TAPE.no_less(self.least_height)}",
                "above_hem",
            )

    @value("highest stitching, above the finished edge")
    def highest(self) -> Length:
        """The tucks stand one above the other."""
        return self.tuck_height + self.tuck_spacing * (self.tucks - 1)

    @check
    def the_tucks_stand_on_the_panel(self) -> None:
        """Refuse more tucks than the panel is long enough for, but first too deep a hem."""
        self.hemmed.look()
        if self.highest >= self.panel_length:
            longer = more_than(self, "panel_length", self.highest, "a panel_length of more than {}")
            raise RefusalError(
                f"the highest tuck would stand {TAPE.say(self.highest)} above the hem of a panel "
                f"only {TAPE.say(self.panel_length)} long; use "
                f"{ways('fewer or shallower tucks', longer)}",
                "tucks",
            )

    @value("what letting out one tuck adds")
    def adds(self) -> Length:
        """A tuck takes its depth forth and back."""
        return 2 * self.depth

    @value("cloth taken by the tucks", basis=published("baldt-1916"))
    def take_up(self) -> Length:
        """All of it comes back as the child grows."""
        return self.adds * self.tucks

    @value("finished length when all are let out")
    def grown_length(self) -> Length:
        """What the garment can grow to."""
        return self.panel_length + self.take_up

    @value("panel, cut from top to bottom")
    def panel_cut_length(self) -> Length:
        """With what tucks, upper seam and hem take."""
        return self.panel_length + self.take_up + self.end_allowance + self.hemmed.hem_allowance

    @value("panel, cut from side to side", saying=Saying.UP)
    def panel_cut_width(self) -> Length:
        """Sewn into a seam at each side."""
        return self.width + 2 * self.side_allowance

    @value("from the upper raw edge to the finished edge, before tucking")
    def hemmed_length(self) -> Length:
        """What is measured when it is hemmed."""
        return self.panel_cut_length - self.hemmed.hem_allowance

    @value("from the upper raw edge to the finished edge, tucks sewn")
    def sewn_length(self) -> Length:
        """What is measured when it is tucked."""
        return self.panel_length + self.end_allowance

    @group
    def let_out(self) -> tuple[LetOut, ...]:
        """The tucks from below, each begun from the one under it."""
        found = [LetOut(self, 1, self.hemmed_length, self.tuck_height)]
        for number in range(2, self.tucks + 1):
            found.append(LetOut(self, number, found[-1].upper_stitching, self.tuck_spacing))
        return tuple(found)

    def cut(self, sheet: Worksheet) -> None:
        """The panel with its lines, and how it grows."""
        lines = [line for tuck in reversed(self.let_out) for line in tuck.lines]
        length, width = sheet["panel_cut_length"], sheet["panel_cut_width"]
        piece = Piece(
            "panel", "cloth", self.make.number, length, width, Grain.CROSS, marked(*lines)
        )
        sheet.pieces.append(piece)
        sheet.seams.append(Seam("sides of the panel", self.side_allowance))
        sheet.seams.append(Seam("upper edge", self.end_allowance))
        rows = ((str(tuck.number), tuck.let_out_length) for tuck in self.let_out)
        headings = ("Tucks let out", "Length")
        chart = Chart("Length as tucks are let out", headings, (("none", self.panel_length), *rows))
        sheet.charts.append(chart)

    def sew(self, sheet: Worksheet) -> None:
        """Hemmed first, then tucked with stitches that can be drawn out again."""
        add_supplies(sheet)
        sheet.cautions.append(LONG_HEM)
        sheet.trial(
            "On a scrap of the same cloth stitch one tuck {depth} deep with a long stitch, "
            "press it, wash and press again, then draw the stitching out.",
            "the scrap is as long as it was, {adds} longer than with the tuck, and no line "
            "of holes is left. If one is, use a finer needle and thread.",
        )
        wrong = self.placed == INSIDE
        add_washing_step(sheet)
        sheet.step(
            f"Cut {counted(sheet, 'panel')} "
            "{panel_cut_length} from top to bottom and {panel_cut_width} from side to "
            "side. Join the side seams first, so that a tuck runs over them unbroken."
        )
        sheet.step(
            "Finish the lower edge. " + hem_step(self.hem),
            "from the upper raw edge to the finished lower edge it is {hemmed_length}.",
        )
        sheet.step(
            f"Mark the lines all round, measured from the upper raw edge, {self.placed}.",
            "the lower stitching of the lowest tuck is {tuck_height} above the finished edge.",
        )
        sheet.step(
            f"Fold {'right' if wrong else 'wrong'} sides together along the lowest fold line, "
            "matching the side seams, and stitch {depth} from the fold with a long stitch, 2.5 to "
            "3 mm, that can be drawn out again without a mark. Sew the others alike and press all "
            "of them down.",
            "from the upper raw edge to the finished edge it is now {sewn_length}, and from the "
            "lowest stitching to that edge {tuck_height}.",
        )
        sheet.step(
            "Later, to let one out: begin with the highest, draw its stitching out, wash and "
            "press. It adds {adds}; all together {take_up}, to a length of {grown_length}."
        )

    def draw(self, sheet: Worksheet) -> None:
        """Now and let out, its lower end cut through, and the flat panel."""
        names = ("upper_stitching", "fold", "lower_stitching")
        rules = [
            Rule(kind, sheet[tuck.whole_name(name)])
            for tuck in reversed(self.let_out)
            for name, kind in zip(names, (Line.STITCH, Line.FOLD, Line.STITCH), strict=True)
        ]
        add_growth_pictures(sheet, self.tucks.number, self.placed == INSIDE, rules)


TECHNIQUE = GrowthTuck
