"""Smocking: cloth drawn up into small even pleats by rows of dots, then held by its stitches.

Between two dots of a row lies one pleat. A row therefore has one dot more than pleats, and the flat
cloth from its first dot to its last is as many dot spacings as there are pleats.
"""

from __future__ import annotations

from abc import abstractmethod
from fractions import Fraction

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, count, length, optional_length, ratio
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.families.smocking.smocking_drawing import DotSheet, dot_sheet
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Cell, Chart, Picture, Supply
from handout_engine.working.worksheet import Worksheet

FEWEST_PLEATS, MOST_PLEATS = 10, 1500
MOST_DOTS_ON_SHEET = 4000
SAMPLE_PLEATS = 24


class SmockingInputs(Technique):
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

    @property
    @abstractmethod
    def pleats(self) -> Count:
        """How many pleats lie along a row."""

    @property
    def used_fullness(self) -> Ratio:
        """The fullness to work with: from the sample where there is one."""
        return self.fullness if self.sample_fullness is None else self.sample_fullness

    @check
    def the_sample_was_drawn_up(self) -> None:
        """Refuse a sample that did not become narrower."""
        flat, smocked = self.sample_flat, self.sample_smocked
        if smocked is not None and smocked >= flat:
            raise RefusalError(
                f"sample_smocked {TAPE.both(smocked)} is not less than the {TAPE.both(flat)} of "
                "flat cloth that was drawn up; measure both again, between the same two dots",
                "sample_smocked",
            )

    @value("fullness of the sample")
    def sample_fullness(self) -> Ratio | None:
        """What your own hand makes of it; None without a sample."""
        self.the_sample_was_drawn_up()
        return None if self.sample_smocked is None else self.sample_flat / self.sample_smocked

    @check
    def two_rows_fit(self) -> None:
        """Refuse a height that does not hold two rows."""
        if self.height < self.row_spacing:
            way = ways(at_least(self, "height", self.row_spacing), "a smaller row_spacing")
            raise RefusalError(
                f"height {TAPE.both(self.height)} does not hold two rows "
                f"{TAPE.both(self.row_spacing)} apart; use {way}",
                "height",
            )

    @value("spaces between the worked rows")
    def row_spaces(self) -> Count:
        """Whole ones."""
        return (self.height / self.row_spacing).rounded_down()

    @value("worked rows")
    def rows(self) -> Count:
        """One more than spaces."""
        return self.row_spaces + 1

    @value("from the first worked row to the last")
    def worked_height(self) -> Length:
        """What the spaces come to."""
        return self.row_spaces * self.row_spacing

    @value("rows of dots in all")
    def all_rows(self) -> Count:
        """With those above and below that only hold the pleats."""
        return self.rows + 2 * self.holding_rows

    @value("from the first row of dots to the last")
    def dotted_height(self) -> Length:
        """One space less than rows."""
        return (self.all_rows - 1) * self.row_spacing

    @value("spaces between dots on the printed sheet")
    def sheet_spaces(self) -> Count:
        """Whole ones."""
        return (self.sheet_width / self.dot_spacing).rounded_down()

    @property
    def columns(self) -> int:
        """Spaces between the dots of a row on the printed sheet: no more than there are pleats."""
        return min(self.sheet_spaces.number, self.pleats.number)

    @check
    def the_dot_sheet_can_be_traced(self) -> None:
        """Refuse a sheet of more dots than anyone traces."""
        dots = (self.columns + 1) * self.all_rows.number
        if dots > MOST_DOTS_ON_SHEET:
            most = max(1, MOST_DOTS_ON_SHEET // self.all_rows.number - 1) * self.dot_spacing
            raise RefusalError(
                f"sheet_width {TAPE.both(self.sheet_width)} would hold {dots} dots, more than "
                f"{MOST_DOTS_ON_SHEET}; use a sheet at most {TAPE.no_more(most)} wide, or set dots "
                "or rows further apart",
                "sheet_width",
            )

    @value("times the dot sheet is laid down along a row")
    def layings(self) -> Count:
        """Until it has reached every pleat."""
        return (self.pleats / self.sheet_spaces).rounded_up()

    @value(f"trial of {SAMPLE_PLEATS} pleats, flat")
    def trial_flat(self) -> Length:
        """Enough pleats to measure by."""
        return SAMPLE_PLEATS * self.dot_spacing

    @value(f"trial of {SAMPLE_PLEATS} pleats, smocked")
    def trial_smocked(self) -> Length:
        """What it must measure for the fullness to be right."""
        return self.trial_flat / self.used_fullness

    def refuse_pleats(self, pleats: Count, field: str, parts: int = 1) -> None:
        """Refuse too few pleats to be smocking, and more than anyone would gather.

        `field` is the input whose width takes them, worked out in so many `parts`, each of which
        is rounded up to whole pleats. Raises RefusalError.
        """
        if pleats < FEWEST_PLEATS:
            closer = self.dot_spacing * Fraction(pleats.number, FEWEST_PLEATS + 1)
            way = ways(
                at_most(self, "dot_spacing", closer, "dots at most {} apart"), "a wider piece"
            )
            raise RefusalError(
                f"{field} would take {pleats} pleats, fewer than {FEWEST_PLEATS}, which is no "
                f"smocking; use {way}",
                "dot_spacing",
            )
        if pleats > MOST_PLEATS:
            room = MOST_PLEATS - (parts - 1)
            apart = self.dot_spacing * Fraction(pleats.number, room)
            widest = getattr(self, field) * Fraction(room, pleats.number)
            way = ways(
                at_least(self, "dot_spacing", apart, "a dot_spacing of at least {}"),
                at_most(self, field, widest, f"at most {{}} of {field}"),
            )
            raise RefusalError(
                f"{field} would take {pleats} pleats, more than {MOST_PLEATS}; use {way}", field
            )

    def rows_chart(self, top: Length) -> Chart:
        """Each row of dots, whether it is worked, and how far below the raw edge it lies."""
        rows: list[tuple[Cell, ...]] = []
        held = {*range(self.holding_rows), *range(self.all_rows - self.holding_rows, self.all_rows)}
        for number in range(self.all_rows):
            what_for = "holds" if number in held else "worked"
            rows.append((f"row {number + 1}", what_for, top + self.row_spacing * number))
        return Chart("Rows of dots", ("Row", "What for", "Below the raw edge"), tuple(rows))

    def sheet_picture(self, sheet: Worksheet) -> Picture:
        """The dot sheet, and the same at true scale."""
        drawn = DotSheet(
            self.columns,
            self.all_rows.number,
            self.holding_rows.number,
            sheet["dot_spacing"],
            sheet["row_spacing"],
        )
        return Picture(
            "sheet",
            sentence(
                "The dot sheet, printed at true scale; the rows named H hold the pleats, the "
                "numbered ones are worked."
            ),
            dot_sheet(drawn, every_name=False),
            sheet=dot_sheet(drawn, every_name=True),
        )


def add_smocking_sample(sheet: Worksheet) -> None:
    """A sample with the stitches that will be used, since they set how far cloth opens again."""
    sheet.trial(
        f"On a scrap of the same cloth mark {SAMPLE_PLEATS + 1} dots in a row, "
        "{trial_flat} from the first to the last, in four rows. Gather, work the stitches "
        "you mean to use, and draw the gathering threads out.",
        "at rest it measures {trial_smocked} between the same two dots. If not, give both "
        "measures as the sample: tight cable stitches hold closer than wide diamonds, and "
        "only your own hand knows how much.",
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
