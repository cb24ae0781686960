"""Scallops along an edge: whole ones, each an arc over its chord.

A scallop hangs by its rise below the line on which all of them begin and end, the foot line. At a
rise of half the chord it is a half circle, and neighbours meet in a slit of no width.
"""

from __future__ import annotations

from handout_engine.amounts.angles import Angle, angle_of_sine, arc
from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length, ratio
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_least, at_most, less_than, ways
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Chart

STRAIGHT, RING = "straight edge", "round a hem"
FACED, SATIN = "faced and turned", "satin stitched"


class ScallopInputs(Technique):
    """The inputs of an edge that is divided into scallops."""

    form = choice("edge", "Open, with two ends, or closed round a hem or a sleeve.", STRAIGHT, RING)
    edge = length(
        "length of the edge",
        "Along the foot line, from end to end or once round.",
        "24 in",
        ("1 in", "10 yd"),
    )
    scallops = count("how many scallops", "Along the whole edge.", 8, 120)
    rise = optional_length(
        "rise",
        "From the foot line to the lowest point of a scallop.",
        "three tenths of the chord",
        ("1/16 in", "40 in"),
        in_use="scallop_rise",
    )
    gap = length(
        "gap", "Straight edge left between one scallop and the next.", "0 in", ("0 in", "20 in")
    )
    finish = choice(
        "finish",
        "Sewn to a facing and turned, or satin stitched and cut out.",
        FACED,
        SATIN,
        group=SEWING,
    )
    rise_limit = ratio(
        "deepest faced scallop",
        "Greatest rise for each length of chord that still turns "
        "and presses flat where scallops touch.",
        "0.35",
        ("0.05", "0.5"),
        group=SEWING,
        basis=PRACTICE,
    )
    least_gap = length(
        "gap that turns",
        "A gap this wide lets deeper faced scallops be turned.",
        "1/8 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @property
    def ring(self) -> bool:
        """Whether the last scallop meets the first."""
        return self.form != STRAIGHT

    @property
    def faced(self) -> bool:
        """Whether the scallops are turned with a facing."""
        return self.finish != SATIN

    @value("from one scallop to the next")
    def pitch(self) -> Length:
        """An equal share of the edge."""
        return self.edge / self.scallops

    @check
    def the_gap_leaves_a_scallop(self) -> None:
        """Refuse a gap as wide as all that a scallop has."""
        if self.gap >= self.pitch:
            raise RefusalError(
                f"gap {TAPE.say(self.gap)} leaves nothing of the {TAPE.say(self.pitch)} from one "
                f"scallop to the next; use "
                f"{ways(less_than(self, 'gap', self.pitch), 'fewer scallops')}",
                "gap",
            )

    @value("chord of one scallop")
    def chord(self) -> Length:
        """From foot to foot, along the foot line."""
        self.the_gap_leaves_a_scallop()
        return self.pitch - self.gap

    @value("rise of one scallop", basis=PRACTICE)
    def scallop_rise(self) -> Length:
        """As asked for, or shallow enough to be turned."""
        return 3 * self.chord / 10 if self.rise is None else self.rise

    @value("radius of one scallop")
    def radius(self) -> Length:
        """Of the arc through both its feet and its lowest point."""
        chord, rise = self.chord, self.scallop_rise
        return (chord * chord / 4 + rise * rise) / (2 * rise)

    @value("half of the angle of its arc")
    def half_angle(self) -> Angle:
        """A scallop deeper than a half circle turns by more than a half turn."""
        at_foot = angle_of_sine(self.chord / (2 * self.radius))
        return 180 - at_foot if 2 * self.scallop_rise > self.chord else at_foot

    @value("length of one scallop along its curve")
    def arc(self) -> Length:
        """Both halves of it."""
        return 2 * self.radius * arc(self.half_angle)

    @check
    def the_points_can_be_turned(self) -> None:
        """Refuse a facing that cannot be turned at the points between its scallops."""
        most = self.chord * self.rise_limit
        if self.faced and self.scallop_rise > most and self.gap < self.least_gap:
            apart = at_least(self, "gap", self.least_gap, "a gap of at least {}")
            raise RefusalError(
                f"rise {TAPE.say(self.scallop_rise)} on a chord of {TAPE.say(self.chord)} is too "
                f"deep to face and turn where scallops touch; use "
                f"{ways(at_most(self, 'rise', most), apart, 'satin stitch')}",
                "rise",
            )

    @property
    def deep(self) -> bool:
        """Whether a scallop is more than a half circle."""
        return 2 * self.scallop_rise.mm > self.chord.mm

    @property
    def slit(self) -> bool:
        """Whether neighbours meet in a slit of no width: half circles that touch."""
        return not self.gap and 2 * self.scallop_rise.mm == self.chord.mm

    @value("angle between two scallops, where they meet")
    def between(self) -> Angle | None:
        """The sharper it is, the nearer it must be clipped; None where they do not touch."""
        return None if self.deep or self.gap else 180 - 2 * self.half_angle

    @value("what a scallop is wider than its chord")
    def bulge(self) -> Length | None:
        """Of more than a half circle, which hangs over its own feet."""
        return 2 * self.radius - self.chord if self.deep else None

    @check
    def neighbours_stay_apart(self) -> None:
        """Refuse scallops that would lie on each other."""
        if self.bulge is not None and self.gap < self.bulge:
            flatter = at_most(self, "rise", self.chord / 2)
            raise RefusalError(
                f"rise {TAPE.say(self.scallop_rise)} is more than half of the chord, so each "
                f"scallop bulges over its neighbour; use "
                f"{ways(flatter, 'a wider gap', 'fewer scallops')}",
                "rise",
            )

    @value("length along all scallops, for piping or a trim")
    def outline(self) -> Length:
        """Every scallop, and the gap beside it."""
        return self.scallops * (self.arc + self.gap)

    def feet_chart(self) -> Chart:
        """Where each scallop begins, is deepest and ends along the foot line."""
        rows = []
        for number in range(self.scallops):
            begins = self.pitch * number + self.gap / 2
            lowest, ends = begins + self.chord / 2, begins + self.chord
            rows.append((str(number + 1), begins, lowest, ends))
        headings = ("Scallop", "Begins at", "Lowest at", "Ends at")
        start = "once round, from the first mark" if self.ring else "from the first end"
        return Chart(f"Scallops along the foot line, {start}", headings, tuple(rows))
