"""A motif repeated along an edge with equal gaps, round a ring, or between four corners."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.decoration.motif_rows import (
    Ring,
    StraightRow,
    ring_chart,
    row_chart,
)
from handout_engine.families.decoration.motifs import CORNERS, GAP, ROUND, STRAIGHT, Motifs
from handout_engine.families.decoration.repeated_motif_drawing import (
    Divided,
    Motif,
    along_edge,
    between_corners,
    few_motifs,
    is_narrow,
    round_ring,
)
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON
from handout_engine.working.workings import Supply
from handout_engine.working.worksheet import Worksheet

SHEET = inches(7)
"""Motifs on the printed sheet reach so far at most, unless one alone is wider."""


class RepeatedMotif(Motifs):
    """Whole motifs, equal gaps."""

    title = "Repeated motif"
    family = "decoration"
    summary = (
        "Whole motifs with equal gaps along an edge, round a hem, or between four corners: how "
        "many, how far apart, and where each is centred."
    )

    def label_of(self, label: str) -> str:
        """A label as it is for this layout."""
        return label.format(where=" on all four sides" if self.layout == CORNERS else "")

    @check
    def sides_are_not_counted_together(self) -> None:
        """Refuse one number of motifs for four sides."""
        if self.layout == CORNERS and self.motifs is not None:
            raise RefusalError(
                "motifs cannot be counted for four sides at once; leave it out, and set the least "
                "gap",
                "motifs",
            )

    @check
    def the_corner_is_deep_enough(self) -> None:
        """Refuse motifs that reach further in than the corner motif."""
        if self.layout == CORNERS and self.above + self.motif_height > self.corner:
            raise RefusalError(
                "motif_height and above reach further in than the corner motif; use a larger "
                "corner",
                "corner",
            )

    @group
    def rows(self) -> tuple[StraightRow | Ring, ...]:
        """One row, or with corners the two sides."""
        if self.layout == ROUND:
            return (Ring(self, self.edge),)
        if self.layout == STRAIGHT:
            return (StraightRow(self, self.edge),)
        other = self.edge if self.other_side is None else self.other_side
        return StraightRow(self, self.edge, "first_"), StraightRow(self, other, "second_")

    @value("motifs{where}")
    def number(self) -> Count | None:
        """Opposite sides are alike; of one row its own number is the whole."""
        if self.layout != CORNERS:
            return None
        first, second = self.rows
        return 2 * (first.number + second.number)

    @property
    def in_all(self) -> Count:
        """All motifs."""
        return self.rows[0].number if self.number is None else self.number

    @value("from motif to motif")
    def step(self) -> Length | None:
        """Along a straight edge; round, it is the ring's."""
        gap = self.rows[0].gap
        return self.motif + gap if self.layout == STRAIGHT and gap is not None else None

    @value("centre of the first motif from the end")
    def first_centre(self) -> Length | None:
        """On a straight edge, from the raw end where that is still there."""
        if self.layout != STRAIGHT:
            return None
        first = self.rows[0].centres[0]
        return first + self.allowance if self.allowance else first

    @value("last motif from the centre front")
    def last_from_front(self) -> Length | None:
        """Round, as the first on the other way."""
        row = self.rows[0]
        if not isinstance(row, Ring):
            return None
        return row.step / 2 if self.centre == GAP else row.step

    @value("line on which the motifs stand, from the edge")
    def base_line(self) -> Length:
        """From the raw edge, where that is still there."""
        return self.allowance + self.above if self.allowance else self.above

    @value("line of their centres, from the edge")
    def centre_line(self) -> Length:
        """Half a motif above the line on which they stand."""
        return self.base_line + self.motif_height / 2

    def cut(self, sheet: Worksheet) -> None:
        """Nothing is cut; the centres of the motifs have their charts."""
        raw = "raw " if self.allowance else ""
        words = ("",) if self.layout == STRAIGHT else (", first side", ", second side")
        where = f"From the left {raw}end" if self.layout == STRAIGHT else f"From the {raw}corner"
        for row, side in zip(self.rows, words, strict=False):
            if isinstance(row, Ring):
                sheet.charts.append(ring_chart(row))
            elif row.centres:
                sheet.charts.append(row_chart(row, side, where, self.allowance))

    def sew(self, sheet: Worksheet) -> None:
        """Mark the lines and the centres, trace, and work the motifs."""
        sheet.have("stranded cotton or silk", "a crewel needle")
        sheet.supplies.append(Supply("a marker that washes out, tried on a scrap"))
        sheet.cautions.extend((PINS_AND_IRON, LONG_FLOATS))
        _add_sample(sheet)
        _add_steps(sheet, self)

    def draw(self, sheet: Worksheet) -> None:
        """Where they come, and a few to trace."""
        _draw(sheet, self)


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Work one motif on a scrap of the same cloth, press it face down on a towel, and "
        "measure it.",
        "it is {motif} wide and {motif_height} high. Stitches draw the cloth in; if it came out "
        "otherwise, give the size it has.",
    )


