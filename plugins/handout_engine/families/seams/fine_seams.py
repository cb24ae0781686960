"""The seams of fine sewing in a panel: what each takes, and how wide the pieces are cut."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, count, length, ratio
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Scene
from handout_engine.families.seams.fine_seams_drawing import TALL, cut_panels, joined_panel
from handout_engine.families.seams.seam_sections_drawing import SeamSizes, seam_stages
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.seams import (
    FRENCH,
    PIN_STITCH,
    ROLLED_GATHERS,
    Join,
    SeamInputs,
    note_join,
    seam_steps,
)
from handout_engine.working.cautions import LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON, WING_NEEDLE
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart, Grain, Mark, Picture, Piece, Step, Supply
from handout_engine.working.worksheet import Worksheet

LONGEST_PIECE = Length(Fraction(50_000))


class FineSeams(SeamInputs, ClothInputs, Technique):
    """A panel pieced with one of the fine seams."""

    title: ClassVar[str] = "Fine seams"
    family: ClassVar[str] = "seams"
    summary: ClassVar[str] = (
        "Plain, French, flat fell, rolled and whipped, or pin stitched: what each seam takes of "
        "the cloth, and how wide the pieces are cut."
    )

    panel = length(
        "finished panel",
        "Width of the panel when all its seams are sewn.",
        "21 in",
        ("2 in", "60 in"),
    )
    seams = count("number of seams", "Seams across the panel.", 2, 12)
    along = length(
        "length of the seams",
        "Cut length of the pieces, along the seams.",
        "18 in",
        ("2 in", "3 yd"),
    )
    side = length(
        "side allowance",
        "Added at both outer edges of the panel.",
        "1/2 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    fullness = ratio(
        "fullness",
        "For gathers only: length of each piece for each length of the piece before it.",
        "2",
        ("1", "4"),
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Allowances, cut widths, cloth, steps and cross-sections; raises RefusalError."""
        sheet = Worksheet(technique=self)
        join = note_join(sheet, self)
        _note_widths(sheet, self, join)
        _check_ridge(self, join, sheet["piece_width"])
        cloth = self.cloth()
        note_usable_width(sheet, cloth)
        _add_pieces(sheet, self, join)
        note_cloth(sheet, "cloth", cloth)
        sheet.seams.extend(join.seams)
        _add_supplies(sheet, self)
        _add_sample(sheet, join)
        _add_steps(sheet, self, join)
        _draw(sheet, self, join)
        return sheet


def _note_widths(sheet: Worksheet, panel: FineSeams, join: Join) -> None:
    pieces = sheet.note("pieces", "pieces in the panel", panel.seams + 1, "{seams} + 1")
    each = sheet.note("piece_width", "each piece, finished width", panel.panel / pieces.whole,
                      "{panel} / {pieces}")  # fmt: skip
    first, second = join.first.length, join.second.length
    sheet.note("first_cut_width", "first piece, cut width", panel.side + each.length + first,
               "{side} + {piece_width} + {first_takes}")  # fmt: skip
    if panel.seams > 1:
        sheet.note("middle_cut_width", "middle piece, cut width", second + each.length + first,
                   "{second_takes} + {piece_width} + {first_takes}")  # fmt: skip
    sheet.note("last_cut_width", "last piece, cut width", second + each.length + panel.side,
               "{second_takes} + {piece_width} + {side}")  # fmt: skip
    taken = sheet.note("seams_take", "all seams take", (first + second) * panel.seams,
                       "{seams} × ({first_takes} + {second_takes})")  # fmt: skip
    sheet.note("total_cut_width", "all pieces side by side before sewing",
               panel.panel + taken.length + 2 * panel.side,
               "{panel} + {seams_take} + 2 × {side}")  # fmt: skip


