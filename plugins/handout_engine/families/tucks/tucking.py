"""What all tucked panels share: their inputs, the rules of their gaps, cut pieces and sample."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GEOMETRY, PRACTICE, Basis
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import ClothInputs
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.shared.marking import marking_chart
from handout_engine.working.cautions import PINS_AND_IRON, THIN_COTTON
from handout_engine.working.workings import Grain, Piece, Seam, Step
from handout_engine.working.worksheet import Worksheet

REFUSED, ALLOWED = "refused", "allowed"
RIGHT, LEFT = "to the right", "to the left"
AWAY, TOWARDS = "away from the centre", "towards the centre"
SAMPLE_TUCKS = 3
TAPE = Tape(finest=32)


class PanelInputs(ClothInputs):
    """The inputs of every panel that is folded and sewn into seams."""

    panel_length = length(
        "finished length",
        "Length of the finished panel, along the folds.",
        "10 in",
        ("2 in", "2 yd"),
    )
    side_allowance = length(
        "side allowance",
        "Seam allowance at the left and right edge of the panel; 0 in for cloth that is "
        "tucked first and cut to shape afterwards.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "Seam allowance at the upper and lower edge.",
        "1/4 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "How many such panels are made, two for a pair.", 1, 50)


class SpareInputs(PanelInputs):
    """The inputs of a panel that is worked wider than it is needed, and cut afterwards."""

    spare_width = length(
        "spare width",
        "Added to the cut width, half at each side, for what the turns of the tucks take; what "
        "is left of it is cut off when they are sewn.",
        "1/2 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )


class TuckInputs(PanelInputs):
    """The inputs of every panel whose tucks are drawn side by side."""

    overlap = choice(
        "overlap",
        "Whether tucks may lie over one another: refused, unless you want them to.",
        REFUSED,
        ALLOWED,
        group=SEWING,
    )


def lies(press: str, number: int, count: int) -> Lie:
    """How the tuck of that number (from 0) lies; a middle one goes with the right half."""
    if press in (RIGHT, LEFT):
        return Lie.RIGHT if press == RIGHT else Lie.LEFT
    on_the_left = number < count // 2
    return Lie.LEFT if on_the_left == (press == AWAY) else Lie.RIGHT


def note_cut(sheet: Worksheet, take_up: Value, finished: Value) -> None:
    """Note the tucked panel from raw edge to raw edge, its spare, and what is cut for it."""
    allowance = sheet["side_allowance"].length
    sheet.note(
        "tucked_width", "tucked panel, raw edge to raw edge", finished.length + 2 * allowance,
        "{finished} + 2 × {side_allowance}", finished=finished,
    )  # fmt: skip
    note_spare(sheet)
    sheet.note(
        "panel_cut_width",
        "panel, cut width",
        worked_width(sheet).length + take_up.length,
        "{worked} + {take_up}",
        worked=worked_width(sheet),
        take_up=take_up,
    )
    note_cut_length(sheet)


def note_spare(sheet: Worksheet) -> None:
    """Note the panel with its spare, and how far inside its raw edges it will be sewn."""
    if "spare_width" not in sheet.inputs:
        return
    spare = sheet["spare_width"].length
    sheet.note(
        "worked_width",
        "tucked panel with its spare, raw edge to raw edge",
        sheet["tucked_width"].length + spare,
        "{tucked_width} + {spare_width}",
    )
    sheet.note(
        "edge_to_seam",
        "from each raw edge to the seam line, with half of the spare",
        sheet["side_allowance"].length + spare / 2,
        "{side_allowance} + {spare_width} / 2",
    )


def worked_width(sheet: Worksheet) -> Value:
    """The tucked panel as it is worked, from raw edge to raw edge."""
    return sheet["worked_width" if "worked_width" in sheet.values else "tucked_width"]


def edge_to_seam(sheet: Worksheet) -> Value:
    """From the raw edge of the panel as it is worked to its seam line."""
    return sheet["edge_to_seam" if "edge_to_seam" in sheet.values else "side_allowance"]


def note_cut_length(sheet: Worksheet) -> Value:
    """Note the cut length of a panel, seam allowances at both ends included."""
    return sheet.note(
        "panel_cut_length", "panel, cut length",
        sheet["panel_length"].length + 2 * sheet["end_allowance"].length,
        "{panel_length} + 2 × {end_allowance}",
    )  # fmt: skip


def add_panel(sheet: Worksheet, name: str) -> None:
    """Put the cut panel and its seams on the sheet."""
    sheet.pieces.append(
        Piece(name, "cloth", sheet["make"].whole, sheet["panel_cut_width"],
              sheet["panel_cut_length"], Grain.STRAIGHT)
    )  # fmt: skip
    sheet.seams.append(Seam("sides of the panel", sheet["side_allowance"].length))
    sheet.seams.append(Seam("ends of the panel", sheet["end_allowance"].length))


def add_tuck_chart(sheet: Worksheet, panel: FoldedPanel) -> None:
    """The marking chart of a tucked panel as a table."""
    names = [
        (f"{number}, left stitch", f"{number}, fold", f"{number}, right stitch")
        for number in range(1, len(panel.folds) + 1)
    ]
    sheet.charts.append(
        marking_chart(panel, "Lines to mark on the flat panel, tuck by tuck", names)
    )


def add_sample(sheet: Worksheet, depth: Value, spacing: Value) -> None:
    """Three trial tucks, and what the scrap must measure before and after them."""
    before = sheet.note(
        "sample_before", "sample, cut width",
        (SAMPLE_TUCKS + 3) * spacing.length + 2 * SAMPLE_TUCKS * depth.length,
        "{spaces} × {spacing} + 2 × {tucks} × {depth}", spaces=SAMPLE_TUCKS + 3,
        tucks=SAMPLE_TUCKS, spacing=spacing, depth=depth,
    )  # fmt: skip
    after = sheet.note(
        "sample_after", "sample, width when it is tucked", (SAMPLE_TUCKS + 3) * spacing.length,
        "{before} - 2 × {tucks} × {depth}", before=before, tucks=SAMPLE_TUCKS, depth=depth,
    )  # fmt: skip
    sheet.sample.append(
        Step(
            sentence(
                "Cut a scrap of the same cloth {before} wide and a hand long. Mark, stitch and "
                "press three tucks {depth} deep, {spacing} from stitching to stitching.",
                before=before, depth=depth, spacing=spacing,
            ),
            sentence(
                "the scrap is {after} wide. If it is narrower, the tucks were deeper than {depth} "
                "or the cloth was lost in their turns: stitch that much nearer to the fold. If it "
                "is wider, stitch further from it.",
                after=after, depth=depth,
            ),
        )
    )  # fmt: skip


def add_supplies(sheet: Worksheet) -> None:
    """The notions and cautions of tucked work; cloth was added with what to buy of it."""
    sheet.have("fine thread to match", "a fine needle for the cloth")
    sheet.have("a removable marker tried on a scrap", "a card gauge")
    sheet.cautions.extend((PINS_AND_IRON, THIN_COTTON))


@dataclass(frozen=True)
class EqualRow:
    """Equal tucks side by side: how many, how deep, how far apart, where the first one stands."""

    tucks: Value
    depth: Value
    spacing: Value
    margin: Value
    press: str

    def placed(self, sheet: Worksheet) -> FoldedPanel:
        """The tucks on the panel as it is worked, with its spare."""
        first, count = edge_to_seam(sheet).length + self.margin.length, self.tucks.whole
        return FoldedPanel(
            worked_width(sheet).length,
            tuple(
                Fold(
                    self.depth.length,
                    first + self.spacing.length * number,
                    lies(self.press, number, count),
                )
                for number in range(count)
            ),
        )


def note_lines(sheet: Worksheet, row: EqualRow, flat_basis: Basis = GEOMETRY) -> None:
    """Note where the first line lies, and how far it is from one tuck to the next, flat."""
    sheet.note(
        "first_line", "first line, from the left raw edge",
        edge_to_seam(sheet).length + row.margin.length, "{edge} + {margin}",
        edge=edge_to_seam(sheet), margin=row.margin,
    )  # fmt: skip
    sheet.note(
        "flat_step", "from each tuck's first line to the next one's, flat",
        row.spacing.length + 2 * row.depth.length, "{spacing} + 2 × {depth}", basis=flat_basis,
        spacing=row.spacing, depth=row.depth,
    )  # fmt: skip
