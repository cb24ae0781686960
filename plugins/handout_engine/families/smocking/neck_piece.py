"""One of the pieces that are pleated together round a neck."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from handout_engine.amounts.declaring import value
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.working_out import Group
from handout_engine.working.workings import Cell, Chart
from handout_engine.working.worksheet import Worksheet

if TYPE_CHECKING:
    from handout_engine.families.smocking.smocked_neck import SmockedNeckline

ORDER = (
    ("left back", "back"),
    ("left sleeve", "sleeve"),
    ("front", "front"),
    ("right sleeve", "sleeve"),
    ("right back", "back"),
)
NAMES = {"back": "each back half", "sleeve": "each sleeve", "front": "front"}


class NeckPiece(Group):
    """One piece of those that are pleated round the neck."""

    def __init__(self, neck: SmockedNeckline, prefix: str, part: Ratio, edge: Length) -> None:
        """Take its part of the neck, and what is left at the edge that is no seam to a sleeve."""
        super().__init__(prefix)
        self.neck, self.part, self.edge = neck, part, edge

    @property
    def words(self) -> str:
        """What it is called."""
        return NAMES[self.prefix.removesuffix("_")]

    @property
    def is_half(self) -> bool:
        """Whether its part is that of two pieces together."""
        return self.prefix == "back_"

    @value("{}, pleats")
    def pleats(self) -> Count:
        """Its share of the flat cloth; a part of a pleat is a whole one."""
        neck = self.neck
        share = neck.flat_wanted * self.part
        own = share / (2 * neck.all_parts) if self.is_half else share / neck.all_parts
        return (own / neck.dot_spacing).rounded_up()

    @value("{}, flat between its seam lines")
    def flat(self) -> Length:
        """As many dot spacings as pleats."""
        return self.pleats * self.neck.dot_spacing

    @value("{}, drawn up")
    def drawn(self) -> Length:
        """Its share of the neck."""
        return self.neck.neck * self.pleats / self.neck.pleats

    @value("{}, neck edge as cut")
    def cut(self) -> Length:
        """With the seam at one side, and at the other the same or what the opening needs."""
        if self.is_half:
            return self.flat + self.neck.seam + self.edge
        return self.flat + 2 * self.edge


def pieces_chart(sheet: Worksheet, neck: SmockedNeckline) -> Chart:
    """Every piece in order from the left back edge, and where it ends."""
    rows: list[tuple[Cell, ...]] = []
    pleats, total = 0, sheet["pleats"].whole
    for number, (words, name) in enumerate(ORDER, 1):
        pleats += sheet[f"{name}_pleats"].whole
        flat, drawn = neck.dot_spacing * pleats, neck.neck * Fraction(pleats, total)
        rows.append(
            (
                f"{number} {words}",
                sheet[f"{name}_cut"],
                sheet[f"{name}_pleats"],
                pleats,
                flat,
                drawn,
            )
        )
    return Chart(
        "Pieces round the neck, from the first dot at the left back",
        (
            "Piece",
            "Neck edge as cut",
            "Pleats",
            "Ends at pleat",
            "Flat, from the first dot",
            "Drawn up, from the first dot",
        ),
        tuple(rows),
    )
