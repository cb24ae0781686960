"""Piping: a bias strip folded round a cord and caught in a seam."""

from __future__ import annotations

from math import pi
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, count, length, optional_count
from handout_engine.amounts.lengths import from_float, inches
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import sentence
from handout_engine.cloth.bias_cloth import BiasInputs, note_joined_strips
from handout_engine.drawing.scene import Line
from handout_engine.families.bias.bias_pictures import cloth_picture, flat_picture
from handout_engine.shared.binding_steps import add_bias_cutting
from handout_engine.shared.strips_drawing import Rule
from handout_engine.shared.tubes_drawing import Piping as PipingShape
from handout_engine.shared.tubes_drawing import piped_seam, piping_section
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

PUBLISHED_STRIP = inches("5/4")


class Piping(BiasInputs, Technique):
    """A covered cord sewn into a seam."""

    title: ClassVar[str] = "Piping"
    family: ClassVar[str] = "bias"
    summary: ClassVar[str] = (
        "A cord covered with bias and sewn into a seam: collars, yokes, waists, cushions."
    )
    known_by: ClassVar[str] = "section"

    seam_length = length(
        "seam to pipe",
        "Length of the seam that the piping is sewn into.",
        "24 in",
        ("1 in", "40 yd"),
    )
    cord = length(
        "cord",
        "Diameter of the cord; wound ten times on a ruler, its width over ten.",
        "1/16 in",
        ("1/32 in", "2 in"),
    )
    corners = optional_count("corners", "Corners round which the piping turns.", "none", 40)
    make = count("how many", "How many such seams are piped.", 1, 40)
    seam_allowance = length(
        "seam allowance",
        "As wide as that of the seam it goes into.",
        "1/4 in",
        ("1/16 in", "1 1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    overlap = length(
        "overlap",
        "Extra length where the ends meet or are turned in.",
        "2 in",
        ("0 in", "12 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn_of_cloth = length(
        "turn of cloth",
        "Extra width for thick cloth.",
        "0 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Strip, cord, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _note_width(sheet, self)
        each = sheet.note("piping_length", "piping for one seam", self.seam_length + self.overlap,
                          "{seam_length} + {overlap}", finishes="seam_length")  # fmt: skip
        sheet.note("length_for_all", "piping in all", each.length * self.make,
                   "{make} × {piping_length}")  # fmt: skip
        _note_published(sheet, self)
        strips = note_joined_strips(
            sheet, self, sheet["strip_width"], sheet["length_for_all"], "piping cloth"
        )
        sheet.seams.append(Seam("piping to seam", self.seam_allowance))
        sheet.seams.append(Seam("strip to strip", self.strip_allowance))
        sheet.supplies.append(Supply("cord, washed first so that it shrinks no more",
                                     sheet["length_for_all"]))  # fmt: skip
        sheet.have("a narrow zipper or cording foot", "fine thread to match")
        sheet.cautions.append(PINS_AND_IRON)
        _add_sample(sheet)
        _add_steps(sheet, self)
        shape = PipingShape(sheet["cord"], sheet["seam_allowance"])
        rules = [Rule(Line.FOLD, sheet["fold"]), Rule(Line.STITCH, sheet["stitch_line"])]
        sheet.pictures.extend(
            (
                Picture("finished", sentence("The piped seam."), piped_seam(shape), finished=True),
                Picture("section", sentence("Cut through; the cloth is drawn thick."),
                        piping_section(shape)),
                flat_picture("piping strip", sheet["strip_width"], sheet["length_for_all"], rules),
                cloth_picture(strips, sheet["edge_step"]),
            )
        )  # fmt: skip
        return sheet


def _note_width(sheet: Worksheet, inputs: Piping) -> None:
    around = sheet.note("around_cord", "round the cord", from_float(pi * float(inputs.cord)),
                        "π × {cord}")  # fmt: skip
    sheet.note(
        "strip_width",
        "strip, cut width",
        around.length + 2 * inputs.seam_allowance + inputs.turn_of_cloth,
        "{around_cord} + 2 × {seam_allowance} + {turn_of_cloth}",
        saying=Saying.UP,
    )
    sheet.note("fold", "fold for the cord, from either edge", sheet["strip_width"].length / 2,
               "{strip_width} / 2")  # fmt: skip
    sheet.note("stitch_line", "stitching, from the raw edges", inputs.seam_allowance,
               "{seam_allowance}")  # fmt: skip


def _note_published(sheet: Worksheet, inputs: Piping) -> None:
    """A strip printed in a textbook, and the cord that it covers with this allowance."""
    left = PUBLISHED_STRIP - 2 * inputs.seam_allowance
    sheet.note("published_strip", "strip of a textbook, to compare", PUBLISHED_STRIP, "",
               basis=published("butterick-1921"))  # fmt: skip
    if left.mm > 0:
        sheet.note("published_cord", "thickest cord that such a strip covers here",
                   from_float(float(left) / pi),
                   "({published_strip} - 2 × {seam_allowance}) / π")  # fmt: skip


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Fold a scrap strip {width} wide round the cord, raw edges level, and stitch close "
                "to the cord.",
                width=sheet["strip_width"],
            ),
            sentence(
                "from the stitching to the raw edges it is {seam}. Less: write what is missing, "
                "twice, as turn of cloth. More: trim to {seam}.",
                seam=sheet["seam_allowance"],
            ),
        )
    )


def _add_steps(sheet: Worksheet, inputs: Piping) -> None:
    add_bias_cutting(sheet)
    sheet.step(
        "Lay the cord in the middle of the wrong side, fold the strip over it, raw edges level, "
        "and stitch beside the cord, not yet quite against it.",
        "from the stitching to the raw edges it is {seam_allowance} or a thread more.",
    )
    sheet.put_by()
    corners = (
        " At each corner clip the allowance of the piping to its stitching, three cuts close "
        "together, and ease the cord round in a small curve; it cannot turn a sharp point."
        if inputs.corners
        else ""
    )
    sheet.step(
        "Baste it to the right side of one piece, raw edges level and the cord lying inward, "
        "without pulling. On outward curves clip its allowance every 1/2 in." + corners,
        "the line of stitching lies {seam_allowance} from the edge all along.",
    )
    sheet.step(
        "Where the ends meet: open one covering, cut the cord so that both cords just touch, turn "
        "the open covering in by {strip_allowance} and lap it over the other end. At an open end "
        "draw out and cut off the cord within the seam that crosses it."
    )
    sheet.step(
        "Lay the other piece on it, right sides together, and sew from the side where the basting "
        "shows, now right against the cord.",
        "no basting shows at the right side and the cord stands {cord} high all along.",
    )
    sheet.step("Grade the allowances, the piping's narrowest, and press with the cord upward.")


TECHNIQUE = Piping
