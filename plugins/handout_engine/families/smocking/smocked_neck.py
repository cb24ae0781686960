"""A neck smocked all round: backs, sleeves and front joined first and pleated as one."""

from __future__ import annotations

from fractions import Fraction
from math import pi
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length, ratio
from handout_engine.amounts.lengths import from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.smocked_neck_drawing import (
    NeckPart,
    SmockedNeck,
    neck_from_above,
    pieces_side_by_side,
)
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
from handout_engine.working.cautions import LONG_FLOATS, LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Cell, Chart, Picture, Seam, Supply
from handout_engine.working.worksheet import Worksheet

ORDER = (
    ("left back", "back"),
    ("left sleeve", "sleeve"),
    ("front", "front"),
    ("right sleeve", "sleeve"),
    ("right back", "back"),
)
NAMES = {"back": "each back half", "sleeve": "each sleeve", "front": "front"}
PIECES = 5
"""A front, two sleeves and two halves of the back."""


class SmockedNeckline(SmockingInputs, Technique):
    """Four pattern pieces pleated as one round a neck."""

    title: ClassVar[str] = "Smocked neck"
    family: ClassVar[str] = "smocking"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Pleats and widths of each piece, seams, rows, steps, dot sheet; raises RefusalError."""
        sheet = Worksheet(technique=self)
        fullness = note_fullness(sheet, self)
        pleats = _note_pleats(sheet, self, fullness)
        _note_widths(sheet, self)
        note_rows(sheet, self)
        _note_last_row(sheet, self)
        dots = note_sheet(sheet, self, pleats)
        sheet.seams.append(Seam("sleeves to front and backs", self.seam))
        sheet.supplies.append(Supply("cloth as the pattern of the garment asks, the neck edges of "
                                     "its pieces drawn as wide as the chart says"))  # fmt: skip
        add_smocking_supplies(sheet)
        sheet.cautions.extend((PINS_AND_IRON, LOOSE_THREADS, LONG_FLOATS, THIN_COTTON))
        add_smocking_sample(sheet, self, fullness)
        sheet.charts.append(_pieces_chart(sheet, self))
        sheet.charts.append(rows_chart(sheet, self, self.top))
        _add_steps(sheet)
        _draw(sheet, dots)
        return sheet


def _note_pleats(sheet: Worksheet, neck: SmockedNeckline, fullness: Value) -> Value:
    """Whole pleats for each piece, so that each seam falls on a dot."""
    wanted = sheet.note("flat_wanted", "flat cloth wanted round the neck",
                        neck.neck * fullness.ratio,
                        "{neck} × {used}", used=fullness)  # fmt: skip
    parts = sheet.note("all_parts", "parts in all",
                       neck.front_part + neck.back_part + 2 * neck.sleeve_part,
                       "{front_part} + {back_part} + 2 × {sleeve_part}")  # fmt: skip
    shares = {"back": (neck.back_part, 2), "sleeve": (neck.sleeve_part, 1),
              "front": (neck.front_part, 1)}  # fmt: skip
    number = 0
    for name, (share, halves) in shares.items():
        part = share / (halves * parts.ratio)
        each = -(-(wanted.length * part).mm // neck.dot_spacing.mm)
        whole = "{all_parts}" if halves == 1 else "(2 × {all_parts})"
        share_of = f"{{flat_wanted}} × {{{name}_part}} / {whole}"
        sheet.note(f"{name}_pleats", f"{NAMES[name]}, pleats", each,
                   f"{share_of} / {{dot_spacing}}, rounded up")  # fmt: skip
        number += each * (1 if name == "front" else 2)
    check_pleats(number, neck, "neck", parts=PIECES)
    return sheet.note("pleats", "pleats round the neck", number,
                      "{front_pleats} + 2 × {sleeve_pleats} + 2 × {back_pleats}")  # fmt: skip


def _note_widths(sheet: Worksheet, neck: SmockedNeckline) -> None:
    pleats = sheet["pleats"].whole
    sheet.note("flat_width", "flat cloth from the first dot to the last",
               neck.dot_spacing * pleats, "{pleats} × {dot_spacing}")  # fmt: skip
    for name, words in NAMES.items():
        each = sheet[f"{name}_pleats"].whole
        flat = sheet.note(f"{name}_flat", f"{words}, flat between its seam lines",
                          neck.dot_spacing * each,
                          f"{{{name}_pleats}} × {{dot_spacing}}")  # fmt: skip
        sheet.note(f"{name}_drawn", f"{words}, drawn up", neck.neck * Fraction(each, pleats),
                   f"{{neck}} × {{{name}_pleats}} / {{pleats}}")  # fmt: skip
        edges = neck.seam + neck.opening if name == "back" else 2 * neck.seam
        added = "{seam} + {opening}" if name == "back" else "2 × {seam}"
        sheet.note(f"{name}_cut", f"{words}, neck edge as cut", flat.length + edges,
                   f"{{{name}_flat}} + {added}")  # fmt: skip
    sheet.note("ten_pleats", "ten pleats at the neck", neck.neck * Fraction(10, pleats),
               "10 × {neck} / {pleats}")  # fmt: skip


def _note_last_row(sheet: Worksheet, neck: SmockedNeckline) -> None:
    """How far the last row opens where the smocking lies flat; refuse what cannot open so far."""
    down = sheet.note("smocked_depth", "from the first row of dots to the last worked one",
                      neck.row_spacing * neck.holding_rows + sheet["worked_height"].length,
                      "{holding_rows} × {row_spacing} + {worked_height}")  # fmt: skip
    around = sheet.note("last_row", "last worked row, lying flat",
                        neck.neck + from_float(2 * pi * down.mm),
                        "{neck} + 2 × π × {smocked_depth}")  # fmt: skip
    flat = sheet["flat_width"].length
    if around.length > flat:
        room = from_float(float(flat - neck.neck) / (2 * pi)) - neck.row_spacing * neck.holding_rows
        rows = max(0, int(room / neck.row_spacing))
        way = ways(at_most(neck, "height", neck.row_spacing * rows), "more fullness")
        raise RefusalError(
            f"height {TAPE.both(neck.height)} would need {TAPE.both(around.length)} of cloth in "
            f"its last row to lie flat, and there are only {TAPE.both(flat)}; use {way}",
            "height",
        )
    sheet.note("last_fullness", "fullness left in the last worked row", flat / around.length,
               "{flat_width} / {last_row}")  # fmt: skip


def _pieces_chart(sheet: Worksheet, neck: SmockedNeckline) -> Chart:
    """Every piece in order from the left back edge, and where it ends."""
    rows: list[tuple[Cell, ...]] = []
    pleats, total = 0, sheet["pleats"].whole
    for number, (words, name) in enumerate(ORDER, 1):
        pleats += sheet[f"{name}_pleats"].whole
        flat, drawn = neck.dot_spacing * pleats, neck.neck * Fraction(pleats, total)
        rows.append((f"{number} {words}", sheet[f"{name}_cut"], sheet[f"{name}_pleats"], pleats,
                     flat, drawn))  # fmt: skip
    return Chart(
        "Pieces round the neck, from the first dot at the left back",
        ("Piece", "Neck edge as cut", "Pleats", "Ends at pleat", "Flat, from the first dot",
         "Drawn up, from the first dot"),
        tuple(rows),
    )  # fmt: skip


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
    parts = [NeckPart(number, sheet[f"{name}_pleats"].whole, sheet[f"{name}_flat"])
             for number, (_, name) in enumerate(ORDER, 1)]  # fmt: skip
    rows = sheet["rows"].whole + sheet["holding_rows"].whole
    neck = SmockedNeck(parts, sheet["neck"], sheet["smocked_depth"], rows)
    above = Scene(
        sentence("Smocked neck, from above"),
        sentence("A neck of {neck} with {pleats} pleats, smocked {depth} deep.",
                 neck=sheet["neck"], pleats=sheet["pleats"], depth=sheet["smocked_depth"]),
        neck_from_above(neck),
    )  # fmt: skip
    flat = Scene(
        sentence("The pieces joined, before gathering"),
        sentence("Five pieces side by side, {flat} from the first dot to the last.",
                 flat=sheet["flat_width"]),
        pieces_side_by_side(neck, sheet["flat_width"]),
    )  # fmt: skip
    names = ", ".join(f"{number} {words}" for number, (words, _) in enumerate(ORDER, 1))
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The neck lying flat, centre back at the top; sleeves "
                                         "are tinted."), above, True),
            Picture("pieces", sentence(f"The pieces in order: {names}."), flat),
            dots,
        )
    )  # fmt: skip


TECHNIQUE = SmockedNeckline
