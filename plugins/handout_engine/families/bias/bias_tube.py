"""A flat tube of bias, sewn inside out and turned: straps, ties, lattice, loops."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most
from handout_engine.cloth.bias import Pieces
from handout_engine.cloth.bias_cloth import BiasClothInputs, note_whole_strips
from handout_engine.drawing.scene import Line
from handout_engine.families.bias.bias_pictures import cloth_picture, flat_picture
from handout_engine.shared.binding_steps import add_ruling_step
from handout_engine.shared.strips_drawing import Rule
from handout_engine.shared.tubes_drawing import Tube, tube_section
from handout_engine.working.cautions import NECK_CORDS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

ON_EDGE, ON_BACK = "on an edge", "centred on the back"


class BiasTube(BiasClothInputs, Technique):
    """Equal pieces of tube, each cut in one without a join."""

    title: ClassVar[str] = "Bias tube"
    family: ClassVar[str] = "bias"
    summary: ClassVar[str] = (
        "A flat tube sewn inside out and turned, its seam on an edge or centred on the back."
    )

    finished = length(
        "finished width", "Width of the turned and pressed tube.", "3/8 in", ("1/16 in", "4 in")
    )
    tube_length = length(
        "finished length", "Length of one piece of tube.", "12 in", ("1/2 in", "5 yd")
    )
    pieces = count("pieces", "How many pieces of tube.", 2, 200)
    end_allowance = length(
        "end allowance",
        "Extra at each end, to sew in or turn in.",
        "1/2 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    seam = choice(
        "seam",
        "On an edge, or centred on the back and pressed open.",
        ON_EDGE,
        ON_BACK,
        group=SEWING,
    )
    seam_allowance = optional_length(
        "seam allowance",
        "Allowance of the tube's seam.",
        "1/4 in, or as much as lies flat inside the tube",
        ("1/32 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="tube_seam",
    )
    sample_stitched = optional_length(
        "sample, stitched",
        "From fold to stitching of a sample before turning.",
        "no sample yet: taken as equal",
        ("1/16 in", "6 in"),
        group=SEWING,
    )
    sample_turned = optional_length(
        "sample, turned",
        "Width of that sample, turned and pressed.",
        "no sample yet: taken as equal",
        ("1/16 in", "6 in"),
        group=SEWING,
    )

    def whole(self) -> Worksheet:
        """Strips, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        seam = _note_seam(sheet, self)
        _note_width(sheet, self, seam)
        each = sheet.note("piece_length", "each piece, cut length",
                          self.tube_length + 2 * self.end_allowance,
                          "{tube_length} + 2 × {end_allowance}")  # fmt: skip
        width = sheet["strip_width"].length
        wanted = Pieces(self.pieces.number, each.length, width, each.length + width)
        strips = note_whole_strips(sheet, self, sheet["strip_width"], wanted, "tube cloth")
        sheet.seams.append(Seam("tube", seam.length))
        sheet.supplies.append(Supply("a loop turner, or a blunt needle and strong thread"))
        sheet.have("fine thread to match")
        sheet.cautions.extend((PINS_AND_IRON, NECK_CORDS))
        _add_sample(sheet)
        _add_steps(sheet, self)
        shape = Tube(sheet["finished"], seam, self.seam == ON_BACK)
        rules = [Rule(Line.STITCH, seam), Rule(Line.FOLD, sheet["fold"]),
                 Rule(Line.STITCH, sheet["second_stitching"])]  # fmt: skip
        sheet.pictures.extend(
            (
                Picture("finished", sentence("The turned tube, cut through; its cloth is drawn "
                                             "thick."), tube_section(shape), finished=True),
                flat_picture("tube strip", sheet["strip_width"], each, rules),
                cloth_picture(strips, sheet["edge_step"]),
            )
        )  # fmt: skip
        return sheet


