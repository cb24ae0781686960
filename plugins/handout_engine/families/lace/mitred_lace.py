"""Lace laid round corners with a folded mitre at each: square collars, V necks, hems, panels."""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.lengths import Length
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.lace import add_lace_supplies, add_lace_washing_step
from handout_engine.families.lace.mitring import OUTER, RING, MitredSides
from handout_engine.families.lace.mitring_drawing import (
    CornerSizes,
    MitreWalk,
    mitre_corner,
    mitre_plan,
)
from handout_engine.working.workings import Chart, Picture, Seam, Step
from handout_engine.working.worksheet import Worksheet


class MitredLace(MitredSides):
    """Lace folded into a mitre at every corner of an outline."""

    title = "Mitred lace"
    family = "lace"
    summary = (
        "Lace turned round corners of any angle with a stitched fold at each: how much longer it "
        "is cut, and where each mitre falls."
    )

    @value("scrap for a trial mitre")
    def sample_scrap(self) -> Length:
        """A mitre, and two arms of three widths."""
        return self.corner_takes + 6 * self.lace_width

    @value("trial mitre, inner edge of each arm")
    def sample_side(self) -> Length:
        """What is measured when it is stitched."""
        return 3 * self.lace_width

    def cut(self, sheet: Worksheet) -> None:
        """Where every mitre falls on the flat lace."""
        sheet.seams.append(Seam("mitre, at the outer point", self.mitre_seam))
        rows = tuple(
            (
                f"mitre {mitre.suffix}"
                + (", where the ends meet" if mitre.where_ends_meet else ""),
                sheet[f"fold{mitre.suffix}"],
                mitre.stitch_from,
                mitre.stitch_to,
            )
            for mitre in self.mitres
        )
        headings = ("Mitre", "Fold at", "Inner edge, stitch from", "and from")
        sheet.charts.append(Chart("Mitres along the flat lace, from its first end", headings, rows))

    def sew(self, sheet: Worksheet) -> None:
        """The lace pinned along its outer line, each corner folded, stitched and trimmed."""
        add_lace_supplies(sheet, "a firm pad to pin on", "fine pins")
        sheet.sample.append(
            Step(
                sheet.sentence(
                    "On {sample_scrap} of the lace fold and stitch one mitre at its middle."
                ),
                sheet.sentence(
                    "each arm is {sample_side} along its inner edge, and the corner lies flat and "
                    "turns by {turn}. A corner that cups was stitched too steep, one that flares "
                    "too shallow."
                ),
            )
        )
        add_lace_washing_step(sheet)
        sheet.step("Cut the lace {lace_length} long, at right angles to its headings.")
        sheet.step(
            "Draw the outline on paper, both lines, and pin the lace on it along the outer line, "
            "right side up, from the first end. At each corner push a pin through the outer point; "
            "the folds come where the chart says.",
            "from the first end to the first fold it is {fold1}.",
        )
        sheet.step(
            "At each corner fold the lace on itself, right sides together, so that it turns along "
            "the next side; the fold stands on the outer point and the spare lace lies inside it.",
            "the two inner edges cross at the inner corner.",
        )
        sheet.step(
            "Stitch from the inner corner to the outer point with small stitches, {mitre_seam} "
            "inside the fold there. Try the corner flat before you trim.",
            "the inner edge lost {corner_takes} at the corner.",
        )
        if self.ends == RING:
            sheet.step("Stitch the two ends together in the last mitre alike.")
        sheet.step(
            "Trim the spare lace to a narrow edge and overcast it, or whip it down along a thread "
            "of the lace, so that the mitre shows as one line.",
        )
        sheet.step(
            "Press face down on a towel, lay the lace on the cloth, and whip or pin stitch both "
            "edges.",
            f"the first side is {{side}} on the {self.measured}.",
            side=self.lines[0].line,
        )

    def draw(self, sheet: Worksheet) -> None:
        """The whole round its corners, and one corner before it is folded."""
        outside = self.measured == OUTER
        names = [sheet.sentence("{side}", side=side.line) for side in self.lines]
        inner = [float(side.inner) for side in self.lines]
        walk = MitreWalk(inner, float(self.turn), self.ends == RING)
        plan = Scene(
            sheet.sentence("Lace mitred round its corners"),
            sheet.sentence("{corners} corners, each turning by {turn}; lace {lace_width} wide."),
            mitre_plan(walk, float(self.lace_width), names, outside),
        )
        caption = sheet.sentence(
            f"The finished lace; each side is measured on the {self.measured}, mitres are "
            "dash-dotted."
        )
        sheet.pictures.append(Picture("finished", caption, plan, True, plan))
        width, half = sheet["lace_width"], sheet["half_mitre"]
        corner = Scene(
            sheet.sentence("One corner before it is folded"),
            sheet.sentence(
                "The hatched part goes into the mitre, {corner_takes} along the inner edge."
            ),
            mitre_corner(CornerSizes(width, half, sheet["mitre_seam"], sheet["corner_takes"])),
            tallest=170.0,
        )
        caption = sheet.sentence(
            "One corner on the flat lace, outer edge at the top: fold in the middle, stitch on the "
            "dashed lines."
        )
        sheet.pictures.append(Picture("corner", caption, corner))


TECHNIQUE = MitredLace