def _add_steps(sheet: Worksheet, asked: RepeatedMotif) -> None:
    rows = asked.rows
    _add_base_line(sheet, raw=bool(asked.allowance))
    if asked.layout == ROUND and rows[0].number.number == 1:
        sheet.step("Mark the centre front, and the centre of the one motif from the chart.")
    elif asked.layout == ROUND:
        where = "between two motifs" if asked.centre == GAP else "where the first motif is centred"
        back = (rows[0].number.number % 2 == 0) == (asked.centre != GAP)
        sheet.step(
            f"Mark the centre front, {where}. Going round, mark {{number}} centres, {{step}} from "
            f"one to the next; at the centre back there is {'a motif' if back else 'a gap'}.",
            "the last one lies {last_from_front} from the centre front.",
        )
    elif asked.layout == STRAIGHT:
        sheet.step(
            "Mark the centre of the edge, and the centres of the {number} motifs from the "
            "chart, working from the centre to both ends.",
            "the outermost motifs end at the same distance from both ends.",
        )
    else:
        _add_corner_step(sheet, raw=bool(asked.allowance))
    _add_tracing_step(sheet, raw=bool(asked.allowance))
    gaps = [f"{row.prefix}gap" for row in rows if row.gap is not None]
    many = " and ".join(f"{{{name}}}" for name in gaps)
    sheet.step(
        "Work the motifs one by one, fastening off behind each. Press face down on a towel.",
        f"between two motifs it is {many}." if gaps else "",
    )


def _draw(sheet: Worksheet, asked: RepeatedMotif) -> None:
    motif = Motif(sheet["motif"], sheet["motif_height"], sheet["above"])
    rows = asked.rows
    gaps = [asked.find(f"{row.prefix}gap") for row in rows]
    divided = [
        Divided(sheet[row.side_name], gap, None, [float(at) for at in row.centres])
        for row, gap in zip(rows, gaps, strict=True)
    ]
    if asked.layout == CORNERS:
        shapes = between_corners(motif, sheet["corner"], *divided)
    elif asked.layout == ROUND:
        shapes = round_ring(motif, divided[0])
    else:
        shapes = along_edge(motif, divided[0])
    finished = Scene(
        sentence("Motifs in their places"),
        sentence("{number} motifs {motif} wide.", number=sheet["number"], motif=sheet["motif"]),
        shapes,
    )
    narrow = asked.layout == ROUND and is_narrow(motif, divided[0])
    how = "; the outline is the finished edge" if asked.allowance else ""
    how += ". The ring is opened at the centre back and unrolled" if narrow else ""
    row, gap = max(zip(rows, gaps, strict=True), key=lambda each: each[0].number.number)
    step = asked.motif + (row.gap or ZERO)
    fitting = max(1, int((SHEET - asked.motif) / step) + 1)
    shown = max(1, min(row.number.number, fitting))
    sheet.show(
        "finished", f"Where the motifs come; an oval stands for each{how}.", finished, finished=True
    )
    sheet.show(
        "placement",
        "A few motifs, printed at true scale to trace.",
        few_motifs(motif, gap, min(shown, 3), at_scale=False),
        sheet=few_motifs(motif, gap, shown, at_scale=True),
    )


def _add_base_line(sheet: Worksheet, *, raw: bool) -> None:
    """The lines that the motifs stand on, from the edge that is there to measure from."""
    if not raw:
        sheet.step(
            "Press the edge. Baste a line {above} from it, on which all motifs stand, and another "
            "at the height of their centres, {centre_line} from the edge."
        )
        return
    sheet.step(
        "Press the edge; it is still raw, and will be finished {allowance} inside. Baste a line "
        "{base_line} from the raw edge, on which all motifs stand, and another at the height of "
        "their centres, {centre_line} from the raw edge.",
    )


def _add_corner_step(sheet: Worksheet, *, raw: bool) -> None:
    """The squares of the corner motifs, and the centres between them."""
    square = (
        "In each corner mark a square of {corner} for its motif, {allowance} inside both raw edges,"
        if raw
        else "Mark a square of {corner} in each corner for its motif,"
    )
    sheet.step(
        square + " and the centre of each side. Mark the centres of the {number} motifs between "
        "them from the chart.",
        "the gaps beside both corners of a side are alike.",
    )


def _add_tracing_step(sheet: Worksheet, *, raw: bool) -> None:
    """Tracing the motifs from the printed sheet."""
    inside = "{allowance} inside the raw edge" if raw else "on the edge"
    sheet.step(
        f"Print the sheet at its actual size. Lay a cross on a centre and its line {inside}, and "
        "trace the motif; the ovals stand for it, so draw yours over them first."
    )


TECHNIQUE = RepeatedMotif
