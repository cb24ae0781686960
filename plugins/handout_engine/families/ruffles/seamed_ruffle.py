"""Ruffles gathered into a seam along an edge, in one layer or several."""

from __future__ import annotations

from abc import abstractmethod

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.lengths import Length
from handout_engine.cloth.cloth import ClothBought
from handout_engine.families.ruffles.edge_seams import EdgeSeamInputs
from handout_engine.shared.gathering import GatheringRows, GatherInputs, strip_piece
from handout_engine.shared.hems import Hem, HemInputs
from handout_engine.shared.strips import Strips
from handout_engine.working.workings import Seam, marked
from handout_engine.working.worksheet import Worksheet


class SeamedRuffle(EdgeSeamInputs, GatherInputs):
    """A ruffle that is gathered on the line of its edge seam."""

    @group
    def rows(self) -> GatheringRows:
        """The rows on both sides of the edge seam."""
        return GatheringRows(self, self.edge_line, self.edge_line, self.rows_apart)


class HemmedRuffle(HemInputs, SeamedRuffle):
    """A ruffle whose strips are hemmed, or folded in half."""

    @property
    @abstractmethod
    def shallowest(self) -> Length:
        """The depth that its hem is turned up on."""

    @group
    def hems(self) -> tuple[Hem, ...]:
        """Its hem; a strip that is folded in half has none."""
        return () if self.folded else (Hem(self, self.shallowest),)

    def strip_width(self, depth: Length) -> Length:
        """How wide a strip is cut that hangs so deep below the seam."""
        if self.folded:
            return 2 * (depth + self.edge_allowance)
        (hem,) = self.hems
        return depth + self.edge_allowance + hem.hem_allowance


class SingleRuffle(HemmedRuffle):
    """A ruffle of one layer."""

    depth: Length

    @property
    def shallowest(self) -> Length:
        """Its only depth."""
        return self.depth

    @value("ruffle strip, cut width")
    def cut_width(self) -> Length:
        """With what the seam and the hem take."""
        return self.strip_width(self.depth)

    @value("{}, from the raw edge")
    def fold_line(self) -> Length:
        """In the middle of the strip, or where its hem is turned up."""
        return self.cut_width / 2 if self.folded else self.depth + self.edge_allowance

    def label_of(self, label: str) -> str:
        """The fold of a strip folded in half, or that of its hem."""
        return label.replace("{}", "fold" if self.folded else "hem fold")

    @group
    def strips(self) -> Strips:
        """The strips that join into the ruffle."""
        return self.joined_strips(self.cut_width)

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the ruffle."""
        return ClothBought(self, "ruffle cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The strips, with their gathering rows to mark."""
        marks = marked(self.rows.first_row, self.rows.second_row)
        sheet.pieces.append(strip_piece(sheet, "ruffle strip", "ruffle cloth", marks=marks))
        sheet.seams.append(Seam("ruffle to edge", self.edge_allowance))
