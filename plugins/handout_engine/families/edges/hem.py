"""The hem of a straight lower edge: single, double, rolled or faced, with growth let into it."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import less_than, ways
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Line, Scene, Shape
from handout_engine.families.edges.hem_drawing import (
    faced_hem,
    hemmed_panel,
    rolled_hem,
    turned_hem,
)
from handout_engine.families.edges.hem_measures import (
    DOUBLE,
    FACED,
    ROLLED,
    StraightHemInputs,
    depths_chart,
)
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import LONG_HEM, PINS_AND_IRON
from handout_engine.working.workings import Cell, Chart, Grain, Mark, Piece, Seam
from handout_engine.working.worksheet import Worksheet


class Hem(StraightHemInputs, ClothInputs):
    """A panel with a hem along its straight lower edge."""

    title = "Hems"
    family = "edges"
    summary = (
        "Double, single, rolled or faced: what a hem takes, where it folds, how deep it is usually "
        "made, and how much of it can be let down."
    )

    finished_length = length(
        "finished length", "From the upper seam to the finished edge.", "18 in", ("1 in", "60 in")
    )
    width = length(
        "width of the panel",
        "Finished width between the side seams of one panel.",
        "20 in",
        ("2 in", "5 yd"),
    )
    make = count("how many", "Panels, such as a front and a back.", 2, 20)
    side_allowance = length(
        "side allowance",
        "For each side seam.",
        "1/2 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    top_allowance = length(
        "top allowance",
        "For the upper seam.",
        "1/2 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @check
    def some_of_the_panel_is_left(self) -> None:
        """Refuse a hem as deep as the panel is long."""
        field, deep = ("roll", self.roll) if self.hem_made is None else ("hem_depth", self.hem_made)
        if deep >= self.finished_length:
            most = self.finished_length - (deep - self.inputs[field].length)
            raise RefusalError(
                f"a hem of {TAPE.say(deep)} is as deep as the panel is long, "
                f"{TAPE.say(self.finished_length)}; use "
                f"{ways(less_than(self, field, most), 'a longer panel')}",
                field,
            )

    @value("panel, cut from top to bottom")
    def panel_cut_length(self) -> Length:
        """What shows, and what seam and hem take."""
        return self.top_allowance + self.finished_length + self.hem_allowance

    @value("panel, cut from side to side", saying=Saying.UP)
    def panel_cut_width(self) -> Length:
        """A seam at each side."""
        return self.width + 2 * self.side_allowance

    @value("finished edge, from the upper raw edge")
    def edge_line(self) -> Length:
        """Where the panel is folded, or its facing sewn on."""
        return self.top_allowance + self.finished_length

    @value("turned edge, from the upper raw edge")
    def turn_line(self) -> Length | None:
        """The first fold of a double hem."""
        return None if self.hem != DOUBLE else self.panel_cut_length - self.turn

    @value("facing, cut width")
    def facing_cut_width(self) -> Length | None:
        """Its seam, what it covers, and its upper edge turned under."""
        if self.hem_made is None or self.hem != FACED:
            return None
        return self.facing_seam + self.hem_made + self.turn

    @value("length with its growth let down")
    def length_grown(self) -> Length | None:
        """What the child grows into first."""
        return self.finished_length + self.growth if self.growth and self.most_let_down else None

    @value("length with all let down")
    def length_let_down(self) -> Length | None:
        """The longest that it can be made."""
        return self.finished_length + self.most_let_down if self.most_let_down else None

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of panels and facings."""
        return ClothBought(self, "cloth")

    @property
    def ruled(self) -> list[tuple[Line, str]]:
        """The lines that are marked on the flat panel, by kind and name."""
        edge = (Line.STITCH if self.hem == FACED else Line.FOLD, "edge_line")
        return [edge, (Line.FOLD, "turn_line")] if self.hem == DOUBLE else [edge]

    def cut(self, sheet: Worksheet) -> None:
        """The panels and their facings; how deep hems are, and how far this one can be let down."""
        number, wide = self.make.number, sheet["panel_cut_width"]
        lines = [sheet[name] for _, name in self.ruled]
        marks = tuple(Mark(line.label, line.length) for line in lines)
        long = sheet["panel_cut_length"]
        sheet.pieces.append(Piece("panel", "cloth", number, long, wide, Grain.CROSS, marks))
        if self.hem == FACED:
            deep, seam = sheet["facing_cut_width"], (Mark("seam line", self.facing_seam),)
            sheet.pieces.append(Piece("facing", "cloth", number, deep, wide, Grain.CROSS, seam))
        sheet.charts.append(depths_chart())
        if self.most_let_down:
            sheet.charts.append(self._growth_chart())
        sheet.seams.append(Seam("side seams", self.side_allowance))

    def _growth_chart(self) -> Chart:
        rows: list[tuple[Cell, ...]] = [("now", self.finished_length, self.hem_made)]
        if self.growth:
            rows.append(("growth let down", self.length_grown, self.hem_depth))
        rows.append(("all let down", self.length_let_down, self.least_turn))
        return Chart("Length as the hem is let down", ("Hem", "Length", "Hem left"), tuple(rows))

    def sew(self, sheet: Worksheet) -> None:
        """From a scrap to the pressed hem, and how it is let down later."""
        sheet.have("fine thread to match", "a fine needle for the cloth", "a hem gauge")
        sheet.cautions.extend((PINS_AND_IRON, LONG_HEM))
        rolled = self.hem == ROLLED
        deep = "roll" if rolled else "hem_made"
        sheet.trial(
            "On a scrap of the same cloth, as long as your hand, sew this hem "
            f"{{{deep}}} deep, wash it and press it.",
            "the roll is even and no thicker than a cord. If it will not roll, trim less or more."
            if rolled
            else "no ridge shows on the right side, and the scrap hangs without stiffness. "
            "If a ridge shows, overcast the raw edge instead of turning it under.",
        )
        add_washing_step(sheet)
        sheet.step(
            f"Cut {counted(sheet, 'panel')} "
            "{panel_cut_length} from top to bottom and {panel_cut_width} from side to side. Join "
            "the side seams, and trim their allowances to half within the hem.",
            "the lower edge is level: from the upper raw edge it is {panel_cut_length} everywhere.",
        )
        if rolled:
            _add_rolled(sheet)
        elif self.hem == FACED:
            _add_faced(sheet)
        else:
            _add_turned(sheet, self.hem == DOUBLE)
        if self.most_let_down:
            sheet.step(
                "Later, to let it down: draw the stitching out, wash and press the crease away, "
                "and hem again. All of it adds {most_let_down}, with a double hem of {least_turn} "
                "left."
            )

    def draw(self, sheet: Worksheet) -> None:
        """The panel, its hem cut through, and the flat panel with its lines."""
        rolled = self.hem == ROLLED
        finished = Scene(
            sentence("The hemmed panel"),
            sheet.sentence("{width} wide and {finished_length} long."),
            hemmed_panel(
                sheet["width"], sheet["finished_length"], None if rolled else sheet["hem_made"]
            ),
        )
        line = "its edge rolled" if rolled else "hem stitching dashed"
        caption = f"The finished panel from its right side, {line}."
        sheet.show("finished", caption, finished, finished=True)
        section = Scene(
            sentence(f"A {self.hem} hem, cut through"),
            sheet.sentence("It takes {hem_allowance} of the panel."),
            self._section(sheet),
            tallest=200.0,
        )
        caption = (
            "The hem cut through, thickness enlarged; the right side of the garment is at the left."
        )
        if rolled:
            caption += " At the right the same edge before it is rolled."
        sheet.show("section", caption, section)
        rules = [Rule(kind, sheet[name]) for kind, name in self.ruled]
        size = sheet["panel_cut_length"], sheet["panel_cut_width"]
        flat = FlatStrip(sentence("panel"), *size, rules)
        sheet.pictures.append(strips_picture([flat], "The flat panel, with the lines to mark."))

    def _section(self, sheet: Worksheet) -> tuple[Shape, ...]:
        if self.hem == ROLLED:
            return rolled_hem(sheet["roll"])
        if self.hem == FACED:
            return faced_hem(sheet["hem_made"], sheet["turn"], sheet["facing_seam"])
        return turned_hem(sheet["hem_made"], sheet["turn"] if self.hem == DOUBLE else None)


