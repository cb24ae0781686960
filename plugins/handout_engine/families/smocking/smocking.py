"""Smocking: cloth drawn up into small even pleats by rows of dots, then held by its stitches.

Between two dots of a row lies one pleat. A row therefore has one dot more than pleats, and the flat
cloth from its first dot to its last is as many dot spacings as there are pleats.
"""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.inputs import SEWING, count, length, optional_length, ratio
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.families.smocking.smocking_drawing import DotSheet, dot_sheet
from handout_engine.working.workings import Cell, Chart, Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

FEWEST_PLEATS, MOST_PLEATS = 10, 1500
MOST_DOTS_ON_SHEET = 4000
SAMPLE_PLEATS = 24
TAPE = Tape(finest=32)


class SmockingInputs:
    """What every piece of smocking asks: its fullness, its dots and rows, its dot sheet."""

    height = length(
        "height of the smocking",
        "From its first worked row to its last.",
        "1 1/2 in",
        ("1/4 in", "8 in"),
    )
    fullness = ratio(
        "fullness",
        "Flat cloth for each length of finished smocking, unless a sample says otherwise.",
        "3",
        ("1.5", "6"),
        basis=PRACTICE,
    )
    sample_flat = length(
        "sample, flat",
        "Flat cloth between the first dot and the last of your sample.",
        "6 in",
        ("3 in", "1 yd"),
        group=SEWING,
        basis=PRACTICE,
    )
    sample_smocked = optional_length(
        "sample, smocked",
        "The sample smocked, its threads drawn out, at rest; it goes before the fullness.",
        "the fullness is used as it is written",
        ("1/4 in", "6 in"),
        group=SEWING,
    )
    dot_spacing = length(
        "dot spacing",
        "From dot to dot along a row.",
        "1/4 in",
        ("1/16 in", "1/2 in"),
        group=SEWING,
        basis=published("baldt-1916"),
    )
    row_spacing = length(
        "row spacing",
        "From row to row.",
        "3/8 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=published("baldt-1916"),
    )
    holding_rows = count(
        "holding rows",
        "Rows above the smocking, and as many below, that only hold the pleats.",
        1,
        3,
        group=SEWING,
        basis=PRACTICE,
    )
    sheet_width = length(
        "dot sheet, width",
        "How wide the dots on the printed sheet reach; 7 in fits A4 and Letter paper.",
        "7 in",
        ("2 in", "16 in"),
        group=SEWING,
        basis=PRACTICE,
    )


def note_fullness(sheet: Worksheet, inputs: SmockingInputs) -> Value:
    """The fullness to work with: from the sample where there is one. Raises RefusalError."""
    flat, smocked = inputs.sample_flat, inputs.sample_smocked
    if smocked is None:
        return sheet["fullness"]
    if smocked >= flat:
        raise RefusalError(
            f"sample_smocked {TAPE.both(smocked)} is not less than the {TAPE.both(flat)} of flat "
            "cloth that was drawn up; measure both again, between the same two dots",
            "sample_smocked",
        )
    return sheet.note("sample_fullness", "fullness of the sample", flat / smocked,
                      "{sample_flat} / {sample_smocked}")  # fmt: skip


def check_pleats(pleats: int, inputs: SmockingInputs, field: str, parts: int = 1) -> None:
    """Refuse too few pleats to be smocking, and more than anyone would gather.

    `field` is the input whose width takes them, worked out in so many `parts`, each of which is
    rounded up to whole pleats. Raises RefusalError.
    """
    if pleats < FEWEST_PLEATS:
        closer = inputs.dot_spacing * Fraction(pleats, FEWEST_PLEATS + 1)
        way = ways(at_most(inputs, "dot_spacing", closer, "dots at most {} apart"), "a wider piece")
        raise RefusalError(
            f"{field} would take {pleats} pleats, fewer than {FEWEST_PLEATS}, which is no "
            f"smocking; use {way}",
            "dot_spacing",
        )
    if pleats > MOST_PLEATS:
        room = MOST_PLEATS - (parts - 1)
        apart = inputs.dot_spacing * Fraction(pleats, room)
        widest = getattr(inputs, field) * Fraction(room, pleats)
        way = ways(
            at_least(inputs, "dot_spacing", apart, "a dot_spacing of at least {}"),
            at_most(inputs, field, widest, f"at most {{}} of {field}"),
        )
        raise RefusalError(
            f"{field} would take {pleats} pleats, more than {MOST_PLEATS}; use {way}", field
        )


