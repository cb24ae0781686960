"""How wide the strips of a front band are cut, by what it is made of."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most, ways
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.shared.buttons import ButtonInputs

ONE, TWO, CUT_ON = "a folded strip", "two cloths", "cut on with its facing"
EDGE, OPENING = "a front edge", "an opening cut into the front"
WIDEST_FILLED = constant("widest edge that is filled", inches("1/2"), PRACTICE)
USUAL_ALLOWANCE = constant("usual allowance", inches("1/4"), PRACTICE)


class BandInputs(ButtonInputs, ClothInputs):
    """The inputs of a front band, and what it is as a whole."""

    opening = length(
        "length of the band",
        "Finished, from its upper to its lower end.",
        "12 in",
        ("1 in", "60 in"),
    )
    made = choice(
        "made of",
        "A strip folded in half, two cloths of which the second shows as a narrow "
        "edge, or the front itself with its facing cut on.",
        ONE,
        TWO,
        CUT_ON,
        group=SEWING,
    )
    edge = length(
        "contrast edge",
        "Of two cloths: what of the second shows along the front edge.",
        "1/8 in",
        ("1/16 in", "1 in"),
    )
    onto = choice(
        "set onto",
        "An open front, or an opening that is cut into a front; there the garment's own seams "
        "take the ends of the band.",
        EDGE,
        OPENING,
        group=SEWING,
    )
    edge_seam = optional_length(
        "edge seam",
        "Of two cloths: allowance of the seam that joins them; it lies in the edge.",
        "as wide as the edge up to 1/2 in, so that it fills it; 1/4 in for a wider one",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    seam = length(
        "band seam",
        "Allowance between band and front; as much is turned under inside.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing = optional_length(
        "facing",
        "Cut on: finished width of the facing, from the fold to its inner edge.",
        "as wide as the band",
        ("1/4 in", "8 in"),
        group=SEWING,
    )
    facing_turn = length(
        "turned under",
        "Cut on: what is turned under along the facing's inner edge.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    end_allowance = length(
        "end allowance",
        "Beyond the band at its upper and at its lower end.",
        "1/4 in",
        ("0 in", "3 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    bands = count("how many", "Two for one garment, right and left.", 2, 200)

    @check
    def a_band_that_is_cut_on_has_an_open_front(self) -> None:
        """Refuse to cut a facing on to an opening that is cut into a front."""
        if self.onto == OPENING and self.made == CUT_ON:
            raise RefusalError(
                "a band that is cut on belongs to an open front; make it of strips, or set it onto "
                f"{EDGE}",
                "onto",
            )

    @value("finished band, and what the fronts overlap")
    def band_width(self) -> Length:
        """As far to the inside of the centre line as beyond it."""
        return 2 * self.beyond_centre

    @value("band, cut length", finishes="opening")
    def band_length(self) -> Length:
        """What is finished, and both ends."""
        return self.opening + 2 * self.end_allowance

    @group
    def strips(self) -> BandOfStrips | CutOnBand:
        """What it is made of."""
        if self.made == CUT_ON:
            return CutOnBand(self)
        return FoldedBand(self) if self.made == ONE else TwoClothBand(self)

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """A cloth for each strip; a band that is cut on is of the cloth of the front."""
        if self.made == CUT_ON:
            return ()
        if self.made == ONE:
            return (ClothBought(self, "cloth"),)
        return ClothBought(self, "band cloth", "band_"), ClothBought(self, "edge cloth", "edge_")


class BandOfStrips(Group):
    """The strips of a band that is sewn on."""

    def __init__(self, technique: BandInputs) -> None:
        """Take the band."""
        super().__init__()
        self.technique = technique

    @check
    def the_seam_lies_in_the_band(self) -> None:
        """Refuse an allowance that is wider than the band."""
        seam, band = self.technique.seam, self.technique.band_width
        if seam > band:
            raise RefusalError(
                f"seam {TAPE.say(seam)} is wider than the band {TAPE.say(band)}, in which it has "
                f"to lie flat; use {ways(at_most(self.technique, 'seam', band), 'a wider band')}, "
                "trimmed after sewing if need be",
                "seam",
            )


class FoldedBand(BandOfStrips):
    """One strip, folded in half."""

    @value("band strip, cut width")
    def strip_width(self) -> Length:
        """Both halves, with the seam and what is turned under inside."""
        return 2 * self.technique.band_width + 2 * self.technique.seam

    @value("fold, from the edge that is sewn to the front")
    def fold_line(self) -> Length:
        """Along the middle."""
        return self.technique.band_width + self.technique.seam

    @value("turned under, from that same edge")
    def turned_edge(self) -> Length:
        """As much as the seam takes."""
        return self.strip_width - self.technique.seam


class TwoClothBand(BandOfStrips):
    """An outer strip and a facing of a second cloth, which comes round the fold as an edge."""

    @check
    def some_of_the_outer_strip_shows(self) -> None:
        """Refuse an edge as wide as the band."""
        edge, band = self.technique.edge, self.technique.band_width
        if edge >= band:
            raise RefusalError(
                f"edge {TAPE.say(edge)} leaves nothing of the outer strip on a band "
                f"{TAPE.say(band)} wide; use less than {TAPE.no_more(band)}, or a wider extension",
                "edge",
            )

    @value("allowance between outer strip and facing", basis=PRACTICE)
    def joining(self) -> Length:
        """As asked for, or as wide as a narrow edge, which it then fills."""
        band = self.technique
        if band.edge_seam is not None:
            return band.edge_seam
        return band.edge if band.edge <= WIDEST_FILLED else USUAL_ALLOWANCE

    @check
    def the_allowance_lies_in_the_edge(self) -> None:
        """Refuse an allowance that is wider than the edge it lies in."""
        edge = self.technique.edge
        if self.joining > edge:
            raise RefusalError(
                f"edge_seam {TAPE.say(self.joining)} is wider than the edge {TAPE.say(edge)}; it "
                f"cannot lie flat inside it (use {at_most(self.technique, 'edge_seam', edge)}, "
                "trimmed after sewing if need be)",
                "edge_seam",
            )

    @value("outer strip that shows")
    def outer_shows(self) -> Length:
        """The edge takes the rest of the band."""
        return self.technique.band_width - self.technique.edge

    @value("outer strip, cut width")
    def outer_width(self) -> Length:
        """What shows, and what its two seams take."""
        return self.outer_shows + self.technique.seam + self.joining

    @value("facing strip, cut width")
    def facing_width(self) -> Length:
        """Twice the edge wider than the outer strip, round which it comes."""
        return self.outer_width + 2 * self.technique.edge

    @value("both strips joined, opened flat")
    def strip_width(self) -> Length:
        """The joining seam takes of both."""
        return self.outer_width + self.facing_width - 2 * self.joining

    @value("turned under, from the edge that is sewn to the front")
    def turned_edge(self) -> Length:
        """Along the far edge of the facing, as much as the seam takes."""
        return self.strip_width - self.technique.seam

    @value("fold on the facing, from its edge that is joined")
    def fold_line(self) -> Length:
        """The edge lies below the joining seam."""
        return self.joining + self.technique.edge

    @value("joining seam on the outer strip, from the edge that is sewn to the front")
    def joined_line(self) -> Length:
        """Where the facing is sewn to it."""
        return self.outer_width - self.joining


class CutOnBand(Group):
    """A band that is cut on to the front, with its facing."""

    def __init__(self, technique: BandInputs) -> None:
        """Take the band."""
        super().__init__()
        self.technique = technique

    @value("facing, from the fold to its inner edge")
    def facing_used(self) -> Length:
        """As asked for, or as wide as the band that it faces."""
        band = self.technique
        return band.band_width if band.facing is None else band.facing

    @check
    def the_facing_faces_the_band(self) -> None:
        """Refuse a facing narrower than the band."""
        facing, band = self.facing_used, self.technique.band_width
        if facing < band:
            raise RefusalError(
                f"facing {TAPE.say(facing)} is narrower than the band {TAPE.say(band)}, so that "
                "holes and buttons would stand partly in one layer; use "
                f"{ways(at_least(self.technique, 'facing', band), 'a narrower band')}",
                "facing",
            )

    @value("fold, from the cut edge")
    def fold_line(self) -> Length:
        """The facing, and what is turned under along its inner edge."""
        return self.technique.facing_turn + self.facing_used

    @value("front, cut beyond its centre line")
    def cut_beyond(self) -> Length:
        """The front reaches beyond the centre line, and its facing beyond that."""
        return self.fold_line + self.technique.beyond_centre
