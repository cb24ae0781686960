"""Hems that meet at the corners of a square or an oblong, and the mitre that joins them there.

The mitre is found by folding: with the raw edge already turned under, the cloth that lands on the
diagonal of the finished corner lies on the line x + y = 2 × (depth + turn), counted from the raw
corner along both raw edges.
"""

from __future__ import annotations

from collections.abc import Mapping
from math import sqrt

from handout_engine.amounts.inputs import SEWING, choice, length, length_by_choice
from handout_engine.amounts.lengths import ZERO, from_float, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import less_than, more_than, ways
from handout_engine.working.workings import Grain, Mark, Piece
from handout_engine.working.worksheet import Worksheet

DOUBLE, SINGLE = "double", "single"
TAPE = Tape(finest=32)


class CornerHemInputs:
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


def note_hem_takes(sheet: Worksheet) -> Value:
    """Note what one hem takes of the cloth; raises RefusalError when it cannot be folded so."""
    depth, turn = sheet["hem_depth"].length, sheet["turn"].length
    if sheet["hem"].amount == SINGLE and turn:
        raise RefusalError(
            f"a single hem turns nothing under, and turn says {TAPE.say(turn)}; leave turn out, or "
            "choose the double hem",
            "turn",
        )
    if turn > depth:
        raise RefusalError(
            f"turn {TAPE.say(turn)} is deeper than the hem itself, {TAPE.say(depth)}, and would "
            f"reach past its outer fold; use at most {TAPE.no_more(depth)}",
            "turn",
        )
    return sheet.note("hem_takes", "taken by the hem on each side", depth + turn,
                      "{hem_depth} + {turn}" if turn else "{hem_depth}")  # fmt: skip


def check_room(sheet: Worksheet, *names: str) -> None:
    """Refuse hems that would meet or cross between two opposite sides."""
    depth, asked = sheet["hem_depth"].length, sheet.technique
    small = [name for name in names if sheet[name].length <= 2 * depth]
    if small:
        least = min(sheet[name].length for name in small)
        both = " and ".join(small)
        way = ways(
            less_than(asked, "hem_depth", least / 2, "hems of less than {}"),
            more_than(asked, small[0], 2 * depth, f"more than {{}} for {both}"),
        )
        raise RefusalError(
            f"two hems of {TAPE.say(depth)} leave nothing between them on {both} "
            f"{TAPE.say(least)}; use {way}",
            "hem_depth",
        )


def note_mitre(sheet: Worksheet) -> None:
    """Note the mitre's lines; raises RefusalError for an allowance wider than the hem."""
    depth, allowance = sheet["hem_depth"].length, sheet["mitre_allowance"].length
    if allowance > depth:
        raise RefusalError(
            f"mitre_allowance {TAPE.say(allowance)} is wider than the hem, {TAPE.say(depth)}, and "
            f"would be caught in the turned edge; use at most {TAPE.no_more(depth)}",
            "mitre_allowance",
        )
    takes = sheet["hem_takes"].length
    sheet.note("mitre_mark", "mitre seam, from the raw corner along both raw edges", 2 * takes,
               "2 × {hem_takes}")  # fmt: skip
    sheet.note("mitre_on_fold", "mitre seam, from the corner along a turned edge", 2 * depth,
               "2 × {hem_depth}")  # fmt: skip
    sheet.note("trim_mark", "trimming line, from the raw corner along both raw edges",
               from_float(float(2 * takes) - sqrt(2) * float(allowance)),
               "{mitre_mark} - √(2) × {mitre_allowance}")  # fmt: skip
    sheet.note("mitre_seam", "length of the mitre seam, from the fold out",
               from_float(sqrt(2) * float(depth)), "√(2) × {hem_depth}")  # fmt: skip


def hem_marks(sheet: Worksheet) -> tuple[Mark, ...]:
    """The fold lines of a hem, from each raw edge that is hemmed."""
    turn = sheet["turn"].length
    first = (Mark("first fold, from each hemmed edge", turn),) if turn else ()
    return (*first, Mark("hem fold, from each hemmed edge", sheet["hem_takes"].length))


def article_piece(sheet: Worksheet, name: str, sides: tuple[Value, Value], number: int) -> Piece:
    """The article as it is cut, its longer side along the selvage."""
    width, long = sorted(sides, key=lambda side: side.length)
    return Piece(name, "cloth", number, width, long, Grain.STRAIGHT, hem_marks(sheet))


def add_corner_steps(sheet: Worksheet) -> None:
    """Pressing the folds, sewing the four mitres and turning them."""
    turn = sheet["turn"].length
    if turn:
        sheet.step(
            "On the wrong side turn {turn} under along all four raw edges and press. Open nothing: "
            "the mitre is sewn with this turn folded in.",
            "from turned edge to turned edge the piece has lost {both} each way.",
            both=2 * turn,
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
