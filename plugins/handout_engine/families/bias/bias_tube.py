"""A flat tube of bias, sewn inside out and turned: straps, ties, lattice, loops."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import Length, inches, least
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_most
from handout_engine.cloth.bias import Pieces
from handout_engine.cloth.bias_cloth import BiasClothInputs, StripsForPieces
from handout_engine.drawing.scene import Line
from handout_engine.families.bias.bias_pictures import cloth_picture, flat_picture
from handout_engine.families.bias.binding_steps import add_ruling_step
from handout_engine.shared.strips_drawing import Rule
from handout_engine.shared.tubes_drawing import Tube, tube_section
from handout_engine.working.cautions import NECK_CORDS, PINS_AND_IRON
from handout_engine.working.workings import Seam, Supply
from handout_engine.working.worksheet import Worksheet

ON_EDGE, ON_BACK = "on an edge", "centred on the back"
USUAL_ALLOWANCE = constant("usual allowance", inches("1/4"), PRACTICE)


class BiasTube(BiasClothInputs):
    """Equal pieces of tube, each cut in one without a join."""

    title = "Bias tube"
    family = "bias"
    summary = "A flat tube sewn inside out and turned, its seam on an edge or centred on the back."
    cloth_name = "tube cloth"

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

    @value("room in the tube for the allowance")
    def seam_room(self) -> Length:
        """Opened to both sides it has half of the tube, pressed to one side the whole."""
        return self.finished / 2 if self.seam == ON_BACK else self.finished

    @value("allowance of the tube's seam", basis=PRACTICE)
    def tube_seam(self) -> Length:
        """As asked for, or as is usual, or less where there is less room."""
        if self.seam_allowance is not None:
            return self.seam_allowance
        return least(USUAL_ALLOWANCE, self.seam_room)

    @check
    def the_allowance_lies_in_the_tube(self) -> None:
        """Refuse an allowance that cannot lie flat inside."""
        if self.tube_seam > self.seam_room:
            back = self.seam == ON_BACK
            way = f'trim it, or put the seam on an edge: seam: "{ON_EDGE}"' if back else "trim it"
            raise RefusalError(
                f"seam_allowance {TAPE.say(self.tube_seam)} cannot lie flat in a tube "
                f"{TAPE.say(self.finished)} wide with its seam {self.seam}; use "
                f"{at_most(self, 'seam_allowance', self.seam_room) or 'a wider tube'} ({way})",
                "seam_allowance",
            )

    @check
    def a_sample_has_both_its_measures(self) -> None:
        """Refuse a sample of which only one is written."""
        if (self.sample_stitched is None) != (self.sample_turned is None):
            raise RefusalError(
                "a sample needs both its measures; write sample_stitched and sample_turned",
                "sample_turned" if self.sample_turned is None else "sample_stitched",
            )

    def label_of(self, label: str) -> str:
        """Say of a width that was tried that it goes by the sample."""
        return label.replace("{}", "" if self.sample_turned is None else ", by the sample")

    @value("from fold to stitching{}")
    def stitched(self) -> Length:
        """So much more or less than the finished width as a sample of it was."""
        if self.sample_stitched is None or self.sample_turned is None:
            return self.finished
        return self.finished * self.sample_stitched / self.sample_turned

    @value("strip, cut width", saying=Saying.UP)
    def strip_width(self) -> Length:
        """Two layers, each with its allowance."""
        return 2 * self.stitched + 2 * self.tube_seam

    @value("fold, from either edge")
    def fold(self) -> Length:
        """Along the middle."""
        return self.stitched + self.tube_seam

    @value("the same stitching on the other half")
    def second_stitching(self) -> Length:
        """Where the one line of stitching comes out on the layer below."""
        return self.strip_width - self.tube_seam

    @value("seam from either edge of the tube")
    def seam_from_edge(self) -> Length | None:
        """In the middle, where it is centred on the back."""
        return self.finished / 2 if self.seam == ON_BACK else None

    @value("each piece, cut length")
    def piece_length(self) -> Length:
        """What shows, and both ends."""
        return self.tube_length + 2 * self.end_allowance

    @group
    def strips(self) -> StripsForPieces:
        """The strips that give whole pieces."""
        each, width = Length(self.piece_length.mm), Length(self.strip_width.mm)
        wanted = Pieces(self.pieces.number, each, width, each + width)
        return StripsForPieces(self, self.strip_width, wanted)

    def cut(self, sheet: Worksheet) -> None:
        """The strips and the seam."""
        self.strips.cut(sheet)
        sheet.seams.append(Seam("tube", self.tube_seam))

    def sew(self, sheet: Worksheet) -> None:
        """The pieces cut, sewn inside out and turned."""
        sheet.supplies.append(Supply("a loop turner, or a blunt needle and strong thread"))
        sheet.have("fine thread to match")
        sheet.cautions.extend((PINS_AND_IRON, NECK_CORDS))
        _add_sample(sheet)
        add_ruling_step(sheet)
        sheet.step(
            "Cut the slanting ends of the strips square, and from them {pieces} pieces "
            "{piece_length} long; the chart says how many come from each."
        )
        sheet.step(
            "Fold each piece lengthwise, right sides together, and stitch {stitched} from the "
            "fold, with short stitches, stretching the strip a little so that the seam can give; "
            "widen the seam like a funnel at the end where it will be turned.",
            "from fold to stitching it is {stitched} all along.",
        )
        sheet.step(
            "Trim the allowance to {tube_seam} if it is more. Fasten a thread or the turner at the "
            "funnel, and draw the tube through itself slowly."
        )
        if self.seam == ON_BACK:
            sheet.step(
                "Roll the seam to the middle of the back, its allowances opened to both sides, and "
                "press.",
                "{finished} wide, the seam {seam_from_edge} from either edge.",
            )
        else:
            sheet.step("Roll the seam to one edge and press.", "{finished} wide from end to end.")

    def draw(self, sheet: Worksheet) -> None:
        """The tube cut through, its strip and the cloth."""
        shape = Tube(sheet["finished"], sheet["tube_seam"], self.seam == ON_BACK)
        rules = [
            Rule(Line.STITCH, sheet["tube_seam"]),
            Rule(Line.FOLD, sheet["fold"]),
            Rule(Line.STITCH, sheet["second_stitching"]),
        ]
        words = "The turned tube, cut through; its cloth is drawn thick."
        sheet.show("finished", words, tube_section(shape), finished=True)
        sheet.pictures.append(
            flat_picture("tube strip", sheet["strip_width"], sheet["piece_length"], rules)
        )
        sheet.pictures.append(cloth_picture(sheet, self.strips))


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Cut one strip {strip_width} wide on the true bias, about a hand long, fold it "
        "lengthwise, right sides together, stitch {stitched} from the fold, turn it and "
        "press it as it will be worn.",
        "its width. Bias grows longer and narrower as it is pulled through; if it is not "
        "{finished}, write what you stitched and what it measures now as sample.",
    )


TECHNIQUE = BiasTube
