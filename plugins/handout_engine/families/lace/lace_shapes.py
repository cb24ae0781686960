"""Lace laid in scallops, diamonds or loops along an edge."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.lace import (
    LaceInputs,
    add_lace_supplies,
    add_lace_washing_step,
    note_lace_to_buy,
)
from handout_engine.families.lace.lace_curves import DIAMOND, LOOP, SCALLOP, ShapeLines, note_shape
from handout_engine.families.lace.lace_shapes_drawing import (
    MOST_DRAWN,
    LaceShape,
    shape_row,
    shape_template,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Picture, Step
from handout_engine.working.worksheet import Worksheet

PLURAL = {SCALLOP: "scallops", DIAMOND: "diamonds", LOOP: "loops"}


class LaceShapes(LaceInputs, Technique):
    """A row of shapes bent out of one lace."""

    title: ClassVar[str] = "Lace shapes"
    family: ClassVar[str] = "lace"
    summary: ClassVar[str] = (
        "Scallops, diamonds or loops of lace along an edge: the template, and the lace each takes."
    )

    shape = choice("shape", "What the lace is bent into.", SCALLOP, DIAMOND, LOOP)
    edge = length(
        "edge", "Length of the edge that the shapes stand along.", "24 in", ("1 in", "10 yd")
    )
    repeats = count("how many shapes", "Shapes along the whole edge.", 6, 100)
    height = optional_length(
        "height",
        "From the foot line to the top of one shape, on the centre line of the lace.",
        "3/10 of its width for a scallop, its width for a diamond, 1 1/2 times it for a loop",
        ("1/4 in", "36 in"),
        in_use="shape_height",
    )
    shape_width = optional_length(
        "width",
        "Width of one shape on its centre line; what is left of the edge is gaps.",
        "the edge divided by the number of shapes, half of that for a loop",
        ("1/4 in", "36 in"),
        in_use="across",
    )
    fold_extra = optional_length(
        "extra at each foot",
        "Lace for the fold or crossing where one shape ends and the next begins.",
        "twice the width of the lace",
        ("0 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="foot_takes",
    )

    def whole(self) -> Worksheet:
        """The lines of one shape, the lace for all of them, and a template; raises RefusalError."""
        sheet = Worksheet(technique=self)
        pitch = sheet.note("pitch", "from one shape to the next", self.edge / self.repeats,
                           "{edge} / {repeats}")  # fmt: skip
        across, height = _note_size(sheet, self, pitch)
        lines = note_shape(sheet, self.shape, across, height)
        _note_length(sheet, self, lines)
        note_lace_to_buy(sheet, sheet["lace_length"])
        add_lace_supplies(
            sheet, "a firm pad to pin on", "fine pins",
            "a marker that washes out, tried on a scrap",
            "lace with a heading thread that can be drawn",
        )  # fmt: skip
        _add_sample(sheet, lines)
        sheet.charts.append(_chart(sheet, self))
        _add_steps(sheet, self, lines)
        _draw(sheet, self, across, height)
        return sheet


def _note_size(sheet: Worksheet, lace: LaceShapes, pitch: Value) -> tuple[Value, Value]:
    """Note how wide and how high one shape is on its centre line."""
    across = _note_across(sheet, lace, pitch)
    if lace.height is not None:
        return across, sheet.note("shape_height", "height of one shape", lace.height, "",
                                  basis=GIVEN)  # fmt: skip
    usual, words = {
        SCALLOP: (across.length * 3 / 10, "3 × {across} / 10"),
        DIAMOND: (across.length, "{across}"),
        LOOP: (across.length * 3 / 2, "3 × {across} / 2"),
    }[lace.shape]
    height = sheet.note("shape_height", "height of one shape", usual, words, basis=PRACTICE,
                        across=across)  # fmt: skip
    return across, height


def _note_across(sheet: Worksheet, lace: LaceShapes, pitch: Value) -> Value:
    label = "width of one shape on its centre line"
    if lace.shape_width is None and lace.shape == LOOP:
        return sheet.note("across", label, pitch.length / 2, "{pitch} / 2", basis=PRACTICE)
    if lace.shape_width is None:
        return sheet.note("across", label, pitch.length, "{pitch}")
    room = pitch.length - lace.lace_width if lace.shape == LOOP else pitch.length
    if lace.shape_width > room:
        tape = Tape(finest=32)
        way = ways(at_most(lace, "shape_width", room), "fewer shapes")
        raise RefusalError(
            f"shape_width {tape.say(lace.shape_width)} is more than the {tape.say(pitch.amount)} "
            f"from one {lace.shape} to the next leaves room for; use {way}",
            "shape_width",
        )
    return sheet.note("across", label, lace.shape_width, "", basis=GIVEN)


def _note_length(sheet: Worksheet, lace: LaceShapes, lines: ShapeLines) -> None:
    sheet.note("inside_loses", "the inside of one shape must lose",
               lines.outer.length - lines.inner.length, "{outer_edge} - {inner_edge}")  # fmt: skip
    if lace.fold_extra is None:
        extra = sheet.note("foot_takes", "extra at each foot", 2 * lace.lace_width,
                           "2 × {lace_width}", basis=PRACTICE)  # fmt: skip
    else:
        extra = sheet.note("foot_takes", "extra at each foot", lace.fold_extra, "", basis=GIVEN)
    shape = sheet.note("shape_takes", "lace for one shape", lines.outer.length + extra.length,
                       "{outer_edge} + {foot_takes}")  # fmt: skip
    amount = shape.length * lace.repeats + 2 * lace.end_allowance
    words = "{repeats} × {shape_takes} + 2 × {end_allowance}"
    runs = _note_runs(sheet, lace)
    if runs is not None:
        amount, words = amount + runs.length, words + " + {foot_runs}"
    sheet.note("lace_length", "lace, cut length", amount, words)


def _note_runs(sheet: Worksheet, lace: LaceShapes) -> Value | None:
    """Note the lace along the foot line; under a loop, which closes at one point, it runs on."""
    label = "lace along the foot line, between the shapes"
    if lace.shape == LOOP:
        return sheet.note("foot_runs", label, lace.edge, "{edge}")
    runs = lace.edge - sheet["across"].length * lace.repeats
    return sheet.note("foot_runs", label, runs, "{edge} - {repeats} × {across}") if runs else None


def _add_sample(sheet: Worksheet, lines: ShapeLines) -> None:
    sheet.sample.append(
        Step(
            sentence("Cut a strip of paper as wide as the lace and {outer} long, and bend it round "
                     "the template; then shape one with the lace itself.", outer=lines.outer),
            sentence("the outer edge of the lace reaches just round the shape, and its inner edge "
                     "draws up to {inner}.", inner=lines.inner),
        )
    )  # fmt: skip


def _chart(sheet: Worksheet, lace: LaceShapes) -> Chart:
    """Where the foot of each shape begins along the edge, and along the flat lace."""
    along = sheet["shape_takes"].length
    if "foot_runs" in sheet.values:
        along = along + sheet["foot_runs"].length / lace.repeats
    rows = tuple(
        (
            f"{lace.shape} {number + 1}",
            sheet["pitch"].length * number,
            lace.end_allowance + along * number,
        )
        for number in range(lace.repeats)
    )
    headings = ("Shape", "Begins on the edge at", "Begins on the lace at")
    return Chart("Where each shape begins, from the first end", headings, rows)


def _add_steps(sheet: Worksheet, lace: LaceShapes, lines: ShapeLines) -> None:
    add_lace_washing_step(sheet)
    sheet.step(
        "Draw the foot line on the cloth, mark it every {pitch}, and trace the template "
        "{repeats} times between the marks, both edges of the lace.",
        "the last shape ends at the end of the edge, {edge} from the first mark.",
    )
    sheet.step("Cut the lace {lace_length} long.")
    deep = lace.shape == SCALLOP and 2 * sheet["shape_height"].length > sheet["across"].length
    crossing = " Scallops as deep as these cross their neighbours." if deep else ""
    sheet.step(_SHAPING[lace.shape] + crossing)
    sheet.step(
        "Draw up the heading thread on the inside of each curve until it lies flat; at points fold "
        "the spare lace under into a mitre.",
        "the inside of one shape has lost {inside_loses} against its outer edge of {outer}.",
        outer=lines.outer,
    )
    sheet.step(
        "Steam it on the pins and let it dry. Whip or pin stitch the outer edge to the cloth, then "
        "the inner one, and trim the cloth away behind the lace where you want it open."
    )


_SHAPING = {
    SCALLOP: "Pin the lace along the outer line of the first scallop, right side up. At its foot "
    "fold the lace back on itself, {foot_takes} of it into the fold, and go on with the next.",
    DIAMOND: "Pin the lace round the first diamond on its outer line, mitring it at each point; "
    "let it cross itself at the last point, {foot_takes} of it there, and go on with the next.",
    LOOP: "Pin the lace along the foot line to the first mark, round the loop on its outer line, "
    "and let it cross itself at the foot, {foot_takes} of it there; then on along the foot line.",
}


def _draw(sheet: Worksheet, lace: LaceShapes, across: Value, height: Value) -> None:
    shape = LaceShape(lace.shape, across, height, sheet["lace_width"])
    plural = PLURAL[lace.shape]
    few = f", the first {MOST_DRAWN} of them" if lace.repeats > MOST_DRAWN else ""
    row = Scene(
        sentence(f"A row of {plural}"),
        sentence(f"{{repeats}} {plural}, one every {{pitch}}.", repeats=sheet["repeats"],
                 pitch=sheet["pitch"]),
        shape_row(shape, sheet["pitch"], lace.repeats.number),
    )  # fmt: skip
    template = Scene(
        sentence(f"Template of one {lace.shape}"),
        sentence("{across} wide and {height} high on the dashed centre line.",
                 across=across, height=height),
        shape_template(shape),
    )  # fmt: skip
    sheet.pictures.append(
        Picture("finished", sentence(f"The finished {plural} along their foot line{few}."), row,
                finished=True)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("template", sentence("One shape: both edges of the lace, and its centre line "
                                     "dashed."), template, sheet=template)
    )  # fmt: skip


TECHNIQUE = LaceShapes
