"""Folded strips joined by stitches over an open gap, in whole repeats."""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import SEWING, length, lengths, percentage
from handout_engine.amounts.lengths import Length, total
from handout_engine.amounts.numbers import Count, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.ways_out import just, ways
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.smocking.fagoted_band_drawing import (
    Fagoting,
    edges_cut_through,
    fagoted,
    spacing,
)
from handout_engine.families.smocking.fagoted_band_steps import add_sample, add_steps
from handout_engine.families.smocking.fagoted_strips import CutStrip, FinishedStrip
from handout_engine.working.cautions import LACE_CATCHES, LONG_FLOATS, PINS_AND_IRON
from handout_engine.working.workings import Grain, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

MOST_REPEATS = 4000
GUIDE = Length(Fraction(170))
"""The printed guide is about so long; it is moved along the band."""


class FagotedBand(ClothInputs):
    """A band of folded strips with open stitches between them."""

    title = "Fagoted band"
    family = "smocking"
    summary = (
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

    @check
    def a_gap_has_two_sides(self) -> None:
        """Refuse a single strip."""
        if len(self.widths) < 2:
            sides = "a gap needs a strip at either side; give at least two widths"
            raise RefusalError(sides, "widths")

    @check
    def the_turn_lies_behind_the_strip(self) -> None:
        """Refuse an allowance that would reach past the other edge of a strip."""
        narrowest = min(self.widths)
        if self.turn > narrowest:
            raise RefusalError(
                f"turn {TAPE.both(self.turn)} would reach past the other edge of a strip "
                f"{TAPE.both(narrowest)} wide; use at most {TAPE.no_more(narrowest)}, or wider "
                "strips",
                "turn",
            )

    @group
    def strips(self) -> tuple[FinishedStrip, ...]:
        """Each strip as it shows."""
        return tuple(FinishedStrip(width, place) for place, width in enumerate(self.widths, 1))

    @value("gaps")
    def gaps(self) -> Count:
        """One less than strips."""
        return whole(len(self.widths)) - 1

    @value("all strips side by side")
    def strips_width(self) -> Length:
        """Without the gaps."""
        return total(strip.strip for strip in self.strips)

    @value("finished width of the band")
    def finished_width(self) -> Length:
        """With the gaps."""
        return self.strips_width + self.gaps * self.gap

    @value("strips, cut length")
    def cut_length(self) -> Length:
        """With what both ends need."""
        return self.edge + 2 * self.end

    @group
    def cuts(self) -> tuple[CutStrip, ...]:
        """Equal strips with equal edges are cut alike."""
        alike: dict[tuple[Length, bool], list[Length]] = {}
        for place, strip in enumerate(self.strips):
            outer = place in {0, len(self.strips) - 1}
            alike.setdefault((strip.strip, outer), []).append(strip.strip)
        return tuple(
            CutStrip(self, same, outer, number)
            for number, ((_, outer), same) in enumerate(alike.items(), 1)
        )

    @value("repeats along each gap")
    def repeats(self) -> Count:
        """The whole number nearest to what the edge holds."""
        return larger((self.edge / self.repeat + Fraction(1, 2)).rounded_down(), whole(1))

    @value("repeat that comes out whole")
    def true_repeat(self) -> Length:
        """An equal share of the edge."""
        return self.edge / self.repeats

    @check
    def the_repeats_can_be_counted(self) -> None:
        """Refuse more stitches than anyone works."""
        if self.repeats > MOST_REPEATS:
            raise RefusalError(
                f"repeat {TAPE.both(self.repeat)} gives {self.repeats} stitches, more than "
                f"{MOST_REPEATS}; use at least {TAPE.no_less(self.edge / MOST_REPEATS)}",
                "repeat",
            )

    def fills(self, size: Length) -> bool:
        """Whether whole repeats fill a size as it is said, within the tolerance."""
        repeats = size / self.repeat
        nearest = max(1, int(repeats + Fraction(1, 2)))
        return abs(repeats / nearest - 1) <= self.tolerance

    @check
    def each_repeat_changes_little(self) -> None:
        """Refuse an edge that holds no whole number of repeats; say which lengths do."""
        if self.fills(self.edge):
            return
        below = int(self.edge / self.repeat)
        sizes = (self.repeat * max(1, below), self.repeat * (below + 1))
        named = " or ".join(filter(None, (just(self, "edge", size, self.fills) for size in sizes)))
        raise RefusalError(
            f"edge {TAPE.both(self.edge)} holds no whole number of repeats within the tolerance; "
            f"use {ways(named and f'{named}, which need no change', 'another repeat')}",
            "edge",
        )

    @value("length of the printed guide")
    def guide_length(self) -> Length:
        """As many whole repeats as go on the paper."""
        return self.guide_repeats * self.true_repeat

    @property
    def guide_repeats(self) -> int:
        """The repeats of the printed guide."""
        with unheard():
            return max(1, min(self.repeats.number, int(GUIDE / self.true_repeat)))

    @value("thread over the gap, once")
    def crossing(self) -> Length:
        """Slanting, half a repeat further on."""
        half = self.true_repeat / 2
        return (self.gap * self.gap + half * half).root()

    @value("thread for one repeat")
    def repeat_thread(self) -> Length:
        """There and back, and in and out of both folds."""
        return 2 * self.crossing + 4 * self.bite

    @value("thread for all gaps", saying=Saying.UP)
    def thread(self) -> Length:
        """Every repeat of every gap."""
        return self.repeats * self.gaps * self.repeat_thread

    @group
    def cloth_bought(self) -> ClothBought:
        """One cloth."""
        return ClothBought(self, "cloth")

    def cut(self, sheet: Worksheet) -> None:
        """Strips along the selvage, which stretches least under the needle."""
        for each in self.cuts:
            size = sheet[f"strip{each.number}_cut"], sheet["cut_length"]
            sheet.pieces.append(
                Piece(each.name, "cloth", each.many, *size, Grain.STRAIGHT, each.marks)
            )
        sheet.seams.append(Seam("each fagoted edge, turned under", self.turn))

    def sew(self, sheet: Worksheet) -> None:
        """A sample; then the folds basted to paper and joined."""
        name = "pearl or stranded cotton for the stitches"
        sheet.supplies.append(Supply(name, sheet["thread"]))
        sheet.have("firm paper to baste on", "a blunt needle")
        sheet.cautions.extend((LACE_CATCHES, LONG_FLOATS, PINS_AND_IRON))
        add_sample(sheet)
        add_steps(sheet)

    def draw(self, sheet: Worksheet) -> None:
        """The band, the guide, and two folds cut through."""
        _draw(sheet, self)


def _draw(sheet: Worksheet, band: FagotedBand) -> None:
    names = [sheet[f"strip_{number}"] for number in range(1, len(band.widths) + 1)]
    drawn = Fagoting(
        names,
        sheet["gap"],
        sheet["true_repeat"],
        sheet["edge"],
        sheet["finished_width"],
        sheet["turn"],
    )
    finished = Scene(
        sentence("Fagoted band, finished"),
        sentence(
            "{strips} strips with {gap} between them, {width} wide in all.",
            strips=len(names),
            gap=sheet["gap"],
            width=sheet["finished_width"],
        ),
        fagoted(drawn),
    )
    sheet.show("finished", "The finished band.", finished, finished=True)
    sheet.show(
        "spacing",
        "Where the stitches go on two folds, dash-dotted; printed at true scale it is the guide.",
        spacing(drawn),
        sheet=spacing(drawn, True, band.guide_repeats),
    )
    sheet.show(
        "edges",
        "Two folded edges basted to paper, cut through; thickness enlarged.",
        edges_cut_through(drawn),
    )


TECHNIQUE = FagotedBand