def _add_turned(sheet: Worksheet, double: bool) -> None:
    if double:
        sheet.step("Turn {turn} under along the lower edge, to the wrong side, and press.")
    else:
        sheet.step("Overcast the lower edge without stretching it.")
    sheet.step(
        "Turn up {hem_made} with a gauge, press the fold lightly, and baste near the fold and near "
        "the upper edge of the hem.",
        "from the upper raw edge to the fold it is {edge_line}.",
    )
    sheet.step(
        "Slip stitch the hem, taking one thread of the garment at a time, or stitch it by machine "
        "close to its upper edge. Draw the basting and press.",
        "from the upper seam line to the finished edge it is {finished_length}.",
    )


def _add_rolled(sheet: Worksheet) -> None:
    sheet.step(
        "Trim the edge clean on the thread. Run a short machine stitch {stitch_in_roll} from it, "
        "or leave it, and roll the edge between moistened finger and thumb toward the wrong side."
    )
    sheet.step(
        "Whip over the roll with small slanting stitches, the needle under it and never through "
        "it, a finger's width at a time.",
        "the roll has taken {roll}: from the upper seam line to its edge it is {finished_length}.",
    )


def _add_faced(sheet: Worksheet) -> None:
    sheet.step(
        "Cut {make} facings {facing_cut_width} wide, join their ends like the side seams, and "
        "turn {turn} under along the upper edge."
    )
    sheet.step(
        "Sew facing and lower edge right sides together, {facing_seam} from the raw edges. Trim "
        "the facing's allowance to half, press both toward the facing, and stitch them to it close "
        "to the seam.",
        "from the upper raw edge to the seam it is {edge_line}.",
    )
    sheet.step(
        "Turn the facing up inside, the seam a thread's width beyond the edge, press, and slip "
        "stitch its upper edge.",
        "the facing is {hem_made} deep, and the panel {finished_length} from its upper seam line.",
    )


TECHNIQUE = Hem
