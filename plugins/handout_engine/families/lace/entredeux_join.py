"""Entredeux sewn to flat or to gathered cloth."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.entredeux_join_drawing import (
    EntredeuxSizes,
    finished_join,
    join_stages,
)
from handout_engine.families.lace.lace import TrimInputs, add_lace_supplies, note_lace_to_buy
from handout_engine.shared.gathering import note_rows
from handout_engine.shared.gathering_drawing import quarters
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.strips import StripsWanted, note_strips
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Picture, Piece, Seam, Step
from handout_engine.working.worksheet import Worksheet

FLAT, GATHERED = "flat cloth", "gathered cloth"
LACE, FREE = "lace", "left free"


class EntredeuxJoin(TrimInputs, ClothInputs, Technique):
    """One side of an entredeux joined to cloth, flat or gathered."""

    title: ClassVar[str] = "Entredeux to cloth"
    family: ClassVar[str] = "lace"
    summary: ClassVar[str] = (
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

    def whole(self) -> Worksheet:
        """What the join takes, lengths and widths, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        _check(self)
        _note_sizes(sheet, self)
        rows = _note_gathers(sheet, self)
        note_lace_to_buy(sheet, sheet["entredeux_length"], "entredeux", "entredeux",
                         width=sheet["visible"])  # fmt: skip
        _note_panel(sheet, self, rows)
        sheet.seams.append(Seam("entredeux to cloth, each layer", self.entredeux_allowance))
        add_lace_supplies(sheet, "small sharp scissors")
        _add_sample(sheet)
        _add_steps(sheet, self)
        _draw(sheet, self)
        return sheet

    @property
    def gathered(self) -> bool:
        """Whether the cloth is gathered to the entredeux."""
        return self.cloth_side == GATHERED


def _check(join: EntredeuxJoin) -> None:
    if join.trim > join.entredeux_allowance:
        tape = Tape(finest=32)
        raise RefusalError(
            f"trim {tape.say(join.trim)} is more than the allowance "
            f"{tape.say(join.entredeux_allowance)} leaves; use at most "
            f"{tape.no_more(join.entredeux_allowance)}",
            "trim",
        )


def _note_sizes(sheet: Worksheet, join: EntredeuxJoin) -> None:
    sheet.note("entredeux_cut_width", "entredeux as bought, both allowances",
               join.visible + 2 * join.entredeux_allowance,
               "{visible} + 2 × {entredeux_allowance}")  # fmt: skip
    sheet.note("trimmed_away", "cut off both allowances", join.entredeux_allowance - join.trim,
               "{entredeux_allowance} - {trim}")  # fmt: skip
    sheet.note("cut_width", "cloth, cut width",
               join.panel + join.entredeux_allowance + join.far_allowance,
               "{panel} + {entredeux_allowance} + {far_allowance}")  # fmt: skip
    sheet.note("entredeux_length", "entredeux, cut length", join.edge + 2 * join.end_allowance,
               "{edge} + 2 × {end_allowance}", finishes="edge")  # fmt: skip
    ratio, words = (join.fullness, "{fullness} × {edge}") if join.gathered else (1, "{edge}")
    sheet.note("cloth_length", "cloth, cut length", join.edge * ratio + 2 * join.end_allowance,
               f"{words} + 2 × {{end_allowance}}", finishes="edge")  # fmt: skip
    sheet.note("finished_width", "cloth and entredeux together, finished",
               join.panel + join.visible, "{panel} + {visible}")  # fmt: skip


def _note_gathers(sheet: Worksheet, join: EntredeuxJoin) -> tuple[Value, ...]:
    if not join.gathered:
        return ()
    line = sheet["entredeux_allowance"]
    return note_rows(sheet, line, line, join.rows_apart)


def _note_panel(sheet: Worksheet, join: EntredeuxJoin, rows: tuple[Value, ...]) -> None:
    cloth = join.cloth()
    usable = note_usable_width(sheet, cloth)
    wanted = StripsWanted(usable, sheet["cloth_length"], sheet["cut_width"], False, False)
    count = note_strips(sheet, wanted)
    line = Mark("line to stitch in the ditch", join.entredeux_allowance)
    marks = (*(Mark(row.label, row.length) for row in rows), line)
    sheet.pieces.append(
        Piece("panel", "cloth", count.whole * join.make.number, sheet["cut_width"], sheet["strip_length"],
              Grain.CROSS, marks)
    )  # fmt: skip
    note_cloth(sheet, "cloth", cloth)


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence("Join {scrap} of entredeux to a scrap of the cloth, with the length and width "
                     "of zigzag that you mean to use.", scrap=inches(4)),
            sentence("the needle swings once into every hole and once off the roll, the roll is "
                     "firm, and no raw thread sticks out of it."),
        )
    )  # fmt: skip


