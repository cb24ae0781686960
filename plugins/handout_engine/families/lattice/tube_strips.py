"""Tubes cut without a join from bias strips: which tube comes from which strip, and the cloth."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass

from handout_engine.amounts.angles import ROOT_OF_TWO
from handout_engine.amounts.declaring import check, drafted, value
from handout_engine.amounts.expressions import unheard
from handout_engine.amounts.inputs import CLOTH, SEWING, length, optional_length
from handout_engine.amounts.lengths import ZERO, Length, from_float, inches, least, total
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import LAYOUT, PRACTICE
from handout_engine.amounts.values import Value
from handout_engine.cloth.bias import SURE, Band, cut_bands, smallest_cloth
from handout_engine.cloth.cloth import ClothInputs
from handout_engine.working.workings import Chart

USUAL_ALLOWANCE = constant("usual allowance", inches("1/4"), PRACTICE)


@dataclass(frozen=True)
class NamedTube:
    """One tube to cut: its name on the placement sheet, and its length."""

    name: str
    length: Length


@dataclass(frozen=True)
class CutStrip:
    """A bias strip, its length with the ends squared, and the tubes cut from it."""

    band: Band
    good: Length
    tubes: tuple[NamedTube, ...]

    @property
    def left_over(self) -> Length:
        """What is left when all its tubes are cut."""
        return max(ZERO, self.good - total(tube.length for tube in self.tubes))


class TubeInputs(ClothInputs):
    """What is made of narrow bias tubes, their seam along one edge."""

    tube_width = length(
        "tube width", "Finished width of a tube, pressed flat.", "1/4 in", ("1/8 in", "2 in")
    )
    tube_allowance = optional_length(
        "tube allowance",
        "Allowance of a tube's seam; it stays inside the tube.",
        "as wide as the tube, up to 1/4 in",
        ("1/16 in", "3/8 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="seam_in_tube",
    )
    size_step = length(
        "size step",
        "The cloth for the strips is cut in steps of this.",
        "1/2 in",
        ("1/8 in", "6 in"),
        group=CLOTH,
        basis=PRACTICE,
    )

    @value("allowance of a tube's seam", basis=PRACTICE)
    def seam_in_tube(self) -> Length:
        """As asked for, or so wide that it fills a narrow tube."""
        if self.tube_allowance is not None:
            return self.tube_allowance
        return least(self.tube_width, USUAL_ALLOWANCE)

    @check
    def the_seam_lies_flat_in_the_tube(self) -> None:
        """Refuse an allowance wider than the tube that it stays in."""
        if self.seam_in_tube > self.tube_width:
            raise RefusalError(
                f"tube_allowance {TAPE.say(self.seam_in_tube)} is wider than the tube and cannot "
                f"lie flat in it; use at most {TAPE.no_more(self.tube_width)}, or trim it to that "
                "after sewing and write that",
                "tube_allowance",
            )

    @value("bias strip, cut width", saying=Saying.UP)
    def strip_width(self) -> Length:
        """Front and back of the tube, and its allowance on both edges."""
        return 2 * self.tube_width + 2 * self.seam_in_tube

    @property
    @abstractmethod
    def wanted(self) -> tuple[NamedTube, ...]:
        """The tubes to cut."""

    @drafted
    def cloth_for_strips(self) -> tuple[Length, Length]:
        """The least piece of cloth for all strips, across it and along it."""
        with unheard():
            across, along = smallest_cloth(
                self.usable_width,
                self.strip_width,
                self.size_step,
                lambda cut: packed(cut, self.strip_width, self.wanted) is not None,
            )
        return Length(across.mm), Length(along.mm)

    @value("cloth for the strips, across", basis=LAYOUT)
    def across(self) -> Length:
        """The least that holds them, in steps."""
        return self.cloth_for_strips[0]

    @value("cloth for the strips, along the selvage", basis=LAYOUT)
    def along(self) -> Length:
        """The least that holds them, in steps."""
        return self.cloth_for_strips[1]

    @value("from line to line, along the edges of the cloth")
    def edge_step(self) -> Length:
        """The strip's width, measured aslant along the grain."""
        return self.strip_width * ROOT_OF_TWO

    @drafted
    def cut_strips(self) -> tuple[CutStrip, ...]:
        """The strips that are cut, with the tubes from each."""
        with unheard():
            every = cut_bands(self.across, self.along, self.strip_width)
            found = packed(every, self.strip_width, self.wanted)
        assert found is not None
        return found

    @value("bias strips to cut", basis=LAYOUT)
    def strips(self) -> Count:
        """Those from which any tube is cut."""
        return Count(len(self.cut_strips))

    def strips_chart(self) -> Chart:
        """Which tubes come from which strip."""
        rows = tuple(
            (
                str(strip.band.number),
                Value("good", "good length", strip.good, LAYOUT),
                ", ".join(tube.name for tube in strip.tubes),
                Value("left", "left over", strip.left_over, LAYOUT),
            )
            for strip in self.cut_strips
        )
        headings = ("Strip", "Length, ends squared", "Tubes cut from it", "Left over")
        return Chart("The strips, counted from one corner of the cloth", headings, rows)


def packed(
    every: Sequence[Band], width: Length, wanted: Sequence[NamedTube]
) -> tuple[CutStrip, ...] | None:
    """Every tube on a strip, without a join, the longest first on the fullest strip that holds it.

    A strip's ends lie on the grain; squared, they take its width of its length. None when the
    strips do not hold all tubes.
    """
    left = {band.number: band.usable - width - from_float(SURE) for band in every}
    taken: dict[int, list[NamedTube]] = {}
    for tube in sorted(wanted, key=lambda each: -each.length.mm):
        holding = [number for number, free in left.items() if free >= tube.length]
        if not holding:
            return None
        begun = [number for number in holding if number in taken]
        number = min(begun or holding, key=lambda each: (left[each].mm, each))
        left[number] -= tube.length
        taken.setdefault(number, []).append(tube)
    return tuple(
        CutStrip(band, band.usable - width, tuple(taken[band.number]))
        for band in every
        if band.number in taken
    )
