"""Bias strips cut from a rectangle at 45 degrees to its edges and joined end to end."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import CLOTH, length, optional_length
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.cloth.bias import diagonal
from handout_engine.cloth.bias_cloth import (
    BiasInputs,
    Strips,
    add_cloth,
    note_bands,
    note_joined,
    note_joined_strips,
    note_take_up,
    useful,
)
from handout_engine.families.bias.bias_drawing import joined_strip
from handout_engine.families.bias.bias_pictures import cloth_picture
from handout_engine.shared.binding_steps import chosen_strips
from handout_engine.working.cautions import PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Picture, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

NAME = "cloth"
USUAL_ACROSS, USUAL_ALONG = inches(18), inches(22)


class BiasStrips(BiasInputs, Technique):
    """Strips cut one by one from a rectangle, each listed with its length."""

    title: ClassVar[str] = "Bias strips, cut and joined"
    family: ClassVar[str] = "bias"
    summary: ClassVar[str] = (
        "Strips cut from a rectangle at 45 degrees, each with its length, joined on the grain."
    )
    known_by: ClassVar[str] = "cloth"

    width = length("strip width", "Cut width of the strips.", "1 1/4 in", ("1/4 in", "12 in"))
    cloth_across = optional_length(
        "cloth at hand, across",
        "Width of the rectangle, square to the selvage.",
        "18 in, or as little as gives the wanted length",
        ("1 in", "120 in"),
        in_use="across",
    )
    cloth_along = optional_length(
        "cloth at hand, along",
        "Length of the rectangle, along the selvage.",
        "22 in, or as little as gives the wanted length",
        ("1 in", "20 yd"),
        in_use="along",
    )
    wanted = optional_length(
        "length wanted",
        "Length of the joined strip, instead of the size of the cloth.",
        "what the cloth at hand gives",
        ("1 in", "100 yd"),
    )

    least_strip = length(
        "least useful strip",
        "Shorter strips are left as scraps.",
        "6 in",
        ("1/2 in", "60 in"),
        group=CLOTH,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Every strip, their joined length and the cloth; raises RefusalError."""
        sheet = Worksheet(technique=self)
        strips = _note_wanted(sheet, self) if self.wanted else _note_at_hand(sheet, self)
        _add_sample(sheet, self)
        _add_steps(sheet, strips)
        sheet.seams.append(Seam("strip to strip", self.strip_allowance))
        sheet.have("a long ruler with a 45-degree line", "a removable marker tried on a scrap")
        sheet.supplies.append(Supply("sharp shears, or a rotary cutter on its mat"))
        sheet.cautions.append(PINS_AND_IRON)
        joined = joined_strip(sheet["width"], sheet["joined_length"], sheet["strip_allowance"])
        caption = sentence("The strip, joined on the grain.")
        sheet.pictures.append(Picture("finished", caption, joined, finished=True))
        sheet.pictures.append(cloth_picture(strips, sheet["edge_step"]))
        return sheet


def _note_wanted(sheet: Worksheet, inputs: BiasStrips) -> Strips:
    if inputs.cloth_across or inputs.cloth_along:
        raise RefusalError(
            "wanted and the cloth at hand exclude each other; write the length wanted, or the size "
            "of the cloth",
            "wanted",
        )
    return note_joined_strips(sheet, inputs, sheet["width"], sheet["wanted"], NAME)


def _note_at_hand(sheet: Worksheet, inputs: BiasStrips) -> Strips:
    """The strips of a given rectangle; refuses one without a useful strip."""
    note_take_up(sheet, inputs)
    for name, given, usual in (
        ("across", inputs.cloth_across, USUAL_ACROSS),
        ("along", inputs.cloth_along, USUAL_ALONG),
    ):
        basis = PRACTICE if given is None else GIVEN
        sheet.note(name, f"cloth, {name}", given or usual, "", basis=basis)
    strips = note_bands(sheet, sheet["width"], lambda cut: useful(cut, inputs.least_strip))
    if not strips.used:
        raise RefusalError(_too_small(inputs, strips), "width")
    note_joined(sheet, strips, strips.every)
    add_cloth(sheet, inputs.cloth(), NAME)
    return strips


def _too_small(inputs: BiasStrips, strips: Strips) -> str:
    tape = Tape(finest=32)
    longest = max((band.usable for band in strips.every), default=None)
    shorter = diagonal(min(strips.across.length, strips.along.length))
    if longest is None or longest.mm <= 0:
        return (
            f"width {tape.say(inputs.width)} gives no whole strip in this cloth; use narrower "
            f"strips or more cloth"
        )
    return (
        f"the longest strip is {tape.both(longest)}, shorter than the least useful strip "
        f"{tape.say(inputs.least_strip)}, and no strip of this cloth can be longer than "
        f"{tape.no_more(shorter)}; use a shorter least_strip, narrower strips, or more cloth"
    )


def _add_sample(sheet: Worksheet, inputs: BiasStrips) -> None:
    """Bias gives: how wide a strip is while it is pulled is worth knowing before cutting."""
    trial = inputs.width * 8
    sheet.sample.append(
        Step(
            sentence(
                "Cut one strip {width} wide and about {trial} long, press it with a little "
                "steam, pulling gently, and let it cool.",
                width=sheet["width"],
                trial=trial,
            ),
            sentence(
                "its width at the middle. If it is less than {width} by more than you can spare, "
                "cut the strips wider by that much; soft and loosely woven cloth gives most.",
                width=sheet["width"],
            ),
        )
    )


def _add_steps(sheet: Worksheet, strips: Strips) -> None:
    turned = any(band.shape != "parallelogram" for band in strips.used)
    sheet.step(
        "Press the cloth and straighten it on a thread, so that its corners are square. Cut the "
        "piece {across} across and {along} along the selvage."
    )
    sheet.step(
        "From one corner measure {edge_step} along both edges and rule a line between the two "
        "marks: it lies at 45 degrees, on the true bias. Rule on, each line {width} from the last, "
        "measured square to it, until there are {bands} strips.",
        "from the corner to the tenth line it is {tenth} along either edge, if the edge reaches so "
        "far; if the two edges differ, the lines have left the true bias.",
        tenth=sheet["edge_step"].length * 10,
    )
    sheet.step(
        "Number the strips on the right side from that corner, mark the corner of each that is "
        "nearest the selvage, and cut along the lines. Keep "
        f"{chosen_strips(sheet)}; trim an end that comes to a point along a thread of the cloth."
    )
    if len(strips.used) > 1:
        sheet.step(
            "Join the strips whose ends slant alike first. Lay two ends right sides together "
            "so that the strips cross at a right angle, their ends level and each tip standing "
            "out by {tip}, measured along the ends; sew {strip_allowance} from the ends, from "
            "notch to notch."
            + (
                " Where the ends slant against each other, turn every other strip end for end, "
                "right side up, so that the slants match."
                if turned
                else ""
            ),
            "the edges of the strip run on in one line across each seam; if they step, the tips "
            "stood out unevenly.",
            tip=2 * sheet["strip_allowance"].length,
        )
        sheet.step(
            "Press the seams open with an up and down movement, and snip off the tips.",
            "joined end to end it is {joined_length} along the middle.",
        )


TECHNIQUE = BiasStrips
