"""A neck smocked all round: backs, sleeves and front joined first and pleated as one."""

from __future__ import annotations

from functools import cached_property
from math import pi

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, length, ratio
from handout_engine.amounts.lengths import Length, from_float
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.neck_piece import ORDER, NeckPiece, pieces_chart
from handout_engine.families.smocking.smocked_neck_drawing import (
    NeckPart,
    SmockedNeck,
    neck_from_above,
    pieces_side_by_side,
)
from handout_engine.families.smocking.smocking import (
    SmockingInputs,
    add_smocking_sample,
    add_smocking_supplies,
    laid_down,
)
from handout_engine.working.cautions import LONG_FLOATS, LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.workings import Picture, Seam, Supply
from handout_engine.working.worksheet import Worksheet

PIECES = 5
"""A front, two sleeves and two halves of the back."""


class SmockedNeckline(SmockingInputs):
    """Four pattern pieces pleated as one round a neck."""

    title = "Smocked neck"
    family = "smocking"
    summary = (
        "Front, backs and sleeves joined and pleated as one round the neck: how wide each is cut "
        "there, and where its seams come to lie."
    )

    neck = length(
        "finished neck",
        "Round the neck when it is closed, edge to edge.",
        "10 in",
        ("5 in", "30 in"),
    )
    front_part = ratio(
        "front, parts",
        "How many parts of the neck the front takes.",
        "3",
        ("1", "12"),
        basis=PRACTICE,
    )
    back_part = ratio(
        "back, parts",
        "How many parts both halves of the back take together.",
        "3",
        ("1", "12"),
        basis=PRACTICE,
    )
    sleeve_part = ratio(
        "sleeve, parts",
        "How many parts each of the two sleeves takes.",
        "2",
        ("1", "12"),
        basis=PRACTICE,
    )
    top = length(
        "above the dots",
        "From the raw neck edge to the first row of dots.",
        "3/8 in",
        ("1/8 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    seam = length(
        "seam allowance",
        "Of the seams between sleeves and body.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    opening = length(
        "at the opening",
        "Cloth at each back edge beyond its last dot, for the placket.",
        "1 in",
        ("1/4 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("flat cloth wanted round the neck")
    def flat_wanted(self) -> Length:
        """So many times the neck as the fullness says."""
        return self.neck * self.used_fullness

    @value("parts in all")
    def all_parts(self) -> Ratio:
        """There are two sleeves."""
        return self.front_part + self.back_part + 2 * self.sleeve_part

    @group
    def pieces(self) -> tuple[NeckPiece, ...]:
        """Whole pleats for each piece, so that each seam falls on a dot."""
        return self.back, self.sleeve, self.front

    @cached_property
    def back(self) -> NeckPiece:
        """A half of the back, with the placket at its other edge."""
        return NeckPiece(self, "back_", self.back_part, self.opening)

    @cached_property
    def sleeve(self) -> NeckPiece:
        """One of the sleeves."""
        return NeckPiece(self, "sleeve_", self.sleeve_part, self.seam)

    @cached_property
    def front(self) -> NeckPiece:
        """The front."""
        return NeckPiece(self, "front_", self.front_part, self.seam)

    @value("pleats round the neck")
    def pleats(self) -> Count:
        """Those of all five pieces."""
        return self.front.pleats + 2 * self.sleeve.pleats + 2 * self.back.pleats

    @check
    def the_pleats_can_be_gathered(self) -> None:
        """Refuse too few and too many."""
        self.refuse_pleats(self.pleats, "neck", parts=PIECES)

    @value("flat cloth from the first dot to the last")
    def flat_width(self) -> Length:
        """As many dot spacings as pleats."""
        return self.pleats * self.dot_spacing

    @value("ten pleats at the neck")
    def ten_pleats(self) -> Length:
        """What is measured to see whether they lie evenly."""
        return 10 * self.neck / self.pleats

    @value("from the first row of dots to the last worked one")
    def smocked_depth(self) -> Length:
        """The holding rows lie above."""
        return self.holding_rows * self.row_spacing + self.worked_height

    @value("last worked row, lying flat")
    def last_row(self) -> Length:
        """A ring that lies flat is longer by 2 × π for each length that it lies further out."""
        return self.neck + 2 * PI * self.smocked_depth

    @check
    def the_last_row_opens_so_far(self) -> None:
        """Refuse smocking so deep that there is not cloth enough in its last row."""
        if self.last_row <= self.flat_width:
            return
        room = from_float(float(self.flat_width - self.neck) / (2 * pi))
        below = room - self.holding_rows * self.row_spacing
        rows = max(0, int(below / self.row_spacing))
        way = ways(at_most(self, "height", self.row_spacing * rows), "more fullness")
        raise RefusalError(
            f"height {TAPE.both(self.height)} would need {TAPE.both(self.last_row)} of cloth in "
            f"its last row to lie flat, and there are only {TAPE.both(self.flat_width)}; use {way}",
            "height",
        )

    @value("fullness left in the last worked row")
    def last_fullness(self) -> Ratio:
        """What it can still open."""
        return self.flat_width / self.last_row

    def cut(self, sheet: Worksheet) -> None:
        """The pattern cuts the pieces; their neck edges and all rows have their charts."""
        sheet.seams.append(Seam("sleeves to front and backs", self.seam))
        sheet.charts.append(pieces_chart(sheet, self))
        sheet.charts.append(self.rows_chart(self.top))

    def sew(self, sheet: Worksheet) -> None:
        """A sample; then dots, gathers and stitches."""
        words = (
            "cloth as the pattern of the garment asks, the neck edges of its pieces drawn as wide "
            "as the chart says"
        )
        sheet.supplies.append(Supply(words))
        add_smocking_supplies(sheet)
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS, LONG_FLOATS, THIN_COTTON))
        add_smocking_sample(sheet)
        _add_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The neck from above, its pieces side by side, and the dot sheet."""
        _draw(sheet, self.sheet_picture(sheet))


def _add_steps(sheet: Worksheet) -> None:
    sheet.step(
        "Wash and press the cloth. Draw the neck edges of the pattern straight, square to the "
        "grain: each back half {back_cut}, each sleeve {sleeve_cut}, the front {front_cut} wide."
    )
    sheet.step(
        "Sew the sleeves to the front and the backs, {seam} allowance, in fine flat seams, and "
        "trim them at the neck so that no bulk comes under the dots. Leave the centre back open.",
        "from one back edge to the other, less {opening} at each, the neck edge measures "
        "{flat_width}.",
    )
    sheet.step(
        "Print the dot sheet at its actual size and trace the dots on the wrong side, the first "
        "row {top} below the raw edge, the first column {opening} from the left back edge. "
        f"{laid_down(sheet)}.",
        "a column of dots lies on every seam; from seam to seam it is {back_pleats}, "
        "{sleeve_pleats}, {front_pleats}, {sleeve_pleats} and {back_pleats} pleats. "
        "Where a column misses its seam, ease the seam to it.",
    )
    sheet.step(
        "Gather the {all_rows} rows, each with one thread from back edge to back edge, a stitch at "
        "every dot. A seam lies at a dot and so vanishes between two pleats."
    )
    sheet.step(
        "Draw up the first row to the neck and each lower one a little less, so that the piece "
        "lies flat round a plate. Tie the ends and stroke the pleats straight.",
        "the first row is {neck} long, ten pleats {ten_pleats}; the front takes {front_drawn} of "
        "it, each sleeve {sleeve_drawn}, each half of the back {back_drawn}. The last worked row "
        "is at most {last_row}.",
    )
    sheet.step(
        "Smock the {rows} worked rows, close stitches near the neck and wider waves below, where "
        "the cloth must open. Leave the holding rows unworked."
    )
    sheet.step(
        "Hem the back edges or set the placket in, then bind the neck edge along the upper holding "
        "row. Steam, and draw the gathering threads out.",
        "the neck is {neck} from edge to edge when it is closed.",
    )


def _draw(sheet: Worksheet, dots: Picture) -> None:
    parts = [
        NeckPart(number, sheet[f"{name}_pleats"].whole, sheet[f"{name}_flat"])
        for number, (_, name) in enumerate(ORDER, 1)
    ]
    rows = sheet["rows"].whole + sheet["holding_rows"].whole
    neck = SmockedNeck(parts, sheet["neck"], sheet["smocked_depth"], rows)
    above = Scene(
        sentence("Smocked neck, from above"),
        sentence(
            "A neck of {neck} with {pleats} pleats, smocked {depth} deep.",
            neck=sheet["neck"],
            pleats=sheet["pleats"],
            depth=sheet["smocked_depth"],
        ),
        neck_from_above(neck),
    )
    flat = Scene(
        sentence("The pieces joined, before gathering"),
        sentence(
            "Five pieces side by side, {flat} from the first dot to the last.",
            flat=sheet["flat_width"],
        ),
        pieces_side_by_side(neck, sheet["flat_width"]),
    )
    names = ", ".join(f"{number} {words}" for number, (words, _) in enumerate(ORDER, 1))
    sheet.show(
        "finished",
        "The neck lying flat, centre back at the top; sleeves are tinted.",
        above,
        finished=True,
    )
    sheet.show("pieces", f"The pieces in order: {names}.", flat)
    sheet.pictures.append(dots)


TECHNIQUE = SmockedNeckline
