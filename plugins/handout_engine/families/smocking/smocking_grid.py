"""A panel smocked on a grid of dots: how much flat cloth, how many dots and rows, what sheet."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.smocking import (
    SmockingInputs,
    add_smocking_sample,
    add_smocking_supplies,
    laid_down,
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
from handout_engine.working.workings import Grain, Mark, Piece, marked
from handout_engine.working.worksheet import Worksheet


class SmockingGrid(SmockingInputs, ClothInputs):
    """A straight panel of smocking."""

    title = "Smocking grid"
    family = "smocking"
    summary = (
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

    @value("flat cloth wanted")
    def flat_wanted(self) -> Length:
        """So many times the finished width as the fullness says."""
        return self.finished * self.used_fullness

    @value("pleats")
    def pleats(self) -> Count:
        """A pleat lies between two dots; a part of one is a whole one."""
        return (self.flat_wanted / self.dot_spacing).rounded_up()

    @check
    def the_pleats_can_be_gathered(self) -> None:
        """Refuse too few and too many."""
        self.refuse_pleats(self.pleats, "finished")

    @value("dots in each row")
    def dots(self) -> Count:
        """One more than pleats."""
        return self.pleats + 1

    @value("flat cloth from the first dot to the last")
    def flat_width(self) -> Length:
        """As many dot spacings as pleats."""
        return self.pleats * self.dot_spacing

    @value("depth of a pleat")
    def pleat_depth(self) -> Length:
        """The cloth between two dots goes in and comes out again."""
        return self.dot_spacing / 2

    @value("ten pleats, drawn up")
    def ten_pleats(self) -> Length:
        """What is measured to see whether they lie evenly."""
        return 10 * self.finished / self.pleats

    @value("fullness in whole pleats")
    def true_fullness(self) -> Ratio:
        """What whole pleats make of the fullness."""
        return self.flat_width / self.finished

    @value("cloth, cut width")
    def cut_width(self) -> Length:
        """With what lies flat beyond the dots."""
        return self.flat_width + 2 * self.side

    @value("cloth, cut depth")
    def cut_depth(self) -> Length:
        """From raw edge to raw edge."""
        return self.top + self.dotted_height + self.below

    @value("last row of dots")
    def last_dots(self) -> Length:
        """From the upper raw edge."""
        return self.top + self.dotted_height

    @value("thread for one row")
    def gathering_thread(self) -> Length:
        """One thread reaches across the whole cloth."""
        return self.flat_width + 2 * self.side

    @value("gathering thread in all")
    def threads_total(self) -> Length:
        """One for each row."""
        return self.all_rows * self.gathering_thread

    @check
    def it_fits_the_cloth(self) -> None:
        """Refuse a panel wider than its cloth; a join would have to hide inside the smocking."""
        if self.cut_width <= self.usable_width:
            return
        spaces = max(0, int((self.usable_width - 2 * self.side) / self.dot_spacing))
        most = self.dot_spacing * spaces / self.used_fullness
        way = f"smock at most {TAPE.no_more(most)}" if spaces else "leave less at the sides"
        raise RefusalError(
            f"finished {TAPE.both(self.finished)} takes {TAPE.both(self.cut_width)} of flat cloth, "
            f"and this cloth has {TAPE.both(self.usable_width)}; {way}, use wider cloth or less "
            "fullness, or smock it as two panels with a seam between two pleats",
            "finished",
        )

    @group
    def cloth_bought(self) -> ClothBought:
        """One cloth."""
        return ClothBought(self, "cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The panel with its first and last row, and a chart of all rows."""
        sheet.pieces.append(_piece(sheet, self))
        sheet.charts.append(self.rows_chart(self.top))

    def sew(self, sheet: Worksheet) -> None:
        """A sample; then dots, gathers and stitches."""
        add_smocking_supplies(sheet)
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS, LONG_FLOATS, THIN_COTTON))
        add_smocking_sample(sheet)
        _add_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The panel at rest, its flat cloth, a row cut through, and the dot sheet."""
        _draw(sheet, self)


def _piece(sheet: Worksheet, panel: SmockingGrid) -> Piece:
    """The pleats stand along the selvage, whichever of the two sides is longer."""
    width, depth = sheet["cut_width"], sheet["cut_depth"]
    marks = (Mark("first row of dots", panel.top), *marked(panel.last_dots))
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


def _draw(sheet: Worksheet, panel: SmockingGrid) -> None:
    rows, pleats = panel.all_rows.number, panel.pleats.number
    grid = DotSheet(
        pleats, rows, panel.holding_rows.number, sheet["dot_spacing"], sheet["row_spacing"]
    )
    finished = Scene(
        sentence("Smocked panel, finished"),
        sentence(
            "{pleats} pleats in {finished}, {rows} rows.",
            pleats=sheet["pleats"],
            finished=sheet["finished"],
            rows=sheet["rows"],
        ),
        smocked(
            Smocked(
                sheet["finished"],
                sheet["worked_height"],
                pleats,
                sheet["rows"].whole,
                float(panel.row_spacing),
            )
        ),
    )
    flat = Scene(
        sentence("Dots on the flat cloth"),
        sentence(
            "{dots} dots in each of {rows} rows, cloth cut {cut} wide.",
            dots=sheet["dots"],
            rows=sheet["all_rows"],
            cut=sheet["cut_width"],
        ),
        flat_smocking(FlatSmocking(grid, sheet["side"], sheet["top"], sheet["cut_width"])),
    )
    cut = CutThrough(sheet["dot_spacing"], sheet["pleat_depth"], float(panel.finished / pleats))
    sheet.show(
        "finished",
        "The smocked panel at rest; pleats thin, cable rows dashed, waves between them.",
        finished,
        finished=True,
    )
    sheet.show("flat", "The upper part of the flat cloth from its wrong side, with its dots.", flat)
    sheet.show(
        "pleats",
        "One row cut through: flat above, drawn up on its thread below.",
        pleats_section(cut),
    )
    sheet.pictures.append(panel.sheet_picture(sheet))


TECHNIQUE = SmockingGrid
