"""One continuous bias strip from a square or rectangle, sewn into a tube and cut round it."""

from __future__ import annotations

from handout_engine.amounts.angles import ROOT_OF_TWO
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Tape
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, more_than, ways
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.bias import SURE
from handout_engine.families.bias.bias_drawing import joined_strip
from handout_engine.families.bias.continuous_bias_cutting import MOST_ROWS
from handout_engine.families.bias.continuous_bias_drawing import Rows, cut_cloth, ruled_rows
from handout_engine.families.bias.continuous_bias_inputs import ContinuousInputs
from handout_engine.families.bias.continuous_bias_sizes import (
    Sides,
    SidesGiven,
    other_side,
    sides_for_length,
)
from handout_engine.families.bias.continuous_bias_steps import add_sample, add_steps
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.workings import Chart, Grain, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet


class ContinuousBias(ContinuousInputs):
    """A strip that needs only two seams, whatever its length."""

    title = "Continuous bias strip"
    family = "bias"
    summary = (
        "A square or rectangle sewn into a tube one row out of step and cut round into one strip."
    )
    known_by = "rows"

    @group
    def sides(self) -> Sides:
        """The sides of the cloth, by what is given of it."""
        asked, across, along = self.plain_wanted, self.cloth_across, self.cloth_along
        if asked is None:
            return SidesGiven(self)
        fixed = across or along
        if fixed is None:
            return sides_for_length(self, asked)
        if fixed <= 3 * self.strip_allowance:
            name = "cloth_along" if across is None else "cloth_across"
            raise RefusalError(
                f"{name} {Tape().say(fixed)} is used up by the seams; use more than "
                f"{Tape().no_less(3 * self.strip_allowance)}",
                name,
            )
        return other_side(self, asked, fixed)

    @property
    def long_across(self) -> bool:
        """Whether the longer side of the cloth lies across it."""
        return self.sides.across.mm > self.sides.along.mm

    @property
    def short(self) -> Length:
        """The side of the cloth across the rows."""
        return self.sides.along if self.long_across else self.sides.across

    @property
    def long(self) -> Length:
        """The side of the cloth along the rows."""
        return self.sides.across if self.long_across else self.sides.along

    @check
    def the_cloth_holds_a_row(self) -> None:
        """Refuse cloth that its seams use up, or that holds no whole row."""
        used_up = 3 * self.strip_allowance
        if self.short <= used_up:
            sides = {"cloth_across": self.sides.across, "cloth_along": self.sides.along}
            small = [name for name, side in sides.items() if side <= used_up]
            way = more_than(self, small[0], used_up, f"more than {{}} for {' and '.join(small)}")
            raise RefusalError(
                f"{self.short.label} {TAPE.say(self.short)} is used up by the seams; use "
                f"{ways(way, 'narrower seams')}",
                small[0],
            )
        if self.rows < 1:
            narrow = Length((self.grain_edge / ROOT_OF_TWO).mm)
            way = ways(at_most(self, "width", narrow, "a width of at most {}"), "more cloth")
            raise RefusalError(
                f"width {TAPE.say(self.width)} leaves no whole row in cloth of "
                f"{TAPE.say(self.long)}; use {way}",
                "width",
            )

    @value("sewn, along the grain edge")
    def grain_edge(self) -> Length:
        """The long edges are shorter by the seam at their end."""
        return self.long - self.strip_allowance

    @value("sewn, from grain edge to grain edge")
    def height(self) -> Length:
        """The cut edges cross on the stitching line, so that the seam takes of the height too."""
        return self.short - self.strip_allowance

    @value("whole rows")
    def rows(self) -> Count:
        """What is left beyond the last one is cut off."""
        return (self.grain_edge / self.edge_step).rounded_down()

    @check
    def the_rows_can_be_ruled(self) -> None:
        """Refuse more rows than anyone rules."""
        if self.rows > MOST_ROWS:
            raise RefusalError(
                f"{self.rows} rows would be ruled, more than {MOST_ROWS}; use wider strips or less "
                "cloth"
            )

    @value("one row, on its centre line")
    def row_length(self) -> Length:
        """It lies at 45 degrees from grain edge to grain edge."""
        return self.height * ROOT_OF_TWO

    @value("length taken where a row passes into the next")
    def join_takes(self) -> Length:
        """The allowance of both edges, measured along the strip, which it crosses at a slant."""
        return 2 * self.strip_allowance * ROOT_OF_TWO

    @value("length of the strip")
    def strip_length(self) -> Length:
        """All rows, less what they lose where each passes into the next."""
        return self.rows * self.row_length - (self.rows - 1) * self.join_takes

    @value("length by the area rule, no seam counted (never reached)")
    def area_length(self) -> Length:
        """As if the whole cloth were strip."""
        return self.sides.across * self.sides.along / self.width

    @value("length by area, seams counted (an upper bound: as if no part of a row were left over)")
    def most_length(self) -> Length:
        """What lies between the seams of the tube, and the free ends of the strip."""
        between = self.height - 2 * self.strip_allowance
        return self.grain_edge * between / self.width + self.join_takes

    @check
    def the_cloth_gives_the_length(self) -> None:
        """Refuse cloth at hand that gives less than is wanted."""
        if self.wanted is not None and float(self.wanted - self.strip_length) > SURE:
            raise RefusalError(
                f"this cloth gives {TAPE.both(self.strip_length)} in whole rows, less than wanted "
                f"{TAPE.say(self.wanted)}; leave cloth_along out to have it worked out, or want "
                "less",
                "wanted",
            )

    def cut(self, sheet: Worksheet) -> None:
        """The cloth, the lines to rule on it, and the seams."""
        across, along = sheet["across"], sheet["along"]
        piece = Piece("cloth for the strips", "cloth", 1, across, along, Grain.STRAIGHT)
        sheet.pieces.append(piece)
        headings = (
            "Line, its number at the upper edge",
            "From the first bias edge, square to it",
            "Along either grain edge",
            "Its number at the lower edge",
        )
        lines = [RuledLine(self, number) for number in range(self.rows.number + 1)]
        rows = tuple((str(each.number), *each.places, each.number_below) for each in lines)
        sheet.charts.append(Chart("Lines to rule, counted from one bias edge", headings, rows))
        sheet.seams.append(Seam("both seams of the tube", self.strip_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the rectangle to the strip."""
        sheet.have("a long ruler with a 45-degree line", "a removable marker tried on a scrap")
        sheet.have("pins", "sharp shears")
        sheet.cautions.append(PINS_AND_IRON)
        add_sample(sheet)
        add_steps(sheet, *self._short_and_long(sheet))

    def _short_and_long(self, sheet: Worksheet) -> tuple[Value, Value]:
        across, along = sheet["across"], sheet["along"]
        return (along, across) if self.long_across else (across, along)

    def draw(self, sheet: Worksheet) -> None:
        """The strip, the one cut, and the rows with their numbers."""
        names = ("strip_allowance", "grain_edge", "height", "edge_step", "rows", "width")
        measures = (*self._short_and_long(sheet), *(sheet[name] for name in names))
        rows = Rows(*measures, grain_along_long=not self.long_across)
        strip = joined_strip(sheet["width"], sheet["strip_length"], sheet["strip_allowance"])
        whole = sentence("The strip, with its slanting seams.")
        cut = sentence("The one cut: the triangle A moves to the other end of B.")
        ruled = sentence(
            "Sewn together and ruled in steps of {step} along the grain edges, seen from the wrong "
            "side (its hatching is left out so that the lines can be read). Match equal numbers; "
            "what lies beyond the last line is cut off.",
            step=sheet["edge_step"],
        )
        sheet.pictures.extend(
            (
                Picture("finished", whole, strip, finished=True),
                Picture("cut", cut, cut_cloth(rows)),
                Picture("rows", ruled, ruled_rows(rows)),
            )
        )


class RuledLine(Group):
    """A line to rule: how far from the first bias edge, and its number at either grain edge.

    The lower edge is numbered one row on, as in the drawing, so that equal numbers meet.
    """

    def __init__(self, technique: ContinuousBias, number: int) -> None:
        """Take the strip, and which line it is, 0 for the bias edge."""
        super().__init__(f"line_{number}_")
        self.technique, self.number = technique, number

    @value("from the first bias edge")
    def from_edge(self) -> Length:
        """A strip further each time."""
        return self.number * self.technique.width

    @value("along the grain edge")
    def along_edge(self) -> Length:
        """A step further each time."""
        return self.number * self.technique.edge_step

    @property
    def places(self) -> tuple[Value, Value]:
        """Both as the chart has them."""
        from_edge, along_edge = self.values.values()
        return from_edge, along_edge

    @property
    def number_below(self) -> str:
        """Its number at the lower edge, where it has one."""
        joined = self.number and self.technique.rows.number > 1
        return str(self.number - 1) if joined else "none"


TECHNIQUE = ContinuousBias
