"""An edge of whole scallops, faced and turned or satin stitched."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length
from handout_engine.amounts.lengths import ZERO
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Scene
from handout_engine.families.edges.scallop_edge_drawing import (
    MOST_DRAWN,
    Scallops,
    Template,
    scallop_row,
    scallop_template,
)
from handout_engine.families.edges.scallop_edge_measures import (
    FACED,
    RING,
    STRAIGHT,
    TAPE,
    ScallopInputs,
    feet_chart,
    note_scallops,
    slit,
)
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.strips import StripsWanted, note_strips
from handout_engine.working.cautions import PINS_AND_IRON, WIDE_STITCH
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Picture, Piece, Seam, Step
from handout_engine.working.worksheet import Worksheet


class ScallopEdge(ScallopInputs, ClothInputs, Technique):
    """A scalloped edge."""

    title: ClassVar[str] = "Scallops"
    family: ClassVar[str] = "edges"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Chord, rise, radius, arc, facing, template and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        note_scallops(sheet, self)
        _check_trim(self)
        sheet.note("edge_takes", "edge cut below the foot line",
                   sheet["scallop_rise"].length + self.seam_allowance,
                   "{scallop_rise} + {seam_allowance}")  # fmt: skip
        if self.finish == FACED:
            _add_facing(sheet, self)
        sheet.seams.append(Seam("along the scallops, before trimming", self.seam_allowance))
        sheet.charts.append(feet_chart(sheet, self))
        _add_supplies(sheet, self)
        _add_sample(sheet, self)
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet


def _check_trim(edge: ScallopEdge) -> None:
    if edge.finish == FACED and edge.trim > edge.seam_allowance:
        raise RefusalError(
            f"trim {TAPE.say(edge.trim)} is more than the allowance there is to trim; use at most "
            f"{TAPE.no_more(edge.seam_allowance)}",
            "trim",
        )


def _add_facing(sheet: Worksheet, edge: ScallopEdge) -> None:
    """Note the facing, its strips and its cloth."""
    cloth = edge.cloth()
    usable = note_usable_width(sheet, cloth)
    width = sheet.note("facing_cut_width", "facing, cut width",
                       sheet["edge_takes"].length + edge.facing_depth,
                       "{edge_takes} + {facing_depth}")  # fmt: skip
    ring = edge.form == RING
    ends = ZERO if ring else 2 * edge.end_allowance
    words = "{edge}" if ring else "{edge} + 2 × {end_allowance}"
    wanted = sheet.note(
        "facing_length", "facing, joined length", edge.edge + ends, words, finishes="edge"
    )
    count = note_strips(sheet, StripsWanted(usable, wanted, width, ring, False, "facing_"))
    foot = Mark("foot line", edge.facing_depth)
    sheet.pieces.append(
        Piece("facing strip", "facing cloth", count.whole, width, sheet["facing_strip_length"],
              Grain.CROSS, (foot,))
    )  # fmt: skip
    note_cloth(sheet, "facing cloth", cloth)


def _add_supplies(sheet: Worksheet, edge: ScallopEdge) -> None:
    sheet.have("thin card for the template", "a removable marker tried on a scrap")
    if edge.finish == FACED:
        sheet.have("fine thread to match", "small sharp scissors", "a point to turn on")
    else:
        sheet.have("embroidery thread", "a stabiliser that tears away")
        sheet.have("an open foot", "small curved scissors")
        sheet.cautions.append(WIDE_STITCH)
    sheet.cautions.append(PINS_AND_IRON)


def _add_sample(sheet: Worksheet, edge: ScallopEdge) -> None:
    how = "Face and turn" if edge.finish == FACED else "Satin stitch and cut out"
    sheet.sample.append(
        Step(
            sentence(f"{how} two scallops on a scrap, each {{chord}} wide and {{rise}} deep.",
                     chord=sheet["chord"], rise=sheet["scallop_rise"]),
            sentence("pressed, both are {rise} deep from the foot line, round without corners, "
                     "and the point between them lies flat.", rise=sheet["scallop_rise"]),
        )
    )  # fmt: skip


def _add_steps(sheet: Worksheet, edge: ScallopEdge) -> None:
    add_washing_step(sheet)
    sheet.step(
        "Cut the edge straight, {edge_takes} below the foot line, and mark the foot line.",
        "from the foot line to the raw edge it is {edge_takes}.",
    )
    if edge.finish == FACED:
        _add_facing_steps(sheet, edge)
        return
    _add_tracing_step(sheet, edge, "right side of the edge")
    sheet.step(
        "Back the edge with stabiliser. Run a short straight stitch along the line, then satin "
        "stitch over it, the needle's outer swing on the line; pivot at each point with the needle "
        "down on its outer side.",
        "each scallop is {scallop_rise} deep at the outer edge of the stitching.",
    )
    sheet.step(
        "Take the stabiliser off, press face down on a towel, and cut the cloth away close to the "
        "stitching without cutting a stitch. A second, narrower pass covers what frays."
    )


def _add_tracing_step(sheet: Worksheet, edge: ScallopEdge, where: str) -> None:
    measured = (
        "the last scallop ends at the end of the edge, {edge} from the first mark."
        if edge.form == STRAIGHT
        else "the last scallop meets the first, {edge} once round."
    )
    sheet.step(
        f"Mark the foot line of the {where} every {{pitch}}, and trace the template {{scallops}} "
        "times between the marks.",
        measured,
    )


def _add_facing_steps(sheet: Worksheet, edge: ScallopEdge) -> None:
    joined = ", join them into a ring" if edge.form == RING else ""
    if edge.form == STRAIGHT and sheet["facing_strips"].whole > 1:
        joined = ", join them end to end"
    sheet.step(
        "Cut {facing_strips} × facing {facing_cut_width} wide and {facing_strip_length} long"
        f"{joined}, and overcast the upper edge.",
        "the facing is {facing_length} " + ("once round." if edge.form == RING else "long."),
    )
    _add_tracing_step(sheet, edge, "wrong side of the facing")
    sheet.step(
        "Lay facing and edge right sides together, raw edges and foot lines level, and baste. Sew "
        "along the traced line with a stitch of 1.5 mm, and take one stitch straight across at "
        "each point between two scallops.",
        "from the raw edge to the lowest point of the seam it is {seam_allowance}.",
    )
    narrow = (
        " These points are slits: keep the clip between the two rows, and paint it with a little "
        "fray stop."
        if slit(sheet)
        else ""
    )
    sheet.step(
        "Trim to {trim}, notch the curves, and clip into each point to within a thread of "
        "the stitch across it." + narrow
    )
    sheet.step(
        "Turn, roll the seam to the very edge between finger and thumb, and press from the facing "
        "side over the template.",
        "each scallop is {scallop_rise} deep and {chord} wide.",
    )


def _draw(sheet: Worksheet, edge: ScallopEdge) -> None:
    half = sheet["half_angle"].amount
    assert isinstance(half, Fraction)
    scallops = Scallops(sheet["pitch"], sheet["chord"], sheet["scallop_rise"], sheet["radius"],
                        float(half), edge.scallops.number, edge.form == RING)  # fmt: skip
    row = Scene(
        sentence("The scalloped edge"),
        sentence("{number} scallops, each {chord} wide and {rise} deep.",
                 number=sheet["scallops"], chord=sheet["chord"], rise=sheet["scallop_rise"]),
        scallop_row(scallops),
    )  # fmt: skip
    faced = edge.finish == FACED
    template = Scene(
        sentence("Template of the scallops"),
        sentence("Each {pitch} from the next, {rise} deep, radius {radius}.", pitch=sheet["pitch"],
                 rise=sheet["scallop_rise"], radius=sheet["radius"]),
        scallop_template(
            Template(scallops, sheet["seam_allowance"], sheet["facing_depth"], faced)
        ),
    )  # fmt: skip
    few = f", the first {MOST_DRAWN} of {edge.scallops}" if edge.scallops > MOST_DRAWN else ""
    line = "seam line" if faced else "line of the stitching"
    sheet.pictures.append(
        Picture("finished", sentence(f"The finished edge{few}; the foot line in thin dashes."), row,
                True)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("template", sentence(f"The template: {line} dashed, raw edge thick below it, foot "
                                     "line in thin dashes."), template, sheet=template)
    )  # fmt: skip


TECHNIQUE = ScallopEdge
