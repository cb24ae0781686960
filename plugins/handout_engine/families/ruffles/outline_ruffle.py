"""A ruffle round a curved outline: a collar, a pillow, a round neck, a scalloped inset.

Round a convex outline the hem has a longer way than the edge, so that the ruffle is less full at
its hem than at its seam; round a hollow outline it is fuller.
"""

from __future__ import annotations

from handout_engine.amounts.angles import arc
from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import angle, choice, length, ratio
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, decimal
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_least, less_than, ways
from handout_engine.drawing.scene import Scene
from handout_engine.families.ruffles.edge_seams import add_edge_seam_steps
from handout_engine.families.ruffles.outline_ruffle_drawing import round_outline
from handout_engine.families.ruffles.seamed_ruffle import SingleRuffle
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import quarters_picture, row_rules, strip_picture
from handout_engine.shared.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.shared.hems import hem_step
from handout_engine.working.cautions import NOTHING_LOOSE_IN_THE_COT
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet

CONVEX, HOLLOW = "convex", "hollow"


class OutlineRuffle(SingleRuffle):
    """A gathered ruffle sewn round a curve, with its fullness at seam and hem."""

    title = "Ruffle round an outline"
    family = "ruffles"
    summary = "A gathered ruffle round a collar, pillow or neck, full enough at its hem as well."

    depth = length(
        "finished depth",
        "From the joining seam to the finished outer edge.",
        "1 1/2 in",
        ("1/4 in", "20 in"),
    )
    turning = angle(
        "turning of the edge",
        "By how much the edge turns in all, corners included: 360 for a closed outline, 180 "
        "for a half circle.",
        "360 deg",
        ("0", "720"),
    )
    curve = choice(
        "curve",
        "Convex when the ruffle lies outside the curve, hollow when inside it.",
        CONVEX,
        HOLLOW,
    )
    least_hem_fullness = ratio(
        "least fullness at the hem",
        "Below this the hem looks starved, and the handout says so.",
        "1.2",
        ("1", "3"),
        basis=PRACTICE,
    )

    @value("longer way of the hem")
    def hem_gain(self) -> Length:
        """The arcs of all that the edge turns, as far out as the ruffle is deep."""
        return self.depth * arc(self.turning)

    @value("line along the hem")
    def hem_line(self) -> Length:
        """The hem runs outside the edge, or inside a hollow one."""
        if self.curve == CONVEX:
            return self.edge + self.hem_gain
        return self.edge - self.hem_gain

    @check
    def a_hollow_is_round_enough(self) -> None:
        """Refuse a ruffle that reaches past the middle of its hollow."""
        if self.hem_line <= ZERO:
            deepest = self.edge / arc(self.turning)
            raise RefusalError(
                f"depth {TAPE.say(self.depth)} is deeper than the hollow is round; use "
                f"{ways(less_than(self, 'depth', deepest), 'a longer edge that turns less')}",
                "depth",
            )

    @value("fullness at the hem")
    def hem_fullness(self) -> Ratio:
        """The same strip, spread over the line of its hem."""
        self.a_hollow_is_round_enough()
        return self.fullness * self.edge / self.hem_line

    @check
    def the_strip_reaches_round_the_hem(self) -> None:
        """Refuse a hem that would be drawn tight."""
        if self.hem_fullness < 1:
            longer = self.hem_line / self.edge
            raise RefusalError(
                f"fullness {decimal(self.fullness)} does not reach round the hem, which is "
                f"{decimal(longer)} times the edge; use "
                f"{ways(at_least(self, 'fullness', longer), 'a shallower ruffle')}",
                "fullness",
            )

    @value("fullness that leaves enough at the hem")
    def fullness_needed(self) -> Ratio:
        """What must be gathered at the seam for the least that looks well at the hem."""
        return self.least_hem_fullness * self.hem_line / self.edge

    def sew(self, sheet: Worksheet) -> None:
        """The fullness decided, then as any gathered ruffle, its gathers pushed to the curves."""
        add_gathering_supplies(sheet)
        sheet.cautions.append(NOTHING_LOOSE_IN_THE_COT)
        add_sample(sheet, sheet["cut_width"], "a strip")
        add_washing_step(sheet)
        if self.fullness < self.fullness_needed:
            sheet.step(
                "Decide first: at the hem only {hem_fullness} lengths of cloth are left for each "
                "length of line. For {least_hem_fullness} there, work with a fullness of "
                "{fullness_needed}."
            )
        sheet.step("Cut the strips {cut_width} wide and {strip_length} long, across the cloth.")
        add_joining_steps(sheet, "", "ruffle")
        sheet.step(hem_step(self.hem), "from raw edge to finished edge it is {fold_line} deep.")
        add_gathering_steps(sheet, "both layers" if self.folded else "the strip")
        sheet.step(
            "Before pinning, push a little more of the gathers toward each corner and each tight "
            "curve, where the hem has farthest to go. Clip or notch the allowance of the curve."
        )
        add_edge_seam_steps(
            sheet,
            "laid flat, the hem measures {hem_line} along its line, and no part of it is drawn "
            "tight.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The ruffle round its curve, its strip, and its quarters."""
        edge, depth, hem_line = sheet["edge"], sheet["depth"], sheet["hem_line"]
        layer = GatheredLayer(depth, self.fullness.number)
        turning, convex = float(self.turning), self.curve == CONVEX
        around = Scene(
            sentence("Ruffle round its outline"),
            sheet.sentence(
                "An edge of {edge} bent by {turning}, with a ruffle {depth} deep; the hem line is "
                "{hem_line}, the fullness there {hem_fullness}."
            ),
            round_outline(edge, layer, hem_line, turning, convex),
        )
        caption = sheet.sentence(
            "The edge as an even curve of its own length and turning; fullness {fullness} at the "
            "seam is {hem_fullness} at the hem."
        )
        rows = "One strip, with the gathering rows."
        sheet.pictures.extend(
            (
                Picture("finished", caption, around, True),
                strip_picture(sheet, "ruffle strip", row_rules(sheet), rows),
                quarters_picture(sheet),
            )
        )


TECHNIQUE = OutlineRuffle
