"""Hems that meet at the corners of a square or an oblong, and the mitre that joins them there.

The mitre is found by folding: with the raw edge already turned under, the cloth that lands on the
diagonal of the finished corner lies on the line x + y = 2 × (depth + turn), counted from the raw
corner along both raw edges.
"""

from __future__ import annotations

from collections.abc import Mapping

from handout_engine.amounts.angles import ROOT_OF_TWO
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, length, length_by_choice
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Amount
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import less_than, more_than, ways
from handout_engine.amounts.working_out import Group
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Piece
from handout_engine.working.worksheet import Worksheet

DOUBLE, SINGLE = "double", "single"


class Mitre(Group):
    """The lines of one mitred corner."""

    def __init__(self, hemmed: CornerHemInputs) -> None:
        """Take what is hemmed."""
        super().__init__()
        self.hemmed = hemmed

    @check
    def the_allowance_lies_in_the_hem(self) -> None:
        """Refuse an allowance wider than the hem."""
        depth, allowance = self.hemmed.hem_depth, self.hemmed.mitre_allowance
        if allowance > depth:
            raise RefusalError(
                f"mitre_allowance {TAPE.say(allowance)} is wider than the hem, {TAPE.say(depth)}, "
                f"and would be caught in the turned edge; use at most {TAPE.no_more(depth)}",
                "mitre_allowance",
            )

    @value("mitre seam, from the raw corner along both raw edges")
    def mitre_mark(self) -> Length:
        """Folded under, the raw edges land on the corner of what both hems take."""
        return 2 * self.hemmed.hem_takes

    @value("mitre seam, from the corner along a turned edge")
    def mitre_on_fold(self) -> Length:
        """With the raw edge turned under, the hem alone is left to be mitred."""
        return 2 * self.hemmed.hem_depth

    @value("trimming line, from the raw corner along both raw edges")
    def trim_mark(self) -> Length:
        """The allowance lies aslant to the edges."""
        return self.mitre_mark - ROOT_OF_TWO * self.hemmed.mitre_allowance

    @value("length of the mitre seam, from the fold out")
    def mitre_seam(self) -> Length:
        """The diagonal of a square as wide as the hem is deep."""
        return ROOT_OF_TWO * self.hemmed.hem_depth


class CornerHemInputs(Technique):
    """The inputs of an article that is hemmed on sides which meet at a corner."""

    hem = choice(
        "hem",
        "Double, its raw edge turned under inside it, or single, its raw edge overcast.",
        DOUBLE,
        SINGLE,
        group=SEWING,
    )
    hem_depth = length(
        "hem depth",
        "From the finished edge to the inner edge of the hem.",
        "1 in",
        ("1/8 in", "12 in"),
        basis=PRACTICE,
    )
    turn = length_by_choice(
        "turned under",
        "Raw edge folded in under a double hem.",
        "as deep as the hem for a double hem, nothing for a single one",
        ("1/16 in", "12 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    mitre_allowance = length_by_choice(
        "mitre allowance",
        "Left beyond the mitre seam when it is trimmed.",
        "1/4 in, or half of the hem's depth where that is less",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def usual(self) -> Mapping[str, Amount]:
        """The turn that fills the hem, and an allowance that lies inside it."""
        return {
            "turn": self.hem_depth if self.hem == DOUBLE else ZERO,
            "mitre_allowance": min(inches("1/4"), self.hem_depth / 2),
        }

    @property
    def hemmed_sides(self) -> tuple[str, ...]:
        """The inputs that are measured from hem to hem."""
        return ("width", "length")

    @check
    def the_turn_lies_in_the_hem(self) -> None:
        """Refuse a turn in a single hem, or one that is deeper than the hem."""
        if self.hem == SINGLE and self.turn:
            raise RefusalError(
                f"a single hem turns nothing under, and turn says {TAPE.say(self.turn)}; leave "
                "turn out, or choose the double hem",
                "turn",
            )
        if self.turn > self.hem_depth:
            raise RefusalError(
                f"turn {TAPE.say(self.turn)} is deeper than the hem itself, "
                f"{TAPE.say(self.hem_depth)}, and would reach past its outer fold; use at most "
                f"{TAPE.no_more(self.hem_depth)}",
                "turn",
            )

    @value("taken by the hem on each side")
    def hem_takes(self) -> Length:
        """The hem and what is turned under in it."""
        return self.hem_depth + self.turn

    @value("lost to the turned edges, each way")
    def turns_take(self) -> Length | None:
        """What is measured once both edges are turned under; None where nothing is."""
        return 2 * self.turn if self.turn else None

    @check
    def something_is_left_between_the_hems(self) -> None:
        """Refuse hems that would meet or cross between two opposite sides."""
        sides = {name: self.inputs[name].length for name in self.hemmed_sides}
        small = [name for name, side in sides.items() if side <= 2 * self.hem_depth]
        if small:
            shortest = min(sides[name] for name in small)
            both = " and ".join(small)
            way = ways(
                less_than(self, "hem_depth", shortest / 2, "hems of less than {}"),
                more_than(self, small[0], 2 * self.hem_depth, f"more than {{}} for {both}"),
            )
            raise RefusalError(
                f"two hems of {TAPE.say(self.hem_depth)} leave nothing between them on {both} "
                f"{TAPE.say(shortest)}; use {way}",
                "hem_depth",
            )

    @group
    def mitres(self) -> tuple[Mitre, ...]:
        """One for all corners, where any is mitred."""
        return (Mitre(self),)

    @property
    def hem_marks(self) -> tuple[Mark, ...]:
        """The fold lines of a hem, from each raw edge that is hemmed."""
        first = (Mark("first fold, from each hemmed edge", self.turn),) if self.turn else ()
        return (*first, Mark("hem fold, from each hemmed edge", self.hem_takes))

    def article_piece(self, sheet: Worksheet, number: int, *more: Mark) -> Piece:
        """The article as it is cut, its longer side along the selvage."""
        sides = sheet["cut_width"], sheet["cut_length"]
        width, long = sorted(sides, key=lambda side: side.length)
        marks = (*self.hem_marks, *more)
        return Piece("article", "cloth", number, width, long, Grain.STRAIGHT, marks)


def add_corner_steps(sheet: Worksheet) -> None:
    """Pressing the folds, sewing the four mitres and turning them."""
    turn = bool(sheet["turn"].length)
    if turn:
        sheet.step(
            "On the wrong side turn {turn} under along all four raw edges and press. Open nothing: "
            "the mitre is sewn with this turn folded in.",
            "from turned edge to turned edge the piece has lost {turns_take} each way.",
        )
    else:
        sheet.step("Overcast all four raw edges without stretching them, and press.")
    edge = "turned edges" if turn else "edges"
    sheet.step(
        "Fold the hem of {hem_depth} to the wrong side along every side, press a sharp crease, and "
        "open it again. The creases cross at the finished corners.",
        f"each crease lies {{hem_depth}} inside the {edge}.",
    )
    sheet.step(
        f"At a corner fold the article right sides together through the corner, so that two {edge} "
        "lie level. Mark {mitre_on_fold} from the corner along them, and draw a line from there to "
        "the crossing of the creases, square to the fold.",
        "the line is {mitre_seam} long.",
    )
    sheet.step(
        f"Stitch on the line from the {edge} to the fold, backstitching at both ends. Trim to "
        "{mitre_allowance}, clip the tip, press the seam open over a point and turn the corner.",
        "the corner lies square, and its hem is {hem_depth} deep on both sides.",
    )
