"""Mitres of lace: what a corner of any angle takes, and where each falls on the flat lace.

A strip that turns by an angle c leaves a fold between its arms; along its inner edge the fold
takes 2 × width × tan(c / 2), along its outer edge nothing but the seam.
"""

from __future__ import annotations

from fractions import Fraction

from handout_engine.amounts.angles import tangent
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, angle, choice, length, lengths
from handout_engine.amounts.lengths import Length, from_float, total
from handout_engine.amounts.numbers import Count, Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GIVEN, PRACTICE
from handout_engine.amounts.ways_out import at_most, less_than, ways
from handout_engine.amounts.working_out import Group
from handout_engine.families.lace.lace import LaceInputs
from handout_engine.families.lace.mitring_drawing import MitreWalk

INNER, OUTER = "inner line", "outer line"
OPEN, RING = "open", "ring"
CLOSES_WITHIN = 1.0
"""A ring whose end misses its start by more than so many mm is refused."""
TAPE = Tape(finest=32)


class MitreSide(Group):
    """One straight side, and both lines of the lace along it."""

    def __init__(self, lace: MitredSides, number: int) -> None:
        """Take the lace, and which of its sides this is."""
        super().__init__(suffix=str(number))
        self.lace, self.number = lace, number
        self.given = lace.sides[number - 1]

    @property
    def mitres(self) -> int:
        """How many of its ends are mitred."""
        inside = 1 < self.number < len(self.lace.sides)
        return 2 if inside or self.lace.ends == RING else 1

    @property
    def taken(self) -> Length:
        """By how much its inner line is shorter than its outer one."""
        return self.lace.half_mitre if self.mitres == 1 else 2 * self.lace.half_mitre

    @value("side {}, inner line")
    def inner(self) -> Length:
        """As measured, or what its mitres leave of the outer line."""
        return self.given if self.lace.measured == INNER else self.outer - self.taken

    @value("side {}, outer line")
    def outer(self) -> Length:
        """As measured, or longer than the inner line by its mitres."""
        return self.given if self.lace.measured == OUTER else self.inner + self.taken

    @property
    def line(self) -> Length:
        """The line it was measured on."""
        return self.inner if self.lace.measured == INNER else self.outer


class Mitre(Group):
    """One mitre: its fold, and the lines on both sides of it that are stitched together."""

    def __init__(self, lace: MitredSides, side: MitreSide, before: Mitre | None) -> None:
        """Take the lace, the side that ends in it, and the mitre at which that side began."""
        super().__init__(suffix=str(side.number))
        self.lace, self.side, self.before = lace, side, before

    @value("mitre {}, fold line from the first end")
    def fold(self) -> Length:
        """Every mitre takes its seam on both sides, a cut end its allowance."""
        seam, outer = self.lace.mitre_seam, self.side.outer
        if self.before is not None:
            return self.before.fold + outer + 2 * seam
        if self.lace.ends == OPEN:
            return self.lace.end_allowance + outer + seam
        return outer + 2 * seam

    @property
    def where_ends_meet(self) -> bool:
        """Whether it is the one that closes a ring: it has half of itself at each end."""
        return self.side.number == self.lace.corners and self.lace.ends == RING

    @value("mitre {}, inner edge, stitch from")
    def stitch_from(self) -> Length:
        """Where the inner edge meets the stitching, before the fold."""
        return self.fold - self.lace.beside_fold

    @value("mitre {}, inner edge, stitch to")
    def stitch_to(self) -> Length:
        """The same behind the fold."""
        if self.where_ends_meet:
            return self.lace.beside_fold
        return self.fold + self.lace.beside_fold


