"""Ruffles gathered inside their width: cloth stands above the gathering line and hangs below it.

Both long edges are finished, or the strip is folded into a flat tube whose raw edges meet behind
the gathering line, so that the stitching holds them.
"""

from __future__ import annotations

from abc import abstractmethod

from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.sources import published
from handout_engine.amounts.values import Value
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drawing.scene import Line
from handout_engine.shared.gathering import GatheringRows, GatherInputs, strip_piece
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import (
    finished_picture,
    quarters_picture,
    row_rules,
    strip_picture,
)
from handout_engine.shared.gathering_steps import add_gathering_steps, add_strip_steps
from handout_engine.shared.hems import Hem, HemInputs, hem_step
from handout_engine.shared.strips import Strips
from handout_engine.shared.strips_drawing import Rule
from handout_engine.working.workings import marked
from handout_engine.working.worksheet import Worksheet


class DoubledStrip(Group):
    """A strip folded into a flat tube, its raw edges behind the gathering line."""

    def __init__(self, ruffle: HeadingRuffle) -> None:
        """Take the ruffle."""
        super().__init__()
        self.ruffle = ruffle

    @value("ruffle strip, cut width", basis=published("butterick-1921"))
    def cut_width(self) -> Length:
        """All that is seen is there a second time behind it."""
        return 2 * self.ruffle.finished_height

    @value("gathering line, from the upper raw edge")
    def gathering_line(self) -> Length:
        """What stands above it, behind and before."""
        return 2 * self.ruffle.above

    @value("upper fold, from the upper raw edge")
    def upper_fold(self) -> Length:
        """From behind the gathering line up to the fold."""
        return self.ruffle.above


class HemmedStrip(Group):
    """A strip hemmed alike along both edges."""

    def __init__(self, ruffle: HeadingRuffle, hem: Hem) -> None:
        """Take the ruffle and its hem."""
        super().__init__()
        self.ruffle, self.hem = ruffle, hem

    @value("ruffle strip, cut width")
    def cut_width(self) -> Length:
        """What is seen of it, and two hems."""
        return self.ruffle.finished_height + 2 * self.hem.hem_allowance

    @value("gathering line, from the upper raw edge")
    def gathering_line(self) -> Length:
        """Below the upper hem and what stands above the line."""
        return self.ruffle.above + self.hem.hem_allowance

    @value("upper hem fold, from the upper raw edge")
    def upper_fold(self) -> Length:
        """What the hem takes."""
        return self.hem.hem_allowance


class HeadingRuffle(HemInputs, GatherInputs):
    """A ruffle that is gathered inside its width."""

    @property
    @abstractmethod
    def above(self) -> Length:
        """What stands above the gathering line."""

    @property
    @abstractmethod
    def below(self) -> Length:
        """What hangs below it."""

    @property
    def shallower(self) -> Length:
        """Either of the two, whichever is less."""
        return min(self.above, self.below)

    @value("ruffle from finished edge to finished edge")
    def finished_height(self) -> Length:
        """What is measured before it is gathered."""
        return self.below + self.above

    @group
    def hems(self) -> tuple[Hem, ...]:
        """The hem of both edges; a strip that is folded double has none."""
        return () if self.folded else (Hem(self, self.shallower),)

    @group
    def strip(self) -> DoubledStrip | HemmedStrip:
        """The strip as it is cut and folded."""
        for hem in self.hems:
            return HemmedStrip(self, hem)
        return DoubledStrip(self)

    @value("lower fold, from the upper raw edge")
    def lower_fold(self) -> Length:
        """Down from the gathering line."""
        return self.strip.gathering_line + self.below

    @group
    def strips(self) -> Strips:
        """The strips that join into the ruffle."""
        return self.joined_strips(self.strip.cut_width)

    @group
    def rows(self) -> GatheringRows:
        """The rows on both sides of the gathering line."""
        return GatheringRows(self, self.strip.gathering_line, self.shallower, self.rows_apart)

    @value("first gathering row, from the finished upper edge")
    def first_row_finished(self) -> Length:
        """Once both edges are folded, no raw edge is left to measure from."""
        return self.above - self.rows.rows_distance / 2

    @value("second gathering row, from the finished upper edge")
    def second_row_finished(self) -> Length:
        """Half the distance below the gathering line."""
        return self.above + self.rows.rows_distance / 2

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the ruffle."""
        return ClothBought(self, "ruffle cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The strips, with the gathering line and its rows to mark."""
        line, rows = self.strip.gathering_line, self.rows
        marks = marked(rows.first_row, rows.second_row, line)
        sheet.pieces.append(strip_piece(sheet, "ruffle strip", "ruffle cloth", marks=marks))

    def sew(self, sheet: Worksheet) -> None:
        """Both edges finished, then gathered; sewing on is each ruffle's own."""
        add_strip_steps(sheet, "ruffle")
        if self.folded:
            sheet.step(
                "Fold the upper edge down by {above} and the lower edge up by {below}, wrong sides "
                "together: the raw edges meet behind the gathering line. Press and baste.",
                "from fold to fold it is {finished_height} deep.",
                above=self.above,
                below=self.below,
            )
        else:
            sheet.step(
                "Finish both long edges alike. " + hem_step(self.hem),
                "from finished edge to finished edge it is {finished_height} deep.",
            )
        add_gathering_steps(
            sheet,
            "both layers" if self.folded else "the strip",
            "finished upper edge",
            ("first_row_finished", "second_row_finished"),
        )

    def add_pictures(self, sheet: Worksheet, above: Value, below: Value) -> None:
        """The finished ruffle, its strip, and its quarters; what stands and hangs is named."""
        folds = [Rule(Line.FOLD, sheet[fold]) for fold in ("upper_fold", "lower_fold")]
        rules, caption = [*row_rules(sheet), *folds], "One strip, with the lines to mark."
        share = float(self.above / self.finished_height)
        layer = GatheredLayer(below, self.fullness.number, heading=above)
        sheet.pictures.extend(
            (
                finished_picture(sheet, [layer]),
                strip_picture(sheet, "ruffle strip", rules, caption),
                quarters_picture(sheet, (share,)),
            )
        )
