"""The sizes of a pieced cover: its blocks, the strips between and round them, its layers.

Everything sewn into a seam is cut its finished size and two seam allowances. What is longer than
the cloth is wide is cut in equal parts and joined with straight seams.
"""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.amounts.inputs import CLOTH, SEWING, choice, count, length
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothInputs
from handout_engine.shared.binding import check_tail
from handout_engine.shared.strips import StripsWanted, note_strips
from handout_engine.working.workings import Grain, Piece
from handout_engine.working.worksheet import Worksheet

BLOCKS, FRAME, BACKING, BATTING, BINDING = (
    "block cloth", "sashing and border cloth", "backing cloth", "batting", "binding cloth",
)  # fmt: skip
DOWN, ACROSS = "down the back", "across the back"
TAPE = Tape(finest=32)


class QuiltInputs(ClothInputs):
    """The inputs of a cover of equal blocks."""

    blocks_across = count("blocks across", "Blocks in a row.", 4, 12, basis=PRACTICE)
    blocks_down = count("blocks down", "Rows of blocks.", 5, 12, basis=PRACTICE)
    block = length(
        "block", "Finished side of a square block.", "7 in", ("1 in", "18 in"), basis=PRACTICE
    )
    sashing = length(
        "sashing",
        "Finished width of the strips between blocks.",
        "1 1/2 in",
        ("0 in", "6 in"),
        basis=PRACTICE,
    )
    border = length(
        "border",
        "Finished width of the border all round.",
        "3 in",
        ("0 in", "12 in"),
        basis=PRACTICE,
    )
    binding = length(
        "binding",
        "Finished width of the double binding.",
        "1/4 in",
        ("1/8 in", "1 in"),
        basis=PRACTICE,
    )
    seam_allowance = length(
        "seam allowance",
        "Of every seam in the top.",
        "1/4 in",
        ("1/8 in", "5/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn_of_cloth = length(
        "turn of cloth",
        "What the way round the three layers takes of the binding: about "
        "as much as they are thick.",
        "1/8 in",
        ("0 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strip_allowance = length(
        "joining allowance",
        "Of seams that join strips, and of the backing.",
        "1/4 in",
        ("1/8 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    tail = length(
        "tail",
        "Extra length of binding to join its ends.",
        "10 in",
        ("1 in", "30 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    backing_margin = length(
        "backing margin",
        "Backing beyond the top on each side.",
        "3 in",
        ("0 in", "8 in"),
        group=CLOTH,
        basis=PRACTICE,
    )
    batting_margin = length(
        "batting margin",
        "Batting beyond the top on each side.",
        "2 in",
        ("0 in", "8 in"),
        group=CLOTH,
        basis=PRACTICE,
    )
    backing_seams = choice(
        "backing seams",
        "Which way a seam runs where the backing is joined.",
        DOWN,
        ACROSS,
        group=CLOTH,
    )


def note_sizes(sheet: Worksheet, quilt: QuiltInputs) -> None:
    """Note what the top measures; refuses a binding that would cover more than the border."""
    spaces = (quilt.blocks_across - 1, quilt.blocks_down - 1)
    across = sheet.note(
        "inner_width", "blocks and sashing, across",
        quilt.block * quilt.blocks_across + quilt.sashing * spaces[0],
        "{blocks_across} × {block} + ({blocks_across} - 1) × {sashing}",
    )  # fmt: skip
    down = sheet.note("inner_length", "blocks and sashing, down",
                      quilt.block * quilt.blocks_down + quilt.sashing * spaces[1],
                      "{blocks_down} × {block} + ({blocks_down} - 1) × {sashing}")  # fmt: skip
    for name, which, inner in (("width", "across", across), ("length", "down", down)):
        top = sheet.note(f"top_{name}", f"top with its border, finished, {which}",
                         inner.length + 2 * quilt.border, "{inner} + 2 × {border}",
                         inner=inner)  # fmt: skip
        sheet.note(f"raw_{name}", f"top from raw edge to raw edge, {which}",
                   top.length + 2 * quilt.seam_allowance, "{top} + 2 × {seam_allowance}",
                   top=top)  # fmt: skip
    _note_shown(sheet, quilt)


def _note_shown(sheet: Worksheet, quilt: QuiltInputs) -> None:
    most = quilt.border + quilt.seam_allowance
    if quilt.binding > most:
        raise RefusalError(
            f"binding {TAPE.say(quilt.binding)} would cover the border and some of the blocks; use "
            f"{ways(at_most(quilt, 'binding', most), 'a wider border')}",
            "binding",
        )
    sheet.note("border_shown", "border that shows beside the binding", most - quilt.binding,
               "{border} + {seam_allowance} - {binding}")  # fmt: skip


def note_blocks(sheet: Worksheet, quilt: QuiltInputs, usable: Value) -> None:
    """Note the blocks, and how many squares of their size a yard of the cloth gives."""
    number = sheet.note("blocks", "blocks", quilt.blocks_across * quilt.blocks_down,
                        "{blocks_across} × {blocks_down}")  # fmt: skip
    cut = sheet.note("block_cut", "block, cut side", quilt.block + 2 * quilt.seam_allowance,
                     "{block} + 2 × {seam_allowance}")  # fmt: skip
    row = sheet.note("squares_in_a_row", "blocks side by side on the cloth",
                     int(usable.length / cut.length),
                     "{usable} / {block_cut}, rounded down", usable=usable)  # fmt: skip
    yard = sheet.note("yard", "one yard", inches(36), "", basis=published("yard"))
    rows = sheet.note("rows_in_a_yard", "rows of blocks in a yard", int(yard.length / cut.length),
                      "{yard} / {block_cut}, rounded down")  # fmt: skip
    sheet.note("squares_in_a_yard", "blocks from one yard of the cloth",
               row.whole * rows.whole, "{squares_in_a_row} × {rows_in_a_yard}")  # fmt: skip
    sheet.pieces.append(Piece("block", BLOCKS, number.whole, cut, cut, Grain.STRAIGHT))


@dataclass(frozen=True)
class Bar:
    """A kind of strip in the top: its prefix, width, finished length, and how many there are."""

    prefix: str
    width: Value
    along: Value
    number: Value | int


def note_frame(sheet: Worksheet, quilt: QuiltInputs, usable: Value) -> None:
    """Note the sashing and border strips, each with its parts where it is joined."""
    if quilt.sashing:
        wide = sheet.note("sashing_cut", "sashing, cut width",
                          quilt.sashing + 2 * quilt.seam_allowance,
                          "{sashing} + 2 × {seam_allowance}")  # fmt: skip
        if quilt.blocks_across > 1:
            number = sheet.note("short_sashes", "short sashes, between the blocks of a row",
                                (quilt.blocks_across - 1) * quilt.blocks_down,
                                "({blocks_across} - 1) × {blocks_down}")  # fmt: skip
            _add_bar(sheet, usable, Bar("short_sash_", wide, sheet["block"], number))
        if quilt.blocks_down > 1:
            number = sheet.note("long_sashes", "long sashes, between the rows",
                                quilt.blocks_down - 1, "{blocks_down} - 1")  # fmt: skip
            _add_bar(sheet, usable, Bar("long_sash_", wide, sheet["inner_width"], number))
    if quilt.border:
        wide = sheet.note("border_cut", "border, cut width",
                          quilt.border + 2 * quilt.seam_allowance,
                          "{border} + 2 × {seam_allowance}")  # fmt: skip
        _add_bar(sheet, usable, Bar("side_border_", wide, sheet["inner_length"], 2))
        _add_bar(sheet, usable, Bar("end_border_", wide, sheet["top_width"], 2))


def _add_bar(sheet: Worksheet, usable: Value, bar: Bar) -> None:
    """Note one kind of strip: its cut length, the parts it is joined from, and its pieces."""
    name = bar.prefix.rstrip("_").replace("_", " ")
    whole = sheet.note(f"{bar.prefix}whole", f"{name}, cut length in one piece",
                       bar.along.length + 2 * sheet["seam_allowance"].length,
                       "{along} + 2 × {seam_allowance}", along=bar.along,
                       saying=Saying.UP)  # fmt: skip
    parts = note_strips(sheet, StripsWanted(usable, whole, bar.width, False, False, bar.prefix))
    wanted = bar.number if isinstance(bar.number, int) else bar.number.whole
    number = sheet.note(f"{bar.prefix}pieces", f"{name}, pieces to cut",
                        wanted * parts.whole, "{number} × {parts}",
                        number=bar.number, parts=parts)  # fmt: skip
    each = sheet[f"{bar.prefix}strip_length"]
    sheet.pieces.append(Piece(name, FRAME, number.whole, bar.width, each, Grain.CROSS))


def note_layers(sheet: Worksheet, quilt: QuiltInputs, usable: Value) -> None:
    """Note backing, batting and binding."""
    for layer, margin in (("backing", "backing_margin"), ("batting", "batting_margin")):
        for side in ("width", "length"):
            sheet.note(f"{layer}_{side}", f"{layer}, {side}",
                       sheet[f"raw_{side}"].length + 2 * sheet[margin].length,
                       "{raw} + 2 × {margin}", raw=sheet[f"raw_{side}"],
                       margin=sheet[margin], saying=Saying.UP)  # fmt: skip
    sheet.pieces.append(
        Piece("batting", BATTING, 1, sheet["batting_width"], sheet["batting_length"],
              Grain.STRAIGHT)
    )  # fmt: skip
    _note_backing(sheet, quilt, usable)
    _note_binding(sheet, quilt, usable)


def _note_backing(sheet: Worksheet, quilt: QuiltInputs, usable: Value) -> None:
    """Panels of the backing run along the cloth; their seams run down or across the back."""
    sides = sheet["backing_width"], sheet["backing_length"]
    joined, along = sides if quilt.backing_seams == DOWN else sides[::-1]
    panels = note_strips(sheet, StripsWanted(usable, joined, along, False, False, "backing_"))
    each = sheet["backing_strip_length"]
    sheet.pieces.append(
        Piece("backing panel", BACKING, panels.whole, each, along, Grain.STRAIGHT)
    )  # fmt: skip


def _note_binding(sheet: Worksheet, quilt: QuiltInputs, usable: Value) -> None:
    """A double binding, once round the raw edge, and its tail.

    Folded it holds the allowance, the binding at the front, the way round the thickness of the
    layers, and the binding at the back.
    """
    folded = sheet.note("binding_folded", "binding, folded in half",
                        3 * quilt.binding + quilt.turn_of_cloth,
                        "3 × {binding} + {turn_of_cloth}", saying=Saying.UP)  # fmt: skip
    wide = sheet.note(
        "binding_cut",
        "binding, cut width",
        2 * folded.length,
        "2 × {binding_folded}",
        saying=Saying.UP,
    )
    around = sheet.note("around", "once round the raw edge",
                        2 * (sheet["raw_width"].length + sheet["raw_length"].length),
                        "2 × ({raw_width} + {raw_length})")  # fmt: skip
    check_tail(quilt, sheet["tail"], wide.length)
    wanted = sheet.note("binding_length", "binding needed", around.length + quilt.tail,
                        "{around} + {tail}", finishes="around")  # fmt: skip
    strips = note_strips(sheet, StripsWanted(usable, wanted, wide, False, True, "binding_"))
    sheet.pieces.append(
        Piece("binding strip", BINDING, strips.whole, wide, sheet["binding_strip_length"],
              Grain.CROSS)
    )  # fmt: skip
