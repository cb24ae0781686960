"""Tucks above a hem that are let out when the child has grown.

Letting one out lengthens the garment by twice its depth, and what was folded away has not faded:
so it is planned before cutting.
"""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying
from handout_engine.amounts.sources import GIVEN, PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import more_than, ways
from handout_engine.cloth.cloth import note_cloth
from handout_engine.drawing.scene import Line
from handout_engine.families.tucks.growth_tuck_drawing import (
    GrowthTucks,
    growth_scene,
    lower_end_scene,
)
from handout_engine.families.tucks.tucking import TAPE, PanelInputs, add_supplies
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step, counted
from handout_engine.shared.hems import (
    DOUBLE,
    FINISHED,
    ROLLED,
    SINGLE,
    HemInputs,
    hem_step,
    note_hem,
)
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import LONG_HEM
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Grain, Mark, Picture, Piece, Seam, Step
from handout_engine.working.worksheet import Worksheet

OUTSIDE, INSIDE = "on the right side", "on the wrong side"
MOST = 6


class GrowthTuck(HemInputs, PanelInputs, Technique):
    """One or several tucks above a hem, to be let out."""

    title: ClassVar[str] = "Growth tuck"
    family: ClassVar[str] = "tucks"
    summary: ClassVar[str] = (
        "Tucks above a hem that are let out as the child grows, each lengthening the garment by "
        "twice its depth."
    )

    panel_length = length(
        "length now",
        "Finished length from the upper seam to the hem, tucks sewn.",
        "18 in",
        ("2 in", "60 in"),
    )
    width = length(
        "width of the panel",
        "Finished width between the side seams of one panel.",
        "20 in",
        ("2 in", "5 yd"),
    )
    tucks = count("tucks", "How many tucks, let out one after another.", 2, MOST)
    depth = length(
        "depth of a tuck",
        "Half of what letting it out adds.",
        "1/2 in",
        ("1/8 in", "4 in"),
        basis=PRACTICE,
    )
    above_hem = optional_length(
        "height above the hem",
        "From the finished lower edge to the lowest stitching.",
        "1/2 in above a tuck that just clears the hem's stitching",
        ("1/4 in", "50 in"),
        in_use="tuck_height",
    )
    spacing = optional_length(
        "spacing",
        "From one tuck's stitching to the next one's, finished.",
        "one and a half times the depth",
        ("1/8 in", "12 in"),
        in_use="tuck_spacing",
    )
    hem = choice(
        "hem",
        "Double turned, single turned, rolled, or finished already.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FINISHED,
        group=SEWING,
    )
    placed = choice(
        "tucks lie",
        "On the right side as trimming, or hidden on the wrong side.",
        OUTSIDE,
        INSIDE,
        group=SEWING,
    )

    def whole(self) -> Worksheet:
        """Cut length, lines, lengths as each tuck is let out; raises RefusalError."""
        sheet = Worksheet(technique=self)
        hem = note_hem(sheet, self, sheet["panel_length"])
        spacing, above = _note_places(sheet, self)
        _note_cut(sheet, self, hem)
        rules = _note_lines(sheet, self, hem, above, spacing)
        marks = tuple(Mark(rule.distance.label, rule.distance.length) for rule in rules)
        sheet.pieces.append(
            Piece("panel", "cloth", self.make.number, sheet["panel_cut_length"],
                  sheet["panel_cut_width"], Grain.CROSS, marks)
        )  # fmt: skip
        sheet.seams.append(Seam("sides of the panel", self.side_allowance))
        sheet.seams.append(Seam("upper edge", self.end_allowance))
        _add_growth_chart(sheet, self)
        note_cloth(sheet, "cloth", self.cloth())
        add_supplies(sheet)
        sheet.cautions.append(LONG_HEM)
        _add_sample(sheet)
        _add_steps(sheet, self, above)
        _draw(sheet, self, rules, spacing, above)
        return sheet


