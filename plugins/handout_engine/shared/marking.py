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
    rows = tuple(
        marked_line(label, distance, panel.flat)
        for lines, labels in zip(panel.lines(), names, strict=True)
        for label, distance in zip(labels, lines.all, strict=True)
    )
    return Chart(caption, ("Line", "From the left edge", "From the centre"), rows)


def marked_line(label: str, distance: Length, width: Length) -> tuple[Cell, ...]:
    """A line's row in a chart: its distance from the left edge of cloth so wide, and its centre."""
    return label, distance, from_centre(distance - width / 2)


def from_centre(offset: Length) -> Sentence:
    """A distance from the centre, with its side."""
    if not offset:
        return sentence("at the centre")
    side = "left" if offset < ZERO else "right"
    return sentence("{offset} to the " + side, offset=max(offset, -offset))
