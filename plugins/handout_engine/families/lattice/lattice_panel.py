"""A panel of narrow bias tubes woven over and under in two directions inside an outline.

The tubes are set out from a crossing at the centre of the panel. Each is as long as what of its
band lies inside the outline, not as its centre line, with a margin at both ends.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.values import sentence
from handout_engine.cloth.bias import bands
from handout_engine.families.lattice.lattice_panel_cloth import (
    TubeInputs,
    note_strip_width,
    note_tube_cloth,
    packed,
)
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
from handout_engine.families.lattice.lattice_panel_measures import (
    Lattice,
    WeaveInputs,
    note_setting_out,
    note_tubes,
    set_out,
)
from handout_engine.families.lattice.lattice_panel_steps import add_sample, add_steps, add_supplies
from handout_engine.families.lattice.panels import PanelInputs, make_panel
from handout_engine.geometry.points import cosine, sine
from handout_engine.shared.tubes_drawing import Tube, tube_section
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Seam
from handout_engine.working.worksheet import Worksheet

CLOTH = "tube cloth"


class LatticePanel(TubeInputs, WeaveInputs, PanelInputs, Technique):
    """An openwork panel of woven bias tubes."""

    title: ClassVar[str] = "Lattice panel"
    family: ClassVar[str] = "lattice"
    summary: ClassVar[str] = (
        "Narrow bias tubes woven over and under inside an outline, knotted where they cross."
    )

    def whole(self) -> Worksheet:
        """Outline, tubes, crossings, cloth, steps and sheet; raises RefusalError."""
        sheet = Worksheet(technique=self)
        panel = make_panel(self)
        lattice = set_out(panel, self.tube_width, self)
        note_strip_width(sheet, self)
        note_setting_out(sheet, panel)
        note_tubes(sheet, lattice)
        note_tube_cloth(sheet, self, lattice.wanted, CLOTH)
        sheet.seams.append(Seam("along each tube", sheet["seam_in_tube"].length))
        add_supplies(sheet, lattice)
        add_sample(sheet)
        add_steps(sheet, lattice)
        _draw(sheet, lattice)
        return sheet


def _draw(sheet: Worksheet, lattice: Lattice) -> None:
    drawing = LatticeDrawing(
        lattice.woven,
        lattice.named,
        [each.at for each in lattice.knots],
        sheet["panel_width"],
        sheet["panel_depth"],
    )
    sheet.pictures.extend(
        (
            Picture(
                "finished",
                sentence("The finished panel from its right side; the falling tubes are tinted "
                         "only to tell the two sets apart."),
                finished(drawing),
                finished=True,
            ),
            Picture(
                "placement",
                sentence("Placement sheet: tubes R rise and F fall to the right; the dashed line "
                         "is the finished edge, the ends beyond it are the margins."),
                placement(drawing, room_on_page(drawing), every_name=False),
                sheet=placement(drawing, NAME_ON_SHEET, every_name=True),
            ),
            Picture(
                "spacing",
                sentence("How the tubes are spaced, turned so that one set lies level: at the left "
                         "gap and tube, at the right from tube to tube, below from crossing to "
                         "crossing."),
                detail(_spacing(sheet)),
            ),
            Picture(
                "tube",
                sentence("A tube cut through; its thickness is enlarged."),
                tube_section(Tube(sheet["tube_width"], sheet["seam_in_tube"], centred=False)),
            ),
            Picture(
                "strips",
                sentence("The strips on the piece of cloth, numbered as in the table."),
                bias_block(_bias_block(sheet, lattice)),
            ),
        )
    )  # fmt: skip


def _spacing(sheet: Worksheet) -> Spacing:
    technique = sheet.technique
    assert isinstance(technique, LatticePanel)
    turn = technique.rising_angle + technique.falling_angle
    return Spacing(
        sheet["tube_width"],
        sheet["gap"],
        sheet["pitch"],
        sheet["crossing_spacing"],
        (cosine(turn), sine(turn)),
    )


def _bias_block(sheet: Worksheet, lattice: Lattice) -> BiasBlock:
    width = sheet["strip_width"].length
    every = bands(sheet["across"].length, sheet["along"].length, width)
    used = packed(every, width, lattice.wanted) or ()
    drawn = [(str(strip.band.number), strip.band.outline) for strip in used]
    return BiasBlock(sheet["across"], sheet["along"], sheet["edge_step"], drawn)


TECHNIQUE = LatticePanel
