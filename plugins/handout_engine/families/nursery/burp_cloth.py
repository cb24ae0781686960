"""A burp cloth: a washable pad under a trim cloth whose pleat is stitched down as a band.

The band is a tuck as deep as the band is wide. It takes twice its depth of the trim cloth, its seam
stands one band from the finished end, and its fold comes back to that end.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.families.nursery.burp_cloth_drawing import BurpCloth as Drawn
from handout_engine.families.nursery.burp_cloth_drawing import (
    band_section,
    finished_scene,
    flat_scene,
)
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import NOTHING_LOOSE_IN_THE_COT, PINS_AND_IRON
from handout_engine.working.workings import Chart, Grain, Picture, Piece, Seam, Supply, marked
from handout_engine.working.worksheet import Worksheet

CUT, READY = "cut to size", "ready made"
TRIM, PAD = "trim cloth", "pad cloth"
PLEAT = ("pleat_seam", "pleat_fold", "pleat_back")
SAMPLE_SIDE = constant("usual sample", inches(8), PRACTICE)


class BurpCloth(ClothInputs):
    """A pad with a trim cloth that has a stitched-down pleat at one end or both."""

    title = "Burp cloth with a pleat band"
    family = "nursery"
    summary = "A soft pad with a trim cloth on top, a pleat stitched down at its end as a band."

    pad = choice(
        "pad",
        "Cut from towelling or flannel and turned inside out with the trim cloth, or a folded "
        "nappy or towel that is ready made.",
        CUT,
        READY,
    )
    pad_width = length(
        "pad width", "Finished width of the pad.", "13 1/2 in", ("4 in", "40 in"), basis=PRACTICE
    )
    pad_length = length(
        "pad length",
        "Finished length of the pad, from end to end.",
        "19 1/2 in",
        ("6 in", "60 in"),
        basis=PRACTICE,
    )
    band = length(
        "band",
        "Finished width of the pleat that is stitched down.",
        "2 in",
        ("1/2 in", "8 in"),
        basis=PRACTICE,
    )
    bands = count("bands", "One at one end, or two, one at each end.", 1, 2)
    make = count("how many", "How many cloths are made.", 3, 24)
    seam_allowance = length(
        "seam allowance",
        "Allowance round the pad; on a ready-made pad it is turned under.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    edge_stitch = length(
        "edge stitching",
        "From the finished edge and from the fold.",
        "1/8 in",
        ("1/16 in", "3/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @check
    def the_bands_lie_beside_each_other(self) -> None:
        """Refuse bands that would cover more than the pad."""
        if self.bands * self.band > self.pad_length:
            which = "the two bands" if self.bands > 1 else "the band"
            raise RefusalError(
                f"{which} would cover more than the pad, {TAPE.both(self.pad_length)} long; use a "
                f"band of at most {TAPE.no_more(self.pad_length / self.bands)}, or a longer pad",
                "band",
            )

    @value("extra cloth for each band")
    def extra_for_a_band(self) -> Length:
        """A pleat takes twice its depth."""
        return 2 * self.band

    @value("trim cloth, cut width", saying=Saying.UP)
    def trim_width(self) -> Length:
        """As wide as the pad, with its seams."""
        return self.pad_width + 2 * self.seam_allowance

    @value("trim cloth, cut length", saying=Saying.UP)
    def trim_length(self) -> Length:
        """As long as the pad, with its seams and what the bands take."""
        return self.pad_length + 2 * self.seam_allowance + self.bands * self.extra_for_a_band

    @value("trim cloth that shows beside the bands")
    def plain_length(self) -> Length:
        """What the bands do not cover."""
        return self.pad_length - self.bands * self.band

    @value("pleat, first line of its seam")
    def pleat_seam(self) -> Length:
        """From the raw edge: one band from the finished end."""
        return self.seam_allowance + self.band

    @value("pleat, its fold")
    def pleat_fold(self) -> Length:
        """One band further on."""
        return self.pleat_seam + self.band

    @value("pleat, second line of its seam")
    def pleat_back(self) -> Length:
        """The cloth comes back to the first line."""
        return self.pleat_fold + self.band

    @value("trim cloth, with its pleats sewn")
    def sewn_length(self) -> Length:
        """What is measured before it is joined to the pad."""
        return self.trim_length - 2 * self.bands * self.band

    @value("pad, cut length", saying=Saying.UP)
    def pad_cut_length(self) -> Length | None:
        """With its seams; None where it is ready made."""
        return self.pad_length + 2 * self.seam_allowance if self.pad == CUT else None

    @value("pad, cut width", saying=Saying.UP)
    def pad_cut_width(self) -> Length | None:
        """As the trim."""
        return self.trim_width if self.pad == CUT else None

    @value("side of a sample square", basis=PRACTICE)
    def sample_side(self) -> Length:
        """Large enough to see how far it shrinks."""
        return SAMPLE_SIDE

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """The trim, and the pad where it is cut."""
        trim = ClothBought(self, TRIM)
        return (trim,) if self.pad == READY else (trim, ClothBought(self, PAD, "pad_"))

    def cut(self, sheet: Worksheet) -> None:
        """Trim and pad, with the lines of the pleat."""
        marks = marked(self.pleat_seam, self.pleat_fold, self.pleat_back)
        size = sheet["trim_width"], sheet["trim_length"]
        sheet.pieces.append(Piece("trim", TRIM, self.make.number, *size, Grain.STRAIGHT, marks))
        if self.pad == CUT:
            size = sheet["pad_cut_width"], sheet["pad_cut_length"]
            sheet.pieces.append(Piece("pad", PAD, self.make.number, *size, Grain.STRAIGHT))
        sheet.charts.append(
            Chart(
                "Lines on the trim cloth, from the raw edge at a banded end",
                ("Line", "From the raw edge"),
                tuple((line.label, line) for line in map(sheet.__getitem__, PLEAT)),
            )
        )
        sheet.seams.append(Seam("round the pad", self.seam_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """The pleat, then the pad."""
        _add_supplies(sheet, self)
        _add_sample(sheet)
        _add_steps(sheet, self)

    def draw(self, sheet: Worksheet) -> None:
        """The cloth, its trim laid flat, and the band cut through."""
        _draw(sheet, self)


def _add_supplies(sheet: Worksheet, cloth: BurpCloth) -> None:
    if cloth.pad == READY:
        sheet.supplies.append(
            Supply(
                "ready-made pad, washed once",
                None,
                sheet.sentence("{make} of {pad_width} by {pad_length}"),
            )
        )
    sheet.have("fine thread to match", "a needle for the thickness of the pad")
    sheet.have("a removable marker tried on a scrap", "a ruler", "pins or clips")
    sheet.cautions.extend((PINS_AND_IRON, NOTHING_LOOSE_IN_THE_COT))


def _add_sample(sheet: Worksheet) -> None:
    sheet.trial(
        "Wash and dry a scrap of trim cloth and one of the pad, each {sample_side} square "
        "before, and measure both again.",
        "they have shrunk alike. If not, wash both cloths before cutting, and again if the "
        "pad goes on shrinking: otherwise the trim will pucker on it for good.",
    )


def _add_steps(sheet: Worksheet, cloth: BurpCloth) -> None:
    ends = "one end" if cloth.bands == 1 else "both ends"
    add_washing_step(sheet)
    sheet.step(
        "For each cloth cut the trim {trim_width} wide and {trim_length} long"
        + (
            ", and the pad {pad_cut_width} wide and {pad_cut_length} long."
            if cloth.pad == CUT
            else "."
        )
    )
    sheet.step(
        f"Rule the three lines across the trim at {ends}: {{pleat_seam}}, {{pleat_fold}} and "
        "{pleat_back} from the raw edge."
    )
    sheet.step(
        "Fold the trim wrong sides together on the middle line, so that the outer two meet, and "
        "stitch on them, {band} from the fold.",
        "the trim is {sewn_length} long now.",
    )
    sheet.step(
        "Press the pleat toward the end of the cloth, and baste its two sides.",
        "its fold lies {seam_allowance} short of the raw edge, just where the end seam will run.",
    )
    if cloth.pad == CUT:
        _add_bagging(sheet)
    else:
        sheet.step(
            "Press {seam_allowance} to the wrong side along all four edges of the trim, at the end "
            "behind the fold, and lay it on the pad, edge on edge. Pin from the middle outward.",
            "it covers the pad to its edges, {pad_width} by {pad_length}, and lies flat.",
        )
    sheet.step(
        "Stitch round, {edge_stitch} from the edge: at a banded end this stitches the fold of the "
        "pleat down through all layers.",
        "the band is {band} wide from its seam to its fold, at both sides, and {plain_length} of "
        "the trim shows beside it.",
    )


def _add_bagging(sheet: Worksheet) -> None:
    sheet.step(
        "Lay trim and pad right sides together and sew round, {seam_allowance} from the edges: the "
        "sides of the pleat are caught, its fold is not, a needle's breadth inside the seam. Leave "
        "a hand's width open in one long side, away from the pleat."
    )
    sheet.step(
        "Clip the corners, turn right side out, press, and turn the opening in.",
        "it measures {pad_width} by {pad_length}.",
    )


def _draw(sheet: Worksheet, cloth: BurpCloth) -> None:
    drawn = Drawn(
        {
            name: sheet[name]
            for name in (
                "pad_width",
                "pad_length",
                "band",
                "seam_allowance",
                "edge_stitch",
                "trim_width",
                "trim_length",
                "pleat_seam",
                "pleat_fold",
                "pleat_back",
            )
        },
        cloth.bands.number,
    )
    flat = sentence("The trim cloth laid flat, the lines of the pleat measured from its end.")
    section = sentence(
        "The banded end cut through, thickness enlarged: the pleat's seam at the "
        "left, its fold stitched down at the right."
    )
    sheet.show(
        "finished",
        "The finished cloth, its band at the right."
        if (cloth.bands == 1)
        else "The finished cloth, a band at each end.",
        finished_scene(drawn),
        finished=True,
    )
    sheet.pictures.append(Picture("trim", flat, flat_scene(drawn)))
    sheet.pictures.append(Picture("section", section, band_section(drawn)))


TECHNIQUE = BurpCloth
