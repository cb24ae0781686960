"""A square shawl with a hem all round whose corners are mitred, with or without lace beyond it.

With the first turn folded in, the seam of a mitre runs square across the diagonal: from a point on
each folded edge, twice the hem from the corner, to where the two hem folds cross.
"""

from __future__ import annotations

from handout_engine.amounts.angles import ROOT_OF_TWO
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothBought, ClothInputs
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
from handout_engine.working.workings import Chart, Grain, Picture, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

CLOTH = "shawl cloth"


class ShawlSquare(ClothInputs):
    """A hemmed square with mitred corners."""

    title = "Shawl square"
    family = "nursery"
    summary = "A square to wrap a baby in, hemmed all round with mitred corners, plain or edged."

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

    @check
    def the_turn_lies_in_the_hem(self) -> None:
        """Refuse a first turn that would stick out under the hem."""
        if self.turn > self.hem:
            raise RefusalError(
                f"turn {TAPE.say(self.turn)} is deeper than hem {TAPE.say(self.hem)} and would "
                f"stick out under it; use at most {TAPE.no_more(self.hem)}",
                "turn",
            )

    @check
    def the_mitre_lies_in_the_hem(self) -> None:
        """Refuse an allowance that cannot lie inside the hem."""
        if self.mitre_allowance > self.hem:
            raise RefusalError(
                f"mitre_allowance {TAPE.say(self.mitre_allowance)} cannot lie inside a hem of "
                f"{TAPE.say(self.hem)}; use at most {TAPE.no_more(self.hem)}",
                "mitre_allowance",
            )

    @check
    def two_mitres_fit_on_a_side(self) -> None:
        """Refuse hems whose mitres would meet."""
        if 4 * self.hem > self.finished:
            most = at_most(self, "hem", self.finished / 4, "at most a quarter of the side, {}")
            raise RefusalError(
                f"hem {TAPE.say(self.hem)} leaves the mitres of a side no room beside each other; "
                f"use {ways(most, 'a larger square')}",
                "hem",
            )

    @value("hem and first turn, on each side")
    def hem_takes(self) -> Length:
        """What is folded in."""
        return self.hem + self.turn

    @value("square, cut side", saying=Saying.UP)
    def cut_side(self) -> Length:
        """With the hems of both sides."""
        return self.finished + 2 * self.hem_takes

    @check
    def it_fits_the_cloth(self) -> None:
        """Refuse a square wider than its cloth."""
        if self.cut_side > self.usable_width:
            largest = self.usable_width - 2 * self.hem_takes
            smaller = at_most(self, "finished", largest, "a square of at most {}")
            raise RefusalError(
                f"the square is cut {TAPE.both(self.cut_side)} and the cloth is only "
                f"{TAPE.both(self.usable_width)} wide between its selvages; use "
                f"{ways(smaller, 'wider cloth')}",
                "finished",
            )

    @value("diagonal of the cut square")
    def cut_diagonal(self) -> Length:
        """Measured both ways, it tells whether the square is one."""
        return self.cut_side * ROOT_OF_TWO

    @value("inside the hem, on the wrong side")
    def inner_square(self) -> Length:
        """What the hems leave."""
        return self.finished - 2 * self.hem

    @value("mitre seam, from the raw corner along each raw edge")
    def mitre_at(self) -> Length:
        """On the flat cloth."""
        return 2 * self.hem_takes

    @value("mitre mark, from the folded corner along each folded edge")
    def mitre_mark(self) -> Length:
        """With the first turn folded in."""
        return 2 * self.hem

    @value("length of the mitre seam")
    def mitre_seam(self) -> Length:
        """Across the diagonal."""
        return self.hem * ROOT_OF_TWO

    @value("trimming line, from the raw corner along each raw edge")
    def mitre_trim(self) -> Length:
        """The allowance is measured square to the seam, the edge runs slanting to it."""
        return self.mitre_at - self.mitre_allowance * ROOT_OF_TWO

    @value("side of a sample corner")
    def sample_side(self) -> Length:
        """Twice what the mitre takes."""
        return 4 * self.hem_takes

    @value("lace for one square, four mitres included", saying=Saying.UP)
    def lace_length(self) -> Length | None:
        """Each mitre takes the width of the lace twice; None without lace."""
        if self.lace_width is None:
            return None
        return 4 * self.finished + 8 * self.lace_width + 2 * self.lace_join

    @value("lace to buy", saying=Saying.YARDAGE)
    def all_lace(self) -> Length | None:
        """For every square."""
        return None if self.lace_length is None else self.make * self.lace_length

    @value("side with its lace")
    def overall(self) -> Length | None:
        """Lace beyond both edges."""
        return None if self.lace_width is None else self.finished + 2 * self.lace_width

    @group
    def cloth_bought(self) -> ClothBought:
        """One cloth."""
        return ClothBought(self, CLOTH)

    def cut(self, sheet: Worksheet) -> None:
        """The square, and the lines at each of its corners."""
        side = sheet["cut_side"]
        sheet.pieces.append(Piece("square", CLOTH, self.make.number, side, side, Grain.STRAIGHT))
        sheet.seams.append(Seam("each mitre", self.mitre_allowance))
        names = ("mitre_trim", "mitre_at", "mitre_mark", "hem_takes")
        rows = tuple((sheet[name].label, sheet[name]) for name in names)
        sheet.charts.append(Chart("Lines at each corner", ("Line", "Distance"), rows))

    def sew(self, sheet: Worksheet) -> None:
        """Hems, mitres, and the lace."""
        if self.lace_width is not None:
            wide = sheet.sentence("{lace_width} wide")
            sheet.supplies.append(Supply("flat lace edging", sheet["all_lace"], wide))
            sheet.cautions.append(LACE_CATCHES)
        _add_supplies(sheet)
        _add_sample(sheet)
        _add_steps(sheet, self)

    def draw(self, sheet: Worksheet) -> None:
        """The square, and one corner laid flat and sewn."""
        _draw(sheet, self)


def _add_supplies(sheet: Worksheet) -> None:
    sheet.have("fine thread to match", "a fine hand needle")
    sheet.have("a long ruler with a 45-degree line", "a removable marker tried on a scrap")
    sheet.cautions.extend((PINS_AND_IRON, NOTHING_LOOSE_IN_THE_COT, NOTHING_UNDER_THE_HARNESS))


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Mitre one corner of paper or of a scrap {sample_side} square, with the same hem and turn.",
        "the corner is square, and along both sides the hem is {hem} deep.",
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
    sheet.show(
        "finished", "The finished square from its right side.", finished_scene(drawn), finished=True
    )
    sheet.pictures.append(
        Picture("corner", template, corner_scene(drawn), sheet=corner_scene(drawn))
    )
    sheet.show("sewn", "The sewn corner from its wrong side.", sewn_scene(drawn))


TECHNIQUE = ShawlSquare
