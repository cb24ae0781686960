"""Folded strips joined by stitches over an open gap, in whole repeats."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, length, lengths, percentage
from handout_engine.amounts.lengths import Length, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.fagoted_band_drawing import (
    Fagoting,
    edges_cut_through,
    fagoted,
    spacing,
)
from handout_engine.families.smocking.fagoted_band_measures import note_repeats, note_thread
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.cautions import LACE_CATCHES, LONG_FLOATS, PINS_AND_IRON
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Picture, Piece, Seam, Step, Supply
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)


class FagotedBand(ClothInputs, Technique):
    """A band of folded strips with open stitches between them."""

    title: ClassVar[str] = "Fagoted band"
    family: ClassVar[str] = "smocking"
    summary: ClassVar[str] = (
        "Folded strips joined by stitches over an open gap: finished width, cut strips, whole "
        "repeats and thread."
    )

    edge = length(
        "length of the band", "Along its stitches, finished.", "12 in", ("1 in", "100 in")
    )
    widths = lengths(
        "strips",
        "Finished width of each folded strip, from the top; at least two.",
        "3/4 in, 3/4 in, 3/4 in",
        ("1/8 in", "20 in"),
        most=9,
    )
    gap = length(
        "gap", "Open space between two folded edges.", "1/4 in", ("1/16 in", "1 in"), basis=PRACTICE
    )
    repeat = length(
        "repeat",
        "From one stitch to the next on the same edge.",
        "1/4 in",
        ("1/16 in", "1 in"),
        basis=PRACTICE,
    )
    tolerance = percentage(
        "tolerance",
        "How far the repeat may be changed to come out whole.",
        "10 %",
        50,
        group=SEWING,
        basis=PRACTICE,
    )
    turn = length(
        "turned under",
        "Allowance folded back at each edge that is fagoted.",
        "1/4 in",
        ("1/16 in", "3/4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    outer = length(
        "outer allowance",
        "At the two outer edges of the band.",
        "1/4 in",
        ("1/16 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end = length(
        "end allowance",
        "At each end of the band.",
        "1/4 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    bite = length(
        "stitch in the fold",
        "How deep a stitch goes into the folded edge.",
        "1/16 in",
        ("1/32 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def whole(self) -> Worksheet:
        """Finished width, cut strips, repeats, thread, cloth, steps; raises RefusalError."""
        _check(self)
        sheet = Worksheet(technique=self)
        _note_width(sheet, self)
        note_repeats(sheet, self.edge, self.repeat, self.tolerance.number)
        note_thread(sheet, self.gap, self.bite)
        cloth = self.cloth()
        note_usable_width(sheet, cloth)
        _add_pieces(sheet, self)
        note_cloth(sheet, "cloth", cloth)
        sheet.seams.append(Seam("each fagoted edge, turned under", self.turn))
        sheet.supplies.append(Supply("pearl or stranded cotton for the stitches",
                                     sheet["thread"]))  # fmt: skip
        sheet.have("firm paper to baste on", "a blunt needle")
        sheet.cautions.extend((LACE_CATCHES, LONG_FLOATS, PINS_AND_IRON))
        _add_sample(sheet)
        _add_steps(sheet)
        _draw(sheet, self)
        return sheet


def _check(band: FagotedBand) -> None:
    if len(band.widths) < 2:
        raise RefusalError("a gap needs a strip at either side; give at least two widths", "widths")
    narrowest = min(band.widths)
    if band.turn > narrowest:
        raise RefusalError(
            f"turn {TAPE.both(band.turn)} would reach past the other edge of a strip "
            f"{TAPE.both(narrowest)} wide; use at most {TAPE.no_more(narrowest)}, or wider strips",
            "turn",
        )


def _note_width(sheet: Worksheet, band: FagotedBand) -> None:
    gaps = sheet.note("gaps", "gaps", len(band.widths) - 1, f"{len(band.widths)} - 1")
    names = [f"strip_{number}" for number in range(1, len(band.widths) + 1)]
    for number, (name, width) in enumerate(zip(names, band.widths, strict=True), 1):
        sheet.note(name, f"strip {number}, finished width", width, "", basis=GIVEN)
    strips = sheet.note("strips_width", "all strips side by side", total(band.widths),
                        " + ".join(f"{{{name}}}" for name in names))  # fmt: skip
    sheet.note("finished_width", "finished width of the band",
               strips.length + band.gap * gaps.whole,
               "{strips_width} + {gaps} × {gap}")  # fmt: skip
    sheet.note("cut_length", "strips, cut length", band.edge + 2 * band.end,
               "{edge} + 2 × {end}")  # fmt: skip


def _add_pieces(sheet: Worksheet, band: FagotedBand) -> None:
    """Equal strips with equal edges are cut alike."""
    cuts: dict[tuple[Length, bool], int] = {}
    last = len(band.widths) - 1
    for place, width in enumerate(band.widths):
        key = (width, place in {0, last})
        cuts[key] = cuts.get(key, 0) + 1
    for number, ((width, outer), many) in enumerate(cuts.items(), 1):
        name = f"{'outer' if outer else 'inner'} strip"
        cut = sheet.note(
            f"strip{number}_cut",
            f"{name} {number}, cut width",
            width + band.turn + (band.outer if outer else band.turn),
            "{finished} + {turn} + {outer}" if outer else "{finished} + 2 × {turn}",
            finished=sheet[f"strip_{band.widths.index(width) + 1}"],
        )
        marks = (Mark("fold", cut.length - band.turn),) if outer else (
            Mark("first fold", band.turn), Mark("second fold", cut.length - band.turn))  # fmt: skip
        sheet.pieces.append(_piece(f"{name} {number}", many, cut, sheet["cut_length"], marks))


def _piece(name: str, many: int, width: Value, long: Value, marks: tuple[Mark, ...]) -> Piece:
    """Strips lie along the selvage, which stretches least under the needle."""
    return Piece(name, "cloth", many, width, long, Grain.STRAIGHT, marks)


def _add_sample(sheet: Worksheet) -> None:
    sheet.sample.append(
        Step(
            sentence(
                "Fold the edges of two scraps, baste them to paper {gap} apart, and work ten "
                "stitches on each edge at {repeat}.",
                gap=sheet["gap"],
                repeat=sheet["true_repeat"],
            ),
            sentence(
                "off the paper the folds still lie {gap} apart. Closer: the stitches were pulled; "
                "baste the next one a thread wider or work looser.",
                gap=sheet["gap"],
            ),
        )
    )


def _add_steps(sheet: Worksheet) -> None:
    add_washing_step(sheet)
    sheet.step("Cut the strips of the cut list, {cut_length} long, along the selvage.")
    sheet.step(
        "Turn {turn} under along every edge that will be fagoted, with a narrow hem or overcast, "
        "and press. The outer edges of the band stay as they are cut.",
    )
    sheet.step(
        "Print the guide at its actual size, and draw on firm paper lines {gap} apart, with a mark "
        "every {true_repeat} on each, those of one line halfway between those of the other. The "
        "guide is {guide_length} long; lay it on again from its last mark. Baste the folds to the "
        "lines, right side up.",
        "from fold to fold it is {gap} everywhere, and {finished_width} over the whole band less "
        "its outer allowances.",
    )
    sheet.step(
        "Begin in a fold at the left. Take a small stitch {bite} deep in the one edge, pass the "
        "needle under the thread, and take the next in the other edge half a repeat further. Work "
        "{repeats} repeats along each gap, without pulling.",
        "the last stitch falls on the last mark.",
    )
    sheet.step(
        "Fasten off in a fold. Join new thread there too, never in the gap. Take the basting out, "
        "press face down on a towel, and tear the paper away.",
        "the band is {finished_width} wide and {edge} long between its allowances.",
    )


def _draw(sheet: Worksheet, band: FagotedBand) -> None:
    names = [sheet[f"strip_{number}"] for number in range(1, len(band.widths) + 1)]
    drawn = Fagoting(names, sheet["gap"], sheet["true_repeat"], sheet["edge"],
                     sheet["finished_width"], sheet["turn"])  # fmt: skip
    finished = Scene(
        sentence("Fagoted band, finished"),
        sentence("{strips} strips with {gap} between them, {width} wide in all.",
                 strips=len(names), gap=sheet["gap"], width=sheet["finished_width"]),
        fagoted(drawn),
    )  # fmt: skip
    repeats = int(sheet["guide_length"].length / sheet["true_repeat"].length)
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The finished band."), finished, True),
            Picture("spacing", sentence("Where the stitches go on two folds, dash-dotted; printed "
                                        "at true scale it is the guide."),
                    spacing(drawn), sheet=spacing(drawn, True, repeats)),
            Picture("edges", sentence("Two folded edges basted to paper, cut through; thickness "
                                      "enlarged."), edges_cut_through(drawn)),
        )
    )  # fmt: skip


TECHNIQUE = FagotedBand
