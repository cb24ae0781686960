"""What all tucked panels share: their inputs, what is cut for them, what they are sewn with."""

from __future__ import annotations

from handout_engine.amounts.declaring import Worked, group, value
from handout_engine.amounts.inputs import SEWING, count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_least
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.working.cautions import PINS_AND_IRON, THIN_COTTON
from handout_engine.working.workings import Grain, Piece, Seam
from handout_engine.working.worksheet import Worksheet


class PanelInputs(ClothInputs):
    """The inputs of every panel that is folded and sewn into seams."""

    panel_length = length(
        "finished length",
        "Length of the finished panel, along the folds.",
        "10 in",
        ("2 in", "2 yd"),
    )
    side_allowance = length(
        "side allowance",
        "Seam allowance at the left and right edge of the panel; 0 in for cloth that is "
        "tucked first and cut to shape afterwards.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "Seam allowance at the upper and lower edge.",
        "1/4 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "How many such panels are made, two for a pair.", 1, 50)

    @group
    def bought(self) -> ClothBought:
        """The cloth of the panels."""
        return ClothBought(self, "cloth")


class TuckedPanel(PanelInputs):
    """A panel that is narrowed by its tucks."""

    take_up: Worked[Length]
    tucked_width: Worked[Length]

    @property
    def worked(self) -> Length:
        """The tucked panel from raw edge to raw edge, as it is worked."""
        return self.tucked_width

    @property
    def seam_line(self) -> Length:
        """From the raw edge of the panel, as it is worked, to its seam line."""
        return self.side_allowance

    @value("panel, cut width")
    def panel_cut_width(self) -> Length:
        """What the tucks take is cut besides."""
        return self.worked + self.take_up

    @value("panel, cut length")
    def panel_cut_length(self) -> Length:
        """Tucks take nothing of it; both ends are sewn into seams."""
        return self.panel_length + 2 * self.end_allowance

    def wider_by(self, _: Length) -> str:
        """The way out of too narrow a panel: one that much wider."""
        return "a wider panel"


class FinishedWidth(TuckedPanel):
    """A panel whose finished width, from seam to seam, is given by its input `finished_width`."""

    finished_width: Length

    @value("tucked panel, raw edge to raw edge")
    def tucked_width(self) -> Length:
        """As it goes into its side seams."""
        return self.finished_width + 2 * self.side_allowance

    def wider_by(self, more: Length) -> str:
        """A finished width that leaves the tucks as they are."""
        wider = self.finished_width + more
        return at_least(self, "finished_width", wider, "a finished_width of at least {}")


class SpareInputs(TuckedPanel):
    """The inputs of a panel that is worked wider than it is needed, and cut afterwards."""

    spare_width = length(
        "spare width",
        "Added to the cut width, half at each side, for what the turns of the tucks take; what "
        "is left of it is cut off when they are sewn.",
        "1/2 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("tucked panel with its spare, raw edge to raw edge")
    def worked_width(self) -> Length:
        """The turns of the tucks may take from it while it is sewn."""
        return self.tucked_width + self.spare_width

    @value("spare at each side")
    def spare_at_side(self) -> Length:
        """It lies beyond both seams alike."""
        return self.spare_width / 2

    @value("from each raw edge to the seam line, with half of the spare")
    def edge_to_seam(self) -> Length:
        """All lines are measured from the raw edge that the panel is cut with."""
        return self.side_allowance + self.spare_at_side

    @property
    def worked(self) -> Length:
        """The tucked panel with its spare."""
        return self.worked_width

    @property
    def seam_line(self) -> Length:
        """The seam line, inside the spare."""
        return self.edge_to_seam


def add_panel(sheet: Worksheet, panel: TuckedPanel, name: str) -> None:
    """Put the cut panel and its seams on the sheet."""
    width, length = sheet["panel_cut_width"], sheet["panel_cut_length"]
    sheet.pieces.append(Piece(name, "cloth", panel.make.number, width, length, Grain.STRAIGHT))
    sheet.seams.append(Seam("sides of the panel", panel.side_allowance))
    sheet.seams.append(Seam("ends of the panel", panel.end_allowance))


def add_supplies(sheet: Worksheet) -> None:
    """The notions and cautions of tucked work; cloth was added with what to buy of it."""
    sheet.have("fine thread to match", "a fine needle for the cloth")
    sheet.have("a removable marker tried on a scrap", "a card gauge")
    sheet.cautions.extend((PINS_AND_IRON, THIN_COTTON))