def note_rows(sheet: Worksheet, inputs: SmockingInputs) -> Value:
    """Worked rows, holding rows, and the heights of both; returns the number of all rows.

    Raises RefusalError when the height does not hold two rows.
    """
    if inputs.height < inputs.row_spacing:
        raise RefusalError(
            f"height {TAPE.both(inputs.height)} does not hold two rows "
            f"{TAPE.both(inputs.row_spacing)} apart; use "
            f"{ways(at_least(inputs, 'height', inputs.row_spacing), 'a smaller row_spacing')}",
            "height",
        )
    spaces = sheet.note("row_spaces", "spaces between the worked rows",
                        inputs.height.mm // inputs.row_spacing.mm,
                        "{height} / {row_spacing}, rounded down")  # fmt: skip
    rows = sheet.note("rows", "worked rows", spaces.whole + 1, "{row_spaces} + 1")
    sheet.note("worked_height", "from the first worked row to the last",
               inputs.row_spacing * spaces.whole, "{row_spaces} × {row_spacing}")  # fmt: skip
    every = sheet.note("all_rows", "rows of dots in all", rows.whole + 2 * inputs.holding_rows,
                       "{rows} + 2 × {holding_rows}")  # fmt: skip
    sheet.note(
        "dotted_height",
        "from the first row of dots to the last",
        inputs.row_spacing * (every.whole - 1),
        "({all_rows} - 1) × {row_spacing}",
    )
    return every


def rows_chart(sheet: Worksheet, inputs: SmockingInputs, top: Length) -> Chart:
    """Each row of dots, whether it is worked, and how far below the raw edge it lies."""
    rows: list[tuple[Cell, ...]] = []
    every = sheet["all_rows"].whole
    for number in range(every):
        held = number < inputs.holding_rows or number >= every - inputs.holding_rows
        name = f"row {number + 1}"
        rows.append((name, "holds" if held else "worked", top + inputs.row_spacing * number))
    return Chart("Rows of dots", ("Row", "What for", "Below the raw edge"), tuple(rows))


def note_sheet(sheet: Worksheet, inputs: SmockingInputs, pleats: Value) -> Picture:
    """The dot sheet and how often it is laid down along a row. Raises RefusalError."""
    spaces = sheet.note("sheet_spaces", "spaces between dots on the printed sheet",
                        inputs.sheet_width.mm // inputs.dot_spacing.mm,
                        "{sheet_width} / {dot_spacing}, rounded down")  # fmt: skip
    rows = sheet["all_rows"].whole
    columns = min(spaces.whole, pleats.whole)
    if (columns + 1) * rows > MOST_DOTS_ON_SHEET:
        most = max(1, MOST_DOTS_ON_SHEET // rows - 1) * inputs.dot_spacing
        raise RefusalError(
            f"sheet_width {TAPE.both(inputs.sheet_width)} would hold {(columns + 1) * rows} dots, "
            f"more than {MOST_DOTS_ON_SHEET}; use a sheet at most {TAPE.no_more(most)} wide, or "
            "set dots or rows further apart",
            "sheet_width",
        )
    sheet.note("layings", "times the dot sheet is laid down along a row",
               -(-pleats.whole // spaces.whole), "{pleats} / {sheet_spaces}, rounded up",
               pleats=pleats)  # fmt: skip
    drawn = DotSheet(
        columns, rows, inputs.holding_rows.number, sheet["dot_spacing"], sheet["row_spacing"]
    )
    return Picture(
        "sheet",
        sentence("The dot sheet, printed at true scale; the rows named H hold the pleats, the "
                 "numbered ones are worked."),
        dot_sheet(drawn, every_name=False),
        sheet=dot_sheet(drawn, every_name=True),
    )  # fmt: skip


def add_smocking_sample(sheet: Worksheet, inputs: SmockingInputs, fullness: Value) -> None:
    """A sample with the stitches that will be used, since they set how far cloth opens again."""
    flat = sheet.note(
        "trial_flat",
        f"trial of {SAMPLE_PLEATS} pleats, flat",
        inputs.dot_spacing * SAMPLE_PLEATS,
        f"{SAMPLE_PLEATS} × {{dot_spacing}}",
    )
    done = sheet.note("trial_smocked", f"trial of {SAMPLE_PLEATS} pleats, smocked",
                      flat.length / fullness.ratio,
                      "{trial_flat} / {used}", used=fullness)  # fmt: skip
    sheet.sample.append(
        Step(
            sentence(
                f"On a scrap of the same cloth mark {SAMPLE_PLEATS + 1} dots in a row, {{flat}} "
                "from the first to the last, in four rows. Gather, work the stitches you mean to "
                "use, and draw the gathering threads out.",
                flat=flat,
            ),
            sentence(
                "at rest it measures {done} between the same two dots. If not, give both measures "
                "as the sample: tight cable stitches hold closer than wide diamonds, and only "
                "your own hand knows how much.",
                done=done,
            ),
        )
    )


def laid_down(sheet: Worksheet) -> str:
    """How the dot sheet is laid down along the rows, as a step says it."""
    if sheet["layings"].whole == 1:
        return "Laid down once, it reaches along the whole row"
    return (
        "Lay it down {layings} times along the rows, each time with its first column on the last "
        "one you traced"
    )


def add_smocking_supplies(sheet: Worksheet) -> None:
    """Threads and needles."""
    sheet.supplies.append(Supply("strong cotton in a colour that shows, to gather with", None))
    sheet.have("stranded cotton to smock with", "a crewel needle")
    sheet.have("a marker that washes out, tried on a scrap")
