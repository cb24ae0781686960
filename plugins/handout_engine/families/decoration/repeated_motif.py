"""A motif repeated along an edge with equal gaps, round a ring, or between four corners."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, optional_length
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.decoration.repeated_motif_drawing import (
    Divided,
    Motif,
    along_edge,
    between_corners,
    few_motifs,
    is_narrow,
    round_ring,
)
from handout_engine.families.decoration.repeated_motif_measures import (
    CORNERS,
    EITHER,
    GAP,
    MOST_MOTIFS,
    MOTIF,
    ROUND,
    STRAIGHT,
    Row,
    RowWanted,
    note_ring,
    note_row,
    ring_chart,
    row_chart,
)
from handout_engine.families.decoration.repeated_motif_steps import (
    add_base_line,
    add_corner_step,
    add_tracing_step,
)
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Step, Supply
from handout_engine.working.worksheet import Worksheet

SHEET = inches(7)
"""Motifs on the printed sheet reach so far at most, unless one alone is wider."""


class RepeatedMotif(Technique):
    """Whole motifs, equal gaps."""

    title: ClassVar[str] = "Repeated motif"
    family: ClassVar[str] = "decoration"
    summary: ClassVar[str] = (
        "Whole motifs with equal gaps along an edge, round a hem, or between four corners: how "
        "many, how far apart, and where each is centred."
    )

    layout = choice(
        "layout",
        "Along a straight edge, round a ring, or between four corner motifs.",
        STRAIGHT,
        ROUND,
        CORNERS,
    )
    edge = length(
        "edge",
        "Length of the edge; round, all the way; with corners, the first side.",
        "20 in",
        ("1 in", "200 in"),
    )
    other_side = optional_length(
        "other side",
        "With corners: the second side of the rectangle.",
        "the same as the first",
        ("1 in", "200 in"),
    )
    motif = length(
        "motif, width", "Along the edge, as it is stitched.", "1 1/2 in", ("1/8 in", "12 in")
    )
    motif_height = length("motif, height", "Square to the edge.", "1 in", ("1/8 in", "12 in"))
    least_gap = length(
        "least gap",
        "At least so much between two motifs.",
        "3/4 in",
        ("0 in", "20 in"),
        basis=PRACTICE,
    )
    motifs = optional_count(
        "motifs", "How many, along a straight edge or round.", "as many as fit", MOST_MOTIFS
    )
    centre = choice(
        "at the centre",
        "What stands at the centre, or at the centre front of a ring.",
        MOTIF,
        GAP,
        EITHER,
    )
    margin = length(
        "clear at each end",
        "Of a straight edge, beside its first and last motif.",
        "1/2 in",
        ("0 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    corner = length(
        "corner motif",
        "Side of the square that each corner motif takes.",
        "1 1/2 in",
        ("1/8 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    above = length(
        "above the edge",
        "From the finished edge to the motif.",
        "1/2 in",
        ("0 in", "10 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    allowance = length(
        "allowance",
        "Cloth beyond the finished edge while the motifs are marked; they are "
        "then marked from the raw edge.",
        "0 in",
        ("0 in", "4 in"),
        group=SEWING,
    )

    def whole(self) -> Worksheet:
        """Counts, gaps, centres, steps and placement sheet; raises RefusalError."""
        sheet = Worksheet(technique=self)
        rows = _note_rows(sheet, self)
        sheet.have("stranded cotton or silk", "a crewel needle")
        sheet.supplies.append(Supply("a marker that washes out, tried on a scrap"))
        sheet.cautions.extend((PINS_AND_IRON, LONG_FLOATS))
        _add_sample(sheet)
        _add_charts(sheet, self, rows)
        _add_steps(sheet, self, rows)
        _draw(sheet, self, rows)
        return sheet


def _note_rows(sheet: Worksheet, asked: RepeatedMotif) -> tuple[Row, ...]:
    """One row, or with corners the two sides."""
    side = sheet["edge"]
    if asked.layout == CORNERS:
        return _note_sides(sheet, asked)
    wanted = RowWanted(side, asked.motif, asked.least_gap, asked.centre, sheet["margin"],
                       given=asked.motifs.number if asked.motifs else None)  # fmt: skip
    row = note_ring(sheet, side, wanted) if asked.layout == ROUND else note_row(sheet, wanted)
    if asked.layout == STRAIGHT and row.gap is not None:
        sheet.note("step", "from motif to motif", asked.motif + row.gap.length, "{motif} + {gap}")
    if asked.layout == STRAIGHT:
        words = "{margin} + {motif} / 2" if row.gap else "{edge} / 2"
        beyond = " + {allowance}" if asked.allowance else ""
        sheet.note("first_centre", "centre of the first motif from the end",
                   row.centres[0] + asked.allowance, words + beyond)  # fmt: skip
    return (row,)


def _note_sides(sheet: Worksheet, asked: RepeatedMotif) -> tuple[Row, ...]:
    if asked.motifs is not None:
        raise RefusalError(
            "motifs cannot be counted for four sides at once; leave it out, and set the least gap",
            "motifs",
        )
    if asked.above + asked.motif_height > asked.corner:
        raise RefusalError(
            "motif_height and above reach further in than the corner motif; use a larger corner",
            "corner",
        )
    rows = []
    second = "other_side" if asked.other_side is not None else "edge"
    for prefix, words, name in (("first_", "first side, ", "edge"),
                                ("second_", "second side, ", second)):  # fmt: skip
        wanted = RowWanted(sheet[name], asked.motif, asked.least_gap, asked.centre, sheet["corner"],
                           corners=True, prefix=prefix, words=words)  # fmt: skip
        rows.append(note_row(sheet, wanted))
    sheet.note("number", "motifs on all four sides",
               2 * (rows[0].motifs.whole + rows[1].motifs.whole),
               "2 × ({first_number} + {second_number})")  # fmt: skip
    return tuple(rows)


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Work one motif on a scrap of the same cloth, press it face down on a towel, and "
                "measure it."
            ),
            sentence(
                "it is {motif} wide and {height} high. Stitches draw the cloth in; if it came out "
                "otherwise, give the size it has.",
                motif=sheet["motif"],
                height=sheet["motif_height"],
            ),
        )
    )


def _add_charts(sheet: Worksheet, asked: RepeatedMotif, rows: tuple[Row, ...]) -> None:
    raw = "raw " if asked.allowance else ""
    if asked.layout == ROUND:
        sheet.charts.append(ring_chart(rows[0]))
    elif asked.layout == STRAIGHT:
        sheet.charts.append(row_chart(rows[0], "", f"From the left {raw}end", asked.allowance))
    else:
        for row, words in zip(rows, (", first side", ", second side"), strict=True):
            if row.centres:
                where = f"From the {raw}corner"
                sheet.charts.append(row_chart(row, words, where, asked.allowance))


def _add_steps(sheet: Worksheet, asked: RepeatedMotif, rows: tuple[Row, ...]) -> None:
    add_base_line(sheet)
    if asked.layout == ROUND and rows[0].motifs.whole == 1:
        sheet.step("Mark the centre front, and the centre of the one motif from the chart.")
    elif asked.layout == ROUND:
        where = "between two motifs" if asked.centre == GAP else "where the first motif is centred"
        last = sheet["step"].length / (2 if asked.centre == GAP else 1)
        back = (rows[0].motifs.whole % 2 == 0) == (asked.centre != GAP)
        sheet.step(
            f"Mark the centre front, {where}. Going round, mark {{number}} centres, {{step}} from "
            f"one to the next; at the centre back there is {'a motif' if back else 'a gap'}.",
            "the last one lies {last} from the centre front.",
            last=last,
        )
    elif asked.layout == STRAIGHT:
        sheet.step("Mark the centre of the edge, and the centres of the {number} motifs from the "
                   "chart, working from the centre to both ends.",
                   "the outermost motifs end at the same distance from both ends.")  # fmt: skip
    else:
        add_corner_step(sheet)
    add_tracing_step(sheet)
    gaps = [row.gap for row in rows if row.gap is not None]
    many = " and ".join("{gap" + str(place) + "}" for place in range(len(gaps)))
    sheet.step(
        "Work the motifs one by one, fastening off behind each. Press face down on a towel.",
        f"between two motifs it is {many}." if gaps else "",
        **{f"gap{place}": gap for place, gap in enumerate(gaps)},
    )


def _draw(sheet: Worksheet, asked: RepeatedMotif, rows: tuple[Row, ...]) -> None:
    motif = Motif(sheet["motif"], sheet["motif_height"], sheet["above"])
    divided = [Divided(row.side, row.gap, None, [float(at) for at in row.centres]) for row in rows]
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
    row = max(rows, key=lambda each: each.motifs.whole)
    step = asked.motif + (row.gap.length if row.gap else 0 * asked.motif)
    fitting = max(1, int((SHEET - asked.motif) / step) + 1)
    shown = max(1, min(row.motifs.whole, fitting))
    sheet.pictures.extend(
        (
            Picture("finished", sentence(f"Where the motifs come; an oval stands for each{how}."),
                    finished, True),
            Picture("placement", sentence("A few motifs, printed at true scale to trace."),
                    few_motifs(motif, row.gap, min(shown, 3), at_scale=False),
                    sheet=few_motifs(motif, row.gap, shown, at_scale=True)),
        )
    )  # fmt: skip


TECHNIQUE = RepeatedMotif
