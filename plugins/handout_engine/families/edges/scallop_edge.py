"""An edge of whole scallops, faced and turned or satin stitched."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.scallop_edge_drawing import (
    MOST_DRAWN,
    Scallops,
    Template,
    scallop_row,
    scallop_template,
)
from handout_engine.families.edges.scallop_edge_measures import ScallopInputs
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.strips import Joined, Strips
from handout_engine.working.cautions import PINS_AND_IRON, WIDE_STITCH
from handout_engine.working.workings import Grain, Mark, Piece, Seam
from handout_engine.working.worksheet import Worksheet


class ScallopEdge(ScallopInputs, ClothInputs):
    """A scalloped edge."""

    title = "Scallops"
    family = "edges"
    summary = (
        "Whole scallops along an edge or round a hem: chord, rise, radius, a template at true "
        "scale, and the facing they are turned with."
    )

    seam_allowance = length(
        "allowance",
        "Left below the lowest points while the scallops are sewn.",
        "1/4 in",
        ("1/8 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    trim = length(
        "trimmed to",
        "What is left of the allowance before a faced edge is turned.",
        "1/8 in",
        ("1/16 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing_depth = length(
        "facing above",
        "How far a facing reaches above the foot line.",
        "1 1/2 in",
        ("1/4 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "Added at both ends of a straight edge's facing.",
        "1/2 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strip_allowance = length(
        "strip allowance",
        "For the seams that join strips of facing.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @check
    def the_trim_is_left_of_the_allowance(self) -> None:
        """Refuse to trim to more than there is."""
        if self.faced and self.trim > self.seam_allowance:
            raise RefusalError(
                f"trim {TAPE.say(self.trim)} is more than the allowance there is to trim; use at "
                f"most {TAPE.no_more(self.seam_allowance)}",
                "trim",
            )

    @value("edge cut below the foot line")
    def edge_takes(self) -> Length:
        """The lowest points, and the allowance below them."""
        return self.scallop_rise + self.seam_allowance

    @value("facing, cut width")
    def facing_cut_width(self) -> Length | None:
        """As the edge below the foot line, and what it reaches above."""
        return self.edge_takes + self.facing_depth if self.faced else None

    @value("facing, joined length", finishes="edge")
    def facing_length(self) -> Length | None:
        """Along the edge, and beyond both ends of an open one."""
        if not self.faced:
            return None
        return self.edge if self.ring else self.edge + 2 * self.end_allowance

    @group
    def strips_of_facing(self) -> tuple[Strips, ...]:
        """The strips of a facing, where there is one."""
        wanted, width = self.facing_length, self.facing_cut_width
        if wanted is None or width is None:
            return ()
        joined = Joined(self.strip_allowance, self.ring)
        return (Strips(wanted, width, self.usable_width, joined, "facing_"),)

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """The cloth of a facing, where there is one."""
        return (ClothBought(self, "facing cloth"),) if self.faced else ()

    def cut(self, sheet: Worksheet) -> None:
        """The strips of the facing, and where the scallops come."""
        for facing in self.strips_of_facing:
            width, long = sheet["facing_cut_width"], sheet["facing_strip_length"]
            number, marks = facing.strips.number, (Mark("foot line", self.facing_depth),)
            sheet.pieces.append(
                Piece("facing strip", "facing cloth", number, width, long, Grain.CROSS, marks)
            )
        sheet.seams.append(Seam("along the scallops, before trimming", self.seam_allowance))
        sheet.charts.append(self.feet_chart())

    def sew(self, sheet: Worksheet) -> None:
        """From two scallops on a scrap to the edge turned or cut out."""
        self._add_supplies(sheet)
        how = "Face and turn" if self.faced else "Satin stitch and cut out"
        sheet.trial(
            f"{how} two scallops on a scrap, each {{chord}} wide and {{scallop_rise}} deep.",
            "pressed, both are {scallop_rise} deep from the foot line, round without "
            "corners, and the point between them lies flat.",
        )
        add_washing_step(sheet)
        sheet.step(
            "Cut the edge straight, {edge_takes} below the foot line, and mark the foot line.",
            "from the foot line to the raw edge it is {edge_takes}.",
        )
        if self.faced:
            self._add_facing_steps(sheet)
        else:
            self._add_satin_steps(sheet)

    def _add_supplies(self, sheet: Worksheet) -> None:
        sheet.have("thin card for the template", "a removable marker tried on a scrap")
        if self.faced:
            sheet.have("fine thread to match", "small sharp scissors", "a point to turn on")
        else:
            sheet.have("embroidery thread", "a stabiliser that tears away")
            sheet.have("an open foot", "small curved scissors")
            sheet.cautions.append(WIDE_STITCH)
        sheet.cautions.append(PINS_AND_IRON)

    def _add_satin_steps(self, sheet: Worksheet) -> None:
        self._add_tracing_step(sheet, "right side of the edge")
        sheet.step(
            "Back the edge with stabiliser. Run a short straight stitch along the line, then satin "
            "stitch over it, the needle's outer swing on the line; pivot at each point with the "
            "needle down on its outer side.",
            "each scallop is {scallop_rise} deep at the outer edge of the stitching.",
        )
        sheet.step(
            "Take the stabiliser off, press face down on a towel, and cut the cloth away close to "
            "the stitching without cutting a stitch. A second, narrower pass covers what frays."
        )

    def _add_tracing_step(self, sheet: Worksheet, where: str) -> None:
        sheet.step(
            f"Mark the foot line of the {where} every {{pitch}}, and trace the template "
            "{scallops} times between the marks.",
            "the last scallop meets the first, {edge} once round."
            if self.ring
            else "the last scallop ends at the end of the edge, {edge} from the first mark.",
        )

    def _add_facing_steps(self, sheet: Worksheet) -> None:
        joined = ", join them into a ring" if self.ring else ""
        if not self.ring and sheet["facing_strips"].whole > 1:
            joined = ", join them end to end"
        sheet.step(
            "Cut {facing_strips} × facing {facing_cut_width} wide and {facing_strip_length} long"
            f"{joined}, and overcast the upper edge.",
            "the facing is {facing_length} " + ("once round." if self.ring else "long."),
        )
        self._add_tracing_step(sheet, "wrong side of the facing")
        sheet.step(
            "Lay facing and edge right sides together, raw edges and foot lines level, and baste. "
            "Sew along the traced line with a stitch of 1.5 mm, and take one stitch straight "
            "across at each point between two scallops.",
            "from the raw edge to the lowest point of the seam it is {seam_allowance}.",
        )
        narrow = (
            " These points are slits: keep the clip between the two rows, and paint it with a "
            "little fray stop."
        )
        sheet.step(
            "Trim to {trim}, notch the curves, and clip into each point to within a thread of the "
            "stitch across it." + (narrow if self.slit else "")
        )
        sheet.step(
            "Turn, roll the seam to the very edge between finger and thumb, and press from the "
            "facing side over the template.",
            "each scallop is {scallop_rise} deep and {chord} wide.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The scalloped edge, and the template at true scale."""
        scallops = Scallops(
            sheet["pitch"],
            sheet["chord"],
            sheet["scallop_rise"],
            sheet["radius"],
            float(self.half_angle),
            self.scallops.number,
            self.ring,
        )
        row = Scene(
            sentence("The scalloped edge"),
            sheet.sentence("{scallops} scallops, each {chord} wide and {scallop_rise} deep."),
            scallop_row(scallops),
        )
        few = f", the first {MOST_DRAWN} of {self.scallops}" if self.scallops > MOST_DRAWN else ""
        caption = f"The finished edge{few}; the foot line in thin dashes."
        sheet.show("finished", caption, row, finished=True)
        template = Scene(
            sentence("Template of the scallops"),
            sheet.sentence("Each {pitch} from the next, {scallop_rise} deep, radius {radius}."),
            scallop_template(
                Template(scallops, sheet["seam_allowance"], sheet["facing_depth"], self.faced)
            ),
        )
        line = "seam line" if self.faced else "line of the stitching"
        caption = f"The template: {line} dashed, raw edge thick below it, foot line in thin dashes."
        sheet.show("template", caption, template, sheet=template)


TECHNIQUE = ScallopEdge
