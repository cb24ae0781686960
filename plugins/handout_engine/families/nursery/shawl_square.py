"""A square shawl with a hem all round whose corners are mitred, with or without lace beyond it.

With the first turn folded in, the seam of a mitre runs square across the diagonal: from a point on
each folded edge, twice the hem from the corner, to where the two hem folds cross.
"""

from __future__ import annotations

from math import sqrt
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, count, length, optional_length
from handout_engine.amounts.lengths import from_float
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.families.nursery.shawl_square_drawing import (
    Shawl,
    corner_scene,
    finished_scene,
    sewn_scene,
)
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import (
    LACE_CATCHES,
    NOTHING_LOOSE_IN_THE_COT,
    NOTHING_UNDER_THE_HARNESS,
    PINS_AND_IRON,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Grain, Picture, Piece, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

CLOTH = "shawl cloth"
TAPE = Tape(finest=32)


class ShawlSquare(ClothInputs, Technique):
    """A hemmed square with mitred corners."""

    title: ClassVar[str] = "Shawl square"
    family: ClassVar[str] = "nursery"
    summary: ClassVar[str] = (
        "A square to wrap a baby in, hemmed all round with mitred corners, plain or edged."
    )

    finished = length(
        "finished side",
        "Side of the square from hem to hem, without lace.",
        "36 in",
        ("6 in", "90 in"),
        basis=PRACTICE,
    )
    lace_width = optional_length(
        "lace",
        "Width of a flat lace edging beyond the hem, mitred at the corners.",
        "no lace",
        ("1/4 in", "8 in"),
    )
    make = count("how many", "How many squares are made.", 1, 20)
    hem = length(
        "hem",
        "Finished depth of the hem.",
        "1 in",
        ("1/8 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn = length(
        "first turn",
        "Folded in before the hem; as deep as the hem in sheer cloth.",
        "1/4 in",
        ("1/16 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    mitre_allowance = length(
        "mitre allowance",
        "Left beyond the seam of each mitre.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    lace_join = length(
        "lace join",
        "Lace at each of its two ends, for their join.",
        "1/2 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Cut size, corner lines, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _check(self)
        cut = _note_square(sheet, self)
        _note_corner(sheet, self)
        _note_lace(sheet, self)
        sheet.pieces.append(Piece("square", CLOTH, self.make.number, cut, cut, Grain.STRAIGHT))
        note_cloth(sheet, CLOTH, self.cloth())
        sheet.seams.append(Seam("each mitre", self.mitre_allowance))
        _add_supplies(sheet)
        _add_sample(sheet)
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet


def _check(shawl: ShawlSquare) -> None:
    if shawl.turn > shawl.hem:
        raise RefusalError(
            f"turn {TAPE.say(shawl.turn)} is deeper than hem {TAPE.say(shawl.hem)} and would stick "
            f"out under it; use at most {TAPE.no_more(shawl.hem)}",
            "turn",
        )
    if shawl.mitre_allowance > shawl.hem:
        raise RefusalError(
            f"mitre_allowance {TAPE.say(shawl.mitre_allowance)} cannot lie inside a hem of "
            f"{TAPE.say(shawl.hem)}; use at most {TAPE.no_more(shawl.hem)}",
            "mitre_allowance",
        )
    if 4 * shawl.hem > shawl.finished:
        most = at_most(shawl, "hem", shawl.finished / 4, "at most a quarter of the side, {}")
        raise RefusalError(
            f"hem {TAPE.say(shawl.hem)} leaves the mitres of a side no room beside each other; use "
            f"{ways(most, 'a larger square')}",
            "hem",
        )


def _note_square(sheet: Worksheet, shawl: ShawlSquare) -> Value:
    """Note the cut side; refuse a square wider than its cloth."""
    around = sheet.note("hem_takes", "hem and first turn, on each side", shawl.hem + shawl.turn,
                        "{hem} + {turn}")  # fmt: skip
    cut = sheet.note("cut_side", "square, cut side", shawl.finished + 2 * around.length,
                     "{finished} + 2 × {hem_takes}", saying=Saying.UP)  # fmt: skip
    usable = note_usable_width(sheet, shawl.cloth())
    if cut.length > usable.length:
        largest = usable.length - 2 * around.length
        raise RefusalError(
            f"the square is cut {TAPE.both(cut.length)} and the cloth is only "
            f"{TAPE.both(usable.length)} wide between its selvages; use "
            f"{ways(at_most(shawl, 'finished', largest, 'a square of at most {}'), 'wider cloth')}",
            "finished",
        )
    sheet.note("cut_diagonal", "diagonal of the cut square",
               from_float(sqrt(2) * float(cut.length)), "{cut_side} × √(2)")  # fmt: skip
    sheet.note("inner_square", "inside the hem, on the wrong side",
               shawl.finished - 2 * shawl.hem, "{finished} - 2 × {hem}")  # fmt: skip
    return cut


def _note_corner(sheet: Worksheet, shawl: ShawlSquare) -> None:
    """Note the lines of a corner, from its raw edges and from the folded ones."""
    sheet.note("mitre_at", "mitre seam, from the raw corner along each raw edge",
               2 * sheet["hem_takes"].length, "2 × {hem_takes}")  # fmt: skip
    sheet.note("mitre_mark", "mitre mark, from the folded corner along each folded edge",
               2 * shawl.hem, "2 × {hem}")  # fmt: skip
    sheet.note("mitre_seam", "length of the mitre seam", from_float(sqrt(2) * float(shawl.hem)),
               "{hem} × √(2)")  # fmt: skip
    slanted = from_float(sqrt(2) * float(shawl.mitre_allowance))
    sheet.note("mitre_trim", "trimming line, from the raw corner along each raw edge",
               sheet["mitre_at"].length - slanted,
               "{mitre_at} - {mitre_allowance} × √(2)")  # fmt: skip
    names = ("mitre_trim", "mitre_at", "mitre_mark", "hem_takes")
    rows = tuple((sheet[name].label, sheet[name]) for name in names)
    sheet.charts.append(Chart("Lines at each corner", ("Line", "Distance"), rows))


def _note_lace(sheet: Worksheet, shawl: ShawlSquare) -> None:
    if shawl.lace_width is None:
        return
    sheet.note("lace_length", "lace for one square, four mitres included",
               4 * shawl.finished + 8 * shawl.lace_width + 2 * shawl.lace_join,
               "4 × {finished} + 8 × {lace_width} + 2 × {lace_join}",
               saying=Saying.UP)  # fmt: skip
    all_lace = sheet.note("all_lace", "lace to buy", shawl.make * sheet["lace_length"].length,
                          "{make} × {lace_length}", saying=Saying.YARDAGE)  # fmt: skip
    sheet.note("overall", "side with its lace", shawl.finished + 2 * shawl.lace_width,
               "{finished} + 2 × {lace_width}")  # fmt: skip
    sheet.supplies.append(
        Supply("flat lace edging", all_lace, sentence("{width} wide", width=sheet["lace_width"]))
    )
    sheet.cautions.append(LACE_CATCHES)


def _add_supplies(sheet: Worksheet) -> None:
    sheet.have("fine thread to match", "a fine hand needle")
    sheet.have("a long ruler with a 45-degree line", "a removable marker tried on a scrap")
    sheet.cautions.extend(
        (PINS_AND_IRON, NOTHING_LOOSE_IN_THE_COT, NOTHING_UNDER_THE_HARNESS)
    )  # fmt: skip


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Mitre one corner of paper or of a scrap {size} square, with the same hem and "
                "turn.",
                size=4 * sheet["hem_takes"].length,
            ),
            sentence(
                "the corner is square, and along both sides the hem is {hem} deep.",
                hem=sheet["hem"],
            ),
        )
    )


def _add_steps(sheet: Worksheet, shawl: ShawlSquare) -> None:
    add_washing_step(sheet)
    sheet.step(
        "Draw a thread along each side and cut the square on it, {cut_side} each way.",
        "all four sides are {cut_side}, and both diagonals {cut_diagonal}.",
    )
    sheet.step("Press the first turn, {turn}, to the wrong side along all four sides.")
    sheet.step(
        "Press the hem, {hem} from the folded edge, along all four sides, and open it again; the "
        "creases of two sides cross near each corner.",
        "from crease to crease it is {finished} both ways.",
    )
    sheet.step(
        "At each corner mark both folded edges {mitre_mark} from the corner. Fold the corner right "
        "sides together along its diagonal, mark on mark, first turns still folded in, and sew "
        "from the marks straight to where the creases cross.",
        "the seam is {mitre_seam} long and square to the diagonal fold.",
    )
    sheet.step(
        "Trim the corner {mitre_allowance} beyond the seam, and the allowance at the outer point "
        "to a slant. Press the seam open and turn the corner to the wrong side.",
        "the corner is square, and its seam runs from the point to the inner edge of the hem.",
    )
    sheet.step(
        "Pin the hem and fell or slip-stitch its inner fold; in the machine, straight stitch close "
        "to that fold and pivot at each mitre.",
        "the square is {finished} on each side, and {inner_square} inside its hem.",
    )
    if shawl.lace_width is not None:
        sheet.step(
            "Begin the lace in the middle of a side with {lace_join} for the join. Sew its heading "
            "to the edge of the hem by whipping or a narrow zigzag, flat along each side and "
            "mitred at the corners, and join its ends.",
            "from lace edge to lace edge it is {overall}.",
        )


def _draw(sheet: Worksheet, shawl: ShawlSquare) -> None:
    names = ("finished", "hem", "turn", "hem_takes", "mitre_at", "mitre_trim")
    named = {name: sheet[name] for name in names}
    lace = None if shawl.lace_width is None else sheet["lace_width"]
    drawn = Shawl(named, lace)
    template = sentence(
        "A corner laid flat, wrong side up, the raw corner at the upper right: first turn and hem "
        "as folds, the mitre dashed, the trimming line cut."
    )
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The finished square from its right side."),
                    finished_scene(drawn), finished=True),
            Picture("corner", template, corner_scene(drawn), sheet=corner_scene(drawn)),
            Picture("sewn", sentence("The sewn corner from its wrong side."), sewn_scene(drawn)),
        )
    )  # fmt: skip


TECHNIQUE = ShawlSquare
