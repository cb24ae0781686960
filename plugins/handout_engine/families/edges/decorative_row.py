"""Whole repeats of a machine stitch along an edge or round a ring."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import choice, count, length
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.repeat_rows_drawing import RowStart, plain_row, row_start
from handout_engine.families.edges.stitch_needles import NeedleInputs
from handout_engine.shared.repeats import FittedRepeats, RepeatInputs, Repeats, Row
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.worksheet import Worksheet

EDGE, RING = "along an edge", "round a ring"
ADJUST, KEEP = "stretch the repeat", "keep the repeat"


class KeptRepeats(Repeats):
    """Whole repeats as the machine sews them; what is left of an edge is left at its ends."""

    @property
    def number(self) -> Count:
        """As many as the edge holds."""
        return self.repeats

    @property
    def each(self) -> Length:
        """The repeat as it is."""
        return self.technique.repeat

    @value("repeats along the {}")
    def repeats(self) -> Count:
        """As many as find room between the margins."""
        return (self.row.run / self.technique.repeat).rounded_down()

    @value("ten repeats along the {}")
    def ten(self) -> Length:
        """One alone is too short to be measured."""
        return 10 * self.technique.repeat

    @check
    def they_fill_what_they_must(self) -> None:
        """Refuse an edge shorter than one repeat, or a ring that is not filled."""
        if self.fills(self.row.run + self.row.left_out):
            return
        named = self.sizes_that_do()
        raise RefusalError(
            f"edge {TAPE.say(self.row.run + self.row.left_out)} does not hold whole repeats of "
            f"{TAPE.say(self.technique.repeat)}; use "
            f"{ways(named and f'{named}, which needs no change', 'a stretched repeat')}",
            "edge",
        )

    def fills(self, edge: Length) -> bool:
        """One or more repeats do, save in a ring, which they fill whole."""
        assert isinstance(self.technique, DecorativeRow)
        number = (edge - self.row.left_out) / self.technique.repeat
        return number >= 1 and (not self.technique.ring or number.number.denominator == 1)


class DecorativeRow(NeedleInputs, RepeatInputs):
    """A row of a repeating stitch that comes out even."""

    title = "Decorative row"
    family = "edges"
    summary = (
        "A machine stitch along an edge or round a ring in whole repeats, stretched a little or "
        "centred between equal margins."
    )

    form = choice(
        "row", "From one end of an edge to the other, or round until it meets itself.", EDGE, RING
    )
    edge = length(
        "length of the edge",
        "Measured where the row is to run, not at the edge itself.",
        "20 in",
        ("1 in", "20 yd"),
    )
    margin = length(
        "margin",
        "Kept free of stitches at each end of an edge; a ring has none.",
        "0 in",
        ("0 in", "12 in"),
    )
    fit = choice(
        "fit",
        "Change the stitch length until it comes out, or keep it and centre the row.",
        ADJUST,
        KEEP,
    )
    from_edge = length(
        "distance from the edge",
        "From the finished edge to the middle of the row.",
        "1/2 in",
        ("1/16 in", "12 in"),
    )
    rows = count("how many rows", "Rows of that length, such as two for two cuffs.", 1, 50)

    @property
    def ring(self) -> bool:
        """Whether the row meets itself."""
        return self.form != EDGE

    @property
    def kept(self) -> bool:
        """Whether the repeats stay as the machine sews them."""
        return self.fit != ADJUST

    @property
    def ends(self) -> Length:
        """What the two margins take of the edge."""
        return ZERO if self.ring else 2 * self.margin

    @check
    def the_margins_leave_some_of_the_edge(self) -> None:
        """Refuse margins that take the whole edge."""
        if self.ends >= self.edge:
            raise RefusalError(
                f"two margins of {TAPE.say(self.margin)} leave nothing of an edge "
                f"{TAPE.say(self.edge)} long; use margins of less than "
                f"{TAPE.no_more(self.edge / 2)}",
                "margin",
            )

    def label_of(self, label: str) -> str:
        """A label, with where the row runs."""
        run = ", once round" if self.ring else " between the margins"
        return super().label_of(label).replace("{run}", run)

    @value("length to fill{run}")
    def row_edge(self) -> Length:
        """What whole repeats have to come out in."""
        return self.edge - self.ends

    @group
    def row(self) -> Repeats:
        """The repeats in one row."""
        row = Row("edge", "edge", self.row_edge, self.ends)
        return KeptRepeats(self, row) if self.kept else FittedRepeats(self, row)

    @value("left free at each end")
    def left_at_ends(self) -> Length | None:
        """Of an edge whose repeats are kept, which are centred on it."""
        return (self.edge - self.row.number * self.repeat) / 2 if self.kept else None

    @value("length of the row")
    def row_sewn(self) -> Length | None:
        """Of kept repeats, which need not fill the edge."""
        return self.row.number * self.repeat if self.kept else None

    def cut(self, sheet: Worksheet) -> None:
        """Nothing is cut: sizes that need no adjustment, and where the row must be."""
        sheet.charts.append(self.row.sizes_chart("Length of the edge"))
        sheet.charts.append(self.row.checks_chart())

    def sew(self, sheet: Worksheet) -> None:
        """From the line that is marked to the last thread end."""
        self.add_needle_supplies(sheet)
        sheet.have("a foot with a guide along the edge", "a stabiliser that tears or washes away")
        sheet.cautions.append(PINS_AND_IRON)
        how = "see whether" if self.kept else "change the stitch length until"
        sheet.trial(
            f"Sew twelve repeats on a scrap with the same stabiliser, and {how} the ten in "
            "the middle are {ten_edge}.",
            "ten repeats are {ten_edge}, and the scrap lies flat. If it draws in, loosen "
            "the thread or take a firmer stabiliser, and measure again.",
        )
        sheet.step(
            "Mark the line of the row {from_edge} from the edge, and back the cloth with "
            "stabiliser.",
            ("once round the line is {edge}." if self.ring else "the line is {edge} long.")
            + " If not, work this page out again with what you measure.",
        )
        free = "left_at_ends" if self.kept else "margin"
        where = "at a seam, where it is seen least" if self.ring else "at one end"
        gap = f", {{{free}}} from it" if not self.ring and sheet[free].length else ""
        sewn = "row_sewn" if self.kept else "row_edge"
        sheet.step(
            f"Mark where the row begins {where}{gap}, and every place that the chart names.",
            f"from one end of the row to the other it is {{{sewn}}}.",
        )
        sheet.step(
            "Put in the {needle} needle and the foot with the guide, and begin at the start of a "
            "repeat, with the needle down. Sew with even speed, and compare with every mark.",
            "after ten repeats the row is {ten_edge} long.",
        )
        sheet.step(
            "Stop when the last repeat meets the first, needle down, and fasten with tiny stitches."
            if self.ring
            else "Stop at the end of the last repeat and fasten with tiny stitches.",
            "there are {repeats_edge} whole repeats.",
        )
        others = " Sew the other rows alike, from the same side." if self.rows > 1 else ""
        sheet.step(
            "Draw the thread ends to the wrong side, take the stabiliser off, and press face down "
            f"on a towel.{others}"
        )

    def draw(self, sheet: Worksheet) -> None:
        """The whole row, and its first repeats enlarged."""
        number = self.row.number.number
        each = sheet["repeat" if self.kept else "repeat_edge"]
        free = sheet["left_at_ends" if self.kept else "margin"]
        margin = free if free.length and (self.kept or not self.ring) else None
        whole = Scene(
            sentence("The row"),
            sentence("{number} repeats of {repeat}.", number=number, repeat=each),
            plain_row(sheet["row_sewn" if self.kept else "row_edge"], number, each, margin),
        )
        bare = margin is None and not self.ring
        start = Scene(
            sentence("The first repeats"),
            sentence("Each is {repeat} long.", repeat=each),
            row_start(RowStart(sheet["from_edge"], each, None, None, bare)),
            tallest=150.0,
        )
        laid = "laid out flat, " if self.ring else ""
        caption = (
            f"The whole row, {laid}a tick wherever a repeat begins, or a dashed line where they "
            "are too many."
        )
        sheet.show("finished", caption, whole, finished=True)
        caption = "Where the row begins, enlarged; the edge is at the top."
        sheet.show("start", caption, start)


TECHNIQUE = DecorativeRow
