"""Marking charts: where every line of a folded panel lies on the flat cloth."""

from __future__ import annotations

from collections.abc import Sequence

from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.values import Sentence, sentence
from handout_engine.shared.folds import FoldedPanel
from handout_engine.working.workings import Cell, Chart


def marking_chart(panel: FoldedPanel, caption: str, names: Sequence[Sequence[str]]) -> Chart:
    """Every line's distance from the left edge and from the centre of the flat panel.

    `names` holds the names of the three lines of each fold.
    """
    centre = panel.flat / 2
    rows: list[tuple[Cell, ...]] = []
    for lines, labels in zip(panel.lines(), names, strict=True):
        rows.extend(
            (label, distance, from_centre(distance - centre))
            for label, distance in zip(labels, lines.all, strict=True)
        )
    return Chart(caption, ("Line", "From the left edge", "From the centre"), tuple(rows))


def from_centre(offset: Length) -> Sentence:
    """A distance from the centre, with its side."""
    if not offset:
        return sentence("at the centre")
    side = "left" if offset < ZERO else "right"
    return sentence("{offset} to the " + side, offset=max(offset, -offset))
