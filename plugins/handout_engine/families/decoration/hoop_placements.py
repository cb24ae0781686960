"""A design larger than the hoop: how many placements, where each lies, what cloth they need."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import less_than, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Scene
from handout_engine.families.decoration.hoop_placements_drawing import (
    Hooping,
    Pair,
    Placements,
    one_field,
    placements,
)
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.marking import from_centre
from handout_engine.working.cautions import LONG_FLOATS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Cell, Chart, Grain, Picture, Piece, Step, Supply
from handout_engine.working.worksheet import Worksheet

MOST_PLACEMENTS = 120
ACROSS, ALONG = "across", "along"
TAPE = Tape(finest=32)


class HoopPlacements(ClothInputs, Technique):
    """Fields of a hoop laid over a design, overlapping."""

    title: ClassVar[str] = "Hoop placements"
    family: ClassVar[str] = "decoration"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Placements, centres, cloth, steps and templates; raises RefusalError."""
        sheet = Worksheet(technique=self)
        for way in (ACROSS, ALONG):
            _note_placements(sheet, self, way)
        _note_total(sheet)
        for way in (ACROSS, ALONG):
            _note_cloth_size(sheet, self, way)
        cloth = self.cloth()
        note_usable_width(sheet, cloth)
        sheet.pieces.append(_piece(sheet))
        note_cloth(sheet, "cloth to embroider", cloth)
        _add_supplies(sheet)
        _add_sample(sheet)
        sheet.charts.append(_chart(sheet))
        _add_steps(sheet)
        _draw(sheet)
        return sheet


def _note_placements(sheet: Worksheet, hoop: HoopPlacements, way: str) -> None:
    """How many placements one way, how far apart, and what they overlap in the end."""
    field, design = sheet[f"field_{way}"].length, sheet[way].length
    used = field - 2 * hoop.frame
    if used <= hoop.overlap:
        least = min(hoop.field_across, hoop.field_along) - 2 * hoop.frame
        smaller = less_than(hoop, "overlap", least, "an overlap of less than {}")
        raise RefusalError(
            f"overlap {TAPE.both(hoop.overlap)} and a frame {TAPE.both(hoop.frame)} inside both "
            f"edges leave nothing of a field of {TAPE.both(field)}; use "
            f"{ways(smaller, 'a smaller frame distance or a larger hoop')}",
            "overlap",
        )
    usable = sheet.note(f"used_{way}", f"field that is used, {way}", used,
                        f"{{field_{way}}} - 2 × {{frame}}")  # fmt: skip
    number = max(1, -int(-(design - hoop.overlap).mm // (used - hoop.overlap).mm))
    count = sheet.note(
        f"placements_{way}", f"placements {way}", number,
        f"({{{way}}} - {{overlap}}) / ({{used_{way}}} - {{overlap}}), rounded up, at least 1",
    )  # fmt: skip
    if number == 1:
        return
    step = sheet.note(f"step_{way}", f"from centre to centre, {way}",
                      (design - usable.length) / (number - 1),
                      f"({{{way}}} - {{used_{way}}}) / ({{count}} - 1)", count=count)  # fmt: skip
    sheet.note(f"true_overlap_{way}", f"overlap that comes out, {way}", usable.length - step.length,
               f"{{used_{way}}} - {{step_{way}}}")  # fmt: skip


def _note_total(sheet: Worksheet) -> None:
    across, along = sheet["placements_across"].whole, sheet["placements_along"].whole
    if across * along > MOST_PLACEMENTS:
        raise RefusalError(
            f"{across} × {along} placements are more than {MOST_PLACEMENTS}; use a larger hoop, a "
            "smaller overlap or a smaller design",
            "across",
        )
    sheet.note("placements", "placements in all", across * along,
               "{placements_across} × {placements_along}")  # fmt: skip


def _note_cloth_size(sheet: Worksheet, hoop: HoopPlacements, way: str) -> None:
    """The cloth reaches as far as the outermost hoop, even where the design is smaller."""
    reach = sheet.note(f"reach_{way}", f"what the placements cover, {way}",
                       max(sheet[way].length, sheet[f"used_{way}"].length),
                       f"{{{way}}}, at least {{used_{way}}}")  # fmt: skip
    sheet.note(f"cut_{way}", f"cloth, cut {way}",
               reach.length + 2 * hoop.frame + 2 * hoop.border,
               f"{{reach_{way}}} + 2 × {{frame}} + 2 × {{border}}")  # fmt: skip
    sheet.note(f"backing_{way}", f"stabiliser for one placement, {way}",
               sheet[f"field_{way}"].length + 2 * hoop.border,
               f"{{field_{way}}} + 2 × {{border}}")  # fmt: skip


def _piece(sheet: Worksheet) -> Piece:
    across, along = sheet["cut_across"], sheet["cut_along"]
    if along.length >= across.length:
        return Piece("ground", "cloth to embroider", 1, across, along, Grain.STRAIGHT)
    return Piece("ground", "cloth to embroider", 1, along, across, Grain.CROSS)


def _centres(sheet: Worksheet, way: str) -> list[Length]:
    """The centres one way, from the first edge of the design."""
    count = sheet[f"placements_{way}"].whole
    if count == 1:
        return [sheet[way].length / 2]
    first, step = sheet[f"used_{way}"].length / 2, sheet[f"step_{way}"].length
    return [first + step * place for place in range(count)]


def _chart(sheet: Worksheet) -> Chart:
    """Every placement's centre from the raw edges, row by row, and from the centre line."""
    shift = {way: (sheet[f"cut_{way}"].length - sheet[way].length) / 2 for way in (ACROSS, ALONG)}
    rows: list[tuple[Cell, ...]] = []
    half = sheet["across"].length / 2
    for down in _centres(sheet, ALONG):
        for right in _centres(sheet, ACROSS):
            rows.append((str(len(rows) + 1), right + shift[ACROSS], down + shift[ALONG],
                         from_centre(right - half)))  # fmt: skip
    return Chart(
        "Centres of the placements, measured from the raw edges",
        ("No.", "Left raw edge", "Upper raw edge", "From the centre"),
        tuple(rows),
    )


def _add_supplies(sheet: Worksheet) -> None:
    sheet.supplies.append(
        Supply("stabiliser", None, sentence("{count} pieces of {across} by {along}",
               count=sheet["placements"], across=sheet["backing_across"],
               along=sheet["backing_along"]))
    )  # fmt: skip
    sheet.have("embroidery thread", "a fine needle with a large eye")
    sheet.supplies.append(Supply("a marker that washes out, tried on a scrap"))
    sheet.cautions.extend((PINS_AND_IRON, LONG_FLOATS))


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence("On a hooped scrap with the same stabiliser stitch one frame, {across} by "
                     "{along}, and a cross at its centre. Take it out of the hoop.",
                     across=sheet["field_across"], along=sheet["field_along"]),
            sentence("off the hoop the frame still measures {across} by {along}. Smaller: the "
                     "cloth was stretched in the hoop; lay it in flat, or use a firmer stabiliser.",
                     across=sheet["field_across"], along=sheet["field_along"]),
        )
    )  # fmt: skip


