"""A panel of narrow bias tubes woven over and under in two directions inside an outline.

The tubes are set out from a crossing at the centre of the panel. Each is as long as what of its
band lies inside the outline, not as its centre line, with a margin at both ends.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import group
from handout_engine.cloth.cloth import ClothBought
from handout_engine.families.lattice.lattice_panel_drawing import (
    NAME_ON_SHEET,
    BiasBlock,
    LatticeDrawing,
    Spacing,
    bias_block,
    detail,
    finished,
    placement,
    room_on_page,
)
from handout_engine.families.lattice.setting_out import ALTERNATE, NONE, WeaveInputs
from handout_engine.families.lattice.tube_strips import NamedTube, TubeInputs
from handout_engine.families.lattice.weave_drawing import Woven
from handout_engine.geometry.points import cosine, sine
from handout_engine.shared.tubes_drawing import Tube, tube_section
from handout_engine.working.cautions import KNOTS_AS_SMALL_PARTS, OPEN_LATTICE, PINS_AND_IRON
from handout_engine.working.workings import Grain, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

CLOTH = "tube cloth"


class LatticePanel(TubeInputs, WeaveInputs):
    """An openwork panel of woven bias tubes."""

    title = "Lattice panel"
    family = "lattice"
    summary = "Narrow bias tubes woven over and under inside an outline, knotted where they cross."

    @property
    def wanted(self) -> tuple[NamedTube, ...]:
        """The tubes to cut."""
        return self.tubes_to_cut

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the tubes."""
        return ClothBought(self, CLOTH)

    def cut(self, sheet: Worksheet) -> None:
        """One piece of cloth, the strips on it, and the tubes from each strip."""
        sheet.charts.append(self.tube_chart())
        if self.knot_count:
            sheet.charts.append(self.knot_chart())
        sheet.charts.append(self.strips_chart())
        across, along = sheet["across"], sheet["along"]
        sheet.pieces.append(
            Piece("block for the bias strips", CLOTH, 1, across, along, Grain.STRAIGHT)
        )
        sheet.seams.append(Seam("along each tube", self.seam_in_tube))

    def sew(self, sheet: Worksheet) -> None:
        """From one trial tube to the panel in its finished edge."""
        self._add_supplies(sheet)
        _add_sample(sheet)
        if self.shrinkage_length or self.shrinkage_width:
            sheet.step(
                "Wash, dry and press the cloth as the garment will be washed; straighten it."
            )
        sheet.step(
            "Print the placement sheet at its actual size. Lay the stabiliser over it and trace "
            "the outline, every tube with its name, the cross at the centre and the places of the "
            "knots.",
            "on the print the two squares measure 5 cm and 2 in exactly, and the outline is "
            "{panel_width} wide and {panel_depth} deep.",
        )
        self._add_tubes(sheet)
        _add_weaving(sheet)
        self._add_knots(sheet)
        _add_setting_in(sheet)

    def _add_supplies(self, sheet: Worksheet) -> None:
        edge = "binding or cord for the finished edge, without joins or seams"
        sheet.have("soluble stabiliser or thin paper to weave on, larger than the panel all round")
        sheet.have("fine thread to match", "fine pins", "a tube turner")
        sheet.supplies.append(Supply(edge, sheet["edge_length"]))
        sheet.cautions.extend((OPEN_LATTICE, PINS_AND_IRON))
        if self.knot_count:
            sheet.have("stranded cotton or fine cord for the knots")
            sheet.cautions.append(KNOTS_AS_SMALL_PARTS)

    def _add_tubes(self, sheet: Worksheet) -> None:
        sheet.step(
            "Cut a piece {across} across the cloth and {along} along the selvage. From one corner "
            "mark {edge_step} again and again along both edges, join the marks by lines on the "
            "bias, and cut the strips of the table, {strip_width} wide.",
            "{strips} strips, each {strip_width} wide.",
        )
        sheet.step(
            "Fold each strip in half along its length, right sides together, and sew "
            "{seam_in_tube} from the raw edges with a short stitch, stretching a little. Turn it "
            "right side out. Press it flat with the seam along one edge.",
            "each tube is {tube_width} wide from end to end; press and ease it until it is.",
        )
        sheet.step(
            "Square one end of each tube and cut the pieces of the table, {tubes} in all, with "
            "their names pinned to them.",
            "the longest is {longest_tube}; all together they are {tube_total}.",
        )
        if self.edge_tubes:
            sheet.step(
                "{edge_tubes} of them enter by an edge only. Cut them too, or leave out those that "
                "the finished edge will cover."
            )

    def _add_knots(self, sheet: Worksheet) -> None:
        sheet.step(
            "Baste through tubes and stabiliser just outside the outline, then stitch once more "
            "a needle's width outside it with a short stitch. Take the pins out and count them."
        )
        if self.knot_count:
            how = (
                "at every second crossing, where the rising tube lies over,"
                if self.knots == ALTERNATE
                else "at every crossing"
            )
            sheet.step(
                f"Knot the tubes to each other {how} as marked: {{knot_count}} knots, none nearer "
                "to the outline than {knot_clearance}. Sew each through all layers and bury its "
                "ends.",
                "pull at each knot; none slips.",
            )
        if self.knots == NONE or not self.knot_count:
            sheet.step(
                "Catch the tubes to each other at each of the {crossings} crossings with two small "
                "stitches from the wrong side, so that the weave cannot shift."
            )

    def draw(self, sheet: Worksheet) -> None:
        """The panel, its placement sheet, how it is spaced, one tube, and the strips."""
        drawing = LatticeDrawing(
            Woven(self.panel_shape, self.weave, tuple(tube for _, tube in self.named)),
            self.named,
            [each.at for each in self.knotted],
            sheet["panel_width"],
            sheet["panel_depth"],
        )
        for name, caption, scene in (
            (
                "finished",
                "The finished panel from its right side; the falling tubes are tinted only to tell "
                "the two sets apart.",
                finished(drawing),
            ),
            (
                "placement",
                "Placement sheet: tubes R rise and F fall to the right; the dashed line is the "
                "finished edge, the ends beyond it are the margins.",
                placement(drawing, room_on_page(drawing), every_name=False),
            ),
            (
                "spacing",
                "How the tubes are spaced, turned so that one set lies level: at the left gap and "
                "tube, at the right from tube to tube, below from crossing to crossing.",
                detail(self._spacing(sheet)),
            ),
            (
                "tube",
                "A tube cut through; its thickness is enlarged.",
                tube_section(Tube(sheet["tube_width"], sheet["seam_in_tube"], centred=False)),
            ),
            (
                "strips",
                "The strips on the piece of cloth, numbered as in the table.",
                bias_block(self._bias_block(sheet)),
            ),
        ):
            true = name == "placement"
            at_scale = placement(drawing, NAME_ON_SHEET, every_name=True) if true else None
            sheet.show(name, caption, scene, finished=name == "finished", sheet=at_scale)

    def _spacing(self, sheet: Worksheet) -> Spacing:
        return Spacing(
            sheet["tube_width"],
            sheet["gap"],
            sheet["pitch"],
            sheet["crossing_spacing"],
            (cosine(self.crossing_angle), sine(self.crossing_angle)),
        )

    def _bias_block(self, sheet: Worksheet) -> BiasBlock:
        drawn = [(str(strip.band.number), strip.band.outline) for strip in self.cut_strips]
        return BiasBlock(sheet["across"], sheet["along"], sheet["edge_step"], drawn)


