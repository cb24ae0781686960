"""The hem of a straight lower edge: single, double, rolled or faced, with growth let into it."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import less_than, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth
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
    TAPE,
    StraightHemInputs,
    depths_chart,
    note_hem_made,
    note_letting_down,
)
from handout_engine.families.edges.hem_steps import add_hem_steps, add_sample
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import LONG_HEM, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Grain, Mark, Picture, Piece, Seam
from handout_engine.working.worksheet import Worksheet


class Hem(StraightHemInputs, ClothInputs, Technique):
    """A panel with a hem along its straight lower edge."""

    title: ClassVar[str] = "Hems"
    family: ClassVar[str] = "edges"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """Allowance, cut size, folds, what can be let down, steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        allowance = note_hem_made(sheet, self)
        _check_length(sheet, self)
        grows = note_letting_down(sheet, self, allowance)
        rules = _note_cut(sheet, self, allowance)
        _add_pieces(sheet, self, rules)
        sheet.charts.append(depths_chart())
        if grows:
            sheet.charts.append(_growth_chart(sheet, self))
        sheet.seams.append(Seam("side seams", self.side_allowance))
        sheet.have("fine thread to match", "a fine needle for the cloth", "a hem gauge")
        sheet.cautions.extend((PINS_AND_IRON, LONG_HEM))
        add_sample(sheet)
        add_washing_step(sheet)
        add_hem_steps(sheet, grows)
        _draw(sheet, self, rules)
        return sheet


def _check_length(sheet: Worksheet, hem: Hem) -> None:
    field, deep = "hem_depth", sheet["hem_made"].length if hem.hem != ROLLED else hem.roll
    if hem.hem == ROLLED:
        field = "roll"
    if deep >= hem.finished_length:
        most = hem.finished_length - (deep - sheet[field].length)
        raise RefusalError(
            f"a hem of {TAPE.say(deep)} is as deep as the panel is long, "
            f"{TAPE.say(hem.finished_length)}; use "
            f"{ways(less_than(hem, field, most), 'a longer panel')}",
            field,
        )


def _note_cut(sheet: Worksheet, hem: Hem, allowance: Value) -> list[Rule]:
    """Note cut size and folds, the latter from the upper raw edge."""
    sheet.note("panel_cut_length", "panel, cut from top to bottom",
               hem.top_allowance + hem.finished_length + allowance.length,
               "{top_allowance} + {finished_length} + {hem_allowance}")  # fmt: skip
    sheet.note("panel_cut_width", "panel, cut from side to side",
               hem.width + 2 * hem.side_allowance, "{width} + 2 × {side_allowance}",
               saying=Saying.UP)  # fmt: skip
    edge = sheet.note("edge_line", "finished edge, from the upper raw edge",
                      hem.top_allowance + hem.finished_length,
                      "{top_allowance} + {finished_length}")  # fmt: skip
    rules = [Rule(Line.STITCH if hem.hem == FACED else Line.FOLD, edge)]
    if hem.hem == DOUBLE:
        first = sheet.note("turn_line", "turned edge, from the upper raw edge",
                           sheet["panel_cut_length"].length - hem.turn,
                           "{panel_cut_length} - {turn}")  # fmt: skip
        rules.append(Rule(Line.FOLD, first))
    return rules


def _add_pieces(sheet: Worksheet, hem: Hem, rules: list[Rule]) -> None:
    marks = tuple(Mark(rule.distance.label, rule.distance.length) for rule in rules)
    sheet.pieces.append(
        Piece("panel", "cloth", hem.make.number, sheet["panel_cut_length"], sheet["panel_cut_width"],
              Grain.CROSS, marks)
    )  # fmt: skip
    if hem.hem == FACED:
        width = sheet.note("facing_cut_width", "facing, cut width",
                           hem.facing_seam + sheet["hem_made"].length + hem.turn,
                           "{facing_seam} + {hem_made} + {turn}")  # fmt: skip
        seam = Mark("seam line", hem.facing_seam)
        sheet.pieces.append(
            Piece("facing", "cloth", hem.make.number, width, sheet["panel_cut_width"], Grain.CROSS,
                  (seam,))
        )  # fmt: skip
    note_cloth(sheet, "cloth", hem.cloth())


def _growth_chart(sheet: Worksheet, hem: Hem) -> Chart:
    most = sheet["most_let_down"].length
    rows: list[tuple[str, Length, Length]] = [
        ("now", hem.finished_length, sheet["hem_made"].length)
    ]
    if hem.growth:
        rows.append(("growth let down", hem.finished_length + hem.growth, hem.hem_depth))
    rows.append(("all let down", hem.finished_length + most, hem.least_turn))
    return Chart("Length as the hem is let down", ("Hem", "Length", "Hem left"), tuple(rows))


def _section(sheet: Worksheet, hem: Hem) -> tuple[Shape, ...]:
    if hem.hem == ROLLED:
        return rolled_hem(sheet["roll"])
    if hem.hem == FACED:
        return faced_hem(sheet["hem_made"], sheet["turn"], sheet["facing_seam"])
    return turned_hem(sheet["hem_made"], sheet["turn"] if hem.hem == DOUBLE else None)


def _draw(sheet: Worksheet, hem: Hem, rules: list[Rule]) -> None:
    depth = None if hem.hem == ROLLED else sheet["hem_made"]
    finished = Scene(
        sentence("The hemmed panel"),
        sentence("{width} wide and {long} long.", width=sheet["width"],
                 long=sheet["finished_length"]),
        hemmed_panel(sheet["width"], sheet["finished_length"], depth),
    )  # fmt: skip
    section = Scene(
        sentence(f"A {hem.hem} hem, cut through"),
        sentence("It takes {allowance} of the panel.", allowance=sheet["hem_allowance"]),
        _section(sheet, hem),
        tallest=200.0,
    )
    flat = FlatStrip(sentence("panel"), sheet["panel_cut_length"], sheet["panel_cut_width"], rules)
    line = "hem stitching dashed" if hem.hem != ROLLED else "its edge rolled"
    roll = " At the right the same edge before it is rolled." if hem.hem == ROLLED else ""
    sheet.pictures.extend(
        (
            Picture("finished", sentence(f"The finished panel from its right side, {line}."),
                    finished, True),
            Picture("section", sentence("The hem cut through, thickness enlarged; the right side "
                                        "of the garment is at the left." + roll), section),
            strips_picture([flat], "The flat panel, with the lines to mark."),
        )
    )  # fmt: skip


TECHNIQUE = Hem
