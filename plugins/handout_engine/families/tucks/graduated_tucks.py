"""Tucks of different depths in one panel, in one set or in two that face the centre.

Each gap must be at least as wide as the tuck that lies over it, so the direction of pressing
decides which tuck that is.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import ClassVar

from handout_engine.amounts.inputs import choice, length, lengths, optional_length
from handout_engine.amounts.lengths import total
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE, published
from handout_engine.amounts.values import Value
from handout_engine.cloth.cloth import note_cloth
from handout_engine.families.tucks.tucking import (
    AWAY,
    LEFT,
    RIGHT,
    TOWARDS,
    SpareInputs,
    TuckInputs,
    add_panel,
    add_sample,
    add_supplies,
    add_tuck_chart,
    edge_to_seam,
    lies,
    note_cut,
    worked_width,
)
from handout_engine.families.tucks.tucking_pictures import TuckPictures, add_pictures
from handout_engine.families.tucks.tucking_room import check_gaps, check_margins
from handout_engine.families.tucks.tucking_steps import add_cutting_step, add_pressing_step
from handout_engine.shared.folds import Fold, FoldedPanel, Lie
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart
from handout_engine.working.worksheet import Worksheet

ONE, TWO = "one from the left edge", "two facing the centre"


class GraduatedTucks(SpareInputs, TuckInputs, Technique):
    """Tucks whose depths go up in steps."""

    title: ClassVar[str] = "Graduated tucks"
    family: ClassVar[str] = "tucks"
    summary: ClassVar[str] = (
        "Tucks that grow deeper in steps, each gap as wide as the tuck lying over it; one set, or "
        "two facing a centre."
    )

    depths = lengths(
        "depths",
        "Depth of each tuck from left to right, or from the centre outward for two sets.",
        "1/4 in; 3/8 in; 1/2 in; 5/8 in",
        ("1/32 in", "1 1/2 in"),
        20,
    )
    sets = choice("sets", "One set from the left edge, or two that mirror each other.", ONE, TWO)
    finished_width = length(
        "finished width",
        "Width of the tucked panel between its side seams.",
        "8 in",
        ("4 in", "40 in"),
    )
    space = length(
        "space",
        "What shows of the panel between the fold of a tuck and the next stitching.",
        "1/8 in",
        ("0 in", "3 in"),
        basis=PRACTICE,
    )
    spacing = optional_length(
        "spacing",
        "One distance from stitching to stitching for all, instead of space.",
        "worked out gap by gap from the tuck that lies over it and the space",
        ("1/8 in", "6 in"),
    )
    centre_space = optional_length(
        "space at the centre",
        "What shows between two sets, beside the tucks that lie over their gap.",
        "as wide as the space, or as the spacing says",
        ("0 in", "12 in"),
    )
    first_margin = optional_length(
        "margin at the left edge",
        "From the left seam to the first stitching.",
        "what lies over it, and the space; two sets stand in the middle",
        ("0 in", "6 in"),
        in_use="margin",
    )
    press = choice(
        "press", "Which way the tucks lie, seen from the right side.", RIGHT, LEFT, AWAY, TOWARDS
    )

    def whole(self) -> Worksheet:
        """Gaps, panel, lines, cloth and steps; raises RefusalError for tucks without room."""
        sheet = Worksheet(technique=self)
        depths = _note_depths(sheet, self)
        panel = _note_panel(sheet, self, depths)
        deepest = max(depths, key=lambda depth: depth.length)
        add_panel(sheet, "panel for tucks")
        _add_depth_chart(sheet, panel, depths)
        add_tuck_chart(sheet, panel)
        note_cloth(sheet, "cloth", self.cloth())
        add_supplies(sheet)
        trial = sheet.note("sample_spacing", "from stitching to stitching on the sample",
                           deepest.length + self.space, "{deepest} + {space}",
                           deepest=deepest)  # fmt: skip
        add_sample(sheet, deepest, trial)
        add_cutting_step(sheet, panel)
        _add_steps(sheet, panel, depths, self)
        add_pictures(sheet, TuckPictures(panel, deepest, self.title))
        return sheet


def _note_depths(sheet: Worksheet, tucks: GraduatedTucks) -> list[Value]:
    """Note each depth once; returns that of every tuck from left to right."""
    noted = [
        sheet.note(f"depth_{number}", f"depth of tuck {number}", depth, "", basis=GIVEN)
        for number, depth in enumerate(tucks.depths, 1)
    ]
    return noted if tucks.sets == ONE else [*reversed(noted), *noted]


def _note_panel(sheet: Worksheet, tucks: GraduatedTucks, depths: Sequence[Value]) -> FoldedPanel:
    """Note gaps, margins, what the tucks take and the cut panel; raises RefusalError."""
    turns = [lies(tucks.press, number, len(depths)) for number in range(len(depths))]
    gaps = [_note_gap(sheet, tucks, depths, turns, number) for number in range(1, len(depths))]
    span = total(gap.length for gap in gaps)
    sheet.note("span", "from the first stitching to the last", span, _sum(gaps),
               basis=GEOMETRY if gaps else GIVEN)  # fmt: skip
    margin = _note_margin(sheet, tucks, depths, turns)
    sheet.note("last_margin", "margin from the last stitching to the right seam",
               tucks.finished_width - span - margin.length,
               "{finished_width} - {span} - {margin}", margin=margin)  # fmt: skip
    each = 4 if tucks.sets == TWO else 2
    noted = [sheet[f"depth_{number + 1}"] for number in range(len(tucks.depths))]
    take_up = sheet.note("take_up", "cloth taken by the tucks",
                         2 * total(depth.length for depth in depths),
                         f"{each} × ({_sum(noted)})", basis=published("baldt-1916"))  # fmt: skip
    note_cut(sheet, take_up, sheet["finished_width"])
    places = [edge_to_seam(sheet).length + margin.length]
    for gap in gaps:
        places.append(places[-1] + gap.length)
    folds = tuple(
        Fold(depth.length, place, turn)
        for depth, place, turn in zip(depths, places, turns, strict=True)
    )
    panel = FoldedPanel(worked_width(sheet).length, folds)
    _check(sheet, panel, tucks)
    return panel


def _check(sheet: Worksheet, panel: FoldedPanel, tucks: GraduatedTucks) -> None:
    field = "space" if tucks.spacing is None else "spacing"
    check_gaps(sheet, panel, field)
    in_the_middle = tucks.sets == TWO and tucks.first_margin is None
    check_margins(sheet, panel, in_the_middle, tucks.finished_width)


def _sum(noted: Iterable[Value]) -> str:
    """The formula of a sum of noted values."""
    return " + ".join(f"{{{value.name}}}" for value in noted)


def _over(depths: Sequence[Value], turns: Sequence[Lie], number: int) -> list[Value]:
    """The depths of the tucks that lie over the gap behind the tuck of that number."""
    before = [depths[number - 1]] if number > 0 and turns[number - 1] is Lie.RIGHT else []
    after = [depths[number]] if number < len(depths) and turns[number] is Lie.LEFT else []
    return before + after


def _note_gap(
    sheet: Worksheet, tucks: GraduatedTucks, depths: Sequence[Value], turns: Sequence[Lie],
    number: int,
) -> Value:  # fmt: skip
    name, label = f"gap_{number}", f"from stitching {number} to stitching {number + 1}"
    over, space = _over(depths, turns, number), sheet["space"]
    if tucks.sets == TWO and number == len(depths) // 2 and tucks.centre_space is not None:
        return _note_covered(sheet, name, label, [*over, sheet["centre_space"]])
    if tucks.spacing is not None:
        return sheet.note(name, label, tucks.spacing, "", basis=GIVEN)
    return _note_covered(sheet, name, label, [*over, space])


def _note_covered(sheet: Worksheet, name: str, label: str, parts: Sequence[Value]) -> Value:
    """Note a gap as the sum of what lies over it and the space that shows."""
    return sheet.note(name, label, total(part.length for part in parts), _sum(parts))


def _note_margin(
    sheet: Worksheet, tucks: GraduatedTucks, depths: Sequence[Value], turns: Sequence[Lie]
) -> Value:
    label = "margin from the left seam to the first stitching"
    if tucks.first_margin is not None:
        return sheet.note("margin", label, tucks.first_margin, "", basis=GIVEN)
    if tucks.sets == TWO:
        return sheet.note("margin", label, (tucks.finished_width - sheet["span"].length) / 2,
                          "({finished_width} - {span}) / 2")  # fmt: skip
    return _note_covered(sheet, "margin", label, [*_over(depths, turns, 0), sheet["space"]])


def _add_depth_chart(sheet: Worksheet, panel: FoldedPanel, depths: Iterable[Value]) -> None:
    rows = tuple(
        (f"tuck {number}", depth.length, fold.at)
        for number, (depth, fold) in enumerate(zip(depths, panel.folds, strict=True), 1)
    )
    sheet.charts.append(
        Chart("Depth of each tuck", ("Tuck", "Depth", "Stitching, finished, from left"), rows)
    )


def _add_steps(
    sheet: Worksheet, panel: FoldedPanel, depths: Sequence[Value], tucks: GraduatedTucks
) -> None:
    first = panel.folds[0].depth
    sheet.step(
        "Fold wrong sides together along the first fold line, so that its two stitching lines lie "
        "on each other; press the fold. Stitch {first} from the fold, from end to end, on the side "
        "that will be seen.",
        "the tuck is {first} deep all along, and the panel is now {now} from raw edge to raw edge.",
        first=first,
        now=panel.flat - 2 * first,
    )
    if len(depths) > 1:
        order = "; ".join(
            f"tuck {number} {{{depth.name}}}" for number, depth in enumerate(depths, 1)
        )
        sheet.step(
            "Sew the others from left to right, each at its own depth: " + order + ". Set the "
            "gauge anew for each, and press each flat before you fold the next."
        )
    add_pressing_step(sheet, tucks.press, len(depths))


TECHNIQUE = GraduatedTucks
