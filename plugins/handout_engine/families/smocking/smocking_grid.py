"""A panel smocked on a grid of dots: how much flat cloth, how many dots and rows, what sheet."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.smocking import (
    TAPE,
    SmockingInputs,
    add_smocking_sample,
    add_smocking_supplies,
    check_pleats,
    laid_down,
    note_fullness,
    note_rows,
    note_sheet,
    rows_chart,
)
from handout_engine.families.smocking.smocking_drawing import (
    CutThrough,
    DotSheet,
    FlatSmocking,
    Smocked,
    flat_smocking,
    pleats_section,
    smocked,
)
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import LONG_FLOATS, LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Picture, Piece
from handout_engine.working.worksheet import Worksheet


class SmockingGrid(SmockingInputs, ClothInputs, Technique):
    """A straight panel of smocking."""

    title: ClassVar[str] = "Smocking grid"
    family: ClassVar[str] = "smocking"
    summary: ClassVar[str] = (
        "A panel drawn up into even pleats on rows of dots and smocked: flat width, dots, rows "
        "and a dot sheet to trace."
    )

    finished = length(
        "finished width",
        "Width of the smocking at rest, from its first pleat to its last.",
        "6 in",
        ("1 in", "24 in"),
    )
    below = length(
        "cloth below",
        "From the last row of dots down to the lower raw edge.",
        "10 in",
        ("1/2 in", "50 in"),
    )
    top = length(
        "above the dots",
        "From the upper raw edge to the first row of dots.",
        "1/2 in",
        ("1/8 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    side = length(
        "at each side",
        "Flat cloth left beyond the first and the last dot.",
        "1/2 in",
        ("1/8 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Flat width, dots, rows, cloth, steps and dot sheet; raises RefusalError."""
        sheet = Worksheet(technique=self)
        fullness = note_fullness(sheet, self)
        pleats = _note_pleats(sheet, self, fullness)
        note_rows(sheet, self)
        _note_cut(sheet, self)
        dots = note_sheet(sheet, self, pleats)
        cloth = self.cloth()
        usable = note_usable_width(sheet, cloth)
        _check_fits(self, sheet, usable, fullness)
        sheet.pieces.append(_piece(sheet, self))
        note_cloth(sheet, "cloth", cloth)
        add_smocking_supplies(sheet)
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS, LONG_FLOATS, THIN_COTTON))
        add_smocking_sample(sheet, self, fullness)
        sheet.charts.append(rows_chart(sheet, self, self.top))
        _add_steps(sheet)
        _draw(sheet, self, dots)
        return sheet


