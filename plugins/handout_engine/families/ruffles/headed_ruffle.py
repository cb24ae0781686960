"""A ruffle gathered inside its edge, so that a heading stands above the gathering line."""

from __future__ import annotations

from handout_engine.amounts.inputs import length
from handout_engine.amounts.lengths import Length
from handout_engine.families.ruffles.heading import HeadingRuffle
from handout_engine.working.worksheet import Worksheet


class HeadedRuffle(HeadingRuffle):
    """A ruffle with a heading, laid on the edge and stitched along its gathering line."""

    title = "Ruffle with a heading"
    family = "ruffles"
    summary = (
        "A strip finished along both edges and gathered inside its upper one, so that a heading "
        "stands above the stitching."
    )

    depth = length(
        "finished depth",
        "From the gathering line to the finished lower edge.",
        "2 in",
        ("1/4 in", "40 in"),
    )
    heading = length(
        "heading",
        "From the gathering line up to the finished upper edge.",
        "1/2 in",
        ("1/8 in", "20 in"),
    )

    @property
    def above(self) -> Length:
        """The heading."""
        return self.heading

    @property
    def below(self) -> Length:
        """The depth."""
        return self.depth

    def sew(self, sheet: Worksheet) -> None:
        """Gathered, then laid on the edge and stitched along its gathering line."""
        super().sew(sheet)
        sheet.step(
            "Lay the ruffle on the finished edge, wrong side down, with its gathering line on the "
            "line where it is to hang, and stitch along it between the two rows. Draw out both "
            "rows.",
            "{heading} stands above the stitching and {depth} hangs below it.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The heading stands, the depth hangs."""
        self.add_pictures(sheet, sheet["heading"], sheet["depth"])


TECHNIQUE = HeadedRuffle
