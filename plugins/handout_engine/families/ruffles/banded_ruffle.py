"""A ruffle of two strips whose band is the turned-up edge of its wider facing.

Front and facing are sewn together along one edge and folded so that their raw edges meet. The
facing is cut twice the band wider than the front, so it comes round the fold and shows on the
right side as a band; the seam allowance, pressed into the band, fills it.
"""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import CLOTH, SEWING, choice, length, optional_length, ratio
from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.naming import constant
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.cloth.cloth import ClothBought
from handout_engine.families.ruffles.banded_ruffle_pictures import add_banded_pictures
from handout_engine.families.ruffles.edge_seams import add_edge_seam_steps
from handout_engine.families.ruffles.seamed_ruffle import SeamedRuffle
from handout_engine.shared.gathering import strip_piece
from handout_engine.shared.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.shared.strips import Strips
from handout_engine.working.workings import Seam, marked
from handout_engine.working.worksheet import Worksheet

INTO_BAND, AWAY = "into the band", "away from the band"
CONTRAST, SAME = "contrast", "same"
WIDEST_FILLED = constant("widest band that is filled", inches("1/2"), PRACTICE)
USUAL_ALLOWANCE = constant("usual allowance", inches("1/4"), PRACTICE)
USUAL_SHOWS = constant("usual front", inches("3/2"), PRACTICE)