def _add_sample(sheet: Worksheet) -> None:
    """One tube before all of them, and a small lattice for the size of its openings."""
    sheet.trial(
        "Sew, turn and press one short tube from a bias strip {strip_width} wide, "
        "{seam_in_tube} allowance, stretching the strip a little as you sew.",
        "pressed flat it is {tube_width} wide. Bias narrows when it is pulled through: if "
        "the tube is narrower, cut the strips wider by twice what is missing.",
    )
    sheet.trial(
        "Pin three such tubes each way, {gap} apart, over a scrap.",
        "put a fingertip to an opening. Where the panel will be within reach of hands or "
        "feet it should not go in; make the gap smaller until it does not.",
    )


def _add_weaving(sheet: Worksheet) -> None:
    sheet.step(
        "Pin all rising tubes (R) to the tracing, seams to one side, by both ends outside the "
        "outline. Start with the one through the centre and work outward.",
        "between two tubes it is {gap} everywhere, square to them.",
    )
    sheet.step(
        "Weave the falling tubes (F) in, the one through the centre first: at the centre it goes "
        "under, then over and under by turns; each next tube the other way. Pin the ends.",
        "along a tube a crossing comes every {crossing_spacing}, and every tube lies on its "
        "tracing.",
    )


def _add_setting_in(sheet: Worksheet) -> None:
    sheet.step(
        "Trim the tube ends {margin} outside the outline, and tear or wash the stabiliser away "
        "from inside it. Let the panel dry flat.",
        "the panel is {panel_width} wide and {panel_depth} deep inside its stitching.",
    )
    sheet.put_by()
    sheet.step(
        "Set the panel behind a faced opening of the same outline, {edge_length} once round, its "
        "stitching just inside the fold, and edge-stitch twice; or bind its edge and apply it. "
        "Cover the tube ends on the wrong side.",
        "no tube end shows or can be pulled out.",
    )


TECHNIQUE = LatticePanel