def _note_places(sheet: Worksheet, tuck: GrowthTuck) -> tuple[Value, Value]:
    """Note spacing and height of the lowest tuck; raises RefusalError where they lie too near."""
    if tuck.spacing is None:
        spacing = sheet.note("tuck_spacing", "from stitching to stitching", tuck.depth * 3 / 2,
                             "{depth} × 3 / 2", basis=published("home-school-sewing"))  # fmt: skip
    else:
        spacing = sheet.note("tuck_spacing", "from stitching to stitching", tuck.spacing, "",
                             basis=GIVEN)  # fmt: skip
    if spacing.length < tuck.depth:
        raise RefusalError(
            f"spacing {TAPE.say(spacing.length)} is less than the depth {TAPE.say(tuck.depth)}, so "
            f"each tuck would lie over the next; use at least {TAPE.no_less(tuck.depth)}",
            "spacing",
        )
    least = sheet.note("least_height", "least height above the hem, clear of its stitching",
                       sheet["hem_turn"].length + tuck.depth, "{hem_turn} + {depth}")  # fmt: skip
    if tuck.above_hem is None:
        above = sheet.note("tuck_height", "lowest stitching, above the finished edge",
                           2 * sheet["hem_turn"].length + tuck.depth * 3 / 2,
                           "2 × {hem_turn} + {depth} × 3 / 2", basis=PRACTICE)  # fmt: skip
    else:
        above = sheet.note("tuck_height", "lowest stitching, above the finished edge",
                           tuck.above_hem, "", basis=GIVEN)  # fmt: skip
    if above.length < least.length:
        raise RefusalError(
            f"above_hem {TAPE.say(above.length)} lays the tuck over the stitching of the hem, or "
            f"below its edge; use at least {TAPE.no_less(least.length)}",
            "above_hem",
        )
    highest = above.length + spacing.length * (tuck.tucks - 1)
    if highest >= tuck.panel_length:
        longer = more_than(tuck, "panel_length", highest, "a panel_length of more than {}")
        raise RefusalError(
            f"the highest tuck would stand {TAPE.say(highest)} above the hem of a panel only "
            f"{TAPE.say(tuck.panel_length)} long; use {ways('fewer or shallower tucks', longer)}",
            "tucks",
        )
    return spacing, above


def _note_cut(sheet: Worksheet, tuck: GrowthTuck, hem: Value) -> None:
    adds = sheet.note("adds", "what letting out one tuck adds", 2 * tuck.depth, "2 × {depth}")
    sheet.note("take_up", "cloth taken by the tucks", adds.length * tuck.tucks,
               "{adds} × {tucks}", basis=published("baldt-1916"))  # fmt: skip
    sheet.note("grown_length", "finished length when all are let out",
               tuck.panel_length + 2 * tuck.depth * tuck.tucks,
               "{panel_length} + {take_up}")  # fmt: skip
    sheet.note("panel_cut_length", "panel, cut from top to bottom",
               tuck.panel_length + 2 * tuck.depth * tuck.tucks + tuck.end_allowance + hem.length,
               "{panel_length} + {take_up} + {end_allowance} + {hem_allowance}")  # fmt: skip
    sheet.note("panel_cut_width", "panel, cut from side to side",
               tuck.width + 2 * tuck.side_allowance, "{width} + 2 × {side_allowance}",
               saying=Saying.UP)  # fmt: skip


def _note_lines(
    sheet: Worksheet, tuck: GrowthTuck, hem: Value, above: Value, spacing: Value
) -> list[Rule]:
    """Note three lines for each tuck, the lowest tuck first, each from the upper raw edge."""
    rules: list[Rule] = []
    for number in range(1, tuck.tucks + 1):
        which = f"tuck {number} from below"
        if number == 1:
            low = sheet.note("lower_stitching_1", f"{which}, lower stitching, from the top",
                             sheet["panel_cut_length"].length - hem.length - above.length,
                             "{panel_cut_length} - {hem_allowance} - {above}",
                             above=above)  # fmt: skip
        else:
            before = sheet[f"upper_stitching_{number - 1}"]
            low = sheet.note(f"lower_stitching_{number}", f"{which}, lower stitching, from the top",
                             before.length - spacing.length, "{before} - {spacing}",
                             before=before, spacing=spacing)  # fmt: skip
        fold = sheet.note(f"fold_{number}", f"{which}, fold, from the top",
                          low.length - tuck.depth, "{low} - {depth}", low=low)  # fmt: skip
        high = sheet.note(f"upper_stitching_{number}", f"{which}, upper stitching, from the top",
                          fold.length - tuck.depth, "{fold} - {depth}", fold=fold)  # fmt: skip
        rules.extend((Rule(Line.STITCH, low), Rule(Line.FOLD, fold), Rule(Line.STITCH, high)))
    return sorted(rules, key=lambda rule: rule.distance.length)


