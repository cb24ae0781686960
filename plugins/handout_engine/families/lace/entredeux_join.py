"""Entredeux sewn to flat or to gathered cloth."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, length, optional_length, ratio
from handout_engine.amounts.lengths import Length, NamedLength
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.entredeux_join_drawing import (
    EntredeuxSizes,
    finished_join,
    join_stages,
)
from handout_engine.families.lace.lace import SCRAP, LaceBought, TrimInputs, add_lace_supplies
from handout_engine.shared.gathering import GatheringRows, strip_piece
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.strips import Joined, Strips
from handout_engine.working.workings import Mark, Picture, Seam, Step, marked
from handout_engine.working.worksheet import Worksheet

FLAT, GATHERED = "flat cloth", "gathered cloth"
LACE, FREE = "lace", "left free"
TAPE = Tape(finest=32)


class EntredeuxJoin(TrimInputs, ClothInputs):
    """One side of an entredeux joined to cloth, flat or gathered."""

    title = "Entredeux to cloth"
    family = "lace"
    summary = (
        "Entredeux joined to flat or gathered cloth: what is taken, trimmed and rolled, and how "
        "the cloth is cut."
    )

    edge = length("edge", "Finished length of the join.", "12 in", ("1 in", "10 yd"))
    cloth_side = choice("cloth", "Joined flat, or gathered.", FLAT, GATHERED)
    fullness = ratio(
        "fullness",
        "For gathered cloth: its length for each length of join.",
        "2",
        ("1", "6"),
        basis=PRACTICE,
    )
    panel = length(
        "finished panel",
        "Depth of the cloth from the entredeux to its other edge.",
        "8 in",
        ("1/2 in", "60 in"),
    )
    visible = length("entredeux", "Width of its holes and cords.", "1/8 in", ("1/16 in", "1 in"))
    entredeux_allowance = length(
        "entredeux allowance",
        "Cloth woven beside its cords, on each side.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    trim = length(
        "trimmed to",
        "What is left of both allowances to roll.",
        "1/8 in",
        ("1/16 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    far_allowance = length(
        "other allowance",
        "Hem or seam at the other edge of the cloth.",
        "1/2 in",
        ("0 in", "6 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    other_side = choice(
        "other side",
        "What the other side of the entredeux is joined to.",
        LACE,
        FLAT,
        FREE,
        group=SEWING,
    )
    strip_allowance = length(
        "strip allowance",
        "Where widths of cloth are joined.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    rows_apart = optional_length(
        "gathering rows apart",
        "For gathered cloth: distance between the two rows.",
        "1/4 in, or less where the allowance is narrower",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=published("utah-ruffle"),
    )

    @value("entredeux as bought, both allowances")
    def entredeux_cut_width(self) -> Length:
        """Its allowance is woven on at both sides."""
        return self.visible + 2 * self.entredeux_allowance

    @check
    def there_is_something_to_trim(self) -> None:
        """Refuse to leave more than the allowance is wide."""
        if self.trim > self.entredeux_allowance:
            raise RefusalError(
                f"trim {TAPE.say(self.trim)} is more than the allowance "
                f"{TAPE.say(self.entredeux_allowance)} leaves; use at most "
                f"{TAPE.no_more(self.entredeux_allowance)}",
                "trim",
            )

    @value("cut off both allowances")
    def trimmed_away(self) -> Length:
        """What is left of them is rolled."""
        return self.entredeux_allowance - self.trim

    @value("cloth, cut width")
    def cut_width(self) -> Length:
        """The cloth gives the entredeux as much as that gives itself."""
        return self.panel + self.entredeux_allowance + self.far_allowance

    @value("entredeux, cut length", finishes="edge")
    def entredeux_length(self) -> Length:
        """The join and both its ends."""
        return self.edge + 2 * self.end_allowance

    @value("cloth, cut length", finishes="edge")
    def cloth_length(self) -> Length:
        """As long as the entredeux, or longer by its fullness."""
        if self.cloth_side == GATHERED:
            return self.fullness * self.edge + 2 * self.end_allowance
        return self.edge + 2 * self.end_allowance

    @value("cloth and entredeux together, finished")
    def finished_width(self) -> Length:
        """What is measured when the roll is pressed."""
        return self.panel + self.visible

    @group
    def rows(self) -> tuple[GatheringRows, ...]:
        """The rows on both sides of the ditch, where the cloth is gathered."""
        ditch = self.entredeux_allowance
        return (GatheringRows(self, ditch, ditch, self.rows_apart),) if self.gathered else ()

    @group
    def strips(self) -> Strips:
        """The widths of cloth that are joined to length."""
        joined = Joined(self.strip_allowance)
        return Strips(self.cloth_length, self.cut_width, self.usable_width, joined)

    @group
    def entredeux_bought(self) -> LaceBought:
        """The entredeux."""
        entredeux = NamedLength("entredeux", self.visible)
        return LaceBought(self, self.entredeux_length, entredeux, "entredeux_")

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth."""
        return ClothBought(self, "cloth")

    @property
    def gathered(self) -> bool:
        """Whether the cloth is gathered to the entredeux."""
        return self.cloth_side == GATHERED

    def cut(self, sheet: Worksheet) -> None:
        """The panel, with its gathering rows and the line in the ditch."""
        rows = (line for each in self.rows for line in marked(each.first_row, each.second_row))
        ditch = Mark("line to stitch in the ditch", self.entredeux_allowance)
        sheet.pieces.append(strip_piece(sheet, "panel", "cloth", marks=(*rows, ditch)))
        sheet.seams.append(Seam("entredeux to cloth, each layer", self.entredeux_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """Stitched in the ditch, trimmed, rolled and pressed; then the other side."""
        add_lace_supplies(sheet, "small sharp scissors")
        sheet.sample.append(
            Step(
                sheet.sentence(
                    "Join {scrap} of entredeux to a scrap of the cloth, with the length and width "
                    "of zigzag that you mean to use.",
                    scrap=SCRAP,
                ),
                sheet.sentence(
                    "the needle swings once into every hole and once off the roll, the roll is "
                    "firm, and no raw thread sticks out of it."
                ),
            )
        )
        add_washing_step(sheet)
        sheet.step("Rinse the entredeux, and press it flat with starch; it shrinks more than lace.")
        many = self.strips.strips > 1
        joined = ", {strips} pieces, and join them end to end with {strip_allowance} allowance"
        sheet.step(
            f"Cut the cloth {{cut_width}} wide and {{strip_length}} long{joined if many else ''}. "
            "Cut the entredeux {entredeux_length} long.",
            "the cloth is {cloth_length} long in all." if many else "",
        )
        self._add_stitching(sheet)
        sheet.step(
            "Trim both allowances to {trim}, {trimmed_away} off.",
            "what is left is {trim} wide everywhere.",
        )
        sheet.step(
            "Roll and whip what is left: a zigzag that swings from just inside the cord to just "
            "off the raw edge rolls it by itself.",
        )
        sheet.step(
            "Press the roll toward the cloth, from the right side with the tip of the iron.",
            "from the far cord of the entredeux to the line of the other edge it is "
            "{finished_width}.",
        )
        if self.other_side == LACE:
            sheet.step(
                "Trim the other allowance of the entredeux off close to its cord, lay lace and "
                "entredeux side by side, and zigzag into each hole and over the heading of the "
                "lace."
            )
        elif self.other_side == FLAT:
            sheet.step("Join the other side of the entredeux to flat cloth alike.")

    def _add_stitching(self, sheet: Worksheet) -> None:
        if self.gathered:
            sheet.step(
                "Run two gathering rows, {first_row} and {second_row} from the raw edge. Draw the "
                "cloth up to the entredeux, quarter mark to quarter mark, and spread the gathers.",
                "between its end allowances the gathered edge is {edge}.",
            )
        upright = ", keeping the gathers upright under the foot" if self.gathered else ""
        sheet.step(
            "Lay entredeux and cloth right sides together, raw edges level, the entredeux on top. "
            "With a short straight stitch sew in the ditch, close beside the cord, "
            f"{{entredeux_allowance}} from the edges{upright}.",
            "seen from the entredeux, the stitching touches the cord all along.",
        )
        if self.gathered:
            sheet.step(
                "Sew a second time beside the first, in the allowance, to flatten the gathers."
            )

    def draw(self, sheet: Worksheet) -> None:
        """A part of the join, its stages at the cut end, and how gathers are shared out."""
        edge, visible = sheet["edge"], sheet["visible"]
        finished = Scene(
            sheet.sentence("The finished join"),
            sheet.sentence("Entredeux {visible} wide below {cloth_side}."),
            finished_join(edge, visible, sheet["panel"], self.gathered, self.other_side),
            tallest=200.0,
        )
        caption = sheet.sentence("A part of the finished join, right side up.")
        sheet.pictures.append(Picture("finished", caption, finished, finished=True))
        sizes = EntredeuxSizes(visible, sheet["entredeux_allowance"], sheet["trim"])
        for number, (words, shapes) in enumerate(join_stages(sizes), 1):
            stage, said = sheet.sentence(f"Stage {number}"), sheet.sentence(words)
            caption = sheet.sentence(f"{number}. {words} Seen at the cut end; thickness enlarged.")
            scene = Scene(stage, said, shapes, tallest=120.0)
            sheet.pictures.append(Picture(f"stage-{number}", caption, scene))
        if self.gathered:
            caption = sheet.sentence(
                "Above the cloth, below the entredeux it is drawn up to, at their true ratio."
            )
            scene = Scene(
                sheet.sentence("Cloth and entredeux"),
                sheet.sentence("{cloth_length} is drawn up to {edge}."),
                quarters(edge, sheet["cloth_length"]),
            )
            sheet.pictures.append(Picture("quarters", caption, scene))


TECHNIQUE = EntredeuxJoin