def _add_steps(sheet: Worksheet) -> None:
    add_washing_step(sheet)
    sheet.step(
        "Cut the cloth {cut_across} across and {cut_along} along the selvage, and overcast its "
        "edges. Mark both centre lines with a thread."
    )
    sheet.step(
        "Mark the centre of each of the {placements} placements from the chart with a cross as "
        "long as a finger, square to the thread.",
        "from one cross to the next it is {step_across} across."
        if "step_across" in sheet.values
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


def _draw(sheet: Worksheet) -> None:
    def pair(name: str) -> Pair:
        return Pair(sheet[name.format(ACROSS)], sheet[name.format(ALONG)])

    def step(way: str) -> Value | None:
        return sheet.values.get(f"step_{way}")

    centres = [
        (float(x), float(y)) for y in _centres(sheet, ALONG) for x in _centres(sheet, ACROSS)
    ]
    plan = Placements(pair("cut_{}"), pair("{}"), pair("used_{}"), centres, step(ACROSS),
                      step(ALONG))  # fmt: skip
    finished = Scene(
        sentence("Hoop placements on the cloth"),
        sentence("{count} placements for a design {across} by {along}.", count=sheet["placements"],
                 across=sheet["across"], along=sheet["along"]),
        placements(plan),
    )  # fmt: skip
    hoop = Hooping(pair("field_{}"), pair("used_{}"), sheet["frame"], sheet["border"])
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The cloth: the design dashed, the used fields thin, the "
                                         "first one tinted, a cross at every centre."),
                    finished, True),
            Picture("hoop", sentence("One placement: the basting frame dashed, what may be "
                                     "stitched inside it, the hoop round it."),
                    one_field(hoop, at_scale=False), sheet=one_field(hoop, at_scale=True)),
        )
    )  # fmt: skip


TECHNIQUE = HoopPlacements
