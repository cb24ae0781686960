"""A hem sewn down with whole repeats of a hemstitch between its corners."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import more_than, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.corner_hems import (
    CornerHemInputs,
    article_piece,
    check_room,
    hem_marks,
    note_hem_takes,
    note_mitre,
)
from handout_engine.families.edges.corner_hems_drawing import CornerHem, flat_corner
from handout_engine.families.edges.hemstitched_edge_steps import add_sample, add_steps
from handout_engine.families.edges.repeat_rows_drawing import (
    Rows,
    RowStart,
    article_rows,
    row_start,
)
from handout_engine.families.edges.stitch_needles import (
    NeedleInputs,
    add_needle_supplies,
    note_needle,
)
from handout_engine.shared.repeats import (
    TAPE,
    Line,
    RepeatInputs,
    checks_chart,
    note_repeats,
    sizes_chart,
)
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Mark, Picture, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

ALL_ROUND, TOWEL = "square or rectangle", "towel"


class HemstitchedEdge(NeedleInputs, RepeatInputs, CornerHemInputs, ClothInputs, Technique):
    """A hemmed article whose hem is held by a row of holes."""

    title: ClassVar[str] = "Hemstitched edge"
    family: ClassVar[str] = "edges"
    summary: ClassVar[str] = (
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
        return self.shape == TOWEL

    def whole(self) -> Worksheet:
        """Cut size, repeats between the corners, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        note_hem_takes(sheet)
        _note_cut(sheet, self)
        rows = _note_rows(sheet, self)
        note_needle(sheet, self)
        sheet.pieces.append(_piece(sheet, self))
        note_cloth(sheet, "cloth", self.cloth())
        if not self.towel:
            sheet.seams.append(Seam("mitre at each corner", self.mitre_allowance))
        add_needle_supplies(sheet, self)
        sheet.supplies.append(Supply("a foot with a guide that runs along the folded edge, or a "
                                     "guide bar for a deep hem"))  # fmt: skip
        sheet.cautions.append(PINS_AND_IRON)
        add_sample(sheet)
        add_steps(sheet, self.towel)
        _add_charts(sheet, self, rows)
        _draw(sheet, self)
        return sheet


def _note_cut(sheet: Worksheet, edge: HemstitchedEdge) -> None:
    """Note the cut size, the mitre where there is one, and where the row lies on flat cloth."""
    check_room(sheet, *(("length",) if edge.towel else ("length", "width")))
    if edge.towel:
        sheet.note("cut_width", "cut width", edge.width + 4 * edge.side_hem,
                   "{width} + 4 × {side_hem}")  # fmt: skip
    else:
        sheet.note("cut_width", "cut width", edge.width + 2 * sheet["hem_takes"].length,
                   "{width} + 2 × {hem_takes}")  # fmt: skip
        note_mitre(sheet)
    sheet.note("cut_length", "cut length", edge.length + 2 * sheet["hem_takes"].length,
               "{length} + 2 × {hem_takes}")  # fmt: skip
    sheet.note("stitch_line", "row of stitches, from the raw edge on flat cloth",
               sheet["hem_takes"].length + edge.hem_depth, "{hem_takes} + {hem_depth}")  # fmt: skip


def _note_rows(sheet: Worksheet, edge: HemstitchedEdge) -> list[Line]:
    """Note the repeats along every side that is stitched; returns their lines."""
    found = []
    for side in ("width",) if edge.towel else ("width", "length"):
        if edge.towel:
            run = sheet.note("row_width", "row along the width", edge.width, "{width}")
            left_out = ZERO
        else:
            left_out = 2 * edge.hem_depth + 2 * edge.corner_unit
            run = _note_run(sheet, side, left_out)
        line = Line(side, side, run, left_out)
        note_repeats(sheet, line)
        found.append(line)
    return found


def _add_charts(sheet: Worksheet, edge: HemstitchedEdge, lines: list[Line]) -> None:
    """Sizes that need no adjustment, and where the row must be; a square's sides are alike."""
    alike = not edge.towel and edge.width == edge.length
    shown = [replace(lines[0], words="each side")] if alike else lines
    for line in shown:
        sheet.charts.append(sizes_chart(sheet, line, "Finished side" if alike else "Finished"))
    for line in shown:
        number = sheet[f"repeats_{line.name}"].whole
        sheet.charts.append(checks_chart(line, sheet[f"repeat_{line.name}"], number, ZERO))


def _note_run(sheet: Worksheet, side: str, left_out: Length) -> Value:
    run = sheet[side].length - left_out
    if run <= ZERO:
        way = more_than(sheet.technique, side, left_out, f"more than {{}} for {side}")
        raise RefusalError(
            f"hems and corner units take {TAPE.say(left_out)} of {side} "
            f"{TAPE.say(sheet[side].amount)}, so no row is left; use "
            f"{ways('a smaller corner_unit', way)}",
            "corner_unit",
        )
    return sheet.note(f"row_{side}", f"row along the {side}", run,
                      f"{{{side}}} - 2 × {{hem_depth}} - 2 × {{corner_unit}}")  # fmt: skip


def _piece(sheet: Worksheet, edge: HemstitchedEdge) -> Piece:
    sides = sheet["cut_width"], sheet["cut_length"]
    article = article_piece(sheet, "article", sides, edge.make.number)
    row = Mark("row of stitches, from each hemmed edge", sheet["stitch_line"].length)
    return Piece(article.name, article.cloth, article.count, article.width, article.length,
                 article.grain, (*hem_marks(sheet), row))  # fmt: skip


def _draw(sheet: Worksheet, edge: HemstitchedEdge) -> None:
    along = sheet["repeats_width"].whole
    upright = None if edge.towel else sheet["repeats_length"].whole
    corner = ZERO if edge.towel else edge.corner_unit
    rows = Rows(sheet["width"], sheet["length"], sheet["hem_depth"], float(corner),
                (along, upright))  # fmt: skip
    whole = Scene(
        sentence("The hemstitched article"),
        sentence("{width} by {length}, {number} repeats along the width.", width=sheet["width"],
                 length=sheet["length"], number=along),
        article_rows(rows),
    )  # fmt: skip
    start = RowStart(sheet["hem_depth"], sheet["repeat_width"],
                     None if edge.towel else sheet["repeat_length"],
                     sheet["corner_unit"] if corner else None)  # fmt: skip
    where = "the side" if edge.towel else "a corner"
    detail = Scene(
        sentence("Where a row begins"),
        sentence("Each repeat is {repeat} along the width.", repeat=sheet["repeat_width"]),
        row_start(start),
        tallest=200.0,
    )
    sheet.pictures.append(
        Picture("finished", sentence("The finished article; a tick wherever a repeat begins, or a "
                                     "dashed line where they are too many."), whole, True)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("start", sentence(f"The first repeats from {where}, enlarged, right side up."),
                detail)
    )  # fmt: skip
    if not edge.towel:
        names = ("hem_depth", "turn", "hem_takes", "mitre_mark", "trim_mark")
        hem = CornerHem(*(sheet[name] for name in names))
        flat = Scene(
            sentence("One corner as it is cut"),
            sentence("The mitre seam meets both raw edges {mark} from the corner.", mark=hem.mark),
            flat_corner(hem),
        )
        sheet.pictures.append(
            Picture("flat", sentence("One raw corner, wrong side up: folds dash-dotted, mitre seam "
                                     "dashed; the grey tip is cut off."), flat)
        )  # fmt: skip


TECHNIQUE = HemstitchedEdge
