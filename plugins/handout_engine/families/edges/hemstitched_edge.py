"""A hem sewn down with whole repeats of a hemstitch between its corners."""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import more_than, ways
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.corner_hems import CornerHemInputs, Mitre
from handout_engine.families.edges.corner_hems_drawing import CornerHem, flat_corner
from handout_engine.families.edges.hemstitched_edge_steps import add_sample, add_steps
from handout_engine.families.edges.repeat_rows_drawing import (
    Rows,
    RowStart,
    article_rows,
    row_start,
)
from handout_engine.families.edges.stitch_needles import NeedleInputs
from handout_engine.shared.repeats import FittedRepeats, RepeatInputs, Row
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.workings import Mark, Picture, Seam
from handout_engine.working.worksheet import Worksheet

ALL_ROUND, TOWEL = "square or rectangle", "towel"


class HemstitchedEdge(NeedleInputs, RepeatInputs, CornerHemInputs, ClothInputs):
    """A hemmed article whose hem is held by a row of holes."""

    title = "Hemstitched edge"
    family = "edges"
    summary = (
        "A square, rectangle or towel whose hem is sewn down with whole repeats of a hemstitch "
        "from corner to corner."
    )

    shape = choice(
        "article",
        "Hemmed and stitched on four sides, or a towel on its two ends.",
        ALL_ROUND,
        TOWEL,
    )
    width = length(
        "finished width", "From finished edge to finished edge, across.", "18 in", ("2 in", "60 in")
    )
    make = count("how many", "How many such articles are made.", 1, 50)
    corner_unit = length(
        "corner unit",
        "Of a side, what the corner's own stitch fills at each of its ends. A towel has none.",
        "0 in",
        ("0 in", "4 in"),
        group=SEWING,
    )
    side_hem = length(
        "side hem of a towel",
        "One turn of its double side hems, 0 for a selvage.",
        "1/4 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    length = length_by_choice(
        "finished length",
        "From finished edge to finished edge, down.",
        "as the width, for a square",
        ("2 in", "3 yd"),
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """A square, and a hem that fills itself."""
        return {**super().usual, "length": self.width}

    @property
    def towel(self) -> bool:
        """Whether only the two ends are stitched."""
        return self.shape != ALL_ROUND

    @property
    def hemmed_sides(self) -> tuple[str, ...]:
        """A towel is measured from hem to hem along its length alone."""
        return ("length",) if self.towel else ("length", "width")

    @group
    def mitres(self) -> tuple[Mitre, ...]:
        """A towel has none."""
        return () if self.towel else (Mitre(self),)

    @value("cut width")
    def cut_width(self) -> Length:
        """The sides of a towel are turned under twice."""
        if self.towel:
            return self.width + 4 * self.side_hem
        return self.width + 2 * self.hem_takes

    @value("cut length")
    def cut_length(self) -> Length:
        """A hem is taken at both ends."""
        return self.length + 2 * self.hem_takes

    @value("row of stitches, from the raw edge on flat cloth")
    def stitch_line(self) -> Length:
        """At the inner edge of the hem once it is folded."""
        return self.hem_takes + self.hem_depth

    @property
    def left_out(self) -> Length:
        """What hems and corners take of a side that is stitched from corner to corner."""
        return ZERO if self.towel else 2 * self.hem_depth + 2 * self.corner_unit

    @check
    def the_corners_leave_a_row(self) -> None:
        """Refuse hems and corner units that take a whole side."""
        self.something_is_left_between_the_hems()
        for side in () if self.towel else ("width", "length"):
            if self.inputs[side].length <= self.left_out:
                way = more_than(self, side, self.left_out, f"more than {{}} for {side}")
                raise RefusalError(
                    f"hems and corner units take {TAPE.say(self.left_out)} of {side} "
                    f"{TAPE.say(self.inputs[side].length)}, so no row is left; use "
                    f"{ways('a smaller corner_unit', way)}",
                    "corner_unit",
                )

    @value("row along the width")
    def row_width(self) -> Length:
        """From corner to corner, or from side to side of a towel."""
        return self.width - self.left_out

    @value("row along the length")
    def row_length(self) -> Length | None:
        """A towel has none."""
        return None if self.towel else self.length - self.left_out

    @group
    def rows(self) -> tuple[FittedRepeats, ...]:
        """The repeats along every side that is stitched."""
        along = {"width": self.row_width, "length": self.row_length}
        return tuple(
            FittedRepeats(self, Row(side, side, run, self.left_out))
            for side, run in along.items()
            if run is not None
        )

    @value("ten repeats as the machine sews them")
    def ten_repeats(self) -> Length:
        """One alone is too short to be measured."""
        return 10 * self.repeat

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the article."""
        return ClothBought(self, "cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The article, the sizes that need no adjustment, and where the row must be."""
        row = Mark("row of stitches, from each hemmed edge", self.stitch_line)
        sheet.pieces.append(self.article_piece(sheet, self.make.number, row))
        if not self.towel:
            sheet.seams.append(Seam("mitre at each corner", self.mitre_allowance))
        alike = not self.towel and self.width == self.length
        shown, words = (self.rows[:1], "each side") if alike else (self.rows, "")
        size = "Finished side" if alike else "Finished"
        sheet.charts.extend(row.sizes_chart(size, words) for row in shown)
        sheet.charts.extend(row.checks_chart(words) for row in shown)

    def sew(self, sheet: Worksheet) -> None:
        """From ten repeats on a scrap to the last corner."""
        self.add_needle_supplies(sheet)
        sheet.have(
            "a foot with a guide that runs along the folded edge, or a guide bar for a deep hem"
        )
        sheet.cautions.append(PINS_AND_IRON)
        add_sample(sheet)
        add_steps(sheet, self.towel)

    def draw(self, sheet: Worksheet) -> None:
        """The article, where its row begins, and a corner as it is cut."""
        numbers = [row.number.number for row in self.rows]
        corner = ZERO if self.towel else self.corner_unit
        rows = Rows(
            sheet["width"],
            sheet["length"],
            sheet["hem_depth"],
            float(corner),
            (numbers[0], None if self.towel else numbers[1]),
        )
        whole = Scene(
            sentence("The hemstitched article"),
            sheet.sentence("{width} by {length}, {repeats_width} repeats along the width."),
            article_rows(rows),
        )
        start = RowStart(
            sheet["hem_depth"],
            sheet["repeat_width"],
            None if self.towel else sheet["repeat_length"],
            sheet["corner_unit"] if corner else None,
        )
        detail = Scene(
            sentence("Where a row begins"),
            sheet.sentence("Each repeat is {repeat_width} along the width."),
            row_start(start),
            tallest=200.0,
        )
        caption = (
            "The finished article; a tick wherever a repeat begins, or a dashed line where they "
            "are too many."
        )
        sheet.show("finished", caption, whole, finished=True)
        where = "the side" if self.towel else "a corner"
        caption = f"The first repeats from {where}, enlarged, right side up."
        sheet.show("start", caption, detail)
        if not self.towel:
            sheet.pictures.append(_raw_corner(sheet))


def _raw_corner(sheet: Worksheet) -> Picture:
    names = ("hem_depth", "turn", "hem_takes", "mitre_mark", "trim_mark")
    flat = Scene(
        sentence("One corner as it is cut"),
        sheet.sentence("The mitre seam meets both raw edges {mitre_mark} from the corner."),
        flat_corner(CornerHem(*(sheet[name] for name in names))),
    )
    caption = (
        "One raw corner, wrong side up: folds dash-dotted, mitre seam dashed; the grey tip is cut "
        "off."
    )
    return Picture("flat", sentence(caption), flat)


TECHNIQUE = HemstitchedEdge
