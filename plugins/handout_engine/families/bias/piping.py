"""Piping: a bias strip folded round a cord and caught in a seam."""

from __future__ import annotations

from handout_engine.amounts.angles import PI
from handout_engine.amounts.declaring import group, value
from handout_engine.amounts.inputs import SEWING, count, length, optional_count
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import sentence
from handout_engine.cloth.bias_cloth import BiasInputs, StripsForLength
from handout_engine.drawing.scene import Line
from handout_engine.families.bias.bias_pictures import cloth_picture, flat_picture
from handout_engine.families.bias.binding_steps import add_bias_cutting
from handout_engine.shared.strips_drawing import Rule
from handout_engine.shared.tubes_drawing import Piping as PipingShape
from handout_engine.shared.tubes_drawing import piped_seam, piping_section
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.workings import Picture, Seam, Supply
from handout_engine.working.worksheet import Worksheet

PUBLISHED_STRIP = inches("5/4")


class Piping(BiasInputs):
    """A covered cord sewn into a seam."""

    title = "Piping"
    family = "bias"
    summary = "A cord covered with bias and sewn into a seam: collars, yokes, waists, cushions."
    known_by = "section"
    cloth_name = "piping cloth"

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

    @value("round the cord")
    def around_cord(self) -> Length:
        """Once round it."""
        return PI * self.cord

    @value("strip, cut width", saying=Saying.UP)
    def strip_width(self) -> Length:
        """Round the cord, with an allowance at both edges."""
        return self.around_cord + 2 * self.seam_allowance + self.turn_of_cloth

    @value("fold for the cord, from either edge")
    def fold(self) -> Length:
        """The cord lies in the middle."""
        return self.strip_width / 2

    @value("stitching, from the raw edges")
    def stitch_line(self) -> Length:
        """The piping has the allowance of the seam that it goes into."""
        return self.seam_allowance

    @value("piping for one seam", finishes="seam_length")
    def piping_length(self) -> Length:
        """The seam, and what its ends take."""
        return self.seam_length + self.overlap

    @value("piping in all")
    def length_for_all(self) -> Length:
        """As long for each seam."""
        return self.make * self.piping_length

    @value("strip of a textbook, to compare", basis=published("butterick-1921"))
    def published_strip(self) -> Length:
        """As it is printed there."""
        return PUBLISHED_STRIP

    @value("thickest cord that such a strip covers here")
    def published_cord(self) -> Length | None:
        """What this allowance leaves of that strip goes round it; None where it leaves nothing."""
        left = self.published_strip - 2 * self.seam_allowance
        return left / PI if left.mm > 0 else None

    @group
    def strips(self) -> StripsForLength:
        """The strips that join into the covering."""
        return StripsForLength(self, self.strip_width, self.length_for_all)

    def cut(self, sheet: Worksheet) -> None:
        """The strips and the seams."""
        self.strips.cut(sheet)
        sheet.seams.append(Seam("piping to seam", self.seam_allowance))
        sheet.seams.append(Seam("strip to strip", self.strip_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """The cord covered, basted to one piece and sewn in with the other."""
        cord = "cord, washed first so that it shrinks no more"
        sheet.supplies.append(Supply(cord, sheet["length_for_all"]))
        sheet.have("a narrow zipper or cording foot", "fine thread to match")
        sheet.cautions.append(PINS_AND_IRON)
        _add_sample(sheet)
        add_bias_cutting(sheet)
        sheet.step(
            "Lay the cord in the middle of the wrong side, fold the strip over it, raw edges "
            "level, and stitch beside the cord, not yet quite against it.",
            "from the stitching to the raw edges it is {seam_allowance} or a thread more.",
        )
        sheet.put_by()
        corners = (
            " At each corner clip the allowance of the piping to its stitching, three cuts close "
            "together, and ease the cord round in a small curve; it cannot turn a sharp point."
            if self.corners
            else ""
        )
        sheet.step(
            "Baste it to the right side of one piece, raw edges level and the cord lying inward, "
            "without pulling. On outward curves clip its allowance every 1/2 in." + corners,
            "the line of stitching lies {seam_allowance} from the edge all along.",
        )
        sheet.step(
            "Where the ends meet: open one covering, cut the cord so that both cords just touch, "
            "turn the open covering in by {strip_allowance} and lap it over the other end. At an "
            "open end draw out and cut off the cord within the seam that crosses it."
        )
        sheet.step(
            "Lay the other piece on it, right sides together, and sew from the side where the "
            "basting shows, now right against the cord.",
            "no basting shows at the right side and the cord stands {cord} high all along.",
        )
        sheet.step("Grade the allowances, the piping's narrowest, and press with the cord upward.")

    def draw(self, sheet: Worksheet) -> None:
        """The piped seam, the piping cut through, its strip and the cloth."""
        shape = PipingShape(sheet["cord"], sheet["seam_allowance"])
        rules = [Rule(Line.FOLD, sheet["fold"]), Rule(Line.STITCH, sheet["stitch_line"])]
        section = sentence("Cut through; the cloth is drawn thick.")
        sheet.show("finished", "The piped seam.", piped_seam(shape), finished=True)
        sheet.pictures.append(Picture("section", section, piping_section(shape)))
        sheet.pictures.append(
            flat_picture("piping strip", sheet["strip_width"], sheet["length_for_all"], rules)
        )
        sheet.pictures.append(cloth_picture(sheet, self.strips))


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Fold a scrap strip {strip_width} wide round the cord, raw edges level, and stitch close "
        "to the cord.",
        "from the stitching to the raw edges it is {seam_allowance}. Less: write what is missing, "
        "twice, as turn of cloth. More: trim to {seam_allowance}.",
    )


TECHNIQUE = Piping