def _check_ridge(panel: FineSeams, join: Join, each: Value) -> None:
    """Refuse pieces so narrow that one seam's ridge would reach the next."""
    if join.ridge.length >= each.length:
        tape = Tape(finest=32)
        most = max(0, -(-panel.panel.mm // join.ridge.length.mm) - 2)
        way = f"use at most {most} seams or a wider panel" if most else "use a wider panel"
        raise RefusalError(
            f"seams {panel.seams} leaves pieces {tape.say(each.amount)} wide, and each seam alone "
            f"is {tape.both(join.ridge.amount)} wide; {way}",
            "seams",
        )


def _length_of(sheet: Worksheet, panel: FineSeams, join: Join, number: int) -> Value:
    """Cut length of a piece; each gathered one is longer than the one before it."""
    if not join.gathers or number == 1:
        return sheet["along"]
    before = _length_of(sheet, panel, join, number - 1)
    amount = before.length * panel.fullness
    if amount > LONGEST_PIECE:
        raise RefusalError(
            f"seams {panel.seams} with fullness {Tape().say(panel.fullness)} would make piece "
            f"{number} longer than {Tape().both(LONGEST_PIECE)}; use fewer seams or less fullness",
            "seams",
        )
    return sheet.note(f"length_{number}", f"piece {number}, cut length", amount,
                      "{before} × {fullness}", before=before)  # fmt: skip


def _add_pieces(sheet: Worksheet, panel: FineSeams, join: Join) -> None:
    last = panel.seams + 1
    second, first = join.second.length, join.first.length
    marks = {
        "first": (Mark("seam line", sheet["first_cut_width"].length - first),),
        "last": (Mark("seam line", second),),
    }
    if join.gathers:
        for number in range(1, last + 1):
            name = {1: "first", last: "last"}.get(number, "middle")
            cut = _length_of(sheet, panel, join, number)
            sheet.pieces.append(Piece(f"piece {number}", "cloth", 1, sheet[f"{name}_cut_width"],
                                      cut, Grain.STRAIGHT, marks.get(name, ())))  # fmt: skip
        return
    counts = {"first": 1, "middle": panel.seams.number - 1, "last": 1}
    for name, many in counts.items():
        if many:
            width, lines = sheet[f"{name}_cut_width"], marks.get(name, ())
            sheet.pieces.append(
                Piece(f"{name} piece", "cloth", many, width, sheet["along"], Grain.STRAIGHT, lines)
            )


def _add_supplies(sheet: Worksheet, panel: FineSeams) -> None:
    needle = "a wing needle" if panel.seam == PIN_STITCH else "a fine needle, number 60 or 65"
    sheet.supplies.append(Supply(f"fine thread to match, and {needle}"))
    sheet.have("small sharp scissors", "a gauge or ruler for the allowances")
    sheet.cautions.extend((PINS_AND_IRON, THIN_COTTON))
    if panel.seam == PIN_STITCH:
        sheet.cautions.append(WING_NEEDLE)
    if panel.seam == ROLLED_GATHERS:
        sheet.cautions.append(LOOSE_THREADS)


def _add_sample(sheet: Worksheet, join: Join) -> None:
    before = sheet.note("sample_before", "two sample scraps, side by side",
                        (join.first.length + join.second.length) * 8,
                        "8 × ({first_takes} + {second_takes})")  # fmt: skip
    after = sheet.note("sample_after", "sample, sewn", before.length * Fraction(7, 8),
                       "{sample_before} - {first_takes} - {second_takes}")  # fmt: skip
    sheet.sample.append(
        Step(
            sentence(
                "Cut two scraps of the same cloth, each {half} wide, and sew them with this seam.",
                half=before.length / 2,
            ),
            sentence(
                "sewn and pressed they are {after} wide together. Less: your seam takes more than "
                "the page says, so write what it took as the allowance. More: it takes less.",
                after=after,
            ),
        )
    )


def _add_steps(sheet: Worksheet, panel: FineSeams, join: Join) -> None:
    add_washing_step(sheet)
    names = "the first piece {first_cut_width}, "
    if panel.seams > 1:
        names += "each middle piece {middle_cut_width}, "
    long = "as long as the cut list says" if join.gathers else "{along} long"
    sheet.step(
        f"Cut {names}and the last piece {{last_cut_width}} wide, all {long}, with the long sides "
        "along the selvage.",
        "side by side the pieces are {total_cut_width} wide.",
    )
    if panel.seam == FRENCH:
        sheet.step("Mark the right side of every piece; a French seam begins on the other side.")
    for text, checkpoint in seam_steps(panel.seam):
        sheet.step(text, checkpoint)
    if panel.seams > 1:
        sheet.step("Sew the other seams alike, all ridges turned the same way.")
    sheet.step(
        "Press the panel from the wrong side over a folded towel.",
        "from seam to seam it is {piece_width}, and without the side allowances {panel} in all.",
    )


def _draw(sheet: Worksheet, panel: FineSeams, join: Join) -> None:
    each, ridge = sheet["piece_width"], join.ridge
    places = [each.mm * number for number in range(1, panel.seams + 1)]
    finished = Scene(
        sentence("Finished panel"),
        sentence("{panel} wide with {seams} seams.", panel=sheet["panel"], seams=sheet["seams"]),
        joined_panel(sheet["panel"], each, ridge, places),
        tallest=200.0,
    )
    sheet.pictures.append(
        Picture("finished", sentence("The panel, seams drawn behind the cloth in thin dashes; "
                                     "its side allowances are left out."), finished, True)
    )  # fmt: skip
    sizes = SeamSizes({**sheet.inputs, **sheet.values})
    for number, (caption, shapes) in enumerate(seam_stages(panel.seam, sizes), 1):
        scene = Scene(sentence(f"{panel.seam}, stage {number}"), sentence(caption), shapes, 120.0)
        words = f"{number}. {caption} Seen at the cut end; thickness enlarged."
        sheet.pictures.append(Picture(f"stage-{number}", sentence(words), scene))
    sheet.pictures.append(_cut_picture(sheet, panel, join))
    sheet.charts.append(_chart(join))


def _cut_picture(sheet: Worksheet, panel: FineSeams, join: Join) -> Picture:
    first, second = join.first.mm, join.second.mm
    drawn = [(sentence("first"), sheet["first_cut_width"], float(panel.side), first)]
    if panel.seams > 1:
        drawn.append((sentence("middle"), sheet["middle_cut_width"], second, first))
    drawn.append((sentence("last"), sheet["last_cut_width"], second, float(panel.side)))
    scene = Scene(
        sentence("Pieces as they are cut"),
        sentence("Stitching lines dashed; {first} and {second} are taken by each seam.",
                 first=join.first, second=join.second),
        cut_panels(drawn, TALL * sheet["piece_width"].mm + 0.2 * drawn[0][1].mm),
        tallest=150.0,
    )  # fmt: skip
    return Picture(
        "cut", sentence("One piece of each kind as it is cut, to scale in width."), scene
    )


def _chart(join: Join) -> Chart:
    return Chart(
        "What the seam takes",
        ("Layer", "Taken by each seam"),
        (
            ("first layer", join.first),
            ("second layer", join.second),
            ("ridge on the wrong side", join.ridge),
        ),
    )


TECHNIQUE = FineSeams
