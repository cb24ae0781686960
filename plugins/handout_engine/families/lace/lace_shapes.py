"""Lace laid in scallops, diamonds or loops along an edge."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.lace import (
    LaceInputs,
    add_lace_supplies,
    add_lace_washing_step,
    marks,
)
from handout_engine.families.lace.lace_curves import (
    TAPE,
    DiamondLines,
    LoopLines,
    ScallopLines,
    ShapeLines,
)
from handout_engine.families.lace.lace_shapes_drawing import (
    MOST_DRAWN,
    LaceShape,
    shape_row,
    shape_template,
)
from handout_engine.working.workings import Chart, Picture, Step
from handout_engine.working.worksheet import Worksheet

SCALLOP, DIAMOND, LOOP = "scallop", "diamond", "loop"
LINES = {SCALLOP: ScallopLines, DIAMOND: DiamondLines, LOOP: LoopLines}
PLURAL = {SCALLOP: "scallops", DIAMOND: "diamonds", LOOP: "loops"}


class LaceShapes(LaceInputs):
    """A row of shapes bent out of one lace."""

    title = "Lace shapes"
    family = "lace"
    summary = (
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

    @value("from one shape to the next")
    def pitch(self) -> Length:
        """All have as much of the edge."""
        return self.edge / self.repeats

    @value("width of one shape on its centre line", basis=PRACTICE)
    def across(self) -> Length:
        """As asked for, or so wide that they touch; loops have as much room between them."""
        if self.shape_width is not None:
            return self.shape_width
        return self.pitch / 2 if self.shape == LOOP else self.pitch

    @check
    def the_shapes_have_room(self) -> None:
        """Refuse shapes that run into each other; of loops, the lace itself needs room as well."""
        if self.shape_width is None:
            return
        room = self.pitch - self.lace_width if self.shape == LOOP else self.pitch
        if self.shape_width > room:
            way = ways(at_most(self, "shape_width", room), "fewer shapes")
            raise RefusalError(
                f"shape_width {TAPE.say(self.shape_width)} is more than the "
                f"{TAPE.say(self.pitch)} from one {self.shape} to the next leaves room for; use "
                f"{way}",
                "shape_width",
            )

    @value("height of one shape", basis=PRACTICE)
    def shape_height(self) -> Length:
        """As asked for, or what looks well for its width."""
        if self.height is not None:
            return self.height
        if self.shape == DIAMOND:
            return self.across
        return 3 * self.across / 10 if self.shape == SCALLOP else 3 * self.across / 2

    @group
    def lines(self) -> ShapeLines:
        """The centre line of one shape, and both edges of the lace."""
        return LINES[self.shape](self, self.across, self.shape_height)

    @value("the inside of one shape must lose")
    def inside_loses(self) -> Length:
        """Flat, both edges of the lace are as long as the outer one."""
        return self.lines.outer_edge - self.lines.inner_edge

    @value("extra at each foot", basis=PRACTICE)
    def foot_takes(self) -> Length:
        """As asked for, or enough for a fold of the lace on itself."""
        return 2 * self.lace_width if self.fold_extra is None else self.fold_extra

    @value("lace for one shape")
    def shape_takes(self) -> Length:
        """Once round it, and its foot."""
        return self.lines.outer_edge + self.foot_takes

    @value("lace along the foot line, between the shapes")
    def foot_runs(self) -> Length | None:
        """Under a loop, which closes at one point, it runs on."""
        if self.shape == LOOP:
            return self.edge
        runs = self.edge - self.repeats * self.across
        return runs or None

    @value("lace from one shape to the next")
    def from_shape_to_shape(self) -> Length:
        """The shape itself, and its share of what runs along the foot line."""
        if self.foot_runs is None:
            return self.shape_takes
        return self.shape_takes + self.foot_runs / self.repeats

    @value("lace, cut length")
    def lace_length(self) -> Length:
        """All shapes with what runs between them, and both ends."""
        shapes, ends = self.repeats * self.shape_takes, 2 * self.end_allowance
        return shapes + ends if self.foot_runs is None else shapes + ends + self.foot_runs

    def cut(self, sheet: Worksheet) -> None:
        """Where the foot of each shape begins along the edge, and along the flat lace."""
        rows = zip(
            [f"{self.shape} {number + 1}" for number in range(self.repeats)],
            marks(self.pitch, self.repeats),
            marks(self.from_shape_to_shape, self.repeats, self.end_allowance),
            strict=True,
        )
        headings = ("Shape", "Begins on the edge at", "Begins on the lace at")
        caption = "Where each shape begins, from the first end"
        sheet.charts.append(Chart(caption, headings, tuple(rows)))

    def sew(self, sheet: Worksheet) -> None:
        """The shapes traced, the lace pinned round them, drawn up inside and sewn on."""
        add_lace_supplies(
            sheet,
            "a firm pad to pin on",
            "fine pins",
            "a marker that washes out, tried on a scrap",
            "lace with a heading thread that can be drawn",
        )
        sheet.sample.append(
            Step(
                sheet.sentence(
                    "Cut a strip of paper as wide as the lace and {outer_edge} long, and bend it "
                    "round the template; then shape one with the lace itself."
                ),
                sheet.sentence(
                    "the outer edge of the lace reaches just round the shape, and its inner edge "
                    "draws up to {inner_edge}."
                ),
            )
        )
        add_lace_washing_step(sheet)
        sheet.step(
            "Draw the foot line on the cloth, mark it every {pitch}, and trace the template "
            "{repeats} times between the marks, both edges of the lace.",
            "the last shape ends at the end of the edge, {edge} from the first mark.",
        )
        sheet.step("Cut the lace {lace_length} long.")
        deep = self.shape == SCALLOP and 2 * self.shape_height > self.across
        crossing = " Scallops as deep as these cross their neighbours." if deep else ""
        sheet.step(SHAPING[self.shape] + crossing)
        sheet.step(
            "Draw up the heading thread on the inside of each curve until it lies flat; at points "
            "fold the spare lace under into a mitre.",
            "the inside of one shape has lost {inside_loses} against its outer edge of "
            "{outer_edge}.",
        )
        sheet.step(
            "Steam it on the pins and let it dry. Whip or pin stitch the outer edge to the cloth, "
            "then the inner one, and trim the cloth away behind the lace where you want it open."
        )

    def draw(self, sheet: Worksheet) -> None:
        """The first shapes along their foot line, and a template."""
        pitch, lace = sheet["pitch"], sheet["lace_width"]
        shape = LaceShape(self.shape, sheet["across"], sheet["shape_height"], lace)
        plural = PLURAL[self.shape]
        row = Scene(
            sheet.sentence(f"A row of {plural}"),
            sheet.sentence(f"{{repeats}} {plural}, one every {{pitch}}."),
            shape_row(shape, pitch, self.repeats.number),
        )
        few = f", the first {MOST_DRAWN} of them" if self.repeats > MOST_DRAWN else ""
        caption = sheet.sentence(f"The finished {plural} along their foot line{few}.")
        sheet.pictures.append(Picture("finished", caption, row, finished=True))
        template = Scene(
            sheet.sentence(f"Template of one {self.shape}"),
            sheet.sentence("{across} wide and {shape_height} high on the dashed centre line."),
            shape_template(shape),
        )
        caption = sheet.sentence("One shape: both edges of the lace, and its centre line dashed.")
        sheet.pictures.append(Picture("template", caption, template, sheet=template))


SHAPING = {
    SCALLOP: "Pin the lace along the outer line of the first scallop, right side up. At its foot "
    "fold the lace back on itself, {foot_takes} of it into the fold, and go on with the next.",
    DIAMOND: "Pin the lace round the first diamond on its outer line, mitring it at each point; "
    "let it cross itself at the last point, {foot_takes} of it there, and go on with the next.",
    LOOP: "Pin the lace along the foot line to the first mark, round the loop on its outer line, "
    "and let it cross itself at the foot, {foot_takes} of it there; then on along the foot line.",
}
"""How each shape is pinned."""

TECHNIQUE = LaceShapes