def _note_seam(sheet: Worksheet, inputs: BiasTube) -> Value:
    """Note the allowance; refuses one that cannot lie flat inside the tube."""
    back = inputs.seam == ON_BACK
    most = inputs.finished / 2 if back else inputs.finished
    usual = min(Length(Fraction(127, 20)), most)
    seam = usual if inputs.seam_allowance is None else inputs.seam_allowance
    if seam > most:
        tape = Tape(finest=32)
        way = f'trim it, or put the seam on an edge: seam: "{ON_EDGE}"' if back else "trim it"
        raise RefusalError(
            f"seam_allowance {tape.say(seam)} cannot lie flat in a tube {tape.say(inputs.finished)}"
            f" wide with its seam {inputs.seam}; use "
            f"{at_most(inputs, 'seam_allowance', most) or 'a wider tube'} ({way})",
            "seam_allowance",
        )
    basis = PRACTICE if inputs.seam_allowance is None else GIVEN
    return sheet.note("tube_seam", "allowance of the tube's seam", seam, "", basis=basis)


def _note_width(sheet: Worksheet, inputs: BiasTube, seam: Value) -> None:
    """Note from fold to stitching, corrected by a sample where there is one; and the strip."""
    before, after = inputs.sample_stitched, inputs.sample_turned
    if (before is None) != (after is None):
        raise RefusalError(
            "a sample needs both its measures; write sample_stitched and sample_turned",
            "sample_turned" if after is None else "sample_stitched",
        )
    if before is None or after is None:
        sheet.note("stitched", "from fold to stitching", inputs.finished, "{finished}")
    else:
        sheet.note("stitched", "from fold to stitching, by the sample",
                   inputs.finished * (before / after),
                   "{finished} × {sample_stitched} / {sample_turned}")  # fmt: skip
    stitched = sheet["stitched"].length
    sheet.note("strip_width", "strip, cut width", 2 * (stitched + seam.length),
               "2 × {stitched} + 2 × {tube_seam}", saying=Saying.UP)  # fmt: skip
    sheet.note("fold", "fold, from either edge", stitched + seam.length,
               "{stitched} + {tube_seam}")  # fmt: skip
    sheet.note("second_stitching", "the same stitching on the other half",
               2 * stitched + seam.length, "{strip_width} - {tube_seam}")  # fmt: skip


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Cut one strip {width} wide on the true bias, about a hand long, fold it "
                "lengthwise, right sides together, stitch {stitched} from the fold, turn it and "
                "press it as it will be worn.",
                width=sheet["strip_width"],
                stitched=sheet["stitched"],
            ),
            sentence(
                "its width. Bias grows longer and narrower as it is pulled through; if it is not "
                "{finished}, write what you stitched and what it measures now as sample.",
                finished=sheet["finished"],
            ),
        )
    )


def _add_steps(sheet: Worksheet, inputs: BiasTube) -> None:
    add_ruling_step(sheet)
    sheet.step(
        "Cut the slanting ends of the strips square, and from them {pieces} pieces {piece_length} "
        "long; the chart says how many come from each."
    )
    sheet.step(
        "Fold each piece lengthwise, right sides together, and stitch {stitched} from the fold, "
        "with short stitches, stretching the strip a little so that the seam can give; widen the "
        "seam like a funnel at the end where it will be turned.",
        "from fold to stitching it is {stitched} all along.",
    )
    sheet.step(
        "Trim the allowance to {tube_seam} if it is more. Fasten a thread or the turner at the "
        "funnel, and draw the tube through itself slowly."
    )
    if inputs.seam == ON_BACK:
        sheet.step(
            "Roll the seam to the middle of the back, its allowances opened to both sides, and "
            "press.",
            "{finished} wide, the seam {half} from either edge.",
            half=inputs.finished / 2,
        )
    else:
        sheet.step("Roll the seam to one edge and press.", "{finished} wide from end to end.")


TECHNIQUE = BiasTube
