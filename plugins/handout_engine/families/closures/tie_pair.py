"""A pair of ties to sew into a seam: a turned tube, or one layer with hemmed edges."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import ZERO, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth
from handout_engine.drawing.scene import Line
from handout_engine.families.closures.tie_pair_drawing import (
    Bow,
    Tie,
    hemmed_section,
    sewn_in,
    tied,
)
from handout_engine.families.closures.tie_pair_steps import add_bow_step, add_sample, add_steps
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.shared.tubes_drawing import Tube, tube_section
from handout_engine.working.cautions import (
    BONNET_COMES_OFF,
    LOOSE_THREADS,
    NECK_CORDS,
    PINS_AND_IRON,
    SASH_LENGTH,
    TIES_CATCH,
)
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Mark, Picture, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

TUBE, HEMMED = "a turned tube", "one layer, hemmed"
SEAMED, DRAWN, NECK, BONNET = (
    "sewn into a seam", "drawn through at waist or hem", "neck or hood", "bonnet",
)  # fmt: skip
LONGEST_DRAWN = millimetres(75)
TAPE = Tape(finest=32)


class TiePair(ClothInputs, Technique):
    """Equal ties in pairs, each closed at its free end."""

    title: ClassVar[str] = "Pair of ties"
    family: ClassVar[str] = "closures"
    summary: ClassVar[str] = (
        "Ties or sashes in pairs, as a turned tube or in one hemmed layer, and where they may be "
        "worn."
    )

    tie_length = length(
        "length of a tie",
        "What hangs free of one tie, from the seam to its end.",
        "16 in",
        ("2 in", "40 in"),
    )
    hem_below = length(
        "down to the hem",
        "Of the garment it is sewn to: from the tie straight down to the hem. The ends of the "
        "bow stay above it.",
        "7 in",
        ("1 in", "40 in"),
        basis=PRACTICE,
    )
    reach = length(
        "round to the bow",
        "From the seam to where the bow is tied: from a side to the middle of the back it is a "
        "quarter of the waist.",
        "5 in",
        ("0 in", "20 in"),
        basis=PRACTICE,
    )
    bow = length(
        "taken by the bow",
        "What one tie gives to its loop and to the knot; tie a tape round your hand and measure.",
        "5 in",
        ("0 in", "20 in"),
        basis=PRACTICE,
    )
    tie_width = length("width of a tie", "Finished.", "1 in", ("1/4 in", "8 in"))
    place = choice(
        "where it is worn",
        "Decides which rule on cords and ties applies.",
        SEAMED,
        DRAWN,
        BONNET,
        NECK,
    )
    made = choice(
        "made as",
        "Two layers, sewn and turned, or one layer with narrow hems.",
        TUBE,
        HEMMED,
        group=SEWING,
    )
    seam = length(
        "seam",
        "Of a tube: allowance along its edge and across its end.",
        "1/4 in",
        ("1/16 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    hem_turn = length(
        "one turn of the hem",
        "Of a hemmed tie; each edge is turned twice.",
        "1/8 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "Beyond its length, to be caught in the seam.",
        "1/2 in",
        ("1/4 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    pairs = count("pairs", "How many pairs of ties.", 1, 60)

    def whole(self) -> Worksheet:
        """Ties, cloth and steps; raises RefusalError where ties are not allowed or cannot lie."""
        sheet = Worksheet(technique=self)
        _check_place(sheet, self)
        if self.place == SEAMED:
            _note_bow(sheet, self)
        sheet.note("ties", "ties to cut", 2 * self.pairs, "2 × {pairs}")
        rules = (_note_tube if self.made == TUBE else _note_hemmed)(sheet, self)
        sheet.note("with_end", "finished tie with the end that is sewn in",
                   self.tie_length + self.end_allowance,
                   "{tie_length} + {end_allowance}")  # fmt: skip
        marks = tuple(Mark(rule.distance.label, rule.distance.length) for rule in rules
                      if rule.line is Line.FOLD)  # fmt: skip
        sheet.pieces.append(
            Piece("tie", "tie cloth", sheet["ties"].whole, sheet["cut_width"],
                  sheet["cut_length"], Grain.STRAIGHT, marks)
        )  # fmt: skip
        sheet.seams.append(Seam("end of a tie in the garment", self.end_allowance))
        note_cloth(sheet, "tie cloth", self.cloth())
        sheet.supplies.append(Supply("fine thread to match"))
        _add_cautions(sheet, self)
        add_sample(sheet, self.made == TUBE)
        add_steps(sheet, self.made == TUBE, self.place == DRAWN)
        if self.place == SEAMED:
            add_bow_step(sheet)
        _draw(sheet, self, rules)
        return sheet


def _check_place(sheet: Worksheet, inputs: TiePair) -> None:
    """Refuse ties where a child could be caught by them; note the longest that may be drawn."""
    if inputs.place == NECK:
        raise RefusalError(
            "no tie or cord belongs at the neck or hood of a child's garment, where it can catch "
            "and pull tight; close it with a button or a loop, or sew a bow down flat through its "
            "knot",
            "place",
        )
    if inputs.place != DRAWN:
        return
    sheet.note("longest", "most that may hang free of a tie drawn through at waist or hem",
               LONGEST_DRAWN, "", basis=published("cfr-1120"))  # fmt: skip
    if inputs.tie_length > LONGEST_DRAWN:
        raise RefusalError(
            f"tie_length {TAPE.say(inputs.tie_length)} is more than may hang free at waist or hem; "
            f"use {at_most(inputs, 'tie_length', LONGEST_DRAWN)}, or sew the ties into a seam: "
            f"place: {SEAMED}",
            "tie_length",
        )


def _note_bow(sheet: Worksheet, inputs: TiePair) -> None:
    """Note how far the ends hang, tied and untied; refuses a bow whose ends pass the hem."""
    end = sheet.note("bow_end", "what hangs from the knot of the bow",
                     max(ZERO, inputs.tie_length - inputs.reach - inputs.bow),
                     "{tie_length} - {reach} - {bow}, at least 0")  # fmt: skip
    if end.length > inputs.hem_below:
        most = inputs.hem_below + inputs.reach + inputs.bow
        raise RefusalError(
            f"tie_length {TAPE.say(inputs.tie_length)} lets the ends of the bow hang "
            f"{TAPE.say(end.length)}, below the hem of the garment, {TAPE.say(inputs.hem_below)} "
            f"down; use {ways(at_most(inputs, 'tie_length', most), 'a larger bow')}",
            "tie_length",
        )
    sheet.note("above_hem", "from the ends of the bow down to the hem",
               inputs.hem_below - end.length, "{hem_below} - {bow_end}")  # fmt: skip
    sheet.note("untied_below", "untied, it reaches below the hem by",
               max(ZERO, inputs.tie_length - inputs.hem_below),
               "{tie_length} - {hem_below}, at least 0")  # fmt: skip


def _note_tube(sheet: Worksheet, inputs: TiePair) -> list[Rule]:
    """Note the strip of a tube; refuses an allowance that cannot lie in it."""
    if inputs.seam > inputs.tie_width:
        raise RefusalError(
            f"seam {TAPE.say(inputs.seam)} cannot lie flat in a tie {TAPE.say(inputs.tie_width)} "
            f"wide; trim it after sewing and write {at_most(inputs, 'seam', inputs.tie_width)}",
            "seam",
        )
    width = sheet.note("cut_width", "tie, cut width", 2 * inputs.tie_width + 2 * inputs.seam,
                       "2 × {tie_width} + 2 × {seam}")  # fmt: skip
    sheet.note("cut_length", "tie, cut length",
               inputs.tie_length + inputs.seam + inputs.end_allowance,
               "{tie_length} + {seam} + {end_allowance}")  # fmt: skip
    fold = sheet.note("fold_line", "fold, along the middle", width.length / 2, "{cut_width} / 2")
    other = sheet.note("other_seam", "stitching on the other half",
                       width.length - inputs.seam, "{cut_width} - {seam}")  # fmt: skip
    sheet.seams.append(Seam("edge and end of a tie", inputs.seam))
    return [Rule(Line.STITCH, sheet["seam"]), Rule(Line.FOLD, fold), Rule(Line.STITCH, other)]


def _note_hemmed(sheet: Worksheet, inputs: TiePair) -> list[Rule]:
    """Note the strip of one layer; refuses hems that would lie over one another."""
    if 2 * inputs.hem_turn > inputs.tie_width:
        raise RefusalError(
            f"hem_turn {TAPE.say(inputs.hem_turn)} on both edges lies over itself in a tie "
            f"{TAPE.say(inputs.tie_width)} wide; use at most {TAPE.no_more(inputs.tie_width / 2)}, "
            f"or make it as {TUBE}",
            "hem_turn",
        )
    width = sheet.note("cut_width", "tie, cut width", inputs.tie_width + 4 * inputs.hem_turn,
                       "{tie_width} + 4 × {hem_turn}")  # fmt: skip
    sheet.note("cut_length", "tie, cut length",
               inputs.tie_length + 2 * inputs.hem_turn + inputs.end_allowance,
               "{tie_length} + 2 × {hem_turn} + {end_allowance}")  # fmt: skip
    near: list[Value] = [
        sheet.note("first_fold", "first fold, from the raw edge", inputs.hem_turn, "{hem_turn}"),
        sheet.note("second_fold", "second fold, from the raw edge", 2 * inputs.hem_turn,
                   "2 × {hem_turn}"),
    ]  # fmt: skip
    far: list[Value] = [
        sheet.note("far_second_fold", "second fold at the other edge",
                   width.length - 2 * inputs.hem_turn, "{cut_width} - 2 × {hem_turn}"),
        sheet.note("far_first_fold", "first fold at the other edge",
                   width.length - inputs.hem_turn, "{cut_width} - {hem_turn}"),
    ]  # fmt: skip
    return [Rule(Line.FOLD, each) for each in (*near, *far)]


def _add_cautions(sheet: Worksheet, inputs: TiePair) -> None:
    if inputs.place == BONNET:
        sheet.cautions.append(BONNET_COMES_OFF)
    if inputs.place == SEAMED:
        sheet.cautions.append(SASH_LENGTH)
    sheet.cautions.extend((TIES_CATCH, NECK_CORDS, LOOSE_THREADS, PINS_AND_IRON))


def _draw(sheet: Worksheet, inputs: TiePair, rules: list[Rule]) -> None:
    tie = Tie(sheet["tie_length"], sheet["tie_width"], sheet["end_allowance"], sheet["hem_turn"])
    strip = FlatStrip(sentence("tie"), sheet["cut_width"], sheet["cut_length"], rules,
                      grain_across=False)  # fmt: skip
    if inputs.made == TUBE:
        section = tube_section(Tube(sheet["tie_width"], sheet["seam"], centred=False))
        words = "A tie cut through, its cloth drawn thick, the allowances inside."
    else:
        section = hemmed_section(tie)
        words = "A tie cut through, its cloth drawn thick, a hem at both edges."
    sheet.pictures.extend(
        (
            Picture("finished", sentence("The pair at both sides of a panel, its ends "
                                         "hidden."),
                    sewn_in(tie, hemmed=inputs.made == HEMMED), finished=True),
            strips_picture([strip], "The strip of one tie with its lines."),
            Picture("section", sentence(words), section),
        )
    )  # fmt: skip
    if inputs.place == SEAMED:
        bow = Bow(*(sheet[name] for name in ("reach", "bow_end", "hem_below", "tie_width")))
        caption = sentence("One half of the garment from behind, its bow tied: the end hangs "
                           "{end} and stays {above} above the hem.",
                           end=sheet["bow_end"], above=sheet["above_hem"])  # fmt: skip
        sheet.pictures.append(Picture("worn", caption, tied(bow)))


TECHNIQUE = TiePair