class BandedRuffle(SeamedRuffle):
    """A gathered ruffle with a self-made band along its lower edge."""

    title = "Banded ruffle"
    family = "ruffles"
    summary = (
        "Two strips sewn together and folded; the wider facing turns up as a band along the edge."
    )

    shows = optional_length(
        "front that shows",
        "Depth of the front between the edge seam and the band.",
        "1 1/2 in, unless the cut width of the front is given",
        ("1/8 in", "40 in"),
        in_use="front_shows",
    )
    front = optional_length(
        "front strip, cut",
        "Its cut width, instead of how much shows.",
        "worked out from the front that shows",
        ("1/4 in", "44 in"),
        in_use="front_cut_width",
    )
    band = length("band", "Finished width of the band.", "1/4 in", ("1/16 in", "6 in"))
    fullness = ratio(
        "fullness",
        "Length of the strip before gathering, for each length of edge; two layers gather "
        "together, so less than for a single one.",
        "1.5",
        ("1", "6"),
        basis=PRACTICE,
    )
    seam_allowance = optional_length(
        "seam allowance",
        "Allowance of the seam between front and facing.",
        "as wide as the band up to 1/2 in, so that it fills it; 1/4 in for a wider band",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="band_seam",
    )
    press = choice(
        "press allowance",
        "Where the allowance of that seam is pressed.",
        INTO_BAND,
        AWAY,
        group=SEWING,
    )
    turn_of_cloth = length(
        "turn of cloth",
        "Extra on the facing where thick cloth turns.",
        "0 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    facing_cloth = choice(
        "facing cloth",
        "A contrasting cloth, or the same as the front.",
        CONTRAST,
        SAME,
        group=CLOTH,
    )
    facing_cloth_width = optional_length(
        "facing cloth width",
        "Width of a contrasting cloth as sold.",
        "the same as the cloth width",
        ("4 in", "120 in"),
        group=CLOTH,
    )

    @value("allowance between front and facing", basis=PRACTICE)
    def band_seam(self) -> Length:
        """As asked for, or as wide as a narrow band, which it then fills."""
        if self.seam_allowance is not None:
            return self.seam_allowance
        return self.band if self.band <= WIDEST_FILLED else USUAL_ALLOWANCE

    @check
    def the_allowance_lies_in_the_band(self) -> None:
        """Refuse an allowance that is wider than the band it is pressed into."""
        if self.press == INTO_BAND and self.band_seam > self.band:
            band, most = TAPE.say(self.band), TAPE.say(self.band, Saying.DOWN)
            raise RefusalError(
                f"seam_allowance {TAPE.say(self.band_seam)} is wider than band {band}; it cannot "
                f"lie flat inside it (use at most {most}, trim it to {most} after sewing and write "
                f'that, or press it away: press: "{AWAY}")',
                "seam_allowance",
            )

    @check
    def the_front_is_given_once(self) -> None:
        """Refuse a front that is given by its cut width and by what shows of it."""
        if self.front is not None and self.shows is not None:
            raise RefusalError(
                "front and shows say the same thing twice; write one of them", "front"
            )

    @value("front that shows")
    def front_shows(self) -> Length:
        """As asked for, or what the seams leave of a front that is cut already."""
        if self.front is not None:
            return self.front - self.band_seam - self.edge_allowance
        return USUAL_SHOWS if self.shows is None else self.shows

    @check
    def some_of_the_front_shows(self) -> None:
        """Refuse a front that its two seams take whole."""
        seams = self.band_seam + self.edge_allowance
        if self.front is not None and self.front <= seams:
            raise RefusalError(
                f"front {TAPE.say(self.front)} leaves nothing to show; its two seams "
                f"take {TAPE.both(seams)}, so cut it wider than that",
                "front",
            )

    @value("front strip, cut width")
    def front_cut_width(self) -> Length:
        """As given, or what shows and what its two seams take."""
        if self.front is not None:
            return self.front
        return self.front_shows + self.band_seam + self.edge_allowance

    @value("facing strip, cut width")
    def facing_cut_width(self) -> Length:
        """Twice the band wider than the front, round which it comes."""
        return self.front_cut_width + 2 * self.band + self.turn_of_cloth

    @value("ruffle from raw edge to fold")
    def finished_depth(self) -> Length:
        """What is measured once it is folded and pressed."""
        return self.front_cut_width - self.band_seam + self.band

    @value("ruffle below the edge seam")
    def hangs(self) -> Length:
        """What shows of it on the garment."""
        return self.front_shows + self.band

    @value("both strips sewn and opened flat")
    def opened_width(self) -> Length:
        """What is measured before they are folded."""
        return self.front_cut_width + self.facing_cut_width - 2 * self.band_seam

    @value("band seam on the front, from its top raw edge")
    def front_seam_line(self) -> Length:
        """Where front and facing are sewn together, on the front."""
        return self.front_cut_width - self.band_seam

    @value("fold on the facing, from its seamed raw edge")
    def fold_line(self) -> Length:
        """Where the facing is folded: the band below the seam."""
        return self.band_seam + self.band

    @value("usable facing cloth width")
    def facing_usable_width(self) -> Length | None:
        """Of a facing cloth of its own width; None where it is as wide as the other."""
        width = self.facing_cloth_width
        own = self.facing_cloth == CONTRAST and width is not None
        return self.usable_of(width) if own and width is not None else None

    @group
    def strips_of_front(self) -> Strips:
        """The strips of the front."""
        return self.joined_strips(self.front_cut_width, "front_")

    @group
    def strips_of_facing(self) -> Strips:
        """The strips of the facing, of its own cloth where that is another."""
        return self.joined_strips(self.facing_cut_width, "facing_", self.facing_usable_width)

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """One cloth, or two."""
        if self.facing_cloth == SAME:
            return (ClothBought(self, "cloth"),)
        facing = ClothBought(self, "facing cloth", "facing_", self.facing_cloth_width)
        return ClothBought(self, "front cloth", "front_"), facing

    def cut(self, sheet: Worksheet) -> None:
        """Two sets of strips, with the lines to mark on them."""
        one = self.facing_cloth == SAME
        front, facing = ("cloth", "cloth") if one else ("front cloth", "facing cloth")
        sheet.pieces.extend(
            (
                strip_piece(sheet, "front strip", front, "front_", marked(self.front_seam_line)),
                strip_piece(sheet, "facing strip", facing, "facing_", marked(self.fold_line)),
            )
        )
        sheet.seams.append(Seam("front to facing", self.band_seam))
        sheet.seams.append(Seam("ruffle to edge", self.edge_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """The strips joined, sewn together and folded; then as any gathered ruffle."""
        add_gathering_supplies(sheet)
        add_sample(sheet, sheet["finished_depth"], "two layers of strip")
        add_washing_step(sheet)
        sheet.step(
            "Cut the front strips {front_cut_width} wide and {front_strip_length} long, and the "
            "facing strips {facing_cut_width} wide and {facing_strip_length} long, across the "
            "cloth."
        )
        for prefix, what in (("front_", "front"), ("facing_", "facing")):
            add_joining_steps(sheet, prefix, what)
        sheet.step(
            "Sew front and facing right sides together along one long edge with {band_seam} "
            "allowance.",
            "opened flat, it is {opened_width} from raw edge to raw edge; if it is more, the seam "
            "was narrower than {band_seam}.",
        )
        sheet.step(
            "Press both allowances toward the facing, so that they will lie in the band."
            if self.press == INTO_BAND
            else "Press both allowances toward the front, away from the band."
        )
        sheet.step(
            "Fold wrong sides together so that the long raw edges meet: the facing comes round "
            "the fold and shows as a band. Press and baste the raw edges.",
            "from raw edges to fold it is {finished_depth}; if it is less, the seam was deeper "
            "than {band_seam}. The band is {band} deep all along.",
        )
        add_gathering_steps(sheet, "both layers")
        add_edge_seam_steps(
            sheet,
            "below the seam the front shows {front_shows} and the band {band}, {hangs} in all.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The finished ruffle, its strips, its cross-section twice, and its quarters."""
        into_band = self.press == INTO_BAND
        add_banded_pictures(sheet, self.fullness.number, into_band=into_band)


TECHNIQUE = BandedRuffle
