"""A pair of ties to sew into a seam: a turned tube, or one layer with hemmed edges."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import at_most
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drawing.scene import Line
from handout_engine.families.closures.tie_pair_drawing import (
    Bow,
    Tie,
    hemmed_section,
    sewn_in,
    tied,
)
from handout_engine.families.closures.tie_pair_steps import add_bow_step, add_sample, add_steps
from handout_engine.families.closures.worn_ties import BONNET, DRAWN, WornTies
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
from handout_engine.working.workings import Grain, Picture, Piece, Seam, Supply, marked
from handout_engine.working.worksheet import Worksheet

TUBE, HEMMED = "a turned tube", "one layer, hemmed"
HEM_FOLDS = ("first_fold", "second_fold", "far_second_fold", "far_first_fold")


class TiePair(WornTies):
    """Equal ties in pairs, each closed at its free end."""

    title = "Pair of ties"
    family = "closures"
    summary = (
        "Ties or sashes in pairs, as a turned tube or in one hemmed layer, and where they may be "
        "worn."
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

    @property
    def is_tube(self) -> bool:
        """Whether it is sewn of two layers and turned."""
        return self.noted("made") == TUBE

    @value("ties to cut")
    def ties(self) -> Count:
        """Two of each pair."""
        return 2 * self.pairs

    @check
    def the_edges_lie_inside_the_tie(self) -> None:
        """Refuse an allowance or hems that find no room in a tie so narrow."""
        if self.is_tube and self.seam > self.tie_width:
            raise RefusalError(
                f"seam {TAPE.say(self.seam)} cannot lie flat in a tie {TAPE.say(self.tie_width)} "
                "wide; trim it after sewing and write "
                f"{at_most(self, 'seam', self.tie_width)}",
                "seam",
            )
        if not self.is_tube and 2 * self.hem_turn > self.tie_width:
            raise RefusalError(
                f"hem_turn {TAPE.say(self.hem_turn)} on both edges lies over itself in a tie "
                f"{TAPE.say(self.tie_width)} wide; use at most "
                f"{TAPE.no_more(self.tie_width / 2)}, or make it as {TUBE}",
                "hem_turn",
            )

    @value("tie, cut width")
    def cut_width(self) -> Length:
        """Two layers with a seam, or one with a hem of two turns at both edges."""
        if self.made == TUBE:
            return 2 * self.tie_width + 2 * self.seam
        return self.tie_width + 4 * self.hem_turn

    @value("tie, cut length")
    def cut_length(self) -> Length:
        """Its free end is sewn across or hemmed, the other is sewn in."""
        finishing = self.seam if self.made == TUBE else 2 * self.hem_turn
        return self.tie_length + finishing + self.end_allowance

    @value("fold, along the middle")
    def fold_line(self) -> Length | None:
        """Of a tube."""
        return self.cut_width / 2 if self.is_tube else None

    @value("stitching on the other half")
    def other_seam(self) -> Length | None:
        """Where the one line of stitching comes out on the layer below."""
        return self.cut_width - self.seam if self.is_tube else None

    @value("first fold, from the raw edge")
    def first_fold(self) -> Length | None:
        """The first turn of a hem."""
        return None if self.is_tube else self.hem_turn

    @value("second fold, from the raw edge")
    def second_fold(self) -> Length | None:
        """Its second turn."""
        return None if self.is_tube else 2 * self.hem_turn

    @value("second fold at the other edge")
    def far_second_fold(self) -> Length | None:
        """From the same raw edge."""
        return None if self.second_fold is None else self.cut_width - self.second_fold

    @value("first fold at the other edge")
    def far_first_fold(self) -> Length | None:
        """From the same raw edge."""
        return None if self.first_fold is None else self.cut_width - self.first_fold

    @value("finished tie with the end that is sewn in")
    def with_end(self) -> Length:
        """What is measured before it is sewn in."""
        return self.tie_length + self.end_allowance

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the ties."""
        return ClothBought(self, "tie cloth")

    def cut(self, sheet: Worksheet) -> None:
        """The ties with their folds, and their seams."""
        width, long, count = sheet["cut_width"], sheet["cut_length"], self.ties.number
        folds = ("fold_line",) if self.is_tube else HEM_FOLDS
        marks = marked(*(sheet[name].length for name in folds))
        sheet.pieces.append(Piece("tie", "tie cloth", count, width, long, Grain.STRAIGHT, marks))
        if self.is_tube:
            sheet.seams.append(Seam("edge and end of a tie", self.seam))
        sheet.seams.append(Seam("end of a tie in the garment", self.end_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """The ties made and sewn in, and what they must not do."""
        sheet.supplies.append(Supply("fine thread to match"))
        if self.place == BONNET:
            sheet.cautions.append(BONNET_COMES_OFF)
        if self.has_bow:
            sheet.cautions.append(SASH_LENGTH)
        sheet.cautions.extend((TIES_CATCH, NECK_CORDS, LOOSE_THREADS, PINS_AND_IRON))
        add_sample(sheet, self.is_tube)
        add_steps(sheet, self.is_tube, self.place == DRAWN)
        if self.has_bow:
            add_bow_step(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The pair sewn in, the strip of one, a tie cut through, and the bow as it is worn."""
        names = ("tie_length", "tie_width", "end_allowance", "hem_turn")
        tie = Tie(*(sheet[name] for name in names))
        if self.is_tube:
            rules = [
                Rule(Line.STITCH, sheet["seam"]),
                Rule(Line.FOLD, sheet["fold_line"]),
                Rule(Line.STITCH, sheet["other_seam"]),
            ]
            section = tube_section(Tube(sheet["tie_width"], sheet["seam"], centred=False))
            words = "A tie cut through, its cloth drawn thick, the allowances inside."
        else:
            rules = [Rule(Line.FOLD, sheet[name]) for name in HEM_FOLDS]
            section = hemmed_section(tie)
            words = "A tie cut through, its cloth drawn thick, a hem at both edges."
        width, long = sheet["cut_width"], sheet["cut_length"]
        strip = FlatStrip(sentence("tie"), width, long, rules, grain_across=False)
        caption = sentence("The pair at both sides of a panel, its ends hidden.")
        pair = sewn_in(tie, hemmed=not self.is_tube)
        sheet.pictures.append(Picture("finished", caption, pair, finished=True))
        sheet.pictures.append(strips_picture([strip], "The strip of one tie with its lines."))
        sheet.show("section", words, section)
        if self.has_bow:
            _draw_bow(sheet)


def _draw_bow(sheet: Worksheet) -> None:
    bow = Bow(*(sheet[name] for name in ("reach", "bow_end", "hem_below", "tie_width")))
    caption = sentence(
        "One half of the garment from behind, its bow tied: the end hangs {end} and stays {above} "
        "above the hem.",
        end=sheet["bow_end"],
        above=sheet["above_hem"],
    )
    sheet.pictures.append(Picture("worn", caption, tied(bow)))


TECHNIQUE = TiePair
