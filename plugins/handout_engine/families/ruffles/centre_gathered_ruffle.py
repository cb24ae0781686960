"""A ruffle gathered along its middle, which stands out to both sides of its stitching."""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import length
from handout_engine.amounts.lengths import Length
from handout_engine.families.ruffles.heading import HeadingRuffle
from handout_engine.working.worksheet import Worksheet


class CentreGatheredRuffle(HeadingRuffle):
    """A strip finished on both edges, gathered along its centre and stitched on flat."""

    title = "Centre-gathered ruffle"
    family = "ruffles"
    summary = (
        "A strip finished along both edges, gathered along its middle and stitched on as a trim."
    )

    width = length(
        "finished width", "From one finished edge to the other.", "1 1/2 in", ("1/4 in", "40 in")
    )

    @value("from the gathering line to each finished edge")
    def half_width(self) -> Length:
        """The gathering line runs along the middle."""
        return self.width / 2

    @property
    def above(self) -> Length:
        """Half of it."""
        return self.half_width

    @property
    def below(self) -> Length:
        """The other half."""
        return self.half_width

    @value("ruffle from finished edge to finished edge")
    def finished_height(self) -> Length:
        """Both halves."""
        return self.width

    def sew(self, sheet: Worksheet) -> None:
        """Gathered, then stitched on along its middle."""
        super().sew(sheet)
        sheet.step(
            "Mark the line the trim will follow. Lay the ruffle on it, wrong side down, middle on "
            "the line, and stitch along the middle between the two rows. Draw out both rows.",
            "{half_width} stands out on each side of the stitching.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """One half stands, the other hangs."""
        self.add_pictures(sheet, sheet["half_width"], sheet["half_width"])


TECHNIQUE = CentreGatheredRuffle
