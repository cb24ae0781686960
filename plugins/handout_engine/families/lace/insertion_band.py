"""A band built up of strips: lace, entredeux, beading, puffing, embroidery and cloth."""

from __future__ import annotations

from itertools import pairwise

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import (
    MOST_NAMED,
    length,
    named_lengths,
    optional_count,
    optional_length,
    ratio,
)
from handout_engine.amounts.lengths import Length, NamedLength, inches, total
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.lace.insertion_band_drawing import (
    cut_strips,
    finished_band,
    measured_band,
)
from handout_engine.families.lace.insertion_band_measures import (
    CUT_FROM_CLOTH,
    PUFFING,
    STRIPS,
    BandJoinInputs,
    Join,
    Strip,
    joining,
)
from handout_engine.families.lace.insertion_band_steps import add_band_sample, add_band_steps
from handout_engine.families.lace.lace import LaceBought, TrimInputs, add_lace_supplies
from handout_engine.shared.gathering import strip_piece
from handout_engine.shared.strips import Joined, Strips
from handout_engine.working.workings import Chart, Picture, Seam
from handout_engine.working.worksheet import Worksheet

TAPE = Tape(finest=32)


class InsertionBand(BandJoinInputs, TrimInputs, ClothInputs):
    """A band of ordered strips, joined each in its own way."""

    title = "Built-up insertion band"
    family = "lace"
    summary = (
        "Strips of lace, entredeux, beading, puffing, embroidery and cloth joined into one band "
        "of a wanted width."
    )

    strips = named_lengths(
        "strips",
        "The strips from top to bottom, each with the width that shows.",
        "lace 5/8 in; entredeux 1/8 in; puffing 1 1/2 in; entredeux 1/8 in; lace 5/8 in",
        ("1/16 in", "6 in"),
        STRIPS,
    )
    run = length(
        "finished length", "Length of the band between its ends.", "18 in", ("1 in", "10 yd")
    )
    wanted = optional_length(
        "wanted width",
        "Finished width that the band must have; one strip gives way.",
        "the sum of the strips",
        ("1/2 in", "60 in"),
        in_use="finished_width",
    )
    fit = optional_count(
        "strip that gives way",
        "Number of the strip that is made to fit, from the top.",
        "the first strip cut from cloth",
        MOST_NAMED,
    )
    fullness = ratio(
        "fullness of puffing",
        "Its length for each length of band.",
        "1.75",
        ("1", "4"),
        basis=PRACTICE,
    )

    @property
    def kinds(self) -> tuple[str, ...]:
        """What its strips are, from top to bottom."""
        return tuple(each.name for each in self.strips)

    @property
    def fitted(self) -> int | None:
        """The number of the strip that gives way, where a width is wanted and one can."""
        if self.wanted is None:
            return None
        if self.fit is not None:
            return self.fit.number
        cut = (number for number, kind in enumerate(self.kinds, 1) if kind in CUT_FROM_CLOTH)
        return next(cut, None)

    @check
    def one_strip_can_give_way(self) -> None:
        """Refuse a wanted width where no strip is named for it that there is."""
        number = len(self.strips)
        if self.wanted is None and self.fit is not None:
            raise RefusalError("fit needs the wanted width; write wanted, or leave fit out", "fit")
        if self.wanted is not None and self.fit is not None and self.fit > number:
            raise RefusalError(
                f"fit {self.fit} is not a strip of this band; use a number from 1 to {number}",
                "fit",
            )
        if self.wanted is not None and self.fitted is None:
            raise RefusalError(
                "no strip of this band is cut from cloth, so none can be cut to fit; use a number "
                f"from 1 to {number} for the strip that gives way, or add a strip of cloth or "
                "puffing",
                "fit",
            )

    @check
    def the_others_leave_some_of_the_wanted_width(self) -> None:
        """Refuse a wanted width that the other strips fill."""
        others = total(
            each.length for number, each in enumerate(self.strips, 1) if number != self.fitted
        )
        if self.wanted is not None and self.wanted <= others:
            raise RefusalError(
                f"wanted {TAPE.say(self.wanted)} leaves nothing for strip {self.fitted}; the other "
                f"strips alone are {TAPE.both(others)} wide, so want more than that or take one "
                "out",
                "wanted",
            )

    @group
    def ordered(self) -> tuple[Strip, ...]:
        """The strips from top to bottom; one of them fills what the others leave."""
        fitted, strips = self.fitted, list(enumerate(self.strips, 1))
        found = {
            number: Strip(self, number, self.kinds, each.length)
            for number, each in strips
            if number != fitted
        }
        if fitted is not None and self.wanted is not None:
            left = self.wanted
            for other in found.values():
                left -= other.width
            found[fitted] = Strip(self, fitted, self.kinds, left)
        return tuple(found[number] for number, _ in strips)

    @value("finished width of the band")
    def finished_width(self) -> Length:
        """What shows of all its strips."""
        return total(strip.width for strip in self.ordered)

    @value("flat strips, cut length")
    def cut_length(self) -> Length:
        """As long as the band, and both its ends."""
        return self.run + 2 * self.end_allowance

    @property
    def has_puffing(self) -> bool:
        """Whether a strip of it is gathered."""
        return PUFFING in self.kinds

    @value("puffing, cut length before gathering")
    def puffing_length(self) -> Length | None:
        """Longer by its fullness."""
        return self.fullness * self.run + 2 * self.end_allowance if self.has_puffing else None

    @value("a quarter of the band")
    def run_quarter(self) -> Length | None:
        """What each quarter of the puffing is drawn up to."""
        return self.run / 4 if self.has_puffing else None

    @value("scrap of puffing to gather", basis=PRACTICE)
    def sample_puffing(self) -> Length | None:
        """Long enough to see how close its gathers stand."""
        return inches(9) if self.has_puffing else None

    @value("scrap of puffing, drawn up")
    def sample_drawn_up(self) -> Length | None:
        """What a scrap of that fullness measures."""
        return None if self.sample_puffing is None else self.sample_puffing / self.fullness

    def cut_long(self, strip: Strip) -> Length:
        """How long a strip is cut in all."""
        gathered = self.puffing_length if strip.kind == PUFFING else None
        return self.cut_length if gathered is None else gathered

    @group
    def cut_strips(self) -> tuple[Strips, ...]:
        """The pieces that are joined to a strip of cloth."""
        joined = Joined(self.strip_allowance)
        return tuple(
            Strips(self.cut_long(strip), strip.cut_width, self.usable_width, joined, strip.prefix)
            for strip in self.ordered
            if not strip.bought
        )

    @group
    def trims(self) -> tuple[LaceBought, ...]:
        """The trims that are bought, strips of one kind and width together."""
        alike: dict[tuple[str, Length], list[Strip]] = {}
        for strip in self.ordered:
            if strip.bought:
                alike.setdefault((strip.kind, strip.width), []).append(strip)
        return tuple(self._bought(strips) for strips in alike.values())

    def _bought(self, strips: list[Strip]) -> LaceBought:
        first, number = strips[0], len(strips)
        numbers = ", ".join(str(strip.number) for strip in strips)
        name = f"{first.kind} for strip{'s' if number > 1 else ''} {numbers}"
        trim = NamedLength(name, first.width)
        return LaceBought(self, self.cut_length, trim, first.prefix, number)

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """The cloth, where a strip is cut from it."""
        return (ClothBought(self, "cloth"),) if CUT_FROM_CLOTH & {*self.kinds} else ()

    @group
    def joins(self) -> tuple[Join, ...]:
        """Each way of joining, with the pairs of strips that it is for."""
        found: dict[str, list[tuple[Strip, Strip]]] = {}
        for upper, lower in pairwise(self.ordered):
            found.setdefault(joining(upper.kind, lower.kind), []).append((upper, lower))
        return tuple(Join(way, tuple(pairs)) for way, pairs in found.items())

    def cut(self, sheet: Worksheet) -> None:
        """The strips of cloth with their seam lines, and all strips in a chart."""
        for strip in self.ordered:
            if not strip.bought:
                name = f"strip {strip.name}"
                sheet.pieces.append(strip_piece(sheet, name, "cloth", strip.prefix, strip.marks))
        for upper, lower in pairwise(self.ordered):
            for strip, taken in ((upper, upper.below), (lower, lower.above)):
                name = f"{upper.number} to {lower.number}, on strip {strip.name}"
                sheet.seams.append(Seam(name, taken))
        rows = tuple(
            (strip.name, strip.width, strip.cut_width, self.cut_long(strip))
            for strip in self.ordered
        )
        headings = ("Strip", "Shows", "Cut wide", "Cut long")
        sheet.charts.append(Chart("The strips from top to bottom", headings, rows))

    def sew(self, sheet: Worksheet) -> None:
        """A short piece first; then the strips cut and joined."""
        add_lace_supplies(sheet, "lightweight starch", "a pressing cloth")
        add_band_sample(sheet, self.ordered)
        add_band_steps(sheet, self.ordered, self.joins, self.fit.number if self.fit else None)

    def draw(self, sheet: Worksheet) -> None:
        """The finished band, the width that each strip shows, and the strips as they are cut."""
        strips, width, long = self.ordered, sheet["finished_width"], float(self.run)
        shown = ", ".join(f"{strip.kind} {{{strip.prefix}width}}" for strip in strips)
        described = sheet.sentence(f"From top to bottom: {shown}; {{finished_width}} in all.")
        finished = Scene(
            sheet.sentence("The finished band"), described, finished_band(strips, width, long)
        )
        caption = sheet.sentence(
            "A piece of the finished band, to scale in width; meshes and holes are only signs."
        )
        sheet.pictures.append(Picture("finished", caption, finished, finished=True))
        measured = Scene(
            sheet.sentence("What shows of each strip"),
            described,
            measured_band(strips, width, long),
        )
        caption = sheet.sentence("What shows of each strip, and the whole band.")
        sheet.pictures.append(Picture("widths", caption, measured))
        apart = Scene(
            sheet.sentence("The strips as they are cut"),
            sheet.sentence("The strips in order, each with its cut width; seam lines dashed."),
            cut_strips(strips),
            tallest=1200.0,
        )
        caption = sheet.sentence(
            "The strips as they are cut, from top to bottom; the plain borders are what the joins "
            "take, up to the dashed seam lines."
        )
        sheet.pictures.append(Picture("strips", caption, apart))


TECHNIQUE = InsertionBand
