"""A design larger than the hoop: how many placements, where each lies, what cloth they need."""

from __future__ import annotations

from functools import cached_property

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.decoration.hoop_placements_drawing import (
    Hooping,
    Pair,
    Placements,
    one_field,
    placements,
)
from handout_engine.families.decoration.one_way import OneWay
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.marking import from_centre
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON
from handout_engine.working.workings import Cell, Chart, Grain, Piece, Supply
from handout_engine.working.worksheet import Worksheet

MOST_PLACEMENTS = 120
ACROSS, ALONG = "across", "along"


class HoopPlacements(ClothInputs):
    """Fields of a hoop laid over a design, overlapping."""

    title = "Hoop placements"
    family = "decoration"
    summary = (
        "A design wider than the hoop in as few placements as its field allows, with their centre "
        "marks, their basting frames, and the cloth to hold them."
    )

    across = length(
        "design, across", "Width of everything to be stitched.", "12 in", ("1/4 in", "60 in")
    )
    along = length(
        "design, along",
        "Height of everything to be stitched, along the selvage.",
        "3 in",
        ("1/4 in", "60 in"),
    )
    field_across = length(
        "field, across",
        "Width that the hoop can stitch.",
        "100 mm",
        ("20 mm", "500 mm"),
        basis=PRACTICE,
    )
    field_along = length(
        "field, along",
        "Height that the hoop can stitch.",
        "100 mm",
        ("20 mm", "500 mm"),
        basis=PRACTICE,
    )
    overlap = length(
        "overlap",
        "At least so much of two neighbouring placements lies over one another.",
        "1/2 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    frame = length(
        "frame distance",
        "From the basting frame, round the field, to the stitches.",
        "1/8 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    border = length(
        "round the field",
        "Cloth that the hoop needs beyond its field at every side.",
        "1 1/2 in",
        ("0 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @group
    def ways(self) -> tuple[OneWay, ...]:
        """Across the cloth, and along it."""
        return self.way_across, self.way_along

    @cached_property
    def way_across(self) -> OneWay:
        """The placements across."""
        return OneWay(self, ACROSS, self.across, self.field_across)

    @cached_property
    def way_along(self) -> OneWay:
        """The placements along."""
        return OneWay(self, ALONG, self.along, self.field_along)

    @check
    def they_can_be_counted(self) -> None:
        """Refuse more placements than anyone hoops."""
        across, along = self.way_across.placements, self.way_along.placements
        if across * along > MOST_PLACEMENTS:
            raise RefusalError(
                f"{across} × {along} placements are more than {MOST_PLACEMENTS}; use a larger "
                "hoop, a smaller overlap or a smaller design",
                "across",
            )

    @value("placements in all")
    def placements(self) -> Count:
        """Every one across with every one along."""
        return self.way_across.placements * self.way_along.placements

    @group
    def cloth_bought(self) -> ClothBought:
        """The ground that is embroidered."""
        return ClothBought(self, "cloth to embroider")

    def cut(self, sheet: Worksheet) -> None:
        """The ground, and where each placement is centred."""
        sheet.pieces.append(_piece(sheet))
        sheet.charts.append(self._chart())

    def sew(self, sheet: Worksheet) -> None:
        """From placement to placement."""
        _add_supplies(sheet)
        _add_sample(sheet)
        _add_steps(sheet, several_across=self.way_across.step is not None)

    def draw(self, sheet: Worksheet) -> None:
        """The placements on the cloth, and one of them."""
        _draw(sheet, self)

    def _chart(self) -> Chart:
        """Every placement's centre from the raw edges, row by row, and from the centre line."""
        across, along = self.way_across, self.way_along
        rows: list[tuple[Cell, ...]] = []
        for down in along.centres:
            for right in across.centres:
                place = right + across.before, down + along.before
                rows.append((str(len(rows) + 1), *place, from_centre(right - self.across / 2)))
        return Chart(
            "Centres of the placements, measured from the raw edges",
            ("No.", "Left raw edge", "Upper raw edge", "From the centre"),
            tuple(rows),
        )


def _piece(sheet: Worksheet) -> Piece:
    across, along = sheet["cut_across"], sheet["cut_along"]
    if along.length >= across.length:
        return Piece("ground", "cloth to embroider", 1, across, along, Grain.STRAIGHT)
    return Piece("ground", "cloth to embroider", 1, along, across, Grain.CROSS)


def _add_supplies(sheet: Worksheet) -> None:
    sheet.supplies.append(
        Supply(
            "stabiliser",
            None,
            sentence(
                "{count} pieces of {across} by {along}",
                count=sheet["placements"],
                across=sheet["backing_across"],
                along=sheet["backing_along"],
            ),
        )
    )
    sheet.have("embroidery thread", "a fine needle with a large eye")
    sheet.supplies.append(Supply("a marker that washes out, tried on a scrap"))
    sheet.cautions.extend((PINS_AND_IRON, LONG_FLOATS))


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "On a hooped scrap with the same stabiliser stitch one frame, {field_across} by "
        "{field_along}, and a cross at its centre. Take it out of the hoop.",
        "off the hoop the frame still measures {field_across} by {field_along}. Smaller: the "
        "cloth was stretched in the hoop; lay it in flat, or use a firmer stabiliser.",
    )


def _add_steps(sheet: Worksheet, *, several_across: bool) -> None:
    add_washing_step(sheet)
    sheet.step(
        "Cut the cloth {cut_across} across and {cut_along} along the selvage, and overcast its "
        "edges. Mark both centre lines with a thread."
    )
    sheet.step(
        "Mark the centre of each of the {placements} placements from the chart with a cross as "
        "long as a finger, square to the thread.",
        "from one cross to the next it is {step_across} across."
        if several_across
        else "the cross lies on the centre line.",
    )
    sheet.step(
        "Print the template at its actual size and cut it out along the frame. Pin it on the first "
        "cross and hoop cloth and stabiliser so that the hoop's own marks meet its lines."
    )
    sheet.step(
        "Stitch the basting frame, {field_across} by {field_along}, with the longest stitch, to "
        "hold the cloth to the stabiliser. The design stays {frame} inside it.",
        "the frame runs parallel to the thread, and the needle meets the cross.",
    )
    sheet.step(
        "Stitch the part of the design that belongs to this placement, and take the frame out."
    )
    if sheet["placements"].whole > 1:
        sheet.step(
            "Go on with the next placement of the chart. Before you stitch, lower the needle by "
            "hand where the last stitches of the finished part and the first of the new one meet.",
            "they meet within a thread's width.",
        )
    sheet.step("Trim the stabiliser, press face down on a towel, and cut the piece to its size.")


def _draw(sheet: Worksheet, hoop: HoopPlacements) -> None:
    def pair(name: str) -> Pair:
        return Pair(sheet[name.format(ACROSS)], sheet[name.format(ALONG)])

    def step(way: str) -> Value | None:
        return hoop.find(f"step_{way}")

    centres = [
        (float(x), float(y)) for y in hoop.way_along.centres for x in hoop.way_across.centres
    ]
    plan = Placements(
        pair("cut_{}"), pair("{}"), pair("used_{}"), centres, step(ACROSS), step(ALONG)
    )
    finished = Scene(
        sentence("Hoop placements on the cloth"),
        sentence(
            "{count} placements for a design {across} by {along}.",
            count=sheet["placements"],
            across=sheet["across"],
            along=sheet["along"],
        ),
        placements(plan),
    )
    field = Hooping(pair("field_{}"), pair("used_{}"), sheet["frame"], sheet["border"])
    sheet.show(
        "finished",
        "The cloth: the design dashed, the used fields thin, the "
        "first one tinted, a cross at every centre.",
        finished,
        finished=True,
    )
    sheet.show(
        "hoop",
        "One placement: the basting frame dashed, what may be "
        "stitched inside it, the hoop round it.",
        one_field(field, at_scale=False),
        sheet=one_field(field, at_scale=True),
    )


TECHNIQUE = HoopPlacements
