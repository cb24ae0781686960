"""Lace laid round corners with a folded mitre at each: square collars, V necks, hems, panels."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.lace import (
    add_lace_supplies,
    add_lace_washing_step,
    note_lace_to_buy,
)
from handout_engine.families.lace.mitring import (
    INNER,
    OUTER,
    RING,
    MitreInputs,
    check_shape,
    fold_chart,
    note_corner,
    note_mitred_length,
    note_sides,
)
from handout_engine.families.lace.mitring_drawing import (
    CornerSizes,
    MitreWalk,
    mitre_corner,
    mitre_plan,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Seam, Step
from handout_engine.working.worksheet import Worksheet


class MitredLace(MitreInputs, Technique):
    """Lace folded into a mitre at every corner of an outline."""

    title: ClassVar[str] = "Mitred lace"
    family: ClassVar[str] = "lace"
    summary: ClassVar[str] = (
        "Lace turned round corners of any angle with a stitched fold at each: how much longer it "
        "is cut, and where each mitre falls."
    )

    def whole(self) -> Worksheet:
        """Both lines of every side, what each corner takes, and the length; raises RefusalError."""
        sheet = Worksheet(technique=self)
        check_shape(self)
        corners, half = note_corner(sheet, self)
        outer = note_sides(sheet, self, half)
        note_mitred_length(sheet, self, corners)
        note_lace_to_buy(sheet, sheet["lace_length"])
        sheet.seams.append(Seam("mitre, at the outer point", self.mitre_seam))
        add_lace_supplies(sheet, "a firm pad to pin on", "fine pins")
        _add_sample(sheet)
        sheet.charts.append(fold_chart(sheet, self, outer, corners.whole))
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet


def _add_sample(sheet: Worksheet) -> None:
    scrap = sheet.note(
        "sample_scrap", "scrap for a trial mitre",
        sheet["corner_takes"].length + 6 * sheet["lace_width"].length,
        "{corner_takes} + 6 × {lace_width}",
    )  # fmt: skip
    side = sheet.note("sample_side", "trial mitre, inner edge of each arm",
                      3 * sheet["lace_width"].length, "3 × {lace_width}")  # fmt: skip
    sheet.sample.append(
        Step(
            sentence(
                "On {scrap} of the lace fold and stitch one mitre at its middle.", scrap=scrap
            ),
            sentence(
                "each arm is {side} along its inner edge, and the corner lies flat and turns by "
                "{turn}. A corner that cups was stitched too steep, one that flares too shallow.",
                side=side,
                turn=sheet["turn"],
            ),
        )
    )


def _add_steps(sheet: Worksheet, lace: MitredLace) -> None:
    add_lace_washing_step(sheet)
    sheet.step("Cut the lace {lace_length} long, at right angles to its headings.")
    sheet.step(
        "Draw the outline on paper, both lines, and pin the lace on it along the outer line, right "
        "side up, from the first end. At each corner push a pin through the outer point; the folds "
        "come where the chart says.",
        "from the first end to the first fold it is {fold1}.",
    )
    sheet.step(
        "At each corner fold the lace on itself, right sides together, so that it turns along the "
        "next side; the fold stands on the outer point and the spare lace lies inside it.",
        "the two inner edges cross at the inner corner.",
    )
    sheet.step(
        "Stitch from the inner corner to the outer point with small stitches, {mitre_seam} inside "
        "the fold there. Try the corner flat before you trim.",
        "the inner edge lost {corner_takes} at the corner.",
    )
    if lace.ends == RING:
        sheet.step("Stitch the two ends together in the last mitre alike.")
    sheet.step(
        "Trim the spare lace to a narrow edge and overcast it, or whip it down along a thread of "
        "the lace, so that the mitre shows as one line.",
    )
    first = "outer1" if lace.measured == OUTER else "inner1"
    sheet.step(
        "Press face down on a towel, lay the lace on the cloth, and whip or pin stitch both edges.",
        f"the first side is {{side}} on the {lace.measured}.",
        side=sheet[first],
    )


def _draw(sheet: Worksheet, lace: MitredLace) -> None:
    inner = [sheet[f"inner{number}"] for number in range(1, len(lace.sides) + 1)]
    line = "inner" if lace.measured == INNER else "outer"
    names = [sentence("{side}", side=sheet[f"{line}{number}"])
             for number in range(1, len(lace.sides) + 1)]  # fmt: skip
    walk = MitreWalk([side.mm for side in inner], float(lace.turn), lace.ends == RING)
    plan = Scene(
        sentence("Lace mitred round its corners"),
        sentence("{corners} corners, each turning by {turn}; lace {width} wide.",
                 corners=sheet["corners"], turn=sheet["turn"], width=sheet["lace_width"]),
        mitre_plan(walk, float(lace.lace_width), names, outside=lace.measured == OUTER),
    )  # fmt: skip
    sizes = CornerSizes(
        sheet["lace_width"], sheet["half_mitre"], sheet["mitre_seam"], sheet["corner_takes"]
    )
    corner = Scene(
        sentence("One corner before it is folded"),
        sentence("The hatched part goes into the mitre, {takes} along the inner edge.",
                 takes=sheet["corner_takes"]),
        mitre_corner(sizes),
        tallest=170.0,
    )  # fmt: skip
    sheet.pictures.append(
        Picture("finished", sentence(f"The finished lace; each side is measured on the "
                                     f"{lace.measured}, mitres are dash-dotted."), plan, True, plan)
    )  # fmt: skip
    sheet.pictures.append(
        Picture("corner", sentence("One corner on the flat lace, outer edge at the top: fold in "
                                   "the middle, stitch on the dashed lines."), corner)
    )  # fmt: skip


TECHNIQUE = MitredLace