def _note_pleats(sheet: Worksheet, panel: SmockingGrid, fullness: Value) -> Value:
    wanted = sheet.note("flat_wanted", "flat cloth wanted",
                        panel.finished * fullness.ratio,
                        "{finished} × {used}", used=fullness)  # fmt: skip
    number = -(-wanted.length.mm // panel.dot_spacing.mm)
    check_pleats(number, panel, "finished")
    pleats = sheet.note("pleats", "pleats", number, "{flat_wanted} / {dot_spacing}, rounded up")
    sheet.note("dots", "dots in each row", number + 1, "{pleats} + 1")
    flat = sheet.note("flat_width", "flat cloth from the first dot to the last",
                      panel.dot_spacing * number, "{pleats} × {dot_spacing}")  # fmt: skip
    sheet.note("pleat_depth", "depth of a pleat", panel.dot_spacing / 2, "{dot_spacing} / 2")
    sheet.note("ten_pleats", "ten pleats, drawn up", panel.finished * Fraction(10, number),
               "10 × {finished} / {pleats}")  # fmt: skip
    sheet.note("true_fullness", "fullness in whole pleats", flat.length / panel.finished,
               "{flat_width} / {finished}")  # fmt: skip
    return pleats


def _note_cut(sheet: Worksheet, panel: SmockingGrid) -> None:
    sheet.note("cut_width", "cloth, cut width", sheet["flat_width"].length + 2 * panel.side,
               "{flat_width} + 2 × {side}")  # fmt: skip
    sheet.note("cut_depth", "cloth, cut depth",
               panel.top + sheet["dotted_height"].length + panel.below,
               "{top} + {dotted_height} + {below}")  # fmt: skip
    sheet.note("gathering_thread", "thread for one row",
               sheet["flat_width"].length + 2 * panel.side,
               "{flat_width} + 2 × {side}")  # fmt: skip
    sheet.note("threads_total", "gathering thread in all",
               sheet["gathering_thread"].length * sheet["all_rows"].whole,
               "{all_rows} × {gathering_thread}")  # fmt: skip


def _check_fits(panel: SmockingGrid, sheet: Worksheet, usable: Value, fullness: Value) -> None:
    """Refuse a panel wider than its cloth; a join would have to hide inside the smocking."""
    if sheet["cut_width"].length <= usable.length:
        return
    spaces = max(0, (usable.length - 2 * panel.side).mm // panel.dot_spacing.mm)
    most = panel.dot_spacing * spaces / fullness.ratio
    way = f"smock at most {TAPE.no_more(most)}" if spaces else "leave less at the sides"
    raise RefusalError(
        f"finished {TAPE.both(panel.finished)} takes {TAPE.both(sheet['cut_width'].length)} of "
        f"flat cloth, and this cloth has {TAPE.both(usable.length)}; {way}, use wider cloth or "
        "less fullness, or smock it as two panels with a seam between two pleats",
        "finished",
    )


def _piece(sheet: Worksheet, panel: SmockingGrid) -> Piece:
    """The pleats stand along the selvage, whichever of the two sides is longer."""
    width, depth = sheet["cut_width"], sheet["cut_depth"]
    first = panel.top
    last = first + sheet["dotted_height"].length
    marks = (Mark("first row of dots", first), Mark("last row of dots", last))
    if depth.length >= width.length:
        return Piece("panel", "cloth", 1, width, depth, Grain.STRAIGHT, marks)
    return Piece("panel", "cloth", 1, depth, width, Grain.CROSS, marks)


def _add_steps(sheet: Worksheet) -> None:
    add_washing_step(sheet)
    sheet.step(
        "Cut the cloth {cut_width} across the cloth and {cut_depth} along the selvage, both by a "
        "drawn thread."
    )
    sheet.step(
        "Print the dot sheet at its actual size. On the wrong side trace the dots, the first "
        "column {side} from the left raw edge and the first row {top} below the upper one. "
        f"{laid_down(sheet)}; stop at {{dots}} dots.",
        "from the first dot of a row to its last it is {flat_width}.",
    )
    sheet.step(
        "Gather on the wrong side, one thread for each of the {all_rows} rows, {gathering_thread} "
        "long and a hand's breadth more. Knot it, pick up a thread or two of cloth at each dot, "
        "and leave the end loose. Never join a thread inside a row."
    )
    sheet.step(
        "Draw all threads up together, stroke the pleats straight with a needle, and tie the ends "
        "in pairs when the rows are a finger's breadth narrower than the finished width, since "
        "smocking opens a little.",
        "on the right side {pleats} pleats stand side by side, none taken up twice.",
    )
    sheet.step(
        "Smock the {rows} worked rows from the right side, row by row from the left. Pick up the "
        "top third of a pleat only. Leave the rows marked as holding, {holding_rows} above and as "
        "many below, unworked."
    )
    sheet.step(
        "Pin the panel face down to {finished}, hold a steaming iron above it without touching, "
        "and let it dry. Draw out the gathering threads of the worked rows; leave the holding rows "
        "in until the seams are sewn.",
        "it is {finished} wide at rest, ten pleats measure {ten_pleats}, and the worked rows "
        "{worked_height} from first to last.",
    )
    sheet.step(
        "Sew the panel in, its seam beside the upper holding row, then draw that thread out."
    )


def _draw(sheet: Worksheet, panel: SmockingGrid, dots: Picture) -> None:
    rows, pleats = sheet["all_rows"].whole, sheet["pleats"].whole
    grid = DotSheet(
        pleats, rows, panel.holding_rows.number, sheet["dot_spacing"], sheet["row_spacing"]
    )
    finished = Scene(
        sentence("Smocked panel, finished"),
        sentence("{pleats} pleats in {finished}, {rows} rows.", pleats=sheet["pleats"],
                 finished=sheet["finished"], rows=sheet["rows"]),
        smocked(Smocked(sheet["finished"], sheet["worked_height"], pleats, sheet["rows"].whole,
                        float(panel.row_spacing))),
    )  # fmt: skip
    flat = Scene(
        sentence("Dots on the flat cloth"),
        sentence("{dots} dots in each of {rows} rows, cloth cut {cut} wide.", dots=sheet["dots"],
                 rows=sheet["all_rows"], cut=sheet["cut_width"]),
        flat_smocking(FlatSmocking(grid, sheet["side"], sheet["top"], sheet["cut_width"])),
    )  # fmt: skip
    cut = CutThrough(sheet["dot_spacing"], sheet["pleat_depth"], float(panel.finished / pleats))
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The smocked panel at rest; pleats thin, cable rows "
                                         "dashed, waves between them."), finished, True),
            Picture("flat", sentence("The upper part of the flat cloth from its wrong side, with "
                                     "its dots."), flat),
            Picture("pleats", sentence("One row cut through: flat above, drawn up on its thread "
                                       "below."), pleats_section(cut)),
            dots,
        )
    )  # fmt: skip


TECHNIQUE = SmockingGrid