class MitredSides(LaceInputs):
    """Lace along straight sides, mitred round each corner between them."""

    sides = lengths(
        "sides",
        "The straight sides in order, from one end to the other.",
        "6 in; 9 in; 6 in",
        ("1/4 in", "5 yd"),
        12,
    )
    measured = choice(
        "sides measured on", "The line on which the sides were measured.", INNER, OUTER
    )
    turn = angle(
        "turn at a corner",
        "Change of direction at each corner: 90 for a square one, less for a blunt one, more "
        "for a sharp point.",
        "90",
        ("5", "160"),
    )
    ends = choice(
        "ends", "Open, or a ring whose ends meet in the last mitre.", OPEN, RING, group=SEWING
    )
    mitre_seam = length(
        "mitre seam",
        "Lace left beyond the stitching at the outer point, on each side of it.",
        "1/16 in",
        ("0 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    def label_of(self, label: str) -> str:
        """A label with the line that the sides were measured on."""
        return label.format(measured=self.measured)

    @check
    def there_is_a_corner(self) -> None:
        """Refuse one side alone, and corners that together go more than once round."""
        number = len(self.sides)
        if self.ends == OPEN and number == 1:
            raise RefusalError(
                "one open side has no corner to mitre; write at least 2 sides", "sides"
            )
        corners = number if self.ends == RING else number - 1
        most = Fraction(360, corners)
        if self.turn > most:
            raise RefusalError(
                f"turn {TAPE.say(self.turn, Saying.DEGREES)} at {corners} corners goes more than "
                f"once round; use {ways(at_most(self, 'turn', most), 'fewer sides')}",
                "turn",
            )

    @check
    def a_ring_closes(self) -> None:
        """Refuse a ring that does not go just once round, or whose end misses its start."""
        number = len(self.sides)
        if self.ends == OPEN:
            return
        once = Fraction(360, number)
        if number < 3 or abs(float(self.turn) - float(once)) > 0.01:
            said = TAPE.say(once, Saying.DEGREES)
            way = (
                f"turn {said} at each of its {number} corners" if number > 2 else "3 sides or more"
            )
            raise RefusalError(f"a ring needs {way}; write that, or leave the ends open", "turn")
        walk = MitreWalk([float(side) for side in self.sides], float(once), closed=True)
        if walk.gap > CLOSES_WITHIN:
            raise RefusalError(
                "the sides do not close to a ring, the end misses the start by "
                f"{TAPE.both(from_float(walk.gap))}; make opposite sides equal, or leave the ends "
                "open",
                "sides",
            )

    @value("number of sides", basis=GIVEN)
    def number_of_sides(self) -> Count:
        """Those that were measured."""
        return Count(len(self.sides))

    @value("corners to mitre")
    def corners(self) -> Count:
        """An open line has one less than sides."""
        return self.number_of_sides if self.ends == RING else self.number_of_sides - 1

    @value("half of a mitre, along the inner edge")
    def half_mitre(self) -> Length:
        """The stitching leaves the fold by half the turn, across the width of the lace."""
        return self.lace_width * tangent(self.turn / 2)

    @value("from a fold to its stitching, along the inner edge")
    def beside_fold(self) -> Length:
        """Half of the mitre, and the seam that it has at the outer point as well."""
        return self.half_mitre + self.mitre_seam

    @value("one mitre, along the inner edge of the lace")
    def corner_takes(self) -> Length:
        """Both sides of its fold."""
        return 2 * self.beside_fold

    @value("one mitre in widths of the lace")
    def corner_widths(self) -> Ratio | None:
        """How it is often said where the inner line was measured."""
        return self.corner_takes / self.lace_width if self.measured == INNER else None

    @group
    def lines(self) -> tuple[MitreSide, ...]:
        """Both lines of every side."""
        return tuple(MitreSide(self, number) for number in range(1, len(self.sides) + 1))

    @check
    def something_is_left_inside(self) -> None:
        """Refuse mitres that leave nothing of a side; the side that is worst off is named."""
        worst = min(self.lines, key=lambda side: side.given / side.taken)
        if self.measured == INNER or worst.given > worst.taken:
            return
        most = self.lace_width * (worst.given / worst.taken)
        narrow = less_than(self, "lace_width", most, "lace narrower than {}")
        raise RefusalError(
            f"lace_width {TAPE.say(self.lace_width)} leaves nothing of side {worst.number} inside, "
            f"{TAPE.say(worst.given)} on the outer line; use {ways(narrow, 'longer sides')}",
            "lace_width",
        )

    @value("all sides, {measured}")
    def along(self) -> Length:
        """End to end."""
        return total(side.line for side in self.lines)

    @value("lace, cut length")
    def lace_length(self) -> Length:
        """Along the inner line each mitre takes all of itself, along the outer one its seam."""
        takes = self.corner_takes if self.measured == INNER else 2 * self.mitre_seam
        sewn = self.along + self.corners * takes
        return sewn if self.ends == RING else sewn + 2 * self.end_allowance

    @group
    def mitres(self) -> tuple[Mitre, ...]:
        """The mitres along the flat lace, each after the one before it."""
        found: list[Mitre] = []
        for side in self.lines[: self.corners]:
            found.append(Mitre(self, side, found[-1] if found else None))
        return tuple(found)