def _add_steps(sheet: Worksheet, join: EntredeuxJoin) -> None:
    add_washing_step(sheet)
    sheet.step("Rinse the entredeux, and press it flat with starch; it shrinks more than lace.")
    many = sheet["strips"].whole > 1
    sheet.step(
        "Cut the cloth {cut_width} wide and {strip_length} long"
        + (", {strips} pieces, and join them end to end with {strip_allowance} allowance. "
           if many else ". ") + "Cut the entredeux {entredeux_length} long.",
        "the cloth is {cloth_length} long in all." if many else "",
    )  # fmt: skip
    if join.gathered:
        sheet.step(
            "Run two gathering rows, {first_row} and {second_row} from the raw edge. Draw the "
            "cloth up to the entredeux, quarter mark to quarter mark, and spread the gathers.",
            "between its end allowances the gathered edge is {edge}.",
        )
    sheet.step(
        "Lay entredeux and cloth right sides together, raw edges level, the entredeux on top. With "
        "a short straight stitch sew in the ditch, close beside the cord, {entredeux_allowance} "
        "from the edges" + (", keeping the gathers upright under the foot." if join.gathered else
                            "."),
        "seen from the entredeux, the stitching touches the cord all along.",
    )  # fmt: skip
    if join.gathered:
        sheet.step("Sew a second time beside the first, in the allowance, to flatten the gathers.")
    sheet.step(
        "Trim both allowances to {trim}, {trimmed_away} off.",
        "what is left is {trim} wide everywhere.",
    )
    sheet.step(
        "Roll and whip what is left: a zigzag that swings from just inside the cord to just off "
        "the raw edge rolls it by itself.",
    )
    sheet.step(
        "Press the roll toward the cloth, from the right side with the tip of the iron.",
        "from the far cord of the entredeux to the line of the other edge it is {finished_width}.",
    )
    _add_other_side(sheet, join)


def _add_other_side(sheet: Worksheet, join: EntredeuxJoin) -> None:
    if join.other_side == LACE:
        sheet.step(
            "Trim the other allowance of the entredeux off close to its cord, lay lace and "
            "entredeux side by side, and zigzag into each hole and over the heading of the lace."
        )
    elif join.other_side == FLAT:
        sheet.step("Join the other side of the entredeux to flat cloth alike.")


def _draw(sheet: Worksheet, join: EntredeuxJoin) -> None:
    finished = Scene(
        sentence("The finished join"),
        sentence("Entredeux {visible} wide below {cloth}.", visible=sheet["visible"],
                 cloth=join.cloth_side),
        finished_join(sheet["edge"], sheet["visible"], sheet["panel"], join.gathered,
                      join.other_side),
        tallest=200.0,
    )  # fmt: skip
    sheet.pictures.append(
        Picture("finished", sentence("A part of the finished join, right side up."), finished,
                finished=True)
    )  # fmt: skip
    sizes = EntredeuxSizes(sheet["visible"], sheet["entredeux_allowance"], sheet["trim"])
    for number, (caption, shapes) in enumerate(join_stages(sizes), 1):
        scene = Scene(sentence(f"Stage {number}"), sentence(caption), shapes, tallest=120.0)
        words = f"{number}. {caption} Seen at the cut end; thickness enlarged."
        sheet.pictures.append(Picture(f"stage-{number}", sentence(words), scene))
    if join.gathered and sheet["cloth_length"].length > ZERO:
        caption = "Above the cloth, below the entredeux it is drawn up to, at their true ratio."
        scene = Scene(
            sentence("Cloth and entredeux"),
            sentence("{cloth} is drawn up to {edge}.", cloth=sheet["cloth_length"],
                     edge=sheet["edge"]),
            quarters(sheet["edge"], sheet["cloth_length"]),
        )  # fmt: skip
        sheet.pictures.append(Picture("quarters", sentence(caption), scene))


TECHNIQUE = EntredeuxJoin
