"""What all gathered ruffles share: their inputs, fullness, strips, gathering rows and steps."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import (
    CLOTH,
    SEWING,
    choice,
    count,
    length,
    optional_length,
    ratio,
)
from handout_engine.amounts.lengths import Length, inches, least
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.ways_out import less_than, ways
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.cloth import ClothInputs
from handout_engine.shared.strips import Joined, Strips
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Piece
from handout_engine.working.worksheet import Worksheet

OPEN, RING = "open", "ring"
STRAIGHT, DIAGONAL = "straight", "diagonal"
USUAL_ROWS_APART = constant("usual distance", inches("1/4"), published("utah-ruffle"))


class GatherInputs(ClothInputs):
    """The inputs of every ruffle that is cut in straight strips and gathered."""

    edge = length(
        "finished edge",
        "Length of the finished edge that the ruffle is sewn to.",
        "12 in",
        ("1 in", "20 yd"),
    )
    fullness = ratio(
        "fullness",
        "Length of the strip before gathering, for each length of edge.",
        "2",
        ("1", "6"),
        basis=PRACTICE,
    )
    make = count("how many", "How many such ruffles are made, two for a pair.", 1, 50)
    ends = choice(
        "ends",
        "Open when the ends are hemmed or caught in a seam, ring when they join in a round.",
        OPEN,
        RING,
        group=SEWING,
    )
    end_allowance = length(
        "end allowance",
        "Added at each open end for its hem or seam.",
        "1/4 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strip_join = choice(
        "join of strips",
        "Straight seam, or a diagonal one that lies flatter.",
        STRAIGHT,
        DIAGONAL,
        group=SEWING,
    )
    strip_allowance = length(
        "strip allowance",
        "Allowance of a straight seam between strips.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    rows_apart = optional_length(
        "gathering rows apart",
        "Distance between the two gathering rows, half of it on each side of the seam line.",
        "1/4 in, or less where the allowance is narrower",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=published("utah-ruffle"),
        in_use="rows_distance",
    )
    sample_length = length(
        "sample strip",
        "Length of the strip to gather as a trial.",
        "12 in",
        ("4 in", "1 yd"),
        group=CLOTH,
        basis=PRACTICE,
    )

    @value("joined strip before gathering", finishes="edge")
    def ruffle_length(self) -> Length:
        """So many times the edge as the fullness says, and what open ends take."""
        gathered = self.fullness * self.edge
        return gathered if self.ends == RING else gathered + 2 * self.end_allowance

    @value("a quarter of the finished edge")
    def edge_quarter(self) -> Length:
        """What lies between two quarter marks."""
        return self.edge / 4

    @value("sample strip, drawn up")
    def sample_drawn_up(self) -> Length:
        """What a sample of that fullness measures when it is gathered."""
        return self.sample_length / self.fullness

    def joined_strips(
        self, width: Length, prefix: str = "", usable: Length | None = None
    ) -> Strips:
        """The strips of one layer, cut that wide, which join into the ruffle's length."""
        joined = Joined(self.strip_allowance, self.ends == RING, self.strip_join == DIAGONAL)
        cloth = self.usable_width if usable is None else usable
        return Strips(self.ruffle_length, width, cloth, joined, prefix)


class GatheringRows(Group):
    """The two rows of long stitches, one on each side of the line that is gathered on."""

    def __init__(
        self, technique: Technique, line: Length, room: Length, apart: Length | None
    ) -> None:
        """Take the line, from the raw edge, the room from it to the nearer edge, what is asked for.

        `technique` is the one that asks with its input `rows_apart`.
        """
        super().__init__()
        self.technique, self.line, self.room, self.apart = technique, line, room, apart

    @value("distance between the gathering rows", basis=published("utah-ruffle"))
    def rows_distance(self) -> Length:
        """As asked for, or as is usual, or less where there is less room."""
        return least(USUAL_ROWS_APART, self.room) if self.apart is None else self.apart

    @check
    def both_rows_lie_on_the_ruffle(self) -> None:
        """Refuse rows that stand so far apart that one leaves the ruffle."""
        distance, most = self.rows_distance, 2 * self.room
        if distance >= most:
            less = less_than(self.technique, "rows_apart", most)
            raise RefusalError(
                f"rows_apart {TAPE.say(distance)} puts one row off the edge; "
                f"use {ways(less, f'more {self.room.label}')}",
                "rows_apart",
            )

    @value("first gathering row, from the raw edge")
    def first_row(self) -> Length:
        """Half the distance to one side of the line."""
        return self.line - self.rows_distance / 2

    @value("second gathering row, from the raw edge")
    def second_row(self) -> Length:
        """Half the distance to the other side of the line."""
        return self.line + self.rows_distance / 2


def strip_piece(
    sheet: Worksheet, name: str, cloth: str, prefix: str = "", marks: tuple[Mark, ...] = ()
) -> Piece:
    """The cut piece of a set of strips that join into a ruffle."""
    return Piece(
        name,
        cloth,
        sheet[f"{prefix}strips"].whole * sheet["make"].whole,
        sheet[f"{prefix}cut_width"],
        sheet[f"{prefix}strip_length"],
        Grain.CROSS,
        marks,
    )