def _add_growth_chart(sheet: Worksheet, tuck: GrowthTuck) -> None:
    rows = tuple(
        (str(number) if number else "none", tuck.panel_length + 2 * tuck.depth * number)
        for number in range(tuck.tucks + 1)
    )
    sheet.charts.append(Chart("Length as tucks are let out", ("Tucks let out", "Length"), rows))


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "On a scrap of the same cloth stitch one tuck {depth} deep with a long stitch, "
                "press it, wash and press again, then draw the stitching out.",
                depth=sheet["depth"],
            ),
            sentence(
                "the scrap is as long as it was, {adds} longer than with the tuck, and no line of "
                "holes is left. If one is, use a finer needle and thread.",
                adds=sheet["adds"],
            ),
        )
    )


def _add_steps(sheet: Worksheet, tuck: GrowthTuck, above: Value) -> None:
    wrong = tuck.placed == INSIDE
    add_washing_step(sheet)
    sheet.step(
        f"Cut {counted(sheet, 'panel')} "
        "{panel_cut_length} from top to bottom and {panel_cut_width} from side to "
        "side. Join the side seams first, so that a tuck runs over them unbroken."
    )
    sheet.step(
        "Finish the lower edge. " + hem_step(tuck.hem),
        "from the upper raw edge to the finished lower edge it is {hemmed}.",
        hemmed=sheet["panel_cut_length"].length - sheet["hem_allowance"].length,
    )
    sheet.step(
        f"Mark the lines all round, measured from the upper raw edge, "
        f"{'on the wrong side' if wrong else 'on the right side'}.",
        "the lower stitching of the lowest tuck is {above} above the finished edge.",
        above=above,
    )
    sheet.step(
        f"Fold {'right' if wrong else 'wrong'} sides together along the lowest fold line, matching "
        "the side seams, and stitch {depth} from the fold with a long stitch, 2.5 to 3 mm, that "
        "can be drawn out again without a mark. Sew the others alike and press all of them down.",
        "from the upper raw edge to the finished edge it is now {now}, and from the lowest "
        "stitching to that edge {above}.",
        now=tuck.panel_length + tuck.end_allowance,
        above=above,
    )
    sheet.step(
        "Later, to let one out: begin with the highest, draw its stitching out, wash and press. "
        "It adds {adds}; all together {take_up}, to a length of {grown_length}."
    )


def _draw(
    sheet: Worksheet, tuck: GrowthTuck, rules: list[Rule], spacing: Value, above: Value
) -> None:
    strip = FlatStrip(sentence("panel"), sheet["panel_cut_length"], sheet["panel_cut_width"],
                      rules)  # fmt: skip
    tucks = GrowthTucks(
        sheet["panel_length"], sheet["grown_length"], sheet["depth"], spacing, above, tuck.tucks.number,
        tuck.placed == INSIDE,
    )  # fmt: skip
    words = sentence(
        "{now} long with its tucks sewn, {grown} when they are let out.",
        now=sheet["panel_length"], grown=sheet["grown_length"],
    )  # fmt: skip
    lowest = sentence(
        "The lowest stitching is {above} above the edge, each tuck {depth} deep.",
        above=above, depth=sheet["depth"],
    )  # fmt: skip
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The panel now, and when its tucks are let out."),
                    growth_scene(tucks, sentence("Growth tucks"), words), True),
            Picture("section", sentence(
                "The lower end cut through, enlarged; the cloth's right side is at the right."),
                lower_end_scene(tucks, sentence("Growth tucks, cut through"), lowest)),
            strips_picture([strip], "The flat panel, with the lines to mark."),
        )
    )  # fmt: skip


TECHNIQUE = GrowthTuck
